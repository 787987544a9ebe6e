"""The kits of the sweep: what each key may be, and the frames' widths."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from kits import CROSSED, FLAT, NAILS, NOTCHED, PEGGED, ROD
from sweep import Axes, Changes

from layout.kit.inputs import BY_KEY
from layout.values.units import Sett, exact_sett, read_sett

IN_MM = [f"{float(Fraction(k, 2)):g} mm" for k in range(2 * 280, 2 * 700)]
IN_INCHES = [f"{k // 16} {k % 16}/16 in" if k % 16 else f"{k // 16} in" for k in range(11 * 16, 28 * 16)]
_STRIDE = 167  # a prime, so that every width has its turn

_ENDS: dict[str, Changes] = {
    "round bars": {},
    "round bars, odd": {"weaving.tie_off": "far end", "weaving.doubled_selvedges": 1},
    "flat ends": FLAT,
    "flat ends, rounded": FLAT | {"frame.edge_radius": "1/8 in", "frame.thickness": "3/4 in"},
    "figure eight": CROSSED,
    "figure eight on flat ends, odd": FLAT | CROSSED | {"weaving.tie_off": "far end", "frame.edge_radius": "3 mm"},
    "loose rod": ROD,
    "loose rod on flat ends, doubled": FLAT | ROD | {"weaving.doubled_warp": True, "weaving.rod_diameter": "1/2 in"},
    "notched ends": NOTCHED,
    "notched already, every second": NOTCHED | {"notches": 2},
    "notched already, every one": NOTCHED | {"notches": 1},
    "notched already, two ends": NOTCHED | {"notches": Fraction(1, 2)},
    "pegged ends": PEGGED,
    "pegged ends, odd": PEGGED | {"weaving.tie_off": "far end", "weaving.doubled_warp": True},
    "nails": NAILS,
    "nails, odd": NAILS
    | {"frame.nail_length": "3/8 in", "frame.edge_distance": "1/2 in", "weaving.tie_off": "far end"},
}
_SETTS: tuple[Changes, ...] = (
    {"sett.given": "8 epi"},
    {"sett.given": "2.5 per cm"},
    {"sett.given": "6 1/2 epi"},
    {"sett.given": "27 per 10 cm"},
    {"sett.given": "3 per cm", "sett.marking_unit": "2 in"},
    {"sett.given": None, "sett.readings": [{"pairs": 13, "window": "5 cm"}]},
    {"sett.given": None, "sett.readings": [{"pairs": 13, "window": "2 in"}, {"pairs": 6, "window": "1 in"}]},
    {"sett.given": None, "sett.readings": [{"pairs": 11, "window": "4 cm"}], "sett.as_measured": True},
)
_SIZES: tuple[Changes, ...] = (
    {"weaving.width": "as wide as fits", "weaving.height": "28 cm", "frame.outer_height": "70 cm"},
    {"weaving.width": "20 cm", "weaving.height": "11 in", "frame.outer_height": "27 9/16 in"},
    {"weaving.width": "7 7/8 in", "weaving.height": "282.5 mm", "frame.outer_height": "655.5 mm"},
    {"weaving.width": "182.5 mm", "weaving.height": "23.75 cm", "frame.outer_height": "600.25 mm"},
    {"weaving.width": "190 mm", "weaving.height": "as high as fits", "frame.outer_height": "21 3/16 in"},
)
_WEFT = {"count": 600, "system": "tex", "fibre": "wool", "make": "firm", "ball": 50}
_PICKS: tuple[Changes, ...] = (
    {"weft": {"beads": {"number": 26, "over": "5 cm"}}},
    {"weft": {"picks": {"number": 45, "over": "2 in"}}},
    {"weft": {"wrap": {"turns": 11, "window": "2 cm"}}},
    {
        "weft": {"strands": [_WEFT], "beads": {"number": 28, "over": "5 cm"}}
    },  # as high as the weft allows, to half a bead
    {"weft": {"strands": [_WEFT], "beads": {"number": 8, "over": "5 cm"}}, "weaving.hem": "15 mm"},  # contradicts it
)
_WARP = {"count": 300, "system": "tex", "fibre": "cotton"}
_RODS: Changes = {"frame.tensioner": "rods", "frame.travel": "15 mm"}
_WEDGES: Changes = {"frame.tensioner": "wedges", "frame.travel": "1 3/16 in"}
_LOOSE = {"make": "soft", "wrap": {"turns": 13, "window": "2 cm", "how": "side by side"}}
_PULLS: tuple[Changes, ...] = (
    {},
    {"warp": _WARP | _LOOSE},
    {"frame.material": "oak", "frame.end_width": "30 mm", "frame.tension": "2 N"},
    {"frame.material": "steel", "frame.end_width": "1 1/4 in", "frame.tension": "7 oz"},
    {"frame.material": "mdf", "frame.end_width": "40 mm", "frame.left_warped": "months", "warp": _WARP} | _RODS,
    {"frame.modulus": 12_500, "frame.dip": {"load": "20 g", "length": "40 cm", "depth": "6 mm"}, "warp": _WARP},
    {"frame.pluck": {"hertz": 181.5, "length": "14 3/8 in"}, "frame.tension": "3.3 N", "warp": _WARP} | _WEDGES,
)
_TURNS: tuple[Changes, ...] = (
    {},
    {"weaving.near_end": "top", "weaving.first_pass": "back"},
    {"weaving.start": "right", "weaving.slant": "face straight"},
    {"weaving.doubled_selvedges": 2, "room.heading": "12.5 mm", "room.slope": None},
    {"room.heading": "half hitches", "weaving.woven_from": "back", "weaving.cartoon": "mirrored"},
    {"room.heading": None, "room.heading_rows": 5, "room.worked": "with a needle", "room.hand": None},
    {"room": {}, "weaving.woven_from": "back"},
)
AXES: Axes = {
    "ends": tuple(_ENDS.values()),
    "unit": ("mm", "in"),
    "sett": _SETTS,
    "side": ("25 mm", "17.5 mm", "1 3/8 in", "0 mm", "22.25 mm"),
    "paper": (*BY_KEY["paper.size"].choices, "148 x 210 mm", "8 1/2 x 14 in"),
    "lay": ("auto", "tiles", "diagonal"),
    "margin": ("15 mm", "1/4 in", "3 mm"),
    "size": _SIZES,
    "picks": _PICKS,
    "pull": _PULLS,
    "turn": _TURNS,
}


def changes_of(row: Changes, width: str) -> Changes:
    """The keys of a kit that such a row stands for, on a frame so wide."""
    changes: Changes = {
        "frame.outer_width": width,
        "frame.side_width": row["side"],
        "frame.margin": row["margin"],
        "paper": {"size": row["paper"], "lay": row["lay"]},
    }
    for name in ("ends", "sett", "size", "picks", "pull", "turn"):
        part = row[name]
        assert isinstance(part, dict)
        changes |= part
    if changes.get("frame.ends") in ("notched ends", "pegged ends", "nails"):
        changes |= {"weaving.first_pass": None, "weaving.slant": None}
    if changes.get("weaving.winding") == "figure eight":
        changes |= {"weaving.slant": None}
    if "weaving.near_hold" in changes:
        changes |= {"weaving.first_pass": None, "weaving.slant": None}
    if "frame.ends" not in changes:
        changes |= {"frame.end_width": None}
    if factor := changes.pop("notches", None):
        assert isinstance(factor, (int, Fraction))
        changes |= {"frame.notch_density": _notches(changes["sett.given"], factor), "sett.as_measured": None}
    return changes


def _notches(given: object, factor: Fraction | int) -> str:
    """So many notches for every end of a sett given, or of a usual one."""
    sett = read_sett(given or "2.5 per cm")
    return exact_sett(Sett(sett.per_mm * factor, sett.unit))


def widths(unit: str) -> Iterator[str]:
    """Every width in a unit, again and again, neighbours far apart."""
    every = IN_MM if unit == "mm" else IN_INCHES
    at = 0
    while True:
        yield every[at]
        at = (at + _STRIDE) % len(every)
