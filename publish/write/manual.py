"""The order of the booklet, its covers, and what the designer should know.

In: pattern, sizes, drafts, plans, making. Out: `Manual` and notes.
Invariant: sections come in working order; a section that a pattern does not need is not
there; the glossary is made from the text of everything else.
"""

from __future__ import annotations

from collections.abc import Mapping

from publish.model.cutplan import CutPlan
from publish.model.draft import Draft
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.model.words import BackCover, Cover, Manual, Section
from publish.notes import Note
from publish.operations.rehearsal import Making
from publish.write import (
    before,
    care,
    cautions,
    colour,
    cutting,
    foundation,
    glossary,
    looking_up,
    materials,
    motifs,
    overview,
    piecing,
    pressing_plan,
    quilting,
    tell,
    templates,
    told,
    tools,
    voice,
)
from publish.write.checks import notes_on
from publish.write.collect import text
from publish.write.context import Book
from publish.write.steps import figure


def write(
    pattern: Pattern,
    sizes: Mapping[str, Size],
    drafts: Mapping[str, Draft],
    plans: Mapping[str, CutPlan],
    making: Making,
) -> tuple[Manual, tuple[Note, ...]]:
    """Return the booklet in words, and notes on what it could not say.

    Sizes without a draft or a plan are left out; the stage that could not make them has
    said why.
    """
    book = Book(pattern, sizes, drafts, plans, making)
    sections = _sections(book) if book.keys else ()
    sections, found = voice.voiced(book, sections)
    manual = Manual(_cover(book), sections, _back(book), _foot(pattern))
    return manual, (*notes_on(book), *found)


def generated(
    pattern: Pattern,
    sizes: Mapping[str, Size],
    drafts: Mapping[str, Draft],
    plans: Mapping[str, CutPlan],
    making: Making,
) -> tuple[Section, ...]:
    """Return the sections as they are before the designer's changes to their steps."""
    book = Book(pattern, sizes, drafts, plans, making)
    return _sections(book) if book.keys else ()


def _sections(book: Book) -> tuple[Section, ...]:
    """Return every section in reading order."""
    front = (overview.section(book), materials.section(book), tools.section(book))
    body = (
        cautions.section(book),
        colour.section(book),
        *cutting.sections(book),
        *piecing.sections(book),
        *foundation.sections(book),
        *pressing_plan.sections(book),
        *motifs.sections(book),
        *tell.chapter(book, "assembling", told.assembling(book)),
        *tell.chapter(book, "borders", told.borders(book)),
        *tell.chapter(book, "quilting", quilting.asked(book)),
        *tell.chapter(book, "binding"),
        *tell.chapter(book, "sleeve"),
        *tell.chapter(book, "pillow"),
        *tell.chapter(book, "label-and-care", care.asked(book)),
        *templates.sections(book),
        care.colouring(book),
        looking_up.section(book),
    )
    there = tuple(s for s in body if s is not None)
    last = care.edition(book)
    found = (*front, *there, last)
    start = before.section(book)
    said = text((*found, start)) + "\n" + voice.said(book, found)
    words = glossary.section(said, book.words)
    return (*front, start, *there, words, last)


def _sizes(book: Book) -> tuple[tuple[str, str], ...]:
    return tuple(
        (book.title(k), book.say.rectangle(book.sizes[k].width, book.sizes[k].height))
        for k in book.keys
    )


def _cover(book: Book) -> Cover:
    out = book.pattern.publication
    spec = figure("quilt", book.largest, "", "cover")
    return Cover(
        book.pattern.title, book.pattern.subtitle, out.studio, out.skill, _sizes(book), spec
    )


def _back(book: Book) -> BackCover:
    out = book.pattern.publication
    named = ", ".join(t for t in (out.edition, str(out.year or "")) if t)
    return BackCover(
        out.blurb,
        _sizes(book),
        out.stock_number,
        named,
        out.licence,
        out.contact,
        figure("sizes", None, "", labels="no"),
        materials.short_list(book),
        figure("barcode", None, "", digits=out.barcode) if out.barcode else None,
    )


def _foot(pattern: Pattern) -> str:
    """Return the line at the foot of each page: `Samphire · Hollow Fen Studio`."""
    studio = pattern.publication.studio
    return f"{pattern.title} · {studio}" if studio else pattern.title
