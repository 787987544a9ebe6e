"""Every example that a command's refusal gives, put where it says, is read or meets a different complaint."""

from __future__ import annotations

import re
import shlex
from collections.abc import Iterator, Sequence
from functools import cache
from importlib import resources
from pathlib import Path

import pytest
from commands import run

from templates_gen.disk.faults import FaultError
from templates_gen.files import generate
from templates_gen.files import run as making

BAD = (
    "", " ", "0", "-1", "1", "7", "12", "1.5", "1,5", "20.14", "19.76", "0.3", "90", "1000000", "9" * 400, "nan", "inf",
    "ten", "1/0", "0/2 Ne", "2 in", "5 cm", "0 mm", "-3 cm", "3 m", "1/8 in", "8 Ne", "8/2 Ne", "40 tex x 2",
    "40 tex x 0", "50 g in 120 m", "0 g in 5 m", "plies/count", "wool", "stone", "strip", "kit.svg", "board.pdf",
    "comb", "\x1b[2J", "\u6f22\u5b57", "x" * 500, "5 %", "1e5",
)  # fmt: skip
"""Values of every wrong kind, and some that are right by themselves."""

_SETT = ("sett", "--count", "11", "--over", "2 in")
_TRIAL = ("trial-cut", "--hole", "20.14", "--part", "19.76")
_SQUARE = ("square-check", "--x", "140.02", "--band-x", "9.79", "--y", "139.66", "--band-y", "9.80", "--a", "139.90")
_COMMANDS = (
    (*_SQUARE, "--b", "139.78", "--within", "0.02"),
    _SETT,
    (*_SETT, "--count", "27", "--over", "5 in", "--unit", "1 in"),
    ("yarn", "8/2 Ne", "--order", "count/plies", "--fibre", "wool"),
    ("yarn", "8 Ne", "40 tex x 2"),
    ("yarn", "8 Ne", "40 tex x 2", "--plies", "2"),
    ("yarn", "4.5 g in 10 m", "--weighed"),
    ("yarn", "8 Ne", "--plies", "2", "--volume", "1.1", "--wraps", "12", "--over", "1 in"),
    ("yarn", "8 Ne", "--fibre", "wool", "--volume", "1.1"),
    _TRIAL,
    (*_TRIAL, "--hole-y", "20.20", "--part-y", "19.80", "--within", "0.02", "--slot", "0.30", "--drawn-for", "0.20"),
    (*_TRIAL, "--slot", "0.30", "--drawn-for", "5"),
    (*_TRIAL, "--slot", "0.30", "--stock", "stock.toml"),
    ("make", "demo.toml", "--only", "strips", "-o", "strips"),
    ("make", "demo.toml", "--copies", "3", "-o", "strips"),
    ("make", "range.toml", "--kit", "Weir frame, small", "--copies", "3", "-o", "strips"),
    ("measure", "scan.png", "--kit", "demo.toml", "--dpi", "300", "--scanner-scale", "1.0012", "0.9987"),
    ("measure", "scan.png", "--known", "190.4 mm", "--known-within", "0.2", "--picture", "deviations.pdf"),
    ("plan", "demo.toml"),
    ("plan", "range.toml", "--kit", "Weir frame, small"),
    ("check", "demo.toml", "--kit", "demo.toml", "--stock", "stock.toml"),
    ("new", "demo.toml"),
    ("new-stock", "stock.toml"),
    ("new-range", "range.toml"),
)
_FLAGS = ("--weighed",)
_EXAMPLE = re.compile(r"(?P<field>[^:]+): (?P<needed>needs .*), got .*; for example (?P<example>.*)")
_NO_EXAMPLE = re.compile(
    r"Usage: |Try |Error: |$|.* cannot be read|.*could not |.*there already|.*cannot be written|.*the options are read"
)


def changed(words: Sequence[str]) -> Iterator[list[str]]:
    """The command with a bad value instead of each of its values in turn, and with each option left out."""
    for at, word in enumerate(words[1:], 1):
        if word.startswith("-"):
            yield [*words[:at], *words[at + (1 if word in _FLAGS else 2) :]]
        else:
            yield from ([*words[:at], bad, *words[at + 1 :]] for bad in BAD)


def pasted(words: Sequence[str], field: str, example: str) -> list[list[str]]:
    """The command with each thing that the refusal offers put in place of what was said."""
    return [
        way
        for text in re.split(r",? or (?=[\"-]|leave out )", example)
        for way in _put(words, field, re.sub(r" \(.*\)$| for the first meaning$", "", text))
    ]


def _put(words: Sequence[str], field: str, text: str) -> list[list[str]]:
    if text == "leave out the reading that is wrong":
        at = [k for k, word in enumerate(words) if word == "--count"]
        return [[*words[:k], *words[k + 4 :]] for k in at]
    if text.startswith("leave out "):
        return [_without(words, text.removeprefix("leave out "))]
    said = shlex.split(text)
    reading = re.search(r" of reading (\d+)$", field)
    if reading:
        new = list(words)
        for option, value in zip(said[::2], said[1::2], strict=True):
            new[[k for k, word in enumerate(words) if word == option][int(reading[1]) - 1] + 1] = value
        return [new]
    options = {word for word in said if word.startswith("-")}
    kept = [words[0]]
    for option in options:
        words = _without(words, option)
    if not said[0].startswith("-"):  # it says the arguments anew
        words = [words[0], *(word for _, word in _options(words[1:]))]
    return [[*kept, *words[1:], *said]]


def _without(words: Sequence[str], option: str) -> list[str]:
    left = list(words)
    while option in left:
        at = left.index(option)
        del left[at : at + (1 if option in _FLAGS else 2)]
    return left


def _options(words: Sequence[str]) -> Iterator[tuple[int, str]]:
    """The options among these words and their values."""
    value = False
    for at, word in enumerate(words):
        if word.startswith("-") or value:
            yield at, word
        value = word.startswith("-") and word not in _FLAGS


@pytest.mark.parametrize("words", _COMMANDS, ids=" ".join)
def test_the_example_for_every_bad_option_works(
    words: Sequence[str], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Every alternative of every example, as a person would type it; none meets its own refusal again."""
    monkeypatch.chdir(tmp_path)

    def unmade(*_: object) -> None:
        raise FaultError("the options are read")

    monkeypatch.setattr(generate, "make", unmade)
    monkeypatch.setattr(making, "make_run", unmade)

    @cache
    def complaints(*words: str) -> tuple[str, ...]:
        for file in ("demo.toml", "stock.toml", "range.toml"):
            tmp_path.joinpath(file).write_bytes(resources.files("templates_gen").joinpath("data", file).read_bytes())
        return tuple(run(*words).stderr.splitlines())

    pastings = 0
    for bad in changed(words):
        for said in complaints(*bad):
            found = _EXAMPLE.fullmatch(said)
            assert found or _NO_EXAMPLE.match(said), said
            if not found:
                continue
            option = found["field"].split(" ")[0]
            assert option.startswith("--") or option.isupper(), said
            ways = pasted(bad, found["field"], found["example"])
            met = [[_EXAMPLE.fullmatch(line) for line in complaints(*way)] for way in ways]
            same = [
                any(one and one.group("field", "needed") == found.group("field", "needed") for one in all_)
                for all_ in met
            ]
            assert ways
            one_of = found["example"] == "leave out the reading that is wrong"
            assert not (all(same) if one_of else any(same)), (bad, said)
            pastings += len(ways)
    assert pastings


def test_pasting_can_fail() -> None:
    """What is put in place, and that an option which is offered replaces what was said."""
    words = ["yarn", "8/2 Ne", "--plies", "2", "--weighed"]
    assert pasted(words, "YARN", '"8 Ne x 2" for the first meaning') == [
        ["yarn", "--plies", "2", "--weighed", "8 Ne x 2"]
    ]
    assert pasted(words, "--plies", "--plies 3 or leave out --weighed") == [
        ["yarn", "8/2 Ne", "--weighed", "--plies", "3"],
        ["yarn", "8/2 Ne", "--plies", "2"],
    ]
