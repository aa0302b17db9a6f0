"""How motifs are laid on their grounds: which creases stand for what, and basting.

In: motifs that are cut out, the blocks that carry them. Out: operations.
Invariant: the creases that a motif is turned to are those that its own folds lie on.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from publish.model.draft import MotifShape
from publish.model.pattern import Block
from publish.operations.fusing import CUT_OUT, CutOut
from publish.operations.handwork import Needs, laid_heap
from publish.operations.marking import ALL_MARKED, CREASED, CUT, CutWedge, MarkWedges, OpenMotif
from publish.operations.operation import Where
from publish.operations.placing import (
    AlignMotif,
    BasteArms,
    BasteMotif,
    CentreMotif,
    CreaseGround,
    Laid,
)
from publish.operations.preparing import TURNED, PressEdge
from publish.sew.bench import Bench
from publish.sew.motifs import BlockAt, MotifAt, grounds, plain
from publish.words.values import Named, said

BASTE_FROM_EDGE = Fraction(1, 2)
"""Inches inside the motif's edge at which it is basted: Martha Stewart, How to applique by hand."""


def place(bench: Bench, chapter: str, motifs: Sequence[MotifAt]) -> None:
    """Crease the grounds, lay the motifs on them, and baste those that are turned under."""
    blocks = grounds(bench, motifs)
    for block in blocks:
        _crease(bench, chapter, block)
    centre: Where = {"chapter": chapter, "step": "centre"}
    pairs = tuple(Laid(b.motif.key, b.key, b.count, _done(b.motif.motif.method)) for b in blocks)
    fused = motifs[0].motif.method == "fusible"
    bench.add(CentreMotif(**centre, laid=pairs))
    _align(bench, chapter, motifs, blocks)
    if not fused:
        _baste(bench, chapter, motifs, blocks)


def _done(method: str) -> Needs:
    """Return what a motif must have gone through before it is laid down."""
    if method == "fusible":
        return ((CUT_OUT, CutOut),)
    if method == "prepared edge":
        return ((TURNED, PressEdge),)
    return ((CUT, CutWedge), (CREASED, OpenMotif), (ALL_MARKED, MarkWedges))


def _crease(bench: Bench, chapter: str, block: BlockAt) -> None:
    where: Where = {"chapter": chapter, "step": f"crease-{block.key}"}
    upright, level = centre_seams(block.block)
    bench.add(
        CreaseGround(
            **where,
            source=block.source,
            block=block.key,
            count=block.count,
            letter=block.ground.letter if block.ground is not None else "",
            name=said("block-named", name=Named(plain(block.key))),
            seams=("none", "one", "both")[upright + level],
        )
    )


def centre_seams(block: Block) -> tuple[bool, bool]:
    """Return whether seams run through a block's centre: upright, and level."""
    across = Fraction(block.columns) / 2
    down = Fraction(block.rows) / 2
    if len(block.patches) == 1:
        return False, False
    boxes = [list(zip(*p.ring, strict=True)) for p in block.patches]
    upright = all(max(xs) <= across or min(xs) >= across for xs, _ in boxes)
    level = all(max(ys) <= down or min(ys) >= down for _, ys in boxes)
    return upright, level


def _align(
    bench: Bench, chapter: str, motifs: Sequence[MotifAt], blocks: Sequence[BlockAt]
) -> None:
    where: Where = {"chapter": chapter, "step": "align"}
    differ = len({_way(m) for m in motifs}) > 1
    for one in motifs:
        mine = [b for b in blocks if b.motif.key == one.key]
        bench.add(
            AlignMotif(
                **where,
                tag=one.key,
                on=tuple((laid_heap(b.key), b.count) for b in mine),
                motif=one.key,
                name=one.name if differ else None,
                guides=_way(one)[0],
                folded=one.folded,
                clear=(bench.size.block_side - one.shape.span) / 2,
                basted=one.motif.method != "fusible",
                block=mine[0].key,
            )
        )


def _way(one: MotifAt) -> tuple[str, bool]:
    """Return which creases of the ground a motif is turned to, and whether it has folds."""
    guides = "fused" if one.motif.method == "fusible" else guides_of(one.shape)
    return guides, one.folded


def guides_of(shape: MotifShape) -> str:
    """Return which of the ground's creases the motif's own folds lie on."""
    if shape.edges is None:
        return "half"
    step = 360 / shape.folds
    angles = [(shape.edges[0].angle + k * step) % 180 for k in range(shape.folds)]

    def on(target: float) -> bool:
        return any(min(abs(a - target), 180 - abs(a - target)) < 0.01 for a in angles)

    level, upright, diagonal = on(0), on(90), on(45) and on(135)
    if level and upright:
        return "both" if diagonal else "half"
    if diagonal:
        return "diagonal"
    return "level" if level else "upright" if upright else "none"


def _baste(
    bench: Bench, chapter: str, motifs: Sequence[MotifAt], blocks: Sequence[BlockAt]
) -> None:
    where: Where = {"chapter": chapter, "step": "baste"}
    narrow = [m for m in motifs if m.shape.narrowest_neck < 2 * BASTE_FROM_EDGE]
    prepared = all(m.motif.method == "prepared edge" for m in motifs)
    on = tuple((laid_heap(b.key), b.count) for b in blocks)
    bench.add(
        BasteMotif(
            **where,
            on=on,
            inside=bench.usual(BASTE_FROM_EDGE),
            edge="pressed" if prepared else "raw",
            narrow=bool(narrow),
        )
    )
    if narrow:
        bench.add(BasteArms(**where, on=on))
