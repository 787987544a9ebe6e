from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest
import shapely
from beams import area_of, cuts_of
from golden import listed, matches
from ink import meetings
from kits import font_metrics, plan_of

from layout.cutting.parts.trial_cut import STEPS, eases, kerfs, trial_cut
from layout.cutting.stock.measured_kerf import CaliperReading, kerf_of
from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Text
from layout.drawing.sheet import Part, Sheet
from layout.values.errors import FieldError
from templates_gen.inputs.stock_file import built_in

STOCK = built_in()
SIDES = 512  # of the beam's quarter


def drawn_for(stock: Stock) -> Part:
    """The trial cut of the test kit, whose pitch is 4 mm."""
    return trial_cut(plan_of(), stock, font_metrics())


def cuts(part: Part) -> list[shapely.Polygon]:
    """What lies inside every line that is cut, in the order of cutting."""
    return [area_of(path) for path in cuts_of(part.shapes)]


def size(shape: shapely.Geometry) -> tuple[float, float]:
    """Width and height, to a micrometre."""
    left, bottom, right, top = shape.bounds
    return round(right - left, 3), round(top - bottom, 3)


def hole_and_plug(line: shapely.Polygon, kerf: float) -> tuple[tuple[float, float], tuple[float, float]]:
    """What a round beam as wide as the kerf leaves when its middle follows a closed line."""
    beam = line.exterior.buffer(kerf / 2, quad_segs=SIDES)
    return size(line.union(beam)), size(line.difference(beam))


def test_a_service_s_own_example() -> None:
    """Drawn 2.0 x 4.0 mm at a kerf of 0.2 mm: opening 2.2 x 4.2, part 1.8 x 3.8 (a cutting service's example)."""
    assert hole_and_plug(shapely.box(0, 0, 2, 4), 0.2) == ((2.2, 4.2), (1.8, 3.8))


@pytest.mark.parametrize("kerf", [0.1, 0.17, 0.2, 0.31])
def test_any_hole_and_its_plug_tell_the_kerf(kerf: float) -> None:
    """Cut by a beam of any width, whatever the stock says so far, each window gives that kerf both ways."""
    windows = cuts(drawn_for(STOCK))[:-1]
    assert len(windows) == STEPS + 1
    for window in windows:
        for hole, plug in zip(*hole_and_plug(window, kerf), strict=True):
            measured = [CaliperReading(Fraction(repr(side)), Fraction()) for side in (hole, plug)]
            assert kerf_of(measured[:1], measured[1:], ("--hole", "--part")).mm == pytest.approx(kerf, abs=1e-3)


def test_the_plug_that_just_fits_shows_the_kerf() -> None:
    """Cut with one of the kerfs of the ladder, the plug of that kerf is as wide as the hole of plug 0."""
    zero, *others = cuts(drawn_for(STOCK))[:-1]
    for kerf, window in zip(kerfs(STOCK), others, strict=True):
        (hole, _), _ = hole_and_plug(zero, float(kerf))
        _, (plug, _) = hole_and_plug(window, float(kerf))
        assert plug == pytest.approx(hole, abs=1e-6)


@pytest.mark.parametrize("drawn", [True, False])
def test_slots_come_out_wider_than_the_yarn_by_their_ease(drawn: bool) -> None:
    """Cut with the stock's own kerf, each slot has half the pitch of 4 mm and the ease engraved below it."""
    part = drawn_for(replace(STOCK, kerf_x=0.26, kerf_drawn=drawn))
    plate = cuts(part)[-1]
    top = plate.bounds[3]
    level = shapely.LineString([(-10, top - 2), (300, top - 2)])
    gaps = level.difference(plate.difference(plate.exterior.buffer(0.13, quad_segs=SIDES)))
    inner = [gap.length for gap in gaps.geoms][1:-1]
    assert inner == pytest.approx([2 + float(ease) for ease in eases(STOCK)], abs=1e-3)


def test_the_engraved_labels() -> None:
    """0 and the ladder of kerfs on the plugs, the ladder of eases below the slots, each where it belongs."""
    part = drawn_for(STOCK)
    words = [shape for shape in part.shapes if isinstance(shape, Text)]
    assert all(text.pen is Pen.ENGRAVE for text in words)
    assert [text.words for text in words[:8]] == ["0", "0.14", "0.16", "0.18", "0.20", "0.22", "0.24", "0.26"]
    assert [text.words for text in words[8:16]] == ["0.00", "0.05", "0.10", "0.15", "0.20", "0.25", "0.30", "0.35"]
    for text, window in zip(words[:8], cuts(part)[:-1], strict=True):
        assert window.contains(shapely.Point(text.at))
    assert "slots: ease, drawn for kerf 0.2 \N{MIDDLE DOT} plugs: kerf" in [text.words for text in words]


@pytest.mark.parametrize("kerf", [0.0, 0.01, 0.08, 0.13, 0.2, 0.23, 1.0])
def test_every_kerf_has_a_ladder_that_holds_it(kerf: float) -> None:
    """All rungs are wider than nothing, rise evenly, and the stock's kerf (or a usual one) is among them."""
    ladder = kerfs(replace(STOCK, kerf_x=kerf))
    assert round(Fraction(kerf), 2) in ladder or (kerf == 0 and Fraction("0.2") in ladder)
    steps = {other - one for one, other in pairwise(ladder)}
    assert len(ladder) == STEPS
    assert len(steps) == 1
    assert min(ladder) > 0
    assert min(steps) >= Fraction("0.01")


@pytest.mark.parametrize(
    "stock",
    [STOCK, replace(STOCK, thickness=6.0, name="W" * 40), replace(STOCK, thickness=1.0, kerf_x=0.08, grain="none")],
)
def test_nothing_lies_on_the_words(stock: Stock) -> None:
    """Every engraved word keeps white around it."""
    part = drawn_for(stock)
    assert meetings(Sheet("", 400, 400, part.shapes), 0.3) == []


def test_no_web_is_narrower_than_the_stock_is_thick() -> None:
    """Between windows, slots and edges as much is left as the stock is thick, or more."""
    for thickness in (1.0, 3.0, 6.0, 12.0):
        *windows, plate = cuts(drawn_for(replace(STOCK, thickness=thickness)))
        lefts = [window.bounds[0] for window in windows]
        rights = [window.bounds[2] for window in windows]
        webs = [left - right for left, right in zip(lefts[1:], rights, strict=False)]
        webs += [lefts[0] - plate.bounds[0], plate.bounds[2] - rights[-1]]
        assert min(webs) >= thickness


def test_a_sheet_too_small_is_refused() -> None:
    """The sentence names the sheet."""
    with pytest.raises(FieldError, match=r"sheet\.width: needs at least \d+ mm for a part .*: Trial cut, got"):
        drawn_for(replace(STOCK, width=100.0))


def test_a_kerf_as_wide_as_a_slot_is_refused() -> None:
    """A slot no wider than the kerf would vanish."""
    with pytest.raises(FieldError, match=r"cutting\.kerf"):
        drawn_for(replace(STOCK, kerf_x=2.5, kerf_y=2.5))


def test_the_golden_drawing() -> None:
    """The plate for the built-in stock, place by place."""
    assert matches("trial-cut", listed(drawn_for(STOCK)))
