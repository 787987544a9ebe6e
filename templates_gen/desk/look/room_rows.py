"""The rows on the frame: the height that is free, how far its ends bend, and what opens the sheds."""

from __future__ import annotations

from collections.abc import Iterator

from layout.values.quantity import Origin
from layout.values.units import say_length
from templates_gen.desk.look.answers import Number
from templates_gen.desk.look.figures import FORCE, LONG, SHORT, THIN
from templates_gen.desk.look.range_drawing import Tick, range_drawing
from templates_gen.desk.look.rows import Rows
from templates_gen.messages.roles.desk_numbers import Give, Need, Row, Shown

_LEASHES = {"odd": Row.LEASHES_ODD, "even": Row.LEASHES_EVEN, "every second": Row.LEASHES}


def room_rows(rows: Rows) -> Iterator[Number]:
    """The height that is free, and bending."""
    yield _height(rows)
    yield _bending(rows)


def _height(rows: Rows) -> Number:
    free, asked, say = rows.plan.amounts.weavable_height_mm, rows.plan.kit.weaving.height, rows.words.say
    wanted = say(Shown.WANTED, length=say_length(asked, rows.words)) if asked else None
    row = rows.of("height", Row.HEIGHT, free, SHORT, wanted)
    row = rows.giving(row, "room.hand", Give.ROOM)
    scale, _ = rows.figures.scales(SHORT)
    high, taken = free.value * scale.each, (float(asked.mm) if asked else free.value) * scale.each
    said = rows.figures.exact(float(asked.mm) if asked else free.value, scale)
    ticks = Tick(taken, said, taken=True), Tick(0.0, "0"), Tick(high, row.value)
    drawing = range_drawing(0.0, high, ticks, say(Shown.FREE), say(Shown.HEIGHT_RANGE, taken=said, high=row.value))
    return row._replace(low=0.0, high=high, taken=taken, range=drawing)


def _bending(rows: Rows) -> Number:
    load, say = rows.plan.load, rows.words.say
    pull, other = (rows.figures.likely(load.pull, scale) for scale in rows.figures.scales(FORCE))
    tension = rows.words.again(load.thread_words)
    pulls = say(Shown.PULL, threads=load.threads, tension=tension, pull=pull, other=other)
    if load.bending is None:
        unknown = rows.plan.kit.strength.material is None and rows.plan.kit.strength.modulus is None
        needs = ("frame.material", Need.MATERIAL) if unknown else ("frame.end_width", Need.END_WIDTH)
        return rows.lacking("bending", Row.BENDING, needs, (pulls, rows.words.again(load.wanting)))
    row = rows.of("bending", Row.BENDING, load.bending, THIN)
    scale, _ = rows.figures.scales(THIN)
    most, taken = float(load.most) * scale.each, load.bending.value * scale.each
    said = rows.figures.exact(load.most, scale)
    ticks = Tick(taken, row.value, taken=True), Tick(0.0, "0"), Tick(most, said)
    drawing = range_drawing(0.0, most, ticks, say(Shown.GOOD), say(Shown.BENDING_RANGE, taken=row.value, most=said))
    assumed = rows.figures.why(load.bending)[1:]  # the note on the formula says it too
    why = tuple(each for each in row.why if each not in assumed)
    row = row._replace(low=0.0, high=most, taken=taken, range=drawing, why=(pulls, *why))
    return rows.giving(row, "frame.tension", Give.TENSION)


def shed_rows(rows: Rows) -> Iterator[Number]:
    """What else there is of the frame: its pull, the shed stick, leashes, and the fringes that are left."""
    amounts = rows.plan.amounts
    yield rows.giving(rows.of("pull", Row.PULL, rows.plan.load.pull, FORCE), "frame.tension", Give.TENSION)
    yield rows.giving(rows.of("stick", Row.STICK, amounts.shed_stick_mm, SHORT), "room.stick_past", Give.OWN)
    tied = amounts.leashes
    each, other = (rows.figures.likely(tied.each, scale) for scale in rows.figures.scales(SHORT))
    shown = str(tied.number), rows.words.say(Shown.OF_LENGTH, first=each, second=other)
    cord, beside = (rows.figures.plain(tied.together.scaled(1 / 1000), scale) for scale in rows.figures.scales(LONG))
    why = (rows.words.say(Shown.CORD, length=cord, other=beside), *rows.figures.why(tied.each))
    row = rows.row("leashes", _LEASHES[tied.ends], shown, Origin(tied.each.origin), why)
    yield rows.giving(row, "room.leash_reach", Give.OWN)
    yield rows.of("fringe_near", Row.FRINGE_NEAR, amounts.fringe_near_mm, SHORT)
    yield rows.of("fringe_far", Row.FRINGE_FAR, amounts.fringe_far_mm, SHORT)
