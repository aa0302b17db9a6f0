"""Whole runs killed at random moments; the folder's own kills are in tests/deliver."""

import pytest
from kills import MINI, WHOLE, kills


@pytest.mark.thorough
@pytest.mark.parametrize(("written", "count"), [(MINI, 3), (WHOLE, 100)])
def test_a_kill_leaves_a_whole_set(tmp_path, written, count):
    seen, _ = kills(tmp_path, written, count, seed=1)
    assert sum(seen.values()) == count + 1
    assert not [state for state in seen if "BROKEN" in state]
    assert seen["after the next build: whole"] == 1
