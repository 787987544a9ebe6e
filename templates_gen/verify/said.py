"""Words that were read, each accounted for: what must be said is there once, what may be said at most once, and nothing
else stands there. So another value of a message, or another message in its place, is never passed over.

A message may be broken into lines, which are taken together from top to bottom.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field

from layout.drawing.shapes import Point, Text
from layout.drawing.sheet import Sheet
from layout.messages.english import ENGLISH
from layout.messages.roles import Sheet as Head
from layout.messages.roles import Strip
from templates_gen.messages.roles.proof import Words
from templates_gen.verify.finding import Finding, Findings, finding, once
from templates_gen.verify.found_parts import FoundPart

_SAME = 0.01  # what was read at places this close, in mm, is one and the same
Word = tuple[Point, str]


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


def account(found: Sequence[Word], wanted: Iterable[str], allowed: Iterable[str] = ()) -> Accounted:
    """Finds every one of `wanted`, and of `allowed` what is there, among `found`; figures alone are left to others."""
    accounted, rest = Accounted(), sorted(found, key=lambda word: (-word[0].y, word[0].x))
    must = list(wanted)
    may = [each for each in allowed if each not in must]
    broken = []
    for message in (*must, *may):
        whole = next((word for word in rest if word[1] == message), None)
        if whole:
            rest.remove(whole)
            accounted.places.setdefault(message, []).append(whole[0])
        else:
            broken.append(message)
    for message in broken:
        if lines := _lines(message, rest):
            accounted.places.setdefault(message, []).append(lines[0][0])
            rest = [word for word in rest if word not in lines]
        elif message in must:
            accounted.wrong.append(finding(Words.NOWHERE, words=message))
    accounted.wrong += [finding(Words.OTHER, words=words) for _, words in rest if not words.isdigit()]
    return accounted


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


def head_of(sheet: Sheet, pieces: Sequence[FoundPart]) -> str:
    """The head of a sheet, downward and without spaces: what stands under the largest words, outside all parts."""
    texts = [shape for shape in sheet.shapes if isinstance(shape, Text) and not shape.angle]
    outside = [text for text in texts if not any(seen.holds(seen.lie.back(text.at)) for seen in pieces)]
    if not outside:
        return ""
    title = max(outside, key=lambda text: (text.size, text.at.y))
    column = [text for text in outside if abs(text.at.x - title.at.x) < _SAME]
    return squeezed("".join(text.words for text in sorted(column, key=lambda text: -text.at.y)))


def check_heads(
    pieces: Sequence[FoundPart],
    title: str,
    warp: Mapping[str, str],
    notes: Sequence[str],
    *,
    low: bool = False,
    joined: bool = True,
) -> Findings:
    """The head of every piece's sheet: kit, part, sett, yarns, counts, number and notes, and nothing else.

    `warp` is the warp in words; a `low` form says why it is low, and a part in pieces how they are `joined`.
    """
    wrong = [
        finding(Words.HEAD, title=title).at(seen.where)
        for seen in pieces
        if not any(
            seen.head in (said, said + _FOOT)
            for said in _heads(seen, title, warp, notes, pieces if joined else [seen], low=low)
        )
    ]
    return Findings(0.0, tuple(once(wrong)))


def check_head(pieces: Sequence[FoundPart], lines: Sequence[str]) -> Findings:
    """The head of every piece's sheet, where no kit stands in it: these lines and nothing else."""
    said = squeezed("".join(lines))
    wrong = [
        finding(Words.HEAD, title=lines[0]).at(seen.where) for seen in pieces if seen.head not in (said, said + _FOOT)
    ]
    return Findings(0.0, tuple(once(wrong)))


_FOOT = squeezed(ENGLISH.say(Head.PRINTING) + ENGLISH.say(Head.KNIFE))


def _heads(
    seen: FoundPart,
    title: str,
    warp: Mapping[str, str],
    notes: Sequence[str],
    pieces: Sequence[FoundPart],
    *,
    low: bool,
) -> list[str]:
    """What the head may say, without spaces."""
    number, total = seen.number
    said = [
        warp["name"],
        ENGLISH.say(Head.PART, part=title, sett=warp["sett"]),
        ENGLISH.say(Head.YARNS, warp=warp["warp"], weft=warp["weft"], counts=warp["counts"]),
        ENGLISH.say(Head.NUMBER, number=number, total=total),
        *notes,
    ]
    xs = [point.x for each in pieces for point in each.part.datum]
    distance = f"{max(xs) - min(xs):.1f}"
    joined = [ENGLISH.say(Head.IN_PIECES, count=len(pieces), distance=distance)] if len(pieces) > 1 else []
    reasons = (ENGLISH.say(Head.LOW_FORM, why=ENGLISH.say(role)) for role in (Strip.TOO_THIN, Strip.CLOSES))
    why = [ENGLISH.say(Head.TOO_TALL), *reasons] if low else []
    return [squeezed("".join([*said, *each, *joined])) for each in ((), *((one,) for one in why))]


def pieces_named(pieces: Sequence[FoundPart]) -> list[str]:
    """What the pieces of a part are called; a part in one piece has no name beside it."""
    total = len(pieces)
    return [ENGLISH.say(Head.PIECE, number=k, total=total) for k in range(1, total + 1)] if total > 1 else []
