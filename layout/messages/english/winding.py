"""What the winding sheet says."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Shed, Winding, WindStep

MESSAGES: dict[Role, str | Plural] = {
    Winding.PURPOSE_THERE_AND_BACK: "One thread, there and back, from knot to knot.",
    Winding.FAR_BAR: "Far bar",
    Winding.NEAR_BAR: "Near bar",
    Winding.ROD: "rod",
    Winding.WINDS_BETWEEN: "winds {first} to {last}",
    Winding.ENDS_BETWEEN: "ends {first} to {last}",
    Winding.ON_FACE: "on the face",
    Winding.BEHIND: "behind",
    Winding.BEHIND_TOOTH: "behind a tooth",
    Winding.KNOT: "knot",
    Winding.BY_STRIPS: "Not to scale. Numbers are those of the marking strips.",
    Winding.BY_TEMPLATES: "Not to scale. Numbers are those of the templates.",
    Winding.SIDE_FACE: "face",
    Winding.SIDE_BEHIND: "behind",
    Winding.FROM_RIGHT: "from the right side",
    Winding.HITCHES: "two half hitches",
    Winding.CLIP: "clip",
    Winding.BOW: "the last a bow",
    Winding.TIGHTEN: (
        "Wind with the frame at its lowest, {low}; then tighten it, to no more than {tight}. It stores energy: rods "
        "and wedges can fly when they slip, so wear glasses and ease it off before you cut or loosen anything."
    ),
    Winding.TENSION: "A warped frame is under tension: keep your face clear of it.",
    Winding.DRAW_ROD: "Slacken the warp before you draw the rod.",
    WindStep.TIE_ON: "Tie on at near {mark} with two half hitches.",
    WindStep.TIE_ON_ROD: "Tie on to the loose rod behind, with two half hitches.",
    WindStep.TO_FAR_ON_FACE: "Go along the face to far {mark}.",
    WindStep.TO_FAR_BEHIND: "Go behind the frame to far {mark}.",
    WindStep.TO_FAR_CROSSING_BACK: "Cross from the face, in the middle, to far {mark} behind.",
    WindStep.TO_FAR_CROSSING_FACE: "Cross from behind, in the middle, to far {mark} on the face.",
    WindStep.FIRST_FROM_ROD: "Round the near bar at {mark}, along the face, over the far bar at {mark}.",
    WindStep.BACK_BEHIND: "Round the far bar, and back behind.",
    WindStep.BACK_ON_FACE: "Round the far bar, and back along the face.",
    WindStep.BACK_CROSSING_BACK: "Round the far bar, and cross back from the face to behind.",
    WindStep.BACK_CROSSING_FACE: "Round the far bar, and cross back from behind to the face.",
    WindStep.BACK_TO_ROD: "Down behind to the rod, and round it.",
    WindStep.BACK_BY_TOOTH: "Through the notch, behind the tooth, and out at far {mark}.",
    WindStep.BACK_BY_TEETH: "Through the notch, behind two teeth, and out at far {mark}.",
    WindStep.BACK_BY_PEG: "Round the peg, and back along the face.",
    WindStep.BACK_BY_NAIL: "Round the nail, and back along the face.",
    WindStep.ON_ROUND_BAR: "Round the near bar at near {near}, on to far {far}.",
    WindStep.ON_FROM_ROD: "The same way back at {mark}: far bar, face, near bar, rod.",
    WindStep.ON_BY_TOOTH: "In at near {near}, behind the tooth, out at near {next}.",
    WindStep.ON_BY_TEETH: "In at near {near}, behind two teeth, out at near {next}.",
    WindStep.ON_BY_PEG: "Round the peg at near {near}, on to far {far}.",
    WindStep.ON_BY_NAIL: "Round the nail at near {near}, on to far {far}.",
    WindStep.LAST_FAR_MARK: "Go on so to the last far mark, {mark}.",
    WindStep.LAST_NEAR_MARK: "Go on so to the last near mark, {mark}.",
    WindStep.LAST_ROD_MARK: "Go on so to the last marks, {mark}.",
    WindStep.CLIP_NEAR: "Come to near {mark}. Clip the thread to the bar.",
    WindStep.CLIP_FAR: "Come to far {mark}. Clip the thread to the bar.",
    WindStep.CLIP_ROD: "Back at the rod, clip the thread to it.",
    WindStep.PULL_WINDS: "From the first wind on, pull the slack along.",
    WindStep.PULL_ENDS: "From the first end on, pull the slack along.",
    WindStep.TIE_OFF: "Tie off: two half hitches, the last a bow.",
    WindStep.TIE_OFF_CUT: "Cut it {tail} past the bar. Tie off: two half hitches, the last a bow.",
    WindStep.TIE_OFF_CUT_ROD: "Cut it {tail} past the rod. Tie off: two half hitches, the last a bow.",
    Shed.TITLE: "Shed stick and heading rows",
    Shed.NEAR_BAR: "near bar",
    Shed.FAR_BAR: "far bar",
    Shed.FACE_ENDS: "face ends",
    Shed.FRONT_ENDS: "ends on the face there",
    Shed.SECOND_ENDS: "every second end",
    Shed.SIDE_PIECE: "side piece",
    Shed.STICK_FACE: (
        "Slide the shed stick under the face ends near the far bar, on top of the side pieces. Tie it to both."
    ),
    Shed.STICK_FRONT: (
        "Slide the shed stick near the far bar under the ends on the face there, on the side pieces. Tie it to both."
    ),
    Shed.STICK_SECOND: (
        "Slide the shed stick under every second end near the far bar, on the side pieces. Tie it to both."
    ),
    Shed.ROWS: Plural(
        "rows",
        "Weave {rows} heading row at both bars with warp thread, over and under: it locks the ends.",
        "Weave {rows} heading rows at both bars with warp thread, over and under: they lock the ends.",
    ),
    Shed.ROWS_ROD: Plural(
        "rows",
        "Weave {rows} heading row at the far bar with warp thread, over and under. The other comes last, by the rod.",
        "Weave {rows} heading rows at the far bar with warp thread, over and under. The others come last, by the rod.",
    ),
    Shed.HITCHED: "Tie a half hitch round every end at both bars with warp thread: they lock the ends.",
    Shed.HITCHED_ROD: (
        "Tie a half hitch round every end at the far bar with warp thread. The others come last, by the rod."
    ),
}
