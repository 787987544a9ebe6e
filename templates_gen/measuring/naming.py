"""What scans, sheets and rows are called where they are reported."""

from __future__ import annotations

from layout.messages.english import ENGLISH
from templates_gen.measuring.groups import Group
from templates_gen.measuring.measured import MeasuredSheet
from templates_gen.messages.language import listed, message
from templates_gen.messages.roles.measure import RowName, SheetSeen


def scan_name(sheet: MeasuredSheet) -> str:
    """The file of the scan, and the page where it is not the first."""
    return message(SheetSeen.ON_PAGE, scan=sheet.scan, page=sheet.page) if sheet.page > 1 else sheet.scan


def sheet_name(sheet: MeasuredSheet) -> str:
    """Which sheet it is, and on which scan."""
    label, known = sheet.seen.label, sheet.sheet
    numbers = {"number": label.number, "total": label.total}
    if known is None:
        return message(SheetSeen.BARE, scan=scan_name(sheet), **numbers, digest=label.digest)
    said = message(SheetSeen.OF_FILE, scan=scan_name(sheet), **numbers, file=known.file, kit=known.kit)
    return message(SheetSeen.OF_PARTS, sheet=said, parts=listed(known.titles)) if known.titles else said


def row_name(group: Group) -> str:
    """The part of a row of marks in English, and which of its rows it is."""
    title = str(ENGLISH.again(group.title))
    return title if group.kind is None else message(RowName.OF_PART, part=title, row=group.kind)
