"""Everything that a winding picture and its sheet say: the messages that the kit asks for, each in its place."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from typing import NamedTuple

from layout.drawing.shapes import Point
from layout.kit.kit import Kit
from layout.messages.catalogue import Catalogue
from layout.messages.roles import Shed, SheetName, Winding
from templates_gen.messages.roles.proof import Words
from templates_gen.messages.roles.proof_printed import Passes, Sample
from templates_gen.verify.finding import Finding, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.heads import About, check_heads
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.expected_passes import ExpectedPass
from templates_gen.verify.printed.heading_rows import shed_words
from templates_gen.verify.printed.picture import Picture, split_words
from templates_gen.verify.printed.winding_steps import ExpectedStep
from templates_gen.verify.said import Word, squeezed
from templates_gen.verify.tight import tightening

_NAMED = 14.0  # from the height of the rod to where its name begins, at most, in mm
_FIELD = 44.0, 36.0, 160.0, 210.0  # mm that the furniture of a sheet takes, and what is left on paper that is not small
_LINE = 5.6  # from one line of a message to the next, at most, in mm
_ASIDE = 60.0
_STEP = "4"


class Shown(NamedTuple):
    """Every pass of the warp, those that are drawn, what the picture shows, and what is to be done."""

    passes: Sequence[ExpectedPass]
    drawn: Sequence[ExpectedPass]
    picture: Picture
    steps: Sequence[ExpectedStep]


def is_small(kit: Kit) -> bool:
    """Whether the paper has no room for knots, shed stick and heading rows beside the picture."""
    across, up, wide, high = _FIELD
    return kit.paper.width - across < wide - 0.2 or kit.paper.height - up < high - 0.2


def check_winding_words(kit: Kit, warp: Mapping[str, str], words: Catalogue, shown: Shown, seen: FoundPart) -> Findings:
    """Every message of the picture once, nothing else, each where it belongs; and what its sheet says beside it."""
    truth, picture, say = truth_of(kit), shown.picture, words.say
    sides = [Winding.SIDE_FACE, Winding.SIDE_BEHIND, Winding.FROM_RIGHT]
    rod = [Winding.ROD] if truth.on_rod else []
    source = truth.numbers(kit.frame.ends)
    roles = [Winding.NEAR_BAR, Winding.FAR_BAR, *sides, *rod, *truth.legend, source]
    wanted = [*map(say, roles), *_between(truth.winds, shown, words)]
    allowed: list[str] = []
    if not is_small(kit):
        wanted += [say(role) for role in (Winding.HITCHES, Winding.BOW, Shed.TITLE)]
        wanted += [*shed_words(kit, words), *cautions(kit, words)]
        allowed = [say(Winding.CLIP)]
    steps = [step.said for step in shown.steps]
    inside = is_small(kit) and bool(accounted_for(picture.words, steps[:1]).places)
    accounted = accounted_for(picture.words, [*wanted, *(steps if inside else [])], allowed)
    wrong = [*accounted.wrong]
    if not is_small(kit) and _on_tiles(picture, seen) != [_STEP]:
        wrong.append(finding(Passes.SHED_TILE))
    if not wrong:
        wrong += _misplaced(accounted.places, picture, words, on_rod=truth.on_rod)
        wrong += _legend(accounted.places, truth.legend, picture, words)
    title = say(SheetName.NAME_WINDING)
    purpose = say(SheetName.PURPOSE_WINDING if truth.winds else Winding.PURPOSE_THERE_AND_BACK)
    about = About(title, purpose=purpose, steps=() if inside else tuple(steps))
    return Findings(0.0, tuple(wrong)) + check_heads([seen], title, warp, [], more=about)


def check_shed_words(kit: Kit, warp: Mapping[str, str], words: Catalogue, seen: FoundPart) -> Findings:
    """The same where shed stick and heading rows have a sheet of their own."""
    _, found = split_words(seen.shapes(), list(seen.words()))
    wrong = accounted_for(found, shed_words(kit, words)).wrong
    title = words.say(Shed.TITLE)
    about = About(title, cautions=tuple(cautions(kit, words)))
    return Findings(0.0, tuple(wrong)) + check_heads([seen], title, warp, [], more=about)


def cautions(kit: Kit, words: Catalogue) -> list[str]:
    """What to mind."""
    rod = [words.say(Winding.DRAW_ROD)] if truth_of(kit).on_rod else []
    return [words.say(Winding.TENSION), *rod, *tightening(kit, words)]


def _on_tiles(picture: Picture, seen: FoundPart) -> list[str]:
    """What stands neither in a ring nor on the white."""
    free = {at for at, _ in picture.words}
    return [
        said
        for at, said in seen.words()
        if at not in free and not any(math.dist(at, ring.at) < ring.radius for ring in picture.rings)
    ]


def _between(wound: bool, shown: Shown, words: Catalogue) -> list[str]:
    """Which winds or ends are not drawn."""
    missing, drawn = len(shown.passes) - len(shown.drawn), list(shown.drawn)
    if not missing:
        return []
    first = next(k for k, way in enumerate(shown.passes) if k >= len(drawn) or way != drawn[k])
    if wound:
        return [words.say(Winding.WINDS_BETWEEN, first=first // 2 + 1, last=(first + missing) // 2)]
    return [words.say(Winding.ENDS_BETWEEN, first=first + 1, last=first + missing)]


class Accounted(NamedTuple):
    """Where each message begins that was found, and what is wrong."""

    places: dict[str, list[Point]]
    wrong: list[Finding]


def accounted_for(found: Sequence[Word], wanted: Sequence[str], allowed: Sequence[str] = ()) -> Accounted:
    """Every one of `wanted`, and what is there of `allowed`: on one line, or on lines close under each other.

    Figures alone are left to others.
    """
    places: dict[str, list[Point]] = {}
    wrong: list[Finding] = []
    rest = sorted(found, key=lambda word: (-word[0].y, word[0].x))
    broken = []
    for message in (*wanted, *allowed):
        whole = next((word for word in rest if word[1] == message), None)
        if whole:
            rest.remove(whole)
            places.setdefault(message, []).append(whole[0])
        else:
            broken.append(message)
    for message in broken:
        if lines := next((way for word in rest if (way := _lines(squeezed(message), word, rest))), None):
            rest = [word for word in rest if word not in lines]
            places.setdefault(message, []).append(lines[0][0])
        elif message not in allowed:
            wrong.append(finding(Words.NOWHERE, words=message))
    wrong += [finding(Words.OTHER, words=said) for _, said in rest if not said.isdigit()]
    return Accounted(places, wrong)


def _lines(message: str, first: Word, found: Sequence[Word]) -> list[Word]:
    """The lines of a message without its spaces, from this one on, each close under the one before; none if it is not
    there.
    """
    line = squeezed(first[1])
    if not line or not message.startswith(line):
        return []
    left = message[len(line) :]
    if not left:
        return [first]
    (x, y), _ = first
    for word in found:
        (at_x, at_y), _ = word
        if 0 < y - at_y < _LINE and abs(at_x - x) < _ASIDE and (rest := _lines(left, word, found)):
            return [first, *rest]
    return []


def _misplaced(
    places: Mapping[str, list[Point]], picture: Picture, words: Catalogue, *, on_rod: bool
) -> Iterator[Finding]:
    """Names at the frame ends and the sides of the view that they belong to."""
    near, far = (places[words.say(role)][0] for role in (Winding.NEAR_BAR, Winding.FAR_BAR))
    if picture.is_far(near) or not picture.is_far(far):
        yield finding(Passes.ENDS_NAMED)
    rod = places.get(words.say(Winding.ROD), []) if on_rod else []
    if any(at.x < picture.side_knots[0].x or abs(at.y - picture.knots[0].y) > _NAMED for at in rod):
        yield finding(Passes.ROD_NAMED)
    face, behind = (places[words.say(role)] for role in (Winding.SIDE_FACE, Winding.SIDE_BEHIND))
    if not face[0].x < max(behind, key=lambda at: at.y).x:
        yield finding(Passes.SIDES_NAMED)


def _legend(
    places: Mapping[str, list[Point]], roles: Sequence[Winding], picture: Picture, words: Catalogue
) -> Iterator[Finding]:
    """Each sample beside its words."""
    for role in roles:
        at = min(places[words.say(role)], key=lambda place: place.y)
        sample = _SAMPLES[role]
        if picture.sample(at) != sample:
            yield finding(Passes.SAMPLE, sample=sample, words=words.say(role))


_SAMPLES = {
    Winding.ON_FACE: Sample.FULL,
    Winding.BEHIND: Sample.BROKEN,
    Winding.BEHIND_TOOTH: Sample.BROKEN,
    Winding.KNOT: Sample.KNOT,
}
