"""The winding picture: the frame from its face and from the side, with the true way of the thread; not to scale.

Widths are drawn as far apart as the eye needs; number, order, side, layer and direction of all passes are those of the
kit's warp.
"""

from __future__ import annotations

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, cross
from layout.drawing.sheet import Part
from layout.messages.english import ENGLISH
from layout.messages.roles import Winding
from layout.parts.winding.face import Face
from layout.parts.winding.scale import FULL, LOW
from layout.parts.winding.side import side_view
from layout.parts.winding.words import legend, words
from layout.plan import Plan

_ARM, _OFF = 0.5, 1.5


def winding(plan: Plan, metrics: FontMetrics, *, low: bool = False) -> Part:
    """The winding picture of a plan; `low` gives a smaller one with fewer passes drawn.

    Its register crosses stand beside the frame, on the outermost lines of the near end (left, right) and the far end.
    """
    face = Face.of(plan, LOW if low else FULL)
    shapes: list[Shape] = [*face.frame(), *face.kind.fittings(face), *face.heading(), *face.threads(), *face.tied()]
    shapes += [*side_view(face, metrics), *words(face, metrics), *legend(face.scale, face.kind.behind, metrics)]
    x, near, far = face.scale.outer / 2 + _OFF, face.height("near"), face.height("far")
    datum = Point(-x, near), Point(x, near), Point(-x, far)
    shapes += [hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER)]
    title, note = ENGLISH.say(Winding.TITLE), ENGLISH.say(face.kind.note)
    return Part("winding", title, tuple(shapes), datum, face.scale.box, (note,), whole=True)
