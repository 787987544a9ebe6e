"""The winding picture seen from the right, cut through the frame: how the thread goes round or into both ends."""

from __future__ import annotations

from collections.abc import Iterator

from layout.drawing.metrics import FontMetrics
from layout.drawing.shapes import Point, Shape, Text
from layout.drawing.symbols import arrow_head, beside, knot
from layout.drawing.typeset import SMALL, longest_word
from layout.messages.roles import Winding
from layout.parts.winding.face import Face
from layout.parts.winding.kinds.picture_kind import KNOT, Section
from layout.parts.winding.lines import downward, rows_of, step_of

_APART = 3.4  # between two arrows on one line
_ARROW = (3.0, 2.0)
_WORDS_OFF, _CAP_OFF = 1.8, 3.7  # from the thread to the baseline of words beside it
_WIDE, _CLEAR = 44.0, 1.0
_NAMES_AT, _IN_LOW, _TO_ROD, _LEAST, _PAST_ROD = 0.8, 0.62, 7.0, 12.0, 6.0


def side_view(face: Face, section: Section, metrics: FontMetrics) -> list[Shape]:
    """Sections of both ends, the first two passes with their arrows, the tie-on, and which side is which."""
    named = [_rod(face, section.rod, metrics)] if section.rod else []
    tied = knot(section.knot, KNOT)
    return [*section.shapes, tied, *named, *_passes(face, section), *_names(face, section, metrics)]


def _rod(face: Face, at: Point, metrics: FontMetrics) -> Text:
    """The name of a loose rod beside it; a long one turned to the left."""
    said = face.plan.words.say(Winding.ROD)
    wide = metrics.width(said, SMALL)
    if at.x + wide < face.scale.beside:
        return beside(said, at, metrics, 1)
    return Text(Point(at.x + metrics.cap * SMALL, at.y - wide / 2), SMALL, said, 90.0)


def _passes(face: Face, section: Section) -> list[Shape]:
    """An arrow on each of the first two passes, near the near end if they cross; the face to the left."""
    legs, x = face.way.legs[:2], face.side_x
    alone = all(leg.layer == "face" for leg in legs)
    shapes: list[Shape] = []
    for leg in legs:
        side = -1 if leg.layer == "face" else 1
        way = (1 if leg.up else -1) * face.outward("far")
        share = 0.25 if leg.crosses else 0.6 if leg.up else 0.5
        y = face.up(share) + (_APART * way if alone else 0)
        ahead = Point(-side * section.slope * (1 if leg.up else -1), way)
        shapes.append(arrow_head(Point(x + side * section.half, y), ahead, *_ARROW))
    return shapes


def _names(face: Face, section: Section, metrics: FontMetrics) -> list[Text]:
    """Face and behind along the thread, by the far end; under it all from where it is seen."""
    say, x = face.plan.words.say, face.side_x
    at = face.up(_NAMES_AT if face.scale.knots else _IN_LOW)
    low, high = face.scale.bar + _CLEAR, face.scale.reach - face.scale.bar - _CLEAR
    texts, beyond = [*_along(face, section, Winding.SIDE_FACE, (low, high), at, metrics)], False
    if section.rod:
        kept = max(_TO_ROD, metrics.width(say(Winding.ROD), SMALL) / 2 + _CLEAR)
        free = (0.0, section.rod.y - kept) if face.outward("far") > 0 else (section.rod.y + kept, face.scale.reach)
        beyond = free[1] - free[0] < max(_LEAST, longest_word(say(Winding.SIDE_BEHIND), SMALL, metrics))
        low, high = (low, high) if beyond else free
    past = section.rod.x - x - section.half + _PAST_ROD if section.rod and beyond else 0.0
    texts += _along(face, section, Winding.SIDE_BEHIND, (low, high), at, metrics, past)
    rows = rows_of(say(Winding.FROM_RIGHT), SMALL, min(_WIDE, 2 * (face.scale.right - x)), metrics)
    return [*texts, *downward(rows, SMALL, Point(x, -_under(face)), metrics, "centre")]


def _along(
    face: Face,
    section: Section,
    role: Winding,
    room: tuple[float, float],
    at: float,
    metrics: FontMetrics,
    past: float = 0.0,
) -> Iterator[Text]:
    """Words along the thread, turned to the left, within a room from y to y, as close to the height `at` as they can
    lie, and `past` mm further away from it.
    """
    low, high = room
    rows = rows_of(face.plan.words.say(role), SMALL, high - low, metrics)
    half = max(metrics.width(row, SMALL) for row in rows) / 2
    y = min(max(at, low + half), high - half)
    off = max(section.half, section.slope * (abs(y - face.scale.reach / 2) + half))
    side, first = (-1, -off - _WORDS_OFF) if role is Winding.SIDE_FACE else (1, off + _CAP_OFF + past)
    for k, row in enumerate(rows if side > 0 else rows[::-1]):
        x = face.side_x + first + side * k * step_of(rows, SMALL)
        yield Text(Point(x, y - metrics.width(row, SMALL) / 2), SMALL, row, 90.0)


def _under(face: Face) -> float:
    return face.scale.past + face.scale.ring * 2 + 4.0
