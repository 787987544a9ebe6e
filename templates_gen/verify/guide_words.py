"""What a spacing guide says of the fan, held against figures that were reckoned by following the ends."""

from __future__ import annotations

import re
from collections.abc import Sequence

from layout.numerals import say_number
from templates_gen.verify.compare import Findings
from templates_gen.verify.fanned import End, Followed

_FAN = (
    r"(\S+ (?:mm|in)) from the outer edge: ends up to (\S+ (?:mm|in)) off",
    r"no push needed from (\S+ (?:mm|in)) on",
)
_RIGHT, _NEVER = "the ends lie right by themselves here", "pushing needed at every height"
_UNKNOWN = "the thickness of the warp is not known and left out"
_INCH = 25.4
_TIE = 1e-6  # mm: what lies so close to the middle between two last figures may be rounded to either


def check_words(end: End, texts: Sequence[str], fan: Followed, *, imperial: bool) -> Findings:
    """The sentences on the fan in the words of every piece, with figures reckoned anew, and which heading it is for."""
    found = [[re.search(pattern, text) for text in texts] for pattern in _FAN]
    off, free = ([match.groups() for match in matches if match] for matches in found)
    asked = [_asked(end, fan, nudge, imperial=imperial) for nudge in (0.0, -_TIE, _TIE)]
    (asked_off, asked_free, sentence), wrong = asked[0], list[str]()
    if set(off) not in [each[0] for each in asked]:
        wrong.append(f"the fan at the heading reads {off} where the kit asks for {asked_off}")
    if set(free) not in [each[1] for each in asked]:
        wrong.append(f"pushing is said not to be needed from {free} where the kit asks for {asked_free}")
    if sentence and not any(sentence in text for text in texts):
        wrong.append(f"nowhere says that {sentence}")
    if fan.leaves_thickness_out != any(_UNKNOWN in text for text in texts):
        wrong.append(f"{'nowhere' if fan.leaves_thickness_out else 'wrongly'} says that {_UNKNOWN}")
    if not any(f"{end} heading, seen from the face" in text for text in texts):
        wrong.append(f"nowhere says that this is the {end} heading")
    return Findings(0.0, tuple(wrong))


Figures = set[tuple[str, ...]]


def _asked(end: End, fan: Followed, nudge: float, *, imperial: bool) -> tuple[Figures, Figures, str]:
    """The figures that both sentences must give, each a `nudge` in mm more, and any other sentence that must stand."""
    height, free = fan.heading(end), fan.settles()
    edge = height if end == "near" else fan.high - height
    if free is not None and free[0] <= height <= free[1]:
        return set(), set(), _RIGHT
    off = fan.off(height) + nudge
    edge += nudge
    if imperial:
        places = 2 if off >= _INCH / 10 else 3
        heading: Figures = {(_short(edge / _INCH, 1, "in"), _short(off / _INCH, places, "in"))}
    else:
        heading = {(_short(edge, 0, "mm"), _short(off, 1 if off >= 1 else 2, "mm"))}
    if free is None:
        return heading, set(), _NEVER
    settles = (free[0] if end == "near" else fan.high - free[1]) + nudge
    return heading, {(_short(settles / _INCH, 1, "in") if imperial else _short(settles, 0, "mm"),)}, ""


def _short(value: float, places: int, unit: str) -> str:
    return f"{say_number(value, places)} {unit}"
