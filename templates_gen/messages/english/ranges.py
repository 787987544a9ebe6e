"""English: what is said of ranges of kits."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from templates_gen.messages.roles.ranges import RangeFile, RangeOption

MESSAGES: dict[Role, str | Plural] = {
    RangeFile.A_RANGE: Plural(
        "number",
        "{file} is a range of {number} kit; use load_range",
        "{file} is a range of {number} kits; use load_range",
    ),
    RangeOption.NO_KIT: needs("the name of a kit in this range ({names})"),
    RangeOption.COPIES: needs("a whole number from 1 to {most}"),
}
