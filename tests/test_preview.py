"""The local page: served, rebuilt after a save, the last good booklet kept.

Setting a booklet is slow, so the pages are stood in for; everything before them is real.
"""

import json
import threading
import time
import urllib.error
import urllib.request
from types import SimpleNamespace

import pytest
from helpers import changed, pattern

from publish import preview
from publish.read import SMALLEST


@pytest.fixture
def typeset(monkeypatch):
    """Let a booklet be made at once, of the pattern's title."""

    def print_editions(work, papers, only):
        assert papers == ["letter"] and only == "booklet"
        work.editions.append(SimpleNamespace(pdf=f"%PDF {work.pattern.title}".encode()))

    monkeypatch.setattr(preview, "print_editions", print_editions)
    monkeypatch.setattr(preview, "PAUSE", 0.02)


@pytest.fixture
def served(tmp_path, typeset):
    """Yield what is shown, and how to get a page of it, watched and served."""
    path = pattern(tmp_path, SMALLEST)
    shown = preview.Shown(path, "letter")
    server = preview.server(shown, 0)
    stop = threading.Event()
    threads = [
        threading.Thread(target=server.serve_forever, kwargs={"poll_interval": 0.02}),
        threading.Thread(target=preview.watch, args=(shown, stop)),
    ]
    for thread in threads:
        thread.start()

    def get(name):
        address = f"http://{preview.HOST}:{server.server_port}{name}"
        with urllib.request.urlopen(address, timeout=10) as answer:
            return answer.headers["Content-Type"], answer.read()

    yield shown, get
    stop.set()
    server.shutdown()
    server.server_close()
    for thread in threads:
        thread.join(30)


def until(true):
    """Wait for what a build brings; one save can bring several, as its files are written."""
    end = time.monotonic() + 60
    while not true():
        assert time.monotonic() < end, "no build came"
        time.sleep(0.02)


def test_a_page_is_served_and_built_again_after_each_save(served):
    shown, get = served
    until(lambda: shown.tries and not shown.failed)
    kind, page = get("/")
    assert kind.startswith("text/html") and b"Up to date." in page and b"build=1" in page
    assert get("/booklet.pdf?build=1") == ("application/pdf", b"%PDF Bulrush")
    assert json.loads(get("/state")[1]) == {"tries": shown.tries}

    before = shown.tries
    pattern(shown.path.parent, changed("title: Bulrush", "title: Reedmace"))
    until(lambda: get("/booklet.pdf")[1] == b"%PDF Reedmace")
    assert json.loads(get("/state")[1])["tries"] > before

    pattern(shown.path.parent, changed("folds: 8", "folds: 7 <b>"))
    until(lambda: "error R1" in get("/")[1].decode())
    page = get("/")[1].decode()
    assert "Not built" in page and "<b>" not in page
    assert get("/booklet.pdf")[1] == b"%PDF Reedmace"

    pattern(shown.path.parent, SMALLEST)
    until(lambda: "Up to date." in get("/")[1].decode())
    assert get("/booklet.pdf")[1] == b"%PDF Bulrush"


def test_what_is_not_there(served):
    _, get = served
    with pytest.raises(urllib.error.HTTPError) as answer:
        get("/../pattern.yaml")
    assert answer.value.code == 404


def test_only_this_machine_is_served(tmp_path):
    server = preview.server(preview.Shown(tmp_path, "letter"), 0)
    try:
        assert server.server_address[0] == "127.0.0.1" and server.server_port > 0
    finally:
        server.server_close()


def test_a_save_is_seen_and_other_files_are_not(tmp_path):
    (tmp_path / "pattern.yaml").write_text("title: A")
    before = preview.stamps(tmp_path)
    (tmp_path / "notes.txt").write_text("nothing to build")
    assert preview.stamps(tmp_path) == before
    (tmp_path / "drawing.svg").write_text("<svg/>")
    assert set(preview.stamps(tmp_path)) == {tmp_path / "pattern.yaml", tmp_path / "drawing.svg"}
