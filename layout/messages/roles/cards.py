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


class HelpCard(Role):
    """The card of help and finish."""

    FOR_FOLDED = "help_card.for_folded"
    FOR_APART = "help_card.for_apart"
    HELP = "help_card.help"
    HELP_IS = "help_card.help.is"
    SLACK = "help_card.slack"
    SLACK_ALONG = "help_card.slack.along"
    SLACK_ALONE = "help_card.slack.alone"
    BROKEN = "help_card.broken"
    BROKEN_LAY = "help_card.broken.lay"
    BROKEN_TIE = "help_card.broken.tie"
    PULLING = "help_card.pulling"
    PULLING_ARC = "help_card.pulling.arc"
    PULLING_WIDE = "help_card.pulling.wide"
    SHOWING = "help_card.showing"
    SHOWING_BEAT = "help_card.showing.beat"
    SHOWING_BEADS = "help_card.showing.beads"
    NEW_WEFT = "help_card.new_weft"
    NEW_WEFT_INSIDE = "help_card.new_weft.inside"
    NEW_WEFT_TAILS = "help_card.new_weft.tails"
    FINISH = "help_card.finish"
    FINISH_CUT = "help_card.finish.cut"
    FINISH_ROD = "help_card.finish.rod"
    TENSION = "help_card.tension"
    STEP_HEM = "help_card.step.hem"
    STEP_WEAVE = "help_card.step.weave"
    STEP_GLASSES = "help_card.step.glasses"
    STEP_CUT = "help_card.step.cut"
    STEP_KNOT = "help_card.step.knot"
    STEP_NEEDLE = "help_card.step.needle"
    STEP_OUTWARD = "help_card.step.outward"
    STEP_DARN = "help_card.step.darn"
    STEP_SLACKEN = "help_card.step.slacken"
    STEP_DRAW = "help_card.step.draw"


class CardNeed(Role):
    """Refusals of cards whose words find no room."""

    WORDS = "card_need.words"
    LINK = "card_need.link"
    FOLD = "card_need.fold"
    LEGAL = "card_need.legal"
    TOO_LOW = "card_need.too_low"
