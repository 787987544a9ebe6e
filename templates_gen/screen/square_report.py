"""What a square check comes to: sentences for people, plain values for programs."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from layout.drawing.correction import TRUE, Scale
from layout.drawing.printer import LIKELY_SETTING
from layout.values.errors import shown_path
from layout.values.units import say_number
from templates_gen.inputs.square import Square, per_cent
from templates_gen.messages.language import listed, message
from templates_gen.messages.roles.square import SquareLine

_NAME = 8  # letters of the column of names
_BENCH = 300  # mm: a length to say it by


def square_text(square: Square, path: Path | None, before: Scale | None) -> str:
    """The scale for people, what it means at the bench, and what was stored where."""
    return "\n".join([*_lines(square), *_warnings(square), *_stored(square, path, before)])


def _lines(square: Square) -> Iterator[str]:
    off, within = square.measured.off, square.measured.within
    for name, share, may in ((SquareLine.X, off.x, within.x), (SquareLine.Y, off.y, within.y)):
        said = SquareLine.LONG if share > 0 else SquareLine.SHORT
        yield _line(said, name, share, may, _BENCH * (1 + share))
    said = SquareLine.LEANS_RIGHT if off.skew > 0 else SquareLine.LEANS_LEFT
    yield _line(said, SquareLine.SQUARE, off.skew, within.skew, _BENCH * abs(off.skew))


def _line(said: SquareLine, name: SquareLine, share: float, within: float, out: float) -> str:
    """One share; where it may be nothing, that it is right as far as the readings show."""
    called, may = message(name).ljust(_NAME), per_cent(within)
    if abs(share) <= within:
        return message(SquareLine.RIGHT, name=called, within=may)
    return message(said, name=called, share=per_cent(abs(share)), within=may, long=_BENCH, out=say_number(out, 2))


def _warnings(square: Square) -> Iterator[str]:
    if square.likely_import:
        yield message(SquareLine.IMPORT, most=say_number(100 * LIKELY_SETTING))
        if square.causes:
            yield message(SquareLine.CAUSES, causes=listed(list(map(message, square.causes))))
    if square.leans:
        yield message(SquareLine.LEANING, most=say_number(100 * LIKELY_SETTING))
    if not square.measured.known:
        yield message(SquareLine.POINTLESS)


def _stored(square: Square, path: Path | None, before: Scale | None) -> Iterator[str]:
    if path is None:
        if square.measured.known:
            yield message(SquareLine.NOT_STORED)
        return
    if not square.measured.known:
        if before not in (None, TRUE):
            yield message(SquareLine.REMOVED, file=shown_path(path))
        return
    entries = (f'{key} = "{value}"' for key, value in square.entries.items())
    yield message(SquareLine.STORED, file=shown_path(path), entries=", ".join(entries))
    if before not in (None, TRUE):
        yield message(SquareLine.REPLACED)


def square_values(square: Square) -> dict[str, object]:
    """The scale for programs: what comes out of 1 mm, and how sure that is."""
    found = square.measured
    return {
        "x": round(found.scale.x, 8),
        "y": round(found.scale.y, 8),
        "skew": round(found.scale.skew, 8),
        "within": {key: round(getattr(found.within, key), 8) for key in Scale._fields},
        "known": found.known,
        "likely_import": square.likely_import,
        "causes": [message(each) for each in square.causes],
    }
