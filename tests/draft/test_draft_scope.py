"""What can be described but not drafted stops with its place, never with a traceback."""

import pytest
from helpers import described

from publish import draft, grade, read


@pytest.mark.parametrize("name", ["towpath", "millrace", "heronry"])
def test_each_size_is_drafted_or_told(name):
    pattern, notes, _ = read.load(described(name))
    assert not notes
    told = []
    for key in pattern.sizes:
        drafted, notes = draft.draft(pattern, grade.grade(pattern, key)[0])
        assert (drafted is None) == any(n.code == "D361" for n in notes)
        told += [n for n in notes if n.code == "D361"]
    assert told
    assert all(n.place.line > 1 for n in told)
