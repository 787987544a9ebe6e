"""What the plan says about yarns and room: as plain values for programs, as rows and sentences for people."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from layout.values.quantity import Quantity
from layout.values.units import say_number
from layout.yardage.amounts import Amounts
from layout.yarns.diameter import Diameter
from layout.yarns.yarn_counts import OUNCE_G, YARD_M
from templates_gen.messages.language import message
from templates_gen.messages.roles.screen import Amount, Measure, Row

Line = tuple[str, str, str]


def amounts_values(amounts: Amounts) -> dict[str, object]:
    """For programs: every figure by its name, null where it is not known, and under `obtained` how it was obtained."""
    values: dict[str, object] = {name: figure and figure.value for name, figure in amounts.figures.items()}
    obtained = {name: figure and figure.origin.value for name, figure in amounts.figures.items()}
    colours = amounts.weft_by_colour
    by_name = {each.name: {"m": each.length_m.value, "g": each.weight_g.value} for each in colours}
    values["weft_by_colour"] = by_name or None
    obtained["weft_by_colour"] = colours[0].weight_g.origin.value if colours else None
    return {**values, "obtained": obtained}


def amounts_rows(amounts: Amounts, *, imperial: bool) -> list[Line]:
    """For people: every figure that is known, in both systems, the kit's own first, and how it was obtained."""
    return [*_warp_rows(amounts, imperial), *_room_rows(amounts, imperial), *_weft_rows(amounts, imperial)]


def amounts_sentences(amounts: Amounts) -> tuple[tuple[Row, tuple[str, ...]], ...]:
    """Headings with their sentences: what was assumed, and what the kit may add to know more."""
    return (Row.ASSUMED, amounts.assumptions), (Row.KNOW_MORE, amounts.to_add)


def _warp_rows(amounts: Amounts, imperial: bool) -> Iterator[Line]:
    per_wind, total, grams = amounts.warp_per_wind_mm, amounts.warp_total_m, amounts.warp_total_g
    yield from _thickness(Amount.WARP_END, amounts.warp_thickness, imperial)
    yield message(Amount.TWO_ENDS), _short(per_wind, imperial), _how(per_wind)
    yield message(Amount.WARP), _long(total, imperial), _how(total)
    if grams:
        yield message(Amount.WARP_WEIGHT), _weight(grams, imperial), _how(grams)
    yield message(Amount.HEADING), _long(amounts.heading_thread_m, imperial), _how(amounts.heading_thread_m)


def _room_rows(amounts: Amounts, imperial: bool) -> Iterator[Line]:
    tied = amounts.leashes
    rows = (
        (Amount.HEIGHT, amounts.weavable_height_mm),
        (Amount.FRINGE_NEAR, amounts.fringe_near_mm),
        (Amount.FRINGE_FAR, amounts.fringe_far_mm),
        (Amount.SHED_STICK, amounts.shed_stick_mm),
    )
    for name, figure in rows:
        yield message(name), _short(figure, imperial), _how(figure)
    number = message(Amount.LEASHES_ARE, number=tied.number, length=_short(tied.each, imperial))
    yield message(Amount.LEASHES), number, _how(tied.each)


def _weft_rows(amounts: Amounts, imperial: bool) -> Iterator[Line]:
    yield from _thickness(Amount.PICK, amounts.weft_thickness, imperial)
    if picks := amounts.picks_per_cm:
        both = (
            message(Measure.PER_CM, number=_plain(picks.value, 2)),
            message(Measure.PER_INCH, number=_plain(picks.value * 2.54, 2)),
        )
        yield message(Amount.PICKS), _ordered(both, imperial), _how(picks)
    if more := amounts.weft_take_up:
        yield message(Amount.TAKE_UP), message(Measure.PERCENT, number=_plain(more.value * 100, 1)), _how(more)
    if total := amounts.weft_total_m:
        yield message(Amount.WEFT), _long(total, imperial), _how(total)
    if grams := amounts.weft_total_g:
        yield message(Amount.WEFT_WEIGHT), _weight(grams, imperial), _how(grams)
    for need in amounts.weft_by_colour:
        length, weight = _long(need.length_m, imperial), _weight(need.weight_g, imperial)
        yield f"  {need.name}", message(Amount.COLOUR, length=length, weight=weight), _how(need.length_m)
    woven, left, before = (
        _size(pair, imperial) for pair in (amounts.woven_mm, amounts.finished_mm, amounts.for_finished_mm)
    )
    yield message(Amount.WOVEN), woven, _how(amounts.woven_mm[0])
    if left != woven:
        origin = amounts.finished_mm[0].origin
        yield message(Amount.FINISHED), left, message(Amount.FINISHED_IS, origin=origin, woven=woven, before=before)


def _thickness(role: Amount, diameters: Sequence[Diameter], imperial: bool) -> Iterator[Line]:
    """How thick a yarn is, always with which of the two thicknesses is meant."""
    name = message(role)
    for each in diameters:
        both = (
            message(Measure.MM, number=_plain(each.mm, 2)),
            message(Measure.INCH, number=_plain(each.mm / 25.4, 3)),
        )
        yield name, message(Amount.THICK, both=_ordered(both, imperial), kind=each.kind), _how(each.figure)
        name = ""


def _how(figure: Quantity) -> str:
    return message(Amount.HOW, origin=figure.origin, reason=figure.reason)


def _plain(value: float, places: int) -> str:
    return say_number(Fraction(value), places)


def _ordered(both: tuple[str, str], imperial: bool) -> str:
    first, second = reversed(both) if imperial else both
    return message(Measure.BOTH, first=first, second=second)


def _short(figure: Quantity, imperial: bool) -> str:
    mm = message(Measure.MM, number=_plain(figure.value, 1))
    return _ordered((mm, message(Measure.INCH, number=_plain(figure.value / 25.4, 2))), imperial)


def _long(figure: Quantity, imperial: bool) -> str:
    yards = figure.value / float(YARD_M)
    metres = message(Measure.METRES, number=_plain(figure.value, 2))
    return _ordered((metres, message(Measure.YARDS, number=_plain(yards, 2))), imperial)


def _weight(figure: Quantity, imperial: bool) -> str:
    ounces = figure.value / float(OUNCE_G)
    grams = message(Measure.GRAMS, number=_plain(figure.value, 1))
    return _ordered((grams, message(Measure.OUNCES, number=_plain(ounces, 2))), imperial)


def _size(sides: tuple[Quantity, Quantity], imperial: bool) -> str:
    width, height = (side.value for side in sides)
    mm = message(Measure.SIZE_MM, width=_plain(width, 1), height=_plain(height, 1))
    inches = message(Measure.SIZE_INCH, width=_plain(width / 25.4, 2), height=_plain(height / 25.4, 2))
    return _ordered((mm, inches), imperial)
