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
from publish.words.values import Count, Length, Named, Several, Value, Word, said, yes
from publish.write.context import Book
from publish.write.motifs import folded
from publish.write.steps import StepList, figure


def part_of(motif: Motif) -> str:
    """Return which template a motif is cut or traced from: `wedge` or `whole`."""
    return "wedge" if motif.symmetry == "mirror" else "whole"


def add_printing(book: Book, steps: StepList) -> None:
    """Add the steps that print a template sheet true to size."""
    small, large = book.pattern.measures.checks
    values: dict[str, Value] = {
        "sheets": Word(_sheets(book)),
        "your": yes(len(book.keys) > 1),
        "small": Length(small),
        "large": Named(book.words.measures.marked(metric_text(large))),
    }
    tip = book.text("print-sheets", "tip")
    steps.add("print", book.text("print-sheets", **values), tip=tip)
    steps.add(
        "check",
        book.text("check-sheets", **values),
        right=book.text("check-sheets", "right"),
        figure=figure("scale", None, book.text("check-sheets", "caption")),
    )


def _sheets(book: Book) -> str:
    """Return what is printed: `template` sheets, `foundation` sheets, or `both`."""
    templates = bool(book.motifs) or any(book.plans[k].templates for k in book.keys)
    paper = any(book.drafts[k].foundations for k in book.keys)
    return "both" if templates and paper else "foundation" if paper else "template"


def printed(book: Book) -> bool:
    """Return whether anything is printed at full size: motifs, pieces or foundations."""
    return bool(book.motifs) or any(_patchwork(book, k) for k in book.keys)


def _patchwork(book: Book, key: str) -> bool:
    return bool(book.plans[key].templates or book.drafts[key].foundations)


def sections(book: Book) -> tuple[Section, ...]:
    """Return the sections that hold the template sheets; none where nothing is printed."""
    if not printed(book):
        return ()
    title, lead = (book.text("chapter-templates", part) for part in ("", "lead"))
    intro: tuple[Block, ...] = (Paragraph(" ".join(map(book.text, _how_to_read(book)))),)
    if len(book.keys) == 1:
        blocks = (*intro, *_size(book, book.keys[0]))
        return (Section("templates", title, blocks, lead, new_page=True),)
    found = [Section("templates", title, intro, lead, new_page=True)]
    laid = book.with_motif(*(m.key for m in book.motifs))
    found += [
        Section(
            f"templates-{key}",
            book.text("templates-of", size=Named(book.title(key))),
            tuple(_size(book, key)),
            sizes=(key,),
            parent="templates",
        )
        for key in book.keys
        if key in laid or _patchwork(book, key)
    ]
    return tuple(found)


def _how_to_read(book: Book) -> list[str]:
    """Return the messages on what the lines on the sheets mean, and how sheets are joined."""
    found = []
    fused = [m.method == "fusible" for m in book.motifs]
    if book.motifs and not all(fused):
        found.append("template-lines")
    if any(fused):
        found.append("template-raw-edge")
    if any(book.plans[k].templates for k in book.keys):
        found.append("template-pieces")
    if any(book.drafts[k].foundations for k in book.keys):
        found.append("template-mirrored-foundations")
    return [*found, "template-sheets-joined"]


def _size(book: Book, key: str) -> list[Block]:
    blocks: list[Block] = []
    for motif in book.motifs:
        if not book.motif_count(key, motif.key):
            continue
        part = part_of(motif)
        words = book.text(
            "template-motif",
            part=Word(part),
            motif=book.motif_called(motif.key),
            size=Named(book.title(key)),
            span=Length(book.shape(key, motif.key).span),
            twice=yes(motif in folded(book)),
        )
        blocks += [Paragraph(words), TemplateSheets(motif.key, key, part)]
    return [*blocks, *_pieces(book, key), *_foundations(book, key)]


def _pieces(book: Book, key: str) -> list[Block]:
    """Return the templates of pieces, each after its letter, fabric and count; sheets that an
    earlier size has are not printed again."""
    blocks: list[Block] = []
    for template in book.plans[key].templates:
        first = next(iter(with_template(book.plans, template)))
        words = book.text(
            "template-piece",
            letter=Named(template.letter),
            size=Named(book.title(key)),
            count=Count(template.count),
            over=Count(template.mirrored),
            fabric=Named(book.fabric(template.fabric)),
            half=yes(first == key and fold_of(template)),
            again=yes(first != key),
            first=Named(book.title(first)),
        )
        blocks.append(Paragraph(words))
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
        words = book.text(
            "template-foundation",
            letter=Named(found.letter),
            block=book.block_called(found.block),
            size=Named(book.title(key)),
            copies=Count(found.count, "copy"),
        )
        blocks += [Paragraph(words), TemplateSheets(found.key, key, "foundation")]
    return [*(_again(book, key, first, those) for first, those in again.items()), *blocks]


def _again(book: Book, key: str, first: str, those: Sequence[FoundationSection]) -> Paragraph:
    """Say which foundations are those of an earlier size, and how often each is printed."""
    by_count: dict[tuple[str, int], list[Value]] = {}
    for found in those:
        by_count.setdefault((found.block, found.count), []).append(Named(found.letter))
    each = tuple(
        said(
            "copies-of-sections",
            copies=Count(count, "copy"),
            sections=Count(len(letters)),
            letters=Several(tuple(letters)),
            block=book.block_called(block),
        )
        for (block, count), letters in by_count.items()
    )
    return Paragraph(
        book.text(
            "template-foundations-again",
            size=Named(book.title(key)),
            first=Named(book.title(first)),
            each=Several(each),
        )
    )
