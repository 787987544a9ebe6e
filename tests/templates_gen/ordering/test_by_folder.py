"""A number for each folder, whatever its name."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from templates_gen.ordering.by_folder import ByFolder


@given(st.dictionaries(st.text(st.characters()), st.integers()))
def test_it_is_a_mapping(wanted: dict[str, int]) -> None:
    """Names with any letters, of damaged journals too, stay apart and come back as they were."""
    found = ByFolder()
    found.update(wanted)
    assert dict(found.items()) == wanted
    assert list(found) == list(wanted)
    assert len(found) == len(wanted)
    for name in wanted:
        del found[name]
        assert name not in found
    assert not found


def test_half_a_pair_is_a_name() -> None:
    """JSON may hold such letters."""
    found = ByFolder()
    found["a\ud800"] = 1
    assert dict(found) == {"a\ud800": 1}
