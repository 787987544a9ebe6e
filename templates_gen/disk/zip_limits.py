"""What a zip may hold before anything of it is unpacked: few files, of sound names and sizes, and nothing but files."""

from __future__ import annotations

import stat
import unicodedata
import zipfile
from collections.abc import Sequence
from typing import BinaryIO

from layout.kit.folder_names import RESERVED
from layout.values.errors import shown
from templates_gen.disk.faults import FaultError
from templates_gen.disk.recovery import LARGEST_FILE
from templates_gen.messages.language import message
from templates_gen.messages.roles.disk import Zip

MOST_ENTRIES = 5_000
LARGEST_ZIP = 128 * 2**20
LARGEST_WHOLE = 256 * 2**20
"""Bytes of the zip, and of all its files unpacked; the largest range that there may be has a quarter of that."""
MOST_RATIO, SMALL = 200, 2**20
"""By how much a file larger than `SMALL` may be packed; drawings are packed to a twentieth."""
_DEEPEST = 4
_LONGEST = 150
_END, _END_SIZE, _LONGEST_REMARK = b"PK\x05\x06", 22, 2**16
_LARGE_FORM, _LARGE_FORM_SIZE = b"PK\x06\x07", 20
"""What stands before the end where the numbers of the list are elsewhere (ZIP64: PKWARE, APPNOTE.TXT, 4.3.15)."""
_MOST_DIRECTORY = MOST_ENTRIES * 300
_ALIEN = ("__MACOSX",)
"""What a system puts beside the files of a folder that it packs; it is left out."""


def refuse_directory(file: BinaryIO, named: str) -> None:
    """FaultError where the list of a zip is longer than any that may be read; a file that is no zip too."""
    size = file.seek(0, 2)
    most = _LARGE_FORM_SIZE + _END_SIZE + _LONGEST_REMARK
    file.seek(max(0, size - most))
    tail = file.read(most)
    at = tail.rfind(_END)
    file.seek(0)
    if size > LARGEST_ZIP:
        raise _refused(Zip.TOO_LARGE, named, size=LARGEST_ZIP // 2**20)
    if at < 0 or at + _END_SIZE > len(tail):
        raise _refused(Zip.NONE, named)
    if tail[max(0, at - _LARGE_FORM_SIZE) : at].startswith(_LARGE_FORM):
        raise _refused(Zip.LARGE_FORM, named)
    entries = int.from_bytes(tail[at + 10 : at + 12], "little")
    directory = int.from_bytes(tail[at + 12 : at + 16], "little")
    if entries > MOST_ENTRIES or directory > _MOST_DIRECTORY:
        raise _refused(Zip.TOO_MANY, named, most=MOST_ENTRIES)


def sound_entries(archive: zipfile.ZipFile, named: str) -> list[zipfile.ZipInfo]:
    """The files of a zip, in its order; FaultError naming the first that must not be unpacked."""
    entries = archive.infolist()
    if len(entries) > MOST_ENTRIES:
        raise _refused(Zip.TOO_MANY, named, most=MOST_ENTRIES)
    for entry in entries:
        _refuse_entry(entry, named)
    files = [entry for entry in entries if not entry.is_dir()]
    if sum(entry.file_size for entry in files) > LARGEST_WHOLE:
        raise _refused(Zip.TOO_LARGE_INSIDE, named, size=LARGEST_WHOLE // 2**20)
    _refuse_twice([entry.filename for entry in files], named)
    return [entry for entry in files if entry.filename.split("/")[0] not in _ALIEN]


def _refuse_entry(entry: zipfile.ZipInfo, named: str) -> None:
    name = entry.orig_filename
    parts = name.removesuffix("/").split("/")
    kind = stat.S_IFMT(entry.external_attr >> 16)
    if not all(map(_sound, parts)) or len(parts) > _DEEPEST:
        raise _refused(Zip.BAD_NAME, named, name=shown(name))
    if kind not in (0, stat.S_IFREG, stat.S_IFDIR) or (kind == stat.S_IFDIR) > entry.is_dir():
        raise _refused(Zip.NO_FILE, named, name=shown(name))
    if entry.flag_bits & 0x2041:
        raise _refused(Zip.LOCKED, named, name=shown(name))
    if entry.compress_type not in (zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED):
        raise _refused(Zip.PACKED, named, name=shown(name))
    if entry.file_size > LARGEST_FILE:
        raise _refused(Zip.LARGE_FILE, named, name=shown(name), size=LARGEST_FILE // 2**20)
    if entry.file_size > max(SMALL, MOST_RATIO * entry.compress_size):
        raise _refused(Zip.RATIO, named, name=shown(name), most=MOST_RATIO)


def _sound(part: str) -> bool:
    """Whether a part of a path names a file inside the folder on every system."""
    plain = part not in ("", ".", "..") and len(part) <= _LONGEST and part.isprintable()
    return plain and not set(part) & set('\\:*?"<>|') and part == part.rstrip(". ") and not _reserved(part)


def _reserved(part: str) -> bool:
    return part.split(".")[0].strip().lower() in RESERVED


def _refuse_twice(names: Sequence[str], named: str) -> None:
    """Two files of one name, on some system or other, or a file that is the folder of another one."""
    seen: set[str] = set()
    folders: set[str] = set()
    for name in names:
        place = unicodedata.normalize("NFKC", name).casefold()
        outer = place.split("/")[:-1]
        if place in seen:
            raise _refused(Zip.TWICE, named, name=shown(name))
        seen.add(place)
        folders |= {"/".join(outer[:size]) for size in range(1, len(outer) + 1)}
    if both := sorted(seen & folders):
        raise _refused(Zip.TWICE, named, name=shown(both[0]))


def _refused(role: Zip, named: str, **values: object) -> FaultError:
    return FaultError(message(role, file=named, **values))
