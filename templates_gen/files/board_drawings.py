"""Boards and job sheet as they are drawn: cut parts of one kit, or of a whole run, on sheets of the stock."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import cached_property

from layout.cutting.job.boards import BoardPart, Boards, boards_of, boards_of_run
from layout.cutting.job.job import Job
from layout.cutting.job.work import work_of
from layout.cutting.products import CUT_PRODUCTS, turns
from layout.cutting.stock.drawn_scale import drawn_against
from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part, Sheet
from layout.paper.choice import Laying
from layout.paper.job_sheets import job_laid
from layout.plan import Plan
from layout.values.errors import FieldError
from templates_gen.files.output import settings_in_name
from templates_gen.lettering.outlines import outlined

_OFF_BOARD = ("trial-cut",)  # it is cut before anything else


def parts_of(plan: Plan, stock: Stock, built: Mapping[str, Sequence[Part]]) -> list[BoardPart]:
    """All parts that were `built` for a kit, by product, with all the copies that it needs."""
    on_board = [(name, parts) for name, parts in built.items() if name not in _OFF_BOARD]
    return [BoardPart(part, each=CUT_PRODUCTS[name].copies(plan, stock)) for name, parts in on_board for part in parts]


class BoardDrawings:
    """These parts on boards. `refused` says what the stock cannot give, for the job sheet.

    What is said is in the language of `plan`. In a run (`names`, those of its kits) boards that are alike are one.
    """

    def __init__(
        self,
        plan: Plan,
        stock: Stock,
        metrics: FontMetrics,
        parts: Sequence[BoardPart],
        refused: Sequence[str],
        names: Sequence[str] = (),
    ) -> None:
        self.plan, self.stock, self.metrics = plan, stock, metrics
        self.parts, self.refused, self.names = tuple(parts), tuple(refused), tuple(names)

    @cached_property
    def boards(self) -> Boards:
        """Where every part lies; FieldError where one is larger than the sheet."""
        said = turns(self.stock), self.stock, self.metrics, self.plan.words
        if self.names:
            return boards_of_run(self.parts, *said)
        return boards_of([each.part for each in self.parts for _ in range(each.each)], *said)

    @property
    def count(self) -> int:
        """How many sheets of the stock are cut."""
        return self.boards.count if self.parts else 0

    @cached_property
    def sheets(self) -> tuple[Sheet, ...]:
        """The boards as they are cut, words in outlines."""
        return tuple(outlined(self.boards.sheet(number + 1)) for number in range(len(self.boards.sheets)))

    @cached_property
    def drawn(self) -> tuple[Sheet, ...]:
        """The boards as the cutter gets them: drawn against its scale."""
        return tuple(drawn_against(sheet, self.stock.scale) for sheet in self.sheets)

    @cached_property
    def job(self) -> Job:
        """What the job sheet is about."""
        works = tuple(work_of(sheet.shapes) for sheet in self.sheets)
        names = self.names if len(self.names) > 1 else ()
        return Job(self.boards, works, tuple(map(self.stem, range(1, len(works) + 1))), self.refused, names)

    def stem(self, number: int) -> str:
        """The name of the files of a board, from 1 on, without their suffix; it says how often that is cut."""
        size = f"{self.stock.width:g}x{self.stock.height:g}mm"
        times = self.boards.times[number - 1]
        often = f"{times}x-" if times > 1 else ""
        return f"board-{number}of{len(self.boards.sheets)}-{often}{size}-{settings_in_name(self.stock)}"

    @cached_property
    def laid(self) -> Laying | FieldError:
        """How the job sheet lies on the kit's paper, or why it cannot."""
        try:
            return job_laid(self.plan, self.job, self.metrics)
        except FieldError as error:
            return error
