"""Plain values of kit files: those of one kit of a range, what changed in them, and where a change is written."""

from __future__ import annotations

from collections.abc import Mapping
from copy import deepcopy
from typing import Any

from layout.kit.merging import leaves_of, merged, without
from templates_gen.inputs.toml_additions import NoPlaceError
from templates_gen.inputs.toml_rewrite import alike

Values = Mapping[str, Any]
KITS, WITHOUT = "kits", "without"
_ABOVE = ("buy", "class")
"""What stands above the kits of a range alone."""


def kits_in(values: Values) -> tuple[Values, ...]:
    """The kits that a range lists; none in a file of one kit."""
    kits = values.get(KITS)
    return tuple(kit if isinstance(kit, Mapping) else {} for kit in kits) if isinstance(kits, list) else ()


def whole_kit(values: Values, number: int) -> dict[str, Any]:
    """All that the kit of that number (from 1) says, with what it takes of what its range shares."""
    own = kits_in(values)[number - 1]
    shared = {key: value for key, value in values.items() if key != KITS}
    taken_out = own.get(WITHOUT)
    names = tuple(map(str, taken_out)) if isinstance(taken_out, list) else ()
    mine = {key: value for key, value in own.items() if key != WITHOUT}
    return merged(without(shared, names), mine)


def carried(raw: Values, before: Values, after: Values) -> dict[str, Any]:
    """`raw` with what differs between `before` and `after`: what does not, keeps the value that it has in `raw`.

    A key of `raw` that `before` lacks was not read as one of the kit, and goes.
    """
    found = {key: _carried(raw[key], before.get(key), after[key]) for key in raw if key in after}
    return found | {key: value for key, value in after.items() if key not in raw}


def _carried(raw: Any, before: Any, after: Any) -> Any:
    if all(isinstance(each, Mapping) for each in (raw, before, after)):
        return carried(raw, before, after)
    if alike(before, after):
        return raw
    if all(isinstance(each, list) for each in (raw, before, after)) and len(raw) == len(before):
        return _rows(raw, before, after)
    return after


def _rows(raw: list[Any], before: list[Any], after: list[Any]) -> list[Any]:
    """A list with the rows that stayed as they are in `raw`."""
    from difflib import SequenceMatcher  # not needed where no list changes

    found: list[Any] = []
    changes = SequenceMatcher(None, list(map(repr, before)), list(map(repr, after)), autojunk=False).get_opcodes()
    for kind, first, last, start, end in changes:
        if kind == "equal":
            found += raw[first:last]
            continue
        both = min(last - first, end - start)
        found += [_carried(raw[first + k], before[first + k], after[start + k]) for k in range(both)]
        found += after[start + both : end]
    return found


def range_with(values: Values, number: int, before: Values, after: Values, *, shared: bool) -> dict[str, Any]:
    """A range whose kit of that number (from 1) says `after` instead of `before`.

    What changed is written into the kit's own table, or, where it is to be `shared`, above all kits. What stands above
    alone (packs, prices and the class) always goes there, the name of the kit never. NoPlaceError where the kit has no
    table.
    """
    changed = deepcopy(dict(values))
    own = changed[KITS][number - 1]
    if not isinstance(own, dict) or not isinstance(own.get(WITHOUT, []), list):
        raise NoPlaceError
    now = carried(whole_kit(values, number), before, after)
    was = whole_kit(values, number)
    for key in leaves_of(now):
        if not alike(_at(was, key), _at(now, key)) and key != "version":
            _put(changed if _goes_above(key, shared=shared) else own, key, _at(now, key))
            if _goes_above(key, shared=shared):
                _take(own, key)
                _listed_without(own, key)
    for key in leaves_of(was):
        if _at(now, key) is None:
            _drop(changed, own, key, now, shared=_goes_above(key, shared=shared))
    return changed


def _goes_above(key: str, *, shared: bool) -> bool:
    return key.partition(".")[0] in _ABOVE or (shared and key != "name")


def _drop(changed: dict[str, Any], own: dict[str, Any], key: str, now: Values, *, shared: bool) -> None:
    """Takes a key out of a kit: its own, or by saying that the kit goes without what the range shares."""
    _take(own, key)
    if shared:
        _take(changed, key)
    elif _at({each: value for each, value in changed.items() if each != KITS}, key) is not None:
        names = own.setdefault(WITHOUT, [])
        parts = key.split(".")
        tables = [".".join(parts[:size]) for size in range(1, len(parts) + 1)]
        name = next(each for each in tables if not _at(now, each))
        if not any(each in names for each in tables):
            names.append(name)


def _listed_without(own: dict[str, Any], key: str) -> None:
    """The kit takes a key again that it went without."""
    names = [each for each in own.get(WITHOUT, ()) if each != key]
    if WITHOUT in own and names != own[WITHOUT]:
        own[WITHOUT] = names
        if not names:
            del own[WITHOUT]


def _at(values: Any, key: str) -> Any:
    """What stands at a dotted key; None where nothing does."""
    for part in key.split("."):
        if not isinstance(values, Mapping) or part not in values:
            return None
        values = values[part]
    return values


def _put(values: dict[str, Any], key: str, value: Any) -> None:
    *outer, leaf = key.split(".")
    for part in outer:
        if not isinstance(values.get(part), dict):
            values[part] = {}
        values = values[part]
    values[leaf] = value


def _take(values: dict[str, Any], key: str) -> None:
    """Takes out what stands at a dotted key, and tables that are empty then."""
    part, _, rest = key.partition(".")
    if not rest:
        values.pop(part, None)
    elif isinstance(values.get(part), dict):
        _take(values[part], rest)
        if not values[part]:
            del values[part]
