"""The alarm of the map of parts in pieces: what is wrong in drawing and plan alike must ring by the pieces."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cache
from typing import Any

import pytest
from alarms import alarm_of
from kits import KINDS, plan_of

import layout.paper.key_map as map_module
from layout.drawing.pens import Pen
from layout.drawing.shapes import Shape, Text
from layout.drawing.sheet import Block
from layout.messages.catalogue import Catalogue, Role
from layout.messages.english import ENGLISH
from layout.messages.roles import KeyMap
from layout.paper.key_map import Row
from layout.plan import Plan

KITS: dict[str, dict[str, object]] = {
    "common": {"weaving.width": "70 cm", "frame.outer_width": "80 cm"},
    "top": {"weaving.width": "30 in", "frame.outer_width": "34 in", "weaving.near_end": "top", "paper.size": "a4"},
    "small": {"weaving.width": "30 cm", "frame.outer_width": "40 cm", "paper.size": "148 x 210 mm"},
    "one sheet of words": KINDS["notched already, every one"]
    | {
        "weaving.near_end": "top",
        "weaving.width": "99 mm",
        "frame.outer_width": "17 cm",
        "frame.side_width": "15 mm",
        "paper.size": "230 x 176 mm",
        "paper.lay": "tiles",
        "sett.marking_unit": "1 cm",
    },
    "one strip": {"weaving.width": "1.2 m", "frame.outer_width": "1.3 m", "paper.size": "a4"},
}


@cache
def planned(name: str) -> Plan:
    """The plan of one of the kits."""
    return plan_of(KITS[name])


@pytest.mark.parametrize("name", KITS)
@pytest.mark.parametrize("file", ["strips.pdf", "spacing-guide.pdf", "strip-near.pdf", "strip-far.pdf"])
def test_what_is_right_does_not_ring(name: str, file: str) -> None:
    """The maps of every kit pass."""
    assert alarm_of(planned(name), file) == ""


Patch = Callable[[pytest.MonkeyPatch], None]


def rows(change: Callable[[Sequence[Row]], Sequence[Row]]) -> Patch:
    """Maps of other rows."""

    def apply(patch: pytest.MonkeyPatch) -> None:
        right = map_module.key_map
        patch.setattr(map_module, "key_map", lambda given, *more: right(change(given), *more))

    return apply


def sheets(change: Callable[[tuple[int, ...]], tuple[int, ...]]) -> Patch:
    """Maps with other sheets in their first row."""
    return rows(lambda given: [given[0]._replace(sheets=change(given[0].sheets)), *given[1:]])


def drawn(change: Callable[[list[Shape]], list[Shape]]) -> Patch:
    """Maps with something else drawn."""

    def apply(patch: pytest.MonkeyPatch) -> None:
        right = map_module.key_map

        def changed(*given: Any) -> Block | None:
            block = right(*given)
            return block and block._replace(shapes=tuple(change(list(block.shapes))))

        patch.setattr(map_module, "key_map", changed)

    return apply


def without(pen: Pen) -> Patch:
    """A map without the first shape of a pen."""

    def change(shapes: list[Shape]) -> list[Shape]:
        first = next(k for k, shape in enumerate(shapes) if shape.pen is pen)
        return [*shapes[:first], *shapes[first + 1 :]]

    return drawn(change)


def _renumbered(shapes: list[Shape]) -> list[Shape]:
    """The numbers of the first two pieces exchanged."""
    other = {"1": "2", "2": "1"}
    boxes = [shape for shape in shapes if isinstance(shape, Text)][0:3:2]
    return [shape._replace(words=other.get(shape.words, "")) if shape in boxes else shape for shape in shapes]


def _elsewhere(patch: pytest.MonkeyPatch) -> None:
    """A map for the sheet after the one on which it stands."""
    right = map_module.key_map
    patch.setattr(map_module, "key_map", lambda given, here, *more: right(given, here + 1, *more))


def _said(old: Role, new: str) -> Patch:
    """A map that says something else."""

    def apply(patch: pytest.MonkeyPatch) -> None:
        other = Catalogue({**ENGLISH.messages, old: new})
        right = map_module.key_map
        patch.setattr(
            map_module,
            "key_map",
            lambda given, here, form, setting: right(given, here, form, setting._replace(words=other)),
        )

    return apply


WRONG: dict[str, Patch] = {
    "a piece less": sheets(lambda numbers: numbers[1:]),
    "a piece more": sheets(lambda numbers: (*numbers, numbers[-1])),
    "sheets in another order": sheets(lambda numbers: numbers[::-1]),
    "a sheet that is not there": sheets(lambda numbers: (*numbers[:-1], 9)),
    "rows exchanged": rows(lambda given: given[::-1]),
    "names exchanged": rows(
        lambda given: [one._replace(label=other.label) for one, other in zip(given, given[::-1], strict=True)]
    ),
    "one end missing": rows(lambda given: given[:1]),
    "one end twice": rows(lambda given: [given[0], given[0]]),
    "pieces exchanged": drawn(_renumbered),
    "a piece not drawn": without(Pen.OUTLINE),
    "a grey piece not grey": without(Pen.HELD),
    "made for the next sheet": _elsewhere,
    "another title": _said(KeyMap.TITLE, "How the guides meet"),
    "another meaning of grey": _said(KeyMap.HERE, "grey: on the next sheet"),
    "another word for sheets": _said(KeyMap.SHEET, "page"),
}


@pytest.mark.parametrize("name", WRONG)
def test_a_wrong_map_rings(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Its pieces are counted, and their order and their sheets are compared with where the pieces lie."""
    WRONG[name](monkeypatch)
    assert alarm_of(planned("top"), "strips.pdf")


@pytest.mark.parametrize("file", ["strips.pdf", "spacing-guide.pdf"])
def test_a_wrong_map_without_a_title_rings(file: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """The same on common paper, where maps are set in one line."""
    sheets(lambda numbers: (*numbers[:-1], 9))(monkeypatch)
    assert alarm_of(planned("common"), file)
