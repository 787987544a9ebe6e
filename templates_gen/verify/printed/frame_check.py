"""The frame check sheet proven from the kit's numbers alone: its picture, the rings on it, and all that it says."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point
from layout.kit.kit import Kit
from layout.plan import Plan
from templates_gen.messages.roles.proof_printed import Frame
from templates_gen.verify import LIMIT
from templates_gen.verify.boxes import box_of
from templates_gen.verify.finding import Finding, Findings, finding, said
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.check_words import check_frame_words
from templates_gen.verify.printed.warp_words import said_of

_PICTURE = 150.0  # a part longer than this shows the frame
_STEEPEST = 3  # a longer frame is shown shorter
_RING = 3.2  # radius in mm


def prove_frame_check(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """The frame's outline and diagonals in its own proportions; where words are real, every word."""
    kit, sett = plan.kit, plan.warp.sett.per_mm
    off, problems = 0.0, list[Finding]()
    for seen in pieces:
        if seen.part.length > _PICTURE:
            wrong, far = _picture(kit, seen)
            off = max(off, far)
            problems += wrong
        if on_paper:
            warp = said_of(kit, sett, plan.warp.sett.unit)
            low = seen.part.length <= _PICTURE
            problems += check_frame_words(kit, sett, warp, seen, plan.words, low=low).problems
    return Findings(off, tuple(problem.at(said(Frame.SHEET)) for problem in problems))


def _picture(kit: Kit, seen: FoundPart) -> tuple[list[Finding], float]:
    """The outline in the frame's proportions, both diagonals from corner to corner, pencil marks in the middle of both
    frame ends, and the rings where they are meant.
    """
    outlines = [path for path in seen.paths(Pen.OUTLINE) if path.closed and len(path.steps) == 3]
    diagonals = [path for path in seen.paths(Pen.CENTRE) if len(path.steps) == 1]
    if len(outlines) != 1 or len(diagonals) != 4:
        return [finding(Frame.NO_FRAME)], 0.0
    box = left, low, right, high = box_of(outlines[0])
    ratio = float(kit.frame.outer_width.mm / kit.frame.outer_height.mm)
    ratio = min(max(ratio, 1 / _STEEPEST), _STEEPEST)
    corners = [Point(x, y) for x in (left, right) for y in (low, high)]
    ends = [end for path in diagonals for end in path.points()]
    reached = [min(math.dist(corner, end) for end in ends) for corner in corners]
    middle = (left + right) / 2
    aside = [min((_off_mark(path, middle, y) for path in seen.paths(Pen.THREAD)), default=9.0) for y in (low, high)]
    off = max(abs((right - left) - ratio * (high - low)), *(_off_diagonals(end, box) for end in ends), *reached, *aside)
    wrong = [finding(Frame.OFF, micrometres=off * 1000)] if off > LIMIT else []
    return [*wrong, *_rings(seen, box)], off


def _off_mark(path: Curve, middle: float, edge: float) -> float:
    """How far a line is from the middle of a frame end; far, where it does not cross its outer edge upright."""
    (x, y), (to_x, to_y) = path.points()[:2]
    return max(abs(x - middle), abs(to_x - middle)) if min(y, to_y) < edge < max(y, to_y) else 9.0


def _off_diagonals(at: Point, box: Box) -> float:
    """How far a point is from the nearer diagonal of a box."""
    left, low, right, high = box
    wide, up = right - left, high - low
    x, y = at.x - left, at.y - low
    return min(abs(x * up - y * wide), abs(x * up + y * wide - wide * up)) / math.hypot(wide, up)


def _rings(seen: FoundPart, box: Box) -> Iterator[Finding]:
    """Two rings of each number: 1 on the diagonals, 2 on the sides, 3 over and under the middle."""
    left, low, right, high = box
    rings = [path for path in seen.paths(Pen.OUTLINE) if path.closed and len(path.steps) == 8]
    centres = [_centre(path) for path in rings if abs(math.dist(path.start, _centre(path)) - _RING) <= LIMIT]
    found: dict[str, list[Point]] = {}
    for at in centres:
        number = next((words for place, words in seen.words() if math.dist(place, at) < _RING), "")
        found.setdefault(number, []).append(at)
    third = (right - left) / 3
    right_places = (
        all(_off_diagonals(at, box) <= LIMIT for at in found.get("1", []))
        and {at.x < left + third for at in found.get("2", [])} == {True, False}
        and all(not left + third < at.x < right - third for at in found.get("2", []))
        and all(abs(at.x - (left + right) / 2) <= LIMIT for at in found.get("3", []))
        and {at.y > (low + high) / 2 for at in found.get("3", [])} == {True, False}
    )
    if sorted(found) != ["1", "2", "3"] or any(len(places) != 2 for places in found.values()) or not right_places:
        yield finding(Frame.RINGS)


def _centre(path: Curve) -> Point:
    points = path.points()[:-1]
    return Point(sum(point.x for point in points) / len(points), sum(point.y for point in points) / len(points))
