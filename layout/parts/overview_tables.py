"""The tables of the overview of a range: what each kit is and takes, what differs, where each value comes from."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from typing import NamedTuple

from layout.box.overview import Row as KitRow
from layout.box.overview import Whole
from layout.drawing.metrics import FontMetrics
from layout.kit.sources import Source
from layout.messages.catalogue import Catalogue
from layout.messages.roles.buying import Prices
from layout.messages.roles.ranges import OverviewSheet
from layout.parts.price_sheet import money
from layout.parts.tables.columns import Column, Row
from layout.values.numerals import say_fixed, say_number
from layout.values.quantity import Quantity
from layout.values.written import shown_value
from layout.yarns.yarn_counts import OUNCE_G, YARD_M

_WHOLE = 100  # from so many on there are no decimals


class Table(NamedTuple):
    """Columns and rows under a heading ("": none)."""

    heading: str
    columns: tuple[Column, ...]
    rows: tuple[Row, ...]


class Shown(NamedTuple):
    """What the overview shows: a row for each kit, all boxes together, where the values come from; the currency.

    Amounts and sett are in inches, yards and ounces where it is `imperial`.
    """

    rows: tuple[KitRow, ...]
    whole: Whole
    sources: tuple[Source, ...]
    currency: str = ""
    imperial: bool = False

    @property
    def priced(self) -> bool:
        """Whether costs are shown."""
        return bool(self.currency) or self.whole.price is not None

    @property
    def cut(self) -> bool:
        """Whether anything is cut from boards."""
        return self.whole.boards > 0 or any(row.singly.boards for row in self.rows)


def tables_of(shown: Shown, words: Catalogue, metrics: FontMetrics) -> tuple[Table, ...]:
    """The kits; what differs between them, where anything does; where each value comes from."""
    differing = [each for each in shown.sources if each.differs]
    found = [_kits(shown, words)]
    if differing:
        found.append(_differing(shown, differing, words, metrics))
    return (*found, _origins(shown, words, metrics))


def _kits(shown: Shown, words: Catalogue) -> Table:
    say, whole = words.say, shown.whole
    roles = [
        OverviewSheet.BOXES,
        OverviewSheet.PER_INCH if shown.imperial else OverviewSheet.PER_CM,
        OverviewSheet.ENDS,
        OverviewSheet.WINDS,
        OverviewSheet.WARP_YD if shown.imperial else OverviewSheet.WARP_M,
        OverviewSheet.WEFT_OZ if shown.imperial else OverviewSheet.WEFT_G,
        OverviewSheet.SHEETS,
        *([OverviewSheet.BOARDS] if shown.cut else []),
        *([Prices.COST] if shown.priced else []),
        *([Prices.PRICE] if any(row.quote.price for row in shown.rows) else []),
    ]
    columns = (Column(say(OverviewSheet.KIT), broken=True), *(Column(say(role), right=True) for role in roles))
    rows = [Row(tuple(_cells(row, shown, words))[: len(columns)]) for row in shown.rows]
    together = (
        say(OverviewSheet.ALL),
        say_number(whole.boxes),
        *("", "", ""),
        *_amounts(whole.warp_m, whole.weft_g, shown, words),
        say_number(whole.sheets),
        *([say_number(whole.boards)] if shown.cut else []),
        *([money(whole.cost, words)] if shown.priced else []),
        money(whole.price, words) if whole.price is not None else "",
    )
    return Table("", columns, (*rows, Row(together[: len(columns)], total=True)))


def _cells(row: KitRow, shown: Shown, words: Catalogue) -> Iterator[str]:
    yield from (row.name, say_number(row.boxes))
    yield words.figure(say_number(row.sett * (Fraction("25.4") if shown.imperial else 10), 2))
    yield from (say_number(row.ends), "" if row.winds is None else say_number(row.winds))
    yield from _amounts(row.warp_m, row.weft_g, shown, words)
    yield say_number(row.singly.each + row.singly.once)
    if shown.cut:
        yield say_number(row.singly.boards)
    if shown.priced:
        yield money(row.quote.cost.whole, words)
    yield money(row.quote.price.each, words) if row.quote.price else ""


def _amounts(warp: Quantity | None, weft: Quantity | None, shown: Shown, words: Catalogue) -> Iterator[str]:
    yield _ranged(warp, YARD_M if shown.imperial else Fraction(1), words)
    yield _ranged(weft, OUNCE_G if shown.imperial else Fraction(1), words)


def _ranged(figure: Quantity | None, unit: Fraction, words: Catalogue) -> str:
    """The likely amount, and between what it may lie where that shows."""
    if figure is None:
        return ""
    likely, low, high = (_figure(value / float(unit), words) for value in (figure.value, figure.low, figure.high))
    return likely if low == high else words.say(OverviewSheet.BETWEEN, likely=likely, low=low, high=high)


def _figure(value: float, words: Catalogue) -> str:
    return words.figure(say_fixed(value, 0 if value >= _WHOLE else 1))


def _differing(shown: Shown, differing: Sequence[Source], words: Catalogue, metrics: FontMetrics) -> Table:
    say = words.say
    columns = [Column(say(OverviewSheet.KEY), broken=True)]
    columns += [Column(row.name, broken=True) for row in shown.rows]
    rows = [Row((each.key, *(_value(value, words, metrics) for value in each.values))) for each in differing]
    return Table(say(OverviewSheet.DIFFERS), tuple(columns), tuple(rows))


def _value(value: object, words: Catalogue, metrics: FontMetrics) -> str:
    return words.say(OverviewSheet.LEFT_OUT) if value is None else _written(value, metrics)


def _written(value: object, metrics: FontMetrics) -> str:
    """As the file has it, where the print font carries that."""
    text = shown_value(value)
    for letter in metrics.missing(text):
        text = text.replace(letter, "?")
    return text


def _origins(shown: Shown, words: Catalogue, metrics: FontMetrics) -> Table:
    """Every key: what the range says, which kits have a value of their own, which leave it out."""
    say, names = words.say, [row.name for row in shown.rows]

    def kits(which: Sequence[bool]) -> str:
        if all(which):
            return say(OverviewSheet.EVERY)
        return words.listed([name for name, true in zip(names, which, strict=True) if true]) if any(which) else ""

    rows = [
        (
            each.key,
            "" if each.shared is None else _written(each.shared, metrics),
            kits(each.own),
            kits([each.left_out(place) for place in range(len(names))]),
        )
        for each in shown.sources
    ]
    roles = (OverviewSheet.KEY, OverviewSheet.RANGE, OverviewSheet.OWN, OverviewSheet.WITHOUT)
    used = [column for column in range(4) if not column or any(row[column] for row in rows)]
    columns = tuple(Column(say(roles[column]), broken=True) for column in used)
    return Table(say(OverviewSheet.SOURCES), columns, tuple(Row(tuple(row[k] for k in used)) for row in rows))
