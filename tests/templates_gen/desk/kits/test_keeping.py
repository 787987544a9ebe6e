"""Files of the start folder: listed, opened and kept without a word of anybody else being lost."""

from __future__ import annotations

import os
import re
import threading
import tomllib
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from layout.kit.kit import read_kit
from layout.values.errors import FieldError, LayoutError
from templates_gen.data import text_of
from templates_gen.desk.kits.folder import Kits, copied
from templates_gen.desk.kits.opened import Changed, DeskError, Opened
from templates_gen.desk.slip.fields import SPECS
from templates_gen.desk.slip.typed import example, typed_of, values_of
from templates_gen.disk.faults import FaultError
from templates_gen.inputs.kit_file import KitFileError, load
from templates_gen.inputs.range_file import load_range
from templates_gen.inputs.toml_literal import key_literal, literal
from templates_gen.inputs.toml_rewrite import alike
from templates_gen.languages.catalogues import catalogue_of
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.roles.desk_kits import DeskKits

SAMPLES = Path(__file__).parents[3] / "sample_kits"
RANGE = Path(__file__).parents[3] / "sample_ranges" / "weir-frames.toml"
EVERY = {path.name: path.read_bytes() for path in (*sorted(SAMPLES.glob("*.toml")), RANGE)} | {
    "demo.toml": text_of("demo.toml").encode(),
    "range.toml": text_of("range.toml").encode(),
    "stock.toml": text_of("stock.toml").encode(),
}
ENGLISH, GERMAN = catalogue_of("en"), catalogue_of("de")


def folder_of(tmp_path: Path, **files: bytes | str) -> Kits:
    """A start folder with these files, `_` for the dot before their ending."""
    for name, data in files.items():
        path = tmp_path / name.replace("_toml", ".toml")
        path.write_bytes(data.encode() if isinstance(data, str) else data)
    return Kits(tmp_path)


def only(kits: Kits, place: int = 0) -> Opened:
    """The kit at that place in the list."""
    return kits.open(kits.listed().kits[place].number)


def test_kits_ranges_and_stock_files_are_told_apart(tmp_path: Path) -> None:
    """Each kit of a range is one by itself; a TOML file of another program is none."""
    other = '[project]\nname = "x"\n'
    kits = folder_of(tmp_path, demo_toml=text_of("demo.toml"), weir_toml=text_of("range.toml"), pyproject_toml=other)
    (tmp_path / "stock.toml").write_text(text_of("stock.toml"))
    listed = kits.listed()
    assert [(each.file, each.opened and each.opened.number) for each in listed.kits] == [
        ("demo.toml", None), ("weir.toml", 1), ("weir.toml", 2), ("weir.toml", 3),
    ]  # fmt: skip
    assert [each.file for each in listed.stocks] == ["stock.toml"]
    assert kits.open(listed.stocks[0].number).typed["stock/name"] == "birch plywood 3 mm"


def test_only_plain_visible_files_are_listed(tmp_path: Path) -> None:
    """No link is followed, nothing hidden, no folder and no other ending listed; nothing is written or made."""
    outside = tmp_path / "outside"
    outside.mkdir()
    (outside / "secret.toml").write_text(text_of("demo.toml"))
    folder = tmp_path / "kits"
    folder.mkdir()
    (folder / "a.toml").symlink_to(outside / "secret.toml")
    (folder / "b.toml").mkdir()
    (folder / ".c.toml").write_text(text_of("demo.toml"))
    (folder / "d.txt").write_text(text_of("demo.toml"))
    os.mkfifo(folder / "e.toml")
    (folder / "f.TOML").write_text(text_of("demo.toml"))
    assert [each.file for each in Kits(folder).listed().kits] == ["f.TOML"]


def test_a_link_planted_after_the_list_is_not_followed(tmp_path: Path) -> None:
    """A file that becomes a link between list and opening is refused with a sentence, and nothing is written there."""
    secret = tmp_path / "secret"
    secret.write_text(text_of("demo.toml"))
    folder = tmp_path / "kits"
    folder.mkdir()
    kits = folder_of(folder, demo_toml=text_of("demo.toml"))
    opened = only(kits)
    (folder / "demo.toml").unlink()
    (folder / "demo.toml").symlink_to(secret)
    with pytest.raises(KitFileError, match=r"demo\.toml cannot be read"):
        kits.open(kits._numbers._known["demo.toml", 1])
    with pytest.raises(Changed):
        kits.keep(opened, {**opened.typed, "name": "Else"})
    with pytest.raises(FaultError):
        kits.keep(opened, {**opened.typed, "name": "Else"}, how="mine")
    assert secret.read_text() == text_of("demo.toml")


def test_a_file_that_cannot_be_read_has_its_sentence(tmp_path: Path) -> None:
    """Broken, too large, no text: each is an entry with what the command line says of it."""
    kits = folder_of(tmp_path, a_toml="name = ", b_toml=b"#" * 200_001, c_toml=b"name = '\xff'")
    listed = kits.listed()
    assert [each.opened for each in listed.kits] == [None] * 3
    for each in listed.kits:
        with pytest.raises(LayoutError) as refused:
            load_range(tmp_path / each.file)
        assert str(each.error) == str(refused.value).replace(f"{tmp_path}/", "")
        with pytest.raises(LayoutError, match=re.escape(each.file)):
            kits.open(each.number)


def test_at_most_fifty_files_are_read(tmp_path: Path) -> None:
    """The list ends somewhere, and says how many files it leaves out."""
    for number in range(53):
        (tmp_path / f"k{number:03}.toml").write_text('name = "a"\nyarns.warp = "b"\n')
    listed = Kits(tmp_path).listed()
    assert (len(listed.kits), listed.more) == (50, 3)


def test_no_number_but_one_of_the_list_opens_anything(tmp_path: Path) -> None:
    """Numbers that were never given are refused; given ones keep their file when others come and go."""
    kits = folder_of(tmp_path, b_toml=text_of("demo.toml"))
    number = kits.listed().kits[0].number
    (tmp_path / "a.toml").write_bytes(EVERY["heron-frame.toml"])
    assert kits.listed().kits[0].number != number
    assert kits.open(number).file == "b.toml"
    for wrong in (0, -1, 99, 10**30):
        with pytest.raises(DeskError):
            kits.open(wrong)
    (tmp_path / "b.toml").unlink()
    with pytest.raises(KitFileError):
        kits.open(number)


@pytest.mark.parametrize("name", EVERY)
def test_nothing_changed_leaves_every_byte(tmp_path: Path, name: str) -> None:
    """Keeping what was opened writes nothing, with line ends of another system and a byte order mark too."""
    for data in (EVERY[name], b"\xef\xbb\xbf" + EVERY[name].replace(b"\n", b"\r\n")):
        path = tmp_path / name
        path.write_bytes(data)
        listed = Kits(tmp_path).listed()
        for each in (*listed.kits, *listed.stocks):
            assert each.opened
            before = path.stat()
            assert Kits(tmp_path).keep(each.opened, dict(each.opened.typed)) == each.opened
            assert (path.stat().st_mtime_ns, path.stat().st_ino) == (before.st_mtime_ns, before.st_ino)
        assert path.read_bytes() == data


def _examples() -> dict[str, str]:
    """A text that can be typed into each field that is in no list."""
    found = {}
    for name, spec in SPECS.items():
        if "[]" not in name and spec.kind not in ("tables", "version"):
            value = tomllib.loads(f"x = {spec.example}")["x"]
            found[name] = "yes" if value is True else "\n".join(value) if isinstance(value, list) else str(value)
    return found


EXAMPLES = _examples()


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(data=st.data())
def test_whatever_is_changed_the_file_says_it_and_keeps_the_rest(tmp_path: Path, data: st.DataObject) -> None:
    """Any kit, any change: the file says the slip, its remarks stay in order, other kits stay, and once is enough."""
    name = data.draw(st.sampled_from(sorted(EVERY)))
    text = EVERY[name].decode()
    if data.draw(st.booleans()):
        text = "\ufeff" + text.replace("\n", "\r\n")
    path = tmp_path / name
    path.write_bytes(text.encode())
    kits = Kits(tmp_path)
    listed = kits.listed()
    entry = data.draw(st.sampled_from([*listed.kits, *listed.stocks]))
    assert entry.opened
    prefix = "stock/" if entry.opened.kind == "stock" else ""
    typed = _typed(data, dict(entry.opened.typed), prefix)
    kept = kits.keep(entry.opened, typed)
    assert values_of(kept.typed, prefix) == values_of(typed, prefix)
    after = path.read_bytes().decode()
    assert _remarks(text) == [line for line in _remarks(after) if line in _remarks(text)]
    assert after.startswith("\ufeff") == text.startswith("\ufeff")
    assert ("\r\n" in after, "\n" in after.replace("\r\n", "")) == ("\r\n" in text, "\n" in text.replace("\r\n", ""))
    others = [each.opened for each in kits.listed().kits if each.number != entry.number]
    assert [_own(each) for each in others] == [_own(each.opened) for each in listed.kits if each.number != entry.number]
    assert kits.keep(kept, kept.typed) == kept
    assert path.read_bytes().decode() == after
    path.unlink()


def _typed(data: st.DataObject, typed: dict[str, str], prefix: str) -> dict[str, str]:
    known = sorted(each for each in EXAMPLES if each.startswith("stock/") == bool(prefix))
    for _ in range(data.draw(st.integers(1, 5))):
        if data.draw(st.booleans()):
            field = data.draw(st.sampled_from(known))
            typed[field] = data.draw(st.sampled_from([EXAMPLES[field], "", "as I say", "12", 'a "b" \\ c']))
        else:
            field = data.draw(st.sampled_from(sorted(each for each in typed if each not in ("version", "name"))))
            typed[field] = data.draw(st.sampled_from(["", "7", "it's 3 cm"]))
    return typed | {f"{prefix}name": typed[f"{prefix}name"] or "x"}


def _remarks(text: str) -> list[str]:
    """Remarks on lines of their own, outside lists."""
    return [line.strip() for line in text.split("\n") if line.startswith("#")]


def _own(opened: Opened | None) -> dict[str, str]:
    """What a kit says without what stands above the kits alone."""
    typed = opened.typed if opened else {}
    return {key: text for key, text in typed.items() if not key.startswith(("run/buy", "run/class"))}


def test_changed_elsewhere_is_asked(tmp_path: Path) -> None:
    """Where an editor changed the file meanwhile, nothing is written until one is chosen: mine, theirs, a new file."""
    kits = folder_of(tmp_path, demo_toml=text_of("demo.toml"))
    opened = only(kits)
    mine = {**opened.typed, "frame.outer_width": "41 cm"}
    theirs = text_of("demo.toml").replace("# The warp", "# Their remark.\n# The warp").replace("55 cm", "56 cm")
    (tmp_path / "demo.toml").write_text("# Theirs.\n" + theirs)
    with pytest.raises(Changed, match=r"demo\.toml was changed elsewhere") as asked:
        kits.keep(opened, mine)
    assert (tmp_path / "demo.toml").read_text() == "# Theirs.\n" + theirs
    assert not asked.value.gone
    assert kits.again(opened).typed["frame.outer_height"] == "56 cm"
    new = kits.keep(opened, mine, how="new")
    assert new.file == "willow-frame-small.toml"
    assert (tmp_path / "demo.toml").read_text() == "# Theirs.\n" + theirs
    kept = kits.keep(opened, mine, how="mine")
    assert (kept.typed["frame.outer_width"], kept.typed["frame.outer_height"]) == ("41 cm", "55 cm")
    assert (tmp_path / "demo.toml").read_text().startswith("# Theirs.\n")


def test_a_file_that_is_gone_is_asked(tmp_path: Path) -> None:
    """A file that somebody took away is not made again in silence."""
    kits = folder_of(tmp_path, demo_toml=text_of("demo.toml"))
    opened = only(kits)
    (tmp_path / "demo.toml").unlink()
    with pytest.raises(Changed, match="no longer in the folder") as asked:
        kits.keep(opened, {**opened.typed, "name": "Weir"})
    assert asked.value.gone
    with pytest.raises(Changed):
        kits.again(opened)
    assert list(tmp_path.glob("*.toml")) == []
    assert kits.keep(opened, {**opened.typed, "name": "Weir"}, how="mine").file == "demo.toml"


def test_two_kits_of_a_range_are_kept_one_after_the_other(tmp_path: Path) -> None:
    """What the desk itself wrote of another kit is no change elsewhere; of the same kit it is."""
    kits = folder_of(tmp_path, weir_toml=text_of("range.toml"))
    first, second, third = kits.open_all(kits.listed().kits[0].number)
    kits.keep(first, {**first.typed, "frame.outer_width": "31 cm"})
    kept = kits.keep(second, {**second.typed, "frame.outer_width": "41 cm"})
    with pytest.raises(Changed):
        kits.keep(first, {**first.typed, "frame.outer_width": "32 cm"})
    kits.keep(kept, {**kept.typed, "frame.bar_diameter": "16 mm"}, shared=True)
    with pytest.raises(Changed):
        kits.keep(third, {**third.typed, "frame.outer_width": "57 cm"})
    found = load_range(tmp_path / "weir.toml")
    assert [float(each.kit.frame.outer_width.mm) for each in found.kits] == [310, 410, 560]
    assert {str(each.values["frame"]["bar_diameter"]) for each in found.kits} == {"16 mm"}  # type: ignore[index]


def test_a_shared_change_leaves_own_values_of_others(tmp_path: Path) -> None:
    """What is to be shared goes above the kits, and out of the table of the kit that said it."""
    kits = folder_of(tmp_path, weir_toml=text_of("range.toml"))
    first, *_ = kits.open_all(kits.listed().kits[0].number)
    kits.keep(first, {**first.typed, "weaving.draw_in": "3 %", "frame.outer_width": "33 cm"}, shared=True)
    values = tomllib.loads((tmp_path / "weir.toml").read_text())
    assert values["weaving"]["draw_in"] == "3 %"
    assert values["frame"]["outer_width"] == "33 cm"
    assert [each["frame"].get("outer_width") for each in values["kits"]] == [None, "40 cm", "56 cm"]
    assert values["kits"][2]["without"] == ["weaving.draw_in"]


def test_a_kit_goes_without_what_is_shared(tmp_path: Path) -> None:
    """A line that is emptied is named in the kit's own list; other kits keep it."""
    kits = folder_of(tmp_path, weir_toml=text_of("range.toml"))
    first, *_ = kits.open_all(kits.listed().kits[0].number)
    without = {key: text for key, text in first.typed.items() if not key.startswith(("frame.margin", "weft.beads"))}
    kept = kits.keep(first, without)
    values = tomllib.loads((tmp_path / "weir.toml").read_text())
    assert sorted(values["kits"][0]["without"]) == ["frame.margin", "weft.beads"]
    assert "frame.margin" not in kept.typed
    again = kits.keep(kept, {**kept.typed, "frame.margin": "12 mm"})
    assert again.typed["frame.margin"] == "12 mm"
    assert load_range(tmp_path / "weir.toml").kits[0].values["frame"]["margin"] == "12 mm"  # type: ignore[index]


def test_what_is_of_a_run_goes_where_the_file_has_it(tmp_path: Path) -> None:
    """Copies and terms of sale go into the table of the kit, packs and the class above all; other kits keep theirs."""
    kits = folder_of(tmp_path, weir_toml=text_of("range.toml"))
    first, *_ = kits.open_all(kits.listed().kits[0].number)
    assert (first.typed["run/copies"], first.typed["run/buy.warp.price"]) == ("10", "14.5")
    new = {"run/copies": "3", "run/sell.margin": "50 %", "run/buy.warp.price": "15", "run/class.people": "12"}
    kept = kits.keep(first, {**first.typed, **new})
    assert {name: kept.typed[name] for name in new} == new
    values = tomllib.loads((tmp_path / "weir.toml").read_text())
    assert (values["buy"]["warp"]["price"], values["class"]["people"], values["copies"]) == (15, 12, 10)
    assert values["kits"][0]["copies"] == 3
    assert values["kits"][0]["sell"] == {"margin": "50 %"}
    found = load_range(tmp_path / "weir.toml")
    assert [each.copies for each in found.kits] == [3, 10, 4]
    assert [float(each.shop.margin or 0) for each in found.kits] == [0.5, 0.4, 0.4]


def test_a_new_file_has_the_remarks_of_the_starter(tmp_path: Path) -> None:
    """What was not typed is still shown, in remarks; the file says what was typed and nothing else."""
    typed = {
        key: text for key, text in example().items() if key.partition(".")[0] in ("name", "sett", "frame", "yarns")
    }
    typed |= {"name": "Weir frame", "weaving.height": "34 cm", "weaving.shrinkage": "4 %"}
    kept = Kits(tmp_path).keep(Opened("kit"), typed)
    text = (tmp_path / "weir-frame.toml").read_text()
    assert kept.file == "weir-frame.toml"
    assert alike(tomllib.loads(text), values_of(typed))
    assert load(tmp_path / kept.file) == read_kit(values_of(typed), metrics())
    starter = text_of("demo.toml").split("\n")
    assert [line for line in starter if line.startswith("#")] == [
        line for line in text.split("\n") if line in starter and line.startswith("#")
    ]
    assert "# plies = 30" in text


def test_a_new_stock_file(tmp_path: Path) -> None:
    """A stock that no file holds yet gets one, called after it."""
    typed = {
        **typed_of(tomllib.loads(text_of("stock.toml")), "stock/"),
        "stock/name": "card",
        "stock/thickness": "1 mm",
    }
    kept = Kits(tmp_path).keep(Opened("stock"), typed)
    assert kept.file == "card.toml"
    assert tomllib.loads((tmp_path / "card.toml").read_text())["thickness"] == "1 mm"


@pytest.mark.parametrize(
    ("name", "file"),
    [
        ("Willow frame, small", "willow-frame-small.toml"),
        ("../../etc/passwd x".replace("/", " "), "etc-passwd-x.toml"),
        ("a" * 90, "a" * 60 + ".toml"),
        ("Été à l’eau", "été-à-l-eau.toml"),
    ],
)
def test_names_of_new_files(tmp_path: Path, name: str, file: str) -> None:
    """A new file is called after its kit in letters, digits and hyphens, 60 at most, and never lies over another."""
    typed = {**example(), "name": name}
    if len(name) > 60:
        with pytest.raises(FieldError):
            Kits(tmp_path).keep(Opened("kit"), typed)
        return
    assert Kits(tmp_path).keep(Opened("kit"), typed).file == file
    second = Kits(tmp_path).keep(Opened("kit"), {**typed, "frame.margin": "11 mm"}).file
    assert second == file.replace(".toml", "-2.toml")
    assert (tmp_path / file).read_text() != (tmp_path / second).read_text()


@pytest.mark.parametrize("name", ["", "con", "NUL.x", "../x", "a\\b", "...", "—"])
def test_a_name_that_names_no_file_is_refused_at_the_name(tmp_path: Path, name: str) -> None:
    """Reserved names, paths and names without a letter are refused at the line of the name; nothing is written."""
    with pytest.raises(FieldError) as refused:
        Kits(tmp_path).keep(Opened("kit"), {**example(), "name": name})
    assert refused.value.field == "name"
    assert list(tmp_path.iterdir()) == []


def test_an_upload_is_read_from_its_bytes_alone(tmp_path: Path) -> None:
    """Its name is shown, never used; what cannot be read has the sentence of the command line."""
    kits = Kits(tmp_path)
    (opened,) = kits.upload("C:\\secret\\../../etc/heron.toml", EVERY["heron-frame.toml"])
    assert (opened.file, opened.name) == ("", "heron.toml")
    assert len(kits.upload("weir.toml", EVERY["range.toml"])) == 3
    for data in (
        b"\x00\x01\xff",
        b"name = ",
        b"#" * 300_000,
        b"[project]\n",
        b"a." * 5000 + b"a = 1",
        b"a = " + b"[" * 9999,
    ):
        with pytest.raises(LayoutError) as refused:
            kits.upload("<b>\x1b[31m.toml", data)
        assert "\x1b" not in str(refused.value)
        assert "\n" not in str(refused.value) or "name = " in str(refused.value)
    assert list(tmp_path.iterdir()) == []
    kept = kits.keep(opened, {**opened.typed, "frame.outer_width": "12 in"})
    assert kept.file == "heron-frame.toml"
    assert (tmp_path / kept.file).read_text().count("\n") == EVERY["heron-frame.toml"].count(b"\n")


def test_a_range_that_is_sent_is_kept_as_one(tmp_path: Path) -> None:
    """The first of its kits that is kept brings the whole file into the folder; the others are kept in it."""
    kits = Kits(tmp_path)
    first, second, third = kits.upload("weir.toml", b"\xef\xbb\xbf" + EVERY["range.toml"])
    assert kits.keep(second, {**second.typed, "frame.outer_width": "41 cm"}).number == 2
    kept = kits.keep(first, {**first.typed, "frame.outer_width": "31 cm"})
    assert [path.name for path in tmp_path.iterdir()] == ["weir-frames.toml"]
    assert [str(each.kit.frame.outer_width.mm) for each in load_range(tmp_path / kept.file).kits] == [
        "310",
        "410",
        "560",
    ]
    text = (tmp_path / kept.file).read_bytes()
    assert text == b"\xef\xbb\xbf" + EVERY["range.toml"].replace(b'"30 cm", outer', b'"31 cm", outer').replace(
        b'"40 cm", outer', b'"41 cm", outer'
    )
    assert kits.keep(third, third.typed, how="new").file == "weir-frame-large.toml"


def test_a_copy_is_called_as_one(tmp_path: Path) -> None:
    """It has another name, in the language of the page, no file yet, and the remarks of what it was copied from."""
    kits = folder_of(tmp_path, demo_toml=text_of("demo.toml"))
    opened = only(kits)
    copy, typed = copied(opened, opened.typed, ENGLISH)
    assert typed["name"] == "Willow frame, small, copy"
    again = copied(opened, opened.typed, ENGLISH, frozenset({typed["name"]}))[1]["name"]
    assert again == "Willow frame, small, copy 2"
    long = copied(opened, {"name": "W" * 40}, ENGLISH)[1]["name"]
    assert len(long) == 40
    kept = kits.keep(copy, {**typed, "frame.outer_height": "65 cm"})
    assert kept.file == "willow-frame-small-copy.toml"
    before, after = ((tmp_path / name).read_text().split("\n") for name in ("demo.toml", kept.file))
    assert sum(one != other for one, other in zip(before, after, strict=True)) == 2


def test_a_file_that_cannot_be_replaced_stays(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Where the disk refuses, one sentence names the file, and it is as it was."""
    kits = folder_of(tmp_path, demo_toml=text_of("demo.toml"))
    opened = only(kits)

    def refused(*_: object) -> None:
        raise PermissionError(13, "open elsewhere")

    monkeypatch.setattr(Path, "replace", refused)
    with pytest.raises(FaultError, match=r"could not replace demo\.toml: .*nothing was changed there$"):
        kits.keep(opened, {**opened.typed, "name": "Weir"})
    assert [path.name for path in tmp_path.iterdir()] == ["demo.toml"]
    assert (tmp_path / "demo.toml").read_text() == text_of("demo.toml")


def test_what_many_threads_keep_is_all_there(tmp_path: Path) -> None:
    """Kits of one range that are kept at once do not lose each other's changes."""
    kits = folder_of(tmp_path, weir_toml=text_of("range.toml"))
    every = kits.open_all(kits.listed().kits[0].number)

    def keep(opened: Opened) -> None:
        kits.keep(opened, {**opened.typed, "weaving.hem": f"{opened.number} cm"})

    threads = [threading.Thread(target=keep, args=(each,)) for each in every]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    values = tomllib.loads((tmp_path / "weir.toml").read_text())
    assert [each["weaving"]["hem"] for each in values["kits"]] == ["1 cm", "2 cm", "3 cm"]


def test_refusals_are_said_in_the_language_of_the_page() -> None:
    """A refusal of the desk is said again by the catalogue of another language."""
    error = Changed("a.toml", gone=False)
    assert str(error) == ENGLISH.say(DeskKits.CHANGED, file="a.toml")
    assert error.said(GERMAN) == GERMAN.say(DeskKits.CHANGED, file="a.toml")


_odd = st.recursive(
    st.one_of(
        st.integers(), st.floats(), st.booleans(), st.sampled_from(["", "40 cm", "flat ends", "none", "\n", "é"])
    ),
    lambda inner: st.one_of(
        st.lists(inner, max_size=3),
        st.dictionaries(st.sampled_from(["name", "pairs", "ends", "x y", "count"]), inner, max_size=3),
    ),
    max_leaves=6,
)
_TOPS = ["name", "frame", "sett", "weft", "kits", "copies", "buy", "thickness", "sheet", "version", "without", "é"]


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(values=st.dictionaries(st.sampled_from(_TOPS), _odd, max_size=6), width=st.sampled_from(["", "41 cm", "\x7f"]))
def test_whatever_a_file_says_it_is_listed_opened_and_kept(
    tmp_path: Path, values: dict[str, object], width: str
) -> None:
    """Tables where texts belong, lists of anything: never another error than a sentence, and no change is half made."""
    text = "\n".join(f"{key_literal(key)} = {literal(value)}" for key, value in values.items())
    path = tmp_path / "odd.toml"
    path.write_text(text)
    kits = Kits(tmp_path)
    listed = kits.listed()
    for each in (*listed.kits, *listed.stocks):
        if each.opened is None:
            continue
        typed = {**each.opened.typed, "frame.outer_width": width, "stock/thickness": width, "name": "Weir"}
        before = path.read_text()
        try:
            kept = kits.keep(kits.open(each.number), typed)
        except DeskError:
            assert path.read_text() == before
        else:
            prefix = "stock/" if each.opened.kind == "stock" else ""
            assert alike(values_of(kept.typed, prefix), values_of(typed, prefix))


def test_a_folder_that_is_not_there_is_said(tmp_path: Path) -> None:
    """One sentence, and it names no path."""
    with pytest.raises(DeskError) as refused:
        Kits(tmp_path / "none").listed()
    assert str(refused.value) == "The folder of kits cannot be read: that place does not exist."
