"""Combs as they fall out of the stock: a simulated beam run along their lines leaves what the weaver wanted."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest
import shapely
from beams import crossed, cuts_of, made_of
from cut_plans import parts_of, stock_with
from golden import listed, matches
from hypothesis import given, settings
from hypothesis import strategies as st
from kits import NOTCHED, PEGGED, font_metrics, plan_of
from scipy.integrate import quad

from layout.cutting.parts.comb import comb
from layout.cutting.parts.on_paper import drawing_of
from layout.cutting.stock.stock import Stock
from layout.cutting.stock.tooth_strength import tooth_holds
from layout.drawing.arcs import turn
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve
from layout.drawing.sheet import Care, OnScreen, Part
from layout.messages.english import ENGLISH
from layout.values.errors import FieldError
from layout.values.quantity import Origin, measured
from layout.yarns.diameter import Diameter, Kind
from layout.yarns.loosest import CABLED, loosest

WRAPPED: dict[str, object] = {"warp": {"wrap": {"turns": 20, "window": "30 mm"}}}


def gaps_of(part: Part, stock: Stock, height: float) -> list[tuple[float, float]]:
    """From where to where each slot reaches at a height above the roots, along the comb (teeth up)."""
    teeth = crossed(made_of(part.shapes, stock), shapely.LineString([(-2000, height), (2000, height)]))
    return [(one[1], other[0]) for one, other in pairwise(teeth)]


@settings(max_examples=8)
@given(st.floats(0.02, 0.5), st.sampled_from(["2 ends/cm", "2.5 ends/cm", "8 epi", "4 ends/cm"]), st.floats(0, 0.2))
def test_every_end_has_a_slot_at_its_place_whatever_the_kerf(kerf: float, sett: str, ease: float) -> None:
    """The middles lie at (k + 1/2) p - W/2, one an end; each slot is half the pitch and the ease wide."""
    planned = plan_of({"sett.given": sett, "weaving.width": "8 cm"})
    stock = stock_with(kerf=kerf, ease=ease, grain="none")
    gaps = gaps_of(comb(planned, stock, font_metrics()), stock, 1.5)
    ends, pitch = planned.warp.ends, float(planned.warp.pitch)
    assert len(gaps) == ends
    for k, (left, right) in enumerate(gaps):
        assert (left + right) / 2 == pytest.approx((k + 0.5) * pitch - ends * pitch / 2, abs=1e-3)
        assert right - left == pytest.approx(pitch / 2 + ease, abs=1e-3)


def test_eight_ends_an_inch_are_eight_slots_in_every_inch() -> None:
    """8 in one inch, not 9 (a tapestry teacher's rule), from any unit mark to the next."""
    stock = stock_with(grain="none")
    part = comb(
        plan_of({"sett.given": "8 epi", "sett.marking_unit": "1 in", "weaving.width": "6 in"}), stock, font_metrics()
    )
    middles = [(left + right) / 2 for left, right in gaps_of(part, stock, 2.0)]
    scores = sorted(shape.start.x for shape in part.shapes if isinstance(shape, Curve) and shape.pen is Pen.SCORE)
    assert [round((x - scores[0]) / 25.4, 6) for x in scores] == [0, 1, 2, 3, 4, 5, 6]
    assert [sum(low <= x < low + 25.4 for x in middles) for low in scores[:-1]] == [8] * 6


def test_a_warp_that_was_wrapped_sets_the_slots() -> None:
    """20 turns in 30 mm are 1.5 mm a thread; with 0.15 mm of ease the slot is 1.65 mm wide."""
    stock = stock_with(grain="none", ease=0.15)
    part = comb(plan_of(WRAPPED), stock, font_metrics())
    assert {round(right - left, 3) for left, right in gaps_of(part, stock, 3.0)} == {1.65}
    assert "50 slots 1.65 mm wide: the warp's 1.50 mm (soft) and 0.15 mm of ease." in part.notes


@pytest.mark.parametrize("end", ["near", "far"])
@pytest.mark.parametrize("turned", [{}, {"weaving.slant": "face straight", "weaving.start": "right"}])
def test_a_winding_comb_has_a_tooth_between_neighbouring_winds(end: str, turned: dict[str, object]) -> None:
    """Its slots lie where the winds cross that frame end; between any two there is one tooth."""
    planned, stock = plan_of(turned), stock_with(grain="none")
    near, far = parts_of("winding-comb", planned, stock)
    part, marks = (near, planned.warp.near) if end == "near" else (far, planned.warp.far)
    middles = [(left + right) / 2 for left, right in gaps_of(part, stock, 4.0)]
    assert middles == pytest.approx(sorted(map(float, marks)), abs=1e-3)
    assert len(marks) == planned.warp.ends // 2 + (end == "near")


@pytest.mark.parametrize("ends", [NOTCHED, PEGGED])
def test_a_winding_comb_is_for_wound_frames(ends: dict[str, object]) -> None:
    """Notches and pegs keep the thread where it belongs."""
    from layout.cutting.products import cut_suiting

    assert "winding-comb" not in cut_suiting(plan_of(ends))
    assert "comb" in cut_suiting(plan_of(ends))


@pytest.mark.parametrize("name", ["comb", "winding-comb"])
@pytest.mark.parametrize("sett", ["1 ends/cm", "2.5 ends/cm", "4 ends/cm"])
def test_teeth_are_no_longer_than_three_times_their_width(name: str, sett: str) -> None:
    """The rule of the cutters, and no tooth is narrower than 1 mm; both measured on what the beam leaves."""
    stock = stock_with(grain="none")
    for part in parts_of(name, plan_of({"sett.given": sett}), stock):
        made = made_of(part.shapes, stock)
        teeth = crossed(made, shapely.LineString([(-2000, 2.0), (2000, 2.0)]))[1:-1]
        narrow = min(right - left for left, right in teeth)
        assert narrow >= 1.0
        middle = sum(gaps_of(part, stock, 2.0)[3]) / 2
        ground = crossed(made, shapely.LineString([(middle, -200), (middle, 200)]))[-1][1]
        assert made.bounds[3] - ground <= 3 * narrow + 1e-3
        assert made.bounds[3] - ground <= 12.001


def test_narrow_teeth_are_told_with_what_would_be_stronger() -> None:
    """1.85 mm in 3 mm plywood: stock of 1.8 mm, or every second end, which leaves 5.85 mm; not so in thin stock.

    With what a tooth holds that stands on the screen alone; the drawing says in words that teeth break.
    """
    planned = plan_of()
    (said,) = [note for note in comb(planned, stock_with(), font_metrics()).notes if isinstance(note, Care)]
    assert said == (
        "Take care: teeth 1.85 mm wide are narrower than the stock is thick (3 mm) and break easily; "
        'stock of at most 1.8 mm or a comb for every second end (comb = "every second end" under [cut], teeth of '
        "5.9 mm) is stronger. Pushed sideways at its tip, a tooth breaks at about 9 N, as a cantilever; assumed: a "
        "bending strength of 30 N/mm2 along the face grain, from memory and low for birch plywood."
    )
    assert isinstance(said, OnScreen)
    drawn = drawing_of(comb(planned, stock_with(), font_metrics()), ENGLISH).notes
    assert said not in drawn
    assert "Take care: its teeth are narrower than the stock is thick, and break easily." in drawn
    thin = comb(planned, stock_with(thickness=1.8), font_metrics())
    assert not any(isinstance(note, Care) for note in thin.notes)


FINE = {"sett.given": "5 ends/cm"}


def test_a_pitch_too_fine_is_refused_with_what_works() -> None:
    """2 mm leave teeth of 0.85 mm; a comb for every second end would have 2.85 mm."""
    with pytest.raises(FieldError) as caught:
        comb(plan_of(FINE), stock_with(), font_metrics())
    assert str(caught.value) == (
        "cut.comb: needs a pitch that leaves the teeth of a comb at least 1 mm, got teeth of 0.85 mm at a "
        'pitch of 2.00 mm (2.9 mm for every second end); for example comb = "every second end"'
    )
    with pytest.raises(FieldError, match=r"for example the printed spacing guide$"):
        comb(plan_of({"sett.given": "20 ends/cm"}), stock_with(too_fine="every second end"), font_metrics())


SECOND = {"cut": {"comb": "every second end"}}


def test_what_a_warning_recommends_can_be_had() -> None:
    """The kit's own key makes the comb for every second end that notes and refusals name, whatever the stock says."""
    for changes in ({}, FINE):
        for stock in (stock_with(grain="none"), stock_with(grain="none", too_fine="printed guide")):
            planned = plan_of({**changes, **SECOND})
            part = comb(planned, stock, font_metrics())
            middles = [(left + right) / 2 for left, right in gaps_of(part, stock, 3.0)]
            assert middles == pytest.approx([float(x) for x in planned.warp.end_positions][::2], abs=1e-3)
            assert not any("every second end (" in note for note in part.notes)


def test_the_kit_goes_before_the_stock() -> None:
    """A kit that asks for every end gets no other comb; both ways that do not hold are refused with what works."""
    stock = stock_with(too_fine="every second end")
    with pytest.raises(FieldError, match=r'^cut\.comb: .* for example comb = "every second end"$'):
        comb(plan_of({**FINE, "cut": {"comb": "every end"}}), stock, font_metrics())
    with pytest.raises(FieldError, match=r"slots of .* at a pitch of 1\.00 mm; for example the printed spacing guide$"):
        comb(plan_of({"sett.given": "20 ends/cm", **SECOND, **WRAPPED}), stock, font_metrics())


CORD: dict[str, object] = {"warp": {"count": 12, "system": "ne", "plies": 6, "fibre": "cotton"}}


def test_a_slot_holds_a_cord_that_was_only_weighed() -> None:
    """12/6 Ne cotton (295 tex), 0.64 mm pressed solid, wraps at 1.02 mm (a weaver's cord; no published source)."""
    stock = stock_with(grain="none", ease=0.15)
    part = comb(plan_of(CORD), stock, font_metrics())
    ((wide),) = {round(right - left, 3) for left, right in gaps_of(part, stock, 3.0)}
    assert 1.02 + 0.15 < wide < 1.4
    asks = [note for note in part.notes if isinstance(note, Care) and "Wrap it by hand" in note]
    assert len(asks) == 1
    wrapped = comb(plan_of({"warp": {**CORD["warp"], **WRAPPED["warp"]}}), stock, font_metrics())  # type: ignore[dict-item]
    assert not any("Wrap it by hand" in note for note in wrapped.notes)


@pytest.mark.parametrize(("plies", "circle"), [(1, 1), (2, 2), (3, 2.1547), (4, 2.4142), (5, 2.7013), (6, 3), (7, 3)])
def test_no_plied_yarn_is_wider_than_the_loosest(plies: int, circle: float) -> None:
    """The smallest circle round so many equal ones (Graham 1968, Pirl 1969), for one area of thread."""
    assert circle / plies**0.5 < CABLED
    thick = Diameter(measured(1.0, "known"), Kind.COMPRESSED)
    assert loosest(thick).mm == pytest.approx(1.7593, abs=1e-4)
    assert loosest(thick).figure.origin is Origin.ASSUMED


def test_every_second_end_is_chosen_where_the_stock_says_so() -> None:
    """Its slots lie at the places of the ends 0, 2, 4 ...; turned over, left for right, at those of all others."""
    planned, stock = plan_of(FINE), stock_with(too_fine="every second end", grain="none")
    part = comb(planned, stock, font_metrics())
    middles = [(left + right) / 2 for left, right in gaps_of(part, stock, 3.0)]
    places = [float(x) for x in planned.warp.end_positions]
    assert middles == pytest.approx(places[::2], abs=1e-3)
    assert sorted(-x for x in middles) == pytest.approx(places[1::2], abs=1e-3)
    assert "turn it over, left for right" in part.notes[0]


def test_the_printed_guide_is_chosen_where_the_stock_says_so() -> None:
    """Though a comb for every second end would hold, none is made, and the guide alone is named."""
    stock = stock_with(too_fine="printed guide")
    with pytest.raises(FieldError, match=r"got teeth of 0\.85 mm .*for example the printed spacing guide$"):
        comb(plan_of(FINE), stock, font_metrics())
    assert comb(plan_of(), stock, font_metrics()) == comb(plan_of(), stock_with(), font_metrics())


def test_a_kerf_no_narrower_than_a_slot_is_refused() -> None:
    """The sentence says how wide the slot would be."""
    with pytest.raises(FieldError) as caught:
        comb(plan_of(), stock_with(kerf_x=2.2), font_metrics())
    assert str(caught.value) == (
        'cutting.kerf: needs to be less than a slot of the comb, 2.15 mm, got 2.2 mm; for example kerf = "0.20 mm"'
    )


def test_the_teeth_lie_along_the_face_grain() -> None:
    """On a stock whose grain runs along x the comb is drawn a quarter turn round, kerf of each way and all."""
    planned = plan_of()
    along_y, along_x = stock_with(grain="y", kerf_x=0.2, kerf_y=0.3), stock_with(grain="x", kerf_x=0.3, kerf_y=0.2)
    upright, turned = (comb(planned, stock, font_metrics()) for stock in (along_y, along_x))
    back = [shapely.Polygon([(y, -x) for x, y in cuts_of(turned.shapes)[-1].points()])]
    assert back[0].symmetric_difference(shapely.Polygon(cuts_of(upright.shapes)[-1].points())).area < 1e-9
    assert (turned.length, turned.height) == pytest.approx((upright.height, upright.length))


def test_a_kerf_left_to_the_machine_is_not_drawn() -> None:
    """The lines are the edges, and the part says so."""
    planned = plan_of()
    part = comb(planned, stock_with(kerf_drawn=False, grain="none"), font_metrics())
    no_kerf = comb(planned, stock_with(kerf=0.0, grain="none"), font_metrics())
    assert cuts_of(part.shapes)[-1].points() == [pytest.approx(each) for each in cuts_of(no_kerf.shapes)[-1].points()]
    assert part.notes[-1] == "For the stock birch plywood 3 mm: kerf 0.2 mm, left to the machine."


@pytest.mark.parametrize("grain", ["x", "y", "none"])
def test_a_sheet_smaller_than_the_comb_is_refused(grain: str) -> None:
    """One sentence: which side, how much is needed, for which part."""
    side = "height" if grain == "x" else "width"
    with pytest.raises(FieldError) as caught:
        comb(plan_of(), stock_with(grain=grain, **{side: 200.0}), font_metrics())
    along = f"a part whose grain has to lie along {grain}" if grain != "none" else "this part"
    assert str(caught.value) == (
        f'sheet.{side}: needs at least 211 mm for {along}: Comb, got 200 mm; for example {side} = "250 mm"'
    )


def test_tips_and_grounds_are_true_arcs() -> None:
    """Rounds stay rounds: no slot or tooth ends in a polygon, and no arc turns more than 45 degrees."""
    outer = cuts_of(comb(plan_of(), stock_with(), font_metrics()).shapes)[-1]
    starts = outer.points()
    arcs = [(start, each.through, each.end) for start, each in zip(starts, outer.steps, strict=False) if each.through]
    assert len(arcs) >= 4 * (50 + 49)
    assert max(abs(turn(*three)) for three in arcs) <= 0.7854


def test_what_a_tooth_holds_is_a_cantilevers_force() -> None:
    """The moment of the stresses over the section, summed up by scipy, is the force times its arm."""
    width, length, thickness, strength = 1.85, 5.55, 3.0, 40.0
    moment, _ = quad(lambda y: strength * y / (width / 2) * y * thickness, -width / 2, width / 2)
    stock = replace(stock_with(), thickness=thickness, bending=strength)
    assert tooth_holds(width, length, stock).value == pytest.approx(moment / length)
    assert tooth_holds(width, length, stock).origin == "computed"
    assert tooth_holds(width, length, stock_with(bending=None)).origin == "assumed"


@pytest.mark.parametrize(
    ("name", "which", "changes", "stock"),
    [
        ("cut-comb", "comb", {}, {"grain": "y"}),
        ("cut-comb-second-end-across", "comb", FINE, {"grain": "x", "too_fine": "every second end", "kerf_x": 0.3}),
        ("cut-winding-comb-near", "winding-comb", {"weaving.slant": "face straight"}, {"kerf_drawn": False}),
        ("cut-shed-stick", "shed-stick", {}, {}),
    ],
)
def test_the_drawings_have_not_changed(
    name: str, which: str, changes: dict[str, object], stock: dict[str, object]
) -> None:
    """Every shape in mm, as a person can read it in tests/golden."""
    assert matches(name, listed(parts_of(which, plan_of(changes), stock_with(**stock))[0]))
