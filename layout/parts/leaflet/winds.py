"""The third to the fifth step of a leaflet: tied on, wound, evened and tied off."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from layout.messages.roles import Leaflet
from layout.parts.winding.kinds.pictures import picture_of
from layout.plan import Plan
from layout.values.units import say_length
from layout.warps.warp import End

_OPEN: Mapping[str, Leaflet] = {"face": Leaflet.WIND_FACE, "back": Leaflet.WIND_BACK}
_CROSSED: Mapping[str, Leaflet] = {"face": Leaflet.WIND_CROSS_BACK, "back": Leaflet.WIND_CROSS_FACE}
_ALONE: Mapping[str, Leaflet] = {
    "rod": Leaflet.WIND_ROD,
    "notched": Leaflet.WIND_TOOTH,
    "pegged": Leaflet.WIND_PEG,
    "nailed": Leaflet.WIND_NAIL,
}
_EVERY_SECOND = Fraction(1, 2)
_EVENED: Mapping[tuple[bool, End], Leaflet] = {
    (True, "near"): Leaflet.EVEN_WINDS_NEAR,
    (True, "far"): Leaflet.EVEN_WINDS_FAR,
    (False, "near"): Leaflet.EVEN_ENDS_NEAR,
    (False, "far"): Leaflet.EVEN_ENDS_FAR,
}


def tied_on(plan: Plan) -> str:
    """Where the thread is tied on."""
    left = plan.kit.weaving.start == "left"
    if plan.warp.kind == "rod":
        return plan.words.say(Leaflet.TIE_ROD_LEFT if left else Leaflet.TIE_ROD_RIGHT)
    return plan.words.say(Leaflet.TIE_LEFT if left else Leaflet.TIE_RIGHT, mark=mark_of(plan, 0, "near"))


def wound(plan: Plan) -> tuple[str, str]:
    """What the winding is called, and how it goes."""
    say, warp = plan.words.say, plan.warp
    if warp.kind == "wound":
        ways = _CROSSED if warp.winding == "figure eight" else _OPEN
        return say(Leaflet.WIND), say(ways[plan.kit.weaving.first_pass], count=plan.counted)
    way = Leaflet.WIND_TEETH if warp.sett.to_a_notch == _EVERY_SECOND else _ALONE.get(warp.kind, Leaflet.WIND_PEG)
    return say(Leaflet.THERE_AND_BACK), say(way, count=plan.counted)


def evened(plan: Plan) -> str:
    """From where the slack is pulled along, where it is tied off, and how far the frame is tightened then."""
    say, warp = plan.words.say, plan.warp
    if warp.kind == "rod":
        said = say(Leaflet.EVEN_ROD)
    else:
        end = tied_off(plan)
        said = say(_EVENED[bool(warp.winds), end], mark=mark_of(plan, warp.ends - 1, end))
    if plan.kit.frame.travel is None:
        return said
    tight = say_length(plan.kit.frame.tightened.outer_height, plan.words)
    return plan.words.paragraph([said, say(Leaflet.TIGHTEN, tight=tight)])


def tied_off(plan: Plan) -> End:
    """The frame end to which the last pass leads."""
    return "far" if plan.warp.ends % 2 and plan.warp.kind != "rod" else "near"


def mark_of(plan: Plan, k: int, end: End) -> int:
    """The number of the mark to which a pass (0 the first) comes."""
    return picture_of(plan.kit.frame.ends, plan.warp.winding).number(plan.warp, k, end)
