"""Everything that a frame check sheet says, each number found from the kit alone."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from typing import NamedTuple

from layout.drawing.shapes import Text
from layout.drawing.sheet import Sheet
from layout.kit.kit import Kit
from layout.messages.catalogue import Catalogue
from layout.messages.roles import Beam, Check, Known, SheetName
from layout.values.forces import say_force
from layout.values.numerals import say_number
from layout.values.units import say_length
from templates_gen.messages.roles.proof_printed import Frame
from templates_gen.verify.finding import Finding, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.heads import About, check_heads
from templates_gen.verify.outline import name_of
from templates_gen.verify.printed.bending import bending, threads_of
from templates_gen.verify.printed.measuring import measuring_words, rows_and_rest, table_rows
from templates_gen.verify.printed.pull import pulls_of
from templates_gen.verify.printed.ruled import ruled, ruled_root, step
from templates_gen.verify.said import Word, account, words_on

_POUND = Fraction("0.45359237") * Fraction("9.80665")
"""A pound-force in N: the international pound of 1959 times standard gravity (3rd CGPM, 1901)."""
_BARE, _WITH_PICTURE = 3, 4
"""So many checks come before the frame is warped, and so many stand beside the picture."""
_SIDES = (
    (Check.ONE, Check.OTHER),
    (Check.LEFT, Check.RIGHT),
    (Check.FAR, Check.NEAR),
    (Check.FAR, Check.NEAR),
    (Check.FREE, Check.FOUND),
)
_NEAR, _LEVEL = 5.0, 0.01  # mm: the number of a check and its words; words on one line


class Item(NamedTuple):
    """A check: its number, its title, what it says, and the names of its blanks."""

    number: int
    title: str
    sentences: tuple[str, ...]
    blanks: tuple[Check, ...]


def check_frame_words(
    kit: Kit, sett: Fraction, warp: Mapping[str, str], seen: FoundPart, words: Catalogue, *, low: bool
) -> Findings:
    """Every message of the sheet once, each beside its number, and nothing else; remedies where there is a picture."""
    pulls = seen.part.name == "pull-check"
    apart = any(name_of(sheet) == words.say(SheetName.NAME_PULL_CHECK) for sheet in seen.file)
    items = _shown(list(_items(kit, sett, words)), seen, words, low=low, pulls=pulls, apart=apart)
    wanted = [words.say(Check.CAUTION)]
    for item in items:
        said = words.say(Check.TITLED, title=item.title, sentence=words.paragraph(item.sentences))
        wanted += [said] if low else [item.title, *item.sentences]
        wanted += map(words.say, item.blanks)
    found = words_on([seen])
    if not low:
        wanted += [*_remedies(kit, words), *_of_the_picture(kit, words), *_sizes(kit, found, words)]
    table = table_rows(kit, words) if any(item.number == len(_SIDES) for item in items) else []
    wrong, rest = rows_and_rest(found, table)
    wrong += account(rest, wanted).wrong
    wrong += [] if wrong else list(_numbered(rest, items, words, low=low))
    wrong += [] if wrong or low else [*_level(rest, _remedies(kit, words)[1:-2]), *_bent_named(rest, kit, words)]
    named = (SheetName.NAME_PULL_CHECK, SheetName.PURPOSE_PULL_CHECK)
    title, purpose = named if pulls else (SheetName.NAME_FRAME_CHECK, SheetName.PURPOSE_FRAME_CHECK)
    travels = kit.frame.travel is not None and not pulls
    lowest = [words.say(Check.AT_LOWEST, low=say_length(kit.frame.outer_height, words))] if travels else []
    about = About("", words.say(purpose), beside=_beside(kit, words, items) if low else ())
    return Findings(0.0, tuple(wrong)) + check_heads([seen], words.say(title), warp, lowest, more=about)


def _shown(items: list[Item], seen: FoundPart, words: Catalogue, *, low: bool, pulls: bool, apart: bool) -> list[Item]:
    """The checks that a sheet must show: all, or what the card beside it does not."""
    if pulls:
        pictured = words.say(Check.STRETCHED)
        return items[_WITH_PICTURE if any(_says(sheet, pictured) for sheet in seen.file) else _BARE :]
    return items[: _BARE if low else _WITH_PICTURE] if apart else items


def _says(sheet: Sheet, words: str) -> bool:
    return any(isinstance(shape, Text) and shape.words == words for shape in sheet.shapes)


def _items(kit: Kit, sett: Fraction, words: Catalogue) -> Iterator[Item]:
    """Every check with its sentence; the diagonals may differ by w p / d."""
    frame, say, bars = kit.frame, words.say, _are_bars(kit)
    width, height, inches = frame.outer_width.mm, frame.outer_height.mm, frame.outer_width.imperial
    squared = width * width + height * height
    long = ruled_root(squared, words, inches=inches)
    leaning = ruled_root((width / sett) ** 2 / squared, words, inches=inches, parts=2)
    half = ruled(1 / sett / 2, words, inches=inches, parts=2)
    high = ruled(height, words, inches=inches)
    middle = ruled(width / 2, words, inches=inches)
    said = (
        (Check.DIAGONALS, (say(Check.DIAGONALS_ARE, long=long), say(Check.AT_MOST, apart=leaning))),
        (
            Check.PARALLEL_BARS if bars else Check.PARALLEL_BOARDS,
            (say(Check.PARALLEL_ARE, high=high), say(Check.AT_MOST, apart=half)),
        ),
        (Check.MIDDLE_OF_BARS if bars else Check.MIDDLE_OF_BOARDS, (say(Check.MIDDLE_IS, half=middle),)),
        (Check.BEND, _bend(kit, sett, words)),
        (Check.MEASURE, (measuring_words(kit, words),)),
    )
    for number, ((title, sentences), blanks) in enumerate(zip(said, _SIDES, strict=True), 1):
        yield Item(number, say(title), sentences, blanks)


def _are_bars(kit: Kit) -> bool:
    return kit.frame.ends.name == "round bars"


def _bend(kit: Kit, sett: Fraction, words: Catalogue) -> tuple[str, str, str]:
    """How to measure it, how far the ends are expected to bend and how far they may, and what pulls at them."""
    stretch = words.say(Check.STRETCH_BARS if _are_bars(kit) else Check.STRETCH_BOARDS)
    return stretch, words.paragraph(list(_bends(kit, sett, words))), _pull(kit, sett, words)


def _bends(kit: Kit, sett: Fraction, words: Catalogue) -> Iterator[str]:
    frame, say, inches = kit.frame, words.say, kit.frame.outer_width.imperial
    if (bent := bending(kit, sett)) is not None:
        least = step(inches, 2)
        likely, high = (ruled(each, words, inches=inches, parts=2) for each in bent[1:])
        if bent[2] < least:
            yield say(Check.EXPECTED_LITTLE, least=ruled(least, words, inches=inches, parts=2))
        elif likely == high:
            yield say(Check.EXPECTED, bent=likely)
        else:
            yield say(Check.EXPECTED_RANGE, bent=likely, high=high)
    most = (frame.outer_width.mm - 2 * frame.side_width.mm) / 500
    yield say(Check.MOST, most=ruled(most, words, inches=inches, parts=2))


def _pull(kit: Kit, sett: Fraction, words: Catalogue) -> str:
    threads, stated, (low, likely, high) = threads_of(kit, sett), kit.strength.tension, pulls_of(kit)
    least, newtons, most = (say_number(threads * each, 0) for each in (low, likely, high))
    values: dict[str, object] = {
        "threads": threads,
        "newtons": newtons,
        "pounds": say_number(threads * likely / float(_POUND), 0),
    }
    if low == high:
        return words.say(Check.PULL_IS, **values, tension=say_force(stated) if stated else likely)
    each = {"tension": say_number(likely, 1), "low": say_number(low, 1), "high": say_number(high, 1)}
    origin = Known.MEASURED if stated or kit.strength.dip or kit.strength.pluck else Known.ASSUMED
    tension = words.say(Beam.TENSION_RANGE, **each, origin=origin)
    return words.say(Check.PULL_RANGE, **values, tension=tension, least=least, most=most)


def _remedies(kit: Kit, words: Catalogue) -> list[str]:
    bars = (Check.NOT_PARALLEL_BARS, Check.TURN_BAR, Check.BEND_BARS, Check.STIFFER_BAR)
    boards = (Check.NOT_PARALLEL_BOARDS, Check.SHIFT_BOARD, Check.BEND_BOARDS, Check.STIFFER_BOARD)
    signed = (Check.CHECKED_BY, Check.ON)
    roles = (Check.REMEDIES, Check.ONE_LONGER, Check.SQUEEZE, *(bars if _are_bars(kit) else boards), *signed)
    return list(map(words.say, roles))


def _beside(kit: Kit, words: Catalogue, items: Sequence[Item]) -> tuple[str, ...]:
    """The remedies for what a card checks, where no picture has them: the last one is for frame ends that bend."""
    heading, *rows = _remedies(kit, words)[:-2]
    said = [
        words.say(Check.TITLED, title=one, sentence=other) for one, other in zip(rows[::2], rows[1::2], strict=True)
    ]
    numbers = [item.number for item in items]
    mine = [*(said[:-1] if 1 in numbers else []), *(said[-1:] if _WITH_PICTURE in numbers else [])]
    return (heading, *mine) if mine else ()


def _of_the_picture(kit: Kit, words: Catalogue) -> list[str]:
    bent = Check.BENT_BAR if _are_bars(kit) else Check.BENT_BOARD
    return list(map(words.say, (bent, Check.GAP, Check.STRETCHED)))


def _sizes(kit: Kit, found: Sequence[Word], words: Catalogue) -> list[str]:
    """Both outer sizes, and half the width twice or not at all."""
    inches = kit.frame.outer_width.imperial
    width, height = kit.frame.outer_width.mm, kit.frame.outer_height.mm
    whole, high, half = (ruled(mm, words, inches=inches) for mm in (width, height, width / 2))
    there = [said for _, said in found].count(half) - [whole, high].count(half)
    return [whole, high, *([half] * 2 if there else [])]


def _level(found: Sequence[Word], rows: Sequence[str]) -> Iterator[Finding]:
    """Remedies that do not stand beside what they are for; each may be broken into lines."""
    for wrong, does in zip(rows[::2], rows[1::2], strict=True):
        names = [at.y for at, said in found if wrong.startswith(said)]
        says = [at.y for at, said in found if does.startswith(said)]
        if not any(abs(one - other) < _LEVEL for one in names for other in says):
            yield finding(Frame.ORDER)


def _bent_named(found: Sequence[Word], kit: Kit, words: Catalogue) -> Iterator[Finding]:
    """Whether the picture of the bend lacks the number of its check."""
    bent, number = _of_the_picture(kit, words)[0], str(_WITH_PICTURE)
    places = [at for at, said in found if bent.startswith(said)]
    numbers = [at for at, said in found if said == number]
    if not any(0 < at.x - one.x < 2 * _NEAR and abs(at.y - one.y) < _NEAR for at in places for one in numbers):
        yield finding(Frame.ORDER)


def _numbered(found: Sequence[Word], items: Sequence[Item], words: Catalogue, *, low: bool) -> Iterator[Finding]:
    """Checks that do not stand beside their number, or not in their order downward; blanks of another check."""
    heights = []
    for item in items:
        begin = item.title.split()[0]
        places = [at for at, said in found if said == item.title or (low and said.startswith(begin))]
        numbers = [at for at, said in found if said == str(item.number)]
        beside = [at.y for at in places if any(at.x > one.x and abs(at.y - one.y) < _NEAR for one in numbers)]
        if not beside:
            yield finding(Frame.ORDER)
            return
        heights.append(max(beside))
    blanks = [words.say(blank) for item in items for blank in item.blanks]
    written = sorted((at.y, said) for at, said in found if said in blanks)
    ends = [*heights[1:], float("-inf")]
    own = [[said for y, said in written if end < y < top] for top, end in zip(heights, ends, strict=True)]
    wanted = [sorted(map(words.say, item.blanks)) for item in items]
    if heights != sorted(heights, reverse=True) or [sorted(each) for each in own] != wanted:
        yield finding(Frame.ORDER)
