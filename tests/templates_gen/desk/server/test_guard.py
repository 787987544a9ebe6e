"""Who is let in, what is refused, and with which headers; each case attacks a way in."""

from __future__ import annotations

from pathlib import Path

import pytest
from desk_client import HOST, ORIGIN, PORT, Visitor

from templates_gen.desk.server.guard import POLICY
from templates_gen.messages.english import ENGLISH
from templates_gen.messages.roles.desk_server import DeskRefusal


@pytest.fixture(scope="module")
def here(tmp_path_factory: pytest.TempPathFactory) -> Visitor:
    """A browser at a desk."""
    return Visitor(tmp_path_factory.mktemp("desk"))


@pytest.fixture(scope="module")
def outside(here: Visitor) -> Visitor:
    """Another browser, which was not let in."""
    other = Visitor(here.desk.folder, inside=False)
    other.desk, other.app, other.slip = here.desk, here.app, here.slip
    other.client = here.app.test_client()
    return other


FOREIGN_HOSTS = (
    "example.org",
    f"example.org:{PORT}",
    "127.0.0.1",
    "127.0.0.1:81",
    "localhost",
    f"127.0.0.1.example.org:{PORT}",
    f"localhost.:{PORT}",
    f"127.0.0.2:{PORT}",
    f"0.0.0.0:{PORT}",
    f"[::1]:{PORT}",
    f"user@127.0.0.1:{PORT}",
    f"192.168.1.5:{PORT}",
    f"127.0.0.1:{PORT}, example.org",
    "",
)


@pytest.mark.parametrize("host", FOREIGN_HOSTS)
def test_another_name_is_not_answered(here: Visitor, host: str) -> None:
    """A name that is pointed at this computer (DNS rebinding) gets nothing, though the browser has the cookie."""
    for address in ("/", "/static/base.css", "/alive", f"/pdf/strip-near.pdf?k={here.slip}"):
        assert here.get(address, host=host).status_code == 403
    assert here.post("/look", {"name": "Hers"}, host=host).status_code == 403
    assert here.desk.slips.all()[0].typed["name"] != "Hers"


@pytest.mark.parametrize("host", [HOST, f"localhost:{PORT}", f"LOCALHOST:{PORT}"])
def test_both_own_names_are_answered(tmp_path: Path, host: str) -> None:
    """As an address and as a name, each with the port; a browser keeps its cookie by name."""
    here = Visitor(tmp_path, inside=False)
    assert here.get(f"/?key={here.desk.key}", host=host).status_code == 303
    assert here.get("/alive", host=host.lower()).status_code == 204


FOREIGN_ORIGINS = (
    "",
    "null",
    "http://example.org",
    f"http://example.org:{PORT}",
    f"https://{HOST}",
    "http://127.0.0.1",
    "http://127.0.0.1:81",
    f"http://localhost:{PORT}",
    f"{ORIGIN}/",
    f"{ORIGIN}, {ORIGIN}",
    f"{ORIGIN}.example.org",
)
POSTS = ("/look", "/slip", "/make", "/make-all", "/make/1/stop", "/open", "/new", "/copy", "/keep", "/enter", "/none")


@pytest.mark.parametrize("origin", FOREIGN_ORIGINS)
def test_a_form_of_another_page_does_nothing(here: Visitor, origin: str) -> None:
    """Whatever it sends, the right token too; a form without an origin is refused alike."""
    slips = len(here.desk.slips.all())
    for address in POSTS:
        answer = here.post(address, {"name": "Hers"}, origin=origin)
        assert answer.status_code == 403, address
        assert ENGLISH.say(DeskRefusal.ORIGIN) in answer.text.replace("&#39;", "'")
    assert here.desk.slips.all()[0].typed["name"] != "Hers"
    assert len(here.desk.slips.all()) == slips


@pytest.mark.parametrize("token", ["", "x", "\x00", "é", "a" * 1000])
def test_a_form_without_the_token_does_nothing(here: Visitor, token: str) -> None:
    """A missing token or a wrong one."""
    for address in POSTS:
        if address not in ("/enter", "/none"):
            answer = here.post(address, {"token": token, "name": "Hers"})
            assert answer.status_code == 403, address
            assert ENGLISH.say(DeskRefusal.TOKEN) in answer.text
    assert here.desk.slips.all()[0].typed["name"] != "Hers"


GETS = ("/", "/kits", "/compare", "/keep", "/language?to=de", "/alive", "/make/1", "/zip/1", "/zip/1/a.pdf", "/none")


def test_a_browser_that_was_not_let_in_gets_a_sentence(outside: Visitor) -> None:
    """Every page is closed to it, and the sentence says how to come in; a form does nothing."""
    for address in (*GETS, f"/pdf/strip-near.pdf?k={outside.slip}", f"/sheet/strip-near.pdf/1.svg?k={outside.slip}"):
        answer = outside.get(address)
        assert answer.status_code == 403, address
        assert "Ctrl-C" in answer.text
    for address in POSTS:
        assert outside.post(address).status_code in (403, 404), address


@pytest.mark.parametrize("key", ["", "x", "\x00", "é", "None", "a" * 5000])
def test_a_wrong_key_opens_nothing(outside: Visitor, key: str) -> None:
    """Once the key was used, an empty one neither."""
    assert outside.get("/", accept="text/html").status_code == 403
    assert outside.client.get("/", query_string={"key": key}, headers={"Host": HOST}).status_code == 403


def test_the_key_lets_one_browser_in_once(tmp_path: Path) -> None:
    """It becomes a cookie that no script sees, and leaves the address; a second browser is refused."""
    first = Visitor(tmp_path, inside=False)
    key = first.desk.key
    assert first.get("/?key=wrong").status_code == 403
    answer = first.get(f"/?key={key}")
    assert (answer.status_code, answer.headers["Location"]) == (303, "/")
    cookie = answer.headers["Set-Cookie"]
    assert cookie.startswith(f"desk-session-{PORT}=")
    assert "HttpOnly" in cookie
    assert "SameSite=Strict" in cookie
    assert "Domain" not in cookie
    assert first.get("/alive").status_code == 204
    assert first.get(f"/?key={key}").headers["Location"] == "/"
    second = first.app.test_client().get(f"/?key={key}", headers={"Host": HOST})
    assert second.status_code == 403
    assert ENGLISH.say(DeskRefusal.USED) in second.text


def test_the_key_is_taken_at_the_page_alone(tmp_path: Path) -> None:
    """Another address with it neither lets in nor uses it up."""
    here = Visitor(tmp_path, inside=False)
    assert here.get(f"/kits?key={here.desk.key}").status_code == 403
    assert here.desk.key is not None


def test_two_desks_do_not_disturb_each_other(tmp_path: Path) -> None:
    """Browsers send cookies to every port of a host; each desk has names of its own, and secrets of its own."""
    from templates_gen.desk.server.state import Desk

    one, other = Desk(tmp_path, 8080), Desk(tmp_path, 8081)
    assert {one.cookie(what) for what in ("session", "language", "unit")}.isdisjoint(
        {other.cookie(what) for what in ("session", "language", "unit")}
    )
    assert len({one.key, one.session, one.token, one.code, other.key, other.session, other.token, other.code}) == 8


def test_every_answer_has_the_headers(here: Visitor, outside: Visitor) -> None:
    """Pages, values, files, redirects and refusals alike."""
    answers = [
        here.get("/"),
        here.get("/none"),
        here.get("/static/base.css"),
        here.post("/look", {"nr": "1"}, accept="application/json"),
        here.post("/slip"),
        here.get("/x", host="example.org"),
        outside.get("/"),
        here.client.open("/", method="BREW", headers={"Host": HOST}),
    ]
    for answer in answers:
        head = answer.headers
        assert head["Content-Security-Policy"] == POLICY
        assert head["X-Content-Type-Options"] == "nosniff"
        assert head["Referrer-Policy"] == "same-origin"
        assert head["Cache-Control"] == "no-store"
        assert head["Cross-Origin-Opener-Policy"] == head["Cross-Origin-Resource-Policy"] == "same-origin"
        assert not [name for name, _ in head if name.lower().startswith("access-control")]
        assert "Server" not in head


def test_the_policy_allows_nothing_from_elsewhere() -> None:
    """Everything is closed but what the desk itself serves; nothing inline (Content Security Policy Level 3)."""
    rules = dict(rule.partition(" ")[::2] for rule in POLICY.split("; "))
    assert rules.pop("default-src") == rules.pop("base-uri") == rules.pop("frame-ancestors") == "'none'"
    assert set(rules.values()) == {"'self'"}
    assert set(rules) == {"script-src", "style-src", "img-src", "font-src", "connect-src", "form-action"}


def test_pages_have_nothing_that_the_policy_forbids(here: Visitor) -> None:
    """No script or style within a page, no attribute that runs or styles, and no address elsewhere."""
    import re

    for address in ("/", "/kits", "/none", f"/?k={here.slip}&view=strip-near.pdf:1"):
        page = here.get(address).text
        assert not re.search(r"<script(?![^>]*\bsrc=)|<style|\sstyle=|\son[a-z]+=|javascript:", page), address
        assert not re.search(r"(?:src|href|action)=\"(?:https?:)?//", page), address


def test_pages_of_other_ports_get_no_files(here: Visitor) -> None:
    """A browser says where a question comes from (Fetch Metadata); the page alone may be led to."""
    for site in ("cross-site", "same-site"):
        assert here.get("/kits", sec_fetch_site=site).status_code == 403
        assert here.get(f"/pdf/strip-near.pdf?k={here.slip}", sec_fetch_site=site).status_code == 403
    assert here.get("/alive", sec_fetch_site="same-origin").status_code == 204


@pytest.mark.parametrize("method", ["PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "CONNECT", "BREW"])
def test_other_methods_are_refused(here: Visitor, method: str) -> None:
    """Without the right origin they get no further; with it, they are not there."""
    for address in ("/", "/look", "/static/base.css"):
        assert here.client.open(address, method=method, headers={"Host": HOST}).status_code == 403
        sent = {"Host": HOST, "Origin": ORIGIN}
        answer = here.client.open(address, method=method, data={"token": here.desk.token}, headers=sent)
        assert answer.status_code == 405
        assert ENGLISH.say(DeskRefusal.METHOD) in answer.text


def test_a_page_is_not_sent_to_and_a_form_not_asked(here: Visitor) -> None:
    """GET where there is a form only, POST where there is a page only."""
    for address in ("/look", "/slip", "/make", "/open", "/copy", "/new", "/make-all"):
        assert here.get(address).status_code == 405, address
    for address in ("/", "/kits", "/alive", "/language"):
        assert here.post(address).status_code == 405, address


# The network


def test_another_device_comes_in_by_the_code(tmp_path: Path) -> None:
    """The page asks for it, in the language of the browser; it is typed in any capitals, with or without hyphens."""
    here = Visitor(tmp_path, inside=False, network="192.168.7.9")
    host = f"192.168.7.9:{PORT}"
    asked = here.get("/", host=host)
    assert asked.status_code == 403
    assert 'action="/enter"' in asked.text
    assert here.post("/enter", {"code": "wrong"}, host=host).status_code == 403
    assert here.get("/alive", host=host).status_code == 403
    typed = here.desk.code.upper().replace("-", " ")
    assert here.post("/enter", {"code": typed}, host=host).status_code == 303
    assert here.get("/alive", host=host).status_code == 204
    assert here.get("/alive", host="192.168.7.10:8080").status_code == 403


def test_codes_cannot_be_guessed(tmp_path: Path) -> None:
    """After ten wrong ones even the right one has to wait."""
    here = Visitor(tmp_path, inside=False, network="192.168.7.9")
    host = f"192.168.7.9:{PORT}"
    for _ in range(10):
        assert here.post("/enter", {"code": "wrong"}, host=host).status_code == 403
    answer = here.post("/enter", {"code": here.desk.code}, host=host)
    assert answer.status_code == 429
    assert here.get("/alive", host=host).status_code == 403


def test_without_the_option_there_is_no_code(here: Visitor) -> None:
    """A desk that is not open to a network takes none."""
    assert here.post("/enter", {"code": here.desk.code}).status_code == 404
