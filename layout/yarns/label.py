"""A yarn as people tell it: by count, by a ball, by weighing, as threads folded; and how it wraps."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from layout.errors import FieldError
from layout.units import Length
from layout.yarns.diameter import Diameter, compressed, specific_volume, wrapped
from layout.yarns.yarn import Yarn, folded, yarn_from_ball, yarn_of, yarn_weighed


@dataclass(frozen=True, slots=True)
class Label:
    """How heavy a yarn is, in one of four ways: `count` of its singles in a `system` (of so many `plies`), `grams` in
    a `length` as it is sold, the same `weighed` by oneself, or unlike `threads` folded. All left out: not known.
    """

    count: Fraction | None = None
    system: str | None = None
    plies: int | None = None
    grams: Fraction | None = None
    length: Length | None = None
    weighed: bool = False
    threads: tuple[Label, ...] = ()

    def yarn(self, field: str = "yarn") -> Yarn | None:
        """The yarn that is told; None if nothing is. FieldError, at `field`, for what is told by halves or twice."""
        ways = [bool(self.threads), self.count is not None, self.grams is not None or self.length is not None]
        if sum(ways) > 1:
            raise FieldError(field, "one way of telling how heavy the yarn is", "several", 'count = 8, system = "ne"')
        if self.threads:
            self._only_with(field, "to be left out beside threads, each of which has its own")
            whole = [yarn for thread in self.threads if (yarn := thread.yarn(field))]
            return folded(whole, field)
        if self.count is not None:
            return self._counted(self.count, field)
        self._only_with(field, "a count beside it")
        return self._sold(field)

    def _counted(self, count: Fraction, field: str) -> Yarn:
        if self.weighed:
            raise FieldError(f"{field}.weighed", "grams and a length beside it", "a count", "weighed = false")
        if self.system is None:
            needed = "the system that the count is in, since a bare number may mean any"
            raise FieldError(f"{field}.system", needed, "nothing", 'system = "ne"')
        return yarn_of(count, self.system, self.plies or 1, field)

    def _only_with(self, field: str, needed: str) -> None:
        """FieldError for a system or plies that stand without their count."""
        for key, value in (("system", self.system), ("plies", self.plies)):
            if value is not None:
                raise FieldError(f"{field}.{key}", needed, str(value), 'count = 8, system = "ne", plies = 2')

    def _sold(self, field: str) -> Yarn | None:
        if self.grams is None and self.length is None and not self.weighed:
            return None
        if self.grams is None or self.length is None:
            missing = "grams" if self.grams is None else "length"
            raise FieldError(
                f"{field}.{missing}", "both grams and a length", "one of them", 'grams = 50, length = "120 m"'
            )
        weigh = yarn_weighed if self.weighed else yarn_from_ball
        return weigh(self.grams, self.length.mm / 1000, field)


@dataclass(frozen=True, slots=True)
class Wrap:
    """A yarn wrapped by hand: so many `turns`, side by side and just touching, fill the `window`."""

    turns: int
    window: Length

    @property
    def diameter(self) -> Diameter:
        """The soft diameter."""
        return wrapped(self.window.mm, self.turns)


@dataclass(frozen=True, slots=True)
class Thread(Label):
    """A yarn with its `fibre` and how it wraps."""

    fibre: str | None = None
    wrap: Wrap | None = None

    @property
    def soft(self) -> Diameter | None:
        """The soft diameter, if it was wrapped."""
        return self.wrap.diameter if self.wrap else None

    @property
    def compressed(self) -> Diameter | None:
        """The compressed diameter, if weight and fibre are told."""
        yarn = self.yarn()
        return compressed(yarn, specific_volume(self.fibre)) if yarn and self.fibre else None


@dataclass(frozen=True, slots=True)
class StrandTold(Thread):
    """`number` strands of a yarn in a weft bundle, of one `colour` (empty: that of the area they are woven in)."""

    number: int = 1
    colour: str = ""
