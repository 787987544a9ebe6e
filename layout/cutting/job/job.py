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
from layout.messages.english import ENGLISH
from layout.messages.roles import JobSheet
from layout.values.units import say_number

SAFETY = tuple(
    ENGLISH.say(rule)
    for rule in (
        JobSheet.RULE_SHOP,
        JobSheet.RULE_WATCH,
        JobSheet.RULE_AIR,
        JobSheet.RULE_EYES,
        JobSheet.RULE_MATERIAL,
        JobSheet.RULE_PARTS,
    )
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
    stock, say = job.boards.stock, ENGLISH.say
    rows = [
        (say(JobSheet.MATERIAL), say(JobSheet.MATERIAL_IS, material=stock.material, stock=stock.name)),
        (say(JobSheet.THICKNESS), say(JobSheet.THICKNESS_IS, thick=f"{stock.thickness:g}")),
        (say(JobSheet.SHEETS), _sheets(job.boards)),
        (say(JobSheet.PARTS), _quantities(job.boards)),
        (say(JobSheet.KERF), kerf_words(stock)),
        (say(JobSheet.GRAIN), _grain(stock)),
        (say(JobSheet.ORDER), say(JobSheet.ORDER_IS)),
        *(
            (say(JobSheet.NUMBERED, number=k, what=each), _operation_words(each, job.work, stock))
            for k, each in enumerate(OPERATIONS[:-1], 1)
        ),
        ("reference", say(JobSheet.REFERENCE_IS, **_colour(stock, "reference"))),
        (say(JobSheet.TIME), time_words(job.work, stock)),
        *((say(JobSheet.NOT_HERE), sentence) for sentence in job.left_out),
    ]
    return _card("job-facts", say(JobSheet.FACTS), rows, width, metrics)


def _sheets(boards: Boards) -> str:
    size = {"width": f"{boards.stock.width:g}", "height": f"{boards.stock.height:g}"}
    return ENGLISH.say(JobSheet.SHEETS_ARE, count=len(boards.sheets), least=boards.least, **size)


def _grain(stock: Stock) -> str:
    if stock.grain == "none":
        return ENGLISH.say(JobSheet.GRAIN_NONE)
    return ENGLISH.say(JobSheet.GRAIN_ALONG, grain=stock.grain)


def _quantities(boards: Boards) -> str:
    """How many parts there are, how many of those that come more than once, and what is waste."""
    titles = Counter(piece.part.title for pieces in boards.sheets for piece in pieces[:-1])
    values = {"count": titles.total(), "waste": say_number(Fraction(boards.waste) * 100, 1)}
    many = [ENGLISH.say(JobSheet.TIMES, count=count, title=title) for title, count in titles.items() if count > 1]
    if not many:
        return ENGLISH.say(JobSheet.PARTS_ONCE, **values)
    said, *others = many
    for other in others:
        said = ENGLISH.say(JobSheet.THEN, before=said, after=other)
    role = JobSheet.PARTS_SOME if len(many) < len(titles) else JobSheet.PARTS_MANY
    return ENGLISH.say(role, many=said, **values)


def safety(width: float, metrics: FontMetrics) -> Part:
    """The card with the rules, `width` mm wide."""
    rows = [(str(k), rule) for k, rule in enumerate(SAFETY, 1)]
    return _card("job-safety", ENGLISH.say(JobSheet.SAFETY), rows, width, metrics)


def kerf_words(stock: Stock) -> str:
    """The kerf, whether it is drawn in, and what that asks of the machine."""
    kerf = ENGLISH.say(JobSheet.KERF_ONE, kerf=f"{stock.kerf_x:g}")
    if stock.kerf_x != stock.kerf_y:
        kerf = ENGLISH.say(JobSheet.KERF_TWO, up=f"{stock.kerf_x:g}", across=f"{stock.kerf_y:g}")
    return ENGLISH.say(JobSheet.KERF_DRAWN if stock.kerf_drawn else JobSheet.KERF_LEFT, kerf=kerf)


def amount(operation: str, work: Work) -> str:
    """How much there is of one operation: an area in mm2, or a length in m."""
    if operation == "engrave":
        return ENGLISH.say(JobSheet.AREA, area=f"{work.engrave:.0f}")
    length = Fraction({"cut": work.cut, "score": work.score}[operation]) / 1000
    return ENGLISH.say(JobSheet.LENGTH, length=say_number(length))


def time_words(work: Work, stock: Stock) -> str:
    """The time that the work takes at the speeds of the stock, said to be an estimate."""
    time = seconds(work, stock.speeds)
    if time is None:
        missing = ENGLISH.all_of([each for each in work.travels if each not in stock.speeds])
        return ENGLISH.say(JobSheet.TIME_UNKNOWN, operations=missing)
    return ENGLISH.say(JobSheet.TIME_IS, minutes=f"{time / 60:.1f}")


def _operation_words(operation: str, work: Work, stock: Stock) -> str:
    return ENGLISH.say(JobSheet.OPERATION_IS, **_colour(stock, operation), amount=amount(operation, work))


def _colour(stock: Stock, operation: str) -> dict[str, str]:
    colour = stock.operations[operation].colour
    return {"colour": in_words(colour), "code": colour}


def _card(name: str, heading: str, rows: Sequence[tuple[str, str]], width: float, metrics: FontMetrics) -> Part:
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
    return crossed(
        name, ENGLISH.say(JobSheet.TITLE), shapes, (0.0, y + (LEADING + metrics.descent) * SMALL - _IN, width, 0.0)
    )


def crossed(name: str, title: str, shapes: Sequence[Shape], box: Box) -> Part:
    """A whole part of these shapes, with a cross in all of its corners but the upper right one."""
    low_x, low_y, high_x, high_y = box
    near = (low_x + _ARM, low_y + _ARM, high_x - _ARM, high_y - _ARM)
    datum = (Point(near[0], near[1]), Point(near[2], near[1]), Point(near[0], near[3]))
    hairs = [hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER)]
    return Part(name, title, (*hairs, *shapes), datum, box, whole=True, measured=False)
