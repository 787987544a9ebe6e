"""What a kit says of its box: what lies in it, its cards, what is bought in, and the maker's own legal words.

What was left out is None (or empty); the properties give what stands there then, so that nothing is written back that
was not said.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import NamedTuple

from layout.messages.catalogue import Catalogue, Role
from layout.messages.roles.ranges import BoughtIn
from layout.values.units import Length

START, LEAFLET = "start-here", "leaflet"
"""What the first sheet is called, and each leaf of the leaflet."""

PRINTED = (
    "strips", "spacing-guide", "wrap-gauge", "winding", "frame-check", "weaving-grid", START, LEAFLET, "help", "label",
)  # fmt: skip
CUT = ("comb", "winding-comb", "shed-stick", "spacing-guide-cut", "wrap-gauge-cut")
CAN_LIE = (*PRINTED, *CUT)
"""What can lie in a box, by the names of products: the first sheet by its own."""

EACH = ("strips", "spacing-guide", "wrap-gauge", LEAFLET, "label")
ONCE = ("weaving-grid", START, "frame-check")
"""What lies in each box, and what is printed once for a whole run, where the kit does not say. Our own choice."""

DEFAULT_ITEMS: tuple[Role, ...] = (BoughtIn.BEATER, BoughtIn.NEEDLE, BoughtIn.ROD)
"""What is bought in where the kit does not say: one of each, by the role of its name."""

SPARE_ENDS = 2
"""So many spare ends of warp lie in a box where the kit does not say. Our own choice."""


@dataclass(frozen=True, slots=True)
class Item:
    """Something bought in that lies in the box; `grams` is the weight of one, None where it is not known."""

    name: str
    number: int = 1
    grams: Fraction | None = None


@dataclass(frozen=True, slots=True)
class CardSize:
    """The size of a card by its `name` ("own" if it has none); `width` is its longer side."""

    name: str
    width: Length
    height: Length


class Sides(NamedTuple):
    """How large the box is: three outer sides, in the order in which they were written."""

    width: Length
    height: Length
    depth: Length


def _card(name: str, width: str, height: str) -> CardSize:
    return CardSize(name, Length(Fraction(width)), Length(Fraction(height)))


CARDS: Mapping[str, CardSize] = {
    card.name: card
    for card in (_card("a7", "105", "74"), _card("a6", "148", "105"), _card("bank card", "85.60", "53.98"))
}
"""Cards by name in mm: A7 and A6 of ISO 216, and ID-1 of ISO/IEC 7810 (from memory)."""

LABEL, LIST, HELP = "a7", "a6", "a6"
"""The cards of label, packing list and help (folded) where the kit does not say."""


@dataclass(frozen=True, slots=True)
class Box:
    """What lies in the box of a kit. `frame` says whether the frame does, `empty` is what the box itself weighs in g.

    `holds` and `once` are names of products: in each box, and once for a run. With `fold`, label and list are one card
    that is folded over. `says` is a line of text and `link` an address, both for the label; `outside` is the box.
    """

    holds: tuple[str, ...] | None = None
    once: tuple[str, ...] | None = None
    also: tuple[Item, ...] | None = None
    frame: bool = True
    spare_ends: int = SPARE_ENDS
    label: CardSize | None = None
    list: CardSize | None = None
    help: CardSize | None = None
    fold: bool = False
    says: str = ""
    link: str = ""
    outside: Sides | None = None
    empty: Fraction | None = None

    @property
    def given(self) -> bool:
        """Whether the kit says anything of its box."""
        return self != Box()

    @property
    def each_holds(self) -> tuple[str, ...]:
        """The products that lie in each box, by name."""
        if self.holds is not None:
            return self.holds
        return tuple(name for name in EACH if name not in (self.once or ()))

    @property
    def run_holds(self) -> tuple[str, ...]:
        """The products that are printed once for a whole run, by name."""
        if self.once is not None:
            return self.once
        return tuple(name for name in ONCE if name not in self.each_holds)

    def has(self, name: str) -> bool:
        """Whether the product of that name lies in the box, or once in the run."""
        return name in self.each_holds or name in self.run_holds

    def items(self, words: Catalogue) -> tuple[Item, ...]:
        """What is bought in; in the language of `words` where the kit does not say."""
        return tuple(Item(words.say(role)) for role in DEFAULT_ITEMS) if self.also is None else self.also

    @property
    def label_size(self) -> CardSize:
        """The card of the label."""
        return self.label or CARDS[LABEL]

    @property
    def list_size(self) -> CardSize:
        """The card of the packing list."""
        return self.list or CARDS[LIST]

    @property
    def help_size(self) -> CardSize:
        """The card of help and finish, folded."""
        return self.help or CARDS[HELP]


@dataclass(frozen=True, slots=True)
class Legal:
    """What must stand on a label by law, in the maker's own words; what is empty is a line to fill in by hand."""

    maker: str = ""
    address: tuple[str, ...] = ()
    contact: str = ""
    batch: str = ""
    warp_fibre: str = ""
    weft_fibre: str = ""
    care: str = ""
    age: str = ""
    cautions: tuple[str, ...] = ()
