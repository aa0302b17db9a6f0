"""The nine stages in order: a pattern's path in, every deliverable out.

In: a path. Out: `Work`, what each stage made, and a `Report`.
Invariant: a stage gets values and gives values; nothing is written before everything is
made, and nothing is made from a pattern whose report holds errors.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from math import ceil
from pathlib import Path

from publish import cut, deliver, draft, draw, grade, proof, read, typeset, write
from publish.model.book import A0, PAPERS, Edition, Paper, roll
from publish.model.cutplan import CutPlan
from publish.model.draft import Draft
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.model.words import Manual
from publish.notes import Note, PublishError, Report
from publish.report import as_json

STAGES = ("read", "grade", "draft", "cut", "write", "draw", "typeset", "proof", "deliver")
EDITIONS = ("booklet", "templates", "full-size")

Progress = Callable[[str, str], None]
"""Called with a stage's name and what it is about to do."""


def _silent(stage: str, doing: str) -> None:
    return None


@dataclass
class Work:
    """What the stages have made so far."""

    pattern: Pattern
    sizes: dict[str, Size] = field(default_factory=dict)
    drafts: dict[str, Draft] = field(default_factory=dict)
    plans: Mapping[str, CutPlan] = field(default_factory=dict)
    manual: Manual | None = None
    editions: list[Edition] = field(default_factory=list)
    report: Report = field(default_factory=Report)

    def add(self, notes: Iterable[Note]) -> None:
        self.report = self.report.plus(notes)

    def stop_on_errors(self, strict: bool = False) -> None:
        """Raise PublishError when a stage found something that cannot be built."""
        if self.report.errors or (strict and self.report.warnings):
            raise PublishError(self.report)


def prepare(path: Path, progress: Progress = _silent) -> Work:
    """Run stages 1 to 5 and the checks before typesetting; write nothing.

    Raises PublishError, carrying every finding, when a stage cannot go on.
    """
    progress("read", str(path))
    pattern, notes, sources = read.load(path)
    report = Report().plus(notes, sources)
    if pattern is None:
        raise PublishError(report)
    work = Work(pattern, report=report)
    for key in pattern.sizes:
        _measure(work, key, progress)
    work.stop_on_errors()
    progress("cut", "pieces, strips and lengths to buy")
    work.plans, notes = cut.cut(pattern, work.sizes, work.drafts)
    work.add(notes)
    work.stop_on_errors()
    progress("write", "steps and tables")
    work.manual, notes = write.write(pattern, work.sizes, work.drafts, work.plans)
    work.add(notes)
    work.add(proof.check(pattern, work.sizes, work.drafts, work.plans, work.manual))
    return work


def _measure(work: Work, key: str, progress: Progress) -> None:
    """Grade and draft one size."""
    progress("grade", key)
    size, notes = grade.grade(work.pattern, key)
    work.add(notes)
    if size is None:
        return
    work.sizes[key] = size
    progress("draft", key)
    drafted, notes = draft.draft(work.pattern, size)
    work.add(notes)
    if drafted is not None:
        work.drafts[key] = drafted


def print_editions(
    work: Work, papers: Iterable[str], only: str | None = None, progress: Progress = _silent
) -> None:
    """Run stages 6 to 8 for each paper: figures, pages, and the measured checks."""
    assert work.manual is not None
    manuals = {"booklet": work.manual, "templates": work.manual.templates_only()}
    for key in papers:
        wanted = {n: m for n, m in manuals.items() if only in (None, n)}
        if wanted:
            _print_on(work, PAPERS[key], wanted, progress)
    whole = work.manual.whole_templates()
    if only in (None, "full-size") and whole.sections:
        for paper in (A0, roll(_roll_length(work))):
            _print_on(work, paper, {"full-size": whole}, progress)


def _roll_length(work: Work) -> float:
    """Return the length of roll that holds the largest motif below its title strip."""
    shapes = [m for d in work.drafts.values() for m in d.motifs.values()]
    tallest = max(float(m.cut_line.bounds[3] - m.cut_line.bounds[1]) for m in shapes)
    return ceil(tallest) + 4.0


def _print_on(work: Work, paper: Paper, manuals: Mapping[str, Manual], progress: Progress) -> None:
    """Draw once for a paper, then set and measure each edition on it."""
    progress("draw", f"figures and template sheets for {paper.name}")
    largest = next(iter(manuals.values()))
    artwork, notes = draw.draw(work.pattern, work.sizes, work.drafts, work.plans, largest, paper)
    work.add(notes)
    work.stop_on_errors()
    for name, manual in manuals.items():
        progress("typeset", f"{name} on {paper.name}")
        edition, notes = typeset.typeset(work.pattern, manual, artwork, paper, name)
        work.add(notes)
        work.stop_on_errors()
        assert edition is not None
        progress("proof", f"measuring {edition.name}.pdf")
        work.add(proof.measure(work.pattern, work.drafts, artwork, edition))
        work.editions.append(edition)


def build(
    path: Path,
    out: Path | None = None,
    papers: Iterable[str] | None = None,
    only: str | None = None,
    progress: Progress = _silent,
    strict: bool = False,
) -> tuple[Work, Path]:
    """Make every deliverable of a pattern and put the complete set in its folder.

    `out` is the folder that gets one folder per pattern (default `build`). Raises
    PublishError when the report holds errors (or, when `strict`, warnings); the last
    complete set is then untouched.
    """
    work = prepare(path, progress)
    work.stop_on_errors(strict)
    print_editions(work, papers or work.pattern.papers, only, progress)
    work.stop_on_errors(strict)
    numbers = deliver.numbers(work.pattern, work.sizes, work.drafts, work.plans)
    files = {f"{e.name}.pdf": e.pdf for e in work.editions}
    files |= deliver.machine_files(work.drafts.values())
    files["numbers.json"] = json.dumps(numbers, indent=2, ensure_ascii=False).encode() + b"\n"
    files["findings.json"] = as_json(work.report).encode() + b"\n"
    target = (out or Path("build")) / work.pattern.key
    progress("deliver", str(target))
    deliver.deliver(target, files)
    return work, target
