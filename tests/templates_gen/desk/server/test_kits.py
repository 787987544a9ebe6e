"""Kit files by the desk: opened, kept, copied, compared, made, and taken away."""

from __future__ import annotations

import io
import zipfile
from pathlib import Path
from typing import Any

import pytest
from commands import run
from desk_client import Visitor

from templates_gen.data import text_of
from templates_gen.inputs.kit_file import FILES
from templates_gen.inputs.range_file import load_range


@pytest.fixture
def here(tmp_path: Path) -> Visitor:
    """A desk whose folder has two kits."""
    text = FILES.starter_text()
    (tmp_path / "one.toml").write_text(text, encoding="utf-8")
    (tmp_path / "two.toml").write_text(text.replace('height = "34 cm"', 'height = "33 cm"'), encoding="utf-8")
    return Visitor(tmp_path)


def opened(here: Visitor, number: int = 1) -> str:
    """The id of the slip that a kit of the list lies on, once it was opened; the list is asked for first."""
    assert here.get("/kits").status_code == 200
    answer = here.post("/open", {"open": str(number)})
    assert answer.status_code == 303, answer.text
    return answer.headers["Location"].partition("k=")[2]


def test_a_kit_is_opened_changed_and_kept(here: Visitor, tmp_path: Path) -> None:
    """The file differs in the line that was changed, and remarks stay."""
    before = (tmp_path / "one.toml").read_text("utf-8").splitlines()
    here.slip = opened(here)
    assert here.look()["lines"]["frame.outer_width"]["source"] == "yours"
    answer = here.post("/slip", {"do": "keep", "frame.outer_width": "41 cm"})
    assert (answer.status_code, answer.headers["Location"]) == (303, f"/?k={here.slip}")
    after = (tmp_path / "one.toml").read_text("utf-8").splitlines()
    assert [line for line in after if line not in before] == ['outer_width = "41 cm"' + _remark(before, "outer_width")]


def _remark(lines: list[str], key: str) -> str:
    (line,) = (line for line in lines if line.startswith(f"{key} ="))
    return line[line.index('"', line.index('"') + 1) + 1 :]


@pytest.mark.parametrize(("how", "width"), [("mine", "41 cm"), ("theirs", "44 cm"), ("new", "44 cm")])
def test_a_file_changed_elsewhere_is_asked(here: Visitor, tmp_path: Path, how: str, width: str) -> None:
    """Nothing is written before somebody said whose shall stay."""
    here.slip = opened(here)
    file = tmp_path / "one.toml"
    file.write_text(file.read_text("utf-8").replace('outer_width = "40 cm"', 'outer_width = "44 cm"'), "utf-8")
    answer = here.post("/slip", {"do": "keep", "frame.outer_width": "41 cm"})
    assert answer.headers["Location"] == f"/keep?k={here.slip}"
    assert "one.toml" in here.get(f"/keep?k={here.slip}").text
    assert '"44 cm"' in file.read_text("utf-8")
    assert here.post("/keep", {"how": how}).headers["Location"] == f"/?k={here.slip}"
    assert f'outer_width = "{width}"' in file.read_text("utf-8")
    assert len(list(tmp_path.glob("*.toml"))) == (3 if how == "new" else 2)
    assert here.look()["lines"]["frame.outer_width"]["source"] == "yours"


def test_a_change_is_kept_for_all_kits_of_a_range(tmp_path: Path) -> None:
    """Kept as usual it is the kit's own; where it is said, it is shared, and the other slips that lie here have it."""
    (tmp_path / "weir.toml").write_text(text_of("range.toml"), encoding="utf-8")
    here = Visitor(tmp_path)
    assert "keep-shared" not in here.get(f"/?k={here.slip}").text
    here.get("/kits")
    first, second = (opened(here, number) for number in (1, 2))
    here.slip = first
    assert "keep-shared" in here.get(f"/?k={first}").text
    assert here.post("/slip", {"do": "keep", "frame.side_width": "31 mm"}).status_code == 303
    assert here.post("/slip", {"do": "keep-shared", "frame.margin": "16 mm"}).status_code == 303
    kits = load_range(tmp_path / "weir.toml").kits
    assert [each.values["frame"]["side_width"] for each in kits] == ["31 mm", "30 mm", "30 mm"]  # type: ignore[index]
    assert [each.values["frame"]["margin"] for each in kits] == ["16 mm"] * 3  # type: ignore[index]
    assert here.desk.slips.get(second).typed["frame.margin"] == "16 mm"  # type: ignore[union-attr]
    here.slip = second
    assert here.post("/slip", {"do": "keep", "frame.outer_width": "41 cm"}).headers["Location"] == f"/?k={second}"
    assert load_range(tmp_path / "weir.toml").kits[1].values["frame"]["outer_width"] == "41 cm"  # type: ignore[index]


def test_a_second_copy_has_another_name(here: Visitor, tmp_path: Path) -> None:
    """A copy that was kept is known by its name, whatever its file is called."""
    here.get("/kits")
    here.slip = here.post("/copy", {"open": "1"}).headers["Location"].partition("k=")[2].partition("#")[0]
    here.post("/slip", {"do": "keep"})
    (tmp_path / "willow-frame-small-copy.toml").rename(tmp_path / "x.toml")
    again = Visitor(tmp_path)
    again.get("/kits")
    again.post("/copy", {"open": "1"})
    assert again.desk.slips.last().typed["name"] == "Willow frame, small, copy 2"  # type: ignore[union-attr]


def test_the_example_is_kept_under_the_name_of_the_kit(tmp_path: Path) -> None:
    """A slip that no file holds gets one, called after the kit."""
    here = Visitor(tmp_path)
    here.post("/slip", {"do": "keep", "name": "Heron frame"})
    assert [path.name for path in tmp_path.glob("*.toml")] == ["heron-frame.toml"]


def test_an_opened_kit_is_not_opened_twice(here: Visitor) -> None:
    """What was typed and not kept is there when the kit is opened once more."""
    here.slip = opened(here)
    here.look({"frame.outer_width": "41 cm"})
    assert opened(here) == here.slip
    assert here.desk.slips.get(here.slip).typed["frame.outer_width"] == "41 cm"  # type: ignore[union-attr]


def test_a_copy_has_a_name_of_its_own(here: Visitor) -> None:
    """The page goes on at the name of the copy."""
    here.get("/kits")
    answer = here.post("/copy", {"open": "1"})
    assert answer.headers["Location"].endswith("#name")
    assert len({slip.typed["name"] for slip in here.desk.slips.all()}) == 2


def test_kits_side_by_side(here: Visitor) -> None:
    """What differs stands on the page with both values."""
    here.get("/kits")
    page = here.get("/kits?compare=1&compare=2").text
    assert 'id="compared"' in page
    assert "33 cm" in page.partition('id="compared"')[2]
    assert here.get("/kits?compare=1&compare=77").status_code == 400
    assert here.get("/kits?compare=1&compare=..%2Fone").status_code == 404


def test_a_file_is_sent_and_opened(here: Visitor) -> None:
    """It lies on a slip of its own; a file that is none is refused with a sentence on the page."""
    text = FILES.starter_text().replace("Willow", "Weir").encode()
    answer = here.post("/open", {"file": (io.BytesIO(text), "C:\\fakepath\\weir.toml")})
    assert answer.status_code == 303, answer.text
    assert here.desk.slips.last().typed["name"].startswith("Weir")  # type: ignore[union-attr]


def made(here: Visitor, what: str = "strips") -> dict[str, Any]:
    """What is said at the end of making."""
    answer = here.post("/make", {"do": what}, accept="application/json").json or {}
    while answer["running"]:
        job = here.desk.slips.get(here.slip).job  # type: ignore[union-attr]
        here.desk.making.job(job).wait(0.1)
        answer = here.get(f"/make/{job}?k={here.slip}", accept="application/json").json or {}
    return answer


def test_files_are_made_and_taken_away(here: Visitor, tmp_path: Path) -> None:
    """The zip holds the files of the kit, and `check` finds them right."""
    here.slip = opened(here)
    said = made(here)
    assert "Proven" in said["said"]
    job = here.desk.slips.get(here.slip).made_job  # type: ignore[union-attr]
    answer = here.get(f"/zip/{job}")
    assert answer.headers["Content-Disposition"] == "attachment; filename=willow-frame-small.zip"
    with zipfile.ZipFile(io.BytesIO(answer.data)) as archive:
        assert "strip-near.pdf" in archive.namelist()
        archive.extractall(tmp_path / "out")
    assert run("check", tmp_path / "out").exit_code == 0
    assert here.get(f"/zip/{job}/strip-near.pdf").data.startswith(b"%PDF-")
    assert here.get(f"/zip/{job}/..%2Fone.pdf").status_code == 404
    assert "changed" not in said["away"]
    here.look({"frame.outer_width": "41 cm"})
    assert "changed after" in here.look()["parts"]["away"]
    here.desk.close()


def test_making_of_the_example_stops_once(tmp_path: Path) -> None:
    """Nothing begins before it is said that the lines are right."""
    here = Visitor(tmp_path)
    said = made(here)
    assert not said["running"]
    assert here.desk.slips.all()[0].job == ""
    assert 'name="as_is"' in said["away"]
    here.post("/slip", {"do": "strips", "as_is": "yes"})
    assert here.desk.slips.all()[0].job
    here.desk.close()


def test_nothing_is_made_of_what_cannot_be_read(tmp_path: Path) -> None:
    """The page says so, and leads to the line."""
    here = Visitor(tmp_path)
    answer = here.post("/make", {"do": "make", "frame.outer_width": "40 c"}, accept="application/json").json or {}
    assert answer["wrong"]
    assert answer["refused"]
    assert here.desk.slips.all()[0].job == ""


def test_one_run_at_a_time_and_a_stop(here: Visitor) -> None:
    """A second run is refused in a sentence while one is under way; a stop ends it."""
    here.slip = opened(here)
    first = here.post("/make", {"do": "make"}, accept="application/json").json or {}
    assert first["running"]
    second = here.post("/make", {"do": "strips"}, accept="application/json").json or {}
    assert second["refused"]
    job = here.desk.slips.get(here.slip).job  # type: ignore[union-attr]
    stopped = here.post(f"/make/{job}/stop", accept="application/json").json or {}
    assert not stopped["running"]
    assert here.get(f"/zip/{job}").status_code == 404
    here.desk.close()
