"""Every kind of input with everything that it cannot be."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.kit.input import Input
from layout.kit.inputs import INPUTS
from layout.kit.kit import kit_values, read_kit
from layout.values.errors import FieldErrors
from tests.plain_kits import METRICS, changed, only_refusal, placed, with_ends_for
from tests.strategies import kits

# Everything that is wrong in the same way for a kind of input; each must be refused by a sentence naming the key.
NO_LENGTH: list[object] = [
    5, 0, -1, 3.5, float("nan"), float("inf"), 1e9, True, None, [], {}, "", " ", "12", "-5 mm", "-1 in", "NaN mm",
    "inf cm", "1e9 mm", "1000000000 mm", "999999999999 m", "12 mmm", "5 kg", "1,500 mm", "--5mm", "abc", "1/0 mm",
    "6 epi", "5 mm\n6 mm", 10**5000,
]  # fmt: skip
NO_NAME: list[object] = [
    5, 0, 1.5, float("nan"), True, None, [], {}, ["x"], "", "   ", "x" * 41, "a\nb", "a\tb", "\x00", "漢", "\u0301",
    "x" * 10**6,
]  # fmt: skip
NO_WORD: list[object] = [5, 0, -1, 1.5, float("nan"), True, None, [], {}, "", "sideways", "\n", "x" * 10**6]
NO_FLAG: list[object] = [0, 1, -1, 1.0, float("nan"), None, [], {}, "", "true", "yes"]
NO_COUNT: list[object] = [
    0, -1, 1.0, 2.5, float("nan"), float("inf"), 1e9, 10**9, 10**5000, True, None, [], {}, "", "13", "13 in",
]  # fmt: skip
NO_SETT: list[object] = [
    5, 0, -1, 3.5, float("nan"), float("inf"), 1e9, True, None, [], {}, "", "8", "0 epi", "-8 epi", "NaN epi",
    "1e9 epi", "1000000000 epi", "0,09 per cm", "60.1 per cm", "12 in", "8 dpi",
]  # fmt: skip
NO_SIZE: list[object] = [
    5, 0, -1, 1.5, float("nan"), True, None, [], {}, "", "a5", "210 x 297", "210 mm", "0 x 0 mm", "-210 x 297 mm",
    "NaN x NaN mm", "1e9 x 1e9 mm", "100 x 210 mm", "148 x 200 mm", "210 x 3501 mm", "1000000000 x 210 mm",
    "210 x 297 kg",
]  # fmt: skip
NO_FORCE: list[object] = [
    5, 0, -1, 1.5, float("nan"), True, None, [], {}, "", "2", "0 N", "-2 N", "NaN N", "1e9 N", "0.009 N", "101 N",
    "11 kg", "12 mm", "1,500 g", 10**5000,
]  # fmt: skip
NO_TABLES: list[object] = [5, 0, 1.5, True, None, [], {}, "", "13", [13], [[]], [{}] * 51]
NO_NUMBER: list[object] = [0, -1, float("nan"), float("inf"), 1e9, 10**5000, True, None, [], {}, "", "13", "1/3"]
NO_SHARE: list[object] = [
    1, -0.01, 5, float("nan"), True, None, [], {}, "", "5", "100 %", "-1 %", "NaN %", "5 per cent", "1/0 %", 10**5000,
]  # fmt: skip
NO_YARN_COUNT: list[object] = [
    0, -1, 0.0, float("nan"), float("inf"), -1e300, 10**5000, True, None, [], {}, "", "abc", "-8", "0", "8//2", "8 2",
    "1.000,5",
]  # fmt: skip
NO_SYSTEM: list[object] = [5, 0, True, None, [], {}, "", "cut", "Cut", "lace", "x" * 10**6, float("nan")]
NO_NAMES: list[object] = [
    5, 0, 1.5, float("nan"), True, None, {}, "", "strips", ["leaflit"], [5], [[]], ["strips", "strips"], ["x" * 10**6],
]  # fmt: skip
NO_CARD: list[object] = [
    5, 0, -1, 1.5, float("nan"), True, None, [], {}, "", "a5", "90 x 60", "90 mm", "0 x 0 mm", "-90 x 60 mm",
    "39.9 x 30 mm", "40 x 29.9 mm", "1001 x 60 mm", "NaN x NaN mm", "1000000000 x 60 mm", "90 x 60 kg",
]  # fmt: skip
NO_SIDES: list[object] = [
    5, 0, -1, 1.5, float("nan"), True, None, [], {}, "", "42 x 57 x 6", "42 x 57 cm", "1 x 2 x 3 x 4 cm",
    "0 x 57 x 6 cm", "42 x 57 x 501 cm", "NaN x 1 x 1 cm", "42 x 57 x 6 kg", "x x cm",
]  # fmt: skip
NO_MASS: list[object] = [
    -1, float("nan"), float("inf"), 1e9, 10**5000, True, None, [], {}, "", "310", "310 mm", "3 N", "-1 g", "101 kg",
]  # fmt: skip
NO_LINK: list[object] = [
    5, 0, 1.5, float("nan"), True, None, [], {}, "example.org", "ftp://example.org", "https://", "https://a b",
    "https://a\nb", "https://\u202eb", "https://" + "x" * 193, "x" * 10**6, "javascript:alert(1)",
]  # fmt: skip
NO_TEXT: list[object] = [value for value in NO_NAME if value not in ("", "x" * 41)] + ["x" * 121]
NO_LINES: list[object] = [
    5, 0, 1.5, float("nan"), True, None, {}, "", "a line", [5], [""], ["a"] * 4, ["x" * 61], ["a\nb"], [["a"]],
]  # fmt: skip
WRONG: dict[str, list[object]] = {
    "version": [0, -1, 2, 1.0, float("nan"), True, None, [], {}, "", "1", 10**5000],
    "name": NO_NAME,
    "length": NO_LENGTH,
    "width": NO_LENGTH,
    "height": NO_LENGTH,
    "heading": NO_LENGTH,
    "sett": NO_SETT,
    "density": NO_SETT,
    "few": [-1, 11, 1.0, 0.5, float("nan"), 10**5000, True, None, [], {}, "", "1", "one"],
    "whole": NO_COUNT,
    "flag": NO_FLAG,
    "choice": NO_WORD,
    "language": [*NO_WORD, "it", "italian", "e", "-de"],
    "size": NO_SIZE,
    "force": NO_FORCE,
    "tables": NO_TABLES,
    "amount": NO_NUMBER,
    "share": NO_SHARE,
    "count": NO_YARN_COUNT,
    "system": NO_SYSTEM,
    "names": NO_NAMES,
    "card": NO_CARD,
    "sides": NO_SIDES,
    "mass": NO_MASS,
    "link": NO_LINK,
    "text": NO_TEXT,
    "lines": NO_LINES,
}


def wrong_values(spec: Input) -> list[object]:
    """Every value that is wrong for an input by its kind; nothing at all is an amount of some."""
    nought = [0] if spec.kind in ("amount", "whole") and spec.least == 0 else []
    empty = [[]] if spec.kind == "tables" and spec.least == 0 else []
    return [value for value in WRONG[spec.kind] if not any(value == each for each in (*nought, *empty))]


@pytest.mark.parametrize("spec", INPUTS, ids=lambda spec: spec.key)
def test_every_input_refuses_what_it_cannot_be(spec: Input, pytestconfig: pytest.Config) -> None:
    """One sentence, with the dotted key and an example, for every input and every kind of slip.

    Where many inputs are of one kind they share its values in the usual run, so that every value is tried with some.
    """
    alike = [other for other in INPUTS if other.kind == spec.kind]
    share = 1 if pytestconfig.getoption("thorough") else min(3, len(alike))
    for value in wrong_values(spec)[alike.index(spec) % share :: share]:
        values, place = placed(spec.key, value)
        entry = spec.kind == "tables" and value in ([13], [[]])  # a list of one thing that is no entry of it
        said = only_refusal(values, f"{place}[1]" if entry else place)
        assert len(said) < 1000, said[:200]


@pytest.mark.parametrize(
    ("key", "low", "high", "below", "above"),
    [
        ("frame.bar_diameter", "4 mm", "120 mm", "3.999 mm", "120.001 mm"),
        ("frame.outer_width", "180 mm", "3 m", "39.999 mm", "3000.001 mm"),
        ("frame.outer_height", "371 mm", "3 m", "39.999 mm", "3000.001 mm"),
        ("frame.side_width", "0 mm", "189 mm", "-0.001 mm", "1500.001 mm"),
        ("frame.margin", "3 mm", "169 mm", "2.999 mm", "1500.001 mm"),
        ("weaving.height", "1 mm", "519.999 mm", "0.999 mm", "3000.001 mm"),
        ("weaving.width", "1 mm", "320 mm", "0.999 mm", "3000.001 mm"),
        ("frame.thickness", "6 mm", "120 mm", "1.999 mm", "120.001 mm"),
        ("frame.edge_radius", "0 mm", "9 mm", "-0.001 mm", "60.001 mm"),
        ("frame.notch_width", "0.5 mm", "1.5 mm", "0.499 mm", "20.001 mm"),
        ("frame.notch_depth", "1 mm", "60 mm", "0.999 mm", "60.001 mm"),
        ("frame.notch_density", "3.4 per cm", "5 per cm", "0,099 per cm", "60,001 per cm"),
        ("frame.peg_diameter", "1 mm", "4 mm", "0.999 mm", "25.001 mm"),
        ("frame.row_distance", "2 mm", "100 mm", "1.999 mm", "200.001 mm"),
        ("frame.edge_distance", "2 mm", "100 mm", "1.999 mm", "200.001 mm"),
        ("sett.marking_unit", "6 mm", "1 m", "0.999 mm", "1000.001 mm"),
        ("sett.given", "0,1 per cm", "60 per cm", "0,099 per cm", "60,001 per cm"),
    ],
)
def test_limits_hold_to_the_micrometre(key: str, low: str, high: str, below: str, above: str) -> None:
    """The limits themselves are taken, a thousandth beyond is not. The limits are our own choice."""
    base = with_ends_for(key)
    base = changed(base, sett={}) if key == "sett.given" else base
    dotted = key.replace(".", "__")
    for text in (low, high):
        read_kit(changed(base, **{dotted: text}), METRICS)
    for text in (below, above):
        only_refusal(changed(base, **{dotted: text}), key)


plain = st.recursive(
    st.none()
    | st.booleans()
    | st.integers()
    | st.floats()
    | st.text(max_size=12)
    | st.sampled_from(["12 in", "30 cm", "6 epi"]),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=8), inner, max_size=3),
    max_leaves=6,
)


@given(kits(), st.sampled_from([spec.key for spec in INPUTS if "[]" not in spec.key]), plain)
def test_any_value_anywhere_is_read_or_refused(values: dict[str, Any], key: str, value: object) -> None:
    """Nothing that a file can hold ends in anything but a kit or sentences."""
    table, _, leaf = key.rpartition(".")
    place = values.setdefault(table, {}) if table else values
    place[leaf] = value
    try:
        kit = read_kit(values, METRICS)
    except FieldErrors as refused:
        said = str(refused)
        assert all("; for example " in line for line in said.split("\n"))
    else:
        assert read_kit(kit_values(kit), METRICS) == kit
