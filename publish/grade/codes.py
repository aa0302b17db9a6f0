"""What grading can find, by code.

In: nothing. Out: `CODES`, each code's title.
Invariant: a code keeps its meaning for good and is never used again for another.
"""

from __future__ import annotations

CODES: dict[str, str] = {
    "G201": "There is no such size",
    "G202": "A motif comes too near the edge of its block",
    "G203": "A border is narrower than its seam allowances",
    "G204": "A border is wider than a block",
    "G205": "A pillow's cover does not suit its form",
    "G206": "A pillow has no use for a sleeve or a binding",
    "G207": "Lines of quilting stand further apart than the batting allows",
    "G208": "An area is quilted that the size does not have",
    "G209": "The batting reaches past the backing",
    "G210": "A hanging sleeve is too deep for its quilt",
    "G211": "A quilt is larger than any bed",
    "G212": "A block is never reached",
    "G213": "The backs of a pillow are as large as its cover",
    "G214": "A round of blocks does not go round what is inside it",
    "G215": "Sashing is narrower than its seam allowances",
    "G216": "Sashing is wider than a block",
    "G217": "A binding is too narrow for its seam",
}
