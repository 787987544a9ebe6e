"""PDF files against ISO 32000, a file typed by hand and pdfium; and what the reader must refuse."""

from __future__ import annotations

import ctypes
import math
import re
import subprocess
import sys
import zlib
from io import BytesIO
from pathlib import Path

import pypdfium2
import pypdfium2.raw as pdfium
import pytest
from font_parts import part_of
from fontTools.ttLib import TTFont as FontProgram
from pdf_bytes import put_right
from pypdf import PdfReader
from pypdf.generic import ContentStream
from pypdfium2 import PdfDocument
from rasters import inked, pdf_pixels
from reportlab.pdfbase import pdfdoc, pdfmetrics
from reportlab.pdfbase.pdfdoc import PDFString
from reportlab.pdfbase.ttfonts import TTFont

from layout.drawing.pens import Face, Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Step, Text, circle, filled, line, polygon, rectangle
from layout.drawing.sheet import Sheet
from layout.values.errors import LayoutError
from templates_gen.files.formats import FORMATS, About, ReadError
from templates_gen.lettering import fonts
from templates_gen.writers.pdf import _canvas
from templates_gen.writers.pdf_fonts import encoder, literal
from templates_gen.writers.unhinted import unhinted

read, write = FORMATS["pdf"].read, FORMATS["pdf"].write
ROOT = Path(__file__).parents[3]
LETTERS = {0x28: "(", 0x41: "A", 0x62: "ë", 0x80: "Ж"}  # what the codes of its font stand for
ABOUT = About("Demo loom", '{"name": "Zoë"}')
P = Point


def with_font(file: bytes, program: bytes) -> bytes:
    """A file with a font program where its words ask for one, its lengths and offsets put right."""
    text = file.decode("latin-1").replace("HERE STANDS THE FONT PROGRAM\n", program.decode("latin-1"))
    return put_right(text.replace("/Length1 23", f"/Length1 {len(program)}"))


TYPED = with_font((ROOT / "tests" / "hand_typed" / "three-lines.pdf").read_bytes(), part_of(LETTERS))


def marks(count: int) -> list[Shape]:
    """Marks a quarter of a millimetre apart."""
    return [line(P(10 + k / 4, 20), P(10 + k / 4, 25), Pen.MARK) for k in range(count)]


def content(data: bytes) -> str:
    """The operators of the first page, found in the bytes without a PDF library."""
    streams = re.findall(rb"<<\n/Filter \[ /FlateDecode \] /Length \d+\n>>\nstream\n(.*?)endstream", data, re.DOTALL)
    pages = [zlib.decompress(stream) for stream in streams]
    return next(page for page in pages if page.startswith(b"1 0 0 1 0 0 cm")).decode()


# --- typed by hand


def test_a_file_typed_by_hand_is_read_in_millimetres() -> None:
    """72 units are 25.4 mm (ISO 32000: one unit is 1/72 inch); pens are known by width, grey and dash."""
    document = read(TYPED)
    (sheet,) = document.sheets
    assert document.about == About("Typed by hand", "{}")
    assert (sheet.name, sheet.width, sheet.height) == ("three lines", 101.6, 50.8)
    tint, first, second, frame, bend, words, turned = sheet.shapes
    assert isinstance(tint, Region)
    assert (tint.pen, len(tint.contours)) == (Pen.TINT, 1)
    near(tint.contours[0], [(25.4, 12.7), (50.8, 12.7), (50.8, 25.4), (25.4, 25.4)], Pen.TINT, closed=True)
    near(first, [(12.7, 12.7), (12.7, 38.1)], Pen.HOLE)
    near(second, [(25.4, 12.7), (25.4, 38.1)], Pen.HOLE)
    near(frame, [(3.175, 3.175), (98.425, 3.175), (98.425, 47.625), (3.175, 47.625)], Pen.CENTRE, closed=True)
    near(bend, [(70.55556, 35.27778), (66.42251, 45.25584)], Pen.REGISTER)
    assert isinstance(bend, Curve)
    assert bend.steps[0].through == pytest.approx((69.48141, 40.67787), abs=1e-4)  # r 40 units about 160, 100 at 22.5°
    assert words == Text(pytest.approx((31.75, 31.75)), pytest.approx(5), "Aë(Ж", 0)
    assert turned == Text(pytest.approx((50.8, 6.35)), pytest.approx(5), "ë", 90)


def near(shape: Shape, points: list[tuple[float, float]], pen: Pen, closed: bool = False) -> None:
    """The shape runs through these points, in mm, to a hundredth of a micrometre."""
    assert isinstance(shape, Curve)
    assert (shape.pen, shape.closed) == (pen, closed)
    assert len(shape.points()) == len(points)
    for found, wanted in zip(shape.points(), points, strict=True):
        assert found == pytest.approx(wanted, abs=1e-5)


# --- what the reader refuses


def retyped(*changes: tuple[str, str]) -> bytes:
    """The file typed by hand with other words in it, its lengths and offsets put right again."""
    text = TYPED.decode("latin-1")
    for old, new in changes:
        assert text.count(old) >= 1, old
        text = text.replace(old, new, 1)
    return put_right(text)


def test_retyping_as_such_is_not_refused() -> None:
    """The same file with nothing or only a word changed is read: what follows is refused for its change alone."""
    assert read(retyped()) == read(TYPED)
    assert read(retyped(("Typed by hand", "Typed again"))).about.title == "Typed again"
    assert len(read(retyped(("1 0 0 1 0 0 cm\n", ""))).sheets[0].shapes) == 7


ONE = "0.9 g\n"  # a place between shapes
IN_TEXT = "/T 14.17323 Tf\n"
OPERATORS = {
    "a form or image": (ONE, "/Fm1 Do 0.9 g\n"),
    "a scale": ("1 0 0 1 0 0 cm", "0.999 0 0 0.999 0 0 cm"),
    "a shift": ("1 0 0 1 0 0 cm", "1 0 0 1 0 1 cm"),
    "a second matrix": (ONE, "1 0 0 1 0 0 cm 0.9 g\n"),
    "a matrix run into the next word": ("0 0 cm\n", "0 0 cm"),
    "a matrix later on": ("S\n0 g", "S 2 0 0 2 0 0 cm\n0 g"),
    "a saved state": (ONE, "q 0.9 g Q\n0.9 g\n"),
    "a state from the resources": (ONE, "/GS1 gs 0.9 g\n"),
    "a rectangle after a place": (ONE, "0.9 g 9 9 m 10 10 20 20 re f\n"),
    "a rectangle of three numbers": (ONE, "0.9 g 10 20 20 re f\n"),
    "a rectangle within words": ("(b) Tj", "(b) Tj 10 10 20 20 re f"),
    "a curve of other handles": ("S\n0.70866 w [", "S 9 9 m 9 9 20 20 v S\n0.70866 w ["),
    "a curve of one handle": ("S\n0.70866 w [", "S 9 9 m 15 15 20 20 y S\n0.70866 w ["),
    "an image in the stream": (ONE, "BI /W 1 /H 1 ID x EI 0.9 g\n"),
    "a shading": (ONE, "/Sh1 sh 0.9 g\n"),
    "a colour for fills": (ONE, "1 0 0 rg\n"),
    "a colour for lines": ("S\n0.70866 w [", "S 1 0 0 RG\n0.70866 w ["),
    "four inks": (ONE, "0 0 0 1 k\n"),
    "a colour space": (ONE, "/CS1 cs 0.9 g\n"),
    "a clip": ("l h f", "l h W n"),
    "even and odd": ("l h f", "l h f*"),
    "fill and line": ("l h f", "l h B"),
    "a closing line": ("l h S", "l s"),
    "an old fill": ("l h f", "l h F"),
    "a path thrown away": ("l h f", "l h n"),
    "line caps": (ONE, "1 J 0.9 g\n"),
    "line joins": (ONE, "1 j 0.9 g\n"),
    "a mitre limit": (ONE, "4 M 0.9 g\n"),
    "a flatness": (ONE, "1 i 0.9 g\n"),
    "marked content": (ONE, "/OC BMC 0.9 g EMC 0.9 g\n"),
    "compatibility": (ONE, "BX EX 0.9 g\n"),
    "a comment": (ONE, "% note\n0.9 g\n"),
    "letters apart": (IN_TEXT, "/T 14.17323 Tf 1 Tc\n"),
    "words apart": (IN_TEXT, "/T 14.17323 Tf 1 Tw\n"),
    "wide letters": (IN_TEXT, "/T 14.17323 Tf 110 Tz\n"),
    "hollow letters": (IN_TEXT, "/T 14.17323 Tf 1 Tr\n"),
    "invisible letters": (IN_TEXT, "/T 14.17323 Tf 3 Tr\n"),
    "raised letters": (IN_TEXT, "/T 14.17323 Tf 2 Ts\n"),
    "leading": (IN_TEXT, "/T 14.17323 Tf 12 TL\n"),
    "a moved line": ("1 0 0 1 90 90 Tm", "90 90 Td"),
    "a moved line with leading": ("1 0 0 1 90 90 Tm", "90 90 TD"),
    "a next line": ("(b) Tj", "(b) Tj T*"),
    "spaced strings": ("(b) Tj", "[(b) 20 (b)] TJ"),
    "a string on the next line": ("(b) Tj", "(b) '"),
    "a string in hexadecimal": ("(b) Tj", "<62> Tj"),
    "a raw byte": ("(b) Tj", "(\xe9) Tj"),
    "another escape": ("(b) Tj", "(\\n) Tj"),
    "an open string": ("(b) Tj", "(b Tj"),
    "a dictionary": (ONE, "<< /A 1 >> 0.9 g\n"),
    "an exponent": ("36 36 m", "3.6e1 36 m"),
    "a plus": ("36 36 m", "+36 36 m"),
    "a bare point": ("36 36 m", "36. 36 m"),
    "no number": ("36 36 m", "nan 36 m"),
    "a number too many": ("36 36 m", "1 36 36 m"),
    "a number too few": ("36 36 m", "36 m"),
    "a large number": ("36 36 m", "123456789 36 m"),
    "a vertical tab for a space": ("36 36 m", "36\x0b36 m"),
    "a vertical tab for the end of a line": ("0.9 g\n", "0.9 g\x0b"),
    "a vertical tab among numbers": ("1 0 0 1 90 90 Tm", "1 0 0 1\x0b90 90 Tm"),
    "a vertical tab after the matrix": ("0 0 cm\n", "0 0 cm\x0b"),
    "a vertical tab at the end": ("(b) Tj\nET\n", "(b) Tj\nET\n\x0b"),
    "a null for a space": ("36 36 m", "36\x0036 m"),
    "a separator that is a space elsewhere": ("36 36 m", "36\x1c36 m"),
    "a name with an escape": (IN_TEXT, "/#54 14.17323 Tf\n"),
    "a name with a comment": (IN_TEXT, "/T% 14.17323 Tf\n"),
    "a code beyond a byte": ("(b) Tj", "(\\542) Tj"),
    "endless decimals": ("36 36 m", f"36.{'0' * 400} 36 m"),
    "a move that draws nothing": ("l S\n0.70866 w [", "l 9 9 m S\n0.70866 w ["),
    "a line from nowhere": ("36 36 m 36 108 l", "36 108 l"),
    "a line after the closing": ("9 135 l h S", "9 135 l h 9 9 l S"),
    "a closing of nothing": (ONE, "h 0.9 g\n"),
    "a line drawn of nothing": (ONE, "S 0.9 g\n"),
    "a fill of nothing": (ONE, "f 0.9 g\n"),
    "an open fill": ("72 72 l h f", "72 72 l f"),
    "a width within a path": ("36 36 m", "36 36 m 1 w"),
    "words within a path": ("36 36 m", "36 36 m BT ET"),
    "a path within words": ("(b) Tj", "(b) Tj 9 9 m 20 20 l S"),
    "a fill left open": ("(b) Tj\nET\n", "(b) Tj\nET\n9 9 m 20 20 l\n"),
    "words left open": ("(b) Tj\nET\n", "(b) Tj\n"),
    "words in words": ("BT\n", "BT BT\n"),
    "a wrong width": ("0.70866 w\n36", "0.72 w\n36"),
    "no width": ("0.70866 w\n36", "36"),
    "a wrong grey": ("0 d 0 G", "0 d 0.45 G"),
    "a wrong fill": (ONE, "0.8 g\n"),
    "a wrong dash": ("[ 6.80315 2.26772 1.70079 2.26772 ]", "[ 6.80315 2.3 1.70079 2.26772 ]"),
    "a dash too many": ("1.70079 2.26772 ]", "1.70079 2.26772 1 1 ]"),
    "a dash that is no number": ("[ 6.80315 2.26772", "[ 6.80315 2..1"),
    "a dash begun within": ("1.70079 2.26772 ] 0 d", "1.70079 2.26772 ] 1 d"),
    "grey words": ("0 g\nBT", "0.9 g\nBT"),
    "large words": ("0 1 -1 0 144 18 Tm", "0 1.01 -1.01 0 144 18 Tm"),
    "wide words": ("0 1 -1 0 144 18 Tm", "0 1 -1.01 0 144 18 Tm"),
    "mirrored words": ("1 0 0 1 90 90 Tm", "-1 0 0 1 90 90 Tm"),
    "slanted words": ("1 0 0 1 90 90 Tm", "1 0 0.2 1 90 90 Tm"),
    "an unknown font": (IN_TEXT, "/U 14.17323 Tf\n"),
    "no font": (IN_TEXT, ""),
    "letters of no size": (IN_TEXT, "/T 0 Tf\n"),
    "letters of negative size": (IN_TEXT, "/T -14 Tf\n"),
    "no place": ("1 0 0 1 90 90 Tm", ""),
    "words that hang on others": ("0 1 -1 0 144 18 Tm", ""),
    "a code without meaning": ("(b) Tj", "(c) Tj"),
    "a curve that is no arc": ("110.60866 195.78573 120.78282", "112.60866 195.78573 118.78282"),
    "a curve a hair off an arc": ("110.60866 195.78573 120.78282", "110.61466 195.78573 120.77682"),
    "an arc of more than 45 degrees": (
        "200.00000 110.60866 195.78573 120.78282 188.28427 128.28427",
        "200.00000 122.09139 182.09139 140.00000 160.00000 140.00000",
    ),
    "a curve that goes nowhere": ("188.28427 128.28427", "200 100"),
}
STRUCTURE = {
    "a crop box": ("/MediaBox", "/CropBox [0 0 99 99] /MediaBox"),
    "a trim box": ("/MediaBox", "/TrimBox [0 0 99 99] /MediaBox"),
    "a rotation": ("/MediaBox", "/Rotate 90 /MediaBox"),
    "a rotation by nothing": ("/MediaBox", "/Rotate 0 /MediaBox"),
    "a user unit": ("/MediaBox", "/UserUnit 2 /MediaBox"),
    "annotations": ("/MediaBox", "/Annots [] /MediaBox"),
    "a page's actions": ("/MediaBox", "/AA << >> /MediaBox"),
    "a group": ("/MediaBox", "/Group << /S /Transparency >> /MediaBox"),
    "another key": ("/MediaBox", "/Thumb 5 0 R /MediaBox"),
    "a page box off the origin": ("[ 0 0 288 144 ]", "[ 10 0 288 144 ]"),
    "a page box of nothing": ("[ 0 0 288 144 ]", "[ 0 0 0 144 ]"),
    "a page box of three": ("[ 0 0 288 144 ]", "[ 0 0 288 ]"),
    "a page box of words": ("[ 0 0 288 144 ]", "[ 0 0 (wide) 144 ]"),
    "an inherited page box": ("/Count 1", "/Count 1 /MediaBox [ 0 0 100 100 ]"),
    "an inherited rotation": ("/Count 1", "/Count 1 /Rotate 90"),
    "forms": ("/Font <<", "/XObject << /Fm1 9 0 R >> /Font <<"),
    "states": ("/Font <<", "/ExtGState << /G << /LW 9 >> >> /Font <<"),
    "several contents": ("/Contents 4 0 R", "/Contents [ 4 0 R ]"),
    "no contents": ("/Contents 4 0 R", ""),
    "another packing": ("/Length 371", "/Filter /ASCIIHexDecode /Length 371"),
    "an action": ("/Pages 2 0 R", "/OpenAction [3 0 R /Fit] /Pages 2 0 R"),
    "scripts": ("/Pages 2 0 R", "/Names << /JavaScript << >> >> /Pages 2 0 R"),
    "a form to fill in": ("/Pages 2 0 R", "/AcroForm << >> /Pages 2 0 R"),
    "layers": ("/Pages 2 0 R", "/OCProperties << >> /Pages 2 0 R"),
    "metadata": ("/Pages 2 0 R", "/Metadata 9 0 R /Pages 2 0 R"),
    "another print scaling": ("/PrintScaling /None", "/PrintScaling /AppDefault"),
    "another wish for viewers": ("/PrintScaling /None", "/PrintScaling /None /PrintArea /CropBox"),
    "no print scaling": ("/PrintScaling /None", ""),
    "no wishes for viewers": ("/ViewerPreferences << /PrintScaling /None >>", ""),
    "no language": ("/Lang (en)", ""),
    "another language": ("/Lang (en)", "/Lang (de)"),
    "another author": ("(templates-gen)", "(somebody)"),
    "no title": ("/Title (Typed by hand)", ""),
    "no inputs": ("/Keywords (", "/Subject ("),
    "other keywords": ('{"inputs": "{}", "sheets": ["three lines"]}', "frame loom"),
    "inputs of another kind": ('"inputs": "{}"', '"inputs": {}'),
    "another key in the inputs": ('"inputs"', '"more": 1, "inputs"'),
    "more sheets named": ('["three lines"]', '["three", "lines"]'),
    "more pages counted": ("/Count 1", "/Count 2"),
    "more pages": ("[ 3 0 R ]", "[ 3 0 R 3 0 R ]"),
    "pages in pages": ("[ 3 0 R ]", "[ 2 0 R ]"),
    "a page that is none": ("/Type /Page /Parent", "/Type /Pages /Parent"),
    "encryption": ("/Root", "/Encrypt << /Filter /Standard /V 1 /R 2 >> /Root"),
    "an older part": ("/Root", "/Prev 9 /Root"),
    "a second ending": ("%%EOF\n", "%%EOF\nstartxref\n9\n%%EOF\n"),
    "another font": ("/BaseFont /ABCDEF+OpenSans-Regular", "/BaseFont /Helvetica"),
    "a font of another kind": ("/Subtype /TrueType", "/Subtype /Type1"),
    "a font of another name": ("/FontName /ABCDEF", "/FontName /ABCDEG"),
    "a font that is not embedded": ("/FontFile2 9 0 R", ""),
    "a font with other letters": ("/Subtype /TrueType", "/Subtype /TrueType /Encoding /WinAnsiEncoding"),
    "a key given twice": ("/Count 1", "/Count 1 /Count 1"),
    "a name with an escape": ("/MediaBox", "/#4dediaBox [ 0 0 9 9 ] /MediaBox"),
    "deep nesting": ("/Lang (en)", f"/Lang {'[' * 5000}{']' * 5000}"),
    "a list that ends as a dictionary": ("[ 3 0 R ]", "[ 3 0 R >>"),
    "a list that does not end": ("[ 3 0 R ]", "[ 3 0 R"),
    "another page's tree": ("/Parent 2 0 R", "/Parent 3 0 R"),
    "no kind of catalogue": ("/Type /Catalog", "/Type /Page"),
    "a view in full": ("/Pages 2 0 R", "/PageMode /FullScreen /Pages 2 0 R"),
    "a page named twice": ("[ 3 0 R ] /Count 1", "[ 3 0 R 3 0 R ] /Count 2"),
    "a page in its place": ("[ 3 0 R ]", "[ << /Type /Page >> ]"),
    "a count that is no number": ("/Count 1", "/Count true"),
    "another version": ("%PDF-1.6", "%PDF-1.2"),
    "words before the file": ("%PDF-1.6", "words\n%PDF-1.6"),
    "words between objects": ("4 0 obj", "words\n4 0 obj"),
    "an object after the table": ("%%EOF\n", "%%EOF\n10 0 obj\n9\nendobj\n"),
    "another count of objects": ("/Size 10", "/Size 11"),
    "an object that is not there": ("/Contents 4 0 R", "/Contents 40 0 R"),
    "no font map": ("/ToUnicode 8 0 R", ""),
    "another font map": ("<62> <00EB>", "<62> <63> <00EB>"),
    "two font maps": ("endbfchar\n", "endbfchar\n1 beginbfchar\n<63> <0063>\nendbfchar\n"),
}  # fmt: skip


@pytest.mark.parametrize("change", OPERATORS)
def test_operators_that_are_not_ours_are_refused(change: str) -> None:
    """Whatever our writer never puts on a page ends the reading, with one sentence."""
    with pytest.raises(ReadError) as caught:
        read(retyped(OPERATORS[change]))
    assert "\n" not in str(caught.value)


@pytest.mark.parametrize("change", STRUCTURE)
def test_a_structure_that_is_not_ours_is_refused(change: str) -> None:
    """Whatever our writer never puts around a page ends the reading, with one sentence."""
    with pytest.raises(ReadError) as caught:
        read(retyped(STRUCTURE[change]))
    assert "\n" not in str(caught.value)


def test_a_table_of_wrong_places_is_refused() -> None:
    """Programs mend such a file by searching it, each in its own way; so do lengths that are not those of a stream."""
    for old, new in (
        (b"0000000009 00000 n", b"0000000010 00000 n"),
        (b"00000 n", b"00001 n"),
        (b"startxref\n", b"startxref\n1"),
        (b"/Length 371", b"/Length 350"),
    ):
        assert old in TYPED
        with pytest.raises(ReadError):
            read(TYPED.replace(old, new, 1))


def test_a_page_that_unpacks_without_end_is_refused() -> None:
    """A small stream that would fill the memory is given up."""
    packed = zlib.compress(b"0.9 g\n" * 17_000_000, 9).decode("latin-1")
    body = re.search(r"1 0 0 1 0 0 cm.*?ET\n", TYPED.decode("latin-1"), re.DOTALL)[0]
    with pytest.raises(ReadError):
        read(retyped((body, packed), ("/Length 371", "/Filter /FlateDecode /Length 371")))


def test_a_file_beyond_all_bounds_is_refused_unread() -> None:
    """Twenty times the largest real file is the limit."""
    with pytest.raises(ReadError, match="6000000"):
        read(bytes(16_000_001))


def test_the_reader_needs_no_writing_library(tmp_path: Path) -> None:
    """Reading brings in neither reportlab nor any writer, so the two cannot agree on a common mistake."""
    code = (
        "import sys; from pathlib import Path; from templates_gen.readers import pdf;"
        "pdf.read(Path(sys.argv[1]).read_bytes());"
        "print([name for name in sys.modules if 'reportlab' in name or 'writers' in name])"
    )
    file = tmp_path / "typed.pdf"
    file.write_bytes(TYPED)
    command = [sys.executable, "-c", code, str(file)]
    ran = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=True)
    assert ran.stdout.strip() == "[]"


# --- what the writer makes


@pytest.mark.parametrize("size", [(595, 790), (595, 842), (612, 792), (842, 1191), (792, 1224)])
def test_whole_points_stay_whole(size: tuple[int, int]) -> None:
    """A page of whole units is one in the file too: viewers round others on their own."""
    width, height = (side * 25.4 / 72 for side in size)
    data = write([Sheet("a", width, height, ())], ABOUT)
    assert b"/MediaBox [ 0 0 %d %d ]" % size in data
    assert PdfDocument(data)[0].get_size() == size


def test_an_inch_is_seventy_two_units() -> None:
    """ISO 32000: the unit of a page is 1/72 inch, and an inch is 25.4 mm."""
    data = write([Sheet("a", 25.4, 50.8, (line(P(12.7, 0), P(12.7, 25.4), Pen.MARK),))], ABOUT)
    assert b"/MediaBox [ 0 0 72 144 ]" in data
    assert "36.00000 0.00000 m 36.00000 72.00000 l" in content(data)


def test_nothing_is_in_a_file_that_could_move_the_page() -> None:
    """No other font, no second box, no turn, no unit, no form; each page's only matrix is the identity."""
    sheets = [Sheet("a", 100, 50, (*marks(9), Text(P(1, 1), 4, "a"))), Sheet("b", 100, 50, ())]
    data = write(sheets, ABOUT)
    for word in (b"Helvetica", b"/CropBox", b"/Rotate", b"/UserUnit", b"/XObject", b"/Trans", b"/Annots", b"ASCII85"):
        assert word not in data
    assert re.findall(r"(\S+ \S+ \S+ \S+ \S+ \S+) cm", content(data)) == ["1 0 0 1 0 0"]
    assert not re.search(r"\bDo\b|\bq\b|\bre\b", content(data))


def test_marks_share_a_path_of_at_most_a_hundred() -> None:
    """A run of one pen is stroked at once, in portions that a PostScript printer can hold; its look is set once."""
    operators = content(write([Sheet("a", 100, 50, tuple(marks(250)))], ABOUT)).split()
    portions = " ".join(operators).split(" S")[:-1]
    assert [portion.split().count("m") for portion in portions] == [100, 100, 50]
    assert operators.count("w") == 1
    assert operators.count("G") == operators.count("d") == 0


def test_a_look_is_set_only_where_it_changes() -> None:
    """Width and dash stay from pen to pen unless they differ; lines are black, as every page begins."""
    shapes = [
        line(P(1, k), P(9, k), pen)
        for k, pen in enumerate((Pen.HOLE, Pen.CENTRE, Pen.CENTRE_SHORT, Pen.CUT, Pen.THREAD_BACK))
    ]
    operators = content(write([Sheet("a", 100, 50, tuple(shapes))], ABOUT)).split()
    assert [operators.count(name) for name in "wdG"] == [2, 4, 0]


def test_words_of_many_letters_come_back_whole() -> None:
    """An embedded font holds 256 letters: words with all that the font carries go on from one into the next."""
    words = "".join(fonts.metrics().advances)
    data = write([Sheet("a", 100, 50, (Text(P(1, 1), 4, words), Text(P(1, 9), 4, words[::-1])))], ABOUT)
    assert [shape.words for shape in read(data).sheets[0].shapes if isinstance(shape, Text)] == [words, words[::-1]]


def test_no_words_come_back_as_no_words() -> None:
    """A text that says nothing is kept as it is."""
    assert read(write([Sheet("a", 9, 9, (Text(P(1, 1), 4, ""),))], ABOUT)).sheets[0].shapes[0].words == ""


def test_words_as_outlines_are_refused() -> None:
    """In a PDF words are text; outlines could not be known from arrow heads."""
    with pytest.raises(LayoutError, match="text"):
        write([Sheet("a", 9, 9, (filled((P(0, 0), P(1, 0), P(1, 1)), Pen.TEXT),))], ABOUT)


@pytest.mark.parametrize("words", ["織", "→", "a\nb", "a\xa0b", "e\u0308"])
def test_letters_that_the_font_lacks_are_refused(words: str) -> None:
    """Never a box, never a letter less."""
    with pytest.raises(LayoutError, match="font"):
        write([Sheet("a", 9, 9, (Text(P(1, 1), 4, words),))], ABOUT)


def test_an_arc_through_any_third_point_is_the_same_circle() -> None:
    """The third point need not be the middle: what comes back lies on the circle of the three."""
    at = [P(20 + 10 * math.cos(math.radians(a)), 20 + 10 * math.sin(math.radians(a))) for a in (10, 15, 50)]
    data = write([Sheet("a", 50, 50, (Curve(at[0], (Step(at[2], at[1]),), Pen.MARK),))], ABOUT)
    (found,) = read(data).sheets[0].shapes
    assert isinstance(found, Curve)
    wanted = (20 + 10 * math.cos(math.radians(30)), 20 + 10 * math.sin(math.radians(30)))
    assert found.steps[0].through == pytest.approx(wanted, abs=0.001)


# --- pdfium, from outside


def objects(data: bytes, kind: int) -> list[pypdfium2.PdfObject]:
    """The objects of one kind on the first page, as pdfium holds them."""
    document = PdfDocument(data)
    page = document[0]
    return list(page.get_objects(filter=[kind]))


def vertices(item: pypdfium2.PdfObject) -> list[tuple[float, float]]:
    """The points of a path in mm, handles of curves included."""
    found, x, y = [], ctypes.c_float(), ctypes.c_float()
    for k in range(pdfium.FPDFPath_CountSegments(item.raw)):
        pdfium.FPDFPathSegment_GetPoint(pdfium.FPDFPath_GetPathSegment(item.raw, k), x, y)
        found.append((x.value * 25.4 / 72, y.value * 25.4 / 72))
    return found


def test_pdfium_finds_every_mark_where_it_was_drawn() -> None:
    """Another program's own reading of the page has each mark within a micrometre."""
    drawn = marks(350)
    found = [
        point for item in objects(write([Sheet("a", 120, 50, tuple(drawn))], ABOUT), 2) for point in vertices(item)
    ]
    wanted = [point for mark in drawn if isinstance(mark, Curve) for point in mark.points()]
    assert len(found) == 700
    assert max(math.dist(a, b) for a, b in zip(found, wanted, strict=True)) < 0.001


def test_pdfium_finds_circles_round() -> None:
    """Each Bézier piece of a circle that pdfium holds stays within a tenth of a micrometre of r = 10 mm."""
    ring = circle(P(40, 30), 10, Pen.MARK)
    (item,) = objects(write([Sheet("a", 100, 60, (ring,))], ABOUT), 2)
    points = vertices(item)
    for k in range(0, 24, 3):
        a, b, c, d = points[k : k + 4]
        for t in (0, 0.2, 0.5, 0.8, 1):
            weights = ((1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t**2 * (1 - t), t**3)
            x, y = (sum(w * p[axis] for w, p in zip(weights, (a, b, c, d), strict=True)) for axis in (0, 1))
            assert math.hypot(x - 40, y - 30) == pytest.approx(10, abs=1e-4)


def test_pdfium_finds_words_at_their_place_and_size() -> None:
    """The text matrix and size as pdfium holds them, in mm."""
    (item,) = objects(write([Sheet("a", 100, 60, (Text(P(30, 20), 4, "Zoë", 30),))], ABOUT), 1)
    a, b, c, d, e, f = item.get_matrix().get()
    size = ctypes.c_float()
    pdfium.FPDFTextObj_GetFontSize(item.raw, size)
    cos, sin = math.cos(math.radians(30)), math.sin(math.radians(30))
    assert (a, b, c, d) == pytest.approx((cos, sin, -sin, cos), abs=1e-6)
    assert (e * 25.4 / 72, f * 25.4 / 72, size.value * 25.4 / 72) == pytest.approx((30, 20, 4), abs=0.001)


def test_pdfium_reads_names_in_three_scripts() -> None:
    """What is on the page can be searched and copied."""
    data = write([Sheet("a", 200, 60, (Text(P(10, 20), 4, "Zoë Łukasz Ольга"),))], ABOUT)
    assert PdfDocument(data)[0].get_textpage().get_text_bounded() == "Zoë Łukasz Ольга"


def test_pdfium_shows_a_line_at_its_pixels() -> None:
    """Rendered at ten pixels a millimetre, the ink's centre is where the lines were drawn, y upward."""
    shapes = (line(P(33.3, 10), P(33.3, 20), Pen.EDGE), line(P(60, 44.4), P(80, 44.4), Pen.EDGE))
    pixels = pdf_pixels(write([Sheet("a", 101.6, 50.8, shapes)], ABOUT))
    assert pixels.shape == (508, 1016)
    assert inked(pixels, 30, 37, 5, 25) == pytest.approx((33.3, 15), abs=0.02)
    assert inked(pixels, 55, 85, 40, 48) == pytest.approx((70, 44.4), abs=0.02)


def test_pdfium_fills_holes_by_their_turn() -> None:
    """A contour that turns back leaves paper; one that turns the same way does not (the non-zero rule)."""
    outer = polygon((P(10, 10), P(40, 10), P(40, 40), P(10, 40)), Pen.SOLID)
    back = polygon((P(20, 20), P(20, 30), P(30, 30), P(30, 20)), Pen.SOLID)
    same = polygon((P(20, 20), P(30, 20), P(30, 30), P(20, 30)), Pen.SOLID)
    for inner, value in ((back, 255), (same, 0)):
        pixels = pdf_pixels(write([Sheet("a", 50.8, 50.8, (Region((outer, inner), Pen.SOLID),))], ABOUT))
        assert pixels[508 - 250, 250] == value
        assert pixels[508 - 150, 150] == 0


def test_pdfium_knows_what_the_file_says_of_itself() -> None:
    """Title, author and the wish to be printed without scaling (ISO 32000-1, Table 150)."""
    document = PdfDocument(write([Sheet("a", 50, 50, ())], About("Zoë Łukasz", "{}")))
    facts = document.get_metadata_dict()
    assert (facts["Title"], facts["Author"]) == ("Zoë Łukasz", "templates-gen")
    assert not pdfium.FPDF_VIEWERREF_GetPrintScaling(document.raw)
    assert document.get_version() == 16  # the first version that knows this wish, by the same table


def test_the_file_names_its_language() -> None:
    """A screen reader finds the language in the catalogue, as pypdf does; the tag is that of the kit in the inputs."""
    for inputs, tag in (("{}", "en-GB"), ('{"kit": {"paper": {"language": "fr"}}}', "fr")):
        data = write([Sheet("a", 50, 50, ())], About("Loom", inputs))
        assert PdfReader(BytesIO(data)).root_object["/Lang"] == tag
        assert read(data).about.inputs == inputs


def test_a_file_in_another_language_than_its_kit_is_refused() -> None:
    """Its words would be read out wrongly."""
    data = write([Sheet("a", 50, 50, ())], About("Loom", '{"kit": {"paper": {"language": "fr"}}}'))
    with pytest.raises(ReadError, match="its language is 'es', but its sheets are for a kit in fr"):
        read(data.replace(b"/Lang (fr)", b"/Lang (es)"))


# --- the font of the library


def test_words_have_the_codes_that_the_library_gives_them() -> None:
    """ISO 32000-1, 7.3.4.2: every letter that can be said plainly, alone and beside letters that cannot."""
    plain = "".join(map(chr, range(32, 127)))
    for words in (plain, *plain, plain + "\u0416", "\u0416\u00eb " + plain):
        canvas = _canvas(About("", ""), "")
        font = pdfmetrics.getFont(Face.REGULAR.value)
        encode = encoder(canvas._doc, Face.REGULAR)
        runs = [
            (font.getSubsetInternalName(n, canvas._doc), codes) for n, codes in font.splitString(words, canvas._doc)
        ]
        assert encode(words) == [(name, literal(codes.decode("latin-1"))) for name, codes in runs]


def test_the_font_is_embedded_as_the_library_does_it() -> None:
    """What is made once and kept is what the library makes for each file: program, widths and packing."""
    _canvas(About("", ""), "")
    for face in Face:
        subset = [*range(128), 0x416, 0xEB]
        kept, fresh = (
            pdfmetrics.getFont(face.value).face,
            TTFont("again", str(fonts.font_path(face)), asciiReadable=1).face,
        )
        fresh.hmetrics = kept.hmetrics
        for _ in range(2):
            assert kept.makeSubset(subset) == unhinted(fresh.makeSubset(subset))
            assert kept.makeSubset(subset[:128]) == unhinted(fresh.makeSubset(subset[:128]))
            assert [kept.getCharWidth(code) for code in subset] == [
                pdfdoc.format(fresh.getCharWidth(code), None) for code in subset
            ]


def test_a_file_embeds_the_letters_that_it_says_and_no_others() -> None:
    """Read by a library of fonts: every other code of ASCII draws a space, and nothing of other letters is there."""
    words = "Fades & \u00eb\u0416"
    data = write([Sheet("a", 80, 20, (Text(Point(5, 5), 4, words),))], About("", ""))
    (text,) = read(data).sheets[0].shapes
    assert isinstance(text, Text)
    assert text.words == words
    (font,) = PdfReader(BytesIO(data)).pages[0]["/Resources"]["/Font"].values()
    program = font["/FontDescriptor"]["/FontFile2"].get_data()
    embedded = FontProgram(BytesIO(program))
    drawn = [name for name in embedded.getGlyphOrder() if embedded["glyf"][name].numberOfContours > 0]
    parts = {"\u00eb": 2}  # an accent, and the letter under it
    assert len(drawn) <= 1 + len(set(words) - {" "} - {*parts}) + sum(parts.values())  # 1: .notdef


def test_a_rectangle_is_read_as_it_was_drawn() -> None:
    """Written as a corner and two sides, whichever way it lies; pypdf sees the same operator."""
    shapes = (
        Region((rectangle(10, 10, 30.123, 20.456, Pen.SOLID), rectangle(40, 10, 41, 11, Pen.SOLID)), Pen.SOLID),
        filled([Point(50, 10), Point(50, 30), Point(60, 30), Point(60, 10)], Pen.SOLID),
    )
    data = write([Sheet("a", 80, 40, shapes)], About("", ""))
    for drawn, found in zip(shapes, read(data).sheets[0].shapes, strict=True):
        assert isinstance(found, Region)
        for one, other in zip(drawn.contours, found.contours, strict=True):
            assert other.points() == [pytest.approx(point, abs=1e-5) for point in one.points()]
    content = PdfReader(BytesIO(data)).pages[0].get_contents()
    assert content is not None
    assert [name for _, name in ContentStream(content, None).operations].count(b"re") == 2


def test_what_a_file_carries_is_escaped_as_the_library_does_it() -> None:
    """A kit may hold brackets, strokes and any letter."""
    for text in ("(", ")\\(", "plain", "".join(map(chr, range(256)))):
        assert f"({literal(text)})" == str(PDFString(text))
