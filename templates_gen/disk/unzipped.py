"""A zip unpacked into a private folder that goes afterwards; what could hurt is refused before."""

from __future__ import annotations

import errno
import os
import shutil
import tempfile
import zipfile
import zlib
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from layout.values.errors import shown_path
from templates_gen.disk.faults import FaultError, fault
from templates_gen.disk.plain import open_plain, write_new
from templates_gen.disk.zip_limits import LARGEST_WHOLE, refuse_directory, sound_entries
from templates_gen.messages.language import message
from templates_gen.messages.roles.disk import Fault, Zip

SUFFIX = ".zip"
_STEP = 2**20
_DAMAGED = (zipfile.BadZipFile, zlib.error, EOFError, NotImplementedError, RuntimeError, ValueError, OverflowError)


@contextmanager
def unzipped(path: Path) -> Iterator[Path]:
    """A private folder with the files of the zip at `path`, while the block runs.

    Raises FaultError, one sentence, where it is no zip, or is damaged, or has files that are too many or too large, lie
    outside of it, are no plain files, have one name, or are encrypted or packed in an unusual way. Nothing is written
    outside of the folder.
    """
    folder = Path(tempfile.mkdtemp(prefix="templates-gen-"))
    try:
        _unpack(path, folder)
        yield _top(folder)
    finally:
        shutil.rmtree(folder, ignore_errors=True)


def _unpack(path: Path, folder: Path) -> None:
    named = shown_path(path)
    try:
        with open_plain(path) as file:
            refuse_directory(file, named)
            with zipfile.ZipFile(file) as archive:
                left = LARGEST_WHOLE
                for entry in sound_entries(archive, named):
                    data = _read(archive, entry, left)
                    left -= len(data)
                    place = folder / entry.filename
                    place.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
                    write_new(place, data)
    except FaultError:
        raise
    except _DAMAGED as error:
        raise FaultError(message(Zip.DAMAGED, file=named)) from error
    except OSError as error:
        if error.errno is None or error.errno == errno.EINVAL:
            raise FaultError(message(Zip.DAMAGED, file=named)) from error
        raise fault(Fault.READ, path, error, after="") from error


def _read(archive: zipfile.ZipFile, entry: zipfile.ZipInfo, left: int) -> bytes:
    """The bytes of an entry, never more than the zip says that it has."""
    most = min(entry.file_size, left)
    pieces: list[bytes] = []
    length = 0
    with archive.open(entry) as file:
        while piece := file.read(_STEP):
            length += len(piece)
            if length > most:
                raise zipfile.BadZipFile
            pieces.append(piece)
    if length != entry.file_size:
        raise zipfile.BadZipFile
    return b"".join(pieces)


def _top(folder: Path) -> Path:
    """The folder that was packed: the one that all files lie in, where the zip has it too."""
    inside = [Path(entry) for entry in os.scandir(folder)]
    return inside[0] if len(inside) == 1 and inside[0].is_dir() else folder
