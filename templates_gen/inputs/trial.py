"""What was measured on a trial cut: read from the command's options, and put into a stock file."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path

from layout.cutting.stock.measured_kerf import MeasuredKerf, ease_of, kerf_of, read_caliper
from layout.cutting.stock.stock import Stock
from layout.messages.roles import Entry
from layout.values.errors import FieldError, FieldErrors
from layout.values.units import say_number
from templates_gen.inputs.stock_store import kept
from templates_gen.messages.errors import OptionError
from templates_gen.messages.roles.inputs import TrialNeed

_EXAMPLE = "--hole 20.14 --part 19.76"
_OPTIONS = {
    "cutting.ease": ("--slot", "--slot 0.30"),
    "trial.slot": ("--slot", "--slot 0.30"),
    "trial.kerf": ("--drawn-for", "--drawn-for 0.20"),
}
_PLACES = 9  # decimals of what is kept, far finer than any kerf


@dataclass(frozen=True, slots=True)
class TrialOptions:
    """The options as they were given, sizes still as text."""

    holes: Sequence[str] = ()
    parts: Sequence[str] = ()
    holes_y: Sequence[str] = ()
    parts_y: Sequence[str] = ()
    within: str | None = None
    slot: str | None = None
    drawn_for: str | None = None


@dataclass(frozen=True, slots=True)
class Trial:
    """The kerf along x and along y (one and the same where y was not measured apart) and the ease of a slot, in mm.

    `drawn_for` is the kerf that the trial was drawn for, `slot` what is engraved at the slot that held the yarn.
    """

    kerf_x: MeasuredKerf | None
    kerf_y: MeasuredKerf | None
    ease: Fraction | None
    drawn_for: Fraction | None = None
    slot: Fraction | None = None

    @property
    def entries(self) -> Mapping[str, str | None]:
        """What a stock file's table [cutting] says of it."""
        said: dict[str, str | None] = {}
        if self.kerf_x and self.kerf_y:
            apart = self.kerf_x is not self.kerf_y
            said["kerf"] = None if apart else _mm(self.kerf_x.mm)
            said["kerf_x"] = _mm(self.kerf_x.mm) if apart else None
            said["kerf_y"] = _mm(self.kerf_y.mm) if apart else None
            said["kerf_uncertainty"] = _mm(max(self.kerf_x.uncertainty, self.kerf_y.uncertainty))
        if self.ease is not None:
            said["ease"] = _mm(self.ease)
        return said

    @property
    def kept(self) -> Mapping[str, str | None]:
        """What a stock file's table [trial] keeps, so that the same trial measured again says the same."""
        found = {"kerf": self.drawn_for, "slot": self.slot}
        return {key: _exact(value) for key, value in found.items() if value is not None}


def measured(asked: TrialOptions, stock: Stock | None) -> Trial:
    """What the options say of a trial that was drawn for the kerf that `drawn_for` says, else for that of `stock`.

    A kerf that is measured after the ease makes the ease anew, from the slot that is kept with the stock; so no order
    of measuring matters. Raises FieldError naming the option.
    """
    within = _within(asked.within)
    kerf_x = _kerf(asked.holes, asked.parts, ("--hole", "--part"), within)
    kerf_y = _kerf(asked.holes_y, asked.parts_y, ("--hole-y", "--part-y"), within) or kerf_x
    if kerf_y and not kerf_x:
        raise OptionError("--hole", TrialNeed.ALONG_X, TrialNeed.NOTHING, _EXAMPLE)
    if not kerf_x and asked.slot is None:
        raise OptionError("--hole", TrialNeed.MEASURED, TrialNeed.NOTHING, _EXAMPLE)
    drawn, slot = _drawn_for(asked, stock), _slot(asked, stock)
    return Trial(kerf_x, kerf_y, _ease(slot, kerf_x, drawn, stock), drawn, slot)


def _drawn_for(asked: TrialOptions, stock: Stock | None) -> Fraction | None:
    """The kerf that the trial was drawn for, as it is kept."""
    if asked.drawn_for is not None:
        return read_caliper(asked.drawn_for, "--drawn-for", example="0.20").mm
    return None if stock is None else _kept_as(stock.trial_drawn_for)


def _slot(asked: TrialOptions, stock: Stock | None) -> Fraction | None:
    if asked.slot is not None:
        return read_caliper(asked.slot, "--slot", example="0.30").mm
    return None if stock is None or stock.trial_slot is None else _kept_as(stock.trial_slot)


def _kerf(
    holes: Sequence[str], parts: Sequence[str], names: tuple[str, str], within: Fraction | None
) -> MeasuredKerf | None:
    if not holes and not parts:
        return None
    hole, part = names
    one = [read_caliper(text, hole, within) for text in holes]
    other = [read_caliper(text, part, within, "19.76") for text in parts]
    return kerf_of(one, other, names, stated=within is not None)


def _within(text: str | None) -> Fraction | None:
    return None if text is None else read_caliper(text, "--within", example="0.02").mm


def _ease(
    slot: Fraction | None, kerf: MeasuredKerf | None, drawn: Fraction | None, stock: Stock | None
) -> Fraction | None:
    """The ease that the slot had, whatever kerf it was drawn for; the kerf it was cut with counts as it is stored."""
    if slot is None:
        return None
    cut = Fraction(say_number(kerf.mm)) if kerf else None if stock is None else _kept_as(stock.kerf_x)
    if drawn is None or cut is None:
        raise OptionError("--slot", TrialNeed.TO_KNOW, TrialNeed.NEITHER, "--slot 0.30 --stock birch.toml")
    return ease_of(slot, drawn, cut)


def _mm(value: Fraction) -> str:
    return f"{say_number(value)} mm"


def _exact(value: Fraction) -> str:
    return f"{say_number(value, _PLACES)} mm"


def _kept_as(mm: float) -> Fraction:
    """A number of a stock as it is kept in its file, so that it is the same before and after."""
    return Fraction(say_number(Fraction(repr(mm)), _PLACES))


def take(asked: TrialOptions, path: Path | None) -> Trial:
    """The trial, stored in the stock file at `path` if there is one; what is refused leaves the file as it was."""
    if path is None:
        return measured(asked, None)
    with kept(path) as (stock, put):
        trial = measured(asked, stock)
        try:
            put({"cutting": trial.entries, "trial": trial.kept})
        except FieldErrors as errors:
            raise FieldErrors(map(_as_option, errors.errors)) from None
    return trial


def _as_option(error: FieldError) -> FieldError:
    """What a stock cannot keep, as it concerns a person who gave options."""
    option, example = _OPTIONS.get(error.field, (error.field, error.example))
    if error.field == "cutting.ease" and error.needed.role == Entry.LENGTH_BETWEEN:
        return FieldError(option, Entry.EASE_BETWEEN, error.got, example, **error.needed.values)
    return error.at(option, example)
