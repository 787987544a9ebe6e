"""From scans to what is measured on them: every sheet on every page, and parts that lie on several sheets."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from layout.values.errors import LayoutError, shown_path
from templates_gen.disk.faults import reason
from templates_gen.disk.plain import refuse_odd
from templates_gen.measuring.glued import misfits_of
from templates_gen.measuring.joined import Joined, joined
from templates_gen.measuring.known_sheets import KnownSheet
from templates_gen.measuring.measured import MeasuredSheet, measured_groups
from templates_gen.measuring.scales import Reference, scales_of
from templates_gen.messages.language import message
from templates_gen.messages.roles.inputs import File
from templates_gen.messages.roles.measure import Refused, SheetSeen
from templates_gen.scan.reader import measured, read_picture, sheets_on
from templates_gen.scan.seen import Label, ScanError

if TYPE_CHECKING:
    from templates_gen.scan.picture import Picture
    from templates_gen.scan.sheets import SheetSeen as Found

Find = Callable[[Label], KnownSheet | None]
"""Finds the sheet that a code names; None where there is none."""


class OtherSheetError(LayoutError):
    """A sheet that is of none of the files that were asked for."""


@dataclass(frozen=True)
class Outcome:
    """What was measured on scans, sheet by sheet, and why nothing is said of others."""

    sheets: tuple[MeasuredSheet, ...]
    joined: tuple[Joined, ...] = ()
    refused: tuple[str, ...] = ()


def outcome_of(
    scans: Sequence[Path], find: Find, reference: Reference, dpi: float | None = None, kit: str = ""
) -> Outcome:
    """Everything that can be measured on `scans`.

    What cannot be trusted is no number but a sentence, and so is a sheet that is not of the `kit` that was asked for,
    which is called so; where none was, sheets that are not found are measured by their targets alone.
    """
    sheets: list[MeasuredSheet] = []
    refused: list[str] = []
    for scan in scans:
        for each in _on_scan(scan, find, reference, dpi, kit):
            if isinstance(each, str):
                refused.append(each)
            else:
                sheets.append(each)
                refused += _few(each)
    return Outcome(tuple(sheets), joined(sheets, misfits_of(sheets)), tuple(refused))


def _on_scan(
    scan: Path, find: Find, reference: Reference, dpi: float | None, kit: str
) -> Iterator[MeasuredSheet | str]:
    """The sheets of a file, page by page, or why there is none."""
    name = shown_path(scan)
    try:
        refuse_odd(scan.stat())  # before it is opened: a pipe would be waited for
        for picture in read_picture(scan, dpi):
            true = picture.seen_by(*reference.scanner) if reference.scanner else picture
            yield from _on_page(true, name, find, reference, kit)
    except FileNotFoundError:
        yield message(File.NOT_READ, file=name, reason=message(File.NO_SUCH))
    except IsADirectoryError:
        yield message(File.NOT_READ, file=name, reason=message(File.FOLDER))
    except OSError as error:
        yield message(File.NOT_READ, file=name, reason=reason(error))
    except ScanError as error:
        yield message(Refused.ON_SCAN, scan=name, why=error)


def _on_page(picture: Picture, name: str, find: Find, reference: Reference, kit: str) -> Iterator[MeasuredSheet | str]:
    said = name if picture.page == 1 else message(SheetSeen.ON_PAGE, scan=name, page=picture.page)
    try:
        found = sheets_on(picture)
    except ScanError as error:
        yield message(Refused.ON_SCAN, scan=said, why=error)
        return
    for each in found:
        try:
            yield _sheet(picture, each, name, find, reference, kit)
        except LayoutError as error:
            yield message(Refused.ON_SCAN, scan=said, why=error)


def _sheet(picture: Picture, found: Found, name: str, find: Find, reference: Reference, kit: str) -> MeasuredSheet:
    label, sheet = found.label, find(found.label)
    if sheet is None and kit:
        numbers = {"number": label.number, "total": label.total, "digest": label.digest}
        raise OtherSheetError(message(Refused.OTHER_SHEET, **numbers, kit=kit))
    lines = [line for group in sheet.groups for line in group.lines] if sheet else []
    places = sheet.targets if sheet and sheet.targets else None
    seen = measured(picture, found, places, lines)
    scales = scales_of(seen, reference)
    groups = measured_groups(sheet.groups if sheet else (), seen.lines, scales)
    remarks = (*picture.remarks, *found.remarks)
    return MeasuredSheet(name, picture.page, seen, scales, sheet, groups, remarks)


def _few(sheet: MeasuredSheet) -> Iterator[str]:
    """Of which rows too few marks were found."""
    from templates_gen.measuring.naming import row_name, scan_name

    for row in sheet.groups:
        if not row.enough:
            said = {"part": row_name(row.group), "count": len(row.marks)}
            yield message(Refused.FEW_MARKS, scan=scan_name(sheet), **said)
