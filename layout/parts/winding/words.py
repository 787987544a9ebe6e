"""The words of the winding picture: few, and each beside what it names."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, Text
from layout.drawing.typeset import SMALL
from layout.messages.roles import Winding
from layout.parts.winding.face import DOTS_AT, Face
from layout.parts.winding.lines import downward, row, rows_of, upward
from layout.parts.winding.shown_passes import ShownPass
from layout.parts.winding.view import ENDS
from layout.warps.warp import End

NUMBERS = 2.9
"""From the outermost line to the middle of numbers, in mm."""

_NAMES = {"near": Winding.NEAR_BAR, "far": Winding.FAR_BAR}
_UP, _DOWN, _OVER_DOTS = 2.0, 4.6, 2.8
_NAME_WIDE, _LEAST, _IN_GAP = 44.0, 1.0, 1.0


def words(face: Face, metrics: FontMetrics) -> list[Shape]:
    """The names of both ends, the numbers of the marks at both, and what is left out."""
    texts = [text for end in ENDS for text in (*_name(face, end, metrics), *_numbers(face, end, metrics))]
    return [*texts, *_left_out(face, metrics)]


def _name(face: Face, end: End, metrics: FontMetrics) -> list[Text]:
    rows = rows_of(face.plan.words.say(_NAMES[end]), SMALL, _NAME_WIDE, metrics, Pen.STRONG)
    scale, upper = face.scale, face.outward(end) > 0
    y = scale.reach + scale.past + _UP if upper else -scale.past - _DOWN
    return (upward if upper else downward)(rows, SMALL, Point(scale.left, y), metrics, pen=Pen.STRONG)


def _numbers(face: Face, end: End, metrics: FontMetrics) -> list[Text]:
    """The number of each mark that is drawn; of the outer ones of a group only where there is no room for all."""
    y = face.height(end) + face.outward(end) * NUMBERS - metrics.cap * SMALL / 2
    return [row(said, SMALL, Point(x, y), metrics, "centre", Pen.STRONG) for x, said in _numbered(face, end, metrics)]


def _numbered(face: Face, end: End, metrics: FontMetrics) -> Iterator[tuple[float, str]]:
    groups = [_marks(face, end, group) for group in face.way.groups]
    for marks in groups:
        places = sorted(marks.values())
        room = min((other - one for one, other in pairwise(places)), default=99.0)
        if max(metrics.width(str(number), SMALL, Pen.STRONG) for number in marks) + _LEAST > room:
            marks = {number: marks[number] for number in (min(marks), max(marks))}
        yield from ((x, str(number)) for number, x in marks.items())


def _marks(face: Face, end: End, group: Sequence[ShownPass]) -> dict[int, float]:
    """The marks to which passes come at an end, by their numbers."""
    return {face.kind.number(face.plan.warp, leg.number, end): face.kind.mark(face, leg, end) for leg in group}


def _left_out(face: Face, metrics: FontMetrics) -> list[Text]:
    """Which winds, or ends, are left out: over the dots, or over the frame where words are too long for the gap."""
    count, first = face.way.left_out, len(face.way.groups[0])
    if not count:
        return []
    by_two = bool(face.plan.warp.winds)
    numbers = (first // 2 + 1, (first + count) // 2) if by_two else (first + 1, first + count)
    role = Winding.WINDS_BETWEEN if by_two else Winding.ENDS_BETWEEN
    said = face.plan.words.say(role, first=numbers[0], last=numbers[1])
    width = face.scale.gap + _IN_GAP
    rows = _even(said, width, metrics)
    by_rod = face.plan.warp.kind == "rod" and not face.scale.knots  # it lies where the words would
    if (
        not by_rod
        and len(rows) <= _ROWS
        and all(metrics.width(each, SMALL) <= width for each in rows)
        and _whole(rows, said)
    ):
        at = Point(sum(face.way.gap) / 2, face.up(DOTS_AT) + _OVER_DOTS)
        texts = upward(rows, SMALL, at, metrics, "centre")
        if _is_clear(face, texts, metrics):
            return texts
    scale = face.scale
    rows = rows_of(said, SMALL, scale.outer - _NAME_WIDE - 2, metrics)
    return upward(rows, SMALL, Point(scale.outer / 2, scale.reach + scale.past + _UP), metrics, "right")


def _is_clear(face: Face, texts: Sequence[Text], metrics: FontMetrics) -> bool:
    """Whether words over the dots lie under the far end, and between all passes."""
    if max(text.at.y for text in texts) + metrics.ascent * SMALL > face.scale.reach - face.scale.bar - _OFF:
        return False
    for leg in face.way.legs:
        near, far = (face.meets(leg, end) for end in ENDS)
        for text in texts:
            for y in (text.at.y, text.at.y + metrics.cap * SMALL):
                x = near.x + (far.x - near.x) * (y - near.y) / (far.y - near.y)
                if text.at.x - _OFF < x < text.at.x + metrics.width(text.words, SMALL) + _OFF:
                    return False
    return True


_ROWS, _NARROWER, _OFF = 3, 0.5, 0.7


def _even(said: str, width: float, metrics: FontMetrics) -> list[str]:
    """`said` in as few lines as `width` asks for, as long as each other as they can be."""
    rows = rows_of(said, SMALL, width, metrics)
    while len(narrower := rows_of(said, SMALL, width := width - _NARROWER, metrics)) == len(rows):
        if not _whole(narrower, said):
            break
        rows = narrower
    return rows


def _whole(rows: Sequence[str], said: str) -> bool:
    """Whether lines break between words only."""
    return " ".join(rows) == " ".join(said.split())
