"""One more kind of frame end needs its own pieces and nothing else: a kind of the tests is planned, made and proven."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from layout.frames.kinds.by_kind import ByKind, MissingPieceError
from layout.kit.inputs import BY_KEY
from layout.kit.kinds.all_keys import END_KEYS
from layout.parts.marking.kinds import MARKING
from layout.parts.template.kinds import TEMPLATES
from layout.parts.winding.kinds.pictures import PICTURES
from layout.warps.ways import WAYS
from templates_gen.verify.kinds.truths import TRUTHS

HERE = Path(__file__).parent
TABLES: tuple[ByKind[Any], ...] = (END_KEYS, WAYS, PICTURES, TRUTHS)


@cache
def made() -> dict[str, Any]:
    """What the program with one more kind found; a process of its own, since tables of keys are made on import."""
    paths = os.pathsep.join(map(str, (HERE.parent, HERE)))
    run = subprocess.run(
        [sys.executable, str(HERE / "fifth_kind.py")],
        capture_output=True,
        text=True,
        check=False,
        env=os.environ | {"PYTHONPATH": paths},
    )
    assert run.returncode == 0, run.stderr
    found: dict[str, Any] = json.loads(run.stdout)
    return found


def test_every_file_of_the_fifth_kind_is_proven() -> None:
    """Printed and cut, drawn, written, read back and proven; the kit is whole."""
    problems = made()["problems"]
    assert {"kit.pdf", "winding.pdf", "strip-near.svg", "strip-far.pdf", "spacing-guide.svg"} <= set(problems)
    assert any(file.startswith("comb-") for file in problems)
    assert {file: each for file, each in problems.items() if each} == {}
    assert made()["lost"] == []


def test_its_plan_is_the_one_that_its_geometry_asks_for() -> None:
    """50 ends over 20 cm, begun on the right: the first pin at 100 mm, the next 8 mm on."""
    assert made()["ends"] == 50
    assert made()["near"] == [100.0, 92.0]


def test_its_plan_is_printed() -> None:
    """With the spacing of its marks; its way of warping needs no word for it of its own."""
    assert "from one mark to the next" in made()["table"]


def test_its_keys_are_read_and_refused_like_others() -> None:
    """They come back as they were, and one that is missing is named."""
    assert made()["again"]
    assert "frame.pin_distance: needs to be given" in made()["refused"]


def test_its_proof_finds_a_wrong_builder() -> None:
    """Holes a hundredth of a millimetre aside."""
    assert any("hole" in problem for problem in made()["wrong"])


def test_the_desk_shows_it() -> None:
    """Its measures, its numbers and its strip, and marks where it has no word of its own for what its ends lie at."""
    desk = made()["desk"]
    assert {"frame.outer_width", "frame.end_width", "weaving.width"} <= set(desk["measures"])
    assert desk["said"] == "End 3 of 50, on the face: near mark 1, far mark 2"
    assert (desk["lacking"], desk["strip"]) == ([], True)


@pytest.mark.parametrize("table", TABLES, ids=lambda table: table.what)
def test_every_kind_has_every_piece(table: ByKind[Any]) -> None:
    """The kinds that a kit may name, in every table."""
    assert list(table) == list(BY_KEY["frame.ends"].choices)
    assert all(table[name] is not None for name in table)


def test_every_kind_has_a_strip_or_a_template() -> None:
    """One of the two."""
    assert [*MARKING, *TEMPLATES] == list(BY_KEY["frame.ends"].choices)


def test_a_missing_piece_is_named() -> None:
    """Which kind lacks what."""
    table = ByKind("strips", {"round bars": 1})
    with pytest.raises(MissingPieceError, match='frame ends "pinned ends" have no strips: there are round bars'):
        table["pinned ends"]
