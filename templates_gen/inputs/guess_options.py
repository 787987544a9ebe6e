"""The options that tell two yarns apart, for a first guess of their sett; refusals name the option."""

from __future__ import annotations

from collections.abc import Mapping
from functools import partial
from typing import NamedTuple

from layout.kit.fields import read_field
from layout.kit.inputs import BY_KEY
from layout.kit.yarn_facts import apart
from layout.messages.roles import YarnNumber
from layout.values.errors import FieldError
from layout.values.limits import above_zero, whole
from layout.values.units import Length, read_length
from layout.yarns.label_text import FIBRES, read_label
from layout.yarns.pairing import FirstGuess, first_guess
from layout.yarns.thickness import UNSTATED, WARP_UNSTATED, Spun, Thickness, Wrapped, bunched, known, of_label, of_wrap
from layout.yarns.yarn import MOST_STRANDS
from templates_gen.inputs.options import whole_or_text
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.errors import OptionError
from templates_gen.messages.roles.inputs import GuessOption, YarnOption

_EXAMPLE = '--warp "12 Ne x 6" --weft "50 g in 160 m" --strands 2'
_OVER = '--wraps-over "1 in"'


class Yarns(NamedTuple):
    """Warp and weft as options say them; None for one of which they say nothing."""

    warp: Thickness | None
    weft: Thickness | None
    imperial: bool

    @property
    def guess(self) -> FirstGuess:
        """A first guess of the sett; OptionError where the warp is not known."""
        if self.warp is None:
            raise OptionError("--warp", GuessOption.WARP, YarnOption.NOTHING, _EXAMPLE)
        return first_guess(self.warp.soft, self.weft.soft if self.weft else None)


NOTHING_SAID = Yarns(None, None, imperial=False)


def yarns_said(options: Mapping[str, str | None]) -> Yarns | None:
    """What the options say of both yarns; None where they say nothing."""
    given = {name: value for name, value in options.items() if value is not None}
    if not given:
        return None
    over = _window(given.get("wraps_over", "1 in"))
    warp = _yarn("warp", given, over, WARP_UNSTATED, 1)
    weft = _yarn("weft", given, over, UNSTATED, _strands(given))
    return Yarns(warp, weft, over.imperial)


def _yarn(name: str, given: Mapping[str, str], over: Length, spun: Spun, strands: int) -> Thickness | None:
    """One yarn by its label (`strands` of it together) and its wraps."""
    label = wrap = None
    if name in given:
        read = read_label(given[name], field=f"--{name}")
        label = bunched([of_label(float(read.yarn.tex), spun, FIBRES.get(read.system))] * strands)
    if (turns := given.get(f"{name}_wraps")) is not None:
        count = _whole(f"--{name}-wraps", turns, YarnNumber.TURNS, f"--{name}-wraps 12", 10_000)
        wrap = of_wrap(count, float(over.mm), _how(given.get("wrapped")))
    return known(label, wrap, partial(apart, f"--{name}-wraps"))


def _strands(given: Mapping[str, str]) -> int:
    if "strands" not in given:
        return 1
    if "weft" not in given:
        raise OptionError("--strands", GuessOption.STRANDS, given["strands"], _EXAMPLE)
    return _whole("--strands", given["strands"], YarnNumber.STRANDS, "--strands 2", MOST_STRANDS)


def _whole(option: str, text: str, what: YarnNumber, example: str, most: int) -> int:
    return whole(whole_or_text(text), option, what, example, most=most)  # type: ignore[arg-type]  # it refuses text


def _how(text: str | None) -> Wrapped | None:
    if text is None:
        return None
    try:
        return Wrapped(read_field(BY_KEY["warp.wrap.how"], text, "--wrapped", metrics()))
    except FieldError as error:
        raise OptionError("--wrapped", error.needed, error.got, '--wrapped "pushed together"') from None


def _window(text: str) -> Length:
    try:
        window = read_length(text)
    except FieldError as error:
        raise OptionError("--wraps-over", error.needed, error.got, _OVER) from None
    above_zero(window.mm, "--wraps-over", YarnNumber.WINDOW, _OVER)
    return window
