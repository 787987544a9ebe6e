"""One file as it must be: what its sheets show, what it is made of, and what it carries about its kit."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING, NamedTuple

from layout.drawing.correction import TRUE
from layout.drawing.sheet import Part, Piece, Sheet, cuts_on, marks_on
from layout.kit.kit import Kit, kit_values, without_buyer, without_legal
from layout.paper.choice import Laying
from layout.plan import Plan
from templates_gen.document import About

if TYPE_CHECKING:
    from layout.cutting.stock.stock import Stock

_KITS = 4


class Joined(NamedTuple):
    """A part, by its title, that is put together from so many pieces."""

    title: str
    pieces: int


@dataclass(frozen=True, slots=True)
class Output:
    """One file to be made: `sheets` as they must be read back, `laid` the pieces on each, `parts` by name.

    On paper the words are real words, and parts in pieces are `joined`; a part alone has its words as outlines, and
    stands straight at its own size. What is cut has a `stock`; on paper it may be `tiled`. A file that is corrected for
    a printer knows the `plain` one, which is not.
    """

    file: str
    parts: tuple[str, ...]
    sheets: tuple[Sheet, ...]
    laid: tuple[tuple[Piece, ...], ...]
    about: About
    on_paper: bool
    stock: Stock | None = None
    tiled: bool = False
    joined: tuple[Joined, ...] = ()
    plain: Output | None = None

    @property
    def format(self) -> str:
        """The name of its format in the table of formats."""
        return self.file.rpartition(".")[2]

    @property
    def marks(self) -> int:
        """How many measured marks its sheets show."""
        return sum(map(marks_on, self.sheets))

    @property
    def cuts(self) -> int:
        """How many outlines that are cut they show."""
        return sum(map(cuts_on, self.sheets))


def names_of(parts: Iterable[Part]) -> tuple[str, ...]:
    """The names of parts, in order."""
    return tuple(part.name for part in parts)


def joined_of(layings: Iterable[Laying]) -> tuple[Joined, ...]:
    """The parts that lie on paper in pieces."""
    tiled = [laying.sheets for laying in layings if laying.way == "tiles"]
    parts = [piece.part for sheets in tiled for pieces in sheets for piece in pieces]
    titles = {part.name: part.title for part in parts}
    counts = Counter(part.name for part in parts)
    return tuple(Joined(titles[name], count) for name, count in counts.items() if count > 1)


def titled(
    plan: Plan, what: str, file: str, stock: Stock | None = None, *, legal: bool = False, buyer: bool = False
) -> About:
    """What a file says of itself: its kit and `what` it shows, and the inputs that the drawing needs, as JSON text.

    The maker's legal words, an address among them, and the name of the `buyer` are carried by a file that shows them
    alone. What the box has to do `without`, since the stock refuses it, is carried where there is any.
    """
    kit = plan.kit if legal else without_legal(plan.kit)
    values: dict[str, object] = {"file": file, "kit": _values(kit if buyer else without_buyer(kit))}
    if plan.refused:
        values["without"] = sorted(plan.refused)
    if stock is not None:
        from layout.cutting.stock.stock_values import stock_values, without_money

        values["stock"] = stock_values(without_money(stock))
    return About(f"{plan.kit.name}: {what}", json.dumps(values, ensure_ascii=False, separators=(",", ":")))


@lru_cache(_KITS)
def _values(kit: Kit) -> dict[str, object]:
    """The values of a kit, which its files carry; never changed."""
    return kit_values(kit)


def settings_in_name(stock: Stock) -> str:
    """The kerf that the lines are drawn for, and whether they are drawn against the scale of the cutter."""
    return f"{kerf_in_name(stock)}-corrected" if stock.scale != TRUE else kerf_in_name(stock)


def kerf_in_name(stock: Stock) -> str:
    """The kerf that the lines are drawn for; a file without one leaves it to the machine."""
    if not stock.kerf_drawn:
        return "no-kerf"
    widths = (stock.kerf_x,) if stock.kerf_x == stock.kerf_y else (stock.kerf_x, stock.kerf_y)
    return "kerf-" + "x".join(f"{width:.2f}" if width == round(width, 2) else f"{width:.3f}" for width in widths)
