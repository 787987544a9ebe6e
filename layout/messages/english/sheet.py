"""What the heads of sheets say, and the warp in few words."""

from __future__ import annotations

from collections.abc import Mapping

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Count, Sheet

MESSAGES: Mapping[Role, str | Plural] = {
    Sheet.PART: "{part}: {sett}",
    Sheet.YARNS: "Warp {warp}, weft {weft}; {counts}",
    Sheet.NUMBER: "Sheet {number} of {total}",
    Sheet.FOR_BOTTOM: "For the bottom of the frame as it stands before you.",
    Sheet.FOR_TOP: "For the top of the frame as it stands before you.",
    Count.SETT_CM_WINDS: Plural(
        "count", "{sett} ends per cm, {count} wind to {unit}", "{sett} ends per cm, {count} winds to {unit}"
    ),
    Count.SETT_CM_ENDS: Plural(
        "count", "{sett} ends per cm, {count} end to {unit}", "{sett} ends per cm, {count} ends to {unit}"
    ),
    Count.SETT_INCH_WINDS: Plural(
        "count", "{sett} ends per inch, {count} wind to {unit}", "{sett} ends per inch, {count} winds to {unit}"
    ),
    Count.SETT_INCH_ENDS: Plural(
        "count", "{sett} ends per inch, {count} end to {unit}", "{sett} ends per inch, {count} ends to {unit}"
    ),
    Count.WINDS: Plural("winds", "{winds} wind, {ends} ends", "{winds} winds, {ends} ends"),
    Count.WINDS_AND_A_PASS: Plural(
        "winds", "{winds} wind and one pass, {ends} ends", "{winds} winds and one pass, {ends} ends"
    ),
    Count.ENDS: "{ends} ends",
    Count.DOUBLED: "every end of two threads",
    Count.DOUBLED_OUTER: Plural(
        "outer", "the outer end at each side doubled", "the outer {outer} ends at each side doubled"
    ),
}
