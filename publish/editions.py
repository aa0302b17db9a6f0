"""The PDFs of a pattern: which there are, on which papers, and how each is made.

In: a `Design` and its manual. Out: `Printed` values: a measured edition with what measuring
it found, and the sheets to fold that are made of it.
Invariant: an edition is a function of the design, the manual, the artwork, a paper and a
name, so that any process may make it; it has been set and measured on its own paper; sheets
that must print true are never reduced, reordered or trimmed.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from concurrent.futures import Future
from dataclasses import dataclass, field, replace
from math import ceil

from publish import deliver, draw, proof, render, typeset, write
from publish.kept import NOWHERE, Store
from publish.model.book import A0, PAPERS, ROLL_WIDTH, Edition, Paper, full_size, roll
from publish.model.design import Design
from publish.model.figure import Artwork, Picture
from publish.model.pattern import Pattern
from publish.model.words import Manual
from publish.notes import Note, Severity
from publish.workers import Workers

EDITIONS = ("booklet", "templates", "full-size", "press")
"""What `--only` may name. `press` brings the print shop's single pages and spreads."""

ROLL_HEAD, ROLL_APART = 4.0, 1.0
"""Inches of a roll for the head of the sheet, its margins and its check square, and between
motifs with their words."""

Progress = Callable[[str, str], None]
"""Called with a stage's name and what it is about to do, or has done."""


def silent(stage: str, doing: str) -> None:
    """Show no progress."""


@dataclass(frozen=True)
class Job:
    """One PDF to make: its name, its paper, and whether a print shop prints and trims it."""

    name: str
    """`booklet`, `templates`, `full-size` or `kits`."""
    paper: Paper
    press: bool = False
    size: str = ""
    """The size that it is about; all of them where it is empty."""

    @property
    def words(self) -> str:
        """Return what it is called while it is made."""
        shop = " for a print shop" if self.press else ""
        alone = f" of the {self.size}" if self.size else ""
        return f"{self.name}{alone}{shop} on {self.paper.name}"


@dataclass(frozen=True)
class Book:
    """What editions are made of: a design, and its words."""

    design: Design
    manual: Manual


@dataclass(frozen=True)
class Printed:
    """What became of a job. `edition` is None where a finding stopped it."""

    job: Job
    notes: tuple[Note, ...]
    edition: Edition | None = None
    preflight: proof.Preflight | None = None
    files: dict[str, bytes] = field(default_factory=dict)
    """What is made of the edition: spreads, and booklets to fold at home."""


@dataclass(frozen=True)
class Drawn:
    """A paper's artwork, and what drawing it found."""

    artwork: Artwork
    notes: tuple[Note, ...]

    @property
    def sound(self) -> bool:
        return not any(n.severity is Severity.ERROR for n in self.notes)


def jobs_for(
    design: Design, manual: Manual, papers: Iterable[str], only: str | None = None
) -> tuple[Job, ...]:
    """Return the PDFs to make, in the order in which they are listed.

    A half-size booklet has no room for template sheets: they come on its whole paper.
    """
    wanted = EDITIONS if only is None else (only,)
    chosen = [PAPERS[key] for key in papers]
    whole = [full_size(p) for p in chosen]
    sheets = bool(manual.templates_only().sections)
    apart = design.keys if by_size(design) else ()
    found: list[Job] = []
    for paper in dict.fromkeys([*chosen, *whole]):
        here, full = paper in chosen, not paper.parent and sheets
        if "booklet" in wanted and here:
            found.append(Job("booklet", paper))
            found += [Job("booklet", paper, size=key) for key in apart]
        if "templates" in wanted and full:
            found.append(Job("templates", paper))
        if "press" in wanted and here:
            found.append(Job("booklet", paper, press=True))
        if "press" in wanted and full:
            found.append(Job("templates", paper, press=True))
    if "full-size" in wanted and manual.whole_templates().sections:
        found += [Job("full-size", paper) for paper in (A0, roll(_roll_length(design)))]
    return tuple(found)


def by_size(design: Design) -> bool:
    """Return whether each size has a booklet of its own beside the whole one."""
    return design.pattern.booklets == "by size" and len(design.keys) > 1


def _roll_length(design: Design) -> float:
    """Return a length of roll that holds all motifs, two abreast where they are small, below
    the title strip."""
    laid = {(p.motif, k) for k, d in design.drafts.items() for p in d.placements}
    boxes = [design.drafts[key].motifs[name].cut_line.bounds for name, key in laid]
    sides = sorted(
        (float(max(right - left, bottom - top)) for left, top, right, bottom in boxes),
        reverse=True,
    )
    abreast = 2 if sides[0] <= (ROLL_WIDTH - 2.0) / 2 else 1
    return ceil(sum(side + ROLL_APART for side in sides[::abreast])) + ROLL_HEAD


def print_all(
    books: Mapping[str, Book],
    jobs: Sequence[Job],
    workers: Workers,
    progress: Progress = silent,
    store: Store = NOWHERE,
) -> tuple[Printed, ...]:
    """Make every PDF of a list, side by side where there are workers for it.

    `books` are known by the size that they are about, the whole one by an empty key. Each is
    drawn once for a paper, for all of its jobs. The results are in the order of the jobs,
    whoever was done first.
    """
    drawings: dict[tuple[str, Paper], Future[Drawn]] = {}
    for size in dict.fromkeys(job.size for job in jobs):
        mine = [job for job in jobs if job.size == size]
        shown: dict[str, Picture] = {}
        if any(job.name == "booklet" for job in mine):
            progress("draw", f"the {size or 'quilt'} as it will look")
            shown = workers.submit(pictures_for, books[size], store).result()
        for paper in dict.fromkeys(job.paper for job in mine):
            alone = f" of the {size}" if size else ""
            progress("draw", f"figures and template sheets{alone} for {paper.name}")
            drawings[size, paper] = workers.submit(draw_for, books[size], paper, shown)
    found = {}
    for job in jobs:
        drawn: Drawn = drawings[job.size, job.paper].result()
        progress("typeset", job.words)
        if drawn.sound:
            found[job] = workers.submit(print_one, books[job.size], drawn.artwork, job)
        else:
            found[job] = workers.submit(Printed, job, drawn.notes)
    made = []
    for job, future in found.items():
        printed: Printed = future.result()
        notes = (*drawings[job.size, job.paper].result().notes, *printed.notes)
        made.append(replace(printed, notes=tuple(dict.fromkeys(notes))))
    return tuple(made)


def pictures_for(book: Book, store: Store = NOWHERE) -> dict[str, Picture]:
    """Compute how the quilt will look, once for every booklet."""
    design = book.design
    first = next(iter(design.sizes))
    shown = render.Shown(book.manual.cover.figure.size or first, first)
    return render.for_booklet(design.pattern, design.sizes, design.drafts, shown, store)


def draw_for(book: Book, paper: Paper, shown: Mapping[str, Picture]) -> Drawn:
    """Draw all that is printed on one paper; on a sheet of a copy shop only the motifs."""
    design, manual = book.design, book.manual
    asked = manual if paper.key in PAPERS else manual.whole_templates()
    made = (design.pattern, design.sizes, design.drafts, design.plans, asked, paper)
    return Drawn(*draw.draw(*made, shown))


def print_one(book: Book, artwork: Artwork, job: Job) -> Printed:
    """Set one edition, measure it, and lay it out on sheets to fold where that is wanted."""
    design = book.design
    said = _manual_for(design.pattern, book.manual, job)
    pattern, paper = design.pattern, job.paper
    edition, notes = typeset.typeset(pattern, said, artwork, paper, job.name, job.press, job.size)
    if edition is None:
        return Printed(job, notes)
    if job.press:
        edition = replace(edition, pdf=deliver.press(pattern, edition))
        found, counted = proof.measured_press(pattern, design.drafts, artwork, edition)
    else:
        made = (pattern, design.drafts, artwork, edition, design.plans, said, design.sizes)
        found, counted = proof.measured(*made)
    return Printed(job, (*notes, *found), edition, counted, _to_fold(design, job, edition))


def _manual_for(pattern: Pattern, manual: Manual, job: Job) -> Manual:
    """Return what of the manual one edition holds."""
    if job.name == "templates":
        return manual.templates_only()
    if job.name == "full-size":
        return manual.whole_templates()
    if job.name == "booklet":
        if job.press:
            return write.for_print_shop(manual, pattern.words)
        return write.half_size(manual, job.paper, pattern.words)
    return manual


def _to_fold(design: Design, job: Job, edition: Edition) -> dict[str, bytes]:
    """Return a booklet as sheets to fold: a print shop's to staple, and a half-size one two
    to a side of its whole paper, for a home printer that prints both sides."""
    paper, thickness = job.paper, design.pattern.publication.paper_thickness
    if job.name != "booklet" or not (job.press or paper.parent):
        return {}
    alone = f"-{job.size}" if job.size else ""
    told = f"-{design.pattern.language}" if len(design.pattern.languages) > 1 else ""
    if job.press:
        name, spread = f"spreads-{paper.key}{told}", deliver.SPREADS[paper.key]
        made = deliver.impose(edition.pdf, spread, thickness=thickness)
    else:
        name, spread = f"folded{alone}-{paper.parent}{told}", deliver.HALVES[paper.parent]
        made = deliver.impose(edition.pdf, spread, marks=False, thickness=thickness)
    return {f"{name}.pdf": made.pdf, f"{name}.txt": made.said.encode() + b"\n"}
