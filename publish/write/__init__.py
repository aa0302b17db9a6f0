"""Stage 5: all sizes to the words of the booklet, with the figures they ask for.

In: pattern, sizes, drafts, plans. Out: `Manual`, notes.
Invariant: every number in the text is read from a size, a draft or a plan, or named with
its source in `practice`; nothing is typed twice.
"""

from publish.write.checks import CODES
from publish.write.half_size import for_print_shop, half_size
from publish.write.manual import generated, write
from publish.write.value_list import value_list
from publish.write.voice import step_list

__all__ = ["CODES", "for_print_shop", "generated", "half_size", "step_list", "value_list", "write"]
