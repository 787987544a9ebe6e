"""Questions about numbers that can be read but are hardly meant: what to check, and what to write instead.

Nothing is refused here. The limits are our own, wide of what is usual: 14 to 16 epi, 2 to 6 ends per cm, 4 epi on
school looms (G. Christie, Embroidery and Tapestry Weaving; common practice).
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from layout.kit.kit import Kit
from layout.messages.catalogue import Role
from layout.messages.english import ENGLISH
from layout.messages.roles import Question
from layout.sett.sett import WrapReading
from layout.values.units import Length, say_length, say_number, say_sett

_TWICE = (Fraction(8, 5), Fraction(13, 5))
"""So many times what the yarns leave room for, a count is taken for one of single threads."""
_CLOSEST = Fraction(16, 10)
"""Ends per mm: no usual warp is closer (40 epi)."""
_WIDEST_WINDOW = 500
_LARGEST_FRAME = 2000
_MOST_ASPECT = 5
_WIDEST_SIDE = 150
_WINDOW = (Question.WINDOW, Question.WINDOW_UNIT)
_FRAME = (Question.FRAME, Question.FRAME_UNIT)
_SIDE = (Question.SIDE, Question.SIDE_UNIT)


def questions(kit: Kit) -> tuple[str, ...]:
    """What should be asked about the numbers of `kit`, a sentence each; nothing at a usual one."""
    return (*_of_readings(kit), *_of_sett(kit), *_of_frame(kit))


def _of_readings(kit: Kit) -> Iterator[str]:
    room = _room_for(kit)
    for number, reading in enumerate(kit.sett.readings, 1):
        key = f"sett.readings[{number}]"
        pairs = reading.pairs // 2
        if room and pairs and _TWICE[0] <= (reading.pairs + Fraction(1, 2)) / reading.over.mm / room <= _TWICE[1]:
            yield ENGLISH.say(Question.TWICE, key=key, reading=reading.words, pairs=pairs)
        if reading.over.mm > _WIDEST_WINDOW:
            yield _shorter(f"{key}.{'measure' if reading.measured else 'window'}", reading.over, _WINDOW)


def _room_for(kit: Kit) -> Fraction | None:
    """The pairs in a mm that the hand wraps of warp and weft leave room for, side by side; None where not known.

    Ideal tapestry: the pitch is the thickness of a warp thread and a weft thread (American Tapestry Alliance).
    """
    warp, weft = kit.amounts.warp.wrap, kit.amounts.weft.wrap
    if not warp or not weft:
        return None
    return 1 / (warp.window.mm / warp.turns + weft.window.mm / weft.turns)


def _of_sett(kit: Kit) -> Iterator[str]:
    given, readings = kit.sett.given, kit.sett.readings
    if given and given.per_mm > _CLOSEST:
        yield ENGLISH.say(Question.GIVEN, sett=say_sett(given))
    elif readings and (close := max(readings, key=_low)).low > _CLOSEST:
        yield ENGLISH.say(Question.READINGS, reading=close.words, sett=say_number(close.low * 10))


def _low(reading: WrapReading) -> Fraction:
    return reading.low


def _of_frame(kit: Kit) -> Iterator[str]:
    frame = kit.frame
    wide, high = frame.outer_width, frame.outer_height
    for key, length, other in (("outer_width", wide, high), ("outer_height", high, wide)):
        if length.mm > _LARGEST_FRAME or length.mm > _MOST_ASPECT * other.mm:
            yield _shorter(f"frame.{key}", length, _FRAME)
    for key, length in (("side_width", frame.side_width), ("margin", frame.margin)):
        if length.mm > _WIDEST_SIDE:
            yield _shorter(f"frame.{key}", length, _SIDE)


def _shorter(key: str, length: Length, roles: tuple[Role, Role]) -> str:
    """The question whether another unit was meant: cm for m, mm for cm."""
    unit = {"m": "cm", "cm": "mm", "ft": "in", "yd": "in"}.get(length.unit)
    said = say_length(length)
    plain, asking = roles
    if not unit:
        return ENGLISH.say(plain, key=key, length=said)
    leaf, meant = key.rpartition(".")[2], f"{said.rpartition(' ')[0]} {unit}"
    return ENGLISH.say(asking, key=key, length=said, unit=unit, leaf=leaf, meant=meant)
