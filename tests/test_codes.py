"""The codes of sheets: what they say, the modules they are drawn of, and how they are read back and proven.

Outside the project: zxing-cpp (Apache-2.0) and reportlab write Data Matrix by ISO/IEC 16022, and zxing-cpp reads it.
"""

from __future__ import annotations

import json
import re
from collections.abc import Sequence
from dataclasses import replace
from hashlib import sha256
from string import ascii_uppercase, digits

import numpy
import pytest
import zxingcpp
from hypothesis import given
from hypothesis import strategies as st
from kits import plan_of
from PIL import Image
from reportlab.graphics.barcode.ecc200datamatrix import ECC200DataMatrix

from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Region, Shape, polygon
from layout.drawing.sheet import Sheet
from layout.kit.kit import Paper
from layout.kit.paper_size import named_size
from layout.paper.code import Modules, code
from layout.paper.regions import regions
from layout.paper.targets import targets
from templates_gen.codes.digest import digest_of
from templates_gen.codes.modules import codes_for, modules
from templates_gen.codes.payload import payload
from templates_gen.document import About, Document, ReadError
from templates_gen.files.output import titled
from templates_gen.inputs import stock_file
from templates_gen.readers.data_matrix import text_of
from templates_gen.verify.printed.code import prove_codes

PAPER = Paper(named_size("common"))
ABOUT = About("", json.dumps({"file": "kit.pdf", "kit": {"name": "Heron frame", "sett": 2.5}}))
SAID = st.text(digits + ascii_uppercase, min_size=24, max_size=24)


def bits_of(rows: Modules) -> list[list[bool]]:
    """Rows of modules as the reader takes them."""
    return [[module == "#" for module in row] for row in rows]


def read_by_zxing(rows: Modules) -> list[str]:
    """What the other library reads of a code, ten pixels to the module, with one module of white."""
    picture = numpy.pad(numpy.array(bits_of(rows)), 1)
    pixels = numpy.where(picture, 0, 255).astype(numpy.uint8).repeat(10, 0).repeat(10, 1)
    return [found.text for found in zxingcpp.read_barcodes(Image.fromarray(pixels))]


# what a code says


def test_a_payload_by_hand() -> None:
    """TG1, nine of the digest, sheet 2 of 37, 190.5 x 249 mm between the targets: base 36 of 2, 37, 19050 and 24900."""
    said = payload(ABOUT.inputs, 2, 37, (190.5, 249.0))
    assert len(said) == 24
    assert (said[:3], said[12:14], said[14:16]) == ("TG1", "02", "11")
    assert (int(said[16:20], 36), int(said[20:], 36)) == (19050, 24900)
    # SHA-256 of the values with sorted keys, in base 36, by its last nine digits
    number, letters = int(sha256(ABOUT.inputs.replace(", ", ",").replace(": ", ":").encode()).hexdigest(), 16), ""
    for _ in range(9):
        number, letters = number // 36, (digits + ascii_uppercase)[number % 36] + letters
    assert said[3:12] == letters == digest_of(ABOUT.inputs)


@pytest.mark.parametrize(("number", "total"), [(1296, 1296), (-1, 4)])
def test_what_has_no_room_is_not_cut_short(number: int, total: int) -> None:
    """Two digits of base 36 reach to 1295: a number past them is refused instead of written wrongly."""
    with pytest.raises(ValueError, match=str(number)):
        payload(ABOUT.inputs, number, total, (190.5, 249.0))


def changed(**paths: object) -> str:
    """The digest of a kit file of a small kit with some keys changed."""
    return digest_of(titled(plan_of(paths), "all guides", "kit.pdf").inputs)


def test_files_differ_in_their_digest() -> None:
    """Another file of the kit, another kit, another stock: another digest; the same once more: the same."""
    plan, stock = plan_of(), stock_file.built_in()
    every = [
        digest_of(titled(plan, "x", "kit.pdf").inputs),
        digest_of(titled(plan, "x", "strip-near.pdf").inputs),
        digest_of(titled(plan, "x", "kit.pdf", stock).inputs),
        digest_of(titled(plan, "x", "kit.pdf", replace(stock, thickness=4.0)).inputs),
        changed(name="Alder frame"),
        changed(**{"weaving.width": "20.01 cm"}),
    ]
    assert len(set(every)) == len(every)
    assert every[0] == changed()
    assert all(len(each) == 9 for each in every)


def test_a_price_or_a_printer_changes_no_digest() -> None:
    """The same template at another price, or printed elsewhere, is the same template."""
    stock = stock_file.built_in()

    def digest(dear: Stock) -> str:
        return digest_of(titled(plan_of(), "x", "job.pdf", dear).inputs)

    assert digest(replace(stock, prices={"sheet": 4.5})) == digest(stock)
    inputs = json.loads(ABOUT.inputs)
    for table in ({"prices": {"ball": 3}}, {"printer": {"x": 1.002}}):
        assert digest_of(json.dumps(inputs | {"kit": inputs["kit"] | table})) == digest_of(ABOUT.inputs)
    assert digest_of(json.dumps(inputs | {"kit": inputs["kit"] | {"sett": 2.6}})) != digest_of(ABOUT.inputs)


def test_another_language_is_another_digest() -> None:
    """The sheets of a kit in German are not those in French."""
    kits = [{"name": "Heron frame", "paper": {"language": language}} for language in ("de", "fr")]
    assert len({digest_of(json.dumps({"file": "kit.pdf", "kit": kit})) for kit in kits}) == 2


def test_the_order_of_keys_and_the_spaces_change_no_digest() -> None:
    """The values count, not how their text is written."""
    inputs = json.loads(ABOUT.inputs)
    turned = {name: inputs[name] for name in reversed(inputs)}
    assert digest_of(json.dumps(turned, indent=3)) == digest_of(ABOUT.inputs)


# the modules


@given(SAID)
def test_what_is_written_is_read(said: str) -> None:
    """Our reader and zxing-cpp both read every code of 24 letters and figures."""
    rows = modules(said)
    assert text_of(bits_of(rows)) == said
    assert read_by_zxing(rows) == [said]


@given(st.text(ascii_uppercase, min_size=24, max_size=24))
def test_zxing_writes_the_same_modules(said: str) -> None:
    """Of letters alone, which it too puts in C40, zxing-cpp makes the very same square."""
    made = zxingcpp.create_barcode(said, zxingcpp.BarcodeFormat.DataMatrix)
    pixels = numpy.asarray(made.to_image(scale=1, add_quiet_zones=False))
    assert tuple("".join("#" if pixel < 128 else "." for pixel in row) for row in pixels) == modules(said)


@given(SAID)
def test_reportlab_makes_the_same_modules(said: str) -> None:
    """Its encoder, given the standard's table of this size by hand, agrees on letters and figures."""
    square = ECC200DataMatrix(said)
    square.row_modules = square.col_modules = 18
    square.row_regions = square.col_regions = 1
    square.row_usable_modules = square.col_usable_modules = 16
    square.cw_data, square.cw_ecc = 18, 14
    square.validate()
    upward = square.encode()  # type: ignore[no-untyped-call]
    assert bits_of(modules(said)) == [list(map(bool, row)) for row in reversed(upward)]


SHORT = ("", "A" * 22, "A" * 23, "A" * 25)
STRANGE = ("a" * 24, "A" * 23 + " ", "A" * 23 + "Ä", "A" * 23 + "-")


@pytest.mark.parametrize("said", [*SHORT, *STRANGE])
def test_other_payloads_are_refused(said: str) -> None:
    """Fewer or other characters make broken codes, which no reader reads."""
    with pytest.raises(ValueError, match=f"^{re.escape(said)}$"):
        modules(said)


def test_every_flipped_module_is_found() -> None:
    """Each of the 324 modules counts: nothing is corrected, so nothing wrong passes."""
    bits = bits_of(modules("TG1" + "7" * 21))
    for row in range(18):
        for column in range(18):
            bits[row][column] ^= True
            with pytest.raises(ReadError):
                text_of(bits)
            bits[row][column] ^= True
    assert text_of(bits) == "TG1" + "7" * 21


def test_another_square_is_no_code() -> None:
    """Other sizes, white, black, mirrored and turned squares are refused, and so is a text with other signs."""
    bits = bits_of(modules("TG1" + "7" * 21))
    mirrored, turned = [row[::-1] for row in bits], [list(row) for row in zip(*bits[::-1], strict=True)]
    wrong: list[Sequence[Sequence[bool]]] = [bits[1:], [row[1:] for row in bits], [], mirrored, turned]
    wrong += [[[black] * 18 for _ in range(18)] for black in (False, True)]
    other = zxingcpp.create_barcode("TG1ABCDEFGHI0107000100C8", zxingcpp.BarcodeFormat.DataMatrix)  # partly in ASCII
    pixels = numpy.asarray(other.to_image(scale=1, add_quiet_zones=False))
    assert pixels.shape == (18, 18)
    for each in (*wrong, [[pixel < 128 for pixel in row] for row in pixels]):
        with pytest.raises(ReadError):
            text_of(each)


# the proof


def sheets(about: About = ABOUT, total: int = 3, paper: Paper = PAPER, *, mirrored: bool = False) -> tuple[Sheet, ...]:
    """Sheets with targets and codes."""
    drawn = [
        (*targets(paper), *code(each, regions(paper), mirrored=mirrored)) for each in codes_for(about, paper, total)
    ]
    return tuple(Sheet(f"{k}", paper.width, paper.height, shapes) for k, shapes in enumerate(drawn, 1))


def said_of(shown: Sequence[Sheet], about: About = ABOUT) -> str:
    """What the proof says of sheets; nothing if they are right."""
    found = prove_codes(Document(tuple(shown), about))
    assert bool(found.problems) == (not found.sound)
    return "; ".join(found.sentences)


def with_shapes(sheet: Sheet, shapes: Sequence[Shape]) -> Sheet:
    """The sheet with other shapes."""
    return replace(sheet, shapes=tuple(shapes))


PAPERS = ("common", "a4", "letter", "a3", "11x17", "148 x 210 mm", "210 x 148 mm", "600 x 3000 mm")


@pytest.mark.parametrize("size", PAPERS)
@pytest.mark.parametrize("mirrored", [False, True])
def test_right_codes_are_right(size: str, mirrored: bool) -> None:
    """Every sheet of a file says which it is, on every paper and on either side."""
    paper = plan_of({"paper.size": size}).kit.paper
    assert said_of(sheets(paper=paper, mirrored=mirrored)) == ""


def test_two_codes_swapped_are_found() -> None:
    """Sheets 1 and 2 with each other's code are both named."""
    one, two, three = sheets()
    swapped = [with_shapes(one, two.shapes), with_shapes(two, one.shapes), three]
    assert said_of(swapped) == (
        "sheet 1: the code is that of sheet 2 of 3, where sheet 1 of 3 must be; "
        "sheet 2: the code is that of sheet 1 of 3, where sheet 2 of 3 must be"
    )
    assert "sheet 1 of 3, where sheet 1 of 2" in said_of(sheets()[:2])


def test_the_code_of_another_file_is_found() -> None:
    """A code made for another kit, or for another file of the kit, is not taken."""
    other = About("", ABOUT.inputs.replace("kit.pdf", "strip-near.pdf"))
    assert said_of(sheets(), other).count("the code is not that of this file") == 3


@pytest.mark.parametrize("inputs", ["", "{", "[]", "3", '{"file""kit.pdf"}'])
def test_inputs_that_are_none_have_no_code(inputs: str) -> None:
    """A file whose inputs were damaged is found, and nothing else happens."""
    assert said_of(sheets(), About("", inputs))


def test_a_lost_or_second_code_is_found() -> None:
    """A sheet without a code, and one with a code on either side."""
    one, *_ = shown = sheets(total=1)
    assert "0 codes" in said_of([with_shapes(one, one.shapes[:-1])])
    both = (*one.shapes, sheets(total=1, mirrored=True)[0].shapes[-1])
    assert "2 codes" in said_of([with_shapes(one, both)])
    assert said_of(shown) == ""


@pytest.mark.parametrize("index", [0, 5, 40, -1])
def test_a_lost_or_moved_module_is_found(index: int) -> None:
    """A run of modules that is missing, 2 micrometres off its grid, drawn twice, or covered by a line."""
    (one,) = sheets(total=1)
    *others, square = one.shapes
    assert isinstance(square, Region)
    run = square.contours[index]
    rest = [each for each in square.contours if each is not run]
    (moved,) = Placing(dx=0.002).shapes([run])
    assert isinstance(moved, Curve)
    for contours, words in ((rest, "cannot be read"), ([*rest, moved], "off"), ([*rest, run, run], "something else")):
        assert words in said_of([with_shapes(one, [*others, Region(tuple(contours), Pen.SOLID)])])
    assert "something else" in said_of([with_shapes(one, [*one.shapes, run._replace(pen=Pen.HELP)])])
    paper = Region((run,), Pen.PAPER)
    assert "something else" in said_of([with_shapes(one, [*one.shapes, paper])])


def test_a_part_across_the_sheet_may_enclose_both_places() -> None:
    """The outline of a strip from corner to corner passes between the codes' places, and touches neither."""
    (one,) = sheets(total=1, mirrored=True)
    outline = polygon([Point(25, 20), Point(40, 15), Point(185, 260), Point(170, 265)], Pen.CUT)
    assert said_of([with_shapes(one, [*one.shapes, outline])]) == ""
    (closer,) = Placing(dx=-8).shapes([outline])
    assert said_of([with_shapes(one, [*one.shapes, closer])]) == ""  # the place at the left is free there
    across = polygon([Point(150, 20), Point(160, 15), Point(195, 24)], Pen.CUT)
    assert "0 codes" in said_of([with_shapes(one, [*one.shapes, across])])
    (left,) = sheets(total=1)
    assert "something else" in said_of([with_shapes(left, [*left.shapes, closer])])


@pytest.mark.parametrize("which", range(8))
@pytest.mark.parametrize("move", [(0.1, 0.0), (-0.1, 0.0), (0.0, 0.1), (0.0, -0.1)])
def test_a_moved_target_is_found(which: int, move: tuple[float, float]) -> None:
    """A ring 0.1 mm off its place: the corners no longer agree with the code, the others no longer lie between them.

    Along its side one of the middle ones may stand elsewhere; where it must stand is another proof's matter.
    """
    (one,) = sheets(total=1)
    rings = [shape for shape in one.shapes if isinstance(shape, Curve)]
    others = [shape for shape in one.shapes if shape is not rings[which]]
    moved = Placing(dx=move[0], dy=move[1]).shapes([rings[which]])
    along = which in ((4, 5) if move[1] else (6, 7))
    assert ("targets" in said_of([with_shapes(one, [*moved, *others])])) != along
