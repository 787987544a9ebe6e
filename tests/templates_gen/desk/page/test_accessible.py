"""The desk for everybody: no serious finding of axe-core in any state, labels, order of keys, forced colours."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from desk_browser import DESKTOP, PHONE, Person, axe_path
from desk_states import STATES, two_kits
from selenium.webdriver.common.keys import Keys

SERIOUS = ("serious", "critical")
USUAL = ("compared", "error", "calibration")
"""States that are looked at every time: between them they have every part of the page; the rest by --thorough."""
RUN = """
const [but, done] = arguments;
const seen = v => [v.id, v.impact, v.nodes.slice(0, 3).map(n => n.html.slice(0, 160))];
axe.run({include: ['html'], exclude: but}, {resultTypes: ['violations']}).then(r => done(r.violations.map(seen)));
"""
FOLDED = [".more:not([open])"]
"""What is folded is looked at where all lines are open."""


@pytest.fixture
def shelf(kits: Path) -> Iterator[Path]:
    """Two kits, and one that cannot be read."""
    two_kits(kits)
    yield kits
    for each in kits.glob("*.toml"):
        each.unlink()


def findings(person: Person) -> list[list[object]]:
    """What axe finds on the page that is serious."""
    if not person.script("return Boolean(window.axe)"):
        person.driver.execute_cdp_cmd("Runtime.evaluate", {"expression": axe_path().read_text("utf-8")})
    person.driver.set_script_timeout(60)
    folded = [each for each in FOLDED if person.all(each)]
    return [each for each in person.driver.execute_async_script(RUN, folded) if each[1] in SERIOUS]


def test_what_is_wrong_is_found(person: Person) -> None:
    """A picture without words, and a line without a label, put into the page."""
    axe_path()
    person.script("""
        document.querySelector('.head').append(document.createElement('img'));
        document.querySelector('label[for=frame-outer_width]').remove();""")
    found = [str(each[0]) for each in findings(person)]
    assert "image-alt" in found
    assert any("label" in each for each in found)


@pytest.mark.parametrize(
    "state", [state if state in USUAL else pytest.param(state, marks=pytest.mark.slow) for state in STATES]
)
def test_nothing_serious_is_found(person: Person, shelf: Path, state: str) -> None:
    """Light and dark, on a desktop and on a phone (WCAG 2 A and AA, as axe-core checks them)."""
    axe_path()
    STATES[state](person)
    found = {}
    for size, dark in _USUAL if state in USUAL else _ALL:
        person.screen(size, dark=dark)
        found[size, dark] = findings(person)
    person.script("document.querySelector('dialog[open]')?.close()")
    assert {key: each for key, each in found.items() if each} == {}


_USUAL = ((DESKTOP, False), (PHONE, True))
_ALL = [(size, dark) for size in (DESKTOP, PHONE) for dark in (False, True)]


def test_keys_alone_lead_from_top_to_pile(person: Person) -> None:
    """Skip links first, then the top, the rule, the slip, the drawing, the numbers, the strip, the pile."""
    order = person.script("""
        const all = [...document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex="0"]')];
        const seen = all.filter(e => e.tabIndex >= 0 && (e.offsetParent || e.closest('svg')) && e.type !== 'hidden');
        const places = [
          '.skip', '.bar', '.rule', '#slip', '[data-part=frame]', '[data-part=numbers]', '.strips', '.pile'];
        const of = e => places.find(s => e.closest(s));
        return seen.map(of).filter((s, k, list) => s && s !== list[k - 1]);""")
    assert order == [".skip", ".bar", ".rule", "#slip", "[data-part=frame]", "[data-part=numbers]", ".strips", ".pile"]


def test_every_line_has_its_label_help_and_source(person: Person) -> None:
    """By name for who cannot see: a label, the help, where the value is from, and the refusal."""
    lacking = person.script("""
        return [...document.querySelectorAll('.f[data-key]')].filter(f => {
          const input = f.querySelector('input:not([type=hidden]), select, textarea');
          const named = input.labels.length || f.getAttribute('aria-labelledby');
          const ids = (input.getAttribute('aria-describedby') ?? '').split(' ');
          return !named || ids.length !== 3 || ids.some(id => !document.getElementById(id));
        }).map(f => f.dataset.key);""")
    assert lacking == []
    ids = person.script("return [...document.querySelectorAll('[id]')].map(e => e.id)")
    assert len(ids) == len(set(ids))


def test_skip_links_lead_to_slip_and_strip(person: Person) -> None:
    """They come first, show themselves when they are reached, and lead on."""
    links = person.all(".skip")
    assert [str(each.get_attribute("href")).partition("#")[2] for each in links] == ["slip", "strip-box"]
    for link in links:
        person.script("arguments[0].focus()", link)
        assert link.rect["y"] >= 0
        link.send_keys(Keys.ENTER)
    person.until(lambda: person.driver.current_url.endswith("#strip-box"))


def test_forced_colours_still_show_what_is_chosen(person: Person) -> None:
    """What is checked has an outline where the system takes all colours away."""
    person.screen(DESKTOP, forced=True)
    style = "getComputedStyle(document.querySelector('.kinds label:has(:checked)'))"
    assert person.script(f"return {style}.outlineStyle") == "solid"
    assert float(str(person.script(f"return {style}.outlineWidth"))[:-2]) >= 2
