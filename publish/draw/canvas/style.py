"""What lines, colours and type mean, the same in every figure.

In: a pattern's fabrics. Out: named strokes, a palette, colours that read.
Invariant: the same line always means the same thing (finished line solid, cut line
dashed, fold dash-dot, basting short red-brown dashes, quilting dotted), and no meaning
rests on colour alone. Weights and text sizes are points of the printed figure.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from publish.colour import contrast as contrast
from publish.model.drawing import FONT as FONT
from publish.model.drawing import Stroke as Stroke
from publish.model.pattern import Pattern

SMALL = 7.0
"""The smallest text in any figure, in points; also the size of most labels."""
LABEL = 7.5
HEAD = 9.0

TEXT_COLUMN = 6.5
"""Inches: the printed width of a full figure."""
NARROW_COLUMN = 4.69
"""The same on half-size paper, whose figures are drawn for it: reduced, their words could
not be read."""
STEP_WIDTH = 2.6
"""Inches: the printed width of a figure beside a step."""

INK = "#2b2a28"
SOFT = "#5f5b55"
HAIR = "#a49e94"
PAPER = "#ffffff"
TINT = "#f7f4ee"
RED_BROWN = "#9a3b26"
BATTING = "#f3efe6"
READABLE = 4.5
"""WCAG AA contrast for text of ordinary size."""
SEEN = 3.0
"""WCAG AA contrast for graphical objects."""
FAINT = 1.5
"""Contrast of an edge with its cloth under which it vanishes; common practice, no source."""


FINISHED = Stroke(INK, 0.9)
CUT = Stroke(INK, 0.7, (4.0, 2.0))
FOLD = Stroke(INK, 0.8, (7.0, 2.0, 1.2, 2.0))
CREASE = Stroke(SOFT, 0.5, (2.5, 1.8))
BASTE = Stroke(RED_BROWN, 0.9, (3.2, 2.2), "round")
STITCH = Stroke(RED_BROWN, 0.8, (1.8, 1.4))
QUILTING = Stroke(SOFT, 0.55, (0.1, 1.5), "round")
THIN = Stroke(SOFT, 0.35)
DIMENSION = Stroke(SOFT, 0.45)
LEADER = Stroke(SOFT, 0.4)
ARROW = Stroke(INK, 0.9)


def channels(colour: str) -> tuple[int, int, int]:
    """Return red, green, blue of `#rrggbb`, 0 to 255."""
    return int(colour[1:3], 16), int(colour[3:5], 16), int(colour[5:7], 16)


def mix(one: str, other: str, share: float) -> str:
    """Return `one` with `share` (0 to 1) of `other` mixed in, channel by channel.

    For tints and outlines of drawings; what fabrics look like is `publish.colour`'s.
    """
    pairs = zip(channels(one), channels(other), strict=True)
    return "#" + "".join(f"{round(a + (b - a) * share):02x}" for a, b in pairs)


def readable_on(ground: str) -> str:
    """Return ink or paper, whichever reads better on `ground`; black where neither does."""
    best = max((INK, PAPER), key=lambda colour: contrast(colour, ground))
    return best if contrast(best, ground) >= READABLE else "#000000"


def darkened(colour: str, ratio: float = READABLE, against: str = PAPER) -> str:
    """Return `colour` mixed with black just until it reads on `against`."""
    for step in range(21):
        mixed = mix(colour, "#000000", step / 20)
        if contrast(mixed, against) >= ratio:
            return mixed
    return "#000000"


def edge_of(fabric: str) -> str:
    """Return an outline that shows on a fabric and on the page: darker than the fabric, on
    cloth that is nearly black lighter."""
    dark = mix(fabric, INK, 0.72)
    if contrast(dark, fabric) >= FAINT:
        return dark
    lighter = (mix(fabric, PAPER, n / 20) for n in range(21))
    return next(colour for colour in lighter if contrast(colour, fabric) >= SEEN)


def wrong_side(fabric: str) -> str:
    """Return the wrong side of a fabric: a lighter tint of it."""
    return mix(fabric, PAPER, 0.62)


def wrong_hatch(fabric: str) -> str:
    """Return the hatch that marks a wrong side: visible on it, quieter than any line."""
    side = wrong_side(fabric)
    return mix(side, INK, 0.3)


@dataclass(frozen=True)
class Palette:
    """The few colours of one pattern's figures besides its fabrics.

    `accent` and `second` read as text on white: taken from the pattern's own most
    colourful fabrics.
    """

    accent: str
    second: str


def _colourfulness(colour: str) -> int:
    return max(channels(colour)) - min(channels(colour))


def palette(pattern: Pattern) -> Palette:
    """Return the palette that a pattern's fabrics give."""
    return palette_of(f.colour for f in pattern.fabrics.values())


def palette_of(colours: Iterable[str]) -> Palette:
    """Return accents from the two most colourful of `colours`, dark enough to read."""
    ranked = sorted(dict.fromkeys(colours), key=lambda c: (-_colourfulness(c), c))
    ranked = [*ranked, RED_BROWN, SOFT] if len(ranked) < 2 else ranked
    return Palette(darkened(ranked[0]), darkened(ranked[1]))
