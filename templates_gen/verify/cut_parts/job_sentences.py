"""What a job sheet must say of a board: sentence for sentence, from kit, stock and the parts that lie there."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from layout.cutting.stock.stock import Stock
from layout.drawing.shapes import Box
from layout.messages.catalogue import Catalogue, Message
from layout.messages.roles import Colour, JobSheet
from layout.values.numerals import say_number
from templates_gen.verify.cut_parts.left_over import sizes_left

OPERATIONS: Mapping[str, JobSheet] = {
    "engrave": JobSheet.ENGRAVE,
    "score": JobSheet.SCORE,
    "cut": JobSheet.CUT,
}
_OWN = {"#c39a6b": Colour.SAND, "#7a6f8f": Colour.HEATHER, "#4a2c2a": Colour.BARK}  # stated again on purpose
_SCAN = 0.1  # mm between the lines that engrave an area, stated again on purpose
_CLOSE = 1e-4  # of a number, which may be rounded to either side
_CARES = (
    JobSheet.CARE_RULES,
    JobSheet.CARE_FIRE,
    JobSheet.CARE_EYES,
    JobSheet.CARE_FUMES,
    JobSheet.CARE_PARTS,
)

Choice = Sequence[str]
"""A message, or the several ways in which it may be said: by a number that is rounded, or the name of a colour."""


def steps(stock: Stock, words: Catalogue) -> list[str]:
    """What to do, in its order."""
    up, across = say_number(stock.kerf_x), say_number(stock.kerf_y)
    kerf = Message(JobSheet.KERF_ONE, {"kerf": up})
    if up != across:  # two that are written alike are one to the reader
        kerf = Message(JobSheet.KERF_TWO, {"up": up, "across": across})
    return [
        words.say(JobSheet.STEP_SQUARE),
        words.say(JobSheet.STEP_KERF_DRAWN if stock.kerf_drawn else JobSheet.STEP_KERF_LEFT, kerf=kerf),
        *_scale(stock, words),
        words.say(JobSheet.STEP_PEOPLE),
        words.say(JobSheet.STEP_MATERIAL),
    ]


def _scale(stock: Stock, words: Catalogue) -> Iterator[str]:
    """How much too long, in per cent, the cutter makes what it is given, where its files are drawn against that."""
    x, y, skew = stock.scale
    if (x, y, skew) == (1.0, 1.0, 0.0):
        return
    shares = {"x": x - 1, "y": y - 1, "skew": skew}
    role = JobSheet.STEP_SCALE
    if stock.scale_uncertainty is not None:
        role, shares["within"] = JobSheet.STEP_SCALE_WITHIN, stock.scale_uncertainty
    yield words.say(role, **{name: say_number(share * 100, 3) for name, share in shares.items()})


def amounts(work: Mapping[str, float], words: Catalogue) -> dict[str, Choice]:
    """How much there is of each operation."""
    return {
        name: [
            words.say(JobSheet.AREA, area=say_number(work[name] * close / 100, 1))
            if name == "engrave"
            else words.say(JobSheet.LENGTH, length=say_number(work[name] * close / 1000, 2))
            for close in (1 - _CLOSE, 1.0, 1 + _CLOSE)
        ]
        for name in OPERATIONS
    }


def colours(stock: Stock, words: Catalogue) -> dict[str, Choice]:
    """The colour of each operation that a machine runs, in words and by its code."""
    codes = {name: stock.operations[name].colour for name in OPERATIONS}
    return {
        name: [words.say(JobSheet.COLOUR_IS, colour=called, code=code) for called in _called(code)]
        for name, code in codes.items()
    }


def _called(code: str) -> list[Message]:
    """What a colour may be called; our own three have one name each."""
    if own := _OWN.get(code):
        return [Message(own)]
    plain = [colour for colour in Colour if colour not in (Colour.DARK, Colour.LIGHT, *_OWN.values())]
    shades = [Message(shade, {"colour": colour}) for shade in (Colour.DARK, Colour.LIGHT) for colour in plain]
    return [*map(Message, plain), *shades]


def sentences(
    stock: Stock, taken: Sequence[Box], work: Mapping[str, float], board: tuple[int, int, int], words: Catalogue
) -> Iterator[Choice]:
    """Everything that is said of a board beside steps, operations and the list of parts; `board` is one of how many,
    and how often it is cut, `taken` the boxes of its parts in mm.
    """
    number, total, times = board
    if times > 1:
        yield [words.say(JobSheet.CUT_TIMES, times=times)]
    grey = stock.operations["reference"].colour
    yield [words.say(JobSheet.ORIGIN, colour=called, code=grey) for called in _called(grey)]
    sizes = (
        {"width": say_number(wide, 0), "height": say_number(high, 0)}
        for wide, high in sizes_left(taken, stock.width, stock.height)
    )
    yield [words.say(JobSheet.BOARD_IS, number=number, total=total, **size) for size in sizes]
    yield [words.say(JobSheet.FILES, file=_stem(stock, number, total, times))]
    along = Message(JobSheet.GRAIN_ALONG, {"axis": stock.grain})
    yield [words.words_of(Message(JobSheet.GRAIN_NONE) if stock.grain == "none" else along)]
    drawn = JobSheet.SIZES if stock.scale == (1.0, 1.0, 0.0) else JobSheet.SIZES_BEFORE
    for role in (JobSheet.PARTS, drawn, JobSheet.ORDER, JobSheet.HOW_MUCH):
        yield [words.say(role)]
    for role in (JobSheet.POWER, JobSheet.SPEED, JobSheet.PASSES):
        yield [words.say(role)]
    order = words.say(JobSheet.ORDER_IS)
    yield [words.paragraph((order, time)) for time in _times(stock, work, words)]
    yield [words.paragraph(list(map(words.say, _CARES)))]


def _times(stock: Stock, work: Mapping[str, float], words: Catalogue) -> Choice:
    """The time that the work takes, or the speeds that are not known."""
    travels = {**work, "engrave": work["engrave"] / _SCAN}
    missing = [name for name in OPERATIONS if travels[name] and name not in stock.speeds]
    if missing:
        return [words.say(JobSheet.TIME_UNKNOWN, operations=words.all_of(missing))]
    minutes = sum(travel / stock.speeds[name] for name, travel in travels.items() if travel) / 60
    close = (1 - _CLOSE, 1.0, 1 + _CLOSE)
    return [words.say(JobSheet.TIME_IS, minutes=say_number(minutes * each, 1)) for each in close]


def _stem(stock: Stock, number: int, total: int, times: int) -> str:
    """The name of a board's files without their suffix."""
    kerf = "no-kerf"
    if stock.kerf_drawn:
        widths = [stock.kerf_x] if stock.kerf_x == stock.kerf_y else [stock.kerf_x, stock.kerf_y]
        kerf = "kerf-" + "x".join(f"{each:.{2 if round(each, 2) == each else 3}f}" for each in widths)
    often = f"{times}x-" if times > 1 else ""
    drawn = "" if stock.scale == (1.0, 1.0, 0.0) else "-corrected"
    return f"board-{number}of{total}-{often}{stock.width:g}x{stock.height:g}mm-{kerf}{drawn}"
