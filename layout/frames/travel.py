"""A frame whose height can be adjusted: it is wound at its lowest, and tightened with rods or wedges.

The travel takes up the stretch of the warp, H T / EA, what knots and loops give way, and what the warp loses to its own
take-up as it is woven.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from layout.frames.frame import Frame
from layout.frames.tension import WarpThread
from layout.messages.english import ENGLISH
from layout.messages.roles import Travel
from layout.values.numerals import say_number
from layout.values.quantity import Quantity, assumed, combine
from layout.values.units import say_length

BEDDING = (2.0, 3.5, 5.0)
"""What knots and loops give way, in mm (from memory)."""
TAKEN_UP = (0.01, 0.015, 0.02)
"""The share of its length that the warp loses as it goes over and under the weft (from memory)."""
OFFERED, LEAST = Fraction(3, 100), Fraction(10)
"""A travel of this share of the height, and of so many mm at least, is offered (our choice)."""


def travel_wanted(high_mm: float, pull: Quantity, thread: WarpThread | None) -> Quantity:
    """How much higher in mm a frame must become so that each thread of a slack warp pulls with `pull` N.

    Without the weight of a thread its stretch is left out.
    """
    said = ENGLISH.say(Travel.NEEDS)
    low, likely, high = BEDDING
    bedding = assumed(likely, ENGLISH.say(Travel.BEDDING), low, high)
    low, likely, high = (share * high_mm for share in TAKEN_UP)
    taken = assumed(likely, ENGLISH.say(Travel.TAKEN_UP), low, high)
    if thread is None:
        return combine(lambda gives, taken_up: gives + taken_up, said, bedding, taken)
    return combine(
        lambda gives, taken_up, newtons, stiff: gives + taken_up + high_mm * newtons / stiff,
        said,
        bedding,
        taken,
        pull,
        thread.stiffness,
        falling=(3,),
    )


def travel_offered(high_mm: Fraction) -> Fraction:
    """A travel in mm that usually does."""
    return max(OFFERED * high_mm, LEAST)


def travel_notes(frame: Frame, pull: Quantity, thread: WarpThread | None) -> tuple[str, ...]:
    """Which lengths go by which height, and whether the travel might be too short; nothing where there is none."""
    if frame.travel is None:
        return ()
    heights = {"low": say_length(frame.outer_height), "tight": say_length(frame.tightened.outer_height)}
    return (ENGLISH.say(Travel.TWO_HEIGHTS, **heights), *_may_be_short(frame, pull, thread))


def _may_be_short(frame: Frame, pull: Quantity, thread: WarpThread | None) -> Iterator[str]:
    wanted, travel = _wanted(frame, pull, thread), _given(frame)
    if wanted.value <= travel < wanted.high:
        yield ENGLISH.say(Travel.MAY_BE_SHORT, **_values(frame, wanted))


def travel_warnings(frame: Frame, pull: Quantity, thread: WarpThread | None) -> tuple[str, ...]:
    """One sentence where the travel is likely too short to tighten the warp; else nothing."""
    if frame.travel is None:
        return ()
    wanted = _wanted(frame, pull, thread)
    return () if wanted.value <= _given(frame) else (ENGLISH.say(Travel.SHORT, **_values(frame, wanted)),)


def _wanted(frame: Frame, pull: Quantity, thread: WarpThread | None) -> Quantity:
    return travel_wanted(float(frame.outer_height.mm), pull, thread)


def _given(frame: Frame) -> float:
    return float(frame.travel.mm) if frame.travel else 0.0


def _values(frame: Frame, wanted: Quantity) -> dict[str, object]:
    need, most = (say_number(mm, 0) for mm in (wanted.value, wanted.high))
    return {"travel": say_length(frame.travel) if frame.travel else "", "need": need, "most": most}
