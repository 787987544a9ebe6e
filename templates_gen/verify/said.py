"""Words that were read, each accounted for: what must be said is there once, what may be said at most once, and nothing
else stands there. So another value of a message, or another message in its place, is never passed over.

A message may be broken into lines, which are taken together from top to bottom. What a proof says in English is
looked for in the language of the sheets.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field
from functools import lru_cache

from layout.drawing.shapes import Point, Text
from layout.drawing.sheet import Sheet
from layout.messages.catalogue import Catalogue
from templates_gen.messages.roles.proof import Words
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.found_parts import FoundPart

_SAME = 0.01  # what was read at places this close, in mm, is one and the same
_KEPT = 4096  # words whose spaces are taken out once: sheets of one language say much the same
_COLUMN = 0.1  # lines that begin so close to each other, in mm, stand in one column
Word = tuple[Point, str]
_Taking = Callable[[str, Sequence[Word]], Sequence[Word]]


def words_on(pieces: Sequence[FoundPart]) -> list[Word]:
    """The words of all pieces of a part, once where two pieces show the same ones; none where words are outlines."""
    found: list[Word] = []
    for seen in pieces:
        for at, words in seen.words():
            if not any(words == said and abs(at.x - x) + abs(at.y - y) < _SAME for (x, y), said in found):
                found.append((at, words))
    return found


@dataclass(slots=True)
class Accounted:
    """Where each message begins that was found, and what is wrong."""

    places: dict[str, list[Point]] = field(default_factory=dict)
    wrong: list[Finding] = field(default_factory=list)


def account(
    found: Sequence[Word], wanted: Iterable[str], allowed: Iterable[str] = (), words: Catalogue | None = None
) -> Accounted:
    """Finds every one of `wanted`, and of `allowed` what is there, among `found`; figures alone are left to others.

    With `words` each message is looked for in that language; its place is noted by what it was asked as. What is said
    in one line is taken first; where that takes a line of a longer message, the longer ones are.
    """
    must = list(wanted)
    may = [each for each in allowed if each not in must]
    again = words.again if words else str
    said = [(message, again(message)) for message in (*must, *may)]
    usual = _accounted_in(found, said, must, (_whole, in_lines))
    if not usual.wrong:
        return usual
    return min(usual, _accounted_in(found, said, must, (_broken, _whole, in_lines)), key=lambda each: len(each.wrong))


def _accounted_in(
    found: Sequence[Word], said: Sequence[tuple[str, str]], must: Sequence[str], ways: Sequence[_Taking]
) -> Accounted:
    """The same, looking for messages in one way after the other."""
    accounted, rest = Accounted(), sorted(found, key=lambda word: (-word[0].y, word[0].x))
    left = list(said)
    for lines_of in ways:
        missing = []
        for message, text in left:
            if lines := lines_of(text, rest):
                accounted.places.setdefault(message, []).append(lines[0][0])
                for line in lines:
                    rest.remove(line)
            else:
                missing.append((message, text))
        left = missing
    accounted.wrong += [finding(Words.NOWHERE, words=text) for message, text in left if message in must]
    accounted.wrong += [finding(Words.OTHER, words=words) for _, words in rest if not words.isdigit()]
    return accounted


def _whole(message: str, found: Sequence[Word]) -> Sequence[Word]:
    """The first line that is the whole message."""
    return next(([word] for word in found if word[1] == message), [])


def in_lines(message: str, found: Sequence[Word]) -> Sequence[Word]:
    """The first lines that make up the message, in one row after the other or in a column."""
    return _lines(message, found) or _lines(message, _by_column(found))


def _broken(message: str, found: Sequence[Word]) -> Sequence[Word]:
    """The same of a message that stands nowhere in one line."""
    return [] if _whole(message, found) else in_lines(message, found)


def _by_column(found: Iterable[Word]) -> list[Word]:
    """Column by column, downward: lines of two columns stand side by side. Rounding parts no column."""
    columns: list[list[Word]] = []
    for word in sorted(found, key=lambda word: word[0].x):
        if not columns or word[0].x - columns[-1][0][0].x > _COLUMN:
            columns.append([])
        columns[-1].append(word)
    return [word for column in columns for word in sorted(column, key=lambda word: -word[0].y)]


def _lines(message: str, found: Sequence[Word]) -> list[Word]:
    """The lines that make up `message`, from top to bottom, or none; figures between them may belong elsewhere."""
    whole = plain(message)
    bare = [plain(words) for _, words in found]
    for first, begun in enumerate(bare):
        if not begun or not whole.startswith(begun):
            continue
        lines: list[Word] = []
        at = 0
        for word, line in zip(found[first:], bare[first:], strict=True):
            if line and whole.startswith(line, at):
                lines.append(word)
                at += len(line)
                at += whole.startswith(" ", at)
            elif not word[1].isdigit():
                break
        if at == len(whole):
            return lines
    return []


@lru_cache(_KEPT)
def plain(words: str) -> str:
    """Words with one plain space between any two: "10 42" is not "1042"."""
    return " ".join(words.split())


@lru_cache(_KEPT)
def squeezed(words: str) -> str:
    """Words without the spaces between them: a line may be broken between two words or within a long one."""
    return "".join(words.split())


def outside(sheet: Sheet, pieces: Sequence[FoundPart]) -> tuple[Word, ...]:
    """The words of a sheet outside all parts, and where they begin."""
    texts = [shape for shape in sheet.shapes if isinstance(shape, Text)]
    return tuple((t.at, t.words) for t in texts if not any(seen.holds(seen.lie.back(t.at)) for seen in pieces))
