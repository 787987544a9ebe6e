"""What DEVELOPERS.md says of the tree is true of the tree."""

from __future__ import annotations

import re
import tomllib

from pages import ROOT

TEXT = (ROOT / "DEVELOPERS.md").read_text("utf-8")
CODE = ("layout", "templates_gen")
BESIDE = {"tests/", "docs/", "output_samples/"}


def named_folders() -> list[str]:
    """The first column of the table of folders."""
    table = TEXT.split("## The folders")[1].split("\n## ")[0]
    return re.findall(r"^\| `([^`]+)` \|", table, re.MULTILINE)


def there(package: str) -> set[str]:
    """The folders and modules in a package."""
    own = (
        path for path in (ROOT / package).iterdir() if not path.name.startswith(("__", ".")) and path.name != "py.typed"
    )
    return {f"{package}/{path.name}" + "/" * path.is_dir() for path in own}


def test_the_table_names_every_folder_and_no_other() -> None:
    """Each folder and module at the top of both packages has its line, and so has each folder beside them."""
    named = named_folders()
    assert len(named) == len(set(named))
    assert set(named) == there("layout") | there("templates_gen") | BESIDE


def test_top_level_folders_are_those_named() -> None:
    """No folder lies at the top of the tree that the table does not name, but for hidden ones and what tools leave."""
    left = {"dist", "build", "strips"}
    top = {path.name for path in ROOT.iterdir() if path.is_dir() and not path.name.startswith(".")}
    assert {f"{name}/" for name in top - left - set(CODE) if not name.endswith(".egg-info")} == BESIDE


def test_every_path_that_is_named_is_there() -> None:
    """Each path in the text leads to a file or folder, or is a folder that a command makes."""
    paths = set(re.findall(r"`((?:layout|templates_gen|tests|docs|output_samples|\.ci)/[\w./-]*)`", TEXT))
    assert len(paths) > 30
    assert [path for path in sorted(paths) if not (ROOT / path).exists()] == []


def test_every_table_that_is_named_is_there() -> None:
    """Each table of the code in capitals, named with its file, stands in that file."""
    named = re.findall(r"`([A-Z_]+)`\s+\(`([\w/]+\.py)`\)", TEXT)
    assert len(named) >= 5
    for name, file in named:
        assert re.search(rf"^{name}\b", (ROOT / file).read_text("utf-8"), re.MULTILINE), f"{name} in {file}"


def test_the_glossary_explains_each_word_once() -> None:
    """No word of the glossary has two lines."""
    words = re.findall(r"^\| ([\w ,-]+) \| ", TEXT.split("## Glossary")[1], re.MULTILINE)
    every = [word.strip() for line in words[1:] for word in line.split(",")]
    assert len(every) > 40
    assert len(every) == len(set(every))


def test_the_changelog_begins_with_the_version_of_the_project() -> None:
    """The newest release in the changelog is the version that is built."""
    releases = re.findall(r"^## (\d+\.\d+\.\d+)", (ROOT / "CHANGELOG.md").read_text("utf-8"), re.MULTILINE)
    assert releases[0] == tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]["version"]
