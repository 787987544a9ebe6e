"""The bar of a long run: on a screen only, after a second, and gone when the run ends, however it ends."""

from __future__ import annotations

import io
import re

import pytest

from templates_gen.screen.progress import progress

SHOW_CURSOR = "\x1b[?25h"


class Stream(io.StringIO):
    """An error stream that is a screen, or is not."""

    def __init__(self, *, screen: bool) -> None:
        super().__init__()
        self.screen = screen

    def isatty(self) -> bool:
        """Whether it is a screen."""
        return self.screen


def written(monkeypatch: pytest.MonkeyPatch, *, screen: bool, seconds: float, fails: bool = False) -> str:
    """What a run of four files writes that takes so long for each."""
    stream, clock = Stream(screen=screen), iter(range(100))
    monkeypatch.setattr("sys.stderr", stream)
    monkeypatch.setattr("templates_gen.screen.progress.monotonic", lambda: next(clock) * seconds)
    try:
        with progress() as show:
            for done, file in enumerate(("one.pdf", "two.pdf", "three.svg", "four.dxf")):
                show(done, 4, file)
                if fails and done == 2:
                    raise KeyboardInterrupt
    except KeyboardInterrupt:
        assert fails
    return stream.getvalue()


def test_a_log_gets_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    """No word and no control character where nobody watches, however long it takes."""
    assert written(monkeypatch, screen=False, seconds=5) == ""


def test_a_short_run_shows_no_bar(monkeypatch: pytest.MonkeyPatch) -> None:
    """Under a second there is nothing to watch."""
    assert written(monkeypatch, screen=True, seconds=0.2) == ""


def test_a_long_run_shows_each_file(monkeypatch: pytest.MonkeyPatch) -> None:
    """Once a second has passed: how many are done and which is next; at the end all are, and the cursor is back."""
    text = written(monkeypatch, screen=True, seconds=0.6)
    shown = re.findall(r"Making  \[[#-]{24}\]  (\d)/4 *(\S*\.\w+|) *", text)
    assert shown == [("1", "two.pdf"), ("2", "three.svg"), ("3", "four.dxf"), ("4", "")]
    assert text.endswith(f"{SHOW_CURSOR}\n")


def test_a_run_that_ends_early_leaves_the_screen_as_it_was(monkeypatch: pytest.MonkeyPatch) -> None:
    """A stop in the middle shows the cursor again and ends the line; nothing claims that all is done."""
    text = written(monkeypatch, screen=True, seconds=0.6, fails=True)
    assert text.endswith(f"{SHOW_CURSOR}\n")
    assert "4/4" not in text
