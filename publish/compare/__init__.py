"""Two editions of a pattern, and what changed between them for a maker.

In: `numbers.json` and `edition.json` of each, as they are in a build or before one is
written. Out: changes, sorted by what they mean for work begun; pages and data that say so.
Invariant: the nine stages know nothing of this; equal editions give no change, and no
change is without a sentence for the maker.
"""

from __future__ import annotations

from publish.compare import bought, looks, pieces, sewn, templates, words
from publish.compare.align import aligned
from publish.compare.errata import data, lines, page
from publish.compare.model import CONSEQUENCES, Change, Edition
from publish.compare.overlay import overlays
from publish.compare.parse import edition
from publish.compare.record import record

__all__ = [
    "CONSEQUENCES",
    "Change",
    "Edition",
    "compare",
    "data",
    "edition",
    "lines",
    "overlays",
    "page",
    "record",
]


def compare(old: Edition, new: Edition) -> tuple[Change, ...]:
    """Return every change for a maker, by consequence, in the order of her work."""
    new = aligned(old, new)
    found = [
        change
        for finder in (pieces, templates, sewn, bought, looks, words)
        for change in finder.find(old, new)
    ]
    order = list(CONSEQUENCES)
    return tuple(sorted(found, key=lambda change: order.index(change.consequence)))
