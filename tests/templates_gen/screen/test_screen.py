"""Nothing that was read reaches the screen raw: a terminal shows it and does not act on it."""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from functools import cache
from pathlib import Path

import pytest
from click.testing import CliRunner
from cut_plates import ABOUT, OPERATIONS, plate
from kits import font_metrics, kit_of
from pdf_bytes import put_right, unpacked

from layout.messages.roles import Entry
from layout.plan import plan
from layout.values.errors import FieldError, FieldErrors, ascii_safe, shown, shown_path, shown_sentences
from templates_gen.document import About
from templates_gen.files.formats import FORMATS
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import write
from templates_gen.inputs.kit_file import write_starter
from templates_gen.screen.cli import main

ACTS = {
    "escape": "\x1b[2J\x1b]0;x\x07",
    "carriage return": "right\rWRONG",
    "right to left": "\u202eabc\u202c",
    "isolates": "\u2066abc\u2069",
    "bell and delete": "\x07\x7f",
    "an 8-bit escape": "\x9b2J",
    "a line that is none": "a\u2028b\u0085c\x0bd",
    "endless": "x" * 100_000,
}
every = pytest.mark.parametrize("acts", ACTS.values(), ids=ACTS)


def clean(*arguments: object, code: int | None = None) -> str:
    """What a command says, after a look that a terminal could show it: no control, no direction, nothing endless."""
    result = CliRunner().invoke(main, [str(each) for each in arguments])
    assert result.exception is None or isinstance(result.exception, SystemExit), repr(result.exception)
    said = result.stdout + result.stderr
    assert "Traceback" not in said
    raw = {letter for letter in said if not letter.isprintable() and letter != "\n"}
    assert not raw, (raw, said[:500])
    assert max(map(len, said.split("\n"))) < 2000, said[:500]
    assert len(said) < 50_000
    assert result.exit_code == code if code is not None else result.exit_code in (0, 1, 2)
    return said


@cache
def made(file: str) -> bytes:
    """A file of a small kit."""
    kit = kit_of({"weaving.width": "6 cm", "frame.outer_width": "20 cm"})
    return write(Outputs(plan(kit), font_metrics()).output(file))


# --- kits and stocks


def quoted(text: str) -> str:
    """A TOML string of these letters: control characters are written as TOML has them."""
    return '"' + "".join(each if each.isprintable() else f"\\u{ord(each):04x}" for each in text) + '"'


@every
def test_values_and_keys_of_a_kit(acts: str, tmp_path: Path) -> None:
    """Any value of the starter kit replaced, each in its turn, and keys and tables that are not known."""
    write_starter(starter := tmp_path / "starter.toml")
    lines = starter.read_text().split("\n")
    places = [k for k, line in enumerate(lines) if re.match(r"[a-z_]+ *= ", line)]
    assert len(places) > 10
    kit = tmp_path / "kit.toml"
    for at in places[::3]:
        key = lines[at].partition("=")[0]
        kit.write_text("\n".join([*lines[:at], f"{key}= {quoted(acts)}", *lines[at + 1 :]]))
        clean("plan", kit)
    for line in (f"{quoted(acts)} = 1", f"[{quoted(acts)}]", f"{quoted(acts)}.{quoted(acts)} = 2"):
        kit.write_text("\n".join([line, *lines]))
        clean("plan", kit, code=2)


@every
def test_bytes_of_a_kit_that_are_no_toml(acts: str, tmp_path: Path) -> None:
    """The same letters raw: in a value, a key, a remark, alone."""
    kit = tmp_path / "kit.toml"
    for text in (acts, f'name = "{acts}"', f"{acts} = 1", f"# {acts}\nx", f"name = {acts}"):
        kit.write_bytes(text.encode())
        clean("plan", kit, code=2)
        clean("make", tmp_path / "absent.toml", "--stock", kit, code=2)


def test_a_kit_of_many_unknown_keys_is_not_endless(tmp_path: Path) -> None:
    """A few of so many complaints."""
    kit = tmp_path / "kit.toml"
    kit.write_text("\n".join(f"unknown_{k} = 1" for k in range(5000)))
    assert 1 < len(clean("plan", kit, code=2).split("\n")) < 110


# --- names and arguments


@every
def test_names_of_files_and_arguments(acts: str, tmp_path: Path) -> None:
    """Paths that are not there, options and commands that are not known, and values of options."""
    for arguments in (
        ["plan", acts],
        ["check", tmp_path / acts],
        ["make", acts],
        ["make", "--only", acts],
        ["make", "--stock", acts],
        ["check", "--kit", acts, tmp_path],
        ["sett", "--count", acts, "--over", "2 in"],
        ["sett", "--count", "11", "--over", acts],
        ["yarn", acts],
        ["yarn", "8 Ne", "--fibre", acts],
        ["trial-cut", "--hole", acts, "--part", "1.00"],
        ["trial-cut", "--hole", "20.20", "--part", "19.60", "--stock", acts],
        [acts],
        [f"--{acts}"],
        ["plan", f"--{acts}"],
        ["plan", f"--json={acts}"],
        ["plan", "kit.toml", acts],
        ["new", tmp_path / acts / "kit.toml"],
    ):
        clean(*arguments)


@pytest.mark.parametrize("acts", [name for name in ACTS if name != "endless"])
def test_names_of_files_that_are_there(acts: str, tmp_path: Path) -> None:
    """A starter, a sound file and a folder of such a name."""
    folder = tmp_path / ACTS[acts]
    folder.mkdir()
    clean("new", folder / f"{ACTS[acts]}.toml", code=0)
    (folder / f"{ACTS[acts]}.svg").write_bytes(made("strip-near.svg"))
    assert "right" in clean("check", folder / f"{ACTS[acts]}.svg", code=0)
    clean("check", folder, code=1)
    (folder / f"no.{ACTS[acts]}").write_bytes(b"")
    clean("check", folder / f"no.{ACTS[acts]}")
    said = clean("check", "--json", folder, folder / f"{ACTS[acts]}.svg", code=1)
    names = [each["file"] for each in json.loads(said)]
    assert len(names) >= 2


# --- finished files


@every
def test_a_manifest(acts: str, tmp_path: Path) -> None:
    """Names, digests and kinds in a folder's list."""
    for files in (
        [{"file": acts, "sha256": "0", "parts": [acts]}],
        [{"file": "strip-near.svg", "sha256": acts, "parts": [acts]}],
        [{acts: acts}],
        acts,
    ):
        (tmp_path / "strip-near.svg").write_bytes(made("strip-near.svg"))
        (tmp_path / "manifest.json").write_text(json.dumps({"files": files, "whole": True, acts: acts}))
        clean("check", tmp_path, code=1)


PLACES: dict[str, Callable[[str, str], str]] = {
    "a key of the page": lambda text, acts: text.replace("/MediaBox", f"/{acts} /MediaBox", 1),
    "an escaped key": lambda text, acts: text.replace("/MediaBox", f"/#1b{acts[:3]} /MediaBox", 1),
    "the count of pages": lambda text, acts: text.replace("/Count 1", f"/Count ({acts})", 1),
    "a packing": lambda text, acts: re.sub(r"/Length (?=\d+\n?>>)", f"/Filter ({acts}) /Length ", text, count=1),
    "a packing in a list": lambda text, acts: re.sub(r"/Length ", f"/Filter [ ({acts}) ] /Length ", text, count=1),
    "the page box": lambda text, acts: text.replace("/MediaBox [ 0 0", f"/MediaBox [ ({acts}) 0", 1),
    "the font's name": lambda text, acts: re.sub(r"/BaseFont /[^ \n]+", f"/BaseFont ({acts})", text, count=1),
    "the keywords": lambda text, acts: text.replace("/Keywords (", f"/Keywords ({acts}", 1),
    "the title": lambda text, acts: re.sub(r"/Title \(.*?\) ?/", f"/Title ({acts}) /", text, count=1, flags=re.DOTALL),
    "an operator": lambda text, acts: text.replace("\nBT\n", f"\n{acts}\nBT\n", 1),
    "words": lambda text, acts: text.replace(") Tj", f"{acts}) Tj", 1),
    "a font of the page": lambda text, acts: text.replace("/F1+0 7", f"/{acts} 7", 1),
    "the trailer": lambda text, acts: text.replace("/Root", f"/{acts} 1 /Root", 1),
}


@every
@pytest.mark.parametrize("place", PLACES)
def test_a_pdf(place: str, acts: str, tmp_path: Path) -> None:
    """Every place of a PDF from which something could be said."""
    text = unpacked(made("strip-near.pdf")).decode("latin-1")
    said = acts.encode("utf-8").decode("latin-1")
    changed = PLACES[place](text, said)
    assert changed != text
    (tmp_path / "strip-near.pdf").write_bytes(put_right(changed))
    clean("check", tmp_path / "strip-near.pdf", code=1)


@every
def test_an_svg(acts: str, tmp_path: Path) -> None:
    """Every place of an SVG: names, attributes, paths, title, inputs, elements; raw and as character references."""
    text = made("strip-near.svg").decode()
    path = tmp_path / "strip-near.svg"
    numbers = "".join(each if each.isprintable() else f"&#{ord(each)};" for each in acts)
    for said in (acts, numbers):
        for old, new in (
            ('id="', f'id="{said}'),
            (' d="M', f' d="{said}M'),
            ('width="', f'width="{said}'),
            ("<title>", f"<title>{said}"),
            ("<desc>", f"<desc>{said}"),
            ("<path ", f"<{said} "),
            ("<path ", f'<path a="{said}" '),
            ("<path ", f"<path {said}='1' "),
            ("<path ", f"{said}<path "),
        ):
            assert old in text
            path.write_bytes(text.replace(old, new, 1).encode())
            clean("check", path, code=1)


@every
def test_a_dxf(acts: str, tmp_path: Path) -> None:
    """Every fifth value and code of a DXF, each in its turn."""
    data = FORMATS["dxf"].write([plate()], ABOUT).decode()
    path = tmp_path / "plate.dxf"
    lines = data.split("\n")
    for at in [*range(60), *range(60, len(lines), 97)]:
        path.write_bytes("\n".join([*lines[:at], acts, *lines[at + 1 :]]).encode())
        clean("check", path, code=1)


@every
@pytest.mark.parametrize("kind", FORMATS)
def test_inputs_that_a_file_carries(kind: str, acts: str, tmp_path: Path) -> None:
    """The file's own name, its kit's keys and values."""
    from layout.drawing.sheet import Sheet

    for inputs in (
        {"file": acts, "kit": json.loads(json.dumps({"version": 1}))},
        {"file": "kit.pdf", "kit": {acts: acts}},
        {"file": "kit.pdf", "kit": {"version": 1, "name": acts, "frame": {"ends": acts, acts: 1}, "paper": acts}},
        {"file": "kit.pdf", "kit": {}, "stock": {acts: acts}},
        acts,
    ):
        text = json.dumps(inputs)
        sheet, operations = (plate(), OPERATIONS) if kind == "dxf" else (Sheet("any", 50, 50, ()), None)
        path = tmp_path / f"any.{kind}"
        path.write_bytes(FORMATS[kind].write([sheet], About("any", text, operations)))
        clean("check", path, code=1)


# --- the functions


@every
def test_what_stands_in_a_sentence(acts: str) -> None:
    """One line of what can be seen, never longer than a line or two."""
    for said, most in (
        (shown(acts), 60),
        (shown_path(acts), 241),
        (shown_sentences(acts), 1000),
        (ascii_safe(acts), None),
    ):
        assert said.isprintable()
        assert most is None or len(said) <= most
    assert shown_path("a" * 300 + "/kit.pdf").endswith("/kit.pdf")


def test_sentences_stay_apart_and_whole() -> None:
    """Lines of a refusal stay lines; a hundred are shown and the rest counted."""
    errors = FieldErrors(FieldError(f"a{k}", Entry.COUNT, "c", "d") for k in range(130))
    lines = shown_sentences(str(errors)).split("\n")
    assert lines[0] == "a0: needs a count above zero, got c; for example d"
    assert lines[99:] == ["a99: needs a count above zero, got c; for example d", "and 30 more lines like these"]
