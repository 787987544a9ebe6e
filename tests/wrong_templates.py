"""Wrong builders of templates: what is sawn or drilled, how they are folded, what stands on and beside them."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Any

from kits import NAILS, NOTCHED, PEGGED
from wrong_builders import Wrong, returns, swap, value

import layout.parts.marking.ties as ties_module
import layout.parts.template.levels as levels_module
import layout.parts.template.notched as notched_module
import layout.parts.template.pin_picture as pin_picture_module
import layout.parts.template.pinned as pinned_module
import layout.parts.template.sheet_words as sheet_module
import layout.parts.template.template as template_module
import layout.parts.template.words as words_module
import layout.warps.pegged as pegs_module
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Region, line
from layout.messages.roles import Marking, SheetName, Template

NEAR, FAR = "strip-near.pdf", "strip-far.pdf"
HELD = NOTCHED | {"frame.notch_density": "5 per cm"}
NAILED = NAILS | {"frame.nail_length": "12 mm"}
FROM_RIGHT = PEGGED | {"weaving.start": "right", "weaving.near_end": "top", "weaving.tie_off": "far end"}
_DRAFT: Any = template_module._Draft


def each(**changes: Callable[[Any], Any]) -> Callable[[Any], Any]:
    """Every opening with another value."""
    return lambda all_: [o._replace(**{key: change(o) for key, change in changes.items()}) for o in all_]


def first(**changes: Callable[[Any], Any]) -> Callable[[Any], Any]:
    """The first opening with another value."""
    return lambda all_: [*each(**changes)(list(all_)[:1]), *list(all_)[1:]]


def openings(change: Callable[[Any], Any]) -> Any:
    """Other openings are drawn than are planned."""
    return returns(_DRAFT, "openings", change)


def levels(module: Any, name: str, **changes: Any) -> Any:
    """Heights that are other ones."""
    return returns(module, name, lambda found: replace(found, **changes))


def drawn(change: Callable[[Any], Any]) -> Any:
    """An opening is drawn another way."""
    return returns(levels_module.Opening, "drawn", change)


def worded(module: Any, kind: str, old: str, new: str) -> Any:
    """Other words in every step of a kind."""
    return returns(getattr(module, kind), "steps", lambda steps: [step.replace(old, new) for step in steps])


def crossed(found: Any) -> Any:
    """Left and right with each other's words."""
    return [[phrase._replace(stand=_OTHER.get(phrase.stand, phrase.stand)) for phrase in wish] for wish in found]


_OTHER = {"left": "right", "right": "left"}


def turned(right: Any) -> property:
    """The weaving on the other side."""
    return property(lambda draft: -right.fget(draft))


def pointing_away(draft: Any, x: float) -> Any:
    """An arrow from the weaving."""
    v = draft.levels.words
    shaft = draft.upright(x, v - 1.0, v + 1.0, Pen.OUTLINE)
    return shaft, template_module.triangle(Point(x, draft.up * (v - 1.6)), Point(0, -draft.up), 2.0, 2.0)


def over_the_first(right: Any) -> Any:
    """The centre's line runs over all notches."""
    return lambda draft: line(Point(0.0, draft.up * -3), Point(0.0, right(draft).start.y), Pen.CENTRE_SHORT)


def without_fill(shapes: Any) -> Any:
    """Outlines alone."""
    return [shape for shape in shapes if not isinstance(shape, Region)]


def without_hair(shapes: Any) -> Any:
    """No cross in any hole."""
    return [shape for shape in shapes if not (isinstance(shape, Curve) and shape.pen is Pen.HELP)]


def aside(mm: float) -> Callable[[Any], Any]:
    """Everything so far to the right."""
    return lambda shapes: Placing(0, mm, 0).shapes(list(shapes))


def numbered_on(draft_numbers: Any) -> Any:
    """Every number one more."""
    return [text._replace(words=str(int(text.words) + 1)) for text in draft_numbers]


TEMPLATES_WRONG: Mapping[str, Wrong] = {
    # what is sawn, drilled or nailed
    "a notch aside": Wrong(NOTCHED, NEAR, openings(first(x=lambda o: o.x + 0.002))),
    "a notch missing": Wrong(NOTCHED, "strip-near.svg", openings(lambda all_: all_[1:])),
    "a notch twice": Wrong(NOTCHED, FAR, openings(lambda all_: [*all_, all_[0]])),
    "notches not deep enough": Wrong(NOTCHED, NEAR, openings(each(high=lambda o: o.high - 0.1))),
    "notches too wide": Wrong(NOTCHED, "strip-far.svg", openings(each(wide=lambda o: o.wide + 0.1))),
    "a used notch left empty": Wrong(HELD, NEAR, openings(first(used=lambda _: False))),
    "an empty notch filled": Wrong(
        HELD, "strip-near.svg", openings(lambda all_: [*all_[:-1], all_[-1]._replace(used=True)])
    ),
    "no empty notches": Wrong(HELD, NEAR, openings(lambda all_: [o for o in all_ if o.used])),
    "openings without grey": Wrong(NOTCHED, NEAR, drawn(without_fill)),
    "holes without crosses": Wrong(PEGGED, NEAR, drawn(without_hair)),
    "crosses that do not reach past a hole": Wrong(PEGGED, FAR, value(levels_module, "PAST_HOLE", 0.6)),
    "rows of pegs exchanged": Wrong(PEGGED, NEAR, returns(pegs_module, "in_outer_row", lambda outer: not outer)),
    "rows of pegs as far apart as from the edge": Wrong(
        PEGGED,
        "strip-far.svg",
        value(pinned_module, "peg_depth", lambda ends, k: ends.edge_distance.mm * (1 if k % 2 else 2)),
    ),
    "pegs of one row": Wrong(PEGGED, NEAR, value(pinned_module, "peg_depth", lambda *_: 22)),
    "nails drawn thicker": Wrong(NAILED, "strip-far.svg", openings(each(wide=lambda _: 2.0, high=lambda _: 2.0))),
    # how it is folded, laid and read
    "a fold inside the board": Wrong(NOTCHED, NEAR, levels(notched_module, "notches", lines=((0.5, Pen.FOLD),))),
    "a flap as if the board were thinner": Wrong(NOTCHED, NEAR, levels(notched_module, "notches", free=-10.0)),
    "the line of a row of pegs aside": Wrong(
        PEGGED, NEAR, levels(pinned_module, "rows", lines=((10.0, Pen.HELP), (21.99, Pen.HELP)))
    ),
    "the line of a row of nails aside": Wrong(NAILS, NEAR, levels(pinned_module, "rows", lines=((9.99, Pen.HELP),))),
    "paper that does not begin at the outer edge": Wrong(PEGGED, NEAR, levels(pinned_module, "rows", free=0.5)),
    "a template upside down": Wrong(NOTCHED, "strip-near.svg", swap(_DRAFT, "up", turned)),
    "dots aside": Wrong(NOTCHED, "strip-near.svg", returns(_DRAFT, "units", aside(0.01))),
    "dots of another unit": Wrong(NOTCHED, NEAR, value(template_module, "small_unit", lambda _: 5)),
    "a dot missing": Wrong(NAILS, NEAR, returns(_DRAFT, "units", lambda all_: list(all_)[1:])),
    "the line of the centre aside": Wrong(
        NOTCHED, NEAR, returns(_DRAFT, "centre", lambda path: Placing(0, 0.01, 0).shapes([path])[0])
    ),
    "a line over a notch": Wrong(NOTCHED | {"weaving.width": "20.4 cm"}, NEAR, swap(_DRAFT, "centre", over_the_first)),
    "an arrow away from the weaving": Wrong(FROM_RIGHT, NEAR, value(_DRAFT, "arrow", pointing_away)),
    "numbers one too high": Wrong(PEGGED, NEAR, returns(_DRAFT, "numbers", numbered_on)),
    "numbers beside their neighbours": Wrong(NOTCHED, NEAR, returns(_DRAFT, "numbers", aside(4.0))),
    "no numbers": Wrong(NAILS, NEAR, returns(_DRAFT, "numbers", lambda _: [])),
    # what it says
    "left and right exchanged": Wrong(NOTCHED, NEAR, returns(template_module, "wishes", crossed)),
    "tied on at the other side": Wrong(
        NOTCHED, NEAR, value(ties_module, "_ON", {"left": Marking.ON_RIGHT, "right": Marking.ON_LEFT})
    ),
    "tied off where the warp is tied on": Wrong(
        PEGGED, NEAR, value(ties_module, "_OFF", {"left": Marking.ON_LEFT, "right": Marking.ON_RIGHT})
    ),
    "near and far exchanged in words": Wrong(
        FROM_RIGHT, NEAR, value(words_module, "_NAMES", {"near": (Marking.FAR_BRIEF, Marking.FAR)})
    ),
    "another way through notches": Wrong(
        HELD, NEAR, value(notched_module, "_HELD", dict.fromkeys(notched_module._HELD, Template.STEP_EVERY))
    ),
    "width and depth of a notch exchanged in words": Wrong(
        NOTCHED, FAR, worded(notched_module, "SawnTemplate", "1.2 mm wide, 6 mm", "6 mm wide, 1.2 mm")
    ),
    "pegs of another size in words": Wrong(PEGGED, NEAR, worded(pinned_module, "DrilledTemplate", "2.5 mm", "3 mm")),
    "nails of another size in words": Wrong(NAILED, NEAR, worded(pinned_module, "NailedTemplate", "1.8 mm", "2 mm")),
    "nails that stand out further in words": Wrong(
        NAILED, NEAR, worded(pinned_module, "NailedTemplate", "12 mm", "14 mm")
    ),
    "a step left out": Wrong(
        PEGGED, NEAR, returns(pinned_module.DrilledTemplate, "steps", lambda steps: list(steps)[:-1])
    ),
    "the caution of nails left out": Wrong(NAILED, NEAR, value(pinned_module.NailedTemplate, "cautions", ())),
    "the title of the other end": Wrong(
        PEGGED,
        FAR,
        value(sheet_module, "NAMES", {"drilling": (*[SheetName.NAME_PEGS_NEAR] * 3, SheetName.PURPOSE_PEGS)}),
    ),
    "a template to nail called one to drill": Wrong(
        NAILED, NEAR, value(sheet_module, "NAMES", {"nailing": sheet_module.NAMES["drilling"]})
    ),
    "the picture ties on at another peg": Wrong(PEGGED, NEAR, value(pin_picture_module, "_TIED_ON", 1)),
}
"""By a name that says what is wrong."""
