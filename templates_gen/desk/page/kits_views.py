"""The table of kits, and kits side by side, as templates read them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import NamedTuple

from layout.messages.catalogue import Catalogue
from layout.plan import Plan
from templates_gen.desk.look.answers import Number
from templates_gen.desk.look.numbers import numbers
from templates_gen.desk.page.asked import NOTHING_MADE, Made, Unit
from templates_gen.desk.slip.lines import lines
from templates_gen.desk.slip.reading import read
from templates_gen.messages.roles.desk_page import DeskPage

_NUMBERS = ("warp", "weft", "bending")


class KitAsked(NamedTuple):
    """A kit for the table: what opens it (a number of the list, or the id of a slip), its file, its name, its lines.

    `trouble` says why a file cannot be read; it has no lines then. `note` says what is known of its files.
    """

    open: str
    file: str
    name: str
    typed: Mapping[str, str] | None
    trouble: str = ""
    note: str = ""


class Compared(NamedTuple):
    """One line of kits side by side: its label, what each kit says, and below it what that is in other words."""

    label: str
    values: tuple[str, ...]
    notes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class KitsAsked:
    """One look at the kits; `slip` is the one to go back to. `differing` and `alike` are of the `compared` kits."""

    slip: str
    token: str
    words: Catalogue
    unit: Unit
    kits: tuple[KitAsked, ...]
    more: int = 0
    ticked: frozenset[str] = frozenset()
    compared: tuple[str, ...] = ()
    differing: tuple[Compared, ...] = ()
    alike: tuple[Compared, ...] = ()
    made: Made = NOTHING_MADE
    happened: str = ""
    refused: str = ""


class Cell(NamedTuple):
    """What stands in a cell: large, and small below it; a `gap` is something that the kit does not say."""

    label: str
    large: str
    small: str = ""
    gap: bool = False
    number: bool = False


@dataclass(frozen=True, slots=True)
class KitRow:
    """A row of the table."""

    open: str
    name: str
    file: str
    ticked: bool
    trouble: str
    note: str
    cells: tuple[Cell, ...]


def rows_of(asked: KitsAsked) -> tuple[KitRow, ...]:
    """Every kit of the table."""
    return tuple(_row(asked, kit) for kit in asked.kits)


def _row(asked: KitsAsked, kit: KitAsked) -> KitRow:
    say = asked.words.say
    found = read(kit.typed, asked.words) if kit.typed is not None else None
    trouble = kit.trouble or (found.troubles[0].say if found and found.troubles else "")
    cells: tuple[Cell, ...] = ()
    if kit.typed is not None and found is not None and found.plan is not None:
        cells = _cells(asked, kit.typed, found.plan)
    note = kit.note or ("" if kit.file else say(DeskPage.NOT_KEPT))
    return KitRow(kit.open, kit.name, kit.file, kit.open in asked.ticked, trouble, note, cells)


def _cells(asked: KitsAsked, typed: Mapping[str, str], plan: Plan) -> tuple[Cell, ...]:
    say, found = asked.words.say, {each.id: each for each in numbers(plan, asked.words, asked.unit)}
    roles = {"warp": DeskPage.COLUMN_WARP, "weft": DeskPage.COLUMN_WEFT, "bending": DeskPage.COLUMN_BENDING}
    sett = found["sett"]
    wide = typed.get("weaving.width") or found["weaving"].value
    size = _size(asked, wide, typed["weaving.height"]) if typed.get("weaving.height") else wide
    frame = _size(asked, typed.get("frame.outer_width", ""), typed.get("frame.outer_height", ""))
    return (
        Cell(say(DeskPage.COLUMN_FRAME), frame, _ends(typed, asked.words)),
        Cell(say(DeskPage.COLUMN_WEAVING), size),
        Cell(say(DeskPage.COLUMN_SETT), sett.value, sett.second, number=True),
        Cell(say(DeskPage.COLUMN_ENDS), str(plan.warp.ends), replace(plan, words=asked.words).counted, number=True),
        *(_number(say(roles[name]), found[name]) for name in _NUMBERS if name in found),
    )


def _number(label: str, row: Number) -> Cell:
    if row.value:
        return Cell(label, row.value, row.second, number=True)
    return Cell(label, row.needs_said, gap=True, number=True)


def _size(asked: KitsAsked, width: str, height: str) -> str:
    return asked.words.say(DeskPage.SIZE, width=width, height=height)


def _ends(typed: Mapping[str, str], words: Catalogue) -> str:
    """The kind of frame ends, in the words of the slip."""
    line = lines(typed)["frame.ends"]
    chosen = line.chosen(typed.get("frame.ends", "")) or (line.usual.value if line.usual else "")
    return next((words.say(each.label) for each in line.choices if each.value == chosen), "")


def beside(names: Sequence[str], words: Catalogue) -> str:
    """What the comparison is called."""
    first, *others = names
    return words.say(DeskPage.COMPARED, first=first, others=words.all_of(others))
