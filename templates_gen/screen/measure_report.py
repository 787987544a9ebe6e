"""What was measured on scans, in words of the bench."""

from __future__ import annotations

from collections.abc import Iterator
from math import ceil
from pathlib import Path

from layout.drawing.print_mistakes import likely_mistakes
from layout.drawing.printer import LIKELY_SETTING, MOST, Printer
from layout.messages.catalogue import Message
from layout.messages.english import ENGLISH as ON_PARTS
from layout.values.errors import shown_path
from layout.values.numerals import say_fixed
from layout.values.units import say_number
from templates_gen.measuring.joined import Joined
from templates_gen.measuring.measured import Gap, Length, Measured, MeasuredSheet
from templates_gen.measuring.naming import row_name, sheet_name
from templates_gen.measuring.outcome import Outcome
from templates_gen.measuring.scales import ACROSS, DIAGONALS, PAIR_NAMES, UP, Factor, nominal_distance
from templates_gen.messages.language import message
from templates_gen.messages.roles.measure import After, RowLine, RowName, ScaleLine, SheetSeen
from templates_gen.screen.tables import Line, Section, in_sections

_NOTHING = 0.005  # mm: what is less is said in hundredths as nothing
_FINE = 0.1  # mm: a length that is known better is said to hundredths, another one to tenths


def measured_text(outcome: Outcome) -> str:
    """The report: each sheet, parts that lie on several, and what is to be known of the figures."""
    lines: list[str] = []
    for sheet in outcome.sheets:
        lines += [*([""] if lines else []), sheet_name(sheet), *in_sections(list(_sections(sheet)))]
        lines += list(_of_sheet(sheet))
    if outcome.joined:
        lines += in_sections([Section(_joined_heading(each), list(_joined_rows(each))) for each in outcome.joined])
    return "\n".join([*lines, "", *after(outcome)])


def _sections(sheet: MeasuredSheet) -> Iterator[Section]:
    yield Section(message(ScaleLine.SCALE), list(_scale_rows(sheet)))
    for row in sheet.groups:
        if row.enough:
            yield Section(_heading(row), list(_row_lines(row)))


def _scale_rows(sheet: MeasuredSheet) -> Iterator[Line]:
    scales = sheet.scales
    if sheet.across is None and sheet.up is None:
        yield message(ScaleLine.SCALE), message(ScaleLine.NO_SCALE), ""
    for name, length, factor in ((ScaleLine.ACROSS, sheet.across, scales.x), (ScaleLine.UP, sheet.up, scales.y)):
        if length and factor:
            yield message(name), _comes_out(length), _share(factor)
    off = 100 * (scales.ratio.value - 1)
    role = ScaleLine.RATIO_LARGER if off > 0 else ScaleLine.RATIO_SMALLER
    percent = say_number(abs(off), 2)
    said = message(role, percent=percent) if percent != "0" else message(ScaleLine.RATIO_SAME)
    sure = message(ScaleLine.SURE_PERCENT, within=_up(100 * scales.ratio.within), basis=basis(scales.ratio))
    yield message(ScaleLine.RATIO), said, sure
    leans = 100 * scales.skew.value
    role = ScaleLine.SKEW_RIGHT if leans > 0 else ScaleLine.SKEW_LEFT
    mm = say_number(abs(leans), 2)
    said = message(role, mm=mm) if mm != "0" else message(ScaleLine.SKEW_NONE)
    sure = message(ScaleLine.SURE_MM, within=_up(100 * scales.skew.within), basis=basis(scales.skew))
    yield message(ScaleLine.SKEW), said, sure
    role = ScaleLine.EVEN if sheet.even else ScaleLine.UNEVEN
    yield message(ScaleLine.UNEVENNESS), message(role, um=say_number(1000 * sheet.seen.uneven, 0)), ""


def _comes_out(length: Length) -> str:
    places = 2 if length.within < _FINE else 1
    low, high = (say_fixed(mm, places) for mm in (length.low, length.high))
    return message(ScaleLine.COMES_OUT, nominal=say_number(length.nominal, 1), low=low, high=high)


def _share(factor: Factor) -> str:
    within = _up(100 * factor.within)
    return message(ScaleLine.SHARE, share=say_fixed(100 * factor.value, 2), within=within, basis=basis(factor))


def basis(factor: Factor | Length) -> str:
    """Whether the scanner's own error is in a figure."""
    return message(ScaleLine.AS_MEASURED if factor.sure else ScaleLine.AS_SEEN)


def _up(number: float) -> str:
    """What something is sure to: hundredths, rounded up."""
    return say_number(ceil(100 * number - 1e-9) / 100, 2)


def _heading(row: Measured) -> str:
    found, marks = len(row.found), row.marks
    ends = {"first": marks[0].mark.name, "last": marks[-1].mark.name}
    return message(RowName.HEADING, part=row_name(row.group), found=found, count=len(marks), **ends)


def _row_lines(row: Measured) -> Iterator[Line]:
    if (length := row.length) is not None:
        yield message(RowLine.LENGTH), _comes_out(length), basis(length)
    mark, off, within = row.worst
    ends = row.marks[0].mark.name, row.marks[-1].mark.name
    yield message(RowLine.WORST), _off(mark.name, off, ends), _sure(within)
    if row.gaps:
        gap = row.worst_gap
        yield message(RowLine.GAP), _gap(gap), _sure(gap.within)


def _gap(gap: Gap) -> str:
    if abs(gap.off) < _NOTHING:
        return message(RowLine.ALL_GAPS)
    role = RowLine.WIDE if gap.off > 0 else RowLine.NARROW
    return message(role, first=gap.first.name, second=gap.second.name, mm=say_number(abs(gap.off), 2))


def _off(name: Message, off: float, ends: tuple[Message, Message]) -> str:
    if abs(off) < _NOTHING:
        return message(RowLine.ALL_PLACES)
    return message(RowLine.OFF, mark=name, mm=say_number(abs(off), 2), toward=ends[off > 0])


def _sure(within: float) -> str:
    return message(RowLine.SURE, within=_up(within))


def _joined_heading(each: Joined) -> str:
    title = str(ON_PARTS.again(each.title))
    ends = {"first": each.places[0][0].name, "last": each.places[-1][0].name}
    return message(RowName.JOINED, part=title, pieces=each.pieces, found=len(each.places), count=each.marks, **ends)


def _joined_rows(each: Joined) -> Iterator[Line]:
    yield message(RowLine.LENGTH), _comes_out(each.length), basis(each.length)
    mark, off = each.worst
    yield message(RowLine.WORST), _off(mark.name, off, (each.places[0][0].name, each.places[-1][0].name)), ""
    counted = each.pieces - 1 - each.seen
    if counted:
        tolerance = say_number(each.tolerance, 2)
        yield message(RowLine.JOINTS), message(RowLine.COUNTED, joints=counted, tolerance=tolerance), ""
    if each.seen:
        yield message(RowLine.JOINTS), message(RowLine.JOINTS_SEEN, seen=each.seen), ""


def _of_sheet(sheet: MeasuredSheet) -> Iterator[str]:
    """Sentences on one sheet."""
    said = list(sheet.remarks)
    if sheet.sheet and sheet.sheet.corrected:
        said.append(message(SheetSeen.CORRECTED))
    said += list(_causes(sheet))
    if not sheet.even:
        said.append(message(After.NOT_EVEN))
    yield from ["", *said] if said else []


def _causes(sheet: MeasuredSheet) -> Iterator[str]:
    """What is likely where the scale is far off."""
    x, y = sheet.scales.x, sheet.scales.y
    shares = [each for each in (x, y) if each]
    if not shares or max(abs(each.value - 1) - each.within for each in shares) <= LIKELY_SETTING:
        return
    mistakes = likely_mistakes(sheet.scale, sheet.within) if sheet.scale else ()
    percent = say_number(100 * LIKELY_SETTING)
    if mistakes:
        yield message(After.MISTAKE_KNOWN, percent=percent, what=ON_PARTS.say(mistakes[0].what))
    else:
        yield message(After.MISTAKE, percent=percent)
    if max(abs(each.value - 1) for each in shares) > MOST:
        yield message(After.TOO_FAR, percent=say_number(100 * MOST))


def after(outcome: Outcome) -> Iterator[str]:
    """What is to be known of all figures, and what would make them surer."""
    sheets = outcome.sheets
    if not all(sheet.scales.x and sheet.scales.x.sure and sheet.scales.y and sheet.scales.y.sure for sheet in sheets):
        yield message(After.SCANNER_ERROR)
        yield from _rule(sheets[0])
    elif not all(sheet.scales.skew.sure for sheet in sheets):
        yield message(After.SKEW_SEEN, example=" ".join(_example(sheets[0], pair) for pair in DIAGONALS))
    if any(sheet.groups for sheet in sheets):
        yield message(After.MARKS_BESIDE)
    if any(sheet.sheet is None for sheet in sheets):
        yield message(After.NO_KIT, example="--kit my-kit.toml")
    yield message(After.DAMP)


def _rule(sheet: MeasuredSheet) -> Iterator[str]:
    """Which distances would make the scale sure."""
    missing = [pairs[0] for pairs, each in ((ACROSS, sheet.scales.x), (UP, sheet.scales.y)) if not (each and each.sure)]
    roles = (After.RULE_FIRST, After.RULE_OTHER) if len(missing) > 1 else (After.RULE_OTHER,)
    for role, pair in zip(roles, missing, strict=True):
        distance = say_number(nominal_distance(sheet.seen.label.rectangle, pair), 2)
        yield message(role, pair=PAIR_NAMES[pair], distance=distance, example=_example(sheet, pair))


def _example(sheet: MeasuredSheet, pair: str) -> str:
    distance = say_number(nominal_distance(sheet.seen.label.rectangle, pair), 1)
    return f'--known "{distance} mm"' if pair == ACROSS[0] else f'--known "{pair} {distance} mm"'


def stored_text(printer: Printer, file: Path) -> str:
    """That a printer is kept, and where."""
    said = message(After.STORED, name=printer.name, file=shown_path(file))
    return said if printer.scale.skew else "\n".join([said, message(After.STORED_SKEW)])
