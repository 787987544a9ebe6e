"""Where the desk listens: on this computer alone, and on its network only where that was asked for."""

from __future__ import annotations

import errno
import socket
import sys
from contextlib import suppress

from layout.values.errors import LayoutError
from templates_gen.messages.language import message
from templates_gen.messages.roles.desk_server import DeskCommand

HERE = "127.0.0.1"
USUAL = 24_710
"""The port that is tried first: a browser keeps what it measured of the screen by port. A free one is taken else."""
_MOST = 65_535
_OUTSIDE = ("192.0.2.1", 9)  # an address for documents (RFC 5737); a datagram socket that is connected sends nothing


def listening(port: int | None, network: str | None = None) -> list[socket.socket]:
    """Sockets that listen on one port: on this computer, and on its address in a network. LayoutError where not."""
    if port is not None and not 1 <= port <= _MOST:
        raise LayoutError(message(DeskCommand.NO_PORT, port=port))
    here = _bound(HERE, port) if port is not None else _any()
    if network is None:
        return [here]
    try:
        return [here, _bound(network, here.getsockname()[1])]
    except LayoutError:
        here.close()
        raise


def network_address() -> str:
    """The address of this computer in its network; LayoutError where it has none. Nothing is sent."""
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as asked, suppress(OSError):
        asked.connect(_OUTSIDE)
        found: str = asked.getsockname()[0]
        if not found.startswith("127."):
            return found
    raise LayoutError(message(DeskCommand.NO_NETWORK))


def _any() -> socket.socket:
    try:
        return _bound(HERE, USUAL)
    except LayoutError:
        return _bound(HERE, 0)


def _bound(host: str, port: int) -> socket.socket:
    found = socket.socket(socket.AF_INET, socket.SOCK_STREAM)
    try:
        if sys.platform == "win32":  # there, the usual option would let two programs listen on one port
            found.setsockopt(socket.SOL_SOCKET, socket.SO_EXCLUSIVEADDRUSE, 1)
        else:
            found.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        found.bind((host, port))
        found.listen(128)
    except OSError as error:
        found.close()
        used = error.errno == errno.EADDRINUSE
        role = DeskCommand.PORT_IN_USE if used else DeskCommand.NO_PORT
        raise LayoutError(message(role, port=port)) from error
    return found
