"""The live strips: the strip as it is printed, and where its marks are in it."""

from __future__ import annotations

import pytest
from kits import INCHES, KINDS, font_metrics, plan_of
from same import assert_same

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Text
from layout.drawing.sheet import sheet_of
from layout.parts.strip import strip as strip_part
from layout.plan import Plan
from layout.warps.warp import End
from templates_gen.desk.look.strips import strip
from templates_gen.messages.english import ENGLISH
from templates_gen.readers.screen import read

KITS = KINDS | {"inches": INCHES, "top": {"weaving.near_end": "top"}}
ENDS: tuple[End, End] = ("near", "far")
each_strip = [(name, end) for name in KITS for end in ENDS]


@pytest.mark.parametrize(("name", "end"), each_strip)
def test_it_is_the_strip_that_is_printed(name: str, end: End) -> None:
    """Read back, it is the part by itself, to the micrometre and to the letter, and as large."""
    plan = plan_of(KITS[name])
    view = strip(plan, end)
    part = strip_part(plan, end, font_metrics())
    found = read(view.svg, part.name)
    assert_same(sheet_of(part.name, [part]), found)
    assert view.mm == pytest.approx((found.width, found.height), abs=1e-4)
    assert not view.why


@pytest.mark.parametrize(("name", "end"), each_strip)
def test_marks_are_where_they_are_drawn(name: str, end: End) -> None:
    """At each place something stands upright, or is centred there; every number stands beside its own mark."""
    plan = plan_of(KITS[name])
    view = strip(plan, end, ENGLISH)
    shapes = read(view.svg).shapes
    assert len(view.marks) == len(view.labels) == len(plan.warp.marks(end))
    middles = [_middle(shape) for shape in shapes if isinstance(shape, Curve)]
    for x in view.marks:
        assert min(abs(x - middle) for middle in middles) < 0.002
        assert 0 <= x <= view.mm[0]
    numbers = {int(said.split()[0]): x for said, x in zip(view.labels, view.marks, strict=True)}
    for text in (shape for shape in shapes if isinstance(shape, Text) and shape.words.isdecimal()):
        middle = text.at.x + font_metrics().width(text.words, text.size, text.pen) / 2
        nearest = min(numbers, key=lambda number: abs(numbers[number] - middle))
        assert nearest == int(text.words) or float(plan.warp.spacing) < 6


def _middle(curve: Curve) -> float:
    xs = [at.x for at in curve.points()]
    return (min(xs) + max(xs)) / 2


@pytest.mark.parametrize("name", KITS)
def test_the_span_is_that_of_a_mark(name: str) -> None:
    """From its top to its bottom; within the strip."""
    plan = plan_of(KITS[name])
    view = strip(plan, "near")
    top, bottom = view.span
    assert 0 <= top < bottom <= view.mm[1]
    plain = [shape for shape in read(view.svg).shapes if shape.pen is Pen.MARK and isinstance(shape, Curve)]
    if plain and len(plain[0].steps) == 1:
        ys = [view.mm[1] - at.y for at in plain[0].points()]
        assert (min(ys), max(ys)) == pytest.approx((top, bottom), abs=0.002)


def test_a_strip_of_60_ends_by_hand() -> None:
    """8 mm from wind to wind; the first mark 2 mm within the paper, beyond it the limit."""
    view = strip(plan_of(), "near", ENGLISH)
    assert [b - a for a, b in zip(view.marks, view.marks[1:], strict=False)] == pytest.approx([8.0] * 25)
    assert view.marks[0] == pytest.approx(2.0)
    assert view.labels[0] == "0 (tied on)"
    assert view.about == "Near strip: 26 marks."


def test_what_cannot_be_drawn_says_why() -> None:
    """On a frame of a few centimetres no word finds room: a sentence that names the line, and no picture."""
    view = strip(_small(), "near", ENGLISH)
    assert view.svg == ""
    assert "frame.outer_width" in view.why
    assert len(view.labels) == len(_small().warp.near)


def _small() -> Plan:
    sizes = {"frame.outer_width": "4 cm", "frame.outer_height": "30 cm", "frame.side_width": "9 mm"}
    return plan_of(
        sizes | {"frame.margin": "3 mm", "weaving.width": "as wide as fits", "weaving.height": "as high as fits"}
    )
