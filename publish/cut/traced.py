"""Templates traced on cloth, to be nested.

In: lettered needs. Out: shapes to nest.
Invariant: a template lies face down on the wrong side of the cloth, so its outline is
seen mirrored there, and that of a template turned over is not; between two cut lines lie
`APART` inches, so that both can be traced.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction

from shapely import affinity
from shapely.geometry import MultiPolygon, Polygon
from shapely.geometry import box as shapely_box

from publish.cut.fabric import Lettered
from publish.cut.nest import Shape
from publish.words.values import Said

APART = Fraction(1, 8)
"""Between two pieces traced beside each other: common practice, no source."""
FULL = 0.75
"""Share of their boxes that templates fill, from which nesting them is not tried."""


@dataclass(frozen=True)
class Traced:
    """A template to trace: its cut outline on the wrong side of the cloth, about 0, 0."""

    letter: str
    fabric: str
    outline: MultiPolygon
    count: int
    over: bool = False
    called: Said | None = None

    @property
    def name(self) -> str:
        return f"{self.letter} turned over" if self.over else self.letter

    def shape(self, turns: Sequence[int]) -> Shape:
        """Return the outline with half of `APART` round it."""
        grown = self.outline.buffer(float(APART) / 2, join_style="mitre")
        whole = max(grown.geoms, key=_area) if isinstance(grown, MultiPolygon) else grown
        return Shape(self.name, Polygon(whole.exterior), self.count, tuple(map(float, turns)))


def traced(needs: Iterable[Lettered]) -> list[Traced]:
    """Return the templates among some needs, those turned over by themselves; none where
    they all but fill the boxes round them."""
    found: list[Traced] = []
    for lettered in needs:
        need = lettered.need
        if need.outline is None:
            continue
        right = MultiPolygon([need.outline.cut])
        wrong = affinity.scale(right, -1, 1, origin=(0, 0))
        plain = need.count - need.mirrored
        for outline, count, over in ((wrong, plain, False), (right, need.mirrored, True)):
            if count:
                found.append(Traced(lettered.letter, need.fabric, outline, count, over))
    boxes = sum(shapely_box(*t.outline.bounds).area * t.count for t in found)
    filled = sum(t.outline.area * t.count for t in found)
    return found if filled < FULL * boxes else []


def _area(shape: Polygon) -> float:
    return float(shape.area)
