"""Blocks that look the same after half a turn are turned so that their seams lock.

A nine-patch has its outer rows pressed one way and its middle row the other. Under another like
it, laid alike, outer rows meet pressed the same way; turned half round, they lock (worked by
hand, no source).
"""

import pytest

from space.case import case

TOLD = "Where a block looks the same after half a turn"
ROWS_OF_NINE_PATCHES = 17
SASHED = 3
APPLIQUE = 241


def laid_out(seed):
    (line,) = (x for x in case(seed).lines if x.key.endswith("lay-out") and x.kind == "text")
    return line.text


def test_symmetric_blocks_are_turned_until_they_lock():
    assert TOLD in laid_out(ROWS_OF_NINE_PATCHES)


@pytest.mark.parametrize("seed", [SASHED, APPLIQUE])
def test_nothing_is_said_where_no_seams_meet(seed):
    assert TOLD not in laid_out(seed)
