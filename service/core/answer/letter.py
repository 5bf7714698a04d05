"""A letter as blocks: headings, paragraphs and lists, made neither of text nor of marks. Writers lay it out."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass


@dataclass(frozen=True)
class Block:
    """One part of a letter: a heading, paragraphs, then a list with the sentence before it."""

    heading: str = ""
    paragraphs: tuple[str, ...] = ()
    lists: tuple[tuple[str, tuple[str, ...]], ...] = ()
    """Each an introduction, which may be empty, and its items."""
    numbered: bool = False


@dataclass(frozen=True)
class Draft:
    """A letter to be read through and sent: `language` as a BCP 47 tag."""

    language: str
    subject: str
    greeting: str
    blocks: tuple[Block, ...]
    closing: tuple[str, ...]


def as_text(letter: Draft) -> str:
    """Return the letter as plain text, a paragraph a line: whoever reads it wraps it."""
    lines = [letter.greeting, ""]
    for block in letter.blocks:
        lines += [*_block(block), ""]
    return "\n".join([*lines, *letter.closing])


def _block(block: Block) -> Iterator[str]:
    if block.heading:
        yield from (block.heading, "")
    yield from block.paragraphs
    for intro, items in block.lists:
        if intro:
            yield intro
        yield from _items(items, numbered=block.numbered)


def _items(items: Sequence[str], *, numbered: bool) -> Iterator[str]:
    for place, item in enumerate(items, start=1):
        yield f"  {place}. {item}" if numbered else f"  - {item}"
