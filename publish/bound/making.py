"""A book made: its patterns prepared and drawn, one manual set, the files of it.

In: the path of a book. Out: `Bound`, and a folder of results.
Invariant: a book is made only of patterns without errors; nothing is written before
everything is made.
"""

from __future__ import annotations

import io
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

import pypdfium2

from publish import deliver, draw, pipeline, proof, read, typeset
from publish.bound import once, renamed
from publish.bound.manual import BARCODE, Chapter, manual
from publish.bound.wrap import cover_wrap, inside
from publish.editions import Book, draw_for, pictures_for
from publish.kept import NOWHERE, Store
from publish.model.book import PAPERS, Edition, Paper
from publish.model.figure import Artwork
from publish.model.pattern import Pattern
from publish.model.volume import Volume
from publish.model.words import Manual
from publish.notes import Note, PublishError, Report
from publish.work import Work
from publish.workers import Workers

Show = Callable[[str, str], None]


@dataclass
class Bound:
    """What a run has made of a book so far."""

    volume: Volume
    report: Report
    editions: tuple[Edition, ...] = ()
    spine: str = ""
    """What the cover wrap says of its spine."""

    def add(self, notes: Sequence[Note]) -> None:
        """Keep what was found, and stop where it is an error. Raises PublishError."""
        self.report = self.report.plus(notes)
        if self.report.errors:
            raise PublishError(self.report)


def build(
    path: Path,
    out: Path,
    papers: Sequence[str] | None,
    jobs: int,
    show: Show,
    store: Store = NOWHERE,
) -> tuple[Bound, Path]:
    """Make a book and put it into its folder. Raises PublishError as a pattern's build does."""
    show("read", str(path))
    volume, notes, sources = read.load_book(path)
    report = Report().plus(notes, sources)
    if volume is None:
        raise PublishError(report)
    bound = Bound(volume, report)
    works = [_prepared(bound, p, show) for p in volume.patterns]
    chapters = [Chapter(w.pattern, _manual(w)) for w in works]
    files: dict[str, bytes] = {}
    with Workers(jobs) as workers:
        books = [Book(w.design, _manual(w)) for w in works]
        shown = [workers.submit(pictures_for, book, store) for book in books]
        for key in papers or volume.looks.papers:
            show("draw", f"every pattern for {PAPERS[key].name}")
            drawn = [
                workers.submit(draw_for, book, PAPERS[key], s.result())
                for book, s in zip(books, shown, strict=True)
            ]
            for each in drawn:
                bound.add(each.result().notes)
            artwork = _together(volume, chapters, [d.result().artwork for d in drawn])
            show("typeset", f"book on {PAPERS[key].name}")
            files |= _printed(bound, chapters, artwork, PAPERS[key])
    target = out / f"{volume.looks.key}-book"
    show("deliver", str(target))
    deliver.deliver(target, files)
    return bound, target


def _prepared(bound: Bound, path: Path, show: Show) -> Work:
    work = pipeline.prepare(path, show, bound.volume.looks.language)
    bound.report = replace(bound.report, accepts=(*bound.report.accepts, *work.report.accepts))
    bound.report = bound.report.plus(work.report, work.report.sources)
    bound.add(())
    return work


def _manual(work: Work) -> Manual:
    assert work.manual is not None
    return work.manual


def _together(volume: Volume, chapters: Sequence[Chapter], drawn: Sequence[Artwork]) -> Artwork:
    """Return the drawings of every pattern under the book's names, and the book's own."""
    parts = [renamed.artwork(c.pattern, a) for c, a in zip(chapters, drawn, strict=True)]
    figures = {k: f for part in parts for k, f in part.figures.items()}
    if volume.looks.publication.barcode:
        bars = draw.barcode_figure(volume.looks.publication.barcode)
        figures[BARCODE] = replace(bars, key=BARCODE)
    sheets = {k: s for part in parts for k, s in part.sheets.items()}
    pictures = {k: p for part in parts for k, p in part.pictures.items()}
    return Artwork(figures, sheets, pictures)


def _printed(
    bound: Bound, chapters: Sequence[Chapter], artwork: Artwork, paper: Paper
) -> dict[str, bytes]:
    """Return the book on one paper, and its cover wrap."""
    fabrics = {k: f for c in chapters for k, f in renamed.fabrics(c.pattern).items()}
    looks = replace(bound.volume.looks, fabrics=fabrics)
    said = manual(bound.volume, chapters)
    first = _set(bound, looks, said, artwork, paper)
    words = _words(first, said)
    said = manual(bound.volume, chapters, words)
    edition = replace(_set(bound, looks, said, artwork, paper), name=f"book-{paper.key}")
    bound.editions = (*bound.editions, edition)
    # The outlines were measured in each pattern's own booklet; here there is no single draft.
    bound.add(proof.measured(looks, {}, artwork, edition)[0])
    return {f"{edition.name}.pdf": edition.pdf, **_for_press(bound, looks, said, artwork, paper)}


def _for_press(
    bound: Bound, looks: Pattern, said: Manual, artwork: Artwork, paper: Paper
) -> dict[str, bytes]:
    """Return what a print shop binds: the pages inside, and the cover in one piece."""
    trimmed, notes = typeset.typeset(looks, said, artwork, paper, trimmed=True)
    bound.add(notes)
    assert trimmed is not None
    whole = replace(trimmed, pdf=deliver.press(looks, trimmed))
    bound.add(proof.measured_press(looks, {}, artwork, whole)[0])
    wrap, bound.spine = cover_wrap(looks, trimmed, paper)
    return {
        f"press-book-{paper.key}.pdf": inside(whole),
        f"press-cover-{paper.key}.pdf": deliver.press(looks, replace(trimmed, pdf=wrap)),
    }


def _set(bound: Bound, looks: Pattern, said: Manual, artwork: Artwork, paper: Paper) -> Edition:
    edition, notes = typeset.typeset(looks, said, artwork, paper)
    bound.add(notes)
    assert edition is not None
    return edition


def _words(edition: Edition, said: Manual) -> list[str]:
    """Return the words of each page that the index counts: from the first section on, up to
    the glossary."""
    document = pypdfium2.PdfDocument(io.BytesIO(edition.pdf))
    try:
        titles = {s.title: s.key for s in said.sections}
        starts: dict[str, int] = {}
        for mark in document.get_toc():
            target = mark.get_dest()
            if target is not None and mark.get_title() in titles:
                starts.setdefault(titles[mark.get_title()], target.get_index())
        first, last = starts[said.sections[0].key], starts[once.GLOSSARY]
        return [
            " ".join(page.get_textpage().get_text_range().split()) if first <= n < last else ""
            for n, page in enumerate(document)
        ]
    finally:
        document.close()
