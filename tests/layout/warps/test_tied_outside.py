"""What is tied half a pitch outside the limit lies between the margins, or the kit is refused with what works."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from hypothesis import assume, example, given
from hypothesis import strategies as st
from kits import NOTCHED, kit_of, plan_of

from layout.plan import Plan
from layout.values.errors import FieldError
from templates_gen.verify.printed.expected import ends_of, expected

STRAIGHT: dict[str, object] = {"weaving.slant": "face straight"}
SETTS = {
    "1 per cm": "1 per cm",
    "2.5 per cm": "2.5 per cm",
    "0.3 per cm": "0.3 per cm",
    "6 epi": "6 epi",
    "1 epi": "1 epi",
}
PAIRS: dict[str, dict[str, object]] = {
    sett: NOTCHED | {"frame.notch_width": "0.6 mm", "sett.given": sett, "frame.notch_density": half}
    for sett, half in (("1 per cm", "0.5 per cm"), ("2.5 per cm", "1.25 per cm"), ("6 epi", "3 epi"))
}
KITS = [
    STRAIGHT | {"sett.given": sett, "weaving.first_pass": first} for sett in SETTS for first in ("face", "back")
] + list(PAIRS.values())


def beyond(plan: Plan) -> Fraction:
    """How far in mm the outermost mark lies in the margin, or past it: 400 mm less the sides of 25 and the margins."""
    between = plan.kit.frame.outer_width.mm / 2 - 25 - plan.kit.frame.margin.mm
    return max(map(abs, (*plan.warp.near, *plan.warp.far))) - between


def test_by_hand() -> None:
    """1 end per cm, margins of 3 mm: 344 mm hold 34 ends, but the tie-off 5 mm outside would lie 2 mm on the wood."""
    plan = plan_of(STRAIGHT | {"sett.given": "1 per cm", "frame.margin": "3 mm", "weaving.width": "as wide as fits"})
    assert (plan.warp.ends, plan.warp.near[-1]) == (32, 165)
    assert plan.warp.notes[0].endswith(", room for what is tied outside the limits.")
    shared = plan_of({"sett.given": "1 per cm", "frame.margin": "3 mm", "weaving.width": "as wide as fits"})
    assert shared.warp.ends == 34
    assert "tied outside" not in "".join(shared.warp.notes)


@given(
    st.sampled_from(KITS),
    st.integers(3, 30),
    st.integers(200, 400),
    st.sampled_from(["left", "right"]),
    st.sampled_from([None, "near end", "far end", "either end"]),
)
@example(KITS[0], 3, 400, "left", None)
def test_as_wide_as_fits_leaves_room_for_what_is_tied(
    kit: dict[str, object], margin: int, outer: int, start: str, tie_off: str | None
) -> None:
    """All marks lie between the margins, the proof counts as many ends, and with one step more they would not fit."""
    changes = kit | {
        "frame.margin": f"{margin} mm",
        "frame.outer_width": f"{outer} mm",
        "weaving.width": "as wide as fits",
        "weaving.start": start,
        **({"weaving.tie_off": tie_off} if tie_off else {}),
    }
    try:
        plan = plan_of(changes)
    except FieldError as error:
        assert error.field in ("weaving.width", "frame.outer_width")  # noqa: PT017
        return
    assert beyond(plan) <= 0
    assert ends_of(plan.kit, plan.warp.sett.per_mm) == plan.warp.ends
    either = tie_off == "either end" or (tie_off is None and plan.warp.kind == "notched")
    more = (plan.warp.ends + (1 if either else 2)) * plan.warp.pitch
    if more <= plan.kit.frame.widest_weaving.mm:
        asked = kit_of(changes | {"weaving.width": f"{more} mm"})
        marks = expected(asked, plan.warp.sett.per_mm, Fraction(10))
        assert max(map(abs, (*marks.near, *marks.far))) > plan.kit.frame.widest_weaving.mm / 2


@given(st.sampled_from(KITS), st.integers(3, 30), st.integers(60, 350))
@example(KITS[0], 3, 344)
def test_a_width_that_cannot_be_tied_is_refused_with_one_that_can(
    kit: dict[str, object], margin: int, width: int
) -> None:
    """One sentence; with its example in the kit the warp lies between the margins."""
    changes = kit | {"frame.margin": f"{margin} mm", "weaving.width": f"{width} mm"}
    assume(width <= 350 - 2 * margin)
    try:
        plan = plan_of(changes)
    except FieldError as error:
        assume("tied outside" in str(error))
        key, text = re.fullmatch(r'(\w+) = "(.*)"', error.example).groups()  # type: ignore[union-attr]
        plan = plan_of(changes | {f"weaving.{key}": text})
        assert "\n" not in str(error)  # noqa: PT017
    assert beyond(plan) <= 0


@pytest.mark.parametrize("kit", [STRAIGHT | {"sett.given": "0.1 per cm"}, NOTCHED | PAIRS["1 per cm"]])
def test_where_nothing_fits_the_example_does(kit: dict[str, object]) -> None:
    """Room for two ends but not for the half pitches beside them: another slant, or a wider frame on notches."""
    room = 214 if kit["sett.given"] == "0.1 per cm" else 24
    changes = kit | {"frame.outer_width": f"{room + 80} mm", "weaving.width": "as wide as fits"}
    changes |= {"weaving.tie_off": "near end"}
    with pytest.raises(FieldError, match="tied outside its limit") as caught:
        plan_of(changes)
    key, text = re.fullmatch(r'(\w+) = "([^"]*)"(?: in \[frame\])?', caught.value.example).groups()  # type: ignore[union-attr]
    table = "weaving" if key == "slant" else "frame"
    assert beyond(plan_of(changes | {f"{table}.{key}": text})) <= 0
