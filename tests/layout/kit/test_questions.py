"""Questions about numbers that are hardly meant: asked where they should be, and never at a usual kit."""

from __future__ import annotations

import itertools
from fractions import Fraction
from pathlib import Path

import pytest

from layout.cutting.stock.measured_kerf import kerf_of, read_caliper
from layout.kit.questions import questions
from layout.values.errors import FieldError
from templates_gen.inputs import kit_file as kitfile
from tests.kits import KINDS, kit_of
from tests.plain_kits import placed, refusals

WRAPS = {"warp.wrap": {"turns": 11, "window": "2 cm"}, "weft.wrap": {"turns": 11, "window": "2 cm"}}
"""Warp and weft 1.82 mm thick: 2.75 pairs in a cm."""


def asked(changes: dict[str, object]) -> tuple[str, ...]:
    """What is asked about such a kit."""
    return questions(kit_of(changes))


def reading(pairs: int, window: str) -> dict[str, object]:
    """A kit with one reading, its yarns wrapped apart."""
    return {"sett": {"readings": [{"pairs": pairs, "window": window}]}, "warp": {"wrap": WRAPS["warp.wrap"]},
            "weft": {"wrap": WRAPS["weft.wrap"]}}  # fmt: skip


@pytest.mark.parametrize(("pairs", "write"), [(27, 13), (26, 13), (28, 14), (55, 27)])
def test_single_threads_counted_as_pairs_are_asked_about(pairs: int, write: int) -> None:
    """A wrap of both yarns counts both threads: twice the pairs (pitch = warp + weft, American Tapestry Alliance)."""
    (said,) = asked(reading(pairs, "5 cm" if pairs < 50 else "10 cm"))
    assert said.startswith("Check sett.readings[1]: ")
    assert said.endswith(f"if single threads were counted, write pairs = {write}.")
    assert asked(reading(write, "5 cm" if pairs < 50 else "10 cm")) == ()


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"frame.outer_width": "3 m"}, 'write outer_width = "3 cm"'),
        ({"frame.outer_height": "2.9 m"}, 'write outer_height = "2.9 cm"'),
        ({"frame.outer_width": "250 cm"}, 'write outer_width = "250 mm"'),
        ({"frame.side_width": "16 cm", "frame.outer_width": "60 cm"}, 'write side_width = "16 mm"'),
        ({"sett": {"readings": [{"pairs": 130, "window": "0.6 m"}]}}, 'write window = "0.6 cm"'),
        ({"sett": {"given": "80 epi"}}, "Check sett.given: 80 epi is closer than usual on a frame"),
    ],
)
def test_a_length_in_another_unit_is_asked_about(changes: dict[str, object], said: str) -> None:
    """One sentence with what to check and what to write."""
    (sentence,) = asked(changes)
    assert said in sentence
    assert sentence.startswith("Check ")


@pytest.mark.parametrize(
    ("key", "value", "meant"),
    [
        ("frame.outer_width", "30 m", '"30 cm"'),
        ("frame.bar_diameter", "15 cm", '"15 mm"'),
        ("frame.outer_height", "55 mm", ""),
        ("frame.side_width", "3 m", '"3 cm"'),
        ("frame.outer_width", "40 ft", '"40 in"'),
    ],
)
def test_a_refused_length_names_the_unit_that_was_meant(key: str, value: str, meant: str) -> None:
    """The same number in the next unit, where that could be; a length within the limits is no refusal."""
    values, _ = placed(key, value)
    found = [] if not meant else [said for field, said in refusals(values) if field == key]
    assert all(f"(did you mean {meant}?)" in said for said in found)
    assert bool(found) == bool(meant)


def test_nothing_is_asked_about_usual_kits() -> None:
    """Usual setts (14-16 epi, 2 to 6 per cm: Christie; 4 epi on school looms: Dobbs), frames of 8 in to 5 ft 10 in."""
    setts = [
        "4 epi",
        "8 epi",
        "10 epi",
        "14 epi",
        "16 epi",
        *(f"{sett} per cm" for sett in ("2", "2.5", "3", "4", "5", "6")),
    ]
    frames = [
        ("20 cm", "25 cm"),
        ("30 cm", "40 cm"),
        ("8 in", "10 in"),
        ("1 m", "1.2 m"),
        ("1.8 m", "1.5 m"),
        ("30 cm", "1.2 m"),
    ]
    for sett, (wide, high) in itertools.product(setts, frames):
        size = {"frame.outer_width": wide, "frame.outer_height": high}
        changes = {"sett": {"given": sett}, **size, "weaving.height": "8 cm", "weaving.width": "8 cm"}
        assert asked(changes) == (), (sett, wide)
    for kind in KINDS.values():
        assert questions(kit_of(kind)) == ()


def test_nothing_is_asked_about_true_counts_of_usual_yarns() -> None:
    """Pairs that fit the wraps, as far off as people count (a quarter closer or looser than the wraps say)."""
    for turns, window in itertools.product((5, 8, 12, 20, 30), ("1 in", "2 cm", "5 cm")):
        wrap = {"turns": turns, "window": window}
        pairs = turns // 2
        for off in (0.75, 1.0, 1.25):
            stated = {"readings": [{"pairs": max(1, round(pairs * off)), "window": window}]}
            assert asked({"sett": stated, "warp": {"wrap": wrap}, "weft": {"wrap": wrap}}) == (), (turns, window, off)


def test_nothing_is_asked_about_the_demo_and_the_samples() -> None:
    """The kits that are shown."""
    assert questions(kitfile.demo()) == ()
    samples = sorted((Path(__file__).parents[2] / "sample_kits").glob("*.toml"))
    assert samples
    for path in samples:
        assert questions(kitfile.load(path)) == (), path.name


@pytest.mark.parametrize(("hole", "part"), [("2.014", "1.976"), ("2.02", "1.99"), ("1.21", "1.17")])
def test_a_caliper_read_in_cm_is_asked_about(hole: str, part: str) -> None:
    """No trial has holes so small; the example is the same in mm, and is taken. Kerfs: cutting services' tables."""
    names = ("--hole", "--part")
    with pytest.raises(FieldError, match=r"ten times as large") as caught:
        kerf_of([read_caliper(hole, "--hole")], [read_caliper(part, "--part")], names)
    _, large, _, small = caught.value.example.split()
    assert Fraction("0.08") <= kerf_of([read_caliper(large, "--hole")], [read_caliper(small, "--part")], names).mm < 1


@pytest.mark.parametrize(("hole", "part"), [("20.08", "19.92"), ("12.1", "11.9"), ("0.793 in", "0.777 in")])
def test_nothing_is_asked_about_usual_kerfs(hole: str, part: str) -> None:
    """Kerfs of 0.08 to 0.23 mm (cutting services' tables) on the holes of a trial."""
    assert kerf_of([read_caliper(hole, "--hole")], [read_caliper(part, "--part")], ("--hole", "--part")).mm > 0
