"""The pull and the bending of a warp, found by the layout and by the proof, over many kits."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from kits import FLAT, plan_of
from strategies import dips, plucks, strength_keys

from templates_gen.verify.printed.bending import bending
from templates_gen.verify.printed.pull import pulls_of

_warps = st.fixed_dictionaries(
    {"count": st.integers(20, 5000), "system": st.just("tex")},
    optional={"fibre": st.sampled_from(["cotton", "linen", "wool"])},
)
_measured = st.fixed_dictionaries({"warp": _warps}, optional={"frame.dip": dips(), "frame.pluck": plucks})


@given(strength_keys(), st.one_of(st.just({}), _measured), st.booleans())
def test_layout_and_proof_find_the_same(keys: dict[str, Any], measured: dict[str, Any], board: bool) -> None:
    """Least, likely and greatest, of the pull of a thread and of the bending of a bar."""
    ends = FLAT | {"frame.end_width": "40 mm"} if board else {}
    planned = plan_of(ends | {f"frame.{key}": value for key, value in keys.items()} | measured)
    load, kit = planned.load, planned.kit
    assert pulls_of(kit) == pytest.approx((load.thread.low, load.thread.value, load.thread.high), rel=1e-9, abs=1e-9)
    bent = bending(kit, planned.warp.sett.per_mm)
    if load.bending is None:
        assert bent is None
    else:
        assert bent == pytest.approx((load.bending.low, load.bending.value, load.bending.high), rel=1e-9, abs=1e-9)
