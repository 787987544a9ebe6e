"""What each code of an embedded font stands for, and the proof that it is drawn as the print font draws it.

A viewer draws what the embedded program holds, at the widths that the file gives. Searching and copying use its
ToUnicode map. So program, widths and map are each compared with the print font, outlines byte for byte.
"""

from __future__ import annotations

import re
import struct
from collections.abc import Mapping, Sequence
from functools import cache, lru_cache
from typing import Any

from layout.drawing.pens import Face
from layout.values.errors import shown
from templates_gen.document import ReadError
from templates_gen.lettering import fonts
from templates_gen.messages.language import message
from templates_gen.messages.roles.reading import Read
from templates_gen.readers.pdf_file import PdfFile
from templates_gen.readers.pdf_values import Name
from templates_gen.readers.sfnt import Glyph, Metrics, Program, one_byte_codes
from templates_gen.readers.tokens import Font, Letters

_FONT = {
    "/Type", "/Subtype", "/Name", "/BaseFont", "/FirstChar", "/LastChar", "/Widths", "/FontDescriptor", "/ToUnicode",
}  # fmt: skip
_DESCRIPTOR = {
    "/Type", "/FontName", "/Flags", "/FontBBox", "/ItalicAngle", "/Ascent", "/Descent", "/CapHeight", "/StemV",
    "/MissingWidth", "/FontFile2",
}  # fmt: skip
_SYMBOLIC = 1 << 2  # the flag of a font whose own cmap says what a code draws (ISO 32000-1, Table 123)
_FLAGS = {Face.REGULAR: _SYMBOLIC, Face.STRONG: _SYMBOLIC | 1 << 18}  # bold letters stay bold where they are small
_PADDING = 8  # bytes of nothing behind a glyph, at most: its own to a whole word, and the writer's
_TABLES = {"cmap", "glyf", "head", "hhea", "hmtx", "loca", "maxp"}  # those of hints, and names, are left out
_LAST_CODE = 255
_CLOSE = 0.01  # in thousandths of an em: the widths are written with about four decimals
_FACES = "|".join(face.value for face in Face)
_BASE_FONT = re.compile(rf"/[A-Z]{{6}}\+({_FACES})")
_MAP = re.compile(
    rb"/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n/CIDSystemInfo\n<< /Registry \((NAME)\)\n"
    rb"/Ordering \(NAME\)\n/Supplement 0\n>> def\n/CMapName /NAME def\n/CMapType 2 def\n1 begincodespacerange\n"
    rb"<00> <([0-9A-F]{2})>\nendcodespacerange\n([1-9][0-9]{0,2}) beginbfchar\n((?:<[0-9A-F]{2}> <[0-9A-F]{4}>\n)++)"
    rb"endbfchar\nendcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n?".replace(
        b"NAME", rb"[A-Z]{6}\+(?:FACES)".replace(b"FACES", _FACES.encode())
    )
)


def font_of(file: PdfFile, reference: Any) -> Font:
    """What each code of this font stands for; `ReadError` unless it is drawn as the print font draws it."""
    font = file.dictionary(reference, _FONT, Read.FONT)
    base = font["/BaseFont"]
    face = _face(base)
    if font["/Type"] != "/Font" or font["/Subtype"] != "/TrueType" or face is None:
        raise ReadError(message(Read.FONT_KIND, found=shown(base), wanted=Face.REGULAR.value))
    descriptor = file.dictionary(font["/FontDescriptor"], _DESCRIPTOR, Read.FONT_DESCRIPTOR)
    if "/FontFile2" not in descriptor or descriptor["/FontName"] != base:
        raise ReadError(message(Read.NOT_EMBEDDED))
    _check_descriptor(descriptor, face)
    letters = _letters(file.unpacked(font["/ToUnicode"], {"/Length", "/Filter"}, Read.FONT_MAP))
    data = file.unpacked(descriptor["/FontFile2"], {"/Length", "/Filter", "/Length1"}, Read.FONT_PROGRAM)
    if file.found(descriptor["/FontFile2"]).says["/Length1"] != len(data):
        raise ReadError(message(Read.PROGRAM_LENGTH))
    said = {code: letter for code, letter in letters.items() if ord(letter) in _glyph_of()}
    _check_program(data, frozenset(said.items()), face)
    return Font(_with_widths(font["/FirstChar"], font["/LastChar"], file.found(font["/Widths"]), said, face), face)


def _face(base: Any) -> Face | None:
    """The cut of the print font that a font's name gives; None where it is another font."""
    found = _BASE_FONT.fullmatch(base) if isinstance(base, Name) else None
    return Face(found[1]) if found else None


def _letters(font_map: bytes) -> Letters:
    """The letter of each code that the ToUnicode map names."""
    found = _MAP.fullmatch(font_map)
    if found is None:
        raise ReadError(message(Read.MAP))
    last, count, lines = int(found[2], 16), int(found[3]), found[4].splitlines()
    letters = {int(line[1:3], 16): chr(int(line[6:10], 16)) for line in lines}
    if not count == len(lines) == len(letters) or max(letters) > last:
        raise ReadError(message(Read.MAP_CODES))
    return letters


@lru_cache(maxsize=16)  # the files of a kit often hold one and the same program
def _check_program(data: bytes, letters: frozenset[tuple[int, str]], face: Face) -> None:
    try:
        _same_glyphs(Program(data), dict(letters), face)
    except (ValueError, LookupError, struct.error) as error:
        raise ReadError(message(Read.PROGRAM)) from error


def _same_glyphs(program: Program, letters: Letters, face: Face) -> None:
    """ValueError, LookupError or struct.error unless every letter has the outline and the metrics of the print font."""
    if set(program.tables) != _TABLES or _frame(program) != _frame(_print_font(face)):
        raise ValueError("tables")
    codes = one_byte_codes(program.tables["cmap"])
    pairs = {(codes[code], _glyph_of()[ord(letter)]) for code, letter in letters.items()}
    checked: set[tuple[int, int]] = set()
    while pairs:
        pair = pairs.pop()
        checked.add(pair)
        pairs |= set(_same_glyph(program, *pair, face)) - checked


def _same_glyph(program: Program, number: int, wanted: int, face: Face) -> Sequence[tuple[int, int]]:
    """The pairs of parts to be looked at next."""
    found, (asked, metrics) = program.glyph(number), _printed(wanted, face)
    padding = found.drawn.removeprefix(asked.drawn)
    whole = found.drawn.startswith(asked.drawn) and len(padding) < _PADDING and not padding.strip(b"\0")
    if not whole or program.metrics(number) != metrics:
        raise ValueError("glyf")
    return list(zip(found.parts, asked.parts, strict=True))


def _frame(program: Program) -> tuple[bytes, ...]:
    """The values that a subset of a font shares with the whole font."""
    tables = program.tables
    head, hhea, maxp = (tables[name] for name in ("head", "hhea", "maxp"))
    return head[:8] + head[12:50] + head[52:], hhea[:34] + hhea[36:], maxp[:4] + maxp[6:]


@cache
def _print_font(face: Face) -> Program:
    return Program(fonts.font_path(face).read_bytes())


@cache
def _printed(number: int, face: Face) -> tuple[Glyph, Metrics]:
    """A glyph of the print font, and its metrics."""
    return _print_font(face).glyph(number, hinted=False), _print_font(face).metrics(number)


@cache
def _glyph_of() -> Mapping[int, int]:
    """The number of the print font's glyph for each character, in either cut."""
    with fonts.LOCK:
        font = fonts.opened()
        return {code: font.getGlyphID(name) for code, name in font.getBestCmap().items()}


def _check_descriptor(descriptor: Mapping[str, Any], face: Face) -> None:
    """What viewers act on where they do not trust the font program itself."""
    font = _print_font(face)
    box = struct.unpack_from(">4h", font.tables["head"], 36)
    ascent, descent = struct.unpack_from(">2h", font.tables["OS/2"], 68)
    (capitals,) = struct.unpack_from(">h", font.tables["OS/2"], 88)
    wanted = {"/FontBBox": box, "/Ascent": [ascent], "/Descent": [descent], "/CapHeight": [capitals]}
    for key, numbers in wanted.items():
        said = descriptor[key]
        _near(said if isinstance(said, list) else [said], numbers, message(Read.DESCRIBED, key=key[1:]), font.em)
    if (
        descriptor["/Type"] != "/FontDescriptor"
        or descriptor["/Flags"] != _FLAGS[face]
        or descriptor["/ItalicAngle"] != 0
    ):
        raise ReadError(message(Read.DESCRIPTOR))


def _with_widths(first: Any, last: Any, widths: Any, letters: Letters, face: Face) -> Letters:
    """The letters whose codes have a width, which must be that of the print font; no other code may be shown."""
    if type(first) is not int or type(last) is not int or not isinstance(widths, list):
        raise ReadError(message(Read.NO_WIDTHS))
    if not 0 <= first <= last <= _LAST_CODE or len(widths) != last - first + 1:
        raise ReadError(message(Read.WIDTHS_FEW))
    shown_by = {code: letter for code, letter in letters.items() if first <= code <= last}
    advances = {code: _printed(_glyph_of()[ord(letter)], face)[1].advance for code, letter in shown_by.items()}
    _near(
        [widths[code - first] for code in advances], list(advances.values()), message(Read.WIDTHS), _print_font(face).em
    )
    return shown_by


def _near(said: Sequence[Any], units: Sequence[int], unlike: str, em: int) -> None:
    """Numbers of the file in thousandths of an em against font units."""
    wanted = [1000 * number / em for number in units]
    numbers = [number for number in said if type(number) in (int, float)]
    if len(numbers) != len(said) or len(said) != len(wanted):
        raise ReadError(unlike)
    if any(abs(number - other) > _CLOSE for number, other in zip(numbers, wanted, strict=True)):
        raise ReadError(unlike)
