"""The manifest of a folder: which files were made there, from what, and that they were proven."""

from __future__ import annotations

import json
import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from layout.cutting.products import CUT_PRODUCTS
from layout.products import PRODUCTS
from templates_gen.files.board_records import JOB_FILE
from templates_gen.files.formats import FORMATS
from templates_gen.files.printed_records import KIT_FILE
from templates_gen.inputs.families import Selection

MANIFEST = "manifest.json"

Entry = Mapping[str, Any]
"""What is said of one file."""


@dataclass(frozen=True, slots=True)
class Manifest:
    """What is said of each file, in order, and whether the files are a `whole` kit.

    Those that are `of_run` are without boards, which the run holds for all its kits.
    That of a run says of each `folder` of a kit below it: its name, the kit's, its copies, the sha256 of its manifest.
    """

    entries: tuple[Entry, ...]
    whole: bool
    folders: tuple[Entry, ...] = ()
    of_run: bool = False

    @property
    def digests(self) -> dict[str, str]:
        """The sha256 of every file by its name."""
        return {entry["file"]: entry["sha256"] for entry in self.entries}

    @property
    def parts(self) -> dict[str, Sequence[str]]:
        """The names of the parts in every file."""
        return {entry["file"]: tuple(map(str, entry["parts"])) for entry in self.entries}

    @property
    def kits(self) -> frozenset[str]:
        """The sha256 of every kit that they were made from; empty for each that does not say."""
        return frozenset(str(entry.get("kit_sha256", "")) for entry in self.entries)

    def merged(self, new: Iterable[Entry], asked: Selection) -> Manifest:
        """This one after what was `asked` for was made anew: their own entries renewed, the others as they are."""
        made = {entry["file"]: entry for entry in new}
        others = (entry for entry in self.entries if not _asked_for(entry["file"], asked))
        entries = {entry["file"]: entry for entry in others} | made
        order = {entry["file"]: k for k, entry in enumerate(self.entries)}
        in_order = sorted(entries.values(), key=lambda entry: order.get(entry["file"], len(order)))
        merged = Manifest(tuple(in_order), self.whole)
        return Manifest(merged.entries, self.whole and len(merged.kits) == 1)

    def text(self) -> bytes:
        """It as JSON text."""
        values: dict[str, object] = {"version": 1, "whole": self.whole, "files": list(self.entries)}
        if self.of_run:
            values["of_run"] = True
        if self.folders:
            values["kits"] = list(self.folders)
        return (json.dumps(values, indent=2) + "\n").encode()


def read_manifest(data: bytes) -> Manifest:
    """What the JSON text says; ValueError where it is none that was written here."""
    if len(data) > _LARGEST:
        raise ValueError("not a manifest")
    try:
        said = json.loads(data)
        entries = tuple(dict(entry) for entry in said["files"])
        folders = tuple(dict(entry) for entry in said.get("kits", ()))
        found = Manifest(entries, said.get("whole") is True, folders, said.get("of_run") is True)
        listed = found.digests
        parts = found.parts if found.whole else {}
    except (ValueError, TypeError, KeyError, AttributeError, RecursionError) as error:
        raise ValueError("not a manifest") from error
    texts = (*listed, *listed.values(), *(name for names in parts.values() for name in names))
    few = 1 <= len(entries) + len(folders) <= _MOST_FILES and all(map(_names_a_folder, folders))
    if not few or not all(isinstance(text, str) for text in texts) or len(listed) < len(entries):
        raise ValueError("not a manifest")
    if any(Path(name).name != name for name in listed):
        raise ValueError("not a manifest")
    return found


def _names_a_folder(entry: Entry) -> bool:
    """Whether an entry says of a folder of a kit what a run writes down."""
    texts = [entry.get(key) for key in ("folder", "name", "sha256")]
    name = texts[0]
    plain = isinstance(name, str) and name != "" and Path(name).name == name and not name.startswith(".")
    return plain and all(isinstance(text, str) for text in texts) and type(entry.get("copies")) is int


def _asked_for(file: str, asked: Selection) -> bool:
    product = product_of(file)
    return product is not None and asked.takes(product, file.rpartition(".")[2])


_LARGEST = 1_000_000  # bytes; a whole kit's is a fiftieth
_MOST_FILES = 5_000  # a whole kit has forty
_SIZE = r"[\d.]+x[\d.]+mm-(?:no-kerf|kerf-[\d.x]+)(?:-corrected)?"
_CUT = re.compile(rf"(?P<name>{'|'.join(sorted(CUT_PRODUCTS, key=len, reverse=True))})-{_SIZE}")
_BOARD = re.compile(rf"(?P<name>board)-\d+of\d+-(?:[1-9]\d*x-)?{_SIZE}")


def product_of(file: str) -> str | None:
    """The product that a file of that name is of, or "kit", "board", "job"; None where it is no name of ours."""
    stem, _, form = file.rpartition(".")
    if form not in FORMATS:
        return None
    if stem in PRODUCTS or f"{stem}.pdf" in (KIT_FILE, JOB_FILE):
        return stem
    found = _CUT.fullmatch(stem) or _BOARD.fullmatch(stem)
    return found["name"] if found else None
