"""A second run into a folder: nothing stale stays, nothing of anybody else's goes, and what changed is said."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from kits import FILES, font_metrics, plan_of

from templates_gen.files.changes import Changes
from templates_gen.files.check import Against, check
from templates_gen.files.generate import Report, make
from templates_gen.files.manifest import MANIFEST, product_of
from templates_gen.screen.made_report import made_text

OTHER: dict[str, object] = {"weaving.height": "33 cm"}


def made(folder: Path, other: dict[str, object] | None = None, only: list[str] | None = None) -> Report:
    """A kit's files without what is cut."""
    return make(plan_of(other or {}), folder, font_metrics(), only)


def wrong(folder: Path) -> dict[str, tuple[str, ...]]:
    """What `check` says of a folder, by name."""
    found = check([folder], Against(), font_metrics())
    return {Path(each.file).name: each.problems for each in found if each.problems}


def listed(folder: Path, *names: str) -> None:
    """Files of an earlier kit, each as the manifest lists it."""
    import hashlib

    stated = json.loads((folder / MANIFEST).read_text())
    for name in names:
        (folder / name).write_bytes(name.encode())
        digest = hashlib.sha256(name.encode()).hexdigest()
        stated["files"].append({**stated["files"][0], "file": name, "sha256": digest})
    (folder / MANIFEST).write_text(json.dumps(stated))


COMBS = ("comb-320x40mm-kerf-0.15.svg", "comb-320x40mm-kerf-0.15.dxf", "board-1of1-600x400mm-no-kerf.svg")


def test_what_is_no_longer_made_goes(tmp_path: Path) -> None:
    """Files of the former manifest go where they are as they were made; one that was changed is kept and named."""
    first = made(tmp_path)
    assert first.changes == Changes(new=FILES)
    listed(tmp_path, *COMBS)
    (tmp_path / COMBS[1]).write_bytes(b"changed by hand")
    (tmp_path / "comb-9x9mm-no-kerf.svg").write_bytes(b"in no manifest")
    (tmp_path / "notes.txt").write_bytes(b"mine")
    again = made(tmp_path)
    assert again.changes == Changes(same=FILES, removed=(COMBS[0], COMBS[2]), kept=(COMBS[1],))
    names = {path.name for path in tmp_path.iterdir()}
    assert names == {*FILES, MANIFEST, COMBS[1], "comb-9x9mm-no-kerf.svg", "notes.txt"}
    assert set(wrong(tmp_path)) == {COMBS[1], "comb-9x9mm-no-kerf.svg"}
    *_, care, last = made_text(again).splitlines()
    assert COMBS[1] in care
    assert last == f"In the folder: 0 new, 0 changed, {len(FILES)} the same, 2 removed ({COMBS[0]}, {COMBS[2]})."


def test_a_manifest_cannot_ask_for_more(tmp_path: Path) -> None:
    """A former manifest that lists hidden files, others' endings or places outside the folder removes none of them."""
    made(tmp_path / "strips")
    (tmp_path / "out.pdf").write_bytes(b"x")
    listed(tmp_path / "strips", "notes.txt", ".hidden.pdf")
    stated = json.loads((tmp_path / "strips" / MANIFEST).read_text())
    assert made(tmp_path / "strips").changes.removed == ()
    stated["files"].append({**stated["files"][-1], "file": "../out.pdf"})
    (tmp_path / "strips" / MANIFEST).write_text(json.dumps(stated))
    assert made(tmp_path / "strips").changes.removed == ()
    assert {"notes.txt", ".hidden.pdf"} < {path.name for path in (tmp_path / "strips").iterdir()}
    assert (tmp_path / "out.pdf").exists()


def test_one_part_alone_leaves_the_others(tmp_path: Path) -> None:
    """--only renews its own entries, takes its own stale files away, and the folder is as whole as it was."""
    made(tmp_path)
    listed(tmp_path, *COMBS)
    before = json.loads((tmp_path / MANIFEST).read_text())
    report = made(tmp_path, only=["strip-far"])
    assert report.changes == Changes(same=("strip-far.pdf", "strip-far.svg"))
    assert json.loads((tmp_path / MANIFEST).read_text()) == before
    (tmp_path / "strip-far.svg").write_bytes(b"spoilt")
    assert made(tmp_path, only=["strip-far.pdf"]).changes == Changes(same=("strip-far.pdf",))
    assert json.loads((tmp_path / MANIFEST).read_text()) == before
    assert made(tmp_path, only=["strip-far"]).changes.changed == ("strip-far.svg",)
    assert all((tmp_path / name).exists() for name in COMBS)


def test_one_part_of_another_kit(tmp_path: Path) -> None:
    """A part of another kit among the others is said by the run and by `check`, and all made again is right."""
    made(tmp_path)
    report = made(tmp_path, OTHER, only=["strip-far"])
    assert set(report.changes.other_kit) == {name for name in FILES if not name.startswith("strip-far")}
    assert "made from other inputs" in made_text(report)
    assert "more than one kit" in wrong(tmp_path)[tmp_path.name][0]
    assert made(tmp_path, OTHER).changes.other_kit == ()
    assert wrong(tmp_path) == {}


@pytest.mark.parametrize(
    ("name", "product"),
    [
        ("strip-near.pdf", "strip-near"),
        ("kit.pdf", "kit"),
        ("job.pdf", "job"),
        ("winding-comb-320x89mm-kerf-0.20.svg", "winding-comb"),
        ("comb-320x40mm-kerf-0.20x0.15.dxf", "comb"),
        ("board-2of3-600x400mm-no-kerf.dxf", "board"),
        ("comb-sketch.svg", None),
        ("board-meeting.pdf", None),
        ("strip-near.txt", None),
        ("notes", None),
    ],
)
def test_which_product_a_name_is_of(name: str, product: str | None) -> None:
    """Only names that a run gives are ours."""
    assert product_of(name) == product
