"""Making up a pillow: work that is trusted until it has moved.

In: plans, the quilt as it lies on the table. Out: trusted operations.
Invariant: a pillow's front is trimmed to its
cover and closing seams before it is closed.
"""

from __future__ import annotations

from publish.operations.trusted import Becoming, Trusted
from publish.sew.bench import Bench, heap


def fill(bench: Bench) -> None:
    """Make up a pillow."""
    plan, pillow, size = bench.plan.pillow, bench.size.pillow, bench.size
    if plan is None or pillow is None:
        return
    takes = tuple((heap(p), p.count * p.joined_from) for p in bench.pieces("pillow back"))
    front = size.width + 2 * pillow.seam, size.height + 2 * pillow.seam
    change = Becoming(
        "quilt", "quilt", width=front[0], height=front[1], closed=True, seam=pillow.seam
    )
    bench.add(Trusted(chapter="pillow", step="pillow", takes=takes, becomes=(change,)))
