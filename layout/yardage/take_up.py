"""How much longer the weft is than the cloth is wide: by what lies in the cloth, or by a pick drawn out of it.

F. T. Peirce (J. Text. Inst. 1937, T45) gives the geometry of plain cloth; where the warp stays straight,
a = sqrt(1 - x^2) + x asin x - 1 with x = (warp + weft) / pitch. A bubble laid into the shed adds nothing of its own:
it supplies this length.
"""

from __future__ import annotations

import math

from layout.messages.english import ENGLISH
from layout.messages.roles import Computed
from layout.values.limits import plain
from layout.values.quantity import Quantity, combine, computed, measured
from layout.yardage.bead import FLATTEST, Weave, passing
from layout.yardage.weft import pick_length

THICKEST = 0.95
"""Warp and weft together as a share of the pitch, at most: what is thicker is pressed flat. Our choice."""
_READ_TO = 1.0
"""To how many mm a pick drawn out is measured, or to a tenth of a short one. Our choice."""


def crimp(pitch: float, warp: float, weft: float) -> float:
    """The share by which a weft is longer than straight; 0 to 51 %, at a sum of `THICKEST` of the pitch."""
    return pick_length(1, min((warp + weft) / pitch, THICKEST)) - 1


def in_cloth(weave: Weave, bead: Quantity) -> Quantity:
    """How thick the weft lies in mm from face to back: as thick as a bead is high, or up to 1.25 times that.

    Never thinner than pressed nor thicker than soft. Where the gap may hold beads higher than the weft is thick, a
    high bead says nothing of a thick weft.
    """
    pressed, soft = weave.weft.pressed, weave.weft.soft
    governed = bead.low <= passing(pressed.high, weave.warp.high, weave.pitch.low)
    low = pressed.low if governed else max(pressed.low, min(bead.low, soft.high))
    high = max(low, min(soft.high, bead.high / FLATTEST))
    value = min(max(min(bead.value, soft.value), low), high)
    return computed(value, bead.reason, pressed, soft, bead, weave.warp, spread=(low, high))


def take_up(weave: Weave, bead: Quantity) -> Quantity:
    """The weft take-up as a share, from what lies in the cloth."""
    across = (weave.warp.value + in_cloth(weave, bead).value) / weave.pitch.value
    said = ENGLISH.say(Computed.TAKE_UP, ratio=plain(round(across, 2)))
    return combine(crimp, said, weave.pitch, weave.warp, in_cloth(weave, bead), falling=(0,))


def drawn(straight_mm: float, woven_mm: float) -> Quantity:
    """The weft take-up from a pick drawn out of a sample, each of its two lengths to a millimetre."""
    off = min(_READ_TO, woven_mm / 10)
    low, high = (straight_mm - off) / (woven_mm + off) - 1, (straight_mm + off) / (woven_mm - off) - 1
    said = ENGLISH.say(Computed.PICK_DRAWN, straight=plain(straight_mm), woven=plain(woven_mm))
    return measured(straight_mm / woven_mm - 1, said, max(low, 0.0), high)


def bubble_rise(more: Quantity) -> Quantity:
    """How high a pick is best laid into the shed, as a share of its width, to supply its take-up: 0.63 sqrt(a).

    An arc of rise r is longer than its span by about 2.5 r^2 (within 2.5 % for a take-up of 6 to 32 %).
    """
    return combine(lambda share: 0.63 * math.sqrt(share), ENGLISH.say(Computed.BUBBLE), more)
