"""The winding picture seen from the right, cut through the frame: how the thread goes round or into both ends."""

from __future__ import annotations

from collections.abc import Sequence

from layout.drawing.metrics import FontMetrics
from layout.drawing.shapes import Point, Shape
from layout.drawing.symbols import arrow_head, beside, centred
from layout.messages.english import ENGLISH
from layout.messages.roles import Winding
from layout.parts.winding.face import Face
from layout.parts.winding.kinds.picture_kind import Section

_APART = 3.4  # from an arrow to its number


def side_view(face: Face, metrics: FontMetrics) -> list[Shape]:
    """Sections of both ends, the first two passes with their numbers, the tie-on, and which side is which."""
    x, section = face.side_x, face.kind.section(face)
    named = [beside(ENGLISH.say(Winding.ROD), section.rod, metrics, 1)] if section.rod else []
    return [*section.shapes, *named, *_passes(face, x, section, metrics), *_names(face, x, metrics)]


def _passes(face: Face, x: float, section: Section, metrics: FontMetrics) -> list[Shape]:
    """An arrow and a number on each of the first two passes, near the near end if they cross; the face to the left."""
    legs, reach = face.way.legs[:2], face.scale.reach
    alone = all(leg.layer == "face" for leg in legs)
    shapes: list[Shape] = []
    for leg in legs:
        side = -1 if leg.layer == "face" else 1
        way = (1 if leg.up else -1) * face.outward("far")
        y = face.height("near") + face.outward("far") * reach / 4 if leg.crosses else reach / 2
        y += _APART * way if alone else 0
        ahead = Point(-side * section.slope * (1 if leg.up else -1), way)
        shapes.append(arrow_head(Point(x + side * section.half, y), ahead))
        shapes.append(centred(str(leg.number + 1), Point(x + side * (section.half + _APART), y), metrics))
    return shapes


def _names(face: Face, x: float, metrics: FontMetrics) -> Sequence[Shape]:
    scale = face.scale
    up, down = scale.reach + scale.past + 0.5 * scale.row, -scale.past - 0.5 * scale.row
    face_name, behind, from_right = map(ENGLISH.say, (Winding.SIDE_FACE, Winding.SIDE_BEHIND, Winding.FROM_RIGHT))
    apart = metrics.width(behind, 1.0) * 1.5 + 1.0
    return (
        centred(face_name, Point(x - apart - 1.5, up), metrics),
        centred(behind, Point(x + apart, up), metrics),
        centred(from_right, Point(x, down), metrics),
    )
