"""No money in a file that a buyer may see: neither in what is read on its sheets nor in what it carries."""

from __future__ import annotations

import json
import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from functools import reduce
from typing import Any

from layout.drawing.shapes import Text
from layout.drawing.sheet import Sheet
from templates_gen.messages.roles.buying import Tables
from templates_gen.verify.finding import Finding, Findings, finding

_MAKERS = "maker-"
_OF_MONEY = frozenset({"shop", "buy", "sell", "prices", "price", "currency"})
"""Keys of all that is bought, sold and priced, in a range file and in a stock file."""

_NEAR = 15.0  # mm: two words on one line that are so near are read together


def prove_no_money(file: str, sheets: Iterable[Sheet], inputs: str, currency: str) -> Findings:
    """Nothing for a file of the maker; of any other, every sum in the currency, and any key of money in its inputs.

    What the maker says in their own words, as a name or a line of text that the inputs carry, is theirs to say.
    """
    if file.rpartition("/")[2].startswith(_MAKERS):
        return Findings(0.0, ())
    own = sorted(set(_own_words(inputs, currency)), key=len, reverse=True)
    wrong = [finding(Tables.MONEY, words=words) for sheet in sheets for words in _sums(sheet, currency, own)]
    return Findings(0.0, (*wrong, *_carried(inputs)))


def _own_words(inputs: str, currency: str) -> Iterator[str]:
    """Every text in the inputs that names the currency, and more than that."""
    try:
        values = json.loads(inputs)
    except ValueError:
        return
    for table in _tables(values):
        for value in table.values():
            for each in value if isinstance(value, list) else [value]:
                named = isinstance(each, str) and currency and currency.casefold() in each.casefold()
                if named and each.strip().casefold() != currency.casefold():
                    yield each


def _sums(sheet: Sheet, currency: str, own: Sequence[str]) -> Iterator[str]:
    """Words that hold the currency beside a figure, or that stand beside the currency and are one."""
    if not currency:
        return
    word = re.escape(currency)
    beside = re.compile(rf"(\d[\d.,]*\s*{word}(?!\w))|((?<!\w){word}\s*\d)", re.IGNORECASE)
    texts = [shape for shape in sheet.shapes if isinstance(shape, Text)]
    alone = [text for text in texts if text.words.strip().casefold() == currency.casefold()]
    for text in texts:
        if any(text.words in each for each in own):  # a line of it
            continue
        said = reduce(lambda rest, each: rest.replace(each, ""), own, text.words)
        figure = re.search(r"\d", said) is not None
        if beside.search(said) or (figure and any(_near(text, other) for other in alone)):
            yield text.words


def _near(one: Text, other: Text) -> bool:
    low, high = sorted((one, other), key=lambda text: text.at.x)
    reach = high.at.x - low.at.x - len(low.words) * low.size
    return one is not other and abs(one.at.y - other.at.y) < one.size and reach < _NEAR


def _carried(inputs: str) -> Iterator[Finding]:
    """Whether any table of the inputs has a key of money with anything under it."""
    try:
        values = json.loads(inputs)
    except ValueError:
        return
    if any(
        _OF_MONEY & {key for key, value in table.items() if value not in ({}, None, "")} for table in _tables(values)
    ):
        yield finding(Tables.INPUTS)


def _tables(value: Any) -> Iterator[Mapping[str, Any]]:
    if isinstance(value, dict):
        yield value
        for each in value.values():
            yield from _tables(each)
    elif isinstance(value, list):
        for each in value:
            yield from _tables(each)
