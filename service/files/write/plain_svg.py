"""A drawing without styles: what they say as attributes, so that a page that allows no inline style can show it."""

from __future__ import annotations

import re

_STYLE = re.compile(r'\sstyle="([^"]*)"')
_BLOCK = re.compile(r"<style[^>]*>(.*?)</style>", re.DOTALL)
_RULE = re.compile(r"\*\s*\{([^}]*)\}")
_NUMBER = re.compile(r"(-?\d+\.\d{2})\d+")
_ID = re.compile(r'\sid="([^"]*)"')
_TEXT = re.compile(
    r"<!-- (?P<text>[^\n]*?) -->\s*<g(?P<style> style=\"[^\"]*\")? transform=\"translate\((?P<at>[^)]*)\)"
    r"(?P<turn> rotate\([^)]*\))? scale\((?P<scale>[\d.]+) -[\d.]+\)\">(?P<glyphs>.*?)</g>",
    re.DOTALL,
)
_PLACE = re.compile(r"<use [^>]*?(?:translate\(([\d.]+)|/>)")
_LAST, _EM = 60, 100
"""How wide a last letter is taken to be, and the square that letters are drawn in."""
_FONT = re.compile(
    r"(?:(?P<style>italic|oblique)\s+)?(?:(?P<weight>bold|\d00)\s+)?(?P<size>[\d.]+)(?:px)?\s+(?P<family>.+)"
)


def plain_svg(svg: str) -> str:
    """Return the drawing from its <svg> on, with presentation attributes (SVG 1.1, chapter 6) in the place of styles.

    >>> plain_svg('<?xml?><svg><style>*{stroke-linecap: butt}</style><path style="fill: none; stroke: #111"/></svg>')
    '<svg stroke-linecap="butt"><path fill="none" stroke="#111"/></svg>'
    """
    inner = svg[svg.index("<svg") :]
    block = _BLOCK.search(inner)
    rule = _RULE.search(block[1]) if block else None
    inner = _TEXT.sub(_written, inner)
    inner = _STYLE.sub(lambda found: _attributes(found[1]), _BLOCK.sub("", inner))
    inner = _without_weight(inner)
    return inner.replace("<svg", f"<svg{_attributes(rule[1])}", 1) if rule else inner


def _written(found: re.Match[str]) -> str:
    """Return a text that was drawn letter by letter as a text again, as wide as it was: a tenth of the size, and read aloud.

    Its words stand, escaped, in the remark before it.
    """
    scale, places = float(found["scale"]), _PLACE.findall(found["glyphs"])
    width = (float(places[-1] or 0) + _LAST) * scale if len(places) > 1 else 0
    fitted = f' textLength="{width:.1f}" lengthAdjust="spacingAndGlyphs"' if width else ""
    bold = ' font-weight="bold"' if "Bold" in found["glyphs"] else ""
    turned = f"translate({found['at']}){found['turn'] or ''}"
    family = ' font-family="DejaVu Sans, Verdana, sans-serif"'
    size = f' font-size="{scale * _EM:.2f}"'
    return f'<text{found["style"] or ""} transform="{turned}"{size}{family}{bold}{fitted}>{found["text"]}</text>'


def _without_weight(inner: str) -> str:
    """Return the drawing without what nobody sees: remarks, ids nothing refers to, thousandths, space between elements."""
    inner = re.sub(r"<defs>\s*</defs>|<metadata>.*?</metadata>|<!--.*?-->", "", inner, flags=re.DOTALL)
    used = set(re.findall(r'(?:href="#|url\(#)([^")]+)', inner))
    inner = _ID.sub(lambda found: found[0] if found[1] in used else "", inner)
    inner = _NUMBER.sub(lambda found: found[1].rstrip("0").rstrip("."), inner)
    while (fewer := re.sub(r"<g>\s*</g>", "", inner)) != inner:
        inner = fewer
    return re.sub(r">\s+<", "><", re.sub(r"\s*\n\s*", " ", inner))


def _attributes(style: str) -> str:
    said: dict[str, str] = {}
    for declaration in style.replace("&quot;", "'").split(";"):
        name, _, value = declaration.partition(":")
        if name.strip() == "font" and (font := _FONT.fullmatch(value.strip())):
            said |= {f"font-{key}": text for key, text in font.groupdict().items() if text}
        elif value.strip():
            said[name.strip()] = value.strip()
    return "".join(f' {name}="{value}"' for name, value in said.items())
