"""From the cut pieces to the blocks: work that is trusted until it has moved.

In: plans, sizes. Out: trusted operations: cutting, piecing.
Invariant: every piece that is cut lies on the table; what is pieced takes all that is sewn
into blocks.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

from publish.model.draft import Unit
from publish.operations.borders import PRESSED
from publish.operations.parts import Measure, Part, measured, sheet
from publish.operations.trusted import Trusted
from publish.sew import units
from publish.sew.bench import Bench, heap
from publish.sew.names import Names


def plan(bench: Bench) -> None:
    """Piece the blocks, and the grounds of motifs; what is sewn on foundations is trusted."""
    names = Names(bench)
    _whole(bench, names)
    units.plan(bench, names)
    made: dict[str, list[Unit]] = {}
    for unit in bench.draft.assembly.outermost_first():
        if names.is_block(unit):
            made.setdefault(names.key(unit), []).append(unit)
    _foundations(bench, names, made)


def _whole(bench: Bench, names: Names) -> None:
    """Take a top of one plain piece for the top that it is."""
    piece = names.piece(names.centre)
    if piece is None or names.carries(names.centre):
        return
    size = bench.size
    around = bench.seam if size.layers else bench.edge
    width, height = (measured(side + 2 * around) for side in (size.inner_width, size.inner_height))
    top = sheet(names.key(names.centre), width, height, PRESSED)
    bench.add(
        Trusted(chapter="cutting", step="whole", takes=((heap(piece), 1),), gives=((top, 1),))
    )


def _foundations(bench: Bench, names: Names, made: dict[str, list[Unit]]) -> None:
    """Sew what is sewn on paper, and blocks that are joined from it."""
    takes: Counter[str] = Counter()
    gives = []
    for those in made.values():
        if not any(leaf.section for leaf in units.leaves(those[0])):
            continue
        for unit in those:
            takes += _sewn_from(names, unit)
        gives.append((_block(names, those), len(those)))
    if gives:
        bench.add(
            Trusted(
                chapter="foundation",
                step="blocks",
                takes=tuple(takes.items()),
                gives=tuple(gives),
                ready=frozenset({PRESSED}),
            )
        )


def _sewn_from(names: Names, unit: Unit) -> Counter[str]:
    """Return what a unit with foundation sections takes: pieces, and units pieced before."""
    sources = names.bench.plan.sources
    if unit.section:
        return Counter(f"piece {sources[p.key]}" for p in unit.patches if p.key in sources)
    if not unit.parts or not any(leaf.section for leaf in units.leaves(unit)):
        return Counter([names.key(unit)])
    return sum((_sewn_from(names, part) for part in unit.parts), Counter())


def _block(names: Names, those: list[Unit]) -> Part:
    """Return a block that is joined on foundations, with its paper."""
    sewn = those[0].sewn
    assert sewn is not None
    wide, high = (Measure(e, t) for e, t in zip(sewn.exact, sewn.told, strict=True))
    if names.lies(those[0]) % 2:
        wide, high = high, wide
    block = sheet(names.made(those[0]), wide, high, PRESSED)
    return replace(block, paper=frozenset({"foundations"}))
