"""The scale of a sheet apart from its scanner's: what one distance, two, or a scanner's profile make sure."""

from __future__ import annotations

import math

import pytest
from hand_seen import COMMON, SURE, TRUE, seen_of

from layout.drawing.correction import Scale
from layout.drawing.shapes import Point
from layout.paper.targets import rectangle
from templates_gen.measuring.scales import Distance, Factor, Reference, nominal_distance, scales_of, seen_distance

WIDE, HIGH = rectangle(COMMON)

PRINT = Scale(0.997, 1.004, 0.0006)
SCANNER = Scale(1.003, 0.998, 0.0)


def as_scanned(printed: Scale, scanner: Scale) -> Scale:
    """What a scanner that is off across and along sees of a print that lies straight on its bed."""
    return Scale(printed.x * scanner.x, printed.y * scanner.y, printed.skew * scanner.x)


def on_paper(printed: Scale, across: float, up: float) -> float:
    """How long a steel rule finds the way from one target to another on that print."""
    made = printed.made(Point(across, up))
    return math.hypot(made.x, made.y)


def test_alone_a_scan_says_what_its_scanner_sees() -> None:
    """All of it, and nothing of it is sure."""
    scales = scales_of(seen_of(as_scanned(PRINT, SCANNER)), Reference())
    assert scales.x == Factor(0.997 * 1.003, SURE.x, sure=False)
    assert scales.y == Factor(1.004 * 0.998, SURE.y, sure=False)
    assert not scales.skew.sure
    assert not scales.ratio.sure


@pytest.mark.parametrize(("pair", "way", "known"), [("top", (WIDE, 0), "x"), ("right", (0, HIGH), "y")])
def test_one_distance_makes_one_direction_sure(pair: str, way: tuple[float, float], known: str) -> None:
    """That of the print itself, to what the rule is read to; the other direction stays as the scanner sees it."""
    reference = Reference((Distance(pair, on_paper(PRINT, *way)),), rule_within=0.2)
    scales = scales_of(seen_of(as_scanned(PRINT, SCANNER)), reference)
    own, other = (scales.x, scales.y) if known == "x" else (scales.y, scales.x)
    assert own is not None
    assert other is not None
    assert own.sure
    if known == "x":
        assert own.value == pytest.approx(PRINT.x, abs=1e-9)
    else:
        assert own.value == pytest.approx(math.hypot(PRINT.y, PRINT.skew), abs=1e-6)
    assert own.within == pytest.approx(0.2 / max(way), rel=0.05)
    assert not other.sure
    assert not scales.skew.sure
    assert not scales.ratio.sure


def test_two_distances_and_both_diagonals_make_all_sure() -> None:
    """Across, up and skew are those of the print, whatever the scanner makes of them."""
    ways = {"top": (WIDE, 0), "left": (0, HIGH), "rising": (WIDE, HIGH), "falling": (WIDE, -HIGH)}
    reference = Reference(tuple(Distance(pair, on_paper(PRINT, *way)) for pair, way in ways.items()))
    scales = scales_of(seen_of(as_scanned(PRINT, SCANNER)), reference)
    assert scales.x is not None
    assert scales.y is not None
    assert scales.x.value == pytest.approx(PRINT.x, abs=1e-6)
    assert scales.y.value == pytest.approx(PRINT.y, abs=1e-6)
    assert scales.skew.value == pytest.approx(PRINT.skew, abs=2e-6)
    assert scales.skew.sure
    assert scales.skew.within > 0.0005  # a diagonal says little of a skew
    assert scales.ratio == Factor(pytest.approx(PRINT.x / PRINT.y, abs=1e-6), scales.ratio.within, sure=True)


def test_two_distances_the_same_way_are_a_mean() -> None:
    """And it is surer by the root of two."""
    one, two = (Distance(pair, on_paper(PRINT, WIDE, 0) + more) for pair, more in (("top", 0.1), ("bottom", -0.1)))
    seen = seen_of(as_scanned(PRINT, SCANNER), within=Scale(0, 0, 0))
    mean, single = (scales_of(seen, Reference(each)).x for each in ((one, two), (one,)))
    assert mean is not None
    assert single is not None
    assert mean.value == pytest.approx(PRINT.x, abs=1e-9)
    assert mean.within == pytest.approx(single.within / 2**0.5, rel=0.001)


def test_a_target_that_is_off_its_place_is_allowed_for() -> None:
    """A rule finds the two targets where they are: 0.3 mm further apart, with the scale of the sheet as it was."""
    reference = Reference((Distance("top", WIDE + 0.3),))
    apart = seen_of(TRUE, moved=lambda at: Point(at.x + 0.3, at.y) if at.x > 150 and at.y > 200 else at)
    scales = scales_of(apart, reference)
    assert scales.x is not None
    assert scales.x.value == pytest.approx(1.0, abs=1e-9)


def test_a_scanners_own_scale_makes_both_sure_but_no_skew() -> None:
    """The pictures are corrected by it before they are read; how sure it is adds to how sure the scan is."""
    seen = seen_of(PRINT, within=Scale(0.0003, 0.0004, 0.0001))
    scales = scales_of(seen, Reference(scanner=(1.003, 0.998), scanner_within=0.0004))
    assert scales.x == Factor(PRINT.x, pytest.approx(0.0005), sure=True)
    assert scales.y == Factor(PRINT.y, pytest.approx(0.0004 * 2**0.5), sure=True)
    assert not scales.skew.sure


def test_without_a_resolution_a_distance_still_says_its_direction() -> None:
    """The picture's own unit drops out; without a distance there is no scale at all."""
    there = as_scanned(PRINT, SCANNER)
    mean = (there.x * there.y) ** 0.5
    unitless = Scale(there.x / mean, there.y / mean, there.skew / mean)
    alone = scales_of(seen_of(unitless, dpi=None), Reference())
    assert (alone.x, alone.y) == (None, None)
    assert alone.ratio.value == pytest.approx(there.x / there.y)
    known = scales_of(seen_of(unitless, dpi=None), Reference((Distance("top", on_paper(PRINT, WIDE, 0)),)))
    assert known.x is not None
    assert known.x.value == pytest.approx(PRINT.x, abs=1e-9)
    assert known.y is None


@pytest.mark.parametrize("degrees", [0, 17, 54, 90, 125])
def test_the_scale_along_a_strip_is_that_of_its_direction(degrees: float) -> None:
    """As long as the drawn way comes out, whatever way a strip lies."""
    way = Point(math.cos(math.radians(degrees)), math.sin(math.radians(degrees)))
    scales = scales_of(seen_of(PRINT), Reference())
    found = scales.along(way)
    assert found is not None
    assert found.value == pytest.approx(on_paper(PRINT, way.x, way.y), abs=1e-12)
    assert SURE.x * 0.3 < found.within < SURE.x + SURE.y
    sure = scales_of(seen_of(PRINT), Reference(scanner=(1.0, 1.0))).along(way)
    assert sure is not None
    assert sure.sure == (degrees in (0, 90)), "a strip that lies aslant has the skew in it, which is not sure"


def test_distances_are_named_as_they_are_drawn() -> None:
    """Sides of the rectangle of the targets, and its diagonal."""
    assert [nominal_distance((WIDE, HIGH), pair) for pair in ("top", "bottom", "left", "right")] == [
        WIDE,
        WIDE,
        HIGH,
        HIGH,
    ]
    assert nominal_distance((WIDE, HIGH), "rising") == pytest.approx(313.51, abs=0.01)
    assert seen_distance(seen_of(PRINT), "left") == pytest.approx(on_paper(PRINT, 0, HIGH), abs=0.003)
