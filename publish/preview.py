"""A local page that rebuilds a pattern after each save.

In: a pattern's path. Out: pages served on this machine only, until stopped.
Invariant: the last good build stays on the page while a new one is made or fails; the
findings of the newest try are beside it.
"""

from __future__ import annotations

import html
import json
import threading
import time
from dataclasses import dataclass, field
from http import HTTPStatus
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

from publish import pipeline
from publish.editions import print_editions
from publish.notes import PublishError, Report
from publish.report import concise, summary

HOST = "127.0.0.1"
WATCHED = {".yaml", ".yml", ".svg", ".png", ".jpg", ".jpeg", ".tif", ".tiff", ".ttf", ".otf"}
PAUSE = 0.5
"""Seconds between looks at the files."""

PAGE = """<!doctype html>
<html lang="en"><meta charset="utf-8"><title>{title}</title>
<style>
  body {{ margin: 0; font: 15px/1.5 system-ui, sans-serif; display: grid;
         grid-template-columns: 1fr minmax(16rem, 24rem); height: 100vh; }}
  iframe {{ border: 0; width: 100%; height: 100%; }}
  aside {{ padding: 1rem; overflow: auto; background: #f6f3ec; }}
  li {{ margin: 0 0 .75rem; overflow-wrap: anywhere; }}
</style>
<iframe src="/booklet.pdf?build={built}" title="The booklet"></iframe>
<aside><h1>{title}</h1><p>{state}</p><ol>{findings}</ol></aside>
<script>
  setInterval(async () => {{
    const seen = await (await fetch("/state")).json();
    if (seen.tries !== {tries}) location.reload();
  }}, 700);
</script></html>
"""


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
    failed: bool = False

    def rebuild(self) -> None:
        """Build once; keep the last good booklet when this try fails."""
        started = time.monotonic()
        try:
            work = pipeline.prepare(self.path)
            work.stop_on_errors()
            print_editions(work, [self.paper], "booklet")
            work.stop_on_errors()
            self.pdf, self.report, self.failed = work.editions[0].pdf, work.report, False
            self.built += 1
        except PublishError as stopped:
            self.report, self.failed = stopped.report, True
        self.seconds = time.monotonic() - started
        self.tries += 1

    def page(self) -> str:
        """Return the page."""
        state = "Not built: mend the findings below." if self.failed else "Up to date."
        return PAGE.format(
            title=html.escape(self.path.name),
            built=self.built,
            tries=self.tries,
            state=f"{state} {summary(self.report)}, {self.seconds:.1f} s.",
            findings="".join(f"<li>{html.escape(concise(n))}</li>" for n in self.report),
        )


def stamps(folder: Path) -> dict[Path, int]:
    """Return when each watched file in a pattern's folder was last written."""
    found = {}
    for path in folder.rglob("*"):
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
        now = stamps(folder)
        if now != seen:
            seen = now
            shown.rebuild()
        stop.wait(PAUSE)


def server(shown: Shown, port: int) -> ThreadingHTTPServer:
    """Return a server of the page on this machine; port 0 takes a free one."""

    class Handler(BaseHTTPRequestHandler):
        def do_GET(self) -> None:
            path = self.path.split("?")[0]
            if path == "/":
                self._send(shown.page().encode(), "text/html; charset=utf-8")
            elif path == "/state":
                self._send(json.dumps({"tries": shown.tries}).encode(), "application/json")
            elif path == "/booklet.pdf" and shown.pdf:
                self._send(shown.pdf, "application/pdf")
            else:
                self.send_error(HTTPStatus.NOT_FOUND)

        def _send(self, body: bytes, kind: str) -> None:
            self.send_response(HTTPStatus.OK)
            self.send_header("Content-Type", kind)
            self.send_header("Content-Length", str(len(body)))
            self.send_header("Cache-Control", "no-store")
            self.end_headers()
            self.wfile.write(body)

        def log_message(self, format: str, *args: object) -> None:
            return

    return ThreadingHTTPServer((HOST, port), Handler)
