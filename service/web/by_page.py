"""What refuses names the command that mends it; on a page it names the page that does the same."""

from __future__ import annotations

import re

PLACES = {
    "records": "Fleet",
    "records step": "Step on its page",
    "records outcome": "the fitter's form",
    "hulls": "Hull models",
    "hulls show": "its page",
    "hulls log": "Changes to hull models",
    "hulls undo": "Undo in Changes to hull models",
    "hulls unmerge": "take that back in Changes to hull models",
    "keys": "Keys",
    "users": "Users",
    "people": "People",
    "imports": "Imports",
    "jobs": "Jobs",
    "catalogue": "Catalogue",
}
"""Commands, or a group of them, and what the desk has for it; none for what it has not."""
_COMMAND = re.compile(r"`transom ([a-z-]{1,20})(?: ([a-z-]{1,20}))?[^`]{0,300}`")


def by_page(text: str) -> str:
    """Return a message with pages for commands.

    >>> by_page("there is no key 'k1'; `transom keys list` shows them")
    "there is no key 'k1'; Keys shows them"
    >>> by_page("nested too deep; see `transom schema boat-form`")
    'nested too deep; see `transom schema boat-form`'
    """
    return _COMMAND.sub(lambda found: PLACES.get(f"{found[1]} {found[2]}") or PLACES.get(found[1], found[0]), text)
