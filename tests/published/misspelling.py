"""How hands, eyes and ears go wrong in words. From general knowledge of typing and reading; no source, no boat's name."""

from __future__ import annotations

import numpy as np

_ROWS = ("qwertyuiop", "asdfghjkl", "zxcvbnm")
_SEEN = (("rn", "m"), ("m", "rn"), ("l", "i"), ("i", "l"), ("cl", "d"), ("h", "b"), ("e", "c"), ("v", "y"), ("u", "n"))
_HEARD = (
    ("c", "k"), ("k", "c"), ("ck", "k"), ("v", "w"), ("w", "v"), ("ph", "f"), ("f", "ph"), ("i", "y"), ("y", "i"),
    ("s", "z"), ("z", "s"), ("ie", "y"), ("e", "a"), ("o", "u"), ("t", "th"), ("ss", "s"), ("l", "ll"), ("n", "nn"),
)  # fmt: skip
_MARKED = {"a": "åäáàâæ", "o": "öøóôœ", "e": "éèêë", "u": "üúù", "i": "íïî", "n": "ñń", "c": "çć", "s": "š", "l": "ł"}
_BESIDE = {
    key: "".join(
        other
        for r, line in enumerate(_ROWS)
        for c, other in enumerate(line)
        if other != key and abs(r - row) <= 1 and abs(c - column) <= 1
    )
    for row, keys in enumerate(_ROWS)
    for column, key in enumerate(keys)
}


def misspelt(word: str, dice: np.random.Generator) -> str:
    """Return the word with one slip; the first letter is seldom the one. A word that allows none comes back as it is."""
    slip = (_dropped, _doubled, _swapped, _neighbour, _seen, _heard)[int(dice.integers(6))]
    first = 0 if dice.random() < 0.1 or len(word) == 1 else 1
    return slip(word, first, dice)


def marked(word: str, dice: np.random.Generator) -> str:
    """Return the word with a letter that bears a mark, as in another alphabet's Latin letters."""
    places = [i for i, letter in enumerate(word) if letter.lower() in _MARKED]
    if not places:
        return word
    at = places[int(dice.integers(len(places)))]
    choice = _MARKED[word[at].lower()]
    put = choice[int(dice.integers(len(choice)))]
    return word[:at] + (put.upper() if word[at].isupper() else put) + word[at + 1 :]


def _place(word: str, first: int, dice: np.random.Generator, short: int = 0) -> int:
    return int(dice.integers(first, max(len(word) - short, first + 1)))


def _dropped(word: str, first: int, dice: np.random.Generator) -> str:
    at = _place(word, first, dice)
    return word[:at] + word[at + 1 :]


def _doubled(word: str, first: int, dice: np.random.Generator) -> str:
    at = _place(word, first, dice)
    return word[: at + 1] + word[at:]


def _swapped(word: str, first: int, dice: np.random.Generator) -> str:
    at = _place(word, first, dice, short=1)
    return word[:at] + word[at + 1 : at + 2] + word[at : at + 1] + word[at + 2 :]


def _neighbour(word: str, first: int, dice: np.random.Generator) -> str:
    at = _place(word, first, dice)
    near = _BESIDE.get(word[at].lower(), "")
    return word[:at] + near[int(dice.integers(len(near)))] + word[at + 1 :] if near else word


def _seen(word: str, first: int, dice: np.random.Generator) -> str:
    return _replaced(word, first, dice, _SEEN)


def _heard(word: str, first: int, dice: np.random.Generator) -> str:
    return _replaced(word, first, dice, _HEARD)


def _replaced(word: str, first: int, dice: np.random.Generator, pairs: tuple[tuple[str, str], ...]) -> str:
    lower = word.lower()
    able = [(old, new) for old, new in pairs if old in lower[first:]]
    if not able:
        return _dropped(word, first, dice)
    old, new = able[int(dice.integers(len(able)))]
    at = lower.index(old, first)
    return word[:at] + new + word[at + len(old) :]
