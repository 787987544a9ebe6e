"""What is sent to harm: paths, markup, floods, files that are none, and anything at all; never an answer of a fault."""

from __future__ import annotations

import io
import threading
import zipfile
from pathlib import Path
from typing import Any
from urllib.parse import quote

import pytest
from desk_client import HOST, Visitor
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from templates_gen.desk.server.guard import FIELDS
from templates_gen.desk.server.refusals import FORM_BYTES, UPLOAD_BYTES
from templates_gen.desk.slip.fields import SPECS
from templates_gen.desk.slip.lines import lines
from templates_gen.desk.slip.typed import example
from templates_gen.messages.english import ENGLISH
from templates_gen.messages.roles.desk_server import DeskRefusal


@pytest.fixture(scope="module")
def here(tmp_path_factory: pytest.TempPathFactory) -> Visitor:
    """A browser at a desk whose folder has one kit, beside a secret outside of it."""
    folder = tmp_path_factory.mktemp("desk")
    (folder / "secret.toml").write_text('name = "secret"', encoding="utf-8")
    inner = folder / "kits"
    inner.mkdir()
    (inner / "link.toml").symlink_to(folder / "secret.toml")
    return Visitor(inner)


PATHS = (
    "../secret.toml",
    "..\\secret.toml",
    "/etc/passwd",
    "....//secret.toml",
    "%2e%2e/secret.toml",
    "..%2fsecret.toml",
    "file:///etc/passwd",
    "C:\\Windows\\win.ini",
    "\\\\host\\share",
    "secret.toml\x00.pdf",
    "~/.ssh/id_rsa",
    ".",
    "..",
    "-1",
    "1e9",
    "٣",
    "9" * 5000,
    "\r\nSet-Cookie: a=b",
    "",
    " ",
)
FORM_FIELDS = ("k", "view", "unit", "nr", "page", "yours", "shapes", "rest", "do", "use", "as_is", "only", "offered")


@pytest.mark.parametrize("path", PATHS)
def test_a_path_leads_nowhere(here: Visitor, path: str) -> None:
    """In every part of an address and every field of a form: never a file, a fault or a header of it."""
    part = quote(path, safe="")
    addresses = [f"/{each}" for each in (part, f"static/{part}", f"pdf/{part}?k={here.slip}", f"zip/{part}")]
    addresses += [f"/zip/1/{part}", f"/make/{part}", f"/sheet/{part}/1.svg?k={here.slip}", f"/?k={part}"]
    addresses += [f"/sheet/strip-near.pdf/{part}.svg?k={here.slip}", f"/kits?compare={part}", f"/language?to={part}"]
    addresses += [f"/keep?k={part}", f"/compare?compare={part}&compare={part}", f"/alive?{part}"]
    answers = [here.get(address) for address in addresses]
    answers += [here.post("/slip", {field: path}) for field in FORM_FIELDS]
    answers += [here.post("/look", {"nr": path, "page": path, "view": path, "shapes": path})]
    answers += [here.post("/make", {"do": path, "k": path})]
    answers += [
        here.post("/open", {"open": path}),
        here.post("/copy", {"open": path}),
        here.post("/keep", {"how": path}),
    ]
    answers += [here.post(f"/make/{part}/stop", {"k": path})]
    for answer in answers:
        assert answer.status_code < 500
        assert b"secret" not in answer.data.replace(path.encode(), b"").replace(part.encode(), b"")
        assert "a=b" not in answer.headers.get("Set-Cookie", "")
    here.desk.close()


def test_links_and_other_files_of_the_folder_are_no_kits(here: Visitor) -> None:
    """A link to a file elsewhere is not in the list, so nothing can open it."""
    assert "link.toml" not in here.get("/kits").text
    assert here.post("/open", {"open": "1"}).status_code == 400 or "secret" not in here.get("/kits").text


def test_no_folder_is_listed(here: Visitor) -> None:
    """Folders of what the page loads are no pages."""
    for address in ("/static", "/static/", "/static/fonts", "/static/fonts/", "/pdf/", "/sheet/", "/zip/", "/make/"):
        assert here.get(address).status_code in (404, 405), address
    for name in ("desk.html", "../page/templates/desk.html", "..%2ftemplates%2fdesk.html", "fonts/../base.css"):
        assert here.get(f"/static/{name}").status_code == 404, name


# Floods


def test_too_many_lines_are_refused(here: Visitor) -> None:
    """Ten thousand of them, in a sentence that names the most."""
    answer = here.post("/look", {f"frame.{number}": "1" for number in range(10_000)})
    assert answer.status_code == 413
    assert str(FIELDS) in answer.text or str(FORM_BYTES // 1024) in answer.text


@pytest.mark.parametrize("address", ["/look", "/slip", "/open", "/make"])
def test_ten_megabytes_are_refused(here: Visitor, address: str) -> None:
    """Before they are read as a form."""
    answer = here.post(address, {"name": "a" * 10_000_000})
    answer.request.environ["wsgi.input"].close()
    assert answer.status_code == 413
    assert f"{FORM_BYTES // 1024} KB" in answer.text


def test_a_slip_does_not_grow_without_end(here: Visitor) -> None:
    """Many forms after each other, each with other rows of lists, are refused once they are more than a slip holds."""
    before = here.desk.slips.get(here.slip)
    assert before
    typed = dict(before.typed)
    statuses = set()
    for line in (
        "weft.colours[{}].name",
        "weft.strands[{}].colour",
        "run/buy.colours[{}].name",
        "run/buy.also[{}].name",
    ):
        statuses.add(here.post("/slip", {line.format(row): "a" * 1900 for row in range(1, 51)}).status_code)
    assert statuses == {303, 413}
    assert sum(map(len, before.typed.values())) <= FORM_BYTES
    before.typed = typed


@pytest.mark.parametrize(
    "name", ["weft.colours[0].name", "weft.colours[51].name", "weft.colours[].name", "x" * 500, "a.b"]
)
def test_a_line_that_is_none_is_not_kept(here: Visitor, name: str) -> None:
    """Only lines that a slip can have."""
    here.look({name: "1"})
    slip = here.desk.slips.get(here.slip)
    assert slip
    assert name not in slip.typed


def test_there_is_room_for_so_many_kits(tmp_path: Path) -> None:
    """What was not touched makes room; where all were, the fifty-first is refused in a sentence."""
    here = Visitor(tmp_path)
    for _ in range(60):
        assert here.post("/new", {"k": here.desk.slips.all()[-1].id}).status_code == 303
    assert len(here.desk.slips.all()) == 50
    for slip in here.desk.slips.all():
        slip.touched = True
    answer = here.post("/new")
    assert answer.status_code == 429
    assert "50 kits" in answer.text


# Files that are none


def zipped() -> bytes:
    """A zip of ten million zeros."""
    data = io.BytesIO()
    with zipfile.ZipFile(data, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("kit.toml", b"0" * 10_000_000)
    return data.getvalue()


UPLOADS: dict[str, bytes] = {
    "page.html": b"<!doctype html><script>alert(1)</script>",
    "kit.zip": zipped(),
    "binary.toml": bytes(range(256)) * 40,
    "utf16.toml": 'name = "x"'.encode("utf-16"),
    "empty.toml": b"",
    "deep.toml": b"a = " + b"[" * 50_000,
    "nested.toml": b"a = " + b"[" * 900 + b"]" * 900,
    "tables.toml": b".".join([b"a"] * 20_000) + b" = 1",
    "headers.toml": b"".join(b"[t%d]\n" % number for number in range(20_000)),
    "number.toml": b"version = " + b"9" * 200_000,
    "text.toml": b'name = "' + b"a" * 200_000 + b'"',
    "other.toml": b'[package]\nname = "x"',
    "picture.svg": b'<svg xmlns="http://www.w3.org/2000/svg" onload="alert(1)"/>',
    "<svg onload=alert(1)>.toml": b"a = [",
    "../../etc/passwd": b"a = [",
    "a\r\nSet-Cookie: a=b.toml": b"a = [",
    "nul\x00.toml": b"a = [",
    "x" * 5000: b"a = [",
}


@pytest.mark.parametrize("name", UPLOADS, ids=lambda name: repr(name[:20]))
def test_a_file_that_is_none_is_refused(here: Visitor, name: str) -> None:
    """With a sentence on the page, in which its name is shown and does nothing; no kit comes of it."""
    slips = len(here.desk.slips.all())
    answer = here.post("/open", {"file": (io.BytesIO(UPLOADS[name]), name)})
    assert answer.status_code < 500
    assert "<svg onload" not in answer.text
    assert "<script>alert" not in answer.text
    assert "Set-Cookie" not in answer.headers
    assert 'role="alert"' in answer.text or answer.status_code == 303
    opened = [slip for slip in here.desk.slips.all()[slips:] if slip.typed]
    for slip in opened:
        here.desk.slips.get(here.slip)
        assert "<" not in here.get(f"/?k={slip.id}").text.partition("<title>")[2].partition("</title>")[0]


def test_a_file_that_is_too_large_is_refused(here: Visitor) -> None:
    """One byte more than the most, and ten megabytes."""
    for size in (UPLOAD_BYTES + 1, 10_000_000):
        answer = here.post("/open", {"file": (io.BytesIO(b"#" * size), "kit.toml")})
        answer.request.environ["wsgi.input"].close()
        assert answer.status_code == 413, size
        assert f"{UPLOAD_BYTES // 1024} KB" in answer.text


# Markup

MARKUP = (
    "<script>alert(1)</script>",
    '"><svg onload=alert(1)>',
    "'><img src=x onerror=alert(1)>",
    "]]><!--<svg/onload=alert(1)>",
    "&lt;script&gt;&#x3c;",
    "{{ 7*191 }}{% raw %}",
    "</textarea><script>alert(1)</script>",
    "\u202e<b>\u2028</b>\x00\x1b[31m",
)


def test_markup_in_every_line_stays_text(tmp_path: Path) -> None:
    """In the page, in the answer to a question, in sheets and in the table of kits; each line has one of them."""
    here = Visitor(tmp_path)
    names = list(lines(example()))
    hostile = {name: MARKUP[at % len(MARKUP)] for at, name in enumerate(names)}
    pages = [here.post("/look", hostile, accept="application/json").json]
    pages += [here.get("/").text, here.get("/kits").text]
    here.look({name: example().get(name, "") for name in names})
    for markup in MARKUP:
        pages.append(here.look({"name": markup, "yarns.warp": markup, "yarns.weft": markup}))
    here.look({"name": MARKUP[0], "yarns.warp": MARKUP[1], "yarns.weft": MARKUP[4]})
    sheet = here.get(f"/sheet/winding.pdf/1.svg?k={here.slip}")
    pages += [sheet.text, here.get("/").text]
    assert sheet.status_code == 200
    for page in _texts(pages):
        for bad in ("<script>alert", "<svg onload", "<svg/onload", "<img src=x", "<b>\u2028", "1337"):
            assert bad not in page, page[max(0, page.find(bad) - 80) : page.find(bad) + 80]


def _texts(value: Any, key: str = "") -> list[str]:
    """Every HTML or SVG in an answer; what scripts put in as text ("say", "text", "help") is no markup there."""
    if isinstance(value, str):
        return [] if key in ("say", "text", "help", "also", "field") or key.startswith("said") else [value]
    if isinstance(value, dict):
        return [text for name, each in value.items() for text in _texts(each, name)]
    if isinstance(value, list) and key != "said":
        return [text for each in value for text in _texts(each, key)]
    return []


# Anything at all

NAMES = st.one_of(st.sampled_from(list(SPECS)).map(lambda name: name.replace("[]", "[1]")), st.text(max_size=20))
VALUES = st.one_of(
    st.text(max_size=30),
    st.sampled_from(
        ["40 cm", "1e999", "-1 mm", "0", "9" * 400, "1/0 in", "NaN", "infinity", "yes", "round bars", "5 winds"]
    ),
    st.from_regex(r"\A[0-9]{1,4}([.,/ ][0-9]{1,3})? ?(mm|cm|m|in|epi|%|g|N|tex)?\Z"),
)
FEW = 15
USUAL = settings(
    max_examples=FEW if settings().max_examples < 100 else 200,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
    deadline=None,
)


@USUAL
@given(st.dictionaries(NAMES, VALUES, max_size=6), st.sampled_from(["/look", "/slip"]))
def test_anything_typed_is_answered(here: Visitor, fields: dict[str, str], address: str) -> None:
    """Whatever stands in whichever lines: an answer below 500, and a fault of our own raises here."""
    slip = here.desk.slips.get(here.slip)
    assert slip
    slip.typed = example()
    kept = {name: text for name, text in fields.items() if name not in ("token", "k", "do", "use")}
    assert here.post(address, kept).status_code in (200, 303, 413)


@USUAL
@given(st.dictionaries(st.sampled_from((*FORM_FIELDS, "token", "how", "open", "code", "x")), st.text(max_size=20)))
def test_any_form_is_answered(here: Visitor, fields: dict[str, str]) -> None:
    """Whatever the page's own fields say, at every address that takes a form."""
    for address in ("/look", "/slip", "/open", "/copy", "/keep", "/enter"):
        assert here.post(address, fields).status_code < 500


@USUAL
@given(st.text(max_size=30), st.text(max_size=12), st.text(max_size=12))
def test_any_address_is_answered(here: Visitor, path: str, name: str, value: str) -> None:
    """Whatever is asked for."""
    address = f"/{quote(path)}?{quote(name)}={quote(value)}"
    assert here.client.get(address, headers={"Host": HOST}).status_code < 500


@pytest.mark.parametrize("kind", ["text/plain", "application/json", "application/toml", "", "multipart/form-data"])
def test_what_is_no_form_is_refused(here: Visitor, kind: str) -> None:
    """Values for programs, plain text, a form without its parts."""
    sent = {"Host": HOST, "Origin": f"http://{HOST}"}
    answer = here.client.post("/look", data=b'{"token": "x"}', content_type=kind, headers=sent)
    assert answer.status_code == (403 if kind.startswith("multipart") else 415)


def test_many_questions_at_once(tmp_path: Path) -> None:
    """Eight clients type into one slip at the same time; each is answered, and the last word stays."""
    here = Visitor(tmp_path)
    found: list[int] = []

    def ask(number: int) -> None:
        client = here.app.test_client()
        client.set_cookie(here.desk.cookie("session"), here.desk.session, domain="127.0.0.1")
        for nr in range(5):
            sent = {
                "token": here.desk.token,
                "k": here.slip,
                "nr": str(nr),
                "page": str(number),
                "name": f"Kit {number} {nr}",
            }
            answer = client.post("/look", data=sent, headers={"Host": HOST, "Origin": f"http://{HOST}"})
            found.append(answer.status_code)

    threads = [threading.Thread(target=ask, args=(number,)) for number in range(8)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert found == [200] * 40
    assert here.desk.slips.all()[0].typed["name"].endswith(" 4")


def test_makes_at_once_are_one(tmp_path: Path) -> None:
    """Of several that begin together one runs, the others are told so."""
    here = Visitor(tmp_path)
    slip = here.desk.slips.all()[0]
    slip.examples.clear()
    answers = [here.post("/make", {"do": "make"}, accept="application/json").json or {} for _ in range(4)]
    assert [bool(each.get("refused")) for each in answers] == [False, True, True, True]
    here.desk.close()


def test_a_fault_of_our_own_is_a_sentence(tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: Any) -> None:
    """The person sees one sentence, without a path; the traceback goes to the error stream."""
    here = Visitor(tmp_path)
    here.app.testing = False
    monkeypatch.setattr("templates_gen.desk.server.looking.take", lambda *_: 1 / 0)
    answer = here.post("/look", {"nr": "1"}, accept="application/json")
    assert answer.status_code == 400
    assert answer.json == {"say": ENGLISH.say(DeskRefusal.FAULT)}
    said = capsys.readouterr().err
    assert "ZeroDivisionError" in said
    assert "/look" in said
