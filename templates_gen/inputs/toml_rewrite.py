"""A TOML document made to say other values: every character that does not have to change stays."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping, Sequence
from typing import Any

from templates_gen.inputs.toml_additions import NoPlaceError, added, added_to_list
from templates_gen.inputs.toml_literal import literal
from templates_gen.inputs.toml_order import Order
from templates_gen.inputs.toml_removals import removed
from templates_gen.inputs.toml_splices import spliced
from templates_gen.inputs.toml_tree import ROOT, Path, Tree


def rewritten(text: str, wanted: Mapping[str, Any], order: Order, *, shown: bool = False) -> str:
    """`text`, which must be a TOML document, with the values of `wanted` instead of its own.

    What stays the same keeps its writing; remarks stay, but for those inside a value that goes. A new key stands behind
    the remark that shows it, else where `order` has it. What goes is taken out, or is still
    `shown` by a remark. NoPlaceError where the text has no place for a value.
    """
    text = _Rewriting(text, order, shown=shown).done(wanted)
    if not alike(tomllib.loads(text), wanted):
        raise NoPlaceError
    return text


def alike(one: object, other: object) -> bool:
    """Whether two plain values are the same, types too: 1 is neither true nor 1.0. A table without keys is none."""
    if isinstance(one, Mapping) and isinstance(other, Mapping):
        mine, its = _filled(one), _filled(other)
        return mine.keys() == its.keys() and all(alike(value, its[key]) for key, value in mine.items())
    if isinstance(one, list | tuple) and isinstance(other, list | tuple):
        return len(one) == len(other) and all(map(alike, one, other))
    return type(one) is type(other) and one == other


def _filled(table: Mapping[str, Any]) -> dict[str, Any]:
    return {key: value for key, value in table.items() if not isinstance(value, Mapping) or _filled(value)}


class _Rewriting:
    """One text, changed value by value from its end to its start, so that places before stay where they are."""

    def __init__(self, text: str, order: Order, *, shown: bool) -> None:
        self.text, self.order, self.shown = text, order, shown

    def done(self, wanted: Mapping[str, Any]) -> str:
        self.table(ROOT, tomllib.loads(self.text), wanted)
        return self.text

    def table(self, path: Path, old: Mapping[str, Any], new: Mapping[str, Any]) -> None:
        """What goes first, so that nothing stands twice; then what changes, then what comes, in its order."""
        was, wanted = _filled(old), _filled(new)
        for key in was.keys() - wanted.keys():
            self.text = removed(self.text, (*path, key), shown=self.shown)
        for key in was.keys() & wanted.keys():
            self.value((*path, key), was[key], wanted[key])
        for key in self.order.sorted(path, wanted):
            if key not in was:
                self.come((*path, key), wanted[key], self.order.before(path, wanted, key))

    def come(self, path: Path, value: object, before: Sequence[str]) -> None:
        """One value that is not there; the header of its table may be."""
        if isinstance(value, Mapping) and Tree(self.text).head(path):
            self.table(path, {}, value)
        else:
            self.text = added(self.text, path, value, before, self.order)

    def value(self, path: Path, old: object, new: object) -> None:
        """One value that is there and is to be another."""
        if alike(old, new):
            return
        if isinstance(old, Mapping) and isinstance(new, Mapping):
            self.table(path, old, new)
        elif isinstance(old, list) and isinstance(new, list) and old and new and self.has_rows(path, new):
            self.rows(path, old, new)
        elif place := Tree(self.text).place(path):
            self.text = spliced(self.text, place.value, literal(new, self.text[place.value[0] :][:3]))
        else:
            self.text = removed(self.text, path, whole=True)
            self.text = added(self.text, path, new, (), self.order)

    def has_rows(self, path: Path, new: Sequence[object]) -> bool:
        """Whether the list can be changed row by row: below headers only tables can."""
        return Tree(self.text).place(path) is not None or all(isinstance(row, Mapping) for row in new)

    def rows(self, path: Path, old: Sequence[Any], new: Sequence[Any]) -> None:
        """A list, from its end to its start; rows that are the same in both are left alone."""
        from difflib import SequenceMatcher  # not needed where no list changes

        changes = SequenceMatcher(None, list(map(_known, old)), list(map(_known, new)), autojunk=False).get_opcodes()
        for kind, first, last, start, end in reversed(changes):
            if kind == "equal":
                continue
            both = min(last - first, end - start)
            for number in reversed(range(first + both, last)):
                self.text = removed(self.text, (*path, number))
            for row in reversed(new[start + both : end]):
                self.text = added_to_list(self.text, (*path, first + both), row)
            for offset in reversed(range(both)):
                self.value((*path, first + offset), old[first + offset], new[start + offset])


def _known(row: object) -> str:
    """Rows that are the same have the same; the order of their keys does not count."""
    if isinstance(row, Mapping):
        return repr(sorted((key, _known(value)) for key, value in row.items()))
    return repr(row)
