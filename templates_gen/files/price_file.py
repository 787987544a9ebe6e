"""The price sheet of a run as a file: drawn for the maker alone, and proven."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import partial

from layout.box.needs import needs
from layout.box.quotes import NO_RATES, Rates, Takes, quote, quotes
from layout.box.shop_values import shop_values
from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.messages.roles.buying import Prices
from layout.parts.price_sheet import KitPrices, price_pages
from templates_gen.document import Document
from templates_gen.files.output import Output
from templates_gen.files.run_about import MAKERS, SoldKit, in_one_language
from templates_gen.files.run_sheets import room_of, run_output
from templates_gen.verify.compare import compare
from templates_gen.verify.finding import Findings
from templates_gen.verify.printed.code import prove_codes
from templates_gen.verify.run.price_sheet import prove_prices
from templates_gen.verify.run.prices import Boxed, Together

PRICE_FILE = f"{MAKERS}prices.pdf"

_ANY = (166.0, 160.0)  # mm: whatever it holds, its sheet says the same round it
_EDGE = 2.0  # mm that the crosses of a part reach past its field, above and below


@dataclass(frozen=True, slots=True)
class PriceRun:
    """What prices follow from: the kits of the range `name`, and what boxes of one take together.

    `takes` gives that for a kit, by its place, and a number of boxes; the `stock` is what boards are.
    """

    name: str
    kits: tuple[SoldKit, ...]
    takes: Callable[[int, int], Takes]
    rates: Rates = NO_RATES
    stock: Stock | None = None


def price_output(run: PriceRun, metrics: FontMetrics) -> Output:
    """The file as it must be; FieldError where the paper of the first kit is too small for it."""
    words, currency = run.kits[0].plan.words, run.kits[0].shop.currency
    said = [_prices(run, place) for place in range(len(run.kits))]
    purpose = words.say(Prices.PURPOSE_IN, currency=currency) if currency else words.say(Prices.PURPOSE)
    (probe, *_) = price_pages(said, _ANY, purpose, words, metrics)
    width, height = room_of(run.name, run.kits, probe, metrics)
    parts = price_pages(said, (width, height - _EDGE), purpose, words, metrics)
    return run_output(run.name, run.kits, parts, PRICE_FILE, metrics, run.stock)


def _prices(run: PriceRun, place: int) -> KitPrices:
    """The quotes of one kit: for each quantity of its shop, and for the boxes of this run."""
    plan, copies, shop = in_one_language(run.kits)[place].plan, run.kits[place].copies, run.kits[place].shop
    needed = needs(plan)
    now = quote(needed, shop, copies, run.takes(place, copies), run.rates)
    return KitPrices(plan.kit.name, quotes(needed, shop, partial(run.takes, place), run.rates), now)


def price_findings(run: PriceRun, output: Output, found: Document) -> Findings:
    """How a price sheet that was read back differs from what was drawn, and from what it must be whatever was drawn."""
    result = compare(output.sheets, found.sheets)
    if result.problems:
        return result
    kits = [Boxed(each.plan, each.copies, shop_values(each.shop)) for each in in_one_language(run.kits)]
    result += prove_codes(found)
    return result + prove_prices(found.sheets, output.laid, run.name, kits, partial(_together, run))


def _together(run: PriceRun, place: int, boxes: int) -> Together:
    return Together(*run.takes(place, boxes), *run.rates)
