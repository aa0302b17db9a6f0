"""Blocks on point: diagonal rows, the triangles at their ends, the edges made straight.

In: keys of heaps, seams. Out: operations.
Invariant: what a triangle measures follows from the square that it is cut from; the top is as
large as the diagonals of its blocks.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import pairwise
from typing import ClassVar

from publish.operations.borders import PINNED, PRESSED
from publish.operations.joining import PressSeams, paper_of
from publish.operations.layout import LAYOUT, LEVEL, LayOutOnPoint, TurnLayout
from publish.operations.operation import Moment, Operation
from publish.operations.parts import Measure, Part, measured, sheet
from publish.operations.table import Table
from publish.surd import ROOT_2
from publish.surd import Length as Exact
from publish.words.values import (
    Count,
    Length,
    Letter,
    Rectangle,
    Said,
    Several,
    Value,
    Values,
    Word,
)

HALF = Fraction(1, 2)
CORNERED, OPENED = "its last corners on", "its long seams pressed"


@dataclass(frozen=True)
class DiagonalPart:
    """A part of a diagonal row."""

    key: str
    quarters: int = 0
    shape: str = ""
    """`side` or `corner` of a triangle, `cut off` where the edge of the top cuts it; empty for
    a rectangle."""

    def inner(self, square: Part, seam: Exact, edge: Exact) -> Exact | None:
        """Return the finished edge by which it is sewn on, by the square it is cut from.

        `edge` is the allowance on the outside of the top. A square of side L cut twice gives
        legs of L/√2 - 2 seam - √2 edge, one cut once a long side of √2 (L - 2 edge) - 2 seam.
        """
        side = square.width.exact
        if self.shape == "side":
            return side * ROOT_2 * HALF - 2 * seam - edge * ROOT_2
        if self.shape == "corner":
            return (side - 2 * edge) * ROOT_2 - 2 * seam
        if self.shape:
            return None
        high = square.width if self.quarters % 2 else square.height
        return high.exact - 2 * seam


@dataclass(frozen=True, kw_only=True)
class SewDiagonalRow(Operation):
    """Sew blocks and triangles into a diagonal row."""

    parts: tuple[DiagonalPart, ...]
    row: str
    seam: Exact
    edge: Exact
    called: Value
    those: Value

    message: ClassVar[str] = "sew-diagonal-row"

    def carry_out(self, table: Table) -> None:
        layout = table.look(LAYOUT)
        table.need(layout.is_(LEVEL), "the layout turned", by=TurnLayout, part=layout)
        taken = [table.take(one.key) for one in self.parts]
        sides = [
            (one, self._edge(table, one, part)) for one, part in zip(self.parts, taken, strict=True)
        ]
        for (one, first), (two, second) in pairwise(sides):
            if first is not None and second is not None:
                names = Part(one.key), Part(two.key)
                table.meet("the edges", measured(first), measured(second), *names)
        known = [side for _, side in sides if side is not None]
        high = measured((known[0] if known else 0 * self.seam) + 2 * self.seam)
        table.sew("piecing", high.exact * (len(self.parts) - 1))
        table.put(replace(sheet(self.row, high, high), paper=paper_of(taken)))

    def _edge(self, table: Table, one: DiagonalPart, part: Part) -> Exact | None:
        """Return the edge by which a part is sewn on; None where not known."""
        whole = one.shape or one.key.startswith("piece ")
        table.need(bool(whole) or part.is_(PRESSED), "pressed blocks", by=PressSeams, part=part)
        return one.inner(part, self.seam, self.edge) if part.known else None

    def values(self, moment: Moment) -> Values:
        return {"row": self.called, "parts": self.those}


@dataclass(frozen=True, kw_only=True)
class PressDiagonalRow(Operation):
    """Press the seams of the diagonal rows, each row opposite to its neighbours."""

    rows: tuple[tuple[str, str], ...]
    """Each row, and where its seams go."""
    way: Value

    message: ClassVar[str] = "press-diagonal-row"
    tools: ClassVar[tuple[str, ...]] = ("iron",)

    def carry_out(self, table: Table) -> None:
        for key, toward in self.rows:
            row = table.take(key)
            done = row.is_(PRESSED) and row.known
            table.need(not done, "seams to press", by=SewDiagonalRow, part=row)
            table.put(row.having(PRESSED, f"toward {toward}"))

    def values(self, moment: Moment) -> Values:
        return {"way": self.way}


@dataclass(frozen=True, kw_only=True)
class PinDiagonalRows(Operation):
    """Lay the rows right sides together in order and pin every crossing."""

    rows: tuple[str, ...]
    order: tuple[Value, ...]
    """The rows by their names, and single strips by their letters."""
    strips: bool
    """Whether some are single strips, which have no seam to match."""

    message: ClassVar[str] = "pin-diagonal-rows"
    tools: ClassVar[tuple[str, ...]] = ("pins",)

    def carry_out(self, table: Table) -> None:
        for key, count in Counter(self.rows).items():
            row = table.take(key, count)
            ready = key.startswith("piece ") or row.is_(PRESSED)
            table.need(ready, "rows pressed", by=PressDiagonalRow, part=row)
            table.put(row.having(PINNED), count)

    def values(self, moment: Moment) -> Values:
        return {
            "first": self.order[0],
            "last": self.order[-1],
            "order": Several(self.order),
            "strips": Word("yes" if self.strips else "no"),
        }


@dataclass(frozen=True, kw_only=True)
class JoinDiagonalRows(Operation):
    """Sew the diagonal rows together."""

    rows: tuple[str, ...]
    sash: tuple[str, ...]
    """Those that are rows of sashing."""
    columns: int
    lines: int
    seam: Exact
    edge: Exact
    top: str
    pinned: bool
    nests: bool
    """Whether neighbouring rows can be pressed opposite ways."""

    message: ClassVar[str] = "join-diagonal-rows"

    @property
    def says(self) -> str:
        return self.message if len(self.rows) > 1 else ""

    def carry_out(self, table: Table) -> None:
        table.take(LAYOUT, by=LayOutOnPoint)
        rows = [table.take(key) for key in self.rows]
        for row in rows:
            table.need(
                row.key.startswith("piece ") or row.is_(PRESSED),
                "rows pressed",
                by=PressDiagonalRow,
                part=row,
            )
            pinned = not self.pinned or row.is_(PINNED)
            table.need(pinned, "rows pinned at every crossing", by=PinDiagonalRows, part=row)
        for one, two in pairwise(rows) if self.nests else ():
            alike = {s for s in one.state & two.state if s.startswith("toward ")}
            table.need(not alike, "neighbours pressed opposite ways", by=PressDiagonalRow, part=two)
        side = next(r.height.exact for r in rows if r.key not in self.sash) - 2 * self.seam
        strips = [
            r.width if r.height.told > r.width.told else r.height
            for r in rows
            if r.key in self.sash
        ]
        pitch = side + (strips[0].exact - 2 * self.seam if strips else 0)
        wide, high = (
            measured(n * pitch * ROOT_2 + 2 * self.edge) for n in (self.columns, self.lines)
        )
        table.sew("piecing", wide)
        top = replace(sheet(self.top, wide, high), paper=paper_of(rows))
        table.put(replace(top, known=all(r.known for r in rows)))


@dataclass(frozen=True, kw_only=True)
class SewCorners(Operation):
    """Sew on the last corner triangles by the middle of their long side."""

    top: str
    corners: tuple[DiagonalPart, ...]
    seam: Exact
    those: Said

    message: ClassVar[str] = "sew-corners"
    tools: ClassVar[tuple[str, ...]] = ("pins",)

    def carry_out(self, table: Table) -> None:
        for corner in self.corners:
            table.take(corner.key)
        top = table.take(self.top, by=JoinDiagonalRows)
        table.put(top.having(CORNERED))

    def values(self, moment: Moment) -> Values:
        return {"corners": self.those, "count": Count(len(self.corners))}


@dataclass(frozen=True, kw_only=True)
class PressDiagonalRows(Operation):
    """Press the long seams."""

    top: str
    way: Value
    rows: int

    message: ClassVar[str] = "press-diagonal-rows"
    tools: ClassVar[tuple[str, ...]] = ("iron",)

    def carry_out(self, table: Table) -> None:
        top = table.take(self.top)
        table.need(top.is_(CORNERED), "its last corners", by=SewCorners, part=top)
        table.put(top.having(OPENED))

    def values(self, moment: Moment) -> Values:
        return {"way": self.way, "rows": Count(self.rows)}


@dataclass(frozen=True, kw_only=True)
class SquareTop(Operation):
    """Straighten the sides, a seam outside the corners of the blocks."""

    top: str
    large: tuple[Letter, ...]
    """Triangles that were cut larger than they need be."""
    drafted: tuple[Exact, Exact]
    edge: Exact
    sashing: bool
    measures: Value

    message: ClassVar[str] = "square-top"
    tools: ClassVar[tuple[str, ...]] = ("ruler", "rotary cutter")

    def carry_out(self, table: Table) -> None:
        top = table.take(self.top)
        table.need(top.is_(OPENED), "its long seams pressed", by=PressDiagonalRows, part=top)
        wide, high = (Measure(m.exact, m.exact) for m in (top.width, top.height))
        square = table.drafted(top.sized(wide, high), *self.drafted)
        table.put(square.having(PRESSED))

    def values(self, moment: Moment) -> Values:
        top = moment.after(self.top)
        return {
            "edge": Length(self.edge),
            "sashing": Word("yes" if self.sashing else "no"),
            "large": Several(self.large),
            "rounded": Word("yes" if self.large else "no"),
            "measures": self.measures,
            "size": Rectangle(top.width.told, top.height.told),
        }
