"""What the desk says once on the next page."""

from __future__ import annotations

import re


def undo_in(text: str) -> str:
    """Return where the notice of a page takes back what was done."""
    found = re.search(r'<div class="notice">.*?action="([^"]+)"', text, re.DOTALL)
    assert found, "the page has no notice that can be taken back"
    return found[1].replace("&amp;", "&")
