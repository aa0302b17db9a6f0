"""Whatever comes in, a result or findings with places come out.

A short run of inputs that are always the same, and the corpus: what was once answered with
a traceback. `make fuzz SECONDS=600` goes on from there.
"""

from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from mutate_files import stored
from trials import STORED, TRIALS

CORPUS = Path(__file__).parent / "corpus"
EXAMPLES = {"pattern": 8, "drawing": 60, "logo": 30, "words": 60, "picture": 40, "font": 8}


@pytest.mark.parametrize("kind", TRIALS)
def test_a_short_fixed_run(tmp_path_factory, kind):
    folder = tmp_path_factory.mktemp(kind)

    @settings(
        max_examples=EXAMPLES[kind],
        derandomize=True,
        deadline=None,
        database=None,
        suppress_health_check=list(HealthCheck),
    )
    @given(st.data())
    def run(data):
        _, attempt = TRIALS[kind](lambda several: data.draw(st.sampled_from(list(several))))
        attempt(folder)

    run()


@pytest.mark.parametrize("path", stored(CORPUS), ids=lambda p: p.name)
def test_what_was_once_found_stays_mended(tmp_path, path):
    found = STORED[path.name.partition("-")[0]](path.read_bytes(), tmp_path)
    assert all(found), "each finding has a code"
