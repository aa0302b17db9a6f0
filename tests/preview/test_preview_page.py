"""What the local page answers, and to whom."""

import json
import urllib.error

import pytest
from stand_ins import until

from publish import preview


def state(get):
    return json.loads(get("state")[1])


def test_pages_are_pictures_and_change_after_each_save(served):
    watching, get = served
    path = watching.shown.path
    until(lambda: watching.shown.built)
    first = state(get)
    assert [page["ready"] for page in first["pages"]] == [True] * 3 and not first["changed"]
    assert "Up to date." in first["state"] and "1 warning" in first["state"]
    kind, picture = get(f"pages/{first['pages'][1]['key']}.png")
    assert kind == "image/png" and picture.startswith(b"\x89PNG")

    path.write_text("title: 0.2 0.4 0.8", encoding="utf-8")
    until(lambda: state(get)["changed"] == [2] and all(p["ready"] for p in state(get)["pages"]))
    second = state(get)
    assert [p["key"] for p in second["pages"]][::2] == [p["key"] for p in first["pages"]][::2]

    path.write_text("title: broken", encoding="utf-8")
    until(lambda: "Not built" in state(get)["state"])
    third = state(get)
    assert third["pages"] == second["pages"], "the last good pages stay"
    (found,) = third["findings"]
    assert (found["line"], found["source"]) == (1, "title: broken") and "<broken>" in found["said"]


def test_a_finding_stands_beside_its_page(served):
    watching, get = served
    until(lambda: watching.shown.built)
    assert [(f["code"], f["page"]) for f in state(get)["findings"]] == [("P891", 2)]


@pytest.mark.parametrize("text", ["title: fault", "title: gone"])
def test_whatever_goes_wrong_is_said_and_the_watching_goes_on(served, text):
    watching, get = served
    until(lambda: watching.shown.built)
    watching.shown.path.write_text(text, encoding="utf-8")
    until(lambda: "Foldwork itself failed" in state(get)["state"])
    assert len(state(get)["pages"]) == 3 and "Up to date" not in state(get)["state"]
    watching.shown.path.write_text("title: 0.1", encoding="utf-8")
    until(lambda: len(state(get)["pages"]) == 1)


def test_a_newer_save_ends_the_build_that_runs(served):
    watching, get = served
    until(lambda: watching.shown.built)
    watching.shown.path.write_text("title: slow", encoding="utf-8")
    until(lambda: state(get)["doing"] == "read: pattern.yaml")
    watching.shown.path.write_text("title: 0.3 0.6", encoding="utf-8")
    until(lambda: len(state(get)["pages"]) == 2)


def test_a_choice_is_built(served):
    watching, get = served
    until(lambda: watching.shown.built)
    chosen = {"paper": "letter", "size": "mini", "layout": ""}
    get("choice", json.dumps(chosen).encode(), Origin=f"http://localhost:{get.port}")
    until(lambda: watching.shown.built > 1)
    assert state(get)["choice"] == chosen and state(get)["offer"]["sizes"] == [["mini", "Mini"]]


@pytest.mark.parametrize("body", [b"", b"{}", b"[]", b'{"paper": 1, "size": "", "layout": ""}'])
def test_what_is_no_choice_is_refused(served, body):
    _, get = served
    with pytest.raises(urllib.error.HTTPError) as answer:
        get("choice", body, Origin=f"http://127.0.0.1:{get.port}")
    assert answer.value.code == 400


def test_before_the_first_build_nothing_is_claimed(tmp_path):
    plain = preview.Shown(tmp_path / "pattern.yaml").plain()
    assert "first time" in plain["state"] and not plain["pages"] and not plain["findings"]


@pytest.mark.parametrize("name", ["../pattern.yaml", "pages/../pattern.yaml", "pages/none.png"])
def test_what_is_not_there(served, name):
    _, get = served
    with pytest.raises(urllib.error.HTTPError) as answer:
        get(name)
    assert answer.value.code == 404


def test_only_this_machine_is_served():
    with preview.listening(0) as listener:
        assert listener.getsockname()[0] == "127.0.0.1"


@pytest.mark.parametrize("name", ["drawing.svg", "house.YAML", "font.otf", "cut.heic"])
def test_a_save_is_seen(name):
    assert preview.watched(None, f"/fens/{name}") and not preview.watched(None, f"/fens/{name}~")


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
    for name in ("", "state", "events", "pages/x.png"):
        with pytest.raises(urllib.error.HTTPError) as answer:
            get(name, **{k: v.format(port=get.port) for k, v in headers.items()})
        assert answer.value.code == status and answer.value.read() == b""


@pytest.mark.parametrize(
    "headers",
    [{}, {"Origin": "https://fen.example"}, {"Sec_Fetch_Site": "cross-site"}],
    ids=["no origin", "another origin", "another site"],
)
def test_a_page_elsewhere_cannot_choose(served, headers):
    """A form of another page may send what it likes without being asked (Fetch standard)."""
    watching, get = served
    chosen = b'{"paper": "a4", "size": "", "layout": ""}'
    with pytest.raises(urllib.error.HTTPError) as answer:
        get("choice", chosen, **headers)
    assert answer.value.code == 403 and watching.shown.choice == preview.Choice()


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
    kind, page = get("", **{k: v.format(port=get.port) for k, v in headers.items()})
    assert kind.startswith("text/html") and b"EventSource" in page


def test_the_page_runs_nothing_but_its_own_script(served):
    """Content Security Policy Level 3: a nonce must be new for each answer."""
    _, get = served
    seen = set()
    for _ in range(2):
        page = get("")[1].decode()
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
