"""Sheets of pieces and foundations measured on the finished PDF, as every build does.

One point is 1/72 in (ISO 32000-1, 8.3.2.3). The sheets pass against what was drafted, and
fail against anything 2 % larger, shifted, or not turned over.
"""

from dataclasses import replace
from fractions import Fraction

import pytest
from patch_samples import CONTEXT, DRAFT, SECTION, SIZE, TEMPLATE
from shapely.affinity import scale, translate
from sheet_print import page_pdf
from sheet_samples import sheets_of

from publish import proof
from publish.model.book import LETTER, Edition
from publish.model.cutplan import PieceTemplate
from publish.model.draft import Draft, FoundationSection
from publish.model.figure import Artwork, Sheet

ONCE = replace(DRAFT, foundations=tuple(replace(f, count=1) for f in DRAFT.foundations))


def found(key: str, part: str, draft: Draft = DRAFT, template: PieceTemplate = TEMPLATE) -> list:
    """Return the notes on a sheet's outline and square, printed as drawn."""
    sampler = replace(CONTEXT, drafts={SIZE: ONCE})
    (sheet,) = sheets_of(sampler, key, SIZE, part, LETTER)
    pdf = page_pdf(sheet.svg, LETTER.width, LETTER.height)
    edition = Edition("templates-letter", LETTER, pdf, "", {sheet.key: 1})
    artwork = Artwork({}, {(key, SIZE, part): (sheet,)})
    plans = {SIZE: replace(CONTEXT.plans[SIZE], templates=(template,))}
    notes = proof.measure(CONTEXT.pattern, {SIZE: draft}, artwork, edition, plans)
    return [n for n in notes if n.code in ("P876", "P877", "P879")]


def with_section(section: FoundationSection) -> Draft:
    return replace(DRAFT, foundations=(section,))


def stretched(by: Fraction) -> FoundationSection:
    """Return the section with everything in it moved away from its corner."""
    ring = tuple((x * by, y * by) for x, y in SECTION.ring)
    seams = tuple(tuple((x * by, y * by) for x, y in seam) for seam in SECTION.seams)
    return replace(SECTION, ring=ring, seams=seams)


def turned_over() -> FoundationSection:
    ring = tuple((3 - x, y) for x, y in SECTION.ring)
    seams = tuple(tuple((3 - x, y) for x, y in seam) for seam in SECTION.seams)
    return replace(SECTION, ring=ring, seams=seams)


def test_a_true_piece_is_silent() -> None:
    assert found("pool", "piece") == []


@pytest.mark.parametrize(
    "finished",
    [scale(TEMPLATE.finished, 1.004, 1.004, origin=(3, 3)), translate(TEMPLATE.finished, 0.02, 0)],
)
def test_a_piece_that_is_not_as_cut_is_found(finished: object) -> None:
    (note,) = found("pool", "piece", template=replace(TEMPLATE, finished=finished))
    assert note.code == "P877" and "Template P, Sampler" in note.what


def test_a_true_foundation_is_silent() -> None:
    assert found("heron A", "foundation") == []


@pytest.mark.parametrize("section", [stretched(Fraction(1004, 1000)), turned_over()])
def test_a_foundation_that_is_not_as_drafted_is_found(section: FoundationSection) -> None:
    (note,) = found("heron A", "foundation", draft=with_section(section))
    assert note.code == "P877" and "foundation A" in note.what


def spoiled(sheet: Sheet, number: int, **changes: object) -> Sheet:
    """Return a sheet that says of one of its templates something that is not so."""
    shown = list(sheet.shown)
    shown[number] = replace(shown[number], **changes)
    return replace(sheet, shown=tuple(shown))


def test_every_template_on_a_shared_sheet_is_measured() -> None:
    """Two copies share the sheet; each passes where it lies, and each is found if it is said
    to lie 1/50 in beside its place."""
    (sheet,) = sheets_of(CONTEXT, "heron A", SIZE, "foundation", LETTER)
    pdf = page_pdf(sheet.svg, LETTER.width, LETTER.height)
    edition = Edition("templates-letter", LETTER, pdf, "", {sheet.key: 1})

    def measured(shown: Sheet) -> list:
        artwork = Artwork({}, {sheet.leads: (shown,)})
        notes = proof.measure(CONTEXT.pattern, {SIZE: DRAFT}, artwork, edition, CONTEXT.plans)
        return [n.code for n in notes if n.code in ("P876", "P877", "P879")]

    assert len(sheet.shown) == 2 and measured(sheet) == []
    for number, one in enumerate(sheet.shown):
        assert measured(spoiled(sheet, number, x=one.x + 0.02)) == ["P877"]
