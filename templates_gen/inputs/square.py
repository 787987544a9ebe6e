"""What was measured on a square check: read from the command's options, and put into a stock file."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path
from statistics import fmean

from layout.cutting.stock.measured_kerf import read_caliper
from layout.cutting.stock.measured_scale import BAND, SPAN, MeasuredScale, Size, Spans, misfit, scale_of
from layout.cutting.stock.stock_inputs import MOST_OFF
from layout.drawing.correction import Scale
from layout.drawing.print_mistakes import likely_mistakes
from layout.drawing.printer import LIKELY_SETTING
from layout.messages.roles import PrintMistake
from layout.values.errors import FieldError, FieldErrors
from layout.values.units import say_number
from templates_gen.inputs.stock_store import kept
from templates_gen.messages.errors import OptionError
from templates_gen.messages.language import listed, message
from templates_gen.messages.roles.inputs import TrialNeed
from templates_gen.messages.roles.square import SquareNeed

USUAL_WITHIN = Fraction(3, 100)
"""How far off a caliper of 150 mm may be, in mm, where nobody says (ISO 13385-1 leaves it to the maker; 0.03 mm is what
many state, from memory).
"""

_MOST_MISFIT = 3  # times what the readings allow, before the four spans are said not to be of one plate
_PLACES = 3  # decimals of a per cent that are stored
_EXAMPLE = "--x 139.72 --band-x 9.79 --y 139.66 --band-y 9.80 --a 139.75 --b 139.64"
_EXAMPLES = dict(zip(_EXAMPLE.split()[::2], _EXAMPLE.split()[1::2], strict=True))
_IMPORT = (PrintMistake.PIXELS, PrintMistake.UNIT)  # of the known mistakes those that an import makes


@dataclass(frozen=True, slots=True)
class SquareOptions:
    """The options as they were given, sizes still as text."""

    x: Sequence[str] = ()
    y: Sequence[str] = ()
    a: Sequence[str] = ()
    b: Sequence[str] = ()
    band_x: Sequence[str] = ()
    band_y: Sequence[str] = ()
    within: str | None = None


@dataclass(frozen=True, slots=True)
class Square:
    """The scale that a square check tells, and what else is to be said of it."""

    measured: MeasuredScale
    causes: tuple[PrintMistake, ...] = ()

    @property
    def likely_import(self) -> bool:
        """Whether it is so far off that the way the file was opened is the likelier cause."""
        return max(abs(self.measured.off.x), abs(self.measured.off.y)) > LIKELY_SETTING

    @property
    def leans(self) -> bool:
        """Whether it is so far off square that the machine should be set square first."""
        return abs(self.measured.off.skew) > LIKELY_SETTING

    @property
    def entries(self) -> Mapping[str, str | None]:
        """What a stock file's table [scale] says of it: nothing where nothing is known to be off."""
        off, keys = (*self.measured.off, self.measured.uncertainty), ("x", "y", "skew", "uncertainty")
        return {key: per_cent(share) if self.measured.known else None for key, share in zip(keys, off, strict=True)}


def per_cent(share: float) -> str:
    """A share as it is stored and said."""
    return f"{say_number(100 * share, _PLACES)} %"


def measured(asked: SquareOptions) -> Square:
    """What the options say. Raises FieldError naming the option."""
    within = None if asked.within is None else read_caliper(asked.within, "--within", example="0.02").mm
    spans = Spans(*(_size(getattr(asked, key), f"--{key.replace('_', '-')}", within) for key in Spans._fields))
    for span, band, option in ((spans.x, spans.band_x, "--band-x"), (spans.y, spans.band_y, "--band-y")):
        if band.mm >= span.mm / 2:
            got = message(SquareNeed.GOT_BAND, band=say_number(band.mm), span=say_number(span.mm))
            raise OptionError(option, SquareNeed.BAND, got, _EXAMPLE, span=SPAN, band=BAND)
    _check_fit(spans)
    found = scale_of(spans)
    causes = tuple(each.what for each in likely_mistakes(found.scale, found.within) if each.what in _IMPORT)
    _check_off(found, causes)
    return Square(found, causes)


def _size(texts: Sequence[str], option: str, within: Fraction | None) -> Size:
    """The mean of what was read, and how far off: what the caliper may be, or half of the spread where that is more."""
    if not texts:
        raise OptionError(option, SquareNeed.MEASURED, TrialNeed.NOTHING, _EXAMPLE)
    readings = [read_caliper(text, option, within, _EXAMPLES[option]) for text in texts]
    sizes = [float(each.mm) for each in readings]
    least = float(within if within is not None else max(USUAL_WITHIN, *(each.within for each in readings)))
    return Size(fmean(sizes), max(least, (max(sizes) - min(sizes)) / 2))


def _check_fit(spans: Spans) -> None:
    """FieldError where the diagonals and the sides cannot be of one plate."""
    off = misfit(spans)
    if abs(off.mm) > _MOST_MISFIT * off.within:
        sides, diagonals = spans.x.mm + spans.y.mm, spans.a.mm + spans.b.mm
        got = message(SquareNeed.GOT_FIT, diagonals=say_number(diagonals), sides=say_number(sides))
        raise OptionError("--a", SquareNeed.FIT, got, _EXAMPLE)


def _check_off(found: MeasuredScale, causes: Sequence[PrintMistake]) -> None:
    """FieldError where no cutter is so far off."""
    off = dict(zip(("--x", "--y", "--a"), found.off, strict=True))
    option = max(off, key=lambda each: abs(off[each]))
    if abs(off[option]) <= MOST_OFF / 100:
        return
    share = per_cent(abs(off[option]))
    if option == "--a":
        raise OptionError(option, SquareNeed.SQUARE, message(SquareNeed.GOT_LEAN, share=share), _EXAMPLE, most=MOST_OFF)
    got = message(SquareNeed.GOT_LONG if off[option] > 0 else SquareNeed.GOT_SHORT, share=share)
    if causes:
        got = message(SquareNeed.GOT_CAUSED, off=got, causes=listed(list(map(message, causes))))
    raise OptionError(option, SquareNeed.WITHIN, got, _EXAMPLE, span=SPAN, most=MOST_OFF)


def take(asked: SquareOptions, path: Path | None) -> tuple[Square, Scale | None]:
    """What was measured, stored in the stock file at `path` if there is one, and the scale that stood there before.

    What is refused leaves the file as it was.
    """
    square = measured(asked)
    if path is None:
        return square, None
    with kept(path) as (stock, put):
        try:
            put({"scale": square.entries})
        except FieldErrors as errors:
            raise FieldErrors(map(_as_option, errors.errors)) from None
    return square, stock.scale


def _as_option(error: FieldError) -> FieldError:
    """What a stock cannot keep, as it concerns a person who gave options."""
    return error.at("--within", "--within 0.03") if error.field == "scale.uncertainty" else error
