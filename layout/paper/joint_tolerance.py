"""How far the distance over all joints of a part in pieces may be off when each joint is laid with usual care.

At a joint a piece lies off its place by up to OFF, in any direction, and turned by up to TURN about the middle of the
crosses. Along a row that runs `lever` beside that middle, a turn moves what follows by its angle times the lever; and
where pieces are turned against each other, the straight line from end to end is shorter than they are together.
"""

from __future__ import annotations

from math import ceil, hypot, radians, sqrt

OFF = 0.25
"""How far a piece lies off its crosses with usual care, in mm."""

TURN = radians(0.5)
"""How far it is turned then, in radians."""

_SURE = 2.0  # standard deviations: 95 of 100 parts
_STEP = 0.1


def joint_tolerance(distance: float, joints: int, lever: float) -> float:
    """By how much a `distance` in mm over so many `joints` may be off, in mm; 0 without joints.

    Errors of joints that know nothing of each other add up by their squares: of OFF in any direction half its square
    is along the part. To that comes by how much turns, each as likely either way, shorten the line from end to end of
    N equal pieces on average: distance TURN^2 (N^2 - 1) / (12 N), which is the mean spread of a random walk. One joint
    alone cannot be off by more than both together.
    """
    pieces = joints + 1
    turned = TURN * abs(lever)
    likely = _SURE * sqrt(joints) * hypot(OFF / sqrt(2), turned)
    return min(likely, joints * (OFF + turned)) + distance * TURN**2 * (pieces**2 - 1) / (12 * pieces)


def to_a_tenth(mm: float) -> float:
    """A tolerance as it is printed: rounded up to a tenth of a mm."""
    return ceil(mm / _STEP - 1e-6) * _STEP
