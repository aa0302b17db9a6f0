"""Photographs: upright, in sRGB, fine enough, in their places.

EXIF orientation 6 means that the picture is to be turned a quarter clockwise (Exif 2.3,
tag 0x0112, from memory). sRGB: IEC 61966-2-1. The 200 and 300 pixels to the inch are
common practice, no source.
"""

from __future__ import annotations

import io
from pathlib import Path

import bulrush
import bulrush_drawn
import pikepdf
import pytest
from finished import Book, read_back
from PIL import Image
from tagged import read_tags

from publish.model.book import HALF_LETTER, LETTER, Paper
from publish.model.pattern import Photo
from publish.notes import Note, Place, Severity
from publish.typeset import inspect, pictures, typeset
from publish.words import language
from publish.write import half_size

ARTWORK = bulrush_drawn.artwork(LETTER)
PLACES = {"": Place("pattern.yaml"), "photos.0.file": Place("pattern.yaml", 9, 12)}
FINE, COARSE = 300, 200


def photo(folder: Path, size: tuple[int, int] = (2400, 1600), name: str = "throw.jpg") -> Path:
    """Write a picture whose left half is green and whose right half is red."""
    image = Image.new("RGB", size, "#b02020")
    image.paste("#205c3c", (0, 0, size[0] // 2, size[1]))
    path = folder / name
    image.save(path, quality=95)
    return path


def built(
    *photos: Photo, layout: str = "tideline", paper: Paper = LETTER
) -> tuple[Book | None, tuple[Note, ...]]:
    pattern = bulrush.pattern(photos=photos, layout=layout, places=PLACES)
    edition, notes = typeset(
        pattern, half_size(bulrush.manual(), paper, language()), ARTWORK, paper
    )
    return (read_back(edition) if edition else None), notes


def placed(book: Book) -> list[tuple[int, float, pikepdf.PdfImage]]:
    """Return page, printed width in inches, and picture of each photograph."""
    found = []
    for number, page in enumerate(book.pages, 1):
        for thing in page.get_objects([3], 9):  # FPDF_PAGEOBJ_IMAGE
            left, _, right, _ = thing.get_bounds()
            images = book.objects.pages[number - 1].Resources.get("/XObject", {}).values()
            (image,) = [x for x in images if x.get("/Subtype") == "/Image"]
            found.append((number, (right - left) / 72, pikepdf.PdfImage(image)))
    return found


# Each paper in one layout; the thorough run has each in both.
@pytest.mark.parametrize(
    ("layout", "paper"),
    [
        pytest.param("tideline", LETTER, id="tideline-letter"),
        pytest.param("washland", HALF_LETTER, id="washland-half-letter"),
        pytest.param("washland", LETTER, id="washland-letter", marks=pytest.mark.thorough),
        pytest.param(
            "tideline", HALF_LETTER, id="tideline-half-letter", marks=pytest.mark.thorough
        ),
    ],
)
def test_a_photograph_follows_the_opening_section(
    tmp_path: Path, layout: str, paper: Paper
) -> None:
    shown = Photo(photo(tmp_path), "The throw by the bank.")
    book, notes = built(shown, layout=layout, paper=paper)
    assert notes == () and book is not None
    ((page, width, picture),) = placed(book)
    assert page in (2, 3, 4) and "The throw by the bank." in book.words[page - 1]
    # No more than fits: 300 pixels to the printed inch, or all that there are.
    assert picture.width == pytest.approx(min(2400, width * FINE), abs=2)
    assert picture.colorspace == "/DeviceRGB"
    assert read_tags(book.edition.pdf).faults == []


@pytest.mark.parametrize("layout", ["tideline", "washland"])
def test_a_cover_photograph_takes_the_place_of_the_drawing(tmp_path: Path, layout: str) -> None:
    shown = Photo(photo(tmp_path), place="cover", alt="The throw over a gate.")
    book, notes = built(shown, layout=layout)
    assert notes == () and book is not None
    assert [page for page, _, _ in placed(book)] == [1]
    assert "Drawing of cover." not in alts(book, 1)
    assert "The throw over a gate." in alts(book, 1)


def alts(book: Book, page: int) -> list[str]:
    home = book.objects.pages[page - 1].obj.objgen
    return [
        str(o["/Alt"])
        for o in book.objects.objects
        if isinstance(o, pikepdf.Dictionary) and o.get("/S") == "/Figure" and o.Pg.objgen == home
    ]


def test_without_photographs_the_drawing_stays() -> None:
    book, notes = built()
    assert notes == () and book is not None
    assert placed(book) == []
    assert "Drawing of cover." in alts(book, 1)


def test_too_few_pixels_for_the_printed_size_are_told(tmp_path: Path) -> None:
    book, (note,) = built(Photo(photo(tmp_path, (900, 600))))
    assert book is not None
    ((_, width, picture),) = placed(book)
    assert picture.width == 900 and 900 / width < COARSE
    assert (note.code, note.severity) == ("T718", Severity.WARNING)
    assert note.place == PLACES["photos.0.file"]
    assert note.expected.startswith(f"at least {round(width * COARSE)} pixels across")
    assert note.received == f"900 across, {900 / width:.0f} to the inch"


def test_just_enough_pixels_are_enough(tmp_path: Path) -> None:
    book, _ = built(Photo(photo(tmp_path)))
    assert book is not None
    width = placed(book)[0][1]
    enough = round(width * COARSE) + 1
    assert built(Photo(photo(tmp_path, (enough, enough * 2 // 3), "b.jpg")))[1] == ()


def test_a_turned_photograph_stands_upright(tmp_path: Path) -> None:
    """The camera lay on its side: what it has as left is the top."""
    exif = Image.Exif()
    exif[0x0112] = 6
    path = tmp_path / "turned.jpg"
    Image.open(photo(tmp_path)).save(path, exif=exif, quality=95)
    assert pictures.size(path) == (1600, 2400)
    image = Image.open(io.BytesIO(pictures.photograph(path, 288).data))
    assert image.size == (1200, 1800)
    assert "exif" not in image.info
    for y, channel in ((100, 1), (1700, 0)):
        pixel = image.getpixel((600, y))
        assert isinstance(pixel, tuple) and max(range(3), key=pixel.__getitem__) == channel


def test_a_profile_is_converted_to_srgb(tmp_path: Path) -> None:
    """Magenta and yellow inks in full are 255, 0, 0 where the profile is ignored; printed
    as the profile says they are a duller red, about 227, 6, 19 (from memory)."""
    profile = (Path(__file__).parents[2] / "layouts/press/coated-fogra39.icc").read_bytes()
    path = tmp_path / "inks.jpg"
    red = (0, 255, 255, 0)
    Image.new("CMYK", (600, 400), red).save(path, icc_profile=profile, quality=100)
    shown = Image.open(io.BytesIO(pictures.photograph(path, 144).data))
    pixel = shown.getpixel((10, 10))
    assert isinstance(pixel, tuple)
    assert pixel == pytest.approx((227, 6, 19), abs=12)
    assert "icc_profile" not in shown.info


def test_a_broken_profile_is_passed_over(tmp_path: Path) -> None:
    path = tmp_path / "odd.jpg"
    Image.new("RGB", (600, 400), "#205c3c").save(path, icc_profile=b"no profile", quality=100)
    pixel = Image.open(io.BytesIO(pictures.photograph(path, 144).data)).getpixel((10, 10))
    assert pixel == pytest.approx((0x20, 0x5C, 0x3C), abs=2)


@pytest.mark.parametrize("mode", ["L", "CMYK", "P", "RGBA", "LA", "1"])
def test_every_kind_of_picture_comes_out_readable(tmp_path: Path, mode: str) -> None:
    path = tmp_path / ("a.jpg" if mode == "CMYK" else "a.png")
    Image.new("RGB", (900, 600), "#205c3c").convert(mode).save(path)
    made = pictures.photograph(path, 72)
    shown = Image.open(io.BytesIO(made.data))
    assert shown.mode == ("RGBA" if mode in ("RGBA", "LA") else "RGB")
    assert shown.width == 300


@pytest.mark.parametrize("data", [b"", b"\xff\xd8\xff\xe0 no picture", b"\x89PNG\r\n\x1a\n"])
def test_a_photograph_that_cannot_be_read_is_an_error(tmp_path: Path, data: bytes) -> None:
    path = tmp_path / "throw.jpg"
    path.write_bytes(data)
    shown = Photo(path)
    book, (note,) = built(shown)
    assert book is None
    assert (note.code, note.place) == ("T716", PLACES["photos.0.file"])
    assert note in inspect(bulrush.pattern(photos=(shown,), places=PLACES))


def test_a_picture_that_breaks_off_is_an_error(tmp_path: Path) -> None:
    path = photo(tmp_path)
    path.write_bytes(path.read_bytes()[: path.stat().st_size // 2])
    assert [n.code for n in built(Photo(path))[1]] == ["T716"]


def test_the_same_photograph_gives_the_same_bytes(tmp_path: Path) -> None:
    path = photo(tmp_path)
    assert pictures.photograph(path, 300) == pictures.photograph(path, 300)
