"""A file, or one kit of a range, as it was opened: what its lines say, and what is needed to keep it again."""

from __future__ import annotations

import hashlib
from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal

from layout.messages.catalogue import Catalogue, Message, Role
from layout.values.errors import LayoutError
from templates_gen.messages.roles.desk_kits import DeskKits

Typed = Mapping[str, str]
"""What stands in the lines of the slip, by the names of its fields."""
Kind = Literal["kit", "range", "stock"]


@dataclass(frozen=True, slots=True)
class Opened:
    """What was opened: `typed` is what its lines said then, `text` the whole file with its remarks.

    `file` is its name in the folder, empty where it has none yet; `name` is what a person knows it by. Of a range,
    `number` is the place of the kit in it, from 1, and `kits` how many it has. `stamp` says which bytes were read.
    """

    kind: Kind
    typed: Typed = field(default_factory=dict)
    file: str = ""
    name: str = ""
    text: str = field(default="", repr=False)
    stamp: str = ""
    number: int | None = None
    kits: int = 1


class DeskError(LayoutError):
    """Something that the desk cannot do; `said` is the sentence in any language."""

    @staticmethod
    def _english() -> Catalogue:
        from templates_gen.messages.english import ENGLISH

        return ENGLISH

    def __init__(self, role: Role, **values: object) -> None:
        super().__init__(Message(role, values))


class Changed(DeskError):  # noqa: N818 - it asks
    """The file is not as it was opened: somebody else changed it, or took it away (`gone`). Nothing was written."""

    def __init__(self, file: str, *, gone: bool) -> None:
        self.file, self.gone = file, gone
        super().__init__(DeskKits.GONE if gone else DeskKits.CHANGED, file=file)


def stamp_of(data: bytes) -> str:
    """Which bytes these are: their number and SHA-256."""
    return f"{len(data)}:{hashlib.sha256(data).hexdigest()}"
