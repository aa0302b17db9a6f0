"""The page, served on this machine, under its own names only.

In: what is shown, and who builds. Out: answers to a browser.
Invariant: nothing but the page itself gets an answer that it can read, and nothing that a
pattern says can run in it.
"""

from __future__ import annotations

import asyncio
import contextlib
import json
import secrets
import socket
from collections.abc import AsyncIterator

import uvicorn
from starlette.applications import Starlette
from starlette.requests import Request
from starlette.responses import HTMLResponse, JSONResponse, Response, StreamingResponse
from starlette.routing import Route
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from publish.preview.building import Choice
from publish.preview.watching import Watching
from publish.web import render

HOST = "127.0.0.1"
LOOK = 0.1
"""Seconds between looks at whether there is something new to tell."""
ENOUGH = 10_000
"""Bytes of a choice, at most."""
POLICY = (
    "default-src 'none'; style-src 'nonce-{0}'; script-src 'nonce-{0}'; connect-src 'self'; "
    "img-src 'self' data:; frame-ancestors 'self'; base-uri 'none'; form-action 'none'"
)
"""What the page may load and run: its own style, script and pictures, nothing else."""
CLOSED = {
    "cache-control": "no-store",
    "cross-origin-opener-policy": "same-origin",
    "cross-origin-resource-policy": "same-origin",
    "referrer-policy": "no-referrer",
    "x-content-type-options": "nosniff",
    "x-frame-options": "SAMEORIGIN",
}
"""Headers that keep every answer from pages of other origins (Fetch and HTML standards)."""


class Guarded:
    """Passes on what this page asks of itself; everything else is refused.

    A browser tells the name that it was given. A page elsewhere can point a name of its own
    at this machine, and would then read the answers; but the name is not one of ours.
    """

    def __init__(self, app: ASGIApp, port: int) -> None:
        self.app = app
        self.names = frozenset(f"{host}:{port}" for host in (HOST, "localhost"))

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return

        async def closed(message: Message) -> None:
            if message["type"] == "http.response.start":
                more = [(k.encode(), v.encode()) for k, v in CLOSED.items()]
                message["headers"] = [*message.get("headers", ()), *more]
            await send(message)

        refused = self._refusal(Request(scope))
        answer = self.app if refused == 0 else Response(status_code=refused)
        await answer(scope, receive, closed)

    def _refusal(self, request: Request) -> int:
        """Return the status that refuses a request; 0 where it is ours."""
        asked = request.headers
        if asked.get("host") not in self.names:
            return 421
        origin = asked.get("origin")
        ours = {f"http://{name}" for name in self.names}
        site = asked.get("sec-fetch-site", "none")
        visit = asked.get("sec-fetch-mode") == "navigate" and request.method == "GET"
        if request.method not in ("GET", "HEAD") and origin is None:
            return 403
        own = origin is None or origin in ours
        return 0 if own and (site in ("none", "same-origin") or visit) else 403


def application(watching: Watching) -> Starlette:
    """Return the page's answers: itself, its state as it changes, pictures, a choice."""
    answers = Answers(watching)
    return Starlette(
        routes=[
            Route("/", answers.page),
            Route("/state", answers.state),
            Route("/events", answers.events),
            Route("/pages/{key}.png", answers.picture),
            Route("/choice", answers.choose, methods=["POST"]),
        ]
    )


class Answers:
    """What each address answers."""

    def __init__(self, watching: Watching) -> None:
        self.watching = watching
        self.shown = watching.shown

    async def page(self, request: Request) -> Response:
        """Answer with the page, whose own script alone may run."""
        nonce = secrets.token_urlsafe(16)
        title = self.shown.path.resolve().parent.name
        said = render("preview.html", title=title, nonce=nonce)
        return HTMLResponse(said, headers={"Content-Security-Policy": POLICY.format(nonce)})

    async def state(self, request: Request) -> Response:
        """Answer with what is shown now."""
        return JSONResponse(self.shown.plain())

    async def events(self, request: Request) -> Response:
        """Answer with what is shown, again whenever it changes (server-sent events)."""
        return StreamingResponse(self._told(), media_type="text/event-stream")

    async def _told(self) -> AsyncIterator[str]:
        seen = -1
        while True:
            if self.shown.version != seen:
                now = self.shown.plain()
                seen = now["version"]
                yield f"data: {json.dumps(now)}\n\n"
            await asyncio.sleep(LOOK)

    async def picture(self, request: Request) -> Response:
        """Answer with the picture of a page."""
        png = self.shown.picture(request.path_params["key"])
        return Response(status_code=404) if png is None else Response(png, media_type="image/png")

    async def choose(self, request: Request) -> Response:
        """Build what the reader chose from now on."""
        body = b""
        async for part in request.stream():
            body += part
            if len(body) > ENOUGH:
                return Response(status_code=413)
        choice = _chosen(body)
        if choice is None:
            return Response(status_code=400)
        self.watching.choose(choice)
        return Response(status_code=204)


def _chosen(body: bytes) -> Choice | None:
    """Return what a reader chose; None where it is not a choice."""
    try:
        found = json.loads(body)
        words = {name: found[name] for name in ("paper", "size", "layout")}
    except (ValueError, KeyError, TypeError):
        return None
    return Choice(**words) if all(isinstance(word, str) for word in words.values()) else None


def listening(port: int) -> socket.socket:
    """Return a socket of this machine alone; port 0 takes a free one. Raises OSError."""
    return socket.create_server((HOST, port))


def address(listener: socket.socket) -> str:
    """Return where a browser finds the page."""
    return f"http://{HOST}:{listener.getsockname()[1]}/"


def serve(watching: Watching, listener: socket.socket) -> None:
    """Answer on a socket until Ctrl-C or a request to end."""
    port = listener.getsockname()[1]
    with contextlib.suppress(KeyboardInterrupt):  # it is told once more after the last answer
        server(Guarded(application(watching), port)).run(sockets=[listener])


def server(app: ASGIApp) -> uvicorn.Server:
    """Return what answers a browser; it says nothing of itself."""
    return uvicorn.Server(
        uvicorn.Config(
            app,
            log_level="critical",
            server_header=False,
            lifespan="off",
            timeout_graceful_shutdown=1,
        )
    )
