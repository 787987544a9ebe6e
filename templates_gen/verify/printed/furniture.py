"""What every sheet of paper must carry whatever is on it: targets with their white, two check scales, tile, margins.

All places and sizes are stated here a second time.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from itertools import pairwise

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point, Region, Shape, Text
from layout.drawing.sheet import Sheet
from templates_gen.messages.roles.proof import Furnished
from templates_gen.verify import LIMIT
from templates_gen.verify.boxes import box_of_shape, off_step
from templates_gen.verify.finding import Finding, Findings, finding
from templates_gen.verify.printed.scales import UPWARD, check_scales
from templates_gen.verify.printed.tiles import check_tile

_SIDE, _TOP, _BOTTOM = 9.7, 14.7, 15.0  # of a corner target, from the edges
_RING, _DOT, _INK, _WHITE = 1.2, 0.405, 0.3, 0.5  # radius of ring and dot, half of the ring's line, white around
_REACH = _RING + _INK + _WHITE + max(pen.ink.width for pen in Pen) / 2
_FEWEST = 5
_ROUND = 8  # steps of a circle
_MARGINS = 8.0, 13.0

_CARDS = ("help", "label", "folded-label", "legal-card", "packing-list")
_UNMEASURED = frozenset(
    {
        "winding",
        "heading-rows",
        "frame-check",
        "pull-check",
        "gauge-how",
        "leaflet",
        "overview",
        "price-sheet",
        "shop-card",
        *_CARDS,
        "class-sheet",
        "printer-check",
    }
)  # and the job sheets
_JOB = "job"
_TILES: Mapping[str, str] = {
    "frame-check": "1",
    "pull-check": "1",
    "strip-near": "2",
    "strip-far": "2",
    "winding": "3",
    "heading-rows": "4",
    "spacing-near": "5",
    "spacing-far": "5",
    "weaving-grid": "7",
    "wrap-gauge": "G",
    "gauge-how": "G",
    "overview": "B",
    "price-sheet": "B",
    "class-sheet": "B",
    "shop-card": "B",
    "run-list": "B",
    "printer-check": "P",
} | dict.fromkeys(_CARDS, "B")


def measured(part: str) -> bool:
    """Whether a sheet of this part is measured from, and so must carry check scales."""
    return part not in _UNMEASURED and not part.startswith(_JOB)


def tile_of(part: str) -> str:
    """What the tile of a sheet of this part shows; nothing on the drawing of a part that is cut."""
    return "L" if part.startswith(_JOB) else _TILES.get(part, "")


def check_furniture(sheet: Sheet, parts: Sequence[str]) -> Findings:
    """Targets, scales, tile and margins of a sheet that holds these parts, by name."""
    boxes = list(map(box_of_shape, sheet.shapes))
    total = _targets(sheet, boxes) + Findings(0.0, tuple(_margins(sheet, boxes)))
    if any(map(measured, parts)):
        total += check_scales(sheet)
    wanted = [tile for tile in dict.fromkeys(map(tile_of, parts)) if tile][:1]
    return total + check_tile(sheet, wanted, alone=not parts)


def check_gutter(sheet: Sheet) -> Findings:
    """Targets, margins and the upright scale of a sheet with parts of several boxes."""
    boxes = list(map(box_of_shape, sheet.shapes))
    return _targets(sheet, boxes) + Findings(0.0, tuple(_margins(sheet, boxes))) + check_scales(sheet, UPWARD)


def _targets(sheet: Sheet, whole: Sequence[Box]) -> Findings:
    """The four corner targets at their places, one more at least, each whole and with its white.

    `whole` are the boxes of all shapes of the sheet.
    """
    rings = [shape for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen is Pen.TARGET]
    centres = [_centre(path) for path in rings]
    low, high, right = _BOTTOM, sheet.height - _TOP, sheet.width - _SIDE
    corners = [Point(x, y) for x in (_SIDE, right) for y in (low, high)]
    off = max(min((math.dist(at, corner) for at in centres), default=math.inf) for corner in corners)
    wrong = [] if off <= LIMIT else [finding(Furnished.CORNERS)]
    if len(centres) < _FEWEST:
        wrong.append(finding(Furnished.FEW, found=len(centres), least=_FEWEST))
    dots = list(_dots(sheet))
    drawn = list(zip(sheet.shapes, whole, strict=True))
    alone = [dot for dot in dots if not any(math.dist(dot, ring) <= LIMIT for ring in centres)]
    wrong += [finding(Furnished.TARGET, x=at.x, y=at.y) for at in alone]
    for at, ring in zip(centres, rings, strict=True):
        whole_ring = abs(math.dist(ring.start, at) - _RING) <= LIMIT
        if not whole_ring or not any(math.dist(dot, at) <= LIMIT for dot in dots):
            wrong.append(finding(Furnished.TARGET, x=at.x, y=at.y))
        wrong += _touched(_near(drawn, at), at)
    return Findings(0.0 if math.isinf(off) else min(off, LIMIT), tuple(wrong))


def _centre(path: Curve) -> Point:
    xs, ys = zip(*path.points()[:-1], strict=True)
    return Point(sum(xs) / len(xs), sum(ys) / len(ys))


def _dots(sheet: Sheet) -> Iterator[Point]:
    """The middles of black discs as large as those of targets."""
    for shape in sheet.shapes:
        if isinstance(shape, Region) and shape.pen is Pen.SOLID and _is_dot(shape):
            yield _centre(shape.contours[0])


def _is_dot(region: Region) -> bool:
    (path, *others) = region.contours
    round_and_alone = len(path.steps) == _ROUND and not others
    return round_and_alone and abs(math.dist(path.start, _centre(path)) - _DOT) <= LIMIT


def _near(drawn: Sequence[tuple[Shape, Box]], at: Point) -> list[Shape]:
    """What may reach into the white of a target, by the boxes of whole shapes: most of a sheet lies far off."""
    left, right, low, high = at.x - _REACH, at.x + _REACH, at.y - _REACH, at.y + _REACH
    return [shape for shape, (x, y, to_x, to_y) in drawn if x < right and to_x > left and y < high and to_y > low]


def _touched(near: Sequence[Shape], at: Point) -> Iterator[Finding]:
    """What lies in the white of a target, of all that is drawn `near` it, with its ink."""
    reach = _RING + _INK + _WHITE - LIMIT
    for shape in near:
        ink = 0.0 if isinstance(shape, Text) else shape.pen.ink.width / 2
        if any(off_step(at, *step) < reach + ink for step in _steps(shape)) and not _is_of(shape, at):
            yield finding(Furnished.WHITE, x=at.x, y=at.y, pen=shape.pen.value)
            return


def _is_of(shape: Shape, at: Point) -> bool:
    """Whether a shape is the ring or the dot of the target itself."""
    if isinstance(shape, Curve) and shape.pen is Pen.TARGET and math.dist(_centre(shape), at) <= LIMIT:
        return True
    if not (isinstance(shape, Region) and shape.pen is Pen.SOLID and _is_dot(shape)):
        return False
    return math.dist(_centre(shape.contours[0]), at) <= LIMIT


def _steps(shape: Shape) -> Iterator[tuple[Point, Point]]:
    """The steps of a shape from point to point; of words only where they begin."""
    if isinstance(shape, Text):
        yield shape.at, shape.at
        return
    for path in _paths(shape):
        yield from pairwise([*path.points(), *([path.start] if path.closed else [])])


def _margins(sheet: Sheet, whole: Sequence[Box]) -> Iterator[Finding]:
    """What reaches into the margins that many printers cannot reach."""
    side, top = _MARGINS
    for shape, (left, low, right, high) in zip(sheet.shapes, whole, strict=True):
        inside = left >= side - LIMIT and right <= sheet.width - side + LIMIT
        if not (inside and low >= top - LIMIT and high <= sheet.height - top + LIMIT):
            yield finding(Furnished.MARGIN, pen=shape.pen.value)
            return


def _paths(shape: Curve | Region) -> Sequence[Curve]:
    return shape.contours if isinstance(shape, Region) else (shape,)
