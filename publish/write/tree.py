"""What several units of the seam tree are called together.

In: groups of units. Out: a phrase.
"""

from __future__ import annotations

from publish.model.tree import Group
from publish.words.en.phrase import listed


def together(group: Group) -> str:
    """Return what several units are called: `rows 1 and 3`, or each by its name."""
    series = {u.series for u in group.units}
    if len(series) == 1 and group.unit.series:
        return f"{series.pop()}s {listed([str(u.number) for u in group.units])}"
    return listed(list(group.names))
