"""HTML mail -> plain text: table rows as lines, quotations with ">", no style, no script."""

from __future__ import annotations

from service.files.read.html_tags import pieces

LONGEST_HTML = 400_000
_SILENT = frozenset({"style", "script", "head", "title", "template", "object", "svg"})
_LINE = frozenset(
    {"p", "div", "br", "tr", "table", "ul", "ol", "li", "h1", "h2", "h3", "h4", "h5", "h6", "hr", "pre", "section",
     "article", "header", "footer", "blockquote", "dl", "dt", "dd", "center", "tbody", "thead"}
)  # fmt: skip
_APART = frozenset({"p", "h1", "h2", "h3", "h4", "table", "ul", "ol", "blockquote"})
_PAIR = 2


class _Extractor:
    def __init__(self) -> None:
        self.lines: list[str] = []
        self.words: list[str] = []
        self.cells: list[list[str]] = []  # one list of cells for each open row, innermost last
        self.silent = 0
        self.quoted = 0

    def opens(self, tag: str) -> None:
        if tag in _SILENT:
            self.silent += 1
        elif tag == "body":
            self.silent = 0  # an unclosed head must not silence the letter
        if tag == "tr":
            self._row_ends()
            self._line_ends()
            self.cells.append([])
        elif tag in ("td", "th"):
            if self.cells:
                self._cell_ends()
        elif tag in _LINE and not self.cells:
            self._line_ends(apart=tag in _APART)
        elif tag in _LINE:
            self.words.append(" ")
        if tag == "blockquote":
            self.quoted += 1
        if tag == "li":
            self.words.append("- ")

    def closes(self, tag: str) -> None:
        if tag in _SILENT:
            self.silent = max(0, self.silent - 1)
        elif tag in ("tr", "table"):
            self._row_ends()
        elif tag in ("td", "th"):
            if self.cells:
                self._cell_ends()
        elif tag in _LINE and not self.cells:
            self._line_ends(apart=tag in _APART)
        if tag == "blockquote":
            self.quoted = max(0, self.quoted - 1)

    def says(self, data: str) -> None:
        if not self.silent:
            self.words.append(data)

    def _taken(self) -> str:
        text = " ".join("".join(self.words).split())
        self.words.clear()
        return text

    def _cell_ends(self) -> None:
        text = self._taken()
        if text:
            self.cells[-1].append(text)

    def _row_ends(self) -> None:
        if not self.cells:
            return
        self._cell_ends()
        cells = self.cells.pop()
        if len(cells) == _PAIR and any(c.isalpha() for c in cells[0]):
            self._write(f"{cells[0].rstrip(' :')}: {cells[1]}")
        elif cells:
            self._write("  ".join(cells))

    def _line_ends(self, *, apart: bool = False) -> None:
        text = self._taken()
        if text:
            self._write(text)
        if apart and self.lines and self.lines[-1]:
            self._write("")

    def _write(self, line: str) -> None:
        self.lines.append("> " * min(self.quoted, 8) + line if line else "")

    def text(self) -> str:
        while self.cells:
            self._row_ends()
        self._line_ends()
        return "\n".join(self.lines).strip()


def to_text(html: str) -> str:
    """Return what a person reads of `html`; a row of two cells becomes "label: value". Cut at LONGEST_HTML."""
    extractor = _Extractor()
    for kind, what in pieces(html[:LONGEST_HTML]):
        if kind == "text":
            extractor.says(what)
        elif kind == "open":
            extractor.opens(what)
        else:
            extractor.closes(what)
    return extractor.text()
