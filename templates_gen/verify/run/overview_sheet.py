"""The sheets of the overview proven: every figure again from kits, copies, packs and prices; every value from what
the file carries of its range.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Any, NamedTuple

from layout.drawing.shapes import Text
from layout.drawing.sheet import Piece, Sheet
from layout.messages.catalogue import Catalogue
from layout.messages.roles import Sheet as Sheets
from layout.messages.roles.buying import Prices
from layout.messages.roles.ranges import OverviewSheet
from templates_gen.messages.roles.proof import Proof
from templates_gen.verify.finding import NOTHING, Finding, Findings, said
from templates_gen.verify.found_parts import FoundPart, found_on
from templates_gen.verify.printed.furniture import check_furniture
from templates_gen.verify.run.overview import Held
from templates_gen.verify.run.overview_numbers import amount_of, likely_of, overview_figures, sum_of
from templates_gen.verify.run.overview_values import Said, differing, origins
from templates_gen.verify.run.prices import Costs, costs_of, money_of, price_of
from templates_gen.verify.run.ruled import Wanted, is_small, prove_tables
from templates_gen.verify.said import account

_TILE = "B"


class Seen(NamedTuple):
    """What an overview is of: the `name` of the range, its kits, what the run takes, and where values come from.

    `said` are, for each kit, its plain values and the dotted keys of those that are its own.
    """

    name: str
    held: tuple[Held, ...]
    sheets: int
    boards: int
    shared: Mapping[str, Any]
    said: tuple[Said, ...]

    @property
    def currency(self) -> str:
        """The maker's word for money."""
        return str(self.held[0].boxed.shop.get("buy", {}).get("currency", ""))


def prove_overview_sheet(sheets: Sequence[Sheet], laid: Sequence[Sequence[Piece]], seen: Seen) -> Findings:
    """All sheets that were read."""
    total, pieces = NOTHING, []
    for number, (sheet, on_it) in enumerate(zip(sheets, laid, strict=True), 1):
        where = said(Proof.SHEET, number=number)
        found, findings = found_on(sheet, on_it, where)
        pieces += found
        total += findings
        total += check_furniture(sheet, [piece.part.name for piece in on_it]).at(where)
    words = seen.held[0].boxed.plan.words
    priced = [_priced(held, words) for held in seen.held]
    tables = _tables(seen, priced)
    return total + Findings(
        0.0, (*prove_tables(pieces, tables), *_besides(pieces, seen, priced, differs=len(tables) > 2))
    )


class _Sold(NamedTuple):
    """What one box of a kit costs, and for how much it is sold."""

    costs: Costs
    price: Decimal | None


def _priced(held: Held, words: Catalogue) -> _Sold:
    """In the words of the sheet, whatever those of the kit are."""
    boxed = held.boxed._replace(plan=replace(held.boxed.plan, words=words))
    costs, sell = costs_of(boxed, boxed.boxes, held.together(boxed.boxes)), boxed.shop.get("sell", {})
    return _Sold(costs, price_of(costs.whole, sell) if "margin" in sell else None)


def _tables(seen: Seen, priced: Sequence[_Sold]) -> list[Wanted]:
    words = seen.held[0].boxed.plan.words
    names = [held.boxed.plan.kit.name for held in seen.held]
    found = [_kits(seen, priced)]
    if rows := differing(seen.shared, seen.said, words):
        found.append(Wanted((words.say(OverviewSheet.KEY), *names), tuple(rows)))
    return [*found, Wanted(*origins(seen.shared, seen.said, names, words))]


def _kits(seen: Seen, priced: Sequence[_Sold]) -> Wanted:
    """The first table; a column without any figure is left out where money or boards are not known at all."""
    words, imperial = seen.held[0].boxed.plan.words, seen.held[0].boxed.plan.warp.sett.unit.imperial
    cut = bool(seen.boards or any(held.boards for held in seen.held))
    sold = [each.price for each in priced if each.price is not None]
    every = len(sold) == len(priced)
    money = bool(seen.currency) or every
    titles = [
        OverviewSheet.KIT,
        OverviewSheet.BOXES,
        OverviewSheet.PER_INCH if imperial else OverviewSheet.PER_CM,
        OverviewSheet.ENDS,
        OverviewSheet.WINDS,
        OverviewSheet.WARP_YD if imperial else OverviewSheet.WARP_M,
        OverviewSheet.WEFT_OZ if imperial else OverviewSheet.WEFT_G,
        OverviewSheet.SHEETS,
        *([OverviewSheet.BOARDS] if cut else []),
        *([Prices.COST] if money else []),
        *([Prices.PRICE] if sold else []),
    ]
    rows = []
    for held, (costs, price) in zip(seen.held, priced, strict=True):
        figures = overview_figures(held.boxed.plan, words, imperial=imperial)
        row = [held.boxed.plan.kit.name, str(held.boxed.boxes), *figures, str(held.each + held.once)]
        row += [str(held.boards)] if cut else []
        row += [words.figure(money_of(costs.whole))] if money else []
        rows.append((*row, "" if price is None else words.figure(money_of(price)))[: len(titles)])
    copies = [held.boxed.boxes for held in seen.held]
    sums = [sum_of(each, copies) for each in zip(*(likely_of(held.boxed.plan) for held in seen.held), strict=True)]
    amounts = [
        amount_of(each, length, words, imperial=imperial) for each, length in zip(sums, (True, False), strict=True)
    ]
    last = [words.say(OverviewSheet.ALL), str(sum(copies)), "", "", "", *amounts, str(seen.sheets)]
    last += [str(seen.boards)] if cut else []
    if money:
        whole = sum((each.costs.whole * number for each, number in zip(priced, copies, strict=True)), Decimal(0))
        last.append(words.figure(money_of(whole)))
    paid = sum(
        (price * number for (_, price), number in zip(priced, copies, strict=True) if price is not None), Decimal(0)
    )
    last.append(words.figure(money_of(paid)) if every else "")
    return Wanted(tuple(map(words.say, titles)), (*rows, tuple(last[: len(titles)])))


def _besides(pieces: Sequence[FoundPart], seen: Seen, priced: Sequence[_Sold], *, differs: bool) -> Iterator[Finding]:
    """Every word outside the tables, accounted for."""
    words, boxes = seen.held[0].boxed.plan.words, sum(held.boxed.boxes for held in seen.held)
    say = words.say
    wanted = [say(OverviewSheet.OF_ONE), say(OverviewSheet.OF_ALL), say(OverviewSheet.SOURCES)]
    wanted += [say(OverviewSheet.DIFFERS)] if differs else []
    if seen.currency or all(each.price is not None for each in priced):
        wanted.append(say(OverviewSheet.COSTS))
        missing = dict.fromkeys(name for each in priced for name in each.costs.missing)
        wanted += [say(Prices.MISSING, things=words.listed([*missing]))] if missing else []
    purpose = say(OverviewSheet.PURPOSE_IN, currency=seen.currency) if seen.currency else say(OverviewSheet.PURPOSE)
    facts = words.listed([say(Prices.KITS, kits=len(seen.held)), say(Prices.BOXES, boxes=boxes)])
    for number in range(1, len(pieces) + 1):
        wanted += [say(OverviewSheet.NAME), purpose, seen.name, facts, _TILE]
        wanted.append(say(Sheets.NUMBER, number=number, total=len(pieces)))
    found, drop = [], 0.0
    for piece in pieces:
        texts = (shape for shape in piece.sheet.shapes if isinstance(shape, Text))
        found += [(each.at._replace(y=each.at.y - drop), each.words) for each in texts if not _in_table(each, piece)]
        drop += piece.sheet.height
    yield from account(found, wanted).wrong


def _in_table(text: Text, piece: FoundPart) -> bool:
    return is_small(text) and piece.holds(piece.lie.back(text.at))
