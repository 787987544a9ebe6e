"""The boards of a run: the cut parts of all boxes of all kits placed together, and one job sheet for them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cached_property

from layout.cutting.job.boards import BoardPart
from layout.cutting.job.pages import bare_page, job_pages
from layout.cutting.job.work import seconds
from layout.cutting.products import CUT_PRODUCTS
from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.messages.catalogue import Message
from layout.messages.roles import SheetNeed, Titles
from layout.plan import Plan
from layout.run.cut_sets import each_cut, once_cut
from layout.values.errors import FieldError
from layout.values.numerals import say_number
from templates_gen.document import Document
from templates_gen.files.board_drawings import BoardDrawings
from templates_gen.files.board_records import BOARD_FORMS, JOB_FILE
from templates_gen.files.kept import cut_drawings
from templates_gen.files.output import Output, names_of
from templates_gen.files.run_about import SoldKit, about_run
from templates_gen.files.run_sheets import room_of, run_output
from templates_gen.messages.language import message
from templates_gen.messages.roles.files import Left
from templates_gen.messages.roles.proof import Compared
from templates_gen.messages.roles.run import Run
from templates_gen.verify.compare import compare
from templates_gen.verify.cut_parts.run_boards import RunBoard, prove_run_board, wrong_counts
from templates_gen.verify.cut_parts.run_job import prove_run_job
from templates_gen.verify.finding import Findings, finding
from templates_gen.verify.printed.code import prove_codes
from templates_gen.verify.run.pages import RunKit

_EDGE = 1.0  # mm that the crosses of a job sheet reach below its words


def box_parts(
    plan: Plan, stock: Stock, metrics: FontMetrics, kit: int, boxes: int, *, once: bool = True
) -> Iterator[BoardPart]:
    """What is cut for so many boxes of a kit, `kit` being its place in the run; what the stock refuses is not."""
    drawn = cut_drawings(plan, stock, metrics)
    for names, sets in ((each_cut(plan), boxes), (once_cut(plan) if once else (), 1)):
        for name in names:
            each = CUT_PRODUCTS[name].copies(plan, stock)
            yield from (BoardPart(part, kit, each, sets) for part in drawn.built(name))


def cut_together(plan: Plan, stock: Stock, metrics: FontMetrics, boxes: int, *, once: bool = True) -> BoardDrawings:
    """So many boxes of one kit on boards of their own."""
    parts = tuple(box_parts(plan, stock, metrics, 0, boxes, once=once)) if boxes else ()
    return BoardDrawings(plan, stock, metrics, parts, (), (plan.kit.name,))


def seconds_of(drawn: BoardDrawings) -> Fraction | None:
    """How long boards take the cutter; None where that is not known."""
    if not drawn.parts:
        return Fraction(0)
    time = seconds(drawn.job.work, drawn.stock.speeds)
    return None if time is None else Fraction(time)


@dataclass(frozen=True)
class RunBoards:
    """The boards of the range `name`; `sold` are its kits as the files carry them."""

    name: str
    sold: tuple[SoldKit, ...]
    stock: Stock
    metrics: FontMetrics

    @cached_property
    def drawn(self) -> BoardDrawings:
        """All parts of all boxes on boards."""
        parts = tuple(
            part
            for place, each in enumerate(self.sold)
            for part in box_parts(each.plan, self.stock, self.metrics, place, each.copies)
        )
        names = [each.plan.kit.name for each in self.sold]
        return BoardDrawings(self.sold[0].plan, self.stock, self.metrics, parts, tuple(self._refused()), names)

    def _refused(self) -> Iterator[str]:
        """Why parts that a box should hold are not cut, with the name of the kit where there are several."""
        for each in self.sold:
            asked = replace(each.plan, refused=frozenset())
            names = (*each_cut(asked), *once_cut(asked))
            for name, why in cut_drawings(each.plan, self.stock, self.metrics).refused(names).items():
                said = message(Left.NOT_MADE, name=name, why=why)
                yield message(Run.OF_KIT, name=each.plan.kit.name, note=said) if len(self.sold) > 1 else said

    @property
    def count(self) -> int:
        """How many sheets of the stock are cut."""
        return self.drawn.count

    @property
    def board_names(self) -> tuple[str, ...]:
        """The files of the boards, board by board."""
        count = len(self.drawn.boards.sheets) if self.drawn.parts else 0
        return tuple(f"{self.drawn.stem(k)}.{form}" for k in range(1, count + 1) for form in BOARD_FORMS)

    @property
    def names(self) -> tuple[str, ...]:
        """All files: the boards, then the job sheet."""
        return (*self.board_names, JOB_FILE) if self.drawn.parts else ()

    def output(self, file: str) -> Output:
        """The file of that name; FieldError on paper.size where the first kit's holds no job sheet."""
        return self._job() if file == JOB_FILE else self._board(file)

    def _board(self, file: str) -> Output:
        number = self.board_names.index(file) // len(BOARD_FORMS) + 1
        sheet, pieces = self.drawn.drawn[number - 1], self.drawn.boards.sheets[number - 1]
        what = self.drawn.plan.words.say(Titles.BOARD, number=number, total=len(self.drawn.sheets))
        about = about_run(self.name, self.sold, what, file, self.stock)
        about = about._replace(operations=self.stock.operations)
        names = names_of(piece.part for piece in pieces)
        return Output(file, names, (sheet,), (pieces,), about, on_paper=False, stock=self.stock)

    def _job(self) -> Output:
        words, job = self.drawn.plan.words, self.drawn.job
        width, height = room_of(self.name, self.sold, bare_page(job, words), self.metrics)
        parts = tuple(job_pages(job, (width, height - _EDGE), words, self.metrics))
        for part in parts:
            if part.height > height + 2 * _EDGE:
                raise _too_large(self.drawn.plan, part.title, part.length, part.height)
        found = run_output(self.name, self.sold, parts, JOB_FILE, self.metrics, self.stock)
        return Output(JOB_FILE, names_of(parts), found.sheets, found.laid, found.about, on_paper=True)

    def findings(self, output: Output, found: Document) -> Findings:
        """How a file that was read back differs from what was drawn, and from what it must be whatever was drawn."""
        result = compare(output.sheets, found.sheets)
        if result.problems:
            return result
        kits = tuple(RunKit(each.plan, each.copies) for each in self.sold)
        if output.file == JOB_FILE:
            files = [f"{self.drawn.stem(k)}.{BOARD_FORMS[0]}" for k in range(1, len(self.drawn.sheets) + 1)]
            run = self.name, sum(each.copies for each in self.sold)
            return result + prove_codes(found) + prove_run_job(found.sheets, output.laid, run, kits, self.stock, files)
        if found.about.operations != output.about.operations:
            result += Findings(0.0, (finding(Compared.OPERATIONS),))
        number = self.board_names.index(output.file) // len(BOARD_FORMS)
        board = RunBoard(output.file, found.sheets[0], output.laid[0], self.drawn.boards.kits[number])
        result += prove_run_board(board, kits, self.stock)
        return result + wrong_counts(self.every, kits, self.stock) if number == 0 else result

    @property
    def every(self) -> tuple[RunBoard, ...]:
        """Every board once, as it is drawn, by the name of its first file."""
        names = self.board_names[:: len(BOARD_FORMS)]
        boards = self.drawn.boards
        each = zip(names, self.drawn.drawn, boards.sheets, boards.kits, strict=True)
        return tuple(RunBoard(*one) for one in each)


def _too_large(plan: Plan, title: str, length: float, height: float) -> FieldError:
    paper = plan.kit.paper
    size = {"length": say_number(length, 0), "height": say_number(height, 0)}
    on = {"width": say_number(paper.width, 1), "up": say_number(paper.height, 1)}
    got = Message(SheetNeed.GOT_WHOLE, {"part": title, **size, **on})
    return FieldError("paper.size", SheetNeed.WHOLE, got, 'size = "a3"')
