"""Stock from plain values: what is taken, what is refused in one sentence, and that it reads back the same."""

from __future__ import annotations

import copy
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from plain_kits import METRICS

from layout.cutting.stock.stock import OPERATIONS, Stock
from layout.cutting.stock.stock_values import read_stock, stock_values, without_money
from layout.drawing.correction import TRUE, Scale
from layout.values.errors import FieldErrors

PLAIN: dict[str, Any] = {
    "version": 1,
    "name": "Shelf 3",
    "material": "poplar plywood",
    "thickness": "3 mm",
    "sheet": {"width": "600 mm", "height": "300 mm"},
    "cutting": {"kerf": "0.2 mm"},
}


def stock_of(changes: dict[str, object] | None = None) -> dict[str, Any]:
    """The plain stock with changes by dotted key; a value of None takes the key out."""
    values = copy.deepcopy(PLAIN)
    for key, value in (changes or {}).items():
        table, _, leaf = key.rpartition(".")
        place = values.setdefault(table, {}) if table else values
        if value is None:
            del place[leaf]
        else:
            place[leaf] = value
    return values


def refusals(changes: dict[str, object]) -> list[str]:
    """The sentences with which a changed stock is refused."""
    with pytest.raises(FieldErrors) as caught:
        read_stock(stock_of(changes), METRICS)
    return [str(error) for error in caught.value.errors]


def test_a_plain_stock_has_its_defaults() -> None:
    """What is left out: kerf drawn in, no grain, no prices, a colour of its own for each operation."""
    stock = read_stock(PLAIN, METRICS)
    assert (stock.thickness, stock.width, stock.height, stock.grain) == (3.0, 600.0, 300.0, "none")
    assert (stock.kerf_x, stock.kerf_y, stock.kerf_drawn) == (0.2, 0.2, True)
    assert (stock.speeds, stock.prices, stock.bending, stock.kerf_uncertainty) == ({}, {}, None, None)
    assert len({stock.operations[each].colour for each in OPERATIONS}) == len(OPERATIONS)


def test_inches_are_read_too() -> None:
    """1/8 in is 3.175 mm (1 in = 25.4 mm exactly)."""
    assert read_stock(stock_of({"thickness": "1/8 in"}), METRICS).thickness == 3.175


def test_a_kerf_may_be_measured_both_ways() -> None:
    """x is the width of a cut that runs up the sheet, y of one across it."""
    stock = read_stock(
        stock_of({"cutting.kerf": None, "cutting.kerf_x": "0.21 mm", "cutting.kerf_y": "0.18 mm"}), METRICS
    )
    assert (stock.kerf_x, stock.kerf_y) == (0.21, 0.18)


@pytest.mark.parametrize(
    ("changes", "sentence"),
    [
        (
            {"cutting.kerf": "-0.2 mm"},
            "cutting.kerf: needs a length from 0 mm to 5 mm, got '-0.2 mm'; for example kerf = \"0.20 mm\"",
        ),
        (
            {"thickness": None},
            (
                "thickness: needs to be given (how thick the sheet is, measured), got nothing; "
                'for example thickness = "3 mm"'
            ),
        ),
        (
            {"thickness": "0 mm"},
            "thickness: needs a length from 0.1 mm to 50 mm, got '0 mm'; for example thickness = \"3 mm\"",
        ),
        (
            {"colours.etch": "#123456"},
            (
                "colours.etch: needs one of the known keys (engrave, score, cut, reference), got 'etch'; "
                "for example leave out etch"
            ),
        ),
        (
            {"speeds.reference": 3},
            (
                "speeds.reference: needs one of the known keys (engrave, score, cut), got 'reference'; "
                "for example leave out reference"
            ),
        ),
        (
            {"colours.score": "#112233", "colours.cut": "#112233"},
            (
                "colours.cut: needs a colour of its own, unlike every other operation, got #112233, which "
                'colours.score has too; for example cut = "#4a2c2a"'
            ),
        ),
        (
            {"colours.cut": "red"},
            'colours.cut: needs a colour as "#" and six of 0-9 and a-f, got \'red\'; for example cut = "#4a2c2a"',
        ),
        (
            {"cutting.kerff": "0.2 mm"},
            (
                "cutting.kerff: needs a key that is known (did you mean cutting.kerf?), got 'kerff'; "
                'for example kerf = "0.20 mm"'
            ),
        ),
        (
            {"cutting.kerf": None},
            (
                "cutting.kerf: needs to be given (the full width of the cut, measured or from a table of your "
                'material), got nothing; for example kerf = "0.20 mm"'
            ),
        ),
        (
            {"cutting.kerf_x": "0.2 mm"},
            "cutting.kerf_x: needs to be left out beside kerf, got 0.2 mm; for example leave out kerf_x",
        ),
        (
            {"cutting.kerf": None, "cutting.kerf_x": "0.2 mm"},
            'cutting.kerf_y: needs to be given beside cutting.kerf_x, got nothing; for example kerf_y = "0.19 mm"',
        ),
        (
            {"sheet.grain": "length"},
            'sheet.grain: needs "x", "y" or "none", got \'length\'; for example grain = "y"',
        ),
        (
            {"speeds.cut": 0},
            "speeds.cut: needs a plain number above zero and at most 1,000,000, got 0; for example cut = 20",
        ),
        (
            {"prices.minute": "2 a minute"},
            (
                "prices.minute: needs a plain number above zero and at most 1,000,000, got '2 a minute'; "
                "for example minute = 0.80"
            ),
        ),
        (
            {"scale.x": "3.1 %"},
            (
                'scale.x: needs a deviation from -3 to 3 per cent, in quotes with the sign %, such as "0.21 %", '
                "got '3.1 %'; for example x = \"0.21 %\""
            ),
        ),
        (
            {"scale.skew": 0.001},
            (
                'scale.skew: needs a deviation from -3 to 3 per cent, in quotes with the sign %, such as "0.21 %", '
                'got 0.001; for example skew = "0.05 %"'
            ),
        ),
        (
            {"scale.uncertainty": "-0.1 %"},
            (
                "scale.uncertainty: needs a deviation from 0 to 3 per cent, in quotes with the sign %, "
                'such as "0.21 %", got \'-0.1 %\'; for example uncertainty = "0.03 %"'
            ),
        ),
        (
            {"scale.x": "-1 %", "sheet.width": "3480 mm"},
            (
                "sheet.width: needs at most 3465 mm, since it is drawn larger by the scale of the cutter, got 3480 mm; "
                'for example width = "3465 mm"'
            ),
        ),
    ],
)
def test_each_bad_value_is_refused_in_one_sentence(changes: dict[str, object], sentence: str) -> None:
    """The sentence names the key, what was needed, what came, and a line that works."""
    assert refusals(changes) == [sentence]


def test_a_scale_is_read_as_what_the_cutter_makes_of_a_millimetre() -> None:
    """0.21 % too long: 1.0021; what is left out is right."""
    stock = read_stock(stock_of({"scale.x": "0.21 %", "scale.skew": "-0,05 %", "scale.uncertainty": "0.03 %"}), METRICS)
    assert (stock.scale, stock.scale_uncertainty) == (Scale(1.0021, 1.0, -0.0005), 0.0003)
    assert read_stock(stock_of({"scale.x": "+0.21 %"}), METRICS).scale == Scale(1.0021, 1.0, 0.0)
    assert refusals({"scale.x": "+-0.21 %"})[0].startswith("scale.x: needs a deviation")
    assert read_stock(PLAIN, METRICS).scale == TRUE
    assert "scale" not in stock_values(read_stock(PLAIN, METRICS))


def test_the_largest_sheet_that_is_offered_is_taken() -> None:
    """Of sheets that would be drawn too large: the example works, leaning included, and a little more does not."""
    scale = {"scale.x": "-3 %", "scale.y": "-2 %", "scale.skew": "3 %"}
    changes = scale | {"sheet.width": "3500 mm", "sheet.height": "3000 mm"}
    most = int(refusals(changes)[0].rpartition('"')[0].rpartition('"')[2].removesuffix(" mm"))
    assert read_stock(stock_of(changes | {"sheet.width": f"{most} mm"}), METRICS).width == most
    assert refusals(changes | {"sheet.width": f"{most + 1} mm"})


def test_several_refusals_come_at_once() -> None:
    """Nobody has to mend one line to hear of the next."""
    assert len(refusals({"thickness": "x", "cutting.kerf": "9 cm", "cutting.kerf_drawn": "yes", "bending": -1})) == 4


_mm = st.decimals("0.1", "49.999", places=3).map(lambda mm: f"{mm} mm")
_kerfs = st.decimals("0", "5", places=4).map(lambda mm: f"{mm} mm")
_inches = st.integers(1, 63).map(lambda n: f"{n}/64 in")


@given(
    thickness=st.one_of(_mm, _inches),
    kerf=_kerfs,
    other=_kerfs,
    grain=st.sampled_from(["x", "y", "none"]),
    drawn=st.booleans(),
    price=st.one_of(st.none(), st.floats(0.01, 999)),
    uncertainty=st.one_of(st.none(), st.just("0.015 mm")),
    off=st.one_of(st.none(), st.decimals("-3", "3", places=8).map(lambda share: f"{share:f} %")),
)
def test_a_stock_tells_itself_in_values_that_read_back_the_same(
    thickness: str,
    kerf: str,
    other: str,
    grain: str,
    drawn: bool,
    price: float | None,
    uncertainty: str | None,
    off: str | None,
) -> None:
    """Files carry these values: no figure may change on the way."""
    changes: dict[str, object] = {
        "thickness": thickness,
        "cutting.kerf": None,
        "cutting.kerf_x": kerf,
        "cutting.kerf_y": other,
        "cutting.kerf_drawn": drawn,
        "sheet.grain": grain,
        "cutting.too_fine": "every second end",
    }
    changes |= {"prices.sheet": price, "bending": price} if price else {}
    changes |= {"cutting.kerf_uncertainty": uncertainty} if uncertainty else {}
    changes |= {"scale.x": off, "scale.skew": off, "scale.uncertainty": "0.012 %"} if off else {}
    stock = read_stock(stock_of(changes), METRICS)
    assert read_stock(stock_values(stock), METRICS) == stock


def test_a_file_carries_no_prices() -> None:
    """What no page needs stays in the shop; the speeds are needed for the time on the job sheet."""
    stock: Stock = read_stock(stock_of({"prices.sheet": 4.5, "speeds.cut": 12}), METRICS)
    kept = without_money(stock)
    assert (kept.prices, kept.speeds) == ({}, {"cut": 12})
    assert (kept.kerf_x, kept.name) == (stock.kerf_x, stock.name)
