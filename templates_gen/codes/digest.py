"""A short digest of what a file carries: sheets of different files differ in it, copies of one file do not."""

from __future__ import annotations

import hashlib
import json
from typing import Any

from templates_gen.codes.numerals import numeral

LENGTH = 9
"""Characters of a digest: 36^9 values, so that a thousand files differ but for one chance in two hundred million."""

_MONEY, _PRINTER, _SHOP = "prices", "printer", "shop"


def digest_of(inputs: str) -> str:
    """Nine characters of 0-9A-Z for the JSON text that a file carries: its name, kit, language and stock.

    Prices, the maker's shop and a printer are left out: none of them changes what a sheet must measure.
    It is the SHA-256 of the values, with sorted keys, modulo 36^9.
    """
    values = {name: _bare(each) for name, each in json.loads(inputs).items() if name not in (_SHOP, _PRINTER)}
    text = json.dumps(values, sort_keys=True, ensure_ascii=True, separators=(",", ":"))
    return numeral(int.from_bytes(hashlib.sha256(text.encode("ascii")).digest()) % 36**LENGTH, LENGTH)


def _bare(table: Any) -> Any:
    if not isinstance(table, dict):
        return table
    return {key: value for key, value in table.items() if key not in (_MONEY, _PRINTER)}
