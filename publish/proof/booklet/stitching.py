"""Whether thread and quilting follow from the lengths that are sewn.

In: a case. Out: notes.
Invariant: thread is seam length times the pattern's ratio, for piecing and for quilting; the
seams inside the top, slanting and curved ones and those on foundations too, are as long as
its patches' edges; no quilting runs off the top.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from math import hypot

from publish.arcs import Edge, arc_length, edges_of
from publish.notes import Note, Place, error
from publish.proof.case import Case, Code

CODES = {
    "P838": Code(
        "Thread does not follow from what is sewn",
        "the spool runs out",
        "750 in of thread for 600 in of quilting at a ratio of 2 1/2",
        "1500 in of thread",
    ),
    "P846": Code(
        "Quilting runs off the top",
        "lines end in the batting",
        "lines 6 in beyond the edge",
        "lines that end at the edge",
    ),
}

_SLACK = 2.0
"""Inches: each length from a curve is rounded up to a whole inch before it is added."""
_NEAR = 1e-6
"""Inches: slanting and curved edges have no exact length in the draft."""


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each kind of thread that is not its length times the ratio."""
    for key in case.keys:
        draft, thread = case.drafts[key], case.plans[key].thread
        place = case.pattern.place("sewing", "tension_ratio")
        ratio = float(thread.ratio)
        slack = _SLACK + ratio * len(draft.quilting)
        sewn = float(draft.seam_length) * ratio + _cover(case, key, ratio)
        yield from _same(place, key, "piecing", float(thread.piecing), sewn, slack)
        quilted = draft.quilting_length * ratio
        yield from _same(place, key, "quilting", float(thread.quilting), quilted, slack)
        yield from _seams(case, key)
        reach = draft.edge_outline.buffer(0.01)
        for lines in draft.quilting:
            if lines.lines and not reach.covers(lines.lines):
                yield error(
                    "P846",
                    case.size_place(key, "quilting"),
                    f"the quilting of the {lines.area} runs off the {key}",
                )


def _cover(case: Case, key: str, ratio: float) -> float:
    """Return the thread of a pillow: two lines across its back, and round its front once
    straight and once in a zigzag, which takes seven times its length (from memory)."""
    size = case.sizes[key]
    if size.pillow is None:
        return 0.0
    wide, high = (float(s + 2 * size.pillow.seam) for s in (size.width, size.height))
    return ratio * 2 * high + (ratio + 7) * 2 * (wide + high)


def _same(
    place: Place, key: str, what: str, thread: float, sewn: float, slack: float
) -> Iterator[Note]:
    if abs(thread - sewn) > slack:
        yield error(
            "P838",
            place,
            f"the thread for {what} the {key} does not follow from what is sewn",
            expected=f"{sewn:.0f} in",
            received=f"{thread:.0f} in",
        )


def _seams(case: Case, key: str) -> Iterator[Note]:
    """Seams are as long as half of what the patches' edges are beyond the top's own edge.

    Those of a tree that only joins edge to edge are as long as its units are deep, too.
    """
    draft = case.drafts[key]
    edges = sum(_long(edge) for p in draft.patches for edge in edges_of(p.ring, p.arcs))
    total = (edges - 2 * float(draft.width + draft.height)) / 2
    if abs(total - float(draft.seam_length)) > _NEAR:
        yield _counted(case, key, total)
        return
    joins = list(draft.assembly.outermost_first())
    if any(u.join not in (None, "across", "down") or u.turn or u.section for u in joins):
        return
    each = (
        (len(u.parts) - 1) * (u.height if u.join == "across" else u.width) for u in joins if u.parts
    )
    sewn = sum(each, Fraction(0))
    if sewn != draft.seam_length:
        yield _counted(case, key, float(sewn))


def _long(edge: Edge) -> float:
    one, two, through = edge
    if through is not None:
        return arc_length(one, through, two)
    return hypot(float(two[0] - one[0]), float(two[1] - one[1]))


def _counted(case: Case, key: str, expected: float) -> Note:
    return error(
        "P838",
        case.size_place(key),
        f"the seams of the {key} are counted wrongly",
        expected=f"{expected:.3f} in",
        received=f"{float(case.drafts[key].seam_length):.3f} in",
    )
