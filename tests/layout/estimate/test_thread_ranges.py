"""The way of a thread that may be thinner or thicker."""

from __future__ import annotations

import pytest
from kits import CROSSED, FLAT, NAILS, NOTCHED, PEGGED, ROD, plan_of

from layout.estimate.thread_path import thread_path
from layout.values.quantity import assumed, measured

KINDS: dict[str, dict[str, object]] = {
    "round bars": {},
    "flat ends": FLAT,
    "figure eight": CROSSED,
    "figure eight on flat ends": FLAT | CROSSED,
    "loose rod": ROD | {"weaving.rod_diameter": "8 mm"},
    "pegged ends": PEGGED,
    "nails": NAILS,
    "notched ends": NOTCHED,
    "notches in pairs": NOTCHED | {"frame.notch_density": "1.25 per cm"},
}


@pytest.mark.parametrize("kind", KINDS)
def test_the_way_has_the_range_of_its_thread(kind: str) -> None:
    """The least is the way of the thinnest thread, the most that of the thickest; a thread that is known has none."""
    planned = plan_of(KINDS[kind] | {"weaving.doubled_selvedges": 1})
    frame, warp = planned.kit.frame, planned.warp
    found = thread_path(frame, warp, assumed(1.0, "Guessed.", 0.8, 1.3))
    thin, likely, thick = (thread_path(frame, warp, measured(d, "Measured.")) for d in (0.8, 1.0, 1.3))
    for of, low, value, high in zip(found, thin, likely, thick, strict=True):
        assert (of.low, of.value, of.high) == pytest.approx((low.value, value.value, high.value))
        assert of.low < of.value < of.high
        assert value.exact


def test_a_thread_that_may_be_too_thick_for_its_pegs_is_taken_as_thick_as_fits() -> None:
    """At a pitch of 4 mm, 2.5 mm pegs leave 5.5 mm of 8 mm."""
    planned = plan_of(PEGGED)
    found, most = (
        thread_path(planned.kit.frame, planned.warp, thread)
        for thread in (assumed(1.0, "Guessed.", 0.8, 9.0), measured(5.5, "Measured."))
    )
    assert found.whole.high == pytest.approx(most.whole.value)
