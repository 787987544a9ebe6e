"""Yarns by weight: what one is, how threads fold together, and what a weft bundle of several strands weighs."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from types import MappingProxyType

from layout.messages.catalogue import Message
from layout.messages.english import ENGLISH
from layout.messages.roles import YarnNeed, YarnNumber, YarnReason
from layout.values.errors import FieldError, shown
from layout.values.limits import Number, above_zero, plain, whole
from layout.values.quantity import Origin
from layout.yarns.yarn_counts import SYSTEMS, read_count, system

FINEST_TEX, HEAVIEST_TEX = Fraction(1), Fraction(50_000)
"""Our own limits: finer than 1 tex is a single silk filament, heavier than 50 g to the metre is a rope."""

_MOST_PLIES, MOST_STRANDS = 100, 100


@dataclass(frozen=True, slots=True)
class Yarn:
    """A finished yarn: `tex` is the resultant (g in a km, all plies); `origin` and `reason` say how it is known."""

    tex: Fraction
    origin: Origin
    reason: str

    @property
    def grams_per_metre(self) -> Fraction:
        """Exact weight of a metre in grams."""
        return self.tex / 1000

    @property
    def metres_per_gram(self) -> Fraction:
        """Exact length of a gram in metres."""
        return 1000 / self.tex

    def numbers(self) -> Mapping[str, Fraction]:
        """The exact number in every system, by the key of the system; of the yarn as a whole, not of its singles."""
        return MappingProxyType({key: entry.number(self.tex) for key, entry in SYSTEMS.items()})


def yarn_of(count: Number | str, of: str, plies: Number = 1, field: str = "yarn") -> Yarn:
    """The yarn of `plies` singles, each of `count` in the system `of`; the take-up of the folding twist is left out.

    FieldError for text with a stroke ("8/2"), an unknown system, "cut", a density beyond any yarn, and for plies
    beside a number that belongs to the finished yarn (metres in 100 g, yards in a pound).
    """
    of_system = system(of, f"{field}.system")
    number = read_count(count, f"{field}.count")
    folds = whole(plies, f"{field}.plies", YarnNumber.PLIES, "plies = 2", most=_MOST_PLIES)
    if of_system.finished and folds > 1:
        raise FieldError(f"{field}.plies", YarnNeed.PLIES_FINISHED, str(folds), "plies = 1", system=of_system.named)
    values = {"system": of_system.named, "number": plain(number)}
    why = Message(YarnReason.LABEL, values)
    if folds > 1:
        why = Message(YarnReason.LABEL_PLIES, {**values, "plies": folds})
    return _within_limits(of_system.tex(number) * folds, Origin.COMPUTED, why, field)


def yarn_from_ball(grams: Number, metres: Number, field: str = "yarn") -> Yarn:
    """The yarn of a ball that is sold as so many grams and metres."""
    weight = above_zero(grams, f"{field}.grams", YarnNumber.BALL_GRAMS, "grams = 50")
    length = above_zero(metres, f"{field}.metres", YarnNumber.BALL_METRES, "metres = 120")
    why = Message(YarnReason.BALL, {"grams": plain(grams), "metres": plain(metres)})
    return _within_limits(1000 * weight / length, Origin.COMPUTED, why, field)


def yarn_weighed(grams: Number, metres: Number, field: str = "yarn") -> Yarn:
    """The yarn of which a measured length was put on the scales."""
    weight = above_zero(grams, f"{field}.grams", YarnNumber.GRAMS, "grams = 4.5")
    length = above_zero(metres, f"{field}.metres", YarnNumber.METRES, "metres = 10")
    why = Message(YarnReason.WEIGHED, {"grams": plain(grams), "metres": plain(metres)})
    return _within_limits(1000 * weight / length, Origin.MEASURED, why, field)


def folded(yarns: Sequence[Yarn], field: str = "yarn") -> Yarn:
    """Threads folded into one yarn: their tex adds, so counts combine as reciprocals (J. T. Taylor, Cotton Weaving)."""
    if not yarns:
        raise FieldError(field, YarnNeed.THREADS, shown(None), Message(YarnNeed.TWO_THREADS))
    origin = Origin.MEASURED if all(yarn.origin is Origin.MEASURED for yarn in yarns) else Origin.COMPUTED
    why = Message(YarnReason.FOLDED, {"threads": len(yarns)})
    return _within_limits(sum((yarn.tex for yarn in yarns), Fraction(0)), origin, why, field)


@dataclass(frozen=True, slots=True)
class Strand:
    """`number` strands of one yarn in a bundle, of one `colour` (any words)."""

    yarn: Yarn
    number: int = 1
    colour: str = ""


@dataclass(frozen=True, slots=True)
class Bundle:
    """The strands that are woven together as one weft."""

    strands: tuple[Strand, ...]

    @property
    def tex(self) -> Fraction:
        """Grams in a kilometre of the whole bundle, exact."""
        return sum((strand.yarn.tex * strand.number for strand in self.strands), Fraction(0))

    @property
    def number(self) -> int:
        """How many strands lie side by side."""
        return sum(strand.number for strand in self.strands)

    def colours(self) -> dict[str, Fraction]:
        """The share of each colour by weight, in the order of the strands; together exactly 1."""
        whole_tex, shares = self.tex, dict[str, Fraction]()
        for strand in self.strands:
            added = strand.yarn.tex * strand.number / whole_tex
            shares[strand.colour] = shares.get(strand.colour, Fraction(0)) + added
        return shares


def bundle(strands: Sequence[Strand], field: str = "weft") -> Bundle:
    """A weft bundle of at least one strand; FieldError for none, for a number that is not whole, for more than 100."""
    if not strands:
        raise FieldError(f"{field}.strands", YarnNeed.STRANDS, shown(None), Message(YarnNeed.TWO_STRANDS))
    for strand in strands:
        whole(strand.number, f"{field}.strands", YarnNumber.STRANDS, "strands = 2", most=MOST_STRANDS)
    made = Bundle(tuple(strands))
    whole(made.number, f"{field}.strands", YarnNumber.STRANDS_TOGETHER, "strands = 2", most=MOST_STRANDS)
    return made


def _within_limits(tex: Fraction, origin: Origin, why: Message, field: str) -> Yarn:
    if not FINEST_TEX <= tex <= HEAVIEST_TEX:
        values = {"finest": plain(FINEST_TEX), "heaviest": plain(HEAVIEST_TEX), "why": why}
        raise FieldError(field, YarnNeed.TEX, f"{plain(tex)} tex", Message(YarnNeed.USUAL_YARN), **values)
    return Yarn(tex, origin, ENGLISH.sentence(why))
