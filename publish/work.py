"""What a run has made so far, and the printing of its PDFs.

In: what the stages return, one after another. Out: `Work`.
Invariant: what is found is kept even where an error stops the run.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field

from publish import proof
from publish.editions import Book, Job, Printed, Progress, jobs_for, print_all, silent
from publish.kept import NOWHERE, Store
from publish.model.book import PAPERS, Edition
from publish.model.cutplan import CutPlan
from publish.model.design import Design
from publish.model.draft import Draft
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.model.words import Manual
from publish.notes import Note, PublishError, Report
from publish.operations.rehearsal import Making
from publish.workers import Workers

PREFLIGHT = "preflight.txt"
"""Of the results: what was measured in the finished PDFs."""
REPORT = "report.html"
"""Of the results: the report as a page."""


@dataclass
class Work:
    """What the stages have made so far."""

    pattern: Pattern
    sizes: dict[str, Size] = field(default_factory=dict)
    drafts: dict[str, Draft] = field(default_factory=dict)
    plans: Mapping[str, CutPlan] = field(default_factory=dict)
    making: Making = field(default_factory=lambda: Making({}))
    manual: Manual | None = None
    apart: dict[str, Manual] = field(default_factory=dict)
    """The words of each size that has a booklet of its own."""
    printed: tuple[Printed, ...] = ()
    files: dict[str, bytes] = field(default_factory=dict)
    """Other results, by name."""
    report: Report = field(default_factory=Report)
    looked: frozenset[str] = frozenset()
    """Codes of the findings that have been looked for so far."""
    figures: dict[Note, str] = field(default_factory=dict)
    """SVG of the findings that are about a point on a motif."""

    @property
    def design(self) -> Design:
        """Return what the words and the pages are made from."""
        return Design(self.pattern, self.sizes, self.drafts, self.plans)

    @property
    def editions(self) -> tuple[Edition, ...]:
        """Return the finished PDFs, in the order of their listing."""
        return tuple(p.edition for p in self.printed if p.edition is not None)

    def add(self, notes: Iterable[Note]) -> None:
        self.report = self.report.plus(notes)

    def fail(self, note: Note) -> None:
        """Stop at an error."""
        self.add((note,))
        self.stop_on_errors()

    def learn(self, report: Report) -> None:
        """Take over what another language's run has found and this one's has not."""
        found = (*self.report, *(note for note, _ in self.report.accepted))
        said = {(n.code, n.place.path, n.what) for n in found}
        self.add(n for n in report if (n.code, n.place.path, n.what) not in said)

    def stop_on_errors(self, strict: bool = False) -> None:
        """Raise PublishError when a stage found something that cannot be built."""
        if self.report.errors or (strict and self.report.warnings):
            raise PublishError(self.report, self.files)


def print_editions(
    work: Work,
    papers: Iterable[str],
    only: str | None = None,
    workers: Workers | None = None,
    progress: Progress = silent,
    store: Store = NOWHERE,
    size: str = "",
) -> None:
    """Run stages 6 to 8 for every edition on some papers; `only` names one of `EDITIONS`, and
    `size` a size whose own booklet alone is made."""
    assert work.manual is not None
    if size:
        jobs: tuple[Job, ...] = tuple(Job("booklet", PAPERS[key], size=size) for key in papers)
    else:
        jobs = jobs_for(work.design, work.manual, papers, only)
    print_jobs(work, jobs, workers, progress, store)


def print_jobs(
    work: Work,
    jobs: Sequence[Job],
    workers: Workers | None = None,
    progress: Progress = silent,
    store: Store = NOWHERE,
) -> None:
    """Run stages 6 to 8 for each PDF; the files say what was measured even where an error
    stops the build."""
    assert work.manual is not None
    made_by = workers or Workers()
    books = {key: Book(work.design.of_size(key), manual) for key, manual in work.apart.items()}
    books[""] = Book(work.design, work.manual)
    work.printed = print_all(books, jobs, made_by, progress, store)
    for made in work.printed:
        work.add(made.notes)
        work.files |= made.files
    measured = [p.preflight for p in work.printed if p.preflight is not None]
    if measured:
        work.files[PREFLIGHT] = proof.preflight_text(measured).encode()
    work.stop_on_errors()
