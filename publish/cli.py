"""The `foldwork` command: printing and exit codes.

In: the command line. Out: text, and exit code 0 (clean), 1 (errors found, or editions that
differ) or 2 (usage).
Invariant: the only module that prints or exits. Stages are imported when a command needs
them, so that `--help` is instant.
"""

from __future__ import annotations

import argparse
import io
import logging
import os
import sys
import time
import warnings
from collections.abc import Sequence
from pathlib import Path

from publish.arguments import parser
from publish.later import UNPRINTED, later
from publish.notes import PublishError

CLEAN, ERRORS, USAGE = 0, 1, 2
CHANGED = 1  # of `compare`: codes as of POSIX diff, 0 the same, 1 changed, 2 trouble


def main(argv: Sequence[str] | None = None) -> int:
    """Run one command and return its exit code."""
    arguments = parser().parse_args(argv)
    # What libraries say of a damaged file, a finding says with its place.
    warnings.simplefilter("ignore")
    logging.lastResort = None
    if isinstance(sys.stdout, io.TextIOWrapper):  # a character that it lacks is shown escaped
        sys.stdout.reconfigure(errors="backslashreplace")
    later(*UNPRINTED)
    try:
        result: int = RUN[arguments.run](arguments)
    except PublishError as stopped:
        from publish import console

        console.print_report(stopped.report, sys.stderr)
        return ERRORS
    except KeyboardInterrupt:
        print("stopped", file=sys.stderr)
        return 130
    except BrokenPipeError:  # the reader has seen enough
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return CLEAN
    return result


def _build(arguments: argparse.Namespace) -> int:
    from publish.model.book import PAPERS
    from publish.studio.find import find

    papers = arguments.paper.split(",") if arguments.paper else None
    unknown = [p for p in papers or () if p not in PAPERS]
    if unknown:
        return _refused(f"paper {unknown[0]!r} is not one of {', '.join(PAPERS)}")
    paths = find(arguments.patterns)
    if len(paths) > 1 or arguments.changed or arguments.cluster:
        return _build_several(paths, papers, arguments)
    return _build_one(paths[0], papers, arguments)


def _build_one(path: Path, papers: Sequence[str] | None, arguments: argparse.Namespace) -> int:
    started = time.monotonic()
    if not arguments.fresh and _up_to_date(path, papers, arguments, started):
        return CLEAN
    from publish import console, pipeline
    from publish.kept import Store, users
    from publish.work import PREFLIGHT
    from publish.workers import cores

    try:
        with console.Progress() as progress:
            work, target = pipeline.build(
                path,
                arguments.out,
                papers,
                arguments.only,
                progress.show,
                arguments.strict,
                arguments.jobs or cores(),
                Store(users(), arguments.fresh),
                arguments.size,
                arguments.language,
            )
    except pipeline.NoSizeError as wrong:
        return _refused(str(wrong))
    except PublishError as stopped:
        console.print_report(stopped.report, sys.stderr)
        print(stopped.files.get(PREFLIGHT, b"").decode(), end="")
        return ERRORS
    console.print_report(work.report, sys.stderr)
    print(work.files.get(PREFLIGHT, b"").decode(), end="")
    names = ", ".join(f"{e.name}.pdf" for e in work.editions)
    print(f"{target}: {names}, numbers.json ({time.monotonic() - started:.1f} s)")
    return CLEAN


def _up_to_date(
    path: Path, papers: Sequence[str] | None, arguments: argparse.Namespace, started: float
) -> bool:
    """Say so where a build would make what is there; only reading is loaded for it."""
    from publish.studio.glance import glance, up_to_date

    only, size, language = arguments.only, arguments.size, arguments.language
    asked = (arguments.out, tuple(papers) if papers else None, only, size, language)
    same = up_to_date(glance(path, *asked), arguments.out, arguments.strict)
    if same is None:
        return False
    report, target = same
    if report.notes or report.accepted:
        from publish import console

        console.print_report(report, sys.stderr)
    print(f"{target}: nothing has changed ({time.monotonic() - started:.1f} s)")
    return True


def _build_several(
    paths: Sequence[Path], papers: Sequence[str] | None, arguments: argparse.Namespace
) -> int:
    from publish import console, several
    from publish.studio.outcome import ClusterError

    started = time.monotonic()
    try:
        outcomes = several.build(paths, papers, arguments)
    except ClusterError as problem:
        return _refused(problem)
    console.print_outcomes(outcomes, sys.stderr)
    print(console.table(outcomes))
    print(f"{len(paths)} patterns ({time.monotonic() - started:.1f} s)")
    return ERRORS if any(o.bad(arguments.strict) for o in outcomes) else CLEAN


def _check(arguments: argparse.Namespace) -> int:
    from publish import console, pipeline
    from publish.report import as_json, visible
    from publish.studio.find import find

    paths = find(arguments.patterns)
    if len(paths) > 1:
        return _check_several(paths, arguments)
    examined = pipeline.examine(paths[0])
    report = examined.report
    try:
        if arguments.figures is not None:
            console.write(arguments.figures, examined.files, pipeline.FINDINGS)
        if arguments.report is not None:
            console.write(arguments.report, {pipeline.REPORT: examined.page().encode()})
    except OSError as problem:
        return _refused(problem)
    if arguments.json:
        print(as_json(report))
    else:
        for line in examined.meetings():
            print(visible(line))
        console.print_report(report, sys.stdout, always=True)
    return ERRORS if report.errors or (arguments.strict and report.warnings) else CLEAN


def _check_several(paths: Sequence[Path], arguments: argparse.Namespace) -> int:
    from publish import console, several
    from publish.report import all_as_json

    try:
        outcomes = several.check(paths, arguments)
    except OSError as problem:
        return _refused(problem)
    if arguments.json:
        print(all_as_json({str(o.path): o.report for o in outcomes}))
    else:
        console.print_outcomes(outcomes, sys.stdout)
        print(console.table(outcomes))
    return ERRORS if any(o.bad(arguments.strict) for o in outcomes) else CLEAN


def _refused(problem: object) -> int:
    """Say why a command cannot be carried out."""
    print(f"foldwork: {problem}", file=sys.stderr)
    return USAGE


def _compare(arguments: argparse.Namespace) -> int:
    from publish import compare, comparing, console
    from publish.report import visible_json, visible_lines

    try:
        old, new = comparing.opened(arguments.old), comparing.opened(arguments.new)
    except PublishError as stopped:
        console.print_report(stopped.report, sys.stderr)
        return USAGE
    changes = compare.compare(old, new)
    if arguments.out is not None:
        try:
            console.write(arguments.out, comparing.files(old, new, changes))
        except OSError as problem:
            return _refused(problem)
    if arguments.json:
        print(visible_json(compare.data(old, new, changes)))
    else:
        print(visible_lines("\n".join(compare.lines(old, new, changes))))
    return CHANGED if changes else CLEAN


def _new(arguments: argparse.Namespace) -> int:
    from publish.notes import shown_path
    from publish.starting import start

    if arguments.photo is not None:
        return _paperwork(arguments)
    if arguments.folds is not None or arguments.sheet is not None:
        return _refused("--folds and --sheet say how a photo's paper was cut: name it with --from")
    try:
        written = start(arguments.name)
    except OSError as problem:
        return _refused(problem)
    for path in written:
        print(shown_path(path))
    print(f"next: foldwork build {arguments.name}")
    return CLEAN


def _steps(arguments: argparse.Namespace) -> int:
    from publish import pipeline, write
    from publish.report import visible_lines

    work = pipeline.prepare(arguments.pattern)
    made = (work.pattern, work.sizes, work.drafts, work.plans)
    print(visible_lines(write.step_list(write.generated(*made, work.making))))
    for name, text in write.value_list(*made):
        print(visible_lines(f"{{{{ {name} }}}}  {text}"))
    return CLEAN


def _paperwork(arguments: argparse.Namespace) -> int:
    from publish import console, paperwork

    try:
        report, lines = paperwork.RUN[arguments.run](arguments)
    except (OSError, ValueError) as problem:
        return _refused(problem)
    console.print_report(report, sys.stderr)
    print("\n".join(lines))
    return ERRORS if report.errors else CLEAN


def _kits(arguments: argparse.Namespace) -> int:
    from publish import console, pipeline

    wanted: dict[str, int] = {}
    for item in arguments.wanted:
        size, _, count = item.partition("=")
        if not (count.isascii() and count.isdigit() and 0 < int(count) < 100_000):
            return _refused(f"write {item!r} as SIZE=COUNT, such as mini=25")
        wanted[size] = wanted.get(size, 0) + int(count)
    try:
        with console.Progress() as progress:
            work, target = pipeline.kits(arguments.pattern, wanted, arguments.out, progress.show)
    except ValueError as problem:
        return _refused(problem)
    names = ", ".join(f"{e.name}.pdf" for e in work.editions)
    print(f"{target}: {names}, kits.md, kits.json")
    return CLEAN


def _preview(arguments: argparse.Namespace) -> int:
    from publish import preview

    try:
        listener = preview.listening(arguments.port)
    except OSError as problem:
        return _refused(f"port {arguments.port}: {problem.strerror}")
    choice = preview.Choice(arguments.paper, arguments.size)
    print(f"{preview.address(listener)} (Ctrl-C stops it)", flush=True)
    with preview.Watching(preview.Shown(arguments.pattern, choice)) as watching:
        preview.serve(watching, listener)
    return CLEAN


def _reference(arguments: argparse.Namespace) -> int:
    import json

    from publish import checks, read

    arguments.out.mkdir(parents=True, exist_ok=True)
    for root in (read.PATTERN, read.STUDIO, read.BOOK):
        schema = json.dumps(read.json_schema(root), indent=2, ensure_ascii=False) + "\n"
        (arguments.out / f"{root.name}.schema.json").write_text(schema, encoding="utf-8")
    (arguments.out / "REFERENCE.md").write_text(read.reference(), encoding="utf-8")
    (arguments.out / "CHECKS.md").write_text(checks.reference(), encoding="utf-8")
    return CLEAN


RUN = {
    "book": _paperwork,
    "build": _build,
    "check": _check,
    "compare": _compare,
    "kits": _kits,
    "new": _new,
    "open": _paperwork,
    "preview": _preview,
    "reference": _reference,
    "steps": _steps,
    "trace": _paperwork,
}
