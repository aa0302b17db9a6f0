"""The Bulrush booklet for a print shop, made once for each paper.

One of its figures has a see-through area, and one shows a barcode.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import bulrush
import bulrush_drawn
from shapely.geometry import Polygon
from shared import shared

from publish.deliver import press
from publish.draw.barcode import draw as barcode
from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.style import Stroke
from publish.draw.canvas.svg import svg_of
from publish.model.book import PAPERS, Edition
from publish.model.drawing import Drawing
from publish.model.figure import Artwork
from publish.model.words import FigureSpec
from publish.typeset import typeset

NUMBER = "6291041500213"
"""GS1, How to calculate a check digit manually."""


def _veil() -> Drawing:
    """Return a drawing with a see-through frame over an area and a disc."""
    drawn = Canvas(230 / 72, 158 / 72)
    page = drawn.page
    page.rect(0, 0, 230, 158, "#3f5a3c")
    page.circle((60, 60), 40, "#a8552f")
    frame = Polygon(
        [(20, 20), (210, 20), (210, 130), (20, 130)],
        [[(60, 50), (140, 50), (140, 100), (60, 100)]],
    )
    page.shape(frame, "#ffffff", Stroke("#24221f", 1), opacity=0.72)
    return drawn.drawing()


VEIL = _veil()


@dataclass(frozen=True)
class Pressed:
    """The same booklet for a home printer, for the press as typeset, and as delivered."""

    artwork: Artwork
    booklet: Edition
    typeset: Edition
    delivered: Edition


@shared
def pressed(paper_key: str) -> Pressed:
    paper = PAPERS[paper_key]
    drawn = bulrush_drawn.artwork(paper)
    spec = FigureSpec("linen", "barcode", None, (("digits", NUMBER),))
    figures = drawn.figures | {
        "plan": replace(drawn.figures["plan"], svg=svg_of(VEIL), drawing=VEIL),
        "linen": barcode(None, spec),  # type: ignore[arg-type]
    }
    artwork = replace(drawn, figures=figures)
    found = []
    for trimmed in (False, True):
        edition, notes = typeset(
            bulrush.pattern(), bulrush.manual(), artwork, paper, trimmed=trimmed
        )
        assert notes == ()
        assert edition is not None
        found.append(edition)
    booklet, raw = found
    return Pressed(artwork, booklet, raw, replace(raw, pdf=press(bulrush.pattern(), raw)))
