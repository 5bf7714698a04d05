"""Where in a TOML file a fault of what was read from it stands."""

from __future__ import annotations

import re

_STEP = re.compile(r"([^.\[\]]+)|\[(\d+)\]")
_HEAD = re.compile(r"\s*(\[{1,2})([^\]]+)\]")
_KEY = re.compile(r"""\s*([\w."'-]+)\s*=""")


def line_of(text: str, field: str) -> int | None:
    r"""Return the line, from 1, of a field such as `brackets[2].reach_mm`; of the table it is missing in where it is.

    None where nothing of it stands in the file: the fault is one of the whole.

    >>> toml = 'a = 1\n[[gears]]\ncode = "x"\n[[gears]]\ncode = 7\n[gears.tube]\nwall_mm = 2\n[rules.pad]\nvalue = 3\n'
    >>> [line_of(toml, one) for one in ("gears[1].code", "gears[1].tube.wall_mm", "gears[1].mass_kg", "rules.pad.value", "b")]
    [5, 7, 4, 9, None]
    """
    wanted = [name or int(number) for name, number in _STEP.findall(field)]
    table: list[str | int] = []
    counts: dict[str, int] = {}
    best, found = 0, None
    for number, line in enumerate(text.splitlines(), 1):
        head, key = _HEAD.match(line), _KEY.match(line)
        if head:
            table = path = _table(head, counts)
        elif key:
            path = [*table, *_parts(key[1])]
        else:
            continue
        shared = next((at for at, pair in enumerate(zip(path, wanted, strict=False)) if pair[0] != pair[1]), None)
        reached = min(len(path), len(wanted)) if shared is None else shared
        if reached > best:
            best, found = reached, number
    return found


def _table(head: re.Match[str], counts: dict[str, int]) -> list[str | int]:
    parts = _parts(head[2])
    if head[1] == "[[":
        counts[head[2]] = counts.get(head[2], -1) + 1
        return [*parts, counts[head[2]]]
    first = str(parts[0])
    return [first, counts[first], *parts[1:]] if first in counts else parts


def _parts(path: str) -> list[str | int]:
    return [part.strip().strip("\"'") for part in path.split(".")]
