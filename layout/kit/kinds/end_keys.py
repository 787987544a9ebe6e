"""What the keys of one kind of frame end are, and what they must be to one another."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any, Literal

from layout.frames.kinds.frame_end import FrameEnd
from layout.kit.input import Input, of_mm
from layout.messages.catalogue import Role
from layout.messages.roles import KitHelp
from layout.sett.marking_units import CountedThing
from layout.values.errors import FieldError

Got = Mapping[str, Any]

THICKNESS = Input(
    "frame.thickness",
    "length",
    KitHelp.FRAME_THICKNESS,
    '"18 mm"',
    low=of_mm(2),
    high=of_mm(120),
)
EDGE_DISTANCE = Input(
    "frame.edge_distance",
    "length",
    KitHelp.FRAME_EDGE_DISTANCE,
    '"10 mm"',
    low=of_mm(2),
    high=of_mm(200),
)


def _nothing(_: Got) -> Iterator[FieldError]:
    return iter(())


@dataclass(frozen=True, slots=True)
class EndKeys:
    """The keys of the table [frame] that make frame ends of the type `make`: their `inputs`, in the order of the file.

    `fields` are the fields that the keys fill, by key; those in `optional` may be left out and then stand at what is
    said there. `counted` is what is counted off in a marking unit, `inside` the refusal of a board that is too narrow
    for what lies in it. `strength` is the key for the section of such an end, and `check` finds what is wrong between
    its keys.
    """

    make: type[FrameEnd]
    inputs: tuple[Input, ...]
    fields: Mapping[str, str]
    counted: CountedThing
    strength: Literal["bar_bore", "end_width"] = "end_width"
    optional: Mapping[str, Any] = field(default_factory=dict)
    inside: Role | None = None
    check: Callable[[Got], Iterator[FieldError]] = _nothing
