"""The commands that begin at cut paper, `trace`, `open` and `new --from`, and the book.

In: a command's arguments. Out: what was found, and the lines to print.
Invariant: files are written, nothing is printed but the progress of a book; what cannot be
done is raised: OSError, ValueError for an argument, PublishError with the findings.
"""

from __future__ import annotations

import re
from argparse import Namespace
from fractions import Fraction
from pathlib import Path

from publish import contact, from_paper, tracing
from publish.bound import making
from publish.console import Progress
from publish.kept import Store, users
from publish.notes import Report
from publish.units import parse_length
from publish.workers import cores

Done = tuple[Report, list[str]]


def trace(arguments: Namespace) -> Done:
    """Trace a photo and write its drawing and overlay; or write the page of markers."""
    if arguments.target is not None:
        path = tracing.write_target(arguments.out or Path(), arguments.target)
        return Report(), [f"{path}: print it at 100 %, cut a marker out, lay it beside the paper"]
    if arguments.photo is None:
        raise ValueError("name a photo to trace, or write --target for the page of markers")
    width = None if arguments.width is None else _length(arguments.width)
    traced = tracing.trace_photo(arguments.photo, arguments.folds, arguments.sheet, width)
    written = traced.write(arguments.out or arguments.photo.parent)
    return traced.report, [*map(str, written), *traced.lines]


def _length(text: str) -> Fraction:
    """Return a length given on the command line, in inches."""
    try:
        found = parse_length(text)
    except ValueError as fault:
        raise ValueError(f"write width {text!r} as 9 1/2in or 24cm: {fault}") from None
    if found <= 0:
        raise ValueError(f"write width {text!r} as 9 1/2in or 24cm: it is nothing")
    return found


def opened(arguments: Namespace) -> Done:
    """Write the contact sheet of designs."""
    for colour in (arguments.cloth, arguments.ground):
        if not re.fullmatch("#[0-9a-fA-F]{6}", colour):
            raise ValueError(f"write colour {colour!r} as #4f6b4a")
    shown = contact.designs(arguments.designs, arguments.folds, arguments.cloth, arguments.ground)
    arguments.out.write_text(contact.page(shown), encoding="utf-8")
    return Report(), [*(design.line for design in shown), str(arguments.out)]


def started(arguments: Namespace) -> Done:
    """Start a pattern from a photo."""
    said = arguments.folds, arguments.sheet
    paths, report = from_paper.start_from(arguments.name, arguments.photo, *said)
    return report, [*map(str, paths), f"next: foldwork build {arguments.name}"]


def bound(arguments: Namespace) -> Done:
    """Make a book; its papers are letter, a4 or both."""
    papers = arguments.paper.split(",") if arguments.paper else None
    if unknown := [p for p in papers or () if p not in ("letter", "a4")]:
        raise ValueError(f"paper {unknown[0]!r} is not one of letter, a4")
    with Progress() as progress:
        made, target = making.build(
            arguments.book,
            arguments.out,
            papers,
            arguments.jobs or cores(),
            progress.show,
            Store(users()),
        )
    names = ", ".join(f"{e.name}.pdf" for e in made.editions)
    return made.report, [made.spine, f"{target}: {names}, press-book, press-cover"]


RUN = {"trace": trace, "open": opened, "new": started, "book": bound}
