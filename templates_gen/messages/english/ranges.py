"""English: what is said of ranges of kits."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from templates_gen.messages.roles.ranges import From, RangeFile, RangeOption, Table

MESSAGES: dict[Role, str | Plural] = {
    RangeFile.A_RANGE: Plural(
        "number",
        "{file} is a range of {number} kit; use load_range",
        "{file} is a range of {number} kits; use load_range",
    ),
    RangeOption.NO_KIT: needs("the name of a kit in this range ({names})"),
    RangeOption.KIT_MEANT: needs("the name of a kit in this range ({meant} is meant)"),
    RangeOption.COPIES: needs("a whole number from 1 to {most}"),
    RangeFile.WROTE: "Wrote {file}. Change what is different in your shop, then run: templates-gen plan {file}",
    From.TITLE: "Where each value comes from",
    From.TITLE_OF: "Where each value of {name} comes from",
    From.RANGE: "the range, line {line}",
    From.KIT: "this kit, line {line}",
    From.FILE: "this file, line {line}",
    From.USUAL: "left out, so the usual",
    From.LEFT_OUT: "left out",
    From.WITHOUT: "the range says {value}; this kit goes without (line {line})",
    From.WITHOUT_TABLE: "the range says it; this kit goes without (line {line})",
    Table.TITLE: "{name}: {kits}, {boxes}",
    Table.KITS: Plural("number", "{number} kit", "{number} kits"),
    Table.NUMBER_OF_BOXES: Plural("number", "{number} box", "{number} boxes"),
    Table.KIT: "Kit",
    Table.BOXES: "Boxes",
    Table.ENDS: "Ends",
    Table.WINDS: "Winds",
    Table.COST: "Cost",
    Table.COST_IN: "Cost, {currency}",
    Table.PRICE: "Price",
    Table.PRICE_IN: "Price, {currency}",
    Table.PACKS: "Balls, cones, hanks",
    Table.TOGETHER: "All boxes",
    Table.BALL: "ball",
    Table.PACK: "{number} x {pack}",
}
