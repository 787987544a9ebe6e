"""All that a kit's numbers say can be said in another language: reasons, notes, warnings and refusals."""

from __future__ import annotations

import dataclasses
import re
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

from kits import KINDS, kit_of
from languages import leaves, longer_by, made_up, stretched
from plain_kits import METRICS, placed
from sweep import pairwise_rows
from sweep_kits import AXES, IN_MM, changes_of

from layout.cutting.stock.stock_inputs import STOCK
from layout.cutting.stock.stock_values import read_stock, stock_values
from layout.kit.inputs import INPUTS
from layout.kit.kit import Kit, read_kit
from layout.messages.catalogue import Said
from layout.plan import plan
from layout.values.errors import FieldErrors, LayoutError
from layout.values.quantity import Quantity
from layout.yarns.diameter import SPECIFIC_VOLUMES
from layout.yarns.yarn_counts import SYSTEMS
from templates_gen.inputs import kit_file, stock_file
from templates_gen.messages.english import ENGLISH

OTHER = made_up(ENGLISH)
SAMPLES = sorted(Path(__file__).parents[2].joinpath("sample_kits").glob("*.toml"))
ROWS = pairwise_rows(AXES)[::4]
BAD: list[Any] = ["", 0, -1, 10**9, 1.5, float("nan"), True, [], {}, "x" * 500, "40", "0 mm", "1,234 mm", "3 m", "ende"]

_PLAIN_WORD = re.compile(r"[A-Za-z]*[aeiou][A-Za-z]*")
_KEY = re.compile(r"[a-z_0-9]+(\[\d*\])?(\.[a-z_0-9]+(\[\d*\])?)*")
_FILE_WORDS = {
    word
    for spec in (*INPUTS, *STOCK.inputs)
    for words in (spec.default, spec.word, *spec.choices)
    if isinstance(words, str)
    for word in words.split()
} | {*SYSTEMS, *SPECIFIC_VOLUMES}


def kits() -> Iterator[Kit]:
    """One of every kind, the sample kits, the demo kit, and some in which all keys vary."""
    yield from map(kit_of, KINDS.values())
    yield from map(kit_file.load, SAMPLES)
    yield kit_file.demo()
    for place, row in enumerate(ROWS):
        try:
            yield kit_of(changes_of(row, IN_MM[place % len(IN_MM)]))
        except FieldErrors:
            continue


def texts(value: object) -> Iterator[str]:
    """Every reason, assumption and conflict within a value."""
    if isinstance(value, Quantity):
        yield from (value.reason, *value.assumptions, *value.conflicts)
    elif dataclasses.is_dataclass(value):
        for field in dataclasses.fields(value):
            yield from texts(getattr(value, field.name))
    elif isinstance(value, tuple | list):
        for each in value:
            yield from texts(each)


def english_left(text: str, own: set[str]) -> list[str]:
    """The words of a text that stay English in another language, but for those of the kit and of its file."""
    kept = set(leaves(text))
    said = OTHER.again(text)
    for leaf in sorted(kept, key=len, reverse=True):
        said = said.replace(leaf, " ")
    words = {word for leaf in kept if leaf not in own and not _KEY.fullmatch(leaf) for word in leaf.split()}
    lost = {word for word in words if _PLAIN_WORD.fullmatch(word.strip('",')) and word.strip('",') not in _FILE_WORDS}
    return [*_PLAIN_WORD.findall(said), *sorted(lost)]


def names_of(kit: Kit) -> set[str]:
    """What a kit calls itself and its yarns."""
    weft = kit.amounts.weft
    colours = [colour.name for colour in weft.colours]
    return {kit.name, kit.warp, kit.weft, *colours, *(strand.colour for strand in weft.strands if strand.colour)}


def test_the_made_up_language_is_longer() -> None:
    """Sentences about half as long again, a single word four times as long; values keep their places."""
    assert 1.4 < longer_by(ENGLISH, OTHER) < 1.7
    assert stretched("left") == "léftléftléftléft"
    assert stretched("{number} winds on {unit}") == "{number} wéndswéndswéndswénds én {unit}"
    assert stretched("Take the frame and turn it") == "Téké Téké thé frémé frémé énd térn térn ét"


def test_all_that_a_plan_says_can_be_said_again() -> None:
    """Notes, warnings, and the reasons of every figure: no word of them is lost to English on its way."""
    lost: dict[str, list[str]] = {}
    count = 0
    for kit in kits():
        try:
            made = plan(kit)
        except LayoutError:
            continue
        own = names_of(kit)
        load = made.load
        for text in (*made.notes, *made.warnings, load.wanting, *texts(made.amounts), *texts(load)):
            count += 1
            if text and (left := english_left(text, own)):
                lost[text] = left
    assert count > 3000
    assert lost == {}


def refusals() -> Iterator[LayoutError]:
    """What is said of wrong values at every key of both files, and of kits that cannot be woven."""
    for spec in INPUTS:
        for value in BAD:
            yield from _refused(planned, placed(spec.key, value)[0])
    for spec in STOCK.inputs:
        *tables, leaf = spec.key.split(".")
        for value in BAD:
            values = stock_values(stock_file.built_in())
            place = values
            for table in tables:
                place = place.setdefault(table, {})
            place[leaf] = value
            yield from _refused(stocked, values)


def planned(values: dict[str, Any]) -> None:
    """Read and plan a kit."""
    plan(read_kit(values, METRICS))


def stocked(values: dict[str, Any]) -> None:
    """Read a stock."""
    read_stock(values, METRICS)


def _refused(run: Callable[[dict[str, Any]], None], values: dict[str, Any]) -> Iterator[LayoutError]:
    try:
        run(values)
    except FieldErrors as errors:
        yield from errors.errors
    except LayoutError as error:
        yield error


def test_every_refusal_of_a_kit_or_a_stock_can_be_said_in_another_language() -> None:
    """But for what came, the key, and the example, which is typed into a file as it is."""
    lost: dict[str, list[str]] = {}
    said = 0
    for error in refusals():
        said += 1
        text = ENGLISH.words_of(error.message)
        own = {getattr(error, "field", ""), str(getattr(error, "got", "")), str(getattr(error, "suggestion", ""))}
        if left := english_left(text, own):
            lost[text] = left
        assert isinstance(text, Said)
    assert said > 1500
    assert lost == {}
