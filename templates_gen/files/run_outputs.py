"""The files of a run that are of no single kit: they lie beside the folders of the kits."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from functools import cached_property, partial
from typing import NamedTuple

from layout.box.buying import Material
from layout.box.needs import needs
from layout.box.overview import Row, Singly, Whole, overview_row, whole_of
from layout.box.quotes import Quote, Rates, Takes, quote
from layout.box.scopes import Boxed, Scope, to_buy
from layout.box.weights import Boards
from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.drawing.printer import Printer
from layout.messages.catalogue import Catalogue
from layout.parts.class_sheet import Lesson
from layout.plan import Plan
from layout.values.limits import exactly
from templates_gen.document import Document
from templates_gen.files.board_records import BOARD_FORMS
from templates_gen.files.class_file import CLASS_FILE, class_findings, class_output
from templates_gen.files.for_printer import for_printer, judged_plain
from templates_gen.files.output import Output
from templates_gen.files.overview_file import OVERVIEW_FILE, Overview, overview_findings, overview_output
from templates_gen.files.overview_table import overview_table
from templates_gen.files.price_file import PRICE_FILE, PriceRun, price_findings, price_output
from templates_gen.files.print_files import PrintFiles, print_files
from templates_gen.files.print_proof import print_findings
from templates_gen.files.run_about import SoldKit
from templates_gen.files.run_boards import RunBoards, cut_together
from templates_gen.files.run_plans import of_each
from templates_gen.files.shop_card_file import CARD_FILE, card_findings, card_output
from templates_gen.files.singly import cut_in_box, singly_of
from templates_gen.files.tables import TableRecord, to_buy_table
from templates_gen.inputs.range_file import Range, RangeKit
from templates_gen.verify.finding import Findings
from templates_gen.verify.run.overview import Held, prove_overview
from templates_gen.verify.run.prices import Boxed as Priced
from templates_gen.verify.run.prices import Together
from templates_gen.verify.run.to_buy import Bought, Boxes, prove_to_buy
from templates_gen.verify.whole_boards import times_in

Rows = Sequence[Sequence[str]]
"""The cells of a table as they were read."""


class Planned(NamedTuple):
    """A kit of a run and its plan."""

    kit: RangeKit
    plan: Plan

    @property
    def folder(self) -> str:
        """Where its files lie."""
        return self.kit.folder


class RunTable(NamedTuple):
    """A table of a run, and what proves the rows that were read back from it."""

    record: TableRecord
    prove: Callable[[Rows], Findings]


class RunFile(NamedTuple):
    """A file of sheets that is of a whole run: what it must hold, and what proves a file that was read back."""

    name: str
    draw: Callable[[], Output]
    prove: Callable[[Output, Document], Findings]


class RunOutputs:
    """What is made of all kits of a run together; `stock` is what their cut parts are cut from.

    Tables and sheets that are of all kits are `said` in the language of the first.
    """

    def __init__(self, found: Range, plans: Sequence[Plan], metrics: FontMetrics, stock: Stock | None) -> None:
        self.range, self.metrics, self.stock = found, metrics, stock
        self.kits = tuple(Planned(kit, plan) for kit, plan in zip(found.kits, plans, strict=True))
        words = plans[0].words
        self.said = tuple(Planned(kit, replace(plan, words=words)) for kit, plan in self.kits)
        self._taken: dict[tuple[int, int], int] = {}
        self._others: dict[Printer | None, RunOutputs] = {plans[0].printer: self}

    def for_printer(self, printer: Printer | None) -> RunOutputs:
        """The same run, printed on that printer."""
        if printer not in self._others:
            plans = [replace(each.plan, printer=printer) for each in self.kits]
            self._others[printer] = RunOutputs(self.range, plans, self.metrics, self.stock)
        return self._others[printer]

    @cached_property
    def singly(self) -> tuple[Singly, ...]:
        """What one set of each kit takes, made by itself; the refusals of all kits that paper or stock do not allow."""
        return of_each(self.range, lambda place: singly_of(self.kits[place].plan, self.metrics, self.stock))

    def takes(self, place: int, boxes: int) -> Takes:
        """What so many boxes of the kit at that place take together."""
        one = self.singly[place]
        minutes = None
        if one.seconds is not None and one.seconds_once is not None:
            minutes = (boxes * one.seconds + one.seconds_once) / 60
        return Takes(boxes * one.each + one.once, self._boards_for(place, boxes), minutes)

    def _boards_for(self, place: int, boxes: int) -> int:
        """The boards of so many boxes of one kit, placed together."""
        if self.stock and (place, boxes) not in self._taken:
            self._taken[place, boxes] = cut_together(self.kits[place].plan, self.stock, self.metrics, boxes).count
        return self._taken.get((place, boxes), 0)

    @cached_property
    def boards(self) -> RunBoards | None:
        """The boards of all kits; None where nothing is cut for them."""
        if self.stock is None:
            return None
        boards = RunBoards(self.range.name, self.sold, self.stock, self.metrics)
        return boards if boards.names else None

    @property
    def rates(self) -> Rates:
        """What a board and a minute of the cutter cost."""
        prices = self.stock.prices if self.stock else {}
        sheet, minute = (prices.get(key) for key in ("sheet", "minute"))
        return Rates(None if sheet is None else exactly(sheet), None if minute is None else exactly(minute))

    @property
    def material(self) -> Material:
        """Paper and boards of the whole run."""
        return Material(self.printing.totals.sheets, self.boards.count if self.boards else 0, self.rates.board)

    @property
    def scopes(self) -> tuple[Scope, ...]:
        """What to buy: for each kit, for a class, for the run."""
        boxed = [Boxed(each.kit.kit.name, needs(each.plan), each.kit.copies) for each in self.said]
        return to_buy(boxed, self.range.shop, self.material)

    @cached_property
    def rows(self) -> tuple[Row, ...]:
        """The overview, kit by kit."""
        return tuple(
            overview_row(each.plan, each.kit.copies, each.folder, self.singly[place], self._quote(place, each))
            for place, each in enumerate(self.said)
        )

    @property
    def whole(self) -> Whole:
        """All boxes together."""
        return whole_of(self.rows, *self.material[:2])

    def _quote(self, place: int, each: Planned) -> Quote:
        copies = each.kit.copies
        return quote(needs(each.plan), each.kit.shop, copies, self.takes(place, copies), self.rates)

    @property
    def tables(self) -> tuple[RunTable, ...]:
        """The maker's tables."""
        currency = self.range.shop.currency
        return (
            RunTable(overview_table(self.rows, currency), self._prove_overview),
            RunTable(to_buy_table(self.scopes, currency), self._prove_to_buy),
        )

    @property
    def files(self) -> tuple[RunFile, ...]:
        """The files of sheets, for the printer of the plans where they have one."""
        return tuple(map(self._for_printer, self._plain_files))

    def _for_printer(self, file: RunFile) -> RunFile:
        """The same file, drawn and proven for a printer."""
        plan, printing, metrics = self.kits[0].plan, self.printing, self.metrics
        own = file.name in printing.names

        def spoken(output: Output) -> Sequence[Catalogue]:
            return printing.spoken(output.file) if own else [plan.words] * len(output.sheets)

        def draw() -> Output:
            plain = file.draw()
            return for_printer(plain, plan.printer, spoken(plain), metrics) if plan.printer else plain

        def prove(output: Output, found: Document) -> Findings:
            return judged_plain(file.prove, output, found, spoken(output))

        return RunFile(file.name, draw, prove)

    @property
    def _plain_files(self) -> tuple[RunFile, ...]:
        """The print run, boards, the overview, prices where kits are sold, shop cards."""
        found = self.printing
        prove = partial(print_findings, found)
        prints = (RunFile(name, partial(found.output, name), prove) for name in found.names)
        boards = self.boards
        cut = [RunFile(name, partial(boards.output, name), boards.findings) for name in boards.names] if boards else []
        lesson = [self._lesson] if self.range.shop.people else []
        return (*prints, *cut, self._overview, *([self._prices] if self._sells else []), *lesson, self._cards)

    @cached_property
    def printing(self) -> PrintFiles:
        """What the run prints."""
        return print_files(self.range.name, self.sold, self.metrics)

    @property
    def _sells(self) -> bool:
        return any(each.kit.shop.currency or each.kit.shop.margin is not None for each in self.kits)

    @property
    def _overview(self) -> RunFile:
        material = self.material
        run = Overview(self.range, self.sold, self.rows, material.sheets, material.boards, self._held, self.stock)
        return RunFile(OVERVIEW_FILE, partial(overview_output, run, self.metrics), partial(overview_findings, run))

    @property
    def _prices(self) -> RunFile:
        run = PriceRun(self.range.name, self.sold, self.takes, self.rates, self.stock)
        return RunFile(PRICE_FILE, partial(price_output, run, self.metrics), partial(price_findings, run))

    @property
    def _cards(self) -> RunFile:
        said = self.range.name, self.sold, self._wood, self.metrics
        return RunFile(CARD_FILE, partial(card_output, *said, self.stock), partial(card_findings, *said))

    @property
    def _lesson(self) -> RunFile:
        shop = self.range.shop
        lesson = Lesson(shop.people or 1, shop.at_a_table or 1)
        said = self.range.name, self.sold, lesson
        return RunFile(CLASS_FILE, partial(class_output, *said, self.metrics), partial(class_findings, *said))

    @property
    def _wood(self) -> tuple[Boards | None, ...]:
        """What is cut for one box of each kit."""
        return tuple(cut_in_box(each.plan, self.metrics, self.stock) for each in self.kits)

    @property
    def sold(self) -> tuple[SoldKit, ...]:
        """The kits with their copies and the terms on which they are sold."""
        return tuple(SoldKit(each.plan, each.kit.copies, each.kit.shop) for each in self.kits)

    def _prove_to_buy(self, rows: Rows) -> Findings:
        from layout.box.shop_values import shop_values

        boxes = [Boxes(each.plan, each.kit.copies) for each in self.said]
        names = self.boards.board_names if self.boards else ()
        boards = sum(times_in(name) for name in names if name.endswith(f".{BOARD_FORMS[0]}"))
        bought = Bought(self.material.sheets, boards, self.rates.board)
        return prove_to_buy(rows, boxes, shop_values(self.range.shop), bought)

    def _prove_overview(self, rows: Rows) -> Findings:
        return prove_overview(rows, self._held())

    def _held(self) -> list[Held]:
        from layout.box.shop_values import shop_values

        held = []
        for place, each in enumerate(self.said):
            boxed = Priced(each.plan, each.kit.copies, shop_values(each.kit.shop))
            each_one, once, boards, *_ = self.singly[place]
            held.append(Held(boxed, each.folder, each_one, once, boards, partial(self._together, place)))
        return held

    def _together(self, place: int, boxes: int) -> Together:
        return Together(*self.takes(place, boxes), *self.rates)
