"""Messages of which some are loaded when they are asked for: no command needs what the page in the browser says."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from functools import cached_property
from typing import Any

from layout.messages.catalogue import Plural, Role

Messages = dict[Role, str | Plural]


class Late(Mapping[Role, str | Plural]):
    """The messages of `first`, and behind them those that `rest` gives for a language; for any reader one mapping."""

    def __init__(self, first: Messages, rest: Callable[[str], Messages], language: str = "en") -> None:
        self.first, self.rest, self.language = first, rest, language

    @cached_property
    def _all(self) -> Messages:
        return {**self.first, **self.rest(self.language)}

    def get(self, role: Any, default: Any = None) -> Any:
        """The message of a role, or `default`."""
        found = self.first.get(role)
        return self._all.get(role, default) if found is None else found

    def __getitem__(self, role: Role) -> str | Plural:
        found = self.first.get(role)
        return self._all[role] if found is None else found

    def __iter__(self) -> Iterator[Role]:
        return iter(self._all)

    def __len__(self) -> int:
        return len(self._all)

    def __eq__(self, other: object) -> bool:
        if isinstance(other, Late):
            return self is other or (self.language, self.rest, self.first) == (other.language, other.rest, other.first)
        return self._all == other

    __hash__ = None  # type: ignore[assignment]  # as that of a dict

    def __reduce__(self) -> tuple[Any, ...]:
        return Late, (self.first, self.rest, self.language)
