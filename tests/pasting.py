"""Doing what a refusal says: its example is read out of it and put where it says, as a person would in an editor."""

from __future__ import annotations

import copy
import re
import tomllib
from collections.abc import Callable, Iterator, Mapping
from typing import Any

from layout.kit.lookup import Catalogue
from layout.kit.unknown_keys import short_key
from layout.values.errors import FieldError, FieldErrors, LayoutError

Values = dict[str, Any]
_OTHER_TABLE = re.compile(r"(?P<text>.*) in \[(?P<table>[\w.]+)\]")
_LEAVE_OUT = re.compile(r"leave out (?P<leaf>.+)")
_STEP = re.compile(r"([^.\[\]]+|\"(?:[^\"]*)\")(?:\[(\d+)\])?")


def alternatives(example: str) -> list[str]:
    """What an example offers, split at its "or"; remarks in brackets behind a value are no part of it."""
    parts = re.split(r",? or (?=[\w.]+ = |leave out |a |the )", example)
    return [re.sub(r'(?<=["\d])(?: \([^()]*\))$', "", part).strip() for part in parts]


def pasted(values: Mapping[str, Any], error: FieldError, known: Catalogue) -> Iterator[Values]:
    """`values` with each thing that the refusal offers put in place; nothing for what is only advice in words."""
    for text in alternatives(error.example):
        changed = copy.deepcopy(dict(values))
        if _put(changed, text, error.field, known):
            yield changed


def _put(values: Values, text: str, field: str, known: Catalogue) -> bool:
    if found := _LEAVE_OUT.fullmatch(text):
        place, leaf = _place(values, field)
        place = place if found["leaf"] in map(short_key, place) else place[leaf]
        del place[next(key for key in place if short_key(key) == found["leaf"])]
        return True
    if found := _OTHER_TABLE.fullmatch(text):
        return _into(values, found["text"], found["table"], field)
    if text.startswith("{"):
        place, leaf = _place(values, field)
        place[leaf] = tomllib.loads(f"x = {text}")["x"]
        return True
    try:
        new = tomllib.loads(text)
    except tomllib.TOMLDecodeError:
        assert "=" not in text, f"no TOML: {text}"
        return False
    place, leaf = _place(values, field)
    if text.startswith("["):
        values.pop(leaf, None)
        values |= {key: value for key, value in new.items() if key not in values}
        return True
    is_table = re.sub(r"\[\d+\]", "[]", field) in (*known.tables, *_entries(known))
    if is_table and leaf not in new:
        place = place.setdefault(leaf, {}) if isinstance(leaf, str) else place[leaf]
    else:
        place.pop(leaf, None)
    place |= new
    return True


def _into(values: Values, text: str, table: str, field: str) -> bool:
    """A line for another table; the same key is moved there."""
    new = tomllib.loads(text)
    place, leaf = _place(values, field)
    if leaf in new:
        place.pop(leaf, None)
    for name in table.split("."):
        values = values.setdefault(name, {})
    values |= new
    return True


def _entries(known: Catalogue) -> set[str]:
    return {spec.key + "[]" for spec in known.inputs if spec.kind == "tables"}


def _place(values: Values, field: str) -> tuple[Any, Any]:
    """What holds the value at that key, and the name or number that it has there."""
    steps: list[str | int] = []
    for name, number in _STEP.findall(field):
        steps += [name, int(number) - 1] if number else [name]
    place: Any = values
    for step in steps[:-1]:
        if isinstance(place, dict) and not isinstance(place.get(step), dict | list):
            place[step] = {}
        place = place[step]
    return place, steps[-1]


def chain(values: Mapping[str, Any], use: Callable[[Mapping[str, Any]], object], known: Catalogue) -> list[FieldError]:
    """The refusals that one meets who follows the first alternative of the first refusal again and again.

    Ends when the values are taken. Every alternative that can be pasted is tried: none may meet its own refusal.
    """
    met: list[FieldError] = []
    errors = refused(values, use)
    for _ in range(12):
        if not errors:
            return met
        first = errors[0]
        assert not any((old.field, old.needed) == (first.field, first.needed) for old in met), f"again: {first}"
        met.append(first)
        ways = list(pasted(values, first, known))
        assert ways, f"nothing to paste: {first}"
        answers = [refused(way, use) for way in ways]
        for again in answers:
            assert not any((one.field, one.needed) == (first.field, first.needed) for one in again), f"same: {first}"
        values, errors = ways[0], answers[0]
    raise AssertionError("no end: " + " // ".join(map(str, met)))


def remembering(use: Callable[[Mapping[str, Any]], object]) -> Callable[[Mapping[str, Any]], None]:
    """`use`, which answers values that it has met before by its answer then: many wrong values are put right alike."""
    answers: dict[str, LayoutError | None] = {}

    def again(values: Mapping[str, Any]) -> None:
        written = repr(values)
        if written not in answers:
            try:
                use(values)
                answers[written] = None
            except LayoutError as error:
                answers[written] = error
        answer = answers[written]
        if answer is not None:
            raise answer

    return again


def refused(values: Mapping[str, Any], use: Callable[[Mapping[str, Any]], object]) -> list[FieldError]:
    """Every refusal that `use` meets with these values; nothing where it takes them."""
    try:
        use(values)
    except FieldErrors as errors:
        return list(errors.errors)
    except FieldError as error:
        return [error]
    except LayoutError as error:
        raise AssertionError(f"a refusal without an example: {error}") from error
    return []
