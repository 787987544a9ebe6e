"""From DXF back to a sheet. Our files are comments, a skeleton that never changes, and outlines in one strict form.

Anything else is refused, because other programs would act on it.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from layout.drawing.shapes import Curve, Region, Shape
from layout.drawing.sheet import Sheet
from templates_gen.document import About, Document, ReadError, unpacked
from templates_gen.messages.language import message
from templates_gen.messages.roles.reading import Dxf
from templates_gen.readers.dxf_layers import layer_values
from templates_gen.readers.dxf_outlines import number, outlines
from templates_gen.readers.dxf_skeleton import check_frame

LARGEST_FILE = 16_000_000
"""Bytes: some twenty times the largest file that was ever made."""

_TOP = re.compile(
    r"999\n([^\x00-\x1f\x7f-\x9f]*)\n"  # the title: no character that another program could take for the end of a line
    r"999\nareas:((?: [1-9][0-9]{0,5})*+)\n"
    r"((?:999\n[ -~]{1,200}\n)++)"
)
_SIZE = re.compile(r"\n9\n\$LIMMAX\n10\n(.{1,24})\n20\n(.{1,24})\n")
_ENTITIES = "\n2\nENTITIES\n"


def read(data: bytes) -> Document:
    """The sheet, in mm; `ReadError` with one sentence for anything else than a file of ours."""
    if len(data) > LARGEST_FILE:
        raise ReadError(message(Dxf.TOO_LARGE, most=LARGEST_FILE))
    try:
        text = data.decode("utf-8")
    except UnicodeDecodeError as error:
        raise ReadError(message(Dxf.NO_TEXT)) from error
    top = _TOP.match(text)
    if top is None:
        raise ReadError(message(Dxf.BEGINNING))
    inputs, names, operations = unpacked("".join(top[3].split("\n")[1::2]), top[1])
    if operations is None or len(names) != 1:
        raise ReadError(message(Dxf.SHEET))
    start = text.find(_ENTITIES, top.end()) + len(_ENTITIES)
    size = _SIZE.search(text, top.end(), start)
    if start < len(_ENTITIES) or size is None:
        raise ReadError(message(Dxf.SIZE))
    width, height = number(size[1]), number(size[2])
    paths, end = outlines(text, start)
    values = {**layer_values(operations), "width": size[1], "height": size[2]}
    check_frame(text[top.end() : start], text[end:], len(paths), values)
    shapes = tuple(_grouped(paths, [int(count) for count in top[2].split()]))
    return Document((Sheet(names[0], width, height, shapes),), About(top[1], inputs, operations))


def _grouped(paths: Sequence[Curve], counts: Sequence[int]) -> Iterator[Shape]:
    """Lines as they are. Outlines of areas are grouped again, by the counts that the file carries."""
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
            raise ReadError(message(Dxf.AREAS))
        yield Region(tuple(own), pen)
        at += len(own)
    if next(left, None) is not None:
        raise ReadError(message(Dxf.MORE_AREAS))
