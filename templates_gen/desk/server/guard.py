"""Who is let in, and what a page of the desk may do.

The desk answers to its own name alone, so that no other name can be pointed at it (DNS rebinding); it takes what is
sent from its own pages alone (the header Origin and a token, against forms of other sites); and it lets in browsers
that were given its key. The policies are those of the standards Content Security Policy, Referrer Policy and Fetch.
"""

from __future__ import annotations

import hmac
from typing import TYPE_CHECKING

from flask import Flask, Response, redirect, request

from templates_gen.desk.server.refusals import BODY_BYTES, FORM_BYTES, RefusedError
from templates_gen.messages.roles.desk_server import DeskRefusal

if TYPE_CHECKING:
    from werkzeug.wrappers import Response as AnyResponse

    from templates_gen.desk.server.state import Desk

POLICY = "; ".join(
    (
        "default-src 'none'",
        "script-src 'self'",
        "style-src 'self'",
        "img-src 'self'",
        "font-src 'self'",
        "connect-src 'self'",
        "form-action 'self'",
        "base-uri 'none'",
        "frame-ancestors 'none'",
    )
)
HEADERS = {
    "Content-Security-Policy": POLICY,
    "X-Content-Type-Options": "nosniff",
    # With "no-referrer" a browser says "Origin: null" of a plain form (Fetch, "append a request Origin header").
    "Referrer-Policy": "same-origin",
    "Cache-Control": "no-store",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
}
FIELDS = 4000
"""A slip with every list as long as it may be has fewer lines; only lists within lists are shorter then."""
_OPEN_TO_ALL = ("static", "enter")
_ELSEWHERE = ("cross-site", "same-site")  # another port of this computer is the same site


def guard(app: Flask, desk: Desk) -> None:
    """Puts all this before every route, and the headers behind it."""
    app.config["MAX_CONTENT_LENGTH"] = BODY_BYTES
    app.config["MAX_FORM_MEMORY_SIZE"] = FORM_BYTES
    app.config["MAX_FORM_PARTS"] = FIELDS

    @app.before_request
    def asked() -> AnyResponse | None:
        _host(desk)
        if request.method not in ("GET", "HEAD"):
            _own_page(desk)
        elif request.path != "/" and request.headers.get("Sec-Fetch-Site") in _ELSEWHERE:
            raise RefusedError(403, DeskRefusal.ORIGIN)
        if request.endpoint in _OPEN_TO_ALL:
            return None
        return _key(desk)

    @app.after_request
    def answered(answer: Response) -> Response:
        for name, value in HEADERS.items():
            answer.headers[name] = value
        return answer


def _host(desk: Desk) -> None:
    if request.environ.get("HTTP_HOST", "").lower() not in desk.hosts:
        raise RefusedError(403, DeskRefusal.HOST)


def _own_page(desk: Desk) -> None:
    """The header is asked before the body is read."""
    if request.headers.get("Origin", "") != f"http://{request.environ['HTTP_HOST'].lower()}":
        raise RefusedError(403, DeskRefusal.ORIGIN)
    if request.endpoint in _OPEN_TO_ALL:
        return
    if not let_in(desk):
        raise RefusedError(403, DeskRefusal.KEY)
    if request.mimetype not in ("application/x-www-form-urlencoded", "multipart/form-data"):
        raise RefusedError(415, DeskRefusal.KIND)
    if not same(request.form.get("token", ""), desk.token):
        raise RefusedError(403, DeskRefusal.TOKEN)
    if sum(1 for _ in request.form.items(multi=True)) > FIELDS:
        raise RefusedError(413, DeskRefusal.TOO_MANY_LINES, most=FIELDS)


def _key(desk: Desk) -> AnyResponse | None:
    """The key of the address becomes a cookie and leaves the address."""
    inside, key = let_in(desk), request.args.get("key")
    if key is None or request.path != "/" or request.method != "GET":
        if not inside:
            raise RefusedError(403, DeskRefusal.KEY)
        return None
    if not inside:
        with desk.lock:  # of two browsers that show the key at once, one comes in
            if desk.key is None or not same(key, desk.key):
                raise RefusedError(403, DeskRefusal.USED if desk.key is None else DeskRefusal.KEY)
            desk.key = None
    return welcome(desk)


def welcome(desk: Desk) -> AnyResponse:
    """Lets a browser in, and leads it to the page."""
    answer = redirect("/", 303)
    answer.set_cookie(desk.cookie("session"), desk.session, httponly=True, samesite="Strict")
    return answer


def let_in(desk: Desk) -> bool:
    """Whether this browser was let in before."""
    return same(request.cookies.get(desk.cookie("session"), ""), desk.session)


def same(one: str, other: str) -> bool:
    """Whether two secrets are alike, in a time that says nothing of where they differ."""
    return hmac.compare_digest(one.encode("utf-8", "replace"), other.encode())
