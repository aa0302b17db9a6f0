"""Patches and tops built by hand, and their plans.

In: corners as makers would measure them. Out: forms, patches, units, drafts, plans.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import reedmace
from shapely.geometry import box

from publish import cut
from publish.cut.forms import Form
from publish.model.cutplan import CutPlan, Piece
from publish.model.draft import Draft, Patch, Unit
from publish.model.homes import BlockHome, Where
from publish.model.pattern import Block, PatchSpec, Pattern
from publish.model.size import Size
from publish.words import english

F = Fraction
SEAM = F(1, 4)
HOME = BlockHome(Where.ARRANGED)


def points(*corners):
    """Return corners as exact points; numbers that are exact stay as they are."""
    return tuple(tuple(F(v) if isinstance(v, int | str) else v for v in c) for c in corners)


def form(*corners, seam=SEAM, arcs=()):
    """Return a form with one allowance all round."""
    return Form(points(*corners), (F(seam),) * len(corners), arcs)


def square(side, seam=SEAM):
    return form((0, 0), (side, 0), (side, side), (0, side), seam=seam)


def right_triangle(leg, seam=SEAM):
    return form((0, 0), (leg, 0), (0, leg), seam=seam)


def patch(key, *corners, fabric="linen", **more):
    """Return a patch of the block `plume`."""
    given = {"role": "ground", "block": "plume", "row": 0, "column": 0, "home": HOME} | more
    return Patch(key, points(*corners), fabric, **given)


def leaf(one, kind=None):
    return Unit(kind or f"patch {one.fabric}", "patch", one.box, patch=one)


def joined(kind, join, *parts, **more):
    lefts, tops, rights, bottoms = zip(*(p.box for p in parts), strict=True)
    whole = min(lefts), min(tops), max(rights), max(bottoms)
    return Unit(kind, kind, whole, join, parts, **more)


def pattern(**changes) -> Pattern:
    """Return the worked-out pattern with a block that carries no motif."""
    base = reedmace.pattern()
    ring = points((0, 0), (1, 0), (1, 1), (0, 1))
    plain = Block("plume", 1, 1, (PatchSpec(ring, "linen"),))
    return replace(base, blocks={"plume": plain}, motifs={}, **changes)


def size(side, **changes) -> Size:
    """Return a size of one block without borders, backing, batting or binding."""
    bare = {"borders": (), "backing": None, "batting": None, "binding": None, "quilting": ()}
    made = replace(
        reedmace.size(),
        arrangement=(("plume",),),
        block_side=F(side),
        motif_span=None,
        inner_width=F(side),
        inner_height=F(side),
        width=F(side),
        height=F(side),
        **bare,
    )
    return replace(made, **changes)


def top(assembly: Unit, patches=None, **more) -> Draft:
    """Return a draft of one seam tree, without motifs."""
    wide, high = assembly.box[2], assembly.box[3]
    return Draft(
        "mini",
        wide,
        high,
        patches or assembly.patches,
        assembly,
        {},
        (),
        (),
        F(0),
        box(0, 0, float(wide), float(high)),
        **more,
    )


def planned(assembly: Unit, made: Pattern | None = None, of: Size | None = None, **more) -> CutPlan:
    """Return the plan of a seam tree, which must be cut without a note."""
    draft = top(assembly, **more)
    of = of or size(assembly.box[2])
    plans, notes = cut.cut(made or pattern(), {"mini": of}, {"mini": draft})
    assert notes == ()
    return plans["mini"]


def pieces(plan: CutPlan) -> dict[str, Piece]:
    """Return the pieces of a plan by name, which must be told apart by it."""
    found = {english(p.called): p for p in plan.pieces}
    assert len(found) == len(plan.pieces)
    return found
