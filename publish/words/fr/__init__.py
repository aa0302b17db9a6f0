"""French: how values, lists and numbers are put into words.

In: values. Out: text. The messages stand beside this file.
Invariant: what is special to French stands here and in the messages, nowhere else.
"""

from __future__ import annotations

from publish.words.en import (
    CASES,
    FUNCTIONS,
    LENGTHS,
    by_size,
    category,
    listed,
    number,
    ordinal,
    plain,
    sort_key,
)

__all__ = [
    "BASE",
    "CASES",
    "DECIMAL_MARK",
    "FUNCTIONS",
    "LENGTHS",
    "TAG",
    "by_size",
    "category",
    "listed",
    "number",
    "ordinal",
    "plain",
    "sort_key",
]

TAG = "fr"
BASE = "en"
"""While messages are missing here; a finding says so."""
DECIMAL_MARK = ","
