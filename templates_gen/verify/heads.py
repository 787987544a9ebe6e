"""What stands round the parts of a sheet: its head, steps, notes and caption, word for word."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import NamedTuple

from layout.drawing.shapes import Text
from layout.drawing.sheet import Sheet
from layout.messages.catalogue import Catalogue, Role
from layout.messages.roles import Marking, Scale
from layout.messages.roles import Sheet as Head
from templates_gen.messages.roles.proof import Furnished, Words
from templates_gen.verify.finding import NOTHING, Finding, Findings, finding, once
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.joining import joining
from templates_gen.verify.printed.furniture import measured, tile_of
from templates_gen.verify.said import Accounted, Word, account, in_lines


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
        beside = [*about.said()[1:], *(joining(pieces, large=True) if joined else [])]
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
    return bool(in_lines(message, found))


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


def why_low(words: Catalogue) -> list[str]:
    """The reasons that a low form may give; its sheets give one of them."""
    return [words.say(Head.TOO_TALL), words.say(Head.LOW_FORM, why=words.say(Marking.TOO_THIN))]


def pieces_named(pieces: Sequence[FoundPart], role: Role) -> list[str]:
    """What the pieces of a part are called by the message of `role`; a part in one piece has no name of that kind."""
    total = len(pieces)
    return [pieces[0].spoken.say(role, number=k, total=total) for k in range(1, total + 1)] if total > 1 else []
