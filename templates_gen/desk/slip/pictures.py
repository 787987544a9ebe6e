"""The little drawings beside choices: inline SVG, in the colour of the text, without styles of their own.

What is seen from the face has the near end below, and what lies behind the back in dashes. What is seen from the side
has the near end left and the face above; where the first pass is chosen, it alone is drawn through.
"""

from __future__ import annotations

from collections.abc import Mapping

_BOX = "0 0 100 36"


def _tag(name: str, inside: str = "", **attributes: object) -> str:
    said = " ".join(f'{key.rstrip("_").replace("_", "-")}="{value}"' for key, value in attributes.items())
    return f"<{name} {said}>{inside}</{name}>" if inside else f"<{name} {said}/>"


def _svg(*shapes: str) -> str:
    return _tag("svg", "".join(shapes), viewBox=_BOX, aria_hidden="true", focusable="false")


def _wood(d: str) -> str:
    return _tag("path", d=d, class_="wood", fill="none", stroke="currentColor")


def _face(d: str) -> str:
    return _tag("path", d=d, class_="face", fill="none", stroke="currentColor", stroke_width=2)


def _back(d: str) -> str:
    return _tag(
        "path", d=d, class_="back", fill="none", stroke="currentColor", stroke_width=1.5, stroke_dasharray="3 3"
    )


def _thin(d: str) -> str:
    return _tag("path", d=d, fill="none", stroke="currentColor")


def _dot(x: float, y: float, r: float) -> str:
    return _tag("circle", cx=x, cy=y, r=r, fill="currentColor")


def _disc(x: float, y: float, r: float) -> str:
    return _tag("circle", cx=x, cy=y, r=r, class_="wood", fill="none", stroke="currentColor")


_BOARD, _BARS = "M8 8H92V28H8Z", "M8 3H92V9H8ZM8 27H92V33H8Z"
_LIFTED = "M30 16H36V32H30ZM64 16H70V32H64ZM24 4H76V9H24Z"
_SIDE_VIEW = (_disc(14, 18, 6), _disc(86, 18, 6))

PICTURES: Mapping[str, Mapping[str, str]] = {
    "frame.ends": {
        "round bars": _svg(_wood("M8 6H92V14H8Z"), _disc(50, 25, 7)),
        "flat ends": _svg(_wood("M8 6H92V14H8ZM43 19H57V32H43Z")),
        "notched ends": _svg(_wood("M8 26V10H16V16H20V10H30V16H34V10H44V16H48V10H58V16H62V10H72V16H76V10H92V26Z")),
        "pegged ends": _svg(_wood(_BOARD), *(_dot(20 + 12 * at, 22 if at % 2 else 14, 3) for at in range(6))),
        "nails": _svg(_wood(_BOARD), *(_dot(18 + 9 * at, 14, 1.6) for at in range(8))),
    },
    "frame.tensioner": {
        "none": _svg(_wood("M30 4H36V32H30ZM64 4H70V32H64Z")),
        "rods": _svg(
            _wood("M30 14H36V32H30ZM64 14H70V32H64ZM24 4H76V9H24Z"), _thin("M33 9V14M67 9V14M30 11H36M64 11H70")
        ),
        "wedges": _svg(
            _wood("M30 16H36V32H30ZM64 16H70V32H64ZM24 4H76V9H24Z"), _wood("M26 16L40 9V16ZM60 16L74 9V16Z")
        ),
    },
    "weaving.slant": {
        "shared": _svg(_wood(_BARS), _face("M30 30L35 6M50 30L55 6M70 30L75 6"), _back("M35 6L50 30M55 6L70 30")),
        "face straight": _svg(_wood(_BARS), _face("M30 30V6M50 30V6M70 30V6"), _back("M30 6L50 30M50 6L70 30")),
    },
    "weaving.start": {
        "left": _svg(_wood(_BARS), _face("M24 30V6"), _thin("M36 18H66M60 13L66 18L60 23"), _dot(24, 30, 3)),
        "right": _svg(_wood(_BARS), _face("M76 30V6"), _thin("M64 18H34M40 13L34 18L40 23"), _dot(76, 30, 3)),
    },
    "weaving.first_pass": {
        "face": _svg(*_SIDE_VIEW, _face("M14 12H86"), _back("M14 24H86"), _dot(14, 12, 3)),
        "back": _svg(*_SIDE_VIEW, _back("M14 12H86"), _face("M14 24H86"), _dot(14, 24, 3)),
    },
    "weaving.winding": {
        "round": _svg(*_SIDE_VIEW, _face("M14 12H86M14 24H86")),
        "figure eight": _svg(*_SIDE_VIEW, _face("M14 12L86 24M14 24L86 12")),
    },
    "weaving.near_hold": {
        "bar": _svg(*_SIDE_VIEW, _face("M14 12H86M14 24H86")),
        "loose rod": _svg(*_SIDE_VIEW, _face("M50 24H14A6 6 0 0 1 14 12H86A6 6 0 0 1 86 24H50"), _dot(50, 24, 4)),
    },
    "weaving.near_end": {
        "bottom": _svg(_wood(_BARS), _dot(24, 30, 3), _face("M24 30V6")),
        "top": _svg(_wood(_BARS), _dot(24, 6, 3), _face("M24 6V30")),
    },
}
"""By field and by what is chosen there."""
