"""What may be written after `foldwork`: commands, their arguments and options.

In: nothing. Out: the parser.
Invariant: nothing of the package is imported, so that `--help` is instant.
"""

from __future__ import annotations

import argparse
from pathlib import Path

FOLDS = (4, 6, 8, 12, 16)
"""As `model.trade` has them."""
LANGUAGES = ("en", "en-GB", "de", "fr")
"""As `words` has them."""


def parser() -> argparse.ArgumentParser:
    """Return the parser of the command line; `run` names the command that was given."""
    foldwork = argparse.ArgumentParser(
        prog="foldwork",
        description="One YAML file per pattern in; every deliverable of a quilt pattern out.",
    )
    commands = foldwork.add_subparsers(required=True, metavar="COMMAND")

    _add_build(commands)
    _add_check(commands)

    _add_new(commands)

    steps = commands.add_parser("steps", help="list the keys of the steps, and the values")
    _takes_pattern(steps)
    steps.set_defaults(run="steps")

    _add_trace(commands)
    _add_open(commands)
    _add_kits(commands)
    _add_book(commands)
    _add_compare(commands)

    _add_preview(commands)

    reference = commands.add_parser("reference", help="write the reference of keys and checks")
    reference.add_argument("--out", type=Path, default=Path("projects"), metavar="DIR")
    reference.set_defaults(run="reference")
    return foldwork


def _count(text: str) -> int:
    """Return a number of at least one, for argparse, which says so otherwise."""
    if not text.isdigit() or not int(text):
        raise argparse.ArgumentTypeError(f"expected a number from 1 up, received {text!r}")
    return int(text)


def _takes_pattern(command: argparse.ArgumentParser) -> None:
    command.add_argument("pattern", type=Path, help="a folder holding pattern.yaml, or that file")


def _takes_patterns(command: argparse.ArgumentParser) -> None:
    command.add_argument(
        "patterns",
        nargs="+",
        type=Path,
        metavar="PATTERN",
        help="a folder holding pattern.yaml, that file, or a folder of such folders",
    )


def _add_build(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    build = commands.add_parser("build", help="make every deliverable of patterns")
    _takes_patterns(build)
    build.add_argument(
        "--out", type=Path, default=Path("build"), metavar="DIR", help="folder for results (build)"
    )
    build.add_argument("--paper", help="papers, such as letter,a4 (the pattern's own)")
    build.add_argument(
        "--only", choices=("booklet", "templates", "full-size", "press"), help="one edition"
    )
    build.add_argument("--size", default="", metavar="KEY", help="the booklet of one size alone")
    build.add_argument(
        "--language", default="", choices=LANGUAGES, help="one language (each of the pattern's)"
    )
    build.add_argument("--strict", action="store_true", help="let a warning stop the build")
    build.add_argument(
        "--changed", action="store_true", help="pass over patterns whose results are up to date"
    )
    build.add_argument(
        "--jobs",
        type=_count,
        metavar="N",
        help="patterns, or PDFs of one, made side by side (as many as there are processors)",
    )
    build.add_argument(
        "--fresh", action="store_true", help="make anew also what earlier builds have kept"
    )
    build.add_argument(
        "--cluster",
        default="",
        metavar="ADDRESS",
        help="build on the workers of a Dask scheduler, such as tcp://10.0.0.5:8786",
    )
    build.set_defaults(run="build")


def _add_check(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    check = commands.add_parser("check", help="print every finding and build nothing")
    _takes_patterns(check)
    check.add_argument("--jobs", type=_count, metavar="N", help="patterns checked side by side")
    check.add_argument("--json", action="store_true", help="print the findings as JSON")
    check.add_argument("--strict", action="store_true", help="count warnings as errors")
    check.add_argument("--figures", type=Path, metavar="DIR", help="draw findings, as SVG files")
    check.add_argument("--report", type=Path, metavar="DIR", help="write them as a page")
    check.set_defaults(run="check")


def _add_new(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    new = commands.add_parser("new", help="start a small complete pattern")
    new.add_argument("name", type=Path, help="the folder to make")
    new.add_argument(
        "--from", type=Path, dest="photo", metavar="PHOTO", help="a photo or scan of the cut paper"
    )
    _add_folds(new, "with --from: the wedges it was folded into (counted)")
    _add_sheet(new, "with --from: a sheet of this paper lies beside the cut")
    new.set_defaults(run="new")


def _add_trace(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    trace = commands.add_parser("trace", help="turn a photo or scan of the cut paper into a motif")
    trace.add_argument("photo", type=Path, nargs="?", help="a JPEG, PNG, TIFF or HEIC picture")
    _add_folds(trace, "wedges it was folded into (counted)")
    trace.add_argument("--out", type=Path, metavar="DIR", help="folder for results (the photo's)")
    _add_sheet(trace, "a sheet of this paper lies beside the cut, for the true size")
    trace.add_argument(
        "--width", metavar="LENGTH", help="the opened cut is as wide by a ruler: 9 1/2in, 24cm"
    )
    trace.add_argument(
        "--target",
        nargs="?",
        const="letter",
        choices=("letter", "a4"),
        metavar="PAPER",
        help="write a page of markers to print (letter, a4), for the true size",
    )
    trace.set_defaults(run="trace")


def _add_folds(command: argparse.ArgumentParser, what: str) -> None:
    command.add_argument("--folds", type=int, choices=FOLDS, help=what)


def _add_sheet(command: argparse.ArgumentParser, what: str) -> None:
    papers = ("letter", "a4", "half-letter", "a5")
    command.add_argument("--sheet", choices=papers, help=what)


def _add_open(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    opened = commands.add_parser("open", help="show many designs opened, side by side")
    opened.add_argument(
        "designs", nargs="+", type=Path, metavar="FILE", help="drawings, photos, folders of them"
    )
    _add_folds(opened, "of drawings (8); photos are counted")
    opened.add_argument("--cloth", default="#4f6b4a", metavar="COLOUR", help="of the motif")
    opened.add_argument("--ground", default="#f4efe6", metavar="COLOUR", help="of the ground")
    opened.add_argument("--out", type=Path, default=Path("contact.html"), metavar="FILE")
    opened.set_defaults(run="open")


def _add_kits(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    kits = commands.add_parser("kits", help="the sheet by which a fabric shop cuts kits")
    _takes_pattern(kits)
    kits.add_argument("wanted", nargs="+", metavar="SIZE=COUNT", help="such as mini=25")
    kits.add_argument("--out", type=Path, metavar="DIR", help="folder for results (build)")
    kits.set_defaults(run="kits")


def _add_book(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    book = commands.add_parser("book", help="bind several patterns into one book")
    book.add_argument("book", type=Path, help="a folder holding book.yaml, or that file")
    book.add_argument("--out", type=Path, default=Path("build"), metavar="DIR")
    book.add_argument("--paper", help="papers: letter, a4 or both (the book's own)")
    book.add_argument("--jobs", type=_count, metavar="N", help="patterns drawn side by side")
    book.set_defaults(run="book")


def _add_compare(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    compare = commands.add_parser("compare", help="what changed for a maker between editions")
    for name, which in (("old", "older"), ("new", "newer")):
        compare.add_argument(
            name, type=Path, metavar=name.upper(), help=f"the {which} edition: a build or a pattern"
        )
    compare.add_argument("--out", type=Path, metavar="DIR", help="write an errata page to post")
    compare.add_argument("--json", action="store_true", help="print the changes as JSON")
    compare.set_defaults(run="compare")


def _add_preview(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    preview = commands.add_parser("preview", help="a local page that rebuilds after each save")
    _takes_pattern(preview)
    preview.add_argument("--port", type=int, default=0, help="port on this machine (a free one)")
    papers = ("letter", "a4", "half-letter", "a5")
    preview.add_argument("--paper", default="", choices=papers, help="the pattern's own at first")
    preview.add_argument("--size", default="", metavar="KEY", help="one size at first, not all")
    preview.set_defaults(run="preview")
