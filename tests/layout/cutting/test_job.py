from __future__ import annotations

from dataclasses import replace

import pytest
import shapely
from golden import listed, matches
from kits import font_metrics, plan_of

from layout.cutting.job.boards import boards_of, box_of
from layout.cutting.job.job import Job, facts, safety
from layout.cutting.job.picture import picture
from layout.cutting.job.work import work_of
from layout.cutting.products import CUT_PRODUCTS, turns
from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Text
from layout.drawing.sheet import Part
from templates_gen.inputs.stock_file import built_in
from templates_gen.lettering.outlines import outlined

SPEEDS = {"engrave": 200.0, "score": 60.0, "cut": 12.0}
BIRCH = replace(built_in(), width=600.0, height=400.0, grain="x")
FAST = replace(BIRCH, speeds=SPEEDS, prices={"sheet": 4.5, "minute": 0.8})


def job_for(stock: Stock, copies: int = 1) -> Job:
    """The job of the test kit's combs."""
    plan, metrics = plan_of(), font_metrics()
    parts = [part for name in ("comb", "winding-comb") for part in CUT_PRODUCTS[name].builds(plan, stock, metrics)]
    boards = boards_of(parts * copies, turns(stock), stock, metrics)
    works = tuple(work_of(outlined(boards.sheet(k)).shapes) for k in range(1, len(boards.sheets) + 1))
    return Job(boards, works)


def said(part: Part) -> str:
    """All words of a part, line by line."""
    return "\n".join(shape.words for shape in part.shapes if isinstance(shape, Text))


def test_the_card_says_what_is_cut_and_how() -> None:
    """Material, thickness, sheets, kerf, the operations in order with colour and amount, the time as an estimate."""
    job = job_for(FAST)
    words = said(facts(job, 110.0, font_metrics()))
    assert "birch plywood (birch plywood 3 mm)" in words
    assert "1 of 600 x 400 mm; by area at least 1" in words
    assert "0.2 mm, drawn in: the machine's own compensation stays off" in words
    assert "runs along x; no part is turned across it" in words
    order = [words.index(each) for each in ("1  engrave", "2  score", "3  cut", "reference", "Time")]
    assert order == sorted(order)
    assert f"red, #c9391f; {job.work.cut / 1000:.3f} m" in words
    assert "grey, #a19a8e; nothing runs it" in words
    seconds = job.work.engrave / 0.1 / 200 + job.work.score / 60 + job.work.cut / 12
    assert f"about {seconds / 60:.1f} min, an estimate" in words


def test_a_kerf_left_to_the_machine_is_told() -> None:
    """Where the kerf is not drawn in, the card says who has to see to it; two kerfs are known apart."""
    words = said(facts(job_for(replace(FAST, kerf_drawn=False)), 110.0, font_metrics()))
    assert "0.2 mm, not drawn in: the machine itself must keep" in words
    words = said(facts(job_for(replace(FAST, kerf_x=0.21, kerf_y=0.19)), 150.0, font_metrics()))
    assert "0.21 mm where a cut runs up the sheet, 0.19 mm across it, drawn in" in words


def test_a_time_that_is_not_known_is_not_told() -> None:
    """Without speeds the card names those that are missing."""
    words = said(facts(job_for(BIRCH), 150.0, font_metrics()))
    assert "unknown: add speeds for engrave, score and cut to the stock file" in words


def test_nothing_is_said_of_money() -> None:
    """Prices stand in the stock file and on no page."""
    job = job_for(FAST)
    parts = [facts(job, 85.0, font_metrics()), safety(85.0, font_metrics()), picture(job, 1, 170, 120, font_metrics())]
    assert all("4.5" not in said(part) and "0.8" not in said(part) and "pric" not in said(part) for part in parts)


@pytest.mark.parametrize(
    "words",
    ["Extraction", "extinguisher", "never left alone", "interlocks", "eyes", "PVC or vinyl", "hydrogen chloride",
     "no plastic", "trained", "own rules and the law"],
)  # fmt: skip
def test_the_rules_name_every_danger(words: str) -> None:
    """Fumes, fire, eyes, poisonous plastics, untrained hands; local rules come first (common workshop rules)."""
    text = " ".join(said(safety(85.0, font_metrics())).split())
    assert words in text
    assert text.index("own rules") < text.index("never left alone")


def test_the_picture_numbers_what_it_lists() -> None:
    """Each part's number stands inside it and in the list, with its title and size."""
    job = job_for(FAST)
    part = picture(job, 1, 170.0, 120.0, font_metrics())
    words = said(part).splitlines()
    assert words[0] == "Board 1 of 1, a picture not to scale"
    assert [each for each in words if each.isdigit()] == ["1", "2", "3"]
    listing = "\n".join(words[-3:])
    for piece in job.boards.sheets[0][:-1]:
        assert f"{piece.part.title}, {piece.part.length:.1f} x {piece.part.height:.1f} mm" in listing


def test_the_picture_keeps_the_board_s_form() -> None:
    """The board is drawn in its own proportion, and every cut line lies inside it."""
    part = picture(job_for(FAST), 1, 170.0, 120.0, font_metrics())
    paths = [shape for shape in part.shapes if isinstance(shape, Curve)]
    (edge,) = [path for path in paths if path.pen is Pen.REGISTER and path.closed]
    xs, ys = zip(*edge.points(), strict=True)
    assert (max(xs) - min(xs)) / (max(ys) - min(ys)) == pytest.approx(600 / 400)
    lines = [point for path in paths if path.pen is Pen.HELP for point in path.points()]
    assert all(min(xs) < x < max(xs) and min(ys) < y < max(ys) for x, y in lines)


def test_the_picture_fits_what_it_is_given() -> None:
    """Whatever the proportion of the stock, the picture is no wider and no higher than asked for."""
    for size in ((600.0, 400.0), (300.0, 900.0), (1200.0, 300.0)):
        stock = replace(FAST, grain="none", width=size[0], height=size[1])
        part = picture(job_for(stock), 1, 170.0, 110.0, font_metrics())
        assert part.length <= 170.0
        assert part.height <= 110.0 + 1e-9


def test_the_golden_cards() -> None:
    """The cards and the picture of the test kit, place by place."""
    job = job_for(FAST)
    parts = (facts(job, 85.0, font_metrics()), safety(85.0, font_metrics()), picture(job, 1, 170, 110, font_metrics()))
    assert all(matches(part.name, listed(part)) for part in parts)


@pytest.mark.parametrize(
    ("width", "height", "copies"), [(600, 400, 1), (3000, 2000, 1), (3000, 2000, 9), (1500, 500, 4), (500, 1500, 12)]
)
@pytest.mark.parametrize("room", [(85.0, 90.0), (170.0, 120.0)])
def test_every_part_has_its_number_on_the_picture(
    width: float, height: float, copies: int, room: tuple[float, float]
) -> None:
    """Inside it, or beside it at a line that ends in it; none lies on another, or on another part or its line."""
    job = job_for(replace(FAST, grain="none", width=float(width), height=float(height)), copies)
    part = picture(job, 1, *room, font_metrics())
    pieces = job.boards.sheets[0][:-1]
    numbers = {shape.words: shape for shape in part.shapes if isinstance(shape, Text) and shape.words.isdigit()}
    assert sorted(numbers, key=int) == [str(k) for k in range(1, len(pieces) + 1)]
    paths = [shape for shape in part.shapes if isinstance(shape, Curve)]
    (edge,) = [path for path in paths if path.pen is Pen.REGISTER and path.closed]
    board = shapely.Polygon(edge.points())
    scale = (board.bounds[2] - board.bounds[0]) / width
    lies = [shapely.box(*_shown(box_of(piece), board.bounds, scale)) for piece in pieces]
    leads = [shapely.LineString(path.points()) for path in paths if path.pen is Pen.REGISTER and not path.closed]
    words = {label: _rectangle(text) for label, text in numbers.items()}
    for k, own in enumerate(lies, 1):
        label = words[str(k)]
        others = [box for box in lies if box is not own]
        assert own.covers(label) or any(
            line.intersects(own) and line.distance(label) < 1.0 and not board.exterior.intersects(label)
            for line in leads
        )
        assert not any(label.intersects(other) for other in [*others, *(words[w] for w in words if w != str(k))])
        assert own.covers(label) or not any(line.intersects(label) for line in leads)


def _shown(
    box: tuple[float, float, float, float], board: tuple[float, ...], scale: float
) -> tuple[float, float, float, float]:
    return (
        board[0] + box[0] * scale,
        board[1] + box[1] * scale,
        board[0] + box[2] * scale,
        board[1] + box[3] * scale,
    )


def _rectangle(text: Text) -> shapely.Polygon:
    """What a number covers: its width, and the height of figures."""
    metrics = font_metrics()
    x, y = text.at
    return shapely.box(x, y, x + metrics.width(text.words, text.size), y + metrics.cap * text.size)
