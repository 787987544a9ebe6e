"""What the sheet of a marking strip says: what to do with it, how it is read, what its lines mean."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, Text, cross, filled, line, rectangle
from layout.drawing.sheet import Block, Entry, Part
from layout.drawing.signs import scissors, small_arrow, triangle
from layout.drawing.typeset import SMALL
from layout.frames.kinds.flat_ends import FlatEnd
from layout.messages.roles import Marking, SheetName
from layout.parts.marking.section import section
from layout.plan import Plan
from layout.values.units import Length, say_length

_NAMES = {"strip-near": SheetName.NAME_STRIP_NEAR, "strip-far": SheetName.NAME_STRIP_FAR}
_HIGH, _ARM = 1.7, 0.5  # half the height of a sample, and the arm of a register cross
_QUARTER, _CENTIMETRE = Length(Fraction(127, 20), "in"), Length(Fraction(10), "cm")


def explained(part: Part, plan: Plan, metrics: FontMetrics, *, low: bool, arrows: bool) -> Part:
    """The strip `part` with the words of its sheet; `arrows` where it shows any."""
    say = plan.words.say
    return replace(
        part,
        title=say(_NAMES[part.name]),
        purpose=say(SheetName.PURPOSE_STRIPS_ENDS if plan.warp.kind == "rod" else SheetName.PURPOSE_STRIPS),
        steps=tuple(map(say, _steps(plan, low=low))),
        blocks=(
            section(plan, metrics, low=low),
            _reading(plan, metrics, low=low, arrows=arrows),
            _legend(plan, low=low),
        ),
        cautions=(say(Marking.CAUTION_KNIFE), say(Marking.CAUTION_CHILDREN)),
        narrow=True,
    )


def _steps(plan: Plan, *, low: bool) -> Iterator[Marking]:
    board = isinstance(plan.kit.frame.ends, FlatEnd)
    yield Marking.STEP_CUT
    if low:
        yield Marking.STEP_ALONG_EDGE if board else Marking.STEP_ALONG_BAR
    else:
        yield Marking.STEP_WRAP_EDGE if board else Marking.STEP_WRAP_BAR
    yield Marking.STEP_SLIDE
    yield Marking.STEP_GLUE_ALONG if low else Marking.STEP_GLUE


def _reading(plan: Plan, metrics: FontMetrics, *, low: bool, arrows: bool) -> Block:
    """What every mark and sign of the strip means."""
    say, singly = plan.words.say, plan.warp.kind == "rod"
    entries = [
        Entry(_marks(), say(Marking.A_MARK_END if singly else Marking.A_MARK)),
        Entry(_number(metrics), say(Marking.A_NUMBER_END if singly else Marking.A_NUMBER)),
        Entry((triangle(Point(0, 1.05), Point(0, 1)),), say(Marking.A_CENTRE)),
    ]
    if arrows:
        entries.append(Entry(tuple(small_arrow(Point(0, 1.85), Point(0, 1))), say(Marking.AN_ARROW)))
    if not low:
        small = _QUARTER if plan.warp.sett.unit.imperial else _CENTIMETRE
        units = {"small": say_length(small, plan.words), "unit": say_length(plan.warp.sett.unit, plan.words)}
        entries.append(Entry(_scale(), say(Marking.A_SCALE, **units)))
    entries.append(Entry(cross(Point(0, 0), _ARM, Pen.HELP), say(Marking.CROSSES)))
    return Block(say(Marking.READING), entries=tuple(entries))


def _legend(plan: Plan, *, low: bool) -> Block:
    """What is cut, folded and glued."""
    say = plan.words.say
    cut: list[Shape] = [line(Point(-6, 0), Point(6, 0), Pen.CUT), *scissors(Point(-3.7, 0))]
    entries = [Entry(tuple(cut), say(Marking.CUT))]
    if not low:
        entries.append(Entry((line(Point(-5, 0), Point(5, 0), Pen.FOLD),), say(Marking.FOLDED)))
        grey = filled(rectangle(-5, -1.5, 5, 1.5, Pen.TINT).points(), Pen.TINT)
        entries.append(Entry((grey,), say(Marking.GLUED)))
    return Block(entries=tuple(entries), in_a_row=True)


def _upright(x: float, low: float, high: float, pen: Pen) -> Shape:
    return line(Point(x, low), Point(x, high), pen)


def _marks() -> tuple[Shape, ...]:
    light = (_upright(x, -_HIGH, _HIGH, Pen.MARK) for x in (-3, 3))
    return (*light, _upright(0, -_HIGH, _HIGH, Pen.TEN))


def _number(metrics: FontMetrics) -> tuple[Shape, ...]:
    at = Point(-0.8, -metrics.cap * SMALL / 2)
    return _upright(-1.8, -_HIGH, _HIGH, Pen.TEN), Text(at, SMALL, "15", pen=Pen.STRONG)


def _scale() -> tuple[Shape, ...]:
    return tuple(_upright(x, -1.1, 1.1 if abs(x) == 5 else 0.0, Pen.UNIT) for x in (-5, -2.5, 0, 2.5, 5))
