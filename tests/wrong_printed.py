"""Wrong builders of what is printed: strips, templates, pictures, check sheets, gauges, guides and grids."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction
from typing import Any

from kits import FLAT, NAILS, NOTCHED, PEGGED, TRAVEL
from wrong_builders import Spoil, Wrong, returns, swap, value

import layout.estimate.headings as headings_module
import layout.estimate.room_left as room_left_module
import layout.parts.guide_sheet as guide_sheet_module
import layout.parts.guide_words as guide_words_module
import layout.plan as plan_module
import layout.warps.nailed as nailed_module
import layout.warps.pegged as pegged_module
import layout.warps.warping as warping_module
from layout.drawing.shapes import Placing
from layout.sett.marking_units import SINGLY

ROUND: Mapping[str, object] = {"weaving.slant": "face straight"}
HELD = NOTCHED | {"frame.notch_density": "5 per cm"}
ROUNDED = FLAT | {"frame.edge_radius": "4 mm"}
TIED = PEGGED | {"warp": {"wrap": {"turns": 50, "window": "20 mm"}}}  # a thread of 0.4 mm
NAILED = NAILS | {"warp": {"wrap": {"turns": 50, "window": "20 mm"}}, "frame.outer_height": "40 cm"}
FROM_RIGHT = PEGGED | {"weaving.start": "right", "weaving.near_end": "top", "weaving.tie_off": "far end"}


def near_marks(draft: Any) -> list[float]:
    """The marks of the near end, whichever end is asked for."""
    return list(map(float, draft.plan.warp.near))


def aside(shapes: Any) -> Any:
    """The first shape 5 micrometres to the right."""
    return [*Placing(0, 0.005, 0).shapes(shapes[:1]), *shapes[1:]]


def fan_of_a_thread(thick: Fraction) -> Spoil:
    """The fan as if the ends were so thick in mm."""
    return swap(
        guide_words_module,
        "fan_of",
        lambda right: lambda frame, warp: right(frame, replace(warp, thickness=thick)),
    )


PRINTED: Mapping[str, Wrong] = {
    # the fan
    "the thread left out between pegs": Wrong(TIED, "spacing-guide.pdf", fan_of_a_thread(Fraction(0))),
    "the thread taken twice between pegs": Wrong(TIED, "spacing-guide.pdf", fan_of_a_thread(Fraction(4, 5))),
    "the fan of pegs that stand in one row": Wrong(
        TIED, "spacing-guide.pdf", value(pegged_module, "peg_depth", lambda ends, _: ends.edge_distance.mm)
    ),
    "the thread left out between nails": Wrong(NAILED, "spacing-guide.pdf", fan_of_a_thread(Fraction(0))),
    "the fan of nails that stand at the edge": Wrong(
        NAILED,
        "spacing-guide.pdf",
        swap(
            nailed_module,
            "courses_between",
            lambda right: (
                lambda frame, warp, across, _, period: right(frame, warp, across, lambda _: Fraction(0), period)
            ),
        ),
    ),
    "the fan of a frame at its lowest": Wrong(
        TRAVEL | {"weaving.slant": "face straight"},
        "spacing-guide.pdf",
        swap(
            guide_words_module,
            "fan_of",
            lambda right: lambda frame, warp: right(replace(frame, travel=None), warp),
        ),
    ),
    "the fan of nails on a frame at its lowest": Wrong(
        NAILED | TRAVEL,
        "spacing-guide.pdf",
        swap(
            guide_words_module,
            "fan_of",
            lambda right: lambda frame, warp: right(replace(frame, travel=None), warp),
        ),
    ),
    "a far heading as if woven at the lowest height": Wrong(
        TRAVEL | {"weaving.height": "as high as fits", "weaving.slant": "face straight"},
        "spacing-guide.pdf",
        swap(
            room_left_module,
            "_inner",
            lambda right: lambda kit, wide: right(replace(kit, frame=replace(kit.frame, travel=None)), wide),
        ),
    ),
    # what is counted off, and what is tied outside
    "single ends counted off between pegs": Wrong(
        PEGGED | {"sett": {"readings": [{"pairs": 26, "window": "5 cm"}], "marking_unit": "1 cm"}},
        "strip-near.pdf",
        value(plan_module, "counted_by", lambda *_: SINGLY),
    ),
    "single ends counted off between nails": Wrong(
        NAILS | {"sett": {"readings": [{"pairs": 26, "window": "5 cm"}], "marking_unit": "1 cm"}},
        "strip-near.pdf",
        value(plan_module, "counted_by", lambda *_: SINGLY),
    ),
    "a tie-off in the margin": Wrong(
        {"weaving.slant": "face straight", "weaving.width": "as wide as fits"},
        "strip-near.pdf",
        swap(
            warping_module,
            "_between_margins",
            lambda _: (
                lambda most, sett, frame, weaving, thread: (
                    most,
                    warping_module._laid(most, sett, frame.ends, weaving, thread),
                )
            ),
        ),
    ),
    "an unknown thread not named": Wrong(
        PEGGED, "spacing-guide.pdf", returns(guide_sheet_module, "leaves_thickness_out", lambda _: False)
    ),
    "a thread that is known called unknown": Wrong(
        TIED, "spacing-guide.pdf", returns(guide_sheet_module, "leaves_thickness_out", lambda _: True)
    ),
    "the thread left out of the picture's slant": Wrong(
        TIED,
        "winding.pdf",
        swap(plan_module, "warp_on", lambda right: lambda sett, frame, weaving, _: right(sett, frame, weaving)),
    ),
    "a heading where the layers still lie apart": Wrong(
        ROUND,
        "spacing-guide.pdf",
        swap(headings_module, "apart_at", lambda right: lambda kit: replace(right(kit), value=right(kit).value / 2)),
    ),
}
"""By a name that says what is wrong."""
