"""The values that the texts of one pattern's steps may name, each with its text.

In: pattern, sizes, drafts, plans. Out: pairs of name and text.
Invariant: what is listed is what `voice` fills in.
"""

from __future__ import annotations

from collections.abc import Mapping

from publish.model.cutplan import CutPlan
from publish.model.draft import Draft
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.write.context import Book
from publish.write.values import flat, values


def value_list(
    pattern: Pattern,
    sizes: Mapping[str, Size],
    drafts: Mapping[str, Draft],
    plans: Mapping[str, CutPlan],
) -> tuple[tuple[str, str], ...]:
    """Return every name with its text, those of `each` last: `mini.block`, `16 in`."""
    book = Book(pattern, sizes, drafts, plans)
    found = values(book, book.keys)
    each = found.pop("each")
    return (*flat(found), *flat({"each": each}))
