"""The proof's own thickness of an end, and the layout's: two computations that must agree on every kit."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given

from layout.kit.kit import read_kit
from layout.kit.yarn_facts import yarn_facts
from templates_gen.verify.printed.pegs import end_thickness
from tests.plain_kits import METRICS
from tests.yarn_kits import STATED, stated_kits


def agree(values: dict[str, Any]) -> None:
    """The likely thickness of an end in use, by both."""
    for doubled in (False, True):
        kit = read_kit(values | {"weaving": values["weaving"] | {"doubled_warp": doubled}}, METRICS)
        lying = yarn_facts(kit.amounts, 2 if doubled else 1).lying
        found = end_thickness(kit)
        assert (found is None) is (lying is None)
        if lying:
            assert found == pytest.approx(lying.value, rel=1e-9)


@given(stated_kits())
def test_an_end_is_as_thick_to_the_proof_as_to_the_layout(values: dict[str, Any]) -> None:
    """Whatever a kit says of its warp: label, fibre, make, wraps of either way, or nothing."""
    agree(values)


@pytest.mark.parametrize("tex", [100, 1000, 4000])
@pytest.mark.parametrize("turns", [1, 4, 9, 40])
@pytest.mark.parametrize("how", [None, "pushed together", "side by side"])
@pytest.mark.parametrize("make", [None, "cord", "firm", "soft"])
def test_a_wrap_that_its_label_allows_in_part_or_not_at_all(
    tex: int, turns: int, how: str | None, make: str | None
) -> None:
    """Wraps far below, within and far above what 100 to 4000 tex may be."""
    for fibre in ("cotton", "wool", "nylon", None):
        wrap = {"turns": turns, "window": "2 cm"} | ({"how": how} if how else {})
        more = {key: value for key, value in (("make", make), ("fibre", fibre)) if value}
        agree(STATED | {"warp": {"count": tex, "system": "tex", "wrap": wrap} | more})
