"""DXF files against one typed by hand and the readings of ezdxf and GDAL; and what the reader must refuse."""

from __future__ import annotations

import io
import math
import random
from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise
from pathlib import Path

import dxf_skeleton
import ezdxf
import pyogrio
import pytest
import shapely
from cut_plans import file_of, stock_with
from cut_plates import ABOUT, OPERATIONS, RING, SCORES, assert_typed_by_hand, plate
from damage import refuses
from dxf_by_ezdxf import exported
from ezdxf import path as ezdxf_path
from ezdxf.document import Drawing
from kits import plan_of

from layout.cutting.products import cut_suiting
from layout.cutting.stock.stock import Operation
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point
from templates_gen.files.formats import FORMATS, About, ReadError
from templates_gen.inputs.stock_file import built_in
from templates_gen.readers.dxf_layers import _numbered
from templates_gen.writers.dxf_layers import COLOURS as NUMBERED
from templates_gen.writers.dxf_layers import numbers

read, write = FORMATS["dxf"].read, FORMATS["dxf"].write
TYPED = (Path(__file__).parents[2] / "hand_typed" / "plate.dxf").read_text(encoding="utf-8")


def opened(data: bytes) -> Drawing:
    """A file as ezdxf has it."""
    return ezdxf.read(io.StringIO(data.decode()))


# --- typed by hand


def test_a_file_typed_by_hand_is_read_in_millimetres() -> None:
    """Limits, layers, straight and bent steps are what was typed; 0.1989 is tan(45°/4), here with r = 4 mm."""
    document = read(TYPED.encode())
    (sheet,) = document.sheets
    operations = document.about.operations
    assert document.about == About("Typed by hand", "{}", operations)
    assert operations is not None
    assert operations["cut"] == Operation("#ff0000", 0.01)
    assert (sheet.name, sheet.width, sheet.height) == ("plate", 110.5, 60)
    assert_typed_by_hand(sheet.shapes, 1e-6)


# --- what the reader refuses

SCORED = TYPED[TYPED.index("0\nLAYER\n5\n30\n") : TYPED.index("0\nLAYER\n5\n31\n")]
"""The layer of scored lines."""

OBJECTS = TYPED[TYPED.index("0\nSECTION\n2\nOBJECTS\n") : TYPED.index("0\nEOF\n")]

CHANGES = {
    "unit inch": ("$INSUNITS\n70\n4", "$INSUNITS\n70\n1"),
    "no unit": ("$INSUNITS\n70\n4", "$INSUNITS\n70\n0"),
    "unit left out": ("9\n$INSUNITS\n70\n4\n", ""),
    "unit twice": ("9\n$INSUNITS\n70\n4\n", "9\n$INSUNITS\n70\n4\n9\n$INSUNITS\n70\n4\n"),
    "imperial": ("$MEASUREMENT\n70\n1", "$MEASUREMENT\n70\n0"),
    "another version": ("AC1024", "AC1009"),
    "other limits": ("$LIMMIN\n10\n0.0", "$LIMMIN\n10\n1.0"),
    "no limits": ("9\n$LIMMAX\n10\n110.5\n20\n60.0\n", ""),
    "a layer too few": (SCORED, ""),
    "a layer too many": (SCORED, SCORED + SCORED.replace("score", "mark")),
    "a layer frozen": ("2\ncut\n70\n0", "2\ncut\n70\n1"),
    "a layer switched off": ("62\n1\n420", "62\n-1\n420"),
    "a wrong colour": ("420\n16711680", "420\n16711681"),
    "a wrong numbered colour": ("62\n1\n420", "62\n5\n420"),
    "no colour": ("420\n16711680\n", ""),
    "a wrong weight": ("370\n0", "370\n5"),
    "a dashed layer": ("16711680\n6\nContinuous", "16711680\n6\nDASHED"),
    "a layer that is not printed": ("16711680\n", "16711680\n290\n0\n"),
    "another table": ('"cut": ["#ff0000"', '"cut": ["#ee0000"'),
    "another width in the table": ('"cut": ["#ff0000", 0.01]', '"cut": ["#ff0000", 0.1]'),
    "two operations of one colour": ('"score": ["#00ff00"', '"score": ["#ff0000"'),
    "an operation too few": ('"cut": ["#ff0000", 0.01], ', ""),
    "no operations": ('"operations"', '"operation"'),
    "another layer": ("8\ncut", "8\nmark"),
    "the layer of nothing": ("8\ncut", "8\n0"),
    "a colour of its own": ("8\ncut\n", "8\ncut\n62\n5\n"),
    "on the paper": ("8\ncut\n", "8\ncut\n67\n1\n"),
    "turned up": ("AcDbPolyline\n90\n5", "AcDbPolyline\n210\n0.0\n220\n1.0\n230\n0.0\n90\n5"),
    "wide": ("70\n1\n10\n0.0", "70\n1\n43\n0.2\n10\n0.0"),
    "a raised line": ("70\n1\n10\n0.0", "70\n1\n38\n2.0\n10\n0.0"),
    "a scaled entity": ("8\ncut\n", "8\ncut\n48\n0.97\n"),
    "another entity": ("LWPOLYLINE\n5\n34", "LINE\n5\n34"),
    "an insert": ("0\nLWPOLYLINE\n5\n34", "0\nINSERT\n5\nB1\n2\nblock\n0\nLWPOLYLINE\n5\n34"),
    "words": ("0\nLWPOLYLINE\n5\n34", "0\nTEXT\n5\nB1\n1\nwords\n0\nLWPOLYLINE\n5\n34"),
    "a block that draws": ("BLOCKS\n", "BLOCKS\n0\nBLOCK\n0\nLINE\n0\nENDBLK\n"),
    "a count that is wrong": ("AcDbPolyline\n90\n5", "AcDbPolyline\n90\n4"),
    "a flag that is none": ("90\n5\n70\n1", "90\n5\n70\n129"),
    "a bulge on an open line": ("10\n5.0\n20\n35.0\n", "10\n5.0\n20\n35.0\n42\n0.1\n"),
    "a bulge of 100 degrees": ("0.198912367379658", "0.466307658154999"),
    "a width at a corner": ("10\n46.0\n20\n0.0\n", "10\n46.0\n20\n0.0\n40\n0.1\n"),
    "half a corner": ("10\n46.0\n20\n0.0\n", "10\n46.0\n"),
    "no number": ("10\n46.0", "10\nnan"),
    "endless": ("10\n46.0", "10\ninf"),
    "a large number": ("10\n46.0", "10\n123456789.0"),
    "a comma": ("10\n46.0", "10\n46,0"),
    "an open area": ("90\n3\n70\n1", "90\n3\n70\n0"),
    "an area too many": ("areas: 1", "areas: 1 1"),
    "an area too large": ("areas: 1", "areas: 2"),
    "no area": ("areas: 1", "areas:"),
    "no areas": ("999\nareas: 1\n", ""),
    "no inputs": ('{"inputs": "{}", ', "{"),
    "a comment among lines": ("8\ncut", "999\nnote\n8\ncut"),
    "another section": ("OBJECTS", "THUMBNAILIMAGE"),
    "a section too few": (OBJECTS, ""),
    "no end": ("0\nEOF\n", ""),
    "half a pair": ("0\nEOF\n", "0\n"),
    "something after the end": ("0\nEOF\n", "0\nEOF\n0\nEOF\n"),
    "a code that is none": ("8\ncut", "  x\ncut"),
    "half a unit's value": ("$INSUNITS\n70\n4", "$INSUNITS\n70\n4.0"),
}


def test_retyping_as_such_is_not_refused() -> None:
    """The same file with another number is read: what follows is refused for its change alone."""
    assert read(TYPED.replace("12.7", "12.8").encode()) != read(TYPED.encode())


@pytest.mark.parametrize("change", CHANGES)
def test_what_is_not_ours_is_refused(change: str) -> None:
    """Whatever our writer never makes ends the reading, with one sentence."""
    refuses(read, TYPED, *CHANGES[change])


def test_a_file_beyond_all_bounds_is_refused_unread() -> None:
    """Sixteen megabytes are the limit."""
    with pytest.raises(ReadError, match="16000000"):
        read(bytes(16_000_001))


# --- ezdxf, from outside our reader


def test_the_skeleton_is_what_ezdxf_writes() -> None:
    """What the reader wants to see round the outlines is what a version of ezdxf made, to the byte."""
    assert dxf_skeleton.FILE.read_text(encoding="utf-8") == dxf_skeleton.made()


@pytest.mark.parametrize("name", ["plate", *cut_suiting(plan_of())])
def test_ezdxf_writes_the_same_file(name: str) -> None:
    """Our own lines are, to the letter, those that ezdxf writes for the same drawing behind our comments."""
    sheet = plate() if name == "plate" else file_of(name, plan_of(), stock_with())[0]
    data = write([sheet], ABOUT)
    layers = {layer.dxf.name: layer.dxf.color for layer in opened(data).layers}
    text = data.decode()
    assert text[text.index("0\nSECTION") :] == exported(sheet, OPERATIONS, layers)


def test_colours_are_those_of_ezdxf() -> None:
    """The table of numbered colours is that of ezdxf, plain ones but 7 and four depths of the hues, each once."""
    assert {number: tuple(ezdxf.colors.aci2rgb(number)) for number in NUMBERED} == NUMBERED
    assert len(set(NUMBERED.values())) == len(NUMBERED) == 8 + 4 * 24 - 6
    assert not {0, 7, 256} & set(NUMBERED)


def test_a_rounding_below_nought_is_nought() -> None:
    """What rounds to nought is written "0.0" from either side."""
    sheet = plate()
    nudged = replace(sheet, shapes=tuple(Placing(0, -1e-9, 1e-9).shapes(sheet.shapes)))
    assert write([nudged], ABOUT) == write([sheet], ABOUT)


def test_ezdxf_finds_nothing_to_mend() -> None:
    """Its audit tells no error and repairs nothing."""
    auditor = opened(write([plate()], ABOUT)).audit()
    assert (auditor.errors, auditor.fixes) == ([], [])


def test_the_unit_is_the_millimetre() -> None:
    """R2010, $INSUNITS 4, metric, and limits as large as the sheet."""
    drawing = opened(write([plate()], ABOUT))
    assert (drawing.acad_release, drawing.units, drawing.header["$MEASUREMENT"]) == ("R2010", 4, 1)
    assert drawing.header["$LIMMAX"] == (120, 120)
    assert drawing.header["$EXTMAX"] == (120, 120, 0)


def test_ezdxf_finds_every_outline_where_it_was_drawn() -> None:
    """Layers, closings, corners, and the middles of arcs as its own path module has them, to a micrometre."""
    found = list(opened(write([plate()], ABOUT)).modelspace())
    drawn = [path for shape in plate().shapes for path in (shape.contours if shape is RING else (shape,))]
    assert len(found) == len(drawn) == 2 + 3 + 3 + 7
    layers = {Pen.ENGRAVE: "engrave", Pen.SCORE: "score", Pen.THROUGH: "cut", Pen.REFERENCE: "reference"}
    for entity, path in zip(found, drawn, strict=True):
        assert isinstance(path, Curve)
        assert (entity.dxf.layer, entity.dxf.color) == (layers[path.pen], 256)  # 256: by layer
        assert entity.closed == path.closed
        outside = [Point(point.x, point.y) for point in ezdxf_path.make_path(entity).flattening(0.00005)]
        assert all(min(math.dist(at, other) for other in outside) < 0.001 for at in _corners(path))
        for point in (*path.points(), *(step.through for step in path.steps if step.through)):
            assert min(_off(point, a, b) for a, b in pairwise(outside)) < 0.001


def _corners(path: Curve) -> list[Point]:
    """Where it begins, and the ends of its straight steps."""
    return [path.start, *(step.end for step in path.steps if not step.through)]


def _off(point: Point, one: Point, other: Point) -> float:
    """How far a point lies off a short straight piece."""
    dx, dy = other.x - one.x, other.y - one.y
    share = ((point.x - one.x) * dx + (point.y - one.y) * dy) / (dx * dx + dy * dy or 1)
    share = min(max(share, 0.0), 1.0)
    return math.dist(point, (one.x + share * dx, one.y + share * dy))


def test_ezdxf_measures_what_was_drawn() -> None:
    """Length round a slot of 20 mm between half circles of 3 mm, and round the plate of 100 x 40 mm with r = 5 mm."""
    cuts = [each for each in opened(write([plate()], ABOUT)).modelspace() if each.dxf.layer == "cut"]
    lengths = [
        sum(one.distance(other) for one, other in pairwise(points))
        for points in (list(ezdxf_path.make_path(each).flattening(0.0001)) for each in cuts)
    ]
    assert lengths == pytest.approx([40 + 6 * math.pi, 8 * math.pi, 2 * 90 + 2 * 30 + 10 * math.pi], abs=0.01)


def test_layers_have_the_colours_and_widths_of_the_table() -> None:
    """True colours to the letter; the nearest line weight of the format; nothing hidden."""
    layers = opened(write([plate()], ABOUT)).layers
    for name, shown in OPERATIONS.items():
        layer = layers.get(name)
        assert layer.rgb is not None
        assert "#{:02x}{:02x}{:02x}".format(*layer.rgb) == shown.colour
        assert abs(layer.dxf.lineweight / 100 - shown.width) <= 0.02
        assert layer.is_on()
        assert not layer.is_frozen()


COLOURS = ["#000000", "#ffffff", "#ff7f00", "#00ffff", "#0000ff", "#123456", "#7f7f7f", "#d0c0b0"]


@pytest.mark.parametrize("colour", COLOURS)
def test_any_colour_has_a_numbered_one_that_both_sides_find(colour: str) -> None:
    """The writer takes it from ezdxf's table, the reader from the rule of the wheel."""
    table = OPERATIONS | {"cut": Operation(colour, 0.33)}
    assert read(write([plate()], ABOUT._replace(operations=table))).about.operations == table


SETS = (
    tuple(shown.colour for shown in built_in().operations.values()),
    ("#ff0000", "#fe0000", "#ff0100", "#ff0001"),
    ("#000000", "#010101", "#000001", "#010000"),
    ("#808080", "#818181", "#7f7f7f", "#9a9a9a"),
    ("#2f4b7c", "#4f8f5b", "#b5403a", "#9a9a9a"),
)


@pytest.mark.parametrize("colours", SETS, ids=" ".join)
def test_no_two_operations_have_one_colour_number(colours: Sequence[str]) -> None:
    """A cutter that goes by numbers, or by what a number looks like, tells them apart, whatever the stock's colours."""
    table = {name: Operation(colour, 0.1) for name, colour in zip(OPERATIONS, colours, strict=True)}
    data = write([plate()], ABOUT._replace(operations=table))
    numbers = [opened(data).layers.get(name).dxf.color for name in table]
    assert len({ezdxf.colors.aci2rgb(number) for number in numbers}) == len(table)
    assert not {0, 7, 256} & set(numbers)  # by block, whatever is not the ground, by layer
    assert read(data).about.operations == table


def test_the_numbers_of_any_colours_differ_and_are_found_by_both_sides() -> None:
    """Two hundred tables of colours, half of them near each other."""
    dice = random.Random(3)  # noqa: S311 - the same colours in every run
    for k in range(200):
        base = dice.randrange(1 << 24)
        spread = 1 << (24 if k % 2 else 4)
        colours = {f"#{(base + dice.randrange(spread)) % (1 << 24):06x}": None for _ in range(9)}
        table = {name: Operation(colour, 0.1) for name, colour in zip(OPERATIONS, colours, strict=False)}
        written = numbers([shown.colour for shown in table.values()])
        assert dict(zip(table, written, strict=True)) == _numbered(table)
        assert len({ezdxf.colors.aci2rgb(number) for number in written}) == len(table)


def test_the_comments_leave_ezdxf_alone() -> None:
    """What the file carries stands in lines of at most 255 letters that no program takes for drawing."""
    data = write([plate()], ABOUT._replace(inputs="織" * 5000))
    lines = data.decode().split("\n")
    assert lines[:2] == ["999", ABOUT.title]
    assert max(map(len, lines)) <= 255
    assert opened(data).audit().errors == []
    assert read(data).about.inputs == "織" * 5000


def test_the_order_of_work_is_the_order_of_the_file() -> None:
    """Engraved, scored, cut with the slot and the hole before the outline, and the reference last."""
    order = [each.dxf.layer for each in opened(write([plate()], ABOUT)).modelspace()]
    assert order == ["engrave"] * 2 + ["score"] * len(SCORES) + ["cut"] * 3 + ["reference"] * 7
    corners = [len(each) for each in opened(write([plate()], ABOUT)).modelspace() if each.dxf.layer == "cut"]
    assert corners == [6, 8, 12]  # of the slot, the hole and the outline


# --- GDAL, which shares no code with ezdxf


def seen_by_gdal(folder: Path, data: bytes) -> list[tuple[str, shapely.Geometry]]:
    """Every line of a file with its layer, as GDAL's DXF driver has it, arcs in steps of a quarter of a degree."""
    file = folder / "plate.dxf"
    file.write_bytes(data)
    pyogrio.set_gdal_config_options({"OGR_ARC_STEPSIZE": 0.25})
    meta, _, lines, fields = pyogrio.raw.read(file)
    named = fields[list(meta["fields"]).index("Layer")]
    return list(zip(named, shapely.from_wkb(lines), strict=True))


def test_gdal_finds_every_outline_where_it_was_drawn(tmp_path: Path) -> None:
    """Layers, order, closings, corners and the middles of arcs, to a micrometre."""
    found = seen_by_gdal(tmp_path, write([plate()], ABOUT))
    layers = {Pen.ENGRAVE: "engrave", Pen.SCORE: "score", Pen.THROUGH: "cut", Pen.REFERENCE: "reference"}
    drawn = [path for shape in plate().shapes for path in (shape.contours if shape is RING else (shape,))]
    assert [layer for layer, _ in found] == [layers[path.pen] for path in drawn]
    for (_, seen), path in zip(found, drawn, strict=True):
        assert isinstance(path, Curve)
        assert shapely.is_closed(seen) == path.closed
        places = [*path.points(), *(step.through for step in path.steps if step.through)]
        assert max(seen.distance(shapely.Point(place)) for place in places) < 0.001


def test_gdal_measures_what_was_drawn(tmp_path: Path) -> None:
    """The slot of 20 mm between half circles of 3 mm, the hole of 4 mm, the plate of 100 x 40 mm with r = 5 mm."""
    cuts = [seen for layer, seen in seen_by_gdal(tmp_path, write([plate()], ABOUT)) if layer == "cut"]
    areas = [shapely.Polygon(seen.coords).area for seen in cuts]
    assert areas == pytest.approx([120 + 9 * math.pi, 16 * math.pi, 4000 - (100 - 25 * math.pi)], abs=0.01)
    assert [seen.bounds for seen in cuts] == [
        pytest.approx((17, 10, 43, 16), abs=1e-6),
        pytest.approx((56, 9, 64, 17), abs=1e-6),
        pytest.approx((0, 0, 100, 40), abs=1e-6),
    ]
