"""The tag pairs of a DXF file: a group code on one line, its value on the next; sections, tables and variables."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from itertools import pairwise
from typing import NamedTuple

from layout.errors import shown
from templates_gen.document import ReadError

_CODE = re.compile(r" {0,2}-?[0-9]{1,4}")
_NUMBER = re.compile(r"-?[0-9]{1,7}(?:\.[0-9]{1,20})?(?:e-[0-9]{1,3})?")
_WHOLE = re.compile(r" {0,8}-?[0-9]{1,9}")


class Tag(NamedTuple):
    """A group code and its value as it stands there."""

    code: int
    value: str

    @property
    def number(self) -> float:
        """The value as a number; a whole number is one too."""
        if not _NUMBER.fullmatch(self.value):
            raise ReadError(f"the DXF holds {shown(self.value)} where a number is wanted")
        return float(self.value)

    @property
    def whole(self) -> int:
        """The value as a whole number."""
        if not _WHOLE.fullmatch(self.value):
            raise ReadError(f"the DXF holds {shown(self.value)} where a whole number is wanted")
        return int(self.value)


Tags = Sequence[Tag]


def tags_of(data: bytes) -> list[Tag]:
    """Every pair of the file; `ReadError` where it is not made of pairs."""
    try:
        lines = data.decode("utf-8").split("\n")
    except UnicodeDecodeError as error:
        raise ReadError("the DXF holds bytes that are no text") from error
    if lines.pop() or len(lines) % 2:
        raise ReadError("the DXF is cut short, or does not consist of pairs of lines")
    return [Tag(_code(code), value) for code, value in zip(lines[::2], lines[1::2], strict=True)]


def _code(line: str) -> int:
    if not _CODE.fullmatch(line):
        raise ReadError(f"the DXF holds {shown(line)} where a group code is wanted")
    return int(line)


def comments(tags: Tags) -> tuple[list[str], Tags]:
    """The comments at the top of the file, and what follows them; comments elsewhere are refused."""
    count = next((k for k, tag in enumerate(tags) if tag.code != 999), len(tags))
    if any(tag.code == 999 for tag in tags[count:]):
        raise ReadError("the DXF holds comments among its drawing")
    return [tag.value for tag in tags[:count]], tags[count:]


def sections(tags: Tags, names: Sequence[str]) -> Mapping[str, Tags]:
    """What each section holds; refused unless these are all sections, in this order, and the file ends after them."""
    found: list[tuple[str, Tags]] = []
    at = 0
    while tags[at : at + 1] == [Tag(0, "SECTION")]:
        end = next((k for k in range(at, len(tags)) if tags[k] == (0, "ENDSEC")), len(tags))
        if end < at + 2 or tags[at + 1].code != 2:
            raise ReadError("the DXF holds a section without a name or an end")
        found.append((tags[at + 1].value, tags[at + 2 : end]))
        at = end + 1
    if [name for name, _ in found] != list(names) or tags[at:] != [Tag(0, "EOF")]:
        raise ReadError(f"the DXF does not consist of the sections {', '.join(names)}")
    return dict(found)


def variables(header: Tags) -> Mapping[str, Tags]:
    """The variables of the header, each with its values; refused where one is given twice."""
    found: dict[str, list[Tag]] = {}
    name = ""
    for tag in header:
        if tag.code == 9 and tag.value in found:
            raise ReadError(f"the DXF says its {shown(tag.value)} twice")
        if tag.code == 9:
            name = tag.value
        found.setdefault(name, []).extend([] if tag.code == 9 else [tag])
    return found


def records(tags: Tags) -> Iterator[Tags]:
    """Runs of tags that each begin with the code 0: entities, and the entries of tables."""
    starts = [k for k, tag in enumerate(tags) if tag.code == 0]
    if tags and starts[:1] != [0]:
        raise ReadError("the DXF holds values that belong to nothing")
    for start, end in pairwise([*starts, len(tags)]):
        yield tags[start:end]
