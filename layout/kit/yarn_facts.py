"""What a kit lets us know of its two yarns: how heavy, and how thick, between a least and a most."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import partial

from layout.messages.catalogue import Role
from layout.messages.english import ENGLISH
from layout.messages.roles import Conflict, Reason
from layout.values.limits import plain
from layout.values.quantity import Quantity, assumed, measured
from layout.values.units import Length
from layout.yardage.given import AmountsGiven, WeftGiven
from layout.yarns.label import Thread, Wrap
from layout.yarns.thickness import (
    OF_CORDS,
    STATED,
    UNSTATED,
    WARP_UNSTATED,
    Make,
    Spun,
    Thickness,
    Wrapped,
    bunched,
    known,
    of_label,
    of_wrap,
)
from layout.yarns.yarn import Bundle, Strand, Yarn, bundle


@dataclass(frozen=True, slots=True)
class YarnFacts:
    """Warp yarn and weft bundle, and how thick an end and the bundle are; None where the kit does not say enough."""

    warp: Yarn | None
    weft: Bundle | None
    warp_thick: Thickness | None
    weft_thick: Thickness | None

    def thread_at(self, pitch_mm: Fraction) -> Quantity:
        """The thickness in mm of an end on its way round the frame.

        Where it is not known, none is the likely value, as an assumption; ends so close are no thicker than the pitch.
        """
        return self.lying or assumed(0.0, ENGLISH.say(Reason.NO_THICKNESS), 0.0, float(pitch_mm))

    @property
    def lying(self) -> Quantity | None:
        """The thickness in mm of an end as it lies in use; None if not known."""
        return self.warp_thick.in_use if self.warp_thick else None


def yarn_facts(given: AmountsGiven, threads: int = 1) -> YarnFacts:
    """What `given` lets us know. An end of the warp is as thick as its `threads` together."""
    warp, strands = given.warp.yarn(), [each.yarn() for each in given.weft.strands]
    thick = _thread("warp", given.warp, warp, _warp_unstated(given.warp.fibre))
    end = bunched([thick] * threads) if thick else None
    return YarnFacts(warp, _bundle(given.weft, strands), end, _weft(given.weft, strands))


def _warp_unstated(fibre: str | None) -> Spun:
    return WARP_UNSTATED if fibre in OF_CORDS else UNSTATED


def _thread(key: str, thread: Thread, yarn: Yarn | None, unstated: Spun) -> Thickness | None:
    """One yarn by its label and its wrap."""
    spun = STATED[Make(thread.make)] if thread.make else unstated
    label = of_label(float(yarn.tex), spun, thread.fibre) if yarn else None
    return _wrapped(key, label, thread.wrap)


def _wrapped(key: str, label: Thickness | None, wrap: Wrap | None) -> Thickness | None:
    found = of_wrap(wrap.turns, float(wrap.window.mm), Wrapped(wrap.how) if wrap.how else None) if wrap else None
    return known(label, found, partial(apart, f"{key}.wrap"))


def apart(key: str, label: Quantity, wrap: Quantity) -> str:
    """What is said of a wrap that the label does not allow."""
    names = {"least": label.low, "most": label.high, "low": wrap.low, "high": wrap.high}
    sizes = {name: plain(round(size, 2)) for name, size in names.items()}
    return ENGLISH.say(Conflict.WRAP_LABEL, wrap=key, **sizes)


def _weft(weft: WeftGiven, yarns: Sequence[Yarn | None]) -> Thickness | None:
    """The bundle by all its strands, and by its own wrap."""
    each: list[Thickness | None] = []
    for place, (strand, yarn) in enumerate(zip(weft.strands, yarns, strict=True), 1):
        each += [_thread(f"weft.strands[{place}]", strand, yarn, UNSTATED)] * strand.number
    strands = [thick for thick in each if thick]
    whole = bunched(strands) if strands and len(strands) == len(each) else None
    return _wrapped("weft", whole, weft.wrap)


def _bundle(weft: WeftGiven, yarns: Sequence[Yarn | None]) -> Bundle | None:
    """The bundle by weight, if that of every strand is known."""
    pairs = zip(weft.strands, yarns, strict=True)
    strands = [Strand(yarn, each.number, each.colour) for each, yarn in pairs if yarn]
    return bundle(strands) if strands and len(strands) == len(weft.strands) else None


def stated(value: Length | Fraction | None, usual: Quantity, said: Role) -> Quantity:
    """What the kit states (mm, or a share) as a measured quantity; `usual`, which is assumed, where it does not."""
    if value is None:
        return usual
    return measured(float(value.mm if isinstance(value, Length) else value), ENGLISH.say(said))
