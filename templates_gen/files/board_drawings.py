"""A kit's boards and job sheet as they are drawn: every cut part on sheets of the stock."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import cached_property

from layout.cutting.job.boards import Boards, boards_of
from layout.cutting.job.job import Job
from layout.cutting.job.work import work_of
from layout.cutting.products import CUT_PRODUCTS, turns
from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part, Sheet
from layout.paper.choice import Laying
from layout.paper.job_sheets import job_laid
from layout.plan import Plan
from layout.values.errors import FieldError
from templates_gen.files.output import kerf_in_name
from templates_gen.lettering.outlines import outlined

_OFF_BOARD = ("trial-cut",)  # it is cut before anything else


class BoardDrawings:
    """All parts that were `built`, by product, with all their copies, on boards.

    `refused` says what the stock cannot give, for the job sheet.
    """

    def __init__(
        self,
        plan: Plan,
        stock: Stock,
        metrics: FontMetrics,
        built: Mapping[str, Sequence[Part]],
        refused: Sequence[str],
    ) -> None:
        self.plan, self.stock, self.metrics, self.refused = plan, stock, metrics, tuple(refused)
        self.parts = [
            part
            for name, parts in built.items()
            if name not in _OFF_BOARD
            for part in parts
            for _ in range(CUT_PRODUCTS[name].copies(plan, stock))
        ]

    @cached_property
    def boards(self) -> Boards:
        """Where every part lies; FieldError where one is larger than the sheet."""
        return boards_of(self.parts, turns(self.stock), self.stock, self.metrics, self.plan.words)

    @cached_property
    def sheets(self) -> tuple[Sheet, ...]:
        """The boards as they are drawn, words in outlines."""
        return tuple(outlined(self.boards.sheet(number + 1)) for number in range(len(self.boards.sheets)))

    @cached_property
    def job(self) -> Job:
        """What the job sheet is about."""
        works = tuple(work_of(sheet.shapes) for sheet in self.sheets)
        return Job(self.boards, works, tuple(map(self.stem, range(1, len(works) + 1))), self.refused)

    def stem(self, number: int) -> str:
        """The name of the files of a board, from 1 on, without their suffix."""
        size = f"{self.stock.width:g}x{self.stock.height:g}mm"
        return f"board-{number}of{len(self.boards.sheets)}-{size}-{kerf_in_name(self.stock)}"

    @cached_property
    def laid(self) -> Laying | FieldError:
        """How the job sheet lies on the kit's paper, or why it cannot."""
        try:
            return job_laid(self.plan, self.job, self.metrics)
        except FieldError as error:
            return error
