"""Whether each block of the top is drafted as the pattern draws it.

In: a case. Out: notes.
Invariant: the patches of a block, turned back with it, are those of its drawing, corner by
corner, each in its own fabric; a motif is turned with its block.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator

from publish.model.draft import Patch
from publish.model.homes import BlockHome
from publish.model.pattern import Block
from publish.notes import Note, error
from publish.proof.case import Case, Code
from publish.surd import turned

CODES = {
    "P820": Code(
        "A block is not drafted as it is drawn",
        "two patches have changed places, or a motif is turned",
        "a quartered block with linen at the top right, where the pattern has sandbar",
        "each patch in the fabric and place that `blocks` gives it",
    ),
}


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each block that differs from its drawing."""
    for key in case.keys:
        draft = case.drafts[key]
        homes: dict[BlockHome | None, list[Patch]] = defaultdict(list)
        for patch in draft.patches:
            if patch.block is not None and patch.role == "ground":
                homes[patch.place].append(patch)
        for patches in homes.values():
            block = case.pattern.blocks.get(patches[0].block or "")
            if block is not None and not _as_drawn(block, patches):
                yield _note(case, key, f"a {block.key} block", "as `blocks` draws it")
        for laid in draft.placements:
            under = homes.get(laid.place, [])
            if under and laid.turn != under[0].turn:
                yield _note(case, key, f"the motif {laid.motif}", "turned with its block")


def _as_drawn(block: Block, patches: list[Patch]) -> bool:
    """Return whether corners and fabrics of the patches are the drawing's, scaled and turned."""
    rings = [[turned(point, -p.turn) for point in p.ring] for p in patches]
    xs, ys = zip(*(point for ring in rings for point in ring), strict=True)
    left, top = min(xs), min(ys)
    across, down = (max(xs) - left) / block.columns, (max(ys) - top) / block.rows
    drawn = Counter(
        (frozenset((x * across, y * down) for x, y in spec.ring), spec.fabric)
        for spec in block.patches
    )
    found = Counter(
        (frozenset((x - left, y - top) for x, y in ring), p.fabric)
        for ring, p in zip(rings, patches, strict=True)
    )
    return drawn == found or drawn.total() != found.total()


def _note(case: Case, key: str, what: str, expected: str) -> Note:
    return error(
        "P820",
        case.size_place(key, "block"),
        f"{what} of the {key} is not drafted as drawn",
        expected=expected,
    )
