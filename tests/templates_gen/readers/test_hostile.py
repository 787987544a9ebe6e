"""Files made to be dear: each is answered in sentences, within 300 MB, and soon.

How soon is asked in work of a fixed size, which the same process does beside its answer: so a slow machine, or one with
much else to do, changes nothing. No answer took more than half of the limit when it was set.
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
import zlib
from collections.abc import Callable, Iterator
from functools import cache
from pathlib import Path
from typing import Any

import pytest
from kits import font_metrics, kit_of
from pdf_bytes import put_right, unpacked

from layout.plan import plan
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import write

ROOT = Path(__file__).parents[3]
TIMES, MEGABYTES = 24, 300  # of the fixed work; the dearest takes 11, a right kit's plan 2


@cache
def made(file: str) -> bytes:
    """A file of a small kit."""
    return write(
        Outputs(plan(kit_of({"weaving.width": "6 cm", "frame.outer_width": "20 cm"})), font_metrics()).output(file)
    )


def pdf(old: str, new: str) -> bytes:
    """The PDF, unpacked, with other words in it."""
    text = unpacked(made("strip-near.pdf")).decode("latin-1")
    assert old in text
    return put_right(text.replace(old, new, 1))


def many_pages() -> bytes:
    """One page named three thousand times."""
    text = unpacked(made("strip-near.pdf")).decode("latin-1")
    begin = text.index("/Kids [ ") + 8
    kid = text[begin : text.index(" ]", begin)]
    text = text.replace(f"/Kids [ {kid} ]", f"/Kids [ {' '.join([kid] * 3000)} ]").replace("/Count 1", "/Count 3000")
    names = "\\[" if "\\[" in text else "["
    where = text.index('"sheets": ' + names) + len('"sheets": ' + names)
    return put_right(text[:where] + '"a", ' * 2999 + text[where:])


def packed_page(content: bytes) -> bytes:
    """A page of these instructions, packed as small as can be."""
    text = unpacked(made("strip-near.pdf")).decode("latin-1")
    begin = text.index("stream\n1 0 0 1 0 0 cm") + 7
    end = text.index("endstream", begin)
    head = text.rindex("/Length", 0, begin)
    return put_right(
        text[:head]
        + "/Filter /FlateDecode "
        + text[head:begin]
        + zlib.compress(content, 9).decode("latin-1")
        + text[end:]
    )


def svg(old: str, new: str) -> bytes:
    """The SVG with other words in it."""
    text = made("strip-near.svg").decode()
    assert old in text
    return text.replace(old, new, 1).encode()


def steps(count: int) -> bytes:
    """The SVG with a line of so many steps."""
    return svg('d="M', 'd="M0 0' + " L1 1" * count + " M")


def listing(count: int) -> bytes:
    """A list of so many files, of which none is there."""
    return json.dumps({"files": [{"file": f"{k}.pdf", "sha256": ""} for k in range(count)]}).encode()


FILES: dict[str, tuple[str, Callable[[], bytes]]] = {
    "a page named 3,000 times": ("strip-near.pdf", many_pages),
    "a page that unpacks without end": ("strip-near.pdf", lambda: packed_page(bytes(100_000_000))),
    "a page of many lines": ("strip-near.pdf", lambda: packed_page(b"0 0 m 9 9 l\n" * 490_000 + b"S\n")),
    "a page of many settings": ("strip-near.pdf", lambda: packed_page(b"0 g\n" * 1_400_000)),
    "a long list": ("strip-near.pdf", lambda: pdf("/MediaBox [ 0 0", "/MediaBox [ 0 0" + " 0" * 2_500_000)),
    "deep lists": ("strip-near.pdf", lambda: pdf("/MediaBox [ 0 0", "/MediaBox " + "[ " * 2_000_000)),
    "many objects": ("strip-near.pdf", lambda: pdf("1 0 obj", "9 0 obj\n0\nendobj\n" * 250_000 + "1 0 obj")),
    "a long string": ("strip-near.pdf", lambda: pdf("/Title (", "/Title (" + "\\(" * 2_500_000)),
    "an SVG of many elements": ("strip-near.svg", lambda: svg("<path ", "<g/>" * 3_900_000 + "<path ")),
    "an SVG of deep elements": ("strip-near.svg", lambda: svg("<path ", "<g>" * 49_000 + "<path ")),
    "an SVG of many attributes": (
        "strip-near.svg",
        lambda: svg("<path ", "<path " + " ".join(f'a{k}=""' for k in range(49_000)) + " "),
    ),
    "an SVG of many steps": ("strip-near.svg", lambda: steps(149_000)),
    "an SVG of far too many steps": ("strip-near.svg", lambda: steps(790_000)),
    "an SVG of many outlines": ("strip-near.svg", lambda: svg("<path ", '<path d="M0 0 L1 1"/>' * 49_000 + "<path ")),
    "an SVG of long words": (
        "strip-near.svg",
        lambda: svg("<path ", '<path d="M0 0l1 1 1' + " 1 1" * 790_000 + 'Z"/><path '),
    ),
    "an SVG of a long path": ("strip-near.svg", lambda: svg('d="M', 'd="' + "M0 0 " * 3_000_000 + "M")),
    "an SVG with a long title": ("strip-near.svg", lambda: svg("<title>", "<title>" + "x" * 15_000_000)),
    "an SVG with an entity that grows": (
        "strip-near.svg",
        lambda: svg("<svg ", '<!DOCTYPE a [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;">]><svg '),
    ),
    "deep inputs": ("strip-near.svg", lambda: svg("<desc>", "<desc>" + "[" * 5_000_000)),
    "a DXF of one value": ("strip-near.dxf", lambda: b"0\n" * 7_900_000),
    "a DXF of one line": ("strip-near.dxf", lambda: b"0" * 15_900_000),
    "a list of deep brackets": ("manifest.json", lambda: b"[" * 900_000),
    "a list of many files": ("manifest.json", lambda: listing(4_900)),
    "a list of far too many files": ("manifest.json", lambda: listing(18_000)),
    "a large list": ("manifest.json", lambda: b"[" + b"0," * 7_000_000),
    "a kit of deep brackets": ("kit.toml", lambda: b"a = " + b"[" * 1_900),
    "a kit of brackets on many lines": ("kit.toml", lambda: b"a = " + b"[\n" * 90_000),
    "a kit of one long key": ("kit.toml", lambda: b"a." * 95_000 + b"a = 1\n"),
    "a kit of many long keys": (
        "kit.toml",
        lambda: b"".join(b"a%d." % k + b"a." * 98 + b"a = 1\n" for k in range(900)),
    ),
    "a kit of one long number": ("kit.toml", lambda: b"version = " + b"1" * 190_000),
    "a kit of many tables": ("kit.toml", lambda: b"".join(b"[a%d]\n" % k for k in range(23_000))),
    "a kit of a large exponent": ("kit.toml", lambda: b'[sett]\ngiven = "1e999999999 ends/cm"\n'),
    "a kit of a long string": ("kit.toml", lambda: b'name = "' + b"x" * 190_000 + b'"'),
}
START = """
import json, os, sys
from click.testing import CliRunner
from templates_gen.files.kept import forget
from templates_gen.readers import svg
from templates_gen.screen.cli import main
from yardstick import times

def answer(arguments):
    if arguments[0] == "unbound":
        svg._MOST_STEPS = svg._MOST_NUMBERS = 10**9
        arguments = arguments[1:]
    ran = []
    taken = times(lambda: ran.append(CliRunner().invoke(main, arguments)))
    got = ran[0]
    own = open("/proc/self/status").read()  # ru_maxrss would count the parent's
    peak = int(own.split("VmHWM:")[1].split()[0]) // 1024
    said = got.stdout + got.stderr
    if not isinstance(got.exception, SystemExit | None):
        said = f"Traceback: {got.exception!r}"
    return {"code": got.exit_code, "times": taken, "megabytes": peak, "said": said[:2000]}

for arguments in json.loads(sys.argv[1]):  # loads what reads each format
    assert CliRunner().invoke(main, arguments).exit_code == 0, arguments
forget()
print("ready", flush=True)
for line in sys.stdin:
    if (child := os.fork()) == 0:
        print(json.dumps(answer(json.loads(line))), flush=True)
        os._exit(0)
    if status := os.waitpid(child, 0)[1]:
        print(json.dumps({"said": f"stopped with {status}"}), flush=True)
"""
"""A process that has loaded all that it needs, and answers each line of arguments in a process forked from it."""


@pytest.fixture(scope="module")
def asked(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Callable[[list[str]], dict[str, Any]]]:
    """Asks a command of a process of its own: its code, its time as a multiple of fixed work, its memory."""
    place = tmp_path_factory.mktemp("right")
    right = ("strip-near.pdf", "strip-near.svg")
    for file in right:
        (place / file).write_bytes(made(file))
    commands = [["check", *(str(place / file) for file in right)], ["plan"]]
    with subprocess.Popen(
        [sys.executable, "-c", START, json.dumps(commands)],
        env={**os.environ, "PYTHONPATH": f"{ROOT}{os.pathsep}{ROOT / 'tests'}"},
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
    ) as process:
        assert process.stdin is not None
        assert process.stdout is not None
        assert process.stdout.readline() == "ready\n", process.stdout.read()

        def ask(arguments: list[str]) -> dict[str, Any]:
            process.stdin.write(json.dumps(arguments) + "\n")  # type: ignore[union-attr]
            process.stdin.flush()  # type: ignore[union-attr]
            said: dict[str, Any] = json.loads(process.stdout.readline())  # type: ignore[union-attr]
            return said

        yield ask
        process.stdin.close()


@pytest.mark.parametrize("name", FILES)
def test_a_file_made_to_be_dear_is_answered_soon(
    name: str, tmp_path: Path, asked: Callable[[list[str]], dict[str, Any]]
) -> None:
    """In a process of its own: the time that it takes, the memory at its highest, its answer."""
    file, data = FILES[name]
    (tmp_path / file).write_bytes(data())
    command = (
        ["plan", tmp_path / file] if file == "kit.toml" else ["check", tmp_path if "json" in file else tmp_path / file]
    )
    answer = asked([str(word) for word in command])
    assert answer.get("code") in (1, 2), answer["said"]
    assert answer["times"] < TIMES
    assert answer["megabytes"] < MEGABYTES
    assert "Traceback" not in answer["said"]


def test_what_computes_or_keeps_too_much_is_measured(
    tmp_path: Path, asked: Callable[[list[str]], dict[str, Any]]
) -> None:
    """A right kit is planned with code 0 by little; without its bound, an answer takes more than there is."""
    answer = asked(["plan"])
    assert answer["code"] == 0
    assert 0 < answer["times"] < TIMES / 4
    assert 30 < answer["megabytes"] < MEGABYTES
    file, data = FILES["an SVG of far too many steps"]
    (tmp_path / file).write_bytes(data())
    without = asked(["unbound", "check", str(tmp_path / file)])
    assert without["code"] == 1
    assert without["times"] > TIMES
