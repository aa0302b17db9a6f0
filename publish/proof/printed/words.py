"""Whether every word of the booklet is on its pages, as it was written.

In: a printed edition, with the manual it was set from. Out: notes.
Invariant: each sentence, cell and caption of the manual stands in the text layer, blanks,
hyphens and the shapes of quotation marks aside; every template sheet it asks for has a page.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise

from markdown_it import MarkdownIt

from publish.model.words import Manual, Table, TemplateSheets
from publish.notes import Note, error
from publish.proof.booklet.claims import sentences
from publish.proof.booklet.words import passages
from publish.proof.case import Code
from publish.proof.printed.paper import Printed

CODES = {
    "P870": Code(
        "Words of the booklet are not on its pages",
        "a step is lost, or says something else",
        "a file of 33 pages from a booklet of 34",
        "all pages, as they were set",
    ),
}

_DROPPED = re.compile(r"[\s\u00a0\u2009\u202f\u00ad\ufffe\u2010\x02*`_-]+")
_SAME = str.maketrans({"⁄": "/", "’": "'", "‘": "'", "“": '"', "”": '"'})


def measure(printed: Printed) -> Iterator[Note]:
    """Yield a note for each page's worth of words that is missing, and each lost template."""
    manual = printed.manual
    if manual is None or not printed.edition.name.startswith("booklet"):
        return
    pages = [plain(_without_foot(text, manual)) for text in printed.texts]
    told: set[str] = set()
    for passage in passages(manual, whole=True):
        if passage.kind == "cell":
            continue
        covers = passage.section in ("cover", "back")
        parts = passage.text.split(": ") if covers else sentences(passage.text)
        lost = [s for s in parts if not stands(s, pages, passage.number)]
        if lost and passage.where not in told:
            told.add(passage.where)
            yield error(
                "P870",
                printed.pattern.place("steps", passage.section),
                f"words of {passage.where} are not in {printed.edition.name}",
                expected=lost[0].strip()[:80],
            )
    yield from _rows(printed, manual, pages)
    yield from _sheets(printed, manual)


def plain(text: str) -> str:
    """Return a text without what setting it may change."""
    return _DROPPED.sub("", text.translate(_SAME))


def _without_foot(text: str, manual: Manual) -> str:
    """Return a page's text without its running foot: one line that holds it and at most a
    page number. What else says the same, as the title of a pattern without a studio, stays."""
    foot = re.escape(manual.running_foot)
    line = rf"^[\s\d]*{foot}[\s\d]*$"
    return re.sub(line, "", text, count=1, flags=re.MULTILINE) if foot else text


_MARKDOWN = MarkdownIt("commonmark", {"html": False}).disable(["image", "html_inline"])


def as_read(text: str) -> str:
    """Return Markdown as a reader sees it: a link is its words, and marks are gone."""
    parts = (token.children or () for token in _MARKDOWN.parse(text))
    return " ".join(
        "".join(" " if part.type == "softbreak" else part.content for part in line)
        for line in parts
    ).strip()


def stands(text: str, pages: Sequence[str], number: str = "") -> bool:
    """Return whether pages have a text: whole, or begun on one and ended on the next.

    The number of a step may be set amid its words.
    """
    return any(_stands(form, pages, number) for form in dict.fromkeys((text, as_read(text))))


def _stands(text: str, pages: Sequence[str], number: str) -> bool:
    whole = "".join(pages)
    if plain(text) in whole:
        return True
    words = [w for w in map(plain, text.split()) if w]
    form = "".join(map(_joined, words, [*words[1:], "0"]))
    if re.search(form, whole) is not None:
        return True
    cuts = [("".join(words[:n]), "".join(words[n:])) for n in range(1, len(words))]
    if number and any(f"{begun}{number}{ended}" in whole for begun, ended in cuts):
        return True
    return any(
        begun in one and ended in other for one, other in pairwise(pages) for begun, ended in cuts
    )


def _joined(word: str, following: str) -> str:
    """Return a word's form, with room for a number, of a figure say, where it joins no other."""
    between = not (word[-1].isdigit() or following[0].isdigit())
    return re.escape(word) + (r"\d{0,2}" if between else "")


def _rows(printed: Printed, manual: Manual, pages: Sequence[str]) -> Iterator[Note]:
    """A table's row is read cell after cell: a number in another row does not stand for it."""
    for section in manual.sections:
        for table in (b for b in section.blocks if isinstance(b, Table)):
            lost = [row for row in table.rows if not stands(" ".join(row.cells), pages)]
            if lost:
                yield error(
                    "P870",
                    printed.pattern.place("steps", section.key),
                    f"a row of {table.title or table.key} is not in {printed.edition.name}",
                    expected=", ".join(filter(None, lost[0].cells))[:80],
                )


def _sheets(printed: Printed, manual: Manual) -> Iterator[Note]:
    for section in manual.sections:
        for block in section.blocks:
            if not isinstance(block, TemplateSheets):
                continue
            group = printed.artwork.sheets.get((block.motif, block.size, block.part), ())
            for sheet in group:
                if sheet.key not in printed.edition.sheet_pages:
                    yield error(
                        "P879",
                        printed.sheet_place(sheet),
                        f"the template sheet {sheet.key} has no page in {printed.edition.name}",
                    )
