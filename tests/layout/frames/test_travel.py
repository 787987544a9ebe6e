"""A frame whose height can be adjusted: what goes by which height, and how far it must travel."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from kits import CROSSED, FLAT, NAILS, NOTCHED, PEGGED, ROD, TRAVEL, kit_of, plan_of

from layout.estimate.headings import heading_height
from layout.frames.tension import WarpThread
from layout.frames.travel import travel_offered, travel_wanted
from layout.kit.kit import kit_values, read_kit
from layout.plan import Plan
from layout.values.errors import FieldErrors
from layout.values.quantity import measured
from layout.warps.fan import fan_of
from tests.plain_kits import METRICS

KINDS: dict[str, dict[str, object]] = {
    "round bars": {},
    "flat ends": FLAT,
    "figure eight": CROSSED,
    "loose rod": ROD,
    "loose rod on flat ends": FLAT | ROD,
    "notched ends": NOTCHED,
    "notches in pairs": NOTCHED | {"frame.notch_density": "1.25 per cm"},
    "pegged ends": PEGGED,
    "nails": NAILS,
}


def higher(changes: dict[str, object], mm: int) -> Plan:
    """The plan on a rigid frame that is so much higher than 550 mm."""
    return plan_of(changes | {"frame.outer_height": f"{550 + mm} mm"})


@pytest.mark.parametrize("kind", KINDS)
def test_what_goes_by_the_lowest_height_and_what_by_the_greatest(kind: str) -> None:
    """Thread, marks and passes are those of a rigid frame at its lowest; the room to weave, the fringes, the headings
    and the fan are those of a rigid frame 20 mm higher.
    """
    changes = KINDS[kind]
    travels, low, tight = plan_of(changes | TRAVEL), plan_of(changes), higher(changes, 20)
    wound = [
        (of.warp.near, of.warp.far, of.warp.passes, of.warp.ends, of.amounts.warp_per_wind_mm.value)
        for of in (travels, low)
    ]
    assert wound[0] == wound[1]
    assert travels.amounts.warp_total_m.value == low.amounts.warp_total_m.value
    assert travels.amounts.warp_per_wind_mm.value < tight.amounts.warp_per_wind_mm.value
    for name in ("weavable_height_mm", "fringe_near_mm", "fringe_far_mm"):
        one, other = (getattr(of.amounts, name).value for of in (travels, tight))
        assert one == pytest.approx(other), name
    gained = 40 if "rod" in kind else 20  # a warp from a loose rod goes up and down
    assert travels.amounts.weavable_height_mm.value == pytest.approx(low.amounts.weavable_height_mm.value + gained)
    fans = [fan_of(of.kit.frame, of.warp) for of in (travels, tight)]
    assert fans[0] == fans[1]
    places = [heading_height(of.kit, of.amounts.woven_mm[1], "far") for of in (travels, tight)]
    assert places[0] == places[1]


def test_a_height_that_only_the_tightened_frame_holds_is_woven() -> None:
    """As high as fits is 20 mm more; a height between the two is taken, and refused without the travel."""
    fits = [plan_of(more | {"weaving.height": "as high as fits"}) for more in ({}, TRAVEL)]
    low, high = (of.amounts.weavable_height_mm.value for of in fits)
    assert high == pytest.approx(low + 20)
    between: dict[str, object] = {"weaving.height": f"{int(low) + 10} mm"}
    plan_of(TRAVEL | between)
    with pytest.raises(ValueError, match=r"weaving\.height: needs at most"):
        plan_of(between)


def test_a_rigid_frame_is_as_high_as_it_is() -> None:
    """Without a travel both heights are one, and nothing is said of them."""
    planned = plan_of()
    assert planned.kit.frame.tightened == planned.kit.frame
    assert not any("lowest" in note for note in planned.notes)
    assert any("at its lowest, 55 cm" in note and "up to 57 cm" in note for note in plan_of(TRAVEL).notes)


def test_how_far_by_hand() -> None:
    """400 mm, 4.5 N, a thread of 294 tex cotton, EA 1.7 x 294 = 500 N: it stretches by 3.6 mm; 3.5 mm for knots and
    1.5 % of 400 mm make 13.1 mm.
    """
    thread = WarpThread(Fraction(5000, 17), "cotton")
    wanted = travel_wanted(400, measured(4.5, ""), thread)
    assert wanted.value == pytest.approx(3.6 + 3.5 + 6)
    assert wanted.low == pytest.approx(400 * 4.5 / (2.0 * 5000 / 17) + 2 + 4)
    assert wanted.high == pytest.approx(400 * 4.5 / (1.5 * 5000 / 17) + 5 + 8)


@given(st.floats(50, 3000), st.floats(0.1, 15), st.integers(20, 5000))
def test_a_tighter_or_longer_warp_travels_further(high: float, pull: float, tex: int) -> None:
    """More height, more pull or a thinner thread never takes less; the range holds what is likely."""
    of = travel_wanted(high, measured(pull, ""), WarpThread(Fraction(tex)))
    assert of.low <= of.value <= of.high
    assert travel_wanted(high * 1.1, measured(pull, ""), WarpThread(Fraction(tex))).value > of.value
    assert travel_wanted(high, measured(pull * 1.1, ""), WarpThread(Fraction(tex))).value > of.value
    assert travel_wanted(high, measured(pull, ""), WarpThread(Fraction(tex + 10))).value < of.value
    assert travel_wanted(high, measured(pull, ""), None).value < of.value


def test_a_travel_that_is_too_short_is_warned_of() -> None:
    """550 mm take 3.5 + 8.25 mm and the stretch: 4 mm are too short, 12 mm may be, 60 mm are not."""
    cord: dict[str, object] = {"warp": {"count": 400, "system": "tex", "fibre": "cotton"}, "frame.tension": "2 N"}
    short, maybe, enough = (plan_of(TRAVEL | cord | {"frame.travel": f"{mm} mm"}) for mm in (4, 14, 60))
    assert any("more than the travel of 4 mm" in warning for warning in short.warnings)
    assert not any("travel" in warning for warning in (*maybe.warnings, *enough.warnings))
    assert any("may take up to" in note and "the travel of 14 mm" in note for note in maybe.notes)
    assert not any("may take up to" in note for note in enough.notes)


@pytest.mark.parametrize(("high", "offered"), [(200, 10), (400, 12), (1000, 30)])
def test_what_is_offered(high: int, offered: int) -> None:
    """3 % of the height, and at least 10 mm (our choice)."""
    assert travel_offered(Fraction(high)) == offered


@pytest.mark.parametrize(
    ("changes", "field", "needs"),
    [
        ({"frame.tensioner": "rods"}, "frame.travel", "needs to be given with a tensioner"),
        ({"frame.travel": "15 mm"}, "frame.tensioner", "needs rods or wedges"),
    ],
)
def test_a_tensioner_and_a_travel_belong_together(changes: dict[str, object], field: str, needs: str) -> None:
    """One without the other is one sentence, and what it offers works."""
    with pytest.raises(FieldErrors) as caught:
        kit_of(changes)
    (error,) = caught.value.errors
    assert error.field == field
    assert needs in str(error)
    leaf, value = str(error.example).split(" = ")
    kit_of(changes | {f"frame.{leaf}": value.strip('"')})


def test_travel_is_carried_and_read_back() -> None:
    """A kit with a travel comes back as the very same kit."""
    kit = kit_of(TRAVEL | {"frame.travel": "3/4 in"})
    assert read_kit(kit_values(kit), METRICS) == kit
