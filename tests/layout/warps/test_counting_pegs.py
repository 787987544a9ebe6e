"""Between pegs a marking unit holds whole pegs, each with the two ends that it turns."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from kits import PEGGED, plan_of

from layout.plan import Plan
from layout.values.errors import FieldErrors

UNITS = ["1 cm", "2 cm", "4 cm", "5 cm", "10 cm", "1/2 in", "1 in", "2 in"]


def read(pairs: int, window: str, unit: str | None, **changes: object) -> Plan:
    """A pegged kit of one wrap reading."""
    sett = {"sett.given": None, "sett.readings": [{"pairs": pairs, "window": window}]}
    return plan_of(
        PEGGED | {"frame.peg_diameter": "1 mm"} | sett | ({"sett.marking_unit": unit} if unit else {}) | changes
    )


def test_by_hand() -> None:
    """26 pairs in 5 cm are 5.2 per cm: in 1 cm four ends, on two pegs; five would have every second line on no peg."""
    plan = read(26, "5 cm", "1 cm")
    assert plan.warp.sett.per_mm == Fraction(4, 10)
    assert plan.sett_words == "4 ends per cm, 2 pegs to 1 cm"
    assert read(26, "5 cm", "1 in").sett_words == "12 ends per inch, 6 pegs to 1 in"
    assert plan.warp.sett.winds_per_unit is None


def test_a_unit_that_holds_no_peg_is_refused() -> None:
    """A peg turns two ends, so a unit must hold two; the example does."""
    with pytest.raises(FieldErrors, match=r"one peg \(2 ends\)"):
        read(8, "5 cm", "1 cm")


@given(st.integers(8, 45), st.sampled_from(["5 cm", "2 in", "10 cm"]), st.sampled_from(UNITS))
def test_every_line_falls_alike(pairs: int, window: str, unit: str) -> None:
    """An even number of ends to the unit, the largest that was measured, and all lines of an end as far from a peg:
    near ones on a peg, far ones in the middle between two.
    """
    try:
        warp = read(pairs, window, unit).warp
    except FieldErrors as error:
        assert [each.field for each in error.errors] == ["sett.marking_unit"]  # noqa: PT017
        return
    count = warp.sett.per_mm * warp.sett.unit.mm
    assert count % 2 == 0
    assert count / warp.sett.unit.mm <= warp.sett.low < (count + 2) / warp.sett.unit.mm
    assert warp.sett.per_unit == count / 2
    for end, off in (("near", Fraction(0)), ("far", warp.pitch)):
        first = warp.marks(end)[0]  # type: ignore[arg-type]
        lines = [at for at, _ in warp.unit_lines(end)]  # type: ignore[arg-type]
        assert {(at - first) % (2 * warp.pitch) for at in lines} <= {off}
