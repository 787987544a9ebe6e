"""Everything that a winding picture and its sheet say: the messages that the kit asks for, each in its place."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from layout.drawing.shapes import Point
from layout.kit.kit import Kit
from layout.messages.english import ENGLISH
from layout.messages.roles import Winding
from templates_gen.messages.roles.proof_printed import Passes, Sample
from templates_gen.verify.finding import Finding, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.expected_passes import ExpectedPass
from templates_gen.verify.printed.picture import DrawnPass, Picture
from templates_gen.verify.printed.warp_words import clauses
from templates_gen.verify.said import Word, account, check_heads, words_on
from templates_gen.verify.tight import tightening

_EACH = (
    Winding.NEAR_END,
    Winding.FAR_END,
    Winding.TIE_ON,
    Winding.TIE_OFF,
    Winding.NOT_TO_SCALE,
    Winding.SIDE_FACE,
    Winding.SIDE_BEHIND,
    Winding.FROM_RIGHT,
)
_NAMED = 2.0  # from the height of the rod to its name, at most, in mm
_FIGURE = 1.2  # from the middle of a number to where it begins, at most, for each figure, in mm


def check_winding_words(
    kit: Kit,
    warp: Mapping[str, str],
    wanted: Sequence[ExpectedPass],
    shown: Sequence[ExpectedPass],
    picture: Picture,
    seen: FoundPart,
) -> Findings:
    """Every message of the picture once, nothing else, each where it belongs; and the head of its sheet."""
    truth = truth_of(kit)
    words = words_on([seen])
    missing = _missing(truth.winds, wanted, picture)
    said = [*map(ENGLISH.say, (*_EACH, *truth.legend)), _counts(kit, wanted, words), *missing]
    said += [ENGLISH.say(Winding.ROD)] if truth.on_rod else []
    accounted = account(words, said)
    wrong = [*accounted.wrong]
    if not wrong:
        wrong += _misplaced(accounted.places, wanted, picture, on_rod=truth.on_rod)
        wrong += _legend(accounted.places, truth.legend, picture)
    wrong += _numbers(truth.winds, wanted, shown, picture)
    head = check_heads([seen], ENGLISH.say(Winding.TITLE), warp, [ENGLISH.say(truth.note), *tightening(kit)])
    return Findings(0.0, tuple(wrong)) + head


def _counts(kit: Kit, wanted: Sequence[ExpectedPass], words: Sequence[Word]) -> str:
    """The counts, and of what is doubled as much as there was room for."""
    every = clauses(kit, len(wanted))
    choices = [ENGLISH.listed(every[:k]) for k in range(len(every), 0, -1)]
    return next((each for each in choices if any(each == said for _, said in words)), choices[0])


def _missing(wound: bool, wanted: Sequence[ExpectedPass], picture: Picture) -> list[str]:
    """How many winds or ends are not drawn."""
    missing = len(wanted) - len(picture.passes)
    if not missing:
        return []
    if wound:
        return [ENGLISH.say(Winding.MORE_WINDS, count=missing // 2)]
    return [ENGLISH.say(Winding.MORE_ENDS, count=missing)]


def _misplaced(
    places: Mapping[str, list[Point]], wanted: Sequence[ExpectedPass], picture: Picture, *, on_rod: bool
) -> Iterator[Finding]:
    """Names at the frame ends, the knots and the sides of the view that they belong to."""
    near, far, on, off, _, face, behind, _ = (places[ENGLISH.say(role)] for role in _EACH)
    if picture.is_far(near[0]) or not picture.is_far(far[0]):
        yield finding(Passes.ENDS_NAMED)
    if picture.is_far(on[0]) or picture.is_far(off[0]) != (wanted[-1].up and not on_rod):
        yield finding(Passes.TIES_NAMED)
    if picture.toward * (off[0].x - on[0].x) <= 0:
        yield finding(Passes.TIES_ORDER)
    rod = places.get(ENGLISH.say(Winding.ROD), [])
    if any(at.x < picture.side_knots[0].x or abs(at.y - picture.knots[0].y) > _NAMED for at in rod):
        yield finding(Passes.ROD_NAMED)
    if not face[0].x < max(behind, key=lambda at: at.y).x:
        yield finding(Passes.SIDES_NAMED)


def _legend(places: Mapping[str, list[Point]], roles: Sequence[Winding], picture: Picture) -> Iterator[Finding]:
    """Each sample beside its words."""
    for role in roles:
        at = min(places[ENGLISH.say(role)], key=lambda place: place.y)
        sample = _SAMPLES[role]
        if picture.sample(at) != sample:
            yield finding(Passes.SAMPLE, sample=sample, words=ENGLISH.say(role))


_SAMPLES = {
    Winding.ON_FACE: Sample.FULL,
    Winding.BEHIND: Sample.BROKEN,
    Winding.BEHIND_TOOTH: Sample.BROKEN,
    Winding.KNOT: Sample.KNOT,
    Winding.ROWS: Sample.TWO,
}


def _numbers(
    wound: bool, wanted: Sequence[ExpectedPass], shown: Sequence[ExpectedPass], picture: Picture
) -> Iterator[Finding]:
    """Every number beyond the far end stands at its own wind or end; the first and the last are there."""
    every = {way: k for k, way in enumerate(wanted)}
    at: dict[int, float] = {}
    for way, one in zip(shown, picture.passes, strict=True):
        number = every[way]
        if not wound or (number % 2 == 0 and number < len(wanted) - 1):
            at[number // 2 + 1 if wound else number + 1] = _place(one, wound) * picture.toward
    numbered = set[int]()
    for x, words in picture.beyond:
        number = int(words)
        numbered.add(number)
        if number not in at or not 0 < at[number] - x < _FIGURE * len(words):
            yield finding(Passes.NUMBER_WIND if wound else Passes.NUMBER_END, number=words)
    if at and not {min(at), max(at)} <= numbered:
        yield finding(Passes.NUMBERS, first=min(at), last=max(at))


def _place(one: DrawnPass, wound: bool) -> float:
    return one.far if wound else one.middle
