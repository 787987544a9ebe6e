"""Wheels without a network: our own packages as they stand, and others put together again from what is installed."""

from __future__ import annotations

import tomllib
import zipfile
from collections.abc import Iterable
from importlib import metadata
from pathlib import Path

from packaging.requirements import Requirement

ROOT = Path(__file__).parent.parent
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]


def our_wheel(folder: Path) -> Path:
    """A wheel of this tree, which needs what the project says."""
    name, version = PROJECT["name"], PROJECT["version"]
    about = f"templates_gen-{version}.dist-info"
    place = folder / f"templates_gen-{version}-py3-none-any.whl"
    said = ["Metadata-Version: 2.1", f"Name: {name}", f"Version: {version}"]
    said += [f"Requires-Dist: {each}" for each in PROJECT["dependencies"]]
    with zipfile.ZipFile(place, "w") as wheel:
        for package in ("layout", "templates_gen"):
            for path in sorted((ROOT / package).rglob("*")):
                if path.is_file() and path.suffix not in (".pyc", ".po", ".pot"):
                    wheel.write(path, path.relative_to(ROOT).as_posix())
        wheel.writestr(f"{about}/METADATA", "\n".join(said) + "\n")
        wheel.writestr(f"{about}/WHEEL", "Wheel-Version: 1.0\nRoot-Is-Purelib: true\nTag: py3-none-any\n")
        wheel.writestr(f"{about}/RECORD", "")
    return place


def needed_wheels(folder: Path) -> None:
    """A wheel of everything that our package needs, with what that needs."""
    for name in _needed(PROJECT["dependencies"], set()):
        _repacked(metadata.distribution(name), folder)


def _needed(lines: Iterable[str], known: set[str]) -> set[str]:
    for line in lines:
        wanted = Requirement(line)
        key = wanted.name.lower().replace("_", "-")
        if (wanted.marker is None or wanted.marker.evaluate({"extra": ""})) and key not in known:
            known.add(key)
            _needed(metadata.requires(wanted.name) or (), known)
    return known


def _repacked(found: metadata.Distribution, folder: Path) -> None:
    tags = [
        line.removeprefix("Tag: ") for line in (found.read_text("WHEEL") or "").splitlines() if line.startswith("Tag:")
    ]
    files = [each for each in found.files or () if ".." not in each.parts and each.suffix != ".pyc"]
    name = found.metadata["Name"].replace("-", "_")
    with zipfile.ZipFile(folder / f"{name}-{found.version}-{tags[0]}.whl", "w") as wheel:
        for each in files:
            if each.name not in ("INSTALLER", "REQUESTED", "direct_url.json"):
                wheel.write(found.locate_file(each), each.as_posix())
