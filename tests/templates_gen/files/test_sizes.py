"""How large the files of the demo kit may be. The limits are our own: small files open and travel quickly."""

from __future__ import annotations

from pathlib import Path

import pytest

FOLDER = 1_872_000  # bytes, with the manifest; more than half are words as outlines
LARGEST = {"board-*.dxf": 400_000, "board-*.svg": 200_000, "spacing-guide.svg": 200_000}


def test_the_folder_of_the_demo_kit_is_small(demo_folder: Path) -> None:
    """All its files together."""
    assert sum(path.stat().st_size for path in demo_folder.iterdir()) <= FOLDER


@pytest.mark.parametrize("pattern", LARGEST)
def test_no_single_file_is_large(demo_folder: Path, pattern: str) -> None:
    """Those with the most words, in the formats where words are outlines."""
    paths = list(demo_folder.glob(pattern))
    assert paths
    assert max(path.stat().st_size for path in paths) <= LARGEST[pattern]
