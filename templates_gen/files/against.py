"""What files that are read back are compared with."""

from __future__ import annotations

from dataclasses import dataclass

from layout.cutting.stock.stock import Stock
from layout.cutting.stock.stock_values import without_money
from layout.kit.kit import Kit, without_legal
from templates_gen.files.embedded import Embedded
from templates_gen.inputs.range_file import Range
from templates_gen.messages.roles.proof import Compared
from templates_gen.verify.finding import Findings, finding


@dataclass(frozen=True, slots=True)
class Against:
    """The kit and the stock that files are checked against; None for what each file carries itself.

    Of a range that was `found`, each file is checked against the kit of its own name; `foreign` is a file of none.
    """

    kit: Kit | None = None
    stock: Stock | None = None
    found: Range | None = None
    foreign: bool = False

    def of(self, name: str) -> Against:
        """What files of the kit of that name are checked against."""
        if self.found is None:
            return self
        kit = next((each.kit for each in self.found.kits if each.kit.name == name), None)
        return Against(kit, self.stock, foreign=kit is None)

    def unlike(self, said: Embedded) -> Findings:
        """Whether a file carries another kit or stock than these."""
        kit = self.foreign or (self.kit is not None and without_legal(said.kit) != without_legal(self.kit))
        stock = self.stock is not None and said.stock is not None and said.stock != without_money(self.stock)
        unlike = [role for role, differs in ((Compared.OTHER_KIT, kit), (Compared.OTHER_STOCK, stock)) if differs]
        return Findings(0.0, tuple(map(finding, unlike)))
