"""What people read of the weft to buy."""

from __future__ import annotations

from dataclasses import replace

from layout.plan import plan
from layout.values.quantity import assumed, measured
from layout.yardage.amounts import BallsNeed, Narrowing
from templates_gen.inputs import kit_file as kitfile
from templates_gen.screen.amounts_report import amounts_values
from templates_gen.screen.weft_report import buy_rows, need_rows, weft_rows

AMOUNTS = plan(kitfile.demo()).amounts


def test_a_wide_range_says_what_would_narrow_it() -> None:
    """Likely value, range, and the measurement with its key, before the reason."""
    wide = replace(
        AMOUNTS,
        weft_total_m=assumed(108, "From the labels.", 79, 198),
        narrowing=lambda: Narrowing("weft.beads", "counting beads on a sample"),
    )
    name, size, remark = next(iter(need_rows(wide, imperial=False)))
    assert (name, size) == ("Weft", "about 110 m (79 to 200), 120 yd (86 to 220)")
    assert remark == "counting beads on a sample (weft.beads) would narrow it most; assumed: From the labels."
    assert amounts_values(wide)["narrows_most"] == "weft.beads"


def test_balls_are_counted_by_colour() -> None:
    """How many, what is left over, and where a sample should come first; programs read the same."""
    balls = (
        BallsNeed("marsh wool", "madder", 2, assumed(12, "Bought less needed.", 5, 20), unsure=True),
        BallsNeed("marsh wool", "", 1, measured(12, "Bought less needed."), unsure=False),
    )
    bought = replace(AMOUNTS, balls=balls)
    first, second = buy_rows(bought, imperial=False)
    assert first[:2] == ("madder", "2 balls")
    left = "marsh wool; about 12 g (5 to 20), 0.42 oz (0.18 to 0.71) left over"
    assert first[2] == f"{left}, but that is not sure: weave a sample first"
    assert second == ("marsh wool", "1 ball", "12 g, 0.42 oz left over")
    said = amounts_values(bought)["balls"]
    assert isinstance(said, list)
    assert [(each["colour"], each["balls"], each["left_g_low"], each["unsure"]) for each in said] == [
        ("madder", 2, 5, True),
        (None, 1, 12, False),
    ]


def test_a_piece_that_shrinks_says_what_to_weave() -> None:
    """300 mm that lose a tenth leave 270; to have 300, weave 333.3 (300 / 0.9): said only where the kit states it."""
    sides = [measured(size, "So high.") for size in (300.0, 270.0, 300 / 0.9)]
    woven, left, before = ((side, side) for side in sides)
    rows = list(weft_rows(replace(AMOUNTS, woven_mm=woven, finished_mm=left, for_finished_mm=before), imperial=False))
    assert rows[-1][:2] == ("Finished height", "270 mm, 10.63 in")
    assert rows[-1][2].endswith("For 300 mm, 11.81 in when finished, weave 333.3 mm, 13.12 in.")
    maybe = assumed(300, "Not stated.", 285, 300)
    rows = list(weft_rows(replace(AMOUNTS, woven_mm=woven, finished_mm=(maybe, maybe)), imperial=False))
    assert rows[-1] == ("Finished height", "about 300 mm (285 to 300), 11.8 in (11.2 to 11.8)", "assumed: Not stated.")
    rows = list(weft_rows(replace(AMOUNTS, woven_mm=woven, finished_mm=woven), imperial=False))
    assert rows[-1][0] == "Woven height"
