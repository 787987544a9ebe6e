"""What is cut for a kit, file by file: names, contents, what is carried, and what rings."""

from __future__ import annotations

import io
import json
import math
import re
from collections.abc import Callable
from dataclasses import replace
from functools import cache
from itertools import pairwise
from pathlib import Path
from typing import Any

import ezdxf
import pytest
import svgelements
from commands import refused, run
from ezdxf.entities import Arc, DXFEntity
from ink import meetings
from kits import font_metrics, plan_of
from rasters import svg_pixels

from layout.cutting.products import CUT_PRODUCTS
from layout.cutting.stock.stock import Operation, Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Shape, Text
from layout.drawing.sheet import Care, Sheet, cuts_on
from layout.messages.english import ENGLISH
from layout.messages.roles import Marking
from layout.plan import Plan
from layout.values.errors import FieldError, LayoutError
from templates_gen.files.check import Against, check
from templates_gen.files.cut_records import cut_products_of
from templates_gen.files.formats import FORMATS
from templates_gen.files.generate import make
from templates_gen.files.output import Output
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings, read, write
from templates_gen.inputs import stock_file as stockfile

CUTTER = ("svg", "dxf")


@cache
def stock() -> Stock:
    """The stock that is built in."""
    return stockfile.built_in()


@cache
def planned() -> Plan:
    """A plan of 50 ends on round bars, woven 20 cm wide."""
    return plan_of()


@cache
def outputs() -> Outputs:
    """All files of the plan."""
    return Outputs(planned(), font_metrics(), stock=stock())


def cut_files(form: str) -> list[str]:
    """The files of cut parts, of one form."""
    records = outputs().records.values()
    return [record.name for record in records if record.product in CUT_PRODUCTS and record.form == form]


# --- names and contents


def test_every_product_comes_for_the_cutter_and_for_the_eye() -> None:
    """Each has an SVG, a DXF and a PDF of one name, beside the files of the strips."""
    stems = {file.rpartition(".")[0] for file in cut_files("svg")}
    assert {stem.split("-")[0] for stem in stems} >= {"comb", "winding"}
    for form in ("dxf", "pdf"):
        assert {file.rpartition(".")[0] for file in cut_files(form)} == stems
    strips = Outputs(planned(), font_metrics()).files
    assert outputs().files[: len(strips)] == strips
    assert all("kerf" not in file for file in strips)


def test_a_name_holds_size_and_kerf() -> None:
    """The size is that of the outline in the file, in whole millimetres; the kerf is the stock's, or none is drawn."""
    (comb,) = (file for file in cut_files("svg") if file.startswith("comb"))
    (sheet,) = outputs().output(comb).sheets
    outline = max(
        (s for s in sheet.shapes if isinstance(s, Curve) and s.pen is Pen.THROUGH), key=lambda s: len(s.steps)
    )
    xs, ys = zip(*outline.points(), strict=True)
    size = f"{max(xs) - min(xs):.0f}x{max(ys) - min(ys):.0f}mm"
    assert comb == f"comb-{size}-kerf-0.20.svg"
    for changed, words in (
        (replace(stock(), kerf_drawn=False), "-no-kerf."),
        (replace(stock(), kerf_x=0.25, kerf_y=0.225), "-kerf-0.25x0.225."),
        (replace(stock(), kerf_x=0.125, kerf_y=0.125), "-kerf-0.125."),
    ):
        files = Outputs(planned(), font_metrics(), ["comb"], changed).files
        assert len(files) == 3
        assert all(words in file for file in files)


@pytest.mark.parametrize("form", CUTTER)
def test_a_cutters_file_carries_stock_and_operations_but_no_money(form: str) -> None:
    """The inputs hold the stock without prices; the table of operations is the stock's."""
    priced = replace(stock(), prices={"sheet": 4.5})
    wanted = Outputs(planned(), font_metrics(), ["comb"], priced).output(cut_files(form)[0])
    document = read(wanted, write(wanted))
    carried = json.loads(document.about.inputs)
    assert set(carried) == {"file", "kit", "stock"}
    assert carried["stock"]["name"] == stock().name
    assert not carried["stock"].get("prices")
    assert document.about.operations == stock().operations


@pytest.mark.parametrize("form", CUTTER)
def test_each_has_a_square_of_fifty_millimetres_with_its_label(form: str) -> None:
    """On the operation that nothing runs, with more lines than its four sides: words as outlines."""
    for file in cut_files(form):
        (sheet,) = outputs().output(file).sheets
        paths = [shape for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen is Pen.REFERENCE]
        squares = [path for path in paths if path.closed and len(path.steps) == 3]
        sides = [math.dist(*path.points()[:2]) for path in squares]
        assert sides == [50]
        assert sum(1 for path in paths if path.closed) > 4


# --- proof


@pytest.mark.parametrize("form", [*CUTTER, "pdf"])
def test_what_is_written_is_proven(form: str) -> None:
    """Every file reads back to a micrometre, and its slots are where kit and stock want them."""
    for file in cut_files(form):
        wanted = outputs().output(file)
        result = findings(planned(), wanted, read(wanted, write(wanted)))
        assert result.problems == ()
        assert result.deviation <= 0.001


@pytest.mark.parametrize("form", CUTTER)
def test_make_and_check_agree(form: str, tmp_path: Path) -> None:
    """Files are made, listed, found right on their own, and wrong against another kit or stock."""
    report = make(planned(), tmp_path, font_metrics(), ["comb"], stock=stock())
    (made,) = (each for each in report.made if each.file.endswith(form))
    assert made.cuts == 2  # the hanging hole and the outline
    assert all(each.problems == () for each in check([tmp_path], Against(), font_metrics()))
    same = Against(planned().kit, replace(stock(), prices={"sheet": 9.0}))
    assert check([tmp_path / made.file], same, font_metrics())[0].problems == ()
    for against in (Against(plan_of({"weaving.width": "18 cm"}).kit), Against(stock=replace(stock(), kerf_x=0.3))):
        assert check([tmp_path / made.file], against, font_metrics())[0].problems


def test_the_manifest_counts_what_is_cut(tmp_path: Path) -> None:
    """Marks and cuts stand apart."""
    make(planned(), tmp_path, font_metrics(), ["strip-near", "comb"], stock=stock())
    entries = {
        each["file"].rpartition(".")[2]: each for each in json.loads((tmp_path / "manifest.json").read_text())["files"]
    }
    assert (entries["dxf"]["marks"], entries["dxf"]["cuts"]) == (0, 2)


# --- from outside


def test_ezdxf_and_svgelements_find_the_same_outlines() -> None:
    """Both outside readers measure the length and the box of every cut alike, and as they were drawn."""
    for svg, dxf in zip(cut_files("svg"), cut_files("dxf"), strict=True):
        drawing = svgelements.SVG.parse(io.BytesIO(write(outputs().output(svg))), ppi=25.4)
        (group,) = (each for each in drawing.elements() if each.values.get("id") == "cut")
        ours = [each for each in group if isinstance(each, svgelements.Path)]
        document = ezdxf.read(io.StringIO(write(outputs().output(dxf)).decode()))
        assert document.audit().errors == []
        theirs = [list(each.virtual_entities()) for each in document.modelspace() if each.dxf.layer == "cut"]
        (sheet,) = outputs().output(svg).sheets
        assert len(ours) == len(theirs) == cuts_on(sheet)
        for one, other in zip(ours, theirs, strict=True):
            points = [point for each in other for point in points_on(each)]
            assert one.length(error=1e-6) == pytest.approx(sum(map(length_of, other)), rel=1e-5)
            left, top, right, bottom = one.bbox()
            xs, ys = [point.x for point in points], [sheet.height - point.y for point in points]
            assert (left, top, right, bottom) == pytest.approx((min(xs), min(ys), max(xs), max(ys)), abs=0.001)


def points_on(each: DXFEntity) -> list[ezdxf.math.Vec3]:
    """Places on a line or an arc, from one end to the other."""
    return list(each.flattening(0.0002)) if isinstance(each, Arc) else [each.dxf.start, each.dxf.end]


def length_of(each: DXFEntity) -> float:
    """The length of a line or an arc."""
    if isinstance(each, Arc):
        return each.dxf.radius * math.radians((each.dxf.end_angle - each.dxf.start_angle) % 360)
    return each.dxf.start.distance(each.dxf.end)


def test_resvg_shows_every_slot() -> None:
    """Rasterised, a row of pixels half way up the teeth of the comb meets each of its walls: two for every slot."""
    wide = {name: replace(shown, width=0.2) for name, shown in stock().operations.items()}
    changed = replace(stock(), operations=wide, grain="y")  # so that the teeth stand upright
    every = Outputs(planned(), font_metrics(), ["comb"], changed)
    (sheet,) = every.output(every.files[0]).sheets
    pixels = svg_pixels(write(every.output(every.files[0])))
    row = pixels[40] < 230  # 4 mm below the tips
    crossings = sum(1 for before, here in pairwise(row) if here and not before) + int(row[0])
    assert crossings == 2 * planned().warp.ends + 2
    assert sheet.height * 10 == pytest.approx(pixels.shape[0], abs=1)


# --- what rings


def alarm(wanted: Output, data: bytes) -> str:
    """What the proof says against `data`; nothing if it passes."""
    try:
        result = findings(planned(), wanted, read(wanted, data))
    except LayoutError as error:
        return str(error)
    return "; ".join(result.sentences) or ("" if result.sound else "off")


def redrawn(sheet: Sheet, pen: Pen, change: Callable[[Shape], Shape]) -> Sheet:
    """The sheet with its last shape of that pen changed."""
    at = max(k for k, shape in enumerate(sheet.shapes) if shape.pen is pen)
    return replace(sheet, shapes=(*sheet.shapes[:at], change(sheet.shapes[at]), *sheet.shapes[at + 1 :]))


def slot_aside(shape: Shape) -> Shape:
    """An outline with one straight side, a slot's wall, 10 micrometres aside."""
    assert isinstance(shape, Curve)
    at = len(shape.steps) // 2
    moved = [step._replace(end=step.end._replace(x=step.end.x + 0.01)) for step in shape.steps[at : at + 2]]
    return shape._replace(steps=(*shape.steps[:at], *moved, *shape.steps[at + 2 :]))


DRAWN: dict[str, Callable[[Sheet], Sheet]] = {
    "the outline 10 micrometres aside": lambda s: redrawn(s, Pen.THROUGH, lambda p: Placing(0, 0.01).shapes([p])[0]),
    "a slot 10 micrometres aside": lambda s: redrawn(s, Pen.THROUGH, slot_aside),
    "a scored mark aside": lambda s: redrawn(s, Pen.SCORE, lambda p: Placing(0, 0.01).shapes([p])[0]),
    "a word aside": lambda s: redrawn(s, Pen.ENGRAVE, lambda p: Placing(0, 0.01).shapes([p])[0]),
    "a scored mark missing": lambda s: replace(s, shapes=tuple(p for p in s.shapes if p.pen is not Pen.SCORE)),
    "the hole after the outline": lambda s: replace(s, shapes=swapped(s.shapes)),
    "97 % of its size": lambda s: replace(s, shapes=tuple(map(smaller, s.shapes))),
}


def swapped(shapes: tuple[Shape, ...]) -> tuple[Shape, ...]:
    """The two things that are cut, in the other order."""
    one, other = (k for k, shape in enumerate(shapes) if shape.pen is Pen.THROUGH)
    found = list(shapes)
    found[one], found[other] = found[other], found[one]
    return tuple(found)


def smaller(shape: Shape) -> Shape:
    """A line at 97 %, but for what is there for reference."""
    if not isinstance(shape, Curve) or shape.pen is Pen.REFERENCE:
        return shape

    def place(point: tuple[float, float]) -> tuple[float, float]:
        return type(shape.start)(point[0] * 0.97, point[1] * 0.97)

    steps = tuple(type(step)(place(step.end), step.through and place(step.through)) for step in shape.steps)
    return shape._replace(start=place(shape.start), steps=steps)


@pytest.mark.parametrize("form", CUTTER)
@pytest.mark.parametrize("name", DRAWN)
def test_another_drawing_rings(name: str, form: str) -> None:
    """A drawing that differs in one thing is refused by the writer or does not pass the proof."""
    wanted = outputs().output(next(file for file in cut_files(form) if file.startswith("comb")))
    sheet = DRAWN[name](wanted.sheets[0])
    assert sheet != wanted.sheets[0]
    try:
        data = FORMATS[form].write([sheet], wanted.about)
    except LayoutError:
        return
    assert alarm(wanted, data)


@pytest.mark.parametrize("form", CUTTER)
def test_another_table_rings(form: str) -> None:
    """Colours that agree with the file's own table but not with the stock do not pass."""
    wanted = outputs().output(cut_files(form)[0])
    table = dict(stock().operations) | {"cut": Operation("#123456", 0.1)}
    data = FORMATS[form].write(wanted.sheets, wanted.about._replace(operations=table))
    assert "colours" in alarm(wanted, data)


# --- on paper


@pytest.mark.parametrize("size", ["common", "a4", "letter", "a3", "148 x 210 mm", "600 x 3000 mm"])
def test_drawings_on_paper_are_good_drawings(size: str) -> None:
    """Words keep 0.3 mm of white; every engraved word stands whole on some sheet; arcs are still there."""
    named = plan_of({"paper.size": size, "name": "A frame with a long name to engrave"})
    every = Outputs(named, font_metrics(), stock=stock())
    files = [file for file in every.files if file.endswith("mm-kerf-0.20.pdf")]
    for file in files:
        wanted = every.output(file)
        words = {shape.words for sheet in wanted.sheets for shape in sheet.shapes if isinstance(shape, Text)}
        (name,) = cut_products_of(file)[-1:]
        parts = CUT_PRODUCTS[name].builds(named, stock(), font_metrics())
        engraved = {shape.words for part in parts for shape in part.shapes if isinstance(shape, Text)}
        assert engraved
        assert engraved <= words
        assert [meeting for sheet in wanted.sheets for meeting in meetings(sheet, 0.3)] == []
        cuts = [shape for sheet in wanted.sheets for shape in sheet.shapes if shape.pen is Pen.THROUGH]
        assert any(step.through for path in cuts if isinstance(path, Curve) for step in path.steps)
    assert files or any("is not drawn on paper" in note for note in every.notes)


def test_a_stock_that_is_too_small_leaves_a_part_out_and_says_so() -> None:
    """What is not asked for by name is left out with one sentence; what is asked for is refused."""
    small = replace(stock(), width=100.0, height=100.0)
    every = Outputs(planned(), font_metrics(), stock=small)
    assert every.files == Outputs(planned(), font_metrics()).files
    assert any(re.match(r"comb is not made: sheet\.(width|height): needs at least ", note) for note in every.notes)
    with pytest.raises(FieldError, match=r"sheet\.(width|height)"):
        assert Outputs(planned(), font_metrics(), ["comb"], small).files


def test_what_asks_for_care_is_told_whatever_its_words(monkeypatch: pytest.MonkeyPatch) -> None:
    """A note of a part is said by what it is for: another wording, or another language, changes nothing."""
    right = CUT_PRODUCTS["comb"]
    plain, mind = ENGLISH.say(Marking.LEFT), ENGLISH.say(Marking.RIGHT)

    def other(*given: Any) -> Any:
        return tuple(replace(part, notes=(plain, Care(mind))) for part in right.builds(*given))

    monkeypatch.setattr("templates_gen.files.cut_drawings.CUT_PRODUCTS", {"comb": right._replace(builds=other)})
    monkeypatch.setattr("templates_gen.files.cut_drawings.cut_suiting", lambda _: ("comb",))
    stated = Outputs(planned(), font_metrics(), ["comb"], stock()).notes
    assert any(note.endswith(mind) for note in stated)
    assert not any(note.endswith(plain) for note in stated)


def test_a_name_that_is_printed_and_cut_is_printed_where_it_cannot_be_cut(monkeypatch: pytest.MonkeyPatch) -> None:
    """Asked for by name, both are made; from a stock that is too small only the printed one, and that is said."""
    monkeypatch.setattr("templates_gen.files.cut_drawings.CUT_PRODUCTS", {"wrap-gauge": CUT_PRODUCTS["comb"]})
    monkeypatch.setattr("templates_gen.files.cut_drawings.cut_suiting", lambda _: ("wrap-gauge",))
    both = Outputs(planned(), font_metrics(), ["wrap-gauge"], stock())
    assert {"wrap-gauge.pdf", "wrap-gauge.svg"} < set(both.files)
    assert len(both.files) == 5
    small = Outputs(planned(), font_metrics(), ["wrap-gauge"], replace(stock(), width=100.0, height=100.0))
    assert set(small.files) == {"wrap-gauge.pdf", "wrap-gauge.svg"}
    assert any(note.startswith("wrap-gauge is not made: ") for note in small.notes)


# --- the commands


def test_make_takes_a_stock_and_check_reads_it_back(tmp_path: Path) -> None:
    """`make --stock` cuts for that stock, names its kerf, and `check` finds the folder right, or wrong for another."""
    own = tmp_path / "own.toml"
    assert run("new-stock", own).exit_code == 0
    text = own.read_text(encoding="utf-8")
    assert 'kerf = "0.20 mm"' in text
    own.write_text(text.replace('kerf = "0.20 mm"', 'kerf = "0.12 mm"'), encoding="utf-8")
    made = run("make", "--only", "comb", "--stock", own, "-o", tmp_path / "cut", "--list")
    assert made.exit_code == 0, made.output
    assert "kerf-0.12.dxf" in made.stdout
    assert "2 outlines to cut" in made.stdout
    assert run("check", tmp_path / "cut").exit_code == 0
    assert run("check", tmp_path / "cut", "--stock", own).exit_code == 0
    other = tmp_path / "other.toml"
    run("new-stock", other)
    assert run("check", tmp_path / "cut", "--stock", other).exit_code == 1


def test_a_stock_that_cannot_be_read_is_one_sentence(tmp_path: Path) -> None:
    """No file, and no stock file; nothing is written."""
    assert "nowhere.toml" in refused("make", "--stock", tmp_path / "nowhere.toml", "-o", tmp_path / "cut")
    assert not (tmp_path / "cut").exists()
