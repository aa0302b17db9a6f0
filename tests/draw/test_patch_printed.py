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

from publish import proof
from publish.draw.sheets.sheets import template_sheets
from publish.model.book import LETTER, Edition
from publish.model.cutplan import PieceTemplate
from publish.model.draft import Draft, FoundationSection
from publish.model.figure import Artwork


def found(key: str, part: str, draft: Draft = DRAFT, template: PieceTemplate = TEMPLATE) -> list:
    """Return the notes on a sheet's outline and square, printed as drawn."""
    (sheet,) = template_sheets(CONTEXT, key, SIZE, part, LETTER)
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
