"""The desk as a command: what opens it, and what is refused."""

from __future__ import annotations

import socket
from pathlib import Path

import pytest
from commands import refused


def test_a_folder_that_is_none_is_refused(tmp_path: Path) -> None:
    """One sentence that names the option, what came and an example."""
    said = refused("desk", "--no-browser", "--folder", tmp_path / "nowhere")
    assert "--folder" in said
    assert "nowhere" in said


@pytest.mark.parametrize("port", [0, -1, 65536, 10**12])
def test_a_port_that_is_none_is_refused(port: int) -> None:
    """The sentence names the option and the number."""
    assert f"{port}" in refused("desk", "--no-browser", "--port", port)


def test_a_port_in_use_is_refused() -> None:
    """The sentence says so, and what to type instead."""
    with socket.socket() as other:
        other.bind(("127.0.0.1", 0))
        other.listen()
        said = refused("desk", "--no-browser", "--port", other.getsockname()[1])
    assert "in use" in said
    assert "templates-gen desk" in said
