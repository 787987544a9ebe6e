"""The strength of the frame ends as a kit says it: what is refused, and with what."""

from __future__ import annotations

import pytest
from plain_kits import FLAT, METRICS, ROUND, changed, only_refusal

from layout.kit.kit import read_kit


def test_a_bore_must_leave_a_wall() -> None:
    """A bore as wide as the bar is refused, and the example works."""
    sentence = only_refusal(changed(ROUND, frame__bar_bore="15 mm"), "frame.bar_bore")
    assert "less than the bar's diameter, 15 mm" in sentence
    assert read_kit(changed(ROUND, frame__bar_bore=sentence.split('"')[-2]), METRICS)


@pytest.mark.parametrize(
    ("values", "key"),
    [
        (changed(FLAT, frame__bar_bore="5 mm"), "frame.bar_bore"),
        (changed(ROUND, frame__end_width="40 mm"), "frame.end_width"),
    ],
)
def test_what_belongs_to_other_ends_is_refused(values: dict[str, object], key: str) -> None:
    """A board has no bore, a round bar no width."""
    assert "to be left out with ends" in only_refusal(values, key)


def test_a_material_that_is_not_known_is_refused_with_those_that_are() -> None:
    """The sentence lists them, and says which was probably meant."""
    sentence = only_refusal(changed(ROUND, frame__material="beach"), "frame.material")
    assert '"oak"' in sentence
    assert "did you mean beech?" in sentence


def test_a_dip_that_is_too_deep_is_refused_with_a_load_that_would_do() -> None:
    """A sixtieth of 400 mm is 6.6 mm; at 10 mm a load of (2/3)^3 of 50 g, 14.8 g, dips little enough for certain."""
    dip = {"load": "50 g", "length": "400 mm", "depth": "10 mm"}
    warp = {"count": 300, "system": "tex"}
    sentence = only_refusal(changed(ROUND, warp=warp, frame__dip=dip), "frame.dip.depth")
    assert "at most a sixtieth of the length, 6.6 mm" in sentence
    assert "such as 14 g" in sentence
    assert read_kit(changed(ROUND, warp=warp, frame__dip=dip | {"depth": sentence.split('"')[-2]}), METRICS)


@pytest.mark.parametrize(
    ("key", "value"),
    [
        ("dip", {"load": "50 g", "length": "400 mm", "depth": "5 mm"}),
        ("pluck", {"hertz": 125, "length": "400 mm"}),
    ],
)
def test_a_measured_pull_needs_the_weight_of_the_warp(key: str, value: dict[str, object]) -> None:
    """Neither the stretch of a thread nor its pitch says anything of its pull where its weight is not known."""
    sentence = only_refusal(changed(ROUND, **{f"frame__{key}": value}), f"frame.{key}")
    assert "the weight of the warp" in sentence
    assert f"leave out {key}" in sentence
    with_weight = changed(ROUND, **{f"frame__{key}": value}, warp={"grams": 250, "length": "700 m"})
    assert read_kit(with_weight, METRICS)


@pytest.mark.parametrize(
    ("values", "field"),
    [
        ({"dip": {"load": "50 g", "length": "400 mm"}}, "frame.dip"),
        ({"dip": 5}, "frame.dip"),
        ({"pluck": {"hertz": 5, "length": "400 mm"}}, "frame.pluck.hertz"),
        ({"pluck": {"hertz": "loud", "length": "400 mm"}}, "frame.pluck.hertz"),
        ({"dip": {"load": "50", "length": "400 mm", "depth": "5 mm"}}, "frame.dip.load"),
        ({"modulus": 12}, "frame.modulus"),
        ({"tensioner": "screws"}, "frame.tensioner"),
        ({"left_warped": "years"}, "frame.left_warped"),
        ({"side_thickness": "20 m"}, "frame.side_thickness"),
    ],
)
def test_what_cannot_be_meant_is_refused_at_its_key(values: dict[str, object], field: str) -> None:
    """By halves, beyond its limits, without a unit, or a word that is not known."""
    frame = ROUND["frame"] | values
    assert "for example" in only_refusal(changed(ROUND, frame=frame, warp={"count": 300, "system": "tex"}), field)
