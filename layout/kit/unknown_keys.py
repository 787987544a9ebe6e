"""Keys that the table of inputs does not know: refused, with the one that was probably meant."""

from __future__ import annotations

from collections import Counter
from typing import NamedTuple

from layout.kit.fields import example_of
from layout.kit.likeness import closest
from layout.kit.lookup import KIT, Catalogue
from layout.messages.catalogue import Message
from layout.messages.english import ENGLISH
from layout.messages.roles import Table
from layout.values.errors import FieldError, leave_out, shown

_LONGEST_KEY = 40


class Unknown(NamedTuple):
    """The refusal of a key, and the dotted key (or the table's key) that it was probably meant to be, or nothing."""

    error: FieldError
    meant: str


def unknown_key(table: str, leaf: str, key: str, known: Catalogue = KIT) -> Unknown:
    """`leaf` stood in `table` ("" for the top of the file), where no such key is known; `key` is where that is."""
    beside = {spec.leaf: spec.key for spec in known.inputs if spec.table == table}
    beside |= {name.rpartition(".")[2]: name for name in known.tables if name.rpartition(".")[0] == table}
    alike = Counter(spec.leaf for spec in known.inputs)
    unlike = {spec.leaf: spec.key for spec in known.inputs if "[]" not in spec.key and alike[spec.leaf] == 1}
    everywhere = {} if "[]" in table else unlike
    right = everywhere.get(leaf) or beside.get(closest(leaf, beside))  # right, but in the wrong table; misspelt here
    meant = right or everywhere.get(closest(leaf, everywhere), "")
    example = _example(table, leaf, meant, known)
    if not meant:
        return Unknown(FieldError(key, Table.UNKNOWN, shown(leaf), example, known=ENGLISH.listed(list(beside))), meant)
    named = f"[{meant}]" if meant in known.tables else meant.rpartition("[].")[2]
    return Unknown(FieldError(key, Table.UNKNOWN_MEANT, shown(leaf), example, meant=named), meant)


def short_key(key: str) -> str:
    """A key as it may stand in a sentence: plain if it is a bare word of some length, else in quotes and cut short."""
    plain = key.isprintable() and key.isascii() and " " not in key and key
    return key if plain and len(key) <= _LONGEST_KEY else shown(key)


def entry_example(table: str, known: Catalogue = KIT) -> str:
    """How `table` may stand in the file: as an entry of its list, as a line with a small table, or as a heading."""
    if table.endswith("[]"):
        return known.by_key[table.removesuffix("[]")].example.removeprefix("[").split("}", 1)[0] + "}"
    if "." not in table:
        return f"[{table}]"
    inside = ", ".join(example_of(spec) for spec in known.inputs if spec.table == table and not spec.instead_of)
    return f"{table.rpartition('.')[2]} = {{{inside}}}"


def _example(table: str, leaf: str, meant: str, known: Catalogue) -> Message | str:
    """The line that was probably meant, with its table if that is another; else to leave the key out."""
    if table.endswith("[]"):
        return entry_example(table, known)
    if meant in known.by_key:
        spec = known.by_key[meant]
        line = example_of(spec)
        elsewhere = spec.table and spec.table != table
        return Message(Table.IN_ITS_TABLE, {"line": line, "table": spec.table}) if elsewhere else line
    return entry_example(meant, known) if meant else leave_out(short_key(leaf))
