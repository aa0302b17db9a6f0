"""Crop and fold marks: where the printer cuts and folds, outside what is cut.

In: the box that is cut to, in points. Out: PDF operators.
Invariant: no mark reaches into the box or nearer to it than `gap`; marks are thin lines
of black alone, so that they print on one plate. Lengths and weight: common practice, no
source.
"""

from __future__ import annotations

Box = tuple[float, float, float, float]
"""Left, bottom, right, top in points."""

LENGTH = 18.0
WEIGHT = 0.25
_BLACK = "0 0 0 1 K"
_DASH = "[3 2] 0 d"


def number(value: float) -> str:
    """Return a coordinate to a ten-thousandth of a point."""
    return f"{value:.4f}".rstrip("0").rstrip(".") or "0"


def crop_marks(box: Box, gap: float, length: float = LENGTH) -> str:
    """Return eight lines that point at the corners of a box, `gap` points away from it."""
    left, bottom, right, top = box
    lines = []
    for x, out in ((left, -1), (right, 1)):
        for y, up in ((bottom, -1), (top, 1)):
            lines.append((x + out * gap, y, x + out * (gap + length), y))
            lines.append((x, y + up * gap, x, y + up * (gap + length)))
    return _drawn(lines)


def fold_marks(box: Box, gap: float, length: float = LENGTH) -> str:
    """Return two dashed lines above and below the upright middle of a box."""
    left, bottom, right, top = box
    x = (left + right) / 2
    lines = [(x, bottom - gap, x, bottom - gap - length), (x, top + gap, x, top + gap + length)]
    return _drawn(lines, _DASH)


def _drawn(lines: list[tuple[float, float, float, float]], dash: str = "") -> str:
    strokes = " ".join(
        f"{number(a)} {number(b)} m {number(c)} {number(d)} l S" for a, b, c, d in lines
    )
    return f"q {_BLACK} {number(WEIGHT)} w {dash} {strokes} Q\n"
