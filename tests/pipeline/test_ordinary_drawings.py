"""Drawings that were made for nothing of the kind, laid into a wedge, come to their figures.

Icons: Bootstrap Icons, MIT, tests/data/icons/LICENSE. The ball's outline and the letter in a
box are drawn here. No source: that every figure the words ask for is drawn is the point.
"""

import re
from pathlib import Path

import pytest
from small import CARRIES, written

from publish import draw, pipeline
from publish.model.book import PAPERS
from publish.notes import PublishError

ICONS = sorted((Path(__file__).parents[1] / "data" / "icons").glob("*.svg"))
DRAWN = {
    "ball": "M8 0a8 8 0 1 0 .01 0z M8 1.2a6.8 6.8 0 1 1 -.01 0z",
    "letter": "M0 0h16v16h-16z M1.2 1.2v13.6h13.6v-13.6z M5 3h2v8h5v2h-7z",
}
WEDGE = ' data-centre="8 {centre}" data-start="{start}" '
LINES = """motifs:
  m: {{drawing: bulrush.svg, folds: {folds}, fabric: fern, method: fusible, pieces: {pieces}}}
"""
SIZE = "mini: {block: carries, block_size: 16 in, motif_size: 14 in}"


def text(name):
    """Return a drawing of 16 by 16, filled by the rule of odd and even."""
    found = [i for i in ICONS if i.stem == name]
    if found:
        return found[0].read_text(encoding="utf-8")
    return (
        '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 16 16">'
        f'<path fill-rule="evenodd" d="{DRAWN[name]}"/></svg>'
    )


def laid(folder, name, folds, pieces=1):
    """Write a pattern whose wedge cuts the lower corners off a drawing."""
    marks = WEDGE.format(centre=22, start=-90 - 180 / folds)
    path = written(folder, SIZE, CARRIES, LINES.format(folds=folds, pieces=pieces))
    (folder / "bulrush.svg").write_text(text(name).replace("<svg ", f"<svg{marks}", 1))
    return path


def prepared(folder, name, folds):
    """Return the work on a drawing, with as many pieces as a finding tells."""
    try:
        return pipeline.prepare(laid(folder, name, folds))
    except PublishError as stopped:
        told = [n.received for n in stopped.report.errors if n.code == "D330"]
        assert told, [str(n) for n in stopped.report.errors]
        return pipeline.prepare(laid(folder, name, folds, re.match(r"\d+", told[0])[0]))


# Each drawing in one of the two foldings; the thorough run folds each both ways.
@pytest.mark.parametrize(
    ("name", "folds"),
    [
        pytest.param(name, folds, marks=() if n % 2 == m else pytest.mark.thorough)
        for n, name in enumerate([*DRAWN, *(i.stem for i in ICONS)])
        for m, folds in enumerate((6, 8))
    ],
)
def test_every_figure_of_a_fused_icon_is_drawn(tmp_path, name, folds):
    work = prepared(tmp_path, name, folds)
    art, notes = draw.draw(
        work.pattern, work.sizes, work.drafts, work.plans, work.manual, PAPERS["letter"]
    )
    assert [n.what for n in notes] == []
    assert "fusing-place" in art.figures or any("place" in key for key in art.figures)
