"""Roles of what is bought and sold: prices in a range file, what to buy, what it costs."""

from __future__ import annotations

from layout.messages.catalogue import Role


class BuyHelp(Role):
    """The keys of a range file about money, in its order."""

    CURRENCY = "buy_help.currency"
    COLOURS = "buy_help.colours"
    ALSO = "buy_help.also"
    PACK = "buy_help.pack"
    GRAMS = "buy_help.grams"
    LENGTH = "buy_help.length"
    SHEETS = "buy_help.sheets"
    NUMBER = "buy_help.number"
    PRICE = "buy_help.price"
    NAME = "buy_help.name"
    HOUR = "buy_help.hour"
    MINUTES = "buy_help.minutes"
    MARGIN = "buy_help.margin"
    QUANTITIES = "buy_help.quantities"
    FROM = "buy_help.from"
    LESS = "buy_help.less"
    ROUND_TO = "buy_help.round_to"
    PEOPLE = "buy_help.people"
    AT_A_TABLE = "buy_help.at_a_table"


class BuyNeed(Role):
    """Refusals of what is bought and sold."""

    CURRENCY = "buy_need.currency"
    CURRENCY_WORD = "buy_need.currency_word"
    ONE_SIZE = "buy_need.one_size"
    SIZE = "buy_need.size"
    NAMED = "buy_need.named"
    TWICE = "buy_need.twice"
    RISING = "buy_need.rising"
    FROM = "buy_need.from"
    OF_A_KIT = "buy_need.of_a_kit"
    OF_A_KIT_MEANT = "buy_need.of_a_kit_meant"
    NONE_OF_A_KIT = "buy_need.none_of_a_kit"


class Buying(Role):
    """What is bought, and why as much as that."""

    SPARE_END = "buying.spare_end"
    CORD_SPARE = "buying.cord_spare"
    NUMBER = "buying.number"


class Packed(Role):
    """What lies in a box, as its packing list calls it, and how much of it."""

    FRAME = "packed.frame"
    WARP = "packed.warp"
    SPARE_ENDS = "packed.spare_ends"
    WEFT = "packed.weft"
    WEFT_BOTH = "packed.weft_both"
    CORD = "packed.cord"
    STICK = "packed.stick"
    COMB = "packed.comb"
    WINDING_COMBS = "packed.winding_combs"
    GUIDE_CUT = "packed.guide_cut"
    GAUGE_CUT = "packed.gauge_cut"
    LEAFLET = "packed.leaflet"
    HELP = "packed.help"
    NUMBER = "packed.number"
    BOTH = "packed.both"


class Weighed(Role):
    """What is weighed of a packed box."""

    FRAME = "weighed.frame"
    CORD = "weighed.cord"
    PAPER = "weighed.paper"
    EMPTY = "weighed.empty"
    SUM = "weighed.sum"
    STATED = "weighed.stated"
    PAPER_IS = "weighed.paper_is"
    WOOD_IS = "weighed.wood_is"


class Prices(Role):
    """The price sheet, for the maker alone."""

    NAME = "prices.name"
    PURPOSE = "prices.purpose"
    PURPOSE_IN = "prices.purpose_in"
    KITS = "prices.kits"
    BOXES = "prices.boxes"
    FROM = "prices.from"
    COST = "prices.cost"
    PRICE = "prices.price"
    ALL = "prices.all"
    MARGIN = "prices.margin"
    PERCENT = "prices.percent"
    ONE_BOX = "prices.one_box"
    WARP = "prices.warp"
    WEFT = "prices.weft"
    BOUGHT_IN = "prices.bought_in"
    PAPER = "prices.paper"
    BOARDS = "prices.boards"
    CUTTING = "prices.cutting"
    WORK = "prices.work"
    TOGETHER = "prices.together"
    AT_LEAST = "prices.at_least"
    MISSING = "prices.missing"
    COLOURED = "prices.coloured"


class ShopCard(Role):
    """The card of a kit for the shop, which says all but its price."""

    NAME = "shop_card.name"
    PURPOSE = "shop_card.purpose"
    FRAME = "shop_card.frame"
    WEAVING = "shop_card.weaving"
    WARP = "shop_card.warp"
    SIZE = "shop_card.size"
    HOLDS = "shop_card.holds"
    MORE = "shop_card.more"
    BETWEEN = "shop_card.between"
    PACKED = "shop_card.packed"
    LEAST = "shop_card.least"
    WITHOUT = "shop_card.without"
    BOX = "shop_card.box"
    SIDES = "shop_card.sides"
    PRICE = "shop_card.price"
