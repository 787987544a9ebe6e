"""Kits read from plain values and written back in them."""

from __future__ import annotations

import json
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.frames.kinds.flat_ends import FlatEnd
from layout.frames.kinds.round_bars import RoundBar
from layout.kit.box_inputs import BOX_INPUTS
from layout.kit.inputs import INPUTS
from layout.kit.kinds.all_keys import END_KEYS
from layout.kit.kit import Kit, kit_values, read_kit, read_sett_input
from layout.kit.order_inputs import ORDER_INPUTS
from layout.kit.paper_size import PAPERS
from layout.kit.yarn_inputs import YARN_INPUTS
from layout.sett.sett import take_sett
from layout.values.errors import FieldErrors
from layout.values.units import Length
from tests.plain_kits import BESIDE, FLAT, LEFT_OUT, METRICS, NAILS, NOTCHED, PEGGED, ROUND, changed
from tests.strategies import kits


def test_what_is_left_out_stands_at_its_default() -> None:
    """A kit may leave out margin, width, the ways of winding and the paper."""
    kit = read_kit(ROUND, METRICS)
    assert kit.frame.margin == Length(Fraction(10), "mm")
    assert kit.frame.ends == RoundBar(Length(Fraction(15), "mm"))
    weaving = kit.weaving
    assert (weaving.width, weaving.near_end, weaving.slant) == (None, "bottom", "shared")
    assert (weaving.start, weaving.first_pass) == ("left", "face")
    assert (kit.paper.name, kit.paper.lay) == ("common", "auto")
    square = read_kit(changed(FLAT, frame__edge_radius=LEFT_OUT), METRICS)
    assert square.frame.ends == FlatEnd(Length(Fraction(18), "mm"), Length(Fraction(0), "mm"))


@given(kits())
def test_keys_are_written_in_the_order_of_the_kit_file(values: dict[str, Any]) -> None:
    """A file that carries a kit is the same for the same kit, whichever way round its maker wrote it."""
    turned = {table: dict(reversed(own.items())) if isinstance(own, dict) else own for table, own in values.items()}
    written = kit_values(read_kit(dict(reversed(turned.items())), METRICS))
    assert json.dumps(written) == json.dumps(kit_values(read_kit(values, METRICS)))
    places = [spec.key for spec in INPUTS]
    leaves = [f"{table}.{leaf}" for table, own in written.items() if isinstance(own, dict) for leaf in own]
    found = [places.index(leaf) for leaf in leaves if leaf in places]
    tables = [[key.split(".")[0] for key in places].index(table) for table in written]
    assert tables == sorted(tables)
    for table in written:
        own = [at for at in found if places[at].split(".")[0] == table]
        assert own == sorted(own)


@given(kits())
def test_a_kit_told_in_plain_values_is_the_same_kit(values: dict[str, Any]) -> None:
    """Out to JSON and in again changes nothing, to the last fraction."""
    kit = read_kit(values, METRICS)
    stated = kit_values(kit)
    again = read_kit(json.loads(json.dumps(stated)), METRICS)
    assert again == kit
    assert kit_values(again) == stated


@given(kits())
def test_a_kit_that_exists_has_a_sett_that_can_be_taken(values: dict[str, Any]) -> None:
    """Contradictions among the readings are refused with the kit, not later."""
    assert take_sett(read_kit(values, METRICS).sett).per_mm > 0


# Sheets in mm: ISO 216 for A4 and A3, ASME Y14.1 for Letter and 11 x 17 in (both second-hand copies).
STANDARD_SHEETS = {"a4": (210, 297), "a3": (297, 420), "letter": (215.9, 279.4), "11x17": (279.4, 431.8)}


@pytest.mark.parametrize(("name", "size"), STANDARD_SHEETS.items())
def test_sheets_are_within_half_a_point_of_their_standard(name: str, size: tuple[float, float]) -> None:
    """Source: ISO 216 and ASME Y14.1; a point is 1/72 in (ISO 32000)."""
    paper = read_kit(changed(ROUND, paper={"size": name}), METRICS).paper
    half_a_point = 25.4 / 72 / 2
    assert paper.width == pytest.approx(size[0], abs=half_a_point)
    assert paper.height == pytest.approx(size[1], abs=half_a_point)


def test_the_common_sheet_fits_on_a4_and_on_letter() -> None:
    """It is no wider than A4 and no higher than Letter, so that neither has to be shrunk (ISO 216, ASME Y14.1)."""
    paper = read_kit(ROUND, METRICS).paper
    assert paper.width <= STANDARD_SHEETS["a4"][0]
    assert paper.height <= STANDARD_SHEETS["letter"][1]


@given(st.integers(148, 3499), st.integers(210, 3499), st.booleans())
def test_an_own_sheet_is_the_nearest_whole_points(short: int, long: int, turned: bool) -> None:
    """An own size is at most half a point off, and stated exactly enough to come back the same."""
    width, height = (long, short) if turned else (short, long)
    kit = read_kit(changed(ROUND, paper={"size": f"{width} x {height} mm"}), METRICS)
    points = [side / 25.4 * 72 for side in (kit.paper.width, kit.paper.height)]
    assert points == pytest.approx([round(width / 25.4 * 72), round(height / 25.4 * 72)], abs=1e-9)
    assert kit.paper.name == "own"
    assert read_kit(kit_values(kit), METRICS) == kit


@pytest.mark.parametrize("size", ["148 x 210 mm", "210 x 148 mm", "3500 x 3500 mm", "8 1/2 x 11 in", "21 x 29,7 cm"])
def test_own_sheets_are_taken_up_to_their_limits(size: str) -> None:
    """From A5, either way round, to three and a half metres."""
    assert read_kit(changed(ROUND, paper={"size": size}), METRICS).paper.name == "own"


@pytest.mark.parametrize("word", ["A4", " a4 ", "Letter", "COMMON"])
def test_capitals_do_not_matter_in_words(word: str) -> None:
    """People write A4 and Letter with a capital."""
    assert read_kit(changed(ROUND, paper={"size": word}), METRICS).paper.name in PAPERS


def test_the_sett_alone_is_read_as_in_a_kit() -> None:
    """The table [sett] can be read by itself, with the same refusals."""
    values: dict[str, object] = {"readings": [{"pairs": 17, "window": "5 cm"}], "marking_unit": "4 cm"}
    assert read_sett_input(values, METRICS) == read_kit(changed(ROUND, sett=values), METRICS).sett
    with pytest.raises(FieldErrors, match=r"sett\.readings\[1\]\.pairs: needs a whole number"):
        read_sett_input({"readings": [{"pairs": 0, "window": "5 cm"}]}, METRICS)
    with pytest.raises(FieldErrors, match="got neither"):
        read_sett_input({}, METRICS)


@pytest.mark.parametrize("base", [ROUND, FLAT, changed(NOTCHED, frame__notch_density="5 per cm"), PEGGED, NAILS])
def test_a_kit_tells_every_input_it_has(base: dict[str, Any]) -> None:
    """`kit_values` leaves out only what the kit does not have: what belongs to other frame ends, and a sett given."""
    own = {"marking_unit": "4 cm", "loosest": True} | (
        {} if base["frame"].get("notch_density") else {"as_measured": True}
    )
    weaving = {"tie_off": "far end", "doubled_selvedges": 1, "doubled_warp": True}
    board = {} if base is ROUND else {"end_width": "40 mm"}
    strength = {"tension": "150 g", "material": "oak", "modulus": 12_000, "tensioner": "rods", "travel": "2 cm"} | (
        board or {"bar_bore": "8 mm"}
    )
    strength |= {"side_thickness": "20 mm"} | {key: BESIDE[f"frame.{key}"] for key in ("dip", "pluck")}
    frame, warp = base["frame"] | strength, {"count": 300, "system": "tex"}
    values = changed(base, sett=base["sett"] | own, weaving=base["weaving"] | weaving, frame=frame, warp=warp)
    kit: Kit = read_kit(values, METRICS)
    stated = kit_values(kit)
    keys = {
        f"{table}.{leaf}" if isinstance(inner, dict) else table
        for table, inner in stated.items()
        for leaf in (inner if isinstance(inner, dict) else [""])
    }
    foreign = {f"frame.{leaf}" for name in END_KEYS for leaf in END_KEYS[name].fields} - {
        f"frame.{leaf}" for leaf in END_KEYS[base["frame"]["ends"]].fields
    }
    foreign |= {"frame.bar_bore" if board else "frame.end_width"}
    others = {spec.key for spec in (*YARN_INPUTS, *BOX_INPUTS, *ORDER_INPUTS)}
    plain = {spec.key for spec in INPUTS if "[]" not in spec.key} - others
    plain = {".".join(key.split(".")[:2]) for key in plain}  # a small table is one value
    foreign |= {"weaving.rod_diameter"}  # a loose rod is not tied off at a frame end
    asked = plain - {"sett.given"} - foreign
    assert {key for key in keys if not key.startswith("warp.")} == asked - {"sett.as_measured"} | {
        f"sett.{leaf}" for leaf in own
    }
