"""What the stages before the words have settled: one value that travels between them.

In: a pattern and what was graded, drafted and cut of each of its sizes. Out: `Design`.
Invariant: frozen; every size has a draft and a plan, in the pattern's order.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from publish.model.cutplan import CutPlan
from publish.model.draft import Draft
from publish.model.pattern import Pattern
from publish.model.size import Size


@dataclass(frozen=True)
class Design:
    """One pattern with the sizes, drafts and cutting plans by size key."""

    pattern: Pattern
    sizes: Mapping[str, Size]
    drafts: Mapping[str, Draft]
    plans: Mapping[str, CutPlan]

    @property
    def keys(self) -> tuple[str, ...]:
        """Return the keys of the sizes, in the pattern's order."""
        return tuple(self.sizes)

    def of_size(self, key: str) -> Design:
        """Return the design as if the pattern had one size: under its title stands that of the
        size. Letters of pieces stay as they are in the whole."""
        size = self.sizes[key]
        alone = replace(
            self.pattern,
            sizes={key: self.pattern.sizes[key]},
            others=tuple(k for k in self.pattern.sizes if k != key),
            subtitle=size.title,
        )
        return Design(alone, {key: size}, {key: self.drafts[key]}, {key: self.plans[key]})
