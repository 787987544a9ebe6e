"""The inputs about yarns, and what is computed from them: one part of the table of inputs. All may be left out."""

from __future__ import annotations

from fractions import Fraction

from layout.kit.input import Input, of_mm
from layout.messages.catalogue import Role
from layout.messages.roles import KitHelp
from layout.yardage.given import HALF_HITCHES, WORKED
from layout.yarns.diameter import SPECIFIC_VOLUMES
from layout.yarns.thickness import Make, Wrapped
from layout.yarns.yarn_counts import ORDERS

_FAR = of_mm(3000)
_VERY_FAR = of_mm(100_000_000)


def _label(table: str) -> tuple[Input, ...]:
    """The keys that say how heavy a yarn is."""
    return (
        Input(f"{table}.count", "count", KitHelp.YARN_COUNT, "8"),
        Input(f"{table}.system", "system", KitHelp.YARN_SYSTEM, '"ne"'),
        Input(f"{table}.plies", "whole", KitHelp.YARN_PLIES, "2", most=Fraction(100)),
        Input(
            f"{table}.order",
            "choice",
            KitHelp.YARN_ORDER,
            '"count/plies"',
            choices=ORDERS,
        ),
        Input(f"{table}.grams", "amount", KitHelp.YARN_GRAMS, "50", least=Fraction(1, 1000)),
        Input(
            f"{table}.length",
            "length",
            KitHelp.YARN_LENGTH,
            '"120 m"',
            low=of_mm(10),
            high=_VERY_FAR,
        ),
    )


def _wrap(table: str) -> tuple[Input, ...]:
    """The keys of a hand wrap."""
    return (
        Input(f"{table}.wrap.turns", "whole", KitHelp.YARN_WRAP_TURNS, "11"),
        Input(f"{table}.wrap.window", "length", KitHelp.YARN_WRAP_WINDOW, '"2 cm"', low=of_mm(1), high=_FAR),
        Input(
            f"{table}.wrap.how",
            "choice",
            KitHelp.YARN_WRAP_HOW,
            '"pushed together"',
            choices=tuple(Wrapped),
        ),
    )


def _thread(table: str) -> tuple[Input, ...]:
    """The keys of one yarn: how heavy it is, of what fibre, and how it wraps."""
    return (
        *_label(table),
        Input(f"{table}.weighed", "flag", KitHelp.YARN_WEIGHED, "true"),
        Input(
            f"{table}.threads",
            "tables",
            KitHelp.YARN_THREADS,
            '[{count = 8, system = "ne"}, {count = 20, system = "ne"}]',
        ),
        *_label(f"{table}.threads[]"),
        Input(
            f"{table}.fibre",
            "choice",
            KitHelp.YARN_FIBRE,
            '"cotton"',
            choices=tuple(SPECIFIC_VOLUMES),
        ),
        Input(f"{table}.make", "choice", KitHelp.YARN_MAKE, '"firm"', choices=tuple(Make)),
        *_wrap(table),
        Input(f"{table}.ball", "amount", KitHelp.YARN_BALL, "50"),
    )


def _counted(table: str, what: Role) -> tuple[Input, ...]:
    """The keys of something counted over a height."""
    return (
        Input(f"{table}.number", "whole", what, "26"),
        Input(f"{table}.over", "length", KitHelp.YARN_OVER, '"5 cm"', low=of_mm(1), high=_FAR),
    )


_WARP = (
    *_thread("warp"),
    Input("warp.stretch", "share", KitHelp.WARP_STRETCH, '"1 %"'),
    Input("warp.spare", "share", KitHelp.WARP_SPARE, '"10 %"'),
    Input("warp.knot", "length", KitHelp.WARP_KNOT, '"100 mm"', low=of_mm(0), high=_FAR),
    Input("warp.tail", "length", KitHelp.WARP_TAIL, '"150 mm"', low=of_mm(0), high=_FAR),
)

_WEFT = (
    Input(
        "weft.strands",
        "tables",
        KitHelp.WEFT_STRANDS,
        '[{number = 2, grams = 50, length = "160 m", fibre = "wool"}]',
    ),
    Input("weft.strands[].number", "whole", KitHelp.WEFT_STRANDS_NUMBER, "2", most=Fraction(100)),
    Input("weft.strands[].colour", "name", KitHelp.WEFT_STRANDS_COLOUR, '"ash grey"'),
    *_thread("weft.strands[]"),
    *_wrap("weft"),
    *_counted("weft.picks", KitHelp.WEFT_PICKS_NUMBER),
    *_counted("weft.beads", KitHelp.WEFT_BEADS_NUMBER),
    Input("weft.beat", "amount", KitHelp.WEFT_BEAT, "0.5", least=Fraction(0), most=Fraction(1)),
    Input(
        "weft.pick.straight",
        "length",
        KitHelp.WEFT_PICK_STRAIGHT,
        '"118 mm"',
        low=of_mm(1),
        high=_FAR,
    ),
    Input("weft.pick.woven", "length", KitHelp.WEFT_PICK_WOVEN, '"100 mm"', low=of_mm(1), high=_FAR),
    Input("weft.spare", "share", KitHelp.WEFT_SPARE, '"10 %"'),
    Input("weft.tail", "length", KitHelp.WEFT_TAIL, '"25 mm"', low=of_mm(0), high=_FAR),
    Input(
        "weft.colours",
        "tables",
        KitHelp.WEFT_COLOURS,
        '[{name = "madder", share = 60}, {name = "ash grey", share = 40}]',
    ),
    Input("weft.colours[].name", "name", KitHelp.WEFT_COLOURS_NAME, '"madder"'),
    Input(
        "weft.colours[].share",
        "amount",
        KitHelp.WEFT_COLOURS_SHARE,
        "100",
        least=Fraction(0),
        most=Fraction(100),
    ),
    Input("weft.colours[].lengths", "whole", KitHelp.WEFT_COLOURS_LENGTHS, "20"),
    Input("weft.sample.grams", "amount", KitHelp.WEFT_SAMPLE_GRAMS, "9.2", least=Fraction(1, 1000)),
    Input("weft.sample.width", "length", KitHelp.WEFT_SAMPLE_WIDTH, '"10 cm"', low=of_mm(1), high=_FAR),
    Input("weft.sample.height", "length", KitHelp.WEFT_SAMPLE_HEIGHT, '"12 cm"', low=of_mm(1), high=_FAR),
)

_ROOM = (
    Input("weaving.draw_in", "share", KitHelp.WEAVING_DRAW_IN, '"2 %"'),
    Input("weaving.shrinkage", "share", KitHelp.WEAVING_SHRINKAGE, '"5 %"'),
    Input("weaving.washed.before", "length", KitHelp.WEAVING_WASHED_BEFORE, '"200 mm"', low=of_mm(1), high=_FAR),
    Input("weaving.washed.after", "length", KitHelp.WEAVING_WASHED_AFTER, '"188 mm"', low=of_mm(1), high=_FAR),
    Input("weaving.hem", "length", KitHelp.WEAVING_HEM, '"20 mm"', low=of_mm(0), high=of_mm(300)),
    Input(
        "room.heading",
        "heading",
        KitHelp.ROOM_HEADING,
        '"10 mm"',
        low=of_mm(0),
        high=_FAR,
        word=HALF_HITCHES,
    ),
    Input("room.heading_rows", "whole", KitHelp.ROOM_HEADING_ROWS, "4", least=Fraction(0), most=Fraction(40)),
    Input(
        "room.worked",
        "choice",
        KitHelp.ROOM_WORKED,
        '"with a needle"',
        choices=WORKED,
    ),
    Input("room.hand", "length", KitHelp.ROOM_HAND, '"80 mm"', low=of_mm(0), high=_FAR),
    Input(
        "room.slope",
        "amount",
        KitHelp.ROOM_SLOPE,
        "0.25",
        least=Fraction(1, 50),
        most=Fraction(1),
    ),
    Input(
        "room.stick_past",
        "length",
        KitHelp.ROOM_STICK_PAST,
        '"40 mm"',
        low=of_mm(0),
        high=of_mm(500),
    ),
    Input("room.leash_reach", "length", KitHelp.ROOM_LEASH_REACH, '"90 mm"', low=of_mm(5), high=of_mm(1000)),
    Input("room.leash_knot", "length", KitHelp.ROOM_LEASH_KNOT, '"60 mm"', low=of_mm(0), high=of_mm(1000)),
)

YARN_INPUTS = (*_WARP, *_WEFT, *_ROOM)
"""In the order of the kit file."""
