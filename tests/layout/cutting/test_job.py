from __future__ import annotations

import re
from collections import Counter
from dataclasses import replace
from functools import cache
from itertools import combinations

import pytest
import shapely
from golden import listed, matches
from ink import meetings
from kits import KINDS, font_metrics, plan_of

from layout.cutting.job.boards import Boards, boards_of, box_of
from layout.cutting.job.job import Job
from layout.cutting.job.pages import job_pages
from layout.cutting.job.picture import board_shapes
from layout.cutting.job.work import work_of
from layout.cutting.products import CUT_PRODUCTS, turns
from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point, Shape, Text
from layout.drawing.sheet import Part, Sheet, painted
from layout.messages.english import ENGLISH
from templates_gen.files.outputs import Outputs
from templates_gen.inputs.stock_file import built_in
from templates_gen.lettering.outlines import outlined

SPEEDS = {"engrave": 200.0, "score": 60.0, "cut": 12.0}
BIRCH = replace(built_in(), width=600.0, height=400.0, grain="x")
FAST = replace(BIRCH, speeds=SPEEDS, prices={"sheet": 4.5, "minute": 0.8})
SIZE = (166.0, 220.7)
"""The field of the common sheet under its head."""


@cache
def boards_for(width: float, height: float, grain: str, copies: int = 1) -> Boards:
    """The boards of the test kit's combs."""
    stock = replace(FAST, width=width, height=height, grain=grain)
    plan, metrics = plan_of(), font_metrics()
    parts = [part for name in ("comb", "winding-comb") for part in CUT_PRODUCTS[name].builds(plan, stock, metrics)]
    return boards_of(parts * copies, turns(stock), stock, metrics, ENGLISH)


def job_of(boards: Boards, stock: Stock = FAST) -> Job:
    """The job of these boards, of another stock of their size."""
    works = tuple(work_of(outlined(boards.sheet(k)).shapes) for k in range(1, len(boards.sheets) + 1))
    files = tuple(f"board-{k}of{len(works)}" for k in range(1, len(works) + 1))
    return Job(
        replace(boards, stock=replace(stock, width=boards.stock.width, height=boards.stock.height)), works, files
    )


def job_for(stock: Stock = FAST) -> Job:
    """The job of the test kit's combs on one board."""
    return job_of(boards_for(stock.width, stock.height, stock.grain), stock)


def pages(job: Job, size: tuple[float, float] = SIZE) -> list[Part]:
    """Its sheets' parts."""
    return list(job_pages(job, size, ENGLISH, font_metrics()))


def said(parts: list[Part]) -> str:
    """All words of the parts, row by row, from left to right."""
    texts = [(part, shape) for part in parts for shape in part.shapes if isinstance(shape, Text)]
    order = sorted(texts, key=lambda each: (parts.index(each[0]), -round(each[1].at.y), each[1].at.x))
    return " ".join(text.words for _, text in order)


def test_the_sheet_says_what_is_cut_and_how() -> None:
    """Stock, files, parts, operations in order with colour and amount, kerf, the time as an estimate."""
    job = job_for()
    (page,) = pages(job)
    words = said([page])
    assert page.purpose == "One board of birch plywood, 3 mm, 600 x 400 mm."
    assert "Files: board-1of1, .svg or .dxf." in words
    assert "The grain runs along x; no part is turned across it." in words
    assert "The kerf, 0.2 mm, is drawn in: switch the machine's own off." in words
    rows = (f"1 engrave sand #c39a6b {job.work.engrave / 100:.1f} cm2", "2 score heather #7a6f8f", "3 cut bark #4a2c2a")
    assert [words.index(each) for each in rows] == sorted(words.index(each) for each in rows)
    assert re.search(rf"#4a2c2a {job.work.cut / 1000:.2f}\d* m", words)
    assert "Nothing runs what is grey, #a19a8e." in words
    seconds = job.work.engrave / 0.1 / 200 + job.work.score / 60 + job.work.cut / 12
    assert f"about {seconds / 60:.1f} min, an estimate" in words


def test_a_kerf_left_to_the_machine_is_told() -> None:
    """Where the kerf is not drawn in, a step says who has to see to it; two kerfs are known apart."""
    words = said(pages(job_for(replace(FAST, kerf_drawn=False))))
    assert "0.2 mm, is not drawn in: the machine itself must keep clear" in words
    words = said(pages(job_for(replace(FAST, kerf_x=0.21, kerf_y=0.19))))
    assert "0.21 mm where a cut runs up the sheet, 0.19 mm across it, is drawn in" in words


def test_a_time_that_is_not_known_is_not_told() -> None:
    """Without speeds the sheet names those that are missing."""
    words = said(pages(job_for(BIRCH)))
    assert "Time unknown: add speeds for engrave, score and cut to the stock file." in words


def test_nothing_is_said_of_money() -> None:
    """Prices stand in the stock file and on no page."""
    words = said(pages(job_for()))
    assert all(each not in words for each in ("4.5 ", "0.8 ", "pric", "money"))


def test_parts_that_are_alike_have_one_number_and_are_counted() -> None:
    """On two boards: each kind keeps its number, every copy says which it is, and both lists add up to all."""
    job = job_of(boards_for(300.0, 250.0, "none", 4))
    assert len(job.works) > 1
    kinds = job.kinds(ENGLISH)
    assert [kind.number for kind in kinds.values()] == [1, 2, 3]
    labels = [label for board in range(1, len(job.works) + 1) for label in job.labels(board, ENGLISH)]
    assert Counter((label.number, label.which, label.copies) for label in labels) == Counter(
        (number, which, 4) for number in (1, 2, 3) for which in (1, 2, 3, 4)
    )
    listed_ = re.findall(r"([A-Z][a-z, ]+) [\d.]+ x [\d.]+ x (\d+)", said(pages(job)))
    totals: Counter[str] = Counter()
    for title, count in listed_:
        totals[title] += int(count)
    assert totals == dict.fromkeys((kind.part.title for kind in kinds.values()), 4)


def test_the_picture_is_as_wide_as_the_field() -> None:
    """A board of the usual form takes nearly all of it, with its lists on the same sheet."""
    (page,) = pages(job_for())
    (edge,) = [box for path, box in closed(page.shapes, Pen.LIMIT)]
    assert edge[2] - edge[0] > 0.9 * SIZE[0]


SIZES = ((600.0, 400.0), (300.0, 900.0), (1200.0, 300.0), (3000.0, 2000.0))


@pytest.mark.parametrize("size", SIZES)
def test_the_picture_keeps_the_board_s_form(size: tuple[float, float]) -> None:
    """The board is drawn in its own proportion, and every cut line lies inside it; no wider or higher than its room."""
    for room in ((166.0, 110.0), (104.0, 60.0), (166.0, 40.0)):
        shapes, edge = board_shapes(job_of(boards_for(*size, "none")), 1, *room, ENGLISH, font_metrics())
        assert (edge[2] - edge[0]) / (edge[3] - edge[1]) == pytest.approx(size[0] / size[1])
        board = shapely.box(*edge)
        assert all(board.contains(shapely.box(*box)) for path, box in closed(shapes, Pen.HELP))
        assert edge[2] - edge[0] <= room[0] + 1e-9
        assert edge[3] - edge[1] <= room[1] + 1e-9


def closed(shapes: object, pen: Pen) -> list[tuple[Curve, Box]]:
    """Closed paths of a pen with their boxes."""
    paths = [s for s in shapes if isinstance(s, Curve) and s.pen is pen and s.closed]  # type: ignore[attr-defined]
    return [(path, shapely.LineString(path.points()).bounds) for path in paths]


def test_the_golden_sheet() -> None:
    """The sheet of the test kit's combs, place by place."""
    (page,) = pages(job_for())
    assert matches("job-board", listed(page))


@pytest.mark.parametrize(
    ("width", "height", "copies"), [(600, 400, 1), (600, 400, 2), (3000, 2000, 1), (1500, 500, 3), (500, 900, 3)]
)
@pytest.mark.parametrize("room", [(104.0, 90.0), (166.0, 110.0)])
def test_every_part_has_its_ring_on_the_picture(
    width: float, height: float, copies: int, room: tuple[float, float]
) -> None:
    """Inside it, or at the end of a line that begins in it; no ring lies on another, nor on another part."""
    job = job_of(boards_for(float(width), float(height), "none", copies))
    shapes, edge = board_shapes(job, 1, *room, ENGLISH, font_metrics())
    pieces = job.boards.sheets[0][:-1]
    rings = [Point((b[0] + b[2]) / 2, (b[1] + b[3]) / 2) for path, b in closed(shapes, Pen.RING)]
    assert len(rings) == len(pieces)
    scale = (edge[2] - edge[0]) / width
    lies = [shapely.box(*_shown(box_of(piece), edge, scale)) for piece in pieces]
    numbers = {(t.at.x, t.at.y): t.words for t in shapes if isinstance(t, Text) and t.words.isdigit()}
    leads = [s.points() for s in shapes if isinstance(s, Curve) and s.pen is Pen.HELP and not s.closed]
    discs = [shapely.Point(at).buffer(2.4) for at in rings]
    assert not any(one.distance(other) < 0.3 for one, other in combinations(discs, 2))
    found: Counter[str] = Counter()
    for disc in discs:
        (label,) = [words for at, words in numbers.items() if disc.contains(shapely.Point(at))]
        own = [box for box in lies if box.covers(disc)]
        ends = [start for start, end in leads if abs(shapely.Point(end).distance(disc.centroid) - 2.4) < 1e-6]
        beside = [box for box in lies for start in ends if box.contains(shapely.Point(start))]
        assert len([*own, *beside]) == 1
        assert not any(disc.intersects(box) for box in lies if box is not [*own, *beside][0])
        found[label] += 1
    assert found == Counter(str(label.number) for label in job.labels(1, ENGLISH))


def _shown(box: Box, board: Box, scale: float) -> Box:
    low_x, low_y, high_x, high_y = (side * scale for side in box)
    return board[0] + low_x, board[1] + low_y, board[0] + high_x, board[1] + high_y


@pytest.mark.parametrize("kind", ["round bars", "notched ends", "pegged ends"])
@pytest.mark.parametrize("paper", ["common", "a3", "148 x 210 mm", "210 x 148 mm"])
def test_no_words_meet_on_a_job_sheet(kind: str, paper: str) -> None:
    """Ink of letters from the font file, 0.3 mm off all other ink but the ring that lies round a number."""
    changes = {**KINDS[kind], "paper.size": paper}
    for stock in (FAST, replace(FAST, grain="none", width=500.0, height=60.0)):
        output = Outputs(plan_of(changes), font_metrics(), ["job"], stock).output("job.pdf")
        for sheet in output.sheets:
            assert meetings(_without_rings(sheet), 0.3) == []


def _without_rings(sheet: Sheet) -> Sheet:
    """The same without fills, and lines that end under a ring."""
    hidden = (Pen.PAPER, Pen.TINT, Pen.RING)
    shapes: list[Shape] = [shape for shape in sheet.shapes if shape.pen not in hidden and shape.pen is not Pen.ON_BLACK]
    return replace(sheet, shapes=painted(shapes))
