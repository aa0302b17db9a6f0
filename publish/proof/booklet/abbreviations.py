"""Whether a maker is told what each abbreviation means.

In: a case. Out: notes.
Invariant: capitals used as a word, and the short forms of units, stand in the booklet's
table of abbreviations, except names that every reader knows.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from publish.model.words import Bullets, Manual, Table
from publish.notes import Note, warning
from publish.proof.booklet.claims import said_at
from publish.proof.booklet.lengths import said
from publish.proof.booklet.words import Passage, passages
from publish.proof.case import Case, Code

CODES = {
    "P863": Code(
        "An abbreviation is used and not explained",
        "a beginner cannot read the step",
        "`text: Trim the HSTs.`",
        "`text: Trim the half-square triangles.`",
    ),
}

_CAPITALS = re.compile(r"(?<![\w-])[A-Z]{2,}s?(?![\w-])")
KNOWN = frozenset({"US", "UK", "PDF", "OK"})
"""Capitals that need no explanation; `II`, `XL` and the like are sizes or numerals."""
_NUMERAL = re.compile(r"[IVXL]+")


def check(case: Case) -> Iterator[Note]:
    """Yield a warning for each abbreviation that the booklet does not explain."""
    explained = _explained(case.manual)
    letters = {p.letter for key in case.keys for p in case.plans[key].pieces}
    names = [case.pattern.title, case.pattern.publication.studio]
    names += [size.title for size in case.sizes.values()]
    names += [fabric.name for fabric in case.pattern.fabrics.values()]
    letters |= {w.rstrip("s") for name in names for w in _CAPITALS.findall(name)}
    sections = {f.letter for key in case.keys for f in case.drafts[key].foundations}
    first: dict[str, Passage] = {}
    for passage in passages(case.manual):
        found = [w.rstrip("s") for w in _CAPITALS.findall(passage.text)]
        found += [length.unit for length in said(passage.text)]
        for word in found:
            first.setdefault(word, passage)
    for word, passage in first.items():
        if word in explained or word in KNOWN or word in letters or _NUMERAL.fullmatch(word):
            continue
        if sections.issuperset(word):  # sections that are joined: ABCD
            continue
        yield warning(
            "P863",
            said_at(case, passage),
            f"the abbreviation {word} in {passage.where} is not explained",
            expected=", ".join(sorted(explained)) or "a list of abbreviations",
            received=word,
            help="write it out, or add it to the abbreviations",
        )


def _explained(manual: Manual) -> set[str]:
    """Return the first words of the abbreviations: of a table's rows, or of a list's items."""
    found: list[str] = []
    for section in manual.sections:
        for block in section.blocks:
            about = "abbreviation" in f"{section.key} {section.title}".lower()
            if isinstance(block, Table) and (about or "abbreviation" in block.key):
                found += [row.cells[0] for row in block.rows]
            elif isinstance(block, Bullets) and about:
                found += [re.split(r"[:–—]", item)[0] for item in block.items]
    return {part.strip(" *`") for text in found for part in re.split(r",| or | and ", text)}
