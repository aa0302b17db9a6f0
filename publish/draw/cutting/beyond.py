"""Letters beyond the cloth, of pieces that are too small to hold theirs.

In: a bench, its pieces. Out: letters with their lines, drawn beyond the far selvage.
Invariant: no line runs through the letter of another piece.
"""

from __future__ import annotations

from fractions import Fraction

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import text_width
from publish.draw.canvas.style import HEAD, PAPER, SOFT, Stroke
from publish.draw.cutting.bench import Bench
from publish.draw.cutting.layout import Laid, spread


def hair(frame: Canvas) -> Fraction:
    """Return half a point of the page as a length of cloth: keeps brackets apart."""
    return Fraction(frame.inches(0.5))


def letters(bench: Bench, outside: list[Laid], every: list[Laid]) -> float:
    """Name, beyond the far selvage, pieces that are too small to hold their letter.

    A line to them runs along an edge of pieces that hold theirs.
    Return how far their letters reach, in points.
    """
    frame, width = bench.frame, bench.plan.usable_width
    alike: dict[tuple[int, str], list[Laid]] = {}
    for piece in outside:
        alike.setdefault((piece.group, piece.letter), []).append(piece)
    pointed = sorted(
        map(_outermost, alike.values()), key=lambda p: (p.along + p.length / 2, -p.across)
    )
    words = [p.letter for p in pointed]
    lines = [_line(bench, p, every) for p in pointed]
    middles = [bench.printed(along) for along in lines]
    widest = max((text_width(w, HEAD, "semibold") for w in words), default=0.0)
    gap = 11.0 if bench.down else widest + 5
    places = spread(middles, gap, -6.0, bench.printed(bench.plan.length) + 6)
    for piece, middle, place, text in zip(pointed, lines, places, words, strict=True):
        inside = min(frame.inches(3), float(piece.width) / 2)
        start = bench.at(middle, float(piece.across + piece.width) - inside)
        at, far = frame.inches(place), float(width) + frame.inches(14)
        near = float(width) + frame.inches(6)
        frame.polyline([start, bench.at(middle, near), bench.at(at, far)], Stroke(SOFT, 0.4))
        frame.circle(start, 1.2, SOFT, Stroke(PAPER, 0.5))
        shift = (2.0, 0.0) if bench.down else (0.0, 1.5)
        anchor, level = ("start", "middle") if bench.down else ("middle", "top")
        frame.text(bench.at(at, far), text, HEAD, "semibold", anchor, level, shift=shift)
    return (16 + widest if bench.down else 16 + HEAD) if words else 0.0


def _line(bench: Bench, piece: Laid, every: list[Laid]) -> Fraction:
    """Return how far along the cloth the line to a piece runs: through its middle, unless the
    letter of another stands there."""
    middle = piece.along + piece.length / 2
    beyond = [
        other
        for other in every
        if other.across > piece.across
        and other.along < middle < other.along + other.length
        and other.letter != piece.letter
    ]
    return piece.along + min(hair(bench.frame) * 3, middle - piece.along) if beyond else middle


def _outermost(pieces: list[Laid]) -> Laid:
    """Return, of pieces alike, the one nearest the far selvage; of several the middle one."""
    far = max(p.across + p.width for p in pieces)
    nearest = [p for p in pieces if p.across + p.width == far]
    return nearest[len(nearest) // 2]
