"""The outline of a PDF (ISO 32000-1, 12.3.3): one flat list of titles, each of which leads to a whole page."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any

from templates_gen.document import Entry, ReadError
from templates_gen.messages.language import message
from templates_gen.messages.roles.reading import Read
from templates_gen.readers.pdf_file import PdfFile
from templates_gen.readers.pdf_values import Reference

_ROOT = {"/Type", "/First", "/Last", "/Count"}
_ENTRY = {"/Title", "/Parent", "/Prev", "/Next", "/Dest"}
_MOST = 100  # entries; ours have six


def outline_of(
    file: PdfFile, catalog: Mapping[str, Any], pages: Sequence[Reference], text: Callable[[object], str]
) -> tuple[Entry, ...]:
    """The entries in order, nothing where there is no outline; `text` reads a string.

    ReadError unless each entry names its neighbours, and the last one the end: so there is one way to walk them.
    """
    root = catalog.get("/Outlines")
    if root is None:
        return ()
    head = file.dictionary(root, _ROOT, Read.OUTLINE)
    entries: list[Entry] = []
    before, at = None, head["/First"]
    while at is not None:
        if len(entries) == _MOST:
            raise ReadError(message(Read.OUTLINE_BROKEN))
        entry = file.dictionary(at, _ENTRY, Read.OUTLINE)
        if not isinstance(at, Reference) or entry["/Parent"] != root or entry.get("/Prev") != before:
            raise ReadError(message(Read.OUTLINE_BROKEN))
        entries.append(Entry(text(entry["/Title"]), _page_of(entry["/Dest"], pages)))
        before, at = at, entry.get("/Next")
    if head["/Type"] != "/Outlines" or head["/Last"] != before or head["/Count"] != len(entries):
        raise ReadError(message(Read.OUTLINE_BROKEN))
    return tuple(entries)


def _page_of(place: object, pages: Sequence[Reference]) -> int:
    """The number of the page that a destination shows whole."""
    if not isinstance(place, list) or len(place) != 2 or place[1] != "/Fit" or place[0] not in pages:
        raise ReadError(message(Read.OUTLINE_PLACE))
    return pages.index(place[0]) + 1
