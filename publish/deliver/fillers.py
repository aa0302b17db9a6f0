"""Pages that make a booklet's count a multiple of four: ruled for notes, or blank.

In: a page size in points. Out: PDF operators that draw the page.
Invariant: grey only, so that the page prints on one plate and fits any colour space; the
heading is drawn as outlines, so that the page needs no font.
"""

from __future__ import annotations

from functools import cache
from importlib.resources import files

from fontTools.pens.recordingPen import DecomposingRecordingPen  # type: ignore[import-untyped]
from fontTools.ttLib import TTFont  # type: ignore[import-untyped]

from publish.deliver.marks import number

NOTES, BLANK = "notes", "blank"
HEADING = "Notes"
SIZE = 28.0
"""Points: as the section titles of a booklet."""
MARGIN = 54.0
PITCH = 21.0
"""Points between the rules: wide enough for handwriting; common practice, no source."""
_OPERATORS = {"moveTo": "m", "lineTo": "l", "curveTo": "c", "closePath": "h", "endPath": ""}


def filler_page(kind: str, width: float, height: float) -> bytes:
    """Return what is drawn on a filler page of `width` x `height` points."""
    if kind == BLANK:
        return b""
    if kind != NOTES:
        raise ValueError(f"a filler page is {NOTES!r} or {BLANK!r}, not {kind!r}")
    base = height - MARGIN - SIZE
    rules = []
    y = base - 2 * PITCH
    while y >= MARGIN:
        rules.append(f"{number(MARGIN)} {number(y)} m {number(width - MARGIN)} {number(y)} l S")
        y -= PITCH
    heading = f"q 0.15 g 1 0 0 1 {number(MARGIN)} {number(base)} cm {_outlines()} f Q"
    return f"{heading}\nq 0.65 G 0.4 w {' '.join(rules)} Q\n".encode()


@cache
def _outlines() -> str:
    """Return the heading's letters as paths, from the baseline's start."""
    path = files("font_source_serif_pro") / "files" / "SourceSerifPro-Light.otf"
    parts, at = [], 0.0
    with path.open("rb") as handle:
        font = TTFont(handle, lazy=False)
        glyphs, names = font.getGlyphSet(), font.getBestCmap()
        scale = SIZE / font["head"].unitsPerEm
        for letter in HEADING:
            pen = DecomposingRecordingPen(glyphs)
            glyphs[names[ord(letter)]].draw(pen)
            for operation, points in pen.value:
                places = [number(v) for x, y in points for v in ((x * scale) + at, y * scale)]
                parts.append(" ".join([*places, _OPERATORS[operation]]))
            at += glyphs[names[ord(letter)]].width * scale
    return " ".join(p for p in parts if p)
