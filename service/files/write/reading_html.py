"""A reading -> one HTML page: the letter with the words that gave values marked, and the form beside it.

Each points at the other. No script; everything that came from outside is escaped.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from html import escape

from service.core.boat import title
from service.core.reading.highlight import Piece, Witness, pieces, witnesses
from service.core.reading.pictures import picture_of
from service.core.reading.shape import Evidence, Reading
from service.files.write.picture_svg import picture_svg

STYLE = """
:root{color-scheme:light}
body{margin:2.2rem auto;max-width:74rem;padding:0 1.2rem;background:#fff;color:#111;font:15px/1.5 "DejaVu Serif",Georgia,serif}
h1{font-size:1.15rem;border-bottom:1px solid #111;padding-bottom:.4rem;margin:0 0 1.4rem}
h2{font-size:.8rem;letter-spacing:.06em;text-transform:uppercase;margin:1.6rem 0 .5rem}
main{display:grid;grid-template-columns:minmax(0,3fr) minmax(0,2fr);gap:2.4rem}
pre{white-space:pre-wrap;overflow-wrap:anywhere;font:inherit;margin:0}
mark{background:none;color:inherit;border-bottom:2px solid #111}
mark.quoted{border-bottom-style:dotted}
sup,sup a{font:10px "DejaVu Sans",sans-serif;color:#111;text-decoration:none}
:target{background:#f3ecd2;outline:3px solid #f3ecd2}
table{border-collapse:collapse;width:100%;font:13px/1.35 "DejaVu Sans",Verdana,sans-serif}
td,th{text-align:left;vertical-align:top;padding:.22rem .5rem .22rem 0;border-bottom:1px solid #ddd;font-weight:normal}
th{color:#555}td.n{white-space:nowrap;text-align:right}
ol{padding-left:1.2rem}figure{margin:.4rem 0 1rem}
@media(max-width:50rem){main{display:block}}
@media print{body{margin:0;max-width:none}}
"""
Said = Callable[[str, object], str]


def reading_html(reading: Reading, name: str, said: Said) -> str:
    """Return the page. `name`: what was read; `said` writes a value of a field for people."""
    seen = witnesses(reading)
    what = f"{reading.kind}, {reading.boats} boat{'' if reading.boats == 1 else 's'}"
    parts = ["<section><h2>Letter</h2>", _letter(reading.text, seen), "</section><section>"]
    for boat in range(len(reading.forms)):
        label = "Form" if len(reading.forms) == 1 else f"Form {boat + 1}"
        parts.append(_form(label, [e for e in reading.evidence if e.boat == boat], seen, said))
    parts += [_doubts(reading, said), _questions(reading), _files(reading), "</section>"]
    language = escape(reading.language or "und")
    return (
        f'<!doctype html>\n<html lang="{language}"><head><meta charset="utf-8">'
        '<meta name="viewport" content="width=device-width,initial-scale=1">'
        f"<title>{escape(name)}</title><style>{STYLE}</style></head><body>"
        f"<h1>{escape(name)}: {escape(what)}</h1><main>{''.join(parts)}</main></body></html>\n"
    )


def _letter(text: str, seen: Sequence[Witness]) -> str:
    by_number = {one.number: one for one in seen}
    opened: set[int] = set()
    return f"<pre>{''.join(_piece(piece, by_number, opened) for piece in pieces(text, seen))}</pre>"


def _piece(piece: Piece, seen: dict[int, Witness], opened: set[int]) -> str:
    text = escape(piece.text)
    if not piece.numbers:
        return text
    first = [n for n in piece.numbers if n not in opened]
    opened.update(first)
    anchors = "".join(f'<a id="w{n}"></a>' for n in first[1:])
    own = f' id="w{first[0]}"' if first else ""
    quoted = all(e.quoted for n in piece.numbers for e in seen[n].values)
    told = escape("; ".join(sorted({title(e.field) for n in piece.numbers for e in seen[n].values})), quote=True)
    look = ' class="quoted"' if quoted else ""
    ends = "".join(f'<sup><a href="#v{n}">{n}</a></sup>' for n in piece.ends)
    return f'{anchors}<mark{own}{look} title="{told}">{text}</mark>{ends}'


def _form(label: str, evidence: Sequence[Evidence], seen: Sequence[Witness], said: Said) -> str:
    numbers = {(one.start, one.end): one.number for one in seen}
    given: set[int] = set()
    rows = []
    for one in evidence:
        number = numbers.get((one.start, one.end))
        target = f' id="v{number}"' if number is not None and number not in given else ""
        given.add(number or 0)
        link = "header" if number is None else f'<a href="#w{number}">{number}</a>'
        words = escape(" ".join(one.text.split())) + (" (quoted)" if one.quoted else "")
        rows.append(
            f"<tr{target}><td>{escape(title(one.field))}</td><td>{escape(said(one.field, one.value))}</td>"
            f'<td class="n">{one.confidence:.0%}</td><td>{words}</td><td class="n">{link}</td></tr>'
        )
    head = "<tr><th>field</th><th>read as</th><th>sure</th><th>from the words</th><th></th></tr>"
    return f"<h2>{escape(label)}</h2><table>{head}{''.join(rows)}</table>"


def _doubts(reading: Reading, said: Said) -> str:
    rows = "".join(
        f"<tr><td>{escape(title(d.field))}</td><td>{escape(d.why.replace('_', ' '))}</td>"
        f"<td>{escape(', '.join(said(d.field, v) for v in d.values))}</td><td>{escape(' '.join(d.text.split()))}</td></tr>"
        for d in reading.doubts
    )
    return f"<h2>Left out, in doubt</h2><table>{rows}</table>" if rows else ""


def _questions(reading: Reading) -> str:
    """Set each question with the picture of what it asks for."""
    items = []
    for question, field in zip(reading.questions, reading.asks, strict=True):
        picture = picture_of(field)
        drawn = f"<figure>{picture_svg(picture, picture.says)}</figure>" if picture else ""
        items.append(f"<li>{escape(question)}{drawn}</li>")
    return f"<h2>To ask</h2><ol>{''.join(items)}</ol>" if items else ""


def _files(reading: Reading) -> str:
    rows = "".join(
        f"<tr><td>{escape(a.name or 'unnamed')}</td><td>{escape(a.type)}</td><td>{a.bytes} bytes</td>"
        f"<td>{'read' if a.read else 'kept, not read'}</td></tr>"
        for a in reading.attachments
    )
    return f"<h2>Came along</h2><table>{rows}</table>" if rows else ""
