"""Patterns all over the space that a designer walks: nothing may be wrong with any of them.

Rules of English, of counting and of the craft are in `rules_*.py`; where no source is named
they are common practice. `python tests/benchmarks/space.py` prints the share of all seeds
that is flawless, by rule and by kind.
"""

import pytest

from space import walk
from space.flawless import wrong

SAMPLE = walk.SEEDS[: len(walk.KINDS)]
"""One of each kind."""


def told(seed):
    """Return what is wrong with a seed's pattern, with the pattern itself."""
    found = wrong(seed)
    said = "\n".join(f"{rule}: {text}" for rule, texts in found.items() for text in texts[:3])
    return f"{said}\n\n{walk.written(seed)}" if found else ""


@pytest.mark.parametrize("seed", SAMPLE)
def test_pattern_of_the_walk_is_flawless(seed):
    assert not told(seed)


@pytest.mark.thorough
@pytest.mark.parametrize("seed", walk.SEEDS[len(walk.KINDS) :])
def test_every_pattern_of_the_walk_is_flawless(seed):
    assert not told(seed)


def test_walk_is_wide():
    """The seeds reach every kind, at least eleven times each, and 300 patterns together."""
    counts = dict.fromkeys(walk.KINDS, 0)
    for seed in walk.SEEDS:
        counts[walk.kind_of(seed)] += 1
    assert len(walk.SEEDS) >= 300 and min(counts.values()) >= 11


@pytest.mark.parametrize("seed", walk.SEEDS[::37])
def test_seed_gives_one_pattern(seed):
    assert walk.written(seed) == walk.written(seed)
    assert walk.pattern(seed) != walk.pattern(seed + len(walk.KINDS))
