"""The table of a wrap gauge: every field by the kit's own numbers, and what is picked out as the kit's own."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from fractions import Fraction
from itertools import pairwise
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Point, Region
from layout.messages.catalogue import Catalogue, Role
from layout.messages.roles import Gauge
from layout.values.numerals import say_number
from layout.values.units import Length, say_length
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.roles.proof_printed import Card
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Finding, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.pairs import window_of
from templates_gen.verify.said import Word, squeezed

_LADDER = {True: (12.7, 25.4, 50.8), False: (10.0, 20.0, 40.0, 50.0, 100.0)}
"""The usual marking units in mm by whether they are in inches, said once more on purpose."""
_COLUMNS = 3
_ONE_ROW = 0.5  # words whose baselines are closer than this, in mm, stand in one row
_SMALL = 7.5 * 25.4 / 72  # the size of the letters in the table
_MIDDLE = 0.6  # what stands over a column has its middle so close to that of the column, in mm
_NONE = "\N{EN DASH}"


class Own(NamedTuple):
    """What the kit has itself: so many pairs counted in the window, and its sett in ends per mm."""

    pairs: int
    per_mm: Fraction


class Asked(NamedTuple):
    """What the table must hold: a row for each of `counts`, in the system and next to `unit`; what is `counted` and how
    many of it (and how many ends) are `laid` of a sett measured in a unit; the kit's `own` count and sett, if any.
    """

    unit: Length
    counts: Sequence[int]
    counted: Role
    laid: Callable[[Fraction, Fraction], tuple[Fraction, Fraction]]
    own: Own | None
    words: Catalogue

    def own_row(self) -> int | None:
        """The row of the kit's own count; none where that count does not come to the kit's sett."""
        if self.own is None or self.own.pairs not in self.counts:
            return None
        _, ends = self.laid(self.own.pairs / window_of(self.unit)[0], self.unit.mm)
        return list(self.counts).index(self.own.pairs) if ends / self.unit.mm == self.own.per_mm else None


class _Field(NamedTuple):
    x: float  # of its middle
    y: float
    words: str


def prove_fields(asked: Asked, seen: FoundPart) -> Findings:
    """Heads, rows, and what is picked out."""
    rule = rule_of(seen)
    if rule is None:
        return Findings(0.0, (finding(Card.ROWS, found=0, wanted=len(asked.counts)),))
    y, (_, fold) = rule[1], back_of(seen)
    fields = [_field(word) for word in words_of_table(seen)]
    rows = _rows([each for each in fields if each.y < y])
    wanted = list(_table(asked))
    wrong = [
        finding(Card.TABLE, found=" ".join(each.words for each in row), wanted=" ".join(said))
        for row, said in zip(rows, wanted, strict=False)
        if [each.words for each in row] != said
    ]
    if len(rows) != len(wanted):
        wrong.append(finding(Card.ROWS, found=len(rows), wanted=len(wanted)))
    if not wrong:
        heads = [each for each in fields if each.y > y]
        wrong = [*_heads(asked, heads, [each.x for each in rows[0]]), *_picked(asked, seen, rows, fold)]
    return Findings(0.0, tuple(wrong))


def outlines_of(seen: FoundPart) -> list[Box]:
    """Every closed rectangle that is cut: the card alone, if it is right."""
    closed = [path.points() for path in seen.paths(Pen.CUT) if path.closed and len(path.steps) == 3]
    return [_box(points) for points in closed if all(any(abs(a - b) < LIMIT for a, b in zip(one, other, strict=True))
            for one, other in pairwise(points))]  # fmt: skip


def back_of(seen: FoundPart) -> tuple[float, float]:
    """From where to where the back of the card reaches: its lower edge, and the fold half way up."""
    _, low, _, high = next(iter(outlines_of(seen)), (0.0, 0.0, 0.0, 0.0))
    return low, (low + high) / 2


def rule_of(seen: FoundPart) -> tuple[float, float] | None:
    """Where the rule of the table begins, and how high it lies: the longest thin line on the back."""
    low, fold = back_of(seen)
    level = [path for path in seen.lines() if path.pen is Pen.HELP and low < path.start.y < fold]
    longest = max(level, key=lambda path: abs(path.start.x - path.steps[0].end.x), default=None)
    return (min(point.x for point in longest.points()), longest.start.y) if longest else None


def words_of_table(seen: FoundPart) -> list[Word]:
    """The words that stand in the table: on the back, beside the grey column of the kit's own unit."""
    rule, (low, fold) = rule_of(seen), back_of(seen)
    top = max((box[3] for box in _boxes(seen, Pen.TINT) if box[3] < fold), default=fold)
    return [word for word in seen.words() if rule and low < word[0].y < top and word[0].x > rule[0] - 1]


def _field(word: Word) -> _Field:
    (x, y), said = word
    return _Field(x + metrics().width(said, _SMALL) / 2, y, said)


def _rows(fields: Sequence[_Field]) -> list[list[_Field]]:
    """Fields from top to bottom, row by row, each from left to right; only as many as stand in one table."""
    rows: list[list[_Field]] = []
    for each in sorted(fields, key=lambda field: -field.y):
        if not rows or rows[-1][0].y - each.y > _ONE_ROW:
            rows.append([])
        rows[-1].append(each)
    return [sorted(row) for row in rows]


def _table(asked: Asked) -> Iterator[list[str]]:
    """Every row of the table."""
    inch_or_cm = Fraction(127, 5) if asked.unit.imperial else Fraction(10)
    window, _ = window_of(asked.unit)
    for count in asked.counts:
        row = [str(count)]
        for each in _units(asked.unit):
            laid, ends = asked.laid(count / window, each.mm)
            row += [say_number(ends / each.mm * inch_or_cm), say_number(laid)] if laid else [_NONE] * 2
        yield [asked.words.figure(each) for each in row]


def _heads(asked: Asked, found: Sequence[_Field], columns: Sequence[float]) -> Iterator[Finding]:
    """Over every column what it holds, over each two what unit they are for, over the first what is counted."""
    say, inches = asked.words.say, asked.unit.imperial
    over = say_length(Length(window_of(asked.unit)[0], "in" if inches else "cm"), asked.words)
    wanted = [(columns[0], say(Gauge.PAIRS, window=over))]
    for k, unit in enumerate(_units(asked.unit)):
        one, other = columns[1 + 2 * k], columns[2 + 2 * k]
        wanted.append(((one + other) / 2, say(Gauge.TO_UNIT, unit=say_length(unit, asked.words))))
        wanted += [(one, say(Gauge.EPI if inches else Gauge.PER_CM)), (other, say(asked.counted))]
    rest = list(found)
    for x, message in wanted:
        left, lines = squeezed(message), []
        for each in sorted(rest, key=lambda field: -field.y):
            line = squeezed(each.words)
            if abs(each.x - x) < _MIDDLE + _leeway(each.words) and left.startswith(line):
                lines.append(each)
                left = left[len(line) :]
        if left:
            yield finding(Card.HEAD, wanted=message)
        rest = [each for each in rest if each not in lines]
    yield from (finding(Card.HEAD, wanted=each.words) for each in rest)


def _leeway(words: str) -> float:
    """Semibold letters are wider, by at most a tenth; a pair of columns has its middle a little beside their mean."""
    return len(words) * _SMALL * 0.03 + 0.6


def _picked(asked: Asked, seen: FoundPart, rows: Sequence[Sequence[_Field]], fold: float) -> Iterator[Finding]:
    """The kit's own column on grey, and where its count gives its sett the row too, with a box where they cross."""
    own = [each.mm for each in _units(asked.unit)].index(asked.unit.mm)
    column = [field for row in rows for field in row[1 + 2 * own : 3 + 2 * own]]
    place = asked.own_row()
    wanted = [column] + ([] if place is None else [list(rows[place])])
    inside = [_inside(box, [field for row in rows for field in row]) for box in _boxes(seen, Pen.TINT) if box[3] < fold]
    if sorted(map(_sorted, wanted)) != sorted(map(_sorted, inside)):
        yield finding(Card.PICKED)
    boxed = [
        _inside(_box(path.points()), [field for row in rows for field in row])
        for path in seen.paths(Pen.OUTLINE)
        if path.closed and len(path.points()) == 4 and max(point.y for point in path.points()) < fold
    ]
    crossing = [] if place is None else [list(rows[place][1 + 2 * own : 3 + 2 * own])]
    if [_sorted(each) for each in boxed if each] != [_sorted(each) for each in crossing]:
        yield finding(Card.BOXED)


def _sorted(fields: Sequence[_Field]) -> list[_Field]:
    return sorted(fields)


def _boxes(seen: FoundPart, pen: Pen) -> Iterator[Box]:
    for shape in seen.shapes():
        if isinstance(shape, Region) and shape.pen is pen:
            yield _box([point for path in shape.contours for point in path.points()])


def _box(points: Sequence[Point]) -> Box:
    xs, ys = zip(*points, strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def _inside(box: Box, fields: Sequence[_Field]) -> list[_Field]:
    left, low, right, high = box
    return [each for each in fields if left < each.x < right and low < each.y < high]


def _units(unit: Length) -> list[Length]:
    """The kit's unit and the two usual ones nearest to it: one on each side where there is one."""
    usual = [Length(Fraction(str(mm)), "in" if unit.imperial else "cm") for mm in _LADDER[unit.imperial]]
    below = [each for each in usual if each.mm < unit.mm]
    above = [each for each in usual if each.mm > unit.mm]
    others = [*below[-1:], *above[:1], *above[1:2], *below[-2:-1]][: _COLUMNS - 1]
    return sorted([unit, *others], key=lambda each: each.mm)
