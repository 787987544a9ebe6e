"""Which way a part is laid on a kit's paper: upright or straight, else across the diagonal, else in pieces."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from functools import cache
from itertools import islice
from typing import NamedTuple, Protocol

from layout.drawing.boxes import placed
from layout.drawing.metrics import FontMetrics
from layout.drawing.shapes import Box, Placing
from layout.drawing.sheet import Care, Part, Piece
from layout.kit.kit import Paper
from layout.messages.catalogue import Catalogue
from layout.messages.roles import Sheet
from layout.paper.area import Area
from layout.paper.joined import how_joined, said_of_all
from layout.paper.joints import LEAST_PIECE, MOST_PIECES, Build, frame_of, joints_of, pieces
from layout.paper.laying import diagonal, straight
from layout.paper.refusal import refusal
from layout.paper.regions import regions
from layout.paper.tall import Pieces, stand_whole
from layout.values.errors import LayoutError

_GAP = 4.0
_COUNTS = 4  # so many numbers of pieces are tried from the fewest on
_GUESSES = 4  # of how many pieces the words must speak that take room from them


class Furnish(Protocol):
    """Finds the area that head, words and scales leave for a part; `words` are those of the sheets.

    It may lie across a `mirrored` sheet; a `bare` one leaves the words to a sheet of their own.
    """

    @property
    def words(self) -> Catalogue: ...  # noqa: D102

    def __call__(self, part: Part, *, mirrored: bool = False, bare: bool = False) -> Area: ...  # noqa: D102


class Laying(NamedTuple):
    """A whole part on its sheets, in one of the ways; `notes` say what was done and why.

    What is said about the part stands on these sheets, or before them where they are `bare`; where it is said `once`,
    on the first of them. Of several parts on the same sheets, which are `together`, `part` has the words for all.
    """

    way: str
    part: Part
    sheets: tuple[tuple[Piece, ...], ...]
    notes: tuple[str, ...]
    bare: bool = False
    together: tuple[Part, ...] = ()
    once: bool = False

    @property
    def parts(self) -> tuple[Part, ...]:
        """Every part that lies on these sheets."""
        return self.together or (self.part,)


class _Way(NamedTuple):
    name: str
    low: bool
    bare: bool


_ORDER = tuple(
    _Way(name, low, bare)
    for ways in (("tall", "straight", "diagonal"), ("uprights", "tiles"))
    for low in (False, True)
    for name in ways
    for bare in (False, True)
)
_ALLOWED: Mapping[str, tuple[str, ...]] = {
    "auto": ("tall", "straight", "diagonal", "uprights", "tiles"),
    "straight": ("tall", "straight"),
    "diagonal": ("diagonal",),
    "tiles": ("uprights", "tiles"),
}


def choose(build: Build, paper: Paper, furnish: Furnish, metrics: FontMetrics) -> Laying:
    """How the part that `build` makes lies on `paper`.

    Raises FieldError on paper.lay or paper.size, naming what would fit, where nothing does.
    """
    made: Build = cache(build)
    for way in _ORDER:
        if laying := _try(made, paper, way, furnish, metrics):
            return laying
    raise refusal(made, paper, lambda other: any(_try(made, other, way, furnish, metrics) for way in _ORDER))


def uprights(
    builds: Sequence[Build],
    paper: Paper,
    furnish: Furnish,
    metrics: FontMetrics,
    *,
    low: bool,
    heading: Callable[[Part], Part] = lambda part: part,
) -> Laying | None:
    """In upright pieces: beside the text on the first sheet, all over the later ones."""
    grid = regions(paper)
    try:
        part = builds[0](low, ())
    except LayoutError:
        return None
    if not (grid.roomy and part.narrow and part.joint_rows):
        return None
    why = why_low(builds[0], furnish.words, low=low)
    joined = how_joined(part, 2, furnish.words)
    for _ in range(_GUESSES):
        said = heading(replace(part, notes=(*part.notes, *why, joined)))
        places = Pieces(grid, furnish(said), furnish(said, bare=True))
        found = places.lay(builds, low=low, cut=lambda whole, joints: pieces(whole, joints, metrics, furnish.words))
        if found is None:
            return None
        sheets, wholes = found
        needed = said_of_all(sheets, wholes, furnish.words)
        if needed == {joined}:
            together = tuple(wholes) if len(wholes) > 1 else ()
            whole = said if together else replace(wholes[0], notes=said.notes)
            return Laying("tiles", whole, sheets, said.notes, together=together, once=True)
        if len(needed) > 1:
            return None  # one sentence on how they are joined would be wrong for one of them
        (joined,) = needed
    return None


def _try(build: Build, paper: Paper, way: _Way, furnish: Furnish, metrics: FontMetrics) -> Laying | None:
    try:
        part = build(way.low, ())
    except LayoutError:
        return None
    if not (way.name == "straight" if part.whole else way.name in _ALLOWED[paper.lay]):
        return None
    if way.name in ("tall", "uprights") and (way.bare or not part.narrow):
        return None
    if way.name == "uprights":
        return uprights([build], paper, furnish, metrics, low=way.low)
    own = len(part.notes)
    if not part.whole:
        part = replace(part, notes=(*part.notes, *why_low(build, furnish.words, low=way.low)))
    if way.name == "tiles":
        return _tiles(build, part, way, furnish, metrics)
    found = _in_one_piece(part, way, paper, furnish)
    return Laying(way.name, part, ((found,),), part.notes[own:], way.bare) if found else None


def _in_one_piece(part: Part, way: _Way, paper: Paper, furnish: Furnish) -> Piece | None:
    if way.name == "tall":
        grid = regions(paper)
        found = stand_whole([part], grid, furnish(part)) if grid.roomy and part.narrow else None
        return found[0] if found else None
    area = furnish(part, mirrored=way.name == "diagonal", bare=way.bare)
    placing = (straight if way.name == "straight" else diagonal)(part, area)
    return Piece(part, placing) if placing else None


def why_low(build: Build, words: Catalogue, *, low: bool) -> tuple[Care, ...]:
    """Why a part comes in its low form, if it does."""
    return (_reason(build, words),) if low else ()


def _reason(build: Build, words: Catalogue) -> Care:
    try:
        build(False, ())
    except LayoutError as thin:
        return Care(words.say(Sheet.LOW_FORM, why=thin.said(words)))
    return Care(words.say(Sheet.TOO_TALL))


def _tiles(build: Build, part: Part, way: _Way, furnish: Furnish, metrics: FontMetrics) -> Laying | None:
    """The fewest equal pieces that fit, as many to a sheet as find room."""
    area = furnish(replace(part, notes=(*part.notes, how_joined(part, 2, furnish.words))), bare=way.bare)
    most = min(MOST_PIECES, int(part.length / LEAST_PIECE))
    counts = (n for n in range(2, most + 1) if straight(frame_of(part, n), area))
    tiled = (_tiled(build, part, way, count, furnish, metrics) for count in islice(counts, _COUNTS))
    return next((laying for laying in tiled if laying), None)


def _tiled(build: Build, part: Part, way: _Way, count: int, furnish: Furnish, metrics: FontMetrics) -> Laying | None:
    """The part in `count` pieces; None where its words, broken at the joints, make it too tall."""
    joints = joints_of(part, count)
    try:
        jointed = build(way.low, tuple(joints))
    except LayoutError:
        return None
    joined = how_joined(jointed, count, furnish.words)  # its crosses stand where its words leave room
    said = replace(part, notes=(*part.notes, joined))
    jointed = replace(jointed, notes=said.notes)
    area = furnish(said, bare=way.bare)
    sheets: list[list[Piece]] = []
    free = area
    for piece in pieces(jointed, joints, metrics, furnish.words):
        placing = straight(piece, free) if sheets else None
        if placing is None:
            free = area
            placing = straight(piece, free)
            sheets.append([])
        if placing is None:
            return None
        sheets[-1].append(Piece(piece, placing))
        free = replace(free, taken=(*free.taken, _box_of(piece, placing)))
    return Laying(
        "tiles", jointed, tuple(tuple(sheet) for sheet in sheets), said.notes[len(part.notes) - way.low :], way.bare
    )


def _box_of(piece: Part, placing: Placing) -> Box:
    return placed(piece.box, placing, _GAP)
