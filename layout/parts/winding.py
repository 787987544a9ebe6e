"""The winding picture: the frame from its face and from the side, with the true way of the thread; not to scale.

y runs up the paper from the frame's lower edge, x from the middle of the weaving. Widths are drawn as far apart as the
eye needs; number, order, side, layer and direction of all passes are those of the kit's warp.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from layout.drawing.figures import arrow_head, beside, block, break_line, centred, knot, stretch
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Path, Point, Shape, Text, cross, line
from layout.drawing.sheet import Part
from layout.drawing.typeset import LEAD, SMALL
from layout.parts.course import Course, Leg, course
from layout.parts.winding_scale import FULL, LOW, Scale
from layout.parts.winding_side import side_view
from layout.plan import Plan


def winding(plan: Plan, metrics: FontMetrics, *, low: bool = False) -> Part:
    """The winding picture of a plan; `low` gives a smaller one with fewer passes drawn."""
    scale = LOW if low else FULL
    face = _Face(plan, scale, metrics)
    shapes = [*face.shapes(), *side_view(plan, scale, metrics), *_legend(scale, metrics)]
    datum = face.datum
    shapes += [hair for point in datum for hair in cross(point, 0.5, Pen.REGISTER)]
    note = "Not to scale: wind as shown. Full lines run on the face of the frame, broken lines behind it."
    return Part("winding", "How to wind", tuple(shapes), datum, scale.box, (note,), whole=True)


@dataclass(frozen=True, slots=True)
class _Face:
    plan: Plan
    scale: Scale
    metrics: FontMetrics

    @property
    def course(self) -> Course:
        scale = self.scale
        return course(self.plan.warp, scale.step, scale.shown, scale.gap)

    @property
    def near_below(self) -> bool:
        return self.plan.kit.weaving.near_end == "bottom"

    def height(self, end: str) -> float:
        """The y of the outermost line of a frame end."""
        return 0.0 if (end == "near") == self.near_below else self.scale.reach

    def outward(self, end: str) -> int:
        """+1 where a frame end is the upper one, -1 where it is the lower one."""
        return 1 if self.height(end) else -1

    def shapes(self) -> list[Shape]:
        """Everything that is seen from the face."""
        way = self.course
        shapes: list[Shape] = [*self.frame(way), *self.heading(way), *self.words(way)]
        for leg in way.legs:
            shapes += self.thread(leg)
        shapes += self.knots(way)
        return shapes

    @property
    def datum(self) -> tuple[Point, ...]:
        """Beside the frame, on the outermost lines of both ends."""
        x = self.scale.outer / 2 + 1.5
        near, far = self.height("near"), self.height("far")
        return Point(-x, near), Point(x, near), Point(-x, far)

    def frame(self, way: Course) -> list[Shape]:
        """Both sides, and both ends with a break where passes are left out."""
        scale, outer, inner = self.scale, self.scale.outer / 2, self.scale.inner / 2
        shapes: list[Shape] = []
        for left, right in ((-outer, -inner), (inner, outer)):
            shapes += block(left, -scale.past, right, scale.reach + scale.past)
        spans = [(-inner, way.gap[0]), (way.gap[1], inner)] if way.left_out else [(-inner, inner)]
        for low in (0.0, scale.reach - scale.bar):
            for left, right in spans:
                shapes += block(left, low, right, low + scale.bar)
        if way.left_out:
            shapes += [break_line(x, -scale.past, scale.reach + scale.past) for x in way.gap]
        return shapes

    def thread(self, leg: Leg) -> list[Shape]:
        """One pass, whole over both ends on the face and hidden by them behind, and its arrow."""
        scale = self.scale
        near, far = Point(leg.near, self.height("near")), Point(leg.far, self.height("far"))
        begin, end = (near, far) if leg.up else (far, near)
        ahead = Point(end.x - begin.x, end.y - begin.y)
        share = 0.62 if leg.layer == "face" else 0.5
        arrow = arrow_head(Point(begin.x + share * ahead.x, begin.y + share * ahead.y), ahead)
        if leg.layer == "face":
            return [line(begin, end, Pen.THREAD), arrow]
        return [stretch(begin, end, scale.bar, scale.reach - scale.bar, Pen.THREAD_BACK), arrow]

    def knots(self, way: Course) -> list[Shape]:
        """Tie-on and tie-off on the face of the frame end, with the thread that leads there, and their words."""
        first, last = way.legs[0], way.legs[-1]
        toward = self.plan.warp.toward
        off = "far" if last.up else "near"
        shapes: list[Shape] = []
        for x, end, words, side in ((first.begin, "near", "tie on", -toward), (last.end, off, "tie off", toward)):
            edge, out = self.height(end), self.outward(end)
            middle = Point(x, edge - out * self.scale.bar / 2)
            row = 1 if end == "far" else 0
            shapes += [knot(middle), line(Point(x, edge), middle, Pen.THREAD)]
            at = Point(x - side * 3, edge + out * (self.scale.past + (row + 0.5) * self.scale.row))
            shapes.append(beside(words, at, self.metrics, side))
        return shapes

    def heading(self, way: Course) -> list[Shape]:
        """Two rows across all ends beside the near end: the first under the face ends, the second over them."""
        up = -self.outward("near")
        shapes: list[Shape] = []
        for row, under in ((1, "face"), (2, "back")):
            off = self.scale.bar + row * 2.6
            y = self.height("near") + up * off
            hidden = [self.at_height(leg, off) for leg in way.legs if leg.layer == under]
            for left, right in self.spans(way):
                shapes += _broken(left, right, y, hidden)
        return shapes

    def spans(self, way: Course) -> list[tuple[float, float]]:
        """From where to where the rows of heading run."""
        half = way.half + 3
        return [(-half, way.gap[0]), (way.gap[1], half)] if way.left_out else [(-half, half)]

    def at_height(self, leg: Leg, off: float) -> float:
        """The x of a pass so far from the outermost line of the near end."""
        return leg.near + (leg.far - leg.near) * off / self.scale.reach

    def words(self, way: Course) -> list[Shape]:
        """The counts, the way that the winds go, the numbers of winds, and the names of both ends."""
        plan, scale, metrics = self.plan, self.scale, self.metrics
        toward = plan.warp.toward
        shapes: list[Shape] = []
        for end in ("near", "far"):
            y = self.height(end) + self.outward(end) * (scale.past + 1.5 * scale.row)
            at = Point(-toward * scale.outer / 2, y)
            shapes.append(beside(f"{end} end", at, metrics, toward))
        shapes += self.numbers(way)
        top = Point(-scale.outer / 2, scale.box[3] - LEAD * metrics.ascent)
        count = f"{plan.warp.winds} winds, {plan.warp.ends} ends"
        shapes.append(Text(top, LEAD, count))
        arrow = Point(top.x + metrics.width(count, LEAD) + 5, top.y + metrics.cap * LEAD / 2)
        shapes.append(line(Point(arrow.x - toward * 3, arrow.y), Point(arrow.x + toward * 1, arrow.y), Pen.HELP))
        shapes.append(arrow_head(Point(arrow.x + toward * 1.7, arrow.y), Point(toward, 0)))
        if way.left_out:
            middle = sum(way.gap) / 2
            winds = way.left_out // 2
            for words, y in ((f"{winds} {'wind' if winds == 1 else 'winds'}", 1), ("more", -1)):
                shapes.append(centred(words, Point(middle, scale.reach / 2 + y * scale.row / 2), metrics))
        return shapes

    def numbers(self, way: Course) -> list[Text]:
        """The number of each wind beyond the far end; of the outer ones only where there is no room for all."""
        firsts = [leg for leg in way.legs if leg.up]
        widest = max(self.metrics.width(str(leg.number // 2 + 1), SMALL) for leg in firsts)
        if widest + 1 > 2 * self.scale.step:
            firsts = [group[k] for group in (way.first, way.last) if group for k in (0, -2)]
        y = self.height("far") + self.outward("far") * (self.scale.past + 0.5 * self.scale.row)
        return [centred(str(leg.number // 2 + 1), Point(leg.far, y), self.metrics) for leg in dict.fromkeys(firsts)]


def _broken(left: float, right: float, y: float, hidden: Sequence[float]) -> list[Path]:
    """A row from `left` to `right` that is hidden where other thread lies over it."""
    cuts = [x for x in sorted(hidden) if left < x < right]
    edges = [left, *(edge for x in cuts for edge in (x - 0.7, x + 0.7)), right]
    return [line(Point(a, y), Point(b, y), Pen.THREAD) for a, b in zip(edges[::2], edges[1::2], strict=True) if b > a]


def _legend(scale: Scale, metrics: FontMetrics) -> list[Shape]:
    """What the lines mean, in one row or two under the picture."""
    x, y = -scale.outer / 2, scale.box[1] + scale.row * (scale.legend_rows - 0.5)
    shapes: list[Shape] = []
    for sample, words in (("face", "on the face"), ("back", "behind"), ("knot", "knot"), ("row", "two heading rows")):
        if x + 9 + metrics.width(words, SMALL) > scale.box[2]:
            x, y = -scale.outer / 2, y - scale.row
        shapes += _sample(sample, x, y)
        shapes.append(beside(words, Point(x + 9, y), metrics, 1))
        x += 9 + metrics.width(words, SMALL) + 7
    shapes.append(beside("not to scale", Point(scale.box[2] - 0.3, scale.box[1] + scale.row / 2), metrics, -1))
    return shapes


def _sample(sample: str, x: float, y: float) -> list[Shape]:
    if sample == "knot":
        return [knot(Point(x + 5, y))]
    if sample == "row":
        return [line(Point(x, y + d), Point(x + 7, y + d), Pen.THREAD) for d in (-0.8, 0.8)]
    pen = Pen.THREAD if sample == "face" else Pen.THREAD_BACK
    return [line(Point(x, y), Point(x + 7, y), pen)]
