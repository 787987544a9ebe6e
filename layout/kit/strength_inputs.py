"""What the inputs about the strength of the frame ends must be to one another."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from layout.kit.kinds.all_keys import END_KEYS
from layout.messages.catalogue import Message
from layout.messages.roles import EndNeed, Refusal
from layout.values.errors import FieldError, leave_out
from layout.values.units import Length, exact_length, say_length


def strength_errors(got: Mapping[str, Any]) -> Iterator[FieldError]:
    """A bore means nothing but in a round bar, a width nothing but on a board, and a bore leaves a wall.

    A pull that is measured on a thread needs the thread's weight.
    """
    yield from _measured_errors(got)
    ends, diameter = got.get("frame.ends"), got.get("frame.bar_diameter")
    bore, width = got.get("frame.bar_bore"), got.get("frame.end_width")
    if ends is None:
        return
    has_bore = END_KEYS[ends].strength == "bar_bore"
    key, value = ("end_width", width) if has_bore else ("bar_bore", bore)
    if value:
        yield FieldError(f"frame.{key}", EndNeed.LEFT_OUT, say_length(value), leave_out(key), ends=ends)
    elif diameter and bore and bore.mm >= diameter.mm:
        inside = exact_length(Length(diameter.mm * 3 / 4, diameter.unit))
        example = f'bar_bore = "{inside}"'
        yield FieldError("frame.bar_bore", EndNeed.BORE, say_length(bore), example, diameter=say_length(diameter))


def _measured_errors(got: Mapping[str, Any]) -> Iterator[FieldError]:
    warp = got.get("warp")
    if warp is None or warp.yarn() is not None:
        return
    for key in ("dip", "pluck"):
        if got.get(f"frame.{key}") is not None:
            yield FieldError(f"frame.{key}", EndNeed.WEIGHED_WARP, Message(Refusal.NEITHER), leave_out(key))
