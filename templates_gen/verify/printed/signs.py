"""The signs that a sheet explains: beside each meaning stands one drawn with the pens of what it explains."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction

from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Region, Shape, Text
from layout.drawing.sheet import Sheet
from layout.messages.catalogue import Catalogue, Role
from layout.messages.roles import Gauge, Guide, Marking, Template
from layout.values.units import Length, say_length
from templates_gen.messages.roles.proof import Furnished
from templates_gen.verify.finding import Findings, finding

_LEAD = 9.5 * 25.4 / 72  # mm to the em, of sentences
_SAME = 1e-3
_FROM, _TO, _MIDDLE, _HALF = 16.1, 1.0, 1.2, 2.95  # of a sign in mm: left of its meaning, about its middle

Pens = frozenset[Pen]
_SCISSORS = frozenset({Pen.CUT, Pen.OUTLINE, Pen.SOLID})
_HOLE = frozenset({Pen.TINT, Pen.HOLE, Pen.HELP})
_STRIPS: Mapping[Role, Pens] = {
    Marking.A_MARK: frozenset({Pen.MARK, Pen.TEN}),
    Marking.A_MARK_END: frozenset({Pen.MARK, Pen.TEN}),
    Marking.A_NUMBER: frozenset({Pen.TEN, Pen.STRONG}),
    Marking.A_NUMBER_END: frozenset({Pen.TEN, Pen.STRONG}),
    Marking.A_CENTRE: frozenset({Pen.SOLID}),
    Marking.AN_ARROW: frozenset({Pen.OUTLINE, Pen.SOLID}),
    Marking.A_SCALE: frozenset({Pen.UNIT}),
    Marking.CROSSES: frozenset({Pen.HELP}),
    Marking.CUT: _SCISSORS,
    Marking.FOLDED: frozenset({Pen.FOLD}),
    Marking.GLUED: frozenset({Pen.TINT}),
    Template.A_NOTCH: frozenset({Pen.TINT, Pen.HELP}),
    Template.A_USED_NOTCH: frozenset({Pen.TINT, Pen.HELP}),
    Template.AN_EMPTY_NOTCH: frozenset({Pen.HELP}),
    Template.A_PEG: _HOLE,
    Template.A_NAIL: _HOLE,
    Template.DOTS: frozenset({Pen.SOLID, Pen.UNIT}),
    Template.DOTS_SAWN: frozenset({Pen.SOLID, Pen.UNIT}),
    Template.DOTS_DRILLED: frozenset({Pen.SOLID, Pen.UNIT}),
    Template.A_CENTRE: frozenset({Pen.CENTRE}),
    Template.CROSSES: frozenset({Pen.HELP}),
    Template.CUT: _SCISSORS,
    Template.FOLD: frozenset({Pen.FOLD}),
    Template.BEHIND: frozenset({Pen.THREAD_BACK}),
}
_GUIDES: Mapping[Role, Pens] = {
    Guide.FULL_MARK: frozenset({Pen.END_MARK}),
    Guide.BROKEN_MARK: frozenset({Pen.END_MARK_BACK}),
    Guide.LIMIT: frozenset({Pen.SOLID}),
    Guide.CENTIMETRE_SCALE: frozenset({Pen.UNIT}),
    Guide.HALF_INCHES: frozenset({Pen.UNIT}),
    Guide.THICK_EDGE: frozenset({Pen.EDGE}),
    Guide.CUT: _SCISSORS,
    Guide.BEHIND: frozenset({Pen.THREAD_BACK}),
    Guide.CENTRE: frozenset({Pen.CENTRE}),
}
_GAUGE: Mapping[Role, Pens] = {
    Gauge.IS_CUT: _SCISSORS,
    Gauge.IS_FOLD: frozenset({Pen.FOLD}),
    Gauge.IS_WARP: frozenset({Pen.THREAD}),
    Gauge.IS_WEFT: frozenset({Pen.PAPER, Pen.HELP}),
}
_MEASURED = (Marking.A_SCALE, Template.DOTS, Template.DOTS_SAWN, Template.DOTS_DRILLED)
_SIGNS: Mapping[str, Mapping[Role, Pens]] = {
    "strip-near": _STRIPS,
    "strip-far": _STRIPS,
    "spacing-near": _GUIDES,
    "spacing-far": _GUIDES,
    "wrap-gauge": _GAUGE,
    "gauge-how": _GAUGE,
}


def check_signs(sheet: Sheet, parts: Sequence[str], unit: Length, words: Catalogue) -> Findings:
    """Whether each meaning that the sheet of these parts gives stands beside its sign; marks repeat every `unit`."""
    small = Length(Fraction("6.35"), "in") if unit.imperial else Length(Fraction(10), "cm")
    lengths = {"small": say_length(small, words), "unit": say_length(unit, words)}
    wanted = {role: pens for part in parts for role, pens in _SIGNS.get(part, {}).items()}
    found = [shape for shape in sheet.shapes if isinstance(shape, Text) and _is_said(shape)]
    drawn = [(shape, *next(_points(shape))) for shape in sheet.shapes] if wanted else []
    wrong = []
    for role, pens in wanted.items():
        said = words.say(role, **lengths) if role in _MEASURED else words.say(role)
        places = [text for text in found if text.words == said] or [text for text in found if _begins(said, text.words)]
        if places and not any(frozenset(_beside(drawn, text)) == pens for text in places):
            wrong.append(finding(Furnished.SIGN, words=said))
    return Findings(0.0, tuple(wrong))


def _is_said(text: Text) -> bool:
    return text.pen is Pen.TEXT and not text.angle and abs(text.size - _LEAD) <= _SAME


def _begins(said: str, line: str) -> bool:
    """Whether it is the first line of several."""
    return said.startswith(f"{line} ")


def _beside(drawn: Sequence[tuple[Shape, float, float]], text: Text) -> Iterator[Pen]:
    """The pens of all that lies where the sign of a meaning stands, of shapes with the x and y of a first point."""
    left, right, middle = text.at.x - _FROM, text.at.x - _TO, text.at.y + _MIDDLE
    low, high = middle - _HALF, middle + _HALF
    near = (shape for shape, x, y in drawn if left <= x <= right and low <= y <= high)
    yield from (shape.pen for shape in near if all(left <= x <= right and low <= y <= high for x, y in _points(shape)))


def _points(shape: Shape) -> Iterator[Point]:
    if isinstance(shape, Text):
        yield shape.at
        return
    for path in shape.contours if isinstance(shape, Region) else (shape,):
        yield from path.points()
