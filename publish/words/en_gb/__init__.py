"""English as it is written in Britain: what differs from that of North America.

In: values. Out: text. Messages beside this file stand before those of `en`.
Invariant: only what differs stands here.
"""

from __future__ import annotations

from publish.words.en import English


class British(English):
    """What differs."""

    tag = "en-GB"
    base = "en"


GRAMMAR = British()
