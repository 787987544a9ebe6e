"""The words of the winding picture: few, and each beside what it names."""

from __future__ import annotations

from collections.abc import Sequence

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, Text, line
from layout.drawing.symbols import arrow_head, beside, centred, knot
from layout.drawing.typeset import LEAD, SMALL
from layout.messages.english import ENGLISH
from layout.messages.roles import Winding
from layout.parts.winding.face import Face
from layout.parts.winding.scale import Scale
from layout.parts.winding.shown_passes import ShownPass
from layout.parts.winding.view import ENDS
from layout.warps.warp import End

_NAMES = {"near": Winding.NEAR_END, "far": Winding.FAR_END}
_INWARD, _CLEAR = 3.0, 0.5  # how far a knot's name reaches past it, and keeps from the other's
_SAMPLE, _TO_WORDS, _BETWEEN = 7.0, 9.0, 7.0


def words(face: Face, metrics: FontMetrics) -> list[Shape]:
    """The counts and the way the winding goes, the names of both ends and knots, the numbers, what is left out."""
    shapes: list[Shape] = [*_counts(face, metrics), *_numbers(face, metrics), *_left_out(face, metrics)]
    toward = face.plan.warp.toward
    for end in ENDS:
        at = Point(-toward * face.scale.outer / 2, _row(face, end, 1))
        shapes.append(beside(ENGLISH.say(_NAMES[end]), at, metrics, toward))
    return [*shapes, *_tied(face, metrics)]


def _tied(face: Face, metrics: FontMetrics) -> list[Text]:
    """Both knots by name, each outward from its knot, and clear of the other where they stand close."""
    toward, ((on, _), (off, end)) = face.plan.warp.toward, face.knots()
    inward = min(_INWARD, toward * (off.x - on.x) / 2 - _CLEAR) if end == "near" else _INWARD
    return [
        beside(ENGLISH.say(Winding.TIE_ON), Point(on.x + toward * inward, _row(face, "near", 0)), metrics, -toward),
        beside(
            ENGLISH.say(Winding.TIE_OFF),
            Point(off.x - toward * inward, _row(face, end, int(end == "far"))),
            metrics,
            toward,
        ),
    ]


def _row(face: Face, end: End, row: int) -> float:
    """The middle of a row of words outside a frame end."""
    return face.height(end) + face.outward(end) * (face.scale.past + (row + 0.5) * face.scale.row)


def _counts(face: Face, metrics: FontMetrics) -> list[Shape]:
    scale, toward = face.scale, face.plan.warp.toward
    at = Point(-scale.outer / 2, scale.box[3] - LEAD * metrics.ascent)
    said = _fitting([face.plan.counted, *face.plan.doubled], scale.box[2] - at.x - 9, metrics)
    middle = Point(at.x + metrics.width(said, LEAD) + 6, at.y + metrics.cap * LEAD / 2)
    shaft = line(Point(middle.x - toward * 3, middle.y), Point(middle.x + toward * 2, middle.y), Pen.HELP)
    return [Text(at, LEAD, said), shaft, arrow_head(Point(middle.x + toward * 2, middle.y), Point(toward, 0))]


def _fitting(messages: Sequence[str], room: float, metrics: FontMetrics) -> str:
    """As many of `messages` in a row, from the first, as find room; the first in any case."""
    count = len(messages)
    while count > 1 and metrics.width(ENGLISH.listed(messages[:count]), LEAD) > room:
        count -= 1
    return ENGLISH.listed(messages[:count])


def _numbers(face: Face, metrics: FontMetrics) -> list[Text]:
    """The number of each wind, or end, beyond the far end; of the outer ones only where there is no room for all."""
    wound, ends = face.plan.warp.kind == "wound", face.plan.warp.ends
    groups = [[leg for leg in group if not wound or (leg.up and leg.number < ends - 1)] for group in face.way.groups]
    said = {leg: str(leg.number // 2 + 1 if wound else leg.number + 1) for group in groups for leg in group}
    room = face.scale.step(face.plan.warp.kind) * (2 if wound else 1)
    if max(metrics.width(each, SMALL) for each in said.values()) + 1 > room:
        groups = [[group[0], *group[-1:]][: len(group)] for group in groups if group]
    y = _row(face, "far", 0)

    def at(leg: ShownPass) -> Point:
        return Point(leg.far if wound else (leg.near + leg.far) / 2, y)

    return [centred(said[leg], at(leg), metrics) for group in groups for leg in group]


def _left_out(face: Face, metrics: FontMetrics) -> list[Text]:
    """How many winds, or ends, lie in the gap."""
    count = face.way.left_out
    if not count:
        return []
    if face.plan.warp.kind == "wound":
        said = ENGLISH.say(Winding.MORE_WINDS, count=count // 2)
    else:
        said = ENGLISH.say(Winding.MORE_ENDS, count=count)
    middle, row, lines = sum(face.way.gap) / 2, face.scale.row, said.split()
    return [centred(word, Point(middle, face.scale.reach / 2 + (1 - k) * row), metrics) for k, word in enumerate(lines)]


def legend(scale: Scale, behind: Winding | None, metrics: FontMetrics) -> list[Shape]:
    """What the lines mean, in rows under the picture, and that it is not to scale."""
    left, right = -scale.outer / 2, scale.box[2]
    x, y = left, scale.box[1] + scale.row * (scale.legend_rows - 0.5)
    shapes: list[Shape] = []
    hidden = [("back", behind)] if behind else []
    samples = (("face", Winding.ON_FACE), *hidden, ("knot", Winding.KNOT), ("rows", Winding.ROWS))
    for sample, role in samples:
        said = ENGLISH.say(role)
        width = metrics.width(said, SMALL)
        if x + _TO_WORDS + width > right:
            x, y = left, y - scale.row
        shapes += [*_sample(sample, x, y), beside(said, Point(x + _TO_WORDS, y), metrics, 1)]
        x += _TO_WORDS + width + _BETWEEN
    shapes.append(
        beside(ENGLISH.say(Winding.NOT_TO_SCALE), Point(right - 0.3, scale.box[1] + scale.row / 2), metrics, -1)
    )
    return shapes


def _sample(sample: str, x: float, y: float) -> list[Shape]:
    if sample == "knot":
        return [knot(Point(x + _SAMPLE / 2, y))]
    offsets = (-0.8, 0.8) if sample == "rows" else (0.0,)
    pen = Pen.THREAD_BACK if sample == "back" else Pen.THREAD
    return [line(Point(x, y + off), Point(x + _SAMPLE, y + off), pen) for off in offsets]
