"""The class sheet: for each kit what lies ready for everybody, what is cut before, the lesson and names to fill in."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, Text, cross, line
from layout.drawing.sheet import Part
from layout.drawing.typeset import LEAD, SMALL
from layout.messages.catalogue import Catalogue, Message
from layout.messages.roles.buying import Packed
from layout.messages.roles.ranges import ClassSheet
from layout.parts.contents import Line, contents, once
from layout.parts.hanging import Hanging, rows_of, stack
from layout.parts.tables.ruled import Column, Row, ruled_pages
from layout.plan import Plan

CLASS_SHEET = "class-sheet"

_FIRST, _UNDER, _APART, _ARM = 3.0, 1.0, 7.0, 0.5
_LINES, _LINE, _TITLE, _RULE = 10, 8.0, 3.5, 5.0
_WHAT, _REMARKS = 0.14, 0.62
"""Where what is done, and remarks, begin on the lines of the lesson, as shares of its width."""


class Lesson(NamedTuple):
    """So many `people`, and how many of them sit at one table."""

    people: int
    at_a_table: int

    @property
    def tables(self) -> int:
        """How many tables there are."""
        return -(-self.people // self.at_a_table)


def purpose_of(lesson: Lesson, words: Catalogue) -> str:
    """How many people and tables, as the head says it."""
    return words.say(ClassSheet.PURPOSE, people=lesson.people, tables=lesson.tables)


def class_pages(
    plans: Sequence[Plan], lesson: Lesson, size: tuple[float, float], words: Catalogue, metrics: FontMetrics
) -> tuple[Part, ...]:
    """A part for each sheet, in `size` mm; no table is parted where a sheet can hold it whole."""
    width, height = size
    pages: list[list[Hanging]] = [[]]
    used = 0.0
    for block in _blocks(plans, lesson, width, height, words, metrics):
        if pages[-1] and used + _APART + block.high > height:
            pages.append([])
        used = block.high + (used + _APART if pages[-1] else 0.0)
        pages[-1].append(block)
    return tuple(_part(stack(page, _APART), width, lesson, words) for page in pages)


def _blocks(
    plans: Sequence[Plan], lesson: Lesson, width: float, height: float, words: Catalogue, metrics: FontMetrics
) -> Iterator[Hanging]:
    def titled(title: str, table: Sequence[Hanging]) -> Iterator[Hanging]:
        head = Hanging(tuple(rows_of(title, LEAD, width, -_FIRST, metrics, Pen.STRONG)), _FIRST + _UNDER)
        for number, each in enumerate(table):
            yield stack([head, each], 0.0) if not number else each

    most = (height - _FIRST - _UNDER, height)
    ticked = (Column(tick=True), Column(broken=True), Column(right=True, strong=True))
    for plan in plans:
        kit = plan.kit.name
        rows = [Row(("", *_said(each, words))) for each in contents(plan)]
        title = words.say(ClassSheet.FOR_EACH, kit=kit)
        yield from titled(title, ruled_pages(ticked, rows, width, most, metrics))
        if shared := [Row(("", *_said(each, words))) for each in once(plan)]:
            yield from titled(words.say(ClassSheet.FOR_ALL, kit=kit), ruled_pages(ticked, shared, width, most, metrics))
    columns = (Column(broken=True), Column(broken=True), Column(right=True, strong=True))
    cut = [Row((plan.kit.name, *row)) for plan in plans for row in _cut(plan, lesson.people, words)]
    yield from titled(words.say(ClassSheet.CUT), ruled_pages(columns, cut, width, most, metrics))
    yield from titled(words.say(ClassSheet.LESSON), [_lesson(width, words)])
    names = (Column(tick=True), Column())
    people = [Row(("", ""))] * lesson.people
    yield from titled(words.say(ClassSheet.NAMES), ruled_pages(names, people, width, most, metrics))


def _lesson(width: float, words: Catalogue) -> Hanging:
    """Lines to write on, under what each part of them is for."""
    titles = zip((ClassSheet.TIME, ClassSheet.WHAT, ClassSheet.REMARKS), (0.0, _WHAT, _REMARKS), strict=True)
    shapes: list[Shape] = [Text(Point(share * width, -_TITLE), SMALL, words.say(role)) for role, share in titles]
    levels = [-_RULE - number * _LINE for number in range(_LINES + 1)]
    shapes += [
        line(Point(0, y), Point(width, y), Pen.HELP if number else Pen.OUTLINE) for number, y in enumerate(levels)
    ]
    return Hanging(tuple(shapes), -levels[-1] + Pen.OUTLINE.ink.width / 2)


def _said(each: Line, words: Catalogue) -> tuple[str, str]:
    name = words.words_of(each.name) if isinstance(each.name, Message) else each.name
    return name, words.words_of(each.amount)


_CUT = (Packed.WARP, Packed.SPARE_ENDS, Packed.CORD)


def _cut(plan: Plan, people: int, words: Catalogue) -> Iterator[tuple[str, str]]:
    """What is cut from cones and balls before the class: each thing, how much of it, and how often."""
    for each in contents(plan):
        if isinstance(each.name, Message) and each.name.role in _CUT:
            name, amount = _said(each, words)
            yield name, words.say(ClassSheet.TIMES, amount=amount, people=people)


def _part(shown: Hanging, width: float, lesson: Lesson, words: Catalogue) -> Part:
    low = -shown.high
    datum = (Point(_ARM, low - _ARM), Point(width - _ARM, low - _ARM), Point(width - _ARM, _ARM))
    hairs: list[Shape] = [hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER)]
    box = (-1.0, low - 2 * _ARM, width + _ARM, 2 * _ARM)
    title, purpose = words.say(ClassSheet.NAME), purpose_of(lesson, words)
    return Part(CLASS_SHEET, title, (*hairs, *shown.shapes), datum, box, whole=True, purpose=purpose, measured=False)
