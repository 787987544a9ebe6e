"""What the plan says about yarns and room: as plain values for programs, as rows and sentences for people."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from layout.values.quantity import Quantity
from layout.values.units import say_number
from layout.yardage.amounts import Amounts
from layout.yarns.diameter import Diameter
from layout.yarns.yarn_counts import OUNCE_G, YARD_M

Row = tuple[str, str, str]


def amounts_values(amounts: Amounts) -> dict[str, object]:
    """For programs: every figure by its name, null where it is not known, and under `obtained` how it was come by."""
    values: dict[str, object] = {name: figure and figure.value for name, figure in amounts.figures.items()}
    obtained = {name: figure and figure.origin.value for name, figure in amounts.figures.items()}
    colours = amounts.weft_by_colour
    by_name = {each.name: {"m": each.length_m.value, "g": each.weight_g.value} for each in colours}
    values["weft_by_colour"] = by_name or None
    obtained["weft_by_colour"] = colours[0].weight_g.origin.value if colours else None
    return {**values, "obtained": obtained}


def amounts_rows(amounts: Amounts, *, imperial: bool) -> list[Row]:
    """For people: every figure that is known, in both systems, the kit's own first, and how it was come by."""
    return [*_warp_rows(amounts, imperial), *_room_rows(amounts, imperial), *_weft_rows(amounts, imperial)]


def amounts_sentences(amounts: Amounts) -> tuple[tuple[str, tuple[str, ...]], ...]:
    """Headings with their sentences: what was assumed, and what the kit may add to know more."""
    return ("Assumed", amounts.assumptions), ("To know more", amounts.to_add)


def _warp_rows(amounts: Amounts, imperial: bool) -> Iterator[Row]:
    per_wind, total, grams = amounts.warp_per_wind_mm, amounts.warp_total_m, amounts.warp_total_g
    yield from _thickness("An end of warp", amounts.warp_thickness, imperial)
    yield "Two ends", _short(per_wind, imperial), _how(per_wind)
    yield "Warp", _long(total, imperial), _how(total)
    if grams:
        yield "Warp weight", _weight(grams, imperial), _how(grams)
    yield "Heading rows", _long(amounts.heading_thread_m, imperial), _how(amounts.heading_thread_m)


def _room_rows(amounts: Amounts, imperial: bool) -> Iterator[Row]:
    tied = amounts.leashes
    rows = (
        ("Weavable height", amounts.weavable_height_mm),
        ("Fringe, near end", amounts.fringe_near_mm),
        ("Fringe, far end", amounts.fringe_far_mm),
        ("Shed stick", amounts.shed_stick_mm),
    )
    for name, figure in rows:
        yield name, _short(figure, imperial), _how(figure)
    yield "Leashes", f"{tied.number} of {_short(tied.each, imperial)}", _how(tied.each)


def _weft_rows(amounts: Amounts, imperial: bool) -> Iterator[Row]:
    yield from _thickness("A pick of weft", amounts.weft_thickness, imperial)
    if picks := amounts.picks_per_cm:
        both = (f"{_plain(picks.value, 2)} per cm", f"{_plain(picks.value * 2.54, 2)} per inch")
        yield "Picks", _ordered(both, imperial), _how(picks)
    if more := amounts.weft_take_up:
        yield "Weft take-up", f"{_plain(more.value * 100, 1)} %", _how(more)
    if total := amounts.weft_total_m:
        yield "Weft", _long(total, imperial), _how(total)
    if grams := amounts.weft_total_g:
        yield "Weft weight", _weight(grams, imperial), _how(grams)
    for need in amounts.weft_by_colour:
        value = f"{_long(need.length_m, imperial)}; {_weight(need.weight_g, imperial)}"
        yield f"  {need.name}", value, _how(need.length_m)
    woven, left, before = (
        _size(pair, imperial) for pair in (amounts.woven_mm, amounts.finished_mm, amounts.for_finished_mm)
    )
    yield "Woven", woven, _how(amounts.woven_mm[0])
    if left != woven:
        yield "Finished", left, f"{amounts.finished_mm[0].origin}: to be {woven} when finished, weave {before}"


def _thickness(name: str, diameters: Sequence[Diameter], imperial: bool) -> Iterator[Row]:
    """How thick a yarn is, always with which of the two thicknesses is meant."""
    for each in diameters:
        both = (f"{_plain(each.mm, 2)} mm", f"{_plain(each.mm / 25.4, 3)} in")
        yield name, f"{_ordered(both, imperial)} thick, {each.kind}", _how(each.figure)
        name = ""


def _how(figure: Quantity) -> str:
    return f"{figure.origin}: {figure.reason[0].lower()}{figure.reason[1:].rstrip('.')}"


def _plain(value: float, places: int) -> str:
    return say_number(Fraction(value), places)


def _ordered(both: tuple[str, str], imperial: bool) -> str:
    return ", ".join(reversed(both) if imperial else both)


def _short(figure: Quantity, imperial: bool) -> str:
    return _ordered((f"{_plain(figure.value, 1)} mm", f"{_plain(figure.value / 25.4, 2)} in"), imperial)


def _long(figure: Quantity, imperial: bool) -> str:
    yards = figure.value / float(YARD_M)
    return _ordered((f"{_plain(figure.value, 2)} m", f"{_plain(yards, 2)} yd"), imperial)


def _weight(figure: Quantity, imperial: bool) -> str:
    ounces = figure.value / float(OUNCE_G)
    return _ordered((f"{_plain(figure.value, 1)} g", f"{_plain(ounces, 2)} oz"), imperial)


def _size(sides: tuple[Quantity, Quantity], imperial: bool) -> str:
    mm = " x ".join(_plain(side.value, 1) for side in sides)
    inches = " x ".join(_plain(side.value / 25.4, 2) for side in sides)
    return _ordered((f"{mm} mm", f"{inches} in"), imperial)
