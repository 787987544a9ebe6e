"""One line of a journal: what was made of an order, with a digest of the line itself, so that damage is noticed."""

from __future__ import annotations

import hashlib
import json
from typing import Any, NamedTuple

from templates_gen.ordering.result import Result
from templates_gen.ordering.result_lines import line_of, result_from, result_values


class Entry(NamedTuple):
    """What was made of an order, from inputs of that fingerprint, and the sha256 of the manifest beside its files."""

    fingerprint: str
    manifest: str
    result: Result

    @property
    def line(self) -> bytes:
        """It as a line of the journal."""
        return _signed({"fingerprint": self.fingerprint, "manifest": self.manifest, **result_values(self.result)})

    @property
    def digests(self) -> dict[str, str]:
        """The sha256 of each of its files, by its name."""
        return {file.file: file.sha256 for file in self.result.files}


def _signed(values: dict[str, Any]) -> bytes:
    """Plain values as one line of JSON that begins with the digest of the rest."""
    rest = line_of(values)[1:]
    return _before(rest) + rest


def _before(rest: bytes) -> bytes:
    return b'{"sha256":"%b",' % hashlib.sha256(rest).hexdigest().encode()


_BEFORE_REST = len(_before(b""))


def _values(line: bytes) -> dict[str, Any]:
    """What a signed line says; ValueError where it is torn or damaged."""
    rest = line[_BEFORE_REST:]
    if not line.endswith(b"\n") or line != _before(rest) + rest:
        raise ValueError
    return dict(json.loads(line))


def entry_of(line: bytes) -> Entry:
    """The entry that a line holds; ValueError where it is torn, damaged, or none."""
    try:
        values = _values(line)
        return Entry(str(values["fingerprint"]), str(values["manifest"]), result_from(values))
    except (ValueError, TypeError, KeyError, RecursionError) as error:
        raise ValueError from error
