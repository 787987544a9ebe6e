"""The roles of what the desk says: the command that opens it, and what its server refuses."""

from __future__ import annotations

from layout.messages.catalogue import Role


class DeskCommand(Role):
    """What the command prints."""

    OPEN = "desk_server.command.open"
    NETWORK = "desk_server.command.network"
    NO_NETWORK = "desk_server.command.no_network"
    CLOSED = "desk_server.command.closed"
    PORT_IN_USE = "desk_server.command.port_in_use"
    NO_PORT = "desk_server.command.no_port"
    NO_FOLDER = "desk_server.command.no_folder"
    FAULT = "desk_server.command.fault"
    STARTERS = "desk_server.command.starters"
    STARTER_THERE = "desk_server.command.starter_there"


class DeskRefusal(Role):
    """What a page says in place of what was asked for."""

    TITLE = "desk_server.refusal.title"
    BACK = "desk_server.refusal.back"
    BAD = "desk_server.refusal.bad"
    HOST = "desk_server.refusal.host"
    ORIGIN = "desk_server.refusal.origin"
    TOKEN = "desk_server.refusal.token"
    KEY = "desk_server.refusal.key"
    USED = "desk_server.refusal.used"
    NOT_FOUND = "desk_server.refusal.not_found"
    METHOD = "desk_server.refusal.method"
    TOO_LARGE = "desk_server.refusal.too_large"
    TOO_MANY_LINES = "desk_server.refusal.too_many_lines"
    TOO_LONG = "desk_server.refusal.too_long"
    KIND = "desk_server.refusal.kind"
    TOO_OFTEN = "desk_server.refusal.too_often"
    FAULT = "desk_server.refusal.fault"
    TOO_MANY_KITS = "desk_server.refusal.too_many_kits"
    TOO_LARGE_TO_DRAW = "desk_server.refusal.too_large_to_draw"
    NO_SLIP = "desk_server.refusal.no_slip"
    NOT_READ = "desk_server.refusal.not_read"
    WRONG_CODE = "desk_server.refusal.wrong_code"
    TOO_MANY_CODES = "desk_server.refusal.too_many_codes"


class DeskEntry(Role):
    """The page that asks another device for the code."""

    ASK = "desk_server.entry.ask"
    LABEL = "desk_server.entry.label"
    ENTER = "desk_server.entry.enter"


class DeskNote(Role):
    """What is said of files on the page of kits."""

    STOCK_FILE = "desk_server.note.stock_file"
