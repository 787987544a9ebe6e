"""Everything that a spacing guide and its sheet say, with the figures of the fan found by following the ends."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import product
from typing import TypeVar

from layout.kit.kit import Kit
from layout.messages.catalogue import Catalogue, Role
from layout.messages.roles import Guide, Sheet, SheetName
from layout.values.numerals import say_number
from layout.values.units import in_unit
from templates_gen.languages.catalogues import words_of
from templates_gen.messages.roles.proof import Words
from templates_gen.verify.finding import NOTHING, Finding, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.heads import About, check_heads, pieces_named
from templates_gen.verify.joining import joining
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.places import arrows_on, astray, misplaced
from templates_gen.verify.printed.fan import End, Followed
from templates_gen.verify.printed.warp_words import of_no_order, order_on_each
from templates_gen.verify.said import Accounted, Word, account, words_on

_INCH = 25.4
_NUDGES = (0.0, -1e-6, 1e-6)  # mm: what lies so close to the middle between two last figures may be rounded to either
Read = TypeVar("Read")
_ENDS: tuple[End, End] = ("near", "far")
_PIECE = {"near": Guide.NEAR_PIECE, "far": Guide.FAR_PIECE}
_BY_THEMSELVES = {"near": Guide.BY_THEMSELVES_NEAR, "far": Guide.BY_THEMSELVES_FAR}
_OFF = {"near": Guide.OFF_NEAR, "far": Guide.OFF_FAR}
_ALWAYS = {"near": Guide.ALWAYS_PUSH_NEAR, "far": Guide.ALWAYS_PUSH_FAR}


@dataclass(frozen=True, slots=True)
class FanWords:
    """What the guide of `end` must say: `warp` the warp in words, `back` whether ends lie behind at either heading,
    `first` whether the first end is in front at each of them, `up` the way to the weaving on the paper, how the ends
    of the `fan` lie, in inches or not, and `whole` how long the scale of units is.
    """

    kit: Kit
    end: End
    warp: Mapping[str, str]
    back: bool
    first: tuple[bool, ...]
    up: int
    fan: Followed
    imperial: bool
    whole: Fraction

    @property
    def words(self) -> Catalogue:
        """The language of its sheets."""
        return words_of(self.kit)

    @property
    def roles(self) -> tuple[Role, ...]:
        """The messages that stand on every guide of that end."""
        return (Guide.LEFT, Guide.RIGHT, Guide.CENTRE, _seen(self.end))

    def away(self, end: End, nudge: float) -> str:
        """How far a heading is from the outer edge of its frame end."""
        height = self.fan.heading(end)
        return self._height((height if end == "near" else self.fan.high - height) + nudge)

    def sheet(self, nudge: float) -> About:
        """What stands beside the guides, each figure a `nudge` in mm more."""
        say = self.words.say
        return About(
            say(SheetName.NAME_GUIDES),
            say(SheetName.PURPOSE_GUIDES),
            (say(Guide.GLUE), self._lay(nudge), say(self._push()), say(Guide.CHECK)),
            tuple(self._lies(nudge)),
            (*map(say, self._beside()), *self._picture(nudge)),
            (say(Sheet.KNIFE),),
        )

    def _lay(self, nudge: float) -> str:
        near, far = (self.away(end, nudge) for end in _ENDS)
        if truth_of(self.kit).on_rod:
            return self.words.say(Guide.LAY_ROD, near=near)
        return (
            self.words.say(Guide.LAY, away=near) if near == far else self.words.say(Guide.LAY_BOTH, near=near, far=far)
        )

    def _push(self) -> Role:
        from_left = self.kit.weaving.start == "left"
        if not self.back:
            return Guide.PUSH_LEFT if from_left else Guide.PUSH_RIGHT
        if len(set(self.first)) > 1:
            return Guide.PUSH_LEFT_MIXED if from_left else Guide.PUSH_RIGHT_MIXED
        if self.first[0]:
            return Guide.PUSH_LEFT_ODD if from_left else Guide.PUSH_RIGHT_ODD
        return Guide.PUSH_LEFT_EVEN if from_left else Guide.PUSH_RIGHT_EVEN

    def _lies(self, nudge: float) -> Iterator[str]:
        fan, free = self.fan, self.fan.settles()
        for end in _ENDS:
            height = fan.heading(end)
            if free is not None and free[0] <= height <= free[1]:
                yield self.words.say(_BY_THEMSELVES[end])
                continue
            said = {"away": self.away(end, nudge), "off": self._fine(fan.off(height) + nudge)}
            if free is None:
                yield self.words.say(_ALWAYS[end], **said)
            else:
                settled = self._height((free[0] if end == "near" else fan.high - free[1]) + nudge)
                yield self.words.say(_OFF[end], **said, free=settled)
        if fan.leaves_thickness_out:
            yield self.words.say(Guide.UNKNOWN_THICKNESS)

    def _beside(self) -> Iterator[Role]:
        """Headings, legend and the words of the picture but its measure."""
        yield from (Guide.HOW_IT_LIES, Guide.ROWS, _seen(self._shown()), Guide.READING, Guide.FULL_MARK)
        yield from [Guide.BROKEN_MARK, Guide.BEHIND] if self.back else []
        yield Guide.HALF_INCHES if self.imperial else Guide.CENTIMETRE_SCALE
        yield from (Guide.LIMIT, Guide.THICK_EDGE, Guide.CUT, Guide.CENTRE)

    def _shown(self) -> End:
        """The heading that the picture shows: the lower one as the frame stands."""
        return "near" if self.kit.weaving.near_end == "bottom" else "far"

    def _picture(self, nudge: float) -> Iterator[str]:
        yield self.away(self._shown(), nudge)

    def _height(self, mm: float) -> str:
        return _short(mm / _INCH, 1, "in", self.words) if self.imperial else _short(mm, 0, "mm", self.words)

    def _fine(self, mm: float) -> str:
        if self.imperial:
            return _short(mm / _INCH, 2 if mm >= _INCH / 10 else 3, "in", self.words)
        return _short(mm, 1 if mm >= 1 else 2, "mm", self.words)


_SIGNS = str.maketrans("", "", ".,")


def _seen(end: End) -> Guide:
    return Guide.NEAR_FROM_FACE if end == "near" else Guide.FAR_FROM_FACE


def check_words(asked: FanWords, pieces: Sequence[FoundPart]) -> Findings:
    """Every message of a guide once, nothing else, each piece named, and all that its sheets say beside it."""
    number = asked.kit.order.number  # in a narrow gap it stands on a line of its own
    words = [word for word in words_on(pieces) if not word[1].translate(_SIGNS).isdigit() or word[1] in number]
    names = [pieces_named(pieces, role) for role in (_PIECE[asked.end], Sheet.PIECE)]
    ordered = order_on_each(asked.kit, pieces)
    tried = product(_NUDGES, names)
    accounted, named = _least(
        ((_accounted(asked, words, ordered, named, nudge, pieces[0].spoken), named) for nudge, named in tried),
        lambda each: each[0].wrong,
    )
    wrong = [*accounted.wrong, *_strangers(named, pieces), *of_no_order(asked.kit, pieces)]
    if not wrong:
        places = {role: accounted.places[asked.words.say(role)][0] for role in asked.roles}
        wrong += misplaced(*(places[role] for role in asked.roles[:3]))
        if at := accounted.places.get(asked.words.say(Guide.EDGE)):
            edge = [(Guide.EDGE, "up" if asked.up > 0 else "down")]
            wrong += astray(edge, {Guide.EDGE: at[0]}, arrows_on(pieces), [place for place, _ in words])
    heads = NOTHING
    for sheet in {seen.number: seen for seen in pieces}.values():
        heads += _least(_heads(asked, sheet, pieces), lambda each: each.problems)
    return Findings(0.0, tuple(wrong)) + heads


def _strangers(named: Sequence[str], pieces: Sequence[FoundPart]) -> Iterator[Finding]:
    """Pieces on which the name of another one stands."""
    for own, seen in zip(named, pieces, strict=False):
        again = seen.spoken.again
        others = {again(each) for each in named if each != own}
        yield from (finding(Words.OTHER, words=said).at(seen.where) for _, said in seen.words() if said in others)


def _heads(asked: FanWords, seen: FoundPart, pieces: Sequence[FoundPart]) -> Iterator[Findings]:
    """What a sheet says, with each reading of the figures, in the full form and in the low one.

    Of a guide in pieces the first sheet says how they are used and joined; later ones may leave it out, as may those
    of the far guide, since the near one says it of both.
    """
    joined = joining(pieces)
    first = seen.number == pieces[0].number
    spared = len(pieces) > 1 and (asked.end == "far" or not first)
    for low, nudge in product((False, True), _NUDGES):
        about = asked.sheet(nudge)
        about = about._replace(notes=(*about.notes, *joined))
        yield check_heads([seen], about.title, asked.warp, (), low=low, joined=False, more=about)
        if spared:
            head = About(about.title, about.purpose)
            yield check_heads([seen], about.title, asked.warp, (), joined=False, more=head)


def _least(found: Iterable[Read], wrong: Callable[[Read], Sequence[Finding]]) -> Read:
    """The first reading with nothing wrong, else the one with least."""
    tried: list[Read] = []
    for each in found:
        if not wrong(each):
            return each
        tried.append(each)
    return min(tried, key=lambda each: len(wrong(each)))


def _accounted(
    asked: FanWords,
    words: Sequence[Word],
    ordered: Sequence[str],
    labels: Sequence[str],
    nudge: float,
    spoken: Catalogue,
) -> Accounted:
    """What stands on the guide itself: where it lies and which edge leads are left out where there is no room."""
    spare = [asked.words.say(Guide.EDGE), asked.words.say(Guide.AWAY, away=asked.away(asked.end, nudge))]
    unit = Guide.INCHES if asked.imperial else Guide.CENTIMETRES
    spare.append(asked.words.say(unit, number=say_number(asked.whole)))
    return account(words, [*map(asked.words.say, asked.roles), *ordered, *labels], spare, spoken)


def _short(value: float, places: int, unit: str, words: Catalogue) -> str:
    return in_unit(say_number(value, places), unit, words)
