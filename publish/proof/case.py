"""What the checks before typesetting look at, and the questions most of them ask.

In: pattern, sizes, drafts, plans, manual. Out: `Case`, a read-only view, and `Check`.
Invariant: only sizes that every stage has finished are checked; nothing is mended here.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from functools import cached_property
from typing import Any

from publish.measures import Measures
from publish.model.cutplan import CutPlan, FabricPlan, Piece
from publish.model.draft import Draft
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.model.words import Manual
from publish.notes import Note, Place
from publish.operations.rehearsal import Making
from publish.surd import Exact
from publish.words import Language, english


@dataclass(frozen=True)
class Code:
    """What a check can find: a title, why it matters to a maker, and an example of each.

    `wrong` is something that the check finds and `right` the same mended, as YAML or as
    words of the booklet.
    """

    title: str
    why: str
    wrong: str = ""
    right: str = ""


@dataclass(frozen=True)
class Case:
    """The inputs of the checks."""

    pattern: Pattern
    sizes: Mapping[str, Size]
    drafts: Mapping[str, Draft]
    plans: Mapping[str, CutPlan]
    manual: Manual
    making: Making = field(default_factory=lambda: Making({}))

    @property
    def keys(self) -> tuple[str, ...]:
        """Return the sizes to check, in the pattern's order."""
        return tuple(
            k
            for k in self.pattern.sizes
            if k in self.sizes and k in self.drafts and k in self.plans
        )

    @cached_property
    def memory(self) -> dict[tuple[str, str, int], Any]:
        """Return what checks have worked out of units, by purpose, size and the unit's id."""
        return {}

    @property
    def seam(self) -> Fraction:
        return self.pattern.sewing.seam

    @property
    def measures(self) -> Measures:
        return self.pattern.measures

    @property
    def words(self) -> Language:
        """Return the language that the booklet is told in."""
        return self.pattern.words

    @property
    def units(self) -> tuple[str, ...]:
        """Return the units that lengths to cut and sew by are told in."""
        return self.measures.names

    def near(self, length: Exact) -> Fraction:
        """Return a length as it is told."""
        return self.measures.near(length)

    def exact(self, length: Exact) -> bool:
        """Return whether a length is told as it is."""
        return self.measures.exact(length)

    def up(self, length: Exact) -> Fraction:
        """Return a length rounded up as cut sizes are."""
        return self.measures.up(length)

    def text(self, length: Exact) -> str:
        """Return a length in the unit that leads."""
        return self.measures.text(length)

    def practice(self, figures: frozenset[Fraction]) -> frozenset[Fraction]:
        """Return figures of the trade as the pattern's makers have them."""
        return frozenset(map(self.measures.usual, figures))

    def size_place(self, key: str, *path: str | int) -> Place:
        """Return where a size says something, or the nearest thing around it."""
        return self.pattern.place("sizes", key, *path)

    def fabric_plans(self) -> Iterator[tuple[str, str, FabricPlan]]:
        """Yield size key, fabric key and plan for everything that is bought."""
        for key in self.keys:
            for fabric, plan in self.plans[key].fabrics.items():
                yield key, fabric, plan

    def called(self, piece: Piece) -> str:
        """Return what a piece is called, as findings tell it."""
        return english(piece.called, self.pattern.measures)

    def name(self, fabric: str) -> str:
        """Return a fabric's name, or its key when the pattern has no such fabric."""
        found = self.pattern.fabrics.get(fabric)
        return fabric if found is None else found.name


Check = Callable[[Case], Iterator[Note]]
