"""How blocks are trimmed once their motif is sewn on.

In: blocks, the size that they are for. Out: operations.
Invariant: a block that goes on into a seam is trimmed to its finished size plus seams; blocks
at the edge of a pillow keep the closing seam there; a pillow's whole front is left large.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import replace

from publish.colour import lightness, lightness_step
from publish.model.homes import BlockHome
from publish.model.trade import CUT_AWAY
from publish.operations.handwork import laid_heap
from publish.operations.operation import Where
from publish.operations.trimming import CutGroundAway, Done, LeaveLarge, TrimAtEdge, TrimBlocks
from publish.sew.bench import Bench
from publish.sew.heaps import Heaps
from publish.sew.motifs import BlockAt, homes_of, whole_unit
from publish.surd import Length


def trim(bench: Bench, chapter: str, blocks: Sequence[BlockAt]) -> None:
    """Cut away what shows through, and trim each block, or leave it large."""
    away = chapter != "fusing" and any(_shows(bench, b) for b in blocks)
    if away:
        step: Where = {"chapter": chapter, "step": "cut-away"}
        on = tuple((laid_heap(b.key), b.count) for b in blocks)
        bench.add(CutGroundAway(**step, on=on, inside=bench.usual(CUT_AWAY)))
    size, shown, ends = bench.size, blocks[0].key, done(bench, blocks)
    if size.pillow is None or not size.bare:
        where: Where = {"chapter": chapter, "step": "trim"}
        side = size.block_side + 2 * bench.seam
        bench.add(TrimBlocks(**where, done=ends, away=away, side=side, shown=shown))
    elif size.block_count == 1:
        leave: Where = {"chapter": chapter, "step": f"leave-{size.key}"}
        bench.add(LeaveLarge(**leave, done=ends, away=away))
    else:
        edge: Where = {"chapter": chapter, "step": f"trim-{size.key}"}
        bench.add(
            TrimAtEdge(
                **edge,
                done=ends,
                away=away,
                side=size.block_side,
                seam=bench.seam,
                closing=size.pillow.seam,
                shown=shown,
            )
        )


def done(bench: Bench, blocks: Sequence[BlockAt]) -> tuple[Done, ...]:
    """Return how blocks end: a heap for each recipe."""
    found: Counter[Done] = Counter()
    heaps = Heaps(bench)
    for block in blocks:
        for home in homes_of(bench, block.key):
            unit = whole_unit(bench, home)
            found[Done(block.key, heaps.key(unit), 1, *_trimmed(bench, home))] += 1
    return tuple(replace(one, count=count) for one, count in found.items())


def _trimmed(bench: Bench, home: BlockHome) -> tuple[Length | None, Length | None]:
    """Return what the block at a place is trimmed to: wider where a cover closes."""
    size, seam = bench.size, bench.seam
    if size.pillow is None or not size.bare:
        side = size.block_side + 2 * seam
        return side, side
    if size.block_count == 1:
        return None, None
    edges = ((home.column, size.columns), (home.row, size.rows))
    width, height = (
        size.block_side
        + (size.pillow.seam if at == 0 else seam)
        + (size.pillow.seam if at == count - 1 else seam)
        for at, count in edges
    )
    return width, height


def _shows(bench: Bench, block: BlockAt) -> bool:
    """Return whether a ground may show through the motif on it, by their lightness."""
    fabrics = bench.pattern.fabrics
    over = fabrics[block.motif.motif.fabric].colour
    unders = {fabrics[p.fabric].colour for p in block.block.patches}
    return any(
        lightness(over) > lightness(under) and not lightness_step(under, over).close
        for under in unders
    )
