"""Wrong builders of a warp from a loose rod: marks, knots and words of a warp that is tied to the frame."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from kits import FLAT, ROD
from wrong_builders import Wrong, returns, swap, value

import layout.parts.guide_sheet as guide_sheet
import layout.parts.guide_words as guide_words
import layout.parts.winding.actions as actions_module
import layout.parts.winding.kinds.loose_rod as picture_module
import layout.parts.winding.shed as shed_module
import layout.parts.winding.winding as winding_module
import layout.warps.loose_rod as rod_module
from layout.drawing.shapes import Point, Text
from layout.messages.english import ENGLISH
from layout.messages.roles import Guide, Shed, Winding, WindStep
from layout.parts.winding.face import Face
from layout.warps.layout_result import LayoutResult
from layout.warps.warp import Warp

PICTURE = "winding.pdf"
LOADED = ROD | {"frame.material": "oak", "frame.tension": "2 N"}


def _slanted(laid: LayoutResult) -> LayoutResult:
    """Far marks half a pitch further on, as of a warp that is wound."""
    far = tuple(x + laid.spacing / 2 for x in laid.far)
    return laid._replace(far=far, passes=tuple(one._replace(far=x) for one, x in zip(laid.passes, far, strict=True)))


def _rod_word_below(shapes: Any) -> Any:
    """The rod's name by the near end."""
    rod = ENGLISH.say(Winding.ROD)
    return [
        each._replace(at=Point(each.at.x, 3.0)) if isinstance(each, Text) and each.words == rod else each
        for each in shapes
    ]


def _of_two_headings(right: Any) -> Any:
    """How to use a guide of a warp that has two headings."""
    return lambda plan: ENGLISH.say(Guide.LAY, away=guide_words.lies(plan, "near").away)


ROD_WRONG: Mapping[str, Wrong] = {
    "far marks on a slant": Wrong(ROD, "strip-far.pdf", returns(rod_module.FromRod, "lay", _slanted)),
    "passes on a slant": Wrong(FLAT | ROD, PICTURE, returns(rod_module.FromRod, "lay", _slanted)),
    "the knots on a frame end": Wrong(
        ROD,
        PICTURE,
        value(picture_module._FromRod, "knot", lambda _, view, leg, end: Point(leg.near, view.inside(end, 0.6))),
    ),
    "the knots aside": Wrong(
        ROD, "winding.svg", returns(picture_module._FromRod, "knot", lambda at: Point(at.x + 2, at.y))
    ),
    "the rod in front of the frame, seen from the right": Wrong(
        ROD,
        PICTURE,
        returns(
            picture_module.BarRodPicture,
            "section",
            lambda s: s._replace(knot=Point(s.knot.x - 2 * s.half, s.knot.y)),
        ),
    ),
    "the rod at another height, seen from the right": Wrong(
        FLAT | ROD,
        PICTURE,
        returns(
            picture_module.BoardRodPicture,
            "section",
            lambda s: s._replace(knot=Point(s.knot.x, s.knot.y - 40)),
        ),
    ),
    "the rod named elsewhere": Wrong(ROD, PICTURE, returns(winding_module, "side_view", _rod_word_below)),
    "nothing said of the rod that is drawn": Wrong(
        ROD, PICTURE, returns(winding_module, "cautions", lambda each: [*each][:1])
    ),
    "the first end led behind the frame": Wrong(
        ROD,
        PICTURE,
        value(
            actions_module,
            "_ALONE",
            actions_module._ALONE | {"rod": actions_module._ALONE["rod"]._replace(there=WindStep.TO_FAR_BEHIND)},
        ),
    ),
    "heading rows at both bars": Wrong(
        FLAT | ROD, PICTURE, value(shed_module, "_rows_words", lambda plan: [plan.words.say(Shed.ROWS, rows=2)])
    ),
    "passes that run behind": Wrong(
        ROD,
        "winding.svg",
        returns(
            rod_module.FromRod,
            "lay",
            lambda laid: laid._replace(
                passes=tuple(one._replace(layer="back" if k % 2 else "face") for k, one in enumerate(laid.passes))
            ),
        ),
    ),
    "the tie-off at the far end": Wrong(
        ROD | {"weaving.width": "198 mm"},
        PICTURE,
        returns(Face, "knots", lambda knots: [knots[0], (Point(knots[1][0].x, knots[1][0].y + 8), "far")]),
    ),
    "threads of one layer alone": Wrong(
        LOADED, "frame-check.pdf", value(Warp, "pulling", property(lambda warp: sum(warp.threads)))
    ),
    "the far guide worded for a heading": Wrong(
        ROD,
        "spacing-guide.pdf",
        swap(
            guide_sheet,
            "_lay",
            _of_two_headings,
        ),
    ),
    "ends said to lie behind": Wrong(ROD, "spacing-guide.pdf", returns(guide_sheet, "has_back", lambda _: True)),
}
"""By a name that says what is wrong."""
