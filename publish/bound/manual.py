"""The manual of a book: its patterns' manuals in one, in reading order.

In: a volume, and each pattern with its manual. Out: `Manual`.
Invariant: a pattern's sections keep their order; template sheets stand together at the back;
what is told once is told before the patterns that need it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from publish.bound import once, renamed
from publish.bound.techniques import techniques
from publish.measures import INCHES
from publish.model.pattern import Pattern
from publish.model.volume import Part, Volume
from publish.model.words import (
    BackCover,
    Block,
    Box,
    Cover,
    FigureBlock,
    FigureSpec,
    Manual,
    Paragraph,
    Section,
    Steps,
    TemplateSheets,
)
from publish.words import Language, language
from publish.words.values import Named
from publish.write.order import numbered

OPENING, TEMPLATES, EDITION = "what-you-will-make", "templates", "edition"
BARCODE = "book--barcode"
"""Key of the book's own figure."""


@dataclass(frozen=True)
class Chapter:
    """One pattern of the book."""

    pattern: Pattern
    manual: Manual

    @property
    def sections(self) -> dict[str, Section]:
        return {s.key: s for s in self.manual.sections}


def manual(volume: Volume, chapters: Sequence[Chapter], pages: Sequence[str] = ()) -> Manual:
    """Return the book in words; `pages` are those of an earlier setting, for the index."""
    named = [(c.pattern.title, c.sections) for c in chapters]
    speak = _language(chapters)
    own = [tuple(_own(c, named, speak)) for c in chapters]
    alike = techniques(own, speak)
    front = [
        *_foreword(volume, speak),
        once.tools(named, speak),
        once.cautions(named),
        once.before(named),
        *_first_named(chapters, own, alike.sections()),
    ]
    inside = [alike.referring(sections) for sections in own]
    parted = _parts(volume, chapters, inside)
    back = [*_templates(chapters, speak), _edition(volume, chapters, speak)]
    body = numbered((*front, *parted, *back[:-1]))
    words = (*body, back[-1])
    last = (once.glossary(words, speak), once.index(pages, words, speak), back[-1])
    return Manual(
        _cover(volume, chapters), (*body, *last), _back(volume, chapters), _foot(volume.looks)
    )


def _language(chapters: Sequence[Chapter]) -> Language:
    """Return the language of the book, which tells lengths as all patterns do; both ways where
    they differ."""
    told = {c.pattern.measures for c in chapters}
    code = chapters[0].pattern.words.code
    return language(code, told.pop() if len(told) == 1 else INCHES)


def _own(chapter: Chapter, named: once.Manuals, speak: Language) -> list[Section]:
    """Return what stays of a pattern's sections, under their own keys."""
    kept = []
    for section in chapter.manual.sections:
        if section.key in once.MADE_ONCE or TEMPLATES in (section.key, section.parent):
            continue
        kept.append(
            once.rest_of_before(section, named, speak) if section.key == once.BEFORE else section
        )
    return kept


def _first_named(
    chapters: Sequence[Chapter], own: Sequence[Sequence[Section]], told: Sequence[Section]
) -> list[Section]:
    """Return techniques with the figures of the first pattern that tells each step."""
    owners: dict[FigureSpec, Pattern] = {}
    for chapter, sections in zip(chapters, own, strict=True):
        for section in sections:
            for spec in Manual(chapter.manual.cover, (section,), chapter.manual.back, "").figures():
                owners.setdefault(spec, chapter.pattern)
    return [replace(s, blocks=tuple(_owned(b, owners) for b in s.blocks)) for s in told]


def _owned(block: Block, owners: dict[FigureSpec, Pattern]) -> Block:
    if not isinstance(block, Steps):
        return block
    return Steps(
        tuple(
            step
            if step.figure is None
            else replace(step, figure=renamed.words(owners[step.figure], step.figure))
            for step in block.items
        )
    )


def _foreword(volume: Volume, words: Language) -> list[Section]:
    said = [p.strip() for p in volume.foreword.split("\n\n") if p.strip()]
    title = words.text("book-foreword")
    return [Section("foreword", title, tuple(map(Paragraph, said)))] if said else []


def _parts(
    volume: Volume, chapters: Sequence[Chapter], inside: Sequence[Sequence[Section]]
) -> list[Section]:
    """Return every part with its patterns, each a section that holds its own."""
    found: list[Section] = []
    left = list(zip(chapters, inside, strict=True))
    for number, part in enumerate(volume.parts, 1):
        if part.title:
            found.append(_part(part, number, [c for c, _ in left[: len(part.patterns)]]))
        for chapter, sections in left[: len(part.patterns)]:
            found += _chapter(chapter, sections)
        left = left[len(part.patterns) :]
    return found


def _part(part: Part, number: int, chapters: Sequence[Chapter]) -> Section:
    names = ", ".join(c.pattern.title for c in chapters)
    return Section(f"part-{number}", part.title, (Paragraph(names),), part.lead, new_page=True)


def _chapter(chapter: Chapter, sections: Sequence[Section]) -> list[Section]:
    pattern = chapter.pattern
    opening = next(s for s in sections if s.key == OPENING)
    shown = FigureBlock(chapter.manual.cover.figure)
    blurb = [Paragraph(p.strip()) for p in pattern.publication.blurb.split("\n\n") if p.strip()]
    first = Section(pattern.key, pattern.title, (*blurb, shown), pattern.subtitle, new_page=True)
    inner = [replace(s, parent=pattern.key) for s in sections]
    head = renamed.words(pattern, replace(first, key=""))
    found = [replace(head, key=pattern.key)]
    for section in inner:
        named = renamed.words(pattern, section)
        if section.key == opening.key:
            named = replace(named, title=f"{opening.title}: {pattern.title}")
        found.append(replace(named, parent=pattern.key))
    return found


def _templates(chapters: Sequence[Chapter], words: Language) -> list[Section]:
    """Return the templates of every pattern, at the back."""
    inner = []
    for chapter in chapters:
        for section in chapter.manual.sections:
            if section.parent == TEMPLATES or (
                section.key == TEMPLATES
                and any(isinstance(b, TemplateSheets) for b in section.blocks)
            ):
                named = renamed.words(chapter.pattern, section)
                sizes = (chapter.pattern.sizes[key].title for key in section.sizes)
                title = ", ".join((chapter.pattern.title, *sizes))
                inner.append(replace(named, parent=TEMPLATES, title=title))
    if not inner:
        return []
    note = Box("note", words.text("book-sheets"), (words.text("book-sheets", part="text"),))
    return [Section(TEMPLATES, words.text("chapter-templates"), (note,), new_page=True), *inner]


def _edition(volume: Volume, chapters: Sequence[Chapter], words: Language) -> Section:
    """Return the last section: the book's imprint, and what all of its patterns say."""
    out = volume.looks.publication
    imprint = ", ".join(t for t in (out.edition, str(out.year or "")) if t)
    number = f"ISBN {out.barcode.rpartition(' ')[2]}" if out.barcode else ""
    patterns = "; ".join(
        ", ".join(
            t for t in (c.pattern.title, c.manual.back.stock_number, c.manual.back.edition) if t
        )
        for c in chapters
    )
    said = [
        f"**{volume.looks.title}**" + (f", {out.studio}." if out.studio else "."),
        *(f"{t}." for t in (imprint, number) if t),
        words.text("book-patterns", {"patterns": Named(patterns)}),
        *_alike(chapters),
    ]
    own = [t for t in (out.licence,) if t and t not in said]
    title = words.text("chapter-edition")
    return Section(EDITION, title, tuple(map(Paragraph, dict.fromkeys([*said, *own]))))


def _alike(chapters: Sequence[Chapter]) -> list[str]:
    """Return the paragraphs that every pattern's edition has."""
    texts = [
        [b.text for b in c.sections[EDITION].blocks if isinstance(b, Paragraph)] for c in chapters
    ]
    return [t for t in texts[0] if all(t in other for other in texts[1:])]


def _cover(volume: Volume, chapters: Sequence[Chapter]) -> Cover:
    first = chapters[0]
    figure = renamed.words(first.pattern, first.manual.cover.figure)
    names = tuple((c.pattern.title, "") for c in chapters)
    looks = volume.looks
    return Cover(looks.title, looks.subtitle, looks.publication.studio, "", names, figure)


def _back(volume: Volume, chapters: Sequence[Chapter]) -> BackCover:
    looks, last = volume.looks, chapters[-1]
    out = looks.publication
    code = (
        FigureSpec(BARCODE, "barcode", values=(("digits", out.barcode),)) if out.barcode else None
    )
    named = ", ".join(t for t in (out.edition, str(out.year or "")) if t)
    lines = [
        f"**{c.pattern.title}**: {c.pattern.subtitle}"
        if c.pattern.subtitle
        else f"**{c.pattern.title}**"
        for c in chapters
    ]
    return BackCover(
        "\n\n".join(t for t in (out.blurb, *lines) if t),
        (),
        "",
        named,
        out.licence,
        out.contact,
        renamed.words(last.pattern, last.manual.back.figure),
        barcode=code,
    )


def _foot(looks: Pattern) -> str:
    studio = looks.publication.studio
    return f"{looks.title} · {studio}" if studio else looks.title
