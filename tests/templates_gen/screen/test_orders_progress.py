"""The bar of a run of orders: with rate and time left on a screen, and nothing in a log."""

from __future__ import annotations

import io
import re
import subprocess
import sys
import threading

import pytest

from templates_gen.screen import orders_progress as screen
from templates_gen.screen.orders_progress import orders_progress


class Stream(io.StringIO):
    """An error stream that is a screen, or is not."""

    def __init__(self, *, screen: bool) -> None:
        super().__init__()
        self.screen = screen

    def isatty(self) -> bool:
        """Whether it is a screen."""
        return self.screen


def written(monkeypatch: pytest.MonkeyPatch, *, screen_there: bool, quiet: float = 0.0) -> str:
    """What a run of three orders writes, which says a sentence after the first."""
    stream = Stream(screen=screen_there)
    monkeypatch.setattr("sys.stderr", stream)
    monkeypatch.setattr(screen, "_QUIET", quiet)
    with orders_progress(3) as bar:
        bar.step()
        bar.say("a sentence")
        bar.step()
        bar.step()
    return stream.getvalue()


def test_a_log_gets_sentences_alone(monkeypatch: pytest.MonkeyPatch) -> None:
    """No bar and no control character where nobody watches."""
    assert written(monkeypatch, screen_there=False) == "a sentence\n"


def test_a_screen_shows_rate_and_time_left(monkeypatch: pytest.MonkeyPatch) -> None:
    """How many of all are done, how many in a second, how long it still takes; the sentence has a line of its own."""
    threads = threading.active_count()
    text = written(monkeypatch, screen_there=True)
    assert re.search(r"Making: +0%\|.*\| 0/3 \[00:00<\?, \? orders/s\]", text)
    assert re.search(r"(\r|\n|^) *\r?a sentence\n", text)
    assert text.rstrip(" ").endswith("\r")
    assert threading.active_count() == threads


def test_a_short_run_shows_no_bar(monkeypatch: pytest.MonkeyPatch) -> None:
    """What ends within a second shows its sentences alone."""
    assert "Making" not in written(monkeypatch, screen_there=True, quiet=60)


def test_no_other_command_loads_the_library() -> None:
    """It is imported where a bar is shown, and nowhere else."""
    said = "import sys, templates_gen.screen.cli, templates_gen.screen.orders_progress; print('tqdm' in sys.modules)"
    done = subprocess.run([sys.executable, "-c", said], capture_output=True, text=True, check=True)
    assert done.stdout == "False\n"
