"""What is wrong between the inputs of the winding, the frame ends and how the thread goes."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from layout.kit.kinds.all_keys import END_KEYS
from layout.messages.roles import WindingNeed
from layout.values.errors import FieldError, shown

Got = Mapping[str, Any]


def winding_errors(got: Got) -> Iterator[FieldError]:
    """What is wrong with the winding; passes over inputs that were refused already."""
    ends, winding = got.get("frame.ends"), got.get("weaving.winding", "round")
    if winding == "round" or ends is None:
        return
    if END_KEYS[ends].make.kind != "wound":
        yield FieldError("weaving.winding", WindingNeed.WOUND_ONLY, shown(winding), 'winding = "round"', ends=ends)
    elif got.get("weaving.slant", "shared") != "shared":
        yield FieldError("weaving.slant", WindingNeed.CROSSED_SLANT, shown(got["weaving.slant"]), 'slant = "shared"')
