"""Putting finished files into several folders together: those below a root first, the root last."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from contextlib import ExitStack
from pathlib import Path
from typing import Self

from layout.values.errors import shown_path
from templates_gen.disk.exchange import Exchange
from templates_gen.disk.faults import FaultError
from templates_gen.messages.language import listed, message
from templates_gen.messages.roles.run import Run


class Together:
    """An exchange for the `root` and for each of the folders below it; `settle` moves all files into place.

    Until it begins, nothing is changed in any of them. Each folder is then whole at any time; where a run is killed
    between two folders, the root still has what it had, which names other files than those that are there.
    """

    def __init__(self, root: Path, folders: Sequence[str], last: str, tell: Callable[[str], None]) -> None:
        self.root = Exchange(root, last, tell)
        self.inside = {name: Exchange(root / name, last, tell) for name in folders}
        self._stack = ExitStack()

    def __enter__(self) -> Self:
        try:
            for exchange in self._all():
                self._stack.enter_context(exchange)
        except BaseException:
            self._stack.close()
            raise
        return self

    def __exit__(self, *_: object) -> None:
        self._stack.close()

    def _all(self) -> tuple[Exchange, ...]:
        return (self.root, *self.inside.values())

    def begin(self) -> None:
        """From now on a stop is heeded at once."""
        for exchange in self._all():
            exchange.begin()

    def settle(self, gone: dict[str, Iterable[str]], gone_from_root: Iterable[str]) -> None:
        """Moves everything into place; `gone` are the files that go out of each folder."""
        done: list[str] = []
        try:
            for name, exchange in self.inside.items():
                exchange.settle(gone[name])
                done.append(name)
            self.root.settle(gone_from_root)
        except FaultError as error:
            if not done:
                raise
            folders = listed([shown_path(name) for name in done])
            raise FaultError(message(Run.PARTLY, fault=str(error), folders=folders)) from error
