"""Kits of every kind of frame and every turn of winding, for the tests of pictures and of the frame check."""

from __future__ import annotations

from itertools import product

from kits import CROSSED, FLAT, NAILS, NOTCHED, PEGGED, ROD

KINDS: dict[str, dict[str, object]] = {
    "round bars": {},
    "flat ends": dict(FLAT),
    "figure eight": dict(CROSSED),
    "figure eight on flat ends": FLAT | CROSSED,
    "loose rod": dict(ROD),
    "loose rod on flat ends": FLAT | ROD,
    "notched ends": dict(NOTCHED),
    "notches in pairs": NOTCHED | {"frame.notch_density": "1.25 per cm"},
    "pegged ends": dict(PEGGED),
    "nails": dict(NAILS),
}
TURNS: dict[str, dict[str, object]] = {
    f"{near_end}, from the {start}, {tie_off}": {
        "weaving.near_end": near_end,
        "weaving.start": start,
        "weaving.tie_off": tie_off,
    }
    for near_end, start, tie_off in product(("bottom", "top"), ("left", "right"), ("near end", "far end"))
}
WOUND_TURNS: dict[str, dict[str, object]] = {
    f"{slant}, {first} first": {"weaving.slant": slant, "weaving.first_pass": first}
    for slant, first in product(("shared", "face straight"), ("face", "back"))
}
WIDTHS: tuple[str, ...] = ("13 mm", "16 mm", "42 mm", "20 cm")


def kits() -> dict[str, dict[str, object]]:
    """Every kind of frame in every turn, narrow and wide weavings in turn."""
    found: dict[str, dict[str, object]] = {}
    for kind, changes in KINDS.items():
        slants = WOUND_TURNS if kind in ("round bars", "flat ends") else {"": {}}
        if "figure eight" in kind:
            slants = {turn: changes for turn, changes in WOUND_TURNS.items() if turn.startswith("shared")}
        for number, ((turn, turned), (slant, slanted)) in enumerate(product(TURNS.items(), slants.items())):
            width = {"weaving.width": WIDTHS[(number + number // 4) % len(WIDTHS)]}
            if "rod" in kind:  # tied there
                turned = {key: value for key, value in turned.items() if key != "weaving.tie_off"}
            found[f"{kind}, {turn}, {slant}"] = changes | turned | slanted | width
    return found


EVERY = kits()
