"""Names that people give: what can be printed right is kept, all else is refused and never printed as boxes."""

from __future__ import annotations

import unicodedata

from layout.drawing.metrics import FontMetrics
from layout.messages.catalogue import Message, Role
from layout.messages.roles import Entry
from layout.values.errors import FieldError, ascii_safe, shown

LONGEST_NAME = 40
_SURELY = 10  # times as long is not even worth normalising
_EXAMPLE = "Willow frame, small"


def read_name(value: object, metrics: FontMetrics) -> str:
    """`value` in composed form (NFC), trimmed; FieldError (no field yet) if it cannot be printed on one line."""
    return read_line(value, metrics, LONGEST_NAME, Entry.NAME, Entry.NAME_LONG)


def read_line(value: object, metrics: FontMetrics, most: int, needed: Role, shorter: Role) -> str:
    """The same of at most `most` characters; the roles are those of what is `needed` and of what must be `shorter`."""
    if not isinstance(value, str) or len(value) > _SURELY * most:
        raise FieldError("", needed, shown(value), _EXAMPLE, most=most)
    name = unicodedata.normalize("NFC", value).strip()
    for letter in name:
        _check(letter, name, metrics)
    if not name:
        raise FieldError("", needed, shown(name), _EXAMPLE, most=most)
    if len(name) > most:
        raise FieldError("", shorter, shown(name), _EXAMPLE, most=most, count=len(name))
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
