"""Units while they are worked out: before pressing is settled and `Unit`s are made.

In: what a block or a top is sewn from. Out: `Unit`s.
Invariant: a part's outline, seams and patches lie where they lie in the top; a part whose
outline is known from its middle is shifted to each of its homes, never worked out anew.
"""

from __future__ import annotations

from collections.abc import Hashable, Iterator
from dataclasses import dataclass, replace
from math import gcd

from publish.arcs import Ring
from publish.draft.homes import Box, moved
from publish.draft.planar import Spot
from publish.model.draft import Arcs, Patch, Point, Unit
from publish.surd import Length, turned

TOWARDS_FIRST, TOWARDS_LAST = -1, 1


@dataclass(frozen=True)
class Stitched:
    """A seam as it lies in the top, run so that the part sewn on later is on its right:
    its ends, and the directions in which it leaves the one and arrives at the other."""

    start: Point
    leaves: Spot
    end: Point
    arrives: Spot


@dataclass(frozen=True, eq=False)
class Part:
    """A unit without its pressing. `seams` has one seam for every part but the first.

    `settled` says of each seam towards which part it is pressed, where that is no
    question. `choice` names the question otherwise: seams of one choice are all pressed
    alike, opposite ways where `flipped` differs.
    """

    kind: str
    name: str
    box: Box
    ring: Ring
    arcs: Arcs = ()
    turn: int = 0
    join: str | None = None
    parts: tuple[Part, ...] = ()
    seams: tuple[Stitched, ...] = ()
    patch: Patch | None = None
    spec: int | None = None
    section: str = ""
    held_specs: tuple[int, ...] = ()
    held: tuple[Patch, ...] = ()
    set_in: int = 0
    press: str = ""
    settled: tuple[int, ...] = ()
    choice: Hashable = None
    flipped: bool = False
    made: str = ""
    series: str = ""
    number: int = 0
    layer: int = 0
    side: str = ""

    def every(self) -> Iterator[Part]:
        """Yield this part and everything in it, parts before wholes."""
        for part in self.parts:
            yield from part.every()
        yield self


def shifted(part: Part, x: Length, y: Length, patches: dict[int, Patch]) -> Part:
    """Return a part of a block, known from its middle, at the home of its patches."""
    across, down = turned((x, y), -part.turn) if part.turn else (x, y)
    left, top, right, bottom = part.box
    return replace(
        part,
        box=(left + across, top + down, right + across, bottom + down),
        ring=moved(part.ring, x, y),
        arcs=tuple((i, (a + x, b + y)) for i, (a, b) in part.arcs),
        parts=tuple(shifted(p, x, y, patches) for p in part.parts),
        seams=tuple(
            Stitched(
                (s.start[0] + x, s.start[1] + y), s.leaves, (s.end[0] + x, s.end[1] + y), s.arrives
            )
            for s in part.seams
        ),
        patch=None if part.spec is None else patches[part.spec],
        held=tuple(patches[n] for n in part.held_specs),
    )


def box_of(ring: Ring, turn: int) -> Box:
    """Return the box of a ring in the frame that is turned with it."""
    points = [turned(p, -turn) for p in ring] if turn else ring
    xs, ys = zip(*points, strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def direction(way: Spot, turn: int) -> Spot:
    """Return a direction turned clockwise by a multiple of 45 degrees, without its length."""
    x, y = way
    for _ in range(turn // 90 % 4):
        x, y = -y, x
    if turn % 90:
        x, y = x - y, x + y
    common = gcd(x, y)
    return x // common, y // common


def unit_of(part: Part, pressed: dict[Part, tuple[str, bool]]) -> Unit:
    """Return the finished unit of a part and of everything in it."""
    press, nests = pressed.get(part, ("", True))
    return Unit(
        kind=part.kind,
        name=part.name,
        box=part.box,
        join=part.join,
        parts=tuple(unit_of(p, pressed) for p in part.parts),
        patch=part.patch,
        press=press,
        turn=part.turn,
        ring=part.ring,
        arcs=part.arcs,
        section=part.section,
        held=part.held,
        made=part.made,
        set_in=part.set_in,
        nests=nests,
        series=part.series,
        number=part.number,
        layer=part.layer,
        side=part.side,
    )
