"""The job sheets as their file shows them: every board's picture, list, operations and words against kit and stock."""

from __future__ import annotations

import itertools
import re
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from typing import NamedTuple

from layout.cutting.stock.stock import Stock
from layout.drawing.sheet import Part, Piece, Sheet
from layout.messages.catalogue import Catalogue
from layout.messages.roles import JobSheet
from layout.plan import Plan
from layout.values.numerals import say_number
from templates_gen.messages.roles.proof import Proof
from templates_gen.messages.roles.proof_cut import Board, Job
from templates_gen.verify.cut_parts.job_amounts import Needed, needed_parts, work_on
from templates_gen.verify.cut_parts.job_operations import prove_operations
from templates_gen.verify.cut_parts.job_picture import alike
from templates_gen.verify.cut_parts.job_sentences import OPERATIONS, Choice, amounts, colours, sentences, steps
from templates_gen.verify.cut_parts.job_sheets import BoardSheets
from templates_gen.verify.finding import NOTHING, Finding, Findings, finding
from templates_gen.verify.finding import said as place
from templates_gen.verify.found_parts import found_on
from templates_gen.verify.said import Word, account, squeezed

_LEVEL = 1e-3  # mm
_TITLE_ROWS = 6  # lines that a long title goes on below, at most


def prove_job(plan: Plan, stock: Stock, sheets: Sequence[Sheet], laid: Sequence[Sequence[Piece]]) -> Findings:
    """Every board once, with all parts that kit and stock ask for among them, and all that must be said of each."""
    return prove_listed(*needed_parts(plan, stock), stock, sheets, laid, plan.words)


def prove_listed(
    needed: Sequence[Needed],
    refused: Sequence[str],
    stock: Stock,
    sheets: Sequence[Sheet],
    laid: Sequence[Sequence[Piece]],
    words: Catalogue,
    times: Sequence[int] | None = None,
) -> Findings:
    """The same of all that is `needed`, boards being cut so many `times` each; once where nothing is given."""
    boards: list[BoardSheets] = []
    total = NOTHING
    for number, (sheet, pieces) in enumerate(zip(sheets, laid, strict=True), 1):
        found, wrong = found_on(sheet, pieces, place(Proof.SHEET, number=number))
        total += wrong
        for seen in found:
            if seen.part.name == "job-board":
                boards.append(BoardSheets([seen], stock))
            elif boards:
                boards[-1].seen.append(seen)
    often = [1] * len(boards) if times is None else list(times)
    if total.problems or not boards or len(boards) != len(often):
        return total + (Findings(0.0, (finding(Board.BOARDS, boards=len(boards)),)) if not total.problems else NOTHING)
    asked = Asked(needed, tuple(refused), often, words)
    met, numbers = Counter[str](), dict[int, str]()
    wrong_ones: list[Finding] = []
    for k, board in enumerate(boards, 1):
        if board.picture.wrong:
            wrong_ones += [each.at(place(Board.PICTURE)) for each in board.picture.wrong]
            continue
        wrong_ones += _board(board, k, asked, (met, numbers))
    lacking = {each.title: each.copies for each in needed if met[each.title] != each.copies}
    wrong_ones += [finding(Job.COPIES, title=title, found=met[title], wanted=count) for title, count in lacking.items()]
    return total + Findings(0.0, tuple(each.at(place(Job.SHEET)) for each in wrong_ones))


class Asked(NamedTuple):
    """What all boards must hold, what the stock refuses, how often each board is cut, and the language."""

    needed: Sequence[Needed]
    refused: Sequence[str]
    times: Sequence[int]
    words: Catalogue


def _board(
    board: BoardSheets, number: int, asked: Asked, so_far: tuple[Counter[str], dict[int, str]]
) -> Iterator[Finding]:
    """What is wrong on the sheets of one board; adds its parts to those met `so_far`, and its numbers."""
    met, numbers = so_far
    words, times = asked.words, asked.times[number - 1]
    rows = list(_listed(board, asked.needed, words))
    here: list[Part] = []
    for ring, kind, count in rows:
        here += [kind.part] * count
        if numbers.setdefault(ring, kind.title) != kind.title:
            yield finding(Board.NUMBER)
    yield from _shown(board, rows)
    yield from _instances(board, rows, met, words, alike=any(often > 1 for often in asked.times))
    for _, kind, count in rows:
        met[kind.title] += count * times
    work = work_on(here)
    choices = list(sentences(board.stock, board.picture.taken, work, (number, len(asked.times), times), words))
    choices += [[words.say(JobSheet.NOT_HERE, why=each)] for each in asked.refused]
    choices += [[each] for each in steps(board.stock, words)]
    for name, role in OPERATIONS.items():
        choices += [[words.say(role)], amounts(work, words)[name], colours(board.stock, words)[name]]
    said = board.in_lists
    everything = squeezed("".join(words for _, words in said))
    wanted = [_one_of(choice, said, everything) for choice in choices]
    wanted += [each for _, kind, count in rows for each in (kind.title, *_size_and_times(kind.part, count, words))]
    yield from account(said, wanted).wrong
    yield from prove_operations(board, amounts(work, words), colours(board.stock, words), words)
    yield from _in_order(board, steps(board.stock, words))


def _one_of(choice: Choice, said: Sequence[Word], everything: str) -> str:
    """That of several ways to say a message which is there, as a whole or over several lines; else the first."""
    whole = {words for _, words in said}
    over_lines = (each for each in choice if squeezed(each) in everything)
    return next((each for each in choice if each in whole), next(over_lines, choice[0]))


def _size_and_times(part: Part, count: int, words: Catalogue) -> tuple[str, str]:
    short, long = sorted((part.length, part.height))
    size = words.say(JobSheet.SIZE, length=say_number(long, 1), height=say_number(short, 1))
    return size, words.say(JobSheet.TIMES, count=count)


def _listed(board: BoardSheets, needed: Sequence[Needed], words: Catalogue) -> Iterator[tuple[int, Needed, int]]:
    """Number, kind and count of every entry in the list: a number in a ring, then title, size and how many."""
    for at, row in enumerate(board.rows):
        below = [word for each in board.rows[at + 1 : at + 1 + _TITLE_ROWS] for word in each]
        for k in range(len(row) - 3):
            (_, ring), (place_of, title), (_, size), (_, times) = row[k : k + 4]
            figures = re.search(r"\d{1,6}", times)
            count = int(figures[0]) if figures else 0
            for kind in needed if ring.isdecimal() else ():
                if (size, times) == _size_and_times(kind.part, count, words) and _called(
                    kind.title, title, [words for at, words in below if abs(at.x - place_of.x) < _LEVEL]
                ):
                    yield int(ring), kind, count


def _called(title: str, first: str, below: Sequence[str]) -> bool:
    """Whether a title stands there, in one line or going on below."""
    lines = itertools.accumulate((first, *below), lambda so_far, more: f"{so_far} {more}")
    return any(squeezed(each) == squeezed(title) for each in lines)


def _shown(board: BoardSheets, rows: Sequence[tuple[int, Needed, int]]) -> Iterator[Finding]:
    """Whether the picture shows what the list names, each as often, with its number, in its size."""
    counts = Counter(shown.number for shown in board.picture.shown)
    if counts != Counter({ring: count for ring, _, count in rows}) or len({ring for ring, *_ in rows}) != len(rows):
        yield finding(Board.PARTS).at(place(Board.PICTURE))
        return
    kinds = {ring: kind.part for ring, kind, _ in rows}
    if not all(alike(each, (kinds[each.number].length, kinds[each.number].height)) for each in board.picture.shown):
        yield finding(Board.PARTS).at(place(Board.PICTURE))


def _instances(
    board: BoardSheets,
    rows: Sequence[tuple[int, Needed, int]],
    met: Mapping[str, int],
    words: Catalogue,
    *,
    alike: bool,
) -> Iterator[Finding]:
    """What is said on the board: how many of a part, or which of many, what the square is for, and that room is free.

    Each at most once for each part; where a part is small, nothing but its ring, and so for one of many where boards
    are `alike` and cut several times.
    """
    allowed = [words.say(JobSheet.SQUARE), words.say(JobSheet.FREE)]
    for _, kind, count in rows:
        first = met[kind.title]
        if alike and kind.copies > 1:
            continue
        for which in range(first + 1, first + count + 1):
            one, many = words.say(JobSheet.TIMES, count=1), (which, kind.copies)
            allowed.append(one if kind.copies == 1 else words.say(JobSheet.WHICH, which=many[0], count=many[1]))
    left = list(board.on_board)
    for each in allowed:
        word = next((word for word in left if word[1] == each), None)
        if word:
            left.remove(word)
    yield from account(left, (), allowed[:1]).wrong


def _in_order(board: BoardSheets, wanted: Sequence[str]) -> Iterator[Finding]:
    """Whether each thing to do has its number in front of it."""
    for number, step in enumerate(wanted, 1):
        starts = [row for row in board.rows if len(row) > 1 and row[0][1] == str(number)]
        if not any(squeezed(step).startswith(squeezed(row[1][1])) for row in starts):
            yield finding(Job.STEP, number=number)
