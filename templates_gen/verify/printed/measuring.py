"""What a frame check says of measuring the pull of one thread, and its table, from the kit's numbers alone."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from fractions import Fraction

from layout.kit.kit import Kit
from layout.messages.catalogue import Catalogue
from layout.messages.roles import Check
from layout.values.numerals import say_number, say_root
from templates_gen.messages.roles.proof_printed import Frame
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.printed.pull import stretch_of, tex_of
from templates_gen.verify.printed.ruled import ruled
from templates_gen.verify.said import Word
from templates_gen.verify.tight import woven_at

_PULLS = (1, 2, 3, 5, 8, 12)
_SIXTIETH = math.atan2(1 / 60, 1 / 2)
"""How steeply a thread hangs that dips by a sixtieth of its free length."""
_GRAVITY = 9.80665
_OUNCE = 28.349523125
"""Standard gravity in m/s2 (CGPM 1901); an avoirdupois ounce in g (1959)."""
_SAME = 0.01


def measuring_words(kit: Kit, words: Catalogue) -> str:
    """How the pull of one thread is measured."""
    if tex_of(kit) is None:
        return words.say(Check.MEASURE_UNWEIGHED)
    high = woven_at(kit)
    return words.say(Check.MEASURE_HOW, length=ruled(high.mm, words, inches=high.imperial))


def table_rows(kit: Kit, words: Catalogue) -> list[list[str]]:
    """The rows of the table, each with its name first; none where the weight of the warp is not known."""
    tex = tex_of(kit)
    if tex is None:
        return []
    ounces = kit.frame.outer_width.imperial
    grams = [_grams(pull, stretch_of(kit, tex)[1]) / (_OUNCE if ounces else 1) for pull in _PULLS]
    high = woven_at(kit).mm / 1000
    weights = words.say(Check.ROW_OUNCES if ounces else Check.ROW_GRAMS)
    return [
        [words.say(Check.ROW_PULL), *map(str, _PULLS)],
        [weights, *(words.figure(say_number(each, 2 if ounces else 0)) for each in grams)],
        [words.say(Check.ROW_HERTZ), *(say_root(Fraction(pull * 10**6) / (tex * 4 * high**2), 0) for pull in _PULLS)],
    ]


def _grams(pull: int, stretch: float) -> float:
    """The weight under which a thread dips by a sixtieth: its force is the pull at rest and that of its stretch."""
    force = pull + stretch * (1 / math.cos(_SIXTIETH) - 1)
    return 2 * force * math.sin(_SIXTIETH) / _GRAVITY * 1000


def rows_and_rest(words: Sequence[Word], rows: Sequence[Sequence[str]]) -> tuple[list[Finding], list[Word]]:
    """What is wrong with a table of these `rows` among the words, and the words that are none of it.

    A row is its name and what stands on the same line to the right of it. Rows follow each other downward.
    """
    rest, heights, wrong = list(words), list[float](), list[Finding]()
    for name, *figures in rows:
        found = next((word for word in rest if word[1] == name), None)
        if found is None:
            wrong.append(finding(Frame.NO_ROW, name=name))
            continue
        line = sorted(_beside(found, rest), key=lambda word: word[0].x)
        if [said for _, said in line] != figures:
            wrong.append(finding(Frame.ROW, name=name, figures=", ".join(figures)))
        rest = [word for word in rest if word not in (found, *line)]
        heights.append(found[0].y)
    if heights != sorted(heights, reverse=True):
        wrong.append(finding(Frame.ORDER))
    return wrong, rest


def _beside(name: Word, words: Sequence[Word]) -> Iterator[Word]:
    return (word for word in words if word[0].x > name[0].x and abs(word[0].y - name[0].y) < _SAME)
