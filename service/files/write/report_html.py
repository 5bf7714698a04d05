"""A report as one page of HTML that needs nothing else: plots as SVG within it, each with its table."""

from __future__ import annotations

import html
import re

from service.core.report import Cell, Report, Table, period
from service.files.write.charts import chart
from service.files.write.report_words import cell_text, rest, shown_rows
from service.files.write.report_xlsx import headed

STYLE = """
body { font: 15px/1.5 "DejaVu Sans", system-ui, sans-serif; color: #111; max-width: 62rem; margin: 2rem auto; padding: 0 1rem; }
h1 { font-size: 1.5rem; margin: 0 0 .2rem; }
h2 { font-size: 1.1rem; margin: 2.4rem 0 .4rem; border-top: 1px solid #111; padding-top: .6rem; }
p.note, .small { color: #444; font-size: .85rem; max-width: 48rem; }
dl { display: grid; grid-template-columns: minmax(12rem, max-content) 1fr; gap: .15rem 1rem; } dt { color: #444; } dd { margin: 0; }
figure { margin: 1rem 0; overflow-x: auto; } figure svg { max-width: 100%; height: auto; }
.wide { overflow-x: auto; } table { border-collapse: collapse; font-size: .85rem; font-variant-numeric: tabular-nums; }
th { text-align: left; vertical-align: bottom; border-bottom: 1px solid #111; padding: .2rem .8rem .2rem 0; font-weight: 600; }
td { padding: .12rem .8rem .12rem 0; border-bottom: 1px solid #ddd; vertical-align: top; }
th.n, td.n { text-align: right; } td.n, .w { white-space: nowrap; }
@media print { body { max-width: none; margin: 0; font-size: 10pt; } h2 { break-after: avoid; } figure, tr { break-inside: avoid; } }
"""


def page(report: Report) -> bytes:
    """Return the page, in UTF-8."""
    parts = [
        '<!DOCTYPE html>\n<html lang="en">\n<head>\n<meta charset="utf-8">',
        '<meta name="viewport" content="width=device-width, initial-scale=1">',
        f"<title>{_safe(report.title)}</title>\n<style>{STYLE}</style>\n</head>\n<body>",
        f"<h1>{_safe(report.title)}</h1>",
        f'<p class="small">As of {report.as_of}, {_safe(period(report.first, report.last))}</p>',
        _list(report.findings),
        _about(report),
        *(_part(report, table) for table in report.tables if _on_page(report, table)),
        "<h2>Sources</h2>",
        _list(report.sources),
        f'<p class="small">Catalogue {_safe(report.catalogue or "none loaded")}, {_safe(report.software)}</p>',
        "</body>\n</html>\n",
    ]
    return "\n".join(part for part in parts if part).encode()


def _on_page(report: Report, table: Table) -> bool:
    return bool(table.shown) or any(plot.table == table.id for plot in report.plots)


def _about(report: Report) -> str:
    rows = [
        *((name, str(count)) for name, count in report.counts.items()),
        *report.filters.items(),
        *((f"left out: {one.what}", f"{one.count} ({one.why})") for one in report.left_out),
    ]
    inner = "\n".join(f"<dt>{_safe(name)}</dt><dd>{_safe(text)}</dd>" for name, text in rows)
    return f"<h2>What is counted</h2>\n<dl>\n{inner}\n</dl>"


def _list(lines: tuple[str, ...]) -> str:
    return "<ul>\n" + "\n".join(f"<li>{_safe(line)}</li>" for line in lines) + "\n</ul>" if lines else ""


def _part(report: Report, table: Table) -> str:
    plots = [_figure(report, plot.id) for plot in report.plots if plot.table == table.id]
    note = f'<p class="note">{_safe(table.note)}</p>' if table.note else ""
    empty = '<p class="note">Nothing to show.</p>' if not table.rows else ""
    body = _table(table) if table.rows and (table.shown or len(table.rows) <= MOST_BEHIND) else _behind(table)
    return "\n".join([f'<h2 id="{_safe(table.id)}">{_safe(table.title)}</h2>', note, *plots, empty or body])


MOST_BEHIND = 30


def _behind(table: Table) -> str:
    """Return a long table folded away under its plot: whoever wants the numbers opens it."""
    return f"<details>\n<summary>{len(table.rows)} rows</summary>\n{_grid(table, table.rows)}\n</details>"


def _figure(report: Report, id_: str) -> str:
    plot = next(one for one in report.plots if one.id == id_)
    drawn = chart(report, plot, titled=False).decode()
    inner = drawn[drawn.index("<svg") :]
    inner = re.sub(r'\b(id="|xlink:href="#|url\(#)', rf"\g<1>{id_}-", inner)  # ids of several plots on one page
    label = f'role="img" aria-label="{_safe(plot.title)}; the table below has its numbers" '
    return f"<figure>\n{inner.replace('<svg ', f'<svg {label}', 1).strip()}\n</figure>"


def _table(table: Table) -> str:
    rows = shown_rows(table) if table.shown else table.rows
    more = f'<p class="note">{_safe(rest(table))}</p>' if table.shown and rest(table) else ""
    return _grid(table, rows) + more


def _grid(table: Table, rows: tuple[tuple[Cell, ...], ...]) -> str:
    kinds = ["" if column.kind == "text" else ' class="n"' for column in table.columns]
    head = "".join(
        f'<th scope="col"{kind}>{_safe(headed(column))}</th>' for column, kind in zip(table.columns, kinds, strict=True)
    )
    lines = [
        "<tr>"
        + "".join(
            f"<td{kind}>{_unbroken(cell_text(cell, column))}</td>"
            for cell, column, kind in zip(row, table.columns, kinds, strict=True)
        )
        + "</tr>"
        for row in rows
    ]
    return (
        f'<div class="wide"><table>\n<thead><tr>{head}</tr></thead>\n<tbody>\n'
        + "\n".join(lines)
        + "\n</tbody>\n</table></div>"
    )


def _unbroken(text: str) -> str:
    """Return a cell's text, in which a code is not broken at its hyphens."""
    return " ".join(f'<span class="w">{_safe(w)}</span>' if "-" in w[1:-1] else _safe(w) for w in text.split(" "))


def _safe(text: str) -> str:
    return html.escape(text)
