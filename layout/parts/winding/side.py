"""The winding picture seen from the right, cut through the frame: how the thread goes round or into both ends."""

from __future__ import annotations

from layout.drawing.metrics import FontMetrics
from layout.drawing.shapes import Point, Shape, Text
from layout.drawing.symbols import arrow_head, beside, knot
from layout.drawing.typeset import SMALL
from layout.messages.roles import Winding
from layout.parts.winding.face import Face
from layout.parts.winding.kinds.picture_kind import KNOT, Section
from layout.parts.winding.lines import downward, rows_of

_APART = 3.4  # between two arrows on one line
_ARROW = (3.0, 2.0)
_WORDS_OFF, _CAP_OFF = 1.8, 3.7  # from the thread to the baseline of words beside it
_UNDER, _WIDE = 15.4, 44.0
_NAMES_AT, _BY_ROD, _IN_LOW = 0.8, 0.5, 0.62


def side_view(face: Face, section: Section, metrics: FontMetrics) -> list[Shape]:
    """Sections of both ends, the first two passes with their arrows, the tie-on, and which side is which."""
    say = face.plan.words.say
    named = [beside(say(Winding.ROD), section.rod, metrics, 1)] if section.rod else []
    tied = knot(section.knot, KNOT)
    return [*section.shapes, tied, *named, *_passes(face, section), *_names(face, section, metrics)]


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
    off = section.half if not section.slope else section.slope * (_NAMES_AT - 0.5) * face.scale.reach
    off = max(off, section.half)
    texts, high = [], _NAMES_AT if face.scale.knots else _IN_LOW
    for role, baseline, share in (
        (Winding.SIDE_FACE, x - off - _WORDS_OFF, high),
        (Winding.SIDE_BEHIND, x + off + _CAP_OFF, high if section.rod is None else _BY_ROD),
    ):
        said = say(role)
        y = face.up(share) - metrics.width(said, SMALL) / 2
        texts.append(Text(Point(baseline, y), SMALL, said, 90.0))
    rows = rows_of(say(Winding.FROM_RIGHT), SMALL, min(_WIDE, 2 * (face.scale.right - x)), metrics)
    return [*texts, *downward(rows, SMALL, Point(x, -_under(face)), metrics, "centre")]


def _under(face: Face) -> float:
    return face.scale.past + face.scale.ring * 2 + 4.0
