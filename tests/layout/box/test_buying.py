"""What is bought is enough, not a pack more, and rounded once over all boxes."""

from __future__ import annotations

import math
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.box.buying import Material, Purchase, Wanted, purchases
from layout.box.costs import Cost, Made, cost_of, price_of
from layout.box.needs import Kind, Need, Taken
from layout.box.shop import Pack, Shop
from layout.values.quantity import Quantity, assumed, measured

EUR = Fraction(1, 100)


def need(kind: Kind = "weft", likely: float = 44, *, high: float | None = None, **more: object) -> Need:
    """A need of so many g, a tenth of it to spare, by a sample."""
    amount = assumed(likely, "so", likely, high or likely)
    values: dict[str, object] = {"name": "marsh wool", "colour": "", "sampled": True, **more}
    return Need(kind, taken={"g": Taken(amount, amount.scaled(0.1))}, **values)  # type: ignore[arg-type]


BALL = Shop(currency="EUR", weft=Pack("ball", Fraction(50), "g", Fraction("4.20")))


@pytest.mark.parametrize(
    ("grams", "boxes", "packs"), [(44, 10, 10), (44, 1, 1), (30, 10, 7), (30, 1, 1), (45.4545, 1, 1), (46, 1, 2)]
)
def test_packs_by_hand(grams: float, boxes: int, packs: int) -> None:
    """44 g and a tenth are 48.4 g: ten boxes take 484 g, 10 balls of 50 g, as ten balls singly. Of 30 g, 330 g: 7."""
    (found,) = purchases([Wanted((need(likely=grams),), boxes)], BALL)
    assert found.packs == packs
    assert found.paid == packs * Fraction("4.20")
    assert found.left == pytest.approx(50 * packs - grams * boxes)


def test_without_a_sample_the_highest_counts() -> None:
    """44 g, at most 60: by the sample one ball, without it two."""
    sampled, not_yet = (need(likely=44, high=60, sampled=each) for each in (True, False))
    assert [purchases([Wanted((each,), 1)], BALL)[0].packs for each in (sampled, not_yet)] == [1, 2]


def test_lengths_by_hand() -> None:
    """528 ends of 4 yd are 2112 yd; at 3360 yd/lb 0.629 lb (a weaver's worked warp), so 2 cones of half a pound."""
    yards = measured(528 * 4 * 0.9144, "so")
    pounds = measured(528 * 4 / 3360 * 453.59237, "so")
    nothing = measured(0, "so")
    warp = Need("warp", "cord", "", {"g": Taken(pounds, nothing), "m": Taken(yards, nothing)})
    half = Pack("cone", Fraction(453.59237) / 2, "g")
    (by_weight,) = purchases([Wanted((warp,), 1)], Shop(warp=half))
    assert (by_weight.packs, round(float(by_weight.needed) / 453.59237, 3)) == (2, 0.629)
    (by_length,) = purchases([Wanted((warp,), 1)], Shop(warp=Pack("cone", Fraction(1000 * 0.9144), "m")))
    assert (by_length.packs, by_length.unit) == (3, "m")


figures = st.floats(0, 5000).map(lambda number: round(number, 2))
sizes = st.fractions(1, 1000, max_denominator=4)


@st.composite
def quantities(draw: st.DrawFn) -> Quantity:
    """A likely figure, and the most that it may be."""
    likely = draw(figures)
    return assumed(likely, "so", likely * draw(st.floats(0.2, 1)), likely * draw(st.floats(1, 2)))


@st.composite
def several(draw: st.DrawFn) -> tuple[Need, ...]:
    """Needs of a box, each of its own colour."""
    colours = draw(st.lists(st.sampled_from("abcde"), unique=True, min_size=1))
    return tuple(
        Need("weft", "wool", colour, {"g": Taken(one := draw(quantities()), one.scaled(0.2))}, draw(st.booleans()))
        for colour in colours
    )


wanted = st.lists(st.builds(Wanted, several(), st.integers(1, 500)), min_size=1, max_size=3)


@st.composite
def shops(draw: st.DrawFn) -> Shop:
    """Packs for the weft, and others for some colours."""
    packs = st.builds(Pack, st.just("ball"), sizes, st.just("g"), st.none() | st.fractions(0, 99, max_denominator=100))
    return Shop(
        "EUR",
        weft=draw(packs),
        colours=draw(st.dictionaries(st.sampled_from(["a", "wool, b", "x"]), packs, max_size=3)),
        paper=draw(st.none() | st.just(Pack("pack", Fraction(500), "sheet", Fraction(6)))),
        hour=draw(st.none() | st.just(Fraction(18))),
        minutes=draw(st.none() | st.just(Fraction(25))),
    )


def summed(found: Purchase, asked: list[Wanted]) -> float:
    """What all boxes take of a colour, its spare with it."""
    return math.fsum(
        boxes * ((one.taken["g"].amount.value if one.sampled else one.taken["g"].amount.high) * 1 + one.spare("g"))
        for needs, boxes in asked
        for one in needs
        if one.colour == found.colour
    )


@given(wanted, shops())
def test_packs_hold_what_is_needed_and_no_more(asked: list[Wanted], shop: Shop) -> None:
    """They hold all that is needed, and one pack less would not; nothing needed is no pack."""
    for found in purchases(asked, shop):
        whole = summed(found, asked)
        assert found.pack is not None
        assert found.pack.size is not None
        assert found.packs is not None
        assert found.packs * float(found.pack.size) >= whole * (1 - 1e-8)
        assert (found.packs - 1) * float(found.pack.size) < whole or found.packs == 0
        assert (found.packs == 0) == (whole == 0)
        assert found.left is not None
        assert found.left >= 0


@given(wanted, shops())
def test_more_boxes_never_take_less(asked: list[Wanted], shop: Shop) -> None:
    """One more box of a kit, or twice the spare, never asks for fewer packs of anything."""
    more = [asked[0]._replace(boxes=asked[0].boxes + 1), *asked[1:]]
    doubled = [Wanted(tuple(_spared(one) for one in needs), boxes) for needs, boxes in asked]
    for now, later, spared in zip(*(purchases(each, shop) for each in (asked, more, doubled)), strict=True):
        assert now.key == later.key == spared.key
        assert (now.packs or 0) <= (later.packs or 0)
        assert (now.packs or 0) <= (spared.packs or 0)


def _spared(one: Need) -> Need:
    return one._replace(taken={"g": one.taken["g"]._replace(spare=one.taken["g"].spare.scaled(2))})


@given(wanted, shops(), st.integers(0, 400), st.integers(0, 9))
def test_the_costs_of_all_boxes_are_what_is_paid(asked: list[Wanted], shop: Shop, sheets: int, boards: int) -> None:
    """To the last fraction of a cent, work and the cutter's time besides; what has no price is named by each box."""
    material = Material(sheets, boards, Fraction("4.50"))
    bought = purchases(asked, shop, material)
    count = sum(boxes for _, boxes in asked)
    made = Made(Fraction(1, count), Fraction(1, count), Fraction(3), Fraction("0.80"))
    made = made if boards else made._replace(boards=Fraction(0))
    costs = [(cost_of(needs, bought, shop, made), boxes) for needs, boxes in asked]
    work = Fraction(shop.hour or 0) * (shop.minutes or 0) / 60 + (Fraction("2.40") if boards else 0)
    paid = sum((found.paid or Fraction(0) for found in bought), Fraction(0))
    assert sum(cost.whole * boxes for cost, boxes in costs) == paid + count * work
    unpriced = {found.key for found in bought if found.paid is None}
    assert {each.key for cost, _ in costs for each in cost.missing if isinstance(each, Purchase)} == unpriced
    assert all(("work" in cost.missing) == (shop.hour is None or shop.minutes is None) for cost, _ in costs)


@given(
    st.fractions(0, 10_000, max_denominator=1000), st.fractions(0, "0.99"), st.sampled_from([None, "0.5", "0.05", "10"])
)
def test_the_margin_is_kept_after_rounding(cost: Fraction, margin: Fraction, step: str | None) -> None:
    """A price is whole steps, leaves at least the margin that is asked for, and a step less would not."""
    by = Fraction(step) if step else EUR
    price = price_of(cost, Fraction(0), Shop(margin=margin, round_to=Fraction(step) if step else None))
    assert price is not None
    assert (price.each / by).denominator == 1
    assert price.each * (1 - margin) >= cost
    assert (price.each - by) * (1 - margin) < cost
    assert price.margin == (1 - cost / price.each if price.each else 0)


def test_a_price_by_hand() -> None:
    """Costs of 12.00 at a margin of 40 % are 20.00; 10 % less, in steps of 0.50, 18.00, of which a third is left."""
    shop = Shop(margin=Fraction("0.4"), round_to=Fraction("0.5"))
    assert price_of(Fraction(12), Fraction(0), shop) == (20, Fraction("0.4"))
    assert price_of(Fraction(12), Fraction("0.1"), shop) == (18, Fraction(1, 3))
    assert price_of(Fraction(12), Fraction(0), Shop()) is None


def test_paper_is_bought_with_misprints() -> None:
    """Two in a hundred, at least two: 90 sheets and 2, 400 sheets and 8; boards as they are."""
    shop = Shop(paper=Pack("pack", Fraction(100), "sheet", Fraction(6)))
    for sheets, spare, packs in ((90, 2, 1), (99, 2, 2), (400, 8, 5)):
        paper, board = purchases([], shop, Material(sheets, 3, Fraction("4.50")))
        assert (paper.kind, paper.spare, paper.packs, paper.paid) == ("paper", spare, packs, 6 * packs)
        assert (board.kind, board.packs, board.paid) == ("board", 3, Fraction("13.50"))


def test_what_nobody_says_is_not_made_up() -> None:
    """A yarn without a pack or a ball is named with its amount, has no packs and no price; the cost lacks it."""
    bare = need(likely=100)
    (found,) = bought = purchases([Wanted((bare,), 2)], Shop())
    assert (found.packs, found.left, found.paid, found.likely) == (None, None, None, 200)
    assert cost_of([bare], bought, Shop(), Made()) == Cost({}, (found, "work"))
    balled = bare._replace(ball_g=50.0)
    (found,) = purchases([Wanted((balled,), 2)], Shop())
    assert (found.packs, found.paid) == (5, None)
    (found,) = purchases([Wanted((balled,), 2)], Shop(weft=Pack("", None, "g", Fraction(3))))
    assert (found.packs, found.paid) == (5, 15)
    (found,) = purchases([Wanted((balled,), 2)], Shop(weft=Pack("", Fraction(9), "m", Fraction(3))))
    assert (found.pack, found.unit) == (None, "g")
