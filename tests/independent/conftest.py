"""What the program says of a pattern: the only place here that runs it."""

import json

import pytest
import yaml
from demos import demo

from publish import deliver
from publish.pipeline import examine


@pytest.fixture(scope="session")
def numbers_of(tmp_path_factory):
    """Return a function from a pattern (a dictionary, or a demo's name) to its numbers.json."""

    def of(pattern):
        if isinstance(pattern, dict):
            path = tmp_path_factory.mktemp("pattern") / "pattern.yaml"
            path.write_text(yaml.safe_dump(pattern, sort_keys=False), encoding="utf-8")
            work = examine(path).work
        else:
            work = demo(pattern)
        assert work is not None and work.plans, "nothing was cut"
        made = deliver.numbers(work.pattern, work.sizes, work.drafts, work.plans)
        return json.loads(json.dumps(made))

    return of
