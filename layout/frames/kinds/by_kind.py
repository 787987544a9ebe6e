"""Tables that hold one piece for every kind of frame end. A kind without its piece is refused here, by its name."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Generic, TypeVar

from layout.frames.kinds.frame_end import FrameEnd

Piece = TypeVar("Piece")


class MissingPieceError(LookupError):
    """A kind of frame end lacks a piece: a mistake of the program."""


class ByKind(Generic[Piece]):
    """What each kind of frame end is in one respect, by its name in the kit file; `what` names the pieces."""

    def __init__(self, what: str, pieces: Mapping[str, Piece]) -> None:
        self.what, self._pieces = what, dict(pieces)

    def add(self, name: str, piece: Piece) -> None:
        """One more kind."""
        self._pieces[name] = piece

    def __getitem__(self, name: str) -> Piece:
        if name not in self._pieces:
            raise MissingPieceError(f'frame ends "{name}" have no {self.what}: there are {", ".join(self._pieces)}')
        return self._pieces[name]

    def of(self, ends: FrameEnd) -> Piece:
        """The piece for these frame ends."""
        return self[ends.name]

    def __iter__(self) -> Iterator[str]:
        return iter(self._pieces)
