"""What files that are read back are compared with."""

from __future__ import annotations

from dataclasses import dataclass, replace

from layout.cutting.stock.stock import Stock
from layout.cutting.stock.stock_values import without_money
from layout.drawing.metrics import FontMetrics
from layout.kit.kit import Kit, without_persons
from layout.plan import Plan
from templates_gen.files.embedded import Embedded
from templates_gen.files.kept import planned, with_stock
from templates_gen.inputs.range_file import Range
from templates_gen.messages.roles.proof import Compared
from templates_gen.verify.finding import Findings, finding


@dataclass(frozen=True, slots=True)
class Against:
    """The kit and the stock that files are checked against; None for what each file carries itself.

    Of a range that was `found`, each file is checked against the kit of its own name; `foreign` is a file of none.
    What boxes can hold is judged by the stock that a folder was `cut_from`, where there is no other.
    """

    kit: Kit | None = None
    stock: Stock | None = None
    found: Range | None = None
    foreign: bool = False
    cut_from: Stock | None = None

    def of(self, name: str) -> Against:
        """What files of the kit of that name are checked against."""
        if self.found is None:
            return self
        kit = next((each.kit for each in self.found.kits if each.kit.name == name), None)
        return replace(self, kit=kit, found=None, foreign=kit is None)

    def plan_of(self, said: Embedded, metrics: FontMetrics) -> Plan:
        """The plan of the kit for the printer that the file names; without what the stock, or the file, refuses."""
        plan, stock = replace(planned(self.kit or said.kit), printer=said.printer), self.stock or self.cut_from
        return with_stock(plan, stock, metrics) if stock else replace(plan, refused=said.without)

    def unlike(self, said: Embedded) -> Findings:
        """Whether a file carries another kit or stock than these."""
        kit = self.foreign or (self.kit is not None and without_persons(said.kit) != without_persons(self.kit))
        stock = self.stock is not None and said.stock is not None and said.stock != without_money(self.stock)
        unlike = [role for role, differs in ((Compared.OTHER_KIT, kit), (Compared.OTHER_STOCK, stock)) if differs]
        return Findings(0.0, tuple(map(finding, unlike)))
