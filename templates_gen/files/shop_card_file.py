"""The shop cards of a run as a file, and what proves it."""

from __future__ import annotations

from collections.abc import Sequence

from layout.box.weights import Boards, packed
from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.parts.held import held_each
from layout.parts.shop_card import cards_on, shop_cards
from layout.plan import Plan
from layout.products import PRODUCTS
from templates_gen.document import Document
from templates_gen.files.output import Output
from templates_gen.files.run_about import SoldKit
from templates_gen.files.run_sheets import room_of, run_output
from templates_gen.verify.compare import compare
from templates_gen.verify.finding import Findings
from templates_gen.verify.printed.code import prove_codes
from templates_gen.verify.run.money import prove_no_money
from templates_gen.verify.run.shop_card import Carded, prove_shop_cards

CARD_FILE = "shop-card.pdf"

_EDGE = 1.0  # mm that the outlines and crosses reach past their field, above and below


def card_output(
    name: str,
    kits: Sequence[SoldKit],
    boards: Sequence[Boards | None],
    metrics: FontMetrics,
    stock: Stock | None = None,
) -> Output:
    """The file as it must be; `boards` are what is cut for one box of each kit, None where nothing is.

    Raises FieldError on paper.size where the paper of the first kit is too small for a card.
    """
    cards = [
        (each.plan, packed(each.plan, paper_in_box(each.plan, metrics), cut))
        for each, cut in zip(kits, boards, strict=True)
    ]
    words = kits[0].plan.words
    _, height = room_of(name, kits, shop_cards(cards[:1], words, metrics), metrics)
    most = cards_on(height - _EDGE)
    parts = [shop_cards(cards[begin : begin + most], words, metrics) for begin in range(0, len(cards), most)]
    return run_output(name, kits, parts, CARD_FILE, metrics, stock)


def paper_in_box(plan: Plan, metrics: FontMetrics) -> float:
    """How much paper lies in a box of this kit, in mm2: its printed parts, each as large as it is cut out."""
    held = [name for name in held_each(plan) if name in PRODUCTS]
    trims = [part.trim for name in held for part in PRODUCTS[name].alone(plan, metrics)]
    return sum((right - left) * (top - low) for left, low, right, top in trims)


def card_findings(
    name: str,
    kits: Sequence[SoldKit],
    boards: Sequence[Boards | None],
    metrics: FontMetrics,
    output: Output,
    found: Document,
) -> Findings:
    """How shop cards that were read back differ from what was drawn, and from what they must be whatever was drawn."""
    result = compare(output.sheets, found.sheets)
    if result.problems:
        return result
    carded = [
        Carded(
            each.plan,
            each.copies,
            paper_in_box(each.plan, metrics),
            (cut.area, cut.thickness, cut.material) if cut else None,
        )
        for each, cut in zip(kits, boards, strict=True)
    ]
    result += prove_codes(found) + prove_shop_cards(found.sheets, output.laid, name, carded)
    return result + prove_no_money(output.file, found.sheets, found.about.inputs, kits[0].shop.currency)
