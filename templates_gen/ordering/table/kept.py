"""The bytes of a file as they were when it was read, packed in memory, so that a long table takes little of it."""

from __future__ import annotations

import gzip
import io
import zlib
from collections.abc import Iterable, Iterator
from functools import partial
from hashlib import sha256
from pathlib import Path
from typing import NamedTuple

from templates_gen.disk.plain import open_plain

_PIECE, _QUICK, _AS_GZIP = 1 << 16, 1, 31


class Kept(NamedTuple):
    """The packed bytes of a file, how many it has, and its digest."""

    packed: bytes
    size: int
    sha256: str

    def open(self) -> gzip.GzipFile:
        """The bytes as a file that is read from its beginning."""
        return gzip.GzipFile(fileobj=io.BytesIO(self.packed))


def kept_file(path: Path, most: int) -> Kept:
    """The file at `path`, of which not much more than `most` bytes are read; OSError as for `read_plain`."""
    with open_plain(path) as file:
        return kept(_up_to(most, iter(partial(file.read, _PIECE), b"")))


def kept(pieces: Iterable[bytes]) -> Kept:
    """Bytes that come piece by piece."""
    packer, digest, size = zlib.compressobj(_QUICK, wbits=_AS_GZIP), sha256(), 0
    packed = bytearray()
    for piece in pieces:
        packed += packer.compress(piece)
        digest.update(piece)
        size += len(piece)
    return Kept(bytes(packed + packer.flush()), size, digest.hexdigest())


def _up_to(most: int, pieces: Iterator[bytes]) -> Iterator[bytes]:
    """The pieces up to the one with which there are more bytes than that."""
    size = 0
    for piece in pieces:
        yield piece
        size += len(piece)
        if size > most:
            return
