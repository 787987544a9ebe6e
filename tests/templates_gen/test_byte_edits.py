"""Random small edits of finished files."""

from __future__ import annotations

from byte_edits import edits

from templates_gen.fonts import font_path


def test_edits_are_edits_and_the_same_in_every_run() -> None:
    """Every edit differs from the file; two runs make the same ones; those that keep the length do."""
    whole = font_path().read_bytes()[:4000] + b"0 1 2\nA line\n" * 50
    made = list(edits(whole, 200))
    assert made == list(edits(whole, 200))
    assert all(edit.data != whole for edit in made)
    assert len({edit.data for edit in made}) > 150
    assert all(len(edit.data) == len(whole) for edit in edits(whole, 100, keep_length=True))
