"""What the inputs of a kit must be to one another. Each check passes over inputs that were already refused."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction
from typing import Any

from layout.frames.travel import travel_offered
from layout.kit.box_checks import box_errors
from layout.kit.ends import counted_by, ends_errors, frame_of
from layout.kit.fields import example_of
from layout.kit.frame_inputs import LONGEST
from layout.kit.inputs import AS_HIGH_AS_FITS, AS_WIDE_AS_FITS, BY_KEY, LEAST_SETT, MOST_SETT
from layout.kit.kinds.all_keys import END_KEYS
from layout.kit.strength_inputs import strength_errors
from layout.kit.tables import filled
from layout.kit.winding_errors import winding_errors
from layout.messages.catalogue import Message
from layout.messages.roles import Cross, Refusal, Travel
from layout.sett.sett import SettInput, take_sett
from layout.values.errors import FieldError, leave_out, shown
from layout.values.units import Length, Sett, say_length, up

Got = Mapping[str, Any]
_BOTH = Message(Refusal.BOTH)
_LEAST_ROOM = Fraction(10)
"""So much must be left between the ends in mm for anything to be woven at all."""


def cross_checks(got: Got) -> list[FieldError]:
    """Every refusal that follows from two or more inputs together; `got` holds what was read, by dotted key."""
    return [
        *sett_errors(got),
        *ends_errors(got),
        *winding_errors(got),
        *_travel_errors(got),
        *_side_errors(got),
        *_weaving_errors(got),
        *strength_errors(got),
        *_washed_errors(got),
        *_cartoon_errors(got),
        *box_errors(got),
    ]


def _travel_errors(got: Got) -> Iterator[FieldError]:
    """What tightens a warp makes the frame higher, and nothing else does."""
    if not {"frame.tensioner", "frame.travel", "frame.outer_height"} <= set(got):
        return
    tensioner, travel, height = (got[f"frame.{key}"] for key in ("tensioner", "travel", "outer_height"))
    if tensioner != "none" and travel is None:
        example = f'travel = "{up(Length(travel_offered(height.mm), height.unit))}"'
        yield FieldError("frame.travel", Travel.LEFT_OUT, shown(None), example)
    if tensioner == "none" and travel is not None:
        yield FieldError("frame.tensioner", Travel.TENSIONER, shown("none"), 'tensioner = "rods"')


def _cartoon_errors(got: Got) -> Iterator[FieldError]:
    """Only what is woven from its back has a mirrored cartoon."""
    if got.get("weaving.cartoon") == "mirrored" and got.get("weaving.woven_from") == "face":
        yield FieldError("weaving.cartoon", Cross.MIRRORED, shown("mirrored"), 'cartoon = "as woven"')


def _washed_errors(got: Got) -> Iterator[FieldError]:
    """Shrinkage is stated or measured, not both."""
    if got.get("weaving.washed") and got.get("weaving.shrinkage") is not None:
        yield FieldError("weaving.shrinkage", Cross.SHRINKAGE_TWICE, _BOTH, leave_out("shrinkage"))


def sett_errors(got: Got) -> Iterator[FieldError]:
    """What is wrong with the table [sett] as a whole."""
    keys = ("readings", "given", "loosest", "as_measured", "marking_unit")
    if any(f"sett.{key}" not in got for key in keys):
        return
    readings, given = got["sett.readings"], got["sett.given"]
    if readings and given:
        instead = Message(Refusal.LEAVE_OUT_OR, {"key": "readings", "other": "given"})
        yield FieldError("sett.given", Cross.GIVEN_AND_READINGS, _BOTH, instead)
    elif given:
        for key in ("loosest", "as_measured"):
            if got[f"sett.{key}"]:
                yield FieldError(f"sett.{key}", Cross.READINGS_ONLY, "true", f"{key} = false")
        yield from _taking_errors(got)
    elif _notches(got) and got["sett.as_measured"]:
        yield FieldError("sett.as_measured", Cross.AS_MEASURED_ON_NOTCHES, "true", "as_measured = false")
    elif not readings:
        yield FieldError("sett", Cross.NO_SETT, Message(Refusal.NEITHER), example_of(BY_KEY["sett.readings"]))
    else:
        yield from _readings_errors(got)


def _readings_errors(got: Got) -> Iterator[FieldError]:
    limits = False
    for number, reading in enumerate(got["sett.readings"], 1):
        if not LEAST_SETT <= reading.low <= MOST_SETT:
            limits = True
            example = '{pairs = 13, window = "5 cm"}'
            yield FieldError(f"sett.readings[{number}]", Cross.READING_LIMITS, reading.words, example)
    if not limits:
        yield from _taking_errors(got)


def _taking_errors(got: Got) -> Iterator[FieldError]:
    """Why no sett can be taken for these frame ends, if none can."""
    try:
        take_sett(
            filled(SettInput, "sett", got),
            counted_by(got.get("frame.ends"), got.get("weaving.near_hold")),
            _notches(got),
        )
    except FieldError as error:
        yield error


def _notches(got: Got) -> Sett | None:
    """How close the notches of a bar are that is there already; None for other frame ends."""
    ends = got.get("frame.ends")
    density: Sett | None = got.get("frame.notch_density")
    return density if ends and "notch_density" in END_KEYS[ends].fields else None


def _side_errors(got: Got) -> Iterator[FieldError]:
    width, side, margin = (got.get(f"frame.{key}") for key in ("outer_width", "side_width", "margin"))
    if not (width and side and margin):
        return
    needs = 2 * (side.mm + margin.mm)
    if needs < width.mm:
        return
    if needs >= LONGEST.mm:
        key, value = max((("side_width", side), ("margin", margin)), key=lambda each: each[1].mm)
        example, longest = example_of(BY_KEY[f"frame.{key}"]), say_length(LONGEST)
        yield FieldError(f"frame.{key}", Cross.SIDES_AND_MARGINS, say_length(value), example, longest=longest)
        return
    together = _say(needs, width)
    asked = got.get("weaving.width")
    wider = needs + asked.mm if asked else 2 * needs
    example = f'outer_width = "{up(Length(min(wider, LONGEST.mm), width.unit))}"'
    yield FieldError("frame.outer_width", Cross.FRAME_WIDER, say_length(width), example, together=together)


def _weaving_errors(got: Got) -> Iterator[FieldError]:
    frame = frame_of(got)
    if frame is None:
        return
    width, widest = got.get("weaving.width"), frame.widest_weaving
    if width and 0 < widest.mm < width.mm:
        example = f'width = "{AS_WIDE_AS_FITS}"'
        yield FieldError("weaving.width", Cross.WEAVING_WIDTH, say_length(width), example, widest=say_length(widest))
    height, taken = got.get("weaving.height"), 2 * frame.ends.inset_mm
    room = Length(frame.outer_height.mm - taken, frame.outer_height.unit)
    if room.mm <= _LEAST_ROOM and not (height and height.mm < room.mm):
        higher = max(2 * taken, taken + 2 * height.mm) if height else 3 * taken
        example = f'outer_height = "{up(Length(min(higher, LONGEST.mm), room.unit))}"'
        values = {"taken": _say(taken, room), "least": say_length(Length(_LEAST_ROOM))}
        values["together"] = _say(taken + _LEAST_ROOM, room)
        yield FieldError("frame.outer_height", Cross.FRAME_HIGHER, say_length(frame.outer_height), example, **values)
        return
    room = Length(frame.tightened.outer_height.mm - taken, room.unit)
    if height and height.mm >= room.mm and got.get("weaving.near_hold", "bar") == "bar":
        example = f'height = "{AS_HIGH_AS_FITS}"'
        yield FieldError("weaving.height", Cross.WEAVING_HEIGHT, say_length(height), example, room=say_length(room))


def _say(mm: Fraction, like: Length) -> str:
    return say_length(Length(mm, like.unit))
