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
