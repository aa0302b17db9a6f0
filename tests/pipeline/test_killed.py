"""Whole runs killed at random moments; the folder's own kills are in tests/deliver."""

import pytest
from kills import WAYS, kills


@pytest.mark.thorough
def test_a_kill_leaves_whole_sets_and_what_is_kept_still_serves(tmp_path):
    count = 100
    seen = kills(tmp_path, tuple(WAYS), count, seed=1)
    assert sum(seen.values()) == count + len(WAYS) - 1
    assert not [state for state in seen if "BROKEN" in state]
    assert all(seen[f"{way} at the end: whole"] for way in WAYS if way != "preview")
