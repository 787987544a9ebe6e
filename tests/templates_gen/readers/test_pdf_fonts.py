"""The embedded font of a PDF: whoever changes what a viewer draws from it is found out."""

from __future__ import annotations

import io
import struct
from collections.abc import Callable
from itertools import pairwise
from typing import Any

import pytest
from font_parts import Tables, part_of, program_of, tables_of
from fontTools.ttLib import TTFont
from pdf_bytes import put_right, unpacked
from pypdf import PdfReader, PdfWriter
from pypdf.generic import ArrayObject, FloatObject, NameObject, NumberObject, StreamObject, TextStringObject
from rasters import pdf_pixels

from layout.drawing.pens import Face, Pen
from layout.drawing.shapes import Point, Text
from layout.drawing.sheet import Sheet
from templates_gen.files.formats import FORMATS, About, ReadError
from templates_gen.lettering import fonts
from templates_gen.readers.pdf_font import _glyph_of
from templates_gen.readers.sfnt import Program

read, write = FORMATS["pdf"].read, FORMATS["pdf"].write
WORDS = "1 7 Ää (left) 12.5 mm"
DATA = write([Sheet("a", 120, 50, (Text(Point(10, 20), 8, WORDS),))], About("t", "{}"))


def font_in(file: PdfWriter | PdfReader) -> Any:
    """The dictionary of the first page's one font."""
    (font,) = file.pages[0]["/Resources"]["/Font"].get_object().values()  # type: ignore[index]
    return font.get_object()


def forged(change: Callable[[Any], None]) -> bytes:
    """The file with its font changed, put together by pypdf."""
    file = PdfWriter(clone_from=io.BytesIO(DATA))
    file.pdf_header = "%PDF-1.6"
    change(font_in(file))
    out = io.BytesIO()
    file.write(out)
    return out.getvalue()


def program(change: Callable[[Tables], Tables | bytes | None]) -> Callable[[Any], None]:
    """A change of the font program's tables."""

    def apply(font: Any) -> None:
        tables = tables_of(font["/FontDescriptor"]["/FontFile2"].get_data())
        new = change(tables)
        data = new if isinstance(new, bytes) else program_of(new or tables)
        stream = StreamObject()
        stream.set_data(data)
        packed = stream.flate_encode()
        packed[NameObject("/Length1")] = NumberObject(len(data))
        font["/FontDescriptor"][NameObject("/FontFile2")] = font.indirect_reference.pdf._add_object(packed)

    return apply


def font_map(old: bytes, new: bytes) -> Callable[[Any], None]:
    """A change of what the codes are said to stand for."""

    def apply(font: Any) -> None:
        said = font["/ToUnicode"].get_data()
        assert said.count(old) == 1
        stream = StreamObject()
        stream.set_data(said.replace(old, new))
        font[NameObject("/ToUnicode")] = font.indirect_reference.pdf._add_object(stream.flate_encode())

    return apply


def test_what_is_put_together_again_without_a_change_passes() -> None:
    """pypdf's own writing and a directory made anew are no forgeries: what follows is refused for its change alone."""
    (text,) = read(forged(program(lambda _: None))).sheets[0].shapes
    assert isinstance(text, Text)
    assert text.words == WORDS
    assert read(forged(font_map(b"<31> <0031>", b"<31> <0031>"))) == read(DATA)


def glyph_of(tables: Tables, code: int) -> int:
    """The glyph of a code."""
    return int(struct.unpack_from(">H", tables["cmap"], 22 + 2 * code)[0])


def exchanged_codes(tables: Tables) -> None:
    """1 draws 7, and 7 draws 1."""
    cmap = bytearray(tables["cmap"])
    one, seven = 22 + 2 * ord("1"), 22 + 2 * ord("7")
    cmap[one : one + 2], cmap[seven : seven + 2] = cmap[seven : seven + 2], cmap[one : one + 2]
    tables["cmap"] = bytes(cmap)


def exchanged_outlines(tables: Tables) -> None:
    """The outlines of 1 and 7 change places in the table of outlines."""
    places = struct.unpack(f">{len(tables['loca']) // 2}H", tables["loca"])
    glyphs = [tables["glyf"][2 * a : 2 * b] for a, b in pairwise(places)]
    one, seven = glyph_of(tables, ord("1")), glyph_of(tables, ord("7"))
    glyphs[one], glyphs[seven] = glyphs[seven], glyphs[one]
    tables["glyf"] = b"".join(glyphs)
    tables["loca"] = struct.pack(f">{len(places)}H", *(sum(map(len, glyphs[:k])) // 2 for k in range(len(glyphs) + 1)))


def at(tag: str, place: int, new: bytes) -> Callable[[Tables], None]:
    """Other bytes in a table."""

    def apply(tables: Tables) -> None:
        assert tables[tag][place : place + len(new)] != new
        tables[tag] = tables[tag][:place] + new + tables[tag][place + len(new) :]

    return apply


def first_point(tables: Tables) -> None:
    """One coordinate of the figure 1 is another: the last byte of its outline that is not padding."""
    (begin, end) = struct.unpack_from(">2H", tables["loca"], 2 * glyph_of(tables, ord("1")))
    last = max(k for k in range(2 * begin, 2 * end) if tables["glyf"][k])
    at("glyf", last, bytes([tables["glyf"][last] ^ 1]))(tables)


def component(tables: Tables) -> None:
    """The dots of Ä are another glyph: the number of its last part."""
    (begin,) = struct.unpack_from(">H", tables["loca"], 2 * glyph_of(tables, 1))
    assert struct.unpack_from(">h", tables["glyf"], 2 * begin)[0] < 0, "a letter put together of others"
    at("glyf", 2 * begin + 12, struct.pack(">H", glyph_of(tables, ord("1"))))(tables)


def another_font(_: Tables) -> bytes:
    """A sound font that draws other letters at those codes."""
    return part_of({code: chr(code ^ 1) if chr(code ^ 1).isalnum() else "x" for code in range(33, 127)})


def hinted(tables: Tables) -> Tables:
    """Two bytes of hints in the outline of 1: the glyphs behind it move on."""
    number = glyph_of(tables, ord("1"))
    places = list(struct.unpack(f">{len(tables['loca']) // 2}H", tables["loca"]))
    begin = 2 * places[number]
    (contours,) = struct.unpack_from(">h", tables["glyf"], begin)
    at_hints = begin + 10 + 2 * contours
    glyf = tables["glyf"][:at_hints] + b"\0\2\x4f\x4f" + tables["glyf"][at_hints + 2 :]
    moved_on = [place + (k > number) for k, place in enumerate(places)]
    return {**tables, "glyf": glyf, "loca": struct.pack(f">{len(places)}H", *moved_on)}


def without(tag: str) -> Callable[[Tables], Tables]:
    """A table left out."""
    return lambda tables: {name: table for name, table in tables.items() if name != tag}


PROGRAMS: dict[str, Callable[[Tables], Tables | bytes | None]] = {
    "the codes of 1 and 7 exchanged": exchanged_codes,
    "the outlines of 1 and 7 exchanged": exchanged_outlines,
    "letters twice as large": at("head", 18, struct.pack(">H", 1024)),
    "letters a little larger": at("head", 18, struct.pack(">H", 2047)),
    "one point moved": first_point,
    "a letter put together of other parts": component,
    "an advance of nothing": lambda t: at("hmtx", 4 * glyph_of(t, ord("1")), b"\0\0")(t),
    "another bearing": lambda t: at("hmtx", 4 * glyph_of(t, ord("1")) + 2, b"\1\1")(t),
    "fewer advances": lambda t: at("hhea", 34, b"\0\1")(t),
    "another height of lines": at("hhea", 4, b"\1\1"),
    "fewer points allowed": at("maxp", 6, b"\0\1"),
    "hints for the whole font": lambda tables: {**tables, "prep": bytes(3)},
    "a program for small letters": lambda tables: {**tables, "fpgm": bytes(8)},
    "hints in a glyph": lambda tables: hinted(tables),
    "another table of codes": at("cmap", 12, b"\0\0"),
    "codes of another platform": at("cmap", 4, b"\0\3\0\1"),
    "codes begun elsewhere": at("cmap", 18, b"\0\1"),
    "colours": lambda tables: {**tables, "COLR": bytes(14)},
    "pictures": lambda tables: {**tables, "sbix": bytes(8)},
    "names": lambda tables: {**tables, "name": bytes(6)},
    "garbage": lambda _: b"typed by hand: no font",
    "garbage of its length": lambda _: bytes(range(256)) * 64,
    "nothing": lambda _: b"",
    "cut short": lambda tables: program_of(tables)[: len(program_of(tables)) // 2],
    "only a directory": lambda tables: program_of(dict.fromkeys(tables, b"")),
    "another letter's outlines": another_font,
    "places far outside": lambda t: at("loca", 2 * glyph_of(t, ord("1")) + 2, b"\xff\xff")(t),
}


@pytest.mark.parametrize("name", PROGRAMS)
def test_a_forged_program_is_refused(name: str) -> None:
    """Whatever the program would draw otherwise, or only says otherwise, ends the reading with one sentence."""
    with pytest.raises(ReadError, match="font program"):
        read(forged(program(PROGRAMS[name])))


@pytest.mark.parametrize("name", ["the codes of 1 and 7 exchanged", "letters twice as large"])
def test_such_a_forgery_shows_something_else(name: str) -> None:
    """Rendered by pdfium, these pages differ from ours: the forgeries are real ones."""
    assert (pdf_pixels(DATA) != pdf_pixels(forged(program(PROGRAMS[name])))).any()


def entry(key: str, value: Any, *, of: str = "") -> Callable[[Any], None]:
    """Another entry in the font's dictionary, or in one that it holds."""

    def apply(font: Any) -> None:
        (font[of] if of else font)[NameObject(key)] = value

    return apply


def widths(change: Callable[[float], float]) -> Callable[[Any], None]:
    """Other widths of all letters."""

    def apply(font: Any) -> None:
        font[NameObject("/Widths")] = ArrayObject([FloatObject(change(float(width))) for width in font["/Widths"]])

    return apply


DESCRIPTOR = "/FontDescriptor"
DICTIONARIES: dict[str, Callable[[Any], None]] = {
    "widths of nothing": widths(lambda _: 0),
    "wide letters": widths(lambda width: width * 1.01),
    "fewer widths": lambda font: font["/Widths"].pop(),
    "widths of words": entry("/Widths", ArrayObject([TextStringObject("wide")] * 128)),
    "codes begun later": entry("/FirstChar", NumberObject(2)),
    "codes ended earlier": entry("/LastChar", NumberObject(100)),
    "an encoding": entry("/Encoding", NameObject("/WinAnsiEncoding")),
    "1 said to be 7": font_map(b"<31> <0031>", b"<31> <0037>"),
    "7 said to be x": font_map(b"<37> <0037>", b"<37> <0078>"),
    "a code said twice": font_map(b"<36> <0020>", b"<37> <0037>"),
    "a code said to be two letters": font_map(b"<37> <0037>", b"<37> <00370037>"),
    "no range of codes": font_map(b"1 begincodespacerange\n<00> <7F>\nendcodespacerange\n", b""),
    "letters as in another map": font_map(b"/CMapType 2 def\n", b"/CMapType 2 def\n/Other usecmap\n"),
    "a slant": entry("/ItalicAngle", NumberObject(12), of=DESCRIPTOR),
    "a font of roman letters": entry("/Flags", NumberObject(32), of=DESCRIPTOR),
    "a box of nothing": entry("/FontBBox", ArrayObject([NumberObject(0)] * 4), of=DESCRIPTOR),
    "another ascent": entry("/Ascent", NumberObject(300), of=DESCRIPTOR),
    "another program beside": lambda font: entry("/FontFile3", font[DESCRIPTOR].raw_get("/FontFile2"), of=DESCRIPTOR)(
        font
    ),
    "another length": lambda font: entry("/Length1", NumberObject(9))(font[DESCRIPTOR]["/FontFile2"]),
}


@pytest.mark.parametrize("name", DICTIONARIES)
def test_a_forged_dictionary_is_refused(name: str) -> None:
    """So do widths, maps and descriptors that are not those of the print font."""
    with pytest.raises(ReadError, match="font"):
        read(forged(DICTIONARIES[name]))


def test_a_letter_without_a_width_is_refused() -> None:
    """A viewer would not move on behind it: widths reach from the first to the last code that words have."""

    def narrower(font: Any) -> None:
        font[NameObject("/FirstChar")] = NumberObject(font["/FirstChar"] + 1)
        font["/Widths"].pop(0)

    with pytest.raises(ReadError, match="code"):
        read(forged(narrower))


@pytest.mark.parametrize("face", Face)
def test_glyphs_are_read_as_fonttools_reads_them(face: Face) -> None:
    """Every glyph of the print font has the advance, the bearing and the parts that fontTools finds, in either cut."""
    data = fonts.font_path(face).read_bytes()
    font, own = TTFont(io.BytesIO(data)), Program(data)
    assert {code: font.getGlyphID(name) for code, name in font.getBestCmap().items()} == _glyph_of()
    assert own.glyphs == len(font.getGlyphOrder()) > 900
    assert own.em == font["head"].unitsPerEm
    for number, name in enumerate(font.getGlyphOrder()):
        assert own.metrics(number) == font["hmtx"][name]
        parts = font["glyf"][name].getComponentNames(font["glyf"])
        assert [font.getGlyphName(each) for each in own.glyph(number).parts] == parts


@pytest.mark.parametrize("pen", [Pen.TEXT, Pen.STRONG])
def test_embedded_letters_have_their_outlines_and_no_hints(pen: Pen) -> None:
    """FontTools finds the very points of the print font in the embedded part, and nothing for screens."""
    words = "Ävon Ǻ 1357 ½ Rowan, Ъ ﬃ"
    data = write([Sheet("a", 99, 9, (Text(Point(1, 1), 4, words, pen=pen),))], About("t", "{}"))
    whole = TTFont(fonts.font_path(pen.ink.face))
    found = 0
    for own in PdfReader(io.BytesIO(data)).pages[0]["/Resources"]["/Font"].values():  # type: ignore[index]
        program = own.get_object()["/FontDescriptor"]["/FontFile2"].get_data()
        part = TTFont(io.BytesIO(program))
        assert not {"fpgm", "prep", "cvt "} & set(part.keys())
        points = [drawn(part, name) for name in part.getGlyphOrder()]
        known = [drawn(whole, name) for name in whole.getGlyphOrder()]
        assert all(each in known for each in points)
        assert not any(
            hasattr(glyph, "program") and glyph.program.getBytecode() for glyph in part["glyf"].glyphs.values()
        )
        found += len(points)
    assert found > len(set(words))


def drawn(font: TTFont, name: str) -> list[tuple[int, int]]:
    """The points of a glyph, its parts put together."""
    return list(font["glyf"][name].getCoordinates(font["glyf"])[0])


def test_one_cut_under_the_name_of_the_other_is_refused() -> None:
    """A viewer would draw regular letters where headings stand: another width, another weight."""
    said = Sheet("a", 99, 9, (Text(Point(1, 1), 4, "Rowan"), Text(Point(1, 5), 4, "Rowan", pen=Pen.STRONG)))
    data = unpacked(write([said], About("t", "{}"))).decode("latin-1")
    names = Face.REGULAR.value, Face.STRONG.value
    swapped = data.replace(names[0], "*").replace(names[1], names[0]).replace("*", names[1])
    assert swapped != data
    with pytest.raises(ReadError, match="font"):
        read(put_right(swapped))


@pytest.mark.parametrize("pen", [pen for pen in Pen if pen.ink.words])
def test_every_letter_of_the_font_is_embedded_as_it_is_drawn(pen: Pen) -> None:
    """All that the font carries, over several embedded parts, passes; so do its last glyphs, which share an advance."""
    words = "".join(fonts.metrics().advances)
    assert {"І", "Ї"} < set(words)
    (found,) = (
        read(write([Sheet("a", 99, 9, (Text(Point(1, 1), 4, words, pen=pen),))], About("t", "{}"))).sheets[0].shapes
    )
    assert isinstance(found, Text)
    assert (found.words, found.pen) == (words, pen)
    assert len(_glyph_of()) >= len(words)
