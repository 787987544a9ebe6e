"""SVG files for cutters against one typed by hand and readers from outside; and what the reader must refuse.

The registries have no validator of SVG that works offline and is kept up; svgwrite carries the element and attribute
tables of SVG 1.1 (W3C Recommendation 16 August 2011), which our writer leaves switched off: every file is
checked against them here.
"""

from __future__ import annotations

import io
import math
from pathlib import Path
from xml.etree import ElementTree

import pytest
import svgelements
from cut_plates import ABOUT, OPERATIONS, OUTLINE, RING, SLOT, P, assert_typed_by_hand, plate
from damage import refuses
from rasters import inked, svg_pixels
from svgwrite.validator2 import get_validator

from layout.cutting.stock.stock import Operation
from layout.drawing.shapes import Curve, Point
from templates_gen.files.formats import FORMATS, About

read, write = FORMATS["svg"].read, FORMATS["svg"].write
TYPED = (Path(__file__).parents[2] / "hand_typed" / "cut.svg").read_text(encoding="utf-8")
SVG = "{http://www.w3.org/2000/svg}"
XML = "{http://www.w3.org/XML/1998/namespace}"


def parsed(data: bytes) -> ElementTree.Element:
    """A file of our own, as the XML library has it."""
    return ElementTree.fromstring(data)  # noqa: S314 - ours


# --- typed by hand


def test_a_file_typed_by_hand_is_read_in_millimetres() -> None:
    """Groups named by their operation become pens, y runs upward from 60 mm, arcs are arcs."""
    document = read(TYPED.encode())
    (sheet,) = document.sheets
    operations = document.about.operations
    assert document.about == About("Typed by hand", "{}", operations)
    assert operations is not None
    assert operations["score"] == Operation("#00ff00", 0.25)
    assert (sheet.width, sheet.height) == (110.5, 60)
    assert_typed_by_hand(sheet.shapes, 1e-5)


WORD = "M12.7 40l12.7 0-12.7-10.5Z"
CHANGES = {
    "a wrong colour": ('stroke="#ff0000"', 'stroke="#ff0001"'),
    "a colour of another operation": ('stroke="#ff0000"', 'stroke="#00ff00"'),
    "a wrong width": ('stroke-width="0.01"', 'stroke-width="0.1"'),
    "a wrong fill": ('fill="#0000ff"', 'fill="#0000fe"'),
    "a word in absolute steps": (WORD, "M12.7 40 L25.4 40 L12.7 29.5 Z"),
    "a word that stays open": (WORD, WORD[:-1]),
    "a word of a number too few": (WORD, WORD.replace("-10.5Z", "Z")),
    "a word of finer steps": (WORD, WORD.replace("10.5", "10.5001")),
    "a word of idle noughts": (WORD, WORD.replace("10.5", "10.50")),
    "a word of a nought below nought": (WORD, WORD.replace("l12.7 0", "l12.7-0")),
    "a word of giant steps": (WORD, WORD.replace("10.5", "10000.5")),
    "a word of a needless blank": (WORD, WORD.replace("10.5", "10.5 .5-1 0")),
    "a word of an odd number": (WORD, WORD.replace("10.5", "10.5-1.5")),
    "a word of two blanks": (WORD, WORD.replace(" 0-", "  0-")),
    "a word that goes on elsewhere": (WORD, WORD + "M1 1l1 0 0 1Z"),
    "a word that moves and draws nothing": (WORD, WORD + "m1 1"),
    "a cut in relative steps": ("M60 55 L110 55 L110 5 L60 5 Z", "M60 55l50 0 0-50-50 0Z"),
    "a filled cut": ('id="cut" fill="none"', 'id="cut" fill="#ff0000"'),
    "a dash": ('stroke-width="0.18"', 'stroke-width="0.18" stroke-dasharray="2,1"'),
    "another table": ('"cut": ["#ff0000"', '"cut": ["#ee0000"'),
    "two of one colour": ('"cut": ["#ff0000"', '"cut": ["#00ff00"'),
    "an operation too few": ('"cut": ["#ff0000", 0.01], ', ""),
    "another operation": ('"cut": ["#ff0000"', '"mark": ["#ff0000"'),
    "a colour that is none": ('"cut": ["#ff0000"', '"cut": ["red"'),
    "a width of nothing": ('"cut": ["#ff0000", 0.01]', '"cut": ["#ff0000", 0]'),
    "a width in words": ('"cut": ["#ff0000", 0.01]', '"cut": ["#ff0000", "thin"]'),
    "no table": (', "operations": {', ', "operation": {'),
    "a table that is none": ('"operations": {"engrave"', '"operations": [], "x": {"engrave"'),
    "a pen for paper": ('id="cut"', 'id="mark"'),
    "a name of its own": ('id="cut"', 'id="laser"'),
    "a group inside out": ('<g id="cut"', '<g transform="scale(.97)" id="cut"'),
    "a clip": ('<g id="cut"', '<g clip-path="url(#a)" id="cut"'),
    "a style": ('<g id="cut"', '<g style="stroke:blue" id="cut"'),
    "a use": ('<path d="M5 55 L5 25"/>', '<use href="#cut"/>'),
    "words": ('<path d="M5 55 L5 25"/>', "<text>words</text>"),
}


@pytest.mark.parametrize("change", CHANGES)
def test_what_is_not_ours_is_refused(change: str) -> None:
    """A look that is not the table's, a table that is not whole, and whatever else our writer never makes."""
    refuses(read, TYPED, *CHANGES[change])


# --- what the writer makes


def test_a_file_holds_what_cutters_take() -> None:
    """Groups of paths with presentation attributes, absolute commands, relative ones for words, and nothing else."""
    root = parsed(write([plate()], ABOUT))
    assert {part.tag.removeprefix(SVG) for part in root.iter()} == {"svg", "title", "desc", "g", "path"}
    looks = {"fill", "fill-rule", "stroke", "stroke-width"}
    assert {name for part in root.iter(SVG + "g") for name in part.attrib} == {"id"} | looks
    assert {name for part in root.iter(SVG + "path") for name in part.attrib} == {"d"}
    commands = {sign for part in root.iter(SVG + "path") for sign in part.attrib["d"] if sign.isalpha()}
    assert commands <= set("MLACZlm")
    assert root.attrib["width"] == root.attrib["height"] == "120mm"
    assert root.attrib["viewBox"] == "0 0 120 120"


def test_groups_are_named_and_shown_by_operation_in_the_order_of_work() -> None:
    """Engraved, scored, cut and reference, each in the table's colour and width."""
    groups = list(parsed(write([plate()], ABOUT)).iter(SVG + "g"))
    assert [group.get("id") for group in groups] == ["engrave", "score", "cut", "reference"]
    for group in groups:
        shown = OPERATIONS[str(group.get("id"))]
        lined = (f"{shown.width:g}", shown.colour, "none")
        wanted = (None, "none", shown.colour) if group.get("id") == "engrave" else lined
        assert (group.get("stroke-width"), group.get("stroke"), group.get("fill")) == wanted


def test_arcs_stay_arcs() -> None:
    """The slot has four quarters of its radius of 3 mm, the plate's corners two each of 5 mm."""
    slot, hole, outline = parsed(write([plate()], ABOUT)).findall(f"{SVG}g[@id='cut']/{SVG}path")
    assert [part.attrib["d"].count("A") for part in (slot, hole, outline)] == [4, 8, 8]
    assert slot.attrib["d"].count("A3 3 0 0 0 ") == 4
    assert outline.attrib["d"].count("A5 5 0 0 0 ") == 8


def test_every_element_and_attribute_is_of_svg_1_1() -> None:
    """By the tables of the recommendation that svgwrite carries; they refuse what is none."""
    tables = get_validator("full", debug=True)
    root = parsed(write([plate()], ABOUT))
    for part in root.iter():
        name = part.tag.removeprefix(SVG)
        assert tables.is_valid_elementname(name)
        for key, value in part.attrib.items():
            value = value.replace("-", " -") if key == "d" else value  # it wants the blank that the grammar does not
            tables.check_svg_attribute_value(name, key.replace(XML, "xml:"), value)
        for child in part:
            assert tables.is_valid_children(name, child.tag.removeprefix(SVG))
    with pytest.raises((TypeError, ValueError)):
        tables.check_svg_attribute_value("path", "d", "N1 2")
    with pytest.raises((TypeError, ValueError)):
        tables.check_svg_attribute_value("g", "stroke-width", "thick")


# --- svgelements and resvg, from outside


def outside() -> list[svgelements.Path]:
    """Every path as svgelements has it, at 25.4 dots per inch, which is one unit a millimetre."""
    drawing = svgelements.SVG.parse(io.BytesIO(write([plate()], ABOUT)), ppi=25.4)
    size = (float(drawing.width), float(drawing.height))
    assert size == pytest.approx((120, 120), abs=1e-3)  # it takes an inch for 25.39999 mm
    return [each for each in drawing.elements() if isinstance(each, svgelements.Path)]


def test_svgelements_finds_every_point_where_it_was_drawn() -> None:
    """Corners and middles of arcs, y turned, agree to a micrometre; closed is closed. Halves of an arc may be one."""
    paths = outside()
    assert len(paths) == 1 + 3 + 3 + 7
    drawn = [shape for shape in plate().shapes if shape is not RING]
    for path, shape in zip(paths[1:], drawn, strict=True):
        assert isinstance(shape, Curve)
        segments = [each for each in path if not isinstance(each, svgelements.Move | svgelements.Close)]
        assert any(isinstance(each, svgelements.Close) for each in path) == shape.closed
        left = iter(shape.steps)
        for segment in segments:
            steps = [next(left)]
            if not on(segment, 1.0, steps[0].end):
                steps.append(next(left))
            for k, step in enumerate(steps, 1):
                assert isinstance(segment, svgelements.Arc) == (step.through is not None)
                assert on(segment, k / len(steps), step.end)
                assert step.through is None or on(segment, (k - 0.5) / len(steps), step.through)
        assert not list(left)


def on(segment: svgelements.PathSegment, share: float, wanted: tuple[float, float]) -> bool:
    """Whether a segment has that point after a share of its way."""
    at = segment.point(share)
    return math.dist((at.x, 120 - at.y), wanted) < 0.001


def test_svgelements_measures_what_was_drawn() -> None:
    """Length and box of the slot of 26 x 6 mm and the plate of 100 x 40 mm, in millimetres."""
    slot, _, outline = outside()[4:7]
    assert slot.length() == pytest.approx(40 + 6 * math.pi, abs=1e-3)
    assert outline.length() == pytest.approx(2 * 90 + 2 * 30 + 10 * math.pi, abs=1e-3)
    assert outline.bbox() == pytest.approx((0, 80, 100, 120), abs=1e-4)
    assert slot.bbox() == pytest.approx((17, 104, 43, 110), abs=1e-4)
    assert Point(*SLOT.start) == P(20, 10)
    assert OUTLINE.start == P(5, 0)


def test_resvg_shows_scored_lines_and_areas_at_their_pixels() -> None:
    """Rasterised at ten pixels a millimetre, ink lies where it was drawn; the ring's hole stays paper."""
    pixels = svg_pixels(write([plate()], ABOUT))
    assert pixels.shape == (1200, 1200)
    for x in (10, 20, 30):
        assert inked(pixels, x - 2, x + 2, 29, 39) == pytest.approx((x, 34), abs=0.05)
    assert pixels[1200 - 260, 750] < 120  # 75, 26 mm: on the ring
    assert pixels[1200 - 300, 750] == 255  # 75, 30 mm: in its hole
