"""A page of markers to print, cut apart and lay beside the cut paper.

In: a paper of `model.book`. Out: the page as SVG and PDF.
Invariant: the black squares are exactly `SIDE` wide at 100 %; what stands on a piece besides
lies outside its marker's quiet zone.
"""

from __future__ import annotations

import cairosvg
import cv2
import numpy as np

from publish.model.book import Paper

SIDE = 2.0
"""Inches of a marker's side."""

PIECE = 3.0
"""Inches of the piece of paper that it is cut out with."""

COLUMNS, ROWS = 2, 3

MARKERS = cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_4X4_50)
"""Of the library's own sets, the one whose markers have the fewest and so largest squares."""

CELLS = 6
"""Of a marker's side: four, and its black border."""

NOTE = (
    "Print at 100 %: a black square is 2 in (50.8 mm) wide. Cut apart on the lines.",
    "Lay one or more beside the cut paper, flat and not on it.",
)


def target(paper: Paper) -> bytes:
    """Return the page as PDF."""
    return bytes(cairosvg.svg2pdf(bytestring=page(paper).encode()))


def page(paper: Paper) -> str:
    """Return the page as SVG, in inches."""
    left, top = (paper.width - COLUMNS * PIECE) / 2, (paper.height - ROWS * PIECE) / 2 + 0.2
    pieces = [
        _piece(k, left + PIECE * (k % COLUMNS), top + PIECE * (k // COLUMNS))
        for k in range(COLUMNS * ROWS)
    ]
    words = [
        f'<text x="{paper.width / 2:.3f}" y="{top - 0.45 + 0.2 * i:.3f}" font-size="0.14" '
        f'font-family="sans-serif" text-anchor="middle">{line}</text>'
        for i, line in enumerate(NOTE)
    ]
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{paper.width:.5f}in" '
        f'height="{paper.height:.5f}in" viewBox="0 0 {paper.width:.5f} {paper.height:.5f}">'
        f'<rect width="100%" height="100%" fill="#fff"/>{"".join((*words, *pieces))}</svg>'
    )


def _piece(number: int, x: float, y: float) -> str:
    """Return one piece: its marker, white squares on black, its edge, its size."""
    bits = cv2.aruco.generateImageMarker(MARKERS, number, CELLS)
    cell, edge = SIDE / CELLS, (PIECE - SIDE) / 2
    data = "".join(
        f"M{x + edge + column * cell:.5f} {y + edge + row * cell:.5f}"
        f"h{cell:.5f}v{cell:.5f}h-{cell:.5f}z"
        for row, column in np.argwhere(bits > 0)
    )
    return (
        f'<rect x="{x:.4f}" y="{y:.4f}" width="{PIECE}" height="{PIECE}" fill="none" '
        'stroke="#999" stroke-width="0.01" stroke-dasharray="0.08 0.06"/>'
        f'<rect x="{x + edge:.5f}" y="{y + edge:.5f}" width="{SIDE}" height="{SIDE}"/>'
        f'<path d="{data}" fill="#fff"/>'
        f'<text x="{x + PIECE / 2:.4f}" y="{y + PIECE - 0.08:.4f}" font-size="0.11" '
        f'font-family="sans-serif" text-anchor="middle" fill="#666">2 in · 50.8 mm</text>'
    )
