"""Everything that a spacing guide and its sheet say, with the figures of the fan found by following the ends."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from layout.kit.kit import Kit
from layout.messages.catalogue import Role
from layout.messages.english import ENGLISH
from layout.messages.roles import Guide, Strip
from layout.values.numerals import say_number
from templates_gen.verify.finding import Findings
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.places import arrows_on, astray, misplaced
from templates_gen.verify.printed.fan import End, Followed
from templates_gen.verify.said import Accounted, Word, account, check_heads, pieces_named, words_on

_INCH = 25.4
_TIE = 1e-6  # mm: what lies so close to the middle between two last figures may be rounded to either


@dataclass(frozen=True, slots=True)
class FanWords:
    """What the guide of `end` must say: `warp` the warp in words, `layers` whether ends lie behind too, `up` the way to
    the weaving on the paper, and how the ends of the `fan` lie, in inches or not.
    """

    kit: Kit
    end: End
    warp: Mapping[str, str]
    layers: bool
    up: int
    fan: Followed
    imperial: bool

    @property
    def roles(self) -> tuple[Role, ...]:
        """The messages that stand on every guide of that end."""
        seen = Guide.NEAR_FROM_FACE if self.end == "near" else Guide.FAR_FROM_FACE
        return (Strip.LEFT, Strip.RIGHT, Strip.CENTRE, Strip.EDGE_TO_WEAVING, seen)

    def messages(self, nudge: float, *, brief: bool) -> list[str]:
        """Every message but sett and name, each figure a `nudge` in mm more; `brief` as on a low guide."""
        every = [*map(ENGLISH.say, self.roles)]
        layers = Guide.LAYERS_BRIEF if brief else Guide.LAYERS
        every.append(ENGLISH.say(layers if self.layers else Guide.ALL_ON_FACE))
        every += self._fan(nudge, brief=brief)
        return [*every, ENGLISH.say(Guide.UNKNOWN_THICKNESS)] if self.fan.leaves_thickness_out else every

    def _fan(self, nudge: float, *, brief: bool) -> Iterator[str]:
        fan, end = self.fan, self.end
        height, free = fan.heading(end), fan.settles()
        if free is not None and free[0] <= height <= free[1]:
            yield ENGLISH.say(Guide.BY_THEMSELVES_BRIEF if brief else Guide.BY_THEMSELVES)
            return
        away = self._height((height if end == "near" else fan.high - height) + nudge)
        off = self._fine(fan.off(height) + nudge)
        yield ENGLISH.say(Guide.OFF_BRIEF if brief else Guide.OFF, away=away, off=off)
        if free is None:
            yield ENGLISH.say(Guide.ALWAYS_PUSH)
        else:
            settled = self._height((free[0] if end == "near" else fan.high - free[1]) + nudge)
            yield ENGLISH.say(Guide.NO_PUSH_BRIEF if brief else Guide.NO_PUSH, away=settled)

    def _height(self, mm: float) -> str:
        return _short(mm / _INCH, 1, "in") if self.imperial else _short(mm, 0, "mm")

    def _fine(self, mm: float) -> str:
        if self.imperial:
            return _short(mm / _INCH, 2 if mm >= _INCH / 10 else 3, "in")
        return _short(mm, 1 if mm >= 1 else 2, "mm")


def check_words(asked: FanWords, pieces: Sequence[FoundPart]) -> Findings:
    """Every message of a guide once, in its full or its low form, nothing else, and the head of every sheet."""
    words = words_on(pieces)
    brief, accounted = _accounted(asked, words, pieces_named(pieces))
    wrong = list(accounted.wrong)
    if not wrong:
        places = {role: accounted.places[ENGLISH.say(role)][0] for role in asked.roles}
        wrong += misplaced(*(places[role] for role in asked.roles[:3]))
        edge = [(Strip.EDGE_TO_WEAVING, "up" if asked.up > 0 else "down")]
        wrong += astray(edge, places, arrows_on(pieces), [at for at, _ in words])
    title = Guide.TITLE_NEAR if asked.end == "near" else Guide.TITLE_FAR
    sides = (Guide.USE_BOTTOM, Guide.USE_TOP)
    if asked.end == "far" and truth_of(asked.kit).on_rod:
        sides = (Guide.USE_ROD_BOTTOM, Guide.USE_ROD_TOP)
    use = [sides[asked.up < 0], *([Guide.TENTH] if brief else [])]
    note = ENGLISH.paragraph([ENGLISH.say(role) for role in use])
    return Findings(0.0, tuple(wrong)) + check_heads(pieces, ENGLISH.say(title), asked.warp, [note], low=brief)


def _accounted(asked: FanWords, words: Sequence[Word], labels: Sequence[str]) -> tuple[bool, Accounted]:
    """Whether the guide is of the low form, and what is accounted for; of several readings the one with least wrong."""
    spare = [asked.warp["sett"], asked.warp["name"]]
    found = []
    for brief in (False, True):
        for nudge in (0.0, -_TIE, _TIE):
            wanted = [*asked.messages(nudge, brief=brief), *labels]
            accounted = account(words, wanted if brief else [*wanted, *spare], spare if brief else [])
            if not accounted.wrong:
                return brief, accounted
            found.append((brief, accounted))
    return min(found, key=lambda each: len(each[1].wrong))


def _short(value: float, places: int, unit: str) -> str:
    return f"{say_number(value, places)} {unit}"
