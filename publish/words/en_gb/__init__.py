"""English as it is written in Britain: what differs from that of North America.

In: values. Out: text. Messages beside this file stand before those of `en`.
Invariant: only what differs stands here.
"""

from __future__ import annotations

from publish.words.en import (
    CASES,
    DECIMAL_MARK,
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

TAG = "en-GB"
BASE = "en"
