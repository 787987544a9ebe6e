"""The winding picture: the frame from its face and from the side, with the true way of the thread; not to scale.

Widths are drawn as far apart as the eye needs; number, order, side, layer and direction of all passes are those of the
kit's warp.
"""

from __future__ import annotations

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, cross
from layout.drawing.sheet import Part
from layout.frames.frame import Frame
from layout.messages.english import ENGLISH
from layout.messages.roles import Winding
from layout.parts.winding.face import Face
from layout.parts.winding.scale import FULL, LOW
from layout.parts.winding.side import side_view
from layout.parts.winding.words import legend, words
from layout.plan import Plan
from layout.values.units import say_length

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
    notes = (ENGLISH.say(face.kind.note), *_tightening(plan.kit.frame))
    return Part(
        "winding", ENGLISH.say(Winding.TITLE), tuple(shapes), datum, face.scale.box, notes, whole=True, measured=False
    )


def _tightening(frame: Frame) -> tuple[str, ...]:
    """How a frame whose height can be adjusted is used, and what to mind."""
    if frame.travel is None:
        return ()
    low, tight = (say_length(each.outer_height) for each in (frame, frame.tightened))
    return (ENGLISH.say(Winding.TIGHTEN, low=low, tight=tight),)
