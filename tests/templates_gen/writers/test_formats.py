"""Every format against the same sheets: what is written comes back, to the micrometre and to the letter."""

from __future__ import annotations

import hashlib
import math
import os
import subprocess
import sys
from collections.abc import Sequence
from concurrent.futures import ProcessPoolExecutor
from contextlib import suppress
from multiprocessing import get_context
from pathlib import Path

import pytest
from damage import damaged
from hypothesis import example, given, settings
from hypothesis import strategies as st
from same import assert_same
from strategies import sheets

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Step, Text, circle, filled, line, polygon
from layout.drawing.sheet import PT, Sheet
from layout.values.errors import LayoutError
from templates_gen.files.formats import FORMATS, About, ReadError
from templates_gen.lettering import fonts
from templates_gen.lettering.outlines import outlined

LETTERS = "".join(fonts.metrics().advances)
ROOT = Path(__file__).parents[3]
ABOUT = About("Demo loom", '{"name": "Zoë Łukasz Ольга"}')
names = pytest.mark.parametrize("name", ["pdf", "svg"])  # for the eye; those for cutters have tests of their own


def written(name: str, drawn: Sequence[Sheet], about: About = ABOUT) -> bytes:
    """The file, words outlined where the format has none."""
    kind = FORMATS[name]
    return kind.write([sheet if kind.words else outlined(sheet) for sheet in drawn], about)


@names
@settings(deadline=None)
@given(drawn=sheets(LETTERS))
def test_every_sheet_comes_back(name: str, drawn: Sheet) -> None:
    """Whatever is drawn is read back: shapes, order, pens and words exactly, places to a micrometre."""
    found = FORMATS[name].read(written(name, [drawn]))
    (sheet,) = found.sheets
    assert_same(drawn if FORMATS[name].words else outlined(drawn), sheet)


@names
@settings(deadline=None)
@given(inputs=st.text(st.characters(exclude_categories=["Cs"])))
def test_the_inputs_come_back_to_the_letter(name: str, inputs: str) -> None:
    """The inputs are any Unicode text whatever, control characters and non-characters included."""
    about = About("Zoë Łukasz Ольга 織", inputs)
    assert FORMATS[name].read(written(name, [Sheet("", 10, 10, ())], about)).about == about


@names
@example(title="þÿ")
@example(title="ï»¿x")
@example(title="\xad")
@example(title="½ € Ž •")
@settings(deadline=None)
@given(title=st.text(st.characters(exclude_categories=["Cs", "Cc"], exclude_characters="\ufffe\uffff"), max_size=30))
def test_a_title_comes_back(name: str, title: str) -> None:
    """A title in any script is read back as it was given, or is refused before anything is written."""
    try:
        data = written(name, [Sheet("", 10, 10, ())], About(title, ""))
    except LayoutError:
        assert any(ord(letter) & 0xFFFE == 0xFFFE for letter in title)  # the other planes' non-characters
    else:
        assert FORMATS[name].read(data).about.title == title


P = Point
SQUARE = (P(0, 0), P(5, 0), P(5, 5), P(0, 5))
BAD = {
    "no sheet": [],
    "not a number": [Sheet("a", 50, 50, (line(P(1, 2), P(3, math.nan), Pen.MARK),))],
    "infinite": [Sheet("a", 50, 50, (line(P(-math.inf, 2), P(3, 4), Pen.MARK),))],
    "a bend that is not a number": [Sheet("a", 50, 50, (Curve(P(0, 0), (Step(P(1, 1), P(0, math.nan)),), Pen.MARK),))],
    "a region that is not a number": [Sheet("a", 50, 50, (filled((P(0, 0), P(1, math.nan), P(1, 1)), Pen.TINT),))],
    "over 3.5 m": [Sheet("a", 3501, 50, ())],
    "far off": [Sheet("a", 50, 50, (line(P(1, 2), P(3, 4e5), Pen.MARK),))],
    "no width": [Sheet("a", 0, 50, ())],
    "height that is not a number": [Sheet("a", 50, math.nan, ())],
    "no step": [Sheet("a", 50, 50, (Curve(P(1, 1), (), Pen.MARK),))],
    "no length": [Sheet("a", 50, 50, (line(P(1, 2), P(1, 2), Pen.MARK),))],
    "an arc in line": [Sheet("a", 50, 50, (Curve(P(0, 0), (Step(P(2, 2), P(1, 1)),), Pen.MARK),))],
    "an arc of 90 degrees": [Sheet("a", 50, 50, (Curve(P(1, 0), (Step(P(0, 1), P(0.5**0.5, 0.5**0.5)),), Pen.MARK),))],
    "a line with a pen that fills": [Sheet("a", 50, 50, (polygon(SQUARE, Pen.TINT),))],
    "a region with a line pen": [Sheet("a", 50, 50, (Region((polygon(SQUARE, Pen.MARK),), Pen.MARK),))],
    "a region of two pens": [Sheet("a", 50, 50, (Region((polygon(SQUARE, Pen.TINT),), Pen.SOLID),))],
    "a region that is open": [Sheet("a", 50, 50, (Region((line(P(0, 0), P(1, 1), Pen.TINT),), Pen.TINT),))],
    "a region of nothing": [Sheet("a", 50, 50, (Region((), Pen.TINT),))],
    "half a character": [Sheet("\ud800", 50, 50, ())],
}


@names
@pytest.mark.parametrize("fault", BAD)
def test_what_cannot_be_drawn_right_is_refused(name: str, fault: str) -> None:
    """Nothing is handed to a library that it would draw wrong or not at all."""
    with pytest.raises(LayoutError):
        FORMATS[name].write(BAD[fault], ABOUT)


@names
@pytest.mark.parametrize("about", [About("a\nb", ""), About("\x00", ""), About("\ud800", ""), About("", "\udfff")])
def test_what_no_file_can_say_of_itself_is_refused(name: str, about: About) -> None:
    """Control characters in a title, and half a character anywhere."""
    with pytest.raises(LayoutError):
        written(name, [Sheet("a", 10, 10, ())], about)


def sample() -> list[Sheet]:
    """A sheet with a shape of every kind."""
    shapes: list[Shape] = [
        filled(SQUARE, Pen.TINT),
        circle(P(40, 40), 10, Pen.CUT),
        Text(P(9, 9), 4, "Zoë Łukasz Ольга", 30),
    ]
    shapes += [line(P(10 + k, 20), P(10 + k, 26), Pen.MARK) for k in range(120)]
    return [Sheet("strip", 595 * PT, 790 * PT, (*shapes, polygon(SQUARE, Pen.EDGE)))]


def digest(name: str) -> str:
    """What the sample's file amounts to, for other processes to compare."""
    return hashlib.sha256(written(name, sample())).hexdigest()


def test_the_same_bytes_in_any_process() -> None:
    """No hash seed, time zone, language or date of the surroundings shows in a file."""
    code = "from test_formats import digest; print(digest('pdf'), digest('svg'))"
    for surroundings in (
        {"PYTHONHASHSEED": "1", "TZ": "Asia/Tokyo", "LC_ALL": "C"},
        {"PYTHONHASHSEED": "2", "TZ": "America/Lima", "SOURCE_DATE_EPOCH": "1234567890", "LANG": "de_DE.UTF-8"},
    ):
        path = os.pathsep.join(map(str, (ROOT, ROOT / "tests", Path(__file__).parent)))
        environment = {**os.environ, "PYTHONPATH": path, **surroundings}
        ran = subprocess.run([sys.executable, "-c", code], env=environment, capture_output=True, text=True, check=True)
        assert ran.stdout.split() == [digest("pdf"), digest("svg")]


@names
def test_the_same_bytes_again_and_after_other_files(name: str) -> None:
    """A file does not depend on what its process wrote before."""
    first = digest(name)
    written(name, [Sheet("other", 50, 50, (Text(P(1, 1), 4, "ŵŷ"),))])
    assert digest(name) == first


@names
def test_damaged_files_are_refused_and_nothing_worse(name: str) -> None:
    """Bytes cut short or changed at random are read or refused, never met with another error."""
    for broken in damaged(written(name, sample())):
        with suppress(ReadError):
            assert len(FORMATS[name].read(broken).sheets) == 1


@names
@pytest.mark.parametrize(
    "data", [b"", b"\0", b"%PDF-1.3\n", b"<svg/>", b"\xff\xfe<\0?\0", b"startxref" * 3, bytes(range(256))]
)
def test_other_bytes_are_refused(name: str, data: bytes) -> None:
    """What was never a file of ours is refused in one sentence."""
    with pytest.raises(ReadError):
        FORMATS[name].read(data)


@names
def test_one_format_refuses_the_other(name: str) -> None:
    """A reader takes files of its own format only."""
    for other in {"pdf", "svg"} - {name}:
        with pytest.raises(ReadError):
            FORMATS[name].read(written(other, sample()))


def test_the_table_names_each_format_by_its_suffix() -> None:
    """A file's name tells its format."""
    assert all(kind.suffix == f".{name}" for name, kind in FORMATS.items())


@names
def test_the_same_bytes_from_spawned_workers(name: str) -> None:
    """A worker that starts afresh writes the same file."""
    drawn = [sheet if FORMATS[name].words else outlined(sheet) for sheet in sample()]
    with ProcessPoolExecutor(1, mp_context=get_context("spawn")) as pool:
        data = pool.submit(FORMATS[name].write, drawn, ABOUT).result()
    assert data == FORMATS[name].write(drawn, ABOUT)
