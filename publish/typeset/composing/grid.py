"""The grid that a layout composes its pages on, from its settings.

In: a layout's `settings.compose`, `lines`, `line` and `legible`. Out: `Grid`, or a note on the
setting that is missing or no number.
Invariant: points throughout; a layout without `compose` has no grid and sets its own pages.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from publish.notes import Note
from publish.typeset import numerals
from publish.typeset.layout import Layout
from publish.typeset.layout_file import FILE, fault

GAPS = ("title", "part", "small", "step", "box", "figure", "table", "words")
"""What has a distance of its own from what stands before it."""


@dataclass(frozen=True)
class Grid:
    """`measure` is parted into `columns` (one or two) with a `gutter`; `height` is a page's."""

    measure: float
    columns: int
    gutter: float
    hang: float
    """Room beside a step's words for its number."""
    narrow: float
    """The column of words beside a figure that a column is too narrow for."""
    words: float
    """The longest line of words that stand across the measure."""
    height: float
    legible: float
    """How small a figure may be made whose lettering is not known."""
    grow: float
    """How large a figure may be made."""
    gaps: Mapping[str, float]
    stretch: float
    """By how much a gap may grow so that a page ends full."""

    @property
    def column(self) -> float:
        return (self.measure - (self.columns - 1) * self.gutter) / self.columns

    @property
    def aside(self) -> float:
        """Return the room of a figure beside a narrow column of words."""
        return self.measure - self.gutter - self.narrow

    def gap(self, kind: str) -> float:
        """Return the distance from whatever stands before something of a kind."""
        return self.gaps[kind]


def grid(layout: Layout) -> tuple[Grid | None, tuple[Note, ...]]:
    """Return the grid of a layout's pages, if it has one."""
    given = layout.settings.get("compose")
    if given is None:
        return None, ()
    found, wrong = dict[str, float](), list[str]()
    asked: Mapping[str, Any] = given if isinstance(given, Mapping) else {}
    gaps = asked.get("gaps")
    places = {
        **{f"compose.{k}": asked.get(k) for k in _ASKED},
        **{f"compose.gaps.{k}": gaps.get(k) if isinstance(gaps, Mapping) else None for k in GAPS},
        **{k: layout.settings.get(k) for k in ("line", "lines", "legible")},
    }
    for name, value in places.items():
        if isinstance(value, int | float) and value >= 0:
            found[name] = float(value)
        else:
            wrong.append(name)
    if found.get("compose.columns") not in (1.0, 2.0) and "compose.columns" not in wrong:
        wrong.append("compose.columns")
    if "number" in asked and numerals.number(layout) is None:
        wrong.append("compose.number")
    if wrong:
        path, what = (
            layout.folder / FILE,
            "a setting that pages are composed by is not what it must be",
        )
        return None, tuple(fault(path, what, received=f"settings.{name}") for name in wrong)
    return Grid(
        measure=found["compose.measure"],
        columns=int(found["compose.columns"]),
        gutter=found["compose.gutter"],
        hang=found["compose.hang"],
        narrow=found["compose.narrow"],
        words=found["compose.words"],
        height=found["line"] * found["lines"],
        legible=found["legible"],
        grow=found["compose.grow"],
        gaps={k: found[f"compose.gaps.{k}"] for k in GAPS},
        stretch=found["compose.stretch"],
    ), ()


_ASKED = ("measure", "columns", "gutter", "hang", "narrow", "words", "grow", "stretch")
