"""Loads and structure of a placed configuration: blade, shaft, brackets, bolts, skin.

`gather.inputs_of` makes the inputs, `assess` the checks; each formula stands by itself in its own module.
"""

from service.core.loads.assess import assess
from service.core.loads.gather import Place, Seat, inputs_of
from service.core.loads.shapes import Assessment, Hull, Inputs, Result
from service.core.loads.standard import STANDARD, Numbers

__all__ = ["STANDARD", "Assessment", "Hull", "Inputs", "Numbers", "Place", "Result", "Seat", "assess", "inputs_of"]
