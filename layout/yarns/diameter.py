"""How thick a yarn is by its wrap alone, or by its weight and fibre alone as one solid round thread.

F. T. Peirce (J. Text. Inst. 1937, T45) takes a thread for a solid cylinder of specific volume v: the thickness of a
thread held tight in cloth. A soft knitting wool wrapped by hand comes out two to three times as thick.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from fractions import Fraction
from types import MappingProxyType

from layout.messages.english import ENGLISH
from layout.messages.roles import Fibre, Thickness, ThicknessKind, YarnNeed, YarnNumber
from layout.values.errors import FieldError, shown
from layout.values.limits import Number, above_zero, plain, whole
from layout.values.quantity import Quantity, assumed, computed, measured
from layout.yarns.yarn import Bundle, Yarn

INCH = Fraction("25.4")


class Kind(StrEnum):
    """Which of the two thicknesses of a yarn is meant."""

    SOFT = "soft"
    COMPRESSED = "compressed"


_KINDS = {Kind.SOFT: ThicknessKind.SOFT, Kind.COMPRESSED: ThicknessKind.COMPRESSED}


@dataclass(frozen=True, slots=True)
class Diameter:
    """The thickness of a yarn, `figure` in mm, and which `kind` of thickness it is."""

    figure: Quantity
    kind: Kind

    @property
    def named(self) -> ThicknessKind:
        """The name of its kind."""
        return _KINDS[self.kind]

    @property
    def mm(self) -> float:
        """The thickness in mm."""
        return self.figure.value


def wrapped(window_mm: Number, turns: Number, field: str = "wrap") -> Diameter:
    """The soft diameter of a yarn of which `turns`, side by side and just touching, fill a window."""
    window = above_zero(window_mm, f"{field}.window", YarnNumber.WINDOW, "window = 25.4")
    count = whole(turns, f"{field}.turns", YarnNumber.TURNS, "turns = 12", most=10_000)
    reason = ENGLISH.say(Thickness.WRAPPED, turns=count, window=plain(window))
    return Diameter(measured(float(window / count), reason), Kind.SOFT)


_COTTON_PACKING = 1 / (1.52 * 1.1)

# Fibre densities in g/cm3 from memory; only the cotton row of the table below has a source.
_DENSITIES = {
    "wool": (Fibre.WOOL, 1.31),
    "mohair": (Fibre.MOHAIR, 1.31),
    "alpaca": (Fibre.ALPACA, 1.31),
    "silk": (Fibre.SILK, 1.34),
    "linen": (Fibre.LINEN, 1.50),
    "hemp": (Fibre.HEMP, 1.48),
    "jute": (Fibre.JUTE, 1.46),
    "viscose": (Fibre.VISCOSE, 1.52),
    "polyester": (Fibre.POLYESTER, 1.38),
    "acrylic": (Fibre.ACRYLIC, 1.17),
    "nylon": (Fibre.NYLON, 1.14),
}


DENSITIES: Mapping[str, float] = MappingProxyType(
    {"cotton": 1.52} | {key: density for key, (_, density) in _DENSITIES.items()}
)
"""g/cm3 of a fibre itself, from memory."""


def _volume(fibre: Fibre, density: float) -> Quantity:
    reason = ENGLISH.say(Thickness.VOLUME, fibre=fibre, density=density)
    return assumed(1 / (density * _COTTON_PACKING), reason)


SPECIFIC_VOLUMES: Mapping[str, Quantity] = MappingProxyType(
    {"cotton": computed(1.1, ENGLISH.say(Thickness.VOLUME_COTTON))}
    | {key: _volume(fibre, density) for key, (fibre, density) in _DENSITIES.items()}
)
"""cm3 taken up by a gram of yarn. Cotton is Peirce's; all others are assumed and say so."""


def specific_volume(fibre: str, field: str = "fibre") -> Quantity:
    """The specific volume in cm3/g for a fibre of the table; FieldError for another, naming those there are."""
    key = fibre.strip().casefold()
    if key not in SPECIFIC_VOLUMES:
        raise FieldError(field, YarnNeed.FIBRE, shown(fibre), 'fibre = "wool"', fibres=", ".join(SPECIFIC_VOLUMES))
    return SPECIFIC_VOLUMES[key]


def compressed(yarn: Yarn | Bundle, volume: Quantity, field: str = "volume") -> Diameter:
    """The compressed diameter by Peirce: area = tex x v, d = 2 sqrt(area / pi); 34.14 mil x sqrt(v / Ne).

    A bundle counts as one round thread of the weight of all its strands.
    """
    v = float(above_zero(volume.value, field, YarnNumber.VOLUME, "volume = 1.1"))
    area = float(yarn.tex) * v / 1000  # g/km x cm3/g = 0.001 mm2
    reason = ENGLISH.say(Thickness.PRESSED, tex=plain(yarn.tex), volume=plain(v))
    return Diameter(computed(2 * math.sqrt(area / math.pi), reason, volume), Kind.COMPRESSED)


_CRAFT_CLASSES: tuple[tuple[float, float], ...] = (
    (30, math.inf), (14, 30), (12, 18), (11, 15), (9, 12), (6, 9), (5, 6), (1, 4),
)  # fmt: skip


def craft_classes(wraps_per_inch: Number, field: str = "wraps") -> frozenset[int]:
    """The Craft Yarn Council classes 0 to 7 that a count of wraps in an inch may belong to, both ends included.

    The classes overlap, so there may be several; between 4 and 5, and below 1, there is none.
    """
    wraps = above_zero(wraps_per_inch, field, YarnNumber.WRAPS, "wraps = 12")
    return frozenset(number for number, (low, high) in enumerate(_CRAFT_CLASSES) if low <= wraps <= high)
