from __future__ import annotations

import math
from collections import Counter
from collections.abc import Sequence
from dataclasses import replace
from itertools import combinations

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from layout.drawing.sheet import Part, Piece
from layout.nesting.bed import Bed, Item, blocks_of
from layout.nesting.nest import Nest, nest
from layout.nesting.rows import in_columns, in_rows
from layout.values.errors import FieldError

BED = Bed(600, 400, gap=3, edge=5)


def board(name: str, length: float, height: float, left: float = 0.0, bottom: float = 0.0) -> Part:
    """A part that is nothing but its size."""
    return Part(name, name, (), (), (left, bottom, left + length, bottom + height))


def outline(piece: Piece) -> shapely.Polygon:
    """The rectangle that a piece takes on its sheet, by shapely's own turning and shifting."""
    placing = piece.placing
    turned = shapely.affinity.rotate(shapely.box(*piece.part.box), placing.degrees, origin=(0, 0))
    return shapely.affinity.translate(turned, placing.dx, placing.dy)


def straight_cuts_free(boxes: Sequence[tuple[float, ...]]) -> bool:
    """Whether straight cuts right through, again and again, can part the boxes one from the other."""
    if len(boxes) < 2:
        return True
    for low, high in ((0, 2), (1, 3)):
        for at in sorted({box[high] for box in boxes}):
            below = [box for box in boxes if box[high] <= at + 1e-9]
            above = [box for box in boxes if box[low] >= at - 1e-9]
            if above and len(below) + len(above) == len(boxes):
                return straight_cuts_free(below) and straight_cuts_free(above)
    return False


sizes = st.floats(4, 300).map(lambda size: round(size, 2))
turns = st.sampled_from([(0,), (90,), (0, 90)])
gaps, edges = st.sampled_from([0, 0.2, 3, 12.5]), st.sampled_from([0, 5, 7.3])
beds = st.builds(Bed, st.sampled_from([300.0, 420.5, 600.0]), st.sampled_from([320.0, 900.0]), gaps, edges)
wishes = st.lists(st.tuples(sizes, sizes, st.integers(1, 5), turns, st.floats(-500, 500)), min_size=1, max_size=9)


@st.composite
def jobs(draw: st.DrawFn) -> tuple[list[Item], Bed]:
    """Parts of any size that the sheet holds, some of them with a grain."""
    bed = draw(beds)
    wanted = []
    for k, (length, height, copies, ways, left) in enumerate(draw(wishes)):
        inside = bed.width - 2 * bed.edge, bed.height - 2 * bed.edge
        room = inside if ways[0] == 0 else inside[::-1]
        wanted.append(Item(board(f"p{k}", min(length, room[0]), min(height, room[1]), left, -left), copies, ways))
    return wanted, bed


@given(jobs())
def test_every_copy_lies_inside_and_clear(job: tuple[list[Item], Bed]) -> None:
    """All copies are there, within the edges, a gap apart, and turned only as they may be."""
    wanted, bed = job
    found = nest(wanted, bed)
    laid = [piece for sheet in found.sheets for piece in sheet]
    assert Counter(piece.part.name for piece in laid) == {item.part.name: item.copies for item in wanted}
    ways = {item.part.name: item.turns for item in wanted}
    assert all(piece.placing.degrees in ways[piece.part.name] for piece in laid)
    edge = bed.edge - 1e-6
    inside = shapely.box(edge, edge, bed.width - edge, bed.height - edge)
    for sheet in found.sheets:
        outlines = [outline(piece) for piece in sheet]
        assert all(inside.covers(one) for one in outlines)
        assert all(one.distance(other) >= bed.gap - 1e-6 for one, other in combinations(outlines, 2))
        assert all(one.intersection(other).area < 1e-6 for one, other in combinations(outlines, 2))


@given(jobs(), st.floats(0, 40), st.floats(0, 40))
def test_what_is_trimmed_off_takes_no_room(job: tuple[list[Item], Bed], aside: float, above: float) -> None:
    """Parts that reach past their trim lie as parts do that are no larger than it."""
    wanted, bed = job
    larger = []
    for item in wanted:
        left, low, right, high = item.part.box
        part = replace(item.part, box=(left - aside, low, right + aside, high + above))
        larger.append(item._replace(part=part, trim=item.part.box))
    small, large = nest(wanted, bed), nest(larger, bed)
    assert (small.least, small.waste) == (large.least, large.waste)
    placed = [[(piece.part.name, piece.placing) for piece in sheet] for sheet in small.sheets]
    assert placed == [[(piece.part.name, piece.placing) for piece in sheet] for sheet in large.sheets]


@given(jobs())
def test_straight_cuts_free_every_part(job: tuple[list[Item], Bed]) -> None:
    """However a sheet was filled, cuts right through what is left of it part all pieces."""
    for sheet in nest(*job).sheets:
        assert straight_cuts_free([outline(piece).bounds for piece in sheet])


@given(jobs())
def test_never_fewer_sheets_than_the_area_asks_for(job: tuple[list[Item], Bed]) -> None:
    """The sheets are at least the parts' area over a sheet's, and the waste is what no part covers."""
    wanted, bed = job
    found = nest(wanted, bed)
    area = math.fsum(outline(piece).area for sheet in found.sheets for piece in sheet)
    assert len(found.sheets) >= found.least >= math.ceil(area / (bed.width * bed.height) - 1e-9)
    assert found.waste == pytest.approx(1 - area / (len(found.sheets) * bed.width * bed.height), abs=1e-9)


@given(jobs())
def test_the_same_input_gives_the_same_result(job: tuple[list[Item], Bed]) -> None:
    """Nothing about a placing is left to chance."""
    assert nest(*job) == nest(*job)


def test_a_row_that_just_fits_does_fit() -> None:
    """Ten parts of 56.3 mm with gaps of 3 mm fill 590 mm to the micrometre, where sums of floats may run over."""
    found = nest([Item(board("bar", 56.3, 390), 10, turns=(0,))], BED)
    assert len(found.sheets) == 1
    assert len(nest([Item(board("bar", 56.301, 390), 10, turns=(0,))], BED).sheets) == 2


def test_full_sheets_waste_nothing() -> None:
    """Six parts that tile a sheet without edges and gaps need that one sheet, its area bound."""
    found = nest([Item(board("tile", 200, 200), 6)], Bed(600, 400, gap=0, edge=0))
    assert (len(found.sheets), found.least) == (1, 1)
    assert found.waste == pytest.approx(0, abs=1e-12)


def test_a_grain_is_kept_though_turning_would_save_a_sheet() -> None:
    """Two bars of 380 mm along the grain need the length of the sheet; turned, both would stand on one."""
    bar = board("bar", 380, 290)
    assert len(nest([Item(bar, 2)], BED).sheets) == 1
    kept = nest([Item(bar, 2, turns=(0,))], BED)
    assert [[piece.placing.degrees for piece in sheet] for sheet in kept.sheets] == [[0], [0]]


def test_the_library_wins_where_rows_waste_a_sheet() -> None:
    """One high part and many low ones: rows leave the space over the low ones empty, straight splits use it."""
    wanted = [Item(board("door", 100, 290), 1, (0,)), Item(board("slat", 190, 90), 3, (0,))]
    wanted += [Item(board("rail", 290, 100), 1, (0,))]
    bed = Bed(300, 400, gap=0, edge=5)
    blocks = blocks_of(wanted, bed)
    rows = [way(blocks, bed.room, flat=flat) for way in (in_rows, in_columns) for flat in (True, False)]
    assert min(map(len, rows)) == 2
    assert len(nest(wanted, bed).sheets) == 1


def test_a_part_larger_than_the_sheet_is_refused() -> None:
    """One sentence says which part, what sheet it needs, and the advice works; nothing is dropped."""
    bar = board("bar", 700.2, 50)
    said = "needs a sheet of at least 711 x 60 mm, edges of 5 mm included, for bar, got 600 x 400 mm"
    with pytest.raises(FieldError, match=said):
        nest([Item(board("small", 10, 10)), Item(bar, 1, (0,))], BED)
    assert len(nest([Item(bar, 1, (0,))], Bed(711, 60, BED.gap, BED.edge)).sheets) == 1


def test_a_part_too_large_one_way_is_turned() -> None:
    """What does not fit as it is drawn lies turned where it may."""
    (sheet,) = nest([Item(board("bar", 50, 500))], BED).sheets
    assert sheet[0].placing.degrees == 90


@pytest.mark.parametrize("copies", [0, -1, 1001])
def test_copies_that_cannot_be_meant_are_refused(copies: int) -> None:
    """A number of copies is whole and from 1 to 1000."""
    with pytest.raises(FieldError, match="copies: needs copies of bar, a whole number from 1 to 1000"):
        nest([Item(board("bar", 50, 50), copies)], BED)


def test_nothing_wanted_needs_no_sheet() -> None:
    """No parts, no sheets, no waste."""
    assert nest([], BED) == Nest((), 0, 0.0)
