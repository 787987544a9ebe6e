"""Two sheets, shape for shape: nothing but the same passes, and a distance is measured rightly."""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st
from strategies import sheets

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Step, Text, circle, filled, line, rectangle
from layout.drawing.sheet import Sheet
from templates_gen.messages.roles.proof import Compared
from templates_gen.verify import LIMIT
from templates_gen.verify.compare import compare
from templates_gen.verify.finding import Findings, finding

P = Point
SQUARE = (P(1, 1), P(5, 1), P(5, 5), P(1, 5))
SHAPES: tuple[Shape, ...] = (
    filled(SQUARE, Pen.TINT),
    rectangle(10, 10, 60, 30, Pen.CUT),
    line(P(20, 12), P(20, 18), Pen.MARK),
    circle(P(40, 20), 5, Pen.CUT),
    Text(P(30, 25), 4, "12"),
)
TINT, CUT, MARK, CIRCLE, WORD = range(5)


def sheet(*shapes: Shape) -> Sheet:
    """A sheet of one size with these shapes."""
    return Sheet("one", 100, 50, shapes)


def but(index: int, shape: Shape) -> Sheet:
    """The sheet with one shape exchanged."""
    return sheet(*SHAPES[:index], shape, *SHAPES[index + 1 :])


def path(index: int) -> Curve:
    """One of the shapes that is a path."""
    found = SHAPES[index]
    assert isinstance(found, Curve)
    return found


RIGHT = sheet(*SHAPES)
OTHER = {
    "one missing": lambda: sheet(*SHAPES[:-1]),
    "one more": lambda: sheet(*SHAPES, line(P(1, 1), P(2, 2), Pen.MARK)),
    "none": lambda: sheet(),
    "another order": lambda: sheet(*SHAPES[:1], *SHAPES[2:], SHAPES[1]),
    "another pen": lambda: but(MARK, path(MARK)._replace(pen=Pen.TEN)),
    "another fill": lambda: but(TINT, filled(SQUARE, Pen.SOLID)),
    "an open outline": lambda: but(CUT, path(CUT)._replace(closed=False)),
    "a corner less": lambda: but(CUT, path(CUT)._replace(steps=path(CUT).steps[:-1])),
    "chords for arcs": lambda: but(CIRCLE, path(CIRCLE)._replace(steps=tuple(Step(p) for p, _ in path(CIRCLE).steps))),
    "an arc bent the other way": lambda: but(CIRCLE, _dented(path(CIRCLE))),
    "a circle that just misses its start": lambda: but(CIRCLE, path(CIRCLE)._replace(start=P(45, 20.0003))),
    "the same outline turned round": lambda: but(CUT, rectangle(60, 30, 10, 10, Pen.CUT)),
    "another word": lambda: but(WORD, Text(P(30, 25), 4, "13")),
    "a larger word": lambda: but(WORD, Text(P(30, 25), 4.002, "12")),
    "a word turned": lambda: but(WORD, Text(P(30, 25), 4, "12", 0.02)),
    "a line for a word": lambda: but(WORD, line(P(30, 25), P(34, 25), Pen.TEXT)),
    "a region of two contours": lambda: but(TINT, Region(filled(SQUARE, Pen.TINT).contours * 2, Pen.TINT)),
    "narrower": lambda: Sheet("one", 99.9, 50, SHAPES),
    "higher": lambda: Sheet("one", 100, 50.0011, SHAPES),
    "not a number": lambda: but(MARK, line(P(20, 12), P(math.nan, 18), Pen.MARK)),
    "not a number at the start": lambda: but(MARK, line(P(20, math.nan), P(20, 18), Pen.MARK)),
    "not a number in a corner": lambda: but(TINT, filled((P(1, 1), P(5, 1), P(5, math.nan), P(1, 5)), Pen.TINT)),
}  # fmt: skip


def _dented(round_: Curve) -> Curve:
    """The circle with its first arc mirrored at its chord."""
    (end, through), *others = round_.steps
    assert through is not None
    middle = P((round_.start.x + end.x) / 2, (round_.start.y + end.y) / 2)
    inside = P(2 * middle.x - through.x, 2 * middle.y - through.y)
    return round_._replace(steps=(Step(end, inside), *others))


def test_the_same_passes() -> None:
    """A sheet agrees with itself to nothing at all."""
    assert compare([RIGHT, RIGHT], [RIGHT, RIGHT]) == Findings(0.0, ())


@pytest.mark.parametrize("name", OTHER)
def test_anything_else_does_not_pass(name: str) -> None:
    """Each difference in count, order, pen, form, words, size or place is a problem, whichever sheet has it."""
    other: Callable[[], Sheet] = OTHER[name]
    assert repr(other()) != repr(RIGHT)
    for wanted, found in ((RIGHT, other()), (other(), RIGHT)):
        result = compare([wanted], [found])
        assert not result.sound
        assert all(problem.startswith("sheet 1: ") for problem in result.sentences)
        assert result.problems


@pytest.mark.parametrize(("micrometres", "sound"), [(0.0, True), (0.9, True), (1.1, False), (10.0, False)])
@pytest.mark.parametrize("index", [MARK, WORD])
def test_one_micrometre_is_the_limit(micrometres: float, sound: bool, index: int) -> None:
    """A shape 0.9 micrometres off passes and one 1.1 off does not; the distance is said either way."""
    off = micrometres / 1000
    moved = line(P(20 + off, 12), P(20 + off, 18), Pen.MARK) if index == MARK else Text(P(30, 25 - off), 4, "12")
    result = compare([RIGHT], [but(index, moved)])
    assert result.deviation == pytest.approx(off, abs=1e-9)
    assert result.sound is sound


@given(sheets("ab"), st.floats(-2, 2), st.floats(-2, 2))
def test_a_shift_is_measured(drawn: Sheet, dx: float, dy: float) -> None:
    """Whatever is drawn, shifting all of it is found to be as far off as it was shifted (Pythagoras)."""

    def put(point: Point) -> Point:
        return Point(point.x + dx, point.y + dy)

    def moved(shape: Shape) -> Shape:
        if isinstance(shape, Text):
            return shape._replace(at=put(shape.at))
        if isinstance(shape, Region):
            return Region(tuple(shifted(contour) for contour in shape.contours), shape.pen)
        return shifted(shape)

    def shifted(old: Curve) -> Curve:
        steps = tuple(Step(put(end), through and put(through)) for end, through in old.steps)
        return old._replace(start=put(old.start), steps=steps)

    result = compare([drawn], [Sheet(drawn.name, drawn.width, drawn.height, tuple(map(moved, drawn.shapes)))])
    apart = math.hypot(dx, dy) if drawn.shapes else 0.0
    assert result.deviation == pytest.approx(apart, abs=1e-6)
    assert result.sound or apart > LIMIT - 1e-6


def test_sheets_are_counted_and_named() -> None:
    """A sheet too few or too many is said, and a problem on the second sheet says so."""
    assert compare([RIGHT, RIGHT], [RIGHT]).sentences == ("1 sheets where 2 were wanted",)
    assert not compare([], [RIGHT]).sound
    assert compare([RIGHT, RIGHT], [RIGHT, sheet()]).sentences[0].startswith("sheet 2: ")


def test_findings_add_up() -> None:
    """The larger deviation stands and every problem is kept; a deviation over the limit is not sound by itself."""
    one, other = finding(Compared.OPERATIONS), finding(Compared.SHEETS, found=1, wanted=2)
    total = Findings(0.0002, (one,)) + Findings(0.0005, (other,))
    assert total == Findings(0.0005, (one, other))
    assert not total.sound
    assert Findings(0.001, ()).sound
    assert not Findings(0.0011, ()).sound
