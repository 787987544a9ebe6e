"""Files made to be dear: each is answered within 5 s of computing and 300 MB, in sentences."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import zlib
from collections.abc import Callable
from functools import cache
from pathlib import Path

import pytest
from kits import font_metrics, kit_of
from pdf_bytes import put_right, unpacked

from layout.plan import plan
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import write

ROOT = Path(__file__).parents[3]
SECONDS, MEGABYTES = 5.0, 300


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
    "an SVG of deep elements": ("strip-near.svg", lambda: svg("<path ", "<g>" * 190_000 + "<path ")),
    "an SVG of many attributes": (
        "strip-near.svg",
        lambda: svg("<path ", "<path " + " ".join(f'a{k}=""' for k in range(190_000)) + " "),
    ),
    "an SVG of many steps": ("strip-near.svg", lambda: svg('d="M', 'd="M0 0' + " L1 1" * 790_000 + " M")),
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
    "a list of many files": (
        "manifest.json",
        lambda: json.dumps({"files": [{"file": f"{k}.pdf", "sha256": ""} for k in range(18_000)]}).encode(),
    ),
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
MEASURED = (
    "import resource, sys; from click.testing import CliRunner; from templates_gen.screen.cli import main;"
    "got = CliRunner().invoke(main, sys.argv[1:]); used = resource.getrusage(resource.RUSAGE_SELF);"
    "peak = int(open('/proc/self/status').read().split('VmHWM:')[1].split()[0]);"  # ru_maxrss would count the parent's
    "print(got.exit_code, used.ru_utime + used.ru_stime, peak // 1024);"
    "print((got.stdout + got.stderr)[:2000])"
)


@pytest.mark.parametrize("name", FILES)
def test_a_file_made_to_be_dear_is_answered_soon(name: str, tmp_path: Path) -> None:
    """In a process of its own, start included: the seconds that it computes, the memory at its highest, its answer."""
    file, data = FILES[name]
    (tmp_path / file).write_bytes(data())
    asked = (
        ["plan", tmp_path / file] if file == "kit.toml" else ["check", tmp_path if "json" in file else tmp_path / file]
    )
    command = [sys.executable, "-c", MEASURED, *map(str, asked)]
    environment = {**os.environ, "PYTHONPATH": str(ROOT)}
    ran = subprocess.run(command, env=environment, capture_output=True, text=True, check=True)
    code, seconds, megabytes = ran.stdout.split("\n")[0].split()
    assert int(code) in (1, 2), ran.stdout
    assert float(seconds) < SECONDS
    assert float(megabytes) < MEGABYTES
    assert "Traceback" not in ran.stdout + ran.stderr
