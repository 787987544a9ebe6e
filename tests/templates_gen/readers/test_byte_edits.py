"""Random small edits of finished files: refused, or shown by a program from outside as the file that was edited.

SWEEP=all makes 1,200 of each format, the suite a quarter of them.
"""

from __future__ import annotations

import re
from functools import cache

import numpy
import pytest
from byte_edits import edits, how_many, read_or_refused
from kits import font_metrics, kit_of
from pdf_bytes import unpacked
from rasters import Pixels, pdf_pixels, svg_pixels

from layout.plan import Plan, plan
from templates_gen.files.formats import FORMATS, Document
from templates_gen.files.output import Output
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings, write
from templates_gen.lettering.fonts import font_path

MOST_APART = 65.0
"""Grey levels of 255: a quarter of a pixel, the least that resvg knows of a level edge of a black area, which a move of
a micrometre may take.
"""


@cache
def planned() -> Plan:
    """A small kit."""
    return plan(kit_of({"weaving.width": "6 cm", "frame.outer_width": "20 cm"}))


@cache
def wanted(file: str) -> Output:
    """One of its files, as it must be."""
    return Outputs(planned(), font_metrics()).output(file)


@cache
def whole(file: str) -> bytes:
    """Its bytes."""
    return write(wanted(file))


FILES = {
    "pdf": ("strip-near.pdf", lambda: whole("strip-near.pdf")),
    "pdf unpacked": ("strip-near.pdf", lambda: unpacked(whole("strip-near.pdf"))),
    "svg": ("strip-near.svg", lambda: whole("strip-near.svg")),
}


def pixels(kind: str, data: bytes) -> Pixels:
    """What pdfium or resvg shows of a file."""
    return pdf_pixels(data) if kind.startswith("pdf") else svg_pixels(data)


def sound(file: str, found: Document | None) -> bool:
    """Whether a reader took the file, and the proof has nothing to say against it."""
    return found is not None and findings(planned(), wanted(file), found).sound


def test_edits_are_edits_and_the_same_in_every_run() -> None:
    """Every edit differs from the file; two runs make the same ones; those that keep the length do."""
    data = font_path().read_bytes()[:4000] + b"0 1 2\nA line\n" * 50
    made = list(edits(data, 200))
    assert made == list(edits(data, 200))
    assert all(edit.data != data for edit in made)
    assert len({edit.data for edit in made}) > 150
    assert all(len(edit.data) == len(data) for edit in edits(data, 100, keep_length=True))


def test_the_unpacked_file_is_sound_too() -> None:
    """What is edited below passes as it is, and shows the same as the packed one."""
    data = unpacked(whole("strip-near.pdf"))
    assert b"/FlateDecode" not in data
    assert re.search(rb" Tm\s", data)
    assert sound("strip-near.pdf", FORMATS["pdf"].read(data))
    assert (pdf_pixels(data) == pdf_pixels(whole("strip-near.pdf"))).all()


@pytest.mark.parametrize("seed", range(4))
@pytest.mark.parametrize("kind", FILES)
def test_an_edited_file_is_refused_or_shows_the_same(kind: str, seed: int) -> None:
    """No edit of a byte or a few passes with another picture; none meets an error of another kind than a refusal."""
    file, made = FILES[kind]
    data = made()
    first = pixels(kind, data)
    count = how_many(125, 300) if kind.startswith("pdf") else how_many(250, 600)
    passed = 0
    for edit in edits(data, count, seed, keep_length=kind == "pdf unpacked"):
        found = read_or_refused(FORMATS[kind[:3]].read, edit.data)
        if not sound(file, found):
            continue
        passed += 1
        shown = pixels(kind, edit.data)
        assert shown.shape == first.shape, edit.what
        assert float(numpy.abs(shown - first).max()) <= MOST_APART, edit.what
    assert passed < count / 2, "most edits are found"
