"""The frame check sheet: what to measure on the frame before it is warped, and what the numbers must be.

All is found from the frame itself. A far end that stands s aside makes the diagonals d1, d2 of a frame W wide differ by
about 2 W s / d (from d1^2 - d2^2 = 4 W s), which gives the difference that half a pitch allows.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, Shape, Text, cross, line
from layout.drawing.sheet import Part
from layout.drawing.typeset import LEAD, LEADING, SMALL, paragraph, paragraph_height, wrap
from layout.messages.english import ENGLISH
from layout.messages.roles import Check as Said
from layout.parts.frame_figure import WIDE, frame_figure
from layout.plan import Plan
from layout.values.forces import NEWTONS, say_force
from layout.values.numerals import say_root
from layout.values.units import mm_in, say_number

_COLUMN, _APART, _INDENT, _BLANK, _AIR, _LESS = 86.8, 10.0, 5.0, 6.4, 2.6, 0.8
_CORNER, _ARM = 0.8, 0.5


class Check(NamedTuple):
    """One thing to measure: its `title`, what must come out, and the names of the blanks to write on."""

    title: str
    sentence: str
    blanks: tuple[str, ...]


def frame_check(plan: Plan, metrics: FontMetrics, *, low: bool = False) -> Part:
    """The check sheet of a plan's frame; `low` gives it without the picture and with less white."""
    column = _Column(metrics, low)
    shapes, foot = column.set(checks(plan))
    left, beside = -_CORNER, -_CORNER
    if not low:
        left, beside = -WIDE - _APART, -_APART / 2
        picture, floor = frame_figure(plan.kit.frame, metrics)
        shapes += Placing(0, left, 0).shapes(picture)
        foot = min(foot, floor)
    box = (left - _CORNER, foot - _CORNER, _COLUMN + _CORNER, _CORNER)
    datum = Point(beside, foot), Point(_COLUMN, foot), Point(beside, 0.0)
    shapes += [hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER)]
    title, note = ENGLISH.say(Said.TITLE), ENGLISH.say(Said.NOTE)
    return Part("frame-check", title, tuple(shapes), datum, box, (note,), whole=True)


def checks(plan: Plan) -> tuple[Check, ...]:
    """What to measure on the frame of a plan, in order."""
    frame, pitch = plan.kit.frame, plan.warp.pitch
    width, height = frame.outer_width.mm, frame.outer_height.mm
    squared = width**2 + height**2  # of the diagonal
    apart = (width * pitch) ** 2 / squared  # squared as well
    said = _Said(frame.outer_width.imperial)
    say = ENGLISH.say
    return (
        Check(
            say(Said.DIAGONALS),
            say(Said.DIAGONALS_ARE, long=said.root(squared), apart=said.root(apart, 1)),
            (say(Said.ONE), say(Said.OTHER)),
        ),
        Check(
            say(Said.PARALLEL),
            say(Said.PARALLEL_ARE, high=said(height), apart=said(pitch / 2, 1)),
            (say(Said.LEFT), say(Said.RIGHT)),
        ),
        Check(say(Said.CENTRE), say(Said.CENTRE_IS, half=said(width / 2)), ()),
        Check(say(Said.PULL), _pull(plan, said), (say(Said.BENT_BY),)),
    )


def _pull(plan: Plan, said: _Said) -> str:
    load = plan.load
    newtons = load.threads * load.tension.newtons
    force = ENGLISH.say(
        Said.PULL_ASSUMED if load.pull.assumptions else Said.PULL_IS,
        threads=load.threads,
        tension=say_force(load.tension),
        newtons=say_number(newtons, 0),
        pounds=say_number(newtons / NEWTONS["lb"], 0),
    )
    most = said(load.most, 1)
    if load.bending is None:
        return ENGLISH.paragraph([force, ENGLISH.say(Said.LAY_A_RULE, most=most)])
    return ENGLISH.paragraph([force, ENGLISH.say(Said.BENDS, bent=said(load.bending.value, 1), most=most)])


@dataclass(frozen=True, slots=True)
class _Said:
    """Says lengths in both systems, the kit's own first: to 0.1 mm and 0.01 in, or one figure `finer`."""

    imperial: bool

    def __call__(self, mm: Fraction | float, finer: int = 0) -> str:
        return self.both(say_number(mm, 1 + finer), say_number(mm / mm_in("in"), 2 + finer))

    def root(self, squared: Fraction, finer: int = 0) -> str:
        """The length whose square in mm2 is `squared`."""
        return self.both(say_root(squared, 1 + finer), say_root(squared / mm_in("in") ** 2, 2 + finer))

    def both(self, metric: str, inches: str) -> str:
        """Both figures with their units, the kit's own first."""
        lengths = [f"{metric} mm", f"{inches} in"]
        return ENGLISH.listed(lengths[::-1] if self.imperial else lengths)


@dataclass(frozen=True, slots=True)
class _Column:
    metrics: FontMetrics
    low: bool

    def set(self, items: Sequence[Check]) -> tuple[list[Shape], float]:
        """The checks one under the other from y = 0 down, the caution last, and the y of the foot."""
        shapes: list[Shape] = []
        y = 0.0
        for number, item in enumerate(items, 1):
            more, y = self.item(number, item, y)
            shapes += more
        lines = wrap(ENGLISH.say(Said.CAUTION), SMALL, _COLUMN - _INDENT, self.metrics)
        shapes += paragraph(lines, SMALL, Point(_INDENT, y), self.metrics)
        return shapes, y - paragraph_height(len(lines), SMALL, self.metrics)

    def item(self, number: int, item: Check, top: float) -> tuple[list[Shape], float]:
        """One check from y = `top` down, and where the next begins."""
        metrics, size = self.metrics, SMALL if self.low else LEAD
        shapes: list[Shape] = [*paragraph([str(number)], size, Point(1.5, top), metrics)]
        words, y = item.sentence, top
        if self.low:
            words = ENGLISH.say(Said.TITLED, title=item.title, sentence=words)
        else:
            shapes += paragraph([item.title], LEAD, Point(_INDENT, y), metrics)
            y -= paragraph_height(1, LEAD, metrics)
        lines = wrap(words, SMALL, _COLUMN - _INDENT, metrics)
        shapes += paragraph(lines, SMALL, Point(_INDENT, y), metrics)
        y -= paragraph_height(len(lines), SMALL, metrics)
        if item.blanks:
            y -= _BLANK if not self.low else LEADING * SMALL
            shapes += self.blanks(item.blanks, y)
        return shapes, y - (_AIR if not self.low else _LESS)

    def blanks(self, names: Sequence[str], y: float) -> list[Shape]:
        """Named lines to write on, side by side on the baseline y."""
        each = (_COLUMN - _INDENT) / 2
        shapes: list[Shape] = []
        for k, name in enumerate(names):
            x = _INDENT + k * each
            shapes.append(Text(Point(x, y), SMALL, name))
            shapes.append(line(Point(x + self.metrics.width(name, SMALL) + 1.5, y), Point(x + each - 3, y), Pen.HELP))
        return shapes
