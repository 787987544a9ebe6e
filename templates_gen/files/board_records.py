"""The files of a kit's boards: every cut part on sheets of the stock as SVG and DXF, and the job sheet as PDF."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import partial

from layout.cutting.job.job import time_words
from layout.cutting.job.work import seconds
from layout.drawing.sheet import Piece
from layout.messages.english import ENGLISH
from layout.messages.roles import Titles
from layout.paper.choice import Laying
from templates_gen.files.board_drawings import BoardDrawings
from templates_gen.files.coded import coded
from templates_gen.files.for_printer import for_plan
from templates_gen.files.output import Output, names_of, titled
from templates_gen.files.record import FileRecord
from templates_gen.inputs.families import BOARD, JOB
from templates_gen.messages.language import message
from templates_gen.messages.roles.files import Boards, Left

JOB_FILE = "job.pdf"

BOARD_FORMS = ("svg", "dxf")


def board_records(drawn: BoardDrawings) -> Iterator[FileRecord]:
    """Every board in each form of a cutter; nothing where there is no part."""
    count = len(drawn.boards.sheets) if drawn.parts else 0
    for number in range(1, count + 1):
        for form in BOARD_FORMS:
            name = f"{drawn.stem(number)}.{form}"
            yield FileRecord(name, BOARD, form, partial(_board, drawn, name, number))


def job_records(drawn: BoardDrawings) -> Iterator[FileRecord]:
    """The job sheet, if there is a part and the kit's paper can hold the sheet."""
    if drawn.parts and isinstance(drawn.laid, Laying):
        yield FileRecord(JOB_FILE, JOB, "pdf", partial(_job, drawn, drawn.laid))


def _board(drawn: BoardDrawings, file: str, number: int) -> Output:
    sheet, pieces = drawn.drawn[number - 1], drawn.boards.sheets[number - 1]
    what = drawn.plan.words.say(Titles.BOARD, number=number, total=len(drawn.sheets))
    about = titled(drawn.plan, what, file, drawn.stock)._replace(operations=drawn.stock.operations)
    return Output(file, _names(pieces), (sheet,), (pieces,), about, on_paper=False, stock=drawn.stock)


def _job(drawn: BoardDrawings, laying: Laying) -> Output:
    about = titled(drawn.plan, drawn.plan.words.say(Titles.JOB), JOB_FILE, drawn.stock)
    sheets = coded(drawn.plan, [laying], about, drawn.metrics)
    laid = tuple(sheet.pieces for sheet in sheets)
    names = tuple(dict.fromkeys(name for pieces in laid for name in _names(pieces)))
    shown = tuple(sheet.sheet for sheet in sheets)
    plain = Output(JOB_FILE, names, shown, laid, about, on_paper=True, stock=drawn.stock)
    return for_plan(plain, drawn.plan, drawn.metrics)


def _names(pieces: Sequence[Piece]) -> tuple[str, ...]:
    return names_of(piece.part for piece in pieces)


def board_notes(drawn: BoardDrawings) -> tuple[str, ...]:
    """What boards take, and why there is no job sheet where there is none."""
    note = board_note(drawn)
    if not note or isinstance(drawn.laid, Laying):
        return note
    return (*note, message(Left.NOT_MADE, name=JOB_FILE, why=drawn.laid))


def board_note(drawn: BoardDrawings) -> tuple[str, ...]:
    """How many sheets, what is left over in one piece, how long it takes, and what it costs, which no file says."""
    if not drawn.parts:
        return ()
    stock, boards, prices = drawn.stock, drawn.boards, drawn.stock.prices
    time, free = seconds(drawn.job.work, stock.speeds), boards.largest_left_over
    values: dict[str, object] = {
        "sheets": boards.count,
        "width": stock.width,
        "height": stock.height,
        "least": boards.least,
        "wide": free.width,
        "high": free.height,
        "board": free.board,
        "time": time_words(drawn.job.work, stock, ENGLISH),
    }
    role = Boards.NOTE
    if prices:
        values["cost"] = prices.get("sheet", 0.0) * boards.count + prices.get("minute", 0.0) * (time or 0.0) / 60
        role = Boards.PRICED_SHEETS if "minute" in prices and time is None else Boards.PRICED
    return (message(role, **values),)
