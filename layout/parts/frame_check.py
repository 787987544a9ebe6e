"""The frame check sheet: what to measure on the frame before it is warped, and what the numbers must be.

All is found from the frame itself. A far end that stands s aside makes the diagonals d1, d2 of a frame W wide differ by
about 2 W s / d (from d1^2 - d2^2 = 4 W s), which gives the difference that half a pitch allows.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, Shape, Text, cross, line
from layout.drawing.sheet import Part
from layout.drawing.typeset import LEAD, LEADING, SMALL, paragraph, paragraph_height, right, wrap
from layout.messages.english import ENGLISH
from layout.messages.roles import Check as Said
from layout.parts.frame_figure import WIDE, frame_figure
from layout.parts.frame_pull import Both, Table, measuring_table, measuring_words, pull_words
from layout.plan import Plan
from layout.values.units import say_length

_APART, _INDENT, _BLANK, _AIR, _LESS = 10.0, 5.0, 6.4, 2.6, 0.8
_COLUMN, _ALONE = 86.8, 116.0  # how wide the words are set: beside the picture, and without it
_BARE = 3  # so many checks are made before the frame is warped
_ROW, _NAMES = LEADING * SMALL, 17.0
_CORNER, _ARM = 0.8, 0.5


class Check(NamedTuple):
    """One thing to measure: its `title`, what must come out, the names of the blanks to write on, and a `table`."""

    title: str
    sentence: str
    blanks: tuple[str, ...]
    table: Table = ()


def frame_check(plan: Plan, metrics: FontMetrics, *, low: bool = False) -> Part:
    """The check sheet of a plan's frame; `low` gives it without the picture and with less white."""
    column = _Column(metrics, _COLUMN if not low else _ALONE, low)
    shapes, foot = column.set(checks(plan))
    if low:
        return at_lowest(plan, _part("frame-check", shapes, foot, column.wide))
    picture, floor = frame_figure(plan.kit.frame, metrics)
    shapes += Placing(0, -WIDE - _APART, 0).shapes(picture)
    return at_lowest(plan, _part("frame-check", shapes, min(foot, floor), column.wide, picture=True))


def frame_check_in_two(plan: Plan, metrics: FontMetrics) -> tuple[Part, Part]:
    """The same in its low form on two small cards: what is measured on the bare frame, and what on the warped one."""
    column = _Column(metrics, _COLUMN, low=True)
    every = checks(plan)
    bare, warped = column.set(every[:_BARE]), column.set(every[_BARE:], _BARE + 1)
    checked = at_lowest(plan, _part("frame-check", *bare, column.wide))
    return checked, _part("pull-check", *warped, column.wide)


_SAID = {"frame-check": (Said.TITLE, Said.NOTE), "pull-check": (Said.TITLE_PULL, Said.NOTE_PULL)}


def _part(name: str, shapes: list[Shape], foot: float, wide: float, *, picture: bool = False) -> Part:
    left, beside = (-WIDE - _APART, -_APART / 2) if picture else (-_CORNER, -_CORNER)
    box = (left - _CORNER, foot - _CORNER, wide + _CORNER, _CORNER)
    datum = Point(beside, foot), Point(wide, foot), Point(beside, 0.0)
    hairs = (hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER))
    title, note = map(ENGLISH.say, _SAID[name])
    return Part(name, title, (*shapes, *hairs), datum, box, (note,), whole=True, measured=False)


def at_lowest(plan: Plan, part: Part) -> Part:
    """The same with a note where the frame's height can be adjusted."""
    frame = plan.kit.frame
    if frame.travel is None:
        return part
    return replace(part, notes=(*part.notes, ENGLISH.say(Said.AT_LOWEST, low=say_length(frame.outer_height))))


def checks(plan: Plan) -> tuple[Check, ...]:
    """What to measure on the frame of a plan, in order."""
    frame, pitch = plan.kit.frame, plan.warp.pitch
    width, height = frame.outer_width.mm, frame.outer_height.mm
    squared = width**2 + height**2  # of the diagonal
    apart = (width * pitch) ** 2 / squared  # squared as well
    said = Both(frame.outer_width.imperial)
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
        Check(say(Said.PULL), pull_words(plan.load, said), (say(Said.BENT_BY),)),
        Check(say(Said.MEASURE), measuring_words(plan), (say(Said.FREE), say(Said.FOUND)), measuring_table(plan)),
    )


@dataclass(frozen=True, slots=True)
class _Column:
    metrics: FontMetrics
    wide: float
    low: bool

    def set(self, items: Sequence[Check], first: int = 1) -> tuple[list[Shape], float]:
        """The checks one under the other from y = 0 down, numbered from `first`, the caution last; and the foot."""
        shapes: list[Shape] = []
        y = 0.0
        for number, item in enumerate(items, first):
            more, y = self.item(number, item, y)
            shapes += more
        lines = wrap(ENGLISH.say(Said.CAUTION), SMALL, self.wide - _INDENT, self.metrics)
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
        lines = wrap(words, SMALL, self.wide - _INDENT, metrics)
        shapes += paragraph(lines, SMALL, Point(_INDENT, y), metrics)
        y -= paragraph_height(len(lines), SMALL, metrics)
        shapes += self.table(item.table, y)
        y -= len(item.table) * _ROW + (_LESS if item.table else 0.0)
        if item.blanks:
            y -= _BLANK if not self.low else LEADING * SMALL
            shapes += self.blanks(item.blanks, y)
        return shapes, y - (_AIR if not self.low else _LESS)

    def table(self, rows: Table, top: float) -> list[Shape]:
        """A table from y = `top` down, the name of each row before its figures, which stand under one another."""
        shapes: list[Shape] = []
        for number, (name, *figures) in enumerate(rows, 1):
            y = top - number * _ROW
            shapes.append(Text(Point(_INDENT, y), SMALL, name))
            each = (self.wide - _INDENT - _NAMES) / len(figures)
            places = [Point(_INDENT + _NAMES + k * each, y) for k in range(1, len(figures) + 1)]
            shapes += [right(said, SMALL, at, self.metrics) for said, at in zip(figures, places, strict=True)]
        return shapes

    def blanks(self, names: Sequence[str], y: float) -> list[Shape]:
        """Named lines to write on, side by side on the baseline y."""
        each = (self.wide - _INDENT) / 2
        shapes: list[Shape] = []
        for k, name in enumerate(names):
            x = _INDENT + k * each
            shapes.append(Text(Point(x, y), SMALL, name))
            shapes.append(line(Point(x + self.metrics.width(name, SMALL) + 1.5, y), Point(x + each - 3, y), Pen.HELP))
        return shapes
