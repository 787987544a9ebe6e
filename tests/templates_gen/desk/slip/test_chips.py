"""What is offered beside a trouble mends it, and leads into no other."""

from __future__ import annotations

from collections.abc import Mapping

import pytest

from layout.kit.kit import kit_values
from templates_gen.desk.slip.chips import MOST, Use, used
from templates_gen.desk.slip.fields import SPECS, pattern_of
from templates_gen.desk.slip.judging import judged
from templates_gen.desk.slip.lines import lines
from templates_gen.desk.slip.reading import Trouble, read
from templates_gen.desk.slip.texts import text_of
from templates_gen.desk.slip.typed import example, typed_of
from templates_gen.messages.english import ENGLISH
from tests.kits import KINDS, NOTCHED, PEGGED, kit_of
from tests.templates_gen.desk.slip.wrongs import wrong_texts

Typed = Mapping[str, str]


def _base(kind: str) -> dict[str, str]:
    return example() if kind == "demo" else typed_of(kit_values(kit_of(KINDS[kind])))


def _trouble(changes: Typed, field: str) -> Trouble:
    """The one trouble of the example with these changes, which is at that field."""
    (trouble,) = read({**example(), **changes}, ENGLISH).troubles
    assert trouble.field == field
    return trouble


def _click_all(typed: Typed) -> int:
    """Clicks every chip that is offered, each by itself; how many there were.

    Its trouble must be gone, and none have come but that a line beside it, which was empty before, is lacking still.
    """
    before = judged(typed)
    signs = {each.sign for each in before.refusals}
    clicked = 0
    for refused, trouble in zip(before.refusals, read(typed, ENGLISH).troubles, strict=True):
        assert trouble.field == refused.field
        assert len(trouble.use) <= MOST
        for use in trouble.use:
            clicked += 1
            after = {each.sign for each in judged(used(typed, use)).refusals}
            assert refused.field not in {field for field, _ in after}, f"{typed=} {trouble} {use}"
            lacking = {(field, role) for field, role in after - signs if not typed.get(field, "").strip()}
            assert after <= signs | lacking, f"{trouble} {use} leads to {after - signs - lacking}"
    return clicked


SOME = ("demo", "flat ends", "notched ends", "pegged ends", "nails", "loose rod")


def _wrongly_typed(kind: str, every: int) -> int:
    """How many chips mended the kit with an error in one line after another, of which every so-many-th is tried."""
    base, clicked, number = _base(kind), 0, 0
    for name, line in lines(base).items():
        for text in wrong_texts(line):
            number += 1
            if number % every == 0:
                clicked += _click_all({**base, name: text})
    return clicked


@pytest.mark.parametrize("kind", SOME)
def test_a_chip_mends_an_error_in_any_line(kind: str) -> None:
    """A trouble is gone from its field after each of its chips, and none has come that was not there."""
    assert _wrongly_typed(kind, 31) > 10


@pytest.mark.slow
@pytest.mark.parametrize("kind", ["demo", *KINDS])
def test_a_chip_mends_most_errors_of_every_kind(kind: str) -> None:
    """The same with more wrong texts, for a kit of every kind of frame and way of winding."""
    assert _wrongly_typed(kind, 5) > 60


CONTRADICTIONS: dict[str, Typed] = {
    "readings that cannot both be true": {"sett.readings[2].pairs": "37"},
    "three readings, one of them off": {"sett.readings[3].pairs": "20", "sett.readings[3].over": "5 cm"},
    "readings and a sett": {"sett.given": "6 epi"},
    "a yarn in two ways": {"warp.grams": "50"},
    "sides wider than the frame": {"frame.side_width": "30 cm"},
    "a weaving wider than the frame": {"weaving.width": "50 cm"},
    "a weaving higher than the frame": {"weaving.height": "64 cm"},
    "a weaving that leaves no room for the hand": {"weaving.height": "39 cm"},
    "what tightens, and by how much not": {"frame.tensioner": "rods"},
    "by how much, and nothing tightens": {"frame.travel": "15 mm"},
    "a mirrored cartoon of the face": {"weaving.cartoon": "mirrored"},
    "beads and picks": {"weft.picks.number": "26", "weft.picks.over": "5 cm"},
    "a rod that is not there": {"weaving.near_hold": "loose rod", "weaving.first_pass": "back"},
    "a figure eight from a rod": {"weaving.near_hold": "loose rod", "weaving.winding": "figure eight"},
    "a bore as wide as the bar": {"frame.bar_bore": "15 mm"},
    "two shares of shrinkage": {
        "weaving.shrinkage": "5 %", "weaving.washed.before": "200 mm", "weaving.washed.after": "188 mm"
    },
    "a sample that grew": {"weaving.washed.before": "188 mm", "weaving.washed.after": "200 mm"},
    "half of a dip": {"frame.dip.load": "20 g"},
    "a dip too deep": {"frame.dip.load": "20 g", "frame.dip.length": "400 mm", "frame.dip.depth": "50 mm"},
    "an order that is not said": {"warp.count": "12/30", "warp.plies": ""},
    "the same thing once and in each box": {"box.holds": "strips", "box.once": "strips"},
    "two kerfs": {"stock/cutting.kerf": "0.2 mm", "stock/cutting.kerf_x": "0.2 mm"},
    "a colour that the kit has not": {
        "run/buy.colours[1].name": "indigoo", "run/buy.colours[1].grams": "50", "run/buy.colours[2].name": "madder"
    },
    "something that no box holds": {"run/buy.also[1].name": "beeter", "run/buy.also[1].number": "2"},
    "two colours alike": {"stock/colours.cut": "#7a6f8f"},
}  # fmt: skip


@pytest.mark.parametrize("what", CONTRADICTIONS)
def test_contradictions_are_mended_by_a_click(what: str) -> None:
    """Lines that contradict each other have at least one way out."""
    assert _click_all({**example(), **CONTRADICTIONS[what]}) >= 1


HARD: dict[str, Typed] = {
    "a card larger than its paper": {"box.label": "900 x 800 mm"},
    "half of a very long ball": {"weft.strands[1].grams": "", "weft.strands[1].length": "90000 m"},
    "half of a very heavy ball": {"weft.strands[1].grams": "9000", "weft.strands[1].length": ""},
    "a count in no system": {"warp.system": "", "warp.count": "9000", "warp.plies": ""},
    "a height that a large hand does not leave": {"weaving.height": "64 cm", "room.hand": "300 mm"},
}


@pytest.mark.parametrize("what", [*CONTRADICTIONS, *HARD])
def test_what_the_command_line_offers_is_taken(what: str) -> None:
    """The plain values of a refusal, written at their keys, end it: none leads to another refusal of the same field."""
    typed = {**example(), **CONTRADICTIONS.get(what, HARD.get(what, {}))}
    (refused, *_) = judged(typed).refusals
    for asked in refused.error.use:
        if asked.value is None or isinstance(asked.value, dict | list):
            continue
        prefix = next((each for each in ("stock/", "run/") if refused.key.startswith(each)), "")
        changed = {**typed, f"{prefix}{asked.key}": text_of(SPECS[pattern_of(prefix + asked.key)], asked.value)}
        fields = {each.field for each in judged(changed).refusals}
        assert refused.field not in fields, f"{refused.error} then {asked}"


@pytest.mark.parametrize("keys", [NOTCHED, PEGGED])
def test_what_a_frame_cannot_hold_is_mended_by_a_click(keys: dict[str, object]) -> None:
    """Notches and pegs that are too wide for their sett get a size that fits."""
    size = "frame.notch_width" if keys is NOTCHED else "frame.peg_diameter"
    typed = {**typed_of(kit_values(kit_of(keys))), size: "11 mm"}
    assert _click_all(typed) >= 1


def test_a_number_without_a_unit_gets_both() -> None:
    """40 c may be 40 cm or 40 in; the unit that it begins like stands first."""
    assert _trouble({"frame.outer_width": "40 c"}, "frame.outer_width").use == (
        Use("frame.outer_width", "40 cm"),
        Use("frame.outer_width", "40 in"),
    )


@pytest.mark.parametrize(("text", "unit"), [("64 cm", "cm"), ("640 mm", "mm"), ("25 in", "in")])
def test_a_height_that_is_too_great_gets_the_greatest_at_once(text: str, unit: str) -> None:
    """The first chip is the greatest height that can be woven, in the unit that was typed: one step more is refused."""
    first, words, *_ = _trouble({"weaving.height": text}, "weaving.height").use
    assert first.text.endswith(unit)
    assert words.text == "as high as fits"
    fits = read({**example(), "weaving.height": words.text}, ENGLISH).plan
    assert fits is not None
    taken = read(used(example(), first), ENGLISH).plan
    assert taken is not None
    assert 0 <= fits.amounts.weavable_height_mm.value - float(taken.kit.weaving.height.mm) < 25.4 / 8  # type: ignore[union-attr]


def test_nobody_is_offered_the_measure_of_an_example() -> None:
    """A line that is left empty or says nothing that could be meant has no chip: there is nothing to take it from."""
    for text in ("", "abc"):
        assert _trouble({"frame.outer_width": text}, "frame.outer_width").use == ()


def test_a_click_is_offered_beside_a_trouble_that_is_still_hidden() -> None:
    """Two lines are wrong: the height is only refused once the other can be read, and its chips are none the worse."""
    typed = {**example(), "frame.side_thickness": "5 c", "weaving.height": "39 cm"}
    (trouble,) = read(typed, ENGLISH).troubles
    assert Use("frame.side_thickness", "5 cm") in trouble.use
    (left,) = read(used(typed, trouble.use[0]), ENGLISH).troubles
    assert left.field == "weaving.height"


def test_a_refusal_of_a_list_stands_at_the_row_that_it_means() -> None:
    """The reading that is off by itself, the colour that the kit has not: not the first row of all."""
    _trouble({"sett.readings[3].pairs": "20", "sett.readings[3].over": "5 cm"}, "sett.readings[3].pairs")
    bought = {"run/buy.colours[1].name": "madder", "run/buy.colours[2].name": "indigoo"}
    trouble = _trouble(bought, "run/buy.colours[2].name")
    assert trouble.use[0] == Use("run/buy.colours[2].name", "indigo")
