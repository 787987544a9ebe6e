"""What every sheet of paper must carry whatever is on it: targets with their white, two check scales, tile, margins.

All places and sizes are stated here a second time.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point, Region, Shape, Text
from layout.drawing.sheet import Sheet
from templates_gen.messages.roles.proof import Furnished, Laid
from templates_gen.verify import LIMIT
from templates_gen.verify.boxes import boxes_along
from templates_gen.verify.finding import NOTHING, Finding, Findings, finding

_SIDE, _TOP, _BOTTOM = 9.7, 14.7, 15.0  # of a corner target, from the edges
_RING, _DOT, _INK, _WHITE = 1.2, 0.405, 0.3, 0.5  # radius of ring and dot, half of the ring's line, white around
_FEWEST = 5
_MARGINS = 8.0, 13.0
_NAME = 22 * 25.4 / 72  # mm to the em: the number of the tile in the head
_SCALES = ((100.0, 10.0, 0), (101.6, 12.7, 1))  # length, block, and the first block that is black
_HIGH = 1.6

_CARDS = ("help", "label", "folded-label", "legal-card", "packing-list")
_UNMEASURED = frozenset(
    {
        "winding",
        "heading-rows",
        "frame-check",
        "pull-check",
        "gauge-how",
        "leaflet",
        "price-sheet",
        "shop-card",
        *_CARDS,
        "class-sheet",
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
    "price-sheet": "B",
    "class-sheet": "B",
    "shop-card": "B",
    "run-list": "B",
} | dict.fromkeys(_CARDS, "B")


def measured(part: str) -> bool:
    """Whether a sheet of this part is measured from, and so must carry check scales."""
    return part not in _UNMEASURED and not part.startswith(_JOB)


def tile_of(part: str) -> str:
    """What the tile of a sheet of this part shows; nothing on the drawing of a part that is cut."""
    return "L" if part.startswith(_JOB) else _TILES.get(part, "")


def check_furniture(sheet: Sheet, parts: Sequence[str]) -> Findings:
    """Targets, scales, tile and margins of a sheet that holds these parts, by name."""
    total = _targets(sheet) + Findings(0.0, tuple(_margins(sheet)))
    if any(map(measured, parts)):
        total += _scales(sheet)
    tiles = [shape for shape in sheet.shapes if isinstance(shape, Text) and shape.pen is Pen.ON_BLACK]
    shown = [shape.words for shape in tiles if abs(shape.size - _NAME) <= LIMIT]
    wanted = [tile for tile in dict.fromkeys(map(tile_of, parts)) if tile][:1]
    wrong = len(shown) > 1 if not parts else shown != wanted
    return total + Findings(0.0, (finding(Furnished.TILE),) if wrong else ())


def check_gutter(sheet: Sheet) -> Findings:
    """Targets, margins and the upright scale of a sheet with parts of several boxes."""
    return _targets(sheet) + Findings(0.0, tuple(_margins(sheet))) + _scales(sheet, _AXES[1:])


def _targets(sheet: Sheet) -> Findings:
    """The four corner targets at their places, one more at least, each whole and with its white."""
    rings = [shape for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen is Pen.TARGET]
    centres = [_centre(path) for path in rings]
    low, high, right = _BOTTOM, sheet.height - _TOP, sheet.width - _SIDE
    corners = [Point(x, y) for x in (_SIDE, right) for y in (low, high)]
    off = max(min((math.dist(at, corner) for at in centres), default=math.inf) for corner in corners)
    wrong = [] if off <= LIMIT else [finding(Furnished.CORNERS)]
    if len(centres) < _FEWEST:
        wrong.append(finding(Furnished.FEW, found=len(centres), least=_FEWEST))
    dots = [shape for shape in sheet.shapes if isinstance(shape, Region) and shape.pen is Pen.SOLID]
    boxes = [(shape, box) for shape in sheet.shapes if _may_touch(shape, centres) for box in _boxes(shape)]
    for at, ring in zip(centres, rings, strict=True):
        if abs(math.dist(ring.start, at) - _RING) > LIMIT or not any(_is_dot(dot, at) for dot in dots):
            wrong.append(finding(Furnished.TARGET, x=at.x, y=at.y))
        wrong += _touched(boxes, at)
    return Findings(0.0 if math.isinf(off) else min(off, LIMIT), tuple(wrong))


def _centre(path: Curve) -> Point:
    points = path.points()[:-1]
    return Point(sum(point.x for point in points) / len(points), sum(point.y for point in points) / len(points))


def _is_dot(region: Region, at: Point) -> bool:
    (path, *others) = region.contours
    return not others and math.dist(_centre(path), at) <= LIMIT and abs(math.dist(path.start, at) - _DOT) <= LIMIT


def _touched(boxes: Sequence[tuple[Shape, Box]], at: Point) -> Iterator[Finding]:
    """What lies in the white of a target, by the boxes of all that is drawn."""
    reach = _RING + _INK + _WHITE
    x, y = at
    for shape, box in boxes:
        close = box[0] - reach < x < box[2] + reach and box[1] - reach < y < box[3] + reach
        if close and _near(shape, box, at, reach):
            yield finding(Furnished.WHITE, x=x, y=y, pen=shape.pen.value)
            return


def _near(shape: Shape, box: Box, at: Point, reach: float) -> bool:
    if isinstance(shape, Curve) and shape.pen is Pen.TARGET and math.dist(_centre(shape), at) <= LIMIT:
        return False
    if isinstance(shape, Region) and shape.pen is Pen.SOLID and _is_dot(shape, at):
        return False
    left, low, right, high = box
    dx, dy = max(left - at.x, 0.0, at.x - right), max(low - at.y, 0.0, at.y - high)
    return math.hypot(dx, dy) < reach - LIMIT


def _may_touch(shape: Shape, centres: Sequence[Point]) -> bool:
    """Whether the white of any target reaches into the box of the whole shape: most shapes lie far off."""
    points = [shape.at] if isinstance(shape, Text) else [p for path in _paths(shape) for p in path.points()]
    reach = _RING + _INK + _WHITE + shape.pen.ink.width / 2 + LIMIT
    xs, ys = [point.x for point in points], [point.y for point in points]
    left, low, right, high = min(xs) - reach, min(ys) - reach, max(xs) + reach, max(ys) + reach
    return any(left < x < right and low < y < high for x, y in centres)


def _boxes(shape: Shape) -> Iterator[Box]:
    """The boxes of the steps of a shape with their ink; of words only where they begin."""
    if isinstance(shape, Text):
        yield shape.at.x, shape.at.y, shape.at.x, shape.at.y
        return
    ink = shape.pen.ink.width / 2
    for path in shape.contours if isinstance(shape, Region) else (shape,):
        points = [*path.points(), *([path.start] if path.closed else [])]
        yield from boxes_along(points, ink)


def _margins(sheet: Sheet) -> Iterator[Finding]:
    """What reaches into the margins that many printers cannot reach."""
    side, top = _MARGINS
    for shape in sheet.shapes:
        points = [shape.at] if isinstance(shape, Text) else [p for path in _paths(shape) for p in path.points()]
        xs, ys = [point.x for point in points], [point.y for point in points]
        inside = min(xs) >= side - LIMIT and max(xs) <= sheet.width - side + LIMIT
        if not (inside and min(ys) >= top - LIMIT and max(ys) <= sheet.height - top + LIMIT):
            yield finding(Furnished.MARGIN, pen=shape.pen.value)
            return


def _paths(shape: Curve | Region) -> Sequence[Curve]:
    return shape.contours if isinstance(shape, Region) else (shape,)


_AXES = ((0, Laid.NO_BAR_ACROSS), (1, Laid.NO_BAR_UP))


def _scales(sheet: Sheet, axes: Sequence[tuple[int, Laid]] = _AXES) -> Findings:
    """One scale of each length along each axis: its outline, and every second block in its place."""
    outlines = [shape for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen is Pen.RULE and shape.closed]
    solids = [shape for shape in sheet.shapes if isinstance(shape, Region) and shape.pen is Pen.SOLID]
    total = NOTHING
    for axis, missing in axes:
        for length, block, first in _SCALES:
            off = min((_scale_off(outline, solids, axis, length, block, first) for outline in outlines), default=length)
            total += Findings(off, () if off <= LIMIT else (finding(missing, length=length),))
    return total


def _scale_off(outline: Curve, solids: Sequence[Region], axis: int, length: float, block: float, first: int) -> float:
    """How far an outline and the blocks in it are off those of a scale; a whole length where there are none."""
    left, low, right, high = _box(outline)
    begin, end, across = (left, right, high - low) if axis == 0 else (low, high, right - left)
    off = max(abs(end - begin - length), abs(across - _HIGH))
    if off > LIMIT:
        return off
    wanted = [begin + block * k for k in range(first, round(length / block), 2)]
    inside = [region for region in solids if all(_within(_box(path), outline) for path in region.contours)]
    if len(inside) != 1 or len(inside[0].contours) != len(wanted):
        return length
    found = sorted(_box(path)[axis::2] for path in inside[0].contours)
    return max(
        off, *(max(abs(at - begin), abs(at + block - end)) for (begin, end), at in zip(found, wanted, strict=True))
    )


def _box(path: Curve) -> Box:
    xs, ys = zip(*path.points(), strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def _within(box: Box, outline: Curve) -> bool:
    left, low, right, high = _box(outline)
    across = left - LIMIT <= box[0] and box[2] <= right + LIMIT
    return across and low - LIMIT <= box[1] and box[3] <= high + LIMIT
