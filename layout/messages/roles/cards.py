"""Roles of what the cards of a box say: label, packing list, legal card."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Card(Role):
    """What stands on the cards, and beside them what each is for."""

    LABEL_FOR = "card.label_for"
    LIST_FOR = "card.list_for"
    LEGAL_FOR = "card.legal_for"
    FOLDED_FOR = "card.folded_for"
    KIT_FOR = "card.kit_for"
    MEASURED = "card.measured"
    WEAVING = "card.weaving"
    FRAME = "card.frame"
    IN_BOX = "card.in_box"
    TICK = "card.tick"
    OF_CARDS = "card.of_cards"
    KIT_NUMBER = "card.kit_number"
    PACKED_BY = "card.packed_by"
    ON = "card.on"
    CAUTION = "card.caution"
    MAKER = "card.maker"
    ADDRESS = "card.address"
    CONTACT = "card.contact"
    BATCH = "card.batch"
    WARP_FIBRE = "card.warp_fibre"
    WEFT_FIBRE = "card.weft_fibre"
    CARE = "card.care"
    AGE = "card.age"
    YEARS = "card.years"
    FILL_IN = "card.fill_in"


class CardNeed(Role):
    """Refusals of cards whose words find no room."""

    WORDS = "card_need.words"
    LINK = "card_need.link"
    FOLD = "card_need.fold"
    LEGAL = "card_need.legal"
