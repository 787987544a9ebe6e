"""What can be clicked where something cannot be read: values that were tried first and that the core then takes."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from fractions import Fraction
from typing import NamedTuple

from layout.kit.inputs import AS_HIGH_AS_FITS, BY_KEY
from layout.values.errors import FieldError
from layout.values.units import Length, down, read_length
from layout.values.uses import Use as Asked
from templates_gen.desk.slip.fields import HOW, RUN_PREFIX, SPECS, STOCK_PREFIX, pattern_of
from templates_gen.desk.slip.guesses import OF_ONE_VALUE, guesses
from templates_gen.desk.slip.judging import Judged, Refused, judged
from templates_gen.desk.slip.shape import Typed
from templates_gen.desk.slip.texts import text_of

MOST = 3
_MOST_EMPTIED = 4
_HEIGHT = "weaving.height"
_MOST_TRIED = 7
_MOST_TROUBLES = 6
"""No more than so many troubles of one reading get chips: who has more reads the sentences first."""


class Use(NamedTuple):
    """A way out: a click puts `text` into `field`, "" empties it. Several names in `field`, with spaces, all get it."""

    field: str
    text: str


def used(typed: Typed, use: Use) -> dict[str, str]:
    """What is typed after the click."""
    return {**typed, **dict.fromkeys(use.field.split(), use.text)}


def ways_out(typed: Typed, found: Judged, refused: Refused) -> tuple[Use, ...]:
    """At most three clicks after which this trouble is gone and no other has come of it; tried in this reading."""
    if found.refusals.index(refused) >= _MOST_TROUBLES:
        return ()
    return _Trial(typed, found, refused).good


class _Trial:
    """The clicks of one refusal, tried one after the other: what is likely, what leads on from there, leaving out."""

    def __init__(self, typed: Typed, found: Judged, refused: Refused) -> None:
        self._typed, self._refused = typed, refused
        self._before = {each.sign for each in found.refusals}
        self._further: list[Use] = []
        self._later: dict[Use, frozenset[tuple[str, str]]] = {}
        self._tried: set[Use] = set()
        self._good: list[Use] = []
        self._all(_offers(typed, refused))
        if not self._good:
            self._all(self._further)
        if not self._good:
            self._all(_left_out(typed, refused))
        self.good = tuple(self._good) or _apart(self._later)

    def _all(self, uses: Iterable[Use]) -> None:
        for use in uses:
            if len(self._good) >= MOST or len(self._tried) >= _MOST_TRIED:
                return
            if use not in self._tried and any(self._typed.get(name, "") != use.text for name in use.field.split()):
                self._tried.add(use)
                self._one(use)

    def _one(self, use: Use) -> None:
        typed = used(self._typed, use)
        after = judged(typed).refusals
        new = frozenset({each.sign for each in after} - self._before)
        same = [each for each in after if each.field == self._refused.field]
        if same:
            self._further += [each for one in same for each in _asked(typed, one)]
        elif new:
            self._later[use] = new
        else:
            self._good.append(use)


def _apart(later: Mapping[Use, frozenset[tuple[str, str]]]) -> tuple[Use, ...]:
    """Clicks that all uncover the very same other troubles: these are none of theirs, and were only hidden."""
    return tuple(later)[:MOST] if len(later) > 1 and len(set(later.values())) == 1 else ()


def _offers(typed: Typed, refused: Refused) -> Iterator[Use]:
    """What may be tried, the likeliest first."""
    name = refused.field
    spec = SPECS.get(pattern_of(name))
    text = typed.get(name, "")
    if name == _HEIGHT:
        yield from _highest(typed, text)
    if spec is not None:
        for guess in guesses(spec, text, refused.error):
            yield Use(name, guess)
    yield from _asked(typed, refused)


def _left_out(typed: Typed, refused: Refused) -> Iterator[Use]:
    """Nothing in the line, or in all lines of a small table or a row."""
    spec = SPECS.get(pattern_of(refused.field))
    if typed.get(refused.field, "").strip() and not (spec and spec.required):
        yield Use(refused.field, "")
    if refused.key != refused.field:
        yield from (use for use in _emptied(typed, refused.key) if len(use.field.split()) <= _MOST_EMPTIED)


def _highest(typed: Typed, text: str) -> Iterator[Use]:
    """The greatest height that can be woven, in the unit that was typed, and the words for it."""
    as_fits = judged({**typed, _HEIGHT: AS_HIGH_AS_FITS}).plan
    if as_fits is None:
        return
    try:
        asked = read_length(text)
    except FieldError:
        return
    highest = as_fits.amounts.weavable_height_mm.value
    if float(asked.mm) > highest:
        yield Use(_HEIGHT, down(Length(Fraction(highest), asked.unit)))
        yield Use(_HEIGHT, AS_HIGH_AS_FITS)


def _asked(typed: Typed, refused: Refused) -> Iterator[Use]:
    """What the refusal itself offers; not its fixed example, which is nobody's measure."""
    for asked in refused.error.use:
        yield from _typed(typed, refused, asked)


def _typed(typed: Typed, refused: Refused, asked: Asked) -> Iterator[Use]:
    prefix = next((each for each in (STOCK_PREFIX, RUN_PREFIX) if refused.key.startswith(each)), "")
    name = f"{prefix}{asked.key}"
    pattern = pattern_of(name)
    if asked.value is None:
        yield from _emptied(typed, name)
        return
    spec = SPECS.get(pattern) or BY_KEY.get(pattern)
    if spec is None or isinstance(asked.value, dict) or spec.kind == "tables":
        return
    text = text_of(spec, asked.value)
    nothing = not typed.get(name, "").strip() or isinstance(refused.error.needed.role, OF_ONE_VALUE)
    if nothing and spec.example.strip('"') == text and spec.kind not in _CHOSEN:
        return
    yield Use(name if pattern in SPECS else f"{name.rpartition('.')[0]}.over", text)


def _emptied(typed: Typed, name: str) -> Iterator[Use]:
    """Nothing in any line of a table, a row or a field."""
    inside = (each for each in typed if each == name or each.startswith((f"{name}.", f"{name}[")))
    if fields := " ".join(each for each in inside if typed[each].strip() and pattern_of(each) != HOW):
        yield Use(fields, "")


_CHOSEN = ("choice", "flag", "system", "version", "language", "size", "card")
