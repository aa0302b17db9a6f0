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

PRESS_SHEETS = "press sheets"
"""What a whole paper brings of a half-size booklet's print-shop files."""
PREFLIGHT = "preflight.txt"
"""Of the results: what was measured in the finished PDFs."""

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
    preflight: list[proof.Preflight] = field(default_factory=list)
    """What was measured in each finished PDF, in the order of their making."""
    looked: frozenset[str] = frozenset()
    """Codes of the findings that have been looked for so far."""
    figures: dict[Note, str] = field(default_factory=dict)
    """SVG of the findings that are about a point on a motif."""

    def add(self, notes: Iterable[Note]) -> None:
        self.report = self.report.plus(notes)

    def measured(self, artwork: Artwork, edition: Edition, notes: tuple[Note, ...]) -> None:
        """Add what measuring an edition found; the files say so even when the build fails."""
        self.add(notes)
        made = (self.pattern, self.drafts, artwork, edition)
        self.preflight.append(proof.preflight(*made, notes))
        self.files[PREFLIGHT] = proof.preflight_text(self.preflight).encode()
        self.editions.append(edition)

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
    alone = {"templates": "templates", "press": PRESS_SHEETS}
    sheets = [alone[name] for name in wanted if name in alone]
    parents = dict.fromkeys(full_size(p) for p in chosen if full_size(p) not in chosen)
    for paper in parents if sheets else ():
        _print_on(work, paper, work.manual, sheets, progress)
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
    artwork, notes = draw.draw(work.pattern, work.sizes, work.drafts, work.plans, manual, paper)
    work.add(notes)
    work.stop_on_errors()
    sheets = manual.templates_only() if not paper.parent else replace(manual, sections=())
    if "booklet" in wanted:
        booklet = write.half_size(manual, paper)
        set_edition(work, paper, booklet, artwork, "booklet", progress)
        _fold_at_home(work, paper)
    if "templates" in wanted and sheets.sections:
        set_edition(work, paper, sheets, artwork, "templates", progress)
    if "full-size" in wanted and paper.key not in PAPERS:
        set_edition(work, paper, manual, artwork, "full-size", progress)
    if "press" in wanted:
        _for_the_press(work, paper, write.for_print_shop(manual), artwork, "booklet", progress)
        _as_spreads(work, paper)
    if sheets.sections and not {"press", PRESS_SHEETS}.isdisjoint(wanted):
        _for_the_press(work, paper, sheets, artwork, "templates", progress)


def set_edition(work: Work, paper: Paper, manual: Manual, artwork: Artwork, name: str,
         progress: Progress) -> None:  # fmt: skip
    """Set one edition and measure it."""
    progress("typeset", f"{name} on {paper.name}")
    edition, notes = typeset.typeset(work.pattern, manual, artwork, paper, name)
    work.add(notes)
    work.stop_on_errors()
    assert edition is not None
    progress("proof", f"measuring {edition.name}.pdf")
    made = (work.pattern, work.drafts, artwork, edition, work.plans, manual, work.sizes)
    work.measured(artwork, edition, proof.measure(*made))


def _for_the_press(work: Work, paper: Paper, manual: Manual, artwork: Artwork, name: str,
                   progress: Progress) -> None:  # fmt: skip
    """Make one edition as a print shop takes it, and measure that."""
    progress("typeset", f"{name} for a print shop on {paper.name}")
    raw, notes = typeset.typeset(work.pattern, manual, artwork, paper, name, trimmed=True)
    work.add(notes)
    work.stop_on_errors()
    assert raw is not None
    shop = replace(raw, pdf=deliver.press(work.pattern, raw))
    progress("proof", f"measuring {shop.name}.pdf")
    found = proof.measure_press(work.pattern, work.drafts, artwork, shop)
    work.measured(artwork, shop, found)


def _as_spreads(work: Work, paper: Paper) -> None:
    """Lay the print shop's booklet, just made, out on sheets to fold and staple."""
    thickness = work.pattern.publication.paper_thickness
    made = deliver.impose(work.editions[-1].pdf, deliver.SPREADS[paper.key], thickness=thickness)
    work.files |= _imposed(f"spreads-{paper.key}", made)


def _fold_at_home(work: Work, paper: Paper) -> None:
    """Lay the half-size booklet, just made, out two to a side of its whole paper, for a
    home printer that prints both sides."""
    if paper.parent:
        made = deliver.impose(
            work.editions[-1].pdf, deliver.HALVES[paper.parent], marks=False,
            thickness=work.pattern.publication.paper_thickness,
        )  # fmt: skip
        work.files |= _imposed(f"folded-{paper.parent}", made)


def _imposed(name: str, made: deliver.Imposed) -> dict[str, bytes]:
    return {f"{name}.pdf": made.pdf, f"{name}.txt": made.said.encode() + b"\n"}
