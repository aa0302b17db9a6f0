"""The ten stages in order: a pattern's path in, every deliverable out.

In: a path. Out: `Work`, what each stage made, and a `Report`.
Invariant: a stage gets values and gives values; nothing is written before everything is
made, and nothing is made from a pattern whose report holds errors.
"""

from __future__ import annotations

import contextlib
from collections.abc import Iterable, Iterator, Mapping
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field
from itertools import repeat
from pathlib import Path

from publish import (
    cut,
    deliver,
    draft,
    draw,
    finished,
    grade,
    meetings,
    proof,
    read,
    report_page,
    sew,
    typeset,
    write,
)
from publish.accepting import judge
from publish.catalogue import INSPECTED, codes, printed, proofed
from publish.catalogue import STAGES as STAGES
from publish.editions import Job, Progress, by_size, silent
from publish.inputs import inputs
from publish.kept import NOWHERE, Store
from publish.model.book import PAPERS, full_size
from publish.notes import Note, Place, PublishError, Report, shown_path
from publish.work import PREFLIGHT as PREFLIGHT
from publish.work import REPORT as REPORT
from publish.work import Work, print_editions, print_jobs
from publish.workers import Workers

FINDINGS = "findings/"
"""Of the results: the folder of the figures that show findings on a motif."""


class NoSizeError(ValueError):
    """A size is asked for that the pattern does not have."""


def prepare(path: Path, progress: Progress = silent, language: str = "") -> Work:
    """Run stages 1 to 6 and the checks before typesetting; write nothing.

    It is told in `language`, or where that is empty in the first of the pattern's own.
    Findings on a motif are drawn, as `findings/*.svg` in the files. Raises PublishError,
    carrying every finding and these files, when a stage cannot go on.
    """
    work = opened(path, progress, language)
    proceed(work, progress)
    return work


def opened(path: Path, progress: Progress = silent, language: str = "") -> Work:
    """Run stage 1. Raises PublishError when there is no pattern to go on with."""
    progress("read", str(path))
    pattern, notes, sources = read.load(path, language)
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
    return (
        spot is not None
        and spot.size in work.drafts
        and (spot.motif in work.drafts[spot.size].motifs)
    )


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
    if by_size(work.design):
        for key in work.sizes:
            alone(work, key, progress)
    work.looked |= {*codes("write"), *proofed()}


def alone(work: Work, key: str, progress: Progress = silent) -> None:
    """Write and proof the words of one size's own booklet; what the whole one is blamed for
    already is not said again. Raises NoSizeError where the pattern has no such size."""
    if key not in work.sizes:
        raise NoSizeError(f"the pattern has no size {key!r}: it has {', '.join(work.sizes)}")
    progress("write", f"steps and tables of the {key} alone")
    found = (*work.report, *(note for note, _ in work.report.accepted))
    said = {(n.code, n.place.path, n.what) for n in found}
    made, making = work.design.of_size(key), work.making.of_size(key)
    values = (made.pattern, made.sizes, made.drafts, made.plans)
    work.apart[key], notes = write.write(*values, making)
    notes = (*notes, *proof.check(*values, work.apart[key], making))
    work.add(n for n in notes if (n.code, n.place.path, n.what) not in said)


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

    def meetings(self) -> list[str]:
        """Return how outlines meet their folds, as far as motifs were drafted."""
        return [] if self.work is None else meetings.lines(self.work.drafts.values())

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
        return report_page.page(self.report, finished.subject(self.work))

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
        for other in in_languages(path, work):
            work.learn(other.report)
    return Examined(path, work.report, work)


def in_languages(path: Path, work: Work, progress: Progress = silent) -> Iterator[Work]:
    """Yield a pattern in each of its other languages, prepared; where a finding stops one, as
    far as it came."""
    for code in work.pattern.languages:
        if code != work.pattern.language:
            other = opened(path, progress, code)
            with contextlib.suppress(PublishError):
                proceed(other, progress)
            yield other


def build(
    path: Path,
    out: Path | None = None,
    papers: Iterable[str] | None = None,
    only: str | None = None,
    progress: Progress = silent,
    strict: bool = False,
    jobs: int = 1,
    store: Store = NOWHERE,
    size: str = "",
    language: str = "",
) -> tuple[Work, Path]:
    """Make every deliverable of a pattern and put the complete set in its folder.

    `out` is the folder that gets one folder per pattern (default `build`). With `size` only the
    booklet of that size is made, with `language` only what is in that one; else the set in the
    pattern's first language stands in its folder and each other one's in a folder by its code
    in it. Raises NoSizeError as `alone` does, and
    PublishError when the report holds errors (or, when `strict`, warnings); the last
    complete set is then untouched. PDFs are made by `jobs` processes side by side; their
    bytes do not depend on how many, nor on what `store` has kept of earlier runs.
    """
    work = prepare(path, progress, language)
    others = list(in_languages(path, work, progress)) if not language else []
    papers = tuple(papers) if papers is not None else None
    asked = Asked(papers, only, size, strict)
    with Workers(jobs) as workers:
        for each in (work, *others):
            _print(each, asked, workers, progress, store)
            if each is not work:
                work.learn(each.report)
    work.stop_on_errors(strict)
    files = finished.files(work, store)
    for each in others:
        files |= {f"{each.pattern.language}/{k}": v for k, v in finished.files(each, store).items()}
    target = (out or Path("build")) / work.pattern.key
    progress("deliver", str(target))
    deliver.deliver(target, files, inputs(work.pattern, papers, only, work.report, size, language))
    return work, target


@dataclass(frozen=True)
class Asked:
    """What a build is asked for: papers, one edition, one size; whether warnings stop it."""

    papers: tuple[str, ...] | None
    only: str | None
    size: str
    strict: bool


def _print(work: Work, asked: Asked, workers: Workers, progress: Progress, store: Store) -> None:
    """Print what is asked for in one language."""
    if asked.size and asked.size not in work.apart:
        alone(work, asked.size, progress)
    work.stop_on_errors(asked.strict)
    papers = asked.papers or work.pattern.papers
    print_editions(work, papers, asked.only, workers, progress, store, asked.size)
    if not work.editions:
        work.fail(deliver.nothing_of(work.pattern, asked.only or ""))
    work.add(deliver.picture_notes(work.pattern, work.editions[0]))
    if asked.only is None and asked.papers is None and not asked.size:
        work.looked |= printed()
        work.add(judge(work.report, work.looked))
    work.stop_on_errors(asked.strict)


def kits(
    path: Path, wanted: Mapping[str, int], out: Path | None = None, progress: Progress = silent
) -> tuple[Work, Path]:
    """Make the sheet by which a fabric shop cuts `wanted` kits, by size key.

    It goes into a folder of its own beside the pattern's, as Markdown, JSON and one PDF for
    each whole paper. Raises ValueError for a size that is not there and PublishError as
    `build` does.
    """
    work = prepare(path, progress)
    work.stop_on_errors()
    assert work.manual is not None
    found = deliver.kits(work.pattern, work.plans, wanted)
    files = deliver.kit_files(work.pattern.words, found)
    papers = dict.fromkeys(full_size(PAPERS[key]) for key in work.pattern.papers)
    work.manual = deliver.kit_manual(work.pattern.words, work.manual, found)
    print_jobs(work, [Job("kits", paper) for paper in papers], progress=progress)
    files |= {f"{e.name}.pdf": e.pdf for e in work.editions}
    target = (out or Path("build")) / f"{work.pattern.key}-kits"
    progress("deliver", str(target))
    deliver.deliver(target, files)
    return work, target
