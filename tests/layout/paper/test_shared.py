from __future__ import annotations

from itertools import combinations

import pytest
import shapely
from kits import font_metrics, plan_of

from layout.drawing.shapes import Point
from layout.drawing.sheet import Part, Piece
from layout.paper.shared import GAP, free_rectangle, share
from layout.paper.sheets import furnisher, printed
from layout.values.errors import FieldError

SIZES = ("common", "a4", "letter", "a3", "11x17", "148 x 210 mm", "210 x 148 mm", "600 x 3000 mm")


def card(name: str, width: float, height: float) -> Part:
    """A part that is nothing but its size."""
    return Part(name, "Card", (), (), (0.0, -height, width, 0.0), whole=True)


def box(piece: Piece) -> shapely.Polygon:
    """Where a piece lies."""
    left, bottom, right, top = piece.part.box
    points = piece.placing.points([Point(left, bottom), Point(right, top)])
    return shapely.box(*points[0], *points[1])


@pytest.mark.parametrize("size", SIZES)
def test_the_free_rectangle_is_free_and_cannot_grow(size: str) -> None:
    """It meets neither head nor foot, and no side of it can be moved out without meeting something."""
    plan = plan_of({"paper.size": size})
    take_room, part = furnisher(plan, font_metrics()), card("one", 10, 10)
    free = free_rectangle(take_room, part)
    area = take_room(part)
    bounds = shapely.box(area.left, area.bottom, area.right, area.top)
    taken = shapely.union_all([shapely.box(*each) for each in area.taken])

    def open_(left: float, bottom: float, right: float, top: float) -> bool:
        tried = shapely.box(left, bottom, right, top)
        return bool(tried.difference(bounds).area < 1e-6 and tried.intersection(taken).area < 1e-6)

    assert open_(*free)
    grown = ((-1, 0, 0, 0), (0, -1, 0, 0), (0, 0, 1, 0), (0, 0, 0, 1))
    assert not any(open_(*(side + more for side, more in zip(free, by, strict=True))) for by in grown)


def test_small_parts_share_a_sheet() -> None:
    """Six cards of 60 x 50 mm lie on one sheet of common paper, clear of each other and of head and foot."""
    plan = plan_of()
    cards = [card(f"card-{k}", 55.0, 50.0) for k in range(6)]
    laying = share(cards, plan.kit.paper, furnisher(plan, font_metrics()))
    (sheet,) = laying.sheets
    area = furnisher(plan, font_metrics())(cards[0])
    boxes = [box(piece) for piece in sheet]
    assert all(one.distance(other) >= GAP - 1e-6 for one, other in combinations(boxes, 2))
    assert all(area.holds(piece.part.box, piece.placing) for piece in sheet)
    assert {piece.part.name for piece in sheet} == {part.name for part in cards}


def test_what_does_not_fit_goes_on_the_next_sheet() -> None:
    """Three cards as large as a sheet allows lie on three sheets, numbered through and headed alike."""
    plan = plan_of()
    free = free_rectangle(furnisher(plan, font_metrics()), card("one", 10, 10))
    cards = [card(f"card-{k}", *free.size) for k in range(3)]
    laying = share(cards, plan.kit.paper, furnisher(plan, font_metrics()))
    assert [sheet.sheet.name for sheet in printed(plan, [laying], font_metrics())] == [
        "card-0 1 of 3",
        "card-0 2 of 3",
        "card-0 3 of 3",
    ]


def test_a_part_too_large_for_the_paper_is_refused() -> None:
    """One sentence names the paper, what was needed and what is free."""
    plan = plan_of()
    with pytest.raises(FieldError, match=r"paper\.size: needs .* for Card, got \d+ x \d+ mm free on 210 x 279 mm"):
        share([card("large", 300.0, 50.0)], plan.kit.paper, furnisher(plan, font_metrics()))
