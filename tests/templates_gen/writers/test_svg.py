"""SVG files against one typed by hand and resvg; and what the reader must refuse."""

from __future__ import annotations

import math
import subprocess
import sys
from pathlib import Path
from xml.etree import ElementTree

import pytest
from damage import refuses
from rasters import inked, svg_pixels

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Step, Text, arc, circle, filled, line, polygon
from layout.drawing.sheet import Sheet
from layout.values.errors import LayoutError
from templates_gen.files.formats import FORMATS, About, ReadError

read, write = FORMATS["svg"].read, FORMATS["svg"].write
ROOT = Path(__file__).parents[3]
TYPED = (ROOT / "tests" / "hand_typed" / "plate.svg").read_text(encoding="utf-8")
ABOUT = About("Demo loom", '{"name": "Zoë"}')
P = Point


def drawn(*shapes: Shape) -> Sheet:
    """These shapes on 60 x 40 mm."""
    return Sheet("plate", 60, 40, shapes)


def parsed(data: bytes) -> ElementTree.Element:
    """A file of our own, as the XML library has it."""
    return ElementTree.fromstring(data)  # noqa: S314 - ours


# --- typed by hand


def test_a_file_typed_by_hand_is_read_in_millimetres() -> None:
    """One unit is one millimetre, y runs upward from the lower edge at 40.5 mm, each run has its pen."""
    document = read(TYPED.encode())
    (sheet,) = document.sheets
    assert document.about == About("Typed by hand", "{}")
    assert (sheet.name, sheet.width, sheet.height) == ("plate", 60, 40.5)
    window, cut, first, second, middle, third = sheet.shapes
    outer = polygon((P(10, 30.5), P(50, 30.5), P(50, 10.5), P(10, 10.5)), Pen.TINT)
    inner = polygon((P(20, 25.5), P(20, 15.5), P(40, 15.5), P(40, 25.5)), Pen.TINT)
    assert window == Region((outer, inner), Pen.TINT)
    assert first == line(P(12.7, 35.5), P(12.7, 30.5), Pen.MARK)
    assert second == line(P(25.4, 35.5), P(25.4, 30.5), Pen.MARK)
    assert middle == line(P(0, 20.25), P(60, 20.25), Pen.HELP)
    assert third == line(P(38.1, 35.5), P(38.1, 30.5), Pen.MARK)
    assert isinstance(cut, Curve)
    assert (cut.pen, cut.closed) == (Pen.CUT, True)
    assert cut.points() == [(2, 36.5), (56, 36.5), (57.41421, 35.91421), (58, 34.5), (58, 2), (2, 2)]
    bend = math.radians(67.5)  # the middle of the first eighth of a corner of r 2 mm about 56, 34.5
    assert cut.steps[1].through == pytest.approx((56 + 2 * math.cos(bend), 34.5 + 2 * math.sin(bend)), abs=1e-4)


# --- what the reader refuses

MARK = '<path d="M12.7 5 L12.7 10"/>'
CHANGES = {
    "a document type": ("<svg ", '<!DOCTYPE svg SYSTEM "svg.dtd"><svg '),
    "an entity": ("<svg ", '<!DOCTYPE svg [<!ENTITY a "b">]><svg '),
    "a comment": (MARK, f"<!-- note -->{MARK}"),
    "a block of characters": ("Typed by hand", "<![CDATA[Typed]]>"),
    "a style sheet of its own": ("?>\n", '?>\n<?xml-stylesheet href="a.css" type="text/css"?>'),
    "an instruction": (MARK, f"<?run now?>{MARK}"),
    "another encoding": ('encoding="utf-8"', 'encoding="utf-16"'),
    "no declaration": ('<?xml version="1.0" encoding="utf-8" ?>\n', ""),
    "an unknown entity": ("Typed by hand", "&nbsp;"),
    "no end": ("</svg>", ""),
    "two roots": ("</svg>", "</svg><svg/>"),
    "another root": ("<svg ", "<svg2 "),
    "another namespace": ("http://www.w3.org/2000/svg", "http://www.w3.org/2000/svg2"),
    "pixels": ('width="60mm"', 'width="60"'),
    "inches": ('width="60mm"', 'width="60in"'),
    "per cent": ('width="60mm"', 'width="100%"'),
    "another scale": ("0 0 60 40.5", "0 0 6000 4050"),
    "a scale of 97 %": ("0 0 60 40.5", "0 0 58.2 40.5"),
    "a shift": ("0 0 60 40.5", "1 0 60 40.5"),
    "no view box": ('viewBox="0 0 60 40.5"', ""),
    "a way to stretch": ("<svg ", '<svg preserveAspectRatio="none" '),
    "a turned root": ("<svg ", '<svg transform="scale(2)" '),
    "another language": ("<svg ", '<svg xml:lang="de" '),
    "a styled root": ("<svg ", '<svg style="zoom:2" '),
    "another profile": ("<svg ", '<svg baseProfile="tiny" '),
    "a script at loading": ("<svg ", '<svg onload="run()" '),
    "no title": ("<title>Typed by hand</title>", ""),
    "no inputs": ("<desc>", "<title>"),
    "inputs that are none": ('{"inputs": "{}", "sheets": ["plate"]}', "a plate"),
    "inputs of another kind": ('"inputs": "{}"', '"inputs": null'),
    "two sheets named": ('["plate"]', '["plate", "other"]'),
    "a name that is none": ('["plate"]', "[1]"),
    "a title with a part": ("Typed by hand", "Typed <g/>"),
    "a styled title": ("<title>", '<title class="a">'),
    "a style": ("</desc>", "</desc><style>path { stroke-width: 9 }</style>"),
    "a script": ("</desc>", "</desc><script>run()</script>"),
    "definitions": ("</desc>", "</desc><defs/>"),
    "metadata": ("</desc>", "</desc><metadata/>"),
    "words": (MARK, '<text x="1" y="1">1</text>'),
    "an image": (MARK, '<image href="a.png"/>'),
    "a use": (MARK, '<use href="#mark"/>'),
    "a line element": (MARK, '<line x1="1" y1="1" x2="2" y2="2"/>'),
    "a circle": (MARK, '<circle r="1"/>'),
    "a group in a group": (MARK, f"<g>{MARK}</g>"),
    "a path on its own": ('<g id="tint"', f'{MARK}<g id="tint"'),
    "a part of a path": (MARK, '<path d="M12.7 5 L12.7 10"><title>a</title></path>'),
    "text among paths": (MARK, f"{MARK} 12"),
    "text in a group": (MARK, f"12 {MARK}"),
    "text in the drawing": ("</desc>", "</desc> 12"),
    "a turned group": ('<g id="mark"', '<g transform="translate(1)" id="mark"'),
    "a turned path": ("<path d", '<path transform="scale(2)" d'),
    "a styled path": ("<path d", '<path style="stroke-width:9" d'),
    "a path of another width": ("<path d", '<path stroke-width="9" d'),
    "a classed group": ('<g id="mark"', '<g class="a" id="mark"'),
    "a hidden group": ('<g id="mark"', '<g display="none" id="mark"'),
    "a wrong width": ('stroke-width="0.2"', 'stroke-width="0.25"'),
    "a wrong grey": ('stroke="#000000" stroke-width="0.2"', 'stroke="#808080" stroke-width="0.2"'),
    "a dash": ('stroke-width="0.35"', 'stroke-width="0.35" stroke-dasharray="3,1"'),
    "a wrong fill": ("#e6e6e6", "#000000"),
    "even and odd": ("nonzero", "evenodd"),
    "no rule": ('fill-rule="nonzero"', ""),
    "an edged fill": ('stroke="none"', 'stroke="#000000"'),
    "a pen that is none": ('id="help"', 'id="extra"'),
    "another pen's name": ('id="help"', 'id="register"'),
    "no name": ('<g id="mark"', "<g"),
    "a name twice": ('id="mark-2"', 'id="mark"'),
    "a count left out": ('id="mark-2"', 'id="mark-3"'),
    "a count that is none": ('id="mark-2"', 'id="mark-two"'),
    "a run of nothing": (
        '<g id="help"',
        '<g id="cut-2" fill="none" stroke="#000000" stroke-width="0.25" stroke-dasharray="3,1.5"/><g id="help"',
    ),
    "no path": ("M12.7 5 L12.7 10", ""),
    "no commands": ('d="M12.7 5 L12.7 10"', ""),
    "a move alone": ("M12.7 5 L12.7 10", "M12.7 5"),
    "a relative line": ("M12.7 5 L12.7 10", "M12.7 5 l0 5"),
    "a level line": ("M12.7 5 L12.7 10", "M12.7 5 H20"),
    "an upright line": ("M12.7 5 L12.7 10", "M12.7 5 V10"),
    "a curve": ("M12.7 5 L12.7 10", "M12.7 5 C1 1 2 2 3 3"),
    "a bent curve": ("M12.7 5 L12.7 10", "M12.7 5 Q1 1 2 2"),
    "a line from nowhere": ("M12.7 5 L12.7 10", "L12.7 10"),
    "two lines in one path": ("M12.7 5 L12.7 10", "M12.7 5 L12.7 10 M1 1 L2 2"),
    "a line after the closing": ("M12.7 5 L12.7 10", "M12.7 5 L12.7 10 Z L1 1"),
    "a number too few": ("M12.7 5 L12.7 10", "M12.7 5 L12.7"),
    "a number too many": ("M12.7 5 L12.7 10", "M12.7 5 L12.7 10 11"),
    "an exponent": ("M12.7 5 L12.7 10", "M1.27e1 5 L12.7 10"),
    "no number": ("M12.7 5 L12.7 10", "Mnan 5 L12.7 10"),
    "a comma": ("M12.7 5 L12.7 10", "M12.7,5 L12.7 10"),
    "a unit": ("M12.7 5 L12.7 10", "M12.7mm 5 L12.7 10"),
    "two spaces": ("M12.7 5 L12.7 10", "M12.7  5 L12.7 10"),
    "a space at the end": ("M12.7 5 L12.7 10", "M12.7 5 L12.7 10 "),
    "a large number": ("M12.7 5 L12.7 10", "M12.7 5 L12.7 123456789"),
    "other figures": ("M12.7 5 L12.7 10", "M12.7 5 L12.7 \u0661\u0660"),  # arabic-indic 10
    "an open fill": ("L40 25 L40 15 Z", "L40 25 L40 15"),
    "an oval arc": ("A2 2 0 0 1 57", "A2 3 0 0 1 57"),
    "a turned arc": ("A2 2 0 0 1 57", "A2 2 9 0 1 57"),
    "the long way round": ("A2 2 0 0 1 57", "A2 2 0 1 1 57"),
    "an arc too short": ("A2 2 0 0 1 57", "A0.5 0.5 0 0 1 57"),
    "an arc of 100 degrees": ("A2 2 0 0 1 57", "A0.99912 0.99912 0 0 1 57"),
    "an arc of no radius": ("A2 2 0 0 1 57", "A0 0 0 0 1 57"),
    "an arc of negative radius": ("A2 2 0 0 1 57", "A-2 -2 0 0 1 57"),
    "an arc that goes nowhere": ("57.41421 4.58579", "56 4"),
}


def test_retyping_as_such_is_not_refused() -> None:
    """The same file with another number is read: what follows is refused for its change alone."""
    assert (
        read(TYPED.replace("M12.7 5", "M12.8 5").encode()).sheets[0].shapes[2]
        != read(TYPED.encode()).sheets[0].shapes[2]
    )
    assert read(TYPED.replace("\n", "").replace("?>", "?>\n").encode()) == read(TYPED.encode())


@pytest.mark.parametrize("change", CHANGES)
def test_what_is_not_ours_is_refused(change: str) -> None:
    """Whatever our writer never makes ends the reading, with one sentence."""
    refuses(read, TYPED, *CHANGES[change])


def test_entities_are_not_unfolded() -> None:
    """The bomb that grows tenfold at each of its steps is refused before it is parsed."""
    steps = "".join(f'<!ENTITY a{k + 1} "{f"&a{k};" * 10}">' for k in range(12))
    bomb = TYPED.replace("<svg ", f'<!DOCTYPE svg [<!ENTITY a0 "ha">{steps}]>\n<svg ').replace("Typed by hand", "&a12;")
    with pytest.raises(ReadError, match="document type"):
        read(bomb.encode())


def test_a_file_beyond_all_bounds_is_refused_unread() -> None:
    """Sixteen megabytes are the limit."""
    with pytest.raises(ReadError, match="16000000"):
        read(bytes(16_000_001))


def test_the_reader_needs_no_writing_library() -> None:
    """Reading brings in neither svgwrite nor any writer, so the two cannot agree on a common mistake."""
    code = (
        "import sys; from pathlib import Path; from templates_gen.readers import svg;"
        "svg.read(Path(sys.argv[1]).read_bytes());"
        "print([name for name in sys.modules if 'svgwrite' in name or 'writers' in name])"
    )
    command = [sys.executable, "-c", code, str(ROOT / "tests" / "hand_typed" / "plate.svg")]
    ran = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=True)
    assert ran.stdout.strip() == "[]"


# --- what the writer makes


def test_a_file_measures_one_millimetre_in_a_unit() -> None:
    """Width and height are in mm and the view box repeats them, so that no importer has to guess."""
    root = parsed(write([Sheet("a", 209.9, 12.25, ())], ABOUT))
    assert (root.attrib["width"], root.attrib["height"]) == ("209.9mm", "12.25mm")
    assert root.attrib["viewBox"] == "0 0 209.9 12.25"


def test_a_file_holds_groups_and_paths_only() -> None:
    """No style, no transformation, no word, no definition: what cutters and editors all understand."""
    shapes = [line(P(1, 1), P(2, 2), pen) for pen in Pen if not pen.ink.fills]
    data = write([drawn(*shapes, circle(P(9, 9), 3, Pen.CUT), filled((P(0, 0), P(1, 0), P(1, 1)), Pen.TEXT))], ABOUT)
    root = parsed(data)
    assert {part.tag.partition("}")[2] for part in root.iter()} == {"svg", "title", "desc", "g", "path"}
    attributes = {name for part in root.iter() for name in part.attrib} - set(root.keys())
    looks = {"fill", "fill-rule", "stroke", "stroke-width", "stroke-dasharray"}
    assert attributes == {"id", "d"} | looks
    assert set("".join(part.attrib["d"] for part in root.iter("{http://www.w3.org/2000/svg}path"))) <= set(
        "MLAZlm -.0123456789"
    )


def test_each_run_of_a_pen_is_a_group_with_a_name_of_its_own() -> None:
    """A pen that comes back later has its group counted; no name stands twice."""
    runs = (Pen.MARK, Pen.MARK, Pen.CUT, Pen.MARK, Pen.CUT)
    data = write([drawn(*(line(P(1, 1 + k), P(2, 2 + k), pen) for k, pen in enumerate(runs)))], ABOUT)
    groups = [part for part in parsed(data) if part.tag.endswith("}g")]
    assert [(group.get("id"), len(group)) for group in groups] == [("mark", 2), ("cut", 1), ("mark-2", 1), ("cut-2", 1)]


def test_circles_stay_circular_arcs() -> None:
    """A circle is eight arcs of its radius, a small one four, not a curve that comes near."""
    data = write([drawn(circle(P(30, 20), 7.5, Pen.CUT), circle(P(30, 20), 3.5, Pen.CUT))], ABOUT).decode()
    assert (data.count("A7.5 7.5 0 0 "), data.count("A3.5 3.5 0 0 ")) == (8, 4)


def test_words_are_refused() -> None:
    """Cutters lack the font: words must have become outlines before."""
    with pytest.raises(LayoutError, match="outlines"):
        write([drawn(Text(P(1, 1), 4, "a"))], ABOUT)


def test_two_sheets_are_refused() -> None:
    """A file is one sheet."""
    with pytest.raises(LayoutError, match="one sheet"):
        write([drawn(), drawn()], ABOUT)


@pytest.mark.parametrize("turned", [1, -1])
def test_an_arc_through_any_third_point_is_the_same_circle(turned: int) -> None:
    """The third point need not be the middle: what comes back lies on the circle of the three."""
    at = [P(20 + 10 * math.cos(math.radians(a)), 20 + 10 * math.sin(math.radians(a))) for a in (10, 15, 50)][::turned]
    (found,) = read(write([drawn(Curve(at[0], (Step(at[2], at[1]),), Pen.MARK))], ABOUT)).sheets[0].shapes
    assert isinstance(found, Curve)
    wanted = (20 + 10 * math.cos(math.radians(30)), 20 + 10 * math.sin(math.radians(30)))
    assert found.steps[0].through == pytest.approx(wanted, abs=0.001)


# --- resvg, from outside


def test_resvg_shows_a_line_at_its_pixels() -> None:
    """Rendered at ten pixels a millimetre, the ink's centre is where the lines were drawn, y upward."""
    shapes = (line(P(33.3, 10), P(33.3, 20), Pen.EDGE), line(P(20, 34.4), P(40, 34.4), Pen.EDGE))
    pixels = svg_pixels(write([drawn(*shapes)], ABOUT))
    assert pixels.shape == (400, 600)
    assert inked(pixels, 30, 37, 5, 25) == pytest.approx((33.3, 15), abs=0.02)
    assert inked(pixels, 15, 45, 30, 38) == pytest.approx((30, 34.4), abs=0.02)


@pytest.mark.parametrize(("begin", "end"), [(0, 90), (90, 0), (200, 320)])
def test_resvg_bends_arcs_the_right_way(begin: float, end: float) -> None:
    """The ink of an arc lies at its radius all along, on the side where it was drawn."""
    start = P(30 + 12 * math.cos(math.radians(begin)), 20 + 12 * math.sin(math.radians(begin)))
    pixels = svg_pixels(write([drawn(Curve(start, arc(P(30, 20), 12, begin, end), Pen.EDGE))], ABOUT))
    for share in (0.1, 0.3, 0.5, 0.7, 0.9):
        angle = math.radians(begin + share * (end - begin))
        x, y = 30 + 12 * math.cos(angle), 20 + 12 * math.sin(angle)
        assert pixels[int((40 - y) * 10), int(x * 10)] < 60
        assert pixels[int((40 - 20 - 0.9 * (y - 20)) * 10), int((30 + 0.9 * (x - 30)) * 10)] == 255


def test_resvg_fills_holes_by_their_turn() -> None:
    """A contour that turns back leaves paper; one that turns the same way does not (the non-zero rule)."""
    outer = polygon((P(10, 5), P(40, 5), P(40, 35), P(10, 35)), Pen.SOLID)
    back = polygon((P(20, 15), P(20, 25), P(30, 25), P(30, 15)), Pen.SOLID)
    same = polygon((P(20, 15), P(30, 15), P(30, 25), P(20, 25)), Pen.SOLID)
    for inner, value in ((back, 255), (same, 0)):
        pixels = svg_pixels(write([drawn(Region((outer, inner), Pen.SOLID))], ABOUT))
        assert pixels[200, 250] == value
        assert pixels[300, 150] == 0


def test_the_file_names_its_language() -> None:
    """On its root, as XML does it (XML 1.0, 2.12), by the kit in the inputs."""
    for inputs, tag in (("{}", "en-GB"), ('{"kit": {"paper": {"language": "fr"}}}', "fr")):
        data = write([drawn()], About("Loom", inputs))
        assert parsed(data).get("{http://www.w3.org/XML/1998/namespace}lang") == tag
        assert read(data).about.inputs == inputs


def test_a_file_in_another_language_than_its_kit_is_refused() -> None:
    """One that names none is English."""
    data = write([drawn()], About("Loom", '{"kit": {"paper": {"language": "fr"}}}'))
    for wrong, found in ((b' xml:lang="es"', "es"), (b"", "en")):
        with pytest.raises(ReadError, match=f"its language is '{found}', but its sheet is for a kit in fr"):
            read(data.replace(b' xml:lang="fr"', wrong))
