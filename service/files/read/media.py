"""What kind of file some bytes are, told by their content alone: a name and a header may say anything."""

from __future__ import annotations

from service.files.read.errors import Unreadable

LARGEST = 25_000_000
SAMPLE = 4096
_MAGIC = (
    (b"\x89PNG\r\n\x1a\n", 0, "image/png"),
    (b"\xff\xd8\xff", 0, "image/jpeg"),
    (b"GIF87a", 0, "image/gif"),
    (b"GIF89a", 0, "image/gif"),
    (b"II*\x00", 0, "image/tiff"),
    (b"MM\x00*", 0, "image/tiff"),
    (b"WEBP", 8, "image/webp"),
    (b"ftypheic", 4, "image/heic"),
    (b"ftypmif1", 4, "image/heic"),
    (b"%PDF-", 0, "application/pdf"),
    (b"AC10", 0, "image/vnd.dwg"),
)
_REFUSED = (
    (b"MZ", "a program"),
    (b"\x7fELF", "a program"),
    (b"#!", "a script"),
    (b"PK\x03\x04", "an archive or an office document; export it as PDF"),
    (b"\xd0\xcf\x11\xe0", "an old office document; export it as PDF"),
    (b"\x1f\x8b", "an archive"),
)
ENDINGS = {
    "image/png": "png", "image/jpeg": "jpg", "image/gif": "gif", "image/tiff": "tiff", "image/webp": "webp",
    "image/heic": "heic", "application/pdf": "pdf", "image/vnd.dwg": "dwg", "image/vnd.dxf": "dxf",
    "message/rfc822": "eml", "text/plain": "txt",
}  # fmt: skip
_MAIL = (
    b"received:",
    b"from:",
    b"return-path:",
    b"message-id:",
    b"delivered-to:",
    b"date:",
    b"subject:",
    b"mime-version:",
)


def media_type(data: bytes, name: str) -> str:
    """Return the media type of a photo, a drawing, a mail or a text. Unreadable for anything else, or what is too large.

    A drawing in SVG or a page in HTML can carry scripts: it is kept as plain text, and never shown as what it says.
    """
    if not data:
        raise Unreadable(f"{name}: it is empty; attach a photo, a drawing (PDF, DXF, DWG), a mail or a text")
    if len(data) > LARGEST:
        raise Unreadable(
            f"{name}: {len(data) / 1e6:.1f} MB, more than the {LARGEST / 1e6:.0f} MB taken; make it smaller"
        )
    for magic, at, kind in _MAGIC:
        if data[at : at + len(magic)] == magic:
            return kind
    for magic, what in _REFUSED:
        if data.startswith(magic):
            raise Unreadable(f"{name}: it is {what}; attach a photo, a drawing (PDF, DXF, DWG), a mail or a text")
    if b"\0" in data[:SAMPLE]:
        raise Unreadable(f"{name}: it is of no kind that is kept; attach a photo, a drawing, a mail or a text")
    head = data[:SAMPLE].lstrip().lower()
    if head.startswith(_MAIL):
        return "message/rfc822"
    words = head.split(maxsplit=3)[:2]
    return "image/vnd.dxf" if words == [b"0", b"section"] else "text/plain"
