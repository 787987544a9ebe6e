"""Wrong builders of a warp in a figure eight: layers that stay, marks of the other end, an open loop."""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Any

from kits import CROSSED, FLAT
from wrong_builders import Wrong, returns, swap, value

import layout.parts.winding.actions as actions_module
import layout.parts.winding.shed as shed_module
import layout.parts.winding.side as side_module
import layout.warps.crossed as crossed_module
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point
from layout.messages.roles import Shed
from layout.parts.winding.face import Face
from layout.parts.winding.kinds import crossed as picture_module
from layout.warps.warp import Warp

BACK_FIRST = CROSSED | {"weaving.first_pass": "back"}
THICK = CROSSED | {"frame.bar_diameter": "60 mm", "weaving.height": "20 cm"}
PICTURE, GUIDE = "winding.pdf", "spacing-guide.pdf"


def _open(right: Any) -> Any:
    """Passes that stay in the layer in which they leave the near end."""
    return lambda each, **changes: right(each, **(changes | {"far_layer": None}))


def _layers_of(end: str) -> Any:
    """The layers at one frame end, wherever they are asked for."""
    return swap(Warp, "layers_at", lambda right: lambda warp, _: right(warp, end))


def _upright(right: Any) -> Any:
    """Arrows as of an open loop."""
    return lambda at, ahead, *size: right(at, Point(0, math.copysign(1, ahead.y)), *size)


def _halves_exchanged(shapes: Any) -> Any:
    pens = {Pen.THREAD: Pen.THREAD_BACK, Pen.THREAD_BACK: Pen.THREAD}
    return [each._replace(pen=pens[each.pen]) if isinstance(each, Curve) else each for each in shapes]


CROSSED_WRONG: Mapping[str, Wrong] = {
    "passes that do not cross": Wrong(
        CROSSED, PICTURE, value(crossed_module, "_OTHER", {"face": "face", "back": "back"})
    ),
    "the halves of passes exchanged": Wrong(FLAT | CROSSED, "winding.svg", returns(Face, "halves", _halves_exchanged)),
    "the far half of a pass left out": Wrong(CROSSED, PICTURE, returns(Face, "halves", lambda both: list(both)[:1])),
    "the far guide with the layers of the near end": Wrong(CROSSED, GUIDE, _layers_of("near")),
    "the near guide with the layers of the far end": Wrong(BACK_FIRST, GUIDE, _layers_of("far")),
    "the fan of an open winding": Wrong(
        THICK, GUIDE, returns(crossed_module.CrossedBars, "belt", lambda belt: belt._replace(lean=0.0))
    ),
    "the fan of boards that take no height": Wrong(
        FLAT | CROSSED | {"frame.end_width": "60 mm", "weaving.height": "20 cm"},
        GUIDE,
        returns(crossed_module.CrossedBoards, "belt", lambda belt: belt._replace(turn=belt.turn - 120)),
    ),
    "the loop seen from the right not crossed": Wrong(CROSSED, PICTURE, swap(side_module, "arrow_head", _upright)),
    "passes seen from the right that lean away from each other": Wrong(
        CROSSED,
        "winding.svg",
        returns(picture_module.CrossedBarPicture, "section", lambda s: s._replace(slope=-s.slope)),
    ),
    "the steps of an open winding": Wrong(CROSSED, PICTURE, value(actions_module, "_CROSSED", actions_module._OPEN)),
    "the stick under the ends of an open winding": Wrong(
        FLAT | CROSSED, PICTURE, value(shed_module, "_stick_role", lambda _: Shed.STICK_FACE)
    ),
}
"""By a name that says what is wrong."""
