"""The options of `measure`: what they mean, and one sentence for each that cannot be used."""

from __future__ import annotations

from pathlib import Path

import pytest

from layout.values.errors import FieldError
from templates_gen.inputs.measure_options import MeasureOptions, measure_asked
from templates_gen.measuring.scales import PAIRS, Distance

BAD = ("0", "-1", "nan", "inf", "1e9", "", "wide", "9" * 80, "1,000")


def test_without_options_the_scan_says_it_all() -> None:
    """No resolution, no reference, nothing drawn and nothing stored."""
    asked = measure_asked(MeasureOptions())
    assert (asked.dpi, asked.picture, asked.store) == (None, None, None)
    assert asked.reference.distances == ()
    assert asked.reference.scanner is None


@pytest.mark.parametrize(
    ("text", "distance"),
    [
        ("190.4 mm", Distance("top", 190.4)),
        ("19,04 cm", Distance("top", 190.4)),
        ("7 1/2 in", Distance("top", 190.5)),
        ("left 249.3 mm", Distance("left", 249.3)),
        (" RIGHT  249.3mm ", Distance("right", 249.3)),
        ("rising 313.4 mm", Distance("rising", 313.4)),
    ],
)
def test_a_distance_is_that_of_a_pair(text: str, distance: Distance) -> None:
    """The two at the top where none is named; any unit of length."""
    known = [text] if distance.pair != "rising" else [text, "190 mm", "left 249 mm"]
    found = measure_asked(MeasureOptions(known=known)).reference.distances[0]
    assert found.pair == distance.pair
    assert found.mm == pytest.approx(distance.mm)


def test_every_pair_can_be_named() -> None:
    """All of them at once."""
    known = [f"{pair} {200 + k} mm" for k, pair in enumerate(PAIRS)]
    assert [each.pair for each in measure_asked(MeasureOptions(known=known)).reference.distances] == list(PAIRS)


def test_how_sure_a_reference_is() -> None:
    """A rule is read to 0.2 mm, a scanner's scale is known to 0.1 %, where nothing else is said."""
    assert measure_asked(MeasureOptions(known=["190 mm"])).reference.rule_within == 0.2
    assert measure_asked(MeasureOptions(known=["190 mm"], known_within="0.1")).reference.rule_within == 0.1
    assert measure_asked(MeasureOptions(known=["190 mm"], known_within="1/64 in")).reference.rule_within == (
        pytest.approx(25.4 / 64)
    )
    asked = measure_asked(MeasureOptions(scanner_scale=("1.0012", "0.9987")))
    assert asked.reference.scanner == (1.0012, 0.9987)
    assert asked.reference.scanner_within == pytest.approx(0.001)
    asked = measure_asked(MeasureOptions(scanner_scale=("1.0012", "0.9987"), scanner_within="0.05"))
    assert asked.reference.scanner_within == pytest.approx(0.0005)


def refusal(options: MeasureOptions) -> FieldError:
    """Why these options cannot be used."""
    with pytest.raises(FieldError) as error:
        measure_asked(options)
    assert "\n" not in str(error.value)
    assert "for example" in str(error.value)
    return error.value


@pytest.mark.parametrize("bad", BAD)
def test_bad_values_are_refused_by_the_name_of_their_option(bad: str) -> None:
    """Whatever came instead of a number."""
    known = ["190 mm"]
    assert refusal(MeasureOptions(dpi=bad)).field == "--dpi"
    assert refusal(MeasureOptions(known=[bad])).field == "--known"
    assert refusal(MeasureOptions(known=[f"left {bad}"])).field == "--known"
    assert refusal(MeasureOptions(known=known, known_within=bad)).field == "--known-within"
    assert refusal(MeasureOptions(scanner_scale=(bad, "1"))).field == "--scanner-scale"
    assert refusal(MeasureOptions(scanner_scale=("1", bad))).field == "--scanner-scale"
    assert refusal(MeasureOptions(scanner_scale=("1", "1"), scanner_within=bad)).field == "--scanner-within"
    assert refusal(MeasureOptions(picture=Path(bad or "x"))).field == "--picture"


@pytest.mark.parametrize(
    ("options", "field"),
    [
        (MeasureOptions(dpi="149"), "--dpi"),
        (MeasureOptions(dpi="4801"), "--dpi"),
        (MeasureOptions(known=["190"]), "--known"),
        (MeasureOptions(known=["middle 190 mm"]), "--known"),
        (MeasureOptions(known=["190 mm", "top 190 mm"]), "--known"),
        (MeasureOptions(known=["rising 313 mm"]), "--known"),
        (MeasureOptions(known=["190 mm", "bottom 190 mm", "rising 313 mm"]), "--known"),
        (MeasureOptions(known=["190 mm"], scanner_scale=("1", "1")), "--known"),
        (MeasureOptions(known_within="0.2"), "--known-within"),
        (MeasureOptions(known=["190 mm"], known_within="3 mm"), "--known-within"),
        (MeasureOptions(scanner_within="0.1"), "--scanner-within"),
        (MeasureOptions(scanner_scale=("1.06", "1")), "--scanner-scale"),
        (MeasureOptions(picture=Path("deviations.svg")), "--picture"),
    ],
)
def test_what_cannot_be_together_or_so_large(options: MeasureOptions, field: str) -> None:
    """Each by its name, with an example that works."""
    assert refusal(options).field == field


def test_examples_work() -> None:
    """What a refusal suggests is taken."""
    assert measure_asked(MeasureOptions(known=["190.4 mm", "left 249.3 mm"])).reference.distances
    assert measure_asked(MeasureOptions(dpi="300", picture=Path("deviations.pdf"))).dpi == 300
