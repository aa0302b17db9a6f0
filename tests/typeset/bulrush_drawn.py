"""Drawings for the Bulrush booklet: plain shapes of the sizes that figures have.

A template sheet holds one square, 1 in on a side, 1 in from the left and from the top.
"""

from __future__ import annotations

from publish.model.book import Paper
from publish.model.figure import Artwork, Figure, Sheet

SQUARE = (2.0, 2.0)
_FIGURES: dict[str, tuple[float, float]] = {
    "cover": (6.0, 6.0),
    "sizes": (6.5, 3.1),
    "linen": SQUARE,
    "moss": SQUARE,
    "clay": SQUARE,
    "plan": (3.2, 2.2),
    "tile": (2.6, 1.7),
    "wide": (6.5, 2.4),
    "colouring": (6.5, 6.5),
    "step-1": (2.6, 2.2),
    "step-2": (2.6, 1.4),
    "step-3": (2.6, 2.6),
    **{f"step-{n}": (2.6, 1.6) for n in range(5, 9)},
}


def artwork(paper: Paper) -> Artwork:
    figures = {k: _figure(k, *size) for k, size in _FIGURES.items()}
    sheets = {
        ("bulrush", size, "wedge"): tuple(_sheet(size, n, paper) for n in range(count))
        for size, count in (("mini", 2), ("throw", 1))
    }
    return Artwork(figures, sheets)


def _figure(key: str, width: float, height: float) -> Figure:
    w, h = width * 72, height * 72
    svg = (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{w:g}pt" height="{h:g}pt" '
        f'viewBox="0 0 {w:g} {h:g}"><rect x="1" y="1" width="{w - 2:g}" height="{h - 2:g}" '
        f'fill="#f4efe6" stroke="#24221f"/><circle cx="{w / 2:g}" cy="{h / 2:g}" '
        f'r="{min(w, h) / 3:g}" fill="#3f5a3c"/><text x="8" y="18" font-size="8" '
        f'font-family="Source Sans Pro">{key}</text></svg>'
    )
    return Figure(key, svg, width, height, f"Drawing of {key}.")


def _sheet(size: str, number: int, paper: Paper) -> Sheet:
    w, h = paper.width, paper.height
    svg = (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{w:.4f}in" height="{h:.4f}in" '
        f'viewBox="0 0 {w:.4f} {h:.4f}"><rect x="1" y="1" width="1" height="1" fill="none" '
        f'stroke="#000" stroke-width="0.01"/><text x="1" y="0.9" font-size="0.12" '
        f'font-family="Source Sans Pro">Sheet {number + 1}</text></svg>'
    )
    return Sheet(
        key=f"bulrush-{size}-wedge-{number}",
        svg=svg,
        title=f"{size.capitalize()} wedge, sheet {number + 1}",
        leads=("bulrush", size, "wedge"),
        shown=(),
        square=(1.0, 1.0, 1.0),
        alt=f"Sheet {number + 1}.",
    )
