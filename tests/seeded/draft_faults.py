"""Slips of grading and drafting: one shape, unit or dimension changed.

In: nothing. Out: `FAULTS`: what is wrong, the change, and the code that has to say so.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from fractions import Fraction
from typing import Any

from shapely import affinity
from shapely.geometry import MultiPolygon
from state import State, tree

from publish.model.draft import Draft, MotifShape, Patch, Unit

Change = Callable[[State], State]


def patch(state: State, size: str, key: Callable[[Patch], bool], **changes: Any) -> State:
    """Change the first patch that is meant, where it is listed and where it is sewn."""
    drafted = state.drafts[size]
    old = next(p for p in drafted.patches if key(p))
    new = replace(old, **changes)
    patches = tuple(new if p is old else p for p in drafted.patches)

    def sewn(unit: Unit) -> Unit:
        return replace(unit, patch=new) if unit.patch == old else unit

    return state.draft(size, patches=patches, assembly=tree(drafted.assembly, sewn))


def shorter(state: State) -> State:
    """The top border of the mini ends half an inch early."""
    drafted = state.drafts["mini"]
    old = next(p for p in drafted.patches if p.role == "border" and p.box[2] - p.box[0] == 20)
    left, top, right, bottom = old.box
    right -= Fraction(1, 2)
    ring = ((left, top), (right, top), (right, bottom), (left, bottom))
    return patch(state, "mini", lambda p: p is old, ring=ring)


def motif(state: State, size: str, **changes: Callable[[MotifShape], Any]) -> State:
    drafted = state.drafts[size]
    shape = drafted.motifs["samphire"]
    new = replace(shape, **{name: change(shape) for name, change in changes.items()})
    return state.draft(size, motifs={**drafted.motifs, "samphire": new})


def scaled(name: str, share: float) -> Callable[[MotifShape], MultiPolygon]:
    return lambda m: affinity.scale(getattr(m, name), share, share, origin=(0, 0))


def moved(state: State) -> State:
    drafted = state.drafts["throw"]
    first, *rest = drafted.placements
    return state.draft("throw", placements=(replace(first, x=first.x + 1), *rest))


def without_patch(drafted: Draft) -> Unit:
    gone = drafted.patches[0].key
    return tree(
        drafted.assembly, lambda u: None if u.patch is not None and u.patch.key == gone else u
    )


def unit(state: State, size: str, name: str, change: Callable[[Unit], Unit]) -> State:
    done: list[str] = []

    def once(u: Unit) -> Unit:
        if u.name != name or done:
            return u
        done.append(name)
        return change(u)

    changed = state.draft(size, assembly=tree(state.drafts[size].assembly, once))
    assert done, f"no unit is called {name}"
    return changed


def larger(u: Unit) -> Unit:
    left, top, right, bottom = u.box
    return replace(u, box=(left, top, right, bottom + Fraction(1, 2)))


FAULTS: tuple[tuple[str, Change, str], ...] = (
    ("a border is half an inch short", shorter, "P821"),
    (
        "a patch of the ground is of the other fabric",
        lambda s: patch(
            s, "throw", lambda p: p.fabric == "linen" and p.role == "ground", fabric="sandbar"
        ),
        "P811",
    ),
    (
        "a border is of another fabric",
        lambda s: patch(s, "throw", lambda p: p.fabric == "glasswort", fabric="linen"),
        "P811",
    ),
    (
        "a patch is missing from the top",
        lambda s: s.draft("throw", patches=s.drafts["throw"].patches[1:]),
        "P824",
    ),
    (
        "a patch lies there twice",
        lambda s: s.draft(
            "throw", patches=(*s.drafts["throw"].patches, s.drafts["throw"].patches[0])
        ),
        "P822",
    ),
    (
        "a patch is drafted and never sewn",
        lambda s: s.draft("throw", assembly=without_patch(s.drafts["throw"])),
        "P824",
    ),
    (
        "the motif is drafted three percent small",
        lambda s: motif(
            s,
            "mini",
            whole=scaled("whole", 0.97),
            cut_line=scaled("cut_line", 0.97),
            wedge=scaled("wedge", 0.97),
            wedge_cut_line=scaled("wedge_cut_line", 0.97),
        ),
        "P817",
    ),
    (
        "the wedge template alone is small",
        lambda s: motif(
            s, "throw", wedge=scaled("wedge", 0.95), wedge_cut_line=scaled("wedge_cut_line", 0.95)
        ),
        "P817",
    ),
    (
        "the cut line has no turn-under",
        lambda s: motif(s, "pillow", cut_line=lambda m: m.whole, wedge_cut_line=lambda m: m.wedge),
        "P817",
    ),
    (
        "the throw's motif is the pillow's",
        lambda s: s.draft("throw", motifs=s.drafts["pillow"].motifs),
        "P817",
    ),
    (
        "the motif is turned by a wedge",
        lambda s: motif(s, "mini", whole=lambda m: affinity.rotate(m.whole, 22.5, origin=(0, 0))),
        "P817",
    ),
    (
        "one motif is not laid down",
        lambda s: s.draft("throw", placements=s.drafts["throw"].placements[1:]),
        "P812",
    ),
    ("one motif lies an inch beside its place", moved, "P818"),
    ("a row ends before its neighbours", lambda s: unit(s, "throw", "row 2", larger), "P823"),
    (
        "the top is an inch narrower than its patches",
        lambda s: s.draft("throw", width=Fraction(63)),
        "P821",
    ),
    (
        "a size is graded with another block",
        lambda s: s.size("throw", block_side=Fraction(35, 2)),
        "P827",
    ),
    ("a size is graded with a row too many", lambda s: s.size("throw", rows=4), "P827"),
    (
        "a border is graded wider than drafted",
        lambda s: s.size(
            "mini", borders=(replace(s.sizes["mini"].borders[0], width=Fraction(5, 2)),)
        ),
        "P827",
    ),
    ("a finished size is told wrongly", lambda s: s.size("mini", width=Fraction(22)), "P827"),
    (
        "a motif is graded larger than drafted",
        lambda s: s.size("throw", motif_span=Fraction(17)),
        "P817",
    ),
    (
        "unlike units pass for one kind",
        lambda s: unit(
            s, "throw", "row 2", lambda u: replace(u, kind=s.drafts["throw"].assembly.kind)
        ),
        "P825",
    ),
    (
        "neighbouring rows are pressed the same way",
        lambda s: s.draft(
            "throw",
            assembly=tree(
                s.drafts["throw"].assembly,
                lambda u: replace(u, press="left") if u.name.startswith("row") else u,
            ),
        ),
        "P829",
    ),
    ("seams are counted short", lambda s: s.draft("throw", seam_length=Fraction(100)), "P838"),
    (
        "the motif has a piece more than is said",
        lambda s: motif(s, "mini", pieces=lambda m: 2),
        "P817",
    ),
    (
        "quilting lines run off the top",
        lambda s: s.draft(
            "mini",
            quilting=tuple(
                replace(q, lines=affinity.translate(q.lines, 6, 0))
                for q in s.drafts["mini"].quilting
            ),
        ),
        "P846",
    ),
)
