"""The keys of every kind of frame end, by the kind's name."""

from __future__ import annotations

from collections.abc import Iterator

from layout.frames.kinds.by_kind import ByKind
from layout.kit.input import Input
from layout.kit.kinds.end_keys import EndKeys
from layout.kit.kinds.flat_ends import FLAT_ENDS
from layout.kit.kinds.nails import NAIL_ENDS
from layout.kit.kinds.notched_ends import NOTCHED_ENDS
from layout.kit.kinds.pegged_ends import PEGGED_ENDS
from layout.kit.kinds.round_bars import ROUND_BARS

END_KEYS: ByKind[EndKeys] = ByKind(
    "kit keys", {each.make.name: each for each in (ROUND_BARS, FLAT_ENDS, NOTCHED_ENDS, PEGGED_ENDS, NAIL_ENDS)}
)


def end_inputs() -> Iterator[Input]:
    """The inputs of all kinds, each once, in the order of the kit file."""
    found = {spec.key: spec for name in END_KEYS for spec in END_KEYS[name].inputs}
    yield from found.values()
