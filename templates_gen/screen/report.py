"""Plans and setts: aligned tables for people, plain values for programs."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from layout.messages.english import ENGLISH
from layout.plan import Plan
from layout.sett.sett import SettTaken
from layout.values.units import Length, say_length, say_number
from layout.warps.ways import way_of
from templates_gen.messages.language import listed, message
from templates_gen.messages.roles.screen import Measure, Row
from templates_gen.screen.amounts_report import amounts_sections, amounts_sentences, amounts_values
from templates_gen.screen.load_report import load_rows, load_values
from templates_gen.screen.tables import Line, Section, aligned, in_sections

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
    warp, kit = plan.warp, plan.kit
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
        "wound_height_mm": number(kit.frame.outer_height.mm),
        "tight_height_mm": number(kit.frame.tightened.outer_height.mm),
        "travel_mm": _or_null(kit.frame.travel.mm if kit.frame.travel else None),
        "winding": kit.weaving.winding,
        "near_hold": kit.weaving.near_hold,
        "leash_ends": plan.amounts.leashes.ends,
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
        _sett(sett),
        (message(Row.PITCH), _both(warp.pitch, imperial), message(Row.PITCH_IS)),
        _spacing(plan),
        _unit(sett),
        (message(Row.WEAVING), _both(warp.width, imperial), message(_whole(plan))),
        _count(plan),
        (message(Row.MARKS), message(Row.MARKS_ARE, near=len(warp.near), far=len(warp.far)), message(_tie_off(plan))),
    ]
    sections = (
        Section(message(Row.SETTING_OUT), rows),
        Section(message(Row.FRAME), load_rows(plan.load)),
        *amounts_sections(plan.amounts, imperial=imperial),
    )
    lines = [kit.name, message(Row.YARNS, warp=kit.warp, weft=kit.weft), *in_sections(sections)]
    care = ((Row.WHY, plan.notes), (Row.CARE, (*plan.warnings, *notes)))
    for heading, sentences in (*care, *amounts_sentences(plan.amounts)):
        if sentences:
            lines += ["", message(heading), *(f"  {sentence}" for sentence in sentences)]
    return "\n".join(lines)


def _spacing(plan: Plan) -> Line:
    warp = plan.warp
    name, why = way_of(plan.kit.frame.ends, warp.winding).spacing
    return message(name), _both(warp.spacing, warp.sett.unit.imperial), message(why)


def _count(plan: Plan) -> Line:
    warp, doubled = plan.warp, tuple(map(ENGLISH.again, plan.doubled))
    if not warp.winds:
        return message(Row.ENDS), str(warp.ends), listed(doubled)
    number = message(Row.WINDS_AND_PASS, winds=warp.winds) if warp.ends % 2 else str(warp.winds)
    return message(Row.WINDS), number, listed((message(Row.COUNT_ENDS, ends=warp.ends), *doubled))


def _whole(plan: Plan) -> Row:
    return Row.WEAVING_WINDS if plan.warp.winds and plan.warp.ends % 2 == 0 else Row.WEAVING_ENDS


def _tie_off(plan: Plan) -> Row:
    if plan.warp.kind == "rod":
        return Row.TIED_ROD
    if plan.warp.ends % 2:
        return Row.TIED_FAR
    return Row.TIED_NEAR_TOO if plan.warp.kind == "wound" else Row.TIED_NEAR


def sett_table(sett: SettTaken) -> str:
    """The sett for people, with what every usual unit would make of it."""
    rows = [_sett(sett), _unit(sett)]
    notes = [f"  {sentence}" for sentence in (*sett.notes, *sett.warnings)]
    return "\n".join([*aligned(rows), "", *notes])


def _sett(sett: SettTaken) -> Line:
    per_inch = message(Measure.PER_INCH, number=say_number(sett.per_mm * INCH))
    per_cm = message(Measure.PER_CM, number=say_number(sett.per_mm * CM))
    return message(Row.SETT), message(Measure.BOTH, first=per_inch, second=per_cm), _why(sett)


def _unit(sett: SettTaken) -> Line:
    return message(Row.UNIT), say_length(sett.unit), message(Row.UNIT_IS, counted=sett.counted)


def _why(sett: SettTaken) -> str:
    if sett.high is None:
        return message(Row.SETT_GIVEN)
    if not sett.loss:
        return message(Row.SETT_MEASURED)
    return message(Row.SETT_UNDER, loss=say_number(sett.loss * 100, 1))


def _both(mm: Fraction, imperial: bool) -> str:
    units = ("in", "mm") if imperial else ("mm", "in")
    first, second = (say_length(Length(mm, unit)) for unit in units)
    return message(Measure.BOTH, first=first, second=second)
