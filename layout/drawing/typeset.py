"""Setting words: the one type scale, alignment and line breaks. Knows a font only by its metrics."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Sequence

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Text
from layout.drawing.sheet import PT

NAME = 22 * PT
FIGURE = 13 * PT
LEAD = 9.5 * PT
SMALL = 7.5 * PT
"""The type scale, mm to the em: names of sheets, figures of the kit, sentences, and numbers and words on drawings.

Nothing is smaller than SMALL, and there is no fifth size.
"""

LEADING = 1.45
"""Distance of baselines in a paragraph, in ems: two accents on a capital stay clear of the tails above them."""

_LEADINGS = {NAME: 8.4, FIGURE: 6.2, LEAD: 4.6, SMALL: 3.6}  # of plain words

_TALL_ALONE = "ĥĺѮѼѽѾҊҐ"
"""Letters that rise as far as a capital with an accent, though they are not made up of the two."""


def left(words: str, size: float, at: Point) -> Text:
    """`words` that begin at `at`."""
    return Text(at, size, words)


def right(words: str, size: float, at: Point, metrics: FontMetrics) -> Text:
    """`words` that end at `at`."""
    return Text(Point(at.x - metrics.width(words, size), at.y), size, words)


def centred(words: str, size: float, at: Point, metrics: FontMetrics) -> Text:
    """`words` with their middle at `at`."""
    return Text(Point(at.x - metrics.width(words, size) / 2, at.y), size, words)


def is_tall(words: str) -> bool:
    """Whether any letter rises far above a plain capital: a capital with an accent, or a letter with two."""
    if words.isascii():
        return False  # nearly always: no letter has an accent
    if any(letter in _TALL_ALONE for letter in words):
        return True
    marks = ((letter, len(unicodedata.normalize("NFD", letter)) - 1) for letter in words)
    return any(count > 1 or (count == 1 and not letter.islower()) for letter, count in marks)


def wrap(words: str, size: float, width: float, metrics: FontMetrics, pen: Pen = Pen.TEXT) -> list[str]:
    """`words` in the letters of `pen`, broken into lines of at most `width` mm, between words only.

    A figure and its unit stay on one line, and so do signs that stand apart from their word, as in French. What is
    wider than a line all the same is broken: at its spaces, and a single word, such as a name of a kit, within.
    """
    line = " ".join(words.split())
    if line and metrics.width(line, size, pen) <= width:
        return [line]  # nearly always
    lines: list[str] = []
    for piece in (piece for whole in _inseparable(words) for piece in _chopped(whole, size, width, metrics, pen)):
        longer = f"{lines[-1]} {piece}" if lines else piece
        if lines and metrics.width(longer, size, pen) <= width:
            lines[-1] = longer
        else:
            lines.append(piece)
    return lines


def longest_word(words: str, size: float, metrics: FontMetrics, pen: Pen = Pen.TEXT) -> float:
    """The width in mm below which `wrap` would have to part what belongs together."""
    return max((metrics.width(piece, size, pen) for piece in _inseparable(words)), default=0.0)


_TO_THE_RIGHT = ("«", "„", "(", "×")
_TO_THE_LEFT = re.compile(r"[:;!?»%×)][:;!?»%.,)]*")
_FIGURES = re.compile(r"[^\w\s]*\d[\d.,/]*[½¼¾⅛⅜⅝⅞]?")
_AFTER_FIGURES = re.compile(r"(mm|cm|dm|m|in|po|ft|yd|g|kg|oz|N|lb|Hz|\d+/\d+|\d{3}([.,]\d+)?)[^\w\s]*")
"""What follows figures and belongs to them: a unit, the fraction of a mixed number, the next three figures."""


def _inseparable(words: str) -> list[str]:
    """`words` in pieces between which a line may end."""
    pieces: list[str] = []
    last = ""
    for word in words.split():
        to_last = _TO_THE_LEFT.fullmatch(word) or last.endswith(_TO_THE_RIGHT)
        if pieces and (to_last or (_FIGURES.fullmatch(last) and _AFTER_FIGURES.fullmatch(word))):
            pieces[-1] += f" {word}"
        else:
            pieces.append(word)
        last = word
    return pieces


def _chopped(word: str, size: float, width: float, metrics: FontMetrics, pen: Pen) -> list[str]:
    if metrics.width(word, size, pen) <= width:
        return [word]
    if " " in word:
        return [piece for each in word.split() for piece in _chopped(each, size, width, metrics, pen)]
    pieces = [""]
    for letter in word:
        if pieces[-1] and metrics.width(pieces[-1] + letter, size, pen) > width:
            pieces.append("")
        pieces[-1] += letter
    return pieces


def paragraph(lines: Sequence[str], size: float, top_left: Point, metrics: FontMetrics) -> list[Text]:
    """`lines` one under the other, the first with its ascenders below `top_left`."""
    first = top_left.y - metrics.ascent * size
    return [left(words, size, Point(top_left.x, first - k * LEADING * size)) for k, words in enumerate(lines)]


def paragraph_height(lines: int, size: float, metrics: FontMetrics) -> float:
    """The height in mm of a paragraph, from the top of its ascenders to the foot of its descenders."""
    if lines == 0:
        return 0.0
    return size * (metrics.ascent - metrics.descent + (lines - 1) * LEADING)


def leading(size: float, *, tall: bool = False) -> float:
    """The distance of baselines in mm: wider where an accent stands on a capital."""
    return LEADING * size if tall else _LEADINGS[size]
