"""Tables of orders for tests, without a file: small kits that are made fast, each of another size."""

from __future__ import annotations

import copy
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from templates_gen.ordering.job import Job
from templates_gen.ordering.order import Order, Unreadable
from templates_gen.ordering.result import Result
from templates_gen.ordering.running import run

SMALL: Mapping[str, Any] = {
    "version": 1,
    "name": "Weir frame",
    "yarns": {"warp": "cotton cord", "weft": "wool"},
    "sett": {"given": "2.5 ends/cm"},
    "frame": {
        "ends": "round bars",
        "bar_diameter": "16 mm",
        "outer_width": "30 cm",
        "outer_height": "40 cm",
        "side_width": "25 mm",
    },
    "weaving": {"width": "8 cm", "height": "20 cm"},
}
"""A kit of twenty ends."""
ONLY = ("spacing-guide.pdf", "strip-near.pdf")
"""Two files that are drawn fast."""


def order(number: int, **changes: object) -> Order:
    """The order of that number, a little wider than the one before; `changes` by table, as "weaving"={...}."""
    values: dict[str, Any] = copy.deepcopy(dict(SMALL))
    values["weaving"]["width"] = f"{8 + number % 40 / 10:.1f} cm"
    for table, change in changes.items():
        values[table] = {**values[table], **change} if isinstance(change, Mapping) else change
    return Order(number + 2, f"W-{number}", f"w-{number}", "Weir frame", 1, values, {})


@dataclass
class Rows:
    """A table of these rows."""

    each: list[Order | Unreadable] = field(default_factory=list)

    def rows(self) -> Iterator[Order | Unreadable]:
        """Them."""
        return iter(self.each)


def orders(number: int) -> Rows:
    """A table of so many orders."""
    return Rows([order(each) for each in range(number)])


def made(table: Rows, folder: Path, only: tuple[str, ...] = ONLY, **options: Any) -> list[Result]:
    """What a run says of a table, in the order of its rows; each result came once."""
    with run(table, Job(str(folder), only), **{"workers": 1, **options}) as going:
        came = list(going)
        found = list(going.results())
    assert sorted(came, key=repr) == sorted(found, key=repr)
    return found


def files_below(folder: Path) -> dict[str, bytes]:
    """Every file of every order by its path in the folder."""
    found = sorted(path for path in folder.rglob("*") if path.is_file())
    inside = {path.relative_to(folder).as_posix(): path for path in found}
    return {name: path.read_bytes() for name, path in inside.items() if not name.startswith(".orders/")}
