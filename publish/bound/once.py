"""What a book says once for all of its patterns: tools, cautions, first words, terms.

In: the sections of several patterns, by key. Out: one section in place of theirs.
Invariant: whatever a pattern's own section lists is in the book's, or stays with the
pattern; nothing is listed twice.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

from publish.model.words import Block, Box, Bullets, Paragraph, Row, Section, Table
from publish.words import Language
from publish.words.values import Named
from publish.write.collect import text
from publish.write.glossary import section as glossary_of
from publish.write.terms import terms

Manuals = Sequence[tuple[str, Mapping[str, Section]]]
"""Each pattern's title, and its sections by their own keys."""

TOOLS, CAUTIONS, BEFORE, GLOSSARY, INDEX = (
    "tools",
    "cautions",
    "before-you-start",
    "glossary",
    "index",
)
MADE_ONCE = (TOOLS, CAUTIONS, GLOSSARY, "edition")
"""Keys of the sections that a pattern in a book has no longer."""


def tools(manuals: Manuals, words: Language) -> Section:
    """Return one list of tools, under the headings of the patterns' lists.

    A tool that not every pattern asks for says which ones do.
    """
    lists: dict[str, dict[str, list[str]]] = {}
    for title, sections in manuals:
        heading = ""
        for block in sections[TOOLS].blocks:
            if isinstance(block, Paragraph):
                heading = block.text
            elif isinstance(block, Bullets):
                for item in block.items:
                    lists.setdefault(heading, {}).setdefault(item, []).append(title)
    blocks: list[Block] = []
    for heading, items in lists.items():
        said = (_for(item, titles, len(manuals)) for item, titles in items.items())
        blocks += [Paragraph(heading), Bullets(tuple(said), check=True)]
    lead = words.text("book-tools-lead")
    return Section(
        TOOLS, words.text("chapter-tools"), tuple(b for b in blocks if b != Paragraph("")), lead
    )


def _for(item: str, titles: Sequence[str], every: int) -> str:
    return item if len(titles) == every else f"{item} (*{', '.join(titles)}*)"


def cautions(manuals: Manuals) -> Section:
    """Return every caution of the patterns, each once."""
    first = manuals[0][1][CAUTIONS]
    blocks = dict.fromkeys(b for _, sections in manuals for b in sections[CAUTIONS].blocks)
    # What the last box says of all the others stays last.
    last = first.blocks[-1]
    return replace(first, blocks=(*(b for b in blocks if b != last), last))


def before(manuals: Manuals) -> Section:
    """Return what several patterns say before they begin, and every sign that they use."""
    boxes = _shared_boxes(manuals)
    blocks: list[Block] = list(boxes)
    if rows := list(dict.fromkeys(_signs(manuals))):
        table = next(b for _, s in manuals for b in s[BEFORE].blocks if isinstance(b, Table))
        blocks.append(replace(table, rows=tuple(sorted(rows, key=lambda r: r.cells[0].lower()))))
    return Section(BEFORE, manuals[0][1][BEFORE].title, tuple(blocks))


def _shared_boxes(manuals: Manuals) -> list[Box]:
    counts = Counter(b for _, s in manuals for b in s[BEFORE].blocks if isinstance(b, Box))
    return [box for box, count in counts.items() if count > 1]


def _signs(manuals: Manuals) -> Iterator[Row]:
    for _, sections in manuals:
        for block in sections[BEFORE].blocks:
            if isinstance(block, Table):
                yield from block.rows


def rest_of_before(section: Section, manuals: Manuals, words: Language) -> Section:
    """Return what a pattern's own first words still say beside the book's."""
    shared = _shared_boxes(manuals)
    own = [b for b in section.blocks if b not in shared and not isinstance(b, Table)]
    values = {"title": Named(section.title), "page": Named(f"[](#{BEFORE})")}
    read = Paragraph(words.text("book-read-as-well", values))
    return replace(section, blocks=(read, *_headed(own)))


def _headed(blocks: Sequence[Block]) -> list[Block]:
    """Return blocks without headings that have lost what stood below them."""
    following = [*blocks, Paragraph("")][1:]
    return [
        b
        for b, after in zip(blocks, following, strict=True)
        if not (_is_heading(b) and isinstance(after, Paragraph))
    ]


def _is_heading(block: Block) -> bool:
    return isinstance(block, Paragraph) and block.text.startswith("**") and "**" in block.text[2:]


def glossary(sections: Sequence[Section], words: Language) -> Section:
    """Return the terms and lengths of the whole book."""
    found = glossary_of(text(sections), words)
    return replace(found, lead=words.text("book-glossary-lead"))


def index(pages: Sequence[str], sections: Sequence[Section], words: Language) -> Section:
    """Return the terms of a book with the pages that they stand on.

    `pages` are the words of each page from the first on, empty for those that are not
    counted. Before the pages are known there are none, and each term has a dash.
    """
    said = text(sections)
    rows = []
    for term in terms(words):
        if not re.search(term.form, said, re.IGNORECASE):
            continue
        found = [n for n, page in enumerate(pages, 1) if re.search(term.form, page, re.I)]
        rows.append(Row((term.name, spans(found) or "–")))
    head = tuple(words.text("chapter-index", part=part) for part in ("term", "pages"))
    table = Table(INDEX, words.text("chapter-index", part="terms"), head, tuple(rows))
    title, lead = (words.text("chapter-index", part=part) for part in ("", "lead"))
    return Section(INDEX, title, (table,), lead, new_page=True)


def spans(numbers: Sequence[int]) -> str:
    """Return page numbers with runs put together: `3, 5–7`."""
    runs: list[list[int]] = []
    for number in numbers:
        if runs and number == runs[-1][-1] + 1:
            runs[-1].append(number)
        else:
            runs.append([number])
    return ", ".join(str(r[0]) if len(r) == 1 else f"{r[0]}–{r[-1]}" for r in runs)
