"""What a run made: for people what to do with it, kit by kit, and what to buy; for programs all of it."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

from templates_gen.files.board_records import board_note
from templates_gen.files.changes import Changes
from templates_gen.files.run import RunReport
from templates_gen.files.tables import TO_BUY
from templates_gen.files.uses import uses_of
from templates_gen.messages.language import listed, message
from templates_gen.messages.roles.run import Run, RunLine
from templates_gen.messages.roles.screen import Made
from templates_gen.screen.buying_report import buy_sentences, buy_values
from templates_gen.screen.counts import counted, micrometres
from templates_gen.screen.made_report import changed_lines, cut_lines, made_rows, made_values, use_lines
from templates_gen.screen.run_lines import fill_in, fill_in_lines, mind_lines, minded, print_lines, print_values

_KINDS = ("new", "changed", "same", "removed", "kept", "other_kit")


def run_text(report: RunReport, *, as_rows: bool = False) -> str:
    """What to print, cut, buy, fill in and mind, what was proven, and what is new."""
    whole = bool(report.tables)
    lines = list(print_lines(report)) if whole else []
    for each in report.kits:
        boxes = message(RunLine.BOXES, number=each.kit.copies)
        todo = [made_rows(each.report)] if as_rows else []
        todo += [] if whole else use_lines(each.report)
        if todo or not whole:
            lines.append(message(RunLine.KIT, folder=each.folder, boxes=boxes))
        lines += _indented(todo)
    lines += _cut(report)
    if whole:
        found = report.outputs
        imperial = found.kits[0].plan.warp.sett.unit.imperial
        lines += buy_sentences(found.scopes[-1].bought, found.range.shop.currency, imperial=imperial)
        lines += _indented([message(RunLine.BUY_LIST, file=TO_BUY)])
    lines += fill_in_lines(report)
    mind = [*mind_lines(report), *report.left_out]
    lines += [message(Made.MIND), *_indented(mind)] if mind else []
    if report.others:
        lines.append(message(Run.OTHER_FOLDERS, folders=listed(report.others)))
    proven = {"files": report.files, "counts": counted(report.marks, report.cuts)}
    lines.append(message(Made.PROVEN, **proven, deviation=micrometres(report.deviation)))
    return "\n".join([*lines, *changed_lines(_together(report))])


def _cut(report: RunReport) -> list[str]:
    """The boards of all kits; where nothing lies on boards, what each kit has to be cut."""
    boards = report.outputs.boards
    if boards is None or not report.tables:
        return []
    return [*cut_lines(uses_of(report.made)), *_indented([*board_note(boards.drawn), message(RunLine.TRIAL)])]


def _indented(texts: Iterable[str]) -> list[str]:
    return [f"  {line}" for text in texts for line in text.split("\n")]


def _together(report: RunReport) -> Changes:
    """What changed in all folders; a file in the folder of a kit is named with it."""
    found: dict[str, list[str]] = {kind: list(getattr(report.changes, kind)) for kind in _KINDS}
    for each in report.kits:
        for kind in _KINDS:
            found[kind] += [f"{each.folder}/{name}" for name in getattr(each.report.changes, kind)]
    return Changes(**{kind: tuple(names) for kind, names in found.items()})


def run_values(report: RunReport, folder: Path) -> dict[str, object]:
    """The same for programs: every kit as `make` gives it, the files of the run, and what to buy."""
    return {
        "folder": str(folder),
        "name": report.outputs.range.name,
        "kits": [
            {
                "name": each.kit.kit.name,
                "copies": each.kit.copies,
                **made_values(each.report, folder / each.folder, each.plan.warnings),
                "cut": [name for each_cut in uses_of(each.report.made).first for name in each_cut.files],
            }
            for each in report.kits
        ],
        **print_values(report),
        "files": [*(made.values for made in report.made), *report.tables],
        "cut": [name for each in uses_of(report.made).cuts for name in each.files],
        "boards": report.outputs.boards.count if report.tables and report.outputs.boards else 0,
        "buy": buy_values(report.outputs.scopes) if report.tables else [],
        "fill_in": [{"kits": names, "keys": list(keys)} for keys, names in fill_in(report).items()],
        "mind": [{"kits": list(each.kits), "note": each.note} for each in minded(report)],
        "left_out": list(report.left_out),
        "others": list(report.others),
        "marks": report.marks,
        "cuts": report.cuts,
        "deviation_um": round(report.deviation * 1000, 3),
    }
