"""What to do with the folder of a run: what to print, where the sheets of each kit lie, what to fill in and to mind."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import NamedTuple

from layout.messages.catalogue import Said
from layout.messages.english import ENGLISH
from layout.parts.cards.legal_card import rows, to_fill_in
from layout.products import PRODUCTS
from layout.values.numerals import say_number
from templates_gen.files.class_file import CLASS_FILE
from templates_gen.files.generate import Report
from templates_gen.files.run import KitMade, RunReport
from templates_gen.files.run_about import MAKERS
from templates_gen.files.shop_card_file import CARD_FILE
from templates_gen.messages.language import listed, message
from templates_gen.messages.roles.files import Left
from templates_gen.messages.roles.run import Run, RunLine

_LEGAL = "legal."


def print_lines(report: RunReport) -> Iterator[str]:
    """Which files to print how often, how many sheets that is, and that the folders of the kits need not be printed."""
    found = report.outputs.printing
    times = {file.name: file.times for file in found.pages.files}
    made = [each for each in report.made if each.file in times]
    if not made:
        return
    files = [
        message(RunLine.ONCE, file=each.file, sheets=each.sheets)
        if times[each.file] == 1
        else message(RunLine.TIMES, file=each.file, sheets=each.sheets, times=times[each.file])
        for each in made
    ]
    yield message(RunLine.PRINT, files=listed(files), first=made[0].file)
    totals = found.totals
    yield f"  {message(RunLine.TOGETHER, sheets=totals.sheets, singly=totals.singly)}"
    if totals.placed:
        waste = say_number(100 * totals.waste, 1)
        yield f"  {message(RunLine.AREA, least=totals.least, waste=waste)}"
    yield f"  {message(RunLine.FOLDERS, kits=len(report.kits))}"
    more = dict.fromkeys(file for each in report.kits for file in beside_run(each))
    if more:
        yield f"  {message(RunLine.BESIDE, files=listed([*more]))}"
    names = [each.file for each in report.made]
    for role, files in (
        (RunLine.OTHERS, [name for name in names if name in (CARD_FILE, CLASS_FILE)]),
        (RunLine.MAKERS, [name for name in names if name.startswith(MAKERS)]),
    ):
        if files:
            yield f"  {message(role, files=listed(files))}"


def print_values(report: RunReport) -> dict[str, object]:
    """The same for programs: `print` is each file with its sheets and how often, then how many sheets that is."""
    found = report.outputs.printing
    times = {file.name: file.times for file in found.pages.files}
    made = [each for each in report.made if each.file in times]
    totals = found.totals if made else None
    return {
        "print": [{"file": each.file, "sheets": each.sheets, "times": times[each.file]} for each in made],
        "sheets": totals.sheets if totals else 0,
        "singly": totals.singly if totals else 0,
        "least": totals.least if totals else 0,
        "placed": totals.placed if totals else 0,
        "waste": round(totals.waste, 4) if totals else 0.0,
    }


def beside_run(each: KitMade) -> list[str]:
    """Printed files of a kit that hold what the print run does not: nothing of it lies in the box or once in a run."""
    box, made = each.plan.kit.box, each.report.made
    single = [(one.file.removesuffix(".pdf"), one) for one in made if one.file.endswith(".pdf") and not one.cuts]
    held = {part for name, one in single if name in PRODUCTS and box.has(name) for part in one.parts}
    return [one.file for name, one in single if name in PRODUCTS and not held.issuperset(one.parts)]


def fill_in(report: RunReport) -> dict[tuple[str, ...], list[str]]:
    """The keys of legal words that are missing on a card, and the names of the kits whose cards lack them."""
    found: dict[tuple[str, ...], list[str]] = {}
    for each in report.kits:
        note = to_fill_in(each.plan)
        if note and any(one.note == ENGLISH.again(note) for one in _noted(each.report)):
            keys = tuple(row.key.removeprefix(_LEGAL) for row in rows(each.plan) if not row.said)
            found.setdefault(keys, []).append(each.kit.kit.name)
    return found


def fill_in_lines(report: RunReport) -> Iterator[str]:
    """What is written on the legal cards by hand."""
    found = fill_in(report)
    for keys, names in found.items():
        if len(names) == len(report.kits):
            yield message(RunLine.FILL_IN, keys=listed(keys))
        else:
            yield message(RunLine.FILL_IN_OF, keys=listed(keys), kits=_quoted(names))


class Minded(NamedTuple):
    """Something to mind: the names of the kits it is said of, and the sentence."""

    kits: tuple[str, ...]
    note: str


def minded(report: RunReport) -> list[Minded]:
    """Each sentence once: with all parts that it is said of, and all kits of which it is said of the same parts."""
    legal = {ENGLISH.again(to_fill_in(each.plan)) for each in report.kits}
    found: dict[tuple[str, tuple[str, ...]], list[str]] = {}
    for each in report.kits:
        parts: dict[str, list[str]] = {}
        for one in (*(_Noted("", warning) for warning in each.plan.warnings), *_noted(each.report)):
            if one.note not in legal:
                parts.setdefault(one.note, []).append(one.part)
        for note, titles in parts.items():
            found.setdefault((note, tuple(dict.fromkeys(titles))), []).append(each.kit.kit.name)
    return [Minded(tuple(kits), _sentence(note, parts)) for (note, parts), kits in found.items()]


def mind_lines(report: RunReport) -> Iterator[str]:
    """The same as sentences: what holds for every kit without their names."""
    for kits, note in minded(report):
        yield note if len(kits) == len(report.kits) else message(Run.OF_KIT, name=_quoted(kits), note=note)


class _Noted(NamedTuple):
    """A note, and the title of the part that it is said of ("": none)."""

    part: str
    note: str


def _noted(report: Report) -> Iterable[_Noted]:
    for note in report.notes:
        if note in report.board_notes:
            continue
        if isinstance(note, Said) and note.role is Left.OF_PART:
            yield _Noted(str(note.values["part"]), str(note.values["note"]))
        else:
            yield _Noted("", note)


def _sentence(note: str, parts: Sequence[str]) -> str:
    titles = [part for part in parts if part]
    return message(Left.OF_PART, part=listed(titles), note=note) if titles else note


def _quoted(names: Sequence[str]) -> str:
    """Names in a row; a name may hold a comma."""
    return names[0] if len(names) == 1 else listed([f'"{name}"' for name in names])
