"""Stage 8, proof: whether the numbers agree, and whether the paper says what they say.

In: what the stages before have made. Out: notes; nothing is changed.
Invariant: one check per file. `check` looks at the arithmetic and the construction before
typesetting, exactly; `measure` looks at the finished PDF, as a maker's ruler would.

A finding is placed at the YAML value that governs it, or at the nearest thing around it.
"""

from __future__ import annotations

from collections.abc import Mapping

from publish.model.book import Edition
from publish.model.cutplan import CutPlan
from publish.model.draft import Draft
from publish.model.figure import Artwork
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.model.words import Manual
from publish.notes import Note
from publish.operations.rehearsal import Making
from publish.proof.booklet import (
    abbreviations,
    agreement,
    counts,
    cutting_table,
    figures,
    finished,
    headings,
    identity,
    lettered,
    materials,
    metric,
    named_fabrics,
    parts,
    pictures,
    prose,
    prose_sizes,
    quoted,
    rehearsed,
    statements,
    stitching,
    tallies,
    templates,
    toolbox,
    trade_terms,
    unread,
)
from publish.proof.case import Case, Check, Code
from publish.proof.preflight import Preflight, preflight, preflight_text
from publish.proof.press import edition as press
from publish.proof.press.edition import measure_press, measured_press
from publish.proof.printed import (
    barcode,
    bookmarks,
    crowding,
    edges,
    folios,
    outline,
    pages,
    scale,
    textlayer,
    type_size,
)
from publish.proof.printed import fonts as printed_fonts
from publish.proof.printed import pictures as printed_pictures
from publish.proof.printed import words as printed_words
from publish.proof.printed.paper import Measurement, Printed
from publish.proof.values import (
    allowances,
    areas,
    blocks,
    bought,
    contrast,
    cutting_order,
    dimensions,
    finishing,
    motifs,
    pieces,
    pressing,
    purchase,
    sewn,
    strips,
    tree,
)

__all__ = [
    "CODES",
    "EXPLAINED",
    "ON_PAPER",
    "REASONS",
    "Preflight",
    "check",
    "measure",
    "measure_press",
    "measured",
    "measured_press",
    "preflight",
    "preflight_text",
]

CHECKS: tuple[Check, ...] = (
    bought.check,
    pieces.check,
    agreement.check,
    areas.check,
    tree.check,
    strips.check,
    cutting_order.check,
    purchase.check,
    finishing.check,
    figures.check,
    quoted.check,
    metric.check,
    abbreviations.check,
    allowances.check,
    sewn.check,
    cutting_table.check,
    counts.check,
    lettered.check,
    finished.check,
    materials.check,
    templates.check,
    dimensions.check,
    motifs.check,
    pressing.check,
    stitching.check,
    contrast.check,
    identity.check,
    headings.check,
    statements.check,
    trade_terms.check,
    pictures.check,
    toolbox.check,
    rehearsed.check,
    prose.check,
    named_fabrics.check,
    blocks.check,
    parts.check,
    tallies.check,
)
ENGLISH: frozenset[Check] = frozenset(
    {
        agreement.check,
        counts.check,
        named_fabrics.check,
        parts.check,
        prose.check,
        tallies.check,
        toolbox.check,
        trade_terms.check,
    }
)
"""Checks that read English sentences; what the program itself tells is held by its values."""
MEASUREMENTS: tuple[Measurement, ...] = (
    pages.measure,
    printed_fonts.measure,
    edges.measure,
    bookmarks.measure,
    barcode.measure,
    type_size.measure,
    crowding.measure,
    folios.measure,
    printed_pictures.measure,
    scale.measure,
    outline.measure,
    textlayer.measure,
    printed_words.measure,
)
_DECLARED: tuple[Mapping[str, Code], ...] = (
    bought.CODES,
    pieces.CODES,
    agreement.CODES,
    areas.CODES,
    tree.CODES,
    strips.CODES,
    cutting_order.CODES,
    purchase.CODES,
    finishing.CODES,
    figures.CODES,
    quoted.CODES,
    metric.CODES,
    abbreviations.CODES,
    allowances.CODES,
    sewn.CODES,
    cutting_table.CODES,
    counts.CODES,
    lettered.CODES,
    prose_sizes.CODES,
    finished.CODES,
    materials.CODES,
    templates.CODES,
    dimensions.CODES,
    motifs.CODES,
    pressing.CODES,
    stitching.CODES,
    contrast.CODES,
    identity.CODES,
    headings.CODES,
    statements.CODES,
    trade_terms.CODES,
    unread.CODES,
    pictures.CODES,
    toolbox.CODES,
    rehearsed.CODES,
    named_fabrics.CODES,
    blocks.CODES,
    parts.CODES,
    tallies.CODES,
    pages.CODES,
    printed_fonts.CODES,
    edges.CODES,
    bookmarks.CODES,
    barcode.CODES,
    type_size.CODES,
    crowding.CODES,
    folios.CODES,
    printed_pictures.CODES,
    scale.CODES,
    outline.CODES,
    textlayer.CODES,
    printed_words.CODES,
    press.CODES,
)

CODES: dict[str, str] = {code: said.title for codes in _DECLARED for code, said in codes.items()}
REASONS: dict[str, str] = {code: said.why for codes in _DECLARED for code, said in codes.items()}
"""Why each finding matters to a maker."""
EXPLAINED: dict[str, Code] = {code: said for codes in _DECLARED for code, said in codes.items()}
"""Title, reason and examples of each finding."""
_MEASURING = (
    pages,
    printed_fonts,
    edges,
    bookmarks,
    scale,
    outline,
    textlayer,
    printed_words,
    press,
    barcode,
    crowding,
    folios,
    printed_pictures,
    type_size,
)
ON_PAPER: frozenset[str] = frozenset(code for part in _MEASURING for code in part.CODES)
"""Codes that only measuring a finished PDF can find."""


def check(
    pattern: Pattern,
    sizes: Mapping[str, Size],
    drafts: Mapping[str, Draft],
    plans: Mapping[str, CutPlan],
    manual: Manual,
    making: Making | None = None,
) -> tuple[Note, ...]:
    """Return every finding about the arithmetic and the construction.

    Nothing is said where two sizes carry one title, which is an error of its own: what the
    words say of either cannot be told apart.
    """
    titles = [size.title for size in sizes.values()]
    if len(set(titles)) < len(titles):
        return ()
    case = Case(pattern, sizes, drafts, plans, manual, making or Making({}))
    english = case.words.code.split("-")[0] == "en"
    found = [n for each in CHECKS if english or each not in ENGLISH for n in each(case)]
    return (*found, *(unread.check(case) if not english else ()))


def measure(
    pattern: Pattern,
    drafts: Mapping[str, Draft],
    artwork: Artwork,
    edition: Edition,
    plans: Mapping[str, CutPlan] | None = None,
    manual: Manual | None = None,
    sizes: Mapping[str, Size] | None = None,
) -> tuple[Note, ...]:
    """Return every finding about a finished PDF.

    With `plans` and `sizes`, the numbers a maker buys, cuts and finishes by are looked for
    in the booklet's text, and with `manual` all of its words; template-only editions carry
    no tables and are not searched.
    """
    return measured(pattern, drafts, artwork, edition, plans, manual, sizes)[0]


def measured(
    pattern: Pattern,
    drafts: Mapping[str, Draft],
    artwork: Artwork,
    edition: Edition,
    plans: Mapping[str, CutPlan] | None = None,
    manual: Manual | None = None,
    sizes: Mapping[str, Size] | None = None,
) -> tuple[tuple[Note, ...], Preflight]:
    """Return what `measure` does, and what there was to measure; the file is opened once."""
    with Printed(pattern, drafts, artwork, edition, plans or {}, manual, sizes or {}) as printed:
        notes = tuple(note for each in MEASUREMENTS for note in each(printed))
        return notes, preflight(printed, notes)
