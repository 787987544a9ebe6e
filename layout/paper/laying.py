"""Where one part lies on a sheet: straight, or across the diagonal in one piece."""

from __future__ import annotations

from collections.abc import Iterator
from math import acos, asin, atan2, degrees, hypot, pi

from layout.drawing.boxes import placed
from layout.drawing.shapes import Placing
from layout.drawing.sheet import Part
from layout.paper.area import Area

_TRIES = 9
_PAST_EDGE = 2.0  # scissors on the long edge of a part reach so far past it, and must not leave the printable area
_SHARES = (0.0, 0.5, 1.0)


def straight(part: Part, area: Area) -> Placing | None:
    """The part lying along the sheet, else standing up it, as far up as it can; None if it does not fit."""
    return lying(part, area) or standing(part, area)


def lying(part: Part, area: Area) -> Placing | None:
    """The part along the sheet, as far up as it can; None if it does not fit."""
    return next((placing for placing in _lying(part, area) if area.holds(part.box, placing)), None)


def standing(part: Part, area: Area) -> Placing | None:
    """The part turned a quarter to the left, as far up as it can; None if it does not fit."""
    return next((placing for placing in _standing(part, area) if area.holds(part.box, placing)), None)


def _lying(part: Part, area: Area) -> Iterator[Placing]:
    """Centred, or against the left edge or something that is already there."""
    left, _, _, top = part.box
    centred = area.left + (area.width - part.length) / 2
    for high in (min(high, area.top - _PAST_EDGE) for high in _tops(area)):
        for low in (centred, *_lefts(area)):
            yield Placing(0, low - left, high - top)


def _standing(part: Part, area: Area) -> Iterator[Placing]:
    """Turned a quarter to the left."""
    _, _, right, top = part.box
    for low in (max(low, area.left + _PAST_EDGE) for low in _lefts(area)):
        for high in _tops(area):
            yield Placing(90, low + top, high - right)


def _lefts(area: Area) -> list[float]:
    return sorted({area.left, *(box[2] for box in area.taken)})


def _tops(area: Area) -> list[float]:
    return sorted({area.top, *(box[1] for box in area.taken)}, reverse=True)


def diagonal(part: Part, area: Area) -> Placing | None:
    """The part across the middle of the sheet, rising to the right; None if it does not fit.

    A rectangle of length L and height h turned by t fits a box w x H where L cos t + h sin t <= w and
    L sin t + h cos t <= H; with R = hypot(L, h) and a = atan2(h, L) that is R cos(t - a) <= w, R sin(t + a) <= H.
    """
    span, lean = hypot(part.length, part.height), atan2(part.height, part.length)
    low = lean + acos(min(1.0, area.width / span)) if span > area.width else 0.0
    high = asin(min(1.0, area.height / span)) - lean if span > area.height else pi / 2
    for k in range(_TRIES if low <= high else 0):
        off = (k + 1) // 2 * (-1) ** k / (_TRIES + 1)  # the middle first, then to either side
        turn = degrees(low + (high - low) * (0.5 + off))
        for share in _SHARES:
            placing = _moved(part, area, turn, share)
            if area.holds(part.box, placing):
                return placing
    return None


def _moved(part: Part, area: Area, turn: float, share: float) -> Placing:
    """In the middle of the area, moved by a `share` of what is free down and to the right, away from the words."""
    left, low, right, high = placed(part.box, Placing(turn))
    across, up = (area.width - right + left) / 2, (area.height - high + low) / 2
    return Placing(turn, area.left + across * (1 + share) - left, area.bottom + up * (1 - share) - low)
