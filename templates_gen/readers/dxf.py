"""DXF back to its sheet, from its plain tag pairs. Whatever could show or be cut and is not ours is refused.

The unit, the version and the layers are said once more here, on purpose. What only sets a program up (styles, plot
settings, dictionaries) draws nothing and is passed over.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from layout.drawing.pens import Pen
from layout.drawing.shapes import Path, Point, Region, Shape, Step
from layout.drawing.sheet import Sheet
from layout.errors import shown
from templates_gen.document import OPERATION_OF, About, Document, ReadError, unpacked
from templates_gen.readers.arcs import middle_of_bulge
from templates_gen.readers.dxf_layers import check_layers
from templates_gen.readers.tags import Tag, Tags, comments, records, sections, tags_of, variables

LARGEST_FILE = 64_000_000
"""Bytes, as for every format."""

_SECTIONS = ("HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS")
_SETTINGS = {
    "$ACADVER": [(1, "AC1024")],  # R2010
    "$INSUNITS": [(70, "4")],  # millimetres
    "$MEASUREMENT": [(70, "1")],  # metric
    "$LIMMIN": [(10, "0.0"), (20, "0.0")],
}
_AREAS = re.compile(r"areas:((?: [1-9][0-9]{0,5})*+)")
_HANDLE = re.compile("[0-9A-F]{1,16}")
_PEN_OF = {name: pen for pen, name in OPERATION_OF.items()}


def read(data: bytes) -> Document:
    """The sheet, in mm; `ReadError` with one sentence for anything else than a file of ours."""
    if len(data) > LARGEST_FILE:
        raise ReadError(f"the DXF is larger than {LARGEST_FILE} bytes")
    said, tags = comments(tags_of(data))
    areas = _AREAS.fullmatch(said[1]) if len(said) > 2 else None
    if areas is None:
        raise ReadError("the DXF does not begin with its title, its areas and the inputs of its drawing")
    inputs, names, operations = unpacked("".join(said[2:]))
    if operations is None or len(names) != 1:
        raise ReadError("the DXF does not name one sheet and its operations")
    parts = sections(tags, _SECTIONS)
    width, height = _size(parts["HEADER"])
    check_layers(parts["TABLES"], operations)
    if any(record[0].value not in ("BLOCK", "ENDBLK") for record in records(parts["BLOCKS"])):
        raise ReadError("the DXF holds blocks that draw something")
    paths = [_polyline(record) for record in records(parts["ENTITIES"])]
    shapes = tuple(_grouped(paths, [int(count) for count in areas[1].split()]))
    return Document((Sheet(names[0], width, height, shapes),), About(said[0], inputs, operations))


def _size(header: Tags) -> tuple[float, float]:
    """Width and height of the drawing's limits; refused unless its unit is the millimetre."""
    found = variables(header)
    for name, wanted in _SETTINGS.items():
        values = [(code, value.strip()) for code, value in found.get(name, ())]
        if values != wanted:
            raise ReadError(f"the DXF says {shown(values)} for {name}, where {shown(wanted)} is wanted")
    corner = found.get("$LIMMAX", ())
    if [tag.code for tag in corner] != [10, 20]:
        raise ReadError("the DXF does not say its limits")
    return corner[0].number, corner[1].number


def _polyline(record: Tags) -> Path:
    """One outline; refused unless it is a polyline that takes all its looks from its layer."""
    codes = [tag.code for tag in record[:8]]
    kind, handle, _, entity, layer, sort, count, flags = record[:8] if len(codes) == 8 else (Tag(0, ""),) * 8
    named = (kind.value, entity.value, sort.value) == ("LWPOLYLINE", "AcDbEntity", "AcDbPolyline")
    if codes != [0, 5, 330, 100, 8, 100, 90, 70] or not named or not _HANDLE.fullmatch(handle.value):
        raise ReadError(f"the DXF holds {shown(record[0].value)} of a kind that no file of ours does")
    pen = _PEN_OF.get(layer.value)
    if pen is None:
        raise ReadError(f"the DXF draws on the layer {shown(layer.value)}, which is none of ours")
    vertices = list(_vertices(record[8:]))
    if len(vertices) != count.whole or len(vertices) < 2 or flags.whole not in (0, 1):
        raise ReadError("the DXF holds a polyline that does not have the vertices it says")
    return _path(vertices, pen, closed=flags.whole == 1)


Vertex = tuple[Point, float]


def _vertices(tags: Tags) -> Iterator[Vertex]:
    """Each point and the bulge of the step that begins there."""
    at = 0
    while at < len(tags):
        bent = at + 2 < len(tags) and tags[at + 2].code == 42
        own = tags[at : at + 3] if bent else tags[at : at + 2]
        if [tag.code for tag in own] != [10, 20, 42][: len(own)] or len(own) < 2:
            raise ReadError("the DXF holds a polyline with more than points and bulges")
        yield Point(own[0].number, own[1].number), own[2].number if bent else 0.0
        at += len(own)


def _path(vertices: Sequence[Vertex], pen: Pen, *, closed: bool) -> Path:
    """An outline that closes along an arc has that arc as its last step; a straight closing needs none."""
    start, last = vertices[0][0], vertices[-1]
    ends = [point for point, _ in vertices[1:]]
    bulges = [bulge for _, bulge in vertices[:-1]]
    if last[1]:
        if not closed:
            raise ReadError("the DXF bends an open line beyond its end")
        ends.append(start)
        bulges.append(last[1])
    steps, at = [], start
    for end, bulge in zip(ends, bulges, strict=True):
        steps.append(Step(end, middle_of_bulge(at, bulge, end) if bulge else None))
        at = end
    return Path(start, tuple(steps), pen, closed)


def _grouped(paths: Sequence[Path], counts: Sequence[int]) -> Iterator[Shape]:
    """Lines as they are; outlines of areas put together again, so many for each as the file says."""
    left = iter(counts)
    at = 0
    while at < len(paths):
        pen = paths[at].pen
        if not pen.ink.fills:
            yield paths[at]
            at += 1
            continue
        own = paths[at : at + next(left, 0)]
        if not own or any(path.pen is not pen or not path.closed for path in own):
            raise ReadError("the DXF does not hold the closed areas that it says")
        yield Region(tuple(own), pen)
        at += len(own)
    if next(left, None) is not None:
        raise ReadError("the DXF says more areas than it holds")
