"""What was measured on scans, as plain values for programs: lengths in mm, shares without a unit."""

from __future__ import annotations

from layout.drawing.shapes import Point
from layout.messages.english import ENGLISH as ON_PARTS
from templates_gen.measuring.joined import Joined
from templates_gen.measuring.measured import Length, Measured, MeasuredSheet
from templates_gen.measuring.naming import row_name
from templates_gen.measuring.outcome import Outcome
from templates_gen.measuring.scales import PAIRS, Factor, nominal_distance
from templates_gen.messages.english import ENGLISH

Values = dict[str, object]


def measured_values(outcome: Outcome) -> Values:
    """Every sheet, every part that lies on several, and what was refused."""
    return {
        "sheets": [_sheet(each) for each in outcome.sheets],
        "joined": [_joined(each) for each in outcome.joined],
        "refused": list(outcome.refused),
    }


def _sheet(sheet: MeasuredSheet) -> Values:
    seen, scales, known = sheet.seen, sheet.scales, sheet.sheet
    wide, high = seen.label.rectangle
    return {
        "scan": sheet.scan,
        "page": sheet.page,
        "digest": seen.label.digest,
        "number": seen.label.number,
        "total": seen.label.total,
        "file": known.file if known else None,
        "kit": known.kit if known else None,
        "parts": list(known.titles) if known else [],
        "made_for_printer": known.corrected if known else None,
        "dpi": seen.dpi,
        "turn_degrees": seen.turn,
        "scale_x": _factor(scales.x),
        "scale_y": _factor(scales.y),
        "ratio": _factor(scales.ratio),
        "skew": _factor(scales.skew),
        "across": _length(sheet.across),
        "up": _length(sheet.up),
        "uneven_mm": seen.uneven,
        "even": sheet.even,
        "rectangle_mm": [wide, high],
        "distances_mm": {pair: nominal_distance((wide, high), pair) for pair in PAIRS},
        "targets": [{"place_mm": _point(each.place), "found_mm": _point(each.found)} for each in seen.targets],
        "rows": [_row(each) for each in sheet.groups],
        "remarks": list(sheet.remarks),
    }


def _row(row: Measured) -> Values:
    enough = row.enough
    return {
        "part": row.group.part,
        "name": row_name(row.group),
        "enough": enough,
        "length": _length(row.length) if enough else None,
        "marks": [
            {
                "name": ENGLISH.words_of(each.mark.name),
                "at_mm": each.mark.at,
                "off_mm": each.off if enough else None,
                "within_mm": each.within if enough else None,
                "beside_mm": each.beside if enough and each.off is not None else None,
            }
            for each in row.marks
        ],
    }


def _joined(each: Joined) -> Values:
    return {
        "part": each.part,
        "name": str(ON_PARTS.again(each.title)),
        "pieces": each.pieces,
        "joints_seen": each.seen,
        "joints_mm": each.tolerance,
        "length": _length(each.length),
        "marks": [{"name": ENGLISH.words_of(mark.name), "at_mm": mark.at, "off_mm": off} for mark, off in each.places],
    }


def _factor(factor: Factor | None) -> Values | None:
    if factor is None:
        return None
    return {"value": factor.value, "within": factor.within, "free_of_scanner": factor.sure}


def _length(length: Length | None) -> Values | None:
    if length is None:
        return None
    return {
        "nominal_mm": length.nominal,
        "mm": length.mm,
        "within_mm": length.within,
        "low_mm": length.low,
        "high_mm": length.high,
        "free_of_scanner": length.sure,
    }


def _point(at: Point) -> list[float]:
    return [at.x, at.y]
