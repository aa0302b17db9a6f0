"""From the cut pieces to the blocks: what is pieced, then what is sewn on paper.

In: plans, sizes. Out: operations.
Invariant: a unit that goes into a block with foundations is pieced before that is joined.
"""

from __future__ import annotations

from publish.operations.borders import PRESSED
from publish.operations.parts import measured, sheet
from publish.operations.trusted import Trusted
from publish.sew import foundation, units
from publish.sew.bench import Bench, heap
from publish.sew.names import Names


def plan(bench: Bench) -> None:
    """Piece the blocks, and the grounds of motifs, with and without paper."""
    names = Names(bench)
    _whole(bench, names)
    units.plan(bench, names)
    foundation.plan(bench, names)


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
