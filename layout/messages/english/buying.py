"""What is said of buying and selling."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from layout.messages.roles.buying import BuyHelp, Buying, BuyNeed

MESSAGES: dict[Role, str | Plural] = {
    BuyHelp.CURRENCY: "the currency of all prices, in your own word",
    BuyHelp.COLOURS: "how a colour, or a yarn, of the weft is sold that is sold otherwise",
    BuyHelp.ALSO: "how other things in the box are sold, each by its name",
    BuyHelp.PACK: "what a pack is called: a ball, a cone, a hank",
    BuyHelp.GRAMS: "what a pack weighs, in g",
    BuyHelp.LENGTH: "how much is in a pack, by length",
    BuyHelp.SHEETS: "how many sheets are in a pack",
    BuyHelp.NUMBER: "how many are in a pack",
    BuyHelp.PRICE: "what a pack costs",
    BuyHelp.NAME: "what it is called in the kit",
    BuyHelp.HOUR: "what an hour of your work costs",
    BuyHelp.MINUTES: "how many minutes of work a box takes",
    BuyHelp.MARGIN: "what of the price is left once the costs are paid",
    BuyHelp.QUANTITIES: "from how many boxes on a price is less",
    BuyHelp.FROM: "from so many boxes on",
    BuyHelp.LESS: "by which share the price is less then",
    BuyHelp.ROUND_TO: "to which step prices are rounded up",
    BuyHelp.PEOPLE: "how many people are in the class",
    BuyHelp.AT_A_TABLE: "how many of them sit at a table",
    BuyNeed.CURRENCY: needs("to be given beside prices"),
    BuyNeed.ONE_SIZE: needs("grams or a length, not both"),
    BuyNeed.SIZE: needs("to say how much is in a pack"),
    BuyNeed.NAMED: needs("a name, and how it is sold"),
    BuyNeed.TWICE: needs("each name once"),
    BuyNeed.RISING: needs("numbers of boxes that rise from entry to entry"),
    BuyNeed.FROM: needs("from so many boxes on, and by which share the price is less"),
    BuyNeed.OF_A_KIT: needs("the name of something in a kit of this range ({names})"),
    BuyNeed.OF_A_KIT_MEANT: needs("the name of something in a kit of this range ({meant} is meant)"),
    BuyNeed.NONE_OF_A_KIT: needs("to be left out, since no kit of this range has any"),
    Buying.SPARE_END: "Half of the way there and back, and a knot at either end.",
    Buying.CORD_SPARE: "A cord is tied twice before it sits: 10 % to spare.",
    Buying.NUMBER: "As many as the kit says.",
}
