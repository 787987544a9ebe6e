"""Everything that a frame check sheet says, each number found from the kit alone."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction

from layout.kit.kit import Kit
from layout.messages.english import ENGLISH
from layout.messages.roles import Beam, Check
from layout.values.forces import say_force
from layout.values.numerals import say_number, say_root
from layout.values.units import Length, say_length
from templates_gen.messages.roles.proof_printed import Frame
from templates_gen.verify.finding import Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.bending import bending, threads_of
from templates_gen.verify.printed.measuring import measuring_words, rows_and_rest, table_rows
from templates_gen.verify.printed.pull import pulls_of
from templates_gen.verify.said import account, check_heads, words_on

_INCH = Fraction(127, 5)
_POUND = Fraction("0.45359237") * Fraction("9.80665")
"""A pound-force in N: the international pound of 1959 times standard gravity (3rd CGPM, 1901)."""
_WIDE, _HIGH = 200.0, 260.0  # mm: on smaller paper the sheet comes in two parts
_BARE = 3  # so many checks come before the frame is warped
_SIDES = ((Check.ONE, Check.OTHER), (Check.LEFT, Check.RIGHT), (), (Check.BENT_BY,), (Check.FREE, Check.FOUND))


def checks_are_two(kit: Kit) -> bool:
    """Whether the sheet comes in two parts: what is measured before the frame is warped, and what after."""
    return kit.paper.width < _WIDE or kit.paper.height < _HIGH


def check_frame_words(kit: Kit, sett: Fraction, warp: Mapping[str, str], seen: FoundPart, *, low: bool) -> Findings:
    """Every message of the sheet once, in order, and nothing else; the dimensions where there is a picture."""
    pulls = seen.part.name == "pull-check"
    every = list(zip(_checks(kit, sett), _SIDES, strict=True))
    if checks_are_two(kit):
        every = every[_BARE:] if pulls else every[:_BARE]
    wanted, titles = _messages(every, low=low)
    if not low:
        wanted += [_dimension(kit.frame.outer_width), _dimension(kit.frame.outer_height)]
    table = table_rows(kit) if pulls or not checks_are_two(kit) else []
    wrong, rest = rows_and_rest(words_on([seen]), table)
    accounted = account(rest, wanted)
    wrong += accounted.wrong
    if not wrong:
        heights = [accounted.places[title][0].y for title in titles]
        wrong += [] if heights == sorted(heights, reverse=True) else [finding(Frame.ORDER)]
    travels = kit.frame.travel is not None and not pulls
    lowest = [ENGLISH.say(Check.AT_LOWEST, low=say_length(kit.frame.outer_height))] if travels else []
    title, note = (Check.TITLE_PULL, Check.NOTE_PULL) if pulls else (Check.TITLE, Check.NOTE)
    return Findings(0.0, tuple(wrong)) + check_heads([seen], ENGLISH.say(title), warp, [ENGLISH.say(note), *lowest])


def _messages(
    every: Sequence[tuple[tuple[Check, str], tuple[Check, ...]]], *, low: bool
) -> tuple[list[str], list[str]]:
    """What must be said, and of that what must stand in this order downward."""
    wanted, titles = [], []
    for (title, sentence), blanks in every:
        said = ENGLISH.say(Check.TITLED, title=ENGLISH.say(title), sentence=sentence)
        titles.append(said if low else ENGLISH.say(title))
        wanted += [said] if low else [ENGLISH.say(title), sentence]
        wanted += map(ENGLISH.say, blanks)
    titles.append(ENGLISH.say(Check.CAUTION))
    return [*wanted, titles[-1]], titles


def _checks(kit: Kit, sett: Fraction) -> Iterator[tuple[Check, str]]:
    """Each check by its title with its sentence; the diagonals may differ by w p / d."""
    frame = kit.frame
    width, height, inches = frame.outer_width.mm, frame.outer_height.mm, frame.outer_width.imperial
    squared = width * width + height * height
    long, apart = _root(squared, 1, inches), _root((width / sett) ** 2 / squared, 2, inches)
    yield Check.DIAGONALS, ENGLISH.say(Check.DIAGONALS_ARE, long=long, apart=apart)
    half = _both(1 / sett / 2, 2, inches)
    yield Check.PARALLEL, ENGLISH.say(Check.PARALLEL_ARE, high=_both(height, 1, inches), apart=half)
    yield Check.CENTRE, ENGLISH.say(Check.CENTRE_IS, half=_both(width / 2, 1, inches))
    most = _both((width - 2 * frame.side_width.mm) / 500, 2, inches)
    if (bent := bending(kit, sett)) is None:
        gives = ENGLISH.say(Check.LAY_A_RULE, most=most)
    elif bent[0] == bent[2]:
        gives = ENGLISH.say(Check.BENDS, bent=_both(bent[1], 2, inches), most=most)
    else:
        values = {"bent": _both(bent[1], 2, inches), "high": _both(bent[2], 2, inches)}
        gives = ENGLISH.say(Check.BENDS_RANGE, **values, most=most)
    yield Check.PULL, ENGLISH.paragraph([_pull(kit, sett), gives])
    yield Check.MEASURE, measuring_words(kit)


def _pull(kit: Kit, sett: Fraction) -> str:
    threads, stated, (low, likely, high) = threads_of(kit, sett), kit.strength.tension, pulls_of(kit)
    least, newtons, most = (say_number(threads * each, 0) for each in (low, likely, high))
    lightest, pounds, heaviest = (say_number(threads * each / float(_POUND), 0) for each in (low, likely, high))
    values: dict[str, object] = {"threads": threads, "newtons": newtons, "pounds": pounds}
    if low == high:
        return ENGLISH.say(Check.PULL_IS, **values, tension=say_force(stated) if stated else likely)
    each = {"tension": say_number(likely, 1), "low": say_number(low, 1), "high": say_number(high, 1)}
    origin = "measured" if stated or kit.strength.dip or kit.strength.pluck else "assumed"
    values["tension"] = ENGLISH.say(Beam.TENSION_RANGE, **each, origin=origin)
    values |= {"least": least, "most": most, "lightest": lightest, "heaviest": heaviest}
    return ENGLISH.say(Check.PULL_RANGE, **values)


def _both(mm: Fraction | float, places: int, inches: bool) -> str:
    return _listed(say_number(mm, places), say_number(mm / _INCH, places + 1), inches)


def _root(squared: Fraction, places: int, inches: bool) -> str:
    """The length whose square in mm2 is `squared`."""
    return _listed(say_root(squared, places), say_root(squared / _INCH**2, places + 1), inches)


def _listed(metric: str, imperial: str, inches: bool) -> str:
    """Both figures with their units, the kit's own first."""
    both = [f"{metric} mm", f"{imperial} in"]
    return ENGLISH.listed(both[::-1] if inches else both)


def _dimension(size: Length) -> str:
    """An outer size, also in the other system."""
    other = f"{say_number(size.mm, 1)} mm" if size.imperial else f"{say_number(size.mm / _INCH, 2)} in"
    return ENGLISH.say(Check.DIMENSION, length=say_length(size), other=other)
