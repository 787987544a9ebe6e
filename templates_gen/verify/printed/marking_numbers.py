"""The numbers on a marking strip: each beside its own mark, and all that there must be."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import NamedTuple

from templates_gen.messages.roles.proof_printed import Wraps
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Finding, Findings, end_place, finding, once
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.truth import Across

_BESIDE = 1.0  # from a mark to its number, and from a number to the edge of the paper, in mm
_NARROW, _WIDE = 1.4, 1.65  # a figure is wider than the one and narrower than the other, in mm
_CAP, _WHITE = 1.9, 0.6  # how high figures are, and the white that a mark leaves round them, in mm
_OFF = 0.02  # the middle of the figures and that of their lane, in mm


class Figure(NamedTuple):
    """A number as it was read: where it begins, and the height of its middle."""

    number: int
    digits: int
    x: float
    middle: float

    def may_cover(self, x: float) -> bool:
        """Whether it may stand where a mark at `x` would run."""
        return self.x - 2 * _WHITE <= x <= self.x + self.digits * _WIDE + 2 * _WHITE


def figures_on(seen: FoundPart, up: int) -> list[Figure]:
    """Every number on a piece."""
    return [
        Figure(int(words), len(words), at.x, up * (at.y + _CAP / 2)) for at, words in seen.words() if words.isdigit()
    ]


def in_lane(across: Across, low: float, high: float) -> bool:
    """Whether what a mark leaves out is the lane of the numbers and no more."""
    return abs((low + high) / 2 - across.lane) < _OFF and high - low < _CAP + 2 * _WHITE + _OFF


def check_numbers(
    marks: Mapping[int, float], across: Across, end: str, pieces: Sequence[FoundPart], up: int
) -> Findings:
    """The numbers of all pieces of a strip; those near a joint may stand on one of both."""
    last = max(seen.part.box[2] for seen in pieces)
    found: set[int] = set()
    wrong: list[Finding] = []
    for seen in pieces:
        for figure in figures_on(seen, up):
            found.add(figure.number)
            if not _beside(figure, marks, last) or abs(figure.middle - across.lane) > _OFF:
                wrong.append(finding(Wraps.ASTRAY, number=figure.number).at(seen.where))
    wanted = set(_wanted(marks))
    if found != wanted:
        said = {"found": sorted(found), "wanted": sorted(wanted)}
        wrong.append(finding(Wraps.NUMBERS, **said).at(end_place(end)))
    return Findings(0.0, tuple(once(wrong)))


def _beside(figure: Figure, marks: Mapping[int, float], last: float) -> bool:
    """To the right of its mark; to the left where the paper ends."""
    mark = marks.get(figure.number)
    if mark is None:
        return False
    if abs(figure.x - mark - _BESIDE) <= LIMIT:
        return True
    ends_at = mark - _BESIDE - figure.x
    ends_so = mark + 2 * _BESIDE + figure.digits * _WIDE > last
    return ends_so and figure.digits * _NARROW < ends_at < figure.digits * _WIDE


def _wanted(marks: Mapping[int, float]) -> Iterator[int]:
    """Every fifth number, or every tenth, fiftieth ... where they would be too close or more than 30; and 1."""
    first, last = min(marks), max(marks)
    pitch = abs(marks[first + 1] - marks[first]) if last > first else float("inf")
    steps = (many * ten for ten in (1, 10, 100, 1000) for many in (5, 10))
    step = next(step for step in steps if step * pitch >= 3.2 * len(str(last)) + 3 and last <= 30 * step)
    for number in marks:
        if number % step == 0 or (number == 1 and pitch * (1 if first == 0 else step - 1) >= 6):
            yield number
