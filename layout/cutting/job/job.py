"""The job sheet of a kit's boards: what is cut from what, in which order, how long it takes, and how to stay safe.

Its parts are cards for paper. Money stands on none of them: a file says nothing of prices.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from layout.cutting.job.boards import Boards
from layout.cutting.job.work import Work, seconds
from layout.cutting.stock.colours import in_words
from layout.cutting.stock.stock import OPERATIONS, Stock
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Point, Shape, cross
from layout.drawing.sheet import Part
from layout.drawing.typeset import LEAD, LEADING, SMALL, left, wrap
from layout.values.units import say_number

SAFETY = (
    "Your shop's own rules and the law where you are come first; only people who were trained on this cutter run it.",
    "It is never left alone while it runs: somebody watches, a fire extinguisher in reach, ready to stop it.",
    "Extraction runs before the first line and until the smoke is gone: what burns off is not to be breathed.",
    (
        "Lid shut and interlocks as they came; nobody looks into the beam or its reflections; eyes protected as the "
        "machine's maker asks."
    ),
    (
        "Nothing but the material named here. Never PVC or vinyl, which give off hydrogen chloride, and no plastic "
        "that nobody can name."
    ),
    "Parts and offcuts may be hot and sharp; small ones are kept from children.",
)
"""Common rules of workshops, in our own words; IEC 60825-1 and ISO 11553-1 are about the machines themselves."""

_ARM, _IN, _COLUMN_GAP = 0.5, 3.0, 4.0


@dataclass(frozen=True, slots=True)
class Job:
    """The boards, the work on each of them, and a sentence for everything that this stock cannot give."""

    boards: Boards
    works: tuple[Work, ...]
    left_out: tuple[str, ...] = ()

    @property
    def work(self) -> Work:
        """All of it."""
        return sum(self.works, Work())


def facts(job: Job, width: float, metrics: FontMetrics) -> Part:
    """The card with the numbers of the job, `width` mm wide."""
    stock, boards = job.boards.stock, job.boards
    waste = say_number(Fraction(boards.waste) * 100, 1)
    rows = [
        ("Material", f"{stock.material} ({stock.name})"),
        ("Thickness", f"{stock.thickness:g} mm"),
        ("Sheets", f"{len(boards.sheets)} of {stock.width:g} x {stock.height:g} mm; by area at least {boards.least}"),
        ("Parts", f"{_quantities(boards)}; {waste} % of the sheets is waste, gaps included"),
        ("Kerf", kerf_words(stock)),
        ("Grain", f"runs along {stock.grain}; no part is turned across it" if stock.grain != "none" else "none"),
        ("Order", "one after the other, each in its colour; inner cuts before outlines"),
        *((f"{k}  {each}", _operation_words(each, job.work, stock)) for k, each in enumerate(OPERATIONS[:-1], 1)),
        ("reference", f"{_colour(stock, 'reference')}; nothing runs it"),
        ("Time", time_words(job.work, stock)),
        *(("Not here", sentence) for sentence in job.left_out),
    ]
    return _card("job-facts", "Cutting job", "What is cut, and how", rows, width, metrics)


def _quantities(boards: Boards) -> str:
    """How many parts there are, and how many of those that come more than once."""
    titles = Counter(piece.part.title for pieces in boards.sheets for piece in pieces[:-1])
    many = [f"{count} x {title}" for title, count in titles.items() if count > 1]
    others = ["all others once" if many else "each once"] if len(many) < len(titles) else []
    return f"{titles.total()}: {'; '.join([*many, *others])}"


def safety(width: float, metrics: FontMetrics) -> Part:
    """The card with the rules, `width` mm wide."""
    rows = [(str(k), rule) for k, rule in enumerate(SAFETY, 1)]
    return _card("job-safety", "Cutting job", "Before the beam goes on", rows, width, metrics)


def kerf_words(stock: Stock) -> str:
    """The kerf, whether it is drawn in, and what that asks of the machine."""
    kerf = f"{stock.kerf_x:g} mm"
    if stock.kerf_x != stock.kerf_y:
        kerf = f"{stock.kerf_x:g} mm where a cut runs up the sheet, {stock.kerf_y:g} mm across it"
    if stock.kerf_drawn:
        return f"{kerf}, drawn in: the machine's own compensation stays off"
    return f"{kerf}, not drawn in: the machine itself must keep clear of the lines by half of it"


def work_words(work: Work) -> str:
    """How much there is of each operation."""
    return ", ".join(f"{each} {amount(each, work)}" for each in OPERATIONS[:-1])


def amount(operation: str, work: Work) -> str:
    """How much there is of one operation: an area in mm2, or a length in m."""
    if operation == "engrave":
        return f"{work.engrave:.0f} mm2"
    return f"{say_number(Fraction({'cut': work.cut, 'score': work.score}[operation]) / 1000)} m"


def time_words(work: Work, stock: Stock) -> str:
    """The time that the work takes at the speeds of the stock, said to be an estimate."""
    time = seconds(work, stock.speeds)
    if time is None:
        missing = " and ".join(each for each in work.travels if each not in stock.speeds)
        return f"not told, since the stock file gives no speed for {missing}"
    return f"about {time / 60:.1f} min, an estimate; moves between lines and slow corners come on top"


def _operation_words(operation: str, work: Work, stock: Stock) -> str:
    return f"{_colour(stock, operation)}; {amount(operation, work)}"


def _colour(stock: Stock, operation: str) -> str:
    colour = stock.operations[operation].colour
    return f"{in_words(colour)}, {colour}"


def _card(
    name: str, title: str, heading: str, rows: Sequence[tuple[str, str]], width: float, metrics: FontMetrics
) -> Part:
    """A heading and rows of a label and its words, with crosses in three corners."""
    at = 2 * _IN + max(metrics.width(label, SMALL) for label, _ in rows) + _COLUMN_GAP - _IN
    shapes: list[Shape] = []
    y = -_IN - metrics.ascent * LEAD
    shapes.append(left(heading, LEAD, Point(_IN, y)))
    y -= LEADING * LEAD
    for label, words in rows:
        shapes.append(left(label, SMALL, Point(_IN, y)))
        for line in wrap(words, SMALL, width - at - _IN, metrics):
            shapes.append(left(line, SMALL, Point(at, y)))
            y -= LEADING * SMALL
    return crossed(name, title, shapes, (0.0, y + (LEADING + metrics.descent) * SMALL - _IN, width, 0.0))


def crossed(name: str, title: str, shapes: Sequence[Shape], box: Box) -> Part:
    """A whole part of these shapes, with a cross in all of its corners but the upper right one."""
    low_x, low_y, high_x, high_y = box
    near = (low_x + _ARM, low_y + _ARM, high_x - _ARM, high_y - _ARM)
    datum = (Point(near[0], near[1]), Point(near[2], near[1]), Point(near[0], near[3]))
    hairs = [hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER)]
    return Part(name, title, (*hairs, *shapes), datum, box, whole=True)
