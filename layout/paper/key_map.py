"""A small map of parts in pieces, on the first of their sheets that has room: their order, and where each piece is.

It comes last: where no sheet has room for it, it is left out, and nothing else moves.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from itertools import product
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, Text, filled, rectangle
from layout.drawing.sheet import Block, Part
from layout.drawing.typeset import LEAD, SMALL
from layout.messages.catalogue import Catalogue
from layout.messages.roles import KeyMap
from layout.paper.area import Area
from layout.paper.choice import Laying
from layout.paper.furniture import Furnished
from layout.paper.leaves import Leaf

_WIDE, _HIGH = 12.0, 5.0  # a piece in the map, at most so wide
_AIR = 0.5  # on both sides of a number within
_AFTER_LABEL, _NUMBERS_DOWN, _ROW, _APART, _BESIDE = 2.0, 3.0, 8.6, 1.8, 5.0
_FAR = 9e9


class Row(NamedTuple):
    """What a part is called, and the number of the sheet on which each of its pieces is, in order from the left."""

    label: str
    sheets: tuple[int, ...]


class Form(NamedTuple):
    """How a map is set: its rows one under the other or in a line, with its title and what grey means or without."""

    in_line: bool
    titled: bool


_FORMS = Form(False, True), Form(True, True), Form(True, False)


class Setting(NamedTuple):
    """What sheets are said and measured with, and how wide a map may be, in mm."""

    words: Catalogue
    metrics: FontMetrics
    wide: float


Furnish = Callable[[Leaf], Furnished]


def with_key_maps(
    found: Sequence[Leaf], layings: Sequence[Laying], upper: str, furnished: Furnish, setting: Setting
) -> tuple[Leaf, ...]:
    """The sheets of a file, with a map for each of the `layings` in pieces that has room for one.

    The part of the `upper` frame end, "near" or "far", stands first.
    """
    leaves = list(found)
    for laying in layings:
        if laying.way != "tiles" or laying.part.joint_rows is None:
            continue
        shown = [k for k, leaf in enumerate(leaves) if any(leaf.pieces is sheet for sheet in laying.sheets)]
        parts = sorted(laying.parts, key=lambda part: not part.name.endswith(upper))
        rows = [_row(part, laying, shown[0] + 1, setting.words) for part in parts]
        places = (shown[0], *_of_words(leaves, shown, laying.part))
        for k, form in product(places, _FORMS):
            free = leaves[k] is found[k]  # a sheet of words that two parts share has the map of the first one
            if free and (leaf := _keyed(leaves[k], key_map(rows, k + 1, form, setting), furnished)):
                leaves[k] = leaf
                break
    return tuple(leaves)


def _row(part: Part, laying: Laying, first: int, words: Catalogue) -> Row:
    pieces = [
        (piece.part.box[0], number)
        for number, sheet in enumerate(laying.sheets, first)
        for piece in sheet
        if piece.part.name == part.name
    ]
    label = KeyMap.NEAR if part.name.endswith("near") else KeyMap.FAR
    return Row(words.say(label), tuple(number for _, number in sorted(pieces)))


def _of_words(leaves: Sequence[Leaf], shown: Sequence[int], part: Part) -> Iterator[int]:
    """The sheets of words before and after those `shown` that are of the same part."""
    for k in (shown[0] - 1, shown[-1] + 1):
        if 0 <= k < len(leaves) and not leaves[k].pieces and leaves[k].part.name == part.name:
            yield k


def _keyed(leaf: Leaf, key: Block | None, furnished: Furnish) -> Leaf | None:
    """The sheet with its map before its other blocks; None where these or the pieces on it leave no room for that."""
    if key is None:
        return None
    keyed = leaf._replace(part=replace(leaf.part, blocks=(key, *leaf.part.blocks)))
    before, after = furnished(leaf), furnished(keyed)
    new = tuple(box for box in after.area.taken if box not in before.area.taken)
    free = Area(-_FAR, -_FAR, _FAR, _FAR, new)
    return keyed if not after.rest and all(free.holds(part.box, placing) for part, placing in leaf.pieces) else None


def key_map(rows: Sequence[Row], here: int, form: Form, setting: Setting) -> Block | None:
    """The map that stands on sheet `here`; None where numbers have no room in so many pieces.

    With a title, pieces that are on that sheet are grey. Under each one stands the number of its sheet.
    """
    words, metrics, wide = setting
    sheet = words.say(KeyMap.SHEET)
    labels = max(metrics.width(label, SMALL) for label in (sheet, *(row.label for row in rows))) + _AFTER_LABEL
    columns = len(rows) if form.in_line else 1
    each = (wide - _BESIDE * (columns - 1)) / columns
    most = max(len(row.sheets) for row in rows)
    across = min(_WIDE, (each - labels) / most)
    largest = max(metrics.width(str(number), SMALL, Pen.STRONG) for row in rows for number in (most, *row.sheets))
    if largest + 2 * _AIR > across:
        return None
    shapes: list[Shape] = []
    for k, row in enumerate(rows):
        x, top = (k * (each + _BESIDE), 0.0) if form.in_line else (0.0, -k * (_ROW + _APART))
        shapes += _drawn(row, Point(x + labels, top - _HIGH), across, here if form.titled else 0, metrics)
        shapes.append(Text(Point(x, top - _HIGH / 2 - metrics.cap * SMALL / 2), SMALL, row.label))
        shapes.append(Text(Point(x, top - _HIGH - _NUMBERS_DOWN), SMALL, sheet))
    high = (_ROW + _APART) * len(rows) / columns - _APART
    if not form.titled:
        return Block(shapes=tuple(shapes), high=high)
    grey = any(here in row.sheets for row in rows)
    return Block(words.say(KeyMap.TITLE), words.say(KeyMap.HERE) if grey else "", tuple(shapes), high)


def _drawn(row: Row, at: Point, across: float, here: int, metrics: FontMetrics) -> Iterator[Shape]:
    """The pieces of a row from its lower left corner `at`, each with its number, and that of its sheet under it."""
    size = LEAD if across >= _WIDE / 2 else SMALL
    for number, sheet in enumerate(row.sheets, 1):
        left = at.x + (number - 1) * across
        outline = rectangle(left, at.y, left + across, at.y + _HIGH, Pen.OUTLINE)
        if sheet == here:
            yield filled(outline.points(), Pen.HELD)
        yield outline
        pen = Pen.STRONG if sheet == here and size == LEAD else Pen.TEXT
        long, up = metrics.width(str(number), size, pen), (_HIGH - metrics.cap * size) / 2
        yield Text(Point(left + (across - long) / 2, at.y + up), size, str(number), pen=pen)
        long = metrics.width(str(sheet), SMALL)
        yield Text(Point(left + (across - long) / 2, at.y - _NUMBERS_DOWN), SMALL, str(sheet))
