"""Joining parts edge to edge: pinning, sewing, pressing, with the allowances that meet.

In: keys of heaps, how their parts lie, seams. Out: operations.
Invariant: a part that is joined is gone as itself; what comes of it is as large as its parts
less their seams, and keeps where seams end on its edges and to which side they are pressed.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import ClassVar

from publish.operations.borders import PINNED, PRESSED
from publish.operations.layout import LAYOUT, LayOut
from publish.operations.operation import Moment, Operation
from publish.operations.parts import BOTTOM, LEFT, RIGHT, TOP, Edge, Measure, Part, SeamEnd, sheet
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.words.values import Count, Rectangle, Value, Values, Word

MARKED = "marked where seams end"
START, STOP, OPEN = "start", "stop", "open"
AHEAD = {"left": START, "up": START, "right": STOP, "down": STOP, "open": OPEN}
"""To which end of a row, from the left or the top, allowances are pressed."""


@dataclass(frozen=True)
class Taken:
    """A part that is joined: its heap, and how it lies against how the heap does."""

    key: str
    quarters: int = 0
    """Quarter turns clockwise."""


@dataclass(frozen=True)
class Result:
    """What comes of a join: a heap, and how many go on it."""

    key: str
    count: int = 1


def turned(part: Part, quarters: int) -> Part:
    """Return a part turned clockwise; its edges go with it."""
    by = quarters % 4
    return replace(part, edges=(*part.edges[4 - by :], *part.edges[: 4 - by])) if by else part


def joined(key: str, parts: Sequence[Part], seam: Exact) -> Part:
    """Return parts sewn side by side, from the left, with where their seams end."""
    lost, at = 2 * seam, parts[0].width * 0
    tops: list[SeamEnd] = []
    starts: list[Measure] = []
    for number, part in enumerate(parts):
        starts.append(at)
        if number:
            tops.append(SeamEnd(at.exact + seam))
        tops += [replace(end, at=at.exact + end.at) for end in part.edges[TOP].seams]
        at = at + part.width - lost
    wide = at + lost
    bottoms: list[SeamEnd] = []
    for number, (part, start) in enumerate(zip(parts, starts, strict=True)):
        right = wide.exact - start.exact - part.width.exact
        bottoms += [replace(end, at=right + end.at) for end in part.edges[BOTTOM].seams]
        if number:
            bottoms.append(SeamEnd(wide.exact - start.exact - seam))
    high = max((p.height for p in parts), key=lambda m: m.told)
    new = sheet(key, wide, high)
    edges = (
        Edge(wide, seams=tuple(tops)),
        replace(parts[-1].edges[RIGHT], length=high),
        Edge(wide, seams=tuple(bottoms)),
        replace(parts[0].edges[LEFT], length=high),
    )
    return replace(new, edges=edges, known=all(p.known for p in parts), paper=paper_of(parts))


def paper_of(parts: Sequence[Part]) -> frozenset[str]:
    """Return the paper that is in some parts, and in whatever is sewn from them."""
    return frozenset(one for part in parts for one in part.paper)


def pressed(part: Part, ways: Sequence[str]) -> Part:
    """Return a row with the seams that are not pressed yet pressed each its way, from the
    left; a way is `start`, `stop` or `open`."""
    edges = list(part.edges)
    for at in (TOP, BOTTOM):
        order = iter(ways if at == TOP else [_other(way) for way in reversed(ways)])
        seams = sorted(edges[at].seams, key=lambda end: end.at)
        done = tuple(end if end.toward else replace(end, toward=next(order, "")) for end in seams)
        edges[at] = replace(edges[at], seams=done)
    return replace(part, edges=tuple(edges))


def _other(way: str) -> str:
    return {START: STOP, STOP: START}.get(way, way)


def clashes(one: Part, two: Part) -> int:
    """Return how many seams of two neighbours, from the left, meet and lie the same way."""
    down = {end.at: end.toward for end in one.edges[RIGHT].seams}
    up = {two.height.exact - end.at: end.toward for end in two.edges[LEFT].seams}
    pairs = [(down[at], up[at]) for at in down.keys() & up.keys()]
    return sum(OPEN not in pair and "" not in pair and pair[0] != pair[1] for pair in pairs)


@dataclass(frozen=True, kw_only=True)
class Join(Operation):
    """What operations on a join share: its parts, how they lie, and what comes of them."""

    parts: tuple[Taken, ...]
    """From the left or the top."""
    results: tuple[Result, ...]

    @property
    def count(self) -> int:
        return sum(result.count for result in self.results)

    @property
    def heaps(self) -> dict[str, int]:
        """Return how many of each heap go into all of them."""
        found: dict[str, int] = {}
        for part in self.parts:
            found[part.key] = found.get(part.key, 0) + self.count
        return found


@dataclass(frozen=True, kw_only=True)
class PinSeams(Join):
    """Pin parts wherever seams meet before they are sewn."""

    message: ClassVar[str] = "pin-seams"
    tools: ClassVar[tuple[str, ...]] = ("pins",)
    rows: bool
    """Whether the parts are rows, whose allowances lie opposite ways."""

    def carry_out(self, table: Table) -> None:
        for key, count in self.heaps.items():
            part = table.take(key, count)
            ready = key.startswith("piece ") or part.is_(PRESSED)
            table.need(ready, "its seams pressed", by=PressSeams, part=part)
            table.put(part.having(PINNED), count)

    def values(self, moment: Moment) -> Values:
        return {"what": Word("rows" if self.rows else "parts")}


@dataclass(frozen=True, kw_only=True)
class MarkStrips(Operation):
    """Mark on strips that run through where the seams of the row above end."""

    strips: tuple[tuple[str, int], ...]
    message: ClassVar[str] = "mark-strips"
    tools: ClassVar[tuple[str, ...]] = ("marker",)

    def carry_out(self, table: Table) -> None:
        for key, count in self.strips:
            table.put(table.take(key, count).having(MARKED), count)


@dataclass(frozen=True, kw_only=True)
class SewParts(Join):
    """Sew parts together, side by side or one below the other."""

    down: bool
    seam: Exact
    drafted: tuple[Exact, Exact]
    """What one of them measures by its draft, from raw edge to raw edge."""
    eased: int = 1
    """Over how many parts what a ruler shows is eased."""
    pinned: bool = False
    marked: tuple[str, ...] = ()
    """Heaps of strips that are marked first."""
    nests: bool = True
    """Whether the allowances of neighbours can all lie opposite ways."""
    laid: bool = True
    """Whether the parts lie in the layout, and are sewn as they lie there."""
    last: bool = False
    """Whether this is all of the layout."""
    what: Value
    """What is made, as it is called."""
    those: Value
    """The parts, as they are called."""

    message: ClassVar[str] = "sew-parts"

    def carry_out(self, table: Table) -> None:
        if self.laid:
            table.need(table.count(LAYOUT) > 0, "the blocks laid out", by=LayOut)
        parts = self._taken(table)
        if self.last:
            table.take(LAYOUT)
        across = [turned(p, 3) for p in parts] if self.down else parts
        for one, two in pairwise(across):
            table.meet("the edges", one.height, two.height, one, two)
            clash = clashes(one, two) if self.nests and one.known and two.known else 0
            table.need(not clash, "allowances that lie opposite ways", by=PressSeams, part=two)
        whole = joined(self.results[0].key, across, self.seam)
        if len(parts) == 1:
            whole = replace(across[0], key=whole.key)
        table.sew("piecing", whole.height * (self.count * (len(parts) - 1)))
        whole = turned(whole, 1) if self.down else whole
        whole = table.drafted(whole, *self.drafted, eased=self.eased)
        for result in self.results:
            table.put(replace(whole, key=result.key), result.count)

    def _taken(self, table: Table) -> list[Part]:
        found = {}
        for key, count in self.heaps.items():
            part = table.take(key, count, having=PINNED if self.pinned else "")
            rawly = key.startswith("piece ")
            table.need(rawly or part.is_(PRESSED), "its seams pressed", by=PressSeams, part=part)
            if self.pinned:
                table.need(part.is_(PINNED), "seams pinned where they meet", by=PinSeams, part=part)
            if key in self.marked:
                table.need(part.is_(MARKED), "strips marked", by=MarkStrips, part=part)
            found[key] = part
        return [turned(found[p.key], p.quarters) for p in self.parts]

    def values(self, moment: Moment) -> Values:
        return {
            "what": self.what,
            "those": self.those,
            "way": Word("down" if self.down else "across"),
        }


@dataclass(frozen=True)
class Pressed:
    """Results that are pressed alike: seam by seam, from the left or the top."""

    results: tuple[Result, ...]
    ways: tuple[str, ...]
    """`start`, `stop` or `open` of each seam."""


@dataclass(frozen=True, kw_only=True)
class PressSeams(Operation):
    """Press the seams of what was sewn last, each its way."""

    groups: tuple[Pressed, ...]
    down: bool
    way: Value
    """Where they are pressed, as it is told."""
    measures: Value
    """What is measured, as it is called: each of them, or the one."""
    crossing: bool = False
    """Whether seams of its parts meet, and are seen to match."""

    message: ClassVar[str] = "press-seams"
    tools: ClassVar[tuple[str, ...]] = ("iron",)

    def carry_out(self, table: Table) -> None:
        for group in self.groups:
            for one in group.results:
                part = table.take(one.key, one.count)
                sewn = not part.is_(PRESSED) or not part.known
                table.need(sewn, "seams to press", by=SewParts, part=part)
                if self.down:
                    done = turned(pressed(turned(part, 3), group.ways), 1)
                else:
                    done = pressed(part, group.ways)
                table.put(done.having(PRESSED), one.count)

    def values(self, moment: Moment) -> Values:
        size = moment.after(self.groups[0].results[0].key)
        return {
            "way": self.way,
            "seams": Count(len(self.groups[0].ways)),
            "measures": self.measures,
            "size": Rectangle(size.width.told, size.height.told),
            "crossing": Word("yes" if self.crossing else "no"),
        }
