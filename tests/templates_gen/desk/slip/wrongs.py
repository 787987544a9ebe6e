"""What people type wrongly into a line, by what the line is for."""

from __future__ import annotations

from collections.abc import Iterator

from templates_gen.desk.slip.forms import Line

_OF_LENGTHS = ("40 c", "40", "0.01 mm", "5000 m", "64 cm", "3 m", "1,234 mm", "250 mm", "-5 mm", "2 furlongs")
_OF_NUMBERS = ("0", "-1", "999999999", "1,5", "1,000", "12 x", "7")
_BY_KIND: dict[str, tuple[str, ...]] = {
    **dict.fromkeys(("whole", "amount", "number", "count"), _OF_NUMBERS),
    **dict.fromkeys(("sett", "density"), ("6", "99 per cm", "0.001 per cm", "6 ep")),
    **dict.fromkeys(("share", "deviation"), ("5", "120 %", "-3 %", "99 %", "0.5")),
    "force": ("150", "150 q", "900 kg", "0.001 g"),
    "flag": ("maybe", "yes", "no"),
    "colour": ("red", "#12", "#c39a6b"),
    "sides": ("42 x 57 x 6", "42 x 57 cm"),
    "names": ("strips", "strips\nstrips", "weaving-grid", "none"),
    "lines": ("a\nb\nc\nd",),
    "link": ("example.org",),
    "mass": ("310", "310 q", "-1"),
    "card": ("90 x 60", "1 x 1 mm", "900 x 800 mm"),
    "size": ("210 x 297", "1 x 1 mm", "a5"),
}


def wrong_texts(line: Line) -> Iterator[str]:
    """Texts for a line: hardly any of them is meant so, some can be read and fit nothing else."""
    yield from ("abc", "", "x" * 200)
    yield from _OF_LENGTHS if line.units else ()
    yield from _BY_KIND.get(line.spec.kind, ())
    if line.choices:
        yield from (f"{line.choices[0].value}x", *(choice.value for choice in line.choices[:5]))
