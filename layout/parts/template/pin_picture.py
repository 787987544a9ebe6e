"""How the warp goes round pegs or nails: the near bar with its first ones, from the face."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Step, arc, circle, line, rectangle
from layout.drawing.sheet import Block
from layout.drawing.symbols import arrow_head, knot
from layout.drawing.typeset import SMALL
from layout.messages.roles import Template
from layout.parts.template.mirror import WIDE, Mirror, mirror
from layout.plan import Plan
from layout.warps.pegged import in_outer_row

_MOST, _FIRST, _APART = 5, 12.0, 17.5
_PIN, _ROUND = 2.4, 2.9  # radius of a pin, and of the thread round it
_TOP, _FAR, _ARROWS, _BAR, _INNER, _STEP, _BELOW = -1.0, -3.0, (-9.5, -11.5), -17.0, -24.0, 9.0, 8.5
_TIED_ON = 0  # the number of the pin
_TAIL, _KNOT, _ROOM = 3.0, 4.6, 0.8


def round_pins(plan: Plan, metrics: FontMetrics, *, staggered: bool, title: Template, beside: Template) -> Block:
    """The first pins of the near bar, in two rows where they are `staggered`, and the ends that they turn."""
    path = _Path(plan, metrics, staggered)
    return Block(plan.words.say(title), plan.words.say(beside), tuple(path.shapes()), path.high)


class _Path:
    def __init__(self, plan: Plan, metrics: FontMetrics, staggered: bool) -> None:
        self.plan, self.metrics, self.staggered = plan, metrics, staggered
        self.low = _INNER - _BELOW - (_STEP if staggered else 0.0)
        self.high = 1.0 - self.low
        self.mirror: Mirror = mirror(plan, self.high)
        self.ends = plan.warp.ends
        self.pins = range(min(_MOST, len(plan.warp.near)))

    def at(self, k: int) -> Point:
        """The middle of a pin: the first one is nearest to the weaving."""
        outer = self.staggered and in_outer_row(k)
        return Point(_FIRST + _APART * k, _INNER - (_STEP if outer else 0.0))

    def shapes(self) -> Iterator[Shape]:
        """Bar, pins and thread."""
        yield from self.mirror.shapes([rectangle(0.0, self.low, WIDE, _BAR, Pen.OUTLINE), *self.tie()])
        for k in self.pins:
            yield from self.mirror.shapes([*self.pin(k), *self.thread(k), *self.arrows(k)])
        yield from self.words()

    def pin(self, k: int) -> Sequence[Shape]:
        """One pin from its head."""
        return Region((circle(self.at(k), _PIN, Pen.TINT),), Pen.TINT), circle(self.at(k), _PIN, Pen.HOLE)

    def comes(self, k: int) -> bool:
        """Whether an end comes down to a pin: none to the first."""
        return k > 0

    def goes(self, k: int) -> bool:
        """Whether an end goes up from a pin: none from the last of an even warp."""
        return 2 * k < self.ends

    def thread(self, k: int) -> Iterator[Shape]:
        """Down to a pin, round it, and up again."""
        x, y = self.at(k)
        around = Curve(Point(x - _ROUND, y), arc(Point(x, y), _ROUND, 180, 360), Pen.THREAD)
        if self.comes(k) and self.goes(k):
            up = Step(Point(x + _ROUND, _TOP))
            yield Curve(Point(x - _ROUND, _TOP), (Step(around.start), *around.steps, up), Pen.THREAD)
        elif self.goes(k):
            tail = Curve(Point(x - _ROUND, y + _TAIL), (Step(around.start), *around.steps), Pen.THREAD)
            yield tail._replace(steps=(*tail.steps, Step(Point(x + _ROUND, _TOP))))
        else:
            yield line(Point(x - _ROUND, _TOP), Point(x - _ROUND, y), Pen.THREAD)
            yield around
            yield knot(Point(x - _ROUND, y + _KNOT))

    def tie(self) -> Iterator[Shape]:
        """The knot of the tie-on."""
        x, y = self.at(0)
        yield knot(Point(x + _ROUND, y + _KNOT))

    def arrows(self, k: int) -> Iterator[Shape]:
        """The way of both ends of a pin."""
        x = self.at(k).x
        if self.goes(k):
            yield arrow_head(Point(x + _ROUND, _ARROWS[0]), Point(0, 1))
        if self.comes(k):
            yield arrow_head(Point(x - _ROUND, _ARROWS[1]), Point(0, -1))

    def words(self) -> Iterator[Shape]:
        """The numbers of pins, near and far, where the warp is tied on, and which bar this is."""
        say, set_words = self.plan.words.say, self.mirror.words
        for k in self.pins:
            yield set_words(str(k), self.at(k), self.metrics, Pen.STRONG)
            far = say(Template.FAR_PIN, number=k + 1)
            if self.goes(k) and self.metrics.width(far, SMALL) <= _APART - 2 * _ROUND - 2 * _ROOM:
                yield set_words(far, Point(self.at(k).x + _APART / 2, _FAR), self.metrics)
        low = self.low + 2.4
        yield set_words(say(Template.TIE_ON, number=_TIED_ON), Point(1.2, low), self.metrics, side=1)
        yield set_words(say(Template.NEAR_BAR), Point(WIDE - 1.2, low), self.metrics, side=-1)
