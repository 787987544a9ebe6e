"""The rows on the yarns: how much warp and weft, how close the picks, what it comes to, and what to buy."""

from __future__ import annotations

from collections.abc import Iterator

from layout.messages.catalogue import Said
from layout.messages.roles import Add
from layout.values.quantity import Origin
from layout.yardage.amounts import ColourNeed
from templates_gen.desk.look.answers import Number
from templates_gen.desk.look.figures import LONG, PER, SHORT, WEIGHT
from templates_gen.desk.look.rows import Rows
from templates_gen.messages.roles.desk_numbers import Give, Need, Row, Shown

_FIRST = {
    "weft.pick": "weft.pick.straight",
    "weft.sample": "weft.sample.grams",
    "weft.beads": "weft.beads.number",
    "weft.wrap": "weft.wrap.turns",
    "warp.wrap": "warp.wrap.turns",
}
"""The first line of a table that a measurement is typed into."""


def yarn_rows(rows: Rows) -> Iterator[Number]:
    """Warp, weft and picks."""
    yield _warp(rows)
    yield _weft(rows)
    yield _picks(rows)


def _to_add(rows: Rows, *roles: Add) -> tuple[str, ...]:
    """What the kit may say to know more, of these roles."""
    every = rows.plan.amounts.to_add
    return tuple(rows.words.again(each) for each in every if isinstance(each, Said) and each.role in roles)


def _warp(rows: Rows) -> Number:
    amounts = rows.plan.amounts
    scale, _ = rows.figures.scales(WEIGHT)
    heavy = rows.figures.plain(amounts.warp_total_g, scale) if amounts.warp_total_g else ""
    row = rows.of("warp", Row.WARP, amounts.warp_total_m, LONG, heavy)
    row = rows.giving(row, "warp.spare", Give.OWN)
    if not heavy:
        row = row._replace(needs="warp.count", needs_said=rows.words.say(Need.WARP))
    return row._replace(why=(*row.why, *_to_add(rows, Add.WARP)))


def _weft(rows: Rows) -> Number:
    amounts = rows.plan.amounts
    lacking = _to_add(rows, Add.TAKE_UP, Add.STRANDS, Add.COLOURS)
    if amounts.weft_total_m is None:
        if amounts.picks_per_cm is None:
            return rows.lacking("weft", Row.WEFT, ("weft.beads.number", Need.PICKS), lacking)
        return rows.lacking("weft", Row.WEFT, ("weft.wrap.turns", Need.WEFT), lacking)
    scale, _ = rows.figures.scales(WEIGHT)
    heavy = rows.figures.plain(amounts.weft_total_g, scale) if amounts.weft_total_g else ""
    row = rows.of("weft", Row.WEFT, amounts.weft_total_m, LONG, heavy)
    colours = tuple(_colour(rows, each) for each in amounts.weft_by_colour)
    row = row._replace(why=(*row.why, *colours, *lacking))
    if most := amounts.narrows_most:
        row = row._replace(gives=_FIRST.get(most.key, most.key))
        return row._replace(gives_said=rows.words.say(Give.NARROWS, what=rows.words.again(most.said)))
    return rows.giving(row, "weft.spare", Give.OWN)


def _colour(rows: Rows, each: ColourNeed) -> str:
    long, _ = rows.figures.scales(LONG)
    heavy, _ = rows.figures.scales(WEIGHT)
    length, weight = rows.figures.likely(each.length_m, long), rows.figures.plain(each.weight_g, heavy)
    return rows.words.say(Shown.COLOUR, name=each.name, length=length, weight=weight)


def _picks(rows: Rows) -> Number:
    picks = rows.plan.amounts.picks_per_cm
    if picks is None:
        return rows.lacking("picks", Row.PICKS, ("weft.beads.number", Need.PICKS), _to_add(rows, Add.PICKS))
    return rows.giving(rows.of("picks", Row.PICKS, picks, PER), "weft.beads.number", Give.BEADS)


def piece_rows(rows: Rows) -> Iterator[Number]:
    """The piece as it is woven and finished, heading rows, and what to buy."""
    amounts = rows.plan.amounts
    for number, name, sides in (
        ("woven", Row.WOVEN, amounts.woven_mm),
        ("finished", Row.FINISHED, amounts.finished_mm),
    ):
        shown = tuple(
            rows.words.say(
                Shown.SIZE, width=rows.figures.plain(sides[0], scale), height=rows.figures.plain(sides[1], scale)
            )
            for scale in rows.figures.scales(SHORT)
        )
        why = tuple(dict.fromkeys((*rows.figures.why(sides[0]), *rows.figures.why(sides[1]))))
        origin = Origin.ASSUMED if any(side.origin is Origin.ASSUMED for side in sides) else Origin.COMPUTED
        row = rows.row(number, name, (shown[0], shown[1]), origin, why)
        field = ("weaving.draw_in", Give.DRAW_IN) if number == "woven" else ("weaving.shrinkage", Give.SHRINKAGE)
        yield rows.giving(row, *field)
    yield rows.of("heading", Row.HEADING, amounts.heading_thread_m, LONG)
    if amounts.balls:
        yield _buy(rows)


def _buy(rows: Rows) -> Number:
    balls, say = rows.plan.amounts.balls, rows.words.say
    scale, _ = rows.figures.scales(WEIGHT)
    why = tuple(
        say(
            Shown.BALLS_OF_COLOUR if each.colour else Shown.BALLS_OF,
            balls=each.balls,
            yarn=each.yarn,
            left=rows.figures.likely(each.left_g, scale),
            **({"colour": each.colour} if each.colour else {}),
        )
        for each in balls
    )
    return rows.row(
        "buy", Row.BUY, (say(Shown.BALLS, balls=sum(each.balls for each in balls)), ""), Origin.COMPUTED, why
    )
