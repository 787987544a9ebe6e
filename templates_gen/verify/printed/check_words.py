"""Everything that a frame check sheet says, each number found from the kit alone."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction

from layout.kit.kit import Kit
from layout.messages.english import ENGLISH
from layout.messages.roles import Check
from layout.values.forces import say_force
from layout.values.numerals import say_number, say_root
from layout.values.units import Length, say_length
from templates_gen.messages.roles.proof_printed import Frame
from templates_gen.verify.finding import Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.bending import USUAL, bending, tension_of, threads_of
from templates_gen.verify.said import account, check_heads, words_on

_INCH = Fraction(127, 5)
_POUND = Fraction("0.45359237") * Fraction("9.80665")
"""A pound-force in N: the international pound of 1959 times standard gravity (3rd CGPM, 1901)."""
_NEWTON = "N"
_SIDES = ((Check.ONE, Check.OTHER), (Check.LEFT, Check.RIGHT), (), (Check.BENT_BY,))


def check_frame_words(kit: Kit, sett: Fraction, warp: Mapping[str, str], seen: FoundPart, *, low: bool) -> Findings:
    """Every message of the sheet once, in order, and nothing else; the dimensions where there is a picture."""
    wanted, titles = [], []
    for (title, sentence), blanks in zip(_checks(kit, sett), _SIDES, strict=True):
        said = ENGLISH.say(Check.TITLED, title=ENGLISH.say(title), sentence=sentence)
        titles.append(said if low else ENGLISH.say(title))
        wanted += [said] if low else [ENGLISH.say(title), sentence]
        wanted += map(ENGLISH.say, blanks)
    titles.append(ENGLISH.say(Check.CAUTION))
    wanted.append(titles[-1])
    if not low:
        wanted += [_dimension(kit.frame.outer_width), _dimension(kit.frame.outer_height)]
    accounted = account(words_on([seen]), wanted)
    wrong = list(accounted.wrong)
    if not wrong:
        heights = [accounted.places[title][0].y for title in titles]
        wrong += [] if heights == sorted(heights, reverse=True) else [finding(Frame.ORDER)]
    head = check_heads([seen], ENGLISH.say(Check.TITLE), warp, [ENGLISH.say(Check.NOTE)])
    return Findings(0.0, tuple(wrong)) + head


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
    else:
        gives = ENGLISH.say(Check.BENDS, bent=_both(bent, 2, inches), most=most)
    yield Check.PULL, ENGLISH.paragraph([_pull(kit, sett), gives])


def _pull(kit: Kit, sett: Fraction) -> str:
    threads, stated = threads_of(kit, sett), kit.strength.tension
    force = threads * tension_of(kit)
    return ENGLISH.say(
        Check.PULL_IS if stated else Check.PULL_ASSUMED,
        threads=threads,
        tension=say_force(stated) if stated else f"{say_number(USUAL)} {_NEWTON}",
        newtons=say_number(force, 0),
        pounds=say_number(force / _POUND, 0),
    )


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
