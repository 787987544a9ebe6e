"""A printer check that was measured: from its spans to the printer, which may be stored."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from math import hypot
from pathlib import Path

from layout.drawing.correction import Scale
from layout.drawing.print_mistakes import Mistake, likely_mistakes
from layout.drawing.printer import MOST, Printer
from layout.drawing.spans import Fit, Reading, Spans, after, fit, spans_of, within_after
from layout.kit.paper_size import PaperSize
from layout.messages.catalogue import Figure, Message
from layout.values.errors import shown
from layout.values.numerals import say_number
from templates_gen.inputs import printer_store
from templates_gen.inputs.printer_check_options import paper_size
from templates_gen.inputs.span_readings import read_span, read_within
from templates_gen.messages.errors import OptionError
from templates_gen.messages.roles.printer_check import SpanNeed

OPTIONS = "--x", "--y", "--across", "--across-2"
"""The option of each span, in the order of `Spans.made`."""

LETTERS = "AB", "CD", "EF", "GH"

_CONTRADICTION = 2.0  # readings off by twice what each may be off, all in all, are slips


@dataclass(frozen=True, slots=True)
class CheckOptions:
    """The options as they were given, lengths still as text; the paper and the printer that the sheet was made for."""

    x: str | None = None
    y: str | None = None
    across: str | None = None
    across_2: str | None = None
    within: str | None = None
    paper: str = "common"
    printer: str | None = None
    store: str | None = None

    @property
    def spans(self) -> tuple[str | None, ...]:
        """The four spans."""
        return self.x, self.y, self.across, self.across_2

    @property
    def measured(self) -> bool:
        """Whether anything is said of a measurement."""
        return any(each is not None for each in (*self.spans, self.within, self.store))


@dataclass(frozen=True, slots=True)
class Measured:
    """A measured check: on which `paper`, its spans and readings, what they show, and the scale of the printer itself.

    They are the same, but for a sheet that was `made_for` a printer: that shows what its correction left over. `stored`
    is the file that holds the printer, if it was stored.
    """

    paper: PaperSize
    spans: Spans
    readings: tuple[Reading | None, ...]
    fit: Fit
    scale: Scale
    within: Scale
    made_for: Printer | None = None
    printer: Printer | None = None
    stored: Path | None = None

    @property
    def mistakes(self) -> tuple[Mistake, ...]:
        """Known mistakes that make such a sheet."""
        return likely_mistakes(self.fit.scale, self.fit.within)

    @property
    def off(self) -> float:
        """The largest share by which the printer is off."""
        return self.scale.off

    @property
    def pointless(self) -> tuple[bool, bool, bool]:
        """Whether correcting x, y and the skew is pointless: each is off by no more than it may be off."""
        x, y, skew = self.scale
        shares = zip((x - 1, y - 1, skew), self.within, strict=True)
        across, up, lean = (abs(share) <= unsure for share, unsure in shares)
        return across, up, lean


def measured_check(asked: CheckOptions) -> Measured:
    """What the spans say, stored under a name if that is asked for.

    Raises OptionError for what is missing, cannot be read, or is further off than 3 %, with the mistake that makes
    such a sheet; FaultError where the printer cannot be stored.
    """
    paper = paper_size(asked.paper)
    spans = spans_of(*paper.sides_mm)
    made_for = printer_store.load(asked.printer) if asked.printer is not None else None
    readings = _readings(asked, spans)
    _check_sides(spans, readings)
    found = fit(spans, readings)
    _check_diagonals(spans, readings, found)
    scale, within = found.scale, found.within
    if made_for:
        scale, within = after(made_for.scale, found.scale), within_after(made_for.scale, found.within)
        if scale.off > MOST:
            got = Figure(f"{100 * scale.off:.2f} %")
            raise OptionError("--printer", SpanNeed.NEAR_TOGETHER, got, '--printer "office"', most=_MOST)
    measured = Measured(paper, spans, readings, found, scale, within, made_for)
    return measured if asked.store is None else _stored(measured, asked.store)


_MOST = round(100 * MOST)


def _stored(measured: Measured, name: str) -> Measured:
    day = date.today().isoformat()
    printer = Printer(name, measured.scale, measured.within, measured.paper.words, day)
    place = printer_store.store(printer)
    return replace(measured, printer=printer, stored=place)


def _lengths(spans: Spans) -> tuple[float, float, float, float]:
    return spans.made(Scale())


def _example(spans: Spans, k: int) -> str:
    """An option with a reading that a good printer gives."""
    return f'{OPTIONS[k]} "{say_number(_lengths(spans)[k] - 0.1, 1)} mm"'


def _readings(asked: CheckOptions, spans: Spans) -> tuple[Reading | None, ...]:
    within = None if asked.within is None else read_within(asked.within)
    for k in (0, 1):
        if asked.spans[k] is None:
            one, other = tuple(LETTERS[k])
            raise OptionError(OPTIONS[k], SpanNeed.MISSING, shown(None), _example(spans, k), one=one, other=other)
    if asked.across is None and asked.across_2 is None:
        raise OptionError(OPTIONS[2], SpanNeed.DIAGONAL, shown(None), _example(spans, 2))
    return tuple(
        None if text is None else read_span(text, OPTIONS[k], _example(spans, k), within)
        for k, text in enumerate(asked.spans)
    )


def _check_sides(spans: Spans, readings: Sequence[Reading | None]) -> None:
    """OptionError for a span across or up that no printer makes so long or short."""
    x, y = (reading.mm / drawn for reading, drawn in zip(readings[:2], spans[:2], strict=True) if reading)
    sure = Scale(*(reading.within / drawn for reading, drawn in zip(readings[:2], spans[:2], strict=True) if reading))
    for k, ratio in enumerate((x, y)):
        if abs(ratio - 1) > MOST:
            named = likely_mistakes(Scale(x, y), sure)
            part = {"length": say_number(ratio * spans[k], 2), "percent": Figure(f"{100 * ratio:.2f}")}
            got = Message(SpanNeed.PART, part)
            values = {"most": _MOST, "length": say_number(spans[k])}
            if named:
                values["mistake"] = Message(named[0].what)
            role = SpanNeed.NEAR_MISTAKE if named else SpanNeed.NEAR
            raise OptionError(OPTIONS[k], role, got, _example(spans, k), **values)


def _check_diagonals(spans: Spans, readings: Sequence[Reading | None], found: Fit) -> None:
    """OptionError for a diagonal that does not go with the sides, or with the other diagonal."""
    x, y = (each.mm / drawn for each, drawn in zip(readings[:2], spans[:2], strict=True) if each)
    square = hypot(x * spans.wide, y * spans.high)
    if abs(found.scale.skew) <= MOST and found.contradiction <= _CONTRADICTION:
        return
    diagonals = [(abs(each.mm - square), k) for k, each in enumerate(readings) if each and k > 1]
    k = max(diagonals)[1]
    reading = readings[k]
    got = Message(SpanNeed.PART, _part(reading, _lengths(spans)[k]))
    raise OptionError(OPTIONS[k], SpanNeed.AGREES, got, _example(spans, k), length=Figure(f"{square:.1f}"))


def _part(reading: Reading | None, drawn: float) -> dict[str, object]:
    mm = reading.mm if reading else 0.0
    return {"length": say_number(mm, 2), "percent": Figure(f"{100 * mm / drawn:.2f}")}
