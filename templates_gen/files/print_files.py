"""The files of a print run: drawn page by page, each with its code."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from itertools import islice

from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part
from layout.messages.catalogue import Catalogue
from layout.messages.roles import Sheet as Sheets
from layout.messages.roles.buying import Prices
from layout.messages.roles.run import RunList
from layout.paper.choice import Laying
from layout.paper.code import Modules
from layout.paper.furniture import Page
from layout.paper.head import Head
from layout.paper.room import room_under
from layout.paper.sheets import Printed, printed, sheet_alone
from layout.run.bed import run_bed
from layout.run.run import Run, RunKit
from layout.run.run_list import Totals, run_list_pages, run_list_probe
from layout.run.run_sheet import TILE, Gutter, called, names_on, run_sheet
from layout.run.sets import Layings
from layout.values.errors import LayoutError
from templates_gen.codes.modules import codes_for
from templates_gen.files.kept import printed_drawings
from templates_gen.files.output import Output, names_of
from templates_gen.files.print_pages import PrintFile, PrintPages
from templates_gen.files.run_about import SoldKit, about_run

_MANY = 99
_EDGE = 2.0  # mm that the crosses of a part reach past its field, above and below


@dataclass(frozen=True)
class PrintFiles:
    """What a run prints, file by file; `sold` are its kits as the files carry them."""

    run: Run
    sold: tuple[SoldKit, ...]
    layings: Layings
    metrics: FontMetrics

    @cached_property
    def pages(self) -> PrintPages:
        """Which page stands in which file."""
        return PrintPages(self.run, self.layings, self.metrics)

    @property
    def names(self) -> tuple[str, ...]:
        """The names of the files, in the order of printing."""
        return tuple(file.name for file in self.pages.files)

    @cached_property
    def totals(self) -> Totals:
        """How many sheets of paper there are, with the run list."""
        return self.pages.totals(len(self.lists))

    def output(self, name: str) -> Output:
        """The file of that name as it must be."""
        file = next(each for each in self.pages.files if each.name == name)
        about = about_run(self.run.name, self.sold, self.run.words.say(RunList.NAME), name, legal=True)
        codes = codes_for(about, file.paper, self.count(file))
        sheets = tuple(self._sheets(file, codes))
        laid = tuple(sheet.pieces for sheet in sheets)
        parts = tuple(dict.fromkeys(names_of(piece.part for pieces in laid for piece in pieces)))
        return Output(name, parts, tuple(sheet.sheet for sheet in sheets), laid, about, on_paper=True)

    def spoken(self, name: str) -> tuple[Catalogue, ...]:
        """The language of each page of a file: that of a kit on its own pages, else that of the run."""
        file = next(each for each in self.pages.files if each.name == name)
        words = self.run.words
        own = [self.run.kits[each.kit].plan.words for each in file.own for _ in range(self.pages.page_count(each))]
        return (*([words] * len(self.lists) if file.has_list else []), *own, *([words] * len(file.placed)))

    def count(self, file: PrintFile) -> int:
        """How many pages a file has."""
        own = sum(map(self.pages.page_count, file.own))
        return (len(self.lists) if file.has_list else 0) + own + len(file.placed)

    @cached_property
    def lists(self) -> tuple[Part, ...]:
        """The pages of the run list; how many they are moves the numbers on them."""
        run, words = self.run, self.run.words
        paper = run.kits[0].plan.kit.paper
        probe = run_list_probe(words)
        width, high = room_under(Page(paper, words), self._head(probe, _MANY, _MANY), probe, self.metrics)
        _, higher = room_under(Page(paper, words), self._head(probe, _MANY, _MANY), _bare(probe), self.metrics)
        heights = high - _EDGE, higher - _EDGE
        parts: tuple[Part, ...] = ()
        for count in range(1, _MANY):
            printings = list(self.pages.printings(count))
            parts = run_list_pages(printings, self.pages.totals(count), heights, width, words, self.metrics)
            if len(parts) == count:
                break
        return parts

    def _sheets(self, file: PrintFile, codes: Sequence[Modules]) -> Iterator[Printed]:
        left = iter(codes)
        if file.has_list:
            for number, part in enumerate(self.lists, 1):
                yield self._list_sheet(part, number, next(left))
        for own in file.own:
            plan = self.run.kits[own.kit].plan
            yield from printed(plan, own.layings, self.metrics, lambda total: list(islice(left, total)))
        names = [called(kit.plan) for kit in self.run.kits]
        for page in file.placed:
            kits = names_on(page.placed, names)
            said = Gutter(self.run.name, page.number, page.total, page.placed.times, kits)
            yield run_sheet(page.placed, said, run_bed(page.paper), self.run.words, self.metrics, next(left))

    def _list_sheet(self, part: Part, number: int, modules: Modules) -> Printed:
        paper = self.run.kits[0].plan.kit.paper
        head = self._head(part, number, len(self.lists))
        found = sheet_alone(part, paper, head, self.run.words, self.metrics, modules)
        if found is None:
            raise LayoutError(f"{part.title}: {paper.name}")
        return found

    def _head(self, part: Part, number: int, total: int) -> Head:
        words = self.run.words
        kits, boxes = len(self.run.kits), self.run.boxes
        facts = words.listed([words.say(Prices.KITS, kits=kits), words.say(Prices.BOXES, boxes=boxes)])
        said = words.say(Sheets.NUMBER, number=number, total=total)
        return Head(TILE, part.title, part.purpose, self.run.name, facts, said)


def _bare(part: Part) -> Part:
    return replace(part, steps=(), cautions=())


def print_files(name: str, sold: Sequence[SoldKit], metrics: FontMetrics) -> PrintFiles:
    """What a run of the range `name` prints, from the drawings that this process keeps."""
    run = Run(name, tuple(RunKit(each.plan, each.copies) for each in sold))

    def layings(place: int, product: str) -> tuple[Laying, ...]:
        return printed_drawings(sold[place].plan, metrics).layings(product)

    return PrintFiles(run, tuple(sold), layings, metrics)
