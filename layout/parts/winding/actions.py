"""The things to do when a frame is wound, one after the other, for every way of warping."""

from __future__ import annotations

from collections.abc import Iterator
from enum import Enum, auto
from fractions import Fraction
from typing import NamedTuple

from layout.messages.roles import WindStep
from layout.parts.winding.face import Face
from layout.values.units import Length, say_length
from layout.yardage.warp_thread import KNOT


class Place(Enum):
    """Where in the picture an action is done."""

    TIE_ON = auto()
    FIRST = auto()
    FAR_TURN = auto()
    NEAR_TURN = auto()
    GAP = auto()
    LAST = auto()
    PULL = auto()
    TIE_OFF = auto()


class Action(NamedTuple):
    """One thing to do: what is said, and where its number stands in the picture."""

    words: str
    place: Place


class _Way(NamedTuple):
    """How the thread goes to the far end, how it turns there, and how at the near end."""

    there: WindStep
    back: WindStep
    on: WindStep


_OPEN = {
    "face": _Way(WindStep.TO_FAR_ON_FACE, WindStep.BACK_BEHIND, WindStep.ON_ROUND_BAR),
    "back": _Way(WindStep.TO_FAR_BEHIND, WindStep.BACK_ON_FACE, WindStep.ON_ROUND_BAR),
}
_CROSSED = {
    "face": _Way(WindStep.TO_FAR_CROSSING_BACK, WindStep.BACK_CROSSING_BACK, WindStep.ON_ROUND_BAR),
    "back": _Way(WindStep.TO_FAR_CROSSING_FACE, WindStep.BACK_CROSSING_FACE, WindStep.ON_ROUND_BAR),
}
_ALONE = {
    "rod": _Way(WindStep.FIRST_FROM_ROD, WindStep.BACK_TO_ROD, WindStep.ON_FROM_ROD),
    "notched": _Way(WindStep.TO_FAR_ON_FACE, WindStep.BACK_BY_TOOTH, WindStep.ON_BY_TOOTH),
    "pegged": _Way(WindStep.TO_FAR_ON_FACE, WindStep.BACK_BY_PEG, WindStep.ON_BY_PEG),
    "nailed": _Way(WindStep.TO_FAR_ON_FACE, WindStep.BACK_BY_NAIL, WindStep.ON_BY_NAIL),
}
_PAST_TWO = _Way(WindStep.TO_FAR_ON_FACE, WindStep.BACK_BY_TEETH, WindStep.ON_BY_TEETH)
_EVERY_SECOND = Fraction(1, 2)


def actions(face: Face) -> tuple[Action, ...]:
    """What is to be done, in order: four things at least, eight at most."""
    return tuple(_actions(face))


def _actions(face: Face) -> Iterator[Action]:
    plan, number = face.plan, face.kind.number
    say, warp, last = plan.words.say, plan.warp, plan.warp.ends - 1
    way, on_rod = _way(face), warp.kind == "rod"
    values = {
        "mark": number(warp, 0, "near"),
        "near": number(warp, 1, "near"),
        "next": number(warp, 2, "near"),
        "far": number(warp, 2, "far"),
    }
    yield Action(say(WindStep.TIE_ON_ROD) if on_rod else say(WindStep.TIE_ON, mark=values["mark"]), Place.TIE_ON)
    yield Action(say(way.there, mark=number(warp, 0, "far")), Place.FIRST)
    turned = {"mark": number(warp, 1, "far")} if way.back in _TO_A_MARK else {}
    yield Action(say(way.back, **turned), Place.FAR_TURN)
    if last > 1 or (on_rod and last):
        asked = {"mark": 2} if on_rod else {name: values[name] for name in _ASKED.get(way.on, ("near", "far"))}
        yield Action(say(way.on, **asked), Place.NEAR_TURN)
    ends_far = last % 2 == 0
    if last > (1 if on_rod else 3):
        yield Action(_to_the_last(face, on_rod=on_rod, ends_far=ends_far), Place.GAP)
    if on_rod:
        yield Action(say(WindStep.CLIP_ROD), Place.LAST)
    elif ends_far:
        yield Action(say(WindStep.CLIP_FAR, mark=number(warp, last, "far")), Place.LAST)
    else:
        yield Action(say(WindStep.CLIP_NEAR, mark=number(warp, last, "near")), Place.LAST)
    yield Action(say(WindStep.PULL_WINDS if warp.winds else WindStep.PULL_ENDS), Place.PULL)
    yield Action(_tie_off(face, on_rod=on_rod), Place.TIE_OFF)


_TO_A_MARK = (WindStep.BACK_BY_TOOTH, WindStep.BACK_BY_TEETH)
_ASKED = {WindStep.ON_BY_TOOTH: ("near", "next"), WindStep.ON_BY_TEETH: ("near", "next")}


def _way(face: Face) -> _Way:
    warp, weaving = face.plan.warp, face.plan.kit.weaving
    if warp.kind == "wound":
        return (_CROSSED if warp.winding == "figure eight" else _OPEN)[weaving.first_pass]
    if warp.sett.to_a_notch == _EVERY_SECOND:
        return _PAST_TWO
    return _ALONE.get(warp.kind, _ALONE["pegged"])


def _to_the_last(face: Face, *, on_rod: bool, ends_far: bool) -> str:
    """The last mark before the one at which the winding ends."""
    say, number, warp = face.plan.words.say, face.kind.number, face.plan.warp
    last = warp.ends - 1
    if on_rod:
        return say(WindStep.LAST_ROD_MARK, mark=number(warp, last, "near"))
    if ends_far:
        return say(WindStep.LAST_NEAR_MARK, mark=number(warp, last, "near"))
    return say(WindStep.LAST_FAR_MARK, mark=number(warp, last, "far"))


def _tie_off(face: Face, *, on_rod: bool) -> str:
    """How it is tied off, with the thread that the plan counts for a knot."""
    say, stated = face.plan.words.say, face.plan.kit.amounts.warp.knot
    if stated is not None and stated.mm < _SHORT:
        return say(WindStep.TIE_OFF)
    usual = Length(Fraction(508, 5), "in") if face.plan.warp.sett.unit.imperial else Length(Fraction(KNOT.value), "cm")
    tail = stated or usual
    return say(WindStep.TIE_OFF_CUT_ROD if on_rod else WindStep.TIE_OFF_CUT, tail=say_length(tail))


_SHORT = 30  # mm: no thread is cut so short and then tied
