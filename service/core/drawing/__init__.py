"""Views of a placed configuration, in mm and without a file format: writers turn them into SVG, DXF, PDF.

`views` them all, of a `scene`, the boat and the gear as solids: `side`, `stern`, `plan`, and `plates`, what is drilled and
cut · `template` what is printed full size of those ·
`things` obstacles and what they sweep · `clashes` what does not pass, in place · `shapes` what a view is made of ·
`lay` a view laid out at a scale: dimensions stacked, notes placed by `place`, letters measured by `letters` ·
`lengths` both units. A view's own x runs to the right and y up.
"""

from service.core.drawing.shapes import Dimension, Disc, Key, Layer, Note, Outline, Point, Template, View

__all__ = ["Dimension", "Disc", "Key", "Layer", "Note", "Outline", "Point", "Template", "View"]
