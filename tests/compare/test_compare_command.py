"""`foldwork compare` from the outside: what it takes, prints, writes and returns.

Exit codes are those of POSIX diff (IEEE Std 1003.1, utility diff): 0 no differences, 1
differences, above 1 trouble.
"""

import io
import json
import shutil

import demos
import pypdfium2
import pytest
from editions import demo, edited
from helpers import pattern

from publish import cli, comparing, deliver, finished
from publish.compare import compare
from publish.notes import PublishError

NAMED = ("    name: Salt linen", "    name: Tide linen")


@pytest.fixture(scope="module")
def build(tmp_path_factory):
    """Return a folder with the two files of a build that comparing reads."""
    folder = tmp_path_factory.mktemp("build")
    work = demos.demo("samphire")
    numbers = deliver.numbers(work.pattern, work.sizes, work.drafts, work.plans)
    (folder / "numbers.json").write_text(json.dumps(numbers), encoding="utf-8")
    (folder / "edition.json").write_text(json.dumps(finished.described(work)), encoding="utf-8")
    return folder


def test_a_build_and_its_pattern_are_one_edition(build):
    assert compare(comparing.opened(build), demo()) == ()


def test_nothing_changed(build, capsys):
    assert cli.main(["compare", str(build), str(build)]) == cli.CLEAN
    assert "Nothing changed for a maker." in capsys.readouterr().out
    assert cli.main(["compare", str(build), str(build), "--json"]) == cli.CLEAN
    assert json.loads(capsys.readouterr().out)["changes"] == []


def copied(build, folder, **changes):
    """Return a copy of a build with its files' text replaced."""
    made = folder / "copy"
    shutil.copytree(build, made)
    for name, text in changes.items():
        path = made / f"{name}.json"
        if text is None:
            path.unlink()
        else:
            path.write_text(text, encoding="utf-8")
    return made


def test_the_errata_are_written(build, tmp_path, capsys):
    record = json.loads((build / "edition.json").read_text(encoding="utf-8"))
    record["fabrics"]["linen"]["name"] = "Tide linen"
    record["edition"] = "Second edition"
    new = copied(build, tmp_path, edition=json.dumps(record))
    out = tmp_path / "errata"
    assert cli.main(["compare", str(build), str(new), "--out", str(out)]) == cli.CHANGED
    assert "Tide linen" in capsys.readouterr().out
    assert {p.name for p in out.iterdir()} == {"errata.html", "errata.pdf", "errata.json"}
    assert json.loads((out / "errata.json").read_text("utf-8"))["new"]["edition"] == (
        "Second edition"
    )
    document = pypdfium2.PdfDocument(io.BytesIO((out / "errata.pdf").read_bytes()))
    words = document[0].get_textpage().get_text_bounded()
    assert "Samphire: corrections" in words and "Tide linen" in words
    assert "First edition" in words and "Second edition" in words


@pytest.mark.parametrize(
    ("name", "text", "code"),
    [
        ("edition", None, "X912"),
        ("edition", "{", "X913"),
        ("edition", "[]", "X913"),
        ("edition", '{"form": 0}', "X913"),
        ("edition", '{"form": 1}', "X913"),
        ("edition", "[" * 100_000, "X913"),
        ("numbers", "\x00", "X913"),
        ("numbers", '{"seam": "wide", "sizes": {}}', "X913"),
        ("numbers", '{"seam": "1/4", "sizes": {"mini": 3}}', "X913"),
        ("numbers", '{"seam": "1/4", "sizes": []}', "X913"),
    ],
)
def test_a_spoilt_build_is_a_finding(build, tmp_path, capsys, name, text, code):
    spoilt = copied(build, tmp_path, **{name: text})
    assert cli.main(["compare", str(build), str(spoilt)]) == cli.USAGE
    said = capsys.readouterr().err
    assert f"error {code}" in said and "help:" in said


def test_every_value_that_is_lost_is_a_finding(build, tmp_path):
    """Take out each key of the record and of one size's numbers in turn."""
    numbers = json.loads((build / "numbers.json").read_text("utf-8"))
    record = json.loads((build / "edition.json").read_text("utf-8"))
    for name in record:
        with pytest.raises(ValueError, match=r"."):
            comparing.compare.edition("x", numbers, {k: v for k, v in record.items() if k != name})
    for name in ("pieces", "fabrics", "finished", "backing", "thread", "title", "blocks"):
        lost = {k: v for k, v in numbers["sizes"]["mini"].items() if k != name}
        changed = {**numbers, "sizes": {**numbers["sizes"], "mini": lost}}
        if name != "thread":  # thread is read as the booklet says it
            with pytest.raises(ValueError, match=name):
                comparing.compare.edition("x", changed, record)


@pytest.mark.parametrize("value", [None, 3, "x", [], {}, [[]], {"a": 1}])
def test_a_value_of_another_kind_is_refused_or_harmless(build, value):
    numbers = json.loads((build / "numbers.json").read_text("utf-8"))
    record = json.loads((build / "edition.json").read_text("utf-8"))
    for name in record:
        try:
            edition = comparing.compare.edition("x", numbers, {**record, name: value})
        except ValueError:
            continue
        compare(edition, demo())
    for name in numbers["sizes"]["mini"]:
        mini = {**numbers["sizes"]["mini"], name: value}
        changed = {**numbers, "sizes": {**numbers["sizes"], "mini": mini}}
        try:
            edition = comparing.compare.edition("x", changed, record)
        except ValueError:
            continue
        compare(edition, demo())


@pytest.mark.parametrize(
    "text",
    [
        "",
        "POLYGON ((0 0, 1",
        "POLYGON EMPTY",
        "POINT (1 1)",
        "POLYGON ((0 0, 1 0, nan 1, 0 0))",
        "LINESTRING (0 0, 1 1)",
        "hello",
    ],
)
def test_an_outline_that_is_none_is_refused(build, text):
    numbers = json.loads((build / "numbers.json").read_text("utf-8"))
    record = json.loads((build / "edition.json").read_text("utf-8"))
    record["templates"]["mini"][0]["cut"] = text
    with pytest.raises(ValueError, match=r"."):
        comparing.compare.edition("x", numbers, record)


def test_an_outline_that_crosses_itself_is_mended(build):
    numbers = json.loads((build / "numbers.json").read_text("utf-8"))
    record = json.loads((build / "edition.json").read_text("utf-8"))
    record["templates"]["mini"][0]["cut"] = "POLYGON ((0 0, 2 2, 2 0, 0 2, 0 0))"
    edition = comparing.compare.edition("x", numbers, record)
    assert edition.sizes["mini"].templates[0].cut.area == pytest.approx(2)
    (change,) = compare(edition, demo())
    assert change.subject == "template" and change.consequence == "cut"
    comparing.files(edition, demo(), [change])


def test_a_name_that_is_too_long(build, tmp_path, capsys):
    assert cli.main(["compare", str(build), str(tmp_path / ("n" * 5000))]) == cli.USAGE
    assert "error X911" in capsys.readouterr().err


def test_a_folder_without_anything(build, tmp_path, capsys):
    (tmp_path / "notes.txt").write_text("hello")
    for path in (tmp_path, tmp_path / "gone"):
        assert cli.main(["compare", str(path), str(build)]) == cli.USAGE
        assert "error X911" in capsys.readouterr().err


def test_a_pattern_with_errors_says_them(build, tmp_path, capsys):
    path = pattern(tmp_path, "title: Bulrush\n")
    assert cli.main(["compare", str(build), str(path)]) == cli.USAGE
    assert "error R111" in capsys.readouterr().err
    with pytest.raises(PublishError):
        comparing.opened(path)


def test_it_says_when_it_cannot_write(build, tmp_path, capsys):
    (tmp_path / "file").write_text("")
    out = tmp_path / "file" / "in"
    assert cli.main(["compare", str(build), str(build), "--out", str(out)]) == cli.USAGE
    assert "foldwork:" in capsys.readouterr().err


def test_an_edited_pattern_is_compared_with_a_build(build):
    found = compare(comparing.opened(build), edited(NAMED))
    assert found and {c.consequence for c in found} == {"cosmetic"}
