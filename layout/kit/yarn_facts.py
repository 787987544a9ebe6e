"""What a kit lets us know of its two yarns: how heavy, and how thick of both kinds."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from layout.messages.catalogue import Role
from layout.messages.english import ENGLISH
from layout.messages.roles import Reason
from layout.values.quantity import Quantity, assumed, measured
from layout.values.units import Length
from layout.yardage.given import AmountsGiven, WeftGiven
from layout.yarns.diameter import Diameter, bunched, compressed, specific_volume
from layout.yarns.yarn import Bundle, Strand, Yarn, bundle

_NO_THICKNESS = assumed(0.0, ENGLISH.say(Reason.NO_THICKNESS))

Pair = tuple[Diameter, Diameter]


@dataclass(frozen=True, slots=True)
class YarnFacts:
    """Warp yarn and weft bundle, and both diameters of each; None where the kit does not say enough."""

    warp: Yarn | None
    weft: Bundle | None
    warp_soft: Diameter | None
    warp_pressed: Diameter | None
    weft_soft: Diameter | None
    weft_pressed: Diameter | None

    @property
    def warp_thickness(self) -> tuple[Diameter, ...]:
        """Both thicknesses of an end, those that are known."""
        return tuple(each for each in (self.warp_soft, self.warp_pressed) if each)

    @property
    def weft_thickness(self) -> tuple[Diameter, ...]:
        """Both thicknesses of the weft, those that are known."""
        return tuple(each for each in (self.weft_soft, self.weft_pressed) if each)

    @property
    def thread(self) -> Quantity:
        """The thickness in mm of an end on its way round the frame; none, as an assumption, where it is not known."""
        thick = self.warp_pressed or self.warp_soft
        return thick.figure if thick else _NO_THICKNESS

    @property
    def lying(self) -> Diameter | None:
        """The thickness of an end as it lies on pegs: soft if it was wrapped, else compressed; None if not known."""
        return self.warp_soft or self.warp_pressed

    @property
    def soft(self) -> Pair | None:
        """Warp and weft as they lie soft, if both were wrapped."""
        return (self.warp_soft, self.weft_soft) if self.warp_soft and self.weft_soft else None

    @property
    def pressed(self) -> Pair | None:
        """Warp and weft as they are compressed in cloth, if weight and fibre of both are known."""
        return (self.warp_pressed, self.weft_pressed) if self.warp_pressed and self.weft_pressed else None


def yarn_facts(given: AmountsGiven, threads: int = 1) -> YarnFacts:
    """What `given` lets us know; the bundle's own wrap goes before the wraps of its strands.

    An end of the warp is as thick as its `threads` together.
    """
    weft, warp = given.weft, given.warp
    soft = weft.wrap.diameter if weft.wrap else _soft(weft)
    lying, pressed = _end(warp.soft, threads), _end(warp.compressed, threads)
    return YarnFacts(warp.yarn(), _bundle(weft), lying, pressed, soft, _pressed(weft))


def _end(thread: Diameter | None, threads: int) -> Diameter | None:
    return thread if thread is None or threads == 1 else bunched([thread] * threads)


def _soft(weft: WeftGiven) -> Diameter | None:
    """The bundle from wraps of every strand."""
    each = [strand.soft for strand in weft.strands for _ in range(strand.number)]
    whole = [diameter for diameter in each if diameter]
    if not whole or len(whole) < len(each):
        return None
    return whole[0] if len(whole) == 1 else bunched(whole)


def _bundle(weft: WeftGiven) -> Bundle | None:
    """The bundle by weight, if that of every strand is known."""
    strands = [Strand(yarn, each.number, each.colour) for each in weft.strands if (yarn := each.yarn())]
    return bundle(strands) if strands and len(strands) == len(weft.strands) else None


def _pressed(weft: WeftGiven) -> Diameter | None:
    """The bundle compressed: one round thread of all its weight, or of the areas of unlike fibres."""
    fibres, together = {strand.fibre for strand in weft.strands}, _bundle(weft)
    if together is None or None in fibres:
        return None
    if len(fibres) == 1 and (fibre := next(iter(fibres))):
        return compressed(together, specific_volume(fibre))
    every = (strand.compressed for strand in weft.strands for _ in range(strand.number))
    return bunched([diameter for diameter in every if diameter])


def stated(value: Length | Fraction | None, usual: Quantity, said: Role) -> Quantity:
    """What the kit states (mm, or a share) as a measured quantity; `usual`, which is assumed, where it does not."""
    if value is None:
        return usual
    return measured(float(value.mm if isinstance(value, Length) else value), ENGLISH.say(said))
