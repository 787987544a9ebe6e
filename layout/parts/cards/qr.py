"""A link as a QR code: how many modules it takes, and how they are drawn.

The modules are made by segno (ISO/IEC 18004, level M), which is loaded where a kit has a link and nowhere else.
"""

from __future__ import annotations

import re
from functools import lru_cache

from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Region, rectangle

Modules = tuple[str, ...]
"""The rows of a code from above, "#" for a black module and "." for a white one."""

LEAST_MODULE, USUAL_MODULE = 0.4, 0.5
"""The side of a module in mm: what a phone still reads well, and what is taken where there is room. Our own choice."""

WHITE = 4
"""So many modules of white stand round a code (ISO/IEC 18004, 9.1)."""

BYTES = 14, 26, 42, 62, 84, 106, 122, 152, 180, 213
"""How many bytes versions 1 to 10 hold at level M (ISO/IEC 18004, table 7)."""

_MOST_BYTES = BYTES[-1]  # larger codes are hard to read from a phone


@lru_cache(8)
def modules_of(link: str) -> Modules:
    """The modules of a code that says `link` as bytes in UTF-8; none where it is far too long for a card."""
    import segno

    if len(link.encode()) > _MOST_BYTES:
        return ()
    made = segno.make(link, error="m", mode="byte", encoding="utf-8", boost_error=False, micro=False)
    return tuple("".join("#" if module else "." for module in row) for row in made.matrix)


def module_in(modules: Modules, side: float) -> float | None:
    """How large a module may be where the code has `side` mm, without its white; None where it has no room."""
    most = side / len(modules) if modules else 0.0
    return min(most, USUAL_MODULE) if most >= LEAST_MODULE else None


def most_bytes(side: float) -> int:
    """How many bytes a code holds that has `side` mm; 0 where there is none."""
    return max((count for k, count in enumerate(BYTES) if (21 + 4 * k) * LEAST_MODULE <= side), default=0)


def qr(modules: Modules, corner: Point, module: float) -> Region:
    """The code with its upper right corner at `corner`: every run of black modules in a row as one rectangle."""
    left = corner.x - len(modules) * module
    runs = tuple(
        rectangle(
            left + run.start() * module,
            corner.y - (row + 1) * module,
            left + run.end() * module,
            corner.y - row * module,
            Pen.SOLID,
        )
        for row, line in enumerate(modules)
        for run in re.finditer("#+", line)
    )
    return Region(runs, Pen.SOLID)
