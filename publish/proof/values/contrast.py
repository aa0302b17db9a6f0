"""Whether fabrics that touch can be told apart, in the pattern's colours and each colourway.

In: a case. Out: notes.
Invariant: a motif differs from every fabric it lies on in lightness (CIEDE2000 of the greys)
by `CLOSE_STEP` or more; two fabrics that share a seam differ as colours by `ALIKE` or more,
since a quiet ground may be quiet and must not be one fabric by mistake.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping

from shapely.strtree import STRtree

from publish.arcs import outline
from publish.colour import CLOSE_STEP, difference, lightness, lightness_step
from publish.model.draft import Draft
from publish.model.pattern import Fabric
from publish.notes import Note, Place, warning
from publish.proof.booklet.words import passages
from publish.proof.case import Case, Code

CODES = {
    "P850": Code(
        "Fabrics are not listed from light to dark as the booklet says",
        "a maker who keeps that order chooses the wrong fabrics",
        "`Light to dark: Sandbar, Salt linen`, where linen is the paler",
        "`Light to dark: Salt linen, Sandbar`",
    ),
    "P848": Code(
        "Fabrics that touch can hardly be told apart",
        "the design disappears at arm's length",
        'a motif in `"#3d6a5c"` on a ground in `"#2f6152"`',
        'a motif in `"#2f6152"` on a ground in `"#f0e9d9"`',
    ),
}

_LISTED = re.compile(r"\bLight to dark: ([^.]+)\.")
ALIKE = 3.5
"""CIEDE2000 difference below which two cloths look like one: common practice, no source."""
_SHARED = 0.05
"""Inches of edge that two patches must share to count as neighbours."""

Pair = tuple[str, str]


def check(case: Case) -> Iterator[Note]:
    """Yield a warning for each pair of neighbours that is too close, once for each palette."""
    yield from _ordered(case)
    laid: dict[Pair, None] = {}
    sewn: dict[Pair, None] = {}
    for key in case.keys:
        draft = case.drafts[key]
        laid.update(dict.fromkeys(_laid(case, draft)))
        sewn.update(dict.fromkeys(_sewn(draft)))
    yield from _judged(case, case.pattern.fabrics, case.pattern.place("fabrics"), "", laid, sewn)
    for key, way in case.pattern.colourways.items():
        fabrics = {**case.pattern.fabrics, **way.fabrics}
        place = case.pattern.place("colourways", key)
        yield from _judged(case, fabrics, place, f" in {way.title}", laid, sewn)


def _ordered(case: Case) -> Iterator[Note]:
    """Fabrics listed from light to dark are in that order."""
    colours = {f.name: f.colour for f in case.pattern.fabrics.values()}
    for passage in passages(case.manual):
        for listed in _LISTED.findall(passage.text):
            names = [n for n in re.split(r", | and ", listed) if n in colours]
            if names != sorted(names, key=lambda n: -lightness(colours[n])):
                yield warning(
                    "P850",
                    case.pattern.place("fabrics"),
                    f"{passage.where} does not list the fabrics from light to dark",
                    expected=", ".join(sorted(names, key=lambda n: -lightness(colours[n]))),
                    received=", ".join(names),
                )


def _judged(
    case: Case,
    fabrics: Mapping[str, Fabric],
    place: Place,
    where: str,
    laid: dict[Pair, None],
    sewn: dict[Pair, None],
) -> Iterator[Note]:
    for motif, ground in laid:
        one, other = fabrics[motif], fabrics[ground]
        step = lightness_step(one.colour, other.colour).value
        if step < CLOSE_STEP:
            yield _note(
                place,
                f"{one.name} lies on {other.name} and is nearly as light{where}",
                f"a step of {CLOSE_STEP:g} or more",
                f"{step:.1f}",
            )
    for first, second in sewn:
        one, other = fabrics[first], fabrics[second]
        apart = difference(one.colour, other.colour)
        if apart < ALIKE:
            yield _note(
                place,
                f"{one.name} and {other.name} touch and look like one{where}",
                f"a difference of {ALIKE:g} or more",
                f"{apart:.1f}",
            )


def _note(place: Place, what: str, expected: str, received: str) -> Note:
    return warning(
        "P848",
        place,
        what,
        expected=expected,
        received=received,
        help="choose a lighter or a darker fabric for one of them",
    )


def _laid(case: Case, draft: Draft) -> Iterator[Pair]:
    """Yield the fabric of each motif with each fabric of the block it lies on."""
    for placement in draft.placements:
        motif = case.pattern.motifs[placement.motif].fabric
        for patch in draft.patches:
            left, top, right, bottom = patch.box
            reach = draft.motifs[placement.motif].span / 2
            near = (
                left < placement.x + reach
                and right > placement.x - reach
                and top < placement.y + reach
                and bottom > placement.y - reach
            )
            if near and patch.role == "ground":
                yield motif, patch.fabric


def _sewn(draft: Draft) -> Iterator[Pair]:
    """Yield the fabrics of patches that share an edge, the keys in order."""
    patches = draft.patches
    shapes = [outline(p.ring, p.arcs) for p in patches]
    if len(shapes) < 2:
        return
    for one, other in STRtree(shapes).query(shapes, predicate="intersects").T:
        first, second = sorted((patches[one].fabric, patches[other].fabric))
        if one < other and first != second:
            shared = shapes[one].intersection(shapes[other]).length
            yield from ((first, second),) if shared > _SHARED else ()
