"""How many sheets a run takes: the copies of every part, the names of its files, and all that the run list says."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from math import ceil, fsum
from typing import NamedTuple

from layout.drawing.shapes import Box, Text
from layout.drawing.sheet import Sheet
from layout.messages.roles import Scale
from layout.messages.roles import Sheet as Sheets
from layout.messages.roles.buying import Prices
from layout.messages.roles.run import RunList
from layout.values.numerals import say_number
from templates_gen.messages.roles.proof_run import RunProof
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.run.list_cells import Listed, OnSheet, cells_of
from templates_gen.verify.run.pages import PlacedPage, RunKit
from templates_gen.verify.said import account

_SIDES = 24.0 + 12.2, 2 * 17.0  # mm that gutter and margins take of a sheet, across and up
_GAP = 2.2
_LENGTHS = (Scale.MILLIMETRES, 100), (Scale.INCHES, 4)
_STEPS = (RunList.STEP_SCALES, RunList.STEP_PRINT, RunList.STEP_CUT, RunList.STEP_LAY)


class Stack(NamedTuple):
    """One file: its name, how often each of its pages is printed, and how many there are."""

    name: str
    times: int
    pages: int


def wrong_copies(
    pages: Sequence[PlacedPage], wanted: Mapping[tuple[int, str], int], kits: Sequence[RunKit]
) -> Iterator[Finding]:
    """Where a part of a kit (by its place and the part's name) is not printed as often as there are boxes."""
    counts: Counter[tuple[int, str]] = Counter()
    for page in pages:
        for piece, kit in zip(page.pieces, page.kits, strict=True):
            counts[kit, piece.part.name] += page.times
    for key in sorted({*counts, *wanted}):
        if counts[key] != wanted.get(key, 0):
            kit, part = key
            name = kits[kit].plan.kit.name
            yield finding(RunProof.COPIES, part=part, kit=name, found=counts[key], wanted=wanted.get(key, 0))


def wrong_names(stacks: Iterable[Stack]) -> Iterator[Finding]:
    """Files whose names say another number than their pages are printed."""
    for stack in stacks:
        if not stack.name.endswith(f"-{stack.times}-{'times' if stack.times > 1 else 'time'}.pdf"):
            yield finding(RunProof.NAMED, file=stack.name, times=stack.times)


def wrong_list(
    sheets: Sequence[Sheet],
    rows: Sequence[Listed],
    stacks: Sequence[Stack],
    placed: Sequence[PlacedPage],
    singly: int,
    name: str,
    kits: Sequence[RunKit],
) -> Iterator[Finding]:
    """What the sheets of the run list say otherwise than it is; `singly` is what all would take box by box."""
    words = kits[0].plan.words
    covered = sum(row.last - row.first + 1 for row in rows) + len(sheets)
    if covered != sum(stack.pages for stack in stacks):
        yield finding(RunProof.SHEETS, words=str(covered))
    facts = [words.say(Prices.KITS, kits=len(kits)), words.say(Prices.BOXES, boxes=sum(kit.copies for kit in kits))]
    wanted = list(map(words.say, (*_STEPS, RunList.CARE)))
    columns = (RunList.FILE, RunList.PAGES, RunList.TIMES, RunList.HOLDS, RunList.KITS)
    for number in range(1, len(sheets) + 1):
        wanted += [words.say(RunList.NAME), words.say(RunList.PURPOSE), name, words.listed(facts), "B"]
        wanted.append(words.say(Sheets.NUMBER, number=number, total=len(sheets)))
        wanted += [words.say(role) for role in columns]
        wanted += [words.say(role, length=size) for role, size in _LENGTHS] * 2
        wanted.append(words.say(Scale.CHECK_AND_PRINT))
    for row in rows:
        wanted += [row.file, words.say(RunList.TIMES_PRINTED, times=row.times)]
        if row.first != row.last:
            wanted.append(words.say(RunList.FROM_TO, first=say_number(row.first), last=say_number(row.last)))
    papers = sum(stack.times * stack.pages for stack in stacks)
    wanted.append(words.say(RunList.TOGETHER, sheets=papers, singly=singly))
    if placed:
        wanted.append(_areas(placed, papers, words.say))
    cells = cells_of(sheets, rows, words)
    yield from cells.wrong
    yield from _accounted(sheets, wanted, cells.taken)


def _areas(placed: Sequence[PlacedPage], papers: int, say: object) -> str:
    """The bound and the waste, from what was read: rooms summed by paper."""
    taken: dict[tuple[float, float], list[float]] = {}
    trims, rooms = [], []
    for page in placed:
        wide, high = page.sheet.width - _SIDES[0], page.sheet.height - _SIDES[1]
        rooms.append(page.times * wide * high)
        for piece in page.pieces:
            left, low, right, top = piece.part.box
            taken.setdefault((wide, high), []).append(page.times * (right - left + _GAP) * (top - low + _GAP))
            trims.append(page.times * _area(piece.part.trim))
    sheets = sum(page.times for page in placed)
    least = sum(ceil(fsum(areas) / ((wide + _GAP) * (high + _GAP)) - 1e-9) for (wide, high), areas in taken.items())
    waste = say_number(100 * (1 - fsum(trims) / fsum(rooms)), 1)
    return say(RunList.AREA, least=papers - sheets + least, waste=waste, sheets=sheets)  # type: ignore[operator,no-any-return]


def _area(box: Box) -> float:
    return (box[2] - box[0]) * (box[3] - box[1])


def _accounted(sheets: Sequence[Sheet], wanted: Sequence[str], taken: frozenset[OnSheet]) -> Iterator[Finding]:
    """Every message once and no other, sheet under sheet, beside the cells that were taken already."""
    drop, found = 0.0, []
    for number, sheet in enumerate(sheets):
        texts = [shape for shape in sheet.shapes if isinstance(shape, Text) and (number, shape) not in taken]
        found += [(text.at._replace(y=text.at.y - drop), text.words) for text in texts]
        drop += sheet.height
    yield from account(found, wanted).wrong
