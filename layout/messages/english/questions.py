"""What is asked about numbers that are hardly meant."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Question

_UNIT = 'if {unit} were meant, write {leaf} = "{meant}".'

MESSAGES: dict[Role, str | Plural] = {
    Question.TWICE: (
        "Check {key}: {reading} is about twice what the wraps of warp and weft leave room for; if single threads were "
        "counted, write pairs = {pairs}."
    ),
    Question.GIVEN: "Check sett.given: {sett} is closer than usual on a frame; write what was meant.",
    Question.READINGS: (
        "Check sett.readings: {reading} makes {sett} ends per cm, closer than usual; count again, and write the pairs "
        "that fit."
    ),
    Question.WINDOW: "Check {key}: {length} is long to wrap over; write what was meant.",
    Question.WINDOW_UNIT: "Check {key}: {length} is long to wrap over; " + _UNIT,
    Question.FRAME: "Check {key}: {length} is long for a frame; write what was meant.",
    Question.FRAME_UNIT: "Check {key}: {length} is long for a frame; " + _UNIT,
    Question.SIDE: "Check {key}: {length} is long for that; write what was meant.",
    Question.SIDE_UNIT: "Check {key}: {length} is long for that; " + _UNIT,
}
