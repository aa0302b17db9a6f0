"""A designer's own fonts, logo and accent: on the page, or a note that says why not.

Contrast: W3C, Web Content Accessibility Guidelines 2.0, success criterion 1.4.3 (4.5:1).
Embedding: OpenType specification, OS/2 table, fsType bit 1 (from memory).
"""

from __future__ import annotations

import ctypes
import importlib.util
import io
import re
from pathlib import Path
from string import ascii_letters

import bulrush
import bulrush_drawn
import pikepdf
import pypdfium2 as pdfium
import pytest
from finished import Book, read_back
from fontTools import subset
from fontTools.ttLib import TTFont
from PIL import Image
from tagged import read_tags

from publish.model.book import LETTER
from publish.model.pattern import Style
from publish.notes import Note, Place, Severity
from publish.typeset import house, inspect, typeset
from publish.typeset.layout import find

ARTWORK = bulrush_drawn.artwork(LETTER)
LAYOUTS = ("tideline", "washland")
LOGO = (
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 90 30">'
    '<path d="M5 25 20 5 35 25Z" fill="#123456"/></svg>'
)

SVG = b'<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9">%s</svg>'


def face(package: str, file: str) -> Path:
    spec = importlib.util.find_spec(package)
    assert spec is not None and spec.submodule_search_locations
    return Path(spec.submodule_search_locations[0]) / "files" / file


def font(
    folder: Path,
    name: str,
    *,
    letters: str = "",
    rights: int | None = None,
    wider: float = 1,
    features: bool = True,
) -> Path:
    """Write a font under a family name of its own; with `letters`, with those alone; its
    figures `wider` than they are drawn; without `features` it has no true fractions."""
    made = TTFont(face("font_source_serif_pro", "SourceSerifPro-Black.ttf"))
    names = made.getBestCmap()
    for sign in "0123456789":
        advance, side = made["hmtx"][names[ord(sign)]]
        made["hmtx"][names[ord(sign)]] = (round(advance * wider), side)
    if not features:
        del made["GSUB"]
    if letters:
        thinner = subset.Subsetter(subset.Options(layout_features=[]))
        thinner.populate(text=letters)
        thinner.subset(made)
    for record in made["name"].names:
        if record.nameID in (1, 4, 6, 16):
            made["name"].setName(
                name, record.nameID, record.platformID, record.platEncID, record.langID
            )
    if rights is not None:
        made["OS/2"].fsType = rights
    path = folder / f"{name}.ttf"
    made.save(path)
    return path


PLACES = {
    f"style.{key}": Place("pattern.yaml", line, 5)
    for line, key in enumerate(("accent", "logo", "fonts.titles", "fonts.text"), 10)
}


def built(style: Style, layout: str = "tideline") -> tuple[Book | None, tuple[Note, ...]]:
    places = {"": Place("pattern.yaml"), **PLACES}
    pattern = bulrush.pattern(style=style, layout=layout, places=places)
    edition, notes = typeset(pattern, bulrush.manual(), ARTWORK, LETTER)
    assert [n for n in inspect(pattern) if n not in notes] == []
    return (read_back(edition) if edition else None), notes


def fonts_of(book: Book, pages: slice = slice(None)) -> set[str]:
    """Return the names that the embedded font programs have in themselves."""
    found = set()
    for page in list(book.objects.pages)[pages]:
        for entry in page.Resources.get("/Font", {}).values():
            program = entry.DescendantFonts[0].FontDescriptor.FontFile2
            found.add(TTFont(io.BytesIO(program.read_bytes()))["name"].getDebugName(1))
    return found


@pytest.mark.parametrize("layout", LAYOUTS)
def test_titles_are_set_in_the_designers_font(tmp_path: Path, layout: str) -> None:
    book, notes = built(Style(fonts={"titles": font(tmp_path, "Fendisplay")}), layout)
    assert notes == () and book is not None
    assert "Fendisplay" in fonts_of(book, slice(1))
    assert any("Source" in name for name in fonts_of(book))


def test_a_font_for_text_serves_for_titles_where_the_layout_sets_both_alike(
    tmp_path: Path,
) -> None:
    book, notes = built(Style(fonts={"text": font(tmp_path, "Fentext")}))
    assert notes == () and book is not None
    names = fonts_of(book)
    assert "Fentext" in names
    assert "Source Serif Pro Semibold" in names, "bold words keep the layout's bold"
    assert "Source Serif Pro Light" not in names, "no title is left in the layout's font"


def test_a_bold_of_the_designers_is_used_for_bold_words(tmp_path: Path) -> None:
    own = {"text": font(tmp_path, "Fentext"), "text_bold": font(tmp_path, "Fenbold")}
    book, notes = built(Style(fonts=own))
    assert notes == () and book is not None
    assert {"Fentext", "Fenbold"} <= fonts_of(book)
    assert "Source Serif Pro Semibold" not in fonts_of(book)


def test_two_fonts_of_one_file_name_stay_apart(tmp_path: Path) -> None:
    (tmp_path / "a").mkdir()
    (tmp_path / "b").mkdir()
    one = font(tmp_path / "a", "Reed").rename(tmp_path / "a" / "f.ttf")
    two = font(tmp_path / "b", "Sedge").rename(tmp_path / "b" / "f.ttf")
    book, notes = built(Style(fonts={"titles": one, "labels": two}))
    assert notes == () and book is not None
    assert {"Reed", "Sedge"} <= fonts_of(book)


def test_signs_that_a_font_lacks_come_from_the_layout(tmp_path: Path) -> None:
    own = font(tmp_path, "Fentext", letters=f"{ascii_letters} ")
    book, (note, fractions) = built(Style(fonts={"text": own}))
    assert book is not None and fractions.code == "T722"
    assert (note.code, note.severity) == ("T713", Severity.WARNING)
    assert note.received == "0123456789.,-/()" and note.place == PLACES["style.fonts.text"]
    assert "The mini hangs in a hall" in book.text
    assert "Fentext" in fonts_of(book)


def font_of(book: Book, words: str) -> set[str]:
    """Return the names of the fonts in which PDFium finds what a pattern of words names."""
    found = set()
    with pdfium.PdfDocument(book.edition.pdf) as document:
        for page in document:
            text = page.get_textpage()
            said = text.get_text_range()
            for match in re.finditer(words, said):
                name, flags = ctypes.create_string_buffer(200), ctypes.c_int()
                for at in range(*match.span()):
                    pdfium.raw.FPDFText_GetFontInfo(text.raw, at, name, 200, ctypes.byref(flags))
                    found.add(name.value.decode().split("+")[-1])
    return found


def test_a_font_without_true_fractions_is_told_and_fractions_are_true_all_the_same(
    tmp_path: Path,
) -> None:
    """`frac`: OpenType specification, registered features."""
    own = font(tmp_path, "Fentext", features=False)
    book, (note,) = built(Style(fonts={"text": own}))
    assert book is not None
    assert (note.code, note.severity) == ("T722", Severity.WARNING)
    assert note.place == PLACES["style.fonts.text"]
    assert all("Source" in name for name in font_of(book, "1/2(?= in)"))
    whole, notes = built(Style(fonts={"text": font(tmp_path, "Fenwhole")}))
    assert whole is not None and notes == ()
    assert any("Own-text" in name for name in font_of(whole, "1/2(?= in)"))


@pytest.mark.parametrize(
    ("layout", "role", "size"), [("tideline", "titles", 24.0), ("washland", "labels_bold", 10.5)]
)
def test_wide_figures_of_a_steps_number_keep_clear_of_its_words(
    tmp_path: Path, layout: str, role: str, size: float
) -> None:
    """Two figures at the size that the layout's README gives them, and a space after them."""
    path = font(tmp_path, "Fenwide", wider=2.4)
    own = {role.removesuffix("_bold"): path, role: path}
    pattern = bulrush.pattern(style=Style(fonts=own), layout=layout)
    plain, _ = find(pattern, LETTER)
    assert plain is not None
    dressed = house.dressed(plain, pattern)
    with TTFont(path) as opened:
        names, advances = opened.getBestCmap(), opened["hmtx"]
        widest = max(advances[names[ord(sign)]][0] for sign in "0123456789")
        wide = 2 * size * widest / opened["head"].unitsPerEm
    assert dressed.settings["compose"]["hang"] >= wide + 4
    assert dressed.settings["compose"]["hang"] > plain.settings["compose"]["hang"]
    narrow = bulrush.pattern(style=Style(fonts={role: font(tmp_path, "Fen")}), layout=layout)
    assert house.dressed(plain, narrow).settings["compose"]["hang"] < wide


def test_a_font_that_may_not_be_embedded_is_told(tmp_path: Path) -> None:
    own = font(tmp_path, "Fendisplay", rights=0x0002)
    book, (note,) = built(Style(fonts={"titles": own}))
    assert book is not None
    assert (note.code, note.severity) == ("T714", Severity.WARNING)
    assert "0x0002" in note.received


@pytest.mark.parametrize("data", [b"", b"no font", b"\0\1\0\0" + bytes(40)])
def test_a_file_that_is_no_font_is_an_error_at_its_place(tmp_path: Path, data: bytes) -> None:
    path = tmp_path / "fen.ttf"
    path.write_bytes(data)
    book, (note,) = built(Style(fonts={"titles": path}))
    assert book is None
    assert (note.code, note.place) == ("T712", PLACES["style.fonts.titles"])


def test_a_damaged_font_is_never_a_traceback(tmp_path: Path) -> None:
    whole = font(tmp_path, "Fen").read_bytes()
    for cut in (13, 200, len(whole) // 2, len(whole) - 900):
        path = tmp_path / f"cut-{cut}.ttf"
        path.write_bytes(whole[:cut])
        pattern = bulrush.pattern(style=Style(fonts={"titles": path}))
        assert all(n.code in ("T712", "T713", "T714") for n in inspect(pattern))


# Each kind in one layout; the thorough run has each in both.
@pytest.mark.parametrize(
    ("layout", "kind"),
    [
        pytest.param(layout, kind, marks=() if n == m % 2 else pytest.mark.thorough)
        for n, layout in enumerate(LAYOUTS)
        for m, kind in enumerate(("svg", "png", "jpg"))
    ],
)
def test_the_logo_stands_on_both_covers_in_place_of_the_name(
    tmp_path: Path, layout: str, kind: str
) -> None:
    path = tmp_path / f"logo.{kind}"
    if kind == "svg":
        path.write_text(LOGO, encoding="utf-8")
    else:
        Image.new("RGB", (900, 300), "#123456").save(path)
    book, notes = built(Style(logo=path), layout)
    assert notes == () and book is not None
    assert "Hollow Fen Studio" not in book.words[0].replace("\n", " ")
    alts = [
        (str(o["/Alt"]), o.Pg.objgen)
        for o in book.objects.objects
        if isinstance(o, pikepdf.Dictionary) and o.get("/S") == "/Figure"
    ]
    covers = {book.objects.pages[0].objgen, book.objects.pages[-1].objgen}
    assert {page for alt, page in alts if alt == "Hollow Fen Studio, logo"} == covers
    assert read_tags(book.edition.pdf).faults == []


@pytest.mark.parametrize(
    ("name", "data"),
    [
        ("logo.svg", b"<svg"),
        ("logo.svg", b"<p/>"),
        ("logo.png", b"\x89PNG\r\n"),
        ("logo.svg", b'<svg xmlns="http://www.w3.org/2000/svg"/>'),
        ("logo.svg", b'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 a b"/>'),
        (
            "logo.svg",
            b'<?xml version="1.0" encoding="foo"?>'
            b'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"/>',
        ),
        (
            "logo.svg",
            b'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9">'
            b'<image href="https://hollowfen.example/reed.png" width="9" height="9"/></svg>',
        ),
        (
            "logo.svg",
            b'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9">'
            b'<style>@import "reed.css";</style></svg>',
        ),
        (
            "logo.svg",
            b'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9">'
            b'<rect width="9" height="9" fill="url(reeds.svg#a)"/></svg>',
        ),
        ("logo.svg", SVG % b"<script/>"),
        ("logo.svg", b"<!DOCTYPE svg [<!ENTITY a 'b'>]>" + SVG % b""),
        ("logo.svg", SVG % (b"<g>" * 300 + b"</g>" * 300)),
        ("logo.svg", SVG.replace(b"9", b"9" * 400) % b""),
        ("logo.eps", b"%!PS-Adobe-3.0 EPSF-3.0\n%%BoundingBox: 0 0 900 900\n"),
        ("logo.gif", b"GIF89a"),
    ],
)
def test_a_logo_that_cannot_be_read_is_an_error(tmp_path: Path, name: str, data: bytes) -> None:
    path = tmp_path / name
    path.write_bytes(data)
    book, (note,) = built(Style(logo=path))
    assert book is None
    assert (note.code, note.place) == ("T716", PLACES["style.logo"])


def test_a_logo_of_few_pixels_is_told(tmp_path: Path) -> None:
    path = tmp_path / "logo.png"
    Image.new("RGB", (120, 40), "#123456").save(path)
    book, (note,) = built(Style(logo=path))
    assert book is not None
    assert (note.code, note.received) == ("T717", "120 x 40")


def test_the_accent_is_the_designers(tmp_path: Path) -> None:
    book, notes = built(Style(accent="#7a1f4b"))
    assert notes == () and book is not None
    steps = pikepdf.parse_content_stream(book.objects.pages[0])
    fills = [[float(v) for v in s.operands] for s in steps if str(s.operator) == "rg"]
    wanted = [n / 255 for n in (0x7A, 0x1F, 0x4B)]
    assert any(fill == pytest.approx(wanted, abs=0.001) for fill in fills)


def test_an_accent_too_pale_to_read_is_printed_darker_and_told() -> None:
    book, (note,) = built(Style(accent="#e8d9a0"))
    assert book is not None
    assert (note.code, note.severity) == ("T715", Severity.WARNING)
    assert note.place == PLACES["style.accent"]
    assert note.received.startswith("#e8d9a0, 1.")
    darker = note.help.split('"')[1]
    assert built(Style(accent=darker))[1] == ()


def test_the_same_font_gives_the_same_bytes_wherever_it_lies(tmp_path: Path) -> None:
    (tmp_path / "elsewhere").mkdir()
    one = font(tmp_path, "Fendisplay")
    two = tmp_path / "elsewhere" / "other.ttf"
    two.write_bytes(one.read_bytes())
    pdfs = set()
    for path in (one, two):
        book, _ = built(Style(fonts={"titles": path}))
        assert book is not None
        pdfs.add(book.edition.pdf)
        assert io.BytesIO(book.edition.pdf).read(5) == b"%PDF-"
    assert len(pdfs) == 1
