"""The rows of the totals as they must be, added up once more in decimals."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from decimal import Decimal

from templates_gen.ordering.result import Result
from templates_gen.verify.orders.figures import MADE, asked_in, sheets_in
from templates_gen.verify.run.table_rows import PLACES, Amount, Wanted

_THREADS = ("warp", "weft", "leash_cord")
_UNITS = ("g", "m")


@dataclass
class _Kit:
    """Rows, failed rows, boxes, sheets; by file and by thread the same, how often a unit is known, and its sum."""

    counts: list[int] = field(default_factory=lambda: [0] * 4)
    files: dict[str, list[int]] = field(default_factory=dict)
    threads: dict[tuple[str, str, str], list[int]] = field(default_factory=dict)
    sums: dict[tuple[str, str, str, str], tuple[int, Decimal]] = field(default_factory=dict)


def totals_wanted(results: Iterable[Result], names: Sequence[str]) -> Iterator[Wanted]:
    """Each kit in order, rows of no kit, all."""
    kits = {name: _Kit() for name in (*names, None)}
    for result in results:
        _add(kits[result.kit if result.kit in names else None], result)
    for name in names:
        yield from _rows(name, kits[name])
    if kits[None].counts[0]:
        yield _counted("", "unknown", kits[None].counts)
    yield _counted("", "all", [sum(column) for column in zip(*(kit.counts for kit in kits.values()), strict=True)])


def _add(kit: _Kit, result: Result) -> None:
    made, boxes = result.state in MADE, result.copies
    kit.counts = _plus(kit.counts, [1, not made, made * boxes, made * boxes * sheets_in(result)])
    for file in result.files if made else ():
        if file.file.endswith("pdf"):
            kit.files[file.file] = _plus(kit.files.get(file.file, [0] * 3), [1, boxes, boxes * file.sheets])
    for asked in asked_in(result.amounts) if made else ():
        if asked.kind in _THREADS:
            name = asked.kind, asked.name, asked.colour
            kit.threads[name] = _plus(kit.threads.get(name, [0] * 2), [1, boxes])
            for unit in asked.units:
                number, whole = kit.sums.get((*name, unit), (0, Decimal(0)))
                kit.sums[*name, unit] = number + 1, whole + boxes * Decimal(asked.counted(unit))


def _plus(one: Sequence[int], other: Sequence[int]) -> list[int]:
    return [each + more for each, more in zip(one, other, strict=True)]


def _rows(name: str, kit: _Kit) -> Iterator[Wanted]:
    yield _counted(name, "orders", kit.counts)
    for file, (orders, boxes, sheets) in kit.files.items():
        yield (name, "file", file, "", str(orders), "", str(boxes), str(sheets), "", "")
    for key, (orders, boxes) in kit.threads.items():
        known = {unit: kit.sums.get((*key, unit), (0, Decimal(0))) for unit in _UNITS}
        sums = (Amount(whole, PLACES[unit]) if number == orders else "" for unit, (number, whole) in known.items())
        yield (name, *key, str(orders), "", str(boxes), "", *sums)


def _counted(name: str, what: str, counts: Sequence[int]) -> Wanted:
    return (name, what, "", "", *map(str, counts), "", "")
