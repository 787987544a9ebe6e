"""How English refusals run, so that all of them run alike."""

from __future__ import annotations


def needs(what: str) -> str:
    """The refusal of an input: what was needed, what came, and an example that works."""
    return f"needs {what}, got {{got}}; for example {{example}}"
