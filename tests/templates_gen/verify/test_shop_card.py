"""Shop cards: proven for every kind of kit and box, and every word that is changed is found."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from kits import KINDS, font_metrics, kit_of
from languages import made_up

from layout.box.shop import Shop
from layout.box.weights import Boards
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Text
from layout.drawing.sheet import Sheet
from layout.kit.box import CAN_LIE
from layout.kit.kit import read_kit
from layout.messages.english import ENGLISH
from layout.plan import Plan, plan
from layout.values.errors import FieldError
from templates_gen.files.output import Output
from templates_gen.files.proof import read, write
from templates_gen.files.run_about import SoldKit
from templates_gen.files.shop_card_file import card_findings, card_output, paper_in_box
from templates_gen.verify.run.shop_card import Carded, prove_shop_cards
from tests.plain_kits import METRICS, changed
from tests.templates_gen.verify.test_to_buy import KITS, SHOP
from tests.yarn_kits import STATED

PLY = Boards(60_000, 3.0, "birch plywood")
LINK, SAYS = "https://example.org/weir", "Woven on a frame, row by row."
THINGS = [{"name": f"a thing of some length, number {k}", "number": k, "grams": 5} for k in range(1, 25)]
BOXES: tuple[dict[str, Any], ...] = (
    *KITS,
    {
        "box": {
            "holds": [*CAN_LIE],
            "once": [],
            "empty": "310 g",
            "outside": "42 x 57 x 6 cm",
            "says": SAYS,
            "link": LINK,
        }
    },
    {"box": {"holds": [], "also": [], "frame": False, "spare_ends": 0, "link": LINK + "x" * 150}},
    {"box": {"holds": [*CAN_LIE], "once": [], "also": THINGS, "says": "w " * 60}} | KITS[3],
    {"frame": STATED["frame"] | {"outer_width": "16 in"}, "box": {"empty": "8 oz"}},
)


def planned(changes: dict[str, Any], name: str = "oak") -> Plan:
    """The plan of a kit of that name."""
    return plan(read_kit(changed(STATED, **changes) | {"name": name}, METRICS))


def run_of(plans: list[Plan], cut: Boards | None = PLY) -> tuple[list[SoldKit], list[Boards | None]]:
    """A run of these, each cut from the same board."""
    return [SoldKit(made, 3, SHOP) for made in plans], [cut] * len(plans)


def proven(plans: list[Plan], cut: Boards | None = PLY) -> tuple[str, ...]:
    """What the proof says of the cards as they are read back from their bytes."""
    kits, boards = run_of(plans, cut)
    output = card_output("a range", kits, boards, font_metrics())
    found = read(output, write(output))
    return card_findings("a range", kits, boards, font_metrics(), output, found).sentences


@pytest.mark.parametrize("changes", BOXES, ids=range(len(BOXES)))
def test_a_card_is_proven(changes: dict[str, Any]) -> None:
    """Whatever lies in the box, and however much of it."""
    assert proven([planned(changes)]) == ()


@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_of_kit_has_a_card(kind: str) -> None:
    """On its own paper, together with two others; of a wood that is not known, or without any."""
    every = [plan(replace(kit_of(KINDS[kind]), name=f"kit {k}")) for k in range(3)]
    assert proven(every, Boards(1, 1, "oak")) == ()
    assert proven(every, None) == ()


def test_cards_speak_the_language_of_their_kit() -> None:
    """In a language of long words too; where the table finds no room, the last things are counted."""
    words = made_up(ENGLISH)
    for changes in BOXES[-4:]:
        assert proven([replace(planned(changes), words=words)]) == ()


def test_small_paper_is_refused_in_one_sentence() -> None:
    """A card is larger than its field."""
    kits, boards = run_of([planned({"paper": {"size": "148 x 210 mm"}})])
    with pytest.raises(FieldError, match="needs a sheet that holds every part in one piece"):
        card_output("a range", kits, boards, font_metrics())


def judged(output: Output, plans: list[Plan], sheets: list[Sheet], cut: Boards = PLY) -> tuple[str, ...]:
    """What the second computation alone says."""
    carded = [Carded(made, 3, paper_in_box(made, METRICS), (cut.area, cut.thickness, cut.material)) for made in plans]
    return prove_shop_cards(sheets, output.laid, "a range", carded).sentences


def test_no_word_and_no_outline_can_be_changed() -> None:
    """Another word in the place of any, one besides, and a card a millimetre smaller are found."""
    plans = [planned({"box": {"says": SAYS, "empty": "310 g"}}), planned(KITS[2], "ash")]
    output = card_output("a range", *run_of(plans), font_metrics())
    (sheet,) = output.sheets
    assert judged(output, plans, [sheet]) == ()
    for place, shape in enumerate(sheet.shapes):
        if isinstance(shape, Text):
            other = shape.words[:-1] + ("1" if shape.words[-1] == "0" else "0")
            assert judged(output, plans, [_with(sheet, place, shape._replace(words=other))]), shape.words
        if isinstance(shape, Curve) and shape.pen is Pen.CUT:
            start = shape.start._replace(x=shape.start.x + 1)
            assert judged(output, plans, [_with(sheet, place, shape._replace(start=start))])
    assert judged(output, plans[::-1], [sheet])
    assert judged(output, plans[:1], [sheet])
    assert judged(output, [*plans, planned({}, "elm")], [sheet])
    assert judged(output, plans, [sheet], Boards(70_000, 3.0, "birch plywood"))


def _with(sheet: Sheet, place: int, shape: Text | Curve) -> Sheet:
    shapes = list(sheet.shapes)
    shapes[place] = shape
    return replace(sheet, shapes=tuple(shapes))


def test_a_price_on_a_card_is_found() -> None:
    """Written on the blank by whoever draws it."""
    kits, boards = run_of([planned({})])
    output = card_output("a range", kits, boards, font_metrics())
    (sheet,) = output.sheets
    (place,) = (k for k, shape in enumerate(sheet.shapes) if isinstance(shape, Text) and shape.words == "Price")
    priced = _with(sheet, place, sheet.shapes[place]._replace(words="Price 44.00 EUR"))  # type: ignore[call-arg, arg-type]
    wrong = replace(output, sheets=(priced,))
    found = read(wrong, write(wrong))
    said = card_findings("a range", kits, boards, font_metrics(), wrong, found).sentences
    assert any("says money" in sentence for sentence in said)


def test_no_money_of_the_shop_is_in_the_file() -> None:
    """Its bytes are the same whatever things cost."""
    made = planned({})
    dear, free = (card_output("a range", [SoldKit(made, 3, shop)], [PLY], font_metrics()) for shop in (SHOP, Shop()))
    assert write(dear) == write(free)
