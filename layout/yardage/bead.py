"""How high a bead stands: the weft that shows between two ends, two picks of it.

Beads stand on one another, so one is no higher than the weft lies soft, and as low as the weft is pressed, or a
little flatter. And every pick must pass the gap between two ends: h / 2 x gap is at least its area, so
h >= pi / 2 x p^2 / gap. (With a weft as thick as the gap this is 1.57 times its thickness: the weft "as thick as the
space between the ends" of K. Todd-Hooker's article for the American Tapestry Alliance.)
"""

from __future__ import annotations

import math
from fractions import Fraction
from typing import NamedTuple

from layout.messages.english import ENGLISH
from layout.messages.roles import Assumed, Computed
from layout.values.limits import plain
from layout.values.quantity import Quantity, assumed, computed, measured
from layout.yarns.thickness import Thickness

FLATTEST = 0.8
"""The least height of a bead as a share of the pressed weft: a round flattened to 1 : 1.56. From memory."""
_MEDIUM = Fraction(1, 2)
_BEAT_OFF = 0.25
"""A beat that is stated is known to a quarter of the way from soft to hard. Our choice."""
WARP_SHARE = (0.10, 0.40, 0.75)
"""How thick an end may be, as a share of the pitch, where nothing is known of it: least, likely, most. Our choice."""
UNBEATEN = assumed(float(_MEDIUM), ENGLISH.say(Assumed.BEAT))


class Weave(NamedTuple):
    """What lies in the cloth, in mm: the weft, the `warp` as it is in use, and the `pitch` as it is drawn in."""

    weft: Thickness
    warp: Quantity
    pitch: Quantity


def warp_guessed(pitch: Quantity) -> Quantity:
    """How thick an end is of which nothing is known."""
    low, likely, high = WARP_SHARE
    said = ENGLISH.say(Assumed.WARP_SHARE, low=round(100 * low), high=round(100 * high))
    return assumed(likely * pitch.value, said, low * pitch.low, high * pitch.high)


def passing(pressed: float, warp: float, pitch: float) -> float:
    """The least height in mm of a bead whose picks pass the gap; no more than two picks lying over round ends.

    That most is our choice, for ends so close that hardly a gap is left.
    """
    gap, most = pitch - warp, 2 * (pressed + warp)
    return most if gap <= 0 else min(math.pi / 2 * pressed**2 / gap, most)


def bead_height(weave: Weave, beat: Fraction | None) -> Quantity:
    """The height of a bead in mm, before any was counted. `beat` is 0 for soft to 1 for hard, None where not stated."""
    weft, warp, pitch = weave
    soft_share = float(_MEDIUM if beat is None else 1 - beat)
    lowest = FLATTEST * weft.pressed.low
    highest = weft.soft.high
    if beat is not None:
        lowest = _between(weft.pressed.low, weft.soft.low, max(soft_share - _BEAT_OFF, 0))
        highest = _between(weft.pressed.high, weft.soft.high, min(soft_share + _BEAT_OFF, 1))
    likely = _between(weft.pressed.value, weft.soft.value, soft_share)
    value = max(likely, passing(weft.pressed.value, warp.value, pitch.value))
    low = max(lowest, passing(weft.pressed.low, warp.low, pitch.high))
    high = max(highest, passing(weft.pressed.high, warp.high, pitch.low))
    said = ENGLISH.say(Computed.BEAD, pressed=_mm(weft.pressed.value), soft=_mm(weft.soft.value))
    known = (weft.pressed, weft.soft, warp, pitch)
    sources = known if beat is not None else (*known, UNBEATEN)
    return computed(value, said, *sources, spread=(low, high))


def _between(pressed: float, soft: float, share: float) -> float:
    """So far on the way from pressed to soft, in steps of equal ratio."""
    return float(pressed ** (1 - share) * soft**share)


def beads_counted(beads: int, over_mm: float) -> Quantity:
    """The height of a bead in mm, from beads counted up one end to half a bead."""
    return _counted(beads, over_mm, ENGLISH.say(Computed.BEADS_COUNTED, beads=beads, over=plain(over_mm)))


def picks_counted(picks: int, over_mm: float) -> Quantity:
    """The height of a bead in mm, from picks counted to half a pick; a bead is two picks."""
    return _counted(picks, 2 * over_mm, ENGLISH.say(Computed.PICKS_COUNTED, picks=picks, over=plain(over_mm)))


def _counted(number: int, over_mm: float, said: str) -> Quantity:
    return measured(over_mm / number, said, over_mm / (number + 0.5), over_mm / (number - 0.5))


def _mm(value: float) -> str:
    return plain(round(value, 2))
