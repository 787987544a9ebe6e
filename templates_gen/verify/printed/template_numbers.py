"""The numbers on a template: each beside its own opening, and all that there must be."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from layout.drawing.shapes import Box
from templates_gen.messages.roles.proof_printed import Openings
from templates_gen.verify.finding import Finding, Findings, end_place, finding, once
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.opening import Opening

_WIDE, _CAP = 1.53, 1.88  # what a figure takes, and how high it is, in mm
_BESIDE, _ASIDE = 5.5, 3.2  # from an opening to the middle of its number, and how far aside it may stand, in mm
_PAST = 1.6  # a cross reaches so far past its hole
_JOINT = 5.0  # mm about a cross of a joint, where a number may be left out
_ROOM = 3.0  # between the crosses of two rows, in which a number surely stands


def check_numbers(openings: Sequence[Opening], first: int, end: str, pieces: Sequence[FoundPart]) -> Findings:
    """The numbers of all pieces of a template, whose openings count from `first`."""
    found: set[int] = set()
    wrong: list[Finding] = []
    for seen in pieces:
        for at, words in seen.words():
            if words.isdigit():
                middle = at.x + _WIDE * len(words) / 2, at.y + _CAP / 2
                found.add(int(words))
                if not _beside(middle, int(words) - first, openings):
                    wrong.append(finding(Openings.ASTRAY, number=int(words)).at(seen.where))
    joints = [point.x for seen in pieces for point in seen.part.datum] if len(pieces) > 1 else []
    box = _together(pieces)
    missing = [n for n in _wanted(openings, first, joints, box) if n not in found]
    may = {n for n in range(first, first + len(openings)) if n % 5 == 0 or n == 1}
    if missing or found - may or (first in may and not found):
        said = {"found": sorted(found), "missing": missing}
        wrong.append(finding(Openings.NUMBERS, **said).at(end_place(end)))
    return Findings(0.0, tuple(once(wrong)))


def _together(pieces: Sequence[FoundPart]) -> Box:
    lefts, lows, rights, highs = zip(*(seen.part.box for seen in pieces), strict=True)
    return min(lefts), min(lows), max(rights), max(highs)


def _beside(middle: tuple[float, float], k: int, openings: Sequence[Opening]) -> bool:
    """Whether the opening of a number is the one that it stands over or under."""
    if not 0 <= k < len(openings):
        return False
    x, y = middle
    own = openings[k]
    past = _PAST if own.round else 0.0
    over = abs(y - own.y) - own.up / 2 - past
    nearest = min(openings, key=lambda each: abs(each.x - x))
    rivals = (each for each in openings if each.y == own.y and each is not own)
    closest = all(abs(own.x - x) < abs(each.x - x) for each in rivals)
    return abs(own.x - x) < _ASIDE and 0.5 < over < _BESIDE - 1.6 and (closest or nearest is own)


def _wanted(openings: Sequence[Opening], first: int, joints: Sequence[float], box: Box) -> Iterator[int]:
    """Every fifth number, or every tenth, fiftieth ... where they would be too close or more than 30; 0 and 1 too."""
    last = first + len(openings) - 1
    pitch = abs(openings[1].x - openings[0].x) if len(openings) > 1 else float("inf")
    steps = (many * ten for ten in (1, 10, 100, 1000) for many in (5, 10))
    step = next(step for step in steps if step * pitch >= 3.2 * len(str(last)) + 3 and last <= 30 * step)
    if not _roomy(openings):
        return
    for k, each in enumerate(openings):
        number = first + k
        asked = number % step == 0 or (number == 1 and pitch * (1 if first == 0 else step - 1) >= 6)
        clear = all(abs(each.x - joint) > _JOINT for joint in joints)
        inside = box[0] + _ASIDE < each.x < box[2] - _ASIDE
        if asked and clear and inside:
            yield number


def _roomy(openings: Sequence[Opening]) -> bool:
    """Whether there is room between two rows, where there are two."""
    depths = sorted({abs(each.y) for each in openings})
    apart = depths[-1] - depths[0]
    return apart == 0 or apart > openings[0].up + 2 * _PAST + _ROOM
