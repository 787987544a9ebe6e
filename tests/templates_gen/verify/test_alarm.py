"""The alarm: every way to spoil a file or to draw it wrong must ring, and what was not spoilt must not."""

from __future__ import annotations

import io
import re
from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from fractions import Fraction
from functools import cache
from typing import Any

import pytest
from kits import font_metrics, kit_of

import layout.parts.marking.strip as strip_module
import layout.plan as plan_module
import layout.warps.wound as wound_module
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Region, Shape, Step, Text, line
from layout.drawing.sheet import Sheet, pen_of
from layout.parts.marking.numbering import Number
from layout.parts.marking.strip import _Draft
from layout.plan import Plan, plan
from layout.sett.sett import SettInput, SettTaken
from layout.values.errors import LayoutError
from layout.warps.warp import Warp
from templates_gen.files.formats import FORMATS
from templates_gen.files.outputs import Output, Outputs
from templates_gen.files.proof import findings, read, write
from templates_gen.lettering.outlines import outline
from templates_gen.verify.compare import compare

# Face straight: both strips differ from their own mirror image, so that left and right cannot be mistaken. Three winds
# to an inch: no pitch is a whole number of tenths of a millimetre, so that rounding shows.
CHANGES: dict[str, object] = {
    "sett": {"readings": [{"pairs": 13, "window": "5 cm"}], "marking_unit": "1 in"},
    "weaving.slant": "face straight",
    "weaving.width": "20 cm",
}
FILES = ("strip-near.pdf", "strip-near.svg", "strip-far.pdf", "strip-far.svg", "kit.pdf")


@cache
def planned() -> Plan:
    """The plan that all mutations start from."""
    return plan(kit_of(CHANGES))


@cache
def output(file: str) -> Output:
    """One of its files, as it must be."""
    return Outputs(planned(), font_metrics()).output(file)


@cache
def whole(file: str) -> bytes:
    """The unharmed bytes of a file."""
    return write(output(file))


def alarm(wanted: Output, data: bytes, of: Plan | None = None) -> str:
    """What the proof says against `data`; nothing if it passes."""
    try:
        result = findings(of or planned(), wanted, read(wanted, data))
    except LayoutError as error:
        return str(error)
    if result.deviation > 0.001:
        assert result.problems, "a deviation must be said"
    return "; ".join(result.sentences)


@pytest.mark.parametrize("file", FILES)
def test_what_was_not_spoilt_does_not_ring(file: str) -> None:
    """The unharmed file passes, and so does a PDF taken apart and put together without a change."""
    assert alarm(output(file), whole(file)) == ""
    if file.endswith("pdf"):
        assert alarm(output(file), repacked(whole(file), lambda content: content)) == ""


# 1. Real bytes changed.


def repacked(data: bytes, change: Callable[[bytes], bytes], wide: float = 1.0) -> bytes:
    """A PDF with the content of its first page changed, and its page made `wide` times as wide, by pypdf."""
    from pypdf import PdfWriter
    from pypdf.generic import FloatObject, NameObject, StreamObject

    file = PdfWriter(clone_from=io.BytesIO(data))
    file.pdf_header = "%PDF-1.6"
    page = file.pages[0]
    stream = StreamObject()
    stream.set_data(change(page["/Contents"].get_object().get_data()))  # type: ignore[attr-defined]
    page[NameObject("/Contents")] = file._add_object(stream.flate_encode())
    page["/MediaBox"][2] = FloatObject(float(page["/MediaBox"][2]) * wide)  # type: ignore[index]
    changed = io.BytesIO()
    file.write(changed)
    return changed.getvalue()


def content(old: bytes, new: bytes, count: int = 1) -> Callable[[bytes], bytes]:
    """A change to a PDF: `old` in its page becomes `new`."""
    return lambda data: repacked(data, lambda page: page.replace(old, new, count))


def numbers(change: Callable[[float, int], float]) -> Callable[[bytes], bytes]:
    """A change to a PDF: every coordinate, stated which it is (0 x, 1 y)."""

    def pair(found: re.Match[bytes]) -> bytes:
        x, y = (change(float(found[k + 1]), k) for k in (0, 1))
        return b"%.5f %.5f %s" % (x, y, found[3])

    return lambda data: repacked(data, lambda page: re.sub(rb"(-?[\d.]+) (-?[\d.]+) ([mlc]|Tm)\b", pair, page))


def svg(pattern: bytes, new: bytes | Callable[[re.Match[bytes]], bytes], count: int = 1) -> Callable[[bytes], bytes]:
    """A change to an SVG."""
    return lambda data: re.sub(pattern, new, data, count=count)


def svg_size() -> tuple[float, float]:
    """Width and height of the near strip's SVG, in mm."""
    (sheet,) = output("strip-near.svg").sheets
    return sheet.width, sheet.height


def svg_points(x: Callable[[float], float], y: Callable[[float], float]) -> Callable[[bytes], bytes]:
    """A change to an SVG: every point of every path."""

    def moved(found: re.Match[bytes]) -> bytes:
        return b"%s%.5f %.5f" % (found[1], x(float(found[2])), y(float(found[3])))

    def in_paths(found: re.Match[bytes]) -> bytes:
        return re.sub(rb"([ML])(-?[\d.]+) (-?[\d.]+)", moved, found[0])

    return lambda data: re.sub(rb' d="[^"]*"', in_paths, data)


PAGE = 790.0
BYTES: dict[str, tuple[str, Callable[[bytes], bytes]]] = {
    "PDF page 0.1 % narrow": ("strip-near.pdf", lambda data: repacked(data, lambda page: page, wide=0.999)),
    "PDF page an A4 sheet as poppler rounds it": ("strip-near.pdf", lambda d: repacked(d, lambda p: p, 595.2756 / 595)),
    "PDF drawing at 97 %": ("strip-near.pdf", numbers(lambda value, _: value * 0.97)),
    "PDF drawing at 97 % by a matrix": ("strip-near.pdf", content(b"1 0 0 1 0 0 cm", b".97 0 0 .97 0 0 cm")),
    "PDF drawing 0.1 % narrow": ("strip-near.pdf", numbers(lambda value, k: value * (1 if k else 0.999))),
    "PDF drawing shifted": ("strip-near.pdf", numbers(lambda value, _: value + 0.01)),
    "PDF y not turned": ("strip-near.pdf", numbers(lambda value, k: PAGE - value if k else value)),
    "PDF left and right mirrored": ("strip-near.pdf", numbers(lambda value, k: value if k else 595 - value)),
    "PDF in mm instead of points": ("strip-near.pdf", numbers(lambda value, _: value * 25.4 / 72)),
    "PDF fold without dash": ("strip-near.pdf", content(b"[6.80315 3.96850] 0 d", b"[] 0 d")),
    "PDF fold with another dash": ("strip-near.pdf", content(b"[6.80315 3.96850]", b"[2.83465 2.83465]")),
    "PDF cut line too wide": ("strip-near.pdf", content(b"0.99213 w\n", b"1.41732 w\n")),
    "PDF outline open": ("strip-near.pdf", content(b" h\nS", b"\nS")),
    "PDF filled instead of drawn": ("strip-near.pdf", content(b" h\nS", b" h\nf")),
    "PDF one number more": ("strip-near.pdf", content(b" l\nS", b" l\n10 10 m 20 20 l\nS")),
    "PDF wrong number": ("strip-near.pdf", content(b"(50) Tj", b"(51) Tj")),
    "PDF wrong word": ("strip-near.pdf", content(b"left", b"felt")),
    "PDF words of another size": ("strip-near.pdf", content(b" 7.50000 Tf", b" 7.51000 Tf")),
    "PDF page turned": ("strip-near.pdf", lambda data: data.replace(b"/MediaBox", b"/Rotate 90 /MediaBox")),
    "PDF with another unit": ("strip-near.pdf", lambda data: data.replace(b"/MediaBox", b"/UserUnit 2 /MediaBox")),
    "PDF to be scaled when printed": ("strip-near.pdf", lambda data: data.replace(b"/None", b"/AppD")),
    "PDF cut short": ("strip-near.pdf", lambda data: data[:-200]),
    "PDF emptied": ("strip-near.pdf", lambda _: b""),
    "SVG unit inch": ("strip-near.svg", svg(rb'(width|height)="([\d.]+)mm"', rb'\1="\2in"', 2)),
    "SVG without a unit": ("strip-near.svg", svg(rb'(width|height)="([\d.]+)mm"', rb'\1="\2"', 2)),
    "SVG size in mm, drawing in points": ("strip-near.svg", svg(rb'viewBox="[^"]*"', b'viewBox="0 0 580 88"')),
    "SVG 0.1 % narrow": (
        "strip-near.svg",
        lambda data: data.replace(b"%g" % svg_size()[0], b"%g" % (svg_size()[0] * 0.999)),
    ),
    "SVG drawing at 97 %": ("strip-near.svg", svg_points(lambda x: x * 0.97, lambda y: y * 0.97)),
    "SVG y not turned": ("strip-near.svg", svg_points(lambda x: x, lambda y: svg_size()[1] - y)),
    "SVG left and right mirrored": ("strip-near.svg", svg_points(lambda x: svg_size()[0] - x, lambda y: y)),
    "SVG fold without dash": ("strip-near.svg", svg(rb' stroke-dasharray="2.4,1.4"', b"")),
    "SVG cut line too wide": ("strip-near.svg", svg(rb'(id="cut".*?stroke-width)="0.35"', rb'\1="0.5"')),
    "SVG cut line grey": ("strip-near.svg", svg(rb'id="cut" stroke="#000000"', b'id="cut" stroke="#808080"')),
    "SVG cut line renamed": ("strip-near.svg", svg(rb'id="cut"', b'id="fold"')),
    "SVG outline open": ("strip-near.svg", svg(rb' Z"', b'"')),
    "SVG turned by its group": ("strip-near.svg", svg(rb"<g ", b'<g transform="scale(.97)" ')),
    "SVG group lost": ("strip-near.svg", lambda data: re.sub(rb'<g [^>]*id="ten".*?</g>', b"", data, flags=re.DOTALL)),
    "SVG cut short": ("strip-near.svg", lambda data: data[:-200]),
    "SVG emptied": ("strip-near.svg", lambda _: b""),
}


@pytest.mark.parametrize("name", BYTES)
def test_spoilt_bytes_ring(name: str) -> None:
    """A file whose bytes were changed in a way that shows, or that no writer of ours makes, does not pass."""
    file, change = BYTES[name]
    data = change(whole(file))
    assert data != whole(file)
    if file.endswith("pdf"):
        assert data != repacked(whole(file), lambda page: page)
    assert alarm(output(file), data)


# 2. Another drawing, written by the writer as if it were right.

Change = Callable[[list[Shape], Sheet], Iterable[Shape]]


def first(shapes: list[Shape], pen: Pen) -> int:
    """Where the first shape of that pen stands."""
    return next(k for k, shape in enumerate(shapes) if pen_of(shape) is pen)


def changed(pen: Pen, change: Callable[[Shape], Shape]) -> Change:
    """The first shape of that pen changed."""

    def apply(shapes: list[Shape], _: Sheet) -> list[Shape]:
        at = first(shapes, pen)
        return [*shapes[:at], change(shapes[at]), *shapes[at + 1 :]]

    return apply


def repenned(old: Pen, new: Pen) -> Change:
    """The first line of one pen drawn with another."""
    return changed(old, lambda shape: shape._replace(pen=new))  # type: ignore[call-arg]


def everywhere(place: Callable[[Point, Sheet], Point]) -> Change:
    """Every point of the sheet elsewhere."""

    def apply(shapes: list[Shape], sheet: Sheet) -> list[Shape]:
        def path(old: Curve) -> Curve:
            steps = tuple(Step(place(end, sheet), through and place(through, sheet)) for end, through in old.steps)
            return old._replace(start=place(old.start, sheet), steps=steps)

        moved: list[Shape] = []
        for shape in shapes:
            if isinstance(shape, Text):
                moved.append(shape._replace(at=place(shape.at, sheet)))
            elif isinstance(shape, Region):
                moved.append(shape._replace(contours=tuple(map(path, shape.contours))))
            else:
                moved.append(path(shape))
        return moved

    return apply


def aside(mm: float) -> Callable[[Shape], Shape]:
    """A shape moved to the right."""
    return lambda shape: Placing(0, mm, 0).shapes([shape])[0]


def without(pen: Pen) -> Change:
    """The first shape of that pen left out."""
    return lambda shapes, _: [*shapes[: first(shapes, pen)], *shapes[first(shapes, pen) + 1 :]]


def twice(pen: Pen) -> Change:
    """The first shape of that pen drawn twice."""
    return lambda shapes, _: [*shapes[: first(shapes, pen)], shapes[first(shapes, pen)], *shapes[first(shapes, pen) :]]


def says(old: str, new: str) -> Change:
    """Other words where `old` stood; as outlines where the sheet has outlines."""

    def apply(shapes: list[Shape], _: Sheet) -> list[Shape]:
        words = [k for k, shape in enumerate(shapes) if isinstance(shape, Text) and shape.words == old]
        if words:
            return [shape._replace(words=new) if k in words else shape for k, shape in enumerate(shapes)]  # type: ignore[call-arg]
        at = first(shapes, Pen.TEXT)
        region = shapes[at]
        assert isinstance(region, Region)
        corner = region.contours[0].start
        return [*shapes[:at], outline(Text(corner, 2.8, new)), *shapes[at + 1 :]]

    return apply


def shorter(old: Shape) -> Shape:
    """A line 97 % as long."""
    assert isinstance(old, Curve)
    (ax, ay), (bx, by) = old.points()
    return line(old.start, Point(ax + 0.97 * (bx - ax), ay + 0.97 * (by - ay)), old.pen)


def opened(old: Shape) -> Shape:
    """A closed line left open."""
    assert isinstance(old, Curve)
    return old._replace(closed=False)


ON_PAPER, ALONE_FILE, BOTH = ("kit.pdf",), ("strip-far.svg",), ("kit.pdf", "strip-far.svg")
DRAWN: dict[str, tuple[tuple[str, ...], Change]] = {
    "one mark 10 micrometres aside": (BOTH, changed(Pen.MARK, aside(0.010))),
    "one mark 2 micrometres aside": (BOTH, changed(Pen.MARK, aside(0.002))),
    "one tenth mark aside": (BOTH, changed(Pen.TEN, aside(-0.010))),
    "one unit line aside": (BOTH, changed(Pen.UNIT, aside(0.010))),
    "the fold aside": (BOTH, changed(Pen.FOLD, aside(0.010))),
    "the centre aside": (BOTH, changed(Pen.CENTRE_SHORT, aside(0.010))),
    "one register hair aside": (BOTH, changed(Pen.REGISTER, aside(0.010))),
    "the cut line aside": (BOTH, changed(Pen.CUT, aside(0.010))),
    "an arrow aside": (BOTH, changed(Pen.SOLID, aside(0.010))),
    "words aside": (BOTH, changed(Pen.TEXT, aside(0.010))),
    "one mark missing": (BOTH, without(Pen.MARK)),
    "one tenth mark missing": (BOTH, without(Pen.TEN)),
    "the fold missing": (BOTH, without(Pen.FOLD)),
    "the cut line missing": (BOTH, without(Pen.CUT)),
    "words missing": (BOTH, without(Pen.TEXT)),
    "one mark twice": (BOTH, twice(Pen.MARK)),
    "the cut line twice": (BOTH, twice(Pen.CUT)),
    "an extra mark": (BOTH, lambda shapes, _: [*shapes, line(Point(50, 50), Point(50, 55), Pen.MARK)]),
    "the cut line with the pen of a fold": (BOTH, repenned(Pen.CUT, Pen.FOLD)),
    "the cut line with the pen of a mark": (BOTH, repenned(Pen.CUT, Pen.MARK)),
    "a mark with the pen of the cut line": (BOTH, repenned(Pen.MARK, Pen.CUT)),
    "a mark with the pen of a tenth": (BOTH, repenned(Pen.MARK, Pen.TEN)),
    "a grey mark": (BOTH, repenned(Pen.MARK, Pen.HELP)),
    "the cut line open": (ALONE_FILE, changed(Pen.CUT, opened)),
    "a mark shorter": (BOTH, changed(Pen.MARK, shorter)),
    "another order": (BOTH, lambda shapes, _: [*shapes[1:], shapes[0]]),
    "nothing drawn": (BOTH, lambda _, __: []),
    "y not turned": (BOTH, everywhere(lambda p, sheet: Point(p.x, sheet.height - p.y))),
    "left and right mirrored": (BOTH, everywhere(lambda p, sheet: Point(sheet.width - p.x, p.y))),
    "97 % of its size": (BOTH, everywhere(lambda p, _: Point(p.x * 0.97, p.y * 0.97))),
    "0.01 % larger": (BOTH, everywhere(lambda p, _: Point(p.x * 1.0001, p.y * 1.0001))),
    "inches for mm": (BOTH, everywhere(lambda p, _: Point(p.x / 25.4, p.y / 25.4))),
    "a wrong number": (ON_PAPER, says("10", "11")),
    "a wrong word": (BOTH, says("Heron frame", "Heron flame")),
    "a check scale aside": (ON_PAPER, changed(Pen.RULE, aside(0.010))),
    "a check scale missing": (ON_PAPER, without(Pen.RULE)),
    "no check scales at all": (ON_PAPER, lambda shapes, _: [each for each in shapes if pen_of(each) is not Pen.RULE]),
}  # fmt: skip


def redrawn(wanted: Output, change: Change) -> list[Sheet]:
    """The file's sheets, the first that shows a strip of them changed."""
    sheets = list(wanted.sheets)
    at = next(k for k, sheet in enumerate(sheets) if any(shape.pen is Pen.MARK for shape in sheet.shapes))
    one = sheets[at]
    sheets[at] = Sheet(one.name, one.width, one.height, tuple(change(list(one.shapes), one)))
    return sheets


@pytest.mark.parametrize("name", DRAWN)
def test_another_drawing_rings(name: str) -> None:
    """A drawing that differs in one thing is written, read back and not let through, in every file that can have it."""
    files, change = DRAWN[name]
    for file in files:
        wanted = output(file)
        sheets = redrawn(wanted, change)
        assert tuple(sheets) != wanted.sheets
        data = FORMATS[wanted.format].write(sheets, wanted.about)
        assert data != whole(file)
        assert alarm(wanted, data), file


@pytest.mark.parametrize(
    ("wanted", "written"),
    [
        ("strip-near.pdf", "strip-far.pdf"),
        ("strip-far.pdf", "strip-near.pdf"),
        ("strip-near.svg", "strip-far.svg"),
        ("strip-far.svg", "strip-near.svg"),
        ("kit.pdf", "strip-near.pdf"),
    ],
)
def test_a_swapped_strip_rings(wanted: str, written: str) -> None:
    """The far strip written where the near one was asked for does not pass, nor one strip for the whole kit."""
    assert alarm(output(wanted), whole(written))


def test_swapped_sheets_ring() -> None:
    """Both sheets of the kit in the other order do not pass, nor does one of them alone."""
    kit = output("kit.pdf")
    assert alarm(kit, FORMATS["pdf"].write(kit.sheets[::-1], kit.about))
    assert alarm(kit, FORMATS["pdf"].write(kit.sheets[:1], kit.about))
    assert alarm(kit, FORMATS["pdf"].write(kit.sheets + kit.sheets[:1], kit.about))


@pytest.mark.parametrize("file", FILES)
def test_another_title_rings(file: str) -> None:
    """The title that a viewer shows and the names of the sheets are words too."""
    wanted = output(file)
    writer = FORMATS[wanted.format].write
    renamed = [Sheet("strip", one.width, one.height, one.shapes) for one in wanted.sheets]
    assert alarm(wanted, writer(wanted.sheets, wanted.about._replace(title="Another kit")))
    assert alarm(wanted, writer(renamed, wanted.about))


# 3. A builder that is wrong: drawing and plan agree with each other, and only the kit's own numbers speak against them.

PATCH = pytest.MonkeyPatch


def _half_a_pitch_off(patch: PATCH) -> None:
    whole_pitches = wound_module._contacts

    def off(ends: int, pitch: Fraction, weaving: object) -> tuple[tuple[Fraction, ...], tuple[Fraction, ...]]:
        near, far = whole_pitches(ends, pitch, weaving)  # type: ignore[arg-type]
        return tuple(x + pitch / 2 for x in near), tuple(x + pitch / 2 for x in far)

    patch.setattr(wound_module, "_contacts", off)


def _one_wind_less(patch: PATCH) -> None:
    right = plan_module.warp_on

    def less(*how: Any) -> Warp:
        warp = right(*how)
        return replace(warp, ends=warp.ends - 2, near=warp.near[:-1], far=warp.far[:-1], passes=warp.passes[:-2])

    patch.setattr(plan_module, "warp_on", less)


def _not_counted_off(patch: PATCH) -> None:
    right = plan_module.take_sett

    def as_measured(choice: SettInput, *how: Any) -> SettTaken:
        sett = right(choice, *how)
        return replace(sett, per_mm=sett.low, loss=Fraction(0))

    patch.setattr(plan_module, "take_sett", as_measured)


def _contacts(patch: PATCH, change: Callable[[list[float]], list[float]]) -> None:
    right = _Draft.contacts
    patch.setattr(_Draft, "contacts", property(lambda draft: change(right.fget(draft))))  # type: ignore[misc]


def _winds(patch: PATCH, change: Callable[[list[Curve]], list[Curve]]) -> None:
    right = _Draft.marks
    patch.setattr(_Draft, "marks", lambda draft, numbered: change(list(right(draft, numbered))))


def _added_up(xs: list[float]) -> list[float]:
    """Positions added up from a rounded pitch instead of counted from one datum."""
    pitch = round(xs[1] - xs[0], 2)
    return [xs[0] + k * pitch for k in range(len(xs))]


def _swapped(patch: PATCH) -> None:
    def contacts(draft: _Draft) -> list[float]:
        warp = draft.plan.warp
        return [float(x) for x in (warp.far if draft.end == "near" else warp.near)]

    patch.setattr(_Draft, "contacts", property(contacts))


def _heavy_early(patch: PATCH) -> None:
    """Heavy marks counted from the first mark as one, on the near strip too."""
    right = _Draft.marks

    def marks(draft: _Draft, numbered: Sequence[Number]) -> list[Curve]:
        paths = list(right(draft, numbered))
        pens = [path.pen for path in paths]
        return [path._replace(pen=pen) for path, pen in zip(paths, [*pens[1:], Pen.MARK], strict=True)]

    patch.setattr(_Draft, "marks", marks)


def _no_numbers(patch: PATCH) -> None:
    patch.setattr(strip_module, "numbers", lambda *_: [])


def _next_number(patch: PATCH) -> None:
    """Every number stands beside the mark of the next wind."""
    right = strip_module.numbers
    patch.setattr(strip_module, "numbers", lambda *how: [n._replace(number=n.number + 1) for n in right(*how)])


BUILDERS: dict[str, Callable[[PATCH], None]] = {
    "marks off by half a pitch": _half_a_pitch_off,
    "one wind too few": _one_wind_less,
    "sett not counted off": _not_counted_off,
    "strip mirrored": lambda patch: _contacts(patch, lambda xs: [-x for x in xs]),
    "strip 0.1 % long": lambda patch: _contacts(patch, lambda xs: [x * 1.001 for x in xs]),
    "strip shifted by 2 micrometres": lambda patch: _contacts(patch, lambda xs: [x + 0.002 for x in xs]),
    "near and far swapped": _swapped,
    "pitches rounded and added up": lambda patch: _contacts(patch, _added_up),
    "one mark missing": lambda patch: _winds(patch, lambda marks: marks[:-1]),
    "one mark twice": lambda patch: _winds(patch, lambda marks: [marks[0], *marks]),
    "no heavy marks": lambda patch: _winds(patch, lambda marks: [mark._replace(pen=Pen.MARK) for mark in marks]),
    "heavy marks one wind early": _heavy_early,
    "marks that lean": lambda patch: _winds(
        patch, lambda marks: [mark._replace(start=Point(mark.start.x + 0.01, mark.start.y)) for mark in marks]
    ),
    "no numbers": _no_numbers,
    "numbers of the next wind": _next_number,
}


@pytest.mark.parametrize("name", BUILDERS)
def test_a_wrong_builder_rings(name: str, monkeypatch: PATCH) -> None:
    """A file that is exactly as it was drawn, yet drawn wrong, is found out from the kit's numbers alone."""
    right = output("kit.pdf")
    BUILDERS[name](monkeypatch)
    wrongly = plan(kit_of(CHANGES))
    wanted = Outputs(wrongly, font_metrics()).output("kit.pdf")
    assert wanted.sheets != right.sheets
    data = write(wanted)
    assert compare(wanted.sheets, read(wanted, data).sheets).sound
    assert alarm(wanted, data, wrongly)


ON_PAPER_ONLY = ("no numbers", "numbers of the next wind")
ALONE = [name for name in BUILDERS if name not in ON_PAPER_ONLY]


@pytest.mark.parametrize("name", ALONE)
def test_a_wrong_builder_rings_in_a_part_alone(name: str, monkeypatch: PATCH) -> None:
    """So it is in SVG; only words and check bars are not looked for there, since it holds outlines and no paper."""
    BUILDERS[name](monkeypatch)
    wrongly = plan(kit_of(CHANGES))
    wanted = Outputs(wrongly, font_metrics()).output("strip-near.svg")
    data = write(wanted)
    assert compare(wanted.sheets, read(wanted, data).sheets).sound
    assert alarm(wanted, data, wrongly)


# 4. Pieces: a number that falls beside a joint stands on one of both pieces, and must not be lost on both.

TILED: dict[str, object] = {
    "frame.outer_width": "90 cm",
    "weaving.width": "70 cm",
    "paper": {"size": "common", "lay": "tiles"},
}


@pytest.mark.parametrize("width", [52, 55, 61, 67, 70, 73])
def test_numbers_beside_joints_do_not_ring(width: int) -> None:
    """Wherever joints fall among the numbers, the strip in pieces passes."""
    tiled = plan(kit_of(TILED | {"weaving.width": f"{width} cm"}))
    wanted = Outputs(tiled, font_metrics()).output("strip-near.pdf")
    assert sum(map(len, wanted.laid)) > 1
    assert alarm(wanted, write(wanted), tiled) == ""


def test_a_number_on_no_piece_rings(monkeypatch: PATCH) -> None:
    """One that the builder left out everywhere is missed, even where each piece might have lost it to the other."""
    right = strip_module.numbers
    monkeypatch.setattr(strip_module, "numbers", lambda *how: [n for n in right(*how) if n.number != 30])
    tiled = plan(kit_of(TILED))
    wanted = Outputs(tiled, font_metrics()).output("strip-near.pdf")
    assert "the numbers are" in alarm(wanted, write(wanted), tiled)


@pytest.mark.parametrize("name", ["2026", "7", "12 12 12"])
def test_a_name_made_of_figures_does_not_ring(name: str) -> None:
    """A kit that is called by a number is not taken for a running total."""
    numbered = plan(kit_of({"name": name}))
    wanted = Outputs(numbered, font_metrics()).output("kit.pdf")
    assert alarm(wanted, write(wanted), numbered) == ""


def test_the_numbers_that_the_mutations_lean_on_are_there() -> None:
    """The strip numbers every fifth wind, the sheet its own first and last."""
    words = [shape.words for shape in output("strip-near.pdf").sheets[0].shapes if isinstance(shape, Text)]
    assert {"5", "10", "15"} < set(words)
