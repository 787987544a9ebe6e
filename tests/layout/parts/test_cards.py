"""The cards of a box: sizes of their standards, what they say, and that every kit has them on every paper."""

from __future__ import annotations

from typing import Any

import numpy
import pypdfium2
import pytest
import zxingcpp
from alarms import alarm_on
from cases import crossed
from golden import listed, matches
from kits import KINDS, font_metrics, kit_of, plan_of

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Text
from layout.drawing.sheet import Part
from layout.kit.kit import read_kit
from layout.parts.cards.cards import cards
from layout.parts.cards.help_card import help_card
from layout.parts.cards.legal_card import to_fill_in
from layout.plan import Plan, plan
from layout.products import absent
from layout.values.errors import FieldError
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import write
from tests.plain_kits import METRICS, changed
from tests.yarn_kits import STATED

PAPERS = ("common", "a4", "letter", "a3", "148 x 210 mm", "210 x 148 mm")
FULL_LEGAL: dict[str, object] = {
    "maker": "Shop by the Weir",
    "address": ["1 Example Lane", "00000 Example"],
    "contact": "weir@example.org",
    "batch": "7",
    "warp_fibre": "100 % cotton",
    "weft_fibre": "100 % wool",
    "care": "wash by hand, cold",
    "age": "14 years and over",
    "cautions": ["Not a toy."],
}


def planned(**changes: Any) -> Plan:
    """The plan of a kit of stated yarns, changed."""
    return plan(read_kit(changed(STATED, **changes), METRICS))


def card(made: Plan, name: str) -> Part:
    """One card of a kit by its name."""
    return next(each for each in cards(made, font_metrics()) if each.name == name)


def proven(made: Plan, name: str = "label") -> str:
    """What the proof says of the cards of a product; nothing if they are sound."""
    return alarm_on(made, Outputs(made, font_metrics(), [name]).output(f"{name}.pdf"))


def words(part: Part) -> list[str]:
    """What stands on a card itself, not over it."""
    return [shape.words for shape in part.shapes if isinstance(shape, Text) and shape not in part.scissors]


def sides(part: Part) -> tuple[float, float]:
    """How large a card is once it is cut out."""
    left, low, right, high = part.trim
    return right - left, high - low


def test_cards_are_cut_to_their_standards() -> None:
    """ISO 216: A7 is 74 x 105 mm, A6 105 x 148 mm; ISO/IEC 7810: ID-1 is 85.60 x 53.98 mm (from memory)."""
    assert sides(card(planned(), "label")) == (105, 74)
    assert sides(card(planned(), "packing-list")) == (148, 105)
    assert sides(card(planned(), "legal-card")) == (57, 74)
    small = planned(box={"label": "bank card", "list": "120 x 90 mm"})
    assert sides(card(small, "label")) == pytest.approx((85.6, 53.98))
    assert sides(card(small, "packing-list")) == (120, 90)


def test_a_folded_card_is_two_halves() -> None:
    """Both as large as the list; folded in the middle, the list upside down under the label."""
    (both, *others) = cards(planned(box={"fold": True, "list": "120 x 90 mm"}), font_metrics())
    assert sides(both) == (120, 180)
    (fold,) = (shape for shape in both.shapes if isinstance(shape, Curve) and shape.pen is Pen.FOLD)
    assert [at.y for at in fold.points()] == [90, 90]
    turned = {shape.angle for shape in both.shapes if isinstance(shape, Text) and shape.at.y < 90}
    assert turned == {180.0}
    assert {each.name for each in others} <= {"legal-card", "folded-label"}


def test_an_empty_legal_card_is_lines() -> None:
    """None of the kit's own words stands on it, whatever the kit says of its fibres; the note names every key."""
    made = planned()
    (fibre,) = {strand.fibre for strand in made.kit.amounts.weft.strands}
    part = card(made, "legal-card")
    assert fibre
    assert not [said for said in words(part) if str(fibre) in said.lower()]
    lines = [shape for shape in part.shapes if isinstance(shape, Curve) and shape.pen is Pen.HELP]
    assert len(lines) == 9  # one for each of eight, and a second one for the address
    assert "legal.age" in to_fill_in(made)
    assert "legal.weft_fibre" in to_fill_in(made)


def test_a_legal_card_is_in_the_makers_words() -> None:
    """Each as it was written, no line is left, and nothing is to be filled in."""
    made = planned(legal=FULL_LEGAL)
    part = card(made, "legal-card")
    for said in FULL_LEGAL.values():
        for each in said if isinstance(said, list) else [said]:
            assert each in words(part)
    assert not [shape for shape in part.shapes if shape.pen is Pen.HELP]
    assert to_fill_in(made) == ""


def test_long_legal_words_have_a_larger_card() -> None:
    """The card grows with them; as long as they may be, in the widest letters, they still fit the usual sheet."""
    some = planned(legal=FULL_LEGAL | {"care": "wash by hand, cold, and dry it flat in the shade " * 2})
    assert sides(card(some, "legal-card")) == (74, 105)
    long = "Mmm mmm " * 15
    most = dict.fromkeys(FULL_LEGAL, long) | {"address": [long[:60]] * 3, "cautions": [long[:60]] * 3}
    made = planned(legal=most)
    assert sides(card(made, "legal-card")) == (148, 205)
    assert proven(made) == proven(some) == ""
    small = planned(legal=most, paper={"size": "148 x 210 mm"})
    with pytest.raises(FieldError, match=r"^legal.address: needs fewer letters.* 104 x 136 mm, got 177"):
        card(small, "legal-card")


@pytest.mark.parametrize("rows", [1, 18, 24])
def test_a_list_of_any_length(rows: int) -> None:
    """As many boxes as rows, on one card or on more; proven."""
    also = [{"name": f"thing {k}"} for k in range(rows)]
    made = planned(box={"also": also, "holds": ["label"], "frame": False})
    found = [each for each in cards(made, font_metrics()) if each.name == "packing-list"]
    said = [each for part in found for each in words(part)]
    assert {f"thing {k}" for k in range(rows)} <= set(said)
    assert (len(found) > 1) == ("card 1 of 2" in said) == (rows + 4 > 18)
    assert proven(made) == ""


def test_the_list_of_the_demo_by_hand() -> None:
    """What the hand-counted list of `test_contents` says stands on the card: 7.92 m of cord are 8 m."""
    said = words(card(planned(), "packing-list"))
    at = said.index("Leash cord")
    assert said[at + 1] == "8 m"
    assert said.count("In this box") == 1


def test_the_cautions_defer_to_local_rules() -> None:
    """Needle, knife, cords and small parts, a frame under tension; then local rules."""
    said = " ".join(words(card(planned(), "packing-list")))
    for part in ("Needles and knives", "Cords and small parts", "under tension", "Local rules come first."):
        assert part in said


@pytest.mark.parametrize(("kind", "paper"), crossed(4, list(KINDS), PAPERS))
def test_every_kit_has_its_cards(kind: str, paper: str) -> None:
    """Every kind of frame on every paper, apart and folded over: made and proven, or a sentence that names the key."""
    fold = (list(KINDS).index(kind) + PAPERS.index(paper)) % 3 == 0
    changes = {**KINDS[kind], "paper.size": paper, "box": {"link": "https://example.org/weir", "fold": fold}}
    assert found_wrong(plan(kit_of(changes))) == ("box.fold" if fold and "148" in paper else "")


def found_wrong(made: Plan) -> str:
    """What the proof says of the cards, or the key of the sentence that refuses them."""
    try:
        return proven(made)
    except FieldError as error:
        return error.field


@pytest.mark.parametrize(("kind", "paper"), crossed(4, list(KINDS), PAPERS))
def test_every_kit_has_help(kind: str, paper: str) -> None:
    """Every kind of frame on every paper but one: a sheet 148 mm high is too low for it, and a reason is given."""
    made = plan(kit_of({**KINDS[kind], "paper.size": paper, "box": {"holds": ["help"]}}))
    if paper == "210 x 148 mm":
        assert "100 mm high" in absent(made)["help"]
        assert "help.pdf" not in Outputs(made, font_metrics()).files
    else:
        assert proven(made, "help") == ""


def test_the_help_card_by_hand() -> None:
    """36 beads over 5 cm: ten beads are 200 / 14.4 = 13.9 mm high; 24 cm less 2 % are 235 mm."""
    weft = {key: said for key, said in STATED["weft"].items() if key != "picks"} | {
        "beads": {"number": 36, "over": "5 cm"}
    }
    made = planned(weft=weft, weaving=STATED["weaving"] | {"draw_in": "2 %", "width": "24 cm"})
    (part,) = help_card(made, font_metrics())
    said = words(part)
    assert "Ten beads (twenty picks) should stand 14 mm high." in said
    assert "Measure every 20 mm: it should be 235 mm wide." in said
    assert "Glasses on, one hand" in said
    assert sides(part) == (148, 210)


def test_a_loose_rod_is_drawn_and_nothing_is_cut() -> None:
    """Its loops come free; no step cuts."""
    (part,) = help_card(plan_of(KINDS["loose rod"]), font_metrics())
    said = " ".join(words(part))
    assert "Draw out the rod." in said
    assert "Cut two" not in said


@pytest.mark.parametrize(
    "changes",
    [
        {"name": "MW " * 13, "yarns": {"warp": "M W " * 10, "weft": "W M " * 10}},
        {"weaving.width": "8 mm"},
        {"frame.outer_width": "16 in", "weaving.width": "8 in", "sett": {"given": "6 ends/in"}},
        {"weaving.doubled_warp": True, "weaving.doubled_selvedges": 2},
        {"weft": {"colours": [{"name": f"colour {k}", "share": 10, "lengths": 2} for k in range(10)]}},
        {"legal": FULL_LEGAL, "box": {"says": "Mm " * 40}},
        {"box": {"also": [], "holds": [], "frame": False, "spare_ends": 0}},
        {"weaving.height": "as high as fits", "weaving.width": "as wide as fits"},
    ],
)
def test_cards_of_unusual_kits(changes: dict[str, object]) -> None:
    """The widest names, few ends, inches, doubled ends, ten colours, an almost empty box: made and proven."""
    assert proven(plan_of({"box": {"also": [{"name": "pins"}]}, **changes})) == ""


@pytest.mark.parametrize(
    ("box", "key", "said"),
    [
        ({"label": "40 x 30 mm"}, "box.label", "at least 85.6 x 53.98 mm for these words, got 40 x 30 mm"),
        ({"list": "60 x 60 mm"}, "box.list", "at least 105 x 74 mm for these words"),
        ({"label": "bank card", "link": "https://" + "a" * 190}, "box.link", "at most 180 letters"),
    ],
)
def test_cards_that_hold_too_little(box: dict[str, object], key: str, said: str) -> None:
    """One sentence with the key, the size that would do, or how long a link may be."""
    with pytest.raises(FieldError) as caught:
        cards(planned(box=box), font_metrics())
    assert caught.value.field == key
    assert said in str(caught.value)


@pytest.mark.parametrize("dpi", [200, 300])
def test_another_library_reads_the_link_off_the_sheet(dpi: int) -> None:
    """zxing-cpp reads it from the rendered page, beside the sheet's own code."""
    link = "https://example.org/weir/large?n=7"
    output = Outputs(planned(box={"link": link}), font_metrics()).output("label.pdf")
    page = pypdfium2.PdfDocument(write(output))[0].render(scale=dpi / 72).to_pil().convert("L")
    found = [each.text for each in zxingcpp.read_barcodes(numpy.asarray(page)) if "QR" in str(each.format)]
    assert found == [link]


@pytest.mark.parametrize("name", ["label", "legal-card", "packing-list"])
def test_golden(name: str) -> None:
    """The drawings do not change unseen."""
    made = planned(box={"link": "https://example.org/weir"}, legal={"maker": "Shop by the Weir"})
    assert matches(name, listed(card(made, name)))


def test_golden_help() -> None:
    """The drawing of the help card does not change unseen."""
    (part,) = help_card(planned(), font_metrics())
    assert matches("help-card", listed(part))
