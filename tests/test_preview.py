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

    def print_editions(work, papers, only, store):
        assert papers == ["letter"] and only == "booklet" and store.folder is None
        made = SimpleNamespace(pdf=f"%PDF {work.pattern.title}".encode())
        work.printed = (SimpleNamespace(edition=made),)

    monkeypatch.setenv("FOLDWORK_CACHE", "")
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

    def get(name, **headers):
        address = f"http://{preview.HOST}:{server.server_port}{name}"
        asked = urllib.request.Request(
            address, headers={k.replace("_", "-"): v for k, v in headers.items()}
        )
        with urllib.request.urlopen(asked, timeout=10) as answer:
            get.answered = answer.headers
            return answer.headers["Content-Type"], answer.read()

    get.port = server.server_port
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
    until(lambda: shown.built)
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


@pytest.mark.parametrize(
    ("headers", "status"),
    [
        ({"Host": "fen.example:{port}"}, 421),
        ({"Host": "fen.example"}, 421),
        ({"Host": "127.0.0.1.fen.example:{port}"}, 421),
        ({"Host": "127.0.0.1"}, 421),
        ({"Host": ""}, 421),
        ({"Origin": "https://fen.example"}, 403),
        ({"Origin": "null"}, 403),
        ({"Origin": "http://127.0.0.1"}, 403),
        ({"Sec_Fetch_Site": "cross-site", "Sec_Fetch_Mode": "no-cors"}, 403),
        ({"Sec_Fetch_Site": "same-site", "Sec_Fetch_Mode": "cors"}, 403),
    ],
)
def test_a_page_elsewhere_gets_no_answer(served, headers, status):
    _, get = served
    for name in ("/", "/state", "/booklet.pdf"):
        with pytest.raises(urllib.error.HTTPError) as answer:
            get(name, **{k: v.format(port=get.port) for k, v in headers.items()})
        assert answer.value.code == status
        assert b"Bulrush" not in answer.value.read()


@pytest.mark.parametrize(
    "headers",
    [
        {"Host": "localhost:{port}", "Origin": "http://localhost:{port}"},
        {"Origin": "http://127.0.0.1:{port}", "Sec_Fetch_Site": "same-origin"},
        {"Sec_Fetch_Site": "none"},
        {"Sec_Fetch_Site": "cross-site", "Sec_Fetch_Mode": "navigate"},
    ],
)
def test_its_own_page_and_the_address_line_do(served, headers):
    _, get = served
    kind, page = get("/", **{k: v.format(port=get.port) for k, v in headers.items()})
    assert kind.startswith("text/html") and b"pattern.yaml" in page


def test_the_page_runs_nothing_but_its_own_script(served):
    """Content Security Policy Level 3: a nonce must be new for each answer."""
    _, get = served
    seen = set()
    for _ in range(2):
        page = get("/")[1].decode()
        policy = dict(
            part.strip().partition(" ")[::2]
            for part in get.answered["Content-Security-Policy"].split(";")
        )
        nonce = policy["script-src"].removeprefix("'nonce-").removesuffix("'")
        seen.add(nonce)
        assert policy["default-src"] == "'none'" and policy["frame-ancestors"] == "'self'"
        assert page.count(f'nonce="{nonce}"') == page.count("<script") + page.count("<style")
        assert get.answered["X-Content-Type-Options"] == "nosniff"
        assert get.answered["Cross-Origin-Resource-Policy"] == "same-origin"
    assert len(seen) == 2


def test_a_mistake_of_the_programs_is_said_and_the_watching_goes_on(served, monkeypatch):
    shown, get = served
    until(lambda: shown.built)
    prepare = preview.pipeline.prepare

    def broken(path):
        raise LookupError("unknown <encoding>: foo")

    monkeypatch.setattr(preview.pipeline, "prepare", broken)
    pattern(shown.path.parent, changed("title: Bulrush", "title: Reedmace"))
    until(lambda: "unknown &lt;encoding&gt;: foo" in get("/")[1].decode())
    page = get("/")[1].decode()
    assert "Up to date" not in page and "Not built" in page
    assert get("/booklet.pdf")[1] == b"%PDF Bulrush"

    monkeypatch.setattr(preview.pipeline, "prepare", prepare)
    pattern(shown.path.parent, changed("title: Bulrush", "title: Sedge"))
    until(lambda: get("/booklet.pdf")[1] == b"%PDF Sedge")


def test_before_the_first_build_nothing_is_claimed(tmp_path):
    page = preview.Shown(tmp_path / "pattern.yaml", "letter").page("x")
    assert "Up to date" not in page and "no findings" not in page and "first time" in page
    assert "<iframe" not in page
