"""The list of what lies in the folder; each entry keeps its number as long as the desk runs."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from layout.values.errors import LayoutError
from templates_gen.desk.kits.opened import DeskError, Opened
from templates_gen.messages.roles.desk_kits import DeskKits


@dataclass(frozen=True, slots=True)
class Entry:
    """A kit or a stock in the list: its number and what it says; or the file, and why it cannot be read."""

    number: int
    file: str
    opened: Opened | None
    error: LayoutError | None = None


@dataclass(frozen=True, slots=True)
class Listed:
    """What lies in the folder: kits (each of a range by itself), stock files, and how many files are `more`."""

    kits: tuple[Entry, ...]
    stocks: tuple[Entry, ...]
    more: int = 0


class Numbers:
    """From files, and places in them, to numbers, and back. A number is never given twice."""

    def __init__(self) -> None:
        self._given: list[tuple[str, int]] = []
        self._known: dict[tuple[str, int], int] = {}

    def of(self, number: int) -> tuple[str, int]:
        """The file of a number, and the place in it; DeskError for a number that was never given."""
        if not 1 <= number <= len(self._given):
            raise DeskError(DeskKits.NO_SUCH)
        return self._given[number - 1]

    def listed(self, files: Iterable[tuple[str, tuple[Opened, ...] | LayoutError]], more: int) -> Listed:
        """The list of these files; a TOML file of another program is not in it."""
        kits: list[Entry] = []
        stocks: list[Entry] = []
        for name, found in files:
            if isinstance(found, LayoutError):
                if not (isinstance(found, DeskError) and found.message.role is DeskKits.OTHER_FILE):
                    kits.append(Entry(self._number(name, 1), name, None, found))
                continue
            for place, opened in enumerate(found, 1):
                entry = Entry(self._number(name, place), name, opened)
                (stocks if opened.kind == "stock" else kits).append(entry)
        return Listed(tuple(kits), tuple(stocks), more)

    def _number(self, file: str, place: int) -> int:
        if (file, place) not in self._known:
            self._given.append((file, place))
            self._known[file, place] = len(self._given)
        return self._known[file, place]
