"""The map of parts in pieces: it stands on their first sheet wherever there is room, and moves nothing else."""

from __future__ import annotations

from functools import cache

import pytest
from cases import crossed
from kits import KINDS, font_metrics, plan_of

from layout.drawing.shapes import Text
from layout.messages.english import ENGLISH
from layout.messages.roles import KeyMap
from layout.paper import sheets as sheets_module
from layout.paper.key_map import Form, Row, Setting, key_map
from layout.paper.leaves import Leaf
from layout.paper.sheets import Printed, printed
from layout.products import laid

LONG: dict[str, object] = {"weaving.width": "1.2 m", "frame.outer_width": "1.3 m"}
SETTING = Setting(ENGLISH, font_metrics(), 97.0)
NO_ROOM = [
    ("strips", "common", "notched ends"),
    ("strips", "letter", "notched ends"),
    ("strips", "common", "notched already, every second"),
    ("strips", "letter", "notched already, every second"),
]


@cache
def file_of(product: str, paper: str, kind: str) -> tuple[Printed, ...]:
    """The sheets of a product for a kit 1.2 m wide."""
    planned = plan_of(KINDS[kind] | LONG | {"paper.size": paper})
    return printed(planned, laid(product, planned, font_metrics()), font_metrics())


def rows_on(sheet: Printed) -> int:
    """How many rows of a map stand on a sheet: the words under their names."""
    under = ENGLISH.say(KeyMap.SHEET)
    return sum(1 for shape in sheet.sheet.shapes if isinstance(shape, Text) and shape.words == under)


ENDS = ("round bars", "flat ends", "notched ends", "pegged ends", "nails", "loose rod")


@pytest.mark.parametrize(
    ("product", "paper", "kind"),
    crossed(4, ("strips", "spacing-guide"), ("common", "a4", "letter", "a3", "11x17"), ENDS),
)
def test_it_stands_on_the_first_sheet(product: str, paper: str, kind: str) -> None:
    """Both ends are shown on the first sheet and on no later one; only the fullest sheets of words leave it out."""
    found = [rows_on(sheet) for sheet in file_of(product, paper, kind)]
    wanted = 0 if (product, paper, kind) in NO_ROOM else 2
    assert found == [wanted, *[0] * (len(found) - 1)]


@pytest.mark.parametrize("paper", ["common", "a3"])
@pytest.mark.parametrize("product", ["strips", "spacing-guide"])
def test_it_moves_nothing(product: str, paper: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """As many sheets as without it, with every piece at its place."""
    planned = plan_of(LONG | {"paper.size": paper})
    with_map = file_of(product, paper, "round bars")

    def left(found: tuple[Leaf, ...], *_: object) -> tuple[Leaf, ...]:
        return found

    monkeypatch.setattr(sheets_module, "with_key_maps", left)
    without = printed(planned, laid(product, planned, font_metrics()), font_metrics())
    assert [sheet.pieces for sheet in with_map] == [sheet.pieces for sheet in without]


def test_a_small_one_in_full() -> None:
    """Two rows by hand: 2 and 3 pieces, their numbers, and their sheets under them."""
    block = key_map([Row("far", (4, 5)), Row("near", (5, 6, 6))], 5, Form(in_line=False, titled=True), SETTING)
    assert block is not None
    said = [shape.words for shape in block.shapes if isinstance(shape, Text)]
    assert said == ["1", "4", "2", "5", "far", "sheet", "1", "5", "2", "6", "3", "6", "near", "sheet"]
    assert (block.title, block.beside) == ("How the pieces meet", "grey: on this sheet")


def test_too_many_pieces_have_no_map() -> None:
    """Where a number would reach over the edges of its piece."""
    assert key_map([Row("near", tuple(range(1, 61)))], 1, Form(in_line=True, titled=False), SETTING) is None
