"""The frame check: what to measure on a frame before it is warped and after, with the picture of it and remedies.

It comes on one sheet; where that is too small for all of it, what is measured on one thread has a card of its own, and
on small paper two cards without a picture hold all.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, cross
from layout.drawing.sheet import Block, Entry, Part
from layout.drawing.signs import ring
from layout.drawing.typeset import SMALL
from layout.messages.roles import Check as Said
from layout.messages.roles import SheetName
from layout.parts.check_items import BARE, Check, checks, remedies
from layout.parts.check_rows import blanks, check_row, remedy_rows, small_row
from layout.parts.frame_figure import BEND_HIGH, bend_figure, frame_figure
from layout.parts.hanging import Hanging, beside, rows_of, stack
from layout.plan import Plan
from layout.values.units import say_length

LEAST_ROOM = 156.0, 205.0
"""In a room less wide or less high than this in mm there is no picture."""

_FINDINGS, _APART, _GAP, _LESS, _CARD = 61.6, 12.0, 6.0, 4.0, 86.8
_LEAST_PICTURE, _MOST_PICTURE = 60.0, 140.0
_TABLE_FROM = 108.0
_FIRST, _SIGNED = 3.0, 6.0
_CORNER, _ARM = 0.8, 0.5

_NAMED = {
    "frame-check": (SheetName.NAME_FRAME_CHECK, SheetName.PURPOSE_FRAME_CHECK),
    "pull-check": (SheetName.NAME_PULL_CHECK, SheetName.PURPOSE_PULL_CHECK),
}


def frame_check(plan: Plan, wide: float, high: float, metrics: FontMetrics) -> tuple[Part, ...]:
    """The check of a plan's frame in a room of `wide` x `high` mm: on one sheet, else on two."""
    every = checks(plan)
    if wide >= LEAST_ROOM[0] and high >= LEAST_ROOM[1]:
        if whole := _sheet(plan, every, wide, high, metrics):
            return (whole,)
        if less := _sheet(plan, every[:-1], wide, high, metrics):
            return less, _cards(plan, "pull-check", every[-1:], len(every), _CARD, metrics)
    bare = _cards(plan, "frame-check", every[:BARE], 1, _CARD, metrics)
    pulls = _cards(plan, "pull-check", every[BARE:], BARE + 1, _CARD, metrics)
    right, parallel, bending = remedies(plan)
    frame, pull = {1: right, 2: parallel}, {BARE + 1: bending}
    return _with_remedies(plan, bare, frame, metrics), _with_remedies(plan, pulls, pull, metrics)


def _with_remedies(plan: Plan, card: Part, found: Mapping[int, tuple[str, str]], metrics: FontMetrics) -> Part:
    """A card, and under it what to do where one of its checks, by its number, does not come out right."""
    say = plan.words.say
    entries = tuple(
        Entry(tuple(ring(Point(0, 0), str(number), metrics)), say(Said.TITLED, title=wrong, sentence=does))
        for number, (wrong, does) in found.items()
    )
    return replace(card, blocks=(Block(say(Said.REMEDIES), entries=entries),), below=True)


def _sheet(plan: Plan, every: Sequence[Check], wide: float, high: float, metrics: FontMetrics) -> Part | None:
    """The picture, what is found beside it, the pull of one thread under them, remedies, and who checked; None where it
    is too high.
    """
    right = wide - _FINDINGS
    findings = stack([check_row(k, each, _FINDINGS, metrics) for k, each in enumerate(every[:4], 1)], _LESS)
    foot = [check_row(5, each, wide, metrics, beside=_TABLE_FROM if each.table else 0.0) for each in every[4:]]
    foot += [remedy_rows(plan, remedies(plan), wide, metrics), _signed(plan, wide, metrics)]
    under = stack(foot, _LESS)
    left_over = high - 2 * _CORNER - under.high - _GAP
    bent = bend_figure(plan, "4", metrics)
    room = min(left_over - BEND_HIGH - _LESS, _MOST_PICTURE, max(_MOST_PICTURE, findings.high) - BEND_HIGH)
    if room < _LEAST_PICTURE or findings.high > left_over:
        return None
    picture = frame_figure(plan, right - _APART, room, metrics)
    shown = beside([stack([picture, bent], _LESS), findings], right)
    return _part(plan, "frame-check", stack([shown, under], _GAP), wide)


def _signed(plan: Plan, wide: float, metrics: FontMetrics) -> Hanging:
    """Who checked it and when, and the caution."""
    names = (plan.words.say(Said.CHECKED_BY), plan.words.say(Said.ON))
    shapes: list[Shape] = [*blanks(names, wide, -_FIRST, metrics)]
    shapes += (caution := rows_of(plan.words.say(Said.CAUTION), SMALL, wide, -_FIRST - _SIGNED, metrics))
    return Hanging(tuple(shapes), -caution[-1].at.y + 0.8)


def _cards(plan: Plan, name: str, items: Sequence[Check], first: int, wide: float, metrics: FontMetrics) -> Part:
    """A card with these checks in small letters, numbered from `first`, the caution last."""
    rows = [small_row(plan, number, each, wide, metrics) for number, each in enumerate(items, first)]
    caution = rows_of(plan.words.say(Said.CAUTION), SMALL, wide, -_FIRST, metrics)
    rows.append(Hanging(tuple(caution), -caution[-1].at.y + 0.8))
    return _part(plan, name, stack(rows, 1.0), wide)


def _part(plan: Plan, name: str, shown: Hanging, wide: float) -> Part:
    low = -shown.high - _CORNER
    datum = Point(-_ARM, low), Point(wide, low), Point(wide, 0.0)
    hairs = (hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER))
    title, purpose = map(plan.words.say, _NAMED[name])
    box = (-_CORNER, low - _CORNER, wide + _CORNER, _CORNER)
    part = Part(name, title, (*shown.shapes, *hairs), datum, box, whole=True, purpose=purpose, measured=False)
    return at_lowest(plan, part) if name == "frame-check" else part


def bare_check(plan: Plan) -> Part:
    """A check of nothing, which says beside itself what any does."""
    return _part(plan, "frame-check", Hanging((), 0.0), 0.0)


def at_lowest(plan: Plan, part: Part) -> Part:
    """The same with a note where the frame's height can be adjusted."""
    frame, words = plan.kit.frame, plan.words
    if frame.travel is None:
        return part
    return replace(part, notes=(words.say(Said.AT_LOWEST, low=say_length(frame.outer_height, words)),))
