"""What alternative texts call a unit.

In: a unit. Out: its name in the language of the labels.
Invariant: a unit of one patch, and one that goes round the top, is called as the draft calls it.
"""

from __future__ import annotations

from publish.draw.canvas.letters import Labels
from publish.model.draft import Unit
from publish.words.values import Count, Word, said

PARTS = (
    *("ground", "half ground", "ground row", "ground column"),
    *("block", "half block", "block row", "block column"),
    *("unit", "row", "sashing row", "centre", "top"),
)
"""What the draft calls the units that `name-part` has a word for."""


def called(say: Labels, unit: Unit) -> str:
    """Return a unit's name: `half ground`, `row 2`."""
    if unit.patch is not None or unit.section or not (unit.number or unit.name in PARTS):
        return unit.name
    if unit.number:
        series = Word(unit.series.replace(" ", "-"))
        return say.words.value(said("name-row", series=series, number=Count(unit.number)))
    return say.words.value(said("name-part", part=Word(unit.name.replace(" ", "-"))))
