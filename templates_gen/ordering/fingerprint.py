"""The fingerprint of an order: the same as long as making it again would make the same."""

from __future__ import annotations

import hashlib
import json
from functools import cache

from templates_gen.inputs.printer_values import printer_values
from templates_gen.ordering.job import USUAL, Job
from templates_gen.ordering.order import Order


class Fingerprints:
    """Those of the orders of one job."""

    def __init__(self, job: Job) -> None:
        printer = None if job.printer is None else printer_values(job.printer)
        stock = None if job.stock is None else dict(job.stock)
        self._shared = hashlib.sha256(_text([version(), list(job.only or USUAL), stock, printer]))

    def of(self, order: Order) -> str:
        """A sha256 of all that the order is made of: its row, its kit, what the job shares, the program's version.

        What the shop pays and earns is none of it: it stands in the reports, which are written anew by every run.
        """
        found = self._shared.copy()
        found.update(_text([order.number, order.folder, order.kit, order.copies, dict(order.values)]))
        return found.hexdigest()


def _text(values: list[object]) -> bytes:
    """As JSON, in the order of the keys: tables of yarns have one. A date, which JSON has not, as Python writes it."""
    return json.dumps(values, default=repr, separators=(",", ":")).encode()


@cache
def version() -> str:
    """That of the program; empty where it is not installed."""
    from importlib import metadata

    try:
        return metadata.version("templates-gen")
    except metadata.PackageNotFoundError:
        return ""
