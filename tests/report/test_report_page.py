"""The report as a page: complete, well-formed, and with every finding and its figure once."""

import base64
import json
import re
from xml.etree import ElementTree

import demos
import pytest
from helpers import DEMO, changed, pattern

from publish import cli, pipeline
from publish.marked import marked

SVG = "{http://www.w3.org/2000/svg}"
FAULTS = (
    changed("block_size: 16 in, motif_size: 14 in", "block_size: 8 in, motif_size: 6 in").replace(
        "moss: {", 'plum: {name: Plum & rust <b>, colour: "#6b4a5f"}\n  moss: {'
    )
    + "accept:\n  - {code: R144, reason: For the next & later editions.}\n"
)


@pytest.fixture(scope="module")
def examined(tmp_path_factory):
    return pipeline.examine(pattern(tmp_path_factory.mktemp("faults"), FAULTS))


def read(page):
    """Return the page's tree; it is well-formed XML, too."""
    return ElementTree.fromstring(page.replace("<!DOCTYPE html>", ""))


def words(element):
    return " ".join(" ".join(element.itertext()).replace("\u00a0", " ").split())


def items(tree, kind):
    return [li for li in tree.iter("li") if li.get("class") == kind]


def test_each_finding_is_there_once_with_its_words(examined):
    tree = read(examined.page())
    for kind, notes in (("error", examined.report.errors), ("warning", examined.report.warnings)):
        shown = items(tree, kind)
        assert len(shown) == len(notes)
        for item, note in zip(shown, notes, strict=True):
            for text in (note.code, note.what, note.expected, note.received, note.help):
                assert " ".join(text.split()) in words(item)
            assert f"pattern.yaml:{note.place.line}:{note.place.column}" in words(item)


def test_the_source_line_is_marked_at_the_column(examined):
    tree = read(examined.page())
    source = next(iter(examined.report.sources.values())).splitlines()
    notes = [*examined.report.errors, *examined.report.warnings]
    shown = [*items(tree, "error"), *items(tree, "warning")]
    for item, note in zip(shown, notes, strict=True):
        (mark,) = item.iter("mark")
        assert mark.text == source[note.place.line - 1][note.place.column - 1 :]


def test_each_finding_on_a_motif_has_its_figure(examined):
    tree = read(examined.page())
    notes = [*examined.report.errors, *examined.report.warnings]
    shown = [*items(tree, "error"), *items(tree, "warning")]
    figures = [svg for name, svg in sorted(examined.files.items()) if "findings/" in name]
    seen = []
    for item, note in zip(shown, notes, strict=True):
        pictures = [i.get("src") for i in item.iter("img")]
        if note.spot is not None:
            assert len(pictures) == 1
            seen.append(base64.b64decode(pictures[0].split(",")[1]))
    assert sorted(seen) == sorted(figures) and seen


def test_accepted_warnings_are_there_with_their_reason(examined):
    (item,) = items(read(examined.page()), "accepted")
    assert "For the next & later editions." in words(item)
    assert "R144" in words(item)


def test_every_code_is_listed_with_its_count(examined):
    tree = read(examined.page())
    rows = {
        cells[0]: cells
        for tr in tree.iter("tr")
        if (cells := [words(td) for td in tr.findall("td")])
    }
    report = examined.report
    found = {n.code for n in report}
    for code in found:
        assert rows[code][2] == str(sum(n.code == code for n in report))
    assert rows["R144"][2:] == ["0", "1"]
    assert rows["P876"][2] == "not looked for"
    assert len(rows) > 180


def test_each_code_is_explained_and_linked(examined):
    tree = read(examined.page())
    anchors = {e.get("id") for e in tree.iter() if e.get("id")}
    links = {a.get("href") for a in tree.iter("a") if a.get("href", "").startswith("#")}
    assert links and {link[1:] for link in links} <= anchors


def test_the_page_asks_for_no_other_file(examined):
    page = examined.page()
    assert not re.search(r"(?:src|href)=\"(?!data:|#)", page)
    assert "url(" not in page


def test_check_writes_it(tmp_path, capsys):
    out = tmp_path / "page" / "here"
    path = pattern(tmp_path, FAULTS)
    code = cli.main(["check", str(path), "--report", str(out), "--json"])
    report = json.loads(capsys.readouterr().out)
    assert code == (cli.ERRORS if any(n["severity"] == "error" for n in report["findings"]) else 0)
    tree = read((out / "report.html").read_text(encoding="utf-8"))
    shown = [li for kind in ("error", "warning") for li in items(tree, kind)]
    assert len(shown) == len(report["findings"])


def test_a_file_that_cannot_be_read_has_a_page_too(tmp_path, capsys):
    path = tmp_path / "pattern.yaml"
    path.write_text("title: [", encoding="utf-8")
    assert cli.main(["check", str(path), "--report", str(tmp_path)]) == cli.ERRORS
    capsys.readouterr()
    tree = read((tmp_path / "report.html").read_text(encoding="utf-8"))
    assert items(tree, "error")


def test_a_clean_pattern_says_what_was_checked():
    work = demos.demo("samphire")
    examined = pipeline.Examined(DEMO, work.report, work)
    tree = read(examined.page())
    assert "no findings" in words(tree)
    assert not list(tree.iter("li"))


@pytest.fixture(scope="module")
def demo():
    return demos.demo("samphire")


@pytest.mark.parametrize(
    ("way", "title", "count"),
    [
        ("sizes.throw.borders.1", "Throw", 4),  # four strips of the outer border
        ("sizes.throw.motif_size", "Throw", 9),
        ("sizes.throw.block_size", "Throw", 36),  # nine blocks of four patches
        ("fabrics.glasswort", "Throw", 4),  # the inner border; binding and backs are no patches
        ("motifs.samphire", "Mini wall quilt", 1),
        ("blocks.quartered", "Throw", 36),
        ("sizes.mini.borders.0.width", "Mini wall quilt", 4),
    ],
)
def test_places_are_marked_on_the_top(demo, way, title, count):
    found = marked(demo.pattern, demo.drafts, way)
    assert found is not None and found[0] == title
    lines = [
        p for p in ElementTree.fromstring(found[1]).iter(f"{SVG}path") if p.get("fill") == "none"
    ]
    assert len(lines) == 2 * count  # the rim and the line


@pytest.mark.parametrize("way", ["title", "publication.contact", "sizes.throw", "fabrics.mist", ""])
def test_what_is_no_part_of_a_top_has_no_picture(demo, way):
    assert marked(demo.pattern, demo.drafts, way) is None
