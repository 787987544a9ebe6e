"""Tables of a kit file that are the value of one field, such as a wrap reading: made as soon as their keys are read.

The value is then held under the key of its table, as that of any other key is under its own.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from fractions import Fraction
from functools import reduce
from math import floor
from typing import Any

from layout.frames.strength import Dip, Pluck
from layout.frames.tension import MOST_DIP, lighter
from layout.kit.box_types import BOX_MAKERS
from layout.kit.fields import example_of
from layout.kit.frame_inputs import LONGEST
from layout.kit.lookup import KIT
from layout.kit.order import OrderGiven
from layout.kit.unknown_keys import entry_example, short_key
from layout.messages.catalogue import Between, Message
from layout.messages.english import ENGLISH
from layout.messages.roles import EndNeed, Refusal, Table, YarnNeed
from layout.sett.sett import WrapReading
from layout.values.errors import FieldError, leave_out, shown
from layout.values.forces import say_force
from layout.values.units import Length, exact_length, say_length
from layout.yardage.given import (
    HALF_HITCHES,
    ColourGiven,
    CountedRows,
    DrawnPick,
    RoomGiven,
    Sample,
    WarpGiven,
    Washed,
    WeftGiven,
)
from layout.yardage.weft_total import colour_shares
from layout.yarns.label import Label, StrandGiven, Wrap
from layout.yarns.yarn import MOST_STRANDS
from layout.yarns.yarn_counts import ORDERS, SYSTEMS, read_folded, two_meanings

Leaves = Mapping[str, Any]
Maker = Callable[[str, Leaves], Any]


def _reading(key: str, leaves: Leaves) -> WrapReading:
    """One wrap reading."""
    if "pairs" not in leaves or ("window" in leaves) == ("measure" in leaves):
        raise FieldError(key, Table.READING, _found(leaves), entry_example("sett.readings[]"))
    return WrapReading(leaves["pairs"], leaves.get("window") or leaves["measure"], "measure" in leaves)


def _whole(make: Callable[..., Any], table: str, *wanted: str) -> Maker:
    """The maker of a value that needs all the keys `wanted`."""

    def maker(key: str, leaves: Leaves) -> Any:
        if any(leaf not in leaves for leaf in wanted):
            raise FieldError(key, Table.KEYS, _found(leaves), entry_example(table), keys=_together(wanted))
        return make(**leaves)

    return maker


def _thread(make: Callable[..., Label]) -> Maker:
    """The maker of a yarn: a count such as "8/2" is taken apart, and what is left must describe a yarn."""

    def maker(key: str, leaves: Leaves) -> Label:
        given = dict(leaves)
        order, count = given.pop("order", None), given.get("count")
        if isinstance(count, str):
            given["count"], given["plies"] = _apart(key, count, order, given)
        elif order is not None:
            raise FieldError(f"{key}.order", Table.ORDER_ALONE, shown(order), 'count = "8/2"')
        label = make(**given)
        label.yarn(key)
        return label

    return maker


def _apart(key: str, count: str, order: str | None, given: Leaves) -> tuple[Any, int]:
    if order is None and (meanings := two_meanings(count)):
        example = f'order = "{ORDERS[0]}"'
        raise FieldError(f"{key}.order", YarnNeed.WHICH, shown(count), example, **meanings[2].values)
    number, plies = read_folded(count, order, f"{key}.count")
    if "plies" in given:
        raise FieldError(f"{key}.plies", Table.PLIES_TWICE, str(given["plies"]), leave_out("plies"))
    if plies.denominator != 1 or not 1 <= plies <= 100:
        raise FieldError(f"{key}.count", Table.PLIES, shown(count), 'count = "8/2"')
    counted = str(given.get("system"))
    if plies > 1 and counted in SYSTEMS and SYSTEMS[counted].finished:
        raise FieldError(f"{key}.system", Table.FOLDED_COUNT, shown(counted), 'system = "ne"', count=count)
    return number, int(plies)


def _folded_thread(key: str, leaves: Leaves) -> Label:
    """One of several threads that are folded together, which must be described."""
    if not leaves:
        raise FieldError(key, Table.THREAD, shown(None), '{count = 8, system = "ne"}')
    label: Label = _thread(Label)(key, leaves)
    return label


def _drawn(key: str, leaves: Leaves) -> DrawnPick:
    """A pick drawn out, which cannot be shorter than it lay."""
    drawn: DrawnPick = _whole(DrawnPick, "weft.pick", "straight", "woven")(key, leaves)
    if drawn.straight.mm < drawn.woven.mm:
        longer = min(drawn.woven.mm * Fraction("1.18"), LONGEST.mm)
        example = f'straight = "{exact_length(Length(longer, drawn.woven.unit))}"'
        got, woven = say_length(drawn.straight), say_length(drawn.woven)
        raise FieldError(f"{key}.straight", Table.DRAWN_PICK, got, example, width=woven)
    return drawn


def _washed(key: str, leaves: Leaves) -> Washed:
    """A sample before and after washing, which cannot have grown."""
    washed: Washed = _whole(Washed, "weaving.washed", "before", "after")(key, leaves)
    if washed.after.mm > washed.before.mm:
        got, example = say_length(washed.after), f'after = "{exact_length(washed.before)}"'
        raise FieldError(f"{key}.after", Table.WASHED, got, example, before=say_length(washed.before))
    return washed


def _dip(key: str, leaves: Leaves) -> Dip:
    """A dip that is not too deep to measure a pull by."""
    dip: Dip = _whole(Dip, "frame.dip", "load", "length", "depth")(key, leaves)
    most = dip.length.mm * MOST_DIP
    if dip.depth.mm > most:
        deepest = say_length(Length(floor(10 * most) / Fraction(10)))
        needed = Message(EndNeed.DIP, {"most": deepest, "load": say_force(lighter(dip))})
        raise FieldError(f"{key}.depth", needed, say_length(dip.depth), f'depth = "{deepest}"')
    return dip


def _weft(key: str, leaves: Leaves) -> WeftGiven:
    """The weft: its colours make a whole, its strands a bundle, and picks are counted in one way."""
    weft = WeftGiven(**leaves)
    if weft.picks and weft.beads:
        raise FieldError(f"{key}.beads", Table.BEADS_AND_PICKS, Message(Refusal.BOTH), leave_out("beads"))
    names = [colour.name for colour in weft.colours]
    if len(set(names)) < len(names):
        twice = next(name for name in names if names.count(name) > 1)
        raise FieldError(f"{key}.colours", Table.COLOUR_TWICE, shown(twice), _example("weft.colours"))
    try:
        if names:
            colour_shares({colour.name: colour.share for colour in weft.colours}, f"{key}.colours")
    except FieldError as error:
        raise error.at(error.field, _example("weft.colours")) from None
    if sum(strand.number for strand in weft.strands) > MOST_STRANDS:
        got = str(sum(strand.number for strand in weft.strands))
        raise FieldError(f"{key}.strands", Table.STRANDS, got, _example("weft.strands"), most=MOST_STRANDS)
    return weft


def _example(key: str) -> str:
    return example_of(KIT.by_key[key])


def _room(key: str, leaves: Leaves) -> RoomGiven:
    """The room that is left: half hitches have no rows."""
    room = RoomGiven(**leaves)
    if room.heading == HALF_HITCHES and room.heading_rows is not None:
        got = str(room.heading_rows)
        raise FieldError(f"{key}.heading_rows", Table.ROWS_HITCHED, got, leave_out("heading_rows"))
    return room


def _together(keys: Iterable[str]) -> str:
    """Keys with "and" between any two, since each of them counts."""
    return reduce(lambda before, after: ENGLISH.say(Between.AND, before=before, after=after), keys)


def _found(leaves: Leaves) -> str:
    return _together(map(short_key, leaves)) if leaves else shown({})


_YARNS = ("warp", "weft.strands[]")

MAKERS: Mapping[str, Maker] = {
    "sett.readings[]": _reading,
    "warp": _thread(WarpGiven),
    "weft": _weft,
    "room": _room,
    **BOX_MAKERS,
    "order": _whole(OrderGiven, "order"),
    "weft.strands[]": _thread(StrandGiven),
    "weft.picks": _whole(CountedRows, "weft.picks", "number", "over"),
    "weft.beads": _whole(CountedRows, "weft.beads", "number", "over"),
    "weft.pick": _drawn,
    "weaving.washed": _washed,
    "frame.dip": _dip,
    "frame.pluck": _whole(Pluck, "frame.pluck", "hertz", "length"),
    "weft.colours[]": _whole(ColourGiven, "weft.colours[]", "name", "share"),
    "weft.sample": _whole(Sample, "weft.sample", "grams", "width", "height"),
    **{f"{table}.threads[]": _folded_thread for table in _YARNS},
    **{f"{table}.wrap": _whole(Wrap, f"{table}.wrap", "turns", "window") for table in (*_YARNS, "weft")},
}
"""By the key of the table, `[]` for each entry of a list: `maker(key, leaves)` of the keys that were given."""
