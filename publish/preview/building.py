"""One build for the page, in a process of its own, told as it goes.

In: a pattern's path, what the reader chose, the pages that are shown already. Out: messages
through a pipe: `Doing`, `Page`s with their pictures, and `Ended` as the last.
Invariant: nothing is written; whatever goes wrong is in `Ended`; the process ends with its
parent. Pages that are not shown yet are pictured first.
"""

from __future__ import annotations

import contextlib
import hashlib
import io
import os
import threading
import traceback
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from multiprocessing import parent_process
from multiprocessing.connection import Connection, wait
from pathlib import Path
from typing import Any

import pypdfium2

from publish import pipeline
from publish.kept import Store, users
from publish.model.book import PAPERS
from publish.notes import PublishError, Report
from publish.typeset import layout
from publish.work import Work, print_editions

ROUGH, FINE = 36, 120
"""Dots to the inch at which pages are told apart, and at which they are shown."""


@dataclass(frozen=True)
class Choice:
    """What the reader chose to see; empty is what the pattern says."""

    paper: str = ""
    size: str = ""
    layout: str = ""


@dataclass(frozen=True)
class Offer:
    """What can be chosen: keys with the names that the page shows."""

    papers: tuple[tuple[str, str], ...]
    sizes: tuple[tuple[str, str], ...]
    layouts: tuple[tuple[str, str], ...]


@dataclass(frozen=True)
class Doing:
    """What the build does now."""

    said: str
    offer: Offer | None = None


@dataclass(frozen=True)
class Leaf:
    """A page: what tells it from others, and its size in points."""

    key: str
    wide: float
    high: float


@dataclass(frozen=True)
class Leaves:
    """The pages of a finished build, in order; `changed` are those not shown before."""

    pages: tuple[Leaf, ...]
    changed: tuple[int, ...]


@dataclass(frozen=True)
class Picture:
    """The picture of a page, as PNG."""

    key: str
    png: bytes


@dataclass(frozen=True)
class Ended:
    """How a build ended: whether its pages stand, and what was found."""

    good: bool
    report: Report
    fault: str = ""
    """What the program itself did wrong, if it did."""


Message = Doing | Leaves | Picture | Ended
Tell = Callable[[Message], None]


def work(pipe: Connection, path: Path, choice: Choice, known: Sequence[str]) -> None:
    """Build once, in this process, and tell it through a pipe."""
    threading.Thread(target=_end_with_parent, daemon=True).start()
    with contextlib.suppress(BrokenPipeError):  # whoever listened has gone
        build(pipe.send, path, choice, known)


def _end_with_parent() -> None:
    parent = parent_process()
    if parent is not None:
        wait([parent.sentinel])
        os._exit(1)


def build(tell: Tell, path: Path, choice: Choice, known: Sequence[str]) -> None:
    """Build once, tell each step, the pages and how it ended."""
    try:
        tell(Ended(True, _built(tell, path, choice, known)))
    except PublishError as stopped:
        tell(Ended(False, stopped.report))
    except BrokenPipeError:
        raise
    except Exception as fault:  # a mistake of ours must not end the watching
        traceback.print_exc()
        said = "".join(traceback.format_exception_only(fault)).strip()
        tell(Ended(False, Report(), said))


def _built(tell: Tell, path: Path, choice: Choice, known: Sequence[str]) -> Report:
    def progress(stage: str, doing: str) -> None:
        tell(Doing(f"{stage}: {doing}"))

    made = pipeline.opened(path, progress)
    if choice.layout:
        made.pattern = replace(made.pattern, layout=choice.layout)
    tell(Doing("read: the pattern", _offer(made)))
    pipeline.proceed(made, progress)
    size = choice.size if choice.size in made.sizes else ""  # it may have been taken out since
    if size and size not in made.apart:
        pipeline.alone(made, size, progress)
    made.stop_on_errors()
    paper = choice.paper if choice.paper in PAPERS else made.pattern.papers[0]
    print_editions(made, [paper], "booklet", progress=progress, store=Store(users()), size=size)
    tell(Doing("show: pages as pictures"))
    picture(tell, made.editions[0].pdf, known)
    return made.report


def _offer(made: Work) -> Offer:
    pattern = made.pattern
    return Offer(
        tuple((key, paper.name) for key, paper in PAPERS.items()),
        tuple((key, size.title) for key, size in pattern.sizes.items()),
        tuple((name, name.capitalize()) for name in layout.known(pattern)),
    )


def picture(tell: Tell, pdf: bytes, known: Sequence[str]) -> None:
    """Tell which pages a PDF has, and show each that is not among those known."""
    with contextlib.closing(pypdfium2.PdfDocument(pdf)) as document:
        pages = tuple(_leaf(page) for page in document)
        shown = set(known)
        changed = tuple(at for at, page in enumerate(pages) if page.key not in shown)
        tell(Leaves(pages, changed if known else ()))
        for at in changed:
            if pages[at].key not in shown:
                shown.add(pages[at].key)
                tell(Picture(pages[at].key, _png(document[at])))


def _leaf(page: Any) -> Leaf:
    """Return what tells a page from others: how it looks from afar, and its words."""
    look = page.render(scale=ROUGH / 72).to_numpy()
    words = page.get_textpage().get_text_bounded()
    seen = hashlib.sha256(look.tobytes() + words.encode("utf-8", "surrogatepass"))
    return Leaf(seen.hexdigest()[:20], page.get_width(), page.get_height())


def _png(page: Any) -> bytes:
    file = io.BytesIO()
    page.render(scale=FINE / 72).to_pil().save(file, "PNG", compress_level=1)
    return file.getvalue()
