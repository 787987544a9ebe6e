"""The numbers on a spacing guide: each beside the end that it counts, or beside the unit that it measures."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from typing import Protocol

from layout.drawing.pens import Pen
from layout.drawing.shapes import Text
from layout.values.numerals import say_number
from templates_gen.messages.roles.proof_printed import Spacing
from templates_gen.verify.finding import Finding, Findings, finding, once
from templates_gen.verify.found_parts import FoundPart

_TENTH, _ROOM = 10, 10.0  # where ten ends take so many mm, every tenth must be numbered
_FIGURE, _ASIDE = 1.9, 1.0  # no figure is wider; a number at the edge of the paper stands so far aside, in mm


class _End(Protocol):
    x: float
    number: int


def check_numbers(
    ends: Sequence[_End], units: Sequence[tuple[float, Fraction]], pieces: Sequence[FoundPart], pitch: Fraction
) -> Findings:
    """Every number of an end under the end it counts, every tenth where there is room; every unit's under its tick.

    The scale says how long the whole of it is where it has numbers.
    """
    by_number = {end.number: end.x for end in ends}
    numbered: set[int] = set()
    measured: set[Fraction] = set()
    wrong: list[Finding] = []
    said = pieces[0].spoken.figure
    for words, x, pen in _figures(pieces):
        if pen is Pen.STRONG:
            number = int(words)
            numbered.add(number)
            right = _under(by_number.get(number), x, words) and (number == 1 or number % _TENTH == 0)
        else:
            named = [
                value for at, value in units if words.split()[0] == said(say_number(value)) and _under(at, x, words)
            ]
            measured |= set(named)
            right = bool(named) and (" " in words) == (named[0] == units[-1][1])
        if not right:
            wrong.append(finding(Spacing.NUMBER, words=words))
    step = min(numbered - {1}, default=_TENTH)
    asked = set(range(step, len(ends) + 1, step))
    if asked != numbered - {1} or (step != _TENTH and _TENTH * pitch >= _ROOM and len(ends) >= _TENTH):
        wrong.append(finding(Spacing.TENTHS))
    if measured and units[-1][1] not in measured:
        wrong.append(finding(Spacing.UNITS))
    return Findings(0.0, tuple(once(wrong)))


def _under(at: float | None, x: float, words: str) -> bool:
    """Whether words that begin at `x` stand about `at`, or beside it at an edge of the paper."""
    return at is not None and -_ASIDE < at - x < _FIGURE * len(words) + _ASIDE


def _figures(pieces: Sequence[FoundPart]) -> Iterator[tuple[str, float, Pen]]:
    """Figures on a piece, alone or with a unit behind them, with where they begin, and their pen."""
    for seen in pieces:
        for shape in seen.shapes():
            if isinstance(shape, Text) and len(shape.words) < 12:
                first = shape.words.split()[0] if shape.words.split() else ""
                if first.replace(seen.spoken.decimal, "", 1).isdigit() and len(shape.words.split()) < 3:
                    yield shape.words, shape.at.x, shape.pen
