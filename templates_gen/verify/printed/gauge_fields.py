"""The table of a wrap gauge: every field by the kit's own numbers, and what is picked out as the kit's own."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from fractions import Fraction
from itertools import pairwise, starmap
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
from templates_gen.verify.boxes import box_around, box_of
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
_ASIDE, _RIGHT, _NARROW_RIGHT = 20.0, 161.2, 86.0  # a table beside the yarns begins further right; where tables end
_HEADS_FREE = 0.3


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
        _, ends = self.laid(self.own.pairs / window_of(self.unit).mm, self.unit.mm)
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
    units = _units(asked.unit, _shown(asked, rows, rule[0]))
    wanted = list(_table(asked, units))
    wrong = [
        finding(Card.TABLE, found=" ".join(each.words for each in row), wanted=" ".join(said))
        for row, said in zip(rows, wanted, strict=False)
        if [each.words for each in row] != said
    ]
    if len(rows) != len(wanted):
        wrong.append(finding(Card.ROWS, found=len(rows), wanted=len(wanted)))
    if not wrong:
        heads = [each for each in fields if each.y > y]
        wrong = [*_heads(asked, units, heads, [each.x for each in rows[0]]), *_picked(asked, units, seen, rows, fold)]
    return Findings(0.0, tuple(wrong))


def outlines_of(seen: FoundPart) -> list[Box]:
    """Every closed rectangle that is cut: the card alone, if it is right."""
    closed = [path.points() for path in seen.paths(Pen.CUT) if path.closed and len(path.steps) == 3]
    return [box_around(points) for points in closed if all(starmap(_upright, pairwise(points)))]


def _upright(one: Point, other: Point) -> bool:
    """Whether two points stand side by side, or one over the other."""
    return abs(one.x - other.x) < LIMIT or abs(one.y - other.y) < LIMIT


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


def _shown(asked: Asked, rows: Sequence[Sequence[_Field]], left: float) -> int:
    """How many units the table has: fewer than usual only where a word over it is wider than an even share of it."""
    if not rows or not rows[0] or not any(each > _share(left) for each in _words_over(asked)):
        return _COLUMNS
    return min(_COLUMNS, max(1, (len(rows[0]) - 1) // 2))


def _share(left: float) -> float:
    """What an even share of the table, which begins at `left`, leaves for a word over a column."""
    return ((_RIGHT if left > _ASIDE else _NARROW_RIGHT) - left) / (_COLUMNS + 1) - 1.0


def _words_over(asked: Asked) -> Iterator[float]:
    """How wide the words over the columns are."""
    say = asked.words.say
    heads = say(Gauge.EPI if asked.unit.imperial else Gauge.PER_CM), say(asked.counted)
    yield from (metrics().width(head, _SMALL) + 2 * _HEADS_FREE for head in heads)
    yield from (metrics().width(word, _SMALL, Pen.STRONG) for word in say(Gauge.TO_UNIT, unit="").split())
    yield from (metrics().width(word, _SMALL) for word in say(Gauge.PAIRS, window="").split())


def _table(asked: Asked, units: Sequence[Length]) -> Iterator[list[str]]:
    """Every row of the table."""
    inch_or_cm = Fraction(127, 5) if asked.unit.imperial else Fraction(10)
    window = window_of(asked.unit).mm
    for count in asked.counts:
        row = [str(count)]
        for each in units:
            laid, ends = asked.laid(count / window, each.mm)
            row += [say_number(ends / each.mm * inch_or_cm), say_number(laid)] if laid else [_NONE] * 2
        yield [asked.words.figure(each) for each in row]


def _heads(
    asked: Asked, units: Sequence[Length], found: Sequence[_Field], columns: Sequence[float]
) -> Iterator[Finding]:
    """Over every column what it holds, over each two what unit they are for, over the first what is counted."""
    say, inches = asked.words.say, asked.unit.imperial
    over = say_length(window_of(asked.unit), asked.words)
    sett, counted = say(Gauge.EPI if inches else Gauge.PER_CM), say(asked.counted)
    rest = list(found)
    lows: list[tuple[float, float]] = []
    for one, other, unit in zip(columns[1::2], columns[2::2], units, strict=True):
        heads = [_taken(message, _over(x, rest), rest) for x, message in ((one, sett), (other, counted))]
        yield from (
            finding(Card.HEAD, wanted=said) for said, y in zip((sett, counted), heads, strict=True) if y is None
        )
        lows += [(y, below) for y, below in [heads] if y is not None and below is not None]
        message = say(Gauge.TO_UNIT, unit=say_length(unit, asked.words))
        if _taken(message, [each for each in rest if one < each.x < other], rest) is None:
            yield finding(Card.HEAD, wanted=message)
    if any(y < below - _ONE_ROW for y, below in lows):  # in two rows the sett stands above
        yield finding(Card.HEAD, wanted=sett)
    message = say(Gauge.PAIRS, window=over)
    if _taken(message, _near(columns[0], rest), rest) is None:
        yield finding(Card.HEAD, wanted=message)
    yield from (finding(Card.HEAD, wanted=each.words) for each in rest)


def _near(x: float, found: Sequence[_Field]) -> list[_Field]:
    """What has its middle at `x`."""
    return [each for each in found if abs(each.x - x) < _MIDDLE + _leeway(each.words)]


def _over(x: float, found: Sequence[_Field]) -> list[_Field]:
    """What has its middle at `x`, and then what reaches over it: wide words lie beside the middle of their column."""
    wide = [each for each in found if abs(each.x - x) < metrics().width(each.words, _SMALL) / 2]
    near = _near(x, found)
    return near + [each for each in wide if each not in near]


def _taken(message: str, found: Sequence[_Field], rest: list[_Field]) -> float | None:
    """Takes the lines of a message out of `rest`, and says how high the last lies; None where it is not there."""
    left, lines = squeezed(message), []
    for each in sorted(found, key=lambda field: -field.y):
        line = squeezed(each.words)
        if left.startswith(line):
            lines.append(each)
            left = left[len(line) :]
    if left:
        return None
    for each in lines:
        rest.remove(each)
    return lines[-1].y


def _leeway(words: str) -> float:
    """Semibold letters are wider, by at most a tenth; a pair of columns has its middle a little beside their mean."""
    return len(words) * _SMALL * 0.03 + 0.6


def _picked(
    asked: Asked, units: Sequence[Length], seen: FoundPart, rows: Sequence[Sequence[_Field]], fold: float
) -> Iterator[Finding]:
    """The kit's own column on grey, and where its count gives its sett the row too, with a box where they cross."""
    own = [each.mm for each in units].index(asked.unit.mm)
    column = [field for row in rows for field in row[1 + 2 * own : 3 + 2 * own]]
    place = asked.own_row()
    wanted = [column] + ([] if place is None else [list(rows[place])])
    inside = [_inside(box, [field for row in rows for field in row]) for box in _boxes(seen, Pen.TINT) if box[3] < fold]
    if sorted(map(_sorted, wanted)) != sorted(map(_sorted, inside)):
        yield finding(Card.PICKED)
    boxed = [
        _inside(box_of(path), [field for row in rows for field in row])
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
            yield box_around([point for path in shape.contours for point in path.points()])


def _inside(box: Box, fields: Sequence[_Field]) -> list[_Field]:
    left, low, right, high = box
    return [each for each in fields if left < each.x < right and low < each.y < high]


def _units(unit: Length, count: int) -> list[Length]:
    """The kit's unit and, of `count` in all, the usual ones nearest to it: one on each side where there is one."""
    usual = [Length(Fraction(str(mm)), "in" if unit.imperial else "cm") for mm in _LADDER[unit.imperial]]
    below = [each for each in usual if each.mm < unit.mm]
    above = [each for each in usual if each.mm > unit.mm]
    others = [*below[-1:], *above[:1], *above[1:2], *below[-2:-1]][: count - 1]
    return sorted([unit, *others], key=lambda each: each.mm)
