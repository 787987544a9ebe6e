"""What frame ends are made of: how stiff it is, by how much that scatters, and what stress it bears.

Woods: Wood Handbook, USDA Forest Products Laboratory, FPL-GTR-190 (2010), table 5-3a, at 12 % moisture. MDF: EN 622-5.
Other figures are round ones from memory, and each says which it is.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import NamedTuple

from layout.frames.strength import Strength
from layout.messages.english import ENGLISH
from layout.messages.roles import Beam
from layout.values.limits import Number, plain
from layout.values.quantity import Quantity, assumed, measured

CLEAR, KNOTS = (0.67, 1.33), (0.6, 1.33)
"""How far the modulus of a stick lies from the mean of clear wood, and of wood with knots: 1.5 times the coefficient of
variation of 22 % (Wood Handbook, from memory), and what knots take besides (from memory)."""
STRENGTH_SCATTER = (0.84, 1.16)
"""The same of the bending strength: its coefficient of variation of 16 % (Wood Handbook, from memory)."""
SAFE = 4
"""Frame ends are stressed to a quarter of their bending strength at most (our choice)."""
MONTHS = (1.5, 1.75, 2.0)
"""By how much more wood and plastic bend when they stay under the same load for months (from memory)."""
_METALS_FROM = 30_000
"""Whatever is stiffer than this, in N/mm2, does not creep at a loom (our choice)."""


class _Kind(NamedTuple):
    """One material: `modulus` in N/mm2 with its `scatter` as factors, bending `strength` in N/mm2."""

    modulus: float
    strength: float | None = None
    source: Beam = Beam.MEMORY
    scatter: tuple[float, float] = CLEAR
    lasting: float | None = None  # what it bears for long, where that is less than a quarter of its strength


_BOOK, _MEMORY = Beam.HANDBOOK, Beam.MEMORY
_KINDS: Mapping[str, _Kind] = {
    "pine": _Kind(9_000, 65, scatter=KNOTS),
    "oak": _Kind(11_000, 97),
    "birch": _Kind(13_000, 100),
    "beech": _Kind(13_000, 103),
    "ash": _Kind(12_000, 103),
    "bamboo": _Kind(15_000, scatter=(2 / 3, 4 / 3)),
    "aluminium": _Kind(70_000, scatter=(0.97, 1.03)),
    "brass": _Kind(100_000, scatter=(0.95, 1.1)),
    "copper": _Kind(120_000, scatter=(0.92, 1.08)),
    "steel": _Kind(200_000, scatter=(0.95, 1.05)),
    # table 5-3a: modulus and strength as read there
    "ponderosa pine": _Kind(8_900, 65, _BOOK),
    "red pine": _Kind(11_200, 76, _BOOK),
    "shortleaf pine": _Kind(12_100, 90, _BOOK),
    "western white pine": _Kind(10_100, 67, _BOOK),
    "redwood": _Kind(9_200, 69, _BOOK),
    # its moduli as reprinted in 10^6 lb/in2; strengths from memory
    "white ash": _Kind(12_000, 103, _BOOK),
    "american beech": _Kind(11_900, 103, _BOOK),
    "yellow birch": _Kind(13_900, 114, _BOOK),
    "paper birch": _Kind(11_000, 85, _BOOK),
    "black cherry": _Kind(10_300, 85, _BOOK),
    "basswood": _Kind(10_100, 60, _BOOK),
    "red maple": _Kind(11_300, 92, _BOOK),
    "quaking aspen": _Kind(8_100, 58, _BOOK),
    "red alder": _Kind(9_500, 68, _BOOK),
    "shagbark hickory": _Kind(14_900, 139, _BOOK),
    # woods from memory
    "sugar maple": _Kind(12_600, 109),
    "red oak": _Kind(12_500, 99),
    "white oak": _Kind(12_300, 105),
    "black walnut": _Kind(11_600, 101),
    "yellow poplar": _Kind(10_900, 70),
    "sitka spruce": _Kind(10_800, 70),
    "douglas fir": _Kind(13_400, 85, scatter=KNOTS),
    "eastern white pine": _Kind(8_500, 59),
    "european beech": _Kind(14_000, 110),
    "spruce": _Kind(11_000, 24, scatter=KNOTS),  # building timber of the class C24, with its least strength
    # boards
    "birch plywood": _Kind(8_500, 40, scatter=(7_000 / 8_500, 10_000 / 8_500)),
    "mdf": _Kind(2_200, 20, Beam.MDF, (0.9, 1.4)),
    "acrylic": _Kind(3_000, 110, scatter=(2_800 / 3_000, 1.1), lasting=10),
    "laminated bamboo": _Kind(10_000, scatter=(0.8, 1.2)),
}
_MDF = ((9, 2_700, 23), (12, 2_500, 22), (19, 2_200, 20), (30, 2_100, 18), (45, 1_900, 17))
"""Up to so many mm thick, the least modulus and bending strength that EN 622-5 asks of MDF (over 30 mm from memory)."""
MATERIALS: tuple[str, ...] = tuple(_KINDS)
"""The name of every material in a kit."""


@dataclass(frozen=True, slots=True)
class Material:
    """`modulus` of elasticity along the piece, and `allowed`, the stress it may be under, both in N/mm2.

    `allowed` is None where no strength is known. `creeps` says that it gives way further in months.
    """

    modulus: Quantity
    allowed: Quantity | None
    creeps: bool


def material_of(strength: Strength, thick: Number) -> Material | None:
    """What frame ends are made of that are `thick` mm from face to back; None where the kit does not say.

    A modulus of the kit's own goes before that of its material.
    """
    kind = _kind(strength.material, thick)
    if strength.modulus is None:
        return None if kind is None or strength.material is None else _listed(strength.material, kind)
    own = float(strength.modulus)
    modulus = measured(own, ENGLISH.say(Beam.MODULUS_STATED, modulus=plain(own)))
    allowed = _listed(strength.material, kind).allowed if strength.material and kind else None
    return Material(modulus, allowed, own < _METALS_FROM)


def _kind(name: str | None, thick: Number) -> _Kind | None:
    kind = None if name is None else _KINDS[name]
    if kind is None or kind.source is not Beam.MDF:
        return kind
    _, modulus, strength = next((band for band in _MDF if thick <= band[0]), _MDF[-1])
    return kind._replace(modulus=modulus, strength=strength)


def _listed(name: str, kind: _Kind) -> Material:
    least, most = (kind.modulus * factor for factor in kind.scatter)
    values = {"modulus": plain(kind.modulus), "least": plain(round(least)), "most": plain(round(most))}
    said = ENGLISH.say(Beam.MODULUS, material=name, source=kind.source, **values)
    modulus = assumed(kind.modulus, said, least, most)
    return Material(modulus, _allowed(name, kind), kind.modulus < _METALS_FROM)


def _allowed(name: str, kind: _Kind) -> Quantity | None:
    """A quarter of the bending strength, or what the material bears for long."""
    if kind.strength is None:
        return None
    bears = kind.lasting or kind.strength / SAFE
    said = ENGLISH.say(Beam.ALLOWED, material=name, allowed=plain(bears), strength=plain(kind.strength))
    least, most = (1.0, 1.0) if kind.lasting else STRENGTH_SCATTER
    return assumed(bears, said, bears * least, bears * most)


CREEP = assumed(MONTHS[1], ENGLISH.say(Beam.MONTHS), MONTHS[0], MONTHS[2])
"""The factor on the bending of what creeps, for a frame that stays under tension for months."""


def modulus_range(name: str, thick: Fraction) -> tuple[float, float, float]:
    """The least, likely and greatest modulus of a material in N/mm2, for proofs."""
    kind = _kind(name, thick)
    if kind is None:
        raise AssertionError(name)
    return kind.modulus * kind.scatter[0], kind.modulus, kind.modulus * kind.scatter[1]
