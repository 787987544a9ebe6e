"""How a notch template lies on its bar: a picture of the bar from its end, to scale."""

from __future__ import annotations

from collections.abc import Iterator

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Shape, Step, Text, filled, line, rectangle
from layout.drawing.sheet import Block
from layout.drawing.signs import triangle
from layout.drawing.symbols import centred
from layout.drawing.typeset import SMALL, leading, wrap
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.messages.roles import Template
from layout.parts.template.levels import edge_part, notches
from layout.parts.template.mirror import WIDE
from layout.plan import Plan
from layout.values.units import say_length

_SCALE, _MOST_HIGH, _MOST_DEEP, _LEAST_HIGH = 1.7, 26.0, 42.0, 8.0
_LEFT, _RIGHT, _TOP, _OFF = 14.0, 64.0, -8.6, 1.0  # of the bar; a template lies so far off it, to be seen
_BESIDE = _RIGHT + 7.0  # where words begin to the right of the bar
_TEXT_UP = 0.95  # half of a capital


def how_it_lies(plan: Plan, ends: NotchedEnd, metrics: FontMetrics, *, folded: bool) -> Block:
    """The bar with a notch, and a template on its face, `folded` over its edge or flush with it."""
    return Block(plan.words.say(Template.HOW_IT_LIES), "", *_Lies(plan, ends, metrics, folded).picture())


class _Lies:
    def __init__(self, plan: Plan, ends: NotchedEnd, metrics: FontMetrics, folded: bool) -> None:
        self.say, self.metrics, self.folded = plan.words.say, metrics, folded
        thick, self.deep = float(ends.thickness.mm), float(ends.notch_depth.mm)
        levels = notches(self.deep, thick if folded else None)
        self.scale = min(_SCALE, _MOST_HIGH / thick, _MOST_DEEP / levels.edge)
        self.low = _TOP - max(thick * self.scale, _LEAST_HIGH)
        self.face, self.over = levels.edge * self.scale, edge_part(thick)[0] * self.scale
        self.notch = say_length(ends.notch_depth, plan.words)

    def picture(self) -> tuple[tuple[Shape, ...], float]:
        """All shapes, and how high they are."""
        shapes = [*self.bar(), *self.template(), *self.weaving(), *self.names()]
        beside, low = self.beside()
        return (*shapes, *beside), max(-self.low, -low) + 1.0

    def bar(self) -> Iterator[Shape]:
        """The bar from its end, its notch grey."""
        inner = _RIGHT - self.deep * self.scale
        yield filled(rectangle(inner, self.low, _RIGHT, _TOP, Pen.TINT).points(), Pen.TINT)
        yield line(Point(inner, self.low), Point(inner, _TOP), Pen.HELP)
        yield rectangle(_LEFT, self.low, _RIGHT, _TOP, Pen.OUTLINE)

    def template(self) -> Iterator[Shape]:
        """The paper, in bold."""
        y, x = _TOP + _OFF, _RIGHT + _OFF if self.folded else _RIGHT
        corners = [Point(x, y)] + ([Point(x, _TOP - min(self.over, _TOP - self.low))] if self.folded else [])
        yield Curve(Point(_RIGHT - self.face, y), tuple(map(Step, corners)), Pen.EDGE)

    def weaving(self) -> Iterator[Shape]:
        """The way to the weaving."""
        y = (_TOP + self.low) / 2
        yield line(Point(8.2, y), Point(12.5, y), Pen.OUTLINE)
        yield triangle(Point(6.4, y), Point(-1, 0))
        yield Text(Point(0.0, y - 4.2), SMALL, self.say(Template.WEAVING))

    def names(self) -> Iterator[Shape]:
        """What is where, above and within the bar."""
        yield Text(Point(_LEFT + 3, (_TOP + self.low) / 2 - _TEXT_UP), SMALL, self.say(Template.BAR))
        notch = self.say(Template.NOTCH_DEEP, depth=self.notch)
        inner = _RIGHT - self.deep * self.scale - 1.5
        yield Text(Point(inner - self.metrics.width(notch, SMALL), self.low + 1.6), SMALL, notch)
        face = self.say(Template.FACE_PART)
        x = _RIGHT - self.face / 2
        yield centred(face, Point(x, -1.4), self.metrics)
        yield line(Point(x, -3.6), Point(x, _TOP + _OFF), Pen.HELP)

    def beside(self) -> tuple[list[Shape], float]:
        """What the fold and the part on the edge are, to the right, and how low their words reach."""
        y = _TOP + 4.0
        said = Template.FOLD_AT if self.folded else Template.PLAIN_EDGE
        shapes, low = self.label(said, Point(_RIGHT + _OFF * self.folded, _TOP + _OFF), y)
        if self.folded:
            at = Point(_RIGHT + _OFF, _TOP - min(self.over, _TOP - self.low) / 2)
            more, low = self.label(Template.EDGE_PART, at, min(at.y, low - 2.6))
            shapes += more
        return shapes, low

    def label(self, role: Template, at: Point, y: float) -> tuple[list[Shape], float]:
        """Words whose first line has its middle at `y`, with a line to what they name."""
        lines = wrap(self.say(role), SMALL, WIDE - _BESIDE, self.metrics)
        base = y - _TEXT_UP
        shapes: list[Shape] = [line(at, Point(_BESIDE - 1, y), Pen.HELP)]
        shapes += [Text(Point(_BESIDE, base - k * leading(SMALL)), SMALL, each) for k, each in enumerate(lines)]
        return shapes, base - (len(lines) - 1) * leading(SMALL)
