"""What the commands say: plans, setts and checks as aligned tables for people and as plain values for programs."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction

from layout.plan import Plan
from layout.sett.sett import SettTaken
from layout.values.errors import ascii_safe
from layout.values.units import Length, say_length, say_number
from templates_gen.files.changes import Changes
from templates_gen.files.check import Checked, Count
from templates_gen.files.generate import Report
from templates_gen.screen.amounts_report import amounts_rows, amounts_sentences, amounts_values
from templates_gen.screen.load_report import load_rows, load_values
from templates_gen.verify.compare import said_once

INCH, CM = Fraction(127, 5), Fraction(10)


def number(exact: Fraction | float) -> int | float:
    """A whole number as int, any other as the nearest float."""
    exact = Fraction(exact)
    return exact.numerator if exact.denominator == 1 else float(exact)


def _or_null(exact: Fraction | None) -> int | float | None:
    return None if exact is None else number(exact)


def sett_values(sett: SettTaken) -> dict[str, object]:
    """The sett taken for programs; `high_per_inch` is null where a sett was given."""
    return {
        "sett_per_inch": number(sett.per_mm * INCH),
        "sett_per_cm": number(sett.per_mm * CM),
        "low_per_inch": number(sett.low * INCH),
        "high_per_inch": None if sett.high is None else number(sett.high * INCH),
        "winds_per_unit": _or_null(sett.winds_per_unit),
        "marking_unit_mm": number(sett.unit.mm),
        "warnings": list(sett.warnings),
    }


def plan_values(plan: Plan, notes: Iterable[str]) -> dict[str, object]:
    """The plan for programs; marks in mm from the centre of the weaving, from left to right."""
    warp = plan.warp
    return {
        "sett_per_inch": number(warp.sett.per_mm * INCH),
        "sett_per_cm": number(warp.sett.per_mm * CM),
        "pitch_mm": number(warp.pitch),
        "ends": warp.ends,
        "winds": warp.winds,
        "winding_pitch_mm": _or_null(warp.winding_pitch),
        "weaving_width_mm": number(warp.width),
        "marking_unit_mm": number(warp.sett.unit.mm),
        "winds_per_unit": _or_null(warp.sett.winds_per_unit),
        "threads": sum(warp.threads),
        "near_marks_mm": sorted(map(number, warp.near)),
        "far_marks_mm": sorted(map(number, warp.far)),
        **load_values(plan.load),
        **amounts_values(plan.amounts),
        "warnings": [*plan.warnings, *notes],
    }


def plan_table(plan: Plan, notes: Iterable[str]) -> str:
    """The plan for people: what, how much, and why."""
    warp, kit = plan.warp, plan.kit
    sett = warp.sett
    imperial = sett.unit.imperial
    rows = [
        ("Sett", f"{say_number(sett.per_mm * INCH)} per inch, {say_number(sett.per_mm * CM)} per cm", _why(sett)),
        ("Pitch", _both(warp.pitch, imperial), "from one end to the next in the weaving"),
        _spacing(plan),
        ("Marking unit", say_length(sett.unit), f"{sett.counted} to each"),
        ("Weaving", _both(warp.width, imperial), f"from limit to limit, in whole {_whole(plan)}"),
        _count(plan),
        ("Marks", f"{len(warp.near)} near, {len(warp.far)} far", _tie_off(plan)),
        *load_rows(plan.load),
        *amounts_rows(plan.amounts, imperial=imperial),
    ]
    lines = [kit.name, f"Warp {kit.warp}, weft {kit.weft}", "", *aligned(rows)]
    care = (("Why", plan.notes), ("Take care", (*plan.warnings, *notes)))
    for heading, sentences in (*care, *amounts_sentences(plan.amounts)):
        if sentences:
            lines += ["", heading, *(f"  {sentence}" for sentence in sentences)]
    return "\n".join(lines)


_SPACING = {
    "wound": ("Winding pitch", "a wind lays two ends, one on the face and one behind"),
    "notched": ("Notches", "from one notch that is used to the next"),
    "pegged": ("Pegs", "from one peg to the next; each turns two ends"),
}


def _spacing(plan: Plan) -> tuple[str, str, str]:
    warp = plan.warp
    name, why = _SPACING[warp.kind]
    return name, _both(warp.spacing, warp.sett.unit.imperial), why


def _count(plan: Plan) -> tuple[str, str, str]:
    warp, doubled = plan.warp, plan.doubled
    if not warp.winds:
        return "Ends", str(warp.ends), ", ".join(doubled)
    number = f"{warp.winds} and one pass" if warp.ends % 2 else str(warp.winds)
    return "Winds", number, ", ".join((f"{warp.ends} ends", *doubled))


def _whole(plan: Plan) -> str:
    return "winds" if plan.warp.winds and plan.warp.ends % 2 == 0 else "ends"


def _tie_off(plan: Plan) -> str:
    if plan.warp.ends % 2:
        return "tied off at the far end"
    return "the near end also carries the tie-off" if plan.warp.kind == "wound" else "tied off at the near end"


def sett_table(sett: SettTaken) -> str:
    """The sett for people, with what every usual unit would make of it."""
    rows = [
        ("Sett", f"{say_number(sett.per_mm * INCH)} per inch, {say_number(sett.per_mm * CM)} per cm", _why(sett)),
        ("Marking unit", say_length(sett.unit), f"{sett.counted} to each"),
    ]
    notes = [f"  {sentence}" for sentence in (*sett.notes, *sett.warnings)]
    return "\n".join([*aligned(rows), "", *notes])


def _why(sett: SettTaken) -> str:
    if sett.high is None:
        return "as given"
    return "as measured" if not sett.loss else f"{say_number(sett.loss * 100, 1)} % under the sett measured"


def _both(mm: Fraction, imperial: bool) -> str:
    units = ("in", "mm") if imperial else ("mm", "in")
    return ", ".join(say_length(Length(mm, unit)) for unit in units)


def aligned(rows: Sequence[tuple[str, str, str]]) -> list[str]:
    """Rows of a name, a value and a remark as lines with straight columns."""
    name, value = (max(len(row[column]) for row in rows) for column in (0, 1))
    return [f"{row[0]:<{name}}  {row[1]:<{value}}  {row[2]}".rstrip() for row in rows]


def made_table(report: Report) -> str:
    """Every file that was made, what was proven, and last what is new in the folder."""
    rows = [(made.file, _size(made.size, made.sheets), _counts(made.marks, made.cuts)) for made in report.made]
    notes = [f"  {note}" for note in report.notes]
    proven = (
        f"Proven: {len(report.made)} files read back, {_counts(report.marks, report.cuts)}, "
        f"largest deviation {_micrometres(report.deviation)}."
    )
    return "\n".join([*aligned(rows), *notes, proven, *_changes(report.changes)])


_FEW = 3


def _changes(changes: Changes) -> list[str]:
    """What needs care, then one line of counts, with names where they are few."""
    care = []
    if changes.kept:
        care.append(
            f"Take care: {', '.join(map(ascii_safe, changes.kept))}: no longer made, but changed since it was made, "
            "so it was kept. Move it away or delete it."
        )
    if changes.other_kit:
        care.append(
            f"Take care: made from other inputs than these, and left as they are: {_named(changes.other_kit)}. "
            "Make the whole kit again before you use them together."
        )
    told = [
        _kind(changes.new, "new"),
        _kind(changes.changed, "changed"),
        f"{len(changes.same)} the same",
        _kind(changes.removed, "removed"),
    ]
    return [*care, f"In the folder: {', '.join(told)}."]


def _kind(names: Sequence[str], kind: str) -> str:
    return f"{len(names)} {kind}" + (f" ({_named(names)})" if 0 < len(names) <= _FEW else "")


def _named(names: Sequence[str]) -> str:
    return ", ".join(map(ascii_safe, names)) if len(names) <= _FEW else f"{len(names)} files"


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
            told = f"asked and found {_said(each.asked)}; largest deviation {_micrometres(each.deviation)}"
            lines.append(f"right  {each.file:<{longest}}  {told}")
            continue
        lines.append(f"WRONG  {each.file}")
        if each.asked and each.found:
            lines += [f"       asked {_said(each.asked)}", f"       found {_said(each.found)}"]
            lines.append(f"       largest deviation {_micrometres(each.deviation)}")
        lines += [f"       {problem}" for problem in said_once(each.problems)]
    return "\n".join(lines)


def _count_values(count: Count | None) -> dict[str, object] | None:
    if count is None:
        return None
    return {"sheets": count.sheets, "sheet_mm": list(count.size), "marks": count.marks, "cuts": count.cuts}


def _said(count: Count) -> str:
    return f"{_size(count.size, count.sheets)}, {_counts(count.marks, count.cuts)}"


def _counts(marks: int, cuts: int) -> str:
    """Marks are measured, outlines are cut; a file has the one or the other, a folder may have both."""
    outlines = f"{cuts} outline{'' if cuts == 1 else 's'} to cut"
    return f"{marks} marks, {outlines}" if marks and cuts else outlines if cuts else f"{marks} marks"


def _size(size: tuple[float, float], sheets: int) -> str:
    noun = "sheet" if sheets == 1 else "sheets"
    return f"{sheets} {noun} of {size[0]:.1f} x {size[1]:.1f} mm"


def _micrometres(mm: float) -> str:
    return f"{mm * 1000:.2f} micrometres"
