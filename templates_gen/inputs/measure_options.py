"""The options of the command `measure`; refusals name the option."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path

from layout.messages.catalogue import Message
from layout.values.errors import FieldError, shown
from layout.values.numerals import read_number
from layout.values.units import read_length
from templates_gen.measuring.scales import ACROSS, DIAGONALS, PAIRS, RULE, UP, Distance, Reference
from templates_gen.messages.errors import OptionError
from templates_gen.messages.language import listed
from templates_gen.messages.roles.measure import MeasureOption

LEAST_DPI, MOST_DPI = 150, 4800
"""Coarser scans are refused, and no bed is finer."""

SCANNER_LEAST, SCANNER_MOST = Fraction(95, 100), Fraction(105, 100)
SCANNER_WITHIN = 0.1
"""In %: what a scale from a steel rule of 200 mm on the bed, read to 0.2 mm, is sure to."""

_KNOWN, _DPI, _WITHIN, _SCANNER = (
    '--known "190.4 mm"',
    "--dpi 300",
    "--known-within 0.2",
    "--scanner-scale 1.0012 0.9987",
)
_PICTURE, _SCANNER_WITHIN = "--picture deviations.pdf", "--scanner-within 0.05"
_LONGEST = 60
_WORDS = re.compile(r"\s*([a-z]+)\s+(.*)", re.DOTALL | re.IGNORECASE)
_LARGE = Fraction(5000)  # mm: no sheet is so large


@dataclass(frozen=True)
class MeasureOptions:
    """The options as they were given, numbers still as text."""

    dpi: str | None = None
    known: Sequence[str] = ()
    known_within: str | None = None
    scanner_scale: tuple[str, str] | None = None
    scanner_within: str | None = None
    picture: Path | None = None
    store: str | None = None


@dataclass(frozen=True)
class MeasureAsked:
    """What is asked for; `dpi` is None where the scan says it."""

    dpi: float | None
    reference: Reference
    picture: Path | None
    store: str | None


def measure_asked(options: MeasureOptions) -> MeasureAsked:
    """What the options ask for; OptionError naming the one that cannot be used."""
    limits: dict[str, object] = {"least": LEAST_DPI, "most": MOST_DPI}
    dpi = _number(options.dpi, "--dpi", Message(MeasureOption.DPI, limits), _DPI, LEAST_DPI, MOST_DPI)
    picture = options.picture
    if picture is not None and picture.suffix.lower() not in (".pdf", ".png"):
        raise OptionError("--picture", MeasureOption.PICTURE, shown(picture.name), _PICTURE)
    return MeasureAsked(None if dpi is None else float(dpi), _reference(options), picture, options.store)


def _reference(options: MeasureOptions) -> Reference:
    if options.known and options.scanner_scale:
        raise OptionError("--known", MeasureOption.ONE, "--known, --scanner-scale", _KNOWN)
    if options.known_within is not None and not options.known:
        raise OptionError("--known-within", MeasureOption.ALONE, shown(options.known_within), _KNOWN, other="--known")
    if options.scanner_within is not None and options.scanner_scale is None:
        got = shown(options.scanner_within)
        raise OptionError("--scanner-within", MeasureOption.ALONE, got, _SCANNER, other="--scanner-scale")
    within = _within(options.known_within)
    scanner = _scanner(options.scanner_scale)
    needed = Message(MeasureOption.SCANNER_WITHIN)
    sure = _number(options.scanner_within, "--scanner-within", needed, _SCANNER_WITHIN, Fraction(1, 1000), 1)
    share = SCANNER_WITHIN if sure is None else float(sure)
    return Reference(_distances(options.known), within, scanner, share / 100)


def reference_of(
    known: Mapping[str, float], within: float, scanner: tuple[float, float] | None, scanner_within: float
) -> Reference:
    """The same from numbers, in mm and shares; OptionError named as the options are."""
    texts = [f"{pair} {mm:.6f} mm" for pair, mm in known.items()]
    shares = None if scanner is None else (f"{scanner[0]:.9f}", f"{scanner[1]:.9f}")
    return _reference(
        MeasureOptions(
            known=texts,
            known_within=f"{within:.6f} mm" if texts else None,
            scanner_scale=shares,
            scanner_within=f"{100 * scanner_within:.9f}" if shares else None,
        )
    )


def _distances(texts: Sequence[str]) -> tuple[Distance, ...]:
    found = tuple(map(_distance, texts))
    pairs = [each.pair for each in found]
    if len(set(pairs)) < len(pairs):
        twice = next(pair for pair in pairs if pairs.count(pair) > 1)
        raise OptionError("--known", MeasureOption.TWICE, shown(twice), '--known "left 249.3 mm"')
    sides = any(pair in ACROSS for pair in pairs) and any(pair in UP for pair in pairs)
    if any(pair in DIAGONALS for pair in pairs) and not sides:
        got = listed([f'"{text}"' for text in map(str, pairs)])
        raise OptionError("--known", MeasureOption.DIAGONAL, got, f'{_KNOWN} --known "left 249.3 mm"')
    return found


def _distance(text: str) -> Distance:
    """A length, with the name of its pair before it."""
    got = shown(text)
    needed: dict[str, object] = {"pairs": listed(list(PAIRS))}
    match = _WORDS.fullmatch(text) if len(text) <= _LONGEST else None
    pair, length = (match[1].lower(), match[2]) if match else ("top", text)
    if pair not in PAIRS:
        raise OptionError("--known", MeasureOption.KNOWN, got, _KNOWN, **needed)
    try:
        mm = read_length(length).mm
    except FieldError as error:
        raise OptionError("--known", MeasureOption.KNOWN, got, _KNOWN, **needed) from error
    if not 1 <= mm <= _LARGE:
        raise OptionError("--known", MeasureOption.KNOWN, got, _KNOWN, **needed)
    return Distance(pair, float(mm))


def _within(text: str | None) -> float:
    """How far off the rule may be read: mm, where no unit is said."""
    if text is None:
        return RULE
    try:
        mm = read_number(text) if len(text) <= _LONGEST else None
        mm = read_length(text).mm if mm is None else mm
    except FieldError as error:
        raise OptionError("--known-within", MeasureOption.WITHIN, shown(text), _WITHIN) from error
    if not Fraction(1, 100) <= mm <= 2:
        raise OptionError("--known-within", MeasureOption.WITHIN, shown(text), _WITHIN)
    return float(mm)


def _scanner(texts: tuple[str, str] | None) -> tuple[float, float] | None:
    if texts is None:
        return None
    limits: dict[str, object] = {"least": f"{float(SCANNER_LEAST):g}", "most": f"{float(SCANNER_MOST):g}"}
    needed = Message(MeasureOption.SCANNER, limits)
    x, y = (_number(text, "--scanner-scale", needed, _SCANNER, SCANNER_LEAST, SCANNER_MOST) for text in texts)
    return float(x or 1), float(y or 1)


def _number(
    text: str | None, option: str, needed: Message, example: str, least: Fraction | int, most: Fraction | int
) -> Fraction | None:
    if text is None:
        return None
    try:
        number = read_number(text) if len(text) <= _LONGEST else None
    except FieldError:
        number = None
    if number is None or not least <= number <= most:
        raise OptionError(option, needed, shown(text), example)
    return number
