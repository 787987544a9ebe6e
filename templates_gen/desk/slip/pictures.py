"""The little drawings beside choices: inline SVG, in the colour of the text, without styles of their own."""

from __future__ import annotations

from collections.abc import Mapping


def _svg(inside: str, box: str = "0 0 100 36") -> str:
    return f'<svg viewBox="{box}" aria-hidden="true" focusable="false">{inside}</svg>'


_WOOD = 'class="wood" fill="none" stroke="currentColor"'
_PEGS = "".join(f'<circle cx="{20 + 12 * at}" cy="{14 if at % 2 == 0 else 22}" r="3"/>' for at in range(6))
_NAILS = "".join(f'<circle cx="{20 + 12 * at}" cy="14" r="1.6"/>' for at in range(6))

PICTURES: Mapping[str, Mapping[str, str]] = {
    "frame.ends": {
        "round bars": _svg(f'<path {_WOOD} d="M8 6H92V14H8Z"/><circle {_WOOD} cx="50" cy="25" r="7"/>'),
        "flat ends": _svg(f'<path {_WOOD} d="M8 6H92V14H8ZM43 19H57V32H43Z"/>'),
        "notched ends": _svg(
            f'<path {_WOOD} d="M8 26V10H16V16H20V10H30V16H34V10H44V16H48V10H58V16H62V10H72V16H76V10H92V26Z"/>'
        ),
        "pegged ends": _svg(f'<path {_WOOD} d="M8 8H92V28H8Z"/><g fill="currentColor">{_PEGS}</g>'),
        "nails": _svg(f'<path {_WOOD} d="M8 8H92V28H8Z"/><g fill="currentColor">{_NAILS}</g>'),
    },
}
"""By field and by what is chosen there."""
