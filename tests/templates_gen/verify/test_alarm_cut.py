"""The alarm of cutters' files: every way to spoil one, or to draw it wrong, must ring."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from dataclasses import replace
from functools import cache

import pytest
from cut_plates import ABOUT, CROSSES, HOLE, OPERATIONS, OUTLINE, RING, SCORES, SLOT, SQUARE, P, plate

from layout.cutting.stock.stock import Operation
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Region, Shape, Step, line, rectangle
from layout.drawing.sheet import Sheet, painted
from layout.values.errors import LayoutError
from templates_gen.document import About
from templates_gen.files.formats import FORMATS
from templates_gen.verify.compare import compare

names = pytest.mark.parametrize("name", ["svg", "dxf"])


@cache
def whole(name: str) -> bytes:
    """The unharmed bytes of the plate."""
    return FORMATS[name].write([plate()], ABOUT)


def alarm(name: str, data: bytes) -> str:
    """What is said against `data`; nothing if it passes."""
    try:
        found = FORMATS[name].read(data)
    except LayoutError as error:
        return str(error)
    result = compare([plate()], found.sheets)
    problems = [*result.sentences, *([] if found.about == ABOUT else ["says another thing of itself"])]
    return "; ".join(problems) or ("" if result.sound else "off")


@names
def test_what_was_not_spoilt_does_not_ring(name: str) -> None:
    """The unharmed file passes."""
    assert alarm(name, whole(name)) == ""


# 1. Real bytes changed.


def sub(pattern: bytes, new: bytes | Callable[[re.Match[bytes]], bytes], count: int = 1) -> Callable[[bytes], bytes]:
    """A change: the first matches of `pattern` become `new`."""
    return lambda data: re.sub(pattern, new, data, count=count, flags=re.DOTALL)


def svg_points(x: Callable[[float], float], y: Callable[[float], float]) -> Callable[[bytes], bytes]:
    """A change to an SVG: the end of every step elsewhere, radii as they are."""

    def moved(found: re.Match[bytes]) -> bytes:
        return b"%s%.5f %.5f" % (found[1], x(float(found[2])), y(float(found[3])))

    pattern = rb"([ML]|A[\d.]+ [\d.]+ 0 0 [01] )(-?[\d.]+) (-?[\d.]+)"
    return lambda data: re.sub(rb' d="[^"]*"', lambda path: re.sub(pattern, moved, path[0]), data)


def dxf_values(code: int, change: Callable[[float], float]) -> Callable[[bytes], bytes]:
    """A change to a DXF: every value of that group code among its entities."""

    def apply(data: bytes) -> bytes:
        begin, end = data.index(b"\nENTITIES\n"), data.index(b"\nOBJECTS\n")
        head, entities, tail = data[:begin], data[begin:end], data[end:]
        pattern = rb"(\n *%d\n)([-\d.e]+)" % code
        return head + re.sub(pattern, lambda found: found[1] + b"%.9f" % change(float(found[2])), entities) + tail

    return apply


def both(one: Callable[[bytes], bytes], other: Callable[[bytes], bytes]) -> Callable[[bytes], bytes]:
    """Two changes."""
    return lambda data: other(one(data))


def lines(old: bytes, new: bytes) -> Callable[[bytes], bytes]:
    """A change: the first `old` becomes `new`."""
    return lambda data: data.replace(old, new, 1)


BYTES: dict[str, tuple[str, Callable[[bytes], bytes]]] = {
    "SVG unit inch": ("svg", sub(rb'(width|height)="(\d+)mm"', rb'\1="\2in"', 2)),
    "SVG without a unit": ("svg", sub(rb'(width|height)="(\d+)mm"', rb'\1="\2"', 2)),
    "SVG at 97 % by its view box": ("svg", sub(rb'viewBox="[^"]*"', b'viewBox="0 0 116.4 116.4"')),
    "SVG at 97 %": ("svg", svg_points(lambda x: x * 0.97, lambda y: y * 0.97)),
    "SVG y not turned": ("svg", svg_points(lambda x: x, lambda y: 120 - y)),
    "SVG left and right mirrored": ("svg", svg_points(lambda x: 120 - x, lambda y: y)),
    "SVG one corner 10 micrometres aside": ("svg", lines(b"L40 110 ", b"L40.01 110 ")),
    "SVG outline open": ("svg", sub(rb'(id="cut".*?) Z"', rb'\1"')),
    "SVG an arc flattened": ("svg", sub(rb'(id="cut".*?)A[\d.]+ [\d.]+ 0 0 [01] ', rb"\1L")),
    "SVG an arc the other way": ("svg", sub(rb'(id="cut".*?A[\d.]+ [\d.]+ 0 0) 0 ', rb"\1 1 ")),
    "SVG cut named as scored": ("svg", lines(b'id="cut"', b'id="score"')),
    "SVG cut in another colour": ("svg", lines(b'stroke="#c9391f"', b'stroke="#c9391e"')),
    "SVG cut in the colour of the scored": ("svg", lines(b'stroke="#c9391f"', b'stroke="#2f9a74"')),
    "SVG cut too wide": ("svg", lines(b'stroke-width="0.01"', b'stroke-width="0.1"')),
    "SVG group lost": ("svg", sub(rb'<g [^>]*id="score".*?</g>', b"")),
    "SVG groups swapped": (
        "svg",
        sub(rb'(<g [^>]*id="score".*?</g>)(<g [^>]*id="cut".*?</g>)', rb"\2\1"),
    ),
    "SVG a line twice": ("svg", sub(rb'(id="score".*?)(<path[^>]*>)', rb"\1\2\2")),
    "SVG another table": ("svg", lambda data: data.replace(b"#c9391f", b"#c9391e")),
    "SVG cut short": ("svg", lambda data: data[:-100]),
    "DXF unit inch": ("dxf", lines(b"$INSUNITS\n70\n4", b"$INSUNITS\n70\n1")),
    "DXF without a unit": ("dxf", lines(b"$INSUNITS\n70\n4", b"$INSUNITS\n70\n0")),
    "DXF imperial": ("dxf", lines(b"$MEASUREMENT\n70\n1", b"$MEASUREMENT\n70\n0")),
    "DXF at 97 %": ("dxf", both(dxf_values(10, lambda x: x * 0.97), dxf_values(20, lambda y: y * 0.97))),
    "DXF in inches": ("dxf", both(dxf_values(10, lambda x: x / 25.4), dxf_values(20, lambda y: y / 25.4))),
    "DXF y turned": ("dxf", dxf_values(20, lambda y: 120 - y)),
    "DXF left and right mirrored": ("dxf", dxf_values(10, lambda x: 120 - x)),
    "DXF one corner 10 micrometres aside": ("dxf", lines(b"\n10\n40.0\n", b"\n10\n40.01\n")),
    "DXF outline open": ("dxf", sub(rb"(cut\n100\nAcDbPolyline\n90\n *\d+\n70\n *)1", rb"\g<1>0")),
    "DXF an arc flattened": ("dxf", sub(rb"(\n8\ncut\n.*?)\n42\n[-\d.]+", rb"\1")),
    "DXF an arc the other way": ("dxf", sub(rb"(\n8\ncut\n.*?\n42\n)", rb"\1-")),
    "DXF arcs a little flat": ("dxf", dxf_values(42, lambda bulge: bulge * 0.99)),
    "DXF cut on the layer of the scored": ("dxf", lines(b"\n8\ncut\n", b"\n8\nscore\n")),
    "DXF cut layer in another colour": ("dxf", sub(rb"(\ncut\n70\n *0\n62\n *\d+\n420\n)\d+", rb"\g<1>123")),
    "DXF cut layer in another numbered colour": ("dxf", sub(rb"(\ncut\n70\n *0\n62\n *)\d+", rb"\g<1>5")),
    "DXF cut layer too heavy": ("dxf", sub(rb"(\ncut\n70\n.*?370\n *)\d+", rb"\g<1>50")),
    "DXF cut layer switched off": ("dxf", sub(rb"(\ncut\n70\n *0\n62\n *)(\d+)", rb"\g<1>-\2")),
    "DXF cut layer frozen": ("dxf", sub(rb"(\ncut\n70\n *)0", rb"\g<1>1")),
    "DXF layer renamed": ("dxf", sub(rb"\n2\ncut\n", b"\n2\nthrough\n")),
    "DXF a line lost": ("dxf", sub(rb"0\nLWPOLYLINE\n((?!\n0\n).)*?score\n((?!\n0\n).)*\n", b"")),
    "DXF a line twice": ("dxf", sub(rb"(0\nLWPOLYLINE\n((?!\n0\n).)*?score\n((?!\n0\n).)*\n)", rb"\1\1")),
    "DXF another table": ("dxf", lines(b"#c9391f", b"#c9391e")),
    "DXF cut short": ("dxf", lambda data: data[:-100]),
}


@pytest.mark.parametrize("spoilt", BYTES)
def test_spoilt_bytes_ring(spoilt: str) -> None:
    """A file whose bytes were changed in a way that shows, or that no writer of ours makes, does not pass."""
    name, change = BYTES[spoilt]
    data = change(whole(name))
    assert data != whole(name)
    assert alarm(name, data)


# 2. Another drawing, written by the writer as if it were right; some it refuses itself.


def moved(shape: Curve, dx: float, dy: float = 0.0) -> Curve:
    """A path elsewhere."""
    (there,) = Placing(0, dx, dy).shapes([shape])
    assert isinstance(there, Curve)
    return there


def flattened(path: Curve, which: int) -> Curve:
    """One arc of a path as a straight step."""
    steps = list(path.steps)
    steps[which] = Step(steps[which].end)
    return path._replace(steps=tuple(steps))


def everywhere(place: Callable[[Point], Point]) -> Sheet:
    """The plate with every point elsewhere."""

    def path(old: Curve) -> Curve:
        steps = tuple(Step(place(end), through and place(through)) for end, through in old.steps)
        return Curve(place(old.start), steps, old.pen, old.closed)

    def shape(old: Shape) -> Shape:
        if isinstance(old, Region):
            return Region(tuple(map(path, old.contours)), old.pen)
        assert isinstance(old, Curve)
        return path(old)

    return Sheet("plate", 120, 120, tuple(map(shape, plate().shapes)))


def anew(shapes: Iterable[Shape]) -> Sheet:
    """The same sheet with these shapes."""
    return Sheet("plate", 120, 120, painted(shapes))


def without(gone: Shape) -> Sheet:
    """The plate without one shape."""
    return anew(shape for shape in plate().shapes if shape is not gone)


def repenned(old: Curve, pen: Pen) -> Sheet:
    """The plate with one path of another operation."""
    return anew(old._replace(pen=pen) if shape is old else shape for shape in plate().shapes)


DRAWN: dict[str, Callable[[], Sheet]] = {
    "one slot 10 micrometres aside": lambda: plate(cuts=(moved(SLOT, 0.010), HOLE, OUTLINE)),
    "one slot 2 micrometres up": lambda: plate(cuts=(moved(SLOT, 0, 0.002), HOLE, OUTLINE)),
    "one slot 10 micrometres wider": lambda: plate(
        cuts=(SLOT._replace(steps=(*SLOT.steps[:5], Step(P(20, 16.01)), *SLOT.steps[6:])), HOLE, OUTLINE)
    ),
    "a slot missing": lambda: plate(cuts=(HOLE, OUTLINE)),
    "a slot twice": lambda: plate(cuts=(SLOT, SLOT, HOLE, OUTLINE)),
    "a slot twice, 5 micrometres apart": lambda: plate(cuts=(moved(SLOT, 0.005), SLOT, HOLE, OUTLINE)),
    "the hole before the slot": lambda: plate(cuts=(HOLE, SLOT, OUTLINE)),
    "the outline before the slot": lambda: plate(cuts=(HOLE, OUTLINE, SLOT)),
    "the outline open": lambda: plate(cuts=(SLOT, HOLE, OUTLINE._replace(closed=False))),
    "an arc flattened": lambda: plate(cuts=(SLOT, HOLE, flattened(OUTLINE, 1))),
    "a slot scored instead of cut": lambda: repenned(SLOT, Pen.SCORE),
    "a scored line for reference only": lambda: repenned(SCORES[0], Pen.REFERENCE),
    "the check square cut": lambda: repenned(SQUARE, Pen.THROUGH),
    "the check square missing": lambda: without(SQUARE),
    "the check square of 48.5 mm": lambda: plate(square=rectangle(5, 55, 53.5, 103.5, Pen.REFERENCE)),
    "an area missing": lambda: without(RING),
    "an area filled up": lambda: anew(
        RING._replace(contours=RING.contours[:1]) if shape is RING else shape for shape in plate().shapes
    ),
    "a cross aside": lambda: anew(
        moved(CROSSES[0], 0.01) if shape is CROSSES[0] else shape for shape in plate().shapes
    ),
    "a scored line more": lambda: plate(line(P(50, 30), P(50, 38), Pen.SCORE)),
    "another order of work": lambda: Sheet("plate", 120, 120, plate().shapes[::-1]),
    "97 % of its size": lambda: everywhere(lambda p: P(p.x * 0.97, p.y * 0.97)),
    "0.01 % wider": lambda: everywhere(lambda p: P(p.x * 1.0001, p.y)),
    "inches for mm": lambda: everywhere(lambda p: P(p.x / 25.4, p.y / 25.4)),
    "y not turned": lambda: everywhere(lambda p: P(p.x, 120 - p.y)),
    "left and right mirrored": lambda: everywhere(lambda p: P(120 - p.x, p.y)),
    "on a larger sheet": lambda: replace(plate(), width=121.0),
}  # fmt: skip


@names
@pytest.mark.parametrize("drawn", DRAWN)
def test_another_drawing_rings(name: str, drawn: str) -> None:
    """A drawing that differs in one thing is refused by the writer, or written, read back and not let through."""
    sheet = DRAWN[drawn]()
    assert sheet != plate()
    try:
        data = FORMATS[name].write([sheet], ABOUT)
    except LayoutError:
        return
    assert data != whole(name)
    assert alarm(name, data)


TABLES: dict[str, About] = {
    "another colour of cuts": ABOUT._replace(operations=OPERATIONS | {"cut": Operation("#c9391e", 0.01)}),
    "another width of cuts": ABOUT._replace(operations=OPERATIONS | {"cut": Operation("#c9391f", 0.012)}),
    "colours swapped": ABOUT._replace(
        operations=OPERATIONS | {"cut": OPERATIONS["score"], "score": OPERATIONS["cut"]},
    ),
    "another title": ABOUT._replace(title="Heron frame: plates"),
    "other inputs": ABOUT._replace(inputs="{}"),
}


@names
@pytest.mark.parametrize("table", TABLES)
def test_another_table_rings(name: str, table: str) -> None:
    """A file that shows its operations otherwise than asked, and agrees with itself in that, does not pass."""
    assert alarm(name, FORMATS[name].write([plate()], TABLES[table]))
