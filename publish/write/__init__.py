"""Stage 5: all sizes to the words of the booklet, with the figures they ask for.

In: pattern, sizes, drafts, plans. Out: `Manual`, notes.
Invariant: every number in the text is read from a size, a draft or a plan, or named with
its source in `practice`; nothing is typed twice.
"""

from publish.write.checks import CODES
from publish.write.manual import templates_only, write

__all__ = ["CODES", "templates_only", "write"]
