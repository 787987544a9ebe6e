"""What a page is drawn from: the slip as it lies on the desk, what was made of it, and who looks at it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal

from layout.messages.catalogue import Catalogue
from templates_gen.desk.slip.reading import Read

Unit = Literal["cm", "in"]
WORKING = "working"
"""The view of the working sheet; every other is a file and the number of its sheet ("strips.pdf:1")."""


@dataclass(frozen=True, slots=True)
class Made:
    """How far files of the slip are made: `done` of `total`, the `file` that is written, then the line of `proof`.

    `trouble` is a sentence where it failed or was stopped. `zip` is the address of the archive, `zip_name` what it is
    called, `megabytes` its size; `opens` are addresses of PDF files and their titles. It is `stale` where the slip
    changed since.
    """

    job: str = ""
    running: bool = False
    done: int = 0
    total: int = 0
    file: str = ""
    proof: str = ""
    trouble: str = ""
    zip: str = ""
    zip_name: str = ""
    megabytes: float = 0.0
    opens: tuple[tuple[str, str], ...] = ()
    stale: bool = False


NOTHING_MADE = Made()


@dataclass(frozen=True, slots=True)
class Asked:
    """One look at the desk.

    `read` is what is typed now; `good`, with `good_typed`, the last that could be read (the same, where it can).
    `file` is the kit file it was opened from or kept in, at `kept` o'clock, which has so many `kits`; it was `touched`
    where it changed since.
    `asks` is what was asked for ("make", "strips", "pdf:strip-near.pdf") while lines are the example's. `only` are the
    products that are ticked; None where all are. `happened` and `refused` are sentences on what was just done, or not.
    """

    slip: str
    token: str
    typed: Mapping[str, str]
    examples: frozenset[str]
    words: Catalogue
    unit: Unit
    read: Read
    good: Read | None = None
    good_typed: Mapping[str, str] = field(default_factory=dict)
    file: str = ""
    kept: str = ""
    touched: bool = False
    kits: int = 1
    view: str = WORKING
    only: frozenset[str] | None = None
    asks: str = ""
    made: Made = NOTHING_MADE
    happened: str = ""
    refused: str = ""
    step: str = "measured"
