"""What sheets must say of how pieces are joined: over what distance, and how far that may be off; computed again.

A joint is laid with usual care to a quarter of a mm in any direction and to half a degree. The errors of joints add up
by their squares, twice over for 95 of 100, and pieces turned against each other make the line from end to end shorter.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from itertools import combinations, product
from math import pi

from layout.drawing.shapes import Point
from layout.messages.catalogue import Figure
from layout.messages.roles import Sheet
from templates_gen.verify import LIMIT
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.said import in_lines

_OFF, _TURN = 1 / 4, pi / 360  # mm, and half a degree
_READ = (0.0, -2e-6, 2e-6)  # mm: what was read so close to the middle of two figures may be rounded to either
_CLOSE = (0.0, -1e-5, 1e-5)  # the same of a tolerance, which is rounded up


def joining(pieces: Sequence[FoundPart], *, large: bool = False) -> list[str]:
    """The sentence on how the pieces of a part are joined, as it stands on its sheets; nothing of a part in one piece.

    Where it stands nowhere it is what it should be. Of parts that share their sheets it may be that of the one which
    is in the most pieces. `large` crosses stand beside the part.
    """
    if len(pieces) < 2:
        return []
    sentences = list(dict.fromkeys(_sentences(pieces, large=large)))
    first = pieces[0]
    there = [first.outside, *(words for _, words in first.words_alone)]
    return [next((each for each in sentences if any(in_lines(each, words) for words in there)), sentences[0])]


def _sentences(pieces: Sequence[FoundPart], *, large: bool) -> Iterator[str]:
    """What may be said, the likeliest first."""
    say = pieces[0].spoken.say
    left, right = _measured(pieces)
    long = right.x - left.x
    for count, read, close in product(sorted({len(pieces), pieces[0].most}), _READ, _CLOSE):
        tenths = -((-10 * (_may_be_off(long, count, _lever(pieces)) + close)) // 1)
        proof = {"distance": Figure(f"{long + read:.1f}"), "within": Figure(f"{tenths / 10:.1f}")}
        yield say(Sheet.IN_PIECES, count=count, **proof) if large else say(Sheet.JOIN, **proof)


def _measured(pieces: Sequence[FoundPart]) -> tuple[Point, Point]:
    """The outermost crosses that lie level with each other, left and right; those of joints stand on two pieces."""
    shown = Counter(point for seen in pieces for point in set(seen.part.datum))
    single = sorted((point for point, times in shown.items() if times == 1), key=lambda point: point.x)
    levels = [(one, other) for one, other in combinations(single, 2) if abs(one.y - other.y) < LIMIT]
    return max(levels, key=lambda pair: pair[1].x - pair[0].x)


def _lever(pieces: Sequence[FoundPart]) -> float:
    """How far the row of these crosses lies beside the middle of the crosses of a joint."""
    joint = [point for point in pieces[0].part.datum if point in pieces[1].part.datum]
    return _measured(pieces)[0].y - sum(point.y for point in joint) / len(joint)


def _may_be_off(long: float, count: int, lever: float) -> float:
    """By how much `count` pieces together may be off their length."""
    beside = abs(_TURN * lever)
    off: float = (4 * (count - 1) * (_OFF**2 / 2 + beside**2)) ** 0.5
    if count == 2:
        off = min(off, _OFF + beside)  # a joint alone is off by both at most
    apart = sum(other - one for one, other in combinations(range(count), 2))
    return off + long / 2 * _TURN**2 * apart / count**2
