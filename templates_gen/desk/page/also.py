"""The same length in the other unit, for the line that is touched."""

from __future__ import annotations

from layout.messages.catalogue import Catalogue
from layout.values.errors import FieldError
from layout.values.units import in_unit, mm_in, read_length, say_number
from templates_gen.desk.slip.forms import Line
from templates_gen.messages.roles.desk_page import DeskPage

_OTHER = {"mm": "in", "cm": "in", "dm": "in", "m": "yd", "in": "cm", "ft": "m", "yd": "m"}
_PLACES = 2


def also(line: Line, typed: str, words: Catalogue) -> str:
    """Such as "= 15.75 in"; "" where the line is no length, or says none."""
    if not line.units or not typed.strip():
        return ""
    try:
        length = read_length(typed)
    except FieldError:
        return ""
    unit = _OTHER[length.unit]
    number = say_number(length.mm / mm_in(unit), _PLACES)
    return words.say(DeskPage.ALSO, length=in_unit(number, unit, words))
