"""The Bulrush booklet for a print shop, made once for each paper.

One of its figures has a see-through area, and one shows a barcode.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cache

import bulrush
import bulrush_drawn

from publish.deliver import press
from publish.draw.barcode import draw as barcode
from publish.model.book import PAPERS, Edition
from publish.model.figure import Artwork
from publish.model.words import FigureSpec
from publish.typeset import typeset

NUMBER = "6291041500213"
"""GS1, How to calculate a check digit manually."""
VEIL = (
    '<svg xmlns="http://www.w3.org/2000/svg" width="230pt" height="158pt" '
    'viewBox="0 0 230 158"><rect width="230" height="158" fill="#3f5a3c"/>'
    '<circle cx="60" cy="60" r="40" fill="#a8552f"/>'
    '<path fill="#ffffff" fill-rule="evenodd" fill-opacity="0.72" stroke="#24221f" '
    'd="M20 20l190 0l0 110l-190 0ZM60 50l80 0l0 50l-80 0Z"/></svg>'
)


@dataclass(frozen=True)
class Pressed:
    """The same booklet for a home printer, for the press as typeset, and as delivered."""

    artwork: Artwork
    booklet: Edition
    typeset: Edition
    delivered: Edition


@cache
def pressed(paper_key: str) -> Pressed:
    paper = PAPERS[paper_key]
    drawn = bulrush_drawn.artwork(paper)
    spec = FigureSpec("linen", "barcode", None, (("digits", NUMBER),))
    figures = drawn.figures | {
        "plan": replace(drawn.figures["plan"], svg=VEIL),
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
