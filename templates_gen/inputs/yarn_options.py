"""The options of the command `yarn`, read into what is known of one yarn; refusals name the option."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from layout.messages.catalogue import Message, Role
from layout.messages.roles import Conflict, Value, YarnNeed, YarnNumber
from layout.values.errors import FieldError, shown
from layout.values.limits import above_zero, plain, whole
from layout.values.numerals import read_number
from layout.values.quantity import Quantity, computed
from layout.values.units import read_length
from layout.yarns.diameter import INCH, Diameter, compressed, craft_classes, specific_volume
from layout.yarns.label import Wrap
from layout.yarns.label_text import NO_PLIES, Read, fibre_of, read_label
from layout.yarns.thickness import UNSTATED, Thickness, known, of_label, of_wrap
from layout.yarns.yarn import Yarn, folded
from layout.yarns.yarn_counts import ORDERS
from templates_gen.inputs.options import whole_or_text
from templates_gen.messages.errors import OptionError
from templates_gen.messages.language import listed, message
from templates_gen.messages.roles.inputs import YarnOption

_EXAMPLE = '"8 Ne" --plies 2'
_WRAP = '--wraps 12 --over "1 in"'


@dataclass(frozen=True, slots=True)
class YarnQuestion:
    """What the command line says about one yarn: by its label, by a hand wrap, or by both.

    `volume` is the specific volume of the `yarn` in cm3/g; `reasons` say where its weight is from.
    """

    yarn: Yarn | None
    volume: Quantity | None
    wrap: Wrap | None
    reasons: tuple[str, ...] = ()
    fibre: str | None = None

    @property
    def thickness(self) -> Thickness | None:
        """Pressed and soft, each with its range: by the label, narrowed by the wrap."""
        label = of_label(float(self.yarn.tex), UNSTATED, self.fibre) if self.yarn else None
        wrap = of_wrap(self.wrap.turns, float(self.wrap.window.mm), None) if self.wrap else None
        return known(label, wrap, _apart)

    @property
    def compressed(self) -> Diameter | None:
        """The compressed diameter; None where there is only a hand wrap."""
        return compressed(self.yarn, self.volume) if self.yarn and self.volume else None

    @property
    def wraps_per_inch(self) -> Fraction | None:
        """Turns of the hand wrap in an inch, if there is one."""
        return self.wrap.turns * INCH / self.wrap.window.mm if self.wrap else None

    @property
    def classes(self) -> tuple[int, ...]:
        """The Craft Yarn classes that the hand wrap may belong to, from the finest on."""
        return tuple(sorted(craft_classes(self.wraps_per_inch))) if self.wraps_per_inch else ()


def read_yarn_options(
    threads: Sequence[str],
    plies: str | None,
    order: str | None,
    fibre: str | None,
    volume: str | None,
    wraps: str | None,
    over: str | None,
    *,
    weighed: bool,
) -> YarnQuestion:
    """The yarn that the words and options of the command say; FieldError naming the one that does not work."""
    wrap = _wrap(wraps, over)
    labels = _labels(threads, plies, order, weighed=weighed)
    if labels:
        yarns = [label.yarn for label in labels]
        if len(yarns) > 1:
            yarns.append(folded(yarns, "YARN"))
        reasons = tuple(yarn.reason for yarn in yarns)
        return YarnQuestion(
            yarns[-1], _volume(fibre, volume, labels), wrap, reasons, fibre and fibre.strip().casefold()
        )
    beside = {"--plies": plies, "--order": order, "--fibre": fibre, "--volume": volume, "--weighed": weighed or None}
    given = [name for name, value in beside.items() if value is not None]
    if given or not wrap:
        if not given:
            raise OptionError("YARN", YarnOption.LABEL_OR_WRAP, YarnOption.NOTHING, _EXAMPLE, wrap=_WRAP)
        only = Message(YarnOption.ONLY, {"options": listed(given)})
        raise OptionError("YARN", YarnNeed.LABEL, only, _EXAMPLE)
    return YarnQuestion(None, None, wrap)


def _apart(label: Quantity, wrap: Quantity) -> str:
    """What is said of a wrap that the label does not allow."""
    names = {"least": label.low, "most": label.high, "low": wrap.low, "high": wrap.high}
    return message(Conflict.WRAP_LABEL, wrap="--wraps", **{name: plain(round(mm, 2)) for name, mm in names.items()})


def _labels(threads: Sequence[str], plies: str | None, order: str | None, *, weighed: bool) -> list[Read]:
    if order is not None and order not in ORDERS:
        example = '"8/2 Ne" --order count/plies'
        raise OptionError("--order", YarnOption.EITHER, shown(order), example, one=ORDERS[0], other=ORDERS[1])
    folds = None
    threads = _quoted(threads)
    if plies is not None:
        if len(threads) > 1:
            number = Message(YarnOption.YARNS, {"number": len(threads)})
            raise OptionError("--plies", YarnOption.ONE_YARN, number, NO_PLIES)
        folds = whole(whole_or_text(plies), "--plies", YarnNumber.PLIES, "--plies 2", most=100)  # type: ignore[arg-type]
    return [read_label(thread, folds, order, "YARN", weighed=weighed) for thread in threads]


def _quoted(words: Sequence[str]) -> Sequence[str]:
    """`words` as they came, or as one yarn where the marks round it were forgotten: a number or a unit is none."""
    forgotten = any(word.isalpha() or not any(map(str.isalpha, word)) for word in words)
    return [" ".join(words)] if forgotten else words


def _volume(fibre: str | None, volume: str | None, labels: Sequence[Read]) -> Quantity:
    if volume is None:
        if fibre is None:
            return fibre_of(labels)
        try:
            return specific_volume(fibre, "--fibre")
        except FieldError as error:
            raise OptionError("--fibre", error.needed, error.got, "--fibre wool") from None
    if fibre is not None:
        raise OptionError("--volume", YarnOption.ALONE, YarnOption.BOTH, Message(YarnOption.LEAVE_OUT))
    v = _number(volume, "--volume", YarnNumber.VOLUME, "--volume 1.1")
    return computed(float(v), message(YarnOption.VOLUME_STATED, volume=plain(v)))


def _wrap(wraps: str | None, over: str | None) -> Wrap | None:
    if wraps is None and over is None:
        return None
    if wraps is None or over is None:
        missing, there = ("--wraps", "--over") if wraps is None else ("--over", "--wraps")
        raise OptionError(missing, YarnNeed.BESIDE, YarnOption.NOTHING, _WRAP, other=there)
    turns = whole(whole_or_text(wraps), "--wraps", YarnNumber.TURNS, "--wraps 12", most=10_000)  # type: ignore[arg-type]
    try:
        window = read_length(over)
    except FieldError as error:
        raise OptionError("--over", error.needed, error.got, '--over "1 in"') from None
    above_zero(window.mm, "--over", YarnNumber.WINDOW, '--over "1 in"')
    return Wrap(turns, window)


def _number(text: str, option: str, what: Role, example: str) -> Fraction:
    try:
        found = read_number(text)
    except FieldError as error:
        raise OptionError(option, error.needed, error.got, example) from None
    if found is None:
        raise FieldError(option, Value.ABOVE_ZERO, shown(text), example, what=what)
    return above_zero(found, option, what, example)
