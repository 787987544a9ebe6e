"""Keys that the table of inputs does not know: refused, with the one that was probably meant."""

from __future__ import annotations

from collections import Counter
from typing import NamedTuple

from layout.errors import FieldError, shown
from layout.kit.catalogue import KIT, Catalogue
from layout.kit.fields import closest, did_you_mean, example_of

_LONGEST_KEY = 40


class Unknown(NamedTuple):
    """The refusal of a key, and the dotted key (or the table's name) that it was probably meant to be, or nothing."""

    error: FieldError
    meant: str


def unknown_key(table: str, leaf: str, known_inputs: Catalogue = KIT) -> Unknown:
    """`leaf` stood in `table` ("" for the top of the file), where no such key is known."""
    inputs, tables = known_inputs.inputs, known_inputs.tables
    beside = {spec.leaf: spec.key for spec in inputs if spec.key == f"{table}.{spec.leaf}".removeprefix(".")}
    if not table:
        beside |= {name: name for name in tables}
    alike = Counter(spec.leaf for spec in inputs)
    everywhere = {spec.leaf: spec.key for spec in inputs if "[]" not in spec.key and alike[spec.leaf] == 1}
    known = everywhere.get(leaf) or beside.get(closest(leaf, beside))  # right, but in the wrong table; misspelt here
    meant = known or everywhere.get(closest(leaf, everywhere), "")
    hint = did_you_mean(f"[{meant}]" if meant in tables else meant)
    needed = f"a key that is known{hint}" if hint else f"one of the known keys ({', '.join(beside)})"
    key = f"{table}.{short_key(leaf)}".removeprefix(".")
    return Unknown(
        FieldError(key, needed, shown(leaf), _example(meant or next(iter(beside.values())), known_inputs)), meant
    )


def unknown_in_reading(key: str, leaf: str) -> FieldError:
    """`leaf` stood in the wrap reading `key`, where no such key is known."""
    known = [spec.leaf for spec in KIT.inputs if spec.key.startswith("sett.readings[].")]
    hint = did_you_mean(closest(leaf, known))
    needed = f"pairs with a window, or pairs with a measure, and no other keys{hint}"
    return FieldError(f"{key}.{short_key(leaf)}", needed, shown(leaf), READING_EXAMPLE)


READING_EXAMPLE = '{pairs = 13, window = "5 cm"}'


def short_key(key: str) -> str:
    """A key as it may stand in a sentence: plain if it is a bare word of some length, else in quotes and cut short."""
    plain = key.isprintable() and key.isascii() and " " not in key and key
    return key if plain and len(key) <= _LONGEST_KEY else shown(key)


def _example(meant: str, known_inputs: Catalogue) -> str:
    spec = known_inputs.by_key.get(meant)
    return example_of(spec) if spec else f"[{meant}]"
