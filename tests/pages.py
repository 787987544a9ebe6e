"""The pages that people read, README and docs, and what stands in them: commands with their output, tables, links."""

from __future__ import annotations

import re
import shlex
from collections.abc import Iterable, Iterator
from fractions import Fraction
from pathlib import Path

from click.testing import CliRunner

from layout.kit.box_fields import LEAST_CARD
from layout.kit.input import Input
from layout.kit.walk import MOST_ENTRIES
from layout.messages.english import ENGLISH
from layout.values.units import say_length
from templates_gen.screen.cli import main

ROOT = Path(__file__).parents[1]
README = ROOT / "README.md"
PAGES = [README, *sorted((ROOT / "docs").glob("*.md"))]
FILE = re.compile(r"^<!-- file (?P<name>[\w.-]+) -->\n```(?:toml|csv)\n(?P<text>.*?)^```$", re.MULTILINE | re.DOTALL)
"""A file that the commands of a page take, shown whole."""
BLOCK = re.compile(r"^```console\n\$ (?P<command>.*)\n(?P<output>(?:.*\n)*?)```$", re.MULTILINE)
LINK = re.compile(r"\]\((?P<target>[^)\s]+)\)")
HEADING = re.compile(r"^#+ (.*)$", re.MULTILINE)


class Runs:
    """Commands run in the current folder, each once; what it printed is kept."""

    def __init__(self) -> None:
        self.printed: dict[str, str] = {}

    def shown(self, line: str) -> str:
        """What a command line prints; it may end in `| head -n 5` or `| tail -n 5`."""
        command, _, part = line.partition(" | ")
        if command not in self.printed:
            self.printed[command] = _run(command)
        lines = self.printed[command].splitlines(keepends=True)
        if not part:
            return "".join(lines)
        which, option, number = part.split()
        assert option == "-n"
        return "".join({"head": lines[: int(number)], "tail": lines[-int(number) :]}[which])

    @property
    def commands(self) -> set[str]:
        """The names of the commands that were run."""
        return {shlex.split(command)[1] for command in self.printed}


def _run(command: str) -> str:
    name, *words = shlex.split(command)
    assert name == "templates-gen"
    result = CliRunner().invoke(main, words)
    assert result.exit_code == 0, result.output
    return result.stdout


def renewed(text: str, runs: Runs) -> str:
    """A page with what its commands print today."""
    return BLOCK.sub(lambda block: f"```console\n$ {block['command']}\n{runs.shown(block['command'])}```", text)


def table_between(text: str, name: str) -> re.Match[str]:
    """What stands between `<!-- name -->` and `<!-- end of name -->`, as group 2."""
    found = re.search(rf"(<!-- {name} -->\n)(.*?)(\n?<!-- end of {name} -->)", text, re.DOTALL)
    assert found is not None, name
    return found


def write_files(text: str, folder: Path) -> list[Path]:
    """Writes the files that a page shows into a folder."""
    paths = []
    for found in FILE.finditer(text):
        paths.append(folder / found["name"])
        paths[-1].write_text(found["text"], encoding="utf-8")
    return paths


def key_rows(inputs: Iterable[Input]) -> Iterator[str]:
    """A table of keys, row by row, from the inputs' own words; keys of one thread of several are those of a yarn."""
    yield from ("| key | what it says | limits | for example |", "|---|---|---|---|")
    for spec in inputs:
        if spec.key.count("[]") <= 1 and "threads[]" not in spec.key:
            said = ENGLISH.say(spec.help)
            said = said[0].upper() + said[1:] + _choices(spec) + _left_out(spec)
            yield f"| `{spec.key}` | {said} | {limits(spec)} | `{spec.example}` |"


def _choices(spec: Input) -> str:
    choices = " or ".join(f"`{choice}`" for choice in spec.choices)
    return f": {choices}" if choices and spec.kind in ("choice", "language", "names", "card") else ""


def _left_out(spec: Input) -> str:
    if spec.default is None:
        return ""
    return f"; left out: `{spec.default if isinstance(spec.default, str) else str(spec.default).lower()}`"


def limits(spec: Input) -> str:
    """Between what a value must lie, as far as its line in the table of inputs says so."""
    if spec.kind in ("whole", "amount", "mass"):
        unit = " g" if spec.kind == "mass" else ""
        return f"{_plain(spec.least)} to {_plain(spec.most)}{unit}"
    if spec.kind == "deviation":
        return f"{_plain(spec.least)} % to {_plain(spec.most)} %"
    if spec.kind == "card":
        wide, high = map(_plain, LEAST_CARD)
        return f"a card of at least {wide} x {high} mm that fits on its sheet"
    if spec.kind in ("text", "link"):
        return f"at most {spec.most} letters"
    if spec.kind == "lines":
        return f"at most {spec.most} lines"
    if spec.kind == "tables":
        return f"at most {min(spec.most, MOST_ENTRIES)}"
    if spec.low is not None and spec.high is not None:
        return f"{say_length(spec.low)} to {say_length(spec.high)}"
    return ""


def _plain(number: Fraction) -> str:
    return f"{float(number):,.10g}"


def broken_links(page: Path) -> list[str]:
    """The links of a page that lead to no file of the project, or to no heading of it."""
    targets = (found["target"] for found in LINK.finditer(page.read_text("utf-8")))
    return [target for target in targets if "://" not in target and not _leads(page, target)]


def _leads(page: Path, target: str) -> bool:
    file, _, anchor = target.partition("#")
    path = page.parent / file if file else page
    return path.exists() and (not anchor or anchor in _anchors(path.read_text("utf-8")))


def _anchors(text: str) -> set[str]:
    """The names by which a page's headings can be linked to, as code hosts make them."""
    return {re.sub(r"[^\w\- ]", "", heading.lower()).replace(" ", "-") for heading in HEADING.findall(text)}


def blocks_of(text: str, language: str) -> list[str]:
    """Every block of that language in a page."""
    return re.findall(rf"^```{language}\n(.*?)^```$", text, re.MULTILINE | re.DOTALL)
