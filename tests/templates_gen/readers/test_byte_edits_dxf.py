"""DXF files changed by a few bytes, and forged: refused, or read as ezdxf and GDAL show them."""

from __future__ import annotations

import io
import math
import re
from collections.abc import Callable, Iterator, Sequence
from pathlib import Path

import ezdxf
import pyogrio
import pytest
import shapely
from byte_edits import edits, how_many, read_or_refused
from cut_plans import file_of, stock_with
from cut_plates import ABOUT, plate
from ezdxf.document import Drawing
from kits import plan_of

from layout.drawing.shapes import Curve, Region, Text
from layout.drawing.sheet import Sheet
from templates_gen.document import OPERATION_OF
from templates_gen.files.formats import FORMATS

read, write = FORMATS["dxf"].read, FORMATS["dxf"].write
SMALL = write([plate()], ABOUT)
STICK = write([file_of("shed-stick", plan_of(), stock_with())[0]], ABOUT)

Seen = tuple[str, bool, list[tuple[float, float]]]
"""The layer of an outline, whether it closes, and its points: every corner, and the middle of every arc."""


def outlines(sheet: Sheet) -> Iterator[Curve]:
    """All lines and contours in their order."""
    for shape in sheet.shapes:
        assert not isinstance(shape, Text)
        yield from shape.contours if isinstance(shape, Region) else (shape,)


def ours(sheet: Sheet) -> list[Seen]:
    """What our reader read; the point where an outline closes is not said twice."""
    found = []
    for path in outlines(sheet):
        points = [
            path.start,
            *(point for end, through in path.steps for point in ([through] if through else []) + [end]),
        ]
        if path.closed and path.steps[-1].through and points[0] == points[-1]:
            points.pop()  # it closes along an arc
        found.append((OPERATION_OF[path.pen], path.closed, points))
    return found


def by_ezdxf(drawing: Drawing) -> list[Seen]:
    """What ezdxf shows in the model space."""
    found: list[Seen] = []
    for entity in drawing.modelspace():
        assert isinstance(entity, ezdxf.entities.LWPolyline)
        corners = list(entity.get_points("xyb"))
        after = corners[1:] + (corners[:1] if entity.closed else [])
        points = []
        for k, (x, y, bulge) in enumerate(corners):
            points.append((x, y))
            if bulge and k < len(after):
                points += _on_arc((x, y), bulge, (after[k][0], after[k][1]))
        found.append((entity.dxf.layer, entity.closed, points))
    return found


def _on_arc(one: tuple[float, float], bulge: float, other: tuple[float, float]) -> list[tuple[float, float]]:
    """The middle of an arc, of one of more than 45 degrees those of its halves as well, each with half its angle."""
    middle, half = _middle(one, bulge, other), math.tan(math.atan(bulge) / 2)
    if abs(bulge) / 2 * math.dist(one, other) <= math.tan(math.pi / 16) / 2 * math.dist(one, other) + 0.001:
        return [middle]
    return [_middle(one, half, middle), middle, _middle(middle, half, other)]


def _middle(one: tuple[float, float], bulge: float, other: tuple[float, float]) -> tuple[float, float]:
    """The rise of an arc is its bulge times half its chord, to the right of the way (DXF reference, group code 42)."""
    (x, y), (u, v) = one, other
    return (x + u) / 2 + bulge * (v - y) / 2, (y + v) / 2 - bulge * (u - x) / 2


def assert_alike(one: Sequence[Seen], other: Sequence[Seen], what: str) -> None:
    """Order, layers, closings and every point to a nanometre."""
    assert [seen[:2] for seen in one] == [seen[:2] for seen in other], what
    for (_, _, points), (_, _, wanted) in zip(one, other, strict=True):
        assert len(points) == len(wanted), what
        assert all(math.dist(*pair) < 1e-6 * (1 + abs(pair[0][0])) for pair in zip(points, wanted, strict=True)), what


def assert_gdal_sees(folder: Path, data: bytes, sheet: Sheet, what: str) -> None:
    """GDAL shows the same outlines on the same layers, through the same points to a micrometre."""
    file = folder / "edited.dxf"
    file.write_bytes(data)
    pyogrio.set_gdal_config_options({"OGR_ARC_STEPSIZE": 0.25})
    meta, _, lines, fields = pyogrio.raw.read(file)
    layers = fields[list(meta["fields"]).index("Layer")]
    wanted = ours(sheet)
    assert list(layers) == [layer for layer, _, _ in wanted], what
    for line, (_, closed, points) in zip(shapely.from_wkb(lines), wanted, strict=True):
        assert shapely.is_closed(line) == closed, what
        within = 1e-3 * (1 + max(map(abs, points[0])))
        assert all(line.distance(shapely.Point(point)) < within for point in points), what


def layers_of(drawing: Drawing) -> list[tuple[object, ...]]:
    """How every layer looks, and the unit."""
    layers = [
        (each.dxf.name, each.rgb, each.dxf.lineweight, each.dxf.linetype, each.is_on()) for each in drawing.layers
    ]
    return [*layers, (drawing.units, drawing.header.get("$LTSCALE", 1.0))]


@pytest.mark.parametrize(("whole", "few"), [(SMALL, 700), (STICK, 300)], ids=["plate", "stick"])
def test_what_is_still_read_is_what_others_show(whole: bytes, few: int, tmp_path: Path) -> None:
    """Random edits: refused with one sentence, or the same for ezdxf and GDAL; most are refused, some are read."""
    tried, refused = how_many(few, 1500), 0
    looks = layers_of(opened(whole))
    for edit in edits(whole, tried):
        document = read_or_refused(read, edit.data)
        if document is None:
            refused += 1
            continue
        drawing = opened(edit.data)
        assert_alike(by_ezdxf(drawing), ours(document.sheets[0]), edit.what)
        assert_gdal_sees(tmp_path, edit.data, document.sheets[0], edit.what)
        operations = document.about.operations
        assert operations is not None
        if operations == ABOUT.operations:
            assert layers_of(drawing) == looks, edit.what
    assert tried / 2 < refused < tried


def opened(data: bytes) -> Drawing:
    """A file as ezdxf has it, read as a file on disk is: any of the usual ends of a line ends one."""
    return ezdxf.read(io.StringIO(data.decode(), newline=None))


def test_what_was_not_changed_is_what_others_show(tmp_path: Path) -> None:
    """The comparison itself holds for whole files."""
    for whole in (SMALL, STICK):
        sheet = read(whole).sheets[0]
        assert_alike(by_ezdxf(opened(whole)), ours(sheet), "whole")
        assert_gdal_sees(tmp_path, whole, sheet, "whole")


def each(pattern: bytes, new: bytes, count: int = 0) -> Callable[[bytes], bytes]:
    """Puts `new` for what matches, everywhere or `count` times."""

    def change(data: bytes) -> bytes:
        return re.sub(pattern, new, data, count=count)

    return change


def swapped(one: bytes, other: bytes) -> Callable[[bytes], bytes]:
    """Exchanges two pieces of a file."""

    def change(data: bytes) -> bytes:
        return re.sub(b"|".join(map(re.escape, (one, other))), lambda m: other if m[0] == one else one, data)

    return change


def setting(value: bytes) -> Callable[[bytes], bytes]:
    """Puts one setting more into the header: its name, and codes and values in turn."""
    lines = b"\n".join(value.split(b"|"))
    return each(rb"(?<=\n)(?=9\n\$INSUNITS\n)", b"9\n" + lines + b"\n")


FORGERIES: dict[str, Callable[[bytes], bytes]] = {
    "all outlines in paper space": each(rb"330\n17(\n100\nAcDbEntity\n8\n[a-z])", rb"330\n1B\1"),
    "one outline in paper space": each(rb"(LWPOLYLINE\n5\n33\n330\n)17", rb"\g<1>1B"),
    "an owner that is nowhere": each(rb"(LWPOLYLINE\n5\n33\n330\n)17", rb"\g<1>FF"),
    "model and paper exchanged": swapped(b"*Model_Space", b"*Paper_Space"),
    "a line hidden behind a carriage return": each(rb"ANSI_1252\n", b"ANSI_1252\r9\r$INSUNITS\r70\r1\n"),
    "a line hidden in the title": each(rb"^999\n", b"999\n0\r0\rSECTION\r", 1),
    "line ends of another kind": each(rb"\n", b"\r\n"),
    "one handle for all": each(rb"(LWPOLYLINE\n5\n)[0-9A-F]+", rb"\g<1>33"),
    "two handles exchanged": swapped(b"\n5\n33\n", b"\n5\n34\n"),
    "a handle in small letters": each(rb"(LWPOLYLINE\n5\n)3A", rb"\g<1>3a"),
    "another seed for handles": each(rb"(\$HANDSEED\n5\n)[0-9A-F]+", rb"\g<1>20"),
    "a layer's colour twice": each(rb"(\n2\ncut\n70\n0\n62\n)(\d+)\n", rb"\g<1>5\n62\n\2\n"),
    "an outline's layer twice": each(rb"\n8\ncut\n", b"\n8\nscore\n8\ncut\n"),
    "a closing twice": each(rb"\n70\n1\n10\n", b"\n70\n0\n70\n1\n10\n"),
    "a unit twice": each(rb"9\n\$INSUNITS\n70\n4\n", b"9\n$INSUNITS\n70\n1\n9\n$INSUNITS\n70\n4\n"),
    "a point twice": each(rb"10\n([^\n]+)\n20\n", rb"10\n0.0\n10\n\1\n20\n"),
    "dashes in the whole line": each(
        rb"(2\nContinuous\n70\n0\n3\n\n72\n65\n73\n)0\n40\n0.0\n",
        rb"\g<1>2\n40\n3.0\n49\n2.0\n74\n0\n49\n-1.0\n74\n0\n",
    ),
    "another scale of lines": setting(b"$LTSCALE|40|25.4"),
    "another scale of what is drawn": setting(b"$CELTSCALE|40|2.0"),
    "paper space in front": each(rb"(\$TILEMODE\n70\n)1", rb"\g<1>0"),
    "angles the other way": setting(b"$ANGDIR|70|1"),
    "another turn of angles": setting(b"$ANGBASE|50|90.0"),
    "what others may leave out": setting(b"$LASTSAVEDBY|1|X"),
    "another code page": each(rb"ANSI_1252", b"ANSI_1251"),
    "another base point": setting(b"$INSBASE|10|5.0|20|0.0|30|0.0"),
    "other extents": each(rb"(\$EXTMAX\n10\n)[^\n]+", rb"\g<1>60.0"),
    "other limits": each(rb"(\$LIMMAX\n10\n)[^\n]+", rb"\g<1>60.0"),
    "a turned view": each(rb"(51\n)0.0\n", rb"\g<1>90.0\n"),
    "axes turned": setting(b"$UCSXDIR|10|-1.0|20|0.0|30|0.0"),
    "a block with another base": each(rb"(AcDbBlockBegin\n2\n\*Model_Space\n70\n0\n10\n)0.0", rb"\g<1>10.0"),
    "a block from another file": each(rb"(AcDbBlockBegin\n2\n\*Model_Space\n70\n)0", rb"\g<1>4"),
    "a block's unit": each(rb"(AcDbBlockTableRecord\n2\n\*Model_Space\n340\n1A\n70\n)0", rb"\g<1>1"),
    "a plot scale": each(rb"(142\n)1.0\n", rb"\g<1>2.0\n"),
    "a plot turned": each(rb"(73\n)0\n(74\n5)", rb"\g<1>1\n\2"),
    "a plot in inches": each(rb"(72\n)1\n(73\n0\n74)", rb"\g<1>0\n\2"),
    "a layer of the layout": each(rb"\n3\nModel\n350\n1A", rb"\n3\nModel\n350\n1E"),
    "a layer that is not plotted": each(rb"\n2\ncut\n70\n0\n", b"\n2\ncut\n70\n0\n290\n0\n"),
    "a class of another program": each(rb"(2\nCLASSES\n)(0\nCLASS\n1\n)", rb"\1\2X\n2\nY\n3\nZ\n90\n0\n\2"),
    "an object too many": each(rb"2\nOBJECTS\n", b"2\nOBJECTS\n0\nXRECORD\n5\nFFF\n330\nA\n"),
    "an object too few": each(rb"0\nMLINESTYLE\n(?:[^\n]*\n)*?(?=0\n[A-Z])", b""),
    "a number by another name": each(rb"(10\n-?\d+\.\d)\n", rb"\g<1>0\n"),
    "a number with a sign": each(rb"(10\n)(\d)", rb"\g<1>+\2"),
    "a code with blanks": each(rb"\n8\ncut", b"\n  8\ncut"),
    "a mark at the beginning": lambda data: b"\xef\xbb\xbf" + data,
    "an end from another system": lambda data: data + b"\x1a",
    "a second drawing": lambda data: data + data,
    "a comment among the tables": each(rb"0\nENDTAB\n", b"999\nnote\n0\nENDTAB\n"),
    "a comment beyond all length": each(rb"^999\n", b"999\n" + b"x" * 300 + b"\n999\n"),
}  # fmt: skip


@pytest.mark.parametrize("whole", [SMALL, STICK], ids=["plate", "stick"])
@pytest.mark.parametrize("name", FORGERIES)
def test_what_is_forged_is_refused(name: str, whole: bytes) -> None:
    """Whatever another program would act on must be as our files have it."""
    forged = FORGERIES[name](whole)
    assert forged != whole
    assert read_or_refused(read, forged) is None
