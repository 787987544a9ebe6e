"""The packing list: everything in the box once, with amounts that were counted by hand; and what the box weighs."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from kits import KINDS, plan_of

from layout.box.weights import Boards, packed
from layout.kit.box import CAN_LIE
from layout.kit.kit import read_kit
from layout.messages.catalogue import Message
from layout.messages.roles.buying import Weighed
from layout.parts.contents import contents
from layout.plan import Plan, plan
from tests.plain_kits import METRICS, changed
from tests.yarn_kits import STATED


def planned(**changes: Any) -> Plan:
    """The plan of a kit of stated yarns, changed."""
    return plan(read_kit(changed(STATED, **changes), METRICS))


def listed(made: Plan) -> list[tuple[str, str]]:
    """The list as it is printed."""
    say = made.words.words_of
    return [
        (say(line.name) if isinstance(line.name, Message) else line.name, say(line.amount)) for line in contents(made)
    ]


def test_a_list_by_hand() -> None:
    """60 ends at 2.5 per cm on bars of 20 mm, 60 cm apart outside.

    Two ends go over 2 x 580 mm and twice half round 22 mm of bar and thread (both 2 mm thick): 1229 mm, 30 of them
    36.9 m; the figures with headings, knots and a tenth to spare come from the plan. Each leash is 240 mm, 30 of them
    7.2 m, and a tenth: 7.92 m.
    """
    made = planned(box={"holds": [*CAN_LIE], "once": [], "also": [{"name": "pins", "number": 20}]})
    found = dict(listed(made))
    assert found["Frame, 400 mm x 600 mm"] == "1"
    assert found["Leash cord"] == "8 m"
    assert found["Spare warp ends, 850 mm"] == "2"  # 1229 / 2 + 200 = 815 mm, to the next 50
    assert found["pins"] == "20"
    assert found["Marking strips"] == found["Spacing guides"] == "2"
    assert found["Shed stick, 480 mm"] == "1"
    (warp,) = (amount for name, amount in found.items() if name.endswith(", warp"))
    assert float(warp.removesuffix(" m")) - 1 < made.amounts.warp_total_m.high <= float(warp.removesuffix(" m"))
    assert made.amounts.weft_to_buy_m is not None
    (weft,) = (amount for name, amount in found.items() if name.endswith(", weft"))
    metres, grams = (float(part.split()[0]) for part in weft.split(", "))
    assert metres - 1 < 2 * made.amounts.weft_to_buy_m.value <= metres
    assert grams - 1 < 0.6 * made.amounts.weft_to_buy_m.value <= grams


def test_what_is_not_in_the_box_is_not_on_the_list() -> None:
    """Only what the box holds: without frame, spare ends, bought-in things and sheets, yarn and cord alone."""
    bare = planned(box={"holds": [], "once": [], "also": [], "frame": False, "spare_ends": 0})
    assert [name.split(", ")[-1] for name, _ in listed(bare)] == ["warp", "weft", "Leash cord"]
    usual = [name for name, _ in listed(planned())]
    assert "Leaflet, First warp" in usual
    assert not {"Weaving grid", "Start here", "Frame check", "Spacing comb"} & set(usual)
    assert "Leaflet, First warp" not in dict(listed(replace(planned(), refused=frozenset({"leaflet"}))))


def test_colours_have_a_row_each() -> None:
    """By their own name; by yarn and colour where the bundle has several yarns."""
    colours = [{"name": "madder", "share": 45, "lengths": 18}, {"name": "ash", "share": 55}]
    rows = [name for name, _ in listed(planned(weft__colours=colours)) if name.endswith(", weft")]
    assert rows == ["madder, weft", "ash, weft"]
    two = [{"count": 300, "system": "tex"}, {"count": 200, "system": "tex", "colour": "rust"}]
    rows = [name for name, _ in listed(planned(weft=STATED["weft"] | {"strands": two, "colours": colours}))]
    yarn = planned().kit.weft
    assert [name for name in rows if name.endswith(", weft")] == [
        f"{yarn}, strand 1, madder, weft", f"{yarn}, strand 2, rust, weft", f"{yarn}, strand 1, ash, weft",
    ]  # fmt: skip


def test_kits_in_inches_are_listed_in_yards_and_ounces() -> None:
    """Yards whole, ounces to a tenth, both rounded up; lengths by a ruler in inches."""
    made = planned(frame=STATED["frame"] | {"outer_width": "16 in"})
    amounts = dict(listed(made))
    assert amounts["Leash cord"] == "9 yd"  # 7.92 m = 8.66 yd
    (weft,) = (amount for name, amount in amounts.items() if name.endswith(", weft"))
    assert weft.split(", ")[0].endswith(" yd")
    assert weft.split(", ")[1].endswith(" oz")


@pytest.mark.parametrize("name", KINDS)
def test_every_kit_has_a_list(name: str) -> None:
    """Of each kind of frame: no row twice, every amount above nothing."""
    rows = listed(plan_of(KINDS[name]))
    assert len({name for name, _ in rows}) == len(rows)
    assert not [row for row in rows if row[1].startswith("0 ")]


@given(st.lists(st.sampled_from(CAN_LIE), unique=True))
def test_each_thing_held_has_one_row(holds: list[str]) -> None:
    """But the label, which is on the box, and combs to wind with on bars, where there are none."""
    rest = {"once": [], "also": [], "frame": False, "spare_ends": 0}
    rows = listed(planned(box={"holds": holds, **rest}))
    bare = [name for name in holds if name not in ("label", "winding-comb")]
    assert len(rows) == 3 + len(bare) + ("winding-comb" in holds and "winding-comb" in _cut())
    assert len({name for name, _ in rows}) == len(rows)


def _cut() -> tuple[str, ...]:
    return planned().kit.frame.ends.cut_parts


def test_a_box_weighed_by_hand() -> None:
    """Yarns with spare, 3 things of 5 g, a box of 310 g, 2 sheets of A4 at 80 g/m2, 100 cm2 of plywood of 3 mm."""
    box = {"frame": False, "also": [{"name": "pins", "number": 3, "grams": 5}], "empty": "310 g", "spare_ends": 0}
    made = planned(box=box)
    assert made.amounts.warp_total_g is not None
    assert made.amounts.weft_to_buy_m is not None
    yarns = made.amounts.warp_total_g.value + 0.6 * made.amounts.weft_to_buy_m.value
    found = packed(made, 2 * 210 * 297, Boards(10_000, 3.0, "Birch plywood"))
    assert found.grams.value == pytest.approx(yarns + 15 + 310 + 9.9792 + 20.4, abs=1e-6)
    assert found.grams.low < found.grams.value < found.grams.high
    assert found.without == (Message(Weighed.CORD),)


def test_what_has_no_weight_is_named() -> None:
    """The frame, cord, things without grams, a wood that is not known, the empty box."""
    made = planned(warp={})
    found = packed(made, 0, Boards(1, 1, "oak"))
    said = [made.words.words_of(each) if isinstance(each, Message) else each for each in found.without]
    assert said == [
        "frame", made.kit.warp, "leash cord", "beater", "tapestry needle", "rod for the leashes", "oak", "box",
    ]  # fmt: skip
