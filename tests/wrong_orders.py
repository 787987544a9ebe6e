"""Wrong builders of what is said of an order: its number or its buyer exchanged, dropped, or mixed with another."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from kits import FLAT, NAILS, NOTCHED, PEGGED
from wrong_builders import Spoil, Wrong, swap, value
from wrong_cards import FOLDED
from wrong_leaflet import LEAFLET

import layout.parts.guide_words as guide_module
import layout.parts.leaflet.leaflet as leaflet_module
import layout.parts.leaflet.trimmed as trimmed_module
import layout.parts.marking.strip as strip_module
from layout.messages.english import ENGLISH
from layout.messages.roles.order import OrderWord
from layout.plan import Plan

ORDER: Mapping[str, object] = {"order": {"number": "1042", "buyer": "Weir Studio"}}
SMALL: Mapping[str, object] = {**ORDER, "paper.size": "148 x 210 mm"}
LARGE: Mapping[str, object] = {**ORDER, "paper.size": "a3"}
WIDE: Mapping[str, object] = {**ORDER, "frame.outer_width": "56 cm", "weaving.width": "40 cm"}
BOXED: Mapping[str, object] = {**ORDER, "box": {"holds": ["help", "label"]}}
FOLDED_ORDER: Mapping[str, object] = {**FOLDED, **ORDER}
PARTS: Mapping[str, tuple[Mapping[str, object], str]] = {
    "strips": (ORDER, "strips.pdf"),
    "low strips": (SMALL, "strips.pdf"),
    "strips of boards": ({**FLAT, **ORDER}, "strips.pdf"),
    "notch templates": ({**NOTCHED, **ORDER}, "strips.pdf"),
    "drilling templates": ({**PEGGED, **ORDER}, "strips.pdf"),
    "nail templates": ({**NAILS, **ORDER}, "strips.pdf"),
    "guides": (ORDER, "spacing-guide.pdf"),
    "small guides": (SMALL, "spacing-guide.pdf"),
    "a gauge": (ORDER, "wrap-gauge.pdf"),
    "a small gauge": (SMALL, "wrap-gauge.pdf"),
    "a help card": (BOXED, "help.pdf"),
    "help cards apart": ({**BOXED, "paper.size": "297 x 210 mm"}, "help.pdf"),
    "cards": (BOXED, "label.pdf"),
    "folded cards": (FOLDED_ORDER, "label.pdf"),
}
"""A kit and a file for each part that may lie beside those of other orders."""
HEADS = ("winding.pdf", "frame-check.pdf", "kit.pdf")


def ordered(said: str) -> Spoil:
    """All parts say this of their order."""
    return value(Plan, "ordered", property(lambda _: said))


def named(said: str) -> Spoil:
    """All heads say this of their kit."""
    return value(Plan, "named", property(lambda _: said))


def far_of(number: str) -> Spoil:
    """The far strip says another number than the near one."""

    def wrong(right: Callable[..., Any]) -> Callable[..., Any]:
        def wishes(plan: Plan, end: str, *given: Any) -> Any:
            said = right(plan, end, *given)
            if end == "near":
                return said
            other = ENGLISH.say(OrderWord.NUMBER, number=number)
            return [
                [each._replace(words=other) if each.thing.startswith("order ") else each for each in wish]
                for wish in said
            ]

        return wishes

    return swap(strip_module, "wishes", wrong)


def off_piece(right: Callable[..., Any]) -> Callable[..., Any]:
    """The second piece of a strip says nothing of its order."""
    return lambda *given: [wish for wish in right(*given) if wish[0].thing != "order 2"]


def off_guide_piece(right: Callable[..., Any]) -> Callable[..., Any]:
    """The last piece of a guide that says its order says nothing of it."""
    return lambda *given: right(*given)[:-1]


def twice_on_piece(right: Callable[..., Any]) -> Callable[..., Any]:
    """The first piece of a guide says the order of the second one too."""
    return lambda *given: [right(*given)[0]] * len(right(*given))


def made_for(said: str) -> Spoil:
    """The head of a leaflet says this."""
    return value(leaflet_module, "_purpose", lambda *_: said)


def block_for(said: str) -> Spoil:
    """The block of large paper says this within."""
    return value(trimmed_module, "_made_for", lambda _: said)


def steps_for(buyer: str) -> Spoil:
    """The leaflet of another buyer."""
    return swap(
        leaflet_module,
        "_purpose",
        lambda right: lambda plan, count: right(plan, count).replace(plan.kit.order.buyer, buyer),
    )


ORDERS_WRONG: Mapping[str, Wrong] = {
    **{f"{part} of another order": Wrong(*kit, ordered("Order 1043")) for part, kit in PARTS.items()},
    **{f"{part} of no order": Wrong(*kit, ordered("")) for part, kit in PARTS.items()},
    **{f"{file} of another order": Wrong(ORDER, file, named("Order 1024: Willow frame, small")) for file in HEADS},
    **{f"{file} of no order": Wrong(ORDER, file, named("Willow frame, small")) for file in HEADS},
    "a far strip of another order than the near one": Wrong(ORDER, "strips.pdf", far_of("1043")),
    "a piece of a strip of no order": Wrong(WIDE, "strips.pdf", swap(strip_module, "wishes", off_piece)),
    "a piece of a guide of no order": Wrong(WIDE, "spacing-guide.pdf", swap(guide_module, "_order", off_guide_piece)),
    "a piece of a guide of its order twice": Wrong(
        WIDE, "spacing-guide.pdf", swap(guide_module, "_order", twice_on_piece)
    ),
    "an order number in two": Wrong(ORDER, "spacing-guide.pdf", ordered("Order 10 42")),
    "the buyer on a strip": Wrong(ORDER, "strips.pdf", ordered("Order 1042 Weir Studio")),
    "an order that no kit asks for": Wrong({}, "strips.pdf", ordered("Order 1042")),
    "a head with an order that no kit asks for": Wrong({}, "strips.pdf", named("Order 1042: Willow frame, small")),
    "a leaflet for another buyer": Wrong(ORDER, LEAFLET, steps_for("Weir Mill")),
    "a leaflet for nobody": Wrong(ORDER, LEAFLET, made_for("12 steps, from the frame to the finished piece.")),
    "a buyer with a word in two": Wrong(ORDER, LEAFLET, steps_for("Wei r Studio")),
    "a small leaflet for another buyer": Wrong(SMALL, LEAFLET, steps_for("Weir Mill")),
    "a block for another buyer": Wrong(
        LARGE, LEAFLET, value(trimmed_module, "_made_for", lambda _: "Made for Weir Mill")
    ),
    "a block for nobody": Wrong(LARGE, LEAFLET, block_for("")),
    "a leaflet of another order": Wrong(ORDER, LEAFLET, named("Order 1043: Willow frame, small")),
}
"""By what is wrong."""
