"""What is to be done with the files that were made: which to print, which parts to join, which files to cut."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from templates_gen.files.board_records import JOB_FILE
from templates_gen.files.output import Joined
from templates_gen.files.proven import Made
from templates_gen.inputs.families import BOARD

_PAPER, _FIRST = "pdf", ("square-check-", "trial-cut-")


class ToCut(NamedTuple):
    """Files of one drawing: the name without its suffix, and the suffixes without a dot."""

    stem: str
    forms: tuple[str, ...]

    @property
    def files(self) -> tuple[str, ...]:
        """The names of all of them; any one will do."""
        return tuple(f"{self.stem}.{form}" for form in self.forms)


class ToJoin(NamedTuple):
    """A part in pieces, and the file whose sheets show them and say how."""

    file: str
    part: Joined


class Uses(NamedTuple):
    """`prints` show every printed part once; `first` is to be cut before the other `cuts`; `job` is the job sheet."""

    prints: tuple[Made, ...]
    joins: tuple[ToJoin, ...]
    first: tuple[ToCut, ...]
    cuts: tuple[ToCut, ...]
    job: str | None


def uses_of(made: Sequence[Made]) -> Uses:
    """What is to be done with `made`, every part once: what a larger file holds needs no file of its own.

    Drawings of parts that a cutter gets are to look at, and named only where there is no file for a cutter.
    """
    cutter = [each for each in made if each.cuts and _form(each) != _PAPER]
    on_paper = [each for each in made if each not in cutter and each.file != JOB_FILE]
    cut = {part for each in cutter for part in each.parts}
    printed = [each for each in on_paper if not (each.cuts and cut.issuperset(each.parts))]
    prints = _each_once(sorted(printed, key=lambda each: (_form(each) != _PAPER, -len(each.parts))))
    joins = tuple(ToJoin(each.file, part) for each in prints for part in each.joined)
    first, others = _to_cut(cutter)
    job = next((each.file for each in made if each.file == JOB_FILE), None)
    return Uses(tuple(prints), joins, first, others, job)


def _each_once(made: Sequence[Made]) -> list[Made]:
    """Those of `made`, from the first on, that hold a part which none before them holds."""
    seen, kept = set[str](), list[Made]()
    for each in made:
        if not seen.issuperset(each.parts):
            kept.append(each)
            seen.update(each.parts)
    return kept


def _to_cut(cutter: Sequence[Made]) -> tuple[tuple[ToCut, ...], tuple[ToCut, ...]]:
    """Square check and trial cut, and all else: the boards, and what lies on none of them."""
    boards = [each for each in cutter if each.file.startswith(f"{BOARD}-")]
    on_boards = {part for each in boards for part in each.parts}
    alone = [each for each in cutter if not on_boards.issuperset(each.parts)]
    first = [each for each in alone if each.file.startswith(_FIRST)]
    return _stems(first), _stems([*boards, *(each for each in alone if each not in first)])


def _stems(made: Sequence[Made]) -> tuple[ToCut, ...]:
    forms: dict[str, list[str]] = {}
    for each in made:
        forms.setdefault(each.file.rpartition(".")[0], []).append(_form(each))
    return tuple(ToCut(stem, tuple(found)) for stem, found in forms.items())


def _form(made: Made) -> str:
    return made.file.rpartition(".")[2]
