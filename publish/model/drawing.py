"""What a canvas records: the primitives of one drawing, in printing order.

In: nothing. Out: frozen types, which `publish.draw` records, writes as SVG and which
typesetting sets into a PDF page as they are.
Invariant: coordinates of outlines are whole hundredths of a point from the page's corner,
already rounded, so that every writer of a drawing prints the same lines.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

Ring = tuple[tuple[int, int], ...]
"""Corners in hundredths of a point; no two neighbours alike."""
HUNDREDTHS = 100
FONT = "Source Sans Pro"
"""The family that all lettering is set in."""
WEIGHTS = {"regular": 400, "semibold": 600, "bold": 700, "italic": 400}
"""By face; `italic` is the only slanted one."""
TRACKING = -0.02
"""Points between letters. PDF readers that take each letter as an object join letters
into words only where their boxes overlap; this makes them, and cannot be seen."""


@dataclass(frozen=True)
class Stroke:
    """A line: colour, weight in points, dash lengths in points, how it ends."""

    colour: str
    weight: float = 0.6
    dash: tuple[float, ...] = ()
    cap: str = "butt"

    def but(self, colour: str | None = None, weight: float | None = None) -> Stroke:
        """Return this stroke in another colour or weight."""
        return replace(self, colour=colour or self.colour, weight=weight or self.weight)


@dataclass(frozen=True)
class Path:
    """Rings (`closed`) or runs of points, filled by the even-odd rule, stroked, or both."""

    rings: tuple[Ring, ...]
    closed: bool
    fill: str | None = None
    stroke: Stroke | None = None
    opacity: float = 1.0
    """Of the fill."""


@dataclass(frozen=True)
class Circle:
    """A circle; centre and radius in points."""

    centre: tuple[float, float]
    radius: float
    fill: str | None = None
    stroke: Stroke | None = None


@dataclass(frozen=True)
class Lettering:
    """One line of text: its baseline starts `at`; it is turned `angle` degrees about `about`."""

    text: str
    at: tuple[float, float]
    about: tuple[float, float]
    angle: float
    size: float
    face: str
    fill: str


@dataclass(frozen=True)
class Seen:
    """What is drawn inside an area and nowhere else: for print without transparency."""

    area: Path
    items: tuple[Primitive, ...]


Primitive = Path | Circle | Lettering | Seen


@dataclass(frozen=True)
class Drawing:
    """A recorded drawing. `window` is left, top, width, height of what is printed, in points."""

    items: tuple[Primitive, ...]
    window: tuple[float, float, float, float]
