"""The commands on several patterns, and the files that they leave.

In: paths, and the arguments of the command line. Out: outcomes.
Invariant: nothing is printed here but the progress on standard error.
"""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Sequence
from functools import partial
from importlib import import_module
from importlib.util import find_spec
from pathlib import Path

from publish import pipeline
from publish.console import Together, write
from publish.kept import Store, users
from publish.studio import line_sheet, side_by_side
from publish.studio.outcome import ClusterError, Outcome
from publish.workers import cores


def build(
    paths: Sequence[Path], papers: Sequence[str] | None, arguments: Namespace
) -> tuple[Outcome, ...]:
    """Build patterns as the command line asks.

    Where a folder of patterns is named, and every edition asked for, it is a catalogue: the
    line sheet of its patterns is made as well, and is the last of the outcomes.
    """
    asked = side_by_side.Asked(
        arguments.out,
        tuple(papers) if papers else None,
        arguments.only,
        arguments.strict,
        arguments.changed,
        size=arguments.size,
        language=arguments.language,
        store=Store(users(), arguments.fresh),
    )
    of_folders = {p.resolve() for p in arguments.patterns} - {p.resolve() for p in paths}
    with_sheet = (
        arguments.only is None
        and not arguments.size
        and not arguments.language
        and bool(of_folders)
    )
    with Together(len(paths) + with_sheet) as shown:
        jobs = arguments.jobs or cores()
        outcomes = side_by_side.build(
            paths, asked, jobs, shown.ended, shown.heard, _elsewhere(arguments.cluster)
        )
        if with_sheet:
            sheet = line_sheet.make(outcomes, asked.out)
            shown.ended(sheet)
            outcomes = (*outcomes, sheet)
    return outcomes


def _elsewhere(address: str) -> side_by_side.Elsewhere | None:
    """Return what builds on the machines of a scheduler; None without an address.

    Its library is loaded only where it is asked for: raises ClusterError where it is missing.
    """
    if not address:
        return None
    if find_spec("distributed") is None:
        raise ClusterError("`--cluster` needs another library: pip install 'foldwork[cluster]'")
    return partial(import_module("publish.studio.cluster").build, address=address)


def check(paths: Sequence[Path], arguments: Namespace) -> tuple[Outcome, ...]:
    """Check patterns as the command line asks; pages and figures go into a folder for each.

    Raises OSError where these cannot be written.
    """
    asked = side_by_side.Asked(strict=arguments.strict, report=arguments.report is not None)
    with Together(len(paths)) as shown:
        outcomes = side_by_side.check(paths, asked, arguments.jobs or cores(), shown.ended)
    for outcome in outcomes:
        if arguments.figures is not None:
            write(arguments.figures / outcome.key, outcome.files, pipeline.FINDINGS)
        if pipeline.REPORT in outcome.files:
            page = {pipeline.REPORT: outcome.files[pipeline.REPORT]}
            write(arguments.report / outcome.key, page)
    return outcomes
