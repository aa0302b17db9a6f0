"""Templates as they lie on the sheets that show them.

Values only: `Spread` is one sheet, or several that are joined, with every template on it.
All lengths are inches.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace

from shapely.affinity import translate
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry
from shapely.ops import unary_union

from publish.draw.sheets.template import Template
from publish.draw.sheets.tiling import Tiling
from publish.draw.sheets.windows import Window
from publish.model.figure import XY, Asked

TRACE = 1e-4
"""Square inches: less of a template than this is none."""
LEAD = 10.0
"""Points from one line of words to the next."""


@dataclass(frozen=True)
class Caption:
    """Words beside a template: the first line is its name. `area` in its coordinates."""

    lines: tuple[str, ...]
    area: Polygon


@dataclass(frozen=True)
class Lying:
    """A template, and how far its origin lies from the spread's."""

    asked: Asked
    template: Template
    x: float = 0.0
    y: float = 0.0
    caption: Caption | None = None
    fold: tuple[XY, XY] | None = None
    """Where it is printed as its half: the fold, as `Shown.fold`."""

    @property
    def cover(self) -> BaseGeometry:
        """Return everything that it covers, words beside it included, on the spread."""
        words = [] if self.caption is None else [self.caption.area]
        return translate(unary_union([self.template.cover, *words]), self.x, self.y)

    def window(self, window: Window) -> Window:
        """Return a window of the spread in the template's own coordinates."""
        left, top, right, bottom = window.box
        return replace(window, box=(left - self.x, top - self.y, right - self.x, bottom - self.y))

    def on(self, window: Window) -> bool:
        """Return whether a window shows any of the template."""
        shown = self.template.cover.intersection(self.window(window).area)
        return bool(shown.area > TRACE)


@dataclass(frozen=True)
class Spread:
    """Sheets that are joined, or a single one, and what lies on them in reading order."""

    tiling: Tiling
    lying: tuple[Lying, ...]
    prints: Mapping[str, int] = field(default_factory=dict)
    """By size: how often it is printed, where that is not once."""

    @property
    def alone(self) -> bool:
        """Return whether it shows one template, whose words stand in the head of the sheet."""
        return len({lying.asked for lying in self.lying}) == 1 and self.lying[0].caption is None
