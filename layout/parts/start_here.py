"""The first sheet of a kit: the work in its order, this kit's numbers, and what to do before anything is cut.

On paper too small for one sheet it comes in parts, each on a sheet of its own.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from itertools import pairwise
from typing import NamedTuple, TypeVar

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, Shape, Text, cross, line
from layout.drawing.sheet import Part
from layout.drawing.signs import RING, ring, step_tile
from layout.drawing.typeset import FIGURE, LEAD, SMALL, is_tall, leading, longest_word
from layout.kit.box import START
from layout.messages.catalogue import Role
from layout.messages.roles import KitNumber, SheetName, Start
from layout.parts.hanging import Hanging, beside, rows_of, stack
from layout.parts.start_icons import icon
from layout.parts.start_numbers import KitFigure, kit_figures
from layout.parts.start_steps import WorkStep, work_steps
from layout.plan import Plan

GAUGE, GRID = "G", "7"

_TILE, _BRANCH, _ICON, _WORDS, _WORDS_LOW = 8.0, 9.0, 19.5, 43.0, 19.0
_ABOVE, _NAME, _SAYS, _BESIDE = 2.5, 2.2, 4.7, 3.5
_PITCH, _LOW_PITCH, _LEAST_PITCH, _UNDER_ROW = 18.3, 14.0, 11.5, 4.0
_FIGURES_FROM, _FIGURES_WIDE, _TOGETHER = 110.0, 56.0, 160.0  # on a field of 166; from which width on
_LABEL, _VALUE, _REMARK, _FIGURE_PITCH, _TITLE = 3.6, 6.0, 5.0, 21.4, 8.0
_STEP, _STEP_WORDS, _GAP, _APART = 5.6, 7.0, 8.0, 8.0
_DATUM = 0.5


Thing = TypeVar("Thing")
_ROUNDED = 1e-6


class Room(NamedTuple):
    """What is free on a sheet for what is read: `wide` and `high` in mm."""

    wide: float
    high: float


class Contents(NamedTuple):
    """Where the sheets are: by tile the first and the last of them; and the file of the `grid`, if there is one.

    In a run, the `steps` are those of its boxes, each with its place by its tile.
    """

    sheets: Mapping[str, tuple[int, int]]
    grid: str = ""
    steps: tuple[WorkStep, ...] = ()
    places: Mapping[str, str] | None = None


def start_here(plan: Plan, contents: Contents, room: Room, metrics: FontMetrics) -> tuple[Part, ...]:
    """The sheet for a plan in a `room` of that size; in parts of one name, each for a sheet, where it is small."""
    steps, figures = contents.steps or work_steps(plan, grid=bool(contents.grid)), kit_figures(plan)
    before = _before(plan, room.wide, metrics)
    apart = room.wide * _FIGURES_FROM / (_FIGURES_FROM + _FIGURES_WIDE)
    if room.wide >= _TOGETHER:
        order = _strung(plan, contents, steps, apart - _GAP / 2, metrics)
        numbers = _figures(plan, figures, room.wide - apart, metrics)
        left = stack([order, before], _GAP)
        both = Hanging((*left.shapes, *numbers.at(apart, -_ABOVE)), max(left.high, numbers.high + _ABOVE))
        if both.high <= room.high:
            return (_part(plan, both, room),)
    sheets = [*_order_sheets(plan, contents, steps, room, metrics), *_figure_sheets(plan, figures, room, metrics)]
    together = stack([sheets[-1], before], _GAP)
    sheets = [*sheets[:-1], together] if together.high <= room.high else [*sheets, before]
    return tuple(_part(plan, sheet, room) for sheet in sheets)


def _order_sheets(
    plan: Plan, contents: Contents, steps: Sequence[WorkStep], room: Room, metrics: FontMetrics
) -> list[Hanging]:
    """The steps with their pictures on one sheet, else in two columns without them, on as few sheets as hold them."""
    whole = _strung(plan, contents, steps, room.wide, metrics, least=_LOW_PITCH)
    if whole.high <= room.high:
        return [whole]
    each = (room.wide - _APART) / 2
    for count in range(1, len(steps) + 1):
        columns = [
            _strung(plan, contents, some, each, metrics, least=_LEAST_PITCH, icons=False)
            for some in _shared_out(steps, 2 * count)
        ]
        sheets = [beside(columns[k : k + 2], each + _APART) for k in range(0, len(columns), 2)]
        if all(sheet.high <= room.high for sheet in sheets):
            break
    return sheets


def _figure_sheets(plan: Plan, figures: Sequence[KitFigure], room: Room, metrics: FontMetrics) -> list[Hanging]:
    """The kit's numbers in as many columns as are wide enough, on as few sheets as hold them."""
    columns = max(1, int((room.wide + _APART) / _FIGURES_WIDE))
    each = (room.wide + _APART) / columns - _APART
    for count in range(1, len(figures) + 1):
        found = [
            _figures(plan, some, each, metrics, title=not k)
            for k, some in enumerate(_shared_out(figures, columns * count))
        ]
        sheets = [beside(found[k : k + columns], each + _APART) for k in range(0, len(found), columns)]
        if all(sheet.high <= room.high for sheet in sheets):
            break
    return sheets


def _shared_out(things: Sequence[Thing], count: int) -> list[Sequence[Thing]]:
    """So many runs of them at most, in order, the first ones as long as any."""
    each = math.ceil(len(things) / count)
    return [things[k : k + each] for k in range(0, len(things), each)]


def _part(plan: Plan, shown: Hanging, room: Room) -> Part:
    low, right = -shown.high - 2 * _DATUM, room.wide - _DATUM
    datum = Point(_DATUM, low), Point(right, low), Point(right, -_DATUM)
    hairs = [hair for point in datum for hair in cross(point, _DATUM, Pen.REGISTER)]
    box = (0.0, low - _DATUM, room.wide, 0.0)
    title, purpose = plan.words.say(SheetName.NAME_START_HERE), plan.words.say(SheetName.PURPOSE_START_HERE)
    return Part(START, title, (*shown.shapes, *hairs), datum, box, whole=True, purpose=purpose)


def _strung(
    plan: Plan,
    contents: Contents,
    steps: Sequence[WorkStep],
    wide: float,
    metrics: FontMetrics,
    *,
    least: float = _PITCH,
    icons: bool = True,
) -> Hanging:
    """The steps one under the other, their tiles strung on one thread; the gauge stands on a branch of it."""
    shapes: list[Shape] = []
    tiles: list[float] = []
    branches: list[float] = []
    y = -_ABOVE
    for step in steps:
        if icons:
            shapes += Placing(0, _ICON, y + _ABOVE).shapes(icon(step.icon))
        words, reach = _row(plan, contents, step, _WORDS if icons else _WORDS_LOW, wide, metrics)
        shapes += Placing(0, 0, y).shapes(words)
        (branches if step.tile == GAUGE else tiles).append(y)
        left = _BRANCH if step.tile == GAUGE else 0.0
        shapes += step_tile(Point(left + _TILE / 2, y - _TILE / 2), step.tile, metrics)
        y -= max(least, reach + _UNDER_ROW)
    middle = _TILE / 2
    for above, below in pairwise(tiles):
        shapes.append(line(Point(middle, above - _TILE), Point(middle, below), Pen.THREAD))
    for branch in branches:
        shapes.append(line(Point(middle + 0.4, branch - middle), Point(_BRANCH, branch - middle), Pen.OUTLINE))
    return Hanging(tuple(shapes), -y - _UNDER_ROW)


def _row(
    plan: Plan, contents: Contents, step: WorkStep, left: float, wide: float, metrics: FontMetrics
) -> tuple[list[Shape], float]:
    """The words of a step from y = 0, the top of its tile, and how far down they reach."""
    name, does, room = _said(plan, step.name), _said(plan, step.does), wide - left
    widest = longest_word(name, LEAD, metrics, Pen.STRONG) + _ROUNDED  # the white beside takes the rest
    names = rows_of(name, LEAD, max(room, widest), -_NAME, metrics, Pen.STRONG)
    shapes: list[Shape] = [*names]
    y = names[-1].at.y
    if where := sheets_of(plan, step.tile, contents):
        x = metrics.width(names[-1].words, LEAD, Pen.STRONG) + _BESIDE
        if x + metrics.width(where, SMALL) > room:
            x, y = 0.0, y - _SAYS
        shapes.append(Text(Point(x, y), SMALL, where))
    says = rows_of(does, LEAD, room, y - _SAYS, metrics)
    return Placing(0, left, 0).shapes([*shapes, *says]), -says[-1].at.y - metrics.descent * LEAD


def _said(plan: Plan, what: Role | str) -> str:
    return plan.words.say(what) if isinstance(what, Role) else what


def sheets_of(plan: Plan, tile: str, contents: Contents) -> str:
    """Where the sheets of a step are, or in a run where its part lies; nothing where it has none."""
    if contents.places is not None:
        return contents.places.get(tile, "")
    if tile == GRID and contents.grid:
        return plan.words.say(Start.OWN_FILE, file=contents.grid)
    if tile not in contents.sheets:
        return ""
    first, last = contents.sheets[tile]
    if first == last:
        return plan.words.say(Start.SHEET, number=first)
    return plan.words.say(Start.SHEETS, first=first, last=last)


def _figures(
    plan: Plan, figures: Sequence[KitFigure], wide: float, metrics: FontMetrics, *, title: bool = True
) -> Hanging:
    """Numbers of the kit one under the other, below their heading or its place."""
    heading = Text(Point(0, metrics.cap * -FIGURE), FIGURE, plan.words.say(KitNumber.THIS_KIT), pen=Pen.STRONG)
    listed = stack([_figure(figure, wide, metrics) for figure in figures], 0.0)
    return Hanging((*([heading] if title else []), *listed.at(0, -_TITLE)), _TITLE + listed.high)


def _figure(figure: KitFigure, wide: float, metrics: FontMetrics) -> Hanging:
    """A rule, the label, the figure, its remarks."""
    shapes: list[Shape] = [line(Point(0, 0), Point(wide, 0), Pen.HELP)]
    labels = rows_of(figure.label, SMALL, wide, -_LABEL, metrics)
    values = rows_of(figure.value, FIGURE, wide, labels[-1].at.y - _VALUE, metrics, Pen.STRONG)
    shapes += [*labels, *values]
    y = values[-1].at.y - _REMARK + 4.6
    for remark in figure.remarks:
        rows = rows_of(remark, LEAD, wide, y - leading(LEAD, tall=is_tall(remark)), metrics)
        shapes += rows
        y = rows[-1].at.y
    return Hanging(tuple(shapes), max(_FIGURE_PITCH, _UNDER_ROW - y - metrics.descent * LEAD))


def _before(plan: Plan, wide: float, metrics: FontMetrics) -> Hanging:
    """What to do before anything is cut, step by step."""
    heading = rows_of(plan.words.say(Start.BEFORE), LEAD, wide, -3.0, metrics, Pen.STRONG)
    shapes: list[Shape] = [*heading]
    y = heading[-1].at.y - _STEP - 1.0
    for number, role in enumerate((Start.PRINT, Start.RULER, Start.KNIFE), 1):
        rows = rows_of(plan.words.say(role), LEAD, wide - _STEP_WORDS, y, metrics)
        shapes += [*ring(Point(RING, y + 1.2), str(number), metrics), *Placing(0, _STEP_WORDS, 0).shapes(rows)]
        y = rows[-1].at.y - _STEP
    return Hanging(tuple(shapes), -y - _STEP + RING)
