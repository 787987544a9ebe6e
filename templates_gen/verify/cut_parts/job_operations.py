"""The operations on a job sheet: their order, signs, amounts and colours, and the blanks to fill in."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Region
from layout.messages.catalogue import Catalogue
from layout.messages.roles import JobSheet
from templates_gen.messages.roles.proof_cut import Job
from templates_gen.verify.boxes import box_of
from templates_gen.verify.cut_parts.job_sentences import OPERATIONS, Choice
from templates_gen.verify.cut_parts.job_sheets import BoardSheets
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.found_parts import FoundPart

_LEVEL = 1e-3  # mm
_BLANKS, _UNDER = 3, 1.5  # lines to write on in a row, and how far under its baseline they lie at most
_SWATCHES = {"engrave": (1, 10.0, 4.4), "score": (4, 1.9, 1.6), "cut": (1, 10.0, 1.6)}
"""How many boxes the sign of an operation has, how wide and how high in mm: stated again on purpose."""


def prove_operations(
    board: BoardSheets, much: Mapping[str, Choice], colour: Mapping[str, Choice], words: Catalogue
) -> Iterator[Finding]:
    """Whether the operations stand in their order, each with its number, sign, amount and colour, and three blanks."""
    places, apart = list[float](), _blanks_apart(board, words)
    for number, (name, role) in enumerate(OPERATIONS.items(), 1):
        found = [
            (k, row)
            for k, row in enumerate(board.rows)
            if [each for _, each in row][:2] == [str(number), words.say(role)]
        ]
        if len(found) != 1:
            yield finding(Job.OPERATION, name=words.say(role))
            continue
        k, row = found[0]
        there = [each for _, each in (*row, *(board.rows[k + 1] if k + 1 < len(board.rows) else []))]
        if not any(each in there for each in much[name]):
            yield finding(Job.AMOUNT, name=words.say(role), wanted=much[name][0])
        if not any(each in there for each in colour[name]):
            yield finding(Job.COLOUR, name=words.say(role), colour=board.stock.operations[name].colour)
        seen = next(seen for seen in board.seen if row[1] in list(seen.words()))
        places.append(k)
        if not _sign(seen, name, row[1][0]):
            yield finding(Job.SWATCH, name=words.say(role))
        if not apart and _blanks_under(seen, row[1][0].y) != _BLANKS:
            yield finding(Job.BLANKS, name=words.say(role))
    if places != sorted(places):
        yield finding(Job.OPERATION, name=words.say(JobSheet.ENGRAVE))


def _blanks_under(seen: FoundPart, y: float) -> int:
    """How many lines to write on lie just under a baseline."""
    lines = [path for path in seen.lines() if path.pen is Pen.HELP and y - _UNDER < path.start.y < y]
    return sum(1 for path in lines if abs(path.start.y - path.steps[0].end.y) < _LEVEL)


def _blanks_apart(board: BoardSheets, words: Catalogue) -> bool:
    """Whether each setting has a row of its own, with a blank for every operation."""
    settings = [words.say(role) for role in (JobSheet.POWER, JobSheet.SPEED, JobSheet.PASSES)]
    found = [
        _blanks_under(seen, at.y) == _BLANKS for seen in board.seen for at, said in seen.words() if said in settings
    ]
    return found == [True] * len(settings)


def _sign(seen: FoundPart, name: str, at: Point) -> bool:
    """Whether the sign of an operation stands to the left of its name, as high."""
    count, wide, high = _SWATCHES[name]
    boxes = [box_of(s.contours[0]) for s in seen.shapes() if isinstance(s, Region) and s.pen is _SWATCH_PENS[name]]
    row = [box for box in boxes if box[1] < at.y + 1.5 < box[3] or box[1] < at.y + 0.7 < box[3]]
    row = [box for box in row if box[2] < at.x]
    return len(row) == count and all(
        abs(box[2] - box[0] - wide) < 1e-3 and abs(box[3] - box[1] - high) < 1e-3 for box in row
    )


_SWATCH_PENS = {"engrave": Pen.SWATCH_ENGRAVE, "score": Pen.SWATCH_SCORE, "cut": Pen.SWATCH_CUT}
