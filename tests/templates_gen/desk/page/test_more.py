"""The desk beside typing: languages, hostile names, leaving, a desk that is gone, the size of the screen."""

from __future__ import annotations

import tomllib
from pathlib import Path

from desk_browser import PHONE, Person, browser, served

from templates_gen.desk.slip.typed import typed_of

HOSTILE = "</title><script>document.title='ran'"


def test_the_page_speaks_four_languages(person: Person) -> None:
    """A link changes all of it, and the slip stays as it was typed; the words of scripts are changed with it."""
    person.type("frame.outer_width", "44 cm")
    for code in ("de", "fr", "es", "en"):
        person.click(f'.langs [lang="{code}"]')
        person.until(lambda code=code: person.find("html").get_attribute("lang") == code)
        person.ready()
        assert person.value("frame.outer_width") == "44 cm"
    assert person.complaints() == []


def test_hostile_names_are_only_words(person: Person) -> None:
    """No script runs and nothing is fetched, wherever a name stands: slip, sheet, strip, table, comparison."""
    person.type("name", HOSTILE)
    person.type("yarns.warp", "<script>document.title='ran'</script>")
    person.type("yarns.weft", "<img src=x onerror=alert(1)>")
    person.sees(".head", "<img src=x")
    person.driver.refresh()
    person.ready()
    assert "ran" not in person.driver.title.split()
    assert person.script("return document.querySelectorAll('.head img, .head script, #slip script').length") == 0
    assert "<script>" in person.value("yarns.warp")
    person.open("kits").ready()
    assert person.script("return document.querySelectorAll('table img, table script').length") == 0
    assert person.complaints() == []


def test_leaving_asks_only_where_something_was_typed(person: Person) -> None:
    """A page that is as it was kept goes without a word."""
    asks = "const e = new Event('beforeunload', {cancelable: true}); window.dispatchEvent(e); return e.defaultPrevented"
    assert person.script(asks) is False
    person.type("frame.outer_width", "44 cm")
    assert person.script(asks) is True


def test_what_was_typed_outlives_the_desk(tmp_path: Path) -> None:
    """The desk is gone: it is said, and the kit file that the page makes says what was typed."""
    saved = tmp_path / "saved"
    kits = tmp_path / "kits"
    saved.mkdir()
    kits.mkdir()
    with browser(saved) as person:
        with served(kits) as desk:
            person.driver.get(desk.address)
            person.home = desk.home
            person.ready()
            person.type("name", 'A "quoted" \\ name')
            person.type("frame.outer_width", "44 cm")
            before = person.script("return Object.fromEntries(new FormData(document.getElementById('slip')).entries())")
        person.type("frame.outer_height", "57 cm")
        person.until(lambda: person.find("#closed").is_displayed())
        seen = person.script("return document.getElementById('closed').getBoundingClientRect().top")
        assert 0 <= seen < 200, "it is said where she looks, however far down she is"
        person.click("#save-here")
        person.until(lambda: list(saved.glob("*.toml")))
    (file,) = saved.glob("*.toml")
    typed = typed_of(tomllib.loads(file.read_text("utf-8")))
    lines = {name: text for name, text in before.items() if text and name in typed} | {"frame.outer_height": "57 cm"}
    assert {name: typed[name] for name in lines} == lines
    assert typed["name"] == 'A "quoted" \\ name'
    assert len(typed) > 40


def test_a_measured_screen_shows_real_size(person: Person) -> None:
    """An outline of 428 px on a card of 85.60 mm: 5 px to the millimetre, and a strip of 244 mm is 1220 px wide."""
    person.click('.pile a[data-view^="strip-near"]')
    person.until(lambda: person.all(".shows-one .glass svg"))
    person.settled().click("#calibrate")
    person.script("const s = document.getElementById('card-width'); s.value = 428; s.dispatchEvent(new Event('input'))")
    person.click('#card button[value="fits"]')
    person.sees("#calibrated", "5.00")
    person.sees("#zoom-now", "100 %")
    width = float(str(person.script("return document.querySelector('.glass svg').viewBox.baseVal.width")))
    shown = float(str(person.script("return document.querySelector('.glass svg').getBoundingClientRect().width")))
    assert abs(shown - 5 * width) < 1
    person.click('.tools [data-view="working"]')
    person.until(lambda: person.all(".shows-working"))
    strip = person.find("#strip-box .is-near .strip")
    mm = float(str(strip.get_attribute("data-mm")).split()[0])
    person.until(lambda: abs(float(strip.rect["width"]) - 5 * mm) < 1)
    person.script("localStorage.clear()")


def test_nothing_is_wider_than_a_phone(person: Person) -> None:
    """390 px, and 200 % zoom of a desktop window (720 px): one column without sideways scrolling."""
    for size in (PHONE, (720, 450)):
        person.screen(size)
        wide = person.script("return [document.documentElement.scrollWidth, innerWidth]")
        assert wide[0] <= wide[1], size
        person.script("for (const each of document.querySelectorAll('#slip details')) each.open = true")
        wide = person.script("return [document.documentElement.scrollWidth, innerWidth]")
        assert wide[0] <= wide[1], size


def test_targets_on_a_phone_are_as_high_as_a_finger(person: Person) -> None:
    """44 px (WCAG 2.2, 2.5.5), links in text excepted."""
    person.screen(PHONE)
    low = person.script("""
        const all = [...document.querySelectorAll(
          'button, select, .in input, .kinds label, .pick label, summary, .box-list label, .go, .btn')];
        return all.filter(e => e.offsetParent && !e.closest('.out'))
          .map(e => [e.outerHTML.slice(0, 80), e.getBoundingClientRect().height]).filter(([, high]) => high < 43.5);""")
    assert low == []
