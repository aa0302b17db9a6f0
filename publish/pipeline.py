"""The ten stages in order: a pattern's path in, every deliverable out.

In: a path. Out: `Work`, what each stage made, and a `Report`.
Invariant: a stage gets values and gives values; nothing is written before everything is
made, and nothing is made from a pattern whose report holds errors.
"""

from __future__ import annotations

import contextlib
import json
from collections.abc import Iterable, Mapping
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field
from itertools import repeat
from pathlib import Path
from typing import Any

from publish import (
    compare,
    cut,
    deliver,
    draft,
    draw,
    grade,
    proof,
    read,
    render,
    report_page,
    sew,
    typeset,
    write,
)
from publish.accepting import judge
from publish.catalogue import INSPECTED, codes, printed, proofed
from publish.catalogue import STAGES as STAGES
from publish.editions import Job, Progress, silent
from publish.kept import NOWHERE, Store
from publish.marked import marked
from publish.model.book import PAPERS, full_size
from publish.model.figure import Picture
from publish.notes import Note, Place, PublishError, Report, shown_path
from publish.report import as_json
from publish.work import PREFLIGHT as PREFLIGHT
from publish.work import Work, print_editions, print_jobs
from publish.workers import Workers

REPORT = "report.html"
"""Of the results: the report as a page."""
FINDINGS = "findings/"
"""Of the results: the folder of the figures that show findings on a motif."""


def prepare(path: Path, progress: Progress = silent) -> Work:
    """Run stages 1 to 6 and the checks before typesetting; write nothing.

    Findings on a motif are drawn, as `findings/*.svg` in the files. Raises PublishError,
    carrying every finding and these files, when a stage cannot go on.
    """
    work = opened(path, progress)
    proceed(work, progress)
    return work


def opened(path: Path, progress: Progress = silent) -> Work:
    """Run stage 1. Raises PublishError when there is no pattern to go on with."""
    progress("read", str(path))
    pattern, notes, sources = read.load(path)
    report = Report().plus(notes, sources)
    if pattern is None:
        drawn = draw.sketches(report)
        raise PublishError(report, {f"{FINDINGS}{k}.svg": s.encode() for k, s in drawn.items()})
    report = report.accepting(pattern.accepts)
    return Work(pattern, report=report, looked=frozenset(codes("read")))


def proceed(work: Work, progress: Progress = silent) -> None:
    """Run stages 2 to 6 and the checks before typesetting on an opened pattern.

    Raises PublishError as `prepare` does; `work` then holds what was made before.
    """
    try:
        _design(work, progress)
        _explain(work, progress)
    except PublishError:
        work.add(judge(work.report, work.looked))
        raise PublishError(work.report, work.files) from None
    work.add(judge(work.report, work.looked))


def _design(work: Work, progress: Progress) -> None:
    """Grade and draft every size, and look at the pattern's own files."""
    work.add(typeset.inspect(work.pattern))
    _measure(work, progress)
    work.looked |= {*codes("grade"), *codes("draft"), *INSPECTED}
    found = (*work.report, *(note for note, _ in work.report.accepted))
    shown: dict[str, str] = {}
    if any(_drawn(work, note) for note in found):
        shown = draw.finding_figures(work.pattern, work.drafts, found)
    work.files |= {f"{FINDINGS}{name}.svg": svg.encode() for name, svg in shown.items()}
    work.figures = dict(zip((n for n in found if _drawn(work, n)), shown.values(), strict=True))
    work.stop_on_errors()


def _drawn(work: Work, note: Note) -> bool:
    """Return whether a finding is about a point on a drafted motif."""
    spot = note.spot
    return spot is not None and spot.size in work.drafts and (
        spot.motif in work.drafts[spot.size].motifs)  # fmt: skip


def _explain(work: Work, progress: Progress) -> None:
    """Cut, sew, write and proof what was drafted."""
    progress("cut", "pieces, strips and lengths to buy")
    made = (work.pattern, work.sizes, work.drafts)
    work.plans, notes = cut.cut(*made)
    work.add(notes)
    work.looked |= set(codes("cut"))
    work.stop_on_errors()
    work.drafts = cut.construct(*made, work.plans)
    made = (work.pattern, work.sizes, work.drafts)
    progress("sew", "operations in order, rehearsed")
    work.making, notes = sew.sew(*made, work.plans)
    work.add(notes)
    work.looked |= set(codes("sew"))
    progress("write", "steps and tables")
    work.manual, notes = write.write(*made, work.plans, work.making)
    work.add(notes)
    work.add(proof.check(*made, work.plans, work.manual, work.making))
    work.looked |= {*codes("write"), *proofed()}


def _measure(work: Work, progress: Progress) -> None:
    """Grade and draft every size; drafting is mostly geometry, which runs side by side."""
    for key in work.pattern.sizes:
        progress("grade", key)
        size, notes = grade.grade(work.pattern, key)
        work.add(notes)
        if size is not None:
            work.sizes[key] = size
    progress("draft", ", ".join(work.sizes))
    with ThreadPoolExecutor() as pool:
        drafted = list(pool.map(draft.draft, repeat(work.pattern), work.sizes.values()))
    for key, (shapes, notes) in zip(work.sizes, drafted, strict=True):
        work.add(notes)
        if shapes is not None:
            work.drafts[key] = shapes


@dataclass(frozen=True)
class Examined:
    """What checking a pattern found, however far it got. `work` is None when it was not read."""

    path: Path
    report: Report
    work: Work | None = None
    sketched: Mapping[str, bytes] = field(default_factory=dict)
    """Figures of what stopped the reading, in the report's order."""

    @property
    def files(self) -> Mapping[str, bytes]:
        return self.work.files if self.work is not None else self.sketched

    def page(self) -> str:
        """Return the report as a page."""
        if self.work is None:
            subject = report_page.Subject(
                self.path.stem,
                Place(shown_path(self.path)),
                frozenset(codes("read")),
                self._sketches(),
            )
            return report_page.page(self.report, subject)
        return report_page.page(self.report, _subject(self.work))

    def _sketches(self) -> dict[Note, report_page.Picture]:
        notes = [note for note in self.report if note.sketch is not None]
        where = "Where it is in the block"
        drawn = zip(notes, self.sketched.values(), strict=True)
        return {note: (where, note.what, svg.decode()) for note, svg in drawn}


def examine(path: Path) -> Examined:
    """Check a pattern as `prepare` does; findings that stop it are in the report."""
    try:
        work = opened(path)
    except PublishError as stopped:
        return Examined(path, stopped.report, sketched=stopped.files)
    with contextlib.suppress(PublishError):  # its report is the work's
        proceed(work)
    return Examined(path, work.report, work)


def _subject(work: Work) -> report_page.Subject:
    """Return what the page says of a run, with a picture for each finding that has a place."""
    pictures: dict[Note, report_page.Picture] = {}
    for note in (*work.report, *(n for n, _ in work.report.accepted)):
        if note in work.figures:
            pictures[note] = "Where it is on the motif", note.what, work.figures[note]
        elif (top := marked(work.pattern, work.drafts, note.place.path)) is not None:
            pictures[note] = f"Where it is on the {top[0]}", f"The top of the {top[0]}", top[1]
    source = work.pattern.places[""]
    return report_page.Subject(work.pattern.title, source, work.looked, pictures)


def build(
    path: Path,
    out: Path | None = None,
    papers: Iterable[str] | None = None,
    only: str | None = None,
    progress: Progress = silent,
    strict: bool = False,
    jobs: int = 1,
    store: Store = NOWHERE,
) -> tuple[Work, Path]:
    """Make every deliverable of a pattern and put the complete set in its folder.

    `out` is the folder that gets one folder per pattern (default `build`). Raises
    PublishError when the report holds errors (or, when `strict`, warnings); the last
    complete set is then untouched. PDFs are made by `jobs` processes side by side; their
    bytes do not depend on how many, nor on what `store` has kept of earlier runs.
    """
    work = prepare(path, progress)
    work.stop_on_errors(strict)
    with Workers(jobs) as workers:
        print_editions(work, papers or work.pattern.papers, only, workers, progress, store)
    if not work.editions:
        work.add((deliver.nothing_of(work.pattern, only or ""),))
        work.stop_on_errors()
    work.add(deliver.picture_notes(work.pattern, work.editions[0]))
    if only is None and papers is None:
        work.looked |= printed()
        work.add(judge(work.report, work.looked))
    work.stop_on_errors(strict)
    files = _files(work, store)
    target = (out or Path("build")) / work.pattern.key
    progress("deliver", str(target))
    deliver.deliver(target, files)
    return work, target


def _files(work: Work, store: Store) -> dict[str, bytes]:
    """Return every file of a finished set, by its name in the folder of results."""
    assert work.manual is not None
    preview = draw.colour_preview(work.pattern, work.sizes, work.drafts, work.plans, work.manual)
    work.files["colour/visions.svg"] = preview.svg.encode()
    numbers = deliver.numbers(work.pattern, work.sizes, work.drafts, work.plans)
    files = {f"{e.name}.pdf": e.pdf for e in work.editions}
    files |= work.files
    files |= deliver.machine_files(work.drafts.values(), work.plans.values())
    shown = _shop_pictures(work, store)
    files |= deliver.shop_files(work.pattern, work.manual, numbers, work.editions, shown)
    files["numbers.json"] = json.dumps(numbers, indent=2, ensure_ascii=False).encode() + b"\n"
    files["edition.json"] = json.dumps(described(work), ensure_ascii=False).encode() + b"\n"
    files[REPORT] = report_page.page(work.report, _subject(work)).encode()
    files["findings.json"] = as_json(work.report, work.pattern.places[""].folder).encode() + b"\n"
    return files


def _shop_pictures(work: Work, store: Store) -> dict[str, Picture]:
    """Compute a shop's pictures, where there is a booklet to show them with."""
    if not any(made.job.name == "booklet" for made in work.printed):
        return {}
    first = next(iter(work.sizes))
    made = (work.pattern, work.sizes, work.drafts, render.Shown(first, first))
    return render.for_shop(*made, store)


def kits(path: Path, wanted: Mapping[str, int], out: Path | None = None,
         progress: Progress = silent) -> tuple[Work, Path]:  # fmt: skip
    """Make the sheet by which a fabric shop cuts `wanted` kits, by size key.

    It goes into a folder of its own beside the pattern's, as Markdown, JSON and one PDF for
    each whole paper. Raises ValueError for a size that is not there and PublishError as
    `build` does.
    """
    work = prepare(path, progress)
    work.stop_on_errors()
    assert work.manual is not None
    found = deliver.kits(work.pattern, work.plans, wanted)
    files = deliver.kit_files(found)
    papers = dict.fromkeys(full_size(PAPERS[key]) for key in work.pattern.papers)
    work.manual = deliver.kit_manual(work.manual, found)
    print_jobs(work, [Job("kits", paper) for paper in papers], progress=progress)
    files |= {f"{e.name}.pdf": e.pdf for e in work.editions}
    target = (out or Path("build")) / f"{work.pattern.key}-kits"
    progress("deliver", str(target))
    deliver.deliver(target, files)
    return work, target


def described(work: Work) -> dict[str, Any]:
    """Return what later editions are compared with, for `edition.json`."""
    assert work.manual is not None
    return compare.record(work.pattern, work.drafts, work.plans, work.manual)
