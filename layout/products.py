"""What can be made from a plan, by name: the one list that files, proof and help texts go by."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from functools import partial
from typing import NamedTuple, Protocol

from layout.drawing.metrics import FontMetrics
from layout.drawing.pane import Paned
from layout.drawing.sheet import OnScreen, Part
from layout.paper.choice import Laying
from layout.paper.joints import Build
from layout.paper.regions import regions
from layout.paper.room import room_for
from layout.paper.sheets import lay, lay_together
from layout.paper.steps import named
from layout.parts.cards.help_left_out import help_left_out
from layout.parts.frame_check import bare_check, frame_check
from layout.parts.grid import drawing_of
from layout.parts.grid_size import left_out
from layout.parts.spacing_guide import spacing_guide
from layout.parts.strip import strip, work_of
from layout.parts.winding.heading_rows import heading_rows
from layout.parts.winding.winding import small_winding, winding
from layout.parts.wrap_gauge import card_alone, gauge_card, winding_alone, wrap_gauge
from layout.plan import Plan
from layout.values.errors import LayoutError
from layout.warps.warp import End

Builds = Callable[[Plan, FontMetrics], tuple[Build | Paned, ...]]
"""Makes each part of a product for paper: in its low form or not, clear of joints; or a drawing to be cut in panes."""


def _always(_: Plan) -> bool:
    return True


def _boxed(name: str) -> Callable[[Plan], bool]:
    """Made where the kit says that it lies in its box."""
    return lambda plan: plan.kit.box.given and plan.kit.box.has(name)


def _nothing(_: Plan) -> str:
    return ""


class Product(NamedTuple):
    """One thing to make, of one part or several that belong together.

    `builds` makes each part for paper, and `alone` each at its best, of `single` where that is less. `suits` tells
    whether a plan asks for it; `absent` says why one that asks for it cannot have it. `forms` are the kinds of files
    that it has to itself; on paper it is in the kit's one file too, unless it is not `in_kit`.
    Parts that share their sheets where they can have a `heading`: it gives a part the name of these sheets. What is not
    made by `default` is made where it is asked for by name. A product `lays` its parts where they lie in a way of
    their own.
    """

    builds: Builds
    suits: Callable[[Plan], bool] = _always
    forms: tuple[str, ...] = ("pdf", "svg")
    absent: Callable[[Plan], str] = _nothing
    in_kit: bool = True
    heading: Callable[[Plan, Part], Part] | None = None
    single: Builds | None = None
    default: Callable[[Plan], bool] = _always
    lays: Callable[[Plan, Sequence[Part], FontMetrics], tuple[Laying, ...]] | None = None

    def alone(self, plan: Plan, metrics: FontMetrics) -> tuple[Part, ...]:
        """The parts as a file of their own holds them: each at its best."""
        return tuple(map(_at_its_best, (self.single or self.builds)(plan, metrics)))


class _AtAnEnd(Protocol):
    """Makes a part for the frame end or heading at `end`."""

    def __call__(
        self, plan: Plan, end: End, metrics: FontMetrics, *, low: bool = False, joints: Sequence[float] = ()
    ) -> Part: ...


def _at(make: _AtAnEnd, *ends: End) -> Builds:
    """A part for each of these ends."""

    def build(plan: Plan, end: End, metrics: FontMetrics) -> Build:
        return lambda low, joints: make(plan, end, metrics, low=low, joints=joints)

    return lambda plan, metrics: tuple(build(plan, end, metrics) for end in ends)


def _in_panes(make: Callable[[Plan, FontMetrics], Paned]) -> Builds:
    """One drawing that may be cut into panes."""
    return lambda plan, metrics: (make(plan, metrics),)


def _at_its_best(build: Build | Paned) -> Part:
    """A whole drawing; a part in its full form, or in its low one where the full form cannot be had."""
    if isinstance(build, Paned):
        return build.draw(build.whole, None)
    try:
        return build(False, ())
    except LayoutError:
        return build(True, ())


def _guides(_: Plan, part: Part) -> Part:
    """Both guides on one sheet, which says the same of each."""
    return replace(part, name="spacing-guide")


def _strips(plan: Plan, part: Part) -> Part:
    """Both strips on one sheet, named by what is done with them."""
    both = named("strips", work_of(plan))
    return replace(part, name="strips", title=plan.words.say(both.name)) if both else part


def _frame_check(plan: Plan, metrics: FontMetrics) -> tuple[Build, ...]:
    """The check in as many parts as its room asks for."""
    room = room_for(plan, bare_check(plan), metrics)
    return tuple(_as_it_is(part) for part in frame_check(plan, *room, metrics))


def _as_it_is(part: Part) -> Build:
    return lambda _low, _joints: part


ACROSS = 166.0
"""On small paper with a field so wide in mm the steps stand beside the picture."""


def _winding(plan: Plan, metrics: FontMetrics) -> tuple[Build, ...]:
    """As high as the paper allows; on small paper a small one, and what follows on a sheet of its own."""
    grid = regions(plan.kit.paper)
    if not grid.roomy:
        wide = grid.right - grid.left >= ACROSS
        bare: Callable[[Part], float] = lambda part: room_for(plan, part, metrics, bare=True)[1]  # noqa: E731
        picture: Build = lambda low, _: small_winding(plan, metrics, wide=wide, low=low, room=bare)  # noqa: E731
        return picture, lambda _low, _joints: heading_rows(plan, metrics, wide=wide)
    return (lambda _low, _joints: winding(plan, metrics, room=lambda part: room_for(plan, part, metrics)[1]),)


def _wrap_gauge(plan: Plan, metrics: FontMetrics) -> tuple[Build, ...]:
    """The card and how it is wound, on small paper each for itself."""
    if regions(plan.kit.paper).roomy:
        return (lambda low, _: wrap_gauge(plan, metrics, low=low),)
    return (
        lambda low, _: card_alone(plan, metrics, low=low),
        lambda low, _: winding_alone(plan, metrics, low=low),
    )


def _gauge_card(plan: Plan, metrics: FontMetrics) -> tuple[Build, ...]:
    """The card without how it is wound."""
    if regions(plan.kit.paper).roomy:
        return (lambda _low, _joints: gauge_card(plan, metrics),)
    return _wrap_gauge(plan, metrics)


def _leaflet(plan: Plan, metrics: FontMetrics) -> tuple[Build, ...]:
    """Its leaves. What draws them is loaded here, and so are cards below: many a plan has neither."""
    from layout.paper.folded import leaves_on_paper

    return tuple(_as_it_is(part) for part in leaves_on_paper(plan, metrics))


def _cards(plan: Plan, metrics: FontMetrics) -> tuple[Build, ...]:
    """Label, legal card and packing list."""
    from layout.parts.cards.cards import cards

    return tuple(map(_as_it_is, cards(plan, metrics)))


def _has_help(plan: Plan) -> bool:
    """On low paper only a kit asks for it whose box holds it."""
    return not help_left_out(plan) or (plan.kit.box.given and plan.kit.box.has("help"))


def _help(plan: Plan, metrics: FontMetrics) -> tuple[Build, ...]:
    """The card of help and finish, or its two halves."""
    from layout.parts.cards.help_card import help_card

    return tuple(map(_as_it_is, help_card(plan, metrics)))


def _lay_help(plan: Plan, parts: Sequence[Part], metrics: FontMetrics) -> tuple[Laying, ...]:
    from layout.paper.cards import lay_cards

    return (lay_cards(plan, parts, metrics),)


def _lay_cards(plan: Plan, parts: Sequence[Part], metrics: FontMetrics) -> tuple[Laying, ...]:
    """As many to a sheet as it holds, with a note on what is left to fill in."""
    from layout.paper.cards import lay_cards
    from layout.parts.cards.legal_card import to_fill_in

    note = to_fill_in(plan)
    return (lay_cards(plan, parts, metrics, (OnScreen(note),) if note else ()),)


PRODUCTS: Mapping[str, Product] = {
    "frame-check": Product(_frame_check, forms=("pdf",)),
    "wrap-gauge": Product(_wrap_gauge, single=_gauge_card),
    "strips": Product(_at(strip, "near", "far"), forms=("pdf",), heading=_strips),
    "strip-near": Product(_at(strip, "near"), in_kit=False),
    "strip-far": Product(_at(strip, "far"), in_kit=False),
    "winding": Product(_winding),
    "spacing-guide": Product(_at(spacing_guide, "near", "far"), heading=_guides),
    "weaving-grid": Product(_in_panes(drawing_of), absent=left_out, in_kit=False),
    "leaflet": Product(_leaflet, forms=("pdf",), in_kit=False, default=_boxed("leaflet")),
    "help": Product(
        _help, _has_help, forms=("pdf",), absent=help_left_out, in_kit=False, default=_boxed("help"), lays=_lay_help
    ),
    "label": Product(_cards, forms=("pdf",), in_kit=False, default=_boxed("label"), lays=_lay_cards),
}
"""Everything that can be made, in the order of use, which is that of the kit's sheets."""


def suiting(plan: Plan) -> tuple[str, ...]:
    """The names of the products that suit `plan`, in order."""
    return tuple(name for name, product in PRODUCTS.items() if product.suits(plan) and not product.absent(plan))


def made_by_default(plan: Plan) -> tuple[str, ...]:
    """The names of those of them that are made unasked."""
    return tuple(name for name in suiting(plan) if PRODUCTS[name].default(plan))


def absent(plan: Plan) -> Mapping[str, str]:
    """Why each product that `plan` asks for and cannot have is left out, by its name."""
    reasons = {name: product.absent(plan) for name, product in PRODUCTS.items() if product.suits(plan)}
    return {name: why for name, why in reasons.items() if why}


def laid(name: str, plan: Plan, metrics: FontMetrics) -> tuple[Laying, ...]:
    """How the parts of a product lie on the paper of `plan`; FieldError where they cannot."""
    product = PRODUCTS[name]
    builds = product.builds(plan, metrics)
    if product.lays:
        return product.lays(plan, list(map(_at_its_best, builds)), metrics)
    if product.heading and not any(isinstance(build, Paned) for build in builds):
        named_so = partial(product.heading, plan)
        return lay_together(plan, [build for build in builds if not isinstance(build, Paned)], metrics, named_so)
    return tuple(lay(plan, build, metrics) for build in builds)
