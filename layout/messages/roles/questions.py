"""The roles of what is asked about numbers that are hardly meant."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Question(Role):
    """Numbers that can be read but are hardly meant."""

    TWICE = "question.twice"
    GIVEN = "question.given"
    READINGS = "question.readings"
    WINDOW = "question.window"
    WINDOW_UNIT = "question.window_unit"
    FRAME = "question.frame"
    FRAME_UNIT = "question.frame_unit"
    SIDE = "question.side"
    SIDE_UNIT = "question.side_unit"
