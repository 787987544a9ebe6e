"""Wrong builders of marking strips: where marks and numbers stand, how a strip wraps its bar, what it says."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from fractions import Fraction
from typing import Any

from kits import CROSSED, FLAT, ROD
from wrong_builders import Wrong, returns, swap, value

import layout.paper.sheets as sheets_module
import layout.parts.marking.kinds as kinds_module
import layout.parts.marking.sheet_words as sheet_module
import layout.parts.marking.signs as signs_module
import layout.parts.marking.strip as strip_module
import layout.parts.marking.ties as ties_module
import layout.parts.marking.words as words_module
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, line
from layout.frames.kinds.flat_ends import FlatEnd
from layout.frames.kinds.round_bars import RoundBar
from layout.messages.english import ENGLISH
from layout.messages.roles import Marking, SheetName
from layout.parts.marking.flap import Phrase

ROUND: Mapping[str, object] = {"weaving.slant": "face straight"}
ROUNDED = FLAT | {"frame.edge_radius": "4 mm"}
ODD_WIDTH = {"weaving.width": "88 mm"}
LONG = {"weaving.width": "24 cm"}
DOUBLED = {"weaving.doubled_selvedges": 2}
NEAR, FAR = "strip-near.pdf", "strip-far.pdf"
_DRAFT: Any = strip_module._Draft


def turned(right: Any) -> property:
    """The weaving on the other side."""
    return property(lambda draft: -right.fget(draft))


def moved(way: float) -> Callable[[Any], Any]:
    """Everything so many mm to the right."""
    return lambda shapes: Placing(0, way, 0).shapes(list(shapes))


def first_moved(shapes: Any) -> Any:
    """The first shape 5 micrometres to the right."""
    first, *others = shapes
    return [*Placing(0, 0.005, 0).shapes([first]), *others]


def mirrored(ticks: Any) -> Any:
    """Counted from the other limit."""
    return [line(Point(-t.start.x, t.start.y), Point(-t.start.x, t.steps[0].end.y), t.pen) for t in ticks]


def shorter(marks: Any) -> Any:
    """The first mark ends in the middle of the strip."""
    first, *others = marks
    return [line(first.start, Point(first.start.x, 0.0), first.pen), *others]


def said(old: Marking, new: Marking, **values: object) -> Callable[[Any], Any]:
    """One phrase in the place of another."""
    words = ENGLISH.say(old, **values)
    return lambda wishes: [
        [phrase._replace(words=ENGLISH.say(new, **values)) if phrase.words == words else phrase for phrase in wish]
        for wish in wishes
    ]


def back(wishes: Any) -> Any:
    """The winding goes on the other way."""
    return [[phrase._replace(arrow=-phrase.arrow) for phrase in wish] for wish in wishes]


MARKING_WRONG: Mapping[str, Wrong] = {
    # marks and numbers
    "a strip upside down": Wrong(ROUND, "strip-near.svg", swap(_DRAFT, "up", turned)),
    "a mark of a strip aside": Wrong(ROUND, NEAR, returns(_DRAFT, "marks", first_moved)),
    "a mark that does not reach the fold": Wrong(ROUND, "strip-near.svg", returns(_DRAFT, "marks", shorter)),
    "near and far exchanged": Wrong(
        ROUND,
        "strip-far.svg",
        value(_DRAFT, "contacts", property(lambda draft: list(map(float, draft.plan.warp.near)))),
    ),
    "marks that stop short of the weaving edge": Wrong(
        ROUNDED, "strip-far.svg", returns(kinds_module, "flat_end", lambda levels: replace(levels, plain=9.0))
    ),
    "every tenth mark heavy": Wrong(ROUND, "strip-near.svg", value(strip_module, "HEAVY", 10)),
    "numbers one too high": Wrong(
        ROUND, NEAR, returns(strip_module, "numbers", lambda all_: [n._replace(number=n.number + 1) for n in all_])
    ),
    "numbers beside the next mark": Wrong(
        {}, NEAR, returns(strip_module, "numbers", lambda all_: [n._replace(left=n.left + 8) for n in all_])
    ),
    "a number left out": Wrong(ROUND, NEAR, returns(strip_module, "numbers", lambda all_: all_[:-1])),
    # flap, scale and signs
    "half a turn of a thinner bar": Wrong(
        ROUND,
        "strip-near.svg",
        swap(RoundBar, "half_turn_mm", lambda right: property(lambda bar: right.fget(bar) * 0.99)),
    ),
    "the rounding of an edge forgotten": Wrong(
        ROUNDED, NEAR, value(FlatEnd, "half_turn_mm", property(lambda end: float(end.thickness.mm)))
    ),
    "a flap too narrow": Wrong(
        ROUND, "strip-far.svg", returns(kinds_module, "round_bar", lambda levels: replace(levels, free=levels.free + 2))
    ),
    "no grey where it is glued": Wrong(ROUND, "strip-near.svg", returns(_DRAFT, "flap", lambda shapes: shapes[1:])),
    "a small scale of inches": Wrong(ROUND, "strip-near.svg", value(strip_module, "_CENTIMETRE", Fraction(127, 5))),
    "a small scale from the other limit": Wrong(ODD_WIDTH, "strip-near.svg", returns(_DRAFT, "ticks", mirrored)),
    "long ticks as short as others": Wrong(ROUND, "strip-near.svg", value(strip_module, "_LONG_TICK", 0.9)),
    "the centre aside": Wrong(
        ROUND, "strip-far.svg", returns(_DRAFT, "centre", lambda shape: Placing(0, 1, 0).shapes([shape])[0])
    ),
    "arrows away from the weaving": Wrong(
        LONG,
        "strip-near.svg",
        swap(signs_module, "small_arrow", lambda right: lambda tip, way: right(tip, Point(-way.x, -way.y))),
    ),
    "arrows on marks": Wrong(
        LONG, "strip-near.svg", returns(signs_module.Room, "middles", lambda xs: [x + 4 for x in xs])
    ),
    # what a strip says
    "left and right exchanged": Wrong(
        ROUND, FAR, value(ties_module, "_SIDES", {"left": Marking.RIGHT, "right": Marking.LEFT})
    ),
    "tied on at the other side": Wrong(
        LONG, NEAR, value(ties_module, "_ON", {"left": Marking.ON_RIGHT, "right": Marking.ON_LEFT})
    ),
    "tied off a wind late": Wrong(
        LONG, NEAR, returns(words_module, "_tied", lambda all_: [(side, role, n + 1) for side, role, n in all_])
    ),
    "the winding goes on the other way": Wrong(ROUND, "strip-near.svg", returns(strip_module, "wishes", back)),
    "near and far exchanged in words": Wrong(
        LONG,
        NEAR,
        value(words_module, "_NAMES", dict(zip(("far", "near"), words_module._NAMES.values(), strict=True))),
    ),
    "both bars named": Wrong(
        LONG,
        NEAR,
        returns(strip_module, "wishes", lambda all_: [*all_, [Phrase("other", ENGLISH.say(Marking.FAR_BRIEF))]]),
    ),
    "no bar named": Wrong(LONG, FAR, returns(strip_module, "wishes", lambda all_: all_[1:-1])),
    "the ends of the other layer said to be in front": Wrong(
        CROSSED, NEAR, returns(strip_module, "wishes", said(Marking.ODD, Marking.EVEN))
    ),
    "a knot named on the strip of a rod": Wrong(
        ROD, NEAR, value(words_module, "_tied", lambda *_: [("left", Marking.ON_LEFT, 0)])
    ),
    "winds said for ends": Wrong(ROD, NEAR, returns(strip_module, "wishes", said(Marking.ENDS_GO, Marking.WINDS_GO))),
    # what its sheet says
    "the low form used as the full one": Wrong(
        ROUND | {"frame.bar_diameter": "5 mm"},
        NEAR,
        returns(
            sheet_module,
            "_steps",
            lambda steps: [Marking.STEP_WRAP_BAR if s is Marking.STEP_ALONG_BAR else s for s in steps],
        ),
    ),
    "a step left out": Wrong(ROUND, NEAR, returns(sheet_module, "_steps", lambda steps: list(steps)[:-1])),
    "a board wrapped as a bar": Wrong(FLAT, FAR, value(sheet_module, "FlatEnd", RoundBar)),
    "a scale of another unit in the legend": Wrong(
        ROUND, NEAR, value(sheet_module, "_CENTIMETRE", sheet_module._QUARTER)
    ),
    "the name of the other end": Wrong(
        ROUND, FAR, value(sheet_module, "_NAMES", dict.fromkeys(("strip-near", "strip-far"), SheetName.NAME_STRIP_NEAR))
    ),
    "as many ends as winds": Wrong(
        ROUND,
        NEAR,
        returns(sheets_module, "_head", lambda head: replace(head, facts=head.facts.replace("50 ends", "25 ends"))),
    ),
    "a fold drawn as a line to cut": Wrong(
        ROUND,
        "strip-near.svg",
        returns(kinds_module, "round_bar", lambda levels: replace(levels, lines=((0.0, Pen.REGISTER),))),
    ),
}
"""By a name that says what is wrong."""
