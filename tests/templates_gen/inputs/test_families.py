"""What `make --only` may name: parts, families, and the file that one sends."""

from __future__ import annotations

from collections.abc import Sequence

import pytest

from layout.plan import plan
from layout.products import PRODUCTS, made_by_default
from layout.values.errors import FieldError
from templates_gen.files.outputs import Outputs
from templates_gen.inputs import kit_file as kitfile
from templates_gen.inputs import stock_file as stockfile
from templates_gen.inputs.families import known_names, products_of
from templates_gen.lettering.fonts import metrics

DEMO = plan(kitfile.demo())


def files(names: Sequence[str]) -> tuple[str, ...]:
    """The files that `--only` of these names makes of the demo kit."""
    return Outputs(DEMO, metrics(), products_of(DEMO, names), stockfile.built_in()).files


@pytest.mark.parametrize(
    ("names", "made"),
    [
        (["strips"], ("strips.pdf", "strip-near.pdf", "strip-near.svg", "strip-far.pdf", "strip-far.svg")),
        (["strips.pdf"], ("strips.pdf", "strip-near.pdf", "strip-far.pdf")),
        (["strips.svg"], ("strip-near.svg", "strip-far.svg")),
        (["strip-near.pdf"], ("strip-near.pdf",)),
        (["Strip-Near.PDF"], ("strip-near.pdf",)),
        (["kit"], ("kit.pdf",)),
        (["kit.pdf"], ("kit.pdf",)),
        (["job"], ("job.pdf",)),
        (["job", "kit"], ("kit.pdf", "job.pdf")),
        (["strip-near.svg", "strip-near.pdf"], ("strip-near.pdf", "strip-near.svg")),
    ],
)
def test_families_and_suffixes_pick_their_files(names: list[str], made: tuple[str, ...]) -> None:
    """A family is all its files, a suffix one of them, in the order of making."""
    assert files(names) == made


def test_boards_are_all_boards_and_nothing_else() -> None:
    """With or without a suffix; they are the ones that the whole kit has."""
    whole = files([])
    boards = tuple(file for file in whole if file.startswith("board-"))
    assert boards
    assert files(["board"]) == files(["boards"]) == boards
    assert files(["board.dxf"]) == tuple(file for file in boards if file.endswith(".dxf"))


def test_every_name_makes_something_and_all_together_the_whole_kit() -> None:
    """No name stands for nothing, and no file is without a name; what lies in a box is made by its name alone."""
    whole, found = files([]), set[str]()
    for name in known_names(DEMO):
        made = files([name])
        found |= set(made)
        assert made or name == "spacing-guide-cut", name
    unmade = [name for name in PRODUCTS if name not in made_by_default(DEMO)]
    checks = {file for file in found if file.startswith("square-check-")}
    assert checks
    assert found - checks == {*whole, *(f"{name}.pdf" for name in unmade)}


def test_the_one_file_is_the_same_alone() -> None:
    """kit.pdf and a board asked for alone hold what they hold in the whole kit."""
    whole = Outputs(DEMO, metrics(), None, stockfile.built_in())
    alone = Outputs(DEMO, metrics(), ("kit", "board"), stockfile.built_in())
    for file in alone.files:
        assert alone.output(file).sheets == whole.output(file).sheets


@pytest.mark.parametrize(
    ("said", "meant"), [("strip", "strips"), ("kitt", "kit"), ("jobs.pdf", "job"), ("strip-naer", "strip-near")]
)
def test_an_unknown_name_is_refused_with_the_one_meant(said: str, meant: str) -> None:
    """The example works."""
    with pytest.raises(FieldError, match=rf"did you mean {meant}\?") as caught:
        files([said])
    assert files([caught.value.example.removeprefix("--only ")])


@pytest.mark.parametrize("said", ["strip-near.dxf", "kit.svg", "job.", "strips.doc"])
def test_a_file_that_there_is_not_is_refused(said: str) -> None:
    """With the kinds that there are; the example works."""
    with pytest.raises(FieldError, match=r"--only: needs a file that exists for it") as caught:
        files([said])
    assert files([caught.value.example.removeprefix("--only ")])
