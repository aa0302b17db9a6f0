"""A booklet for readers who cannot see it: PDF/UA-1 (ISO 14289-1), read independently.

The checks and their clauses are in `tagged`; each is shown here to find its fault. A second
opinion is page-validation's, a validator of PDF/UA-1 written in Rust and held to the corpus
of the veraPDF consortium.
"""

from __future__ import annotations

import io
from collections.abc import Callable
from dataclasses import replace
from functools import cache

import bulrush
import page
import pikepdf
import pytest
from demos import demo
from finished import Book, made
from tagged import Tags, read_aloud, read_tags

from publish import draw, pipeline
from publish.model.book import HALF_LETTER, LETTER
from publish.model.figure import Artwork
from publish.model.words import Manual, Steps, Table
from publish.typeset import typeset
from publish.words import language
from publish.write import half_size


@cache
def samphire() -> tuple[pipeline.Work, Artwork]:
    """Return the demo pattern with its drawings for US Letter."""
    work = demo("samphire")
    assert work.manual is not None
    artwork, notes = draw.draw(
        work.pattern, work.sizes, work.drafts, work.plans, work.manual, LETTER
    )
    assert notes == ()
    return work, artwork


def tables(manual: Manual) -> int:
    return sum(isinstance(b, Table) for s in manual.sections for b in s.blocks)


@pytest.mark.thorough
@pytest.mark.parametrize("layout", ["tideline", "washland"])
@pytest.mark.parametrize("paper", [LETTER, HALF_LETTER], ids=lambda p: p.key)
def test_the_demo_is_tagged_without_a_fault(layout: str, paper: object) -> None:
    work, artwork = samphire()
    assert work.manual is not None
    manual = half_size(work.manual, paper, language())  # type: ignore[arg-type]
    pattern = replace(work.pattern, layout=layout)
    edition, notes = typeset(pattern, manual, artwork, paper)  # type: ignore[arg-type]
    assert notes == () and edition is not None
    tagged(edition.pdf, manual)


def tagged(pdf: bytes, manual: Manual) -> None:
    """Check a booklet's tags by both validators, and that everything in it has some."""
    tags = read_tags(pdf)
    assert tags.faults == []
    assert rules(pdf) == set()
    assert tags.figures >= len(manual.figures()) - 1  # the back cover may have no room for one
    assert tags.tables >= tables(manual)
    sections = sum(not s.parent for s in manual.sections)
    assert tags.headings.count("H1") == 3 + sections  # both covers and the contents
    steps = sum(len(b.items) for s in manual.sections for b in s.blocks if isinstance(b, Steps))
    assert tags.kinds["Lbl"] == steps
    assert tags.empty == []


def test_what_is_read_aloud_is_one_thing_after_another(book: Book) -> None:
    """ISO 14289-1, 7.5 and 7.6 (from memory): each row of a table has its heading, a list holds
    items; and words on both sides of a line's end are two words."""
    tags = read_tags(book.edition.pdf)
    assert tags.empty == []
    assert tags.rows and all("TH" in row for row in tags.rows)
    said = " ".join(read_aloud(book.edition.pdf).split())
    told = "Fold the square in half, right side in, and press the fold with the flat of your hand."
    assert told in said


def test_every_layout_and_paper_is_tagged_without_a_fault(book: Book) -> None:
    tagged(book.edition.pdf, bulrush.manual())


def test_every_layout_on_half_size_paper_is_tagged_without_a_fault(small: Book) -> None:
    tagged(small.edition.pdf, half_size(bulrush.manual(), small.edition.paper, language()))


def rules(pdf: bytes) -> set[str]:
    """Return the rules of PDF/UA-1 that a file breaks."""
    found = page.validate_pdf_bytes(pdf, profile=page.ValidationProfile.PDF_UA_1)
    assert found.rules.total > 100
    return {failure.rule_id for failure in found.failures}


def spoilt(pdf: bytes, spoil: Callable[[pikepdf.Pdf], None]) -> Tags:
    """Return what is read from a PDF after something was done to it."""
    stream = io.BytesIO()
    with pikepdf.open(io.BytesIO(pdf)) as file:
        spoil(file)
        file.save(stream)
    return read_tags(stream.getvalue())


def every(file: pikepdf.Pdf, kind: str) -> list[pikepdf.Object]:
    return [
        o
        for o in file.objects
        if isinstance(o, pikepdf.Dictionary) and o.get("/S") == kind and "/P" in o
    ]


def no_language(file: pikepdf.Pdf) -> None:
    del file.Root["/Lang"]


def no_tree(file: pikepdf.Pdf) -> None:
    del file.Root["/StructTreeRoot"]


def not_marked(file: pikepdf.Pdf) -> None:
    del file.Root["/MarkInfo"]


def title_hidden(file: pikepdf.Pdf) -> None:
    del file.Root["/ViewerPreferences"]


def no_identity(file: pikepdf.Pdf) -> None:
    said = file.Root.Metadata.read_bytes()
    file.Root.Metadata.write(said.replace(b"pdfuaid", b"pdfuxid"))


def no_alt(file: pikepdf.Pdf) -> None:
    del every(file, "/Figure")[0]["/Alt"]


def no_scope(file: pikepdf.Pdf) -> None:
    del every(file, "/TH")[0]["/A"]["/Scope"]


def level_passed_over(file: pikepdf.Pdf) -> None:
    every(file, "/H2")[0]["/S"] = pikepdf.Name("/H3")


def loose_line(file: pikepdf.Pdf) -> None:
    file.pages[2].contents_add(b"0 0 m 9 9 l S")


def link_out_of_order(file: pikepdf.Pdf) -> None:
    page = next(p for p in file.pages if "/Annots" in p.obj)
    del page.obj["/Annots"][0]["/StructParent"]


def link_in_a_link(file: pikepdf.Pdf) -> None:
    """Let a part of a link be a link again, as WeasyPrint makes it."""
    link = every(file, "/Link")[0]
    held = next(k for k in link["/K"] if isinstance(k, pikepdf.Dictionary) and "/Obj" in k)
    part = next(k for k in link["/K"] if isinstance(k, pikepdf.Dictionary) and "/S" in k)
    part["/K"] = pikepdf.Array([held])


def heads_of_pages_as_words(file: pikepdf.Pdf) -> None:
    """Mark a running foot as words again, in no structure."""
    page = file.pages[2]
    steps = list(pikepdf.parse_content_stream(page))
    for at, step in enumerate(steps):
        if str(step.operator) == "BMC" and any(
            str(s.operator) == "Tj" or str(s.operator) == "TJ" for s in steps[at : at + 12]
        ):
            mark = [pikepdf.Name("/P"), pikepdf.Dictionary(MCID=9999)]
            steps[at] = pikepdf.ContentStreamInstruction(mark, pikepdf.Operator("BDC"))
    page.obj["/Contents"] = pikepdf.Stream(file, pikepdf.unparse_content_stream(steps))


def test_the_other_validator_finds_faults_too() -> None:
    pdf = made("tideline-letter").edition.pdf
    for spoil in (no_tree, no_language, no_identity, no_alt, title_hidden):
        stream = io.BytesIO()
        with pikepdf.open(io.BytesIO(pdf)) as file:
            spoil(file)
            file.save(stream)
        assert rules(stream.getvalue()), spoil


@pytest.mark.parametrize(
    ("spoil", "said"),
    [
        (no_tree, "no structure tree"),
        (not_marked, "not marked as tagged"),
        (no_language, "no language"),
        (title_hidden, "the title is not displayed"),
        (no_identity, "no pdfuaid:part 1"),
        (no_alt, "a figure has no alternative text"),
        (no_scope, "a table heading has no scope"),
        (level_passed_over, "H3 follows H1"),
        (loose_line, "neither tagged nor artifacts"),
        (heads_of_pages_as_words, "neither tagged nor artifacts"),
        (link_out_of_order, "a link is not in the structure"),
        (link_in_a_link, "a link stands in Span"),
    ],
)
def test_each_check_finds_its_fault(spoil: Callable[[pikepdf.Pdf], None], said: str) -> None:
    pdf = made("tideline-letter").edition.pdf
    assert any(said in fault for fault in spoilt(pdf, spoil).faults)
