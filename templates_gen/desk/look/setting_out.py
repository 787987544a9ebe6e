"""The rows on the sett and the warp: how close, how many, how wide."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from layout.values.numerals import say_number
from layout.values.quantity import Origin
from templates_gen.desk.look.answers import Number
from templates_gen.desk.look.figures import PER, SHORT
from templates_gen.desk.look.range_drawing import Tick, range_drawing
from templates_gen.desk.look.rows import Rows
from templates_gen.messages.roles.desk_numbers import Give, Row, Shown

_PER_CM = Fraction(10)


def setting_out(rows: Rows) -> Iterator[Number]:
    """Sett, winds or ends, and the width of the weaving."""
    yield _sett(rows)
    yield _count(rows)
    yield _weaving(rows)


def _sett(rows: Rows) -> Number:
    sett, figures, say = rows.plan.warp.sett, rows.figures, rows.words.say
    shown = figures.both(sett.per_mm * _PER_CM, PER)
    given = sett.high is None
    as_it_is = given or not sett.loss
    row = rows.row("sett", Row.SETT, shown, Origin.MEASURED if as_it_is else Origin.COMPUTED, ())
    row = rows.giving(row, "sett.given", Give.SETT) if given else rows.giving(row, "sett.marking_unit", Give.UNIT)
    if sett.high is None:
        return row
    scale, _ = figures.scales(PER)
    low, high, taken = (float(per_mm * _PER_CM) * scale.each for per_mm in (sett.low, sett.high, sett.per_mm))
    said = [say_number(Fraction(each).limit_denominator(10**6), scale.places) for each in (low, high, taken)]
    ticks = (
        Tick(taken, say(Shown.TAKEN, number=said[2]), taken=True),
        Tick(low, rows.words.figure(said[0])),
        Tick(high, rows.words.figure(said[1])),
    )
    about = say(Shown.SETT_RANGE, low=said[0], high=said[1], taken=said[2])
    drawing = range_drawing(low, high, ticks, say(Shown.READ), about)
    return row._replace(low=low, high=high, taken=taken, range=drawing)


def _count(rows: Rows) -> Number:
    warp, say = rows.plan.warp, rows.words.say
    apart, _ = rows.figures.both(warp.pitch, SHORT)
    doubled = rows.plan.doubled
    more = (rows.words.listed([rows.words.again(each) for each in doubled]),) if doubled else ()
    why = (*_spacing(rows), *more)
    if not warp.winds:
        row = rows.row("winds", Row.ENDS, (str(warp.ends), say(Shown.APART, length=apart)), Origin.COMPUTED, why)
    else:
        number = say(Shown.AND_A_PASS, winds=warp.winds) if warp.ends % 2 else str(warp.winds)
        shown = number, say(Shown.ENDS_APART, ends=warp.ends, length=apart)
        row = rows.row("winds", Row.WINDS, shown, Origin.COMPUTED, why)
    return rows.giving(row, "weaving.width", Give.WIDTH)


def _spacing(rows: Rows) -> tuple[str, ...]:
    """From mark to mark, and how many marks there are."""
    warp, say = rows.plan.warp, rows.words.say
    apart, _ = rows.figures.both(warp.spacing, SHORT)
    return (say(Shown.MARKS, length=apart, near=len(warp.near), far=len(warp.far)),)


def _weaving(rows: Rows) -> Number:
    warp, say = rows.plan.warp, rows.words.say
    first, second = rows.figures.both(warp.width, SHORT)
    whole = Shown.WHOLE_WINDS if warp.winds and warp.ends % 2 == 0 else Shown.WHOLE_ENDS
    room, _ = rows.figures.both(rows.plan.kit.frame.widest_weaving.mm, SHORT)
    why = (say(whole), say(Shown.FRAME_LEAVES, length=room))
    row = rows.row("weaving", Row.WEAVING, (first, say(Shown.WIDE, length=second)), Origin.COMPUTED, why)
    return rows.giving(row, "weaving.width", Give.WIDTH)
