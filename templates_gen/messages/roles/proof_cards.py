"""The roles of what a proof finds wrong on the cards of a box, and what is said of a code that cannot be read."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Cards(Role):
    """Cards, their rows and their blanks."""

    OUTLINE = "proof_cards.outline"
    PLACE = "proof_cards.place"
    BAND = "proof_cards.band"
    ROW = "proof_cards.row"
    TICKS = "proof_cards.ticks"
    BLANKS = "proof_cards.blanks"
    BLANK = "proof_cards.blank"
    FOLD = "proof_cards.fold"
    ORDER = "proof_cards.order"
    PICTURES = "proof_cards.pictures"
    MIDDLE = "proof_cards.middle"
    ARROWS = "proof_cards.arrows"
    LINK = "proof_cards.link"
    LINK_SAYS = "proof_cards.link_says"
    LINK_SMALL = "proof_cards.link_small"
    LINK_WHITE = "proof_cards.link_white"


class QrCode(Role):
    """Why a QR code cannot be read."""

    SIZE = "qr_code.size"
    PATTERN = "qr_code.pattern"
    FORMAT = "qr_code.format"
    DAMAGED = "qr_code.damaged"
    TEXT = "qr_code.text"
