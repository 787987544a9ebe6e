"""A cell that holds a list, written as in a kit file (TOML)."""

from __future__ import annotations

import tomllib

from layout.kit.input import Input
from layout.messages.catalogue import Role
from layout.values.errors import FieldError, shown
from templates_gen.inputs.toml_file import LONGEST, MOST_POINTS
from templates_gen.inputs.toml_slip import slip_in
from templates_gen.messages.errors import OptionError
from templates_gen.messages.language import message
from templates_gen.messages.roles.inputs import File
from templates_gen.messages.roles.orders_table import CellNeed

_BEFORE = "list = "
_DEEPEST = 8
_PLAIN = (str, int, float)


def read_list(spec: Input, text: str) -> list[object]:
    """The list that `text` is; FieldError at the key of `spec` where it is none, or holds what no kit has."""
    if len(text) > LONGEST or text.count(".") > MOST_POINTS:
        raise _refused(spec, CellNeed.LIST_LONG, text, most=LONGEST, points=MOST_POINTS)
    whole = f"{_BEFORE}{text}"
    try:
        found = tomllib.loads(whole)
    except tomllib.TOMLDecodeError as error:
        raise _refused(spec, CellNeed.LIST, text, what=slip_in(whole, error).what) from None
    except (ValueError, RecursionError):
        raise _refused(spec, CellNeed.LIST, text, what=message(File.TOO_DEEP)) from None
    value = found.pop("list")
    if found or not isinstance(value, list) or not _is_plain(value, _DEEPEST):
        raise _refused(spec, CellNeed.LIST_ALONE, text)
    return value


def _is_plain(value: object, deep: int) -> bool:
    """Whether there are only lists, tables, texts, numbers and flags: what other processes and JSON can be given."""
    if isinstance(value, list | dict):
        inner = value.values() if isinstance(value, dict) else value
        return deep > 0 and all(_is_plain(each, deep - 1) for each in inner)
    return isinstance(value, _PLAIN)


def _refused(spec: Input, role: Role, text: str, **values: object) -> FieldError:
    return OptionError(spec.key, role, shown(text), spec.example, **values)
