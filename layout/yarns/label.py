"""A yarn as people describe it: by count, by a ball, by weighing, as threads folded; and how it wraps."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from layout.messages.catalogue import Between, Message
from layout.messages.roles import Refusal, YarnNeed
from layout.values.errors import FieldError, leave_out, shown
from layout.values.limits import plain
from layout.values.units import Length
from layout.values.uses import Use
from layout.yarns.diameter import Diameter, compressed, specific_volume, wrapped
from layout.yarns.yarn import FINEST_TEX, HEAVIEST_TEX, Yarn, folded, yarn_from_ball, yarn_of, yarn_weighed
from layout.yarns.yarn_counts import SYSTEMS, system

_USUAL_TEX, _USUAL_COUNT, _USUAL_SYSTEM = Fraction(100), Fraction(8), "ne"
"""A yarn that is meant, wherever one is asked for."""
_THREADS = 'threads = [{count = 8, system = "ne"}, {count = 20, system = "ne"}]'
_WAYS = (("threads",), ("count",), ("grams", "length"))


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
        """The yarn described; None if nothing is. FieldError, at `field`, for what is said by halves or twice."""
        ways = [[key for key in keys if getattr(self, key) is not None and getattr(self, key) != ()] for keys in _WAYS]
        given = [keys[0] for keys in ways if keys]
        if len(given) > 1:
            raise _several_ways(field, given)
        if self.threads:
            self._left_out(field)
            whole = [yarn for thread in self.threads if (yarn := thread.yarn(field))]
            try:
                return folded(whole, field)
            except FieldError as error:
                raise error.at(f"{field}.threads", _THREADS) from None
        if self.count is not None:
            return self._counted(self.count, field)
        if self.system is not None or self.plies is not None:
            beside = "system" if self.system is not None else "plies"
            example = f"count = {_usual_count(self.system, self.plies or 1)}"
            raise FieldError(f"{field}.count", YarnNeed.BESIDE, shown(None), example, other=beside)
        return self._sold(field)

    def _counted(self, count: Fraction, field: str) -> Yarn:
        if self.weighed:
            raise FieldError(f"{field}.weighed", YarnNeed.WEIGHED, Message(YarnNeed.A_COUNT), "weighed = false")
        if self.system is None:
            example = f'system = "{_usual_system(count, self.plies or 1)}"'
            raise FieldError(f"{field}.system", YarnNeed.SYSTEM_OF_COUNT, shown(None), example)
        try:
            return yarn_of(count, self.system, self.plies or 1, field)
        except FieldError as error:
            if error.field != field:
                raise
            raise error.at(f"{field}.count", f"count = {_usual_count(self.system, self.plies or 1)}") from None

    def _left_out(self, field: str) -> None:
        """FieldError for a system or plies beside threads, each of which has its own."""
        for key, value in (("system", self.system), ("plies", self.plies)):
            if value is not None:
                raise FieldError(f"{field}.{key}", YarnNeed.BESIDE_THREADS, str(value), leave_out(key))

    def _sold(self, field: str) -> Yarn | None:
        if self.grams is None and self.length is None and not self.weighed:
            return None
        if self.grams is None or self.length is None:
            missing = "grams" if self.grams is None else "length"
            example = _usual_ball(self.grams, self.length)
            one = Message(YarnNeed.ONE_OF_THEM)
            raise FieldError(f"{field}.{missing}", YarnNeed.GRAMS_AND_LENGTH, one, example)
        weigh = yarn_weighed if self.weighed else yarn_from_ball
        try:
            return weigh(self.grams, self.length.mm / 1000, field)
        except FieldError as error:
            usual = plain(_USUAL_TEX * self.length.mm / 10**6)
            raise error.at(f"{field}.grams", f"grams = {usual}") from None


def _can_be(tex: Fraction) -> bool:
    return FINEST_TEX <= tex <= HEAVIEST_TEX


def _usual_count(name: str | None, plies: int) -> str:
    """A count in that system that makes a yarn of so many plies."""
    usual = _USUAL_COUNT
    if name and not _can_be(system(name).tex(usual) * plies):
        usual = system(name).number(_USUAL_TEX / plies)
    return plain(usual)


def _usual_system(count: Fraction, plies: int) -> str:
    """The first system, cotton before all, in which such a count makes a yarn; cotton where none does."""
    keys = (_USUAL_SYSTEM, *(key for key in SYSTEMS if plies == 1 or not SYSTEMS[key].finished))
    return next((key for key in keys if count > 0 and _can_be(SYSTEMS[key].tex(count) * plies)), _USUAL_SYSTEM)


def _usual_ball(grams: Fraction | None, length: Length | None) -> str:
    """The line that is missing of a ball that makes a yarn."""
    if grams is None:
        metres = length.mm / 1000 if length else Fraction(120)
        usual = Fraction(50) if _can_be(50_000 / metres) else _USUAL_TEX * metres / 1000
        return f"grams = {plain(usual)}"
    metres = Fraction(120) if _can_be(1000 * grams / 120) else 1000 * grams / _USUAL_TEX
    return f'length = "{plain(metres)} m"'


def _several_ways(field: str, given: list[str]) -> FieldError:
    """The refusal of a yarn that is described in two ways or three."""
    last, *others = reversed(given)
    got: Message | str = given[0]
    for key in given[1:]:
        got = Message(Between.AND, {"before": got, "after": key})
    keys = dict(zip(("other", "third"), others, strict=False))
    role = Refusal.LEAVE_OUT_OR if len(others) == 1 else Refusal.LEAVE_OUT_OR_OR
    error = FieldError(field, YarnNeed.ONE_WAY, got, Message(role, {"key": last, **keys}))
    return error.offering(*(Use(f"{field}.{key}", None) for key in (last, *others)))


@dataclass(frozen=True, slots=True)
class Wrap:
    """A yarn wrapped by hand: so many `turns` fill the `window`; `how` they were laid, None where not stated."""

    turns: int
    window: Length
    how: str | None = None

    @property
    def diameter(self) -> Diameter:
        """The soft diameter."""
        return wrapped(self.window.mm, self.turns)


@dataclass(frozen=True, slots=True)
class Thread(Label):
    """A yarn with its `fibre`, how it is made and wraps, and what a `ball` of it weighs in g that can be bought."""

    fibre: str | None = None
    wrap: Wrap | None = None
    make: str | None = None
    ball: Fraction | None = None

    @property
    def soft(self) -> Diameter | None:
        """The soft diameter, if it was wrapped."""
        return self.wrap.diameter if self.wrap else None

    @property
    def ball_g(self) -> float | None:
        """What a ball weighs in g: as stated, else as its label says where it is sold by the ball."""
        if self.ball is not None:
            return float(self.ball)
        return float(self.grams) if self.grams is not None and not self.weighed else None

    @property
    def compressed(self) -> Diameter | None:
        """The compressed diameter, if weight and fibre are known."""
        yarn = self.yarn()
        return compressed(yarn, specific_volume(self.fibre)) if yarn and self.fibre else None


@dataclass(frozen=True, slots=True)
class StrandGiven(Thread):
    """`number` strands of a yarn in a weft bundle, of one `colour` (empty: that of the area they are woven in)."""

    number: int = 1
    colour: str = ""
