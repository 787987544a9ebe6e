"""The pages that people read, README and docs, and what stands in them: commands with their output, tables, links."""

from __future__ import annotations

import re
import shlex
from collections.abc import Iterable, Iterator
from pathlib import Path

from click.testing import CliRunner

from layout.kit.input import Input
from layout.messages.english import ENGLISH
from templates_gen.screen.cli import main

ROOT = Path(__file__).parents[1]
README = ROOT / "README.md"
PAGES = [README, *sorted((ROOT / "docs").glob("*.md"))]
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


def key_rows(inputs: Iterable[Input]) -> Iterator[str]:
    """A table of keys, row by row, from the inputs' own words; keys of one thread of several are those of a yarn."""
    yield from ("| key | what it says | for example |", "|---|---|---|")
    for spec in inputs:
        if spec.key.count("[]") <= 1 and "threads[]" not in spec.key:
            left_out = f"; left out: `{spec.default}`" if isinstance(spec.default, str) else ""
            choices = " or ".join(f"`{choice}`" for choice in spec.choices)
            listed = f": {choices}" if choices and spec.kind in ("choice", "language") else ""
            said = ENGLISH.say(spec.help)
            said = said[0].upper() + said[1:] + listed
            yield f"| `{spec.key}` | {said}{left_out} | `{spec.example}` |"


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
