"""What a tooth of a comb holds, and the rules that keep teeth, webs and bridges from breaking."""

from __future__ import annotations

import math

from layout.cutting.stock.stock import Stock
from layout.messages.catalogue import Message
from layout.messages.english import ENGLISH
from layout.messages.roles import CutNeed, CutNote, Unit
from layout.plan import Plan
from layout.values.errors import FieldError
from layout.values.numerals import say_fixed, say_number
from layout.values.quantity import Quantity, assumed, computed, measured

LEAST = 1.0
"""Nothing is cut narrower than this, in mm: cutters call it fragile (rule of the cutters)."""

SLENDER = 3.0
"""A tooth is at most so many times as long as it is wide (common practice, no source)."""

_BENDING = assumed(30.0, ENGLISH.say(CutNote.BENDING_ASSUMED))


def bending_strength(stock: Stock) -> Quantity:
    """The bending strength along the face grain in N/mm2, as the stock says it or assumed."""
    if stock.bending is None:
        return _BENDING
    return measured(stock.bending, ENGLISH.say(CutNote.BENDING, strength=say_number(stock.bending)))


def tooth_holds(width: float, length: float, stock: Stock) -> Quantity:
    """The force in N that breaks a tooth pushed sideways at its tip.

    A cantilever of rectangular section, loaded at its end: moment F L, section modulus T w2 / 6 (any engineering
    handbook), so F = strength x T w2 / (6 L).
    """
    strength = bending_strength(stock)
    force = strength.value * stock.thickness * width**2 / (6 * length)
    size = {"length": say_number(length), "width": say_number(width), "thick": say_number(stock.thickness)}
    return computed(force, ENGLISH.say(CutNote.CANTILEVER, **size), strength)


def looser(plan: Plan, spacing: float) -> str:
    """The line of a kit with the densest sett, in whole ends per 10 cm, that lays the marks `spacing` mm apart."""
    ends = math.floor(100 * float(plan.warp.spacing) / (float(plan.warp.pitch) * spacing))
    return f'given = "{ends} per 10 cm" in [sett]'


def too_thin(field: str, role: CutNeed, left: float, works: str) -> FieldError:
    """The refusal by `role` of what leaves no more than `left` mm of wood; `works` is a line that leaves enough."""
    return FieldError(field, role, Message(Unit.MM, {"number": say_fixed(left, 2)}), works, least=say_number(LEAST))


def narrow(width: float, stock: Stock) -> bool:
    """Whether something is narrower than the stock is thick, which asks for care."""
    return width < stock.thickness
