"""The inputs of a frame and its ends together: what is wrong between them, and the frame they make."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from layout.frames.frame import Frame
from layout.frames.kinds.frame_end import FrameEnd
from layout.kit.fields import example_of
from layout.kit.inputs import BY_KEY
from layout.kit.kinds.all_keys import END_KEYS
from layout.kit.to_plain import to_plain
from layout.messages.roles import EndNeed
from layout.sett.marking_units import SINGLY, WINDS, CountedThing
from layout.values.errors import FieldError, leave_out, shown
from layout.values.units import Length, Sett, say_density, say_length

Got = Mapping[str, Any]
_SIZES = ("outer_width", "outer_height", "side_width", "margin")
_MORE = ("side_thickness", "travel")  # sizes of a frame that may be left out
_WOUND_ONLY = {"slant": "shared", "first_pass": "face"}


def counted_by(ends: str | None, near_hold: str | None = "bar") -> CountedThing:
    """What is counted off in a marking unit on such ends: winds, pegs that turn two ends each, or single ends."""
    if near_hold == "loose rod" and ends is not None and END_KEYS[ends].make.kind == "wound":
        return SINGLY
    return WINDS if ends is None else END_KEYS[ends].counted


def ends_errors(got: Got) -> Iterator[FieldError]:
    """What is wrong with the inputs of the frame ends together; passes over inputs that were refused already."""
    ends = got.get("frame.ends")
    if ends is None:
        return
    own = END_KEYS[ends]
    for leaf in own.fields:
        key = f"frame.{leaf}"
        if leaf not in own.optional and key in got and got[key] is None:
            yield FieldError(key, EndNeed.GIVEN, shown(None), example_of(BY_KEY[key]), ends=ends)
    yield from _strangers(got, ends)
    yield from _board_errors(got, ends)
    yield from own.check(got)


def _board_errors(got: Got, ends: str) -> Iterator[FieldError]:
    """A board must be wider than its notches are deep, or its pegs stand from its edge."""
    made, width, needed = _ends_of(got), got.get("frame.end_width"), END_KEYS[ends].inside
    if made is not None and width is not None and needed and width.mm <= made.inset_mm:
        taken = Length(made.inset_mm, width.unit)
        example = f'end_width = "{say_length(Length(2 * taken.mm, width.unit))}"'
        yield FieldError("frame.end_width", needed, say_length(width), example, taken=say_length(taken))


def _strangers(got: Got, ends: str) -> Iterator[FieldError]:
    """Inputs that belong to other kinds of ends."""
    every = (leaf for name in END_KEYS for leaf in END_KEYS[name].fields)
    foreign = dict.fromkeys(leaf for leaf in every if leaf not in END_KEYS[ends].fields)
    for leaf in foreign:
        value = got.get(f"frame.{leaf}")
        if value is not None:
            said = say_density(value) if isinstance(value, Sett) else say_length(value)
            yield FieldError(f"frame.{leaf}", EndNeed.LEFT_OUT, said, leave_out(leaf), ends=ends)
    if END_KEYS[ends].make.kind == "wound":
        return
    for leaf, usual in _WOUND_ONLY.items():
        value = got.get(f"weaving.{leaf}", usual)
        if value != usual:
            key, example = f"weaving.{leaf}", f'{leaf} = "{usual}"'
            yield FieldError(key, EndNeed.LEFT_OUT_STRAIGHT, shown(value), example, ends=ends)


def frame_of(got: Got) -> Frame | None:
    """The frame's inputs as one value; None where any that it needs is missing or was refused."""
    ends, sizes = _ends_of(got), {key: got.get(f"frame.{key}") for key in _SIZES}
    if ends is None or None in sizes.values():
        return None
    more = {key: got.get(f"frame.{key}") for key in ("end_width", *_MORE)}
    return Frame(ends, **sizes, **more)  # type: ignore[arg-type]


def frame_entries(frame: Frame) -> Iterator[tuple[str, Any]]:
    """The keys of a frame, with what to write there."""
    yield "frame.ends", frame.ends.name
    for leaf, field in END_KEYS.of(frame.ends).fields.items():
        if (value := getattr(frame.ends, field)) is not None:
            yield f"frame.{leaf}", to_plain(value)
    for leaf in (*_SIZES, *_MORE):
        if (size := getattr(frame, leaf)) is not None:
            yield f"frame.{leaf}", to_plain(size)


def _ends_of(got: Got) -> FrameEnd | None:
    name = got.get("frame.ends")
    if name is None:
        return None
    own, values = END_KEYS[name], dict[str, Any]()
    for leaf, field in own.fields.items():
        value = got.get(f"frame.{leaf}")
        if f"frame.{leaf}" not in got or (value is None and leaf not in own.optional):
            return None
        values[field] = own.optional[leaf] if value is None else value
    return own.make(**values)
