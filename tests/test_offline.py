"""Nothing leaves the machine: no address is looked up and no connection opened.

Python reports every use of the network to audit hooks (PEP 578; the events are those of the
library reference, "Audit events table"). A port that listens on this machine shows what
would be missed there, such as a library that opens connections by itself.
"""

from __future__ import annotations

import os
import shutil
import socket
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import bulrush
import bulrush_drawn
import pytest
from helpers import ROOT, pattern
from small import NINE, text

from publish import web_pdf
from publish.draft.drawing import read_drawing
from publish.model.book import LETTER
from publish.model.words import Paragraph, Section
from publish.notes import Place
from publish.typeset import pictures, typeset

CLOSED = """
import sys

def closed(event, values):
    local = event == "socket.bind" or event == "socket.connect"
    if event.startswith(("socket.", "urllib.", "http.", "ftplib.", "smtplib.")):
        if event in ("socket.__new__", "socket.gethostname"):
            return
        if local and isinstance(values[1], (str, bytes)):  # between processes of one machine
            return
        raise RuntimeError(f"the network is asked for: {event} {values}")

sys.addaudithook(closed)
from publish.cli import main
sys.exit(main(sys.argv[1:]))
"""
ENDINGS = ("a.png", "a.svg", "a.css", "a.woff", "a")


class Port:
    """A port that waits for whoever connects."""

    def __init__(self) -> None:
        self._socket = socket.create_server(("127.0.0.1", 0))
        self._socket.setblocking(False)
        self.address = f"http://127.0.0.1:{self._socket.getsockname()[1]}"

    def called(self) -> bool:
        """Return whether somebody has connected since the last time."""
        try:
            self._socket.accept()[0].close()
        except BlockingIOError:
            return False
        return True

    def close(self) -> None:
        self._socket.close()


@pytest.fixture
def port() -> Iterator[Port]:
    """Yield a port that nobody must have called by the end of the test."""
    made = Port()
    yield made
    called = made.called()
    made.close()
    assert not called, "somebody has connected"


def test_the_port_itself_hears_a_call() -> None:
    made = Port()
    host, number = made.address.removeprefix("http://").split(":")
    socket.create_connection((host, int(number)), timeout=5).close()
    assert made.called() and not made.called()
    made.close()


def referring(address: str) -> list[str]:
    """Return drawings that refer elsewhere in every way that SVG has."""
    inside = [
        f'<image href="{address}/a.png" width="9" height="9"/>',
        f'<use href="{address}/a.svg#a"/>',
        f'<rect width="9" height="9" fill="url({address}/a.svg#p)"/>',
        f"<style>@import url({address}/a.css);</style>",
        f'<style>@font-face{{font-family:a;src:url("{address}/a.woff")}}</style><text>a</text>',
        f'<filter id="f"><feImage href="{address}/a.png"/></filter><g filter="url(#f)"/>',
        f'<script href="{address}/a"/>',
        f'<foreignObject><iframe xmlns="http://www.w3.org/1999/xhtml" src="{address}/a"/>'
        "</foreignObject>",
    ]
    head = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9">'
    return [
        *(f"{head}<path d='M0 0H5V5Z'/>{one}</svg>" for one in inside),
        f'<?xml-stylesheet href="{address}/a.css"?>{head}</svg>',
        f'<!DOCTYPE svg SYSTEM "{address}/a.dtd">{head}<path d="M0 0H5V5Z"/></svg>',
        f'<!DOCTYPE svg [<!ENTITY a SYSTEM "{address}/a">]>{head}&a;</svg>',
        f'<!DOCTYPE svg [<!ENTITY % a SYSTEM "{address}/a"> %a;]>{head}</svg>',
    ]


def test_drawings_and_logos_are_read_without_asking_anybody(tmp_path: Path, port: Port) -> None:
    for number, drawing in enumerate(referring(port.address)):
        path = tmp_path / f"{number}.svg"
        path.write_text(drawing, encoding="utf-8")
        read_drawing(path, path.name, None, "motifs.fen.drawing")
        if not pictures.check_logo(path, Place("pattern.yaml")):
            pictures.logo(path)
        assert not port.called(), drawing


def test_a_layout_gets_nothing_from_elsewhere(tmp_path: Path, port: Port) -> None:
    own = tmp_path / "layouts" / "creek"
    own.mkdir(parents=True)
    asked = " ".join(f'<img src="{port.address}/{e}" alt="a">' for e in ENDINGS)
    links = "".join(
        f'<link rel="{rel}" href="{port.address}/a">' for rel in ("stylesheet", "attachment")
    )
    (own / "layout.yaml").write_text("extends: tideline\n", encoding="utf-8")
    (own / "booklet.html").write_text(
        f"<html><head>{links}</head><body>{asked}"
        f'<object data="{port.address}/a"></object><p>Fold it.</p></body></html>',
        encoding="utf-8",
    )
    (own / "style.css").write_text(
        f'@import "{port.address}/a.css"; p {{ background: url({port.address}/a.png) }}'
        f"@font-face {{ font-family: A; src: url({port.address}/a.woff) }} p {{ font: 9pt A }}",
        encoding="utf-8",
    )
    section = Section("one", "One", (Paragraph(f"![a]({port.address}/a.png) Fold it."),))
    manual = replace(bulrush.manual(), sections=(section,))
    edition, notes = typeset(
        bulrush.pattern(layout="creek", folder=tmp_path),
        manual,
        bulrush_drawn.artwork(LETTER),
        LETTER,
    )
    assert edition is None and "T711" in {n.code for n in notes}


def test_a_page_of_ours_gets_nothing_from_elsewhere(port: Port) -> None:
    assert web_pdf.pdf(f'<p>a<img src="{port.address}/a.png"></p>').startswith(b"%PDF")


def offline() -> list[str]:
    """Return how to start a command without a network: where Linux lets us, in a network
    of its own that holds nothing."""
    unshare = shutil.which("unshare")
    alone = [unshare, "--net", "--map-root-user"] if unshare else []
    if alone and subprocess.run([*alone, "true"], capture_output=True).returncode == 0:
        return alone
    return []


def run(folder: Path, command: str, *options: str) -> subprocess.CompletedProcess[str]:
    """Run a command of ours where whatever asks for the network fails."""
    size = "mini: {block: nine, columns: 2, rows: 2, block_size: 9 in}"
    path = pattern(folder, text(size, NINE, ""), drawings=())
    return subprocess.run(
        [*offline(), sys.executable, "-c", CLOSED, command, str(path), *options],
        cwd=folder,
        env={**os.environ, "PYTHONPATH": str(ROOT), "http_proxy": "http://127.0.0.1:9"},
        capture_output=True,
        text=True,
    )


def test_check_needs_no_network(tmp_path: Path) -> None:
    done = run(tmp_path, "check", "--report", str(tmp_path / "page"))
    assert done.returncode == 0, done.stderr
    assert (tmp_path / "page" / "report.html").is_file()


@pytest.mark.thorough
def test_a_whole_build_needs_no_network(tmp_path: Path) -> None:
    done = run(tmp_path, "build", "--out", str(tmp_path / "build"))
    assert done.returncode == 0, done.stderr
    assert list((tmp_path / "build").rglob("booklet-letter.pdf"))
