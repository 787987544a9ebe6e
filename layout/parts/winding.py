"""The winding picture: the frame from its face and from the side, with the true way of the thread; not to scale.

Widths are drawn as far apart as the eye needs; number, order, side, layer and direction of all passes are those of the
kit's warp.
"""

from __future__ import annotations

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, cross
from layout.drawing.sheet import Part
from layout.parts.winding_face import Face
from layout.parts.winding_scale import FULL, LOW
from layout.parts.winding_side import side_view
from layout.parts.winding_words import legend, words
from layout.plan import Plan

_ARM, _OFF = 0.5, 1.5
_NOTES = {
    "wound": "Not to scale. Full lines run on the face of the frame, broken lines behind it.",
    "notched": "Not to scale. All ends lie on the face; every turn goes round a tooth.",
    "pegged": "Not to scale. All ends lie on the face; every peg turns two of them.",
}


def winding(plan: Plan, metrics: FontMetrics, *, low: bool = False) -> Part:
    """The winding picture of a plan; `low` gives a smaller one with fewer passes drawn.

    Its register crosses stand beside the frame, on the outermost lines of the near end (left, right) and the far end.
    """
    face = Face.of(plan, LOW if low else FULL)
    shapes: list[Shape] = [*face.frame(), *face.pegs(), *face.heading(), *face.threads(), *face.tied()]
    shapes += [*side_view(face, metrics), *words(face, metrics), *legend(face.scale, plan.warp.kind, metrics)]
    x, near, far = face.scale.outer / 2 + _OFF, face.height("near"), face.height("far")
    datum = Point(-x, near), Point(x, near), Point(-x, far)
    shapes += [hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER)]
    return Part("winding", "How to wind", tuple(shapes), datum, face.scale.box, (_NOTES[plan.warp.kind],), whole=True)
