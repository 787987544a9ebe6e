"""The signs of operations in a PDF: in the colours of the stock that the file carries, and in no other."""

from __future__ import annotations

import json

import pytest
from pdf_bytes import put_right, unpacked
from pypdfium2 import PdfDocument

from layout.cutting.job.swatches import swatch
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Text, line
from layout.drawing.sheet import Sheet, painted
from layout.values.errors import LayoutError
from templates_gen.files.formats import FORMATS, About, ReadError
from templates_gen.verify.compare import compare

read, write = FORMATS["pdf"].read, FORMATS["pdf"].write
COLOURS = {"engrave": "#c39a6b", "score": "#7a6f8f", "cut": "#4a2c2a", "reference": "#a19a8e"}
NAMES = ("engrave", "score", "cut")


def about(colours: object) -> About:
    """A file of a stock with these colours."""
    return About("Job", json.dumps({"kit": {}, "stock": {"colours": colours}}))


def sheet() -> Sheet:
    """The three signs one over the other, a line and a word."""
    signs = [shape for k, name in enumerate(NAMES) for shape in swatch(name, Point(10, 10 + 10 * k))]
    shapes = [*signs, line(Point(5, 5), Point(30, 5), Pen.HELP), Text(Point(30, 10), 3.0, "cut")]
    return Sheet("job 1 of 1", 60, 50, painted(shapes))


def test_signs_come_back_and_look_as_the_stock_says() -> None:
    """Read by their colours, and rendered by pdfium in just these; the same with two colours exchanged."""
    for colours in (COLOURS, {**COLOURS, "engrave": COLOURS["cut"], "cut": "#00ff80"}):
        data = write([sheet()], about(colours))
        assert [each.pen for each in read(data).sheets[0].shapes] == [each.pen for each in sheet().shapes]
        image = PdfDocument(data)[0].render(scale=4).to_pil().convert("RGB")
        for k, name in enumerate(NAMES):
            pixel = image.getpixel((int(11 / 25.4 * 72 * 4), image.height - int((10 + 10 * k) / 25.4 * 72 * 4)))
            assert "#{:02x}{:02x}{:02x}".format(*pixel) == colours[name]


@pytest.mark.parametrize("colours", [{}, None, {"engrave": "#c39a6b"}, dict.fromkeys(NAMES, "red"), [1]])
def test_a_sheet_with_signs_needs_the_colours(colours: object) -> None:
    """Without them it is not written; a file of a kit alone has none."""
    with pytest.raises(LayoutError, match="needs the stock"):
        write([sheet()], about(colours))
    with pytest.raises(LayoutError, match="needs the stock"):
        write([sheet()], About("Job", '{"kit": {}}'))


def respelt(data: bytes, old: str, new: str) -> bytes:
    """A file of ours, its streams unpacked, with the first `old` of a page written as `new`."""
    text = unpacked(data).decode("latin-1")
    assert old in text
    return put_right(text.replace(old, new, 1))


OWN = "0.76471 0.60392 0.41961 rg"


def test_a_file_that_is_unpacked_reads_the_same() -> None:
    """So the changes below are all that is refused."""
    data = write([sheet()], about(COLOURS))
    assert read(respelt(data, OWN, OWN)).sheets == read(data).sheets


@pytest.mark.parametrize("other", ["0.5 0.5 0.5 rg", "0.29020 0.17255 0.16471 rg", "0.7648 0.60392 0.41961 rg"])
def test_no_other_colour_is_read(other: str) -> None:
    """Not one of no operation, nor one a little off."""
    data = write([sheet()], about({**COLOURS, "cut": "#102030"}))
    with pytest.raises(ReadError, match="no operation of the stock has the colour"):
        read(respelt(data, OWN, other))


@pytest.mark.parametrize(
    "other", ["1.5 0.6 0.4 rg", "-0.1 0.6 0.4 rg", "0.76471 0.60392 rg", "0.76471 0.60392 0.41961 RG"]
)
def test_what_is_no_colour_is_refused(other: str) -> None:
    """Numbers beyond a colour, too few of them, and colours of lines."""
    with pytest.raises(ReadError):
        read(respelt(write([sheet()], about(COLOURS)), OWN, other))


def test_words_are_never_coloured() -> None:
    """A colour that stays set when words begin is refused."""
    data = write([sheet()], about(COLOURS))
    with pytest.raises(ReadError, match="grey"):
        read(respelt(data, "0 g\nBT", f"{OWN}\nBT"))


def test_colours_exchanged_are_other_signs() -> None:
    """Of two operations: the proof compares pens, and sees that they are not those of the plan."""
    data = write([sheet()], about(COLOURS))
    found = read(respelt(data, OWN, "0.29020 0.17255 0.16471 rg")).sheets
    assert not compare([sheet()], found).sound
