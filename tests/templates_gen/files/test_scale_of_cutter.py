"""Files for a cutter that is a little off: read by other programs, cut by a simulated beam, and proven."""

from __future__ import annotations

import io
from collections.abc import Callable
from dataclasses import replace
from functools import cache
from itertools import combinations

import ezdxf
import pytest
import shapely
import svgelements
from beams import area_of, cuts_of
from kits import NOTCHED, PEGGED, font_metrics, plan_of
from shapely import affinity

from layout.cutting.job.boards import EDGE, gap_on
from layout.cutting.stock.drawn_scale import drawn_against
from layout.cutting.stock.stock import Stock
from layout.drawing.correction import TRUE, Scale, corrected
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Region
from layout.drawing.sheet import Sheet
from templates_gen.files import board_drawings, cut_drawings
from templates_gen.files.output import Output
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings, read, write
from templates_gen.inputs.stock_file import built_in

OFF = Scale(1.0021, 0.9987, -0.0004)
FURTHEST = (Scale(1.03, 0.97, 0.03), Scale(0.97, 1.03, -0.03))
KITS: dict[str, dict[str, object]] = {"round": {}, "notched": NOTCHED, "pegged": PEGGED}
MICROMETRE = 0.001


def stock_of(scale: Scale, **changes: object) -> Stock:
    """The built-in stock on a cutter with this scale, whose kerf differs along x and y."""
    return replace(built_in(), kerf_x=0.22, kerf_y=0.18, scale=scale, **changes)  # type: ignore[arg-type]


@cache
def outputs_of(scale: Scale, kit: str = "round") -> Outputs:
    """All files of a kit on such a cutter."""
    return Outputs(plan_of(KITS[kit]), font_metrics(), stock=stock_of(scale))


def named(outputs: Outputs, begins: str, ends: str) -> Output:
    """The file whose name begins and ends so."""
    return outputs.output(next(file for file in outputs.files if file.startswith(begins) and file.endswith(ends)))


def cut_by(geometry: shapely.Geometry, scale: Scale) -> shapely.Geometry:
    """What a cutter with this scale makes of it: shapely's own affine transform."""
    return affinity.affine_transform(geometry, [scale.x, scale.skew, 0.0, scale.y, 0.0, 0.0])


# --- read by other programs


def dxf_corners(data: bytes) -> list[list[tuple[float, float]]]:
    """The corners of every outline that is cut, as ezdxf reads them."""
    space = ezdxf.read(io.StringIO(data.decode())).modelspace()
    paths = [each for each in space.query("LWPOLYLINE") if each.dxf.layer == "cut"]
    return [[(x, y) for x, y, *_ in path.get_points()] for path in paths]


def svg_corners(data: bytes) -> list[list[tuple[float, float]]]:
    """The same as svgelements reads them, y upward."""
    drawing = svgelements.SVG.parse(io.BytesIO(data), ppi=25.4)
    groups = [each for each in drawing.elements() if isinstance(each, svgelements.Group) and each.id == "cut"]
    paths = [path for path in groups[0] if isinstance(path, svgelements.Path)]
    high = float(drawing.height)
    return [[(seg.end.x, high - seg.end.y) for seg in path if not isinstance(seg, svgelements.Close)] for path in paths]


@pytest.mark.parametrize(
    ("name", "form", "corners_of"),
    [("trial-cut-", "svg", svg_corners), ("shed-stick-", "svg", svg_corners), ("board-", "dxf", dxf_corners)],
)
def test_other_readers_find_the_distances_that_the_cutter_makes_right(
    name: str, form: str, corners_of: Callable[[bytes], list[list[tuple[float, float]]]]
) -> None:
    """Every corner that another program reads, times the scale, is as far from every other as without one, to 1 um."""
    wanted, found = (corners_of(write(named(outputs_of(scale), name, form))) for scale in (TRUE, OFF))
    assert len(wanted) == len(found)
    plain = [corner for path in wanted for corner in path]
    made = [(OFF.x * x + OFF.skew * y, OFF.y * y) for path in found for x, y in path]
    assert len(plain) == len(made)
    shifts = [(x - u, y - v) for (x, y), (u, v) in zip(plain, made, strict=True)]
    for along in (0, 1):
        assert max(each[along] for each in shifts) - min(each[along] for each in shifts) <= MICROMETRE
    reach = [[y for path in paths for _, y in path] for paths in (wanted, found)]
    one, other = (max(ys) - min(ys) for ys in reach)
    assert other / one == pytest.approx(1 / OFF.y, abs=1e-5)  # and as they stand in the file, they are drawn larger


@pytest.mark.parametrize("scale", [OFF, *FURTHEST])
def test_the_square_in_the_file_measures_50_mm(scale: Scale) -> None:
    """It is there to see whether a program opens the file at its size, so nothing is taken off or added."""
    drawing = svgelements.SVG.parse(io.BytesIO(write(named(outputs_of(scale), "shed-stick-", "svg"))), ppi=25.4)
    groups = [each for each in drawing.elements() if isinstance(each, svgelements.Group)]
    paths = [path for each in groups if each.id == "reference" for path in each if isinstance(path, svgelements.Path)]
    sizes = [(right - left, low - high) for left, high, right, low in (path.bbox() for path in paths)]
    assert any(size == pytest.approx((50, 50), abs=1e-4) for size in sizes)


# --- cut by a simulated beam


@pytest.mark.parametrize("scale", [OFF, *FURTHEST])
@pytest.mark.parametrize("name", ["shed-stick-", "trial-cut-"])
def test_the_cutter_runs_along_the_lines_that_are_wanted(name: str, scale: Scale) -> None:
    """Moved by the cutter, every outline is the one without a scale; chords for arcs leave 2 um open."""
    plain, drawn = (cuts_of(named(outputs_of(each), name, "dxf").sheets[0].shapes) for each in (TRUE, scale))
    for one, other in zip(plain, drawn, strict=True):
        wanted, made = area_of(one), cut_by(area_of(other), scale)
        made = affinity.translate(made, wanted.centroid.x - made.centroid.x, wanted.centroid.y - made.centroid.y)
        assert wanted.hausdorff_distance(made) <= 2.5 * MICROMETRE


@pytest.mark.parametrize("scale", [OFF, *FURTHEST])
def test_scale_and_kerf_do_not_mix(scale: Scale) -> None:
    """A beam as wide as the kerf, moved by the cutter: a slot is half the pitch of 4 mm and 0.15 mm of ease wide."""
    lines = cuts_of(named(outputs_of(scale), "comb-", "dxf").sheets[0].shapes)
    plate = affinity.rotate(cut_by(area_of(lines[-1]), scale), -90, origin=(0, 0))  # it lies along the grain
    left, _, right, top = plate.bounds
    level = shapely.LineString([(left - 10, top - 2), (right + 10, top - 2)])
    gaps = level.difference(plate.difference(plate.exterior.buffer(0.09, quad_segs=512)))
    widths = [gap.length for gap in gaps.geoms][2:-2]  # the corners of the plate are round
    assert len(widths) > 20
    assert widths == pytest.approx([2.15] * len(widths), abs=MICROMETRE)


@pytest.mark.parametrize("scale", [OFF, *FURTHEST])
def test_parts_keep_to_the_board_and_off_each_other(scale: Scale) -> None:
    """Cut, every part lies as far from the edges of the board, and from others, as on a true cutter."""
    stock = stock_of(scale)
    sheet = named(outputs_of(scale), "board-", "svg").sheets[0]
    board = next(s for s in sheet.shapes if isinstance(s, Curve) and s.pen is Pen.REFERENCE and len(s.steps) == 3)
    edges = cut_by(area_of(board), scale)
    assert edges.bounds[2] - edges.bounds[0] == pytest.approx(stock.width, abs=MICROMETRE)
    areas = [cut_by(area_of(path), scale) for path in cuts_of(sheet.shapes)]
    outer = [area for area in areas if not any(area is not other and other.contains(area) for other in areas)]
    assert all(edges.buffer(MICROMETRE - EDGE, join_style="mitre").contains(part) for part in outer)
    assert all(one.distance(other) >= gap_on(stock) - MICROMETRE for one, other in combinations(outer, 2))


@pytest.mark.parametrize("scale", [OFF, *FURTHEST])
def test_nothing_that_is_worked_lies_off_the_page(scale: Scale) -> None:
    """What is cut, scored and engraved lies on the page of the file, so that no program clips it."""
    for name in ("board-", "comb-", "spacing-guide-cut-"):
        sheet = named(outputs_of(scale), name, "svg").sheets[0]
        for shape in sheet.shapes:
            if shape.pen is Pen.REFERENCE or not isinstance(shape, Curve | Region):
                continue
            for path in shape.contours if isinstance(shape, Region) else (shape,):
                for x, y in path.points():
                    assert -1e-6 <= x <= sheet.width + 1e-6
                    assert -1e-6 <= y <= sheet.height + 1e-6


def test_words_keep_their_size() -> None:
    """Every engraved word is as wide and as high as without a scale."""
    plain, drawn = (named(outputs_of(scale), "wrap-gauge-cut-", "svg").sheets[0] for scale in (TRUE, FURTHEST[0]))
    sizes = []
    for sheet in (plain, drawn):
        regions = [shape for shape in sheet.shapes if isinstance(shape, Region)]
        boxes = [zip(*(p for path in each.contours for p in path.points()), strict=True) for each in regions]
        sizes.append([max(way) - min(way) for box in boxes for way in box])
    assert len(sizes[0]) > 20
    assert sizes[1] == pytest.approx(sizes[0], abs=1e-9)


# --- what the files say, and their proof


@pytest.mark.parametrize(
    ("kit", "scale", "begins"),
    [
        ("round", FURTHEST[1], ""),
        ("notched", OFF, "end-bars-"),
        ("pegged", FURTHEST[0], "peg-jig-"),
        *(pytest.param(kit, scale, "", marks=pytest.mark.slow) for kit in KITS for scale in (OFF, *FURTHEST)),
    ],
)
def test_every_file_on_a_cutter_that_is_off_passes(kit: str, scale: Scale, begins: str) -> None:
    """Files for the cutter, boards and job sheet of every kind of frame."""
    outputs = outputs_of(scale, kit)
    cut = [file for file in outputs.files if file.endswith((".svg", ".dxf", "job.pdf")) and not _printed(file)]
    assert len(cut) > 12
    for file in (file for file in cut if file.startswith(begins)):
        output = outputs.output(file)
        assert findings(outputs.plan, output, read(output, write(output))).sentences == ()
        assert ("-corrected." in file) == (file != "job.pdf")


def _printed(file: str) -> bool:
    return "mm-" not in file and file != "job.pdf"


def test_drawings_on_paper_stay_as_they_are() -> None:
    """A drawing of a cut part for the eye shows the part as it is wanted, and is called as before."""
    plain, drawn = (named(outputs_of(scale), "comb-", "pdf") for scale in (TRUE, OFF))
    assert plain.file == drawn.file
    assert [shape for shape in plain.sheets[0].shapes if isinstance(shape, Curve) and shape.pen is Pen.THROUGH] == [
        shape for shape in drawn.sheets[0].shapes if isinstance(shape, Curve) and shape.pen is Pen.THROUGH
    ]


def test_a_check_is_drawn_without_the_scale_that_it_measures() -> None:
    """The square check of a stock with a scale is that of one without, and one that is drawn against it rings."""
    plain, own = (Outputs(plan_of(), font_metrics(), ("square-check",), stock_of(scale)) for scale in (TRUE, OFF))
    assert plain.files == own.files
    for file in own.files:
        assert own.output(file).sheets == plain.output(file).sheets or file.endswith("pdf")
        assert findings(own.plan, own.output(file), read(own.output(file), write(own.output(file)))).problems == ()
    output = own.output(own.files[0])
    spoilt = replace(output, sheets=tuple(drawn_against(sheet, OFF) for sheet in output.sheets))
    assert "not true to scale" in str(findings(own.plan, spoilt, read(spoilt, write(spoilt))).sentences)


def test_a_scale_of_nothing_changes_no_byte() -> None:
    """Without keys of a scale, and with a scale that says nothing, the same bytes."""
    said = replace(built_in(), scale=Scale(1.0, 1.0, 0.0))
    outputs = Outputs(plan_of(), font_metrics(), stock=said)
    plain = Outputs(plan_of(), font_metrics(), stock=built_in())
    assert outputs.files == plain.files
    for begins, ends in (("comb-", "svg"), ("board-", "dxf"), ("job", "pdf")):
        assert write(named(outputs, begins, ends)) == write(named(plain, begins, ends))


# --- the alarm


def scaled_by(change: Callable[[Scale], Scale]) -> Callable[[Sheet, Scale], Sheet]:
    """The honest drawing against another scale."""
    return lambda sheet, scale: drawn_against(sheet, change(scale))


WRONG: dict[str, Callable[[Sheet, Scale], Sheet]] = {
    "said and not applied": lambda sheet, _: sheet,
    "axes swapped": scaled_by(lambda scale: Scale(scale.y, scale.x, scale.skew)),
    "a wrong factor": scaled_by(lambda scale: scale._replace(x=scale.x + 0.0002)),
    "the wrong way": scaled_by(lambda scale: Scale(1 / scale.x, 1 / scale.y, -scale.skew)),
    "no skew": scaled_by(lambda scale: scale._replace(skew=0.0)),
    "the skew turned round": scaled_by(lambda scale: scale._replace(skew=-scale.skew)),
    "applied twice": lambda sheet, scale: drawn_against(drawn_against(sheet, scale), scale),
}


@pytest.mark.parametrize("wrong", WRONG)
def test_a_scale_that_is_drawn_wrongly_rings(wrong: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Whoever draws the files, plan and file alike: every file for the cutter is found."""
    for module in (cut_drawings, board_drawings):
        monkeypatch.setattr(module, "drawn_against", WRONG[wrong])
    outputs = Outputs(plan_of(), font_metrics(), stock=stock_of(OFF))
    for begins in ("shed-stick-", "board-"):
        output = named(outputs, begins, "dxf")
        assert findings(outputs.plan, output, read(output, write(output))).problems


@pytest.mark.parametrize("way", [corrected, drawn_against])
def test_a_drawing_on_paper_that_is_scaled_rings(way: Callable[[Sheet, Scale], Sheet]) -> None:
    """Drawings for the eye are nominal."""
    output = named(outputs_of(OFF), "comb-", "pdf")
    spoilt = replace(output, sheets=tuple(way(sheet, OFF) for sheet in output.sheets))
    assert findings(outputs_of(OFF).plan, spoilt, read(spoilt, write(spoilt))).problems


def test_a_job_sheet_that_says_another_scale_rings() -> None:
    """The sentence is worked out once more from the stock."""
    output = named(outputs_of(OFF), "job", "pdf")
    other = named(outputs_of(OFF._replace(y=0.9986)), "job", "pdf")
    spoilt = replace(output, sheets=other.sheets, laid=other.laid)
    found = findings(outputs_of(OFF).plan, spoilt, read(spoilt, write(spoilt)))
    assert any("scale is drawn in" in sentence for sentence in found.sentences)
