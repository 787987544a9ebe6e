"""The files of a kit's boards: every cut part on sheets of the stock as SVG and DXF, and the job sheet as PDF."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction
from functools import cached_property

from layout.cutting.job.boards import Boards, boards_of
from layout.cutting.job.job import Job, time_words
from layout.cutting.job.work import seconds, work_of
from layout.cutting.products import CUT_PRODUCTS, turns
from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part, Piece, Sheet
from layout.paper.choice import Laying
from layout.paper.job_sheets import job_laid
from layout.paper.sheets import printed
from layout.plan import Plan
from layout.values.errors import FieldError
from layout.values.units import say_number
from templates_gen.files.output import Output, kerf_in_name, names_of, titled
from templates_gen.inputs.families import BOARD, JOB
from templates_gen.lettering.outlines import outlined

JOB_FILE = "job.pdf"

_FORMS = ("svg", "dxf")
_OFF_BOARD = ("trial-cut",)  # it is cut before anything else


class BoardOutputs:
    """The files of all parts that were `built`, by product, with all their copies; nothing where there are none.

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
        return boards_of(self.parts, turns(self.stock), self.stock, self.metrics)

    @cached_property
    def sheets(self) -> tuple[Sheet, ...]:
        """The boards as they are drawn, words in outlines."""
        return tuple(outlined(self.boards.sheet(number + 1)) for number in range(len(self.boards.sheets)))

    @cached_property
    def job(self) -> Job:
        """What the job sheet is about."""
        return Job(self.boards, tuple(work_of(sheet.shapes) for sheet in self.sheets), self.refused)

    @cached_property
    def _numbers(self) -> Mapping[str, int]:
        """The number of each board, by its file."""
        count = len(self.boards.sheets)
        size = f"{self.stock.width:g}x{self.stock.height:g}mm"
        stems = {f"board-{k}of{count}-{size}-{kerf_in_name(self.stock)}": k for k in range(1, count + 1)}
        return {f"{stem}.{form}": number for stem, number in stems.items() for form in _FORMS}

    @property
    def files(self) -> tuple[str, ...]:
        """Every file's name, in the order of making."""
        if not self.parts:
            return ()
        return (*self._numbers, JOB_FILE) if isinstance(self._laid, Laying) else tuple(self._numbers)

    def product(self, file: str) -> str:
        """The family that a file is of."""
        return JOB if file == JOB_FILE else BOARD

    @cached_property
    def _laid(self) -> Laying | FieldError:
        """How the job sheet lies on the kit's paper, or why it cannot."""
        try:
            return job_laid(self.plan, self.job, self.metrics)
        except FieldError as error:
            return error

    def output(self, file: str) -> Output:
        """The file of that name, which must be one of `files`."""
        if file == JOB_FILE and isinstance(self._laid, Laying):
            return self._job(self._laid)
        return self._board(file, self._numbers[file])

    def _board(self, file: str, number: int) -> Output:
        sheet, pieces = self.sheets[number - 1], self.boards.sheets[number - 1]
        about = titled(self.plan, sheet.name, file, self.stock)._replace(operations=self.stock.operations)
        return Output(file, _names(pieces), (sheet,), (pieces,), about, on_paper=False, stock=self.stock)

    def _job(self, laying: Laying) -> Output:
        sheets = printed(self.plan, [laying], self.metrics)
        laid = tuple(sheet.pieces for sheet in sheets)
        about = titled(self.plan, "cutting job", JOB_FILE, self.stock)
        names = tuple(dict.fromkeys(name for pieces in laid for name in _names(pieces)))
        drawn = tuple(sheet.sheet for sheet in sheets)
        return Output(JOB_FILE, names, drawn, laid, about, on_paper=True, stock=self.stock)

    @property
    def notes(self) -> tuple[str, ...]:
        """How many sheets, how much is waste, how long it takes, and what it costs, which no file says."""
        if not self.parts:
            return ()
        count = len(self.boards.sheets)
        sheets = f"{count} {'sheet' if count == 1 else 'sheets'} of {self.stock.width:g} x {self.stock.height:g} mm"
        waste = f"by area at least {self.boards.least}, {say_number(Fraction(self.boards.waste) * 100, 1)} % waste"
        told = f"Boards: {sheets}, {waste}; time {time_words(self.job.work, self.stock)}{self._price()}."
        return (told,) if isinstance(self._laid, Laying) else (told, f"{JOB_FILE} is not made: {self._laid}")

    def _price(self) -> str:
        prices, time = self.stock.prices, seconds(self.job.work, self.stock.speeds)
        sheets = prices.get("sheet", 0.0) * len(self.boards.sheets)
        minutes = prices.get("minute", 0.0) * (time or 0.0) / 60
        if not prices:
            return ""
        untold = ", the cutter's time left out" if "minute" in prices and time is None else ""
        return f"; about {sheets + minutes:.2f} in the money of the stock file{untold}"


def _names(pieces: Sequence[Piece]) -> tuple[str, ...]:
    return names_of(piece.part for piece in pieces)
