"""How the warp goes through notches: the near bar with its first ends, from the face."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, line
from layout.drawing.sheet import Block
from layout.drawing.symbols import arrow_head, knot, notched_block
from layout.drawing.typeset import SMALL, leading, wrap
from layout.messages.roles import Template
from layout.parts.template.mirror import WIDE, Mirror, mirror
from layout.plan import Plan

_MOST, _FIRST, _PAIR = 6, 18.0, 1.1  # ends shown, the x of the first notch, half of what two ends in one are apart
_ROOM, _APART = 63.0, 24.0  # from the first notch to the last, and from one to the next at most
_TOP, _BAR, _GROUND, _EDGE = -1.4, -13.4, -19.4, -24.4
_THREAD, _BEHIND, _KNOT, _ARROW, _NUMBER, _HIGH = -20.3, -20.0, -15.6, -6.5, -27.2, 29.5
_WIDE, _WIDE_FOR_TWO, _ON, _BESIDE = 1.5, 4.2, 7.0, 2.4
_NAME_IN, _NAME_WIDE = 1.2, 13.8  # where the bar's name begins, left of the first notch and its knot


def through_notches(plan: Plan, metrics: FontMetrics, every: int) -> Block:
    """The first ends of the near bar, an end in `every` notch (1) or in every second one (2)."""
    title = plan.words.say(Template.THROUGH_NOTCHES)
    return Block(title, "", tuple(_Path(plan, metrics, every).shapes()), _HIGH)


class _Path:
    def __init__(self, plan: Plan, metrics: FontMetrics, every: int) -> None:
        self.plan, self.metrics, self.every = plan, metrics, every
        self.mirror: Mirror = mirror(plan, _HIGH)
        self.passes = plan.warp.passes[:_MOST]
        marks = {x: k for k, x in enumerate(dict.fromkeys(each.near for each in self.passes))}
        self.notch = [marks[each.near] for each in self.passes]
        self.shared = len(set(self.notch)) < len(self.notch)
        self.apart = min(_APART, _ROOM / max(1, *self.notch))

    def x(self, k: int) -> float:
        """Where the k-th end lies: in the middle of its notch, or beside the one that shares it."""
        middle = _FIRST + self.apart * self.notch[k]
        if not self.shared:
            return middle
        return middle + (_PAIR if k and self.notch[k - 1] == self.notch[k] else -_PAIR)

    def shapes(self) -> Iterator[Shape]:
        """The bar, the ends, and what leads from one to the next behind a tooth."""
        yield from self.mirror.shapes([*self.bar(), *self.ends(), *self.behind()])
        yield from self.words()

    def bar(self) -> Sequence[Shape]:
        """With the notches that are used, and those between them that stay empty."""
        step = self.apart / self.every
        count = self.every * max(self.notch) + 1
        notches = [_FIRST + step * k for k in range(count)]
        wide = _WIDE_FOR_TWO if self.shared else _WIDE
        return notched_block(0.0, WIDE, _EDGE, _BAR, notches, wide, _GROUND)

    def ends(self) -> Iterator[Shape]:
        """Each from its notch upward, with an arrow; the first one is tied on."""
        for k, each in enumerate(self.passes):
            x = self.x(k)
            yield line(Point(x, _THREAD), Point(x, _TOP), Pen.THREAD)
            yield arrow_head(Point(x, _ARROW), Point(0, 1 if each.direction == "up" else -1))
        yield knot(Point(self.x(0), _KNOT))

    def behind(self) -> Iterator[Shape]:
        """Where the thread runs behind a tooth."""
        for k, each in enumerate(self.passes):
            if each.direction == "up" or k + 1 == len(self.plan.warp.passes):
                continue
            to = self.x(k + 1) if k + 1 < len(self.passes) else self.x(k) + _ON
            if k + 1 == len(self.passes) or self.notch[k] != self.notch[k + 1]:
                yield line(Point(self.x(k), _BEHIND), Point(to, _BEHIND), Pen.THREAD_BACK)

    def words(self) -> Iterator[Shape]:
        """The numbers of the notches, where the warp is tied on, and which bar this is."""
        for number in sorted(set(self.notch)):
            at = Point(_FIRST + self.apart * number, _NUMBER)
            yield self.mirror.words(str(number + 1), at, self.metrics, Pen.STRONG)
        say = self.plan.words.say
        yield from self.rows(say(Template.NEAR_BAR), Point(_NAME_IN, -16.0), _NAME_WIDE, 1)
        tied = say(Template.TIE_ON, number=1)
        yield from self.rows(tied, Point(_FIRST - _PAIR - _BESIDE, -4.0), _FIRST - _BESIDE - 1, -1)

    def rows(self, said: str, at: Point, wide: float, side: int) -> Iterator[Shape]:
        """Words in rows that begin (`side` 1) or end (-1) at a place, the first of them at its height."""
        lines = wrap(said, SMALL, wide, self.metrics)
        for k, words in enumerate(lines):
            down = (len(lines) - 1 - k if self.mirror.ends else k) * leading(SMALL)
            yield self.mirror.words(words, Point(at.x, at.y - down), self.metrics, side=side)
