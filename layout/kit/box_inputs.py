"""The inputs about a box and its legal words: one part of the table of inputs. All may be left out."""

from __future__ import annotations

from fractions import Fraction

from layout.kit.box import CAN_LIE, CARDS, HELP, LABEL, LIST, SPARE_ENDS
from layout.kit.input import Input, of_mm
from layout.messages.catalogue import Role
from layout.messages.roles import KitHelp

MOST_ITEMS, MOST_LINES = 24, 3
_TEXT, _LINK, _MOST_GRAMS = Fraction(120), Fraction(200), Fraction(100_000)
_NONE, _LARGEST = Fraction(0), of_mm(5000)


def _text(key: str, role: Role, example: str) -> Input:
    return Input(key, "text", role, example, most=_TEXT)


def _card(key: str, role: Role, usual: str) -> Input:
    return Input(key, "card", role, f'"{usual}"', default=usual, choices=tuple(CARDS), low=of_mm(30), high=of_mm(1000))


_BOX = (
    Input("box.holds", "names", KitHelp.BOX_HOLDS, '["strips", "leaflet"]', choices=CAN_LIE),
    Input("box.once", "names", KitHelp.BOX_ONCE, '["weaving-grid"]', choices=CAN_LIE),
    Input(
        "box.also",
        "tables",
        KitHelp.BOX_ALSO,
        '[{name = "beater", grams = 45}]',
        least=_NONE,
        most=Fraction(MOST_ITEMS),
    ),
    Input("box.also[].name", "name", KitHelp.BOX_ALSO_NAME, '"beater"', required=True),
    Input("box.also[].number", "whole", KitHelp.BOX_ALSO_NUMBER, "1", default=1, most=Fraction(1000)),
    Input("box.also[].grams", "amount", KitHelp.BOX_ALSO_GRAMS, "45", least=_NONE, most=_MOST_GRAMS),
    Input("box.frame", "flag", KitHelp.BOX_FRAME, "true", default=True),
    Input(
        "box.spare_ends",
        "whole",
        KitHelp.BOX_SPARE_ENDS,
        "2",
        default=SPARE_ENDS,
        least=_NONE,
        most=Fraction(100),
    ),
    _card("box.label", KitHelp.BOX_LABEL, LABEL),
    _card("box.list", KitHelp.BOX_LIST, LIST),
    _card("box.help", KitHelp.BOX_HELP, HELP),
    Input("box.fold", "flag", KitHelp.BOX_FOLD, "true", default=False),
    _text("box.says", KitHelp.BOX_SAYS, '"Woven on a frame, row by row."'),
    Input("box.link", "link", KitHelp.BOX_LINK, '"https://example.org/weir"', most=_LINK),
    Input("box.outside", "sides", KitHelp.BOX_OUTSIDE, '"42 x 57 x 6 cm"', low=of_mm(1), high=_LARGEST),
    Input("box.empty", "mass", KitHelp.BOX_EMPTY, '"310 g"', least=_NONE, most=_MOST_GRAMS),
)

_LEGAL = (
    _text("legal.maker", KitHelp.LEGAL_MAKER, '"Shop by the Weir"'),
    Input("legal.address", "lines", KitHelp.LEGAL_ADDRESS, '["1 Example Lane", "00000 Example"]', most=Fraction(3)),
    _text("legal.contact", KitHelp.LEGAL_CONTACT, '"weir@example.org"'),
    _text("legal.batch", KitHelp.LEGAL_BATCH, '"7"'),
    _text("legal.warp_fibre", KitHelp.LEGAL_WARP_FIBRE, '"100 % cotton"'),
    _text("legal.weft_fibre", KitHelp.LEGAL_WEFT_FIBRE, '"100 % wool"'),
    _text("legal.care", KitHelp.LEGAL_CARE, '"wash by hand, cold"'),
    _text("legal.age", KitHelp.LEGAL_AGE, '"14 years and over"'),
    Input("legal.cautions", "lines", KitHelp.LEGAL_CAUTIONS, '["Not a toy."]', most=Fraction(MOST_LINES)),
)

BOX_INPUTS = (*_BOX, *_LEGAL)
"""In the order of the kit file."""
