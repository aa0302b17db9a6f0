"""Cloth on the page with pieces on it: what every cutting layout draws alike.

In: a frame in inches of cloth, a fabric's plan, its colour. Out: pieces drawn, each with
its letter and the first of a kind with its size.
Invariant: a label stands inside its piece or not at all; what cannot be labelled is told
to the caller.
"""

from __future__ import annotations

from fractions import Fraction

from shapely.geometry import Polygon

from publish.draw.canvas.letters import text_width
from publish.draw.canvas.style import HEAD, PAPER, SMALL, Stroke, edge_of, mix, readable_on
from publish.draw.cutting.bench_cuts import draw_cuts, shape_of
from publish.draw.cutting.bench_table import Bench as Bench
from publish.draw.cutting.layout import Laid, piece_of, size_of
from publish.draw.piecing.table import letter_inside
from publish.model.cutplan import Cut


def firsts(laid: tuple[Laid, ...]) -> list[tuple[Laid, bool]]:
    """Return each piece, and whether it is the first of its cut in its strip group."""
    seen: set[tuple[int, str, Fraction, Fraction]] = set()
    found = []
    for piece in laid:
        key = (piece.group, piece.letter, piece.length, piece.width)
        found.append((piece, key not in seen))
        seen.add(key)
    return found


def piece_words(bench: Bench, piece: Laid) -> tuple[str, ...]:
    """Return what may stand under a piece's letter, the most telling first."""
    say = bench.labels
    a, b = size_of(bench.plan, Cut(piece.letter, piece.width, piece.length, 1))
    words = f"{say.sides(a, b)}"
    cut = piece_of(bench.plan, piece.letter)
    if cut is None or not cut.shape.endswith("triangle") or cut.yields < 2:
        return (words,)
    return say.text("figure-triangles", words=words, yields=cut.yields), words


def draw_piece(bench: Bench, piece: Laid, first: bool) -> Laid | None:
    """Draw a piece and its label; return it when it is too small to hold its letter."""
    cut = piece_of(bench.plan, piece.letter)
    template = bench.templates.get(cut.template) if cut is not None else None
    ground = bench.colour if template is None else mix(bench.colour, PAPER, 0.55)
    bench.rect(
        piece.along,
        piece.across,
        piece.length,
        piece.width,
        ground,
        Stroke(edge_of(bench.colour), 0.5),
    )
    if template is not None:
        return _shaped(bench, piece, shape_of(bench, piece, template), first)
    if cut is not None and cut.shape != "rectangle":
        draw_cuts(bench, piece, cut)
    return _labelled(bench, piece, first)


def _shaped(bench: Bench, piece: Laid, shape: Polygon, first: bool) -> Laid | None:
    """Draw a piece that is cut with a template, its letter inside its own outline."""
    bench.frame.shape(shape, bench.colour, Stroke(edge_of(bench.colour), 0.5))
    ink = readable_on(bench.colour)
    if letter_inside(bench.frame, shape, piece.letter, ink):
        return None
    return piece if first else None


def _labelled(bench: Bench, piece: Laid, first: bool) -> Laid | None:
    """Set a rectangle's letter, and with the first of a kind its size."""
    centre = bench.at(piece.along + piece.length / 2, piece.across + piece.width / 2)
    wide, high = (bench.printed(v) for v in bench.at(piece.length, piece.width))
    letter = text_width(piece.letter, HEAD, "semibold")
    for words in piece_words(bench, piece) if first else ():
        size = text_width(words, SMALL)
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
    halo = _halo(bench, piece.letter)
    bench.frame.text(
        centre, piece.letter, type_size, "semibold", "middle", "middle", ink, halo=halo
    )
    return None


def _halo(bench: Bench, letter: str) -> str | None:
    """Return the colour behind words that cuts would run through."""
    cut = piece_of(bench.plan, letter)
    crossed = cut is not None and cut.shape not in ("rectangle", "oversize", "template")
    return bench.colour if crossed else None


def _stacked(
    bench: Bench, centre: tuple[float, float], words: tuple[str, str], angle: float
) -> None:
    """Set a piece's letter with its size beneath it."""
    page, (x, y) = bench.frame.page, bench.frame.point(centre)
    ink = readable_on(bench.colour)
    for text, size, face, by in (
        (words[0], HEAD, "semibold", -5.5),
        (words[1], SMALL, "regular", 6.0),
    ):
        at = (x, y + by) if not angle else (x + by, y)
        page.text(at, text, size, face, "middle", "middle", ink, angle, _halo(bench, words[0]))


def _run(
    bench: Bench,
    centre: tuple[float, float],
    words: tuple[str, str],
    widths: tuple[float, float],
    angle: float,
) -> None:
    """Set a piece's letter and its size in one line, along the piece."""
    page, (x, y) = bench.frame.page, bench.frame.point(centre)
    ink = readable_on(bench.colour)
    half = (widths[0] + 6 + widths[1]) / 2
    for text, size, face, start in (
        (words[0], HEAD, "semibold", -half),
        (words[1], SMALL, "regular", -half + widths[0] + 6),
    ):
        at = (x + start, y) if not angle else (x, y - start)
        page.text(at, text, size, face, "start", "middle", ink, angle, _halo(bench, words[0]))
