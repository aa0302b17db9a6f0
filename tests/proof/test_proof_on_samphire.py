"""The proof on the demo pattern itself: silent as it is, loud when one thing is changed.

Source: "fit to page" shrinks a full page to about 97 %, a printer driver's habit (common
practice, no source); the tolerance of 0.2 % is the project's own.
"""

from __future__ import annotations

import io
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pikepdf
import pytest
from demos import demo
from reedmace_case import codes

from publish import draw, proof, typeset
from publish.model.book import LETTER, Edition
from publish.model.figure import Artwork
from publish.model.words import Manual, Step, Steps
from publish.notes import Note
from publish.pipeline import Work


@pytest.fixture(scope="module")
def work() -> Work:
    return demo("samphire")


@pytest.fixture(scope="module")
def printed(work: Work) -> tuple[Artwork, Edition]:
    assert work.manual is not None
    sheets = work.manual.templates_only()
    artwork, _ = draw.draw(work.pattern, work.sizes, work.drafts, work.plans, sheets, LETTER)
    edition, notes = typeset.typeset(work.pattern, sheets, artwork, LETTER, "templates")
    assert edition is not None, notes
    return artwork, edition


def checked(work: Work, **changes: Any) -> tuple[Note, ...]:
    names = ("sizes", "drafts", "plans", "manual", "making")
    parts = {n: changes.get(n, getattr(work, n)) for n in names}
    return proof.check(work.pattern, **parts)


def test_the_demo_is_clean(work: Work) -> None:
    assert [f"{n.code} {n.what}" for n in checked(work)] == []


def spoken(manual: Manual, change: Callable[[Step], Step]) -> Manual:
    """Return a manual with every step changed."""
    sections = []
    for section in manual.sections:
        blocks = tuple(
            replace(b, items=tuple(map(change, b.items))) if isinstance(b, Steps) else b
            for b in section.blocks
        )
        sections.append(replace(section, blocks=blocks))
    return replace(manual, sections=tuple(sections))


@pytest.mark.parametrize(
    ("right", "wrong", "code"),
    [
        ("16 1/2 in", "16 5/8 in", "P809"),
        ("strips **D** to your average", "strips **D** to 16 5/8 in", "P828"),
    ],
)
def test_a_word_changed_in_the_steps(work: Work, right: str, wrong: str, code: str) -> None:
    """Words of the designer's own: those that come from operations are not read again."""

    def changed(step: Step) -> Step:
        text = step.text.replace(right, wrong)
        return replace(step, text=text, own=step.own or text != step.text)

    assert work.manual is not None
    manual = spoken(work.manual, changed)
    assert manual != work.manual, f"no step says {right}"
    assert code in codes(checked(work, manual=manual))


@pytest.mark.parametrize("size", ["mini", "pillow", "throw"])
def test_one_strip_fewer(work: Work, size: str) -> None:
    for key, plan in work.plans[size].fabrics.items():
        fabrics = {**work.plans[size].fabrics, key: replace(plan, strips=plan.strips[1:])}
        plans = {**work.plans, size: replace(work.plans[size], fabrics=fabrics)}
        assert {"P801", "P832", "P833"} & set(codes(checked(work, plans=plans))), key


@pytest.mark.parametrize("size", ["mini", "pillow", "throw"])
def test_one_piece_fewer(work: Work, size: str) -> None:
    for piece in work.plans[size].pieces:
        rest = tuple(p for p in work.plans[size].pieces if p is not piece)
        plans = {**work.plans, size: replace(work.plans[size], pieces=rest)}
        expected = (
            {"P811", "P812"}
            if piece.purpose.split()[0] in ("ground", "border", "motif")
            else {"P815"}
        )
        assert expected & set(codes(checked(work, plans=plans))), piece.purpose


def test_one_patch_fewer(work: Work) -> None:
    for size, drafted in work.drafts.items():
        drafts = {**work.drafts, size: replace(drafted, patches=drafted.patches[1:])}
        assert {"P821", "P824"} <= set(codes(checked(work, drafts=drafts)))


def measured(work: Work, artwork: Artwork, edition: Edition) -> list[str]:
    return codes(proof.measure(work.pattern, work.drafts, artwork, edition, work.plans))


def test_the_printed_sheets_are_true(work: Work, printed: tuple[Artwork, Edition]) -> None:
    assert measured(work, *printed) == []


def transformed(edition: Edition, matrix: str) -> Edition:
    """Return an edition with everything on its pages moved by a PDF matrix."""
    with pikepdf.open(io.BytesIO(edition.pdf)) as pdf:
        for page in pdf.pages:
            page.contents_add(f"q {matrix} cm".encode(), prepend=True)
            page.contents_add(b"Q")
        stream = io.BytesIO()
        pdf.save(stream)
    return replace(edition, pdf=stream.getvalue())


@pytest.mark.parametrize(
    ("matrix", "found"),
    [
        ("0.97 0 0 0.97 9.18 11.88", {"P876", "P877"}),  # fit to page
        ("1.003 0 0 1 0 0", {"P876", "P877"}),  # stretched across the page
        ("1 0 0 1 1.2 0", {"P877"}),  # shifted by a sixtieth of an inch
        ("1 0 0 1 0 0", set()),
    ],
)
def test_sheets_spoiled_on_their_way_to_the_printer(
    work: Work, printed: tuple[Artwork, Edition], matrix: str, found: set[str]
) -> None:
    artwork, edition = printed
    assert set(measured(work, artwork, transformed(edition, matrix))) & {"P876", "P877"} == found


def test_sheets_of_another_size_of_motif(work: Work, printed: tuple[Artwork, Edition]) -> None:
    """The throw's motif printed where the pillow's should be: one inch larger."""
    artwork, edition = printed
    drafts = {
        **work.drafts,
        "pillow": replace(work.drafts["pillow"], motifs=work.drafts["throw"].motifs),
    }
    found = proof.measure(work.pattern, drafts, artwork, edition)
    assert {n.code for n in found} == {"P877"}
    assert all("Pillow" in n.what for n in found)
