"""The stage as a whole: every figure the manual asks for, or a note that says why not."""

import xml.etree.ElementTree as ElementTree

import pytest
from top_figures import SPECS, manual
from top_plans import PLANS
from top_samples import DRAFTS, PATTERN, SIZES

from publish.draw import CODES, DRAWINGS, draw
from publish.model.book import A4, LETTER, Paper
from publish.model.figure import Artwork
from publish.model.words import FigureBlock, FigureSpec, Section, TemplateSheets
from publish.notes import Note, Severity


def drawn(*blocks, paper: Paper = LETTER) -> tuple[Artwork, tuple[Note, ...]]:
    book = manual(Section("s", "S", blocks))
    return draw(PATTERN, SIZES, DRAFTS, PLANS, book, paper)


def asks(kind: str, size: str | None = None, **values: str) -> FigureBlock:
    return FigureBlock(FigureSpec("asked", kind, size, tuple(values.items())))


def test_every_figure_is_drawn_in_the_manuals_order() -> None:
    specs = [s for s in SPECS if s.get("detail") != "bias"]
    artwork, notes = drawn(*(FigureBlock(s) for s in specs))
    assert notes == ()
    assert list(artwork.figures) == ["cover", *(s.key for s in specs)]
    assert all(f.key == key for key, f in artwork.figures.items())


def test_the_same_manual_gives_the_same_bytes() -> None:
    blocks = [FigureBlock(s) for s in SPECS if s.kind in ("quilt", "layers", "cutting-layout")]
    assert drawn(*blocks) == drawn(*blocks)


def test_a_colouring_page_follows_its_paper() -> None:
    letter, _ = drawn(asks("colouring", "throw"))
    a4, _ = drawn(asks("colouring", "throw"), paper=A4)
    assert letter.figures["asked"].width == a4.figures["asked"].width == 6.5


def test_template_sheets_are_drawn_once_each() -> None:
    asked = TemplateSheets("fern", "mini", "wedge")
    artwork, notes = drawn(asked, asked)
    assert notes == () and list(artwork.sheets) == [("fern", "mini", "wedge")]
    assert all(s.leads == asked_key(asked) for s in artwork.sheets[asked_key(asked)])


def asked_key(sheets: TemplateSheets) -> tuple[str, str, str]:
    return sheets.motif, sheets.size, sheets.part


@pytest.mark.parametrize(
    ("block", "code", "says"),
    [
        (asks("hologram"), "F601", "hologram"),
        (asks("quilt", "giant"), "F602", "giant"),
        (asks("borders", "pillow", border="0"), "F602", "border '0'"),
        (asks("cutting-layout", "mini", fabric="velvet"), "F602", "velvet"),
        (asks("units", "mini", unit="nonsense"), "F602", "nonsense"),
        (asks("binding", "pillow", detail="join"), "F602", "no binding"),
        (asks("binding", "mini", detail="knot"), "F602", "knot"),
        (asks("binding", "mini", detail="bias"), "F602", "square"),
        (asks("sleeve", "throw", detail="make"), "F602", "sleeve"),
        (asks("pillow", "mini", detail="hem"), "F602", "not a pillow"),
        (asks("pillow", "pillow", detail="knot"), "F602", "knot"),
        (asks("borders", "mini", border="one"), "F602", "one"),
        (TemplateSheets("oak", "mini", "wedge"), "F603", "oak"),
        (TemplateSheets("fern", "giant", "wedge"), "F603", "giant"),
    ],
)
def test_what_cannot_be_drawn_is_a_note(block, code: str, says: str) -> None:
    artwork, notes = drawn(block)
    (note,) = notes
    assert note.code == code and note.severity is Severity.ERROR and code in CODES
    assert says in f"{note.what} {note.received}"
    assert note.place.file == "fern/pattern.yaml"
    assert "asked" not in artwork.figures and not artwork.sheets


def test_every_code_of_the_stage_starts_with_its_letter() -> None:
    assert all(code.startswith("F6") and len(code) == 4 for code in CODES)


def test_every_kind_has_a_drawing() -> None:
    kinds = {
        "quilt",
        "sizes",
        "swatches",
        "layers",
        "fold",
        "wedge-baste",
        "wedge-align",
        "wedge-mark",
        "wedge-cut",
        "unfold",
        "crease-ground",
        "place-motif",
        "stitch",
        "cutting-layout",
        "units",
        "rows",
        "borders",
        "sandwich",
        "quilting",
        "trim",
        "binding",
        "sleeve",
        "pillow",
        "colouring",
        "scale",
        "block",
        "quick",
        "curve",
        "set-in",
        "foundation",
        "sections",
        "setting",
        "press",
        "rounds",
    }
    assert kinds <= set(DRAWINGS)


def test_svg_is_well_formed() -> None:
    artwork, _ = drawn(*(FigureBlock(s) for s in SPECS if s.get("detail") != "bias"))
    for figure in artwork.figures.values():
        assert ElementTree.fromstring(figure.svg).tag == "{http://www.w3.org/2000/svg}svg"
