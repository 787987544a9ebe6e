"""Does this warp go with this weft at this pitch? A first guess of the sett, and what a teacher would say of the pair.

All of it goes by soft thicknesses, as yarns lie unpressed. That the pitch is warp and weft together, since a weft as
thick as the gap fills it, is the American Tapestry Alliance's (K. Todd-Hooker, "Choosing warp and weft"). The limits
are our own choice, between what is usual (E. Buckley 2015: 12/12 cotton at 10 ends an inch) and what is called far too
thin (R. Mezoff 2018: 12/6 cotton at 6 ends an inch under 900 yd/lb). The wrap of both yarns always wins over a guess.
"""

from __future__ import annotations

from fractions import Fraction
from typing import NamedTuple

from layout.messages.catalogue import Role
from layout.messages.english import ENGLISH
from layout.messages.roles import Pair, Unit, YarnNumber
from layout.values.limits import Number, above_zero, plain
from layout.values.numerals import say_fixed
from layout.values.quantity import Origin, Quantity, assumed, combine
from layout.yarns.diameter import INCH


class Limits(NamedTuple):
    """Between `low` and `high` nothing is said; a note down to `lowest` and up to `highest`; beyond, a warning."""

    lowest: float
    low: float
    high: float
    highest: float


OF_PITCH = Limits(0.12, 0.25, 0.67, 0.75)
"""The warp, as a share of the pitch."""

OF_GAP = Limits(0.40, 0.55, 1.40, 1.60)
"""The weft, as a share of the gap between the ends."""

WARP_ALONE = (0.27, 0.37, 0.50)
"""The least, likely and most of the pitch that the warp takes at usual setts, where the weft is not known.

Our own choice, from pitches of 0.19, 0.14 and 0.10 mm for a cotton cord of 1 tex, times the root of its tex: between
12/12 at 10 ends an inch (E. Buckley 2015) and 12/6 at 8 (common teaching, from memory).
"""

_PER_CM = tuple(Fraction(text) / 10 for text in ("2", "2.5", "3", "4", "5", "6"))
_PER_INCH = tuple(Fraction(number) / INCH for number in (4, 5, 6, 8, 10, 12))
_FINE = (Fraction(14) / INCH, Fraction(16) / INCH)


class Said(NamedTuple):
    """What there is to say of a pair: notes explain, warnings ask for care."""

    notes: tuple[str, ...]
    warnings: tuple[str, ...]

    def __add__(self, other: Said) -> Said:  # type: ignore[override]
        return Said(self.notes + other.notes, self.warnings + other.warnings)


class FirstGuess(NamedTuple):
    """A sett in ends per mm, always assumed, and what to wrap `next` to know it better."""

    per_mm: Quantity
    next: Role


def first_guess(warp: Quantity, weft: Quantity | None) -> FirstGuess:
    """A first guess of the sett from the soft thicknesses in mm of warp and weft: 1 / (warp + weft).

    Without a weft, from the share of the pitch that a warp takes at usual setts (`WARP_ALONE`).
    """
    if weft is None:
        least, likely, most = WARP_ALONE
        share = assumed(likely, ENGLISH.say(Pair.WARP_ALONE), least, most)
        reason = ENGLISH.say(Pair.WARP_SHARE, warp=_mm(warp))
        return FirstGuess(combine(lambda part, thick: part / thick, reason, share, warp, falling=(1,)), Pair.NEXT_WEFT)
    doubt = assumed(1.0, ENGLISH.say(Pair.FIRST_GUESS))
    reason = ENGLISH.say(Pair.SUM, warp=_mm(warp), weft=_mm(weft))
    sett = combine(lambda one, other, as_it_is: as_it_is / (one + other), reason, warp, weft, doubt, falling=(0, 1))
    return FirstGuess(sett, _next(warp, weft))


def _next(warp: Quantity, weft: Quantity) -> Role:
    """Which wrap would narrow the guess most: of the yarn that is less well known, or of both once each is wrapped."""
    unknown = [each for each in (warp, weft) if each.origin is not Origin.MEASURED]
    if not unknown:
        return Pair.NEXT_BOTH
    widest = max(unknown, key=lambda each: each.high - each.low)
    return Pair.NEXT_WARP if widest is warp else Pair.NEXT_WEFT


def pairing_said(pitch_mm: Number, warp: Quantity, weft: Quantity | None) -> Said:
    """What a teacher would say of a warp and a weft of these soft thicknesses in mm at a pitch; may be nothing.

    Judged by the likely values: where one of them is beyond a limit, so is that end of its range.
    """
    pitch = float(above_zero(pitch_mm, "pitch", YarnNumber.PITCH, "pitch = 4"))
    said = _said(warp, warp.value / pitch, OF_PITCH, _OF_PITCH)
    if weft is None:
        return said
    gap = pitch - warp.value
    if gap <= 0:
        return said + Said((), (ENGLISH.say(Pair.NO_GAP, thick=_mm(weft)),))
    return said + _said(weft, weft.value / gap, OF_GAP, _OF_GAP)


_OF_PITCH = (Pair.WARP_THIN, Pair.WARP_THIN_NOTE, Pair.WARP_THICK_NOTE, Pair.WARP_THICK)
_OF_GAP = (Pair.WEFT_THIN, Pair.WEFT_THIN_NOTE, Pair.WEFT_THICK_NOTE, Pair.WEFT_THICK)


def _said(yarn: Quantity, part: float, limits: Limits, roles: tuple[Role, Role, Role, Role]) -> Said:
    if limits.low <= part <= limits.high:
        return Said((), ())
    warned = not limits.lowest <= part <= limits.highest
    role = roles[0 if warned else 1] if part < limits.low else roles[3 if warned else 2]
    said = (ENGLISH.say(role, thick=_mm(yarn), part=ENGLISH.say(Unit.PER_CENT, number=say_fixed(part * 100, 0))),)
    return Said((), said) if warned else Said(said, ())


def _mm(yarn: Quantity) -> str:
    return plain(round(yarn.value, 2))


def ladder_warnings(per_mm: Fraction) -> tuple[str, ...]:
    """One sentence if a sett is none of the usual ones, naming the nearest; else nothing.

    Usual are 14 to 16 ends an inch for fine tapestry (G. Christie), 2, 2.5, 3, 4, 5, 6 per cm, and 4, 5, 6,
    8, 10, 12 an inch (common practice, no source).
    """
    sett = above_zero(per_mm, "sett", YarnNumber.SETT, "sett = 0.3")
    if sett in (*_PER_CM, *_PER_INCH) or _FINE[0] <= sett <= _FINE[1]:
        return ()
    nearest = min((*_PER_CM, *_PER_INCH, *_FINE), key=lambda usual: abs(usual - sett))
    values = {"inch": plain(sett * INCH), "cm": plain(sett * 10)}
    if nearest in _PER_CM:
        return (ENGLISH.say(Pair.LADDER_CM, **values, usual=plain(nearest * 10)),)
    return (ENGLISH.say(Pair.LADDER_INCH, **values, usual=plain(nearest * INCH)),)
