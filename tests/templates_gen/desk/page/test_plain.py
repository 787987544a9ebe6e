"""The desk without JavaScript: the same form, drawn anew by the server, with nothing lost."""

from __future__ import annotations

from pathlib import Path

from commands import run
from desk_browser import Person

WIDTH = "frame.outer_width"


def drawn(person: Person, step: str = "frame") -> None:
    """Presses the button that stands at the end of a step where there are no scripts, and waits for the new page."""
    sent(person, f'[data-part="step-{step}"] noscript button')


def sent(person: Person, selector: str) -> None:
    """Presses a button that sends the form, once the page stands still, and waits for the page that comes."""
    person.until(lambda: person.script("return document.readyState") == "complete")
    old = person.find("#slip")
    person.click(selector)
    person.until(lambda: person.find("#slip") != old and person.all(".langs"))


def test_the_slip_is_a_plain_form(without_scripts: Person) -> None:
    """A number is typed and sent: it has its unit, the drawing is of it, and the line is the person's own."""
    person = without_scripts
    person.type(WIDTH, "44", leave=False)
    drawn(person)
    assert "44 cm wide" in str(person.find("svg.frame").get_attribute("aria-label"))
    assert person.value(WIDTH) == "44 cm"
    assert "yours" in str(person.find(f'[data-key="{WIDTH}"]').get_attribute("class"))
    assert person.driver.current_url.endswith("#frame")


def test_an_error_stands_at_its_line_and_is_mended_by_a_click(without_scripts: Person) -> None:
    """The same sentence and the same values to click, which are buttons of the form."""
    person = without_scripts
    person.type(WIDTH, "40 c", leave=False)
    drawn(person)
    assert person.wrong() == [WIDTH]
    assert "40 c" in person.text(f'[data-key="{WIDTH}"] .say')
    assert person.value(WIDTH) == "40 c"
    sent(person, f'[data-key="{WIDTH}"] .chip')
    assert person.wrong() == []
    assert person.value(WIDTH) == "40 cm"


def test_another_reading_and_the_rest_open_by_themselves(without_scripts: Person) -> None:
    """What more there is stands behind a summary; a row that was filled in stays, and another follows."""
    person = without_scripts
    rows = len(person.all('[name$="].pairs"]'))
    person.click('[data-keep="add-sett.readings"] summary')
    person.type(f"sett.readings[{rows}].pairs", "13", leave=False)
    person.type(f"sett.readings[{rows}].over", "5", leave=False)
    drawn(person, "measured")
    assert person.value(f"sett.readings[{rows}].over") == "5 cm"
    assert len(person.all('[name$="].pairs"]')) == rows + 1


def test_each_end_has_its_sentence(without_scripts: Person) -> None:
    """Pointing shows it by itself: a title on every end."""
    titles = without_scripts.script(
        "return [...document.querySelectorAll('.frame [data-end]')]"
        ".map(e => [e.dataset.end, e.querySelector('title')?.textContent])"
    )
    assert len(titles) == 60
    assert dict(titles)["23"].startswith("End 23 of 60")


def test_a_printed_sheet_is_looked_at(without_scripts: Person) -> None:
    """The pile is links."""
    person = without_scripts
    person.click('.pile a[data-view^="strip-near"]')
    person.until(lambda: person.all(".shows-one .glass svg"))
    person.click(".tools a")
    person.until(lambda: person.all(".shows-working"))


def test_strips_are_made_and_found_right(without_scripts: Person, downloads: Path) -> None:
    """Asked about the example, then made; the zip is right."""
    person = without_scripts
    person.type(WIDTH, "41 cm", leave=False)
    sent(person, 'button[value="strips"]')
    assert person.all(".asked")
    sent(person, ".asked .btn")
    while not person.all(".proof"):
        sent(person, "#away noscript button")
    for old in downloads.glob("*.zip"):
        old.unlink()
    person.click(".made .go")
    person.until(lambda: list(downloads.glob("*.zip")))
    (saved,) = downloads.glob("*.zip")
    said = run("check", saved)
    assert said.exit_code == 0, said.output
