"""What the sheet of a template says: what to do with it, how it lies and is read, what its lines mean."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, Text, cross, line
from layout.drawing.sheet import Block, Entry, Part
from layout.drawing.signs import dots, scissors
from layout.drawing.typeset import SMALL
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.messages.catalogue import Role
from layout.messages.roles import Sheet, SheetName, Template
from layout.parts.template.kinds import template_kind
from layout.parts.template.levels import Opening
from layout.plan import Plan
from layout.values.units import Length, say_length

NAMES: dict[str, tuple[SheetName, SheetName, SheetName, Role]] = {
    "marking": (
        SheetName.NAME_STRIPS,
        SheetName.NAME_STRIP_NEAR,
        SheetName.NAME_STRIP_FAR,
        Template.PURPOSE_HELD,
    ),
    "notching": (
        SheetName.NAME_NOTCHES,
        SheetName.NAME_NOTCHES_NEAR,
        SheetName.NAME_NOTCHES_FAR,
        SheetName.PURPOSE_NOTCHES,
    ),
    "drilling": (
        SheetName.NAME_PEGS,
        SheetName.NAME_PEGS_NEAR,
        SheetName.NAME_PEGS_FAR,
        SheetName.PURPOSE_PEGS,
    ),
    "nailing": (
        SheetName.NAME_NAILS,
        SheetName.NAME_NAILS_NEAR,
        SheetName.NAME_NAILS_FAR,
        SheetName.PURPOSE_NAILS,
    ),
}
"""By what is done: the name of both templates, of the near one and of the far one, and what they are for."""

_SMALL = {True: Length(Fraction(127, 20), "in"), False: Length(Fraction(10), "cm")}
_SAMPLE, _LONG, _ARM = 1.5, 5.0, 0.5


def explained(part: Part, plan: Plan, metrics: FontMetrics, *, low: bool) -> Part:
    """The template `part` with the words and pictures of its sheet."""
    say, ends, kind = plan.words.say, plan.kit.frame.ends, template_kind(plan)
    _, near, far, purpose = NAMES[kind.work]
    return replace(
        part,
        title=say(near if part.name == "strip-near" else far),
        purpose=say(purpose),
        steps=(say(kind.cut), *kind.steps(ends, plan, low=low)),
        blocks=(
            *kind.pictures(ends, plan, metrics, low=low),
            Block(say(kind.heading), entries=tuple(_reading(plan, metrics))),
            Block(entries=tuple(_legend(plan, low=low)), in_a_row=True),
        ),
        cautions=(*map(say, kind.cautions), say(Sheet.KNIFE)),
        narrow=True,
    )


def _reading(plan: Plan, metrics: FontMetrics) -> Iterator[Entry]:
    """What every sign of the template means."""
    say, warp, kind = plan.words.say, plan.warp, template_kind(plan)
    opening, number, units = kind.reading
    first = kind.first("near")
    counts = {"near": len(warp.near) - 1, "far": len(warp.far)} if first == 0 else {}
    yield Entry(_opening(plan, used=True), say(opening))
    if any(not each.used for each in kind.openings(plan.kit.frame.ends, _two(plan), plan, low=False)):
        yield Entry(_opening(plan, used=False), say(Template.AN_EMPTY_NOTCH))
    yield Entry((_number("15", metrics),), say(number, **counts))
    small = say_length(_SMALL[warp.sett.unit.imperial], plan.words)
    yield Entry(_dots(), say(units, small=small, unit=say_length(warp.sett.unit, plan.words)))
    yield Entry((line(Point(-_LONG, 0), Point(_LONG, 0), Pen.CENTRE),), say(Template.A_CENTRE))
    yield Entry(cross(Point(0, 0), _ARM, Pen.HELP), say(Template.CROSSES))


def _two(plan: Plan) -> list[tuple[int, float]]:
    return list(enumerate(map(float, plan.warp.near[:2]), 1))


def _opening(plan: Plan, *, used: bool) -> tuple[Shape, ...]:
    """A notch that lies across, or a hole."""
    if isinstance(plan.kit.frame.ends, NotchedEnd):
        return tuple(Opening(0, 0.0, 0.0, 2 * _LONG, _SAMPLE, used=used).drawn(1))
    hole = Opening(0, 0.0, 0.0, 2 * _SAMPLE, 2 * _SAMPLE, is_round=True)
    across = _SAMPLE + 1.1
    return (*hole.drawn(1)[:2], *cross(Point(0, 0), across, Pen.HELP))


def _number(said: str, metrics: FontMetrics) -> Text:
    wide = metrics.width(said, SMALL, Pen.STRONG)
    return Text(Point(-wide / 2, -metrics.cap * SMALL / 2), SMALL, said, pen=Pen.STRONG)


def _dots() -> tuple[Shape, ...]:
    full = dots([Point(-_LONG, 0), Point(_LONG, 0)], full=True)
    return (*full, *dots([Point(x, 0) for x in (-2.5, 0, 2.5)], full=False))


def _legend(plan: Plan, *, low: bool) -> Iterator[Entry]:
    """What is cut, folded, and drawn behind."""
    say, notched = plan.words.say, isinstance(plan.kit.frame.ends, NotchedEnd)
    yield Entry((line(Point(-6, 0), Point(6, 0), Pen.CUT), *scissors(Point(-3.7, 0))), say(Template.CUT))
    if template_kind(plan).work == "notching" and not low:
        yield Entry((line(Point(-_LONG, 0), Point(_LONG, 0), Pen.FOLD),), say(Template.FOLD))
    if notched:
        yield Entry((line(Point(-_LONG, 0), Point(_LONG, 0), Pen.THREAD_BACK),), say(Template.BEHIND))
