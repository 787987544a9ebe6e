from __future__ import annotations

from itertools import combinations, pairwise
from typing import Literal

import pytest
from hypothesis import given
from hypothesis import strategies as st
from kits import font_metrics

from layout.drawing.typeset import SMALL
from layout.parts.phrases import Packer, Phrase, PlacedPhrase

METRICS = font_metrics()
GAP = 4.0
stands: st.SearchStrategy[Literal["left", "right", "anywhere"]] = st.sampled_from(["left", "right", "anywhere"])
arrows: st.SearchStrategy[Literal["", "left", "right", "up"]] = st.sampled_from(["", "left", "right", "up"])
sayings = st.lists(st.text("abcW", min_size=1, max_size=9), min_size=1, max_size=9).map(" ".join)
phrases = st.builds(Phrase, sayings, stands, arrows, st.just(False), between=st.none())


def span(placed: PlacedPhrase) -> tuple[float, float]:
    """From where to where a phrase stands."""
    return placed.start, placed.start + placed.phrase.width(METRICS)


@given(st.lists(phrases, min_size=1, max_size=8), st.floats(45, 400), st.lists(st.floats(0.1, 0.9), max_size=2))
def test_phrases_keep_apart(asked: list[Phrase], length: float, shares: list[float]) -> None:
    """In a row no phrase meets another, a wall or an end, and every word is set."""
    walls = [(share - 0.5) * length for share in shares]
    edges = sorted([-length / 2, *walls, length / 2])
    if min(b - a for a, b in pairwise(edges)) < 40:
        walls = []
    spans = [(wall - 0.2, wall + 0.2) for wall in walls]
    packed = Packer(-length / 2, length / 2, spans, METRICS).pack([Phrase("centre", "centre"), *asked])
    for one, other in combinations(packed, 2):
        if one.row == other.row:
            (_a, b), (c, d) = sorted((span(one), span(other)))
            assert b + GAP <= c + 1e-9
            assert d >= b
    for low, high in map(span, packed):
        assert -length / 2 - 1e-9 <= low <= high <= length / 2 + 1e-9
        assert not any(low < wall < high for wall in walls)
    said = "".join(letter for placed in packed for letter in placed.phrase.words if letter != " ")
    wanted = "centre" + "".join(phrase.words.replace(" ", "") for phrase in asked)
    assert sorted(said) == sorted(wanted)


def test_places_of_their_own() -> None:
    """Left and right phrases stand at the ends, the word of the centre right beside its line."""
    asked = [Phrase("left", "left"), Phrase("right", "right"), Phrase("centre", "centre")]
    left, right, centre = Packer(-80, 80, (), METRICS).pack(asked)
    assert left.start == -80
    assert span(right)[1] == pytest.approx(80)
    assert centre.start == pytest.approx(0.8)


def test_the_centre_steps_over_a_wall() -> None:
    """Where a joint runs through the word's place it stands on the other side of its line."""
    (centre,) = Packer(-80, 80, ((2.8, 3.2),), METRICS).pack([Phrase("centre", "centre")])
    assert span(centre)[1] == pytest.approx(-0.8)


def test_a_phrase_keeps_between_two_joints() -> None:
    """Names of pieces stand each on its own one, whatever room there is on others, and none is broken."""
    edges = [-80.0, -45.0, 30.0, 80.0]
    names = [Phrase(f"piece {k}", between=(edges[k - 1], edges[k])) for k in (1, 2, 3)]
    walls = [(edge - 1.5, edge + 8.5) for edge in edges[1:-1]]
    packed = Packer(-80, 80, walls, METRICS).pack([Phrase("left", "left"), *names[::-1]])
    found = {placed.phrase.words: span(placed) for placed in packed}
    for k in (1, 2, 3):
        low, high = found[f"piece {k}"]
        assert edges[k - 1] <= low < high <= edges[k] - 1.5


def test_optional_phrases_need_no_row() -> None:
    """An optional phrase is set where a row has room for it, and left out where it would need a new one."""
    full = Phrase("first pass on the face; the winds go on this way")
    extra = Phrase("Heron frame", optional=True)
    assert [placed.phrase for placed in Packer(-75, 75, (), METRICS).pack([full, extra])] == [full, extra]
    assert [placed.phrase for placed in Packer(-37, 37, (), METRICS).pack([full, extra])] == [full]


@pytest.mark.parametrize("up", [1, -1])
def test_broken_phrases_read_downward(up: int) -> None:
    """The lines of a phrase that is too long stand in their order from top to bottom of the paper."""
    packer = Packer(-14, 14, (), METRICS, lambda row: float(up * row))
    packed = packer.pack([Phrase("near end, seen from the face", arrow="up")])
    downward = sorted(packed, key=lambda placed: -up * placed.row)
    assert len(packed) > 1
    assert " ".join(placed.phrase.words for placed in downward) == "near end, seen from the face"
    assert [placed.phrase.arrow for placed in downward] == ["up", *[""] * (len(packed) - 1)]


def test_an_arrow_takes_its_room() -> None:
    """An arrow head widens a phrase; one to the right stands behind the words, others before them."""
    plain = METRICS.width("this way", SMALL)
    assert Phrase("this way").width(METRICS) == plain
    assert Phrase("this way", arrow="right").width(METRICS) == pytest.approx(plain + 3)
    assert Phrase("this way", arrow="right").words_from() == 0
    assert Phrase("this way", arrow="up").words_from() == pytest.approx(3)
