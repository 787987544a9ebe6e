"""The small map of parts in pieces: every piece in order with the number of its sheet, grey where that is this one.

Where a sheet has no room there is none; a map that stands there is whole and true.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point, Region, Shape, Text
from layout.drawing.sheet import Sheet
from layout.messages.catalogue import Catalogue
from layout.messages.roles import KeyMap
from templates_gen.messages.roles.proof import Laid
from templates_gen.verify import LIMIT
from templates_gen.verify.alike import in_rows
from templates_gen.verify.boxes import box_of
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.furniture import tile_of

_HIGH, _UNDER = 5.0, 8.0  # of a piece in the map; from the name of a row to the word under it at most, in mm
_ENDS = (("near", KeyMap.NEAR), ("far", KeyMap.FAR))
Word = tuple[Point, str]


@dataclass(frozen=True, slots=True)
class Row:
    """The pieces of the part of `end`: what stands in each box, which are grey, and what stands under each."""

    end: str
    at: Point
    numbers: tuple[str, ...]
    grey: tuple[bool, ...]
    sheets: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Map:
    """The rows of a map, downward and then to the right, whether it says what grey is, and all its words."""

    rows: tuple[Row, ...]
    explained: bool
    words: tuple[Word, ...]


def map_on(sheet: Sheet, spoken: Catalogue) -> Map | None:
    """The map on a sheet of paper; None where there is none."""
    texts = [shape for shape in sheet.shapes if isinstance(shape, Text)]
    sheets = [text.at for text in texts if text.words == spoken.say(KeyMap.SHEET)]
    if not sheets:
        return None
    boxes = sorted(_boxes(sheet.shapes))
    filled = [
        box_of(shape.contours[0]) for shape in sheet.shapes if isinstance(shape, Region) and shape.pen is Pen.HELD
    ]
    rows, words = [], []
    for end, role in _ENDS:
        for text in texts:
            under = [at for at in sheets if abs(at.x - text.at.x) <= LIMIT and 0 < text.at.y - at.y < _UNDER]
            if text.words == spoken.say(role) and under:
                rows.append(_row(end, text.at, under[0], boxes, filled, texts))
                words += [(text.at, text.words), (under[0], spoken.say(KeyMap.SHEET))]
    said = [(text.at, text.words) for role in (KeyMap.TITLE, KeyMap.HERE) for text in _first(texts, spoken.say(role))]
    explained = any(each == spoken.say(KeyMap.HERE) for _, each in said)
    ordered = [row for across in in_rows(rows, lambda row: row.at) for row in across]
    return Map(tuple(ordered), explained, (*words, *(said if rows else ())))


def _first(texts: Sequence[Text], words: str) -> list[Text]:
    return [text for text in texts if text.words == words][:1]


def _row(
    end: str, name: Point, under: Point, boxes: Sequence[Box], filled: Sequence[Box], texts: Sequence[Text]
) -> Row:
    """The boxes beside a name from the left to the right, as far as each begins where the one before ends."""
    chain: list[Box] = []
    for box in boxes:
        beside = box[1] < name.y < box[3] and box[0] > name.x
        if beside and (not chain or abs(box[0] - chain[-1][2]) <= LIMIT):
            chain.append(box)
    numbers = [_within(texts, box[0], box[2], box[1], box[3]) for box in chain]
    sheets = [_within(texts, box[0], box[2], under.y - LIMIT, under.y + LIMIT) for box in chain]
    grey = [any(_alike(box, other) for other in filled) for box in chain]
    return Row(end, name, tuple(numbers), tuple(grey), tuple(sheets))


def _within(texts: Sequence[Text], left: float, right: float, low: float, high: float) -> str:
    """All that begins there."""
    return " ".join(text.words for text in texts if left < text.at.x < right and low <= text.at.y <= high)


def _boxes(shapes: Sequence[Shape]) -> Iterator[Box]:
    """Every drawn rectangle as high as a piece of a map."""
    for shape in shapes:
        if isinstance(shape, Curve) and shape.pen is Pen.OUTLINE and shape.closed and len(shape.points()) <= 5:
            box = box_of(shape)
            if abs(box[3] - box[1] - _HIGH) <= LIMIT:
                yield box


def _alike(one: Box, other: Box) -> bool:
    return all(abs(a - b) <= LIMIT for a, b in zip(one, other, strict=True))


def check_map(
    shown: Map, sheet: Sheet, number: int, pieces: Mapping[str, Sequence[FoundPart]], *, near_below: bool
) -> Iterator[Finding]:
    """What is wrong with the map on the sheet of that `number`; `pieces` are all of the file, by part.

    Of parts that share a sheet both are shown, the one of the upper frame end first.
    """
    tiles = {shape.words for shape in sheet.shapes if isinstance(shape, Text) and shape.pen is Pen.ON_BLACK}
    own = {
        name: sorted(there, key=_left) for name, there in pieces.items() if len(there) > 1 and tile_of(name) in tiles
    }
    wanted = {name: [seen.number[0] for seen in there] for name, there in own.items()}
    ends = [row.end for row in shown.rows]
    there = set.union(*({name for name in wanted if number in wanted[name]}, _sharing(wanted)))
    upper = "far" if near_below else "near"
    if ends != sorted(set(ends), key=lambda end: end != upper) or any(not _shows(ends, name) for name in there):
        yield finding(Laid.MAP_ROWS)
    for row in shown.rows:
        sheets = next((found for name, found in wanted.items() if name.endswith(row.end)), [])
        numbers = tuple(str(k) for k in range(1, len(sheets) + 1))
        if not sheets or row.numbers != numbers or row.sheets != tuple(map(str, sheets)):
            yield finding(Laid.MAP)
        if row.grey != tuple(each == number and shown.explained for each in sheets):
            yield finding(Laid.MAP_GREY)


def _left(seen: FoundPart) -> float:
    return seen.part.box[0]


def _shows(ends: Sequence[str], name: str) -> bool:
    return any(name.endswith(end) for end in ends)


def _sharing(wanted: Mapping[str, Sequence[int]]) -> set[str]:
    """The parts, if there are several and a sheet holds pieces of more than one."""
    sets = [set(sheets) for sheets in wanted.values()]
    return set(wanted) if len(sets) > 1 and set.intersection(*sets) else set()
