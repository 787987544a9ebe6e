"""From an order to its plan, and from a job to its stock, as each worker needs them."""

from __future__ import annotations

import json
from functools import lru_cache
from typing import TYPE_CHECKING

from templates_gen.ordering.job import Job
from templates_gen.ordering.order import Order

if TYPE_CHECKING:
    from layout.cutting.stock.stock import Stock
    from layout.plan import Plan


def plan_of(job: Job, order: Order) -> Plan:
    """The plan of an order, printed on the printer of the job; FieldError or FieldErrors where there can be none."""
    from layout.kit.kit import read_kit
    from templates_gen.files.for_printer import with_printer
    from templates_gen.files.kept import planned
    from templates_gen.lettering.fonts import metrics

    return with_printer(planned(read_kit(order.values, metrics())), job.printer)


def stock_of(job: Job) -> Stock:
    """The stock that the plain values of a job say; the built-in one where there are none."""
    return _stock("" if job.stock is None else json.dumps(dict(job.stock), default=repr))


@lru_cache(2)
def _stock(text: str) -> Stock:
    from layout.cutting.stock.stock_values import read_stock
    from templates_gen.inputs.stock_file import built_in
    from templates_gen.lettering.fonts import metrics

    return read_stock(json.loads(text), metrics()) if text else built_in()
