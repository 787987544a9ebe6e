"""What is wrong between the inputs of the winding, the frame ends and how the thread goes."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from layout.kit.kinds.all_keys import END_KEYS
from layout.messages.roles import WindingNeed
from layout.values.errors import FieldError, leave_out, shown
from layout.values.units import say_length

Got = Mapping[str, Any]
_ROUND = {"winding": "round", "near_hold": "bar"}
_ROD_ALONE = {"slant": "shared", "first_pass": "face"}


def winding_errors(got: Got) -> Iterator[FieldError]:
    """What is wrong with the winding; passes over inputs that were refused already."""
    if (ends := got.get("frame.ends")) is None:
        return
    rod = got.get("weaving.near_hold", "bar") == "loose rod"
    if END_KEYS[ends].make.kind != "wound":
        for leaf, usual in _ROUND.items():
            said = got.get(f"weaving.{leaf}", usual)
            if said != usual:
                example = f'{leaf} = "{usual}"'
                yield FieldError(f"weaving.{leaf}", WindingNeed.WOUND_ONLY, shown(said), example, ends=ends)
    elif rod:
        yield from _rod_errors(got)
    elif got.get("weaving.winding", "round") != "round" and got.get("weaving.slant", "shared") != "shared":
        yield FieldError("weaving.slant", WindingNeed.CROSSED_SLANT, shown(got["weaving.slant"]), 'slant = "shared"')
    diameter = got.get("weaving.rod_diameter")
    if diameter is not None and not rod:
        key = "weaving.rod_diameter"
        yield FieldError(key, WindingNeed.ROD_ONLY, say_length(diameter), leave_out("rod_diameter"))


def _rod_errors(got: Got) -> Iterator[FieldError]:
    """A warp from a loose rod is no figure eight, has no slant and no back layer, and is tied to the rod."""
    if got.get("weaving.winding", "round") != "round":
        key, said = "weaving.winding", shown(got["weaving.winding"])
        yield FieldError(key, WindingNeed.ROD_OR_EIGHT, said, 'winding = "round"')
    for leaf, usual in _ROD_ALONE.items():
        if got.get(f"weaving.{leaf}", usual) != usual:
            said = shown(got[f"weaving.{leaf}"])
            yield FieldError(f"weaving.{leaf}", WindingNeed.ROD_UPRIGHT, said, f'{leaf} = "{usual}"')
    if got.get("weaving.tie_off") is not None:
        said = shown(got["weaving.tie_off"])
        yield FieldError("weaving.tie_off", WindingNeed.ROD_TIED, said, leave_out("tie_off"))
