"""What stands on the sheets of a printer check: all on one where it has room, else words and blanks on more."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.shapes import Box, Point, Shape
from layout.drawing.sheet import Part
from layout.drawing.typeset import SMALL
from layout.kit.kit import Paper
from layout.messages.catalogue import Catalogue
from layout.messages.roles import PrinterCheck
from layout.paper.column import column
from layout.paper.printer_check.boxes import boxes_of
from layout.paper.printer_check.ladders import CARD_HIGH, CARD_WIDE, LADDER_WIDE, card, margins, widths
from layout.paper.printer_check.marks import end_marks, rules
from layout.paper.printer_check.places import FLOOR, FROM, NO_CROSS, UNTIL, Places
from layout.paper.printer_check.table import MAP_ASIDE, MAP_WIDE, small_map, written
from layout.paper.regions import FIELD, regions
from layout.parts.hanging import Hanging, rows_of

NAME = "printer-check"
"""What the sheet is called where products have names."""

_STEPS_WIDE, _MAP_GAP = 116.0, 6.0 + 2 * MAP_ASIDE
_WHITE, _LEAST_WHITE, _BESIDE = 8.0, 6.0, 8.0
_FAR, _GAP = 80.0, 20.0  # where more than the first is left over, things keep the second apart
_CROSS = 5.0  # the cross in the middle keeps so much white
_TEXT_UP = 2.2  # how far letters rise above their line


class Asked(NamedTuple):
    """What a printer check is drawn for: the paper, and the words."""

    paper: Paper
    words: Catalogue


class _Room(NamedTuple):
    """The field that words and pictures have on a sheet."""

    left: float
    right: float
    low: float
    top: float


def pages(asked: Asked, places: Places, top: float, metrics: FontMetrics) -> list[list[Shape]]:
    """What stands on each sheet under its head, which ends at `top`."""
    measured = [*end_marks(places, asked.words, metrics), *rules(places, asked.words, metrics)]
    measured += margins(asked.paper, places, metrics)
    room = _Room(FROM, asked.paper.width - UNTIL, FLOOR, top)
    if all_of_it := _on_one(asked, places, room, metrics):
        return [[*measured, *all_of_it]]
    field = regions(asked.paper)
    free = _Room(field.left, field.right, FIELD, top)
    return [[*measured, *_things(asked, places, room, metrics)], *_of_words(asked, places, free, metrics)]


def _steps(asked: Asked, places: Places) -> tuple[str, ...]:
    say = asked.words.say
    cross = places.spans.diagonal > NO_CROSS
    return (
        say(PrinterCheck.STEP_PRINT),
        say(PrinterCheck.STEP_MEASURE),
        say(PrinterCheck.STEP_OTHERS_CROSS if cross else PrinterCheck.STEP_OTHERS),
        say(PrinterCheck.STEP_SETTING),
        say(PrinterCheck.STEP_STORE, paper=_typed(asked.paper)),
    )


def _typed(paper: Paper) -> str:
    """The paper as it is typed behind an option."""
    words = paper.size.words
    return f'"{words}"' if " " in words else words


def _set_steps(asked: Asked, places: Places, wide: float, metrics: FontMetrics) -> Hanging:
    """The steps, hanging from y = 0."""
    part = Part(NAME, "", (), (), (0, 0, 0, 0), steps=_steps(asked, places))
    found = column(part, 0.0, min(wide, _STEPS_WIDE), 0.0, -1e6, metrics)
    return Hanging(found.shapes, -found.low)


def _on_one(asked: Asked, places: Places, room: _Room, metrics: FontMetrics) -> list[Shape] | None:
    """Steps and map, blanks, card and ladder, the words about margins; None where they have no room on one sheet."""
    wide = room.right - room.left
    if wide < CARD_WIDE + _BESIDE + LADDER_WIDE:
        return None
    steps = _set_steps(asked, places, wide - MAP_WIDE - _MAP_GAP, metrics)
    mapped = small_map(asked.paper, places, metrics)
    said = _about_margins(asked, wide, metrics)
    table = written(places, wide, asked.paper.width / 2 - room.left, asked.words, metrics)
    card_low = room.low + said.high + _LEAST_WHITE
    over, card_top = room.top - max(steps.high, mapped.high + MAP_ASIDE), card_low + CARD_HIGH
    free = over - card_top - table.high
    if free < 2 * _LEAST_WHITE:
        return None
    if free > _FAR:
        top, card_top = over - _GAP, over - table.high - 2 * _GAP
    else:
        top = places.middle.y + table.high / 2
        top = min(max(top, card_top + _LEAST_WHITE + table.high), over - _LEAST_WHITE)
    shapes = [
        *steps.at(room.left, room.top),
        *mapped.at(room.right - MAP_WIDE - MAP_ASIDE, room.top - MAP_ASIDE),
        *table.at(room.left, top),
        *card(asked.words, metrics).at(room.left, card_top),
        *widths(asked.words, metrics).at(room.right - LADDER_WIDE, card_top),
        *said.at(room.left, room.low + said.high),
    ]
    return None if _covers(shapes, places, metrics) else shapes


def _covers(shapes: Sequence[Shape], places: Places, metrics: FontMetrics) -> bool:
    """Whether anything stands where the cross in the middle does."""
    if places.spans.diagonal <= NO_CROSS:
        return False
    x, y = places.middle
    return any(
        left < x + _CROSS and right > x - _CROSS and low < y + _CROSS and high > y - _CROSS
        for left, low, right, high in boxes_of(shapes, metrics)
    )


def _about_margins(asked: Asked, wide: float, metrics: FontMetrics) -> Hanging:
    rows = rows_of(asked.words.say(PrinterCheck.MARGINS), SMALL, wide, -_TEXT_UP, metrics)
    return Hanging(tuple(rows), -rows[-1].at.y + 0.8)


def _things(asked: Asked, places: Places, room: _Room, metrics: FontMetrics) -> list[Shape]:
    """Card and ladder beside or under each other, each where it has room, clear of the cross in the middle."""
    shapes: list[Shape] = []
    drawn = ((CARD_WIDE, card(asked.words, metrics)), (LADDER_WIDE, widths(asked.words, metrics)))
    spots = [Point(room.left, room.top), Point(room.left + CARD_WIDE + _BESIDE, room.top)]
    spots += [Point(room.left, places.middle.y - _CROSS), Point(room.left, room.top - CARD_HIGH - _LEAST_WHITE)]
    for wide, thing in drawn:
        for at in spots:
            box = at.x, at.y - thing.high, at.x + wide, at.y
            if box[1] < room.low or box[2] > room.right or box[3] > room.top:
                continue
            placed = thing.at(at.x, at.y)
            if _covers(placed, places, metrics) or any(map(_meets(box), boxes_of(shapes, metrics))):
                continue
            shapes += placed
            break
    return shapes


def _meets(box: Box) -> Callable[[Box], bool]:
    return lambda other: box[0] < other[2] and other[0] < box[2] and box[1] < other[3] and other[1] < box[3]


def _of_words(asked: Asked, places: Places, room: _Room, metrics: FontMetrics) -> list[list[Shape]]:
    """Steps, blanks and the words about margins on as many sheets as they take."""
    wide = room.right - room.left
    hanging = (
        _set_steps(asked, places, wide, metrics),
        written(places, wide, wide / 2, asked.words, metrics),
        _about_margins(asked, wide, metrics),
    )
    pages: list[list[Shape]] = [[]]
    y = room.top
    for each in hanging:
        if pages[-1] and y - each.high < room.low:
            pages.append([])
            y = room.top
        pages[-1] += each.at(room.left, y)
        y -= each.high + _WHITE
    return pages
