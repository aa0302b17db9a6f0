"""Cloth on the page with pieces on it: what every cutting layout draws alike.

In: a frame in inches of cloth, a fabric's plan, its colour. Out: pieces drawn, each with
its letter and the first of a kind with its size.
Invariant: a label stands inside its piece or not at all; what cannot be labelled is told
to the caller.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from publish.draw.canvas import Canvas
from publish.draw.layout import Laid, size_of
from publish.draw.letters import set_number, text_width
from publish.draw.style import HEAD, SMALL, Stroke, edge_of, readable_on
from publish.model.cutplan import Cut, FabricPlan


@dataclass(frozen=True)
class Bench:
    """The cloth on the page: its frame, and whether it runs down or across."""

    frame: Canvas
    down: bool
    plan: FabricPlan
    colour: str

    def at(self, along: Fraction | float, across: Fraction | float) -> tuple[float, float]:
        a, b = float(along), float(across)
        return (b, a) if self.down else (a, b)

    def rect(self, along: Fraction, across: Fraction, length: Fraction, width: Fraction,
             fill: str | None, stroke: Stroke | None) -> None:  # fmt: skip
        (x, y), (w, h) = self.at(along, across), self.at(length, width)
        self.frame.rect(x, y, w, h, fill, stroke)

    def printed(self, length: Fraction | float) -> float:
        """Return a length of cloth in points of the page."""
        return float(length) * self.frame.unit


def firsts(laid: tuple[Laid, ...]) -> list[tuple[Laid, bool]]:
    """Return each piece, and whether it is the first of its cut in its strip group."""
    seen: set[tuple[int, str, Fraction, Fraction]] = set()
    found = []
    for piece in laid:
        key = (piece.group, piece.letter, piece.length, piece.width)
        found.append((piece, key not in seen))
        seen.add(key)
    return found


def draw_piece(bench: Bench, piece: Laid, first: bool) -> Laid | None:
    """Draw a piece and its label; return it when it is too small to hold its letter."""
    bench.rect(piece.along, piece.across, piece.length, piece.width, bench.colour,
               Stroke(edge_of(bench.colour), 0.5))  # fmt: skip
    centre = bench.at(piece.along + piece.length / 2, piece.across + piece.width / 2)
    wide, high = (bench.printed(v) for v in bench.at(piece.length, piece.width))
    a, b = size_of(bench.plan, Cut(piece.letter, piece.width, piece.length, 1))
    words = f"{set_number(a)} × {set_number(b)} in"
    letter, size = text_width(piece.letter, HEAD, "semibold"), text_width(words, SMALL)
    if first:
        for angle, run, rise in ((0.0, wide, high), (-90.0, high, wide)):
            if rise >= 24 and run >= size + 5:
                _stacked(bench, centre, (piece.letter, words), angle)
                return None
            if rise >= 10 and run >= size + letter + 14:
                _run(bench, centre, (piece.letter, words), (letter, size), angle)
                return None
    if min(wide, high) < 7.2 or wide < letter + 2:
        return piece if first else None
    type_size = HEAD if min(wide, high) >= 10 else SMALL
    ink = readable_on(bench.colour)
    bench.frame.text(centre, piece.letter, type_size, "semibold", "middle", "middle", ink)
    return None


def _stacked(bench: Bench, centre: tuple[float, float], words: tuple[str, str],
             angle: float) -> None:  # fmt: skip
    """Set a piece's letter with its size beneath it."""
    page, (x, y) = bench.frame.page, bench.frame.point(centre)
    ink = readable_on(bench.colour)
    for text, size, face, by in (
        (words[0], HEAD, "semibold", -5.5),
        (words[1], SMALL, "regular", 6.0),
    ):
        at = (x, y + by) if not angle else (x + by, y)
        page.text(at, text, size, face, "middle", "middle", ink, angle)


def _run(bench: Bench, centre: tuple[float, float], words: tuple[str, str],
         widths: tuple[float, float], angle: float) -> None:  # fmt: skip
    """Set a piece's letter and its size in one line, along the piece."""
    page, (x, y) = bench.frame.page, bench.frame.point(centre)
    ink = readable_on(bench.colour)
    half = (widths[0] + 6 + widths[1]) / 2
    for text, size, face, start in (
        (words[0], HEAD, "semibold", -half),
        (words[1], SMALL, "regular", -half + widths[0] + 6),
    ):
        at = (x + start, y) if not angle else (x, y - start)
        page.text(at, text, size, face, "start", "middle", ink, angle)
