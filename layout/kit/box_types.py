"""The tables of a box as values: what lies in it, each thing that is bought in, the legal words."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from layout.kit.box import Box, Item, Legal
from layout.kit.fields import example_of
from layout.kit.lookup import KIT
from layout.kit.unknown_keys import entry_example, short_key
from layout.messages.english import ENGLISH
from layout.messages.roles.ranges import BoxNeed
from layout.values.errors import FieldError, shown

Leaves = Mapping[str, Any]


def _item(key: str, leaves: Leaves) -> Item:
    """One thing that is bought in."""
    if "name" not in leaves:
        got = ENGLISH.listed([short_key(leaf) for leaf in leaves]) if leaves else shown({})
        raise FieldError(key, BoxNeed.ITEM, got, entry_example("box.also[]"))
    return Item(**leaves)


def _box(key: str, leaves: Leaves) -> Box:
    """What lies in a box: each thing once, and each product in every box or once in a run."""
    box = Box(**leaves)
    if both := [name for name in box.each_holds if name in box.run_holds]:
        raise FieldError(f"{key}.once", BoxNeed.NAME_TWICE, shown(both[0]), _example("box.once"))
    names = [item.name for item in box.also or ()]
    if twice := [name for name in names if names.count(name) > 1]:
        raise FieldError(f"{key}.also", BoxNeed.ITEM_TWICE, shown(twice[0]), _example("box.also"))
    return box


def _legal(_: str, leaves: Leaves) -> Legal:
    """The maker's own legal words."""
    return Legal(**leaves)


def _example(key: str) -> str:
    return example_of(KIT.by_key[key])


BOX_MAKERS: Mapping[str, Callable[[str, Leaves], Any]] = {"box": _box, "box.also[]": _item, "legal": _legal}
"""By the key of the table, `[]` for each entry of a list, as `table_types.MAKERS`."""
