"""A number for each of many folders, in little memory."""

from __future__ import annotations

from collections.abc import Iterator, MutableMapping


class ByFolder(MutableMapping[str, int]):
    """A mapping from names of folders to numbers.

    It holds the names as bytes, which are half as large as text, and of which Python keeps no second table, as it does
    of every text that was part of a Path.
    """

    def __init__(self) -> None:
        self._numbers: dict[bytes, int] = {}

    def __getitem__(self, folder: str) -> int:
        return self._numbers[_key(folder)]

    def __setitem__(self, folder: str, number: int) -> None:
        self._numbers[_key(folder)] = number

    def __delitem__(self, folder: str) -> None:
        del self._numbers[_key(folder)]

    def __iter__(self) -> Iterator[str]:
        return (key.decode("utf-8", "surrogatepass") for key in self._numbers)

    def __len__(self) -> int:
        return len(self._numbers)


def _key(folder: str) -> bytes:
    return folder.encode("utf-8", "surrogatepass")
