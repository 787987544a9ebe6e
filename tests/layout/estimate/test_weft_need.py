"""The weft a kit takes, through the kit, against handbooks, scipy and sums by hand."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from layout.values.quantity import Origin, Quantity
from layout.yardage.amounts import Amounts
from tests.plain_kits import LEFT_OUT
from tests.yarn_kits import STATED, amounts_of

STRAIGHT = {"weft__pick": {"straight": "100 mm", "woven": "100 mm"}}
NO_FIBRE = {"warp__fibre": LEFT_OUT}
SAMPLE = {"grams": 12, "width": "100 mm", "height": "100 mm"}


def known(figure: Quantity | None) -> Quantity:
    """A figure that must be there."""
    assert figure is not None
    return figure


def wraps(warp: int, weft: int, **more: object) -> Amounts:
    """Both yarns by hand wraps alone: turns pushed together in 2 cm, at a pitch of 4 mm."""
    window = {"window": "2 cm", "how": "pushed together"}
    return amounts_of(warp={"wrap": {"turns": warp} | window}, weft={"wrap": {"turns": weft} | window} | more)


def test_width_by_picks_by_height_is_the_handbook_sum() -> None:
    """C. P. Brooks, Cotton Manufacturing: 37.5 in x 64 picks an inch: 2400 in of weft in an inch; here ten inches."""
    found = amounts_of(
        sett={"given": "8 epi"},
        frame__outer_width="50 in",
        frame__outer_height="30 in",
        weaving={"width": "37.5 in", "height": "10 in"},
        weft={"picks": {"number": 64, "over": "1 in"}} | {"pick": {"straight": "1 in", "woven": "1 in"}},
    )
    assert known(found.weft_total_m).value == pytest.approx(2400 * 10 * 0.0254)


def test_a_bead_is_two_picks() -> None:
    """A tapestry teacher: picks an inch are twice the beads counted up one end."""
    beads = amounts_of(weft={"beads": {"number": 22, "over": "1 in"}}).picks_per_cm
    picks = amounts_of(weft={"picks": {"number": 44, "over": "1 in"}}).picks_per_cm
    assert known(beads).value == known(picks).value
    assert known(beads).origin is Origin.MEASURED


# C, from Peirce 1937 (J. Text. Inst. T45) with a straight warp: l / p at D / p
RATIOS = [((40, 40), 0.25, 1.031416), ((20, 20), 0.5, 1.127825), ((10, 20), 0.75, 1.297484)]


@pytest.mark.parametrize(("turns", "filled", "ratio"), RATIOS)
def test_the_take_up_is_that_of_a_straight_warp(turns: tuple[int, int], filled: float, ratio: float) -> None:
    """Peirce's geometry to six figures; and his two equations solved by scipy for an angle where h = D.

    The beads are as high as the weft is thick, so that it lies as thick in the cloth.
    """
    found = known(wraps(*turns, beads={"number": turns[1], "over": "2 cm"}).weft_take_up)
    assert found.value + 1 == pytest.approx(ratio, abs=5e-7)

    def spacing_less_p(angle: float) -> float:
        length = filled * angle + (filled - filled * (1 - math.cos(angle))) / math.sin(angle)  # from h = D
        return (length - filled * angle) * math.cos(angle) + filled * math.sin(angle) - 1

    if filled < 1:
        angle = brentq(spacing_less_p, 1e-6, math.pi / 2)
        assert found.value + 1 == pytest.approx(filled * angle + filled * math.cos(angle) / math.sin(angle), rel=1e-6)


def test_labels_beside_wraps_narrow_the_take_up() -> None:
    """Wraps alone leave a yarn thin in cloth by a third or more; count and fibre say more."""
    apart, both = (known(each.weft_take_up) for each in (wraps(10, 10), amounts_of()))
    assert both.high - both.low < apart.high - apart.low
    assert apart.origin is Origin.ASSUMED


def test_a_pick_drawn_out_goes_before_all_reckoning() -> None:
    """118 mm drawn out of 100 mm: 18 %, measured."""
    found = known(amounts_of(weft__pick={"straight": "118 mm", "woven": "100 mm"}).weft_take_up)
    assert (found.value, found.origin) == (pytest.approx(0.18), Origin.MEASURED)


def test_picks_guessed_from_the_bundle_lie_between_pressed_and_soft() -> None:
    """By hand: 600 tex of wool are 24.5 x .0403 = .987 mm pressed, 2 mm soft: beads of their middle by ratio, 1.405 mm.

    A hard beat presses them to .987 mm, a soft one leaves 2 mm; a beat that is stated is a guess too.
    """
    for beat, height in (({}, 1.405), ({"weft__beat": 0}, 2), ({"weft__beat": 1}, 0.987)):
        guess = known(amounts_of(weft__picks=LEFT_OUT, **beat).picks_per_cm)
        assert (guess.value, guess.origin) == (pytest.approx(20 / height, rel=1e-3), Origin.ASSUMED)


def test_a_weighed_sample_goes_before_all_reckoning() -> None:
    """By hand: 12 g on 10 x 10 cm are 86.4 g on 24 x 30 cm; at 1200 tex that is 72 m of two strands of 600."""
    found = amounts_of(weft__sample=SAMPLE, weaving__draw_in=0)
    assert known(found.weft_total_g).value == pytest.approx(86.4)
    assert known(found.weft_total_m).value == pytest.approx(86.4 / 0.6)
    assert known(found.weft_total_g).origin is Origin.COMPUTED


def test_draw_in_narrows_what_is_woven() -> None:
    """4 % of 240 mm: the sample's weight falls with the width."""
    found = amounts_of(weft__sample=SAMPLE, weaving__draw_in="4 %")
    assert found.woven_mm[0].value == pytest.approx(230.4)
    assert known(found.weft_total_g).value == pytest.approx(86.4 * 0.96)


def test_draw_in_brings_the_ends_closer() -> None:
    """2 mm of warp and weft at 4 mm less 10 % fill 5/9 of the pitch, and each pick bends more (Peirce's geometry)."""
    found = amounts_of(
        **NO_FIBRE,
        warp__wrap={"turns": 20, "window": "2 cm"},
        weaving__draw_in="10 %",
        weft__wrap={"turns": 20, "window": "2 cm"},
    )
    filled = 5 / 9
    assert known(found.weft_take_up).value + 1 == pytest.approx(math.sqrt(1 - filled**2) + filled * math.asin(filled))


COLOURS = [{"name": "madder", "share": 60, "lengths": 10}, {"name": "ash", "share": 40, "lengths": 30}]


def test_colours_take_their_share_and_their_tails() -> None:
    """240 mm x 300 picks are 72 m: 60 % and 40 %, with two tails of 25 mm (G. Christie) a length, two strands each."""
    found = amounts_of(**STRAIGHT, weft__colours=COLOURS, weaving__draw_in=0)
    lengths = {each.name: each.length_m.value for each in found.weft_by_colour}
    assert lengths == pytest.approx({"madder": 2 * (43.2 + 0.5), "ash": 2 * (28.8 + 1.5)})
    assert known(found.weft_total_m).value == pytest.approx(74)
    assert known(found.weft_total_g).value == pytest.approx(74 * 0.6)


def test_a_strand_with_its_own_colour_keeps_it() -> None:
    """One grey strand and one that changes: grey runs through all 72 m, the other takes the colour of the area."""
    strands = [{"count": 200, "system": "tex", "colour": "grey"}, {"count": 400, "system": "tex"}]
    colours = [{"name": "madder", "share": 0.75}, {"name": "grey", "share": 0.25}]
    found = amounts_of(**STRAIGHT, weft__strands=strands, weft__colours=colours, weaving__draw_in=0)
    weights = {each.name: each.weight_g.value for each in found.weft_by_colour}
    assert weights == pytest.approx({"grey": 72 * 0.2 + 18 * 0.4, "madder": 54 * 0.4})


@given(st.lists(st.integers(1, 60), min_size=1, max_size=5), st.integers(0, 50), st.booleans())
def test_colours_weigh_together_what_the_weft_weighs(parts: list[int], lengths: int, sample: bool) -> None:
    """Whatever the shares, and whether computed or weighed."""
    shares = [*parts[:-1], 0] if len(parts) > 1 and sum(parts[:-1]) <= 100 else [0]
    shares[-1] = 100 - sum(shares)
    colours = [{"name": f"c{k}", "share": part} for k, part in enumerate(shares)]
    if lengths:
        colours[0]["lengths"] = lengths
    more = {"weft__sample": SAMPLE} if sample else {}
    found = amounts_of(weft__colours=colours, **more)
    total = known(found.weft_total_g).value
    assert sum(each.weight_g.value for each in found.weft_by_colour) == pytest.approx(total)
    metres = sum(each.length_m.value for each in found.weft_by_colour)
    assert metres == pytest.approx(2 * known(found.weft_total_m).value)


def test_tails_that_are_not_counted_are_said() -> None:
    """Without lengths the total rests on an assumption."""
    assert any("Tails are left out" in reason for reason in amounts_of().assumptions)
    assert not any("Tails are left out" in reason for reason in amounts_of(weft__colours=COLOURS).assumptions)


def test_what_shrinks_by_a_fifth_is_divided_and_never_added() -> None:
    """CNCH guild page: 10 in that become 8 in have shrunk 20 %; to finish at 10 in weave 12.5 in, not 12."""
    found = amounts_of(weaving__height="10 in", weaving__shrinkage="20 %")
    assert found.finished_mm[1].value == pytest.approx(8 * 25.4)
    assert found.for_finished_mm[1].value == pytest.approx(12.5 * 25.4)


def test_shrinkage_can_be_measured_on_a_sample() -> None:
    """CNCH again: 10 in that become 8 in, measured and no longer assumed."""
    found = amounts_of(weaving__height="10 in", weaving__washed={"before": "10 in", "after": "8 in"})
    assert found.finished_mm[1].value == pytest.approx(8 * 25.4)
    assert found.finished_mm[1].origin is Origin.COMPUTED


def test_only_names_leave_out_what_cannot_be_known() -> None:
    """Yarns that are only called something have a length of warp; each figure that needs more says what to add."""
    found = amounts_of(warp=LEFT_OUT, weft=LEFT_OUT)
    missing = {name for name, figure in found.figures.items() if figure is None}
    assert missing >= {"warp_total_g", "weft_take_up", "picks_per_cm", "weft_total_m", "weft_total_g"}
    assert len(found.to_add) == 5
    assert found.weft_by_colour == ()


@pytest.mark.parametrize(
    ("weft", "asked"),
    [
        ({"strands": [{"fibre": "wool"}]}, "weft.beads"),
        ({"picks": {"number": 50, "over": "5 cm"}, "wrap": {"turns": 10, "window": "2 cm"}}, "weft.strands"),
        ({"strands": [{"fibre": "wool"}], "picks": {"number": 50, "over": "5 cm"}}, "weft.pick"),
    ],
)
def test_each_thing_left_out_is_asked_for(weft: dict[str, object], asked: str) -> None:
    """Nothing is invented for what nobody said."""
    assert asked in " ".join(amounts_of(weft=weft).to_add)


@given(st.integers(2, 60), st.integers(1, 40), st.integers(50, 300), st.integers(1, 80))
def test_more_picks_and_more_height_take_more_weft(picks: int, more: int, height: int, higher: int) -> None:
    """Monotonic in picks and in height, of picks that take as much up."""
    counted = [{"number": count, "over": "5 cm"} for count in (picks, picks + more)]
    few, many = (amounts_of(**STRAIGHT, weft__picks=each, weaving__height=f"{height} mm") for each in counted)
    high = amounts_of(**STRAIGHT, weft__picks=counted[0], weaving__height=f"{height + higher} mm")
    base = known(few.weft_total_m).value * (1 - 1e-9)
    assert known(many.weft_total_m).value >= base
    assert known(high.weft_total_m).value >= base


@given(st.integers(10, 80), st.integers(10, 80))
def test_the_take_up_stays_within_its_bounds(warp: int, weft: int) -> None:
    """Between nothing and pi / 2 - 1 (57 %), however thick the yarns are, since they are pressed flat."""
    found = known(wraps(warp, weft).weft_take_up)
    assert 0 < found.low <= found.value <= found.high <= math.pi / 2 - 1


def test_a_heavier_weft_than_a_rug_is_noted() -> None:
    """Our own 2500 g/m2, over the heavy rug of P. Collingwood (second-hand): half a pound to the square foot, 2441."""
    for grams, noted in ((24.9, False), (25.1, True)):
        found = amounts_of(weft__sample=SAMPLE | {"grams": grams})
        assert any("heavy weft-faced rug" in said for said in found.notes) is noted


def test_a_label_and_a_wrap_that_contradict_are_both_named_and_spanned() -> None:
    """600 tex of firm wool do not lie 10 mm thick: the weft spans both, a warning names both, all is still computed."""
    usual = amounts_of(weft__strands=[{"count": 600, "system": "tex", "fibre": "wool", "make": "firm"}])
    found = amounts_of(
        weft__strands=[{"count": 600, "system": "tex", "fibre": "wool", "make": "firm"}],
        weft__wrap={"turns": 2, "window": "2 cm", "how": "pushed together"},
    )
    assert [said for said in found.warnings if "weft.wrap and the weight" in said] == list(found.conflicts)[:1]
    assert known(found.weft_soft_mm).low <= known(usual.weft_soft_mm).low
    assert known(found.weft_soft_mm).high > 10
    assert found.weft_total_m is not None


def test_beads_taller_than_the_weft_is_thick_contradict_it() -> None:
    """A weft of 600 tex stands at most 1.77 mm high, beads of 4 mm were counted: a warning names both."""
    strands = [{"count": 600, "system": "tex", "fibre": "wool", "make": "firm"}]
    found = amounts_of(weft={"strands": strands, "beads": {"number": 10, "over": "4 cm"}})
    assert any("weft.beads and the thickness" in said for said in found.warnings)
    assert known(found.bead_mm).value == 4


def test_a_pick_and_a_sample_may_contradict_the_yarns_too() -> None:
    """300 % of take-up, and a sample of ten times the weight: each is named with what it contradicts."""
    drawn = amounts_of(weft__pick={"straight": "40 cm", "woven": "10 cm"})
    assert any("weft.pick and the thickness" in said for said in drawn.warnings)
    weighed = amounts_of(weft__sample=SAMPLE | {"grams": 120})
    assert any("weft.sample and the weft computed" in said for said in weighed.warnings)


def test_hems_and_spare_come_on_top() -> None:
    """By hand: 2 x 30 mm of 300 mm are a fifth of the weft; 25 % of both to spare; none where it is said."""
    bare = {"weft__picks": {"number": 50, "over": "5 cm"}, "weaving__height": "30 cm"}
    found = amounts_of(**bare, weaving__hem="30 mm", weft__spare="25 %")
    total, hem, spare, all_of_it = (
        known(getattr(found, name)).value for name in ("weft_total_m", "weft_hem_m", "weft_spare_m", "weft_to_buy_m")
    )
    assert (hem, spare, all_of_it) == pytest.approx((total / 5, total * 1.2 / 4, total * 1.5))
    none = amounts_of(**bare, weft__spare="0 %", warp__spare="0 %")
    assert known(none.weft_spare_m).value == 0
    assert known(none.weft_to_buy_m).value == pytest.approx(known(none.weft_total_m).value)
    assert none.weft_hem_m is None


@pytest.mark.parametrize("colours", [4, 5])
def test_many_colours_have_more_to_spare(colours: int) -> None:
    """Our own choice: 10 %, and 20 % from five colours on; both assumed."""
    parts = [{"name": f"c{number}", "share": 100 / colours} for number in range(colours)]
    found = amounts_of(weft__colours=parts)
    share = known(found.weft_spare_m).value / known(found.weft_total_m).value
    assert share == pytest.approx(0.2 if colours == 5 else 0.1)
    assert any("of weft to spare" in said for said in found.assumptions)


def test_balls_are_of_each_yarn_in_each_colour() -> None:
    """Two strands of one yarn are bought together, another yarn by itself; warp by the ball too."""
    yarn = {"grams": 50, "length": "160 m", "fibre": "wool"}
    strands = [yarn, yarn, {"count": 200, "system": "tex", "fibre": "wool", "colour": "grey", "ball": 25}]
    colours = [{"name": "madder", "share": 60}, {"name": "ash", "share": 40}]
    found = amounts_of(weft__strands=strands, weft__colours=colours, warp__ball=250)
    bought = [(each.yarn, each.colour) for each in found.balls]
    weft = bought[1][0].removesuffix(", strand 1")
    assert bought == [
        (bought[0][0], ""),
        (f"{weft}, strand 1", "madder"),
        (f"{weft}, strand 2", "grey"),
        (f"{weft}, strand 1", "ash"),
    ]
    need = sum(each.weight_g.value for each in found.weft_by_colour)
    left = sum(each.left_g.value for each in found.balls[1:])
    balls = [each.balls * ball for each, ball in zip(found.balls[1:], (50, 25, 50), strict=True)]
    assert sum(balls) - left == pytest.approx(need)


@pytest.mark.parametrize("doubt", [{}, {"weft__beads": {"number": 36, "over": "5 cm"}}])
def test_balls_go_by_the_highest_figure_unless_a_sample_was_counted(doubt: dict[str, object]) -> None:
    """In balls of 1 g, so that rounding hides nothing; 10 % to spare."""
    strands = [{"count": 600, "system": "tex", "fibre": "wool", "ball": 1}]
    found = amounts_of(weft__picks=LEFT_OUT, weft__strands=strands, **doubt)
    grams = known(found.weft_total_g)
    need = 1.1 * (grams.value if doubt else grams.high)
    assert need <= found.balls[-1].balls < need + 1 + 1e-9


assert STATED["weft"]["picks"] == {"number": 50, "over": "5 cm"}  # what the sums above rest on
