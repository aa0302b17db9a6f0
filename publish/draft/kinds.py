"""Names for kinds of units: one for all that look alike.

In: a family of names and a look. Out: the name of a kind.
Invariant: within a family two units share a kind exactly when they look alike, turned or
not; of two mirror images the second is said to be one.
"""

from __future__ import annotations

from collections.abc import Hashable
from dataclasses import dataclass, field


@dataclass
class Kinds:
    """The kinds named so far."""

    names: dict[tuple[str, Hashable], str] = field(default_factory=dict)
    taken: set[str] = field(default_factory=set)

    def name(self, family: str, look: Hashable, mirror: Hashable = None, first: str = "") -> str:
        """Return the kind of a look, a new one named after `first`, or the family.

        `mirror` is the look of the mirror image, where there can be one.
        """
        mark = (family, look)
        if mark not in self.names:
            twin = self.names.get((family, mirror)) if mirror is not None else None
            self.names[mark] = self._free(f"{twin}, mirrored" if twin else first or family)
            self.taken.add(self.names[mark])
        return self.names[mark]

    def _free(self, label: str) -> str:
        if label not in self.taken:
            return label
        number = 2
        while f"{label}, {number}" in self.taken:
            number += 1
        return f"{label}, {number}"
