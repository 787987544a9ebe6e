"""A desk in earnest: the command as a process, and what comes over a socket."""

from __future__ import annotations

import errno
import signal
import socket
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

import pytest
from desk_process import ROOT, Client, Running, running


@pytest.fixture(scope="module")
def desk(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Running]:
    """One desk for all; that it ends well and said nothing of trouble is found at its end."""
    with running(tmp_path_factory.mktemp("desk")) as found:
        yield found


@pytest.fixture(scope="module")
def client(desk: Running) -> Iterator[Client]:
    """The browser that was let in."""
    with closing(Client(desk.port, desk.key)) as found:
        yield found


def sent(desk: Running, *pieces: bytes) -> bytes:
    """What comes back for these bytes."""
    found = b""
    with socket.create_connection(("127.0.0.1", desk.port), timeout=30) as to:
        with _hung_up():
            for piece in pieces:
                to.sendall(piece)
            to.shutdown(socket.SHUT_WR)
        with _hung_up():
            while data := to.recv(65536):
                found += data
    return found


@contextmanager
def _hung_up() -> Iterator[None]:
    """The desk need not wait for all that is sent: what it has answered until then can still be read, or not."""
    try:
        yield
    except OSError as error:
        if error.errno not in (errno.ECONNRESET, errno.EPIPE, errno.ENOTCONN):
            raise


def test_it_answers_and_keeps(client: Client) -> None:
    """A question over a connection that stays open, and the page after it."""
    status, head, body = client.post("/look", {"nr": "1", "frame.outer_width": "41.5 cm"})
    assert (status, head["content-type"]) == (200, "application/json")
    assert b"41.5 cm" in body
    assert b'value="41.5 cm"' in client.asked("GET", "/")[2]


def test_it_listens_on_this_computer_alone(desk: Running) -> None:
    """No other address of this computer reaches it (proc(5), net/tcp: 0100007F is 127.0.0.1)."""
    table = Path("/proc/net/tcp")
    if not table.is_file():
        pytest.skip("only Linux shows who listens there")
    rows = [line.split()[1] for line in table.read_text("ascii").splitlines()[1:] if line.split()[3] == "0A"]
    assert [row for row in rows if row.endswith(f":{desk.port:04X}")] == [f"0100007F:{desk.port:04X}"]


def test_the_server_has_no_name(client: Client) -> None:
    """No header says what serves it, and what is not HTTP gets the same headers as all."""
    assert "server" not in client.asked("GET", "/alive")[1]


@pytest.mark.parametrize(
    "piece",
    [
        b"GET / HTTP/1.1\r\n\r\n",
        b"GET / HTTP/1.1\r\nHost: example.org\r\n\r\n",
        b"GET http://example.org/ HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\n\r\n",
        b"GET / HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nHost: example.org\r\n\r\n",
        b"POST /look HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nContent-Length: -1\r\n\r\n",
        b"POST /look HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nContent-Length: 99999999999\r\n\r\n",
        b"POST /look HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nTransfer-Encoding: gzip\r\n\r\n",
        b"POST /look HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nTransfer-Encoding: chunked\r\n\r\nzz\r\n",
        b"GET /%ff%fe%00 HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\n\r\n",
        b"GET /../../etc/passwd HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\n\r\n",
        b"GET / HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nX: " + b"a" * 400_000 + b"\r\n\r\n",
        b"GET / HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nX: a\x00b\r\n y\r\n\r\n",
        b"\x16\x03\x01\x02\x00\x01\x00\x01\xfc\x03\x03",
        b"BREW / HTTP/9.9\r\n\r\n",
        b"\r\n\r\n\r\n",
    ],
    ids=range(15),
)
def test_what_is_no_good_request_is_refused(desk: Running, piece: bytes) -> None:
    """With a status of 4 and a sentence of our own, or with nothing; the desk goes on."""
    answer = sent(desk, piece.replace(b"{port}", str(desk.port).encode()))
    assert not answer or answer.split()[1][:1] == b"4", answer[:200]
    if answer:
        head = answer.partition(b"\r\n\r\n")[0].lower()
        assert b"content-security-policy: default-src 'none'" in head
        assert b"waitress" not in answer.lower()
        assert b"traceback" not in answer.lower()
    assert desk.process.poll() is None


def chunked(client: Client, body: bytes, size: int) -> bytes:
    """A form in chunks of that size."""
    head = (
        f"POST /look HTTP/1.1\r\nHost: {client.host}\r\nOrigin: http://{client.host}\r\nCookie: {client.cookie}\r\n"
        "Accept: application/json\r\nContent-Type: application/x-www-form-urlencoded\r\n"
        "Connection: close\r\nTransfer-Encoding: chunked\r\n\r\n"
    ).encode()
    pieces = [body[at : at + size] for at in range(0, len(body), size)]
    return head + b"".join(b"%x\r\n%b\r\n" % (len(piece), piece) for piece in pieces) + b"0\r\n\r\n"


def test_a_body_in_chunks(desk: Running, client: Client) -> None:
    """A good form is read, and one of a megabyte is refused like any."""
    form = f"token={client.token}&k={client.slip}&nr=2&name=Chunked".encode()
    assert b'"nr":2' in sent(desk, chunked(client, form, 7)).replace(b" ", b"")
    assert sent(desk, chunked(client, form + b"&x=" + b"a" * 1_000_000, 50_000)).split()[1] == b"413"


def test_twenty_megabytes_are_refused(desk: Running, client: Client) -> None:
    """More than is ever read, in our words."""
    head = f"POST /look HTTP/1.1\r\nHost: {client.host}\r\nContent-Length: 20000000\r\n\r\n".encode()
    answer = sent(desk, head)
    assert answer.split()[1] == b"413"
    assert b"too large for the desk" in answer


def test_many_open_connections_hold_nobody_up(desk: Running, client: Client) -> None:
    """Forty that say nothing further: the next question is answered."""
    waiting = [socket.create_connection(("127.0.0.1", desk.port), timeout=30) for _ in range(40)]
    try:
        for each in waiting:
            each.sendall(b"POST /look HTTP/1.1\r\nHost: ")
        assert client.asked("GET", "/alive")[0] == 204
    finally:
        for each in waiting:
            each.close()


def test_a_port_that_is_taken_is_one_sentence(desk: Running, tmp_path: Path) -> None:
    """And code 2."""
    command = [sys.executable, "-m", "templates_gen", "desk", "--no-browser", "--port", str(desk.port)]
    ended = subprocess.run(
        command, cwd=tmp_path, env=_environment(), capture_output=True, text=True, timeout=60, check=False
    )
    assert ended.returncode == 2
    assert ended.stderr.count("\n") == 1
    assert str(desk.port) in ended.stderr


@pytest.mark.parametrize("number", [signal.SIGTERM, signal.SIGHUP])
def test_it_ends_well_when_its_window_is_closed(tmp_path: Path, number: signal.Signals) -> None:
    """While files are made too: the run ends, and its private folder goes."""
    before = set(_private())
    with running(tmp_path) as desk, closing(Client(desk.port, desk.key)) as client:
        assert client.post("/make", {"do": "make", "as_is": "yes"})[0] == 200
        assert set(_private()) - before
        desk.process.send_signal(number)
        end = time.monotonic() + 30
        while desk.process.poll() is None and time.monotonic() < end:
            time.sleep(0.05)
        assert desk.process.returncode == 0
    assert not set(_private()) - before


def _private() -> list[Path]:
    return list(Path(tempfile.gettempdir()).glob("templates-gen-desk-*"))


def _environment() -> dict[str, str]:
    import os

    return {**os.environ, "PYTHONPATH": str(ROOT)}


def test_a_network_is_opened_with_a_warning(tmp_path: Path) -> None:
    """The code and the warning are printed; the desk listens at the address of the network too. None: one sentence."""
    command = [sys.executable, "-m", "templates_gen", "desk", "--no-browser", "--network"]
    with subprocess.Popen(
        command, cwd=tmp_path, env=_environment(), stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True
    ) as process:
        assert process.stdout
        first = process.stdout.readline()
        if not first:
            assert process.stderr
            assert "--network" in process.stderr.read()
            return
        process.stdout.readline()
        try:
            assert "Careful" in first
            host, port = first.rsplit("http://", 1)[1].strip().rstrip("/").split(":")
            with socket.create_connection((host, int(port)), timeout=30) as to:
                to.sendall(f"GET / HTTP/1.1\r\nHost: {host}:{port}\r\nConnection: close\r\n\r\n".encode())
                answer = b"".join(iter(lambda: to.recv(65536), b""))
            assert b" 403 " in answer.split(b"\r\n")[0]
            assert b'action="/enter"' in answer
        finally:
            process.terminate()
            process.communicate(timeout=60)
