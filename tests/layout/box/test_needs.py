"""What one box takes is what its plan says, with the spare of each thing once."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest

from layout.box.buying import Wanted, purchases
from layout.box.needs import needs, spare_end
from layout.box.shop import Pack, Shop
from layout.box.shop_check import shop_errors
from layout.kit.kit import read_kit
from layout.plan import Plan, plan
from tests.plain_kits import METRICS, changed
from tests.yarn_kits import STATED


def planned(**changes: Any) -> Plan:
    """The plan of a kit of stated yarns, changed."""
    return plan(read_kit(changed(STATED, **changes), METRICS))


def test_the_warp_has_its_spare_and_the_spare_ends() -> None:
    """All the warp thread and two ends more, each half a wind and two knots of 100 mm; none where none is asked for."""
    made = planned()
    amounts = made.amounts
    end = amounts.warp_per_wind_mm.high / 2 + 200
    assert spare_end(made).high == pytest.approx(end)
    (warp, *_) = needs(made)
    assert warp.figure("m") == pytest.approx(amounts.warp_total_m.high + 2 * end / 1000)
    assert amounts.warp_total_g is not None
    assert warp.figure("g") == pytest.approx(amounts.warp_total_g.high + 2 * end / 1000)  # at 1000 tex
    (bare, *_) = needs(planned(box__spare_ends=0))
    assert bare.figure("m") == pytest.approx(amounts.warp_total_m.high)


def test_the_weft_is_the_one_to_buy() -> None:
    """With hems and a tenth to spare, by the likely figure, since its picks were counted."""
    made = planned(weaving__hem="20 mm")
    (weft,) = (need for need in needs(made) if need.kind == "weft")
    assert made.amounts.weft_to_buy_m is not None
    assert weft.sampled
    assert weft.figure("m") == pytest.approx(2 * made.amounts.weft_to_buy_m.value)  # two strands
    assert weft.figure("g") == pytest.approx(0.6 * made.amounts.weft_to_buy_m.value)


def test_each_colour_is_a_need_of_its_own() -> None:
    """One colour or ten; five and more have a fifth to spare."""
    for count in (1, 4, 5, 10):
        colours = [{"name": f"colour {k}", "share": 100 / count} for k in range(count)]
        found = [need for need in needs(planned(weft__colours=colours)) if need.kind == "weft"]
        assert [need.colour for need in found] == [colour["name"] for colour in colours]
        share = found[0].taken["g"].spare.value / found[0].taken["g"].amount.value
        assert share == pytest.approx(0.2 if count >= 5 else 0.1)


def test_cord_and_things() -> None:
    """A tenth more cord than the leashes are long; beater, needle and rod where the kit does not say, else its list."""
    made = planned()
    cord, *things = needs(made)[2:]
    assert cord.figure("m") == pytest.approx(1.1 * made.amounts.leashes.together.value / 1000)
    assert [(thing.name, thing.figure("piece")) for thing in things] == [
        ("beater", 1), ("tapestry needle", 1), ("rod for the leashes", 1),
    ]  # fmt: skip
    *_, pins = needs(planned(box={"also": [{"name": "pins", "number": 20}]}))
    assert (pins.name, pins.figure("piece")) == ("pins", 20)


def test_balls_of_one_box_are_those_of_its_plan() -> None:
    """Bought for one box without spare ends, each yarn makes as many balls as its plan says."""
    strand = STATED["weft"]["strands"][0] | {"ball": 50}
    made = planned(weft=STATED["weft"] | {"strands": [strand]}, warp__ball=100, box__spare_ends=0)
    bought = purchases([Wanted(needs(made), 1)], Shop())
    assert [found.packs for found in bought if found.packs is not None] == [each.balls for each in made.amounts.balls]
    assert len(made.amounts.balls) == 2


def test_what_no_kit_has_is_refused() -> None:
    """A colour or a thing in [buy] that no kit of the range takes: one sentence each, with what was probably meant."""
    colours = {"weft__colours": [{"name": "madder", "share": 60}, {"name": "ash", "share": 40}]}
    boxes = [needs(planned()), needs(planned(**colours))]
    pack = Pack("hank", Fraction(100), "g")
    yarn = planned().kit.weft
    good = Shop(colours=dict.fromkeys(("madder", f"{yarn}, ash", yarn), pack), also={"beater": pack})
    assert list(shop_errors(good, boxes)) == []
    colour, thing = shop_errors(Shop(colours={"maddr": pack}, also={"hammer and tongs": pack}), boxes)
    assert (colour.field, thing.field) == ("buy.colours", "buy.also")
    assert "(madder is meant), got 'maddr'; for example name = \"madder\"" in str(colour)
    assert "(beater, tapestry needle, rod for the leashes), got 'hammer and tongs'" in str(thing)
    bare = [needs(planned(box={"also": []}))]
    (error,) = shop_errors(Shop(also={"beater": pack}), bare)
    assert "to be left out" in str(error)
