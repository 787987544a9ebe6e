"""Words that were read, each accounted for: what must be said is there once, what may be said at most once, and nothing
else stands there. So another value of a message, or another message in its place, is never passed over.

A message may be broken into lines, which are taken together from top to bottom. What a proof says in English is
looked for in the language of the sheets.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from typing import NamedTuple

from layout.drawing.shapes import Point, Text
from layout.drawing.sheet import Sheet
from layout.messages.catalogue import Catalogue, Figure, Role
from layout.messages.roles import Marking, Scale
from layout.messages.roles import Sheet as Head
from templates_gen.messages.roles.proof import Furnished, Words
from templates_gen.verify.finding import NOTHING, Finding, Findings, finding, once
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.furniture import measured, tile_of

_SAME = 0.01  # what was read at places this close, in mm, is one and the same
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
    usual = _accounted_in(found, said, must, (_whole, _in_lines))
    if not usual.wrong:
        return usual
    return min(usual, _accounted_in(found, said, must, (_broken, _whole, _in_lines)), key=lambda each: len(each.wrong))


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


def _in_lines(message: str, found: Sequence[Word]) -> Sequence[Word]:
    """The first lines that make up the message, in one row after the other or in a column."""
    return _lines(message, found) or _lines(message, _by_column(found))


def _broken(message: str, found: Sequence[Word]) -> Sequence[Word]:
    """The same of a message that stands nowhere in one line."""
    return [] if _whole(message, found) else _in_lines(message, found)


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
    for first in range(len(found)):
        lines: list[Word] = []
        left = squeezed(message)
        for word in found[first:]:
            line = squeezed(word[1])
            if line and left.startswith(line):
                lines.append(word)
                left = left[len(line) :]
            elif not lines or not word[1].isdigit():
                break
        if lines and not left:
            return lines
    return []


def squeezed(words: str) -> str:
    """Words without the spaces between them: a line may be broken between two words or within a long one."""
    return "".join(words.split())


def outside(sheet: Sheet, pieces: Sequence[FoundPart]) -> tuple[Word, ...]:
    """The words of a sheet outside all parts, and where they begin."""
    texts = [shape for shape in sheet.shapes if isinstance(shape, Text)]
    return tuple((t.at, t.words) for t in texts if not any(seen.holds(seen.lie.back(t.at)) for seen in pieces))


class About(NamedTuple):
    """What the sheets of a part say about it, beside the head: each once, in any place."""

    title: str
    purpose: str = ""
    steps: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()
    beside: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    may: tuple[str, ...] = ()  # said where there is room
    numbered: str = ""  # what stands in the place of the sheet's number

    def said(self) -> tuple[str, ...]:
        """All of it, message by message."""
        purpose = (self.purpose,) if self.purpose else ()
        return (self.title, *purpose, *self.steps, *self.notes, *self.beside, *self.cautions)


def check_heads(
    pieces: Sequence[FoundPart],
    title: str,
    warp: Mapping[str, str],
    notes: Sequence[str],
    *,
    low: bool = False,
    joined: bool = True,
    more: About | None = None,
) -> Findings:
    """What every piece's sheet says outside of it: kit, name, sett, number, notes, scales, and nothing else.

    `warp` is the warp in words; a `low` form says why it is low, and a part in pieces how they are `joined`. `more` is
    what else is said, its own title and notes left out. Pieces on the sheets of a print run have no such heads.
    """
    if all(seen.in_run for seen in pieces):
        return NOTHING
    more = more or About(title)
    about = more._replace(title=title, notes=(*notes, *more.notes))
    wrong = []
    for seen in pieces:
        beside = [*about.said()[1:], *(_joining(pieces) if joined else [])]
        why = why_low(pieces[0].spoken) if low else ()
        ways = [[*beside, *reason] for reason in _each(why)]
        found = [_said_of(seen, title, warp, each, about) for each in ways]
        wrong += [each.at(seen.where) for each in min(found, key=len)]
    return Findings(0.0, tuple(once(wrong)))


_RING_FROM, _RING_TO, _RING_UP = 2.0, 7.0, 2.0  # where the number of a step begins before its words, in mm


def unnumbered(steps: Sequence[str], found: Accounted, words: Sequence[Word]) -> Iterator[Finding]:
    """Steps that do not stand beside their own number, counted from one."""
    for number, step in enumerate(steps, 1):
        for x, y in found.places.get(step, [])[:1]:
            beside = (at for at, said in words if said == str(number) and abs(at.y - y) < _RING_UP)
            if not any(_RING_FROM < x - at.x < _RING_TO for at in beside):
                yield finding(Words.STEP, words=step, number=number)


def check_caption(sheet: Sheet, parts: Sequence[str], spoken: Catalogue, *, printing: bool) -> Findings:
    """What a measured sheet says over its scales: how to print it, where the reader prints it, and nothing of it else.

    `parts` are the names of those that lie on it, `spoken` is the language of the sheet.
    """
    if not any(map(measured, parts)):
        return Findings(0.0, ())
    found = sorted(((t.at, t.words) for t in sheet.shapes if isinstance(t, Text)), key=lambda word: -word[0].y)
    with_print, without = (spoken.say(role) for role in (Scale.CHECK_AND_PRINT, Scale.CHECK))
    wanted, other = (with_print, "") if printing else (without, with_print)
    wrong = not _stands(wanted, found) or bool(other and _stands(other, found))
    return Findings(0.0, (finding(Furnished.CAPTION, words=wanted),) if wrong else ())


def _stands(message: str, found: Sequence[Word]) -> bool:
    """Whether a message stands there, in one line or in several, alone in its rows or in a column."""
    return bool(_in_lines(message, found))


def _said_of(
    seen: FoundPart, title: str, warp: Mapping[str, str], beside: Sequence[str], about: About
) -> list[Finding]:
    """What a piece's sheet says wrongly: its head is whole, and all else stands there or on a sheet of words.

    Each step stands beside its number, wherever it is said; what is only explained may be left out.
    """
    head = [title, warp["name"], warp["facts"]]
    number = {"number": seen.number[0], "total": seen.number[1]}
    here = _accounted(seen, [*head, about.numbered or seen.spoken.say(Head.NUMBER, **number)], [*beside, *about.may])
    missing = [words for words in dict.fromkeys(beside) if words not in here.places]
    wrong = [*here.wrong, *unnumbered(about.steps, here, seen.outside)]
    for order, outside_there in seen.words_alone if missing else ():
        number = {"number": order, "total": seen.number[1]}
        tile = tile_of(seen.part.name)
        wanted = [*head, seen.spoken.say(Head.NUMBER, **number), *([] if tile.isdigit() or not tile else [tile])]
        there = account(outside_there, wanted, [*beside, *about.may], seen.spoken)
        if not there.wrong and not list(unnumbered(about.steps, there, outside_there)):
            missing = [words for words in missing if words not in there.places]
    return wrong + [finding(Words.NOWHERE, words=words) for words in missing]


def check_head(pieces: Sequence[FoundPart], lines: Sequence[str]) -> Findings:
    """What every piece's sheet says outside of it, where no kit stands in it: these lines and nothing else."""
    wrong = [each.at(seen.where) for seen in pieces for each in _accounted(seen, lines, ()).wrong]
    return Findings(0.0, tuple(once(wrong)))


def _accounted(seen: FoundPart, wanted: Sequence[str], allowed: Sequence[str]) -> Accounted:
    """The words outside of a piece, with those that every sheet carries."""
    tile = tile_of(seen.part.name)
    furniture = [*_scales(seen.spoken), *([] if tile.isdigit() or not tile else [tile])]
    captions = [seen.spoken.say(role) for role in (Scale.CHECK, Scale.CHECK_AND_PRINT)]
    if not measured(seen.part.name):
        furniture, captions = furniture[len(_scales(seen.spoken)) :], []
    found = [
        account(seen.outside, [*wanted, *furniture, *caption], allowed, seen.spoken) for caption in _each(captions)
    ]
    return min(found, key=lambda each: len(each.wrong))


def _each(choices: Sequence[str]) -> list[list[str]]:
    """Each choice alone; nothing once where there is none."""
    return [[choice] for choice in choices] or [[]]


def _scales(words: Catalogue) -> list[str]:
    """What stands at the ends of the check scales, each twice on a sheet."""
    return 2 * [words.say(Scale.MILLIMETRES, length=100), words.say(Scale.INCHES, length=4)]


def _joining(pieces: Sequence[FoundPart]) -> list[str]:
    """How the pieces of a part are joined; nothing where it is in one piece."""
    xs = [point.x for each in pieces for point in each.part.datum]
    distance = Figure(f"{max(xs) - min(xs):.1f}")
    return [pieces[0].spoken.say(Head.IN_PIECES, count=len(pieces), distance=distance)] if len(pieces) > 1 else []


def why_low(words: Catalogue) -> list[str]:
    """The reasons that a low form may give; its sheets give one of them."""
    return [words.say(Head.TOO_TALL), words.say(Head.LOW_FORM, why=words.say(Marking.TOO_THIN))]


def pieces_named(pieces: Sequence[FoundPart], role: Role) -> list[str]:
    """What the pieces of a part are called by the message of `role`; a part in one piece has no name of that kind."""
    total = len(pieces)
    return [pieces[0].spoken.say(role, number=k, total=total) for k in range(1, total + 1)] if total > 1 else []
