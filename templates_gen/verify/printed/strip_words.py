"""Everything that a strip and its sheet say: the messages that the kit asks for, each in its place."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction

from layout.drawing.shapes import Point
from layout.kit.kit import Kit
from layout.messages.catalogue import Role
from layout.messages.english import ENGLISH
from layout.messages.roles import Sheet, Strip
from templates_gen.messages.roles.proof_printed import Strips
from templates_gen.verify.finding import Finding, Findings, end_place, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.truth import Form
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.places import arrows_on, astray, misplaced
from templates_gen.verify.printed.expected import ends_of
from templates_gen.verify.printed.strip_form import to_weaving
from templates_gen.verify.printed.warp_words import doubled
from templates_gen.verify.said import account, check_heads, pieces_named, words_on


def sides(kit: Kit, end: str, sett: Fraction) -> dict[str, Strip]:
    """What stands at the left and at the right of the strip of `end`: the warp begins at the near end."""
    start = kit.weaving.start
    stop = "right" if start == "left" else "left"
    found = {"left": Strip.LEFT, "right": Strip.RIGHT}
    if truth_of(kit).on_rod:
        return found
    if end == "near":
        found[start] = Strip.TIE_ON_LEFT if start == "left" else Strip.TIE_ON_RIGHT
    passes = ends_of(kit, sett)
    if end == ("far" if passes % 2 else "near"):
        found[stop] = Strip.TIE_OFF_LEFT if stop == "left" else Strip.TIE_OFF_RIGHT
    return found


def pointing(kit: Kit, end: str, sett: Fraction) -> list[tuple[Role, str]]:
    """Which messages have an arrow, and the way it points."""
    tied: list[tuple[Role, str]] = [
        (role, side) for side, role in sides(kit, end, sett).items() if role not in (Strip.LEFT, Strip.RIGHT)
    ]
    edge = (Strip.EDGE_TO_WEAVING, "up" if to_weaving(kit, end) > 0 else "down")
    return [*tied, edge, (_way(kit, sett), "right" if kit.weaving.start == "left" else "left")]


def _way(kit: Kit, sett: Fraction) -> Strip:
    return truth_of(kit).way(kit.frame.ends, kit, sett)


def check_arrows(kit: Kit, end: str, sett: Fraction, pieces: Sequence[FoundPart]) -> Findings:
    """The arrow heads of a strip, whether its words can be read or not."""
    found, wanted = sorted(a.way for a in arrows_on(pieces)), sorted(way for _, way in pointing(kit, end, sett))
    return Findings(
        0.0, () if found == wanted else (finding(Strips.ARROWS, found=found, wanted=wanted).at(end_place(end)),)
    )


def check_strip_words(
    kit: Kit, end: str, sett: Fraction, lines: Mapping[str, str], form: Form, pieces: Sequence[FoundPart]
) -> Findings:
    """Every message of a strip once, nothing else, and the head of every sheet; `lines` are the warp in words."""
    every = sides(kit, end, sett)
    said = [
        *every.values(),
        Strip.CENTRE,
        Strip.EDGE_TO_WEAVING,
        Strip.NEAR_FROM_FACE if end == "near" else Strip.FAR_FROM_FACE,
        _way(kit, sett),
    ]
    wanted = [*map(ENGLISH.say, said), *doubled(kit)]
    spare = [lines["sett"], lines["name"]]
    low = form == "low"
    wanted += pieces_named(pieces)
    accounted = account(words_on(pieces), wanted if low else [*wanted, *spare], spare if low else [])
    named: dict[Role, str] = {role: ENGLISH.say(role) for role in said}
    places = {role: accounted.places[words][0] for role, words in named.items() if words in accounted.places}
    wrong = [*accounted.wrong, *_misplaced(every, places)]
    if not accounted.wrong:
        wrong += astray(pointing(kit, end, sett), places, arrows_on(pieces), [at for at, _ in words_on(pieces)])
    total = Findings(0.0, tuple(problem.at(end_place(end)) for problem in wrong))
    use = ENGLISH.paragraph(list(_use(kit, end, sett, form)))
    return total + check_heads(pieces, _title(kit, end), lines, [use], low=low)


def _misplaced(every: Mapping[str, Strip], places: Mapping[Role, Point]) -> Iterator[Finding]:
    """Left, right and centre where they are."""
    yield from misplaced(*(places.get(role) for role in (every["left"], every["right"], Strip.CENTRE)))


def _title(kit: Kit, end: str) -> str:
    return ENGLISH.say(truth_of(kit).title(kit.frame.ends, end))


def _use(kit: Kit, end: str, sett: Fraction, form: Form) -> Iterator[str]:
    """How the strip is used, in the sizes of the kit."""
    yield ENGLISH.say(Sheet.FOR_BOTTOM if to_weaving(kit, end) > 0 else Sheet.FOR_TOP)
    yield from truth_of(kit).use(kit.frame.ends, kit, sett, form)
