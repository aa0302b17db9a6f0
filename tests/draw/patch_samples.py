"""Pieced units built by hand, one of every way of joining and of making.

In: nothing. Out: `CONTEXT` for one size, `sampler`, whose top is the units side by side.
Every number here is written out, so that figures are checked against the figures of a
sampler that no stage has made.
"""

from __future__ import annotations

import math
from dataclasses import replace
from fractions import Fraction

from shapely.geometry import Polygon, box
from top_plans import PLANS
from top_samples import LINEN, MIST, MOSS, PATTERN, RED, SAND, SIZES

from publish.draw.canvas.style import palette
from publish.draw.context import Context
from publish.model.block import Block, PatchSpec
from publish.model.book import LETTER
from publish.model.cutplan import CutPlan, Making, Piece, PieceTemplate
from publish.model.draft import Draft, FoundationSection, Patch, Unit
from publish.words.values import Named

F = Fraction
SIZE = "sampler"
Points = list[tuple[float | Fraction, float | Fraction]]


def _ring(points: Points, x: int = 0) -> tuple[tuple[Fraction, Fraction], ...]:
    return tuple((F(a) + x, F(b)) for a, b in points)


def patch(
    key: str,
    points: Points,
    fabric: str,
    x: int = 0,
    arcs: tuple[tuple[int, tuple[Fraction, Fraction]], ...] = (),
) -> Patch:
    """Return a patch of the ground, moved `x` inches to the right."""
    moved = tuple((i, (a + x, b)) for i, (a, b) in arcs)
    return Patch(key, _ring(points, x), fabric, "ground", "heron", arcs=moved)


def leaf(held: Patch) -> Unit:
    return Unit(f"patch {held.key}", "patch", held.box, patch=held, ring=held.ring, arcs=held.arcs)


def joined(
    kind: str,
    join: str,
    parts: list[Unit],
    press: str,
    box_: tuple[int, ...],
    made: str = "",
    set_in: int = 0,
) -> Unit:
    left, top, right, bottom = (F(v) for v in box_)
    ring = ((left, top), (right, top), (right, bottom), (left, bottom))
    return Unit(
        kind,
        kind,
        (left, top, right, bottom),
        join,
        tuple(parts),
        press=press,
        ring=ring,
        made=made,
        set_in=set_in,
    )


# --- the units --------------------------------------------------------------------------


def _triangles(x: int) -> Unit:
    a = patch("t1", [(0, 0), (3, 0), (0, 3)], LINEN, x)
    b = patch("t2", [(3, 0), (3, 3), (0, 3)], MOSS, x)
    return joined("half square", "slant", [leaf(a), leaf(b)], "last", (x, 0, x + 3, 3), "triangles")


def _hourglass(x: int) -> Unit:
    made = [
        ("h1", [(0, 0), (4, 0), (2, 2)], LINEN),
        ("h2", [(4, 0), (4, 4), (2, 2)], MOSS),
        ("h3", [(4, 4), (0, 4), (2, 2)], LINEN),
        ("h4", [(0, 4), (0, 0), (2, 2)], MOSS),
    ]
    a, b, c, d = (leaf(patch(k, p, f, x)) for k, p, f in made)
    halves = [
        Unit(
            "hourglass half",
            "half",
            (F(x), F(0), F(x + 4), F(4)),
            "slant",
            (a, b),
            press="last",
            ring=_ring([(0, 0), (4, 0), (4, 4)], x),
        ),
        Unit(
            "hourglass half",
            "half",
            (F(x), F(0), F(x + 4), F(4)),
            "slant",
            (c, d),
            press="last",
            ring=_ring([(4, 4), (0, 4), (0, 0)], x),
        ),
    ]
    return joined("hourglass", "slant", halves, "last", (x, 0, x + 4, 4), "hourglasses")


def _goose(x: int) -> Unit:
    a = patch("g1", [(0, 0), (4, 0), (2, 2)], LINEN, x)
    b = patch("g2", [(0, 0), (2, 2), (0, 2)], MOSS, x)
    c = patch("g3", [(4, 0), (4, 2), (2, 2)], MOSS, x)
    return joined("goose", "slant", [leaf(p) for p in (a, b, c)], "out", (x, 0, x + 4, 2), "geese")


def _snowball(x: int) -> Unit:
    a = patch("c1", [(1, 0), (4, 0), (4, 3), (3, 4), (0, 4), (0, 1)], SAND, x)
    b = patch("c2", [(0, 0), (1, 0), (0, 1)], RED, x)
    c = patch("c3", [(4, 3), (4, 4), (3, 4)], RED, x)
    return joined(
        "snowball", "slant", [leaf(p) for p in (a, b, c)], "last", (x, 0, x + 4, 4), "corners"
    )


def _strips(x: int) -> Unit:
    made = [(RED, 0), (LINEN, 1), (RED, 2)]
    parts = [leaf(patch(f"s{n}", [(n, 0), (n + 1, 0), (n + 1, 1), (n, 1)], f, x)) for f, n in made]
    return joined("segment", "across", parts, "left", (x, 0, x + 3, 1), "strips")


MIDDLE = (F(3) * F(7071068, 10000000), F(4) - F(3) * F(7071068, 10000000))
"""The middle of the quarter circle of radius 3 about the corner (0, 4), to 1e-6."""


def _bend(x: int) -> Unit:
    pie = patch("b1", [(0, 1), (3, 4), (0, 4)], MIST, x, ((0, MIDDLE),))
    rest = patch("b2", [(0, 0), (4, 0), (4, 4), (3, 4), (0, 1)], LINEN, x, ((3, MIDDLE),))
    return joined("bend", "curve", [leaf(pie), leaf(rest)], "last", (x, 0, x + 4, 4))


def _set_in(x: int) -> Unit:
    """A corner square between two slanting patches: sewn in two steps with a pivot."""
    a = patch("y1", [(0, 0), (2, 2), (2, 4), (0, 4)], RED, x)
    b = patch("y2", [(2, 2), (4, 2), (4, 4), (2, 4)], SAND, x)
    c = patch("y3", [(0, 0), (4, 0), (4, 2), (2, 2)], MOSS, x)
    return joined(
        "corner", "set in", [leaf(p) for p in (a, b, c)], "open", (x, 0, x + 4, 4), set_in=1
    )


UNITS = (
    _triangles(0),
    _hourglass(4),
    _goose(9),
    _snowball(14),
    _strips(19),
    _bend(23),
    _set_in(28),
)
TOP = Unit("top", "top", (F(0), F(0), F(32), F(4)), "across", UNITS, press="left")

# --- a foundation -----------------------------------------------------------------------

BEAK = (
    patch("f1", [(F(1, 2), 2), (3, F(3, 2)), (3, F(5, 2))], RED),
    patch("f2", [(F(1, 2), 0), (3, 0), (3, F(3, 2)), (F(1, 2), 2)], LINEN),
    patch("f3", [(F(1, 2), 2), (3, F(5, 2)), (3, 5), (F(1, 2), 5)], MIST),
    patch("f4", [(0, 0), (F(1, 2), 0), (F(1, 2), 5), (0, 5)], LINEN),
)
SECTION = FoundationSection(
    "heron A",
    "A",
    "heron",
    BEAK,
    _ring([(0, 0), (3, 0), (3, 5), (0, 5)]),
    (
        ((F(1, 2), F(2)), (F(3), F(3, 2))),
        ((F(1, 2), F(2)), (F(3), F(5, 2))),
        ((F(1, 2), F(0)), (F(1, 2), F(5))),
    ),
    4,
)
NECK = FoundationSection(
    "heron B",
    "B",
    "heron",
    (
        patch("n1", [(3, 0), (5, 0), (5, 5), (4, 5)], MOSS),
        patch("n2", [(3, 0), (4, 5), (3, 5)], SAND),
    ),
    _ring([(3, 0), (5, 0), (5, 5), (3, 5)]),
    (((F(3), F(0)), (F(4), F(5))),),
    4,
)

# --- the plan ---------------------------------------------------------------------------


def _piece(
    letter: str,
    fabric: str,
    side: Fraction,
    count: int,
    shape: str = "oversize",
    length: Fraction | None = None,
    yields: int = 1,
) -> Piece:
    return Piece(
        letter,
        Named(letter),
        "ground",
        fabric,
        side,
        length or side,
        count,
        shape=shape,
        yields=yields,
    )


PIECES = (
    _piece("A", LINEN, F(31, 8), 1),
    _piece("B", MOSS, F(31, 8), 1),
    _piece("C", LINEN, F(21, 4), 1),
    _piece("D", MOSS, F(23, 8), 4),
    _piece("E", SAND, F(9, 2), 1, "rectangle"),
    _piece("G", RED, F(3, 2), 2),
    _piece("H", RED, F(3, 2), 2, "rectangle", F(18)),
    _piece("J", LINEN, F(3, 2), 1, "rectangle", F(18)),
    _piece("K", LINEN, F(41, 8), 1),
    _piece("L", MOSS, F(41, 8), 1),
)
MAKINGS = (
    Making("triangles", "half square", ("A", "B"), (1, 1), 1, 2, 2, (F(7, 2), F(7, 2))),
    Making("hourglasses", "hourglass", ("K", "L"), (1, 1), 1, 2, 2, (F(9, 2), F(9, 2))),
    Making("geese", "goose", ("C", "D"), (1, 4), 1, 4, 4, (F(9, 2), F(5, 2))),
    Making("corners", "snowball", ("E", "G"), (1, 2), 1, 1, 1, (F(9, 2), F(9, 2))),
    Making("strips", "segment", ("H", "J"), (2, 1), 1, 11, 11, (F(7, 2), F(3, 2)), F(3, 2)),
)
SOURCES = {
    "t1": "A",
    "t2": "B",
    "g1": "C",
    "g2": "D",
    "g3": "D",
    "c1": "E",
    "c2": "G",
    "c3": "G",
    "s0": "H",
    "s1": "J",
    "s2": "H",
    "h1": "K",
    "h2": "L",
    "h3": "K",
    "h4": "L",
}


def quarter(radius: float, steps: int = 64) -> list[tuple[float, float]]:
    """Return points of a quarter circle about the origin, from the x axis to the y axis."""
    turns = [math.pi / 2 * i / steps for i in range(steps + 1)]
    return [(radius * math.cos(t), radius * math.sin(t)) for t in turns]


PIE = Polygon([(0, 0), *quarter(6.0)])
TEMPLATE = PieceTemplate(
    "pool",
    "P",
    MIST,
    24,
    12,
    PIE,
    PIE.buffer(0.25, join_style="mitre"),
    ((6 * math.sqrt(0.5), 6 * math.sqrt(0.5)),),
    0.0,
)

HERON = Block(
    "heron", 5, 5, tuple(PatchSpec(p.ring, p.fabric) for s in (SECTION, NECK) for p in s.patches)
)
PLAN: CutPlan = replace(
    PLANS["mini"], size=SIZE, pieces=PIECES, sources=SOURCES, templates=(TEMPLATE,), makings=MAKINGS
)
DRAFT = Draft(
    SIZE, F(32), F(4), TOP.patches, TOP, {}, (), (), F(0), box(0, 0, 32, 4), (SECTION, NECK)
)
SAMPLER = replace(
    SIZES["mini"], key=SIZE, title="Sampler", arrangement=(("heron",),), block_side=F(5), borders=()
)
PATCHED = replace(PATTERN, blocks={"heron": HERON})
CONTEXT = Context(
    PATCHED,
    {SIZE: SAMPLER},
    {SIZE: DRAFT},
    {SIZE: PLAN},
    None,
    LETTER,  # type: ignore[arg-type]
    palette(PATTERN),
)
