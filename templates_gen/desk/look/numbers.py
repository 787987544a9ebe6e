"""The numbers beside the slip: eight that everybody needs, and what else the kit gives."""

from __future__ import annotations

from layout.messages.catalogue import Catalogue
from layout.plan import Plan
from templates_gen.desk.look.answers import Number
from templates_gen.desk.look.room_rows import room_rows, shed_rows
from templates_gen.desk.look.rows import Rows
from templates_gen.desk.look.setting_out import setting_out
from templates_gen.desk.look.yarn_rows import piece_rows, yarn_rows

FIRST = 8
"""So many rows stand first, in the order of the work; the others follow."""


def numbers(plan: Plan, words: Catalogue, unit: str) -> tuple[Number, ...]:
    """Every row, said with `words`; figures in `unit` ("cm" or "in") stand first.

    Each note and each warning of the plan stands under exactly one of them.
    """
    rows = Rows(plan, words, unit)
    return (*setting_out(rows), *room_rows(rows), *yarn_rows(rows), *piece_rows(rows), *shed_rows(rows))
