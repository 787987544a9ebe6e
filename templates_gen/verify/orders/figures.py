"""What orders take, added up a second time: thing by thing from the figures of their results, in decimals."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from decimal import Decimal
from typing import Any, NamedTuple

from templates_gen.ordering.result import Amount, Result
from templates_gen.verify.run.prices import packed
from templates_gen.verify.run.to_buy import Pack, counted_in, pack_of
from templates_gen.verify.run.to_buy_numbers import Asked, Figures

MADE = frozenset({"made", "unchanged"})
_SAME = 1e-9
_MISPRINTS, _LEAST_MISPRINTS = Decimal("0.02"), 2

Paid = tuple[Decimal, Decimal | None]
"""How much of a thing all orders are bought by, and what its packs cost; None where that is not known."""


def asked_in(amounts: Iterable[Amount]) -> list[Asked]:
    """The things of one box; a unit that comes again is another thing of the same name."""
    found: list[Asked] = []
    for each in amounts:
        name = each.kind, each.name, each.colour
        last = found[-1] if found else None
        if last is None or (last.kind, last.name, last.colour) != name or each.unit in last.units:
            likely = each.likely + each.spare
            found.append(Asked(*name, abs(each.figure - likely) <= _SAME * abs(likely), each.ball_g, {}))
        figures = Figures(each.likely, each.low, each.high, each.spare)
        found[-1].units[each.unit] = figures
    return found


def sheets_in(result: Result) -> int:
    """The sheets that one box of an order prints."""
    return sum(file.sheets for file in result.files if file.file.rpartition(".")[2] == "pdf")


class Bill(NamedTuple):
    """What is bought of a thing: by what it counts, and the packs it is sold in."""

    unit: str
    pack: Pack | None
    counted: Decimal


def bill_of(asked: Asked, buy: Mapping[str, Any]) -> Bill:
    """Of one box."""
    pack = pack_of(asked, buy)
    unit = counted_in(asked, pack)
    return Bill(unit, pack, Decimal(asked.counted(unit)))


Key = tuple[str, str, str, str, Pack | None]


class Purse:
    """What all orders pay: by thing, for paper, and in hours of work."""

    def __init__(self, results: Iterable[Result], shop: Mapping[str, Any]) -> None:
        self._buy = shop.get("buy", {})
        counted: dict[Key, Decimal] = {}
        self.sheets = self.boxes = 0
        for result in results:
            if result.state in MADE:
                self.sheets += result.copies * sheets_in(result)
                self.boxes += result.copies
                for key, each in self._bills(result):
                    counted[key] = counted.get(key, Decimal(0)) + result.copies * each
        self._paid: dict[Key, Paid] = {key: (whole, packed(whole, key[4])) for key, whole in counted.items()}
        self._paper = self._paid_for_paper()

    def _bills(self, result: Result) -> Iterator[tuple[Key, Decimal]]:
        for asked in asked_in(result.amounts):
            bill = bill_of(asked, self._buy)
            yield (asked.kind, asked.name, asked.colour, bill.unit, bill.pack), bill.counted

    def _paid_for_paper(self) -> Decimal | None:
        spare = max(-(-self.sheets * _MISPRINTS // 1), Decimal(_LEAST_MISPRINTS))
        said = self._buy.get("paper") or {}
        if "price" not in said:
            return None
        return packed(self.sheets + spare, Pack("", Decimal(said["sheets"]), "sheet", Decimal(repr(said["price"]))))

    def cost(self, result: Result) -> tuple[Decimal, bool]:
        """What all boxes of an order cost as far as prices are known, and whether all are."""
        shares = [self._share(key, result.copies * each) for key, each in self._bills(result) if each]
        if sheets := result.copies * sheets_in(result):
            shares.append(None if self._paper is None else self._paper * sheets / self.sheets)
        shares.append(self._work(result.copies))
        return sum((share for share in shares if share is not None), Decimal(0)), None not in shares

    def _share(self, key: Key, counted: Decimal) -> Decimal | None:
        whole, paid = self._paid[key]
        return None if paid is None else counted * paid / whole

    def _work(self, copies: int) -> Decimal | None:
        if not {"hour", "minutes"} <= self._buy.keys():
            return None
        return copies * Decimal(repr(self._buy["hour"])) * Decimal(repr(self._buy["minutes"])) / 60
