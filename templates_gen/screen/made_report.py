"""What was made: for people a few lines on what to do with it, for programs all of it as plain values."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from pathlib import Path

from layout.messages.english import ENGLISH
from layout.values.errors import ascii_safe
from templates_gen.files.changes import Changes
from templates_gen.files.generate import Report
from templates_gen.files.uses import ToCut, Uses, uses_of
from templates_gen.messages.language import listed, message
from templates_gen.messages.roles.screen import Made
from templates_gen.screen.counts import counted, micrometres, sheets_of
from templates_gen.screen.tables import aligned

_FEW = 3  # names in a row that are still read


def made_text(report: Report, warnings: Sequence[str] = ()) -> str:
    """What to print, join, cut and mind, what was proven, and last what is new in the folder."""
    mind = [*warnings, *(note for note in report.notes if note not in report.board_notes)]
    lines = use_lines(report)
    lines += [message(Made.MIND), *_indented(mind)] if mind else []
    return "\n".join([*lines, _proven(report), *changed_lines(report.changes)])


def use_lines(report: Report) -> list[str]:
    """What to print, join and cut."""
    uses = uses_of(report.made)
    return [*_print_and_join(uses), *cut_lines(uses), *_indented(report.board_notes)]


def _indented(sentences: Iterable[str]) -> list[str]:
    return [f"  {sentence}" for sentence in sentences]


def made_values(report: Report, folder: Path, warnings: Sequence[str] = ()) -> dict[str, object]:
    """The same for programs, with every file as the manifest lists it."""
    uses, changes = uses_of(report.made), report.changes
    return {
        "folder": str(folder),
        "files": [made.values for made in report.made],
        "print": [made.file for made in uses.prints],
        "join": [
            {"file": join.file, "part": ENGLISH.again(join.part.title), "pieces": join.part.pieces}
            for join in uses.joins
        ],
        "cut": [name for each in (*uses.first, *uses.cuts) for name in each.files],
        "warnings": list(warnings),
        "notes": list(report.notes),
        "marks": report.marks,
        "cuts": report.cuts,
        "deviation_um": round(report.deviation * 1000, 3),
        "changes": {kind: list(getattr(changes, kind)) for kind in changes.__slots__},
    }


def made_rows(report: Report) -> str:
    """Every file that was made: sheets, marks, outlines."""
    rows = [(made.file, sheets_of(made.size, made.sheets), counted(made.marks, made.cuts)) for made in report.made]
    return "\n".join(aligned(rows))


def _print_and_join(uses: Uses) -> list[str]:
    lines = []
    if uses.prints:
        files = [message(Made.PRINT_FILE, file=made.file, sheets=made.sheets) for made in uses.prints]
        lines.append(message(Made.PRINT, files=listed(files)))
    if uses.joins:
        parts = [message(Made.JOIN_PART, file=file, part=part.title, pieces=part.pieces) for file, part in uses.joins]
        lines.append(message(Made.JOIN, parts=listed(parts)))
    return lines


def cut_lines(uses: Uses) -> list[str]:
    """What to cut, and which sheet says how."""
    cuts = _few(list(map(_named, uses.cuts or uses.first)))
    if uses.cuts and uses.first:
        cuts = message(Made.CUT_FIRST, first=_few(list(map(_named, uses.first))), others=cuts)
    if not cuts:
        return [message(Made.CUT_AS, job=uses.job)] if uses.job else []
    return [message(Made.CUT_BY, files=cuts, job=uses.job) if uses.job else message(Made.CUT, files=cuts)]


def _few(names: Sequence[str]) -> str:
    """Names in a row, or the first of many."""
    if len(names) <= _FEW:
        return listed(names)
    return message(Made.AND_MORE, first=names[0], number=len(names) - 1)


def _named(cut: ToCut) -> str:
    one, *others = cut.forms
    if not others:
        return cut.files[0]
    forms = one
    for other in others:
        forms = message(Made.EITHER, one=forms, other=other)
    return message(Made.CUT_FILE, stem=cut.stem, forms=forms)


def _proven(report: Report) -> str:
    return message(
        Made.PROVEN,
        files=len(report.made),
        counts=counted(report.marks, report.cuts),
        deviation=micrometres(report.deviation),
    )


def proven_rows(report: Report) -> str:
    """Every file that was made, and what was proven."""
    return "\n".join((made_rows(report), _proven(report)))


def changed_lines(changes: Changes) -> list[str]:
    """What needs care, then one line of counts, with names where they are few."""
    care = []
    if changes.kept:
        care.append(message(Made.KEPT, files=_names(changes.kept)))
    if changes.other_kit:
        many = len(changes.other_kit) > _FEW
        files = message(Made.FILES, number=len(changes.other_kit)) if many else _names(changes.other_kit)
        care.append(message(Made.OTHER_KIT, files=files))
    kinds = [
        _kind(changes.new, Made.NEW, Made.NEW_NAMED),
        _kind(changes.changed, Made.CHANGED, Made.CHANGED_NAMED),
        message(Made.SAME, number=len(changes.same)),
        _kind(changes.removed, Made.REMOVED, Made.REMOVED_NAMED),
    ]
    return [*care, message(Made.FOLDER, kinds=listed(kinds))]


def _kind(names: Sequence[str], kind: Made, named: Made) -> str:
    if 0 < len(names) <= _FEW:
        return message(named, number=len(names), names=_names(names))
    return message(kind, number=len(names))


def _names(names: Sequence[str]) -> str:
    return listed(list(map(ascii_safe, names)))
