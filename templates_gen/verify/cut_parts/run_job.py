"""The job sheets of a run: every board with how often it is cut, the parts of all kits by name, and the heads."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from layout.cutting.stock.stock import Stock
from layout.drawing.sheet import Piece, Sheet
from layout.messages.roles import JobSheet, SheetName
from layout.messages.roles import Sheet as Sheets
from layout.messages.roles.buying import Prices
from layout.values.numerals import say_number
from templates_gen.messages.roles.proof import Proof
from templates_gen.verify.cut_parts.job import prove_listed
from templates_gen.verify.cut_parts.job_amounts import Needed, parts_by_name, refusals
from templates_gen.verify.cut_parts.run_boards import wanted_parts
from templates_gen.verify.finding import Finding, Findings, said
from templates_gen.verify.found_parts import found_on
from templates_gen.verify.printed.furniture import check_furniture
from templates_gen.verify.run.pages import RunKit
from templates_gen.verify.said import account, outside
from templates_gen.verify.whole_boards import times_in

_TILE = "L"


def prove_run_job(
    sheets: Sequence[Sheet],
    laid: Sequence[Sequence[Piece]],
    run: tuple[str, int],
    kits: Sequence[RunKit],
    stock: Stock,
    files: Sequence[str],
) -> Findings:
    """All job sheets; `run` is the name of the range and how many boxes are made, `files` are those of the boards."""
    words, times = kits[0].plan.words, [times_in(file) for file in files]
    needed, refused = _needed(kits, stock)
    total = prove_listed(needed, refused, stock, sheets, laid, words, times)
    for number, (sheet, pieces) in enumerate(zip(sheets, laid, strict=True), 1):
        where = said(Proof.SHEET, number=number)
        total += check_furniture(sheet, [piece.part.name for piece in pieces]).at(where)
        heads = tuple(_heads(sheet, pieces, run, kits, stock, sum(times), (number, len(sheets))))
        total += Findings(0.0, heads).at(where)
    return total


def _needed(kits: Sequence[RunKit], stock: Stock) -> tuple[list[Needed], list[str]]:
    """What the range asks for, and what the stock cannot give of it."""
    needed, refused = list[Needed](), list[str]()
    words, several = kits[0].plan.words, len(kits) > 1
    for plan, boxes in kits:
        name = plan.kit.name
        wanted = wanted_parts(plan.kit, boxes, stock)
        known = parts_by_name(plan, stock, wanted)
        for part, count in (each for counts in wanted.values() for each in counts.items()):
            if part in known:
                title = known[part].title
                own = words.say(JobSheet.OF_KIT, part=title, kit=name) if several else title
                needed.append(Needed(known[part], count, own))
        refused += refusals(plan, stock, wanted, name if several else "")
    return needed, refused


def _heads(
    sheet: Sheet,
    pieces: Sequence[Piece],
    run: tuple[str, int],
    kits: Sequence[RunKit],
    stock: Stock,
    boards: int,
    number: tuple[int, int],
) -> Iterator[Finding]:
    """The words outside the lists: the range, how many kits and boxes, the stock and its boards, the sheet."""
    words = kits[0].plan.words
    size = {"width": say_number(stock.width), "height": say_number(stock.height)}
    board = words.say(JobSheet.STOCK_IS, material=stock.material, thick=say_number(stock.thickness), **size)
    facts = [words.say(Prices.KITS, kits=len(kits)), words.say(Prices.BOXES, boxes=run[1])]
    wanted = [
        words.say(SheetName.NAME_JOB),
        words.say(SheetName.PURPOSE_JOB, boards=boards, stock=board),
        run[0],
        words.listed(facts),
        words.say(Sheets.NUMBER, number=number[0], total=number[1]),
        _TILE,
    ]
    found, _ = found_on(sheet, pieces, said(Proof.SHEET, number=number[0]))
    yield from account(outside(sheet, found), wanted).wrong
