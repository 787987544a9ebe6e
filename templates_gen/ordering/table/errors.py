"""Refusals of a table as a whole: nothing of it can be made."""

from __future__ import annotations

from layout.values.errors import LayoutError


class OrdersFileError(LayoutError):
    """A table of orders that cannot be opened or read; the sentence names it."""
