"""What a kit says of how strong its frame ends are."""

from __future__ import annotations

from dataclasses import dataclass

from layout.values.forces import Force
from layout.values.units import Length


@dataclass(frozen=True, slots=True)
class Strength:
    """None where the kit says nothing.

    `tension` is the pull of one thread, `material` what the ends are made of; a round bar may have a `bar_bore`, a
    board has an `end_width`, measured the way the warp pulls.
    """

    tension: Force | None = None
    material: str | None = None
    bar_bore: Length | None = None
    end_width: Length | None = None
