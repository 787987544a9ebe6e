"""The winding sheet: the frame from its face and from the side, with the true way of the thread; not to scale.

Widths are drawn as far apart as the eye needs; number, order, side, layer and direction of all passes are those of the
kit's warp. Numbers in rings stand where things are done. Under the picture: shed stick and heading rows.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import replace

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Region, Shape, Text, cross
from layout.drawing.sheet import Part
from layout.drawing.signs import ring
from layout.drawing.typeset import SMALL
from layout.messages.roles import SheetName, Winding
from layout.parts.winding.actions import Action, Place, actions
from layout.parts.winding.cautions import before_it_is_made, cautions
from layout.parts.winding.clear import Taken
from layout.parts.winding.face import Face
from layout.parts.winding.knots import BAR, BOW, HITCHES, clip, tied
from layout.parts.winding.knots import WIDE as KNOT_WIDE
from layout.parts.winding.legend import legend
from layout.parts.winding.lines import downward, rows_of, step_of
from layout.parts.winding.listing import listed
from layout.parts.winding.rings import rings
from layout.parts.winding.scale import FULL, LOW, LOWEST, WIDE, WIDE_LOWEST, Scale
from layout.parts.winding.shed import shed
from layout.parts.winding.side import side_view
from layout.parts.winding.words import words
from layout.plan import Plan

_ARM, _OFF = 0.5, 1.5
_LEGEND, _FOOT, _CAUTION, _AIR = 5.5, 4.6, 6.4, 0.5
HIGH = 190.0
"""mm: what head and steps of a sheet leave that fits on both common office papers."""
_LEAST, _MOST = 62.0, 130.0  # how high the frame may be drawn
_FIRST_STEP = 4.0
_BETWEEN = {"round": 0.0, "figure eight": 9.0, "loose rod": 9.0}
"""How much higher a low picture is for what lies between both ends."""


def winding(
    plan: Plan, metrics: FontMetrics, *, high: float = HIGH, room: Callable[[Part], float] | None = None
) -> Part:
    """The winding picture of a plan, `high` mm high if it can be; or as high as there is `room` for its words.

    Its register crosses stand at the left side of the frame and past the right one, on the outermost lines of the near
    end (left, right) and the far end.
    """
    part = _part(plan, FULL, metrics)
    least = max(_LEAST, _apart(_captions(plan, FULL, metrics)) + _ALONE - _BELOW)  # room for both knots
    reach = min(_MOST, max(least, FULL.reach + (room(part) if room else high) - part.height))
    return part if reach == FULL.reach else _part(plan, replace(FULL, reach=reach), metrics)


def small_winding(
    plan: Plan, metrics: FontMetrics, *, wide: bool = False, low: bool = False, room: Callable[[Part], float]
) -> Part:
    """A smaller one with fewer passes drawn, without knots, shed stick and heading rows.

    A `wide` one has its steps beside the picture. A `low` one leaves more room for words, which stand over it or on a
    sheet of their own; what lies between both ends has as much of its own as a sheet without words has `room`.
    """
    across, upright = (WIDE_LOWEST, LOWEST) if low else (WIDE, LOW)
    scale = across if wide else upright
    part = _part(plan, scale, metrics)
    more = _BETWEEN[plan.kit.weaving.how_wound] if low else 0.0
    if not more:
        return part
    reach = scale.reach + min(more, max(0.0, room(part) - part.height))
    return _part(plan, replace(scale, reach=reach), metrics)


def _part(plan: Plan, scale: Scale, metrics: FontMetrics) -> Part:
    face = Face.of(plan, scale)
    done = actions(face)
    left, right = scale.left + _OFF, -scale.left + _OFF  # on the left side of the frame, and past the right one
    near, far = face.height("near"), face.height("far")
    datum = Point(left, near), Point(right, near), Point(left, far)
    crosses = [hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER)]
    shapes, ys = list[Shape](), list[float]()

    def add(more: Iterable[Shape]) -> None:
        drawn = list(more)
        shapes.extend(drawn)
        ys.extend(y for shape in drawn for y in _ys(shape, metrics))

    add([*crosses, *_picture(face, done, crosses, metrics)])
    add(legend(face, min(ys) - _LEGEND, metrics))
    if scale.knots:
        add(shed(plan, Point(scale.left, min(ys) - _FOOT), scale.right, metrics))
        add(_minded(plan, Point(scale.left, min(ys) - _CAUTION), scale.right, metrics))
    steps = tuple(action.words for action in done)
    if scale.list_from is not None:
        entries = ((str(number), words) for number, words in enumerate(steps, 1))
        add(listed(entries, Point(scale.list_from, max(ys) - _FIRST_STEP), scale.right, metrics))
    once_round = plan.warp.kind == "wound"
    return Part(
        "winding",
        plan.words.say(SheetName.NAME_WINDING),
        tuple(shapes),
        datum,
        (scale.left, min(ys) - _AIR, scale.right, max(ys) + _AIR),
        notes=before_it_is_made(plan),
        whole=True,
        purpose=plan.words.say(SheetName.PURPOSE_WINDING if once_round else Winding.PURPOSE_THERE_AND_BACK),
        steps=() if scale.list_from is not None else steps,
        measured=False,
    )


def _picture(face: Face, done: tuple[Action, ...], crosses: Sequence[Shape], metrics: FontMetrics) -> list[Shape]:
    """Frame, thread, words and rings, the view from the right, and pictures of the knots."""
    section = face.kind.section(face)
    shapes: list[Shape] = [*face.frame(), *face.kind.fittings(face), *face.threads(), *face.tied()]
    shapes += [*side_view(face, section, metrics), *words(face, metrics)]
    if face.scale.knots:
        shapes += _knots(face, done, metrics)
    taken = Taken(metrics)
    taken.add([*shapes, *crosses])
    return [*shapes, *rings(face, section, done, taken, metrics)]


_LOWER, _APART, _LEAST_APART, _TO_CAPTION, _ALONE, _BELOW = 16.0, 38.0, 31.0, 4.2, 30.2, 4.0
_TO_RING = Point(3.2, 16.6)


def _knots(face: Face, done: tuple[Action, ...], metrics: FontMetrics) -> list[Shape]:
    """How it is tied on, clipped and tied off, each with its number."""
    pictures: list[tuple[Place, Winding, Callable[[Point], list[Shape]]]] = [
        (Place.TIE_ON, Winding.HITCHES, lambda at: tied(HITCHES, at)),
        (Place.LAST, Winding.CLIP, clip),
        (Place.TIE_OFF, Winding.BOW, lambda at: tied(BOW, at)),
    ]
    numbers = {action.place: str(number) for number, action in enumerate(done, 1)}
    scale, shapes = face.scale, list[Shape]()
    captions = _captions(face.plan, scale, metrics)
    apart = _apart(captions)
    count = min(3, int((scale.reach + _BELOW - _ALONE) / apart) + 1)
    if count < len(pictures):  # the clip is the easiest to do without
        pictures = [pictures[0], pictures[2]][:count]
    apart = max(apart, min(_APART, (scale.reach + _BELOW - _ALONE) / max(1, len(pictures) - 1)))
    y = scale.reach - _LOWER
    for place, role, draw in pictures:
        shapes += draw(Point(scale.right - KNOT_WIDE, y))
        shapes += ring(Point(scale.beside + _TO_RING.x, y + _TO_RING.y), numbers[place], metrics)
        shapes += downward(captions[role], SMALL, Point(scale.right, y - BAR - _TO_CAPTION), metrics, "right")
        y -= apart
    return shapes


def _captions(plan: Plan, scale: Scale, metrics: FontMetrics) -> dict[Winding, list[str]]:
    """What stands under each picture of a knot, in rows."""
    wide = scale.right - scale.beside
    roles = (Winding.HITCHES, Winding.CLIP, Winding.BOW)
    return {role: rows_of(plan.words.say(role), SMALL, wide, metrics) for role in roles}


def _apart(captions: Mapping[Winding, list[str]]) -> float:
    """From one picture of a knot down to the next, at least."""
    most = max(map(len, captions.values()))
    return _LEAST_APART + (most - 1) * step_of(captions[Winding.BOW], SMALL)


def _minded(plan: Plan, at: Point, right: float, metrics: FontMetrics) -> list[Shape]:
    """What to mind, the first line at `at`."""
    y, shapes = at.y, list[Shape]()
    for size, said in cautions(plan):
        rows = rows_of(said, size, right - at.x, metrics)
        shapes += downward(rows, size, Point(at.x, y), metrics)
        y -= len(rows) * step_of(rows, size)
    return shapes


def lowest(shapes: Iterable[Shape], metrics: FontMetrics) -> float:
    """The least y of these shapes, the tails of letters with them."""
    return min(y for shape in shapes for y in _ys(shape, metrics))


def _ys(shape: Shape, metrics: FontMetrics) -> list[float]:
    if isinstance(shape, Text):
        if shape.angle:
            return [shape.at.y, shape.at.y + metrics.width(shape.words, shape.size, shape.pen)]
        return [shape.at.y - 0.25 * shape.size, shape.at.y + metrics.ascent * shape.size]
    paths = shape.contours if isinstance(shape, Region) else (shape,)
    return [point.y for path in paths for point in path.points()]
