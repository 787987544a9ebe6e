"""Every example with which a cut part is refused, put into the kit or the stock, lets it be cut or meets another."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from typing import Any

import pytest
from kits import font_metrics
from sweep import pairwise_rows

from layout.cutting.products import CUT_PRODUCTS, cut_suiting
from layout.cutting.stock.stock_inputs import STOCK
from layout.cutting.stock.stock_values import read_stock, stock_values
from layout.kit.kit import read_kit
from layout.kit.lookup import KIT
from layout.plan import plan
from layout.values.errors import FieldError, FieldErrors
from templates_gen.inputs import stock_file as stockfile
from tests.pasting import pasted
from tests.plain_kits import FLAT, NOTCHED, PEGGED, ROUND, changed

AXES = {
    "ends": (ROUND, FLAT, NOTCHED, PEGGED),
    "sett": ("1 per cm", "33 per 10 cm", "4 per cm", "9 epi", "6 per cm", "12 per cm", "50 per cm"),
    "wrap": (None, {"turns": 11, "window": "2 cm"}, {"turns": 60, "window": "5 mm"}, {"turns": 100, "window": "5 mm"}),
    "kerf": ("0 mm", "0.2 mm", "0.45 mm", "0.9 mm", "1.9 mm", "4 mm"),
    "thickness": ("0.1 mm", "0.2 mm", "3 mm", "9 mm"),
    "sheet": ("600 mm", "120 mm", "40 mm"),
    "opening": ("0.5 mm", "1 mm", "2.4 mm", "6 mm"),
    "edge": ("2 mm", "10 mm"),
    "depth": ("1 mm", "30 mm"),
    "comb": ("as the stock says", "every end", "every second end"),
    "too_fine": ("every second end", "say so"),
}
THIN = {key: values[0] for key, values in AXES.items()} | {"ends": NOTCHED}
"""A sheet of which a bar would have far too many layers."""

WORDS = {"the printed spacing guide", "the marking strips, which carry any pitch"}
"""What is advised instead of a part that no value can save."""


def kit_and_stock(row: Mapping[str, Any]) -> tuple[dict[str, Any], dict[str, Any]]:
    """The plain values of a kit and of a stock."""
    kit = changed(row["ends"], sett={"given": row["sett"]}, cut={"comb": row["comb"]})
    if row["wrap"]:
        kit["warp"] = {"wrap": row["wrap"]}
    if row["ends"] is NOTCHED:
        kit["frame"] |= {"notch_width": row["opening"], "notch_depth": row["depth"]}
    if row["ends"] is PEGGED:
        kit["frame"] |= {"peg_diameter": row["opening"].replace("0.5", "1"), "edge_distance": row["edge"]}
    stock: dict[str, Any] = dict(stock_values(stockfile.built_in()))
    stock |= {"thickness": row["thickness"], "cutting": {"kerf": row["kerf"], "too_fine": row["too_fine"]}}
    return kit, stock | {"sheet": {"width": row["sheet"], "height": "400 mm", "grain": "y"}}


def refused(kit: Mapping[str, Any], stock: Mapping[str, Any]) -> list[FieldError]:
    """Each product that is refused on that stock; or why kit or stock are."""
    found = []
    try:
        planned, sheet = plan(read_kit(kit, font_metrics())), read_stock(stock, font_metrics())
    except FieldErrors as errors:
        return list(errors.errors)
    except FieldError as error:
        return [error]
    for name in cut_suiting(planned):
        try:
            CUT_PRODUCTS[name].alone(planned, sheet, font_metrics())
        except FieldError as error:
            found.append(error)
    return found


@cache
def met() -> tuple[FieldError, ...]:
    """What the cut parts of every row are refused with, each example tried."""
    found, answers = [], dict[str, list[FieldError]]()
    for row in [*pairwise_rows(AXES), THIN]:
        kit, stock = kit_and_stock(row)
        for error in refused(kit, stock):
            found.append(error)
            own = error.field in STOCK.by_key
            ways = list(pasted(stock, error, STOCK) if own else pasted(kit, error, KIT))
            assert ways or error.example in WORDS, error
            for way in ways:
                both = (kit, way) if own else (way, stock)
                if (key := repr(both)) not in answers:  # parts that are refused alike get the same example
                    answers[key] = refused(*both)
                same = [one for one in answers[key] if (one.field, one.needed) == (error.field, error.needed)]
                assert not same, f"{row} {error} // {same[0]}"
    return tuple(found)


def test_the_example_for_every_part_that_cannot_be_cut_works() -> None:
    """Setts, threads, kerfs, sheets and openings, every two together."""
    assert len(met()) > 50


@pytest.mark.parametrize(
    "field",
    ["cut.comb", "cutting.kerf", "thickness", "frame.notch_width", "frame.notch_depth", "frame.peg_diameter"],
)
def test_refusals_of_every_kind_are_among_them(field: str) -> None:
    """So that the test above tries each."""
    assert field in {error.field for error in met()}
