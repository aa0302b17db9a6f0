"""Findings on a motif drawn: the ring stands where the finding is, with the finding's words."""

import json
import math
import re
from xml.etree import ElementTree

import pytest
from helpers import pattern

from publish import cli, pipeline
from publish.draw import finding_figures
from publish.draw.finding import WHOLE
from publish.notes import PublishError, Severity

HEAD = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" data-centre="0 0" '
NECK = HEAD + (
    'data-start="0"><polygon points="0,0 40,0 40,12 60,12 60,0 95,0 90,40 62,50 62,14 38,14 '
    '38,38"/></svg>'
)
"""A wedge with a bar 2 units wide at y = 12 to 14: 0.147 in of a motif of 14 in."""
LOOSE = NECK.replace("</svg>", '<circle cx="80" cy="60" r="4"/></svg>')
"""The same with a disc that touches nothing."""


def drawn(folder, text):
    """Return the pattern's path, its drawing being `text`."""
    path = pattern(folder)
    (folder / "bulrush.svg").write_text(text)
    return path


@pytest.fixture
def necked(tmp_path):
    return pipeline.prepare(drawn(tmp_path, NECK))


def rings(svg):
    """Return centre and radius of every circle of the figure."""
    found = ElementTree.fromstring(svg).iter("{http://www.w3.org/2000/svg}circle")
    return [tuple(float(c.get(k)) for k in ("cx", "cy", "r")) for c in found]


def test_the_ring_stands_on_the_spot(necked):
    spotted = [n for n in necked.report if n.spot is not None]
    figures = finding_figures(necked.pattern, necked.drafts, spotted)
    assert len(figures) == len(spotted) > 0
    for note, svg in zip(spotted, figures.values(), strict=True):
        span = float(necked.drafts["mini"].motifs["bulrush"].span)
        x = (WHOLE / 2 + note.spot.x * WHOLE / span) * 72
        y = (WHOLE / 2 + note.spot.y * WHOLE / span) * 72
        assert any(math.hypot(cx - x, cy - y) < 0.02 for cx, cy, _ in rings(svg))


def test_it_says_what_is_there_and_what_is_needed(necked):
    note = next(n for n in necked.report if n.code == "D332")
    assert note.spot.measure == pytest.approx(2 * 7 / 95, abs=0.002)  # the bar as drawn
    svg = finding_figures(necked.pattern, necked.drafts, [note])["mini-D332-1"]
    words = " ".join(ElementTree.fromstring(svg).itertext())
    for part in (note.what, note.received, note.expected):
        assert part.split("(")[0].strip() in re.sub(r"\s+", " ", words)
    assert 'aria-label="The 8-fold motif with a ring' in svg


def test_findings_of_one_code_are_numbered_and_notes_without_a_place_are_left_out(necked):
    note = next(n for n in necked.report if n.code == "D332")
    bare = [n for n in necked.report if n.spot is None]
    names = list(finding_figures(necked.pattern, necked.drafts, [note, note, *bare]))
    assert names == ["mini-D332-1", "mini-D332-2"]
    assert finding_figures(necked.pattern, {}, [note]) == {}


def test_the_figures_are_among_the_results(necked):
    names = {n for n in necked.files if n.startswith("findings/")}
    assert "findings/mini-D332-1.svg" in names
    assert len(names) == sum(n.spot is not None for n in necked.report)


def test_an_error_carries_its_figures(tmp_path):
    with pytest.raises(PublishError) as stopped:
        pipeline.prepare(drawn(tmp_path, LOOSE))
    assert any(n.code == "D330" and n.severity is Severity.ERROR for n in stopped.value.report)
    assert "findings/mini-D330-1.svg" in stopped.value.files


def test_check_writes_the_figures_also_when_there_are_errors(tmp_path, capsys):
    folder = tmp_path / "figures" / "here"
    code = cli.main(["check", str(drawn(tmp_path, LOOSE)), "--json", "--figures", str(folder)])
    assert code == cli.ERRORS
    said = json.loads(capsys.readouterr().out)["findings"]
    assert any(n["code"] == "D330" for n in said)
    assert (folder / "mini-D330-1.svg").read_text().startswith("<svg")


def test_check_says_when_it_cannot_write(tmp_path, capsys):
    path = drawn(tmp_path, NECK)
    assert cli.main(["check", str(path), "--figures", str(path / "in")]) == cli.USAGE
    assert "foldwork:" in capsys.readouterr().err
