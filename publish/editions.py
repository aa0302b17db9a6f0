"""The PDFs of a pattern: which there are, on which papers, and what each is made from.

In: what the first five stages made. Out: measured editions, and spreads made of them.
Invariant: an edition that is in the results has been drawn, set and measured on its own
paper; sheets that must print true are never reduced, reordered or trimmed.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field, replace
from math import ceil

from publish import deliver, draw, proof, typeset, write
from publish.model.book import A0, PAPERS, Edition, Paper, full_size, roll
from publish.model.cutplan import CutPlan
from publish.model.draft import Draft
from publish.model.figure import Artwork
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.model.words import Manual
from publish.notes import Note, PublishError, Report

EDITIONS = ("booklet", "templates", "full-size", "press")
"""What `--only` may name. `press` brings the print shop's single pages and spreads."""

Progress = Callable[[str, str], None]
"""Called with a stage's name and what it is about to do."""


def silent(stage: str, doing: str) -> None:
    """Show no progress."""


@dataclass
class Work:
    """What the stages have made so far."""

    pattern: Pattern
    sizes: dict[str, Size] = field(default_factory=dict)
    drafts: dict[str, Draft] = field(default_factory=dict)
    plans: Mapping[str, CutPlan] = field(default_factory=dict)
    manual: Manual | None = None
    editions: list[Edition] = field(default_factory=list)
    files: dict[str, bytes] = field(default_factory=dict)
    """Other results, by name."""
    report: Report = field(default_factory=Report)

    def add(self, notes: Iterable[Note]) -> None:
        self.report = self.report.plus(notes)

    def stop_on_errors(self, strict: bool = False) -> None:
        """Raise PublishError when a stage found something that cannot be built."""
        if self.report.errors or (strict and self.report.warnings):
            raise PublishError(self.report, self.files)


def print_editions(
    work: Work, papers: Iterable[str], only: str | None = None, progress: Progress = silent
) -> None:
    """Run stages 6 to 8 for each paper: figures, pages, and the measured checks."""
    assert work.manual is not None
    wanted = EDITIONS if only is None else (only,)
    chosen = [PAPERS[key] for key in papers]
    for paper in chosen if wanted != ("full-size",) else ():
        _print_on(work, paper, work.manual, wanted, progress)
    # A half-size booklet has no room for template sheets: they come on the whole paper.
    parents = dict.fromkeys(full_size(p) for p in chosen if full_size(p) not in chosen)
    for paper in parents if "templates" in wanted else ():
        _print_on(work, paper, work.manual, ("templates",), progress)
    whole = work.manual.whole_templates()
    if "full-size" in wanted and whole.sections:
        for paper in (A0, roll(_roll_length(work))):
            _print_on(work, paper, whole, ("full-size",), progress)


def _roll_length(work: Work) -> float:
    """Return the length of roll that holds the largest motif below its title strip."""
    shapes = [m for d in work.drafts.values() for m in d.motifs.values()]
    tallest = max(float(m.cut_line.bounds[3] - m.cut_line.bounds[1]) for m in shapes)
    return ceil(tallest) + 4.0


def _print_on(
    work: Work, paper: Paper, manual: Manual, wanted: Iterable[str], progress: Progress
) -> None:
    """Draw once for a paper, then set and measure each edition on it."""
    progress("draw", f"figures and template sheets for {paper.name}")
    manual = write.half_size(manual, paper)
    artwork, notes = draw.draw(
        work.pattern, work.sizes, work.drafts, work.plans, manual, full_size(paper)
    )
    work.add(notes)
    work.stop_on_errors()
    sheets = manual.templates_only()
    if "booklet" in wanted:
        _set(work, paper, manual, artwork, "booklet", progress)
    if "templates" in wanted and sheets.sections:
        _set(work, paper, sheets, artwork, "templates", progress)
    if "full-size" in wanted and paper.key not in PAPERS:
        _set(work, paper, manual, artwork, "full-size", progress)
    if "press" in wanted:
        _for_the_press(work, paper, manual, artwork, progress)


def _set(work: Work, paper: Paper, manual: Manual, artwork: Artwork, name: str,
         progress: Progress) -> None:  # fmt: skip
    progress("typeset", f"{name} on {paper.name}")
    edition, notes = typeset.typeset(work.pattern, manual, artwork, paper, name)
    work.add(notes)
    work.stop_on_errors()
    assert edition is not None
    progress("proof", f"measuring {edition.name}.pdf")
    templates = {key: plan.templates for key, plan in work.plans.items()}
    work.add(proof.measure(work.pattern, work.drafts, artwork, edition, templates=templates))
    work.editions.append(edition)


def _for_the_press(
    work: Work, paper: Paper, manual: Manual, artwork: Artwork, progress: Progress
) -> None:
    """Make the print shop's pages, and the same pages as spreads to fold and staple."""
    progress("typeset", f"print-shop pages for {paper.name}")
    raw, notes = typeset.typeset(work.pattern, manual, artwork, paper, "booklet", trimmed=True)
    work.add(notes)
    work.stop_on_errors()
    assert raw is not None
    shop = replace(raw, pdf=deliver.press(work.pattern, raw))
    progress("proof", f"measuring {shop.name}.pdf")
    work.add(proof.measure_press(work.pattern, work.drafts, artwork, shop))
    work.editions.append(shop)
    pages = deliver.page_count(shop.pdf)
    kept = [n for n in range(1, pages + 1) if n not in shop.sheet_pages.values()]
    made = deliver.impose(shop.pdf, deliver.SPREADS[paper.key], kept)
    work.files[f"spreads-{paper.key}.pdf"] = made.pdf
    work.files[f"spreads-{paper.key}.txt"] = made.said.encode() + b"\n"
