"""One pattern of the walk, prepared: what was found, what is told, what was computed."""

import json
import tempfile
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path

from publish import deliver
from publish.notes import Severity
from publish.pipeline import examine
from space import told, walk


@dataclass(frozen=True)
class Case:
    """A seed's pattern. `manual` is None where it was not written."""

    seed: int
    pattern: dict
    findings: tuple
    manual: object = None
    numbers: dict | None = None

    @cached_property
    def lines(self):
        return told.lines(self.manual) if self.manual is not None else []

    @property
    def sizes(self):
        return self.numbers["sizes"] if self.numbers else {}

    @property
    def is_metric(self):
        """Return whether the booklet tells no inch."""
        return self.pattern.get("units") == "metric"

    def of_size(self, key):
        """Return the lines that a maker of this size reads."""
        return [x for x in self.lines if not x.sizes or key in x.sizes]

    @property
    def own_words(self):
        """Return the texts that the designer wrote: they are not the program's."""
        return {step.get("text") for step in self.pattern.get("steps", ())}


def case(seed):
    """Prepare the pattern of a seed; nothing is drawn or printed."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "pattern.yaml"
        path.write_text(walk.written(seed), encoding="utf-8")
        try:
            done = examine(path)
        except Exception as wrong:  # what a maker would see as a traceback is a finding here
            return Case(seed, walk.pattern(seed), (f"traceback: {wrong!r}",))
    found = tuple(
        f"{n.code} {n.place.path}: {n.what}; expected {n.expected!r}, received {n.received!r}"
        for n in done.report
        if n.severity is not Severity.INFO
    )
    work = done.work
    if work is None or not work.plans:
        return Case(seed, walk.pattern(seed), found)
    numbers = deliver.numbers(work.pattern, work.sizes, work.drafts, work.plans)
    numbers = json.loads(json.dumps(numbers))  # as it stands in the file
    return Case(seed, walk.pattern(seed), found, work.manual, numbers)
