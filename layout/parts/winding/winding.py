"""The winding sheet: the frame from its face and from the side, with the true way of the thread; not to scale.

Widths are drawn as far apart as the eye needs; number, order, side, layer and direction of all passes are those of the
kit's warp. Numbers in rings stand where things are done. Under the picture: shed stick and heading rows.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import replace

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Region, Shape, Text, cross
from layout.drawing.sheet import Part
from layout.drawing.signs import ring
from layout.drawing.typeset import LEAD, SMALL, wrap
from layout.messages.roles import SheetName, Winding
from layout.parts.winding.actions import Action, Place, actions
from layout.parts.winding.clear import Taken
from layout.parts.winding.face import Face
from layout.parts.winding.knots import BAR, BOW, HITCHES, clip, tied
from layout.parts.winding.legend import legend
from layout.parts.winding.lines import downward, rows_of, step_of
from layout.parts.winding.listing import listed
from layout.parts.winding.rings import rings
from layout.parts.winding.scale import FULL, LOW, LOWEST, WIDE, WIDEST, Scale
from layout.parts.winding.shed import shed
from layout.parts.winding.side import side_view
from layout.parts.winding.words import words
from layout.plan import Plan
from layout.values.units import say_length

_ARM, _OFF = 0.5, 1.5
_LEGEND, _FOOT, _CAUTION, _AIR = 5.5, 4.6, 6.4, 0.5
ROOM = 220.7
"""mm: what the head of a sheet that fits on both common office papers leaves."""
_LEAST, _MOST = 62.0, 130.0  # how high the frame may be drawn
_COLUMN, _FIRST_STEP, _STEP = 74.0, 4.0, 6.2  # of the steps over the picture


def winding(plan: Plan, metrics: FontMetrics, *, room: float = ROOM) -> Part:
    """The winding picture of a plan; with its steps over it, it takes `room` mm downward, if it can.

    Its register crosses stand at the left side of the frame and past the right one, on the outermost lines of the near
    end (left, right) and the far end.
    """
    part = _part(plan, FULL, metrics)
    spare = room - _steps_high(part.steps, metrics) - part.height
    reach = min(_MOST, max(_LEAST, FULL.reach + spare))
    return part if reach == FULL.reach else _part(plan, replace(FULL, reach=reach), metrics)


def small_winding(plan: Plan, metrics: FontMetrics, *, wide: bool = False, low: bool = False) -> Part:
    """A smaller one with fewer passes drawn, without knots, shed stick and heading rows.

    A `wide` one has its steps beside the picture. A `low` one leaves more room for words.
    """
    scale = (WIDEST if low else WIDE) if wide else LOWEST if low else LOW
    return _part(plan, scale, metrics)


def _steps_high(steps: Sequence[str], metrics: FontMetrics) -> float:
    """How much the steps take in two columns over the picture."""
    half = math.ceil(len(steps) / 2)
    return _FIRST_STEP + max(_column_high(each, metrics) for each in (steps[:half], steps[half:]))


def _column_high(steps: Sequence[str], metrics: FontMetrics) -> float:
    rows = (wrap(step, LEAD, _COLUMN, metrics) for step in steps)
    return sum((len(each) - 1) * step_of(each, LEAD) + _STEP for each in rows)


def _part(plan: Plan, scale: Scale, metrics: FontMetrics) -> Part:
    face = Face.of(plan, scale)
    done = actions(face)
    left, right = scale.left + _OFF, -scale.left + _OFF  # on the left side of the frame, and past the right one
    near, far = face.height("near"), face.height("far")
    datum = Point(left, near), Point(right, near), Point(left, far)
    crosses = [hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER)]
    shapes = [*crosses, *_picture(face, done, crosses, metrics)]
    shapes += legend(face, lowest(shapes, metrics) - _LEGEND, metrics)
    if scale.knots:
        shapes += shed(plan, Point(scale.left, lowest(shapes, metrics) - _FOOT), scale.right, metrics)
        shapes += cautions(plan, Point(scale.left, lowest(shapes, metrics) - _CAUTION), scale.right, metrics)
    steps = tuple(action.words for action in done)
    if scale.list_from is not None:
        entries = ((str(number), words) for number, words in enumerate(steps, 1))
        top = Point(scale.list_from, max(y for shape in shapes for y in _ys(shape, metrics)) - _FIRST_STEP)
        shapes += listed(entries, top, scale.right, metrics)
    ys = [y for shape in shapes for y in _ys(shape, metrics)]
    once_round = plan.warp.kind == "wound"
    return Part(
        "winding",
        plan.words.say(SheetName.NAME_WINDING),
        tuple(shapes),
        datum,
        (scale.left, min(ys) - _AIR, scale.right, max(ys) + _AIR),
        whole=True,
        purpose=plan.words.say(SheetName.PURPOSE_WINDING if once_round else Winding.PURPOSE_THERE_AND_BACK),
        steps=() if scale.list_from is not None else steps,
        measured=False,
    )


def _picture(face: Face, done: tuple[Action, ...], crosses: Sequence[Shape], metrics: FontMetrics) -> list[Shape]:
    """Frame, thread, words and rings, the view from the right, and pictures of the knots."""
    section = face.kind.section(face) if face.scale.side_view else None
    shapes: list[Shape] = [*face.frame(), *face.kind.fittings(face), *face.threads(), *face.tied()]
    shapes += [*(side_view(face, section, metrics) if section else ()), *words(face, metrics)]
    if face.scale.knots:
        shapes += _knots(face, done, metrics)
    taken = Taken(metrics)
    taken.add([*shapes, *crosses])
    return [*shapes, *rings(face, section, done, taken, metrics)]


_LOWER, _APART, _LEAST_APART, _TO_CAPTION = 16.0, 38.0, 31.0, 4.2
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
    y, apart = scale.reach - _LOWER, min(_APART, (scale.reach - 26.2) / 2)
    if apart < _LEAST_APART:  # no room for all three
        pictures, apart = [pictures[0], pictures[2]], _LEAST_APART
    for place, role, draw in pictures:
        left = scale.right - 22.0
        shapes += draw(Point(left, y))
        shapes += ring(Point(scale.beside + _TO_RING.x, y + _TO_RING.y), numbers[place], metrics)
        rows = rows_of(face.plan.words.say(role), SMALL, scale.right - scale.beside, metrics)
        shapes += downward(rows, SMALL, Point(scale.right, y - BAR - _TO_CAPTION), metrics, "right")
        y -= apart
    return shapes


def cautions(plan: Plan, at: Point, right: float, metrics: FontMetrics) -> list[Shape]:
    """What to mind: the warp's tension, a rod that is drawn, a frame whose height can be adjusted."""
    y, shapes = at.y, list[Shape]()
    for size, said in _minded(plan):
        rows = rows_of(said, size, right - at.x, metrics)
        shapes += downward(rows, size, Point(at.x, y), metrics)
        y -= len(rows) * step_of(rows, size)
    return shapes


def _minded(plan: Plan) -> Iterator[tuple[float, str]]:
    say, frame = plan.words.say, plan.kit.frame
    yield LEAD, say(Winding.TENSION)
    if plan.warp.kind == "rod":
        yield LEAD, say(Winding.DRAW_ROD)
    if frame.travel is not None:
        low, high = (say_length(each.outer_height) for each in (frame, frame.tightened))
        yield SMALL, say(Winding.TIGHTEN, low=low, tight=high)


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
