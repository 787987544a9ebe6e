"""The warp in few words, as every sheet must say it: counted from the kit's numbers alone."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction

from layout.kit.kit import Kit
from layout.messages.catalogue import Catalogue
from layout.messages.roles import Count, SettUnit
from layout.messages.roles.order import OrderWord
from layout.values.units import Length, say_length, say_number
from templates_gen.languages.catalogues import words_of
from templates_gen.messages.roles.proof import Words
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.expected import ends_of
from templates_gen.verify.said import in_lines, words_on

_AROUND, _WIDEST = 110.0, 2.6  # what else stands on a piece, overlaps too, and what a wide letter takes, in mm


def said_of(kit: Kit, sett: Fraction, unit: Length) -> Mapping[str, str]:
    """Name, yarns, sett and counts of a kit in words, by what each is; `sett` in ends per mm is proven elsewhere."""
    words, ends = words_of(kit), ends_of(kit, sett)
    return {
        "name": _named(kit, words),
        "warp": kit.warp,
        "weft": kit.weft,
        "sett": _sett(kit, words, sett, unit),
        "facts": words.listed((_brief(words, sett, unit), words.say(Count.ENDS, ends=ends), *doubled(kit))),
        "counts": words.listed(clauses(kit, ends)),
    }


def _named(kit: Kit, words: Catalogue) -> str:
    """The kit in the head of a sheet: after the order that it is made for, where there is one."""
    return words.say(OrderWord.KIT, number=kit.order.number, kit=kit.name) if kit.order.number else kit.name


def order_on(kit: Kit) -> list[str]:
    """What a part that may lie beside those of other orders says of its own; nothing where there is none."""
    return [words_of(kit).say(OrderWord.NUMBER, number=kit.order.number)] if kit.order.number else []


def order_on_each(kit: Kit, pieces: Sequence[FoundPart]) -> list[str]:
    """The order of a part in pieces, once for each that says it: one at the least."""
    return [said for said in order_on(kit) for seen in pieces if in_lines(said, words_on([seen]))] or order_on(kit)


def of_no_order(kit: Kit, pieces: Sequence[FoundPart]) -> Iterator[Finding]:
    """Long pieces that do not say of which order they are: once cut out, one could be taken for that of another."""
    for said in order_on(kit):
        long = (seen for seen in pieces if seen.part.length >= _AROUND + _WIDEST * len(said))
        without = (seen for seen in long if not in_lines(said, words_on([seen])))
        yield from (finding(Words.NOWHERE, words=said).at(seen.where) for seen in without)


def _brief(words: Catalogue, sett: Fraction, unit: Length) -> str:
    role, per = (SettUnit.PER_INCH, Fraction(127, 5)) if unit.imperial else (SettUnit.PER_CM, Fraction(10))
    return words.say(role, number=say_number(sett * per))


def _sett(kit: Kit, words: Catalogue, sett: Fraction, unit: Length) -> str:
    by_inch, by_cm = truth_of(kit).sett
    count = say_number(sett * unit.mm / truth_of(kit).laid)
    role = by_inch if unit.imperial else by_cm
    return words.say(role, sett=_brief(words, sett, unit), count=count, unit=say_length(unit))


def clauses(kit: Kit, ends: int) -> list[str]:
    """How many winds and ends there are, and what is doubled, message by message."""
    return [_counts(kit, ends), *doubled(kit)]


def _counts(kit: Kit, ends: int) -> str:
    if not truth_of(kit).winds or ends < 2:
        return words_of(kit).say(Count.ENDS, ends=ends)
    return words_of(kit).say(Count.WINDS_AND_A_PASS if ends % 2 else Count.WINDS, winds=ends // 2, ends=ends)


def doubled(kit: Kit) -> list[str]:
    """Which ends are of more than one thread."""
    said = [words_of(kit).say(Count.DOUBLED)] if kit.weaving.doubled_warp else []
    outer = kit.weaving.doubled_selvedges
    return [*said, words_of(kit).say(Count.DOUBLED_OUTER, outer=outer)] if outer else said
