"""What stands round the outlines of every DXF file of ours, line by line: the skeleton, and the few places left in it.

Programs act on header, tables, blocks and objects in more ways than a list of dangers can name. So these must be the
same lines as in our own files. What fills the places follows from the sheet's size, the operations and the number of
outlines.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache
from itertools import zip_longest

from layout.values.errors import shown
from templates_gen.data import text_of
from templates_gen.document import ReadError
from templates_gen.messages.language import message
from templates_gen.messages.roles.reading import Dxf

FIRST_HANDLE = 0x33
"""The handle of the first outline; the others count on, and four handles of the skeleton follow the last."""

_PLACE = re.compile("<([a-z ]+)>")
_BEHIND = ("first handle", "second handle", "third handle", "seed handle")


def check_frame(head: str, tail: str, count: int, values: Mapping[str, str]) -> None:
    """`ReadError` unless `head` and `tail` are what stands before and behind `count` outlines, with these values."""
    handles = {name: f"{FIRST_HANDLE + count + k:X}" for k, name in enumerate(_BEHIND)}
    filled = {**values, **handles}
    before, behind = (_PLACE.sub(lambda place: filled[place[1]], half) for half in _halves())
    if (head, tail) != (before, behind):
        found, wanted = next((a, b) for a, b in zip_longest(_lines(head, tail), _lines(before, behind)) if a != b)
        raise ReadError(message(Dxf.FRAME, found=shown(found), wanted=shown(wanted)))


def _lines(head: str, tail: str) -> list[str]:
    """The lines of both halves, to be compared one by one."""
    return [*head.split("\n"), *tail.split("\n")]


@cache
def _halves() -> tuple[str, str]:
    text = text_of("skeleton.dxf")
    head, _, tail = text.partition("<entities>\n")
    return head, tail
