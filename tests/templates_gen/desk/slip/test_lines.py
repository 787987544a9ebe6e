"""The lines of the slip: every input has one, and every word of it is there."""

from __future__ import annotations

from xml.etree import ElementTree

import pytest

from layout.box.shop_inputs import SHOP
from layout.cutting.stock.stock_inputs import STOCK
from layout.kit.inputs import INPUTS
from layout.kit.range_values import COPIES
from templates_gen.desk.slip.fields import NOT_TYPED, SPECS, pattern_of
from templates_gen.desk.slip.helps import helped
from templates_gen.desk.slip.labels import label_of
from templates_gen.desk.slip.lines import lines, steps
from templates_gen.desk.slip.reading import read
from templates_gen.desk.slip.shape import Typed
from templates_gen.desk.slip.typed import example
from templates_gen.messages.english import ENGLISH
from templates_gen.messages.roles.desk_choices import DeskChoice
from templates_gen.messages.roles.desk_helps import DeskHelp
from templates_gen.messages.roles.desk_labels import DeskLabel
from tests.kits import KINDS

TWELVE = [
    "name", "sett.readings[1].pairs", "sett.readings[1].how", "sett.readings[1].over", "frame.ends",
    "frame.bar_diameter", "frame.outer_width", "frame.outer_height", "frame.side_width", "weaving.width",
    "weaving.height", "yarns.warp", "yarns.weft",
]  # fmt: skip
"""The lines that stand first; what a reading counts and how is one line on paper."""

FULL: Typed = {
    "warp.threads[1].count": "8", "weft.strands[1].threads[1].count": "8", "weft.colours[1].name": "madder",
    "weaving.near_hold": "loose rod",
}  # fmt: skip


def _of_every_kind() -> dict[str, Typed]:
    kinds = {str(keys.get("frame.ends", "round bars")) for keys in KINDS.values()}
    return {kind: {**FULL, "frame.ends": kind} for kind in sorted(kinds)}


def test_no_input_is_without_a_line() -> None:
    """Every key of a kit, a stock and a run stands on the slip of some kind of frame, and no line has a key of none."""
    found = {pattern_of(name) for typed in _of_every_kind().values() for name in lines(typed)}
    keys = {spec.key for spec in INPUTS} | {f"stock/{spec.key}" for spec in STOCK.inputs}
    keys |= {f"run/{spec.key}" for spec in (COPIES, *SHOP.inputs)}
    one_length = {"sett.readings[].window", "sett.readings[].measure"}
    lists = {name for name, spec in SPECS.items() if spec.kind == "tables"} - {"box.also"}
    assert found == keys - one_length - lists - set(NOT_TYPED) | {"sett.readings[].how", "sett.readings[].over"}


def test_the_first_lines_are_those_that_a_strip_needs() -> None:
    """Without what stands under a "+", the slip of round bars has the twelve lines, in the order of the work."""
    first = [line.name for step in steps({}) for group in step.groups if group.summary is None for line in group.lines]
    assert first == TWELVE


@pytest.mark.parametrize("kind", _of_every_kind())
def test_every_line_is_said(kind: str) -> None:
    """Each line has a label and a help that is a sentence, each choice a label, each step and group its title."""
    for step in steps(_of_every_kind()[kind]):
        assert ENGLISH.say(step.title)
        assert ENGLISH.say(step.intro).endswith(".")
        for group in step.groups:
            assert group.summary is None or str(group.count) in ENGLISH.say(group.summary, lines=group.count)
            for line in group.lines:
                assert 2 <= len(ENGLISH.say(line.label)) <= 40
                assert line.helped(ENGLISH).endswith(".")
                assert line.helped(ENGLISH)[0].isupper() or not line.helped(ENGLISH)[0].isalpha()
                assert all(ENGLISH.say(choice.label) for choice in line.choices)


def test_no_words_of_lines_are_left_over() -> None:
    """Every label, help and choice that is written down is one of a line, a table or a choice of some slip."""
    used: set[object] = set()
    for typed in _of_every_kind().values():
        for line in lines(typed).values():
            used |= {line.label, line.help, *(choice.label for choice in line.choices)}
    lists = {name for name, spec in SPECS.items() if spec.kind == "tables"}
    used |= {label_of(name) for name in lists}
    assert {*DeskLabel, *DeskHelp, *DeskChoice} - used == set()


def test_drawings_carry_no_styles() -> None:
    """Each drawing is one inline SVG in the colour of the text: the page forbids styles in its elements."""
    drawings = [choice.picture for line in lines(FULL).values() for choice in line.choices if choice.picture]
    assert len(drawings) >= 15
    for drawing in drawings:
        root = ElementTree.fromstring(drawing)  # noqa: S314 - our own text
        assert root.get("viewBox")
        assert {key for each in root.iter() for key in each.attrib}.isdisjoint({"style", "onclick"})
        colours = {each.get(key) for each in root.iter() for key in ("fill", "stroke")}
        assert colours <= {"currentColor", "none", None}


def test_a_list_has_one_row_more_than_filled_in() -> None:
    """The example has two readings and three colours; the slip shows three and four, and never more than allowed."""
    of_example = lines(example())
    assert "sett.readings[3].pairs" in of_example
    assert "sett.readings[4].pairs" not in of_example
    assert "weft.colours[4].name" in of_example
    full = {f"box.also[{number}].name": "beater" for number in range(1, 25)}
    assert "box.also[24].name" in lines(full)
    assert "box.also[25].name" not in lines(full)


def test_another_kind_of_ends_swaps_its_own_keys_in() -> None:
    """Notched ends have notches and no bars; what was typed for the bars has no line then."""
    notched = lines({**example(), "frame.ends": "notched ends"})
    assert {"frame.thickness", "frame.notch_width", "frame.notch_depth", "frame.end_width"} <= set(notched)
    assert {"frame.bar_diameter", "frame.bar_bore", "weaving.winding"}.isdisjoint(notched)


def test_what_the_frame_leaves_is_said_with_its_numbers() -> None:
    """Width and height say what fits, in the unit of the frame; where nothing can be read they say what they are."""
    typed = example()
    found, of = read(typed, ENGLISH), lines(typed)
    assert helped(of["weaving.width"], found.plan, ENGLISH) == "Left empty: as wide as fits, 31 cm here."
    assert helped(of["weaving.height"], found.plan, ENGLISH) == "The frame leaves 37.4 cm."
    assert helped(of["weaving.height"], None, ENGLISH) == of["weaving.height"].helped(ENGLISH)
    assert helped(of["frame.margin"], found.plan, ENGLISH) == of["frame.margin"].helped(ENGLISH)


def test_a_summary_counts_the_lines_that_are_there() -> None:
    """Of the warp's label those without a thread that is still to be added; one strand, and nothing of a second."""
    of_yarns = {str(group.summary): group for group in steps(example())[3].groups}
    warp, strands = of_yarns["desk_slip.more.warp"], of_yarns["desk_slip.more.strands"]
    assert warp.count == sum("threads" not in line.name for line in warp.lines) == 17
    assert strands.count == sum(".threads" not in line.name and "[1]" in line.name for line in strands.lines)
    assert steps({})[3].groups[2].count > 0


def test_a_choice_is_known_however_it_is_written() -> None:
    """Capitals and spaces of a file do not matter; what is no choice stays the text that it is."""
    ends = lines({})["frame.ends"]
    assert ends.chosen(" Flat  Ends") == "flat ends"
    assert ends.said("FLAT ENDS", ENGLISH) == "Flat ends"
    assert (ends.chosen("spikes"), ends.said("spikes", ENGLISH)) == ("", "spikes")
    assert lines({})["sett.loosest"].empty(ENGLISH) == "No"
    assert lines({})["weaving.tie_off"].empty(ENGLISH) == "Not said"
    assert lines({})["weaving.start"].empty(ENGLISH) == "At the left"
