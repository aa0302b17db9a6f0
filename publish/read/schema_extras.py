"""The key of what a booklet holds besides what a maker needs.

In: nothing. Out: one `Key` of the pattern's schema.
Invariant: nothing that a step relies on is an extra.
"""

from __future__ import annotations

from publish.model.pattern import EXTRAS
from publish.read.forms import Choice
from publish.read.sections import Key, Many

EXTRA = Key(
    "extras",
    Many(Choice(EXTRAS), 0, len(EXTRAS), distinct=True),
    "What the booklet holds besides what a maker needs: `colouring`, a page to colour in; "
    "`lengths`, a table of every length in both units; `pairs`, each fabric beside and "
    "on each other; `precuts`, what else the pieces can be cut from.",
    "[colouring, precuts]",
    default="[]",
)
