"""Files for cutters, SVG and DXF: what is drawn comes back, and what must not be cut is not written."""

from __future__ import annotations

import hashlib
import os
import subprocess
import sys
from collections.abc import Callable
from contextlib import suppress
from dataclasses import replace
from pathlib import Path

import pytest
from cut_plates import (
    ABOUT,
    HOLE,
    OPERATIONS,
    OUTLINE,
    RING,
    SCORES,
    SLOT,
    SQUARE,
    P,
    cut_sheets,
    plate,
)
from damage import damaged
from hypothesis import given, settings
from same import assert_same

from layout.cutting.stock.stock import Operation
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Step, Text, circle, filled, line, rectangle
from layout.drawing.sheet import Sheet
from layout.values.errors import LayoutError
from templates_gen.files.formats import FORMATS, ReadError

ROOT = Path(__file__).parents[3]
names = pytest.mark.parametrize("name", ["svg", "dxf"])


@names
@settings(deadline=None, max_examples=60)
@given(drawn=cut_sheets())
def test_every_cut_sheet_comes_back(name: str, drawn: Sheet) -> None:
    """Order, operations, closed outlines and arcs are read back exactly, places to a micrometre, with the table."""
    document = FORMATS[name].read(FORMATS[name].write([drawn], ABOUT))
    (sheet,) = document.sheets
    assert_same(drawn, sheet)
    assert document.about == ABOUT


@names
def test_a_straight_last_step_and_one_arc_close_as_they_did(name: str) -> None:
    """An outline closed along a line, and a circle closed along an arc, have the steps that they had."""
    (sheet,) = FORMATS[name].read(FORMATS[name].write([plate()], ABOUT)).sheets
    steps = [len(shape.steps) for shape in sheet.shapes if isinstance(shape, Curve) and shape.closed]
    assert steps == [10, 8, 12, 3]


FAULTS: dict[str, tuple[Callable[[], Sheet], str]] = {
    "an open outline": (lambda: plate(cuts=(SLOT, OUTLINE._replace(closed=False))), "closed"),
    "nothing cut": (lambda: plate(cuts=()), "holds no cut"),
    "the outline before its slot": (lambda: plate(cuts=(HOLE, OUTLINE, SLOT)), "before"),
    "the outline before its hole": (lambda: plate(cuts=(SLOT, OUTLINE, HOLE)), "before"),
    "a slot cut twice": (lambda: plate(cuts=(SLOT, SLOT, OUTLINE)), "over each other"),
    "a hole cut twice": (lambda: plate(cuts=(HOLE, HOLE, OUTLINE)), "over each other"),
    "a hole cut twice, turned": (
        lambda: plate(cuts=(HOLE, _quarter(HOLE), OUTLINE)),
        "over each other",
    ),
    "a line scored twice": (lambda: plate(SCORES[0]), "over each other"),
    "a part of a line scored twice": (lambda: plate(line(P(10, 40), P(10, 37), Pen.SCORE)), "over each other"),
    "a line scored back over itself": (
        lambda: plate(Curve(P(50, 30), (Step(P(55, 30)), Step(P(52, 30))), Pen.SCORE)),
        "over each other",
    ),
    "a cut along a scored line": (lambda: plate(line(P(40, 10), P(25, 10), Pen.SCORE)), "over each other"),
    "two plates that share a side": (
        lambda: plate(cuts=(rectangle(0, 0, 10, 10, Pen.THROUGH), rectangle(10, 2, 20, 8, Pen.THROUGH))),
        "over each other",
    ),
    "two square lines for reference": (lambda: plate(SQUARE), "over each other"),
    "an area engraved twice": (lambda: plate(RING), "twice"),
    "words": (lambda: plate(Text(P(1, 1), 3, "a")), "outlines|outlined"),
    "words outlined for the eye": (lambda: plate(filled((P(1, 1), P(2, 1), P(2, 2)), Pen.TEXT)), "no operation"),
    "a pen for paper": (lambda: plate(line(P(1, 1), P(2, 2), Pen.MARK)), "no operation"),
    "no check square": (lambda: plate(square=None), "square of 50 mm"),
    "a check square of 48.5 mm": (lambda: plate(square=rectangle(0, 60, 48.5, 108.5, Pen.REFERENCE)), "50 mm"),
    "a check square that is cut": (lambda: plate(rectangle(0, 60, 50, 110, Pen.THROUGH), square=None), "50 mm"),
    "an outline that ends twice": (
        lambda: plate(cuts=(_closed((P(0, 0), P(9, 0), P(9, 9), P(0, 0))),)),
        "where it began",
    ),
    "an outline of one step": (lambda: plate(cuts=(_closed((P(0, 0), P(9, 0))),)), "over each other"),
    "another order of work": (lambda: Sheet("a", 120, 120, plate().shapes[::-1]), "order of work"),
    "a scored line after the cuts": (
        lambda: Sheet("a", 120, 120, (*plate().shapes[1:], plate().shapes[1])),
        "order of work",
    ),
}


def _closed(points: tuple[P, ...]) -> Curve:
    return Curve(points[0], tuple(Step(point) for point in points[1:]), Pen.THROUGH, closed=True)


def _quarter(path: Curve) -> Curve:
    """The hole a quarter turn about its own middle: the same circle, begun elsewhere."""
    (home,) = Placing(0, -60, -13).shapes([path])
    (there,) = Placing(90, 60, 13).shapes([home])
    assert isinstance(there, Curve)
    return there


@names
@pytest.mark.parametrize("fault", FAULTS)
def test_what_must_not_be_cut_is_not_written(name: str, fault: str) -> None:
    """One sentence, before a library is asked."""
    drawn, words = FAULTS[fault]
    with pytest.raises(LayoutError, match=words) as caught:
        FORMATS[name].write([drawn()], ABOUT)
    assert len(str(caught.value).splitlines()) == 1


@names
def test_what_only_touches_is_written(name: str) -> None:
    """Lines that meet at their ends, cross, or run side by side half a tenth of a millimetre apart are no repeats."""
    beside = line(P(10.05, 30), P(10.05, 38), Pen.SCORE)
    onward = line(P(10, 38), P(10, 39), Pen.SCORE)
    across = line(P(5, 35), P(35, 35), Pen.SCORE)
    inner = circle(P(60, 13), 3.95, Pen.THROUGH)
    drawn = plate(beside, onward, across, cuts=(inner, SLOT, HOLE, OUTLINE))
    (sheet,) = FORMATS[name].read(FORMATS[name].write([drawn], ABOUT)).sheets
    assert_same(drawn, sheet)


TABLES = {
    "none": {},
    "one too few": {name: shown for name, shown in OPERATIONS.items() if name != "score"},
    "another order": dict(reversed(OPERATIONS.items())),
    "a name of its own": OPERATIONS | {"mark": Operation("#000000", 0.1)},
    "two of one colour": OPERATIONS | {"score": replace(OPERATIONS["score"], colour="#c9391f")},
    "a colour by name": OPERATIONS | {"cut": Operation("red", 0.1)},
    "a colour in capitals": OPERATIONS | {"cut": Operation("#FF0000", 0.1)},
    "no width": OPERATIONS | {"cut": Operation("#ff0000", 0)},
    "a width that is no number": OPERATIONS | {"cut": Operation("#ff0000", float("nan"))},
}


@names
@pytest.mark.parametrize("table", TABLES)
def test_a_table_that_is_not_whole_is_refused(name: str, table: str) -> None:
    """Operations missing, strange, of one colour, or with a look that cannot be."""
    with pytest.raises(LayoutError, match="needs operations: "):
        FORMATS[name].write([plate()], ABOUT._replace(operations=TABLES[table]))


def test_each_kind_of_file_has_its_use() -> None:
    """A DXF without operations, and a PDF with them, are refused."""
    with pytest.raises(LayoutError, match="operations"):
        FORMATS["dxf"].write([plate()], ABOUT._replace(operations=None))
    with pytest.raises(LayoutError, match="operations"):
        FORMATS["pdf"].write([plate()], ABOUT)


@names
def test_two_sheets_are_one_too_many(name: str) -> None:
    """A cutter's file is one sheet."""
    with pytest.raises(LayoutError, match="one sheet"):
        FORMATS[name].write([plate(), plate()], ABOUT)


def digest(name: str) -> str:
    """What the plate's file amounts to, for other processes to compare."""
    return hashlib.sha256(FORMATS[name].write([plate()], ABOUT)).hexdigest()


@pytest.mark.parametrize(("seed", "zone"), [("1", "Asia/Tokyo"), ("2", "America/Lima"), ("3", "UTC")])
def test_the_same_bytes_in_any_process(seed: str, zone: str) -> None:
    """No clock, hash seed, time zone or language shows in a file, nor what was written before it."""
    code = "from test_cut_formats import digest; print(digest('svg'), digest('dxf'))"
    path = os.pathsep.join(map(str, (ROOT, ROOT / "tests", Path(__file__).parent)))
    environment = {**os.environ, "PYTHONPATH": path, "PYTHONHASHSEED": seed, "TZ": zone}
    ran = subprocess.run([sys.executable, "-c", code], env=environment, capture_output=True, text=True, check=True)
    for _ in range(2):
        assert ran.stdout.split() == [digest("svg"), digest("dxf")]


@names
def test_damaged_files_are_refused_and_nothing_worse(name: str) -> None:
    """Bytes cut short or changed at random are read or refused, never met with another error."""
    for broken in damaged(FORMATS[name].write([plate()], ABOUT)):
        with suppress(ReadError):
            assert len(FORMATS[name].read(broken).sheets) == 1


@names
def test_the_reader_needs_no_writing_library(name: str) -> None:
    """Reading brings in neither svgwrite nor ezdxf nor any writer, so the two cannot agree on a common mistake."""
    code = (
        f"import sys; from templates_gen.readers import {name} as reader;"
        "reader.read(sys.stdin.buffer.read());"
        "print([name for name in sys.modules if name.split('.')[0] in ('svgwrite', 'ezdxf') or 'writers' in name])"
    )
    data = FORMATS[name].write([plate()], ABOUT)
    ran = subprocess.run([sys.executable, "-c", code], cwd=ROOT, input=data, capture_output=True, check=True)
    assert ran.stdout.strip() == b"[]"
