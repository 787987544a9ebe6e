"""What a check found: lines for people, plain values for programs."""

from __future__ import annotations

from collections.abc import Sequence

from templates_gen.files.checked import Checked, Count
from templates_gen.messages.language import message
from templates_gen.messages.roles.run import RunCheck
from templates_gen.messages.roles.screen import CheckLine
from templates_gen.screen.counts import counted, micrometres, sheets_of
from templates_gen.verify.finding import said_once


def checked_values(checked: Sequence[Checked]) -> list[dict[str, object]]:
    """Checked files for programs."""
    return [
        {
            "file": each.file,
            "asked": _count_values(each.asked),
            "found": _count_values(each.found),
            "deviation_um": round(each.deviation * 1000, 3),
            "problems": list(each.problems),
        }
        for each in checked
    ]


def checked_table(checked: Sequence[Checked]) -> str:
    """Checked files for people: what is right in a line; else asked, found, deviation and every problem below."""
    longest = max((len(each.file) for each in checked), default=0)
    lines = []
    for each in checked:
        if not each.problems and each.asked:
            file, deviation = each.file.ljust(longest), micrometres(each.deviation)
            lines.append(message(CheckLine.RIGHT, file=file, counts=_said(each.asked), deviation=deviation))
            continue
        if not each.problems and each.rows:
            lines.append(message(RunCheck.RIGHT, file=each.file.ljust(longest), rows=each.rows))
            continue
        lines.append(message(CheckLine.WRONG, file=each.file))
        lines += [f"       {line}" for line in (*_differing(each), *said_once(each.problems))]
    return "\n".join(lines)


def _differing(each: Checked) -> list[str]:
    """What was asked and what was found, where both are known."""
    if not each.asked or not each.found:
        return []
    return [
        message(CheckLine.ASKED, counts=_said(each.asked)),
        message(CheckLine.FOUND, counts=_said(each.found)),
        message(CheckLine.DEVIATION, deviation=micrometres(each.deviation)),
    ]


def _count_values(count: Count | None) -> dict[str, object] | None:
    if count is None:
        return None
    return {"sheets": count.sheets, "sheet_mm": list(count.size), "marks": count.marks, "cuts": count.cuts}


def _said(count: Count) -> str:
    sheets, counts = sheets_of(count.size, count.sheets), counted(count.marks, count.cuts)
    return message(CheckLine.COUNTS, sheets=sheets, counts=counts)
