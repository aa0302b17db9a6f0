"""A local page that rebuilds a pattern after each save.

In: a pattern's path. Out: pages served on this machine only, until stopped.
Invariant: the last good build stays on the page while a new one is made or fails; the
findings of the newest try are beside it. Nothing but the page itself gets an answer that
it can read, and nothing that a pattern says can run in it.
"""

from __future__ import annotations

import html
import json
import secrets
import threading
import time
import traceback
from collections.abc import Mapping
from dataclasses import dataclass, field
from http import HTTPStatus
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

from publish import pipeline
from publish.kept import Store, users
from publish.notes import PublishError, Report
from publish.read import studio_file
from publish.report import concise, summary
from publish.work import print_editions

HOST = "127.0.0.1"
WATCHED = {".yaml", ".yml", ".svg", ".png", ".jpg", ".jpeg", ".tif", ".tiff", ".ttf", ".otf"}
PAUSE = 0.5
"""Seconds between looks at the files."""

PAGE = """<!doctype html>
<html lang="en"><meta charset="utf-8"><title>{title}</title>
<style nonce="{nonce}">
  body {{ margin: 0; font: 15px/1.5 system-ui, sans-serif; display: grid;
         grid-template-columns: 1fr minmax(16rem, 24rem); height: 100vh; }}
  iframe {{ border: 0; width: 100%; height: 100%; }}
  aside {{ padding: 1rem; overflow: auto; background: #f6f3ec; }}
  li {{ margin: 0 0 .75rem; overflow-wrap: anywhere; }}
</style>
{booklet}
<aside><h1>{title}</h1><p>{state}</p><ol>{findings}</ol></aside>
<script nonce="{nonce}">
  setInterval(async () => {{
    const seen = await (await fetch("/state")).json();
    if (seen.tries !== {tries}) location.reload();
  }}, 700);
</script></html>
"""
POLICY = (
    "default-src 'none'; style-src 'nonce-{0}'; script-src 'nonce-{0}'; connect-src 'self'; "
    "frame-src 'self'; frame-ancestors 'self'; base-uri 'none'; form-action 'none'"
)
"""What the page may load and run: its own style and script, its own booklet, nothing else."""
CLOSED = {
    "Cache-Control": "no-store",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Referrer-Policy": "no-referrer",
    "X-Content-Type-Options": "nosniff",
    "X-Frame-Options": "SAMEORIGIN",
}
"""Headers that keep every answer from pages of other origins (Fetch and HTML standards)."""


@dataclass
class Shown:
    """What the page shows: the newest findings and the last good booklet."""

    path: Path
    paper: str
    tries: int = 0
    built: int = 0
    seconds: float = 0.0
    pdf: bytes = b""
    report: Report = field(default_factory=Report)
    state: str = "Building for the first time ..."

    def rebuild(self) -> None:
        """Build once; keep the last good booklet when this try fails, whatever the reason."""
        started = time.monotonic()
        try:
            work = pipeline.prepare(self.path)
            work.stop_on_errors()
            print_editions(work, [self.paper], "booklet", store=Store(users()))
            self.pdf, self.report, self.state = work.editions[0].pdf, work.report, "Up to date."
            self.built += 1
        except PublishError as stopped:
            self.report, self.state = stopped.report, "Not built: mend the findings below."
        except Exception as fault:  # a mistake of ours must not end the watching
            traceback.print_exc()
            said = "".join(traceback.format_exception_only(fault)).strip()
            self.report = Report()
            self.state = f"Not built: Foldwork itself failed, which it should not ({said})."
        self.seconds = time.monotonic() - started
        self.tries += 1

    def page(self, nonce: str) -> str:
        """Return the page; only style and script with the nonce are the page's own."""
        state = self.state
        if self.tries:
            state += f" {summary(self.report)}, {self.seconds:.1f} s."
        booklet = f'<iframe src="/booklet.pdf?build={self.built}" title="The booklet"></iframe>'
        return PAGE.format(
            nonce=nonce,
            title=html.escape(self.path.name),
            booklet=booklet if self.built else "<p></p>",
            tries=self.tries,
            state=html.escape(state),
            findings="".join(f"<li>{html.escape(concise(n))}</li>" for n in self.report),
        )


def stamps(folder: Path) -> dict[Path, int]:
    """Return when each watched file in a pattern's folder was last written, and those that
    lie beside its studio's file."""
    found = {}
    shared = studio_file(folder)
    beside = shared.parent.glob("*") if shared is not None else ()
    for path in (*folder.rglob("*"), *beside):
        if path.suffix.lower() in WATCHED:
            try:
                found[path] = path.stat().st_mtime_ns
            except OSError:  # an editor was replacing it just now
                continue
    return found


def watch(shown: Shown, stop: threading.Event) -> None:
    """Rebuild whenever a watched file changes, until `stop` is set."""
    folder = shown.path if shown.path.is_dir() else shown.path.parent
    seen: dict[Path, int] | None = None
    while not stop.is_set():
        try:
            now = stamps(folder)
        except OSError:  # a folder was taken away while it was looked through
            now = {}
        if now != seen:
            seen = now
            shown.rebuild()
        stop.wait(PAUSE)


class Server(ThreadingHTTPServer):
    """Serves the page on this machine, under its own names only."""

    def __init__(self, shown: Shown, port: int) -> None:
        self.shown = shown
        super().__init__((HOST, port), Handler)
        self.names = frozenset(f"{host}:{self.server_port}" for host in (HOST, "localhost"))


class Handler(BaseHTTPRequestHandler):
    """Answers one question, if it was asked of this page by this page.

    A browser tells the name that it was given. A page elsewhere can point a name of its own
    at this machine, and would then read the answers; but the name is not one of ours.
    """

    server: Server

    def do_GET(self) -> None:
        path = self.path.split("?")[0]
        shown = self.server.shown
        if self.headers.get("Host") not in self.server.names:
            self.send_error(HTTPStatus.MISDIRECTED_REQUEST)
        elif not self._of_this_page():
            self.send_error(HTTPStatus.FORBIDDEN)
        elif path == "/":
            nonce = secrets.token_urlsafe(16)
            policy = {"Content-Security-Policy": POLICY.format(nonce)}
            self._send(shown.page(nonce).encode(), "text/html; charset=utf-8", policy)
        elif path == "/state":
            self._send(json.dumps({"tries": shown.tries}).encode(), "application/json")
        elif path == "/booklet.pdf" and shown.pdf:
            self._send(shown.pdf, "application/pdf")
        else:
            self.send_error(HTTPStatus.NOT_FOUND)

    def _of_this_page(self) -> bool:
        """Return whether no other page asks: the address line, or our own page."""
        origin = self.headers.get("Origin")
        ours = {f"http://{name}" for name in self.server.names}
        site = self.headers.get("Sec-Fetch-Site", "none")
        visit = self.headers.get("Sec-Fetch-Mode") == "navigate"
        return origin in (None, *ours) and (site in ("none", "same-origin") or visit)

    def _send(self, body: bytes, kind: str, more: Mapping[str, str] | None = None) -> None:
        self.send_response(HTTPStatus.OK)
        self.send_header("Content-Type", kind)
        self.send_header("Content-Length", str(len(body)))
        for name, value in (more or {}).items():
            self.send_header(name, value)
        self.end_headers()
        self.wfile.write(body)

    def end_headers(self) -> None:
        """Send the headers that every answer has, and end them."""
        for name, value in CLOSED.items():
            self.send_header(name, value)
        super().end_headers()

    def version_string(self) -> str:
        """Return what the server calls itself: not which Python it is."""
        return "foldwork"

    def log_message(self, format: str, *args: object) -> None:
        return


def server(shown: Shown, port: int) -> ThreadingHTTPServer:
    """Return a server of the page on this machine; port 0 takes a free one."""
    return Server(shown, port)
