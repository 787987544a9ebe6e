"""The desk as a running server: it listens, opens a browser, and ends when it is stopped."""

from __future__ import annotations

import gc
import logging
import signal
import threading
import webbrowser
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path
from types import FrameType
from typing import Any, NamedTuple

from waitress import create_server
from waitress.channel import HTTPChannel
from waitress.task import ErrorTask

from templates_gen.desk.server.app import create_app
from templates_gen.desk.server.guard import HEADERS
from templates_gen.desk.server.sockets import listening, network_address
from templates_gen.desk.server.state import Desk
from templates_gen.messages.language import message
from templates_gen.messages.roles.desk_server import DeskCommand, DeskRefusal

_THREADS = 4
_LARGEST = 16 * 1024 * 1024
"""Up to here a body is read, so that the page can say in its own words that it is too large."""
_USUAL_GARBAGE = (700, 10, 10)


class Asked(NamedTuple):
    """What the command was asked for. `port` None takes a free one."""

    folder: Path
    port: int | None = None
    network: bool = False
    browser: bool = True


def serve(asked: Asked, say: Callable[[str], None]) -> None:
    """Opens a desk and serves it until it is stopped; `say` gets the sentences. LayoutError where it cannot open."""
    address = network_address() if asked.network else None
    sockets = listening(asked.port, address)
    desk = Desk(asked.folder, sockets[0].getsockname()[1], address)
    server = _server(desk, sockets)
    for name in ("waitress", "waitress.queue"):  # a browser that asks for ten pictures at once is no news
        logging.getLogger(name).setLevel(logging.ERROR)
    # A command that ends soon collects hardly any garbage; a server must.
    gc.unfreeze()
    gc.set_threshold(*_USUAL_GARBAGE)
    for signal_name in ("SIGTERM", "SIGHUP", "SIGBREAK"):  # a window that is closed says one of the last two
        if hasattr(signal, signal_name):
            signal.signal(getattr(signal, signal_name), _end)
    if address:
        say(message(DeskCommand.NETWORK, address=f"http://{desk.hosts[-1]}/", code=desk.code))
    say(message(DeskCommand.OPEN, address=desk.key_address))
    if asked.browser:
        threading.Thread(target=webbrowser.open, args=(desk.key_address,), daemon=True).start()
    try:
        with suppress(KeyboardInterrupt, SystemExit):
            server.run()  # until an interrupt or _end
    finally:
        desk.close()
    say(message(DeskCommand.CLOSED))


def _end(_number: int, _frame: FrameType | None) -> None:
    raise SystemExit(0)


def _server(desk: Desk, sockets: list[Any]) -> Any:
    listeners: dict[Any, Any] = {}
    server = create_server(
        create_app(desk),
        map=listeners,
        sockets=sockets,
        threads=_THREADS,
        max_request_body_size=_LARGEST,
        ident=None,
        clear_untrusted_proxy_headers=True,
    )
    for each in listeners.values():
        if hasattr(each, "channel_class"):
            each.channel_class = _Channel
    return server


class _Refused(ErrorTask):  # type: ignore[misc]  # the library has no types
    """What cannot be read as HTTP at all, or is endless: one of our sentences, with our headers."""

    def execute(self) -> None:
        """Writes the answer."""
        code = self.request.error.code
        role = DeskRefusal.TOO_LARGE if code in (413, 431) else DeskRefusal.FAULT if code == 500 else DeskRefusal.BAD
        said = message(role, most=_LARGEST // 1024) if role == DeskRefusal.TOO_LARGE else message(role)
        body = said.encode()
        self.status = "413 Content Too Large" if role == DeskRefusal.TOO_LARGE else "400 Bad Request"
        self.response_headers.extend([("Content-Type", "text/plain; charset=utf-8"), *HEADERS.items()])
        self.set_close_on_finish()
        self.content_length = len(body)
        self.write(body)


class _Channel(HTTPChannel):  # type: ignore[misc]
    """A connection whose errors are said in our words."""

    error_task_class = _Refused
