"""No good kit is refused by its own proof: kits by the hundred, every product printed, written, read back and proven.

In a thorough run every two values of two keys come together; the usual one takes every second of these rows, which
hold every value and most pairs. `SWEEP=all` takes all values with all others, which is more than anybody waits for,
and `SWEEP=2000` the first so many of these, which are spread over all.
"""

from __future__ import annotations

import os
import tomllib
from collections.abc import Iterable, Iterator
from fractions import Fraction
from importlib import resources
from itertools import combinations, islice

import pytest
from kits import font_metrics, kit_of
from sweep import Changes, all_rows, pairwise_rows
from sweep_kits import AXES, IN_INCHES, IN_MM, changes_of, widths

from layout.kit.kit import read_kit
from layout.plan import Plan, plan
from layout.values.errors import FieldError, FieldErrors
from templates_gen.files.outputs import KIT_FILE, Outputs
from templates_gen.files.proof import findings, read, write

SWEEP = os.environ.get("SWEEP", "")
WORKERS = 8  # the rows are dealt to so many tests, which may run side by side


PAIRS = pairwise_rows(AXES)
USUAL, OTHERS = slice(0, None, 2), slice(1, None, 2)


def rows(which: slice) -> Iterator[Changes]:
    """The kits to prove, as changes by dotted key: these rows of the pairs, or as many of all as were asked for."""
    chosen = islice(all_rows(AXES), None if SWEEP == "all" else int(SWEEP)) if SWEEP else PAIRS
    frames = {unit: widths(unit) for unit in ("mm", "in")}
    every = (changes_of(row, next(frames[str(row["unit"])])) for row in chosen)
    return every if SWEEP else iter(list(every)[which])


def refused(planned: Plan, files: Iterable[str] = ()) -> list[str]:
    """What the proof says against the files of a plan, by default all that is printed."""
    outputs = Outputs(planned, font_metrics())
    grid = [file for file in outputs.files if file == "weaving-grid.pdf"]
    found = []
    for output in map(outputs.output, files or (KIT_FILE, *grid)):
        result = findings(planned, output, read(output, write(output)))
        found += [f"{output.file}: {problem}" for problem in result.problems]
        assert result.sound == (not result.problems)
    return found


@pytest.mark.parametrize("worker", range(WORKERS))
def test_no_good_kit_is_refused(worker: int) -> None:
    """Whatever a kit that can be laid out asks for, its own proof accepts every sheet; few cannot be laid out."""
    _all_are_made(worker, USUAL)


@pytest.mark.slow
@pytest.mark.skipif(bool(SWEEP), reason="the rows asked for are all in the test above")
@pytest.mark.parametrize("worker", range(WORKERS))
def test_no_good_kit_of_the_other_pairs_is_refused(worker: int) -> None:
    """The rest of the rows in which every two values of two keys come together."""
    _all_are_made(worker, OTHERS)


def _all_are_made(worker: int, which: slice) -> None:
    made = left = 0
    wrong: list[tuple[Changes, list[str]]] = []
    for changes in islice(rows(which), worker, None, WORKERS):
        try:
            planned = plan(kit_of(changes))
            problems = refused(planned)
        except (FieldError, FieldErrors):
            left += 1
            continue
        made += 1
        wrong += [(changes, problems)] if problems else []
    assert wrong == []
    assert made > left  # of the few kits of a worker, as it happens up to three do not lie in the way they ask for


def test_the_rows_hold_every_pair_and_both_systems() -> None:
    """Every value of every key stands beside every value of every other; widths by half a mm and a sixteenth."""
    for one, other in combinations(AXES, 2):
        together = {(repr(row[one]), repr(row[other])) for row in PAIRS}
        assert len(together) == len(AXES[one]) * len(AXES[other]), (one, other)
    for name, values in AXES.items():
        assert {repr(row[name]) for row in PAIRS[USUAL]} == set(map(repr, values))
    assert set(islice(widths("mm"), len(IN_MM))) == set(IN_MM)
    assert set(islice(widths("in"), len(IN_INCHES))) == set(IN_INCHES)


def test_all_rows_are_all_of_them_once() -> None:
    """Over small axes, every combination comes once."""
    axes = {"a": (1, 2, 3), "b": (1, 2), "c": (1, 2, 3, 4, 5)}
    found = [tuple(row.values()) for row in all_rows(axes)]
    assert len(found) == len(set(found)) == 30


def test_the_demo_kit_on_a_frame_with_a_tie_is_made() -> None:
    """A span of 342.5 mm / 500 is 0.685 mm, midway between two figures: every file of it."""
    text = resources.files("templates_gen").joinpath("data/demo.toml").read_text(encoding="utf-8")
    values = tomllib.loads(text.replace('outer_width = "40 cm"', 'outer_width = "40.25 cm"'))
    planned = plan(read_kit(values, font_metrics()))
    assert planned.load.most == Fraction("0.685")
    assert refused(planned, Outputs(planned, font_metrics()).files) == []


ONCE_REFUSED: dict[str, Changes] = {
    "inches, a tie": {"frame.outer_width": "18 in", "frame.side_width": "1 3/8 in"},
    "shaded blocks in another order": {"sett.given": "8 epi", "frame.outer_width": "315 mm", "paper.size": "letter"},
}


@pytest.mark.parametrize("name", ONCE_REFUSED)
def test_what_was_once_refused_is_made(name: str) -> None:
    """The kit of these tests with a grid, every file of it."""
    weaving: Changes = {"weaving.width": "as wide as fits", "weft": {"beads": {"number": 26, "over": "5 cm"}}}
    planned = plan(kit_of(weaving | ONCE_REFUSED[name]))
    assert refused(planned, Outputs(planned, font_metrics()).files) == []
