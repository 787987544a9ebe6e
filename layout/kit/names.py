"""Names that people give: what can be printed right is kept, all else is refused and never printed as boxes."""

from __future__ import annotations

import unicodedata

from layout.drawing.metrics import FontMetrics
from layout.messages.catalogue import Message
from layout.messages.roles import Entry
from layout.values.errors import FieldError, ascii_safe, shown

LONGEST_NAME = 40
_SURELY_TOO_LONG = 10 * LONGEST_NAME  # not even worth normalising
_EXAMPLE = "Willow frame, small"


def read_name(value: object, metrics: FontMetrics) -> str:
    """`value` in composed form (NFC), trimmed; FieldError (no field yet) if it cannot be printed on one line."""
    if not isinstance(value, str) or len(value) > _SURELY_TOO_LONG:
        raise FieldError("", Entry.NAME, shown(value), _EXAMPLE, most=LONGEST_NAME)
    name = unicodedata.normalize("NFC", value).strip()
    for letter in name:
        _check(letter, name, metrics)
    if not name:
        raise FieldError("", Entry.NAME, shown(name), _EXAMPLE, most=LONGEST_NAME)
    if len(name) > LONGEST_NAME:
        raise FieldError("", Entry.NAME_LONG, shown(name), _EXAMPLE, most=LONGEST_NAME, count=len(name))
    return name


def _check(letter: str, name: str, metrics: FontMetrics) -> None:
    """FieldError if `letter` is invisible, written from right to left, a loose accent, or not in the font."""
    if not letter.isprintable():
        needed = Entry.NAME_SEEN
    elif unicodedata.bidirectional(letter) in ("R", "AL", "AN"):
        needed = Entry.NAME_LEFT_TO_RIGHT
    elif unicodedata.category(letter).startswith("M"):
        needed = Entry.NAME_ACCENTS
    elif letter not in metrics.advances:
        needed = Entry.NAME_FONT
    else:
        return
    point = f"U+{ord(letter):04X}"
    if not letter.isprintable() or unicodedata.combining(letter):
        raise FieldError("", needed, point, _EXAMPLE)
    seen = Message(Entry.SIGN_IN_NAME, {"sign": letter, "point": point, "name": ascii_safe(shown(name))})
    raise FieldError("", needed, seen, _EXAMPLE)
