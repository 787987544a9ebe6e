"""The kits of the range that orders are for, by the names that rows give them."""

from __future__ import annotations

from dataclasses import replace

from layout.kit.folder_names import folder_name
from layout.kit.kit import kit_values
from layout.values.errors import FieldError
from templates_gen.inputs.range_file import Range, RangeKit
from templates_gen.ordering.table.columns import KIT_NAME

_MOST = 1000  # spellings that are remembered


class Kits:
    """The kits of a range; what was found for one spelling of a name is remembered."""

    def __init__(self, kits: Range) -> None:
        every = tuple(each if each.values else replace(each, values=kit_values(each.kit)) for each in kits.kits)
        self.range = replace(kits, kits=every)
        self._found: dict[str, RangeKit] = {}

    @property
    def first(self) -> str:
        """The name of the first kit."""
        return self.range.kits[0].kit.name

    def of(self, name: str) -> RangeKit:
        """The kit of that name, as `Range.of` finds it; of a range of one, no name will do.

        FieldError at "kit" where there is none.
        """
        found = self._found.get(name) or self._look_up(name)
        if len(self._found) < _MOST:
            self._found[name] = found
        return found

    def _look_up(self, name: str) -> RangeKit:
        if not name and len(self.range.kits) == 1:
            return self.range.kits[0]
        try:
            return self.range.of([name]).kits[0]
        except FieldError as error:
            meant = str(error.needed.values.get("meant", "")).strip('"')
            raise error.at(KIT_NAME, _in_cell(meant or self.first)) from None


def _in_cell(name: str) -> str:
    """The name as it may stand in any cell: that of its folder has no comma, so it needs no quotes."""
    try:
        return folder_name(name)
    except FieldError:
        return name
