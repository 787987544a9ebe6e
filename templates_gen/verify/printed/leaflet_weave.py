"""The other pictures of a leaflet: shed stick, heading rows, spacing, leashes, first rows, sheds, and the end."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Shape
from templates_gen.messages.roles.proof_leaflet import LeafPicture
from templates_gen.verify import LIMIT
from templates_gen.verify.alike import each_once
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.leaflet_facts import Facts, rows_of
from templates_gen.verify.printed.leaflet_lines import (
    HIGH,
    WIDE,
    bent,
    blades,
    boxes,
    by_turns,
    circles,
    covered,
    heads,
    level,
    uprights,
)

_MOST_ROWS, _ENDS, _WHOLE = 3, 8, 15
_THREADS = (Pen.THREAD, Pen.THREAD_BACK)


def _near_low(facts: Facts) -> bool:
    return facts.kit.weaving.near_end == "bottom"


def _wanted_lifted(facts: Facts) -> list[bool]:
    """Of the first eight ends from the left, which the stick lifts: those on the face at the far end; else by turns."""
    faces = facts.on_face(far=True)
    if all(faces):
        return [k % 2 == 0 for k in range(min(_ENDS, len(faces)))]
    return faces[:_ENDS]


def _wide(shapes: Sequence[Shape]) -> list[Box]:
    """Boxes as wide as the picture."""
    return [box for box in boxes(shapes) if box[2] - box[0] > WIDE - LIMIT]


def stick(facts: Facts, shapes: Sequence[Shape]) -> Iterator[LeafPicture]:
    """The stick lies over both side pieces, in the far half, under the ends that it lifts and over the others."""
    sticks, sides = _wide(shapes), [box for box in boxes(shapes) if box[3] - box[1] > HIGH - 1]
    if len(sticks) != 1 or len(sides) != 2:
        yield LeafPicture.STICK
        return
    (_, low, _, high), (left, right) = sticks[0], (sides[0][2], sides[1][0])
    if ((low + high) / 2 > HIGH / 2) != _near_low(facts):
        yield LeafPicture.STICK
    lines = [each for each in uprights(shapes, *_THREADS) if left < each.x < right]
    xs = each_once(each.x for each in lines)
    over = [covered(lines, x, low, high) for x in xs]
    layers = not all(facts.on_face(far=True))
    pens = [any(each.pen is Pen.THREAD_BACK for each in lines if abs(each.x - x) <= LIMIT) for x in xs]
    if over != _wanted_lifted(facts) or pens != [layers and not each for each in over]:
        yield LeafPicture.LIFTED


def rows(facts: Facts, shapes: Sequence[Shape]) -> Iterator[LeafPicture]:
    """So many rows at both ends, three at most, each over and under by turns; or a hitch round every end."""
    picks, ends = level(shapes, Pen.PICK), uprights(shapes, Pen.THREAD)
    heights, xs = each_once(y for y, _, _ in picks), each_once(each.x for each in ends)
    count = min(rows_of(facts.kit), _MOST_ROWS)
    near = sum(1 for y in heights if (y < HIGH / 2) == _near_low(facts))
    if (near, len(heights) - near) != (0 if truth_of(facts.kit).on_rod else count, count):
        yield LeafPicture.ROWS
    if isinstance(facts.kit.amounts.room.heading, str):
        hitches = [at for at, _ in circles(shapes, Pen.OUTLINE)]
        around = all(any(abs(at.x - x) <= LIMIT and abs(at.y - y) < 1.5 for at in hitches) for x in xs for y in heights)
        if not around or len(hitches) != len(xs) * len(heights):
            yield LeafPicture.CROSSING
        return
    table = [[any(abs(at - y) <= LIMIT and one < x < other for at, one, other in picks) for x in xs] for y in heights]
    seen = [[covered(ends, x, y, y) for x in xs] for y in heights]
    crossed = table == [[not each for each in row] for row in seen]
    at_near = [y < HIGH / 2 for y in heights]
    columns = [[row[0] for row, here in zip(table, at_near, strict=True) if here == half] for half in (True, False)]
    if not crossed or not all(map(by_turns, [*table, *columns])):
        yield LeafPicture.CROSSING


def leashes(facts: Facts, shapes: Sequence[Shape]) -> Iterator[LeafPicture]:
    """A loop from the rod round every end that the stick does not lift."""
    rods, xs = _wide(shapes), each_once(each.x for each in uprights(shapes, *_THREADS))
    loops = [box for box in boxes(shapes) if box[2] - box[0] < 3]
    held = [sum(1 for box in loops if box[0] < x < box[2]) for x in xs]
    if len(rods) != 1 or held != [int(not over) for over in _wanted_lifted(facts)]:
        yield LeafPicture.LOOPS
        return
    (_, low, _, high), near_low = rods[0], _near_low(facts)
    hang = all(abs((box[3] - low) if near_low else (box[1] - high)) <= LIMIT for box in loops)
    behind = [each.x for each in uprights(shapes, Pen.THREAD_BACK)]
    layers = not all(facts.on_face(far=True))
    broken = [any(abs(x - other) <= LIMIT for other in behind) for x in xs] == [layers and bool(each) for each in held]
    if not hang or not broken or sum(held) != len(loops):
        yield LeafPicture.LOOPS


def first_rows(facts: Facts, shapes: Sequence[Shape]) -> Iterator[LeafPicture]:
    """The weft in an arc, over the ends that are not lifted and under the others; and arrows to the near end."""
    near_low = _near_low(facts)
    arcs, ends = bent(shapes, Pen.WEFT), uprights(shapes, *_THREADS)
    xs = each_once(each.x for each in ends)
    over = []
    for x in xs:
        on = [path for path in arcs if min(p.x for p in path.points()) < x < max(p.x for p in path.points())]
        hidden = not any(covered(ends, x, y, y) for y in _at(on[0], x)) if on else False
        over.append(bool(on) and hidden)
    under = [not each for each in over]
    whole = [any(abs(e.x - x) <= LIMIT and e.high - e.low > _WHOLE for e in ends) for x in xs]
    if under != _wanted_lifted(facts) or whole != under:
        yield LeafPicture.ARC
    beaten = [y for y, one, other in level(shapes, Pen.WEFT) if other - one > WIDE / 2]
    edge = [y < HIGH / 2 for y in beaten] == [near_low] * len(beaten)
    if not beaten or not edge or {each.way for each in heads(shapes)} != {"down" if near_low else "up"}:
        yield LeafPicture.BEATEN


def _at(path: Curve, x: float) -> list[float]:
    """Where a line passes x."""
    points = path.points()
    return [
        one.y + (other.y - one.y) * (x - one.x) / (other.x - one.x)
        for one, other in pairwise(points)
        if one.x <= x <= other.x and other.x > one.x
    ]


def sheds(facts: Facts, shapes: Sequence[Shape]) -> Iterator[LeafPicture]:
    """Above, an end over a stick on edge; below, the stick flat, and another end pulled up in a loop."""
    small = [box for box in boxes(shapes) if box[2] - box[0] < 5 and not _is_board(box)]
    edge = [box for box in small if box[3] - box[1] > 3 and box[2] - box[0] > 1.5]
    flat = [box for box in small if box[3] - box[1] < 1.5]
    loops = [box for box in small if box[3] - box[1] > 3 and box[2] - box[0] <= 1.5]
    if (len(edge), len(flat), len(loops)) != (1, 1, 1) or edge[0][1] < flat[0][3]:
        yield LeafPicture.SHEDS
        return
    layers = not all(facts.on_face(far=True))
    ways = bent(shapes, *_THREADS)
    lifted = [path for path in ways if path.pen is Pen.THREAD and _peak_in(path, edge[0], 1.0)]
    pulled = [path for path in ways if _peak_in(path, loops[0], 0.0)]
    kinds = [path.pen for path in pulled] == [Pen.THREAD_BACK if layers else Pen.THREAD]
    if len(lifted) != 1 or not kinds:
        yield LeafPicture.SHEDS


def _is_board(box: Box) -> bool:
    return box[2] - box[0] > 5


def _peak_in(path: Curve, box: Box, over: float) -> bool:
    """Whether a line lies at x of a box inside it, or just over it, and there is higher than beside it."""
    return any(box[0] < p.x < box[2] and box[1] < p.y <= box[3] + over for p in path.points())


def finish(facts: Facts, shapes: Sequence[Shape]) -> Iterator[LeafPicture]:
    """Scissors at the two middle ends, which alone are cut, and arrows outward; or a rod that is drawn to the side."""
    arrows = sorted(heads(shapes))
    if truth_of(facts.kit).on_rod:
        rods = [box for box in boxes(shapes) if box[2] - box[0] > 8]
        free = not blades(shapes) and len(rods) == 1 and len(arrows) == 1
        if not free or arrows[0].way != "right" or arrows[0].at.x < rods[0][2]:
            yield LeafPicture.DRAWN
        return
    ends = uprights(shapes, Pen.THREAD)
    xs, middle = each_once(each.x for each in ends), HIGH / 2
    whole = [any(abs(e.x - x) <= LIMIT and e.low < middle < e.high for e in ends) for x in xs]
    half = len(xs) // 2
    cut = [k not in (half - 1, half) for k in range(len(xs))]
    there = blades(shapes)
    if len(xs) % 2 or whole != cut or len(there) != 2 or not all(xs[half - 2] < at.x < xs[half + 1] for at in there):
        yield LeafPicture.CUT
    if [each.way for each in arrows] != ["left", "right"] or not arrows[0].at.x < WIDE / 2 < arrows[1].at.x:
        yield LeafPicture.OUTWARD
