"""The inputs about yarns, and what is computed from them: one part of the table of inputs. All may be left out."""

from __future__ import annotations

from fractions import Fraction

from layout.kit.input import Input, of_mm
from layout.yarns.diameter import SPECIFIC_VOLUMES
from layout.yarns.yarn_counts import ORDERS

_FAR = of_mm(3000)
_VERY_FAR = of_mm(100_000_000)


def _label(table: str) -> tuple[Input, ...]:
    """The keys that tell how heavy a yarn is."""
    return (
        Input(f"{table}.count", "count", "The count of the singles, or of the yarn if plies are left out.", "8"),
        Input(f"{table}.system", "system", "The system that the count is in.", '"ne"'),
        Input(f"{table}.plies", "whole", "How many singles are folded into the yarn.", "2", most=Fraction(100)),
        Input(
            f"{table}.order",
            "choice",
            'What is what in a count such as "8/2".',
            '"count/plies"',
            choices=ORDERS,
        ),
        Input(f"{table}.grams", "amount", "What a ball weighs, in grams.", "50", least=Fraction(1, 1000)),
        Input(
            f"{table}.length",
            "length",
            "How long the thread of that weight is.",
            '"120 m"',
            low=of_mm(10),
            high=_VERY_FAR,
        ),
    )


def _wrap(table: str) -> tuple[Input, ...]:
    """The keys of a hand wrap."""
    return (
        Input(f"{table}.wrap.turns", "whole", "Turns side by side, touching but not squeezed.", "11"),
        Input(f"{table}.wrap.window", "length", "The window that they fill.", '"2 cm"', low=of_mm(1), high=_FAR),
    )


def _thread(table: str) -> tuple[Input, ...]:
    """The keys of one yarn: how heavy it is, of what fibre, and how it wraps."""
    return (
        *_label(table),
        Input(f"{table}.weighed", "flag", "Whether you weighed that length yourself.", "true"),
        Input(
            f"{table}.threads",
            "tables",
            "Unlike threads folded into one yarn.",
            '[{count = 8, system = "ne"}, {count = 20, system = "ne"}]',
        ),
        *_label(f"{table}.threads[]"),
        Input(
            f"{table}.fibre",
            "choice",
            "What it is spun of; with the weight it gives the compressed diameter.",
            '"cotton"',
            choices=tuple(SPECIFIC_VOLUMES),
        ),
        *_wrap(table),
    )


def _counted(table: str, what: str) -> tuple[Input, ...]:
    """The keys of something counted over a height."""
    return (
        Input(f"{table}.number", "whole", f"{what}.", "26"),
        Input(f"{table}.over", "length", "The height that they were counted over.", '"5 cm"', low=of_mm(1), high=_FAR),
    )


_WARP = (
    *_thread("warp"),
    Input("warp.stretch", "share", "By how much the warp stretches under tension.", '"1 %"'),
    Input("warp.spare", "share", "Warp thread to spare.", '"10 %"'),
    Input("warp.knot", "length", "Thread for one knot.", '"100 mm"', low=of_mm(0), high=_FAR),
    Input("warp.tail", "length", "The tail at the start of the heading rows.", '"150 mm"', low=of_mm(0), high=_FAR),
)

_WEFT = (
    Input(
        "weft.strands",
        "tables",
        "The strands that are woven together as one weft.",
        '[{number = 2, grams = 50, length = "160 m", fibre = "wool"}]',
    ),
    Input("weft.strands[].number", "whole", "How many strands of this yarn.", "2", most=Fraction(100)),
    Input("weft.strands[].colour", "name", "Its colour, if it has one of its own.", '"ash grey"'),
    *_thread("weft.strands[]"),
    *_wrap("weft"),
    *_counted("weft.picks", "Picks counted on a sample"),
    *_counted("weft.beads", "Beads counted along one warp end of a sample, two picks each"),
    Input(
        "weft.beat", "amount", "How close the beads lie: 1 is touching.", "0.8", least=Fraction(1, 20), most=Fraction(1)
    ),
    Input(
        "weft.pick.straight",
        "length",
        "The length of a pick pulled out of a sample, laid straight.",
        '"118 mm"',
        low=of_mm(1),
        high=_FAR,
    ),
    Input("weft.pick.woven", "length", "The width of that pick in the cloth.", '"100 mm"', low=of_mm(1), high=_FAR),
    Input("weft.tail", "length", "A tail at each end of every length of weft.", '"25 mm"', low=of_mm(0), high=_FAR),
    Input(
        "weft.colours",
        "tables",
        "The colours and their shares of the woven area.",
        '[{name = "madder", share = 60}, {name = "ash grey", share = 40}]',
    ),
    Input("weft.colours[].name", "name", "The name of the colour.", '"madder"'),
    Input(
        "weft.colours[].share",
        "amount",
        "Its share of the area; all together make 100 or 1.",
        "100",
        least=Fraction(0),
        most=Fraction(100),
    ),
    Input("weft.colours[].lengths", "whole", "How many lengths of it are woven in.", "20"),
    Input("weft.sample.grams", "amount", "The weft that a sample took, in grams.", "9.2", least=Fraction(1, 1000)),
    Input("weft.sample.width", "length", "How wide the sample is.", '"10 cm"', low=of_mm(1), high=_FAR),
    Input("weft.sample.height", "length", "How high the sample is.", '"12 cm"', low=of_mm(1), high=_FAR),
)

_ROOM = (
    Input("weaving.draw_in", "share", "By how much the width draws in while weaving.", '"2 %"'),
    Input("weaving.shrinkage", "share", "By how much the piece shrinks when it is taken off and washed.", '"5 %"'),
    Input(
        "weaving.washed.before", "length", "How long a sample was before washing.", '"200 mm"', low=of_mm(1), high=_FAR
    ),
    Input("weaving.washed.after", "length", "How long it is afterwards.", '"188 mm"', low=of_mm(1), high=_FAR),
    Input("room.heading", "length", "The heading at each end of the weaving.", '"10 mm"', low=of_mm(0), high=_FAR),
    Input("room.hand", "length", "Open warp for hand, shed stick and shed.", '"80 mm"', low=of_mm(0), high=_FAR),
    Input(
        "room.slope",
        "amount",
        "How steeply face and back layer may come together: rise over run.",
        "0.25",
        least=Fraction(1, 50),
        most=Fraction(1),
    ),
    Input(
        "room.stick_past",
        "length",
        "How far the shed stick passes each side.",
        '"40 mm"',
        low=of_mm(0),
        high=of_mm(500),
    ),
    Input(
        "room.leash_reach", "length", "How far a leash reaches to its rod.", '"90 mm"', low=of_mm(5), high=of_mm(1000)
    ),
    Input("room.leash_knot", "length", "Cord for the knot of a leash.", '"60 mm"', low=of_mm(0), high=of_mm(1000)),
)

YARN_INPUTS = (*_WARP, *_WEFT, *_ROOM)
"""In the order of the kit file."""
