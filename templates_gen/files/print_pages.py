"""Which pages a run prints, in which file, and how often: the run list first, then what is printed once, and so on."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import groupby
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.kit.kit import Paper
from layout.paper.sheets import leaves
from layout.run.bed import run_bed
from layout.run.imposing import Imposed, Placed, RunPart, imposed
from layout.run.run import Run
from layout.run.run_list import Printing, Totals
from layout.run.run_sheet import names_on
from layout.run.sets import Layings, OwnPages, Prints, prints_of

PRINT = "print-"
"""The names of the files of a print run begin so."""


class PlacedPage(NamedTuple):
    """A sheet on which parts are placed: which of how many, and its paper."""

    placed: Placed
    number: int
    total: int
    paper: Paper


class PrintFile(NamedTuple):
    """A file whose every page is printed so many `times`, on one paper."""

    name: str
    times: int
    paper: Paper
    own: tuple[OwnPages, ...]
    placed: tuple[PlacedPage, ...]
    has_list: bool = False


@dataclass(frozen=True)
class PrintPages:
    """The pages of a run; `layings` says how a product of a kit lies on its own pages."""

    run: Run
    layings: Layings
    metrics: FontMetrics

    @cached_property
    def prints(self) -> tuple[Prints, ...]:
        """What each kit has printed."""
        return tuple(prints_of(self.run, k, self.layings, self.metrics) for k in range(len(self.run.kits)))

    @cached_property
    def papers(self) -> tuple[Paper, ...]:
        """The papers of the run, each once, that of the first kit first."""
        papers = {kit.plan.kit.paper.size: kit.plan.kit.paper for kit in reversed(self.run.kits)}
        sizes = dict.fromkeys(kit.plan.kit.paper.size for kit in self.run.kits)
        return tuple(papers[size] for size in sizes)

    @cached_property
    def imposed(self) -> tuple[tuple[Paper, Imposed], ...]:
        """The sheets with parts placed on them, by paper, where there are any."""
        found = ((paper, self._parts(paper)) for paper in self.papers)
        return tuple((paper, imposed(parts, run_bed(paper))) for paper, parts in found if parts)

    def _parts(self, paper: Paper) -> list[tuple[RunPart, int]]:
        kits = [k for k, kit in enumerate(self.run.kits) if kit.plan.kit.paper.size == paper.size]
        return [(part, self.run.kits[k].copies) for k in kits for part in self.prints[k].parts]

    @cached_property
    def files(self) -> tuple[PrintFile, ...]:
        """Every file, those that are printed once first."""
        own = [each for prints in self.prints for each in prints.pages]
        placed = self._placed
        found = []
        for paper in self.papers:
            mine = [each for each in own if self._paper(each) == paper.size]
            sheets = [each for each in placed if each.paper.size == paper.size]
            times = {each.times for each in mine} | {each.placed.times for each in sheets}
            for often in sorted(times | ({1} if paper is self.papers[0] else set())):
                has_list = often == 1 and paper is self.papers[0]
                alike = tuple(each for each in mine if each.times == often)
                beside = tuple(each for each in sheets if each.placed.times == often)
                found.append(PrintFile(self._name(paper, often), often, paper, alike, beside, has_list))
        return tuple(found)

    @cached_property
    def _placed(self) -> tuple[PlacedPage, ...]:
        sheets = [(paper, sheet) for paper, found in self.imposed for sheet in found.sheets]
        return tuple(PlacedPage(sheet, k, len(sheets), paper) for k, (paper, sheet) in enumerate(sheets, 1))

    def _paper(self, pages: OwnPages) -> object:
        return self.run.kits[pages.kit].plan.kit.paper.size

    def _name(self, paper: Paper, times: int) -> str:
        size = paper.name if paper.name != "own" else f"{paper.width:.0f}x{paper.height:.0f}mm"
        on = f"{size}-" if len(self.papers) > 1 else ""
        return f"{PRINT}{on}{times}-{'time' if times == 1 else 'times'}.pdf"

    def page_count(self, own: OwnPages) -> int:
        """How many pages a product takes on its own."""
        return len(leaves(self.run.kits[own.kit].plan, own.layings, self.metrics))

    def totals(self, lists: int) -> Totals:
        """What is said of all sheets together, with the run list, which takes so many pages."""
        whole = lists + sum(self.page_count(each) * each.times for prints in self.prints for each in prints.pages)
        placed = sum(found.papers for _, found in self.imposed)
        room = sum(found.papers * run_bed(paper).area for paper, found in self.imposed)
        free = sum(found.waste * found.papers * run_bed(paper).area for paper, found in self.imposed)
        least = whole + sum(found.least for _, found in self.imposed)
        singly = sum(each.singly for each in self.prints)
        return Totals(whole + placed, singly, least, placed, free / room if room else 0.0)

    def printings(self, lists: int) -> Iterator[Printing]:
        """The rows of the run list, which itself takes so many pages."""
        names = [kit.plan.kit.name for kit in self.run.kits]
        for file in self.files:
            page = 1 + (lists if file.has_list else 0)
            rows = [*self._own_rows(file, names), *_placed_rows(file, names)]
            for (holds, kits), alike in groupby(rows, key=lambda row: row[1:]):
                count = sum(each[0] for each in alike)
                yield Printing(file.name, page, page + count - 1, file.times, holds, kits)
                page += count

    def _own_rows(self, file: PrintFile, names: Sequence[str]) -> Iterator[_Row]:
        for own in file.own:
            titles = tuple(dict.fromkeys(laying.part.title for laying in own.layings))
            yield self.page_count(own), titles, (names[own.kit],)


_Row = tuple[int, tuple[str, ...], tuple[str, ...]]
"""How many pages, the titles of what they hold, and the names of the kits that it is for."""


def _placed_rows(file: PrintFile, names: Sequence[str]) -> Iterator[_Row]:
    for page in file.placed:
        titles: Mapping[str, None] = dict.fromkeys(piece.part.title for piece in page.placed.pieces)
        yield 1, tuple(titles), names_on(page.placed, names)
