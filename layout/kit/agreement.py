"""What the inputs of a kit must be to one another. Each check passes over inputs that were already refused."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction
from math import floor
from typing import Any

from layout.errors import FieldError
from layout.frames.frame import FlatEnd, Frame, RoundBar
from layout.kit.fields import example_of
from layout.kit.inputs import AS_WIDE_AS_FITS, BY_KEY, LEAST_SETT, MOST_SETT
from layout.kit.strength import strength_errors
from layout.setting.sett import SettInput, take_sett
from layout.units import Length, exact_length, mm_in, say_length

Got = Mapping[str, Any]
_SQUARE = Length(Fraction(0))
_LONGEST = Length(Fraction(3000))
_OF_ENDS = {"round bars": ("bar_diameter",), "flat ends": ("thickness", "edge_radius")}  # the first has to be given


def disagreements(got: Got) -> list[FieldError]:
    """Every refusal that follows from two or more inputs together; `got` holds what was read, by dotted key."""
    return [*sett_errors(got), *_ends_errors(got), *_side_errors(got), *_weaving_errors(got), *strength_errors(got)]


def sett_errors(got: Got) -> Iterator[FieldError]:
    """What is wrong with the table [sett] as a whole."""
    keys = ("readings", "given", "loosest", "as_measured", "marking_unit")
    if any(f"sett.{key}" not in got for key in keys):
        return
    readings, given = got["sett.readings"], got["sett.given"]
    if readings and given:
        yield FieldError("sett.given", "to be the only one of given and readings", "both", 'given = "6 epi"')
    elif given:
        for key in ("loosest", "as_measured"):
            if got[f"sett.{key}"]:
                yield FieldError(f"sett.{key}", "readings, and means nothing beside given", "true", f"{key} = false")
    elif not readings:
        yield FieldError("sett", "readings, or a sett given", "neither", example_of(BY_KEY["sett.readings"]))
    else:
        yield from _readings_errors(got)


def _readings_errors(got: Got) -> Iterator[FieldError]:
    limits = False
    for number, reading in enumerate(got["sett.readings"], 1):
        if not LEAST_SETT <= reading.low <= MOST_SETT:
            limits = True
            needed = "a count that makes 0.1 to 60 ends per cm"
            yield FieldError(f"sett.readings[{number}]", needed, reading.words, '{pairs = 13, window = "5 cm"}')
    if limits:
        return
    try:
        take_sett(sett_of(got))
    except FieldError as error:
        yield error


def sett_of(got: Got) -> SettInput:
    """The sett's inputs as one value."""
    return SettInput(
        got["sett.readings"] or (),
        got["sett.given"],
        got["sett.loosest"],
        got["sett.as_measured"],
        got["sett.marking_unit"],
    )


def _ends_errors(got: Got) -> Iterator[FieldError]:
    ends = got.get("frame.ends")
    if ends is None:
        return
    main = f"frame.{_OF_ENDS[ends][0]}"
    if main in got and got[main] is None:
        yield FieldError(main, f'to be given with ends = "{ends}"', "nothing", example_of(BY_KEY[main]))
    for key in (f"frame.{leaf}" for kind, leaves in _OF_ENDS.items() for leaf in leaves if kind != ends):
        if got.get(key) is not None:
            needed = f'to be left out with ends = "{ends}"'
            yield FieldError(key, needed, say_length(got[key]), example_of(BY_KEY[main]))
    thickness, radius = got.get("frame.thickness"), got.get("frame.edge_radius")
    if ends == "flat ends" and thickness and radius and radius.mm > thickness.mm / 2:
        half = Length(thickness.mm / 2, thickness.unit)
        needed = f"at most half the thickness, {say_length(half)}"
        yield FieldError("frame.edge_radius", needed, say_length(radius), f'edge_radius = "{exact_length(half)}"')


def _side_errors(got: Got) -> Iterator[FieldError]:
    width, side, margin = (got.get(f"frame.{key}") for key in ("outer_width", "side_width", "margin"))
    if not (width and side and margin):
        return
    needs = 2 * (side.mm + margin.mm)
    if needs >= width.mm:
        needed = f"more than both sides and both margins together, {_say(needs, width)}"
        most = _LONGEST.mm if needs < _LONGEST.mm else None
        wider = f'outer_width = "{_say(min(2 * needs, most), width)}"' if most else 'side_width = "30 mm"'
        yield FieldError("frame.outer_width", needed, say_length(width), wider)


def _weaving_errors(got: Got) -> Iterator[FieldError]:
    if not all(got.get(f"frame.{key}") for key in ("ends", "outer_width", "outer_height", "side_width", "margin")):
        return
    end = got.get(f"frame.{_OF_ENDS[got['frame.ends']][0]}")
    if not end:
        return
    frame = frame_of(got)
    width, widest = got.get("weaving.width"), frame.widest_weaving
    if width and 0 < widest.mm < width.mm:
        needed = f"at most the {say_length(widest)} that the frame leaves between its margins"
        yield FieldError("weaving.width", needed, say_length(width), f'width = "{AS_WIDE_AS_FITS}"')
    height, round_bars = got.get("weaving.height"), isinstance(frame.ends, RoundBar)
    room = Length(frame.outer_height.mm - (2 * end.mm if round_bars else 0), frame.outer_height.unit)
    if room.mm <= 0:
        needed = f"more than both bars together, {_say(2 * end.mm, room)}"
        example = f'outer_height = "{_say(6 * end.mm, room)}"'
        yield FieldError("frame.outer_height", needed, say_length(frame.outer_height), example)
    elif height and height.mm >= room.mm:
        less = " less both bars" if round_bars else ""
        needed = f"less than the frame's outer height{less}, {say_length(room)}"
        yield FieldError("weaving.height", needed, say_length(height), f'height = "{_fitting(room)}"')


def _say(mm: Fraction, like: Length) -> str:
    return say_length(Length(mm, like.unit))


def _fitting(room: Length) -> str:
    """A plain length that fits into `room` with something to spare."""
    mm = room.mm * 3 / 4
    step = mm_in("in") / 4 if room.imperial else Fraction(1)
    return say_length(Length(max(floor(mm / step), 1) * step, "in" if room.imperial else "mm"))


def frame_of(got: Got) -> Frame:
    """The frame's inputs as one value."""
    if got["frame.ends"] == "round bars":
        ends: RoundBar | FlatEnd = RoundBar(got["frame.bar_diameter"])
    else:
        ends = FlatEnd(got["frame.thickness"], got.get("frame.edge_radius") or _SQUARE)
    sizes = (got[f"frame.{key}"] for key in ("outer_width", "outer_height", "side_width", "margin"))
    return Frame(ends, *sizes)
