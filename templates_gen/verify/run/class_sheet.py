"""The class sheet proven: what lies ready and is cut, computed again, row by row, and the boxes to tick counted."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from layout.drawing.shapes import Curve, Text
from layout.drawing.sheet import Piece, Sheet
from layout.messages.roles import Sheet as Sheets
from layout.messages.roles.buying import Packed, Prices
from layout.messages.roles.ranges import ClassSheet
from layout.plan import Plan
from templates_gen.messages.roles.proof import Proof
from templates_gen.messages.roles.run import Lessons
from templates_gen.verify.boxes import box_of
from templates_gen.verify.finding import NOTHING, Finding, Findings, finding, said
from templates_gen.verify.found_parts import found_on
from templates_gen.verify.printed.box_list import box_list, once_list
from templates_gen.verify.printed.furniture import check_furniture
from templates_gen.verify.said import account

_TICK, _NEAR, _SAME = 3.8, 1e-3, 0.01
_TILE = "B"


def prove_class_sheet(
    sheets: Sequence[Sheet],
    laid: Sequence[Sequence[Piece]],
    run: tuple[str, int],
    plans: Sequence[Plan],
    people: int,
    at_a_table: int,
) -> Findings:
    """All sheets of a class of so many `people`; `run` is the name of the range and how many boxes are made."""
    total = NOTHING
    for number, (sheet, pieces) in enumerate(zip(sheets, laid, strict=True), 1):
        where = said(Proof.SHEET, number=number)
        total += found_on(sheet, pieces, where)[1]
        total += check_furniture(sheet, [piece.part.name for piece in pieces]).at(where)
    rows = list(_rows(plans, people))
    ticks = sum(1 for row in rows if len(row) == 2) + people
    return total + Findings(
        0.0,
        (
            *_said(sheets, run, plans, rows, people, -(-people // at_a_table)),
            *_ticked(sheets, ticks),
            *_placed(sheets, rows),
        ),
    )


def _rows(plans: Sequence[Plan], people: int) -> Iterator[tuple[str, ...]]:
    """The cells of each row, in their order."""
    for plan in plans:
        yield from box_list(plan)
        yield from once_list(plan)
    for plan in plans:
        say = plan.words.say
        cut = {say(Packed.WARP, yarn=plan.kit.warp), say(Packed.CORD)}
        for name, amount in box_list(plan):
            if name in cut or getattr(name, "role", None) is Packed.SPARE_ENDS:
                yield plan.kit.name, name, say(ClassSheet.TIMES, amount=amount, people=people)


def _said(
    sheets: Sequence[Sheet],
    run: tuple[str, int],
    plans: Sequence[Plan],
    rows: Sequence[tuple[str, ...]],
    people: int,
    tables: int,
) -> Iterator[Finding]:
    """Every word of the file, accounted for."""
    words, (name, boxes) = plans[0].words, run
    say = words.say
    wanted = [cell for row in rows for cell in row if not cell.isdigit()]
    for plan in plans:
        wanted.append(say(ClassSheet.FOR_EACH, kit=plan.kit.name))
        wanted += [say(ClassSheet.FOR_ALL, kit=plan.kit.name)] if once_list(plan) else []
    titles = (ClassSheet.CUT, ClassSheet.LESSON, ClassSheet.TIME, ClassSheet.WHAT, ClassSheet.REMARKS, ClassSheet.NAMES)
    wanted += map(say, titles)
    facts = words.listed([say(Prices.KITS, kits=len(plans)), say(Prices.BOXES, boxes=boxes)])
    for number in range(1, len(sheets) + 1):
        wanted += [say(ClassSheet.NAME), say(ClassSheet.PURPOSE, people=people, tables=tables), name, facts, _TILE]
        wanted.append(say(Sheets.NUMBER, number=number, total=len(sheets)))
    found, drop = [], 0.0
    for sheet in sheets:
        texts = (shape for shape in sheet.shapes if isinstance(shape, Text))
        found += [(text.at._replace(y=text.at.y - drop), text.words) for text in texts]
        drop += sheet.height
    yield from account(found, wanted).wrong


def _ticked(sheets: Sequence[Sheet], wanted: int) -> Iterator[Finding]:
    """Boxes to tick: squares of their size."""
    found = 0
    for sheet in sheets:
        for shape in sheet.shapes:
            if isinstance(shape, Curve) and shape.closed and len(shape.points()) == 4:
                left, low, right, high = box_of(shape)
                found += all(abs(side - _TICK) < _NEAR for side in (right - left, high - low))
    if found != wanted:
        yield finding(Lessons.TICKS, found=found, wanted=wanted)


def _placed(sheets: Sequence[Sheet], rows: Sequence[tuple[str, ...]]) -> Iterator[Finding]:
    """The amount of each row stands at its height, after all rows before it."""
    last = -1.0
    lines = list(_lines(sheets))
    for row in rows:
        at = next(
            (down for down, cells in lines if down > last and cells[-1] == row[-1] and row[-2].startswith(cells[-2])),
            None,
        )
        if at is None:
            yield finding(Lessons.ROW, row=", ".join(row))
        else:
            last = at


def _is(cells: Sequence[str], row: Sequence[str]) -> bool:
    """Whether these cells are the first line of a row."""
    return cells[-1] == row[-1] and row[-2].startswith(cells[-2])


def _lines(sheets: Sequence[Sheet]) -> Iterator[tuple[float, list[str]]]:
    """The words of each height with at least two cells, from above, and how far down the file they stand."""
    drop = 0.0
    for sheet in sheets:
        rows: list[list[Text]] = []
        for text in sorted((each for each in sheet.shapes if isinstance(each, Text)), key=lambda each: -each.at.y):
            if rows and rows[-1][0].at.y - text.at.y < _SAME:
                rows[-1].append(text)
            else:
                rows.append([text])
        for row in rows:
            cells = [each.words for each in sorted(row, key=lambda each: each.at.x)]
            if len(cells) > 1:
                yield drop + sheet.height - row[0].at.y, cells
        drop += sheet.height
