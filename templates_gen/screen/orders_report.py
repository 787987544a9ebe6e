"""What became of orders: for people a few lines, for programs a line of plain values each."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from layout.values.errors import shown, shown_path
from templates_gen.messages.language import message
from templates_gen.messages.roles.orders_report import OrdersLine
from templates_gen.ordering.result import OrderFile, Result
from templates_gen.screen.counts import micrometres

MOST_SAID = 20
"""So many sentences about failed rows are said; the report has all."""


class Tally:
    """What became of all orders so far, and the first sentences about those that failed."""

    def __init__(self, *, check: bool) -> None:
        self.check = check
        self.states = {"made": 0, "unchanged": 0, "readable": 0, "failed": 0}
        self.files = self.marks = self._problems = 0
        self.deviation = 0.0
        self.print_runs: list[OrderFile] = []
        self._said: list[str] = []

    def add(self, result: Result) -> None:
        """One more."""
        self.states[result.state] += 1
        self.files += len(result.files)
        self.marks += sum(file.marks for file in result.files)
        self.deviation = max(self.deviation, *(file.deviation for file in result.files), 0.0)
        self._problems += len(result.problems)
        if len(self._said) < MOST_SAID:
            self._said += list(problem_lines(result))[: MOST_SAID - len(self._said)]

    @property
    def failed(self) -> bool:
        """Whether any order failed."""
        return self.states["failed"] > 0

    @property
    def problems(self) -> Iterator[str]:
        """The sentences about failed rows, and how many more there are."""
        yield from self._said
        if more := self._problems - len(self._said):
            yield message(OrdersLine.MORE_READ if self.check else OrdersLine.MORE, number=more)

    def text(self, folder: Path) -> str:
        """What was done, for people."""
        if self.check:
            return message(OrdersLine.READ, readable=self.states["readable"], failed=self.states["failed"])
        counts = {state: self.states[state] for state in ("made", "unchanged", "failed")}
        made = message(OrdersLine.MADE, folder=shown_path(folder), **counts)
        lines = [made, *self._proven(), message(OrdersLine.TABLES)]
        if runs := self.print_runs:
            sheets = sum(file.sheets for file in runs)
            lines.append(message(OrdersLine.PRINT, files=len(runs), first=runs[0].file, sheets=sheets))
        return "\n".join(lines)

    def _proven(self) -> Iterator[str]:
        """What was proven, where any order was made."""
        if self.files:
            worst = micrometres(self.deviation)
            yield message(OrdersLine.PROVEN, files=self.files, marks=self.marks, deviation=worst)

    def values(self, folder: Path) -> dict[str, object]:
        """The same for programs; it is the last line."""
        counts = {"files": self.files, "marks": self.marks, "deviation_um": round(self.deviation * 1000, 3)}
        runs = list(map(_file_values, self.print_runs))
        return {"summary": {**self.states, **counts, "folder": str(folder), "check": self.check, "print_runs": runs}}


def problem_lines(result: Result) -> Iterator[str]:
    """Each problem of a row, with its line and column."""
    for column, sentence in result.problems:
        if column:
            yield message(OrdersLine.AT_COLUMN, line=result.line, column=shown(column), sentence=sentence)
        else:
            yield message(OrdersLine.AT, line=result.line, sentence=sentence)


def result_values(result: Result) -> dict[str, object]:
    """One result as plain values; amounts are of one box, their spare included."""
    return {
        "line": result.line,
        "order": result.number,
        "kit": result.kit,
        "copies": result.copies,
        "state": result.state,
        "folder": result.folder,
        "ends": result.ends,
        "sheets": result.sheets,
        "files": list(map(_file_values, result.files)),
        "problems": [problem._asdict() for problem in result.problems],
        "amounts": [
            {"kind": each.kind, "name": each.name, "colour": each.colour, "unit": each.unit, "amount": each.figure}
            for each in result.amounts
        ],
        "notes": list(result.notes),
    }


def _file_values(file: OrderFile) -> dict[str, object]:
    return {
        "file": file.file,
        "sha256": file.sha256,
        "sheets": file.sheets,
        "marks": file.marks,
        "deviation_um": round(file.deviation * 1000, 3),
    }
