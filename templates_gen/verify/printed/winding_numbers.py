"""The numbers of a winding picture: those of the marks of both ends, each at its own mark, and none for passes."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from templates_gen.messages.roles.proof_printed import Passes
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.printed.expected_passes import ExpectedPass, NumberedMarks
from templates_gen.verify.printed.picture import Picture

_FIGURE = 1.2  # from the middle of a number to where it begins, at most, for each figure, in mm
_ROOM = 2.0, 1.4  # the room in mm that each figure of a number takes, and the white beside it: where it is, all stand


def wrong_numbers(picture: Picture, marks: NumberedMarks, shown: Sequence[ExpectedPass]) -> Iterator[Finding]:
    """What stands at no mark of its own, and which numbers are lacking."""
    scale = _scale(picture, shown)
    for far, role in ((False, Passes.NUMBER_NEAR), (True, Passes.NUMBER_FAR)):
        wanted: dict[int, float] = {}
        for one, way in zip(picture.passes, shown, strict=True):
            number, away = marks.at_far(way) if far else marks.at_near(way)
            here = way.middle + (way.lean if far else -way.lean) / 2
            x = one.far if far else one.near
            wanted[number] = x + float(away - here) * scale
        found = {int(said): x for x, said in picture.numbers(far=far)}
        for number, x in found.items():
            at = wanted.get(number)
            if at is None or not 0 < picture.toward * at - x < _FIGURE * len(str(number)):
                yield finding(role, number=str(number))
        if lacking := _asked(wanted) - found.keys():
            yield finding(Passes.NUMBERS, first=min(lacking), last=max(lacking))


def _scale(picture: Picture, shown: Sequence[ExpectedPass]) -> float:
    """How many times as wide as on the frame everything is drawn."""
    return (picture.passes[1].middle - picture.passes[0].middle) / float(shown[1].middle - shown[0].middle)


def _asked(wanted: dict[int, float]) -> set[int]:
    """Which numbers must stand there: all of them where there is room, else the first and the last."""
    each, white = _ROOM
    room = min((other - one for one, other in pairwise(sorted(wanted.values()))), default=99.0)
    if room > each * len(str(max(wanted))) + white:
        return set(wanted)
    return {min(wanted), max(wanted)}
