"""What the rows of the numbers share: the plan they are of, how figures are said, and how a row is put together."""

from __future__ import annotations

from layout.messages.catalogue import Catalogue, Role
from layout.plan import Plan
from layout.values.quantity import Origin, Quantity
from templates_gen.desk.look.answers import Number
from templates_gen.desk.look.concerns import concerning
from templates_gen.desk.look.figures import Figures, Pair
from templates_gen.desk.look.range_drawing import Tick, range_drawing
from templates_gen.messages.roles.desk_numbers import Shown


class Rows:
    """The rows of one plan, said with `words`; `unit` ("cm" or "in") says which system stands first."""

    def __init__(self, plan: Plan, words: Catalogue, unit: str) -> None:
        self.plan, self.words = plan, words
        self.figures = Figures(words, imperial=unit == "in")

    def row(self, number: str, name: Role, shown: tuple[str, str], origin: Origin, why: tuple[str, ...]) -> Number:
        """A row with everything that the plan says to it."""
        how, said = self.figures.how(origin)
        notes = concerning(number, self.plan.notes, self.words)
        warnings = concerning(number, self.plan.warnings, self.words)
        return Number(number, self.words.say(name), *shown, how, said, (*why, *notes), warnings=warnings)

    def of(self, number: str, name: Role, figure: Quantity, pair: Pair, second: str | None = None) -> Number:
        """A row of a figure, with its range if it has one."""
        one, other = self.figures.scales(pair)
        beside = self.figures.plain(figure, other) if second is None else second
        why = (*self.figures.why(figure), *self.figures.between(figure, pair))
        found = self.row(number, name, (self.figures.likely(figure, one), beside), figure.origin, why)
        bounds = self.figures.bounds(figure, one)
        if bounds is None:
            return found
        low, high, taken = (value * one.each for value in (figure.low, figure.high, figure.value))
        ticks = Tick(taken, found.value, taken=True), Tick(low, bounds[0]), Tick(high, bounds[1])
        about = self.words.say(Shown.BETWEEN, low=bounds[0], high=bounds[1])
        drawing = range_drawing(low, high, ticks, self.words.say(Shown.POSSIBLE), about)
        return found._replace(low=low, high=high, taken=taken, range=drawing)

    def lacking(self, number: str, name: Role, needs: tuple[str, Role], why: tuple[str, ...]) -> Number:
        """A row of what cannot be known without another line of the slip."""
        field, said = needs
        found = self.row(number, name, ("", ""), Origin.ASSUMED, why)
        return found._replace(needs=field, needs_said=self.words.say(said))

    def giving(self, row: Number, field: str, said: Role) -> Number:
        """The same row with a link to the line that changes it."""
        return row._replace(gives=field, gives_said=self.words.say(said))
