"""The picture of a leaflet that shows how the ends are spaced: by a guide, by a comb, or by eye."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Shape
from templates_gen.messages.roles.proof_leaflet import LeafPicture
from templates_gen.verify import LIMIT
from templates_gen.verify.alike import alike
from templates_gen.verify.printed.leaflet_facts import Facts
from templates_gen.verify.printed.leaflet_lines import Upright, bent, boxes, numbers, uprights

_SHOWN, _NUMBERED, _NUMBER = 6, 3, 2.7


def space(facts: Facts, shapes: Sequence[Shape]) -> Iterator[LeafPicture]:
    """The first ends in the order of winding, equally far apart, full or broken as their layer at the near end is."""
    below = [each for each in uprights(shapes, Pen.THREAD, Pen.THREAD_BACK) if each.low <= LIMIT][:: facts.toward]
    faces = [one.face for one in facts.passes[:_SHOWN]]
    above = sorted((path.points()[-1].x for path in bent(shapes, Pen.THREAD)), reverse=facts.toward < 0)
    steps = [abs(other.x - one.x) for one, other in pairwise(below)]
    drawn = [each.pen is Pen.THREAD for each in below] == faces and len(above) == len(below)
    met = drawn and all(abs(x - each.x) <= LIMIT for x, each in zip(above, below, strict=True))
    even = all(abs(step - steps[0]) <= LIMIT for step in steps)
    guided = facts.has("spacing-guide", "spacing-guide-cut")
    tool = _on_guide(below, shapes) if guided else _in_comb(below, shapes, comb=facts.has("comb"))
    if not met or not even or not tool:
        yield LeafPicture.SPACED
        return
    shown = {number: at.x for at, number in numbers(shapes)}
    wanted = range(1, min(_NUMBERED, len(below)) + 1) if guided else ()
    if sorted(shown) != list(wanted) or any(not 0 < below[k - 1].x - shown[k] < _NUMBER for k in wanted):
        yield LeafPicture.NUMBERS


def _on_guide(below: Sequence[Upright], shapes: Sequence[Shape]) -> bool:
    """Whether every end has its mark on the guide, full or broken as it is itself."""
    pairs = (Pen.END_MARK, Pen.THREAD), (Pen.END_MARK_BACK, Pen.THREAD_BACK)
    return all(
        alike((each.x for each in uprights(shapes, mark)), (each.x for each in below if each.pen is end))
        for mark, end in pairs
    )


def _in_comb(below: Sequence[Upright], shapes: Sequence[Shape], *, comb: bool) -> bool:
    """Whether every end lies in a slot of the comb, if there is one; and nothing else to space with is drawn."""
    outlines = [s for s in shapes if isinstance(s, Curve) and s.closed and s.pen is Pen.OUTLINE]
    if boxes(shapes) or len(outlines) != comb or uprights(shapes, Pen.END_MARK, Pen.END_MARK_BACK):
        return False
    top = max((at.y for outline in outlines for at in outline.points()), default=0.0)
    grounds = [
        (one.x + other.x) / 2
        for outline in outlines
        for one, other in pairwise(outline.points())
        if abs(one.y - other.y) <= LIMIT and one.y < top - LIMIT and abs(one.x - other.x) < _NUMBER
    ]
    return not comb or alike(grounds, (each.x for each in below))
