"""The numbers beside the slip: every sentence of the plan stands under one, and nothing is said that is not so."""

from __future__ import annotations

import re
from collections import Counter
from itertools import pairwise
from xml.etree import ElementTree

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from kits import INCHES, KINDS, plan_of
from languages import made_up
from strategies import kits

import templates_gen
from layout.frames.materials import MATERIALS
from layout.kit.inputs import INPUTS
from layout.kit.kit import read_kit
from layout.plan import Plan
from layout.values.errors import LayoutError
from templates_gen.desk.look.answers import Number
from templates_gen.desk.look.numbers import FIRST, numbers
from templates_gen.desk.look.range_drawing import Tick, range_drawing
from templates_gen.desk.look.strips import strip
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.english import ENGLISH

FIELDS = {re.sub(r"\[\]", "", spec.key) for spec in INPUTS}
KITS = KINDS | {"inches": INCHES, "demo": {"demo": True}}
UNITS = ("cm", "in")


def planned(name: str) -> Plan:
    """The plan of one of the kits."""
    return templates_gen.plan(templates_gen.load()) if name == "demo" else plan_of(KITS[name])


def rows(name: str, unit: str = "cm") -> dict[str, Number]:
    """The rows of it in English."""
    return {row.id: row for row in numbers(planned(name), ENGLISH, unit)}


@pytest.mark.parametrize("name", KITS)
def test_every_note_and_warning_stands_under_one_number(name: str) -> None:
    """Not one is lost, and none is said twice."""
    plan, found = planned(name), numbers(planned(name), ENGLISH, "cm")
    why = Counter(sentence for row in found for sentence in row.why)
    warned = Counter(sentence for row in found for sentence in row.warnings)
    assert {note: why[note] for note in plan.notes} == dict.fromkeys(plan.notes, 1)
    assert warned == Counter(plan.warnings)


@pytest.mark.parametrize("name", KITS)
def test_the_first_rows_are_the_eight(name: str) -> None:
    """In the order of the work; every row has an id of its own."""
    found = [row.id for row in numbers(planned(name), ENGLISH, "cm")]
    assert found[:FIRST] == ["sett", "winds", "weaving", "height", "bending", "warp", "weft", "picks"]
    assert len(set(found)) == len(found)


@pytest.mark.parametrize("name", KITS)
@pytest.mark.parametrize("unit", UNITS)
def test_a_row_says_a_value_or_what_it_needs(name: str, unit: str) -> None:
    """Never nothing, 0 or a dash; links lead to lines that the kit has."""
    for row in numbers(planned(name), ENGLISH, unit):
        assert row.value or (row.needs and row.needs_said)
        assert row.value not in ("0", "-")
        for field in filter(None, (row.gives, row.needs)):
            assert re.sub(r"\[\d+\]", "", field) in FIELDS
        assert bool(row.gives) == bool(row.gives_said)
        assert row.how_said == row.how


@pytest.mark.parametrize("name", KITS)
def test_the_unit_of_the_page_stands_first(name: str) -> None:
    """What is said first in centimetres is said second in inches, and the other way round."""
    metric, imperial = rows(name), rows(name, "in")
    for each in ("sett", "bending", "picks", "woven", "stick", "pull"):
        if metric[each].value:
            assert metric[each].value.removeprefix("about ") == imperial[each].second.removeprefix("about ")
            assert imperial[each].value.removeprefix("about ") == metric[each].second.removeprefix("about ")


@pytest.mark.parametrize("name", KITS)
@pytest.mark.parametrize("unit", UNITS)
def test_ranges_hold_what_is_taken(name: str, unit: str) -> None:
    """A drawing goes with its three numbers; a figure lies between its bounds, a sett at most at the measured one."""
    for row in numbers(planned(name), ENGLISH, unit):
        assert bool(row.range) == (row.low is not None) == (row.high is not None) == (row.taken is not None)
        if row.low is None or row.high is None or row.taken is None:
            continue
        ElementTree.fromstring(row.range)  # noqa: S314 - ours
        assert row.low < row.high
        if row.id == "sett":
            assert row.taken < row.high
        elif row.id != "bending":
            assert row.low <= row.taken <= row.high


@settings(deadline=None, max_examples=25)
@given(values=kits())
def test_any_kit_has_its_numbers(values: dict[str, object]) -> None:
    """Whatever it is, each row says something, no warning is lost, and both strips are drawn or say why."""
    try:
        plan = templates_gen.plan(read_kit(values, metrics()))
    except LayoutError:
        return
    found = numbers(plan, ENGLISH, "in")
    assert all(row.value or row.needs_said for row in found)
    assert Counter(plan.warnings) == Counter(sentence for row in found for sentence in row.warnings)
    strips = strip(plan, "near", ENGLISH), strip(plan, "far", ENGLISH)
    assert all(bool(each.svg) != bool(each.why) for each in strips)


def test_the_demo_kit_by_hand() -> None:
    """13 pairs in 5 cm and 27 on 10 cm are 2.7 to 2.8 ends per cm; 5 winds to 4 cm are 2.5; 24 cm hold 60 ends."""
    found = rows("demo")
    assert found["sett"][2:4] == ("2.5 per cm", "6.35 per inch")
    assert (found["sett"].low, found["sett"].high, found["sett"].taken) == pytest.approx((2.7, 2.8, 2.5))
    assert found["winds"][2:4] == ("30", "60 ends, 4 mm apart")
    assert found["weaving"][2:4] == ("240 mm", "9.45 in wide")
    assert found["height"].second == "you want 34 cm"
    assert found["bending"].high == pytest.approx((400 - 2 * 30) / 500)
    assert found["picks"].how == "measured"
    assert "All of them take 7.2 m (7.87 yd) of cord." in found["leashes"].why
    assert "1 ball of heron cord; about 46.0 g left over." in found["buy"].why


def test_what_is_lacking_is_named() -> None:
    """A kit that says nothing of its yarns needs picks for the weft, and the count of its warp."""
    found = rows("round bars")
    assert (found["picks"].value, found["picks"].needs) == ("", "weft.beads.number")
    assert (found["weft"].value, found["weft"].needs) == ("", "weft.beads.number")
    assert (found["warp"].needs, found["warp"].second) == ("warp.count", "")
    assert found["bending"].needs == "frame.material"
    flat = {row.id: row for row in numbers(plan_of(KINDS["flat ends"] | {"frame.material": "oak"}), ENGLISH, "cm")}
    assert flat["bending"].needs == "frame.end_width"


@pytest.mark.parametrize("name", KITS)
def test_another_language_is_said_whole(name: str) -> None:
    """In a made-up language, whose vowels are all "é", no row has a word of English but names out of the kit."""
    own = " ".join(part for yarn in _names(planned(name)) for part in yarn.split())
    for row in numbers(planned(name), made_up(ENGLISH), "cm"):
        for text in (row.name, row.second, row.how_said, row.gives_said, row.needs_said, *row.why, *row.warnings):
            words = re.findall(r"[A-Za-zÀ-ſ_]{3,}", text)
            plain = [word for word in words if re.search("[aiou]", word) and word not in own]
            assert [word for word in plain if not _of_a_file(word, text)] == [], text


def _names(plan: Plan) -> list[str]:
    kit = plan.kit
    colours = [need.name for need in plan.amounts.weft_by_colour]
    return [kit.name, kit.warp, kit.weft, *colours, *MATERIALS, "Peirce Christie Herd Alpacas Magazine Euler Bernoulli"]


def _of_a_file(word: str, text: str) -> bool:
    """Whether a word is one to type into a kit file: a key, or what stands in quotes."""
    return bool(re.search(rf"[\w.]*[._]{word}|{word}[._]|\"[^\"]*{word}[^\"]*\"|= {word}", text))


@pytest.mark.parametrize("taken", [1.0, 4.9, 5.0, 5.1, 9.0, 12.0])
def test_the_word_of_a_range_is_not_crossed_out(taken: float) -> None:
    """It stands beside the heavy line of what is taken, within the grey."""
    root = ElementTree.fromstring(range_drawing(0, 10, [Tick(taken, "t", taken=True)], "good", "a"))  # noqa: S314 - ours
    word = next(each for each in root.iter() if each.text == "good")
    line = next(each for each in root.iter() if each.get("class") == "taken").attrib["d"]
    grey = next(each for each in root.iter() if each.get("class") == "ok")
    at, crossed = float(word.attrib["x"]), float(re.findall(r"M([\d.]+)", line)[0])
    assert abs(at - crossed) > _half(word)
    assert float(grey.attrib["x"]) <= at - _half(word)
    assert at + _half(word) <= float(grey.attrib["x"]) + float(grey.attrib["width"])


ANY = st.floats(-1e4, 1e4).map(lambda value: round(value, 3))


@settings(deadline=None)
@given(
    low=ANY,
    wide=st.floats(0, 1e4),
    taken=ANY,
    words=st.lists(st.sampled_from(["2.5", "10.25 mm", "about 7"]), min_size=3, max_size=3),
)
def test_words_of_a_range_never_meet(low: float, wide: float, taken: float, words: list[str]) -> None:
    """Whatever the numbers are, they stay within the drawing, and words keep apart; what is taken is always said."""
    ticks = (Tick(taken, words[0], taken=True), Tick(low, words[1]), Tick(low + wide, words[2]))
    root = ElementTree.fromstring(range_drawing(low, low + wide, ticks, "", "a"))  # noqa: S314 - ours
    texts = [each for each in root.iter() if each.tag.endswith("text")]
    spans = sorted((float(each.get("x", "")) - _half(each), float(each.get("x", "")) + _half(each)) for each in texts)
    assert texts[0].text == words[0]
    assert spans[0][0] >= -0.1
    assert spans[-1][1] <= 460.1
    assert all(one[1] < other[0] for one, other in pairwise(spans))


def _half(text: ElementTree.Element) -> float:
    return metrics().width(text.text or "", 12) / 2
