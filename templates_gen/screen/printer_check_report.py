"""What a measured printer check comes to: sentences for people at the bench, plain values for programs."""

from __future__ import annotations

from collections.abc import Iterator

from layout.drawing.correction import Scale
from layout.drawing.printer import LIKELY_SETTING
from layout.messages.catalogue import Figure, Role
from layout.values.errors import shown_path
from layout.values.numerals import say_number
from templates_gen.inputs.measured_check import OPTIONS, Measured
from templates_gen.messages.language import message
from templates_gen.messages.roles.printer_check import CheckLine
from templates_gen.screen.tables import Line, aligned

_LENGTH = 240.0
"""A length of the bench that the result is said for, in mm."""


def check_text(measured: Measured) -> str:
    """The result for people: what comes out, how sure it is, and what to do about it."""
    return "\n".join([*aligned(list(_rows(measured))), *_remarks(measured)])


def _rows(measured: Measured) -> Iterator[Line]:
    """Of each direction what comes out of a length."""
    names = CheckLine.NAME_ACROSS, CheckLine.NAME_UP
    for name, share, within in zip(names, measured.scale, measured.within, strict=False):
        shares = (share, share - within, share + within)
        value, low, high = (Figure(f"{_LENGTH * each:.2f}") for each in shares)
        said = message(CheckLine.COMES_OUT, length=say_number(_LENGTH), value=value, low=low, high=high)
        percent = {"percent": Figure(f"{100 * share:.3f}"), "within": Figure(f"{100 * within:.3f}")}
        yield message(name), said, message(CheckLine.PER_CENT, **percent)
    skew, within = measured.scale.skew, measured.within.skew
    role = CheckLine.LEANS_LEFT if skew < 0 else CheckLine.LEANS_RIGHT
    sizes = {"value": Figure(f"{_LENGTH * abs(skew):.2f}"), "within": Figure(f"{_LENGTH * within:.2f}")}
    yield message(CheckLine.NAME_SQUARE), message(role, length=say_number(_LENGTH), **sizes), ""


def _remarks(measured: Measured) -> Iterator[str]:
    worst = max(reading.within for reading in measured.readings if reading)
    yield message(CheckLine.READ_WITHIN, within=say_number(worst, 2))
    if measured.made_for:
        yield message(CheckLine.COMPOSED, printer=measured.made_for.name)
    if measured.off > LIKELY_SETTING:
        yield message(CheckLine.SETTING, percent=Figure(f"{100 * measured.off:.1f}"))
        for mistake in measured.mistakes[:1]:
            yield message(CheckLine.SETTING_MAY, mistake=message(mistake.what))
    yield from _pointless(measured)
    if measured.stored and measured.printer:
        yield message(CheckLine.STORED, file=shown_path(measured.stored), name=measured.printer.name)
    else:
        yield message(CheckLine.NOT_STORED)


_PARTS: tuple[Role, ...] = (CheckLine.OF_ACROSS, CheckLine.OF_UP, CheckLine.OF_SQUARE)


def _pointless(measured: Measured) -> Iterator[str]:
    """Which corrections are smaller than what the measurement leaves open."""
    if all(measured.pointless):
        yield message(CheckLine.ALL_POINTLESS)
        return
    for part, pointless in zip(_PARTS, measured.pointless, strict=True):
        if pointless:
            yield message(CheckLine.POINTLESS, what=message(part))


def check_values(measured: Measured) -> dict[str, object]:
    """The result for programs: shares of 1, lengths in mm."""
    readings = zip(OPTIONS, measured.spans.made(Scale()), measured.readings, measured.fit.rests, strict=True)
    return {
        **measured.scale._asdict(),
        "within": measured.within._asdict(),
        "pointless": dict(zip(("x", "y", "skew"), measured.pointless, strict=True)),
        "seen": {**measured.fit.scale._asdict(), "within": measured.fit.within._asdict()},
        "spans": [
            {
                "option": option,
                "drawn_mm": drawn,
                "measured_mm": reading.mm if reading else None,
                "within_mm": reading.within if reading else None,
                "rest_mm": rest,
            }
            for option, drawn, reading, rest in readings
        ],
        "paper": measured.paper.words,
        "made_for": measured.made_for.name if measured.made_for else None,
        "print_setting_likely": measured.off > LIKELY_SETTING,
        "mistakes": [message(mistake.what) for mistake in measured.mistakes],
        "stored": str(measured.stored) if measured.stored else None,
    }
