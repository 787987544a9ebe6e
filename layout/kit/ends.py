"""The kinds of frame ends: which inputs belong to each, what these must be to one another, and the frame they make."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction
from types import MappingProxyType
from typing import Any

from layout.frames.frame import Ends, FlatEnd, Frame, Kind, NotchedEnd, PeggedEnd, RoundBar
from layout.kit.fields import example_of
from layout.kit.inputs import BY_KEY
from layout.sett.marking_units import PEGS, SINGLY, WINDS, CountedThing
from layout.values.errors import FieldError, shown
from layout.values.units import Length, Sett, exact_length, say_length, say_sett

Got = Mapping[str, Any]
_TYPES: Mapping[str, type[Ends]] = {each.name: each for each in (RoundBar, FlatEnd, NotchedEnd, PeggedEnd)}
END_FIELDS: Mapping[str, Mapping[str, str]] = MappingProxyType(
    {
        "round bars": {"bar_diameter": "diameter"},
        "flat ends": {"thickness": "thickness", "edge_radius": "edge_radius"},
        "notched ends": {
            "thickness": "thickness",
            "notch_width": "notch_width",
            "notch_depth": "notch_depth",
            "notch_density": "density",
        },
        "pegged ends": {key: key for key in ("thickness", "peg_diameter", "row_distance", "edge_distance")},
    }
)
"""The keys of the table [frame] that belong to each kind of ends, and the fields they fill."""

_COUNTED: Mapping[Kind, CountedThing] = {"wound": WINDS, "notched": SINGLY, "pegged": PEGS}
_MAY_BE_LEFT_OUT = {"edge_radius": Length(Fraction(0)), "notch_density": None}
_SIZES = ("outer_width", "outer_height", "side_width", "margin")
_WOUND_ONLY = {"slant": "shared", "first_pass": "face"}


def counted_by(ends: str | None) -> CountedThing:
    """What is counted off in a marking unit on such ends: winds, pegs that turn two ends each, or single ends."""
    return WINDS if ends is None else _COUNTED[_TYPES[ends].kind]


def ends_errors(got: Got) -> Iterator[FieldError]:
    """What is wrong with the inputs of the frame ends together; passes over inputs that were refused already."""
    ends = got.get("frame.ends")
    if ends is None:
        return
    own = END_FIELDS[ends]
    for leaf in own:
        key = f"frame.{leaf}"
        if leaf not in _MAY_BE_LEFT_OUT and key in got and got[key] is None:
            yield FieldError(key, f'to be given with ends = "{ends}"', "nothing", example_of(BY_KEY[key]))
    yield from _strangers(got, ends)
    thickness, radius = got.get("frame.thickness"), got.get("frame.edge_radius")
    yield from _board_errors(got, ends)
    if ends == "flat ends" and thickness and radius and radius.mm > thickness.mm / 2:
        half = Length(thickness.mm / 2, thickness.unit)
        needed = f"at most half the thickness, {say_length(half)}"
        yield FieldError("frame.edge_radius", needed, say_length(radius), f'edge_radius = "{exact_length(half)}"')


def _board_errors(got: Got, ends: str) -> Iterator[FieldError]:
    """A board must be wider than its notches are deep, or its pegs stand from its edge."""
    made, width = _ends_of(got), got.get("frame.end_width")
    if made is not None and width is not None and _TYPES[ends].kind != "wound" and width.mm <= made.inset_mm:
        inside = Length(made.inset_mm, width.unit)
        needed = f"more than the {say_length(inside)} that its {'notches' if ends == 'notched ends' else 'pegs'} take"
        example = f'end_width = "{say_length(Length(2 * inside.mm, width.unit))}"'
        yield FieldError("frame.end_width", needed, say_length(width), example)


def _strangers(got: Got, ends: str) -> Iterator[FieldError]:
    """Inputs that belong to other kinds of ends."""
    foreign = dict.fromkeys(leaf for own in END_FIELDS.values() for leaf in own if leaf not in END_FIELDS[ends])
    for leaf in foreign:
        value = got.get(f"frame.{leaf}")
        if value is not None:
            said = say_sett(value) if isinstance(value, Sett) else say_length(value)
            yield FieldError(f"frame.{leaf}", f'to be left out with ends = "{ends}"', said, f"leave out {leaf}")
    if _TYPES[ends].kind == "wound":
        return
    for leaf, usual in _WOUND_ONLY.items():
        value = got.get(f"weaving.{leaf}", usual)
        if value != usual:
            needed = f'to be left out with ends = "{ends}", where all ends lie straight on the face'
            yield FieldError(f"weaving.{leaf}", needed, shown(value), f'{leaf} = "{usual}"')


def frame_of(got: Got) -> Frame | None:
    """The frame's inputs as one value; None where any that it needs is missing or was refused."""
    ends, sizes = _ends_of(got), {key: got.get(f"frame.{key}") for key in _SIZES}
    return None if ends is None or None in sizes.values() else Frame(ends, **sizes)  # type: ignore[arg-type]


def _ends_of(got: Got) -> Ends | None:
    name = got.get("frame.ends")
    if name is None:
        return None
    values: dict[str, Any] = {}
    for leaf, field in END_FIELDS[name].items():
        value = got.get(f"frame.{leaf}")
        if f"frame.{leaf}" not in got or (value is None and leaf not in _MAY_BE_LEFT_OUT):
            return None
        values[field] = _MAY_BE_LEFT_OUT[leaf] if value is None else value
    return _TYPES[name](**values)
