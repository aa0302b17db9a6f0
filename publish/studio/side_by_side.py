"""Several patterns checked or built side by side, each in a process of its own.

In: paths, and what is asked for. Out: an `Outcome` for each, in the order of the paths.
Invariant: whatever happens to one pattern, a mistake of ours or of the system's included,
the others are done all the same; the bytes do not depend on how many processes there are.
"""

from __future__ import annotations

import time
import traceback
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import Future, as_completed
from concurrent.futures.process import BrokenProcessPool
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from publish import deliver, pipeline
from publish.kept import NOWHERE, Store
from publish.notes import Note, PublishError, Report
from publish.studio.across import compared, unused_wording
from publish.studio.glance import glance, up_to_date
from publish.studio.outcome import Glance, Outcome, State
from publish.workers import Workers

Ended = Callable[[Outcome], None]
"""Called with each pattern's outcome as it comes."""


@dataclass(frozen=True)
class Asked:
    """What is asked for of every pattern."""

    out: Path = Path("build")
    papers: tuple[str, ...] | None = None
    only: str | None = None
    strict: bool = False
    changed: bool = False
    """Whether patterns are passed over whose sets are up to date."""
    report: bool = False
    """Of a check: whether its page is wanted."""
    size: str = ""
    """The size whose own booklet alone is wanted."""
    language: str = ""
    """The language that alone is wanted."""
    store: Store = NOWHERE


Elsewhere = Callable[[Sequence[Path], Asked, Ended], tuple[Outcome, ...]]
"""Builds patterns on other machines."""


def silent(outcome: Outcome) -> None:
    """Show nothing."""


def build(
    paths: Sequence[Path],
    asked: Asked,
    jobs: int,
    ended: Ended = silent,
    heard: Any = None,
    elsewhere: Elsewhere | None = None,
) -> tuple[Outcome, ...]:
    """Build patterns, at most `jobs` at a time, and compare them with one another.

    An error that comparing finds stops the pattern that it stands in. `heard` is a queue
    that gets (path, stage, what it is about to do) while they are built. What is to be built
    is handed to `elsewhere` where other machines do it.
    """
    begin, values = (tell_through, (heard,)) if heard is not None else (None, ())
    with Workers(min(jobs, len(paths)), begin, values) as pool:
        glances = _glances(pool, paths, asked)
        between = compared(glances)
        ends = {}
        for glanced in glances:
            outcome = _before(glanced, between.get(glanced.path, ()), asked)
            if outcome is not None:
                ends[glanced.path] = outcome
                ended(outcome)
        waiting = [p for p in paths if p not in ends]
        if elsewhere is not None:
            built = elsewhere(waiting, asked, ended) if waiting else ()
            ends.update((outcome.path, outcome) for outcome in built)
            return _together(glances, [ends[p] for p in paths])
        if len(waiting) > 1:
            for outcome in _each(pool, build_one, waiting, (asked,)):
                ends[outcome.path] = outcome
                ended(outcome)
    if len(waiting) == 1:  # its PDFs are made side by side instead
        if begin is not None:
            begin(*values)
        ends[waiting[0]] = build_one(waiting[0], asked, jobs)
        ended(ends[waiting[0]])
    return _together(glances, [ends[p] for p in paths])


def _before(glanced: Glance, notes: tuple[Note, ...], asked: Asked) -> Outcome | None:
    """Return the outcome of a pattern that need not, or must not, be built; else None."""
    report = Report(accepts=glanced.accepts).plus(notes, dict(glanced.sources))
    if report.errors or (asked.strict and report.warnings):
        return Outcome(glanced.path, State.ERRORS, report, glanced.key)
    same = up_to_date(glanced, asked.out, asked.strict) if asked.changed else None
    return same and Outcome(glanced.path, State.UNCHANGED, same[0], glanced.key, same[1])


def check(
    paths: Sequence[Path], asked: Asked, jobs: int, ended: Ended = silent
) -> tuple[Outcome, ...]:
    """Check patterns, at most `jobs` at a time, and compare them with one another."""
    with Workers(min(jobs, len(paths))) as pool:
        glances = _glances(pool, paths, replace(asked, changed=False))
        ends = {}
        for outcome in _each(pool, check_one, paths, (asked,)):
            ends[outcome.path] = outcome
            ended(outcome)
    return _together(glances, [ends[p] for p in paths])


def _glances(pool: Workers, paths: Sequence[Path], asked: Asked) -> list[Glance]:
    home = asked.out if asked.changed else None
    values = (home, asked.papers, asked.only, asked.size, asked.language)
    futures = [pool.submit(glance, path, *values) for path in paths]
    return [future.result() for future in futures]


def _together(glances: Sequence[Glance], ends: Sequence[Outcome]) -> tuple[Outcome, ...]:
    """Return the outcomes with what comparing the patterns has found."""
    between = compared(glances)
    found = [o.plus(between.get(g.path, ()), g.sources) for g, o in zip(glances, ends, strict=True)]
    if any(o.state in (State.ERRORS, State.FAILED) for o in found):
        return tuple(found)
    told = [(g.house, o.report) for g, o in zip(glances, found, strict=True)]
    for note in unused_wording(told):
        at = next(n for n, g in enumerate(glances) if g.house == note.place.file)
        found[at] = found[at].plus((note,), glances[at].sources)
    return tuple(found)


def _each(
    pool: Workers, call: Callable[..., Outcome], paths: Sequence[Path], values: tuple[Any, ...]
) -> Iterator[Outcome]:
    """Yield each pattern's outcome as it comes.

    Where a process ends without a word (the system does that when memory runs out), those
    it shared the work with are begun again, each alone, so that only the cause is left out.
    """
    if pool.count == 1:
        yield from (pool.submit(call, path, *values).result() for path in paths)
        return
    lost: list[Path] = []
    futures: dict[Future[Outcome], Path] = {}
    for path in paths:
        try:
            futures[pool.submit(call, path, *values)] = path
        except BrokenProcessPool:
            lost.append(path)
    for future in as_completed(futures):
        try:
            yield future.result()
        except BrokenProcessPool:
            lost.append(futures[future])
    for path in (p for p in paths if p in lost):
        yield _alone(call, path, values)


def _alone(call: Callable[..., Outcome], path: Path, values: tuple[Any, ...]) -> Outcome:
    """Return what becomes of a pattern in processes that do nothing else."""
    started = time.monotonic()
    with Workers(2) as pool:
        try:
            return pool.submit(call, path, *values).result()
        except BrokenProcessPool:
            said = "the process that made it was ended from outside, as when memory runs out"
            return Outcome(
                path, State.FAILED, Report(), failure=said, seconds=time.monotonic() - started
            )


def build_one(path: Path, asked: Asked, jobs: int = 1) -> Outcome:
    """Build one pattern; whatever goes wrong is in the outcome."""
    started = time.monotonic()
    tell = _telling(path)
    try:
        work, target = pipeline.build(
            path,
            asked.out,
            asked.papers,
            asked.only,
            tell,
            asked.strict,
            jobs,
            asked.store,
            asked.size,
            asked.language,
        )
    except PublishError as stopped:
        return Outcome(path, State.ERRORS, stopped.report, seconds=time.monotonic() - started)
    except pipeline.NoSizeError as wrong:
        return Outcome(
            path, State.FAILED, Report(), failure=str(wrong), seconds=time.monotonic() - started
        )
    except Exception:  # a mistake of ours, which must not stop the other patterns
        return _failed(path, started)
    pages = sum(deliver.page_count(e.pdf) for e in work.editions)
    seconds = time.monotonic() - started
    return Outcome(
        path, State.BUILT, work.report, work.pattern.key, target, len(work.editions), pages, seconds
    )


def check_one(path: Path, asked: Asked) -> Outcome:
    """Check one pattern; whatever goes wrong is in the outcome."""
    started = time.monotonic()
    try:
        examined = pipeline.examine(path)
        files = dict(examined.files)
        if asked.report:
            files[pipeline.REPORT] = examined.page().encode()
    except Exception:  # as above
        return _failed(path, started)
    key = examined.work.pattern.key if examined.work is not None else path.stem
    return Outcome(
        path, State.CHECKED, examined.report, key, files=files, seconds=time.monotonic() - started
    )


def _failed(path: Path, started: float) -> Outcome:
    return Outcome(
        path,
        State.FAILED,
        Report(),
        failure=traceback.format_exc(),
        seconds=time.monotonic() - started,
    )


_HEARD: list[Any] = []
"""Of this process: the queue that it tells which stage of which pattern runs."""


def tell_through(queue: Any) -> None:
    """Let this process tell its stages: called with one end of a queue as a worker begins."""
    _HEARD[:] = [queue]


def _telling(path: Path) -> Callable[[str, str], None]:
    def tell(stage: str, doing: str) -> None:
        for queue in _HEARD:
            queue.put((path, stage, doing))

    return tell
