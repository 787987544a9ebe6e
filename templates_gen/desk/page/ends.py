"""What a script needs to light an end of the warp: where its pass lies, its marks on both strips, its sentence."""

from __future__ import annotations

from collections.abc import Sequence

from templates_gen.desk.look.answers import FrameDrawing, StripView

_BESIDE, _BEYOND = 8.0, 20.0
"""How far beside the outer ends, and beyond the frame's ends, a pointer still means them (mm)."""
_PLACES = 2


def ends_of(drawn: FrameDrawing, strips: Sequence[StripView]) -> dict[str, object]:
    """Passes as [x1, y1, x2, y2], marks as [x, top, bottom] of each end by strip, and the sentences."""
    near, far = strips
    lines = [[round(at, _PLACES) for at in (each.x1, each.y1, each.x2, each.y2)] for each in drawn.passes]
    xs = [x for x1, _, x2, _ in lines for x in (x1, x2)]
    ys = [y for _, y1, _, y2 in lines for y in (y1, y2)]
    box = [min(xs) - _BESIDE, min(ys) - _BEYOND, max(xs) + _BESIDE, max(ys) + _BEYOND] if xs else []
    marks = {
        "near": [_mark(near, each.near) for each in drawn.passes],
        "far": [_mark(far, each.far) for each in drawn.passes],
    }
    return {"passes": lines, "marks": marks, "box": box, "said": list(drawn.said)}


def _mark(view: StripView, place: int) -> list[float] | None:
    if not 0 <= place < len(view.marks):
        return None
    return [round(view.marks[place], 3), *view.span]
