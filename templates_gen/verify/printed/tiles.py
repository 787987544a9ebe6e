"""The head of a sheet: the tile of its step in its black square, and how far the small warp says the work has come.

All places and sizes are stated here a second time.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import chain

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Region, Text
from layout.drawing.sheet import Sheet
from templates_gen.messages.roles.proof import Furnished
from templates_gen.verify import LIMIT
from templates_gen.verify.boxes import box_of
from templates_gen.verify.finding import Findings, finding

_NAME = 22 * 25.4 / 72  # mm to the em: the number of the tile
_TILE_LEFT, _TILE_DOWN, _TILE = 8.0, 18.0, 12.0  # the square: from the left and from the top of the sheet, and its side
_STEPS, _APART, _HIGH, _PICK_UP, _PAST, _FREE = 8, 2.2, 3.4, 1.7, 1.1, 0.3


def check_tile(sheet: Sheet, wanted: Sequence[str], *, alone: bool) -> Findings:
    """The tile and the small warp of a sheet whose tile is `wanted`, of one or none; `alone` holds words only."""
    tiles = [text for text in _texts(sheet) if text.pen is Pen.ON_BLACK and abs(text.size - _NAME) <= LIMIT]
    shown = [text.words for text in tiles]
    wrong = []
    if (len(shown) > 1 if alone else shown != list(wanted)) or not all(_on_square(sheet, text) for text in tiles):
        wrong.append(finding(Furnished.TILE))
    step = next((int(tile) for tile in (shown if alone else wanted) if tile.isdigit()), 0)
    if not wrong and not _shows(sheet, step):
        wrong.append(finding(Furnished.STEP, step=step))
    return Findings(0.0, tuple(wrong))


def _texts(sheet: Sheet) -> Iterator[Text]:
    return (shape for shape in sheet.shapes if isinstance(shape, Text))


def _on_square(sheet: Sheet, text: Text) -> bool:
    """Whether the black square stands in its place, and the tile's number on it."""
    left, top = _TILE_LEFT, sheet.height - _TILE_DOWN
    corners = [left, top - _TILE, left + _TILE, top]
    squares = [shape for shape in sheet.shapes if isinstance(shape, Region) and shape.pen is Pen.SOLID]
    there = any(
        len(square.contours) == 1
        and all(abs(one - other) <= LIMIT for one, other in zip(box_of(square.contours[0]), corners, strict=True))
        for square in squares
    )
    return there and left < text.at.x < left + _TILE and top - _TILE < text.at.y < top


def _shows(sheet: Sheet, step: int) -> bool:
    """Whether a pick has come over the first end of the small warp to that of a step: none where there is no step."""
    ends = sorted(box_of(shape) for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen is Pen.SMALL_WARP)
    if not ends or not step:
        return not ends and not step
    left, foot = ends[0][:2]
    xs = [left + _APART * k for k in range(_STEPS)]
    wanted = [[x, foot, x, foot + _HIGH] for x in xs]
    turns = [at for x in xs[1:step:2] for at in (x - _FREE, x + _FREE)]
    stops = [xs[0] - _PAST, *turns, xs[step - 1] + _PAST]
    y = foot + _PICK_UP
    rows = [[one, y, other, y] for one, other in zip(stops[::2], stops[1::2], strict=True)]
    picks = sorted(box for box in _picks(sheet) if _within(box, xs[0], xs[-1], foot))
    return _same(ends, wanted) and _same(picks, rows)


def _picks(sheet: Sheet) -> Iterator[Box]:
    return (box_of(shape) for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen is Pen.PICK)


def _within(box: Sequence[float], left: float, right: float, foot: float) -> bool:
    return box[2] > left - _APART and box[0] < right + _APART and foot - LIMIT <= box[1] <= foot + _HIGH + LIMIT


def _same(found: Sequence[Sequence[float]], wanted: Sequence[Sequence[float]]) -> bool:
    pairs = zip(chain(*found), chain(*wanted), strict=False)
    return len(found) == len(wanted) and all(abs(one - other) <= LIMIT for one, other in pairs)
