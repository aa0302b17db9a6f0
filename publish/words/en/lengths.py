"""Lengths as English says them: those of `words.lengths`.

In: nothing. Out: what callers that have no language at hand yet import from here.
Invariant: nothing of its own.
"""

from publish.words.lengths import Lengths as Lengths
from publish.words.lengths import metric as metric
from publish.words.lengths import spools as spools
