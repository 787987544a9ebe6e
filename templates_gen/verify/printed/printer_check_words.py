"""What a printer check says: every word on its sheets, each letter at its end mark, each row of its table, its map."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from itertools import chain

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Text
from layout.drawing.sheet import Sheet
from layout.kit.kit import Paper
from layout.messages.catalogue import Catalogue, Figure
from layout.messages.roles import PrinterCheck, SheetName
from layout.messages.roles import Sheet as Head
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.roles.proof_printer_check import Checked
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.heads import unnumbered
from templates_gen.verify.printed.printer_check_places import LETTERS, LONG_RULE, WIDTHS, Span, rules_on, spans_on
from templates_gen.verify.said import Word, account

_APART = 1e5  # mm: the words of each sheet are taken to stand so far under those of the one before
_NAMES = PrinterCheck.ACROSS, PrinterCheck.UP, PrinterCheck.RISING, PrinterCheck.FALLING
_BLANKS = PrinterCheck.PRINTER, PrinterCheck.PAPER, PrinterCheck.RULE, PrinterCheck.DATE
_OPTIONS = "--x", "--y", "--across", "--across-2"
_ON_CARD = PrinterCheck.CARD, PrinterCheck.CARD_LAY, PrinterCheck.CARD_SHOWS
_CARD = Figure("85.60"), Figure("53.98")
_BESIDE, _ALONG, _ASIDE = (3.0, 9.0), 3.0, (12.0, 16.0)  # mm from an end mark to its words
_SAME = 0.05
_LEAST_BLANK = 15.0
_SMALL = 7.5 * 25.4 / 72


def prove_words(sheets: Sequence[Sheet], paper: Paper, words: Catalogue) -> Iterator[Finding]:
    """All words of all sheets, and nothing else in words."""
    spans = spans_on(paper.width, paper.height)
    found: list[Word] = [
        (Point(text.at.x, text.at.y - _APART * k), text.words)
        for k, sheet in enumerate(sheets)
        for text in _texts(sheet)
    ]
    maps = [sheet for sheet in sheets if _frame(sheet)]
    steps = _steps(paper, spans, words)
    wanted = [*_heads(len(sheets), paper, words), *steps, *_labels(spans, words, again=len(maps))]
    wanted += [words.say(each) for each in (*_NAMES, *_BLANKS, PrinterCheck.MEASURED, *_ON_CARD, PrinterCheck.MARGINS)]
    wanted += [*_OPTIONS, words.say(PrinterCheck.CARD_SIZE, wide=_CARD[0], high=_CARD[1])]
    wanted += _units(paper, words)
    ladder = [words.say(PrinterCheck.WIDTHS), *_in_figures(words)]
    has_ladder = any(text.words == ladder[-1] for sheet in sheets for text in _texts(sheet))
    accounted = account(found, [*wanted, *(ladder if has_ladder else ())], (), words)
    yield from accounted.wrong
    yield from unnumbered(steps, accounted, found)
    yield from _beside(sheets[0], spans, words)
    yield from _rows(sheets, spans, words)
    for sheet in maps:
        yield from _map(sheet, spans)


def _texts(sheet: Sheet) -> Iterator[Text]:
    return (shape for shape in sheet.shapes if isinstance(shape, Text))


def _heads(count: int, paper: Paper, words: Catalogue) -> Iterator[str]:
    """Tile, name, purpose, page and number, once on every sheet."""
    for number in range(1, count + 1):
        yield "P"
        yield words.say(SheetName.NAME_PRINTER_CHECK)
        yield words.say(SheetName.PURPOSE_PRINTER_CHECK)
        yield words.say(PrinterCheck.PAGE, paper=paper.size.words)
        if count > 1:
            yield words.say(Head.NUMBER, number=number, total=count)


def _steps(paper: Paper, spans: Sequence[Span], words: Catalogue) -> list[str]:
    typed = paper.size.words
    others = PrinterCheck.STEP_OTHERS_CROSS if spans[2].long > LONG_RULE else PrinterCheck.STEP_OTHERS
    roles = PrinterCheck.STEP_PRINT, PrinterCheck.STEP_MEASURE, others, PrinterCheck.STEP_SETTING
    store = words.say(PrinterCheck.STEP_STORE, paper=f'"{typed}"' if " " in typed else typed)
    return [*map(words.say, roles), store]


def _labels(spans: Sequence[Span], words: Catalogue, *, again: int) -> list[str]:
    """At the first mark of a span its length too, but for the one that stands up; on a map all letters once more."""
    said = [_label(span, words) for span in spans]
    letters = [span.letters[1] for span in spans] + [spans[1].letters[0]]
    return [*said, *letters, *(again * [letter for span in spans for letter in span.letters])]


def _label(span: Span, words: Catalogue) -> str:
    return words.say(PrinterCheck.SPAN, one=span.letters[0], other=span.letters[1], length=str(round(span.long)))


def _units(paper: Paper, words: Catalogue) -> list[str]:
    """The last number of each side of each rule, with its unit."""
    roles = {"mm": PrinterCheck.MM, "in": PrinterCheck.INCH}
    numbers = rules_on(paper.width, paper.height)[1]
    return [words.say(roles[each.unit], length=str(each.value)) for each in numbers if each.unit]


def _in_figures(words: Catalogue) -> list[str]:
    *said, last = [words.figure(f"{width}") for width in WIDTHS]
    return [*said, words.say(PrinterCheck.MM, length=last)]


def _beside(sheet: Sheet, spans: Sequence[Span], words: Catalogue) -> Iterator[Finding]:
    """Every end mark has its own letter beside it."""
    strong = [text for text in _texts(sheet) if text.pen is Pen.STRONG]
    font = metrics()
    for k, span in enumerate(spans):
        for place, (letter, end) in enumerate(zip(span.letters, (span.one, span.other), strict=True)):
            rightward = place == 0 and k != 1
            said = _label(span, words) if rightward else letter
            near = []
            for text in strong:
                wide = font.width(text.words, text.size, text.pen)
                begin = text.at.x - end.x if rightward else end.x - text.at.x - wide
                if _BESIDE[0] < begin < _BESIDE[1] and abs(text.at.y - end.y) < _ALONG and not text.angle:
                    near.append(text.words)
            if near != [said]:
                yield finding(Checked.LETTER, letter=letter, words=said)
    low = spans[1].one
    turned = [text for text in strong if text.angle and _ASIDE[0] < text.at.x - low.x < _ASIDE[1]]
    if [text.words for text in turned] != [_label(spans[1], words)]:
        yield finding(Checked.LETTER, letter=spans[1].letters[0], words=_label(spans[1], words))


def _rows(sheets: Sequence[Sheet], spans: Sequence[Span], words: Catalogue) -> Iterator[Finding]:
    """Each row of the table: the span, its length, its option, in this order, and a line to write on behind them."""
    for sheet in sheets:
        texts = list(_texts(sheet))
        if not any(text.words == _OPTIONS[0] for text in texts):
            continue
        blanks = [shape for shape in sheet.shapes if isinstance(shape, Curve) and _is_blank(shape)]
        if len(blanks) < len(spans) + len(_BLANKS):
            yield finding(Checked.BLANKS, found=len(blanks), wanted=len(spans) + len(_BLANKS))
        for span, role, option in zip(spans, _NAMES, _OPTIONS, strict=True):
            row = [text for text in texts if text.words == option]
            wanted = [words.say(role), str(round(span.long)), option]
            beside = sorted((t.at.x, t.words) for t in texts if row and abs(t.at.y - row[0].at.y) < _SAME)
            if [said for _, said in beside][: len(wanted)] != wanted:
                yield finding(Checked.ROW, one=span.letters[0], other=span.letters[1], words=" ".join(wanted))
        for role in _BLANKS:
            if not any(text.words == words.say(role) for text in texts):
                yield finding(Checked.BLANKS, found=0, wanted=len(_BLANKS))


def _is_blank(path: Curve) -> bool:
    if path.pen is not Pen.HELP or len(path.steps) != 1:
        return False
    (x, y), (to_x, to_y) = path.points()
    return abs(y - to_y) < _SAME and to_x - x >= _LEAST_BLANK


def _frame(sheet: Sheet) -> list[Curve]:
    """The outlines of a small map."""
    closed = [shape for shape in sheet.shapes if isinstance(shape, Curve) and shape.closed and shape.pen is Pen.HELP]
    return [path for path in closed if len(path.steps) == 3 and not any(through for _, through in path.steps)]


def _map(sheet: Sheet, spans: Sequence[Span]) -> Iterator[Finding]:
    """The small map shows the sheet in its proportions, and each span where it lies on it."""
    points = _frame(sheet)[0].points()
    left, low = min(x for x, _ in points), min(y for _, y in points)
    share = (max(x for x, _ in points) - left) / sheet.width
    lines = [s.points() for s in sheet.shapes if isinstance(s, Curve) and s.pen is Pen.OUTLINE and len(s.steps) == 1]
    places = {
        letter: Point(left + at.x * share, low + at.y * share)
        for span in spans
        for letter, at in zip(span.letters, (span.one, span.other), strict=True)
    }
    nearest = dict(_nearest(sheet, places))
    for one, other in map(tuple, LETTERS):
        apart = (max(map(math.dist, line, (places[one], places[other]))) for line in lines)
        if min(chain(apart, [math.inf])) > _SAME or nearest.get(one) != one or nearest.get(other) != other:
            yield finding(Checked.MAP, one=one, other=other)


def _nearest(sheet: Sheet, places: Mapping[str, Point]) -> Iterator[tuple[str, str]]:
    """Each letter of a map, and that of the end that is nearest to it."""
    font = metrics()
    for text in _texts(sheet):
        if text.words in places and abs(text.size - _SMALL) < _SAME:
            wide = font.width(text.words, text.size, text.pen)
            middle = text.at.x + wide / 2, text.at.y + font.cap * text.size / 2
            yield text.words, min(places, key=lambda letter: math.dist(places[letter], middle))
