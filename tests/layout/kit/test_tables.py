"""A whole kit walked: missing keys, strange keys, and all refusals at once."""

from __future__ import annotations

from typing import Any

import pytest

from layout.kit.inputs import INPUTS
from tests.plain_kits import LEFT_OUT, ROUND, changed, only_refusal, refusals


@pytest.mark.parametrize("key", [spec.key for spec in INPUTS if spec.required and "[]" not in spec.key])
def test_what_has_to_be_given_is_asked_for(key: str) -> None:
    """A required input that is missing is refused by its key."""
    assert "got nothing" in only_refusal(changed(ROUND, **{key.replace(".", "__"): LEFT_OUT}), key)


@pytest.mark.parametrize(
    ("changes", "key", "meant"),
    [
        ({"frame__outer_widht": "40 cm", "frame__outer_width": LEFT_OUT}, "frame.outer_widht", "frame.outer_width"),
        (
            {"frame__barr_diameter": "15 mm", "frame__bar_diameter": LEFT_OUT},
            "frame.barr_diameter",
            "frame.bar_diameter",
        ),
        ({"sett__marking_units": "1 in"}, "sett.marking_units", "sett.marking_unit"),
        ({"weaving__strat": "left"}, "weaving.strat", "weaving.start"),
        ({"weaving__margin": "1 cm"}, "weaving.margin", "frame.margin"),
        ({"outer_height": "1 cm"}, "outer_height", "frame.outer_height"),
        ({"nmae": "x", "name": LEFT_OUT}, "nmae", "name"),
        ({"papre": {"size": "a4"}}, "papre", "[paper]"),
        ({"sett__readings": [{"pairs": 9, "windw": "1 in"}]}, "sett.readings[1].windw", "window"),
    ],
)
def test_a_misspelt_key_is_refused_with_the_one_meant(changes: dict[str, Any], key: str, meant: str) -> None:
    """Unknown keys are never passed over, and the missing one is not asked for a second time."""
    values = changed(ROUND, **changes)
    if "bar_diameter" in meant:  # without its diameter a round bar is refused once more
        assert (key, True) in [(field, f"did you mean {meant}?" in said) for field, said in refusals(values)]
    else:
        assert f"did you mean {meant}?" in only_refusal(values, key)


@pytest.mark.parametrize("key", ["zygote", "x" * 500, "", "a b", "a\nb", "\x1b[2J", "漢字"])
def test_a_strange_key_is_refused_with_the_known_ones(key: str) -> None:
    """A key like none of ours is refused in one line that a terminal can show."""
    for values in (ROUND | {key: 1}, ROUND | {"frame": ROUND["frame"] | {key: 1}}):
        ((_, sentence),) = refusals(values)
        assert "one of the known keys" in sentence
        assert sentence.isprintable()
        assert len(sentence) < 700  # there are some forty keys in [frame]


def test_all_refusals_come_at_once_in_the_order_of_the_file() -> None:
    """A person repairs a file in one go."""
    values = changed(
        ROUND,
        name="",
        yarns__warp=5,
        frame__outer_width="40",
        weaving__height="0 cm",
        sett__readings=[{"pairs": 0, "window": "5"}, {"pairs": 3}],
        paper={"size": "b4"},
    )
    assert [field for field, _ in refusals(values)] == [
        "name",
        "yarns.warp",
        "sett.readings[1].pairs",
        "sett.readings[1].window",
        "sett.readings[2]",
        "frame.outer_width",
        "weaving.height",
        "paper.size",
    ]


def test_an_empty_kit_is_told_all_that_it_lacks() -> None:
    """Every required input is named."""
    lacking = {field for field, _ in refusals({})}
    assert lacking == {spec.key for spec in INPUTS if spec.required and "[]" not in spec.key} | {"sett"}


def test_a_file_of_rubbish_is_not_read_to_its_end() -> None:
    """Thousands of unknown keys cost no more than fifty."""
    assert len(refusals({f"key{number}": number for number in range(100_000)})) < 70
