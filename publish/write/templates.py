"""The full-size templates: how to print them, how sheets join, and the sheets.

In: motifs, piece templates and foundations by size. Out: a section with a child for each
size, or one section.
Invariant: every motif has the template that its method asks for at every size; a wedge
for motifs that mirror, the whole motif for those that turn. Every piece template and
every foundation of a size has its sheets, or shares those of an earlier size that is alike.
"""

from __future__ import annotations

from collections.abc import Sequence

from publish.measures import metric_text
from publish.model.alike import with_foundation, with_template
from publish.model.draft import FoundationSection
from publish.model.halves import fold_of
from publish.model.pattern import Motif
from publish.model.words import Block, Paragraph, Section, TemplateSheets
from publish.words.en.phrase import capital, counted, listed, number, plural
from publish.write.context import Book
from publish.write.motifs import folded
from publish.write.steps import StepList, figure

_HALF = (
    " It is printed as its half: fold a sheet of paper, lay the dash-dot line on the fold, "
    "trace the rest, cut both layers on the cut line and open the paper out."
)


def part_of(motif: Motif) -> str:
    """Return which template a motif is cut or traced from: `wedge` or `whole`."""
    return "wedge" if motif.symmetry == "mirror" else "whole"


def add_printing(book: Book, steps: StepList) -> None:
    """Add the steps that print a template sheet true to size."""
    small, large = book.pattern.measures.checks
    steps.add(
        "print",
        f"Print the {_sheets(book)}{book.your_size} single-sided at **100 %**, or *actual size*. "
        "Switch off *fit to page*, *shrink* and every other scaling.",
        tip="Print one sheet first and check it before you print the rest.",
    )
    steps.add(
        "check",
        "Measure the check square on every sheet with the ruler that you cut with. One square is "
        f"{book.say.short(small)} on each side, the other {metric_text(large)}.",
        right="Both squares measure true in both directions. If they do not, change the printer's "
        "settings and print again.",
        figure=figure("scale", None, "The check square, measured both ways."),
    )


def _sheets(book: Book) -> str:
    """Return what is printed: template sheets, foundation sheets, or both."""
    templates = bool(book.motifs) or any(book.plans[k].templates for k in book.keys)
    paper = any(book.drafts[k].foundations for k in book.keys)
    kinds = (("template",) if templates else ()) + (("foundation",) if paper else ())
    return f"{' and '.join(kinds)} sheets"


def printed(book: Book) -> bool:
    """Return whether anything is printed at full size: motifs, pieces or foundations."""
    return bool(book.motifs) or any(_patchwork(book, k) for k in book.keys)


def _patchwork(book: Book, key: str) -> bool:
    return bool(book.plans[key].templates or book.drafts[key].foundations)


def sections(book: Book) -> tuple[Section, ...]:
    """Return the sections that hold the template sheets; none where nothing is printed."""
    if not printed(book):
        return ()
    lead = "Full size. Print at 100 % and check the square on every sheet before you cut the paper."
    intro: list[Block] = [Paragraph(" ".join(_how_to_read(book)))]
    if len(book.keys) == 1:
        return (Section("templates", "Templates", (*intro, *_size(book, book.keys[0])), lead),)
    found = [Section("templates", "Templates", tuple(intro), lead)]
    laid = book.with_motif(*(m.key for m in book.motifs))
    found += [
        Section(
            f"templates-{key}",
            f"Templates: {book.title(key)}",
            tuple(_size(book, key)),
            sizes=(key,),
            parent="templates",
        )
        for key in book.keys
        if key in laid or _patchwork(book, key)
    ]
    return tuple(found)


def _how_to_read(book: Book) -> list[str]:
    """Say what the lines on the sheets mean, and how sheets are joined."""
    said = []
    fused = [m.method == "fusible" for m in book.motifs]
    if book.motifs and not all(fused):
        said.append("The solid line is the finished edge and the dashed line is the cut edge.")
    if any(fused):
        said.append("A motif with a raw edge has one line only, its edge.")
    if any(book.plans[k].templates for k in book.keys):
        said.append(
            "A piece template has its seam allowance: cut it out on the outer line; the inner line "
            "is the seam. Short lines across an edge are notches, and the arrow is the grain line."
        )
    if any(book.drafts[k].foundations for k in book.keys):
        said.append(
            "A foundation is printed as a mirror image of the finished block: solid lines are "
            "sewing lines, and the dashed line is the cut line. The head of a sheet says how "
            "often it is printed, if that is not once; a sheet may hold several copies."
        )
    said.append(
        "Templates of one size share sheets where they fit; each is named. Where the head of a "
        "sheet shows a small plan, its sheets are joined: cut a sheet on the line that is marked "
        "for cutting, match its numbered diamonds with its neighbour's, and tape the two together "
        "in the order of the plan."
    )
    return said


def _size(book: Book, key: str) -> list[Block]:
    blocks: list[Block] = []
    for motif in book.motifs:
        if not book.motif_count(key, motif.key):
            continue
        part = part_of(motif)
        span = book.shape(key, motif.key).span
        name = capital(f"the {part} template of the {book.motif_name(motif.key)}")
        twice = " Print it twice." if motif in folded(book) else ""
        blocks.append(
            Paragraph(
                f"{name} for the **{book.title(key)}**: the finished motif is "
                f"{book.say.measure(span)} across.{twice}"
            )
        )
        blocks.append(TemplateSheets(motif.key, key, part))
    return [*blocks, *_pieces(book, key), *_foundations(book, key)]


def _pieces(book: Book, key: str) -> list[Block]:
    """Return the templates of pieces, each after its letter, fabric and count; sheets that an
    earlier size has are not printed again."""
    blocks: list[Block] = []
    for template in book.plans[key].templates:
        over = f" and {number(template.mirrored)} turned over" if template.mirrored else ""
        first = next(iter(with_template(book.plans, template)))
        same = (
            ""
            if first == key
            else f" It is the same as that of the {book.title(first)}: use its sheets."
        )
        half = _HALF if first == key and fold_of(template) else ""
        blocks.append(
            Paragraph(
                f"Template **{template.letter}** for the **{book.title(key)}**: cut "
                f"{number(template.count)}{over} from {book.fabric(template.fabric)}.{half}{same}"
            )
        )
        if first == key:
            blocks.append(TemplateSheets(template.key, key, "piece"))
    return blocks


def _foundations(book: Book, key: str) -> list[Block]:
    """Return the foundations; of those that an earlier size has, how often to print them."""
    blocks: list[Block] = []
    again: dict[str, list[FoundationSection]] = {}
    for found in book.drafts[key].foundations:
        first = next(iter(with_foundation(book.drafts, found)))
        if first != key:
            again.setdefault(first, []).append(found)
            continue
        name = book.block_name(found.block)
        blocks.append(
            Paragraph(
                f"Foundation of section {found.letter} of the {name} for the "
                f"**{book.title(key)}**: you need {counted(found.count, 'copy', 'copies')}."
            )
        )
        blocks.append(TemplateSheets(found.key, key, "foundation"))
    return [*(_again(book, key, first, those) for first, those in again.items()), *blocks]


def _again(book: Book, key: str, first: str, those: Sequence[FoundationSection]) -> Paragraph:
    """Say which foundations are those of an earlier size, and how often each is printed."""
    by_count: dict[tuple[str, int], list[str]] = {}
    for found in those:
        by_count.setdefault((found.block, found.count), []).append(found.letter)
    each = listed(
        [
            f"{counted(count, 'copy', 'copies')} of {plural(len(letters), 'section')} "
            f"{listed(letters)} of the {book.block_name(block)}"
            for (block, count), letters in by_count.items()
        ]
    )
    return Paragraph(
        f"Foundations for the **{book.title(key)}** are the same as those of the "
        f"{book.title(first)}: you need {each}, from its sheets."
    )
