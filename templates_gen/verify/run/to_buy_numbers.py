"""What one box takes, computed again: strand by strand from the kit, and from amounts, which their own tests prove."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from typing import Any, NamedTuple

from layout.messages.english import ENGLISH
from layout.messages.roles import Reason
from layout.plan import Plan

_WARP_SPARE, _KNOT_MM, _TAIL_MM, _CORD_SPARE = 0.10, 100, 25, 0.10
_WEFT_SPARE, _WEFT_SPARE_MANY, _MANY = 0.10, 0.20, 5


class Figures(NamedTuple):
    """Of one box in one unit: what it takes, likely, at least and at most, the spare on top of the figure by which it
    is bought, and that on top of the likely one.
    """

    likely: float
    low: float
    high: float
    spare: float
    likely_spare: float = 0.0


class Asked(NamedTuple):
    """One thing that a box takes, in every unit; by the likely figure where `sampled`, else by the highest."""

    kind: str
    name: str
    colour: str
    sampled: bool
    ball: float | None
    units: dict[str, Figures]

    def counted(self, unit: str) -> float:
        """By how much it is bought, with its spare."""
        figures = self.units[unit]
        return (figures.likely if self.sampled else figures.high) + figures.spare


def asked_of(plan: Plan) -> list[Asked]:
    """All that a box of this kit takes."""
    leashes = plan.amounts.leashes
    cord = leashes.number * leashes.each.value / 1000
    figures = Figures(cord, cord, cord, cord * _CORD_SPARE)
    things = [
        Asked("bought_in", item.name, "", False, None, {"piece": Figures(item.number, item.number, item.number, 0)})
        for item in plan.kit.box.items(plan.words)
    ]
    return [_warp(plan), *_weft(plan), Asked("leash_cord", "", "", False, None, {"m": figures}), *things]


def _warp(plan: Plan) -> Asked:
    """All the warp thread, and spare ends: half a wind and two knots each."""
    given, total, wind = plan.kit.amounts.warp, plan.amounts.warp_total_m, plan.amounts.warp_per_wind_mm
    spare = _WARP_SPARE if given.spare is None else float(given.spare)
    knot = float(_KNOT_MM if given.knot is None else given.knot.mm)
    ends = plan.kit.box.spare_ends

    def metres(whole: float, way: float) -> float:
        return whole / (1 + spare) + ends * (way / 2 + 2 * knot) / 1000

    each_spare = [each * spare / (1 + spare) for each in (total.high, total.value)]
    sums = (metres(total.value, wind.value), metres(total.low, wind.low), metres(total.high, wind.high))
    long = Figures(*sums, *each_spare)
    yarn = given.yarn()
    units = {"m": long}
    if yarn is not None:
        each = float(yarn.tex) / 1000
        units["g"] = Figures(*(figure * each for figure in long))
    return Asked("warp", plan.kit.warp, "", False, given.ball_g, units)


def spare_end_mm(plan: Plan) -> float:
    """The longest that a spare end may have to be."""
    knot = plan.kit.amounts.warp.knot
    return plan.amounts.warp_per_wind_mm.high / 2 + 2 * float(_KNOT_MM if knot is None else knot.mm)


def warp_m(plan: Plan) -> float:
    """The most warp that a box takes, its spare with it and no spare ends."""
    return plan.amounts.warp_total_m.high


def stick_mm(plan: Plan) -> float:
    """How long a shed stick is."""
    return plan.amounts.shed_stick_mm.value


def woven_mm(plan: Plan) -> tuple[float, float]:
    """How wide and how high the weaving is."""
    width, height = plan.amounts.woven_mm
    return width.value, height.value


class _Area(NamedTuple):
    """A colour's share of the weaving, and its tails in m."""

    name: str
    share: float
    tails: float


def _weft(plan: Plan) -> Iterator[Asked]:
    """Each yarn in each colour: its share of all that is laid, hems with it, and the tails of its lengths."""
    given, whole = plan.kit.amounts.weft, _laid(plan)
    areas = _areas(given)
    more = _WEFT_SPARE_MANY if len(areas) >= _MANY else _WEFT_SPARE
    more = more if given.spare is None else float(given.spare)
    sampled = any((given.beads, given.picks, given.sample))

    def figures(sums: Sequence[float]) -> Figures:
        likely, low, high = sums
        return Figures(likely, low, high, (likely if sampled else high) * more, likely * more)

    if not given.strands:
        yield from _undescribed(plan, areas, whole, sampled, figures)
        return
    labels = list(dict.fromkeys(map(_label, given.strands)))
    grams, metres = defaultdict[tuple[int, str], list[float]](_none), defaultdict[tuple[int, str], list[float]](_none)
    for area in areas:
        for strand, yarn in zip(given.strands, (each.yarn() for each in given.strands), strict=True):
            key = labels.index(_label(strand)), strand.colour or area.name
            for k, laid in enumerate(whole or ()):
                length = strand.number * (laid * area.share + area.tails)
                metres[key][k] += length
                grams[key][k] += length * float(yarn.tex if yarn else 0) / 1000
    for (place, colour), sums in grams.items():
        name = plan.kit.weft
        if len(labels) > 1:
            name = ENGLISH.say(Reason.STRAND, weft=name, strand=place + 1)
        units = {"g": figures(sums), "m": figures(metres[place, colour])}
        ball = next(each.ball_g for each in given.strands if _label(each) == labels[place])
        yield Asked("weft", name, colour, sampled, ball, units)


def _undescribed(
    plan: Plan,
    areas: Sequence[_Area],
    whole: tuple[float, ...] | None,
    sampled: bool,
    figures: Callable[[Sequence[float]], Figures],
) -> Iterator[Asked]:
    """A weft whose strands the kit does not describe: by its bundle, and by a sample that was weighed."""
    total, times = plan.amounts.weft_total_g, _times(plan)
    for area in areas:
        units = {}
        if total is not None and area.share:
            units["g"] = figures([each * area.share * times for each in (total.value, total.low, total.high)])
        if whole is not None:
            units["m"] = figures([each * area.share + area.tails for each in whole])
        if units:
            yield Asked("weft", plan.kit.weft, area.name, sampled, None, units)


def _none() -> list[float]:
    return [0.0, 0.0, 0.0]


def _times(plan: Plan) -> float:
    """How often what lies in the weaving is woven: once, and hems besides."""
    hem = plan.kit.amounts.hem
    return 1 + (2 * float(hem.mm) / plan.amounts.woven_mm[1].value if hem else 0)


def _laid(plan: Plan) -> tuple[float, ...] | None:
    """The weft in m without tails, hems with it: likely, least, most; None where it is not known."""
    whole, tails = plan.amounts.weft_total_m, plan.amounts.weft_tails_m
    if whole is None or tails is None:
        return None
    return tuple(max(each - tails.value, 0.0) * _times(plan) for each in (whole.value, whole.low, whole.high))


def _areas(given: Any) -> list[_Area]:
    tail = float(_TAIL_MM if given.tail is None else given.tail.mm) / 1000
    whole = sum(area.share for area in given.colours)
    named = [_Area(area.name, float(area.share / whole), 2 * area.lengths * tail) for area in given.colours]
    return named or [_Area("", 1.0, 0.0)]


def _label(strand: Any) -> Any:
    """What a yarn is, however often and in whatever colour it is laid."""
    return replace(strand, number=1, colour="")
