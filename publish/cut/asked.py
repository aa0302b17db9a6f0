"""Whether the quicker methods that a pattern asks for are the ones that it is made by.

In: a pattern, the drafts and plans of its sizes. Out: notes.
Invariant: what is asked for and not done is said, and so is what is done and should not be.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import fields

from publish.model.block import SINGLY
from publish.model.cutplan import CutPlan
from publish.model.draft import Draft
from publish.model.pattern import Pattern
from publish.notes import Note, Place, warning

Done = set[tuple[str, str]]
"""Block and method."""


def check(
    pattern: Pattern, drafts: Mapping[str, Draft], plans: Mapping[str, CutPlan]
) -> Iterator[Note]:
    """Yield a warning for each method that makes nothing, or turns a print."""
    done: Done = set()
    for key, plan in plans.items():
        made = {(m.method, m.kind) for m in plan.makings}
        done |= {
            (unit.patches[0].block or "", unit.made)
            for unit in drafts[key].assembly.outermost_first()
            if unit.made and (unit.made, unit.kind) in made
        }
    yield from _idle(pattern, drafts, done)
    yield from _turned(pattern, plans)


def _idle(pattern: Pattern, drafts: Mapping[str, Draft], done: Done) -> Iterator[Note]:
    used = {p.block for draft in drafts.values() for p in draft.patches if p.block is not None}
    idle: dict[Place, tuple[str, str]] = {}
    for key in (k for k in pattern.blocks if k in used):
        piecing = pattern.blocks[key].piecing
        for name in (field.name for field in fields(piecing)):
            how, place = getattr(piecing, name), _place(pattern, key, name)
            if how != SINGLY:
                idle.setdefault(place, (name, how))
    for key, name in done:  # what the pattern asks for once need not suit every block
        idle.pop(_place(pattern, key, name), None)
    for place, (name, how) in idle.items():
        yield warning(
            "C406",
            place,
            f"`{name}: {how}` makes nothing here",
            expected=_SHAPES.get(name, "what the method makes"),
            received="no such unit",
            help=f"write `{name}: singly`, or look at the shape of the patches",
        )


_SHAPES = {
    "triangles": "a square of two triangles",
    "hourglasses": "a square of four triangles, opposite ones of one fabric",
    "geese": "a rectangle twice as long as wide, of one large triangle and two small ones",
    "corners": "a large patch with small triangles in its corners",
    "strips": "rectangles that repeat side by side",
}


def _place(pattern: Pattern, block: str, name: str) -> Place:
    own = f"blocks.{block}.piecing.{name}"
    way = ("blocks", block, "piecing", name) if own in pattern.places else ("piecing", name)
    return pattern.place(*way)


def _turned(pattern: Pattern, plans: Mapping[str, CutPlan]) -> Iterator[Note]:
    """Squares that are sewn and cut apart again give units whose print runs every way."""
    told: set[tuple[str, str]] = set()
    for plan in plans.values():
        pieces = {piece.letter: piece for piece in plan.pieces}
        for making in plan.makings:
            cloth = {pieces[x].fabric for x in making.letters if x in pieces}
            for fabric in (k for k in pattern.fabrics if k in cloth):
                plain = not pattern.fabrics[fabric].directional or making.method == "strips"
                if plain or (making.method, fabric) in told:
                    continue
                told.add((making.method, fabric))
                yield warning(
                    "C407",
                    pattern.place("fabrics", fabric, "directional"),
                    f"{pattern.fabrics[fabric].name} has a direction, and units that are made "
                    "several at once turn it",
                    expected=f"`{making.method}: singly`, or a print that may lie any way",
                    received=f"{making.method} made several at once",
                    help=f"write `piecing: {{{making.method}: singly}}` in its block",
                )
