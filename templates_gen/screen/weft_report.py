"""What the plan says to people about the weft: how it lies, how much it takes, and what to buy."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from layout.values.quantity import Quantity
from layout.yardage.amounts import Amounts
from templates_gen.messages.language import message
from templates_gen.messages.roles.screen import Amount
from templates_gen.screen.ranges import LONG, PER_M2, PERCENT, PICKS, SHORT, THICK, WEIGHT, Unit, about
from templates_gen.screen.tables import Line


def weft_rows(amounts: Amounts, imperial: bool) -> Iterator[Line]:
    """The weft as it lies in the cloth, and the size it makes."""
    yield from _rows(
        imperial,
        (Amount.PRESSED, amounts.weft_pressed_mm, THICK),
        (Amount.SOFT, amounts.weft_soft_mm, THICK),
        (Amount.BEAD, amounts.bead_mm, THICK),
        (Amount.PICKS, amounts.picks_per_cm, PICKS),
        (Amount.TAKE_UP, amounts.weft_take_up, PERCENT),
        (Amount.BUBBLE, amounts.bubble_rise, PERCENT),
        (Amount.AREA, amounts.weft_g_per_m2, PER_M2),
    )
    yield from _rows(
        imperial,
        (Amount.WOVEN_WIDTH, amounts.woven_mm[0], SHORT),
        (Amount.WOVEN_HEIGHT, amounts.woven_mm[1], SHORT),
    )
    names = (Amount.FINISHED_WIDTH, Amount.FINISHED_HEIGHT)
    for name, woven, left, before in zip(
        names, amounts.woven_mm, amounts.finished_mm, amounts.for_finished_mm, strict=True
    ):
        if (left.low, left.high) != (woven.low, woven.high):
            yield _finished(name, left, (woven, before), imperial)


def _finished(name: Amount, left: Quantity, sizes: tuple[Quantity, Quantity], imperial: bool) -> Line:
    """A side of the finished piece; where the kit says that it shrinks, also what to weave for the size woven."""
    label, size, how = _row(name, left, SHORT, imperial)
    if left.value == sizes[0].value:
        return label, size, how
    woven, before = (about(each, SHORT, imperial=imperial) for each in sizes)
    return label, size, message(Amount.FINISHED_IS, how=how, woven=woven, before=before)


def need_rows(amounts: Amounts, imperial: bool) -> Iterator[Line]:
    """How much weft it takes, in all and by colour."""
    if total := amounts.weft_total_m:
        name, size, remark = _row(Amount.WEFT, total, LONG, imperial)
        if most := amounts.narrows_most:
            remark = message(Amount.NARROWS, what=most.said, key=most.key, how=remark)
        yield name, size, remark
    yield from _rows(imperial, (Amount.WEFT_WEIGHT, amounts.weft_total_g, WEIGHT))
    for need in amounts.weft_by_colour:
        length, weight = (
            about(figure, units, imperial=imperial)
            for figure, units in ((need.length_m, LONG), (need.weight_g, WEIGHT))
        )
        yield f"  {need.name}", length, message(Amount.HOW, origin=need.length_m.origin, reason=need.length_m.reason)
        yield "", weight, ""
    yield from _rows(
        imperial,
        (Amount.HEM, amounts.weft_hem_m, LONG),
        (Amount.SPARE, amounts.weft_spare_m, LONG),
        (Amount.TO_BUY, amounts.weft_to_buy_m, LONG),
    )


def buy_rows(amounts: Amounts, imperial: bool) -> Iterator[Line]:
    """The balls to buy of each yarn and colour, and what is left over."""
    for each in amounts.balls:
        left = message(
            Amount.LEFT_UNSURE if each.unsure else Amount.LEFT, left=about(each.left_g, WEIGHT, imperial=imperial)
        )
        remark = message(Amount.OF_YARN, yarn=each.yarn, left=left) if each.colour else left
        yield each.colour or each.yarn, message(Amount.BALLS, balls=each.balls), remark


def _rows(imperial: bool, *rows: tuple[Amount, Quantity | None, Sequence[Unit]]) -> Iterator[Line]:
    for name, figure, units in rows:
        if figure:
            yield _row(name, figure, units, imperial)


def _row(name: Amount, figure: Quantity, units: Sequence[Unit], imperial: bool) -> Line:
    how = message(Amount.HOW, origin=figure.origin, reason=figure.reason)
    return message(name), about(figure, units, imperial=imperial), how
