"""Reading finished files back: what is right passes, and everything else is said for its file."""

from __future__ import annotations

import json
import os
import random
import re
import shutil
from pathlib import Path

import pytest
from cut_plates import OPERATIONS, plate
from kits import FILES, FLAT, font_metrics, kit_of, plan_of

from layout.drawing.sheet import Sheet
from layout.kit.kit import Kit
from templates_gen.disk.recovery import LARGEST_FILE
from templates_gen.document import About, packed
from templates_gen.files.check import Against, check
from templates_gen.files.checked import Checked, Count
from templates_gen.files.formats import FORMATS
from templates_gen.files.generate import make
from templates_gen.files.manifest import MANIFEST
from templates_gen.messages.language import message
from templates_gen.messages.roles.files import Check

FEW = tuple(f"strip-{end}.{form}" for end in ("near", "far") for form in ("pdf", "svg"))


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The files of one kit, made once."""
    folder = tmp_path_factory.mktemp("made")
    make(plan_of(), folder, font_metrics())
    return folder


@pytest.fixture(scope="module")
def few(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A few files of that kit, with a manifest of their own."""
    folder = tmp_path_factory.mktemp("few")
    make(plan_of(), folder, font_metrics(), ["strip-near", "strip-far"])
    assert {path.name for path in folder.iterdir()} == {*FEW, MANIFEST}
    return folder


@pytest.fixture
def strips(few: Path, tmp_path: Path) -> Path:
    """A copy of these to spoil."""
    return Path(shutil.copytree(few, tmp_path / "strips"))


def checked(*paths: Path, kit: Kit | None = None) -> list[Checked]:
    """Every path checked."""
    return check(paths, Against(kit), font_metrics())


def problem(path: Path, kit: Kit | None = None) -> str:
    """All that is wrong with one file; nothing if it is right."""
    (found,) = checked(path, kit=kit)
    return "; ".join(found.problems)


def test_a_folder_that_is_right(made: Path) -> None:
    """Every file that the manifest lists is asked for and found; none is off by more than a micrometre."""
    found = checked(made)
    assert [Path(each.file).name for each in found] == list(FILES)
    assert all(each.problems == () and each.asked == each.found and each.deviation <= 0.001 for each in found)
    # 25 winds of 8 mm: 26 near marks, 5 lines every 4 cm and 2 limits; 595 x 790 units of 1/72 in (ISO 32000)
    near = next(each for each in found if each.file.endswith("strip-near.pdf"))
    assert near.found == Count(1, (209.9028, 278.6944), 56)


def test_files_one_by_one_under_any_name(made: Path, tmp_path: Path) -> None:
    """A file on its own is checked by what it carries, whatever it is called now, in capitals too."""
    for name in FILES:
        renamed = shutil.copy(made / name, tmp_path / f"copy of {name}".upper())
        assert problem(Path(renamed)) == ""


@pytest.mark.parametrize("file", FILES)
def test_against_its_own_kit(file: str, made: Path) -> None:
    """The kit that the files were made from says the same as what they carry."""
    assert problem(made / file, kit_of()) == ""


OTHER_KITS: dict[str, dict[str, object]] = {
    "another width": {"weaving.width": "21 cm"},
    "another sett": {"sett": {"given": "2.6 ends/cm"}},
    "another name": {"name": "Otter frame"},
    "another start": {"weaving.start": "right"},
    "flat ends": FLAT,
    "another paper": {"paper": {"size": "a4"}},
    "another height, which is not drawn": {"weaving.height": "33 cm"},
}


@pytest.mark.parametrize("file", ["strip-far.svg", "kit.pdf"])
@pytest.mark.parametrize("other", OTHER_KITS)
def test_another_kit_rings(other: str, file: str, made: Path) -> None:
    """Compared with any other kit, no file passes."""
    assert problem(made / file, kit_of(OTHER_KITS[other]))


def test_a_folder_without_a_manifest_is_incomplete(strips: Path) -> None:
    """It is said of the folder, and the files in it are checked all the same."""
    (strips / MANIFEST).unlink()
    whole, *files = checked(strips)
    assert "incomplete" in whole.problems[0]
    assert whole.file == str(strips)
    assert sorted(Path(each.file).name for each in files) == sorted(FEW)
    assert not any(each.problems for each in files)


def test_an_empty_folder_is_incomplete(tmp_path: Path) -> None:
    """Nothing at all is not right either."""
    (whole,) = checked(tmp_path)
    assert whole.problems


@pytest.mark.parametrize("file", FEW)
def test_a_missing_file(file: str, strips: Path) -> None:
    """One that the manifest lists is missed, and it alone."""
    (strips / file).unlink()
    found = {Path(each.file).name: each for each in checked(strips)}
    assert [name for name in FEW if found[name].problems] == [file]
    assert "missing" in found[file].problems[0]


def test_a_file_of_another_make(strips: Path) -> None:
    """A whole and right file that is not the one listed is said by its digest."""
    make(plan_of({"weaving.height": "33 cm"}), strips / "other", font_metrics(), ["strip-far.pdf"])
    shutil.copy(strips / "other" / "strip-far.pdf", strips / "strip-far.pdf")
    assert problem(strips / "strip-far.pdf") == ""
    assert [each.problems for each in checked(strips) if each.problems] == [(f"is not the file that {MANIFEST} lists",)]


def test_swapped_files(strips: Path) -> None:
    """Near and far exchanged, even with a manifest that was changed to match, are not what they are called."""
    near, far = strips / "strip-near.pdf", strips / "strip-far.pdf"
    near_data, far_data = near.read_bytes(), far.read_bytes()
    near.write_bytes(far_data)
    far.write_bytes(near_data)
    listed = json.loads((strips / MANIFEST).read_text())
    one, other = (entry for entry in listed["files"] if entry["file"] in ("strip-near.pdf", "strip-far.pdf"))
    one["sha256"], other["sha256"] = other["sha256"], one["sha256"]
    (strips / MANIFEST).write_text(json.dumps(listed))
    wrong = [each for each in checked(strips) if each.problems]
    assert {Path(each.file).name for each in wrong} == {"strip-near.pdf", "strip-far.pdf"}
    assert all("was made as" in each.problems[0] for each in wrong)


@pytest.mark.parametrize(
    "text",
    [
        "",
        "{",
        "[]",
        "null",
        '{"files": 3}',
        '{"files": []}',
        '{"files": [3]}',
        '{"files": [{"file": "kit.pdf"}]}',
        '{"files": [{"file": "../kit.pdf", "sha256": ""}]}',
        '{"files": [{"file": "/etc/hosts", "sha256": ""}]}',
        "[" * 100_000,
        "9" * 5_000,
        "\x00",
    ],
    ids=range(13),
)
def test_a_manifest_that_was_never_ours(text: str, strips: Path) -> None:
    """Whatever stands there, it is said as such, and nothing outside the folder is looked at."""
    (strips / MANIFEST).write_text(text)
    whole, *_ = checked(strips)
    assert whole.problems == (f"{MANIFEST} is not one that was written here",)


@pytest.mark.parametrize("name", ["", "..", "a\0b", "\ud800", "x" * 400, "kit.pdf\n"])
def test_a_manifest_with_names_that_cannot_be(name: str, strips: Path) -> None:
    """A listed name that no file can have is missing like any other."""
    (strips / MANIFEST).write_text(json.dumps({"files": [{"file": name, "sha256": ""}]}))
    found, *others = checked(strips)
    assert "missing" in found.problems[0]
    found.file.encode()
    assert [each.problems for each in others] == [(message(Check.UNLISTED, manifest=MANIFEST),)] * len(FEW)


FOREIGN = {
    "nothing.pdf": b"",
    "nothing.svg": b"",
    "foreign.svg": b'<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>',
    "text.pdf": b"a letter",
    "binary.svg": bytes(range(256)),
    "notes.txt": b"hello",
    "kit": b"hello",
    "strip.dxf": b"0\nEOF\n",
}


@pytest.mark.parametrize("name", FOREIGN)
def test_what_was_never_ours(name: str, tmp_path: Path) -> None:
    """Empty files, files of others and files of another ending are refused in one line, nothing found in them."""
    (tmp_path / name).write_bytes(FOREIGN[name])
    (found,) = checked(tmp_path / name)
    assert (found.found, found.asked, found.deviation) == (None, None, 0.0)
    assert len(found.problems) == 1
    assert "\n" not in found.problems[0]


def test_a_pdf_of_another_program(tmp_path: Path) -> None:
    """A sound PDF that pypdf made is not ours."""
    from pypdf import PdfWriter

    writer = PdfWriter()
    writer.add_blank_page(595, 790)
    with (tmp_path / "blank.pdf").open("wb") as file:
        writer.write(file)
    assert problem(tmp_path / "blank.pdf")


CARRIED = {
    "nothing": "",
    "no JSON": "kit",
    "a list": "[]",
    "unknown": '{"file":"kit.pdf"}',
    "a kit that is none": '{"file":"kit.pdf","kit":3}',
    "an empty kit": '{"file":"kit.pdf","kit":{}}',
    "a file that is none": '{"file":7,"kit":{}}',
    "endless brackets": "[" * 100_000,
    "an endless number": "9" * 5_000,
    "not a number": '{"file":"kit.pdf","kit":{"version":NaN}}',
}


@pytest.mark.parametrize("name", CARRIED)
@pytest.mark.parametrize("kind", FORMATS)
def test_inputs_that_cannot_be_used(kind: str, name: str, tmp_path: Path) -> None:
    """A file of our form that carries no kit, or none that can be used, is said so line by line."""
    path = tmp_path / f"any.{kind}"
    sheet, operations = (plate(), OPERATIONS) if kind == "dxf" else (Sheet("any", 50, 50, ()), None)
    path.write_bytes(FORMATS[kind].write([sheet], About("any", CARRIED[name], operations)))
    (found,) = checked(path)
    assert found.problems
    assert found.asked is None
    assert found.found is not None
    assert (found.found.sheets, found.found.marks) == (1, 0)


def test_a_pdf_without_pages(tmp_path: Path, made: Path) -> None:
    """A file that names no sheet and holds none is said like any other, not fallen over."""
    from pypdf import PdfWriter
    from pypdf.generic import ArrayObject, NameObject, NumberObject, TextStringObject

    writer = PdfWriter(clone_from=made / "kit.pdf")
    inputs = FORMATS["pdf"].read((made / "kit.pdf").read_bytes()).about
    pages = writer.root_object["/Pages"].get_object()
    pages[NameObject("/Kids")] = ArrayObject()  # type: ignore[index]
    pages[NameObject("/Count")] = NumberObject(0)  # type: ignore[index]
    assert writer._info is not None
    writer._info.get_object()[NameObject("/Keywords")] = TextStringObject(packed([], inputs))  # type: ignore[index]
    with (tmp_path / "kit.pdf").open("wb") as file:
        writer.write(file)
    (found,) = checked(tmp_path / "kit.pdf")
    assert found.problems
    assert found.found is None


def test_a_kit_changed_inside_a_file(strips: Path) -> None:
    """A file whose drawing is right for another kit than the one it carries does not pass."""
    path = strips / "strip-near.svg"
    text = path.read_text()
    assert "200 mm" in text or "20 cm" in text
    path.write_text(re.sub(r"20 cm", "19 cm", text))
    assert path.read_text() != text
    assert problem(path)


def test_damage_is_told_and_nothing_worse(made: Path, tmp_path: Path) -> None:
    """Bytes changed at random are found wrong, or the file still says the very same; no error of another kind."""
    dice = random.Random(11)  # noqa: S311 - the same damage in every run
    for name in FEW[:2] * 20:
        data = bytearray((made / name).read_bytes())
        for _ in range(dice.randint(1, 4)):
            data[dice.randrange(len(data))] = dice.randrange(256)
        path = tmp_path / name
        path.write_bytes(data if dice.random() < 0.8 else data[: dice.randrange(len(data))])
        (found,) = checked(path)
        assert found.problems or found.asked == found.found


@pytest.mark.parametrize("where", ["nowhere.pdf", "nowhere", "file.pdf/below", "x" * 300, "a\0b.pdf"])
def test_what_is_not_there(where: str, tmp_path: Path) -> None:
    """A path that leads nowhere is a fault, stated in one sentence, and the fault is not called harmless writing."""
    (tmp_path / "file.pdf").write_bytes(b"")
    stated = unread(tmp_path / where)
    assert stated.startswith("could not read ")
    assert "changed" not in stated
    assert len(stated.splitlines()) == 1


def unread(path: Path) -> str:
    """What is said of one path that cannot be read."""
    (found,) = checked(path)
    assert found.unread
    assert (found.asked, found.found) == (None, None)
    (stated,) = found.problems
    return stated


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no pipes among its files")
def test_a_pipe_is_not_waited_for(tmp_path: Path) -> None:
    """A pipe with nobody at its other end, or a device without an end, is refused instead of read."""
    os.mkfifo(tmp_path / "pipe.pdf")
    for path in (tmp_path / "pipe.pdf", Path("/dev/zero")):
        assert "a device, not a file" in unread(path)


def test_too_large_a_file_is_not_read(tmp_path: Path) -> None:
    """A file a thousand times larger than ours is refused by its size alone."""
    with (tmp_path / "large.pdf").open("wb") as file:
        file.truncate(LARGEST_FILE + 1)
    assert "larger than 16 MB" in unread(tmp_path / "large.pdf")


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no pipes among its files")
def test_what_cannot_be_read_ends_nothing(strips: Path) -> None:
    """With listed files that cannot be read, and a path that leads nowhere: one sentence each, all others checked."""
    first, last = FEW[0], FEW[-1]
    for name in (first, last):
        (strips / name).unlink()
        os.mkfifo(strips / name)
    found = checked(strips / "nowhere", strips)
    assert [Path(each.file).name for each in found if each.unread] == ["nowhere", first, last]
    others = [each for each in found if not each.unread]
    assert [Path(each.file).name for each in others] == list(FEW[1:-1])
    assert not any(each.problems for each in others)


def test_files_that_no_manifest_lists(strips: Path) -> None:
    """Each file that is ours by name or by content is named as wrong; a stranger's file and a hidden one are not."""
    shutil.copy(strips / "strip-near.svg", strips / "a copy.svg")
    (strips / "comb-300x40mm-kerf-0.15.dxf").write_bytes(b"old")
    (strips / "my photo.pdf").write_bytes(b"%PDF-1.4 not of ours")
    (strips / "comb-sketch.svg").write_text("<svg/>")
    (strips / ".templates-gen.lock").write_bytes(b"")
    wrong = {Path(each.file).name: each.problems for each in checked(strips) if each.problems}
    assert set(wrong) == {"a copy.svg", "comb-300x40mm-kerf-0.15.dxf"}
    assert all("is not in manifest.json" in problem for (problem,) in wrong.values())


LEGAL: dict[str, object] = {"legal": {"maker": "Shop by the Weir"}, "box": {"holds": ["strips", "help", "label"]}}


def test_legal_words_stand_in_the_label_alone_and_make_no_other_kit(tmp_path: Path) -> None:
    """A folder whose label carries the maker's words is of one kit; another maker in the kit given is told."""
    make(plan_of(LEGAL), tmp_path, font_metrics(), ["strip-near", "help", "label"])
    assert [each.problems for each in checked(tmp_path)] == [()] * 4
    assert {path.name for path in tmp_path.iterdir() if b"Shop by the Weir" in _inputs(path)} == {"label.pdf"}
    other = kit_of(LEGAL | {"legal": {"maker": "Shop by the Mill"}})
    assert problem(tmp_path / "help.pdf", other) == ""
    assert problem(tmp_path / "label.pdf", other) != ""


ORDER: dict[str, object] = {"order": {"number": "1042", "buyer": "Weir Studio"}}


def test_a_buyer_stands_in_the_leaflet_alone_and_makes_no_other_kit(tmp_path: Path) -> None:
    """Every file carries the number of its order; another number in the kit given is found, and in a leaflet another
    buyer.
    """
    make(plan_of(ORDER), tmp_path, font_metrics(), ["strips", "spacing-guide", "leaflet"])
    assert [each.problems for each in checked(tmp_path)] == [()] * 4
    carried = {path.name: _inputs(path) for path in tmp_path.iterdir() if path.suffix == ".pdf"}
    assert all(b"1042" in inputs for inputs in carried.values())
    assert {name for name, inputs in carried.items() if b"Weir Studio" in inputs} == {"leaflet.pdf"}
    assert {b"Weir Studio" in path.read_bytes() for path in tmp_path.iterdir() if path.name != "leaflet.pdf"} == {False}
    other = kit_of({"order": {"number": "1042", "buyer": "Weir Mill"}})
    assert problem(tmp_path / "strips.pdf", other) == ""
    assert problem(tmp_path / "leaflet.pdf", other) != ""
    assert problem(tmp_path / "strips.pdf", kit_of({"order": {"number": "1043"}})) != ""


def _inputs(path: Path) -> bytes:
    """What a file carries of its kit; nothing of a manifest."""
    form = FORMATS.get(path.suffix[1:])
    return form.read(path.read_bytes()).about.inputs.encode() if form else b""
