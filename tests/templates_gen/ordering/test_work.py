"""An order is made as `make` makes a kit: the same bytes, proven, and what it takes is known."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from commands import run as command
from order_tables import Rows, files_below, made, order, orders

import templates_gen
from layout.box.needs import needs
from layout.kit.kit import read_kit
from templates_gen.files import proven
from templates_gen.files.kept import planned
from templates_gen.lettering.fonts import metrics
from templates_gen.ordering import work as working
from templates_gen.ordering.stage import StagedFolder


def kit_file(folder: Path, values: dict[str, Any]) -> Path:
    """The kit of an order as a file."""
    import tomlkit

    path = folder / "kit.toml"
    path.write_text(tomlkit.dumps(values), encoding="utf-8")
    return path


def test_the_files_are_those_of_make(tmp_path: Path) -> None:
    """Strips, spacing guide, leaflet and manifest are byte for byte what `make --only` makes of the same kit."""
    asked = order(3)
    (result,) = made(Rows([asked]), tmp_path / "orders", ("strips", "spacing-guide.pdf", "leaflet"))
    kit = kit_file(tmp_path, dict(asked.values))
    options = ("--only", "strips", "--only", "spacing-guide.pdf", "--only", "leaflet")
    assert command("make", kit, "-o", tmp_path / "w-3", *options).exit_code == 0
    assert files_below(tmp_path / "orders" / "w-3") == files_below(tmp_path / "w-3")
    assert {file.file for file in result.files} == files_below(tmp_path / "w-3").keys() - {"manifest.json"}


def test_usual_files(tmp_path: Path) -> None:
    """Where nothing else is asked for there are three PDF files, of the bytes that `make` makes, and a manifest."""
    asked = order(3)
    made(Rows([asked]), tmp_path / "orders", ())
    found = files_below(tmp_path / "orders" / "w-3")
    assert found.keys() == {"strips.pdf", "spacing-guide.pdf", "leaflet.pdf", "manifest.json"}
    kit = templates_gen.load(kit_file(tmp_path, dict(asked.values)))
    templates_gen.make(kit, tmp_path / "made", ["strips.pdf", "spacing-guide.pdf", "leaflet.pdf"])
    theirs = files_below(tmp_path / "made")
    assert {name: theirs[name] for name in found if name != "manifest.json"} == {
        name: data for name, data in found.items() if name != "manifest.json"
    }


def test_each_folder_is_proven_by_check(tmp_path: Path) -> None:
    """`check` of an order's folder finds every file right."""
    made(orders(2), tmp_path, ())
    for folder in ("w-0", "w-1"):
        checked = templates_gen.check(tmp_path / folder)
        assert len(checked) >= 3
        assert [each.problems for each in checked if each.problems] == []


def test_what_a_box_takes(tmp_path: Path) -> None:
    """Amounts and ends are those of the plan, thing by thing and unit by unit."""
    asked = order(5)
    (result,) = made(Rows([asked]), tmp_path)
    plan = planned(read_kit(asked.values, metrics()))
    wanted = [
        (need.kind, need.name, need.colour, unit, need.figure(unit)) for need in needs(plan) for unit in need.taken
    ]
    assert [tuple(amount)[:5] for amount in result.amounts] == wanted
    assert (result.ends, result.notes[: len(plan.warnings)]) == (plan.warp.ends, plan.warnings)


def test_a_bad_order_is_alone(tmp_path: Path) -> None:
    """An order that cannot be woven fails with a sentence; those before and after it are made."""
    rows = [order(0), order(1, weaving={"width": "60 cm"}), order(2)]
    found = made(Rows(rows), tmp_path)
    assert [each.state for each in found] == ["made", "failed", "made"]
    assert "weaving.width" in found[1].problems[0].sentence
    assert not (tmp_path / "w-1").exists()


def test_an_accident_is_alone(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """What nobody expected fails one order with a sentence that asks to report it, and no other one."""
    real = working._names

    def names(plan: Any, job: Any) -> Any:
        if plan.kit.name == "Other frame":
            raise MemoryError
        return real(plan, job)

    monkeypatch.setattr(working, "_names", names)
    found = made(Rows([order(0), order(1, name="Other frame"), order(2)]), tmp_path)
    assert [each.state for each in found] == ["made", "failed", "made"]
    assert "MemoryError" in found[1].problems[0].sentence
    assert "report it" in found[1].problems[0].sentence
    assert sorted(path.name for path in tmp_path.iterdir()) == [".orders", "w-0", "w-2"]


def test_a_file_that_does_not_come_back_right_is_not_kept(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Where a disk gives back other bytes than were written, the proof says so and the order is not there."""
    real = StagedFolder.write

    def write(self: StagedFolder, name: str, data: bytes) -> bytes:
        found = real(self, name, data)
        return found.replace(b"/MediaBox", b"/MediaBux") if name == "strip-near.pdf" else found

    monkeypatch.setattr(StagedFolder, "write", write)
    (result,) = made(orders(1), tmp_path)
    assert result.state == "failed"
    assert "strip-near.pdf" in result.problems[0].sentence
    assert proven.report_advice() in result.problems[0].sentence
    assert not (tmp_path / "w-0").exists()


def test_only_read(tmp_path: Path) -> None:
    """A check reads and plans every order, and writes nothing anywhere."""
    folder = tmp_path / "none"
    found = made(Rows([order(0), order(1, weaving={"width": "60 cm"})]), folder, check=True)
    assert [(each.state, each.files) for each in found] == [("readable", ()), ("failed", ())]
    assert found[0].ends == 20
    assert not folder.exists()


def test_asked_for_by_no_name(tmp_path: Path) -> None:
    """Where the job names a file that a kit has not, its orders fail with the sentence of `make`."""
    (result,) = made(orders(1), tmp_path, ("strops",))
    assert result.state == "failed"
    assert "strips" in result.problems[0].sentence
