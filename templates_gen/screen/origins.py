"""Where each value of a kit comes from: the range, the kit itself, or what is usual where neither says it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import NamedTuple

from layout.kit.inputs import INPUTS
from layout.kit.kit import kit_values
from layout.kit.merging import leaves_of
from layout.kit.sources import at
from layout.values.written import shown_value
from templates_gen.inputs.range_file import Range, RangeKit
from templates_gen.inputs.toml_places import Lines, lines_of
from templates_gen.messages.language import message
from templates_gen.messages.roles.ranges import From
from templates_gen.screen.tables import Line

_PLACES = {spec.key: place for place, spec in enumerate(INPUTS)}


class Found(NamedTuple):
    """A key, what stands there as it was written (None: left out), where that comes from, and in which line."""

    key: str
    value: object
    table: str
    line: int | None
    shared: object = None


def origins_of(found: Range, each: RangeKit) -> tuple[Found, ...]:
    """Every key that the file says for the kit, or that is usual, in the order of a kit file."""
    lines = lines_of(found.text)
    said = [_copies(found, each, lines), *_said(found, each, lines)]
    keys = {one.key for one in said}
    usual = kit_values(each.kit)
    said += [Found(key, at(usual, key), "usual", None) for key in leaves_of(usual) if not _holds(keys, key)]
    return tuple(sorted(said, key=lambda one: _PLACES.get(one.key, -1 if one.key == "copies" else len(_PLACES))))


def _said(found: Range, each: RangeKit, lines: Lines) -> Iterator[Found]:
    shared = {} if found.alone else found.shared
    for key, origin in each.origins.items():
        if origin.table == "without":
            yield Found(key, None, "without", lines.of_kit(each.number, "without"), at(shared, key))
        elif origin.table == "kit":
            yield Found(key, at(each.values, key), "kit", lines.of_kit(each.number, key))
        else:
            yield Found(key, at(each.values, key), "file" if found.alone else "range", lines.of_shared(key))


def _copies(found: Range, each: RangeKit, lines: Lines) -> Found:
    own = lines.kits[each.number - 1].get("copies") if each.number <= len(lines.kits) else None
    if own:
        return Found("copies", each.copies, "kit", own)
    line = lines.of_shared("copies")
    return Found("copies", each.copies, "usual" if line is None else "file" if found.alone else "range", line)


def _holds(keys: set[str], key: str) -> bool:
    """Whether the file says `key`, or a table that holds it."""
    parts = key.split(".")
    return any(".".join(parts[:size]) in keys for size in range(1, len(parts) + 1))


_ROLES = {"range": From.RANGE, "kit": From.KIT, "file": From.FILE}


def origin_rows(origins: tuple[Found, ...]) -> list[Line]:
    """For people: key, value, and where it comes from."""
    return [(one.key, shown_value(one.value) if one.table != "without" else message(From.LEFT_OUT), _where(one))
            for one in origins]  # fmt: skip


def _where(one: Found) -> str:
    if one.table == "usual":
        return message(From.USUAL)
    if one.table == "without":
        if isinstance(one.shared, Mapping):
            return message(From.WITHOUT_TABLE, line=one.line)
        return message(From.WITHOUT, value=shown_value(one.shared), line=one.line)
    return message(_ROLES[one.table], line=one.line)


def origin_values(origins: tuple[Found, ...]) -> dict[str, object]:
    """For programs, by key: the value as it was written, where it comes from, and the line, or null."""
    return {one.key: {"value": one.value, "from": one.table, "line": one.line} for one in origins}
