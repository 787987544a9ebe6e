"""What was made, for people: each file, what was proven, and what is new in the folder."""

from __future__ import annotations

from collections.abc import Sequence

from layout.values.errors import ascii_safe
from templates_gen.files.changes import Changes
from templates_gen.files.generate import Report
from templates_gen.messages.language import listed, message
from templates_gen.messages.roles.screen import Made
from templates_gen.screen.counts import counted, micrometres, sheets_of
from templates_gen.screen.tables import aligned


def made_table(report: Report) -> str:
    """Every file that was made, what was proven, and last what is new in the folder."""
    return "\n".join([made_rows(report), *_changes(report.changes)])


def made_rows(report: Report) -> str:
    """Every file that was made, and what was proven."""
    rows = [(made.file, sheets_of(made.size, made.sheets), counted(made.marks, made.cuts)) for made in report.made]
    notes = [f"  {note}" for note in report.notes]
    proven = message(
        Made.PROVEN,
        files=len(report.made),
        counts=counted(report.marks, report.cuts),
        deviation=micrometres(report.deviation),
    )
    return "\n".join([*aligned(rows), *notes, proven])


_FEW = 3


def _changes(changes: Changes) -> list[str]:
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
