"""What the plan says about yarns and room: as plain values for programs, as rows and sentences for people."""

from __future__ import annotations

from collections.abc import Iterator

from layout.values.quantity import Quantity
from layout.yardage.amounts import Amounts
from templates_gen.messages.language import message
from templates_gen.messages.roles.screen import Amount, Row
from templates_gen.screen.ranges import LONG, SHORT, THICK, WEIGHT, about, range_values
from templates_gen.screen.tables import Line, Section
from templates_gen.screen.weft_report import buy_rows, need_rows, weft_rows


def amounts_values(amounts: Amounts) -> dict[str, object]:
    """For programs: every figure by its name with both bounds, null where it is not known.

    Under `obtained` stands how each was obtained.
    """
    values: dict[str, object] = {}
    for name, figure in amounts.figures.items():
        values |= range_values(name, figure)
    obtained = {name: figure and figure.origin.value for name, figure in amounts.figures.items()}
    colours = amounts.weft_by_colour
    by_name = {each.name: range_values("m", each.length_m) | range_values("g", each.weight_g) for each in colours}
    obtained["weft_by_colour"] = colours[0].weight_g.origin.value if colours else None
    return {
        **values,
        "weft_by_colour": by_name or None,
        "balls": _balls(amounts),
        **_sizes("woven", amounts.woven_mm),
        **_sizes("finished", amounts.finished_mm),
        "woven_rows": amounts.woven_rows,
        "heading_rows": amounts.heading_rows,
        **range_values("first_guess_per_cm", amounts.first_guess_per_cm),
        "narrows_most": most.key if (most := amounts.narrows_most) else None,
        "obtained": obtained,
    }


def _sizes(name: str, sides: tuple[Quantity, Quantity]) -> dict[str, object]:
    width, height = sides
    return {**range_values(f"{name}_width_mm", width), **range_values(f"{name}_height_mm", height)}


def _balls(amounts: Amounts) -> list[dict[str, object]]:
    return [
        {
            "yarn": each.yarn,
            "colour": each.colour or None,
            "balls": each.balls,
            **range_values("left_g", each.left_g),
            "unsure": each.unsure,
        }
        for each in amounts.balls
    ]


def amounts_sections(amounts: Amounts, *, imperial: bool) -> list[Section]:
    """For people: every figure that is known, in both systems, the kit's own first, and how it was obtained."""
    return [
        Section(message(Row.ROOM), tuple(_room_rows(amounts, imperial))),
        Section(message(Row.WARP), tuple(_warp_rows(amounts, imperial))),
        Section(message(Row.WEFT), tuple(weft_rows(amounts, imperial))),
        Section(message(Row.NEED), tuple(need_rows(amounts, imperial))),
        Section(message(Row.BUY), tuple(buy_rows(amounts, imperial))),
    ]


def amounts_sentences(amounts: Amounts) -> tuple[tuple[Row, tuple[str, ...]], ...]:
    """Headings with their sentences: what was assumed, and what the kit may add to know more."""
    return (Row.ASSUMED, amounts.assumptions), (Row.KNOW_MORE, amounts.to_add)


def _warp_rows(amounts: Amounts, imperial: bool) -> Iterator[Line]:
    rows = (
        (Amount.WARP_END, amounts.warp_thickness_mm, THICK),
        (Amount.TWO_ENDS, amounts.warp_per_wind_mm, SHORT),
        (Amount.HEADING, amounts.heading_thread_m, LONG),
        (Amount.WARP, amounts.warp_total_m, LONG),
        (Amount.WARP_WEIGHT, amounts.warp_total_g, WEIGHT),
    )
    for name, figure, units in rows:
        if figure:
            yield message(name), about(figure, units, imperial=imperial), how(figure)


def _room_rows(amounts: Amounts, imperial: bool) -> Iterator[Line]:
    tied = amounts.leashes
    rows = (
        (Amount.HEIGHT, amounts.weavable_height_mm),
        (Amount.FRINGE_NEAR, amounts.fringe_near_mm),
        (Amount.FRINGE_FAR, amounts.fringe_far_mm),
        (Amount.SHED_STICK, amounts.shed_stick_mm),
    )
    for name, figure in rows:
        yield message(name), about(figure, SHORT, imperial=imperial), how(figure)
    number = message(Amount.LEASHES_ARE, number=tied.number, length=about(tied.each, SHORT, imperial=imperial))
    yield message(_LEASHES[tied.ends]), number, how(tied.each)


_LEASHES = {"odd": Amount.LEASHES_ODD, "even": Amount.LEASHES_EVEN, "every second": Amount.LEASHES}


def how(figure: Quantity) -> str:
    """How a figure was obtained, and why it is what it is."""
    return message(Amount.HOW, origin=figure.origin, reason=figure.reason)
