"""What stands on finished pages: type, room, page numbers, bookmarks, pictures.

Each check is silent on a sound page and loud on one spoiled in one way. Pages are printed
by cairo, pictures and links are put in by qpdf. The limits are the project's own (common
practice, no source).
"""

from __future__ import annotations

import pikepdf
import pytest
from printing import findings, page_svg, pdf_of, text
from reedmace_case import codes

COVER = page_svg(text("Reedmace", 200, 300, 30))
NAME = "booklet-letter"


def booklet(*inside: str, bookmarks: tuple[str, ...] = ("Reedmace",)) -> pikepdf.Pdf:
    """Return pages between two covers."""
    return pdf_of([COVER, *(page_svg(body) for body in inside), COVER], bookmarks)


def body(number: int, words: str = "Cut the ground.") -> str:
    return text(words, 100, 100) + text(f"Reedmace {number}", 300, 750, 8)


def found(book: pikepdf.Pdf, code: str) -> list[str]:
    """Return what is said of one code; numbers to buy are not these pages' business."""
    return [f"{n.what} {n.received}" for n in findings(book, (), NAME) if n.code == code]


def test_sound_pages_are_silent() -> None:
    assert set(codes(findings(booklet(body(2), body(3)), (), NAME))) == {"P878"}


# Type -------------------------------------------------------------------------------------


def test_type_of_six_points_is_large_enough() -> None:
    assert found(booklet(body(2) + text("six", 100, 200, 6)), "P891") == []


@pytest.mark.parametrize(
    "small",
    [
        text("tiny", 100, 200, 5.8),
        f'<g transform="scale(0.5)">{text("tiny", 200, 400, 11)}</g>',
        f'<g transform="rotate(30 100 200) scale(0.5 0.6)">{text("tiny", 200, 400, 10)}</g>',
    ],
)
def test_small_type_is_found_however_it_got_small(small: str) -> None:
    said = found(booklet(body(2) + small), "P891")
    assert len(said) == 1 and "page 2" in said[0] and said[0].endswith("points: tiny")


# Room -------------------------------------------------------------------------------------


@pytest.mark.parametrize(("x", "y"), [(10, 400), (570, 400), (300, 16), (300, 785)])
def test_text_in_the_margin_is_found(x: int, y: int) -> None:
    said = found(booklet(body(2) + text("selvage", x, y)), "P894")
    assert said == ["page 2 of booklet-letter has text in its margin selvage"]


def test_covers_may_use_the_margin() -> None:
    cover = page_svg(text("Reedmace", 10, 15, 12))
    assert found(pdf_of([cover, page_svg(body(2)), cover], ("Reedmace",)), "P894") == []


def test_lines_over_each_other_are_found() -> None:
    lines = text("Press the seam open.", 100, 300) + text("Trim the points.", 104, 303)
    said = found(booklet(body(2) + lines), "P894")
    assert len(said) == 1 and "page 2 of booklet-letter has lines over each other" in said[0]
    assert "Press the seam" in said[0]
    apart = text("Press the seam open.", 100, 300) + text("Trim the points.", 104, 315)
    assert found(booklet(body(2) + apart), "P894") == []


def test_slanting_letters_do_not_count_as_lines() -> None:
    slant = f'<g transform="rotate(35 100 300)">{text("place on a single fold", 100, 300)}</g>'
    assert found(booklet(body(2) + slant), "P894") == []


# Page numbers -----------------------------------------------------------------------------


def test_a_wrong_or_missing_page_number_is_found() -> None:
    assert found(booklet(body(2), body(4)), "P895") == [
        "page 3 of booklet-letter has not its own number 4"
    ]
    lost = booklet(body(2), text("Press.", 100, 100) + text("Reedmace", 300, 750, 8))
    assert found(lost, "P895") == ["page 3 of booklet-letter has not its own number none"]


def test_a_layout_without_page_numbers_is_its_own_business() -> None:
    assert found(booklet(text("Press.", 100, 100), text("Trim.", 100, 100)), "P895") == []


@pytest.mark.parametrize(("printed", "silent"), [("3", True), ("4", False)])
def test_a_reference_to_another_page_is_found(printed: str, silent: bool) -> None:
    book = booklet(body(2, "Piecing") + text(printed, 200, 100), body(3))
    page = book.pages[1].obj
    page["/Annots"] = pikepdf.Array(
        [
            pikepdf.Dictionary(
                Type=pikepdf.Name.Annot,
                Subtype=pikepdf.Name.Link,
                Rect=[195, 792 - 105, 215, 792 - 85],
                Dest=pikepdf.Array([book.pages[2].obj, pikepdf.Name.Fit]),
            )
        ]
    )
    said = found(book, "P895")
    assert said == ([] if silent else ["page 2 of booklet-letter refers to another page 4"])


# Bookmarks --------------------------------------------------------------------------------


def test_a_bookmark_to_another_page_than_it_names_is_found() -> None:
    pages = (body(2, "Piecing"), body(3, "Quilt-\u00adting the top"))
    assert found(booklet(*pages, bookmarks=("Reedmace", "Piecing")), "P896") == []
    book = booklet(*pages, bookmarks=("Reedmace", "Binding"))
    wrong = [n.expected for n in findings(book, (), NAME) if n.code == "P896"]
    assert wrong == ["Binding on page 2"]


# Pictures ---------------------------------------------------------------------------------


def with_picture(
    dots: int, inches: float, space: pikepdf.Object, nested: bool = False, components: int = 3
) -> pikepdf.Pdf:
    """Return a booklet with a square picture of `dots` x `dots`, printed `inches` wide."""
    book = booklet(body(2))
    image = book.make_stream(
        bytes(dots * dots * components),
        Type=pikepdf.Name.XObject,
        Subtype=pikepdf.Name.Image,
        Width=dots,
        Height=dots,
        BitsPerComponent=8,
        ColorSpace=space,
    )
    page = book.pages[1]
    side = 72 * inches
    if nested:  # half of the reduction in the drawing's own matrix, half on the page
        image = book.make_stream(
            b"q 4 0 0 4 0 0 cm /Inner Do Q",
            Type=pikepdf.Name.XObject,
            Subtype=pikepdf.Name.Form,
            BBox=[0, 0, 99, 99],
            Matrix=[0.5, 0, 0, 0.5, 0, 0],
            Resources=pikepdf.Dictionary(XObject=pikepdf.Dictionary(Inner=image)),
        )
        side /= 2
    page.Resources["/XObject"] = pikepdf.Dictionary(Picture=image)
    page.contents_add(f"q {side} 0 0 {side} 100 100 cm /Picture Do Q".encode())
    return book


@pytest.mark.parametrize("nested", [False, True])
@pytest.mark.parametrize(("dots", "coarse"), [(300, False), (299, True)])
def test_the_dots_to_a_printed_inch_are_counted(dots: int, coarse: bool, nested: bool) -> None:
    book = with_picture(dots, 2.0, pikepdf.Name.DeviceRGB, nested)
    said = found(book, "P892")
    assert bool(said) is coarse
    if coarse:
        assert said[0].endswith("150 to the inch")  # 149.5, rounded to be read


@pytest.mark.parametrize(
    ("space", "components", "sound"),
    [
        (pikepdf.Name.DeviceRGB, 3, True),
        (pikepdf.Name.DeviceGray, 1, True),
        (pikepdf.Name.DeviceCMYK, 4, False),
        (pikepdf.Array([pikepdf.Name.Indexed, pikepdf.Name.DeviceRGB, 0, b"\0\0\0"]), 1, True),
        (pikepdf.Array([pikepdf.Name.Indexed, pikepdf.Name.DeviceCMYK, 0, b"\0\0\0\0"]), 1, False),
    ],
)
def test_colours_of_a_print_shop_are_found(space: object, components: int, sound: bool) -> None:
    book = with_picture(200, 1.0, space, components=components)
    assert (found(book, "P893") == []) is sound
