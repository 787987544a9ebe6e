"""The frame to scale: every end where it lies, every measure as typed, letters that can be read at every size."""

from __future__ import annotations

import math
import re
from fractions import Fraction
from xml.etree import ElementTree

import pytest
from hypothesis import given, settings
from kits import FLAT, INCHES, KINDS, NAILS, NOTCHED, PEGGED, ROD, plan_of
from strategies import kits

from layout.kit.inputs import BY_KEY
from layout.kit.kit import read_kit
from layout.plan import Plan
from layout.plan import plan as planned
from layout.values.errors import LayoutError
from layout.values.units import read_length
from templates_gen.desk.look.frame_measures import HIGH, WIDE
from templates_gen.desk.look.frames import SEPARATE, frame
from templates_gen.languages.catalogues import catalogue_of
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.english import ENGLISH

LANGUAGES = ("en", "es", "de", "fr")
FITS: dict[str, object] = {"weaving.width": "as wide as fits", "weaving.height": "as high as fits"}


def sized(width: str, height: str, **more: object) -> dict[str, object]:
    """A frame of that size that is woven as far as it goes."""
    sizes = {"frame.outer_width": width, "frame.outer_height": height}
    return FITS | sizes | {f"frame.{key}": value for key, value in more.items()}


TINY = sized("10 cm", "16 cm", side_width="10 mm", margin="5 mm")
SIZES = {
    "tiny": TINY,
    "tiny, pegs": PEGGED | TINY | {"frame.outer_height": "20 cm"},
    "tiny, inches": INCHES | TINY | {"frame.outer_width": "4 in", "frame.outer_height": "6 1/2 in"},
    "huge": sized("3 m", "2 m", side_width="80 mm"),
    "huge, nails": NAILS | sized("2 m", "3 m"),
    "tall": sized("30 cm", "3 m"),
    "tall, notches": NOTCHED | sized("12 cm", "2.5 m", side_width="10 mm"),
    "wide": sized("3 m", "30 cm"),
    "wide, boards": FLAT | sized("1.2 m", "30 cm", end_width="40 mm"),
    "wide, rod": ROD | sized("1.2 m", "30 cm"),
    "wide, pegs": PEGGED | sized("80 cm", "30 cm"),
    "inches": INCHES | {"frame.outer_height": "21 1/2 in", "frame.side_width": "1 1/4 in"},
    "top": {"weaving.near_end": "top"},
}
EVERY = KINDS | SIZES
every = pytest.mark.parametrize("name", EVERY)


def drawn(plan: Plan, unit: str = "cm") -> ElementTree.Element:
    """The drawing as an XML library has it."""
    return ElementTree.fromstring(frame(plan, ENGLISH, unit).svg)  # noqa: S314 - ours


def tagged(root: ElementTree.Element, tag: str) -> list[ElementTree.Element]:
    """Every element of that name."""
    return [each for each in root.iter() if each.tag.rpartition("}")[2] == tag]


def box_of(root: ElementTree.Element) -> tuple[float, float, float, float]:
    """Left, top, width and height of the view box."""
    left, top, wide, high = map(float, root.attrib["viewBox"].split())
    return left, top, wide, high


@every
def test_letters_can_be_read_and_stay_inside(name: str) -> None:
    """At the size that the drawing is made for they are 11 to 12.5 px high, and no word leaves the drawing."""
    stay_inside(drawn(plan_of(EVERY[name])))


def stay_inside(root: ElementTree.Element) -> None:
    """The same for any drawing."""
    left, top, wide, high = box_of(root)
    px = max(wide / WIDE, high / HIGH)
    for text in tagged(root, "text"):
        size = float(text.attrib["font-size"])
        assert 11 <= size / px <= 12.5
        x1, y1, x2, y2 = _place(text)
        assert left <= x1
        assert x2 <= left + wide
        assert top <= y1
        assert y2 <= top + high


@every
def test_words_do_not_meet(name: str) -> None:
    """No two measures are written over each other."""
    keep_apart(drawn(plan_of(EVERY[name])))


@settings(deadline=None, max_examples=25)
@given(values=kits())
def test_any_frame_can_be_read(values: dict[str, object]) -> None:
    """Whatever the kit is, its words stay inside and apart, in every language."""
    try:
        plan = planned(read_kit(values, metrics()))
    except LayoutError:
        return
    for language in LANGUAGES:
        root = ElementTree.fromstring(frame(plan, catalogue_of(language), "in").svg)  # noqa: S314 - ours
        stay_inside(root)
        keep_apart(root)


def keep_apart(root: ElementTree.Element) -> None:
    """No words of a drawing meet others."""
    boxes = [_place(text) for text in tagged(root, "text")]
    for k, one in enumerate(boxes):
        for other in boxes[k + 1 :]:
            assert one[2] <= other[0] or other[2] <= one[0] or one[3] <= other[1] or other[3] <= one[1]


def _place(text: ElementTree.Element) -> tuple[float, float, float, float]:
    """Left, top, right and bottom of words, their capitals and tails at most."""
    size = float(text.attrib["font-size"])
    long, up, down = metrics().width(text.text or "", size), 0.75 * size, 0.22 * size
    shift = {"start": 0.0, "middle": -long / 2, "end": -long}[text.attrib["text-anchor"]]
    if turned := re.fullmatch(r"translate\((\S+) (\S+)\)rotate\(-90\)", text.get("transform", "")):
        x, y = float(turned[1]), float(turned[2])
        return x - up, y - long - shift, x + down, y - shift
    x, y = float(text.attrib["x"]), float(text.attrib["y"])
    return x + shift, y - up, x + shift + long, y + down


@every
def test_every_end_is_drawn_and_named(name: str) -> None:
    """Each has an element, or two where it goes behind, whose title is the sentence on it; all are in the list."""
    plan = plan_of(EVERY[name])
    found = frame(plan, ENGLISH, "cm")
    assert [each.end for each in found.passes] == list(range(1, plan.warp.ends + 1))
    assert len(found.said) == plan.warp.ends
    titles: dict[int, set[str]] = {}
    for path in tagged(drawn(plan), "path"):
        if "data-end" in path.attrib:
            titles.setdefault(int(path.attrib["data-end"]), set()).add(path[0].text or "")
    if plan.warp.ends > SEPARATE:
        assert not titles
    else:
        assert titles == {end: {said} for end, said in enumerate(found.said, 1)}


@every
def test_ends_lie_where_the_plan_has_them(name: str) -> None:
    """At half height each is where its pass is there; face and back are as the plan says; none leaves the frame."""
    plan = plan_of(EVERY[name])
    warp, fr = plan.warp, plan.kit.frame
    wide, high = float(fr.outer_width.mm), float(fr.outer_height.mm)
    for each, one in zip(frame(plan, ENGLISH, "cm").passes, warp.passes, strict=True):
        assert min(each.x1, each.x2, each.y1, each.y2) >= 0
        assert max(each.x1, each.x2) <= wide
        assert max(each.y1, each.y2) <= high
        assert (each.layer, each.far_layer) == (one.layer_at("near"), one.layer_at("far"))
        assert (each.y1 > each.y2) == (plan.kit.weaving.near_end == "bottom")
        at_half = each.x1 + (each.x2 - each.x1) * (high / 2 - each.y1) / (each.y2 - each.y1)
        far_off = 0.02 * abs(float(one.far - one.near)) + 0.01
        if fr.ends.kind == "pegged":  # rows differ in depth: half the way is not half the height
            far_off += abs(float(one.far - one.near)) * 12 / high
        assert at_half - wide / 2 == pytest.approx(float(one.near + one.far) / 2, abs=far_off)


@every
def test_measures_are_those_of_lines(name: str) -> None:
    """Each belongs to a line of the kit file, and says its length as it was typed, and in the other unit."""
    plan = plan_of(EVERY[name])
    groups = [each for each in tagged(drawn(plan), "g") if "data-dim" in each.attrib]
    keys = [group.attrib["data-dim"] for group in groups]
    assert len(set(keys)) == len(keys)
    assert set(keys) <= set(BY_KEY)
    assert {"frame.outer_width", "frame.outer_height", "frame.side_width", "weaving.width", "weaving.height"} <= set(
        keys
    )
    for group in groups:
        said = " ".join(text.text or "" for text in tagged(group, "text"))
        first, *others = _lengths(said)
        assert others or group.attrib["data-dim"] in ("frame.thickness", "frame.notch_width")  # on narrow frames
        assert all(math.isclose(first, other, rel_tol=0.02, abs_tol=0.26) for other in others)
        if group.attrib["data-dim"] == "frame.outer_width":
            assert first == plan.kit.frame.outer_width.mm


def _lengths(said: str) -> list[Fraction]:
    found = re.findall(r"(\d[\d./]*(?: \d+/\d+)? (?:mm|cm|m|in))\b", said)
    return [read_length(each).mm for each in found]


@pytest.mark.parametrize(
    ("kind", "keys"),
    [
        ("round bars", {"frame.bar_diameter"}),
        ("flat ends", {"frame.thickness"}),
        ("notched ends", {"frame.thickness", "frame.notch_width"}),
        ("pegged ends", {"frame.thickness", "frame.peg_diameter", "frame.row_distance", "frame.edge_distance"}),
        ("nails", {"frame.thickness", "frame.nail_diameter", "frame.edge_distance"}),
    ],
)
def test_every_kind_shows_its_own_measures(kind: str, keys: set[str]) -> None:
    """So that a line that is touched finds its measure."""
    groups = {each.get("data-dim") for each in tagged(drawn(plan_of(KINDS[kind])), "g")}
    assert keys <= groups


def test_pegs_nails_and_notches_are_drawn() -> None:
    """As many as the plan has marks, in the places of its rows."""
    pegged = plan_of(KINDS["pegged ends"])
    (pins,) = (each for each in tagged(drawn(pegged), "path") if each.get("class") == "pin")
    places = re.findall(r"M(\S+) (\S+?)a", pins.attrib["d"])
    assert len(places) == len(pegged.warp.near) + len(pegged.warp.far)
    assert {y for _, y in places} == {"540", "528", "10", "22"}  # 10 mm from the edge, and 12 mm further in


def test_nothing_loads_or_runs() -> None:
    """No style, script, link or id, so that the content policy of the page holds and drawings do not collide."""
    for name in KINDS:
        for each in drawn(plan_of(KINDS[name])).iter():
            assert each.tag.rpartition("}")[2] in ("svg", "g", "path", "text", "title")
            assert not {"id", "style", "href"} & set(each.attrib)
            assert not any(key.startswith("on") for key in each.attrib)


def test_the_drawing_is_to_scale() -> None:
    """One unit is a millimetre of the frame: its wood reaches from 0 to 400 and to 550."""
    (wood,) = (each for each in tagged(drawn(plan_of()), "path") if each.get("class") == "wood")
    numbers = [float(number) for number in re.findall(r"[\d.]+", wood.attrib["d"])]
    assert (min(numbers), max(numbers)) == (0, 550)
    assert wood.attrib["d"].startswith("M0 0H25V550H0Z")
