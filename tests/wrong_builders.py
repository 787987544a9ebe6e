"""What a wrong builder is: a kit, a file of it, and what is spoiled in the layout before that file is drawn."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any, NamedTuple

import pytest

Patch = pytest.MonkeyPatch
Spoil = Callable[[Patch], None]


class Wrong(NamedTuple):
    """One wrong builder: the changes to the kit of `kits.kit_of`, the file that shows it, and the `spoil`."""

    kit: Mapping[str, object]
    file: str
    spoil: Spoil


def swap(module: Any, name: str, wrong: Callable[[Any], Any]) -> Spoil:
    """Puts `wrong(what stood there)` in the place of `name` of a module or class."""
    return lambda patch: patch.setattr(module, name, wrong(getattr(module, name)))


def value(module: Any, name: str, wrong: Any) -> Spoil:
    """Puts another value, or a function, in the place of `name` of a module or class."""
    return lambda patch: patch.setattr(module, name, wrong)


def returns(module: Any, name: str, change: Callable[[Any], Any]) -> Spoil:
    """What the function or method `name` returns is changed."""

    def wrong(right: Any) -> Any:
        return lambda *given, **named: change(right(*given, **named))

    return swap(module, name, wrong)
