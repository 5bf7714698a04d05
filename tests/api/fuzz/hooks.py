"""How a mail is written into a request."""

from __future__ import annotations

from typing import Any

import schemathesis


@schemathesis.serializer("message/rfc822")
def mail(_context: Any, value: Any) -> bytes:  # noqa: ANN401 - schemathesis's own
    """Return the text that was generated, as the body of a mail; what is no text arrives as none."""
    if not isinstance(value, str):
        return b"\0" * 9
    return b"From: a@example.com\r\nTo: b@example.org\r\n\r\n" + value.encode("utf-8", "replace")
