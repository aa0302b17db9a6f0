"""A press edition spoiled in one way at a time: the check that should notice does.

A good edition gives no note at all. Rules of PDF/X-4 (ISO 15930-7) are from memory.
"""

from __future__ import annotations

import io
from collections.abc import Callable
from dataclasses import replace

import bulrush
import pikepdf
import pytest
from pressed import pressed

from publish.model.figure import Artwork
from publish.proof import CODES, measure_press

Spoil = Callable[[pikepdf.Pdf], None]


def codes(pdf: bytes, paper: str = "letter") -> set[str]:
    made = pressed(paper)
    edition = replace(made.delivered, pdf=pdf)
    return {n.code for n in measure_press(bulrush.pattern(), {}, made.artwork, edition)}


def spoiled(spoil: Spoil) -> set[str]:
    """Return the codes of what is found after `spoil` has changed the PDF."""
    stream = io.BytesIO()
    with pikepdf.open(io.BytesIO(pressed("letter").delivered.pdf)) as book:
        spoil(book)
        book.save(stream)
    return codes(stream.getvalue())


def adding(content: bytes, page: int = 2) -> Spoil:
    """Return what adds operators at the end of a page."""
    return lambda book: book.pages[page].contents_add(content)


def picture(space: str, components: int, soft: bool = False) -> Spoil:
    def spoil(book: pikepdf.Pdf) -> None:
        made = pikepdf.Stream(book, bytes(components))
        made["/Type"], made["/Subtype"] = pikepdf.Name.XObject, pikepdf.Name.Image
        made["/Width"], made["/Height"], made["/BitsPerComponent"] = 1, 1, 8
        made["/ColorSpace"] = pikepdf.Name(space)
        if soft:
            mask = pikepdf.Stream(book, b"\x80")
            for key in ("/Type", "/Subtype", "/Width", "/Height", "/BitsPerComponent"):
                mask[key] = made[key]
            mask["/ColorSpace"] = pikepdf.Name.DeviceGray
            made["/SMask"] = book.make_indirect(mask)
        page = book.pages[2].obj
        page["/Resources"]["/XObject"]["/Spoil"] = book.make_indirect(made)

    return spoil


def state(**values: object) -> Spoil:
    def spoil(book: pikepdf.Pdf) -> None:
        found = book.pages[2].obj["/Resources"]["/ExtGState"]
        found["/Spoil"] = pikepdf.Dictionary(**values)

    return spoil


def few_dots(book: pikepdf.Pdf) -> None:
    """Print one dot of the right inks two inches wide."""
    picture("/DeviceCMYK", 4)(book)
    book.pages[2].contents_add(b"q 144 0 0 144 200 200 cm /Spoil Do Q")


def box(name: str, *values: float) -> Spoil:
    def spoil(book: pikepdf.Pdf) -> None:
        book.pages[2].obj[name] = pikepdf.Array(values)

    return spoil


def white_beyond_the_cut(book: pikepdf.Pdf) -> None:
    """Paint the bleed of the cover white."""
    book.pages[0].contents_add(b"q 0 0 0 0 k -9 -9 9 810 re f 612 -9 9 810 re f Q")


def without(*path: str) -> Spoil:
    def spoil(book: pikepdf.Pdf) -> None:
        holder = book.trailer
        for part in path[:-1]:
            holder = holder[part]
        del holder[path[-1]]

    return spoil


def intent(change: Callable[[pikepdf.Object], None]) -> Spoil:
    return lambda book: change(book.Root["/OutputIntents"][0])


def another_profile(found: pikepdf.Object) -> None:
    """Put a profile of a screen in the place of the press's."""
    data = bytearray(found["/DestOutputProfile"].read_bytes())
    data[12:16], data[16:20] = b"mntr", b"RGB "
    found["/DestOutputProfile"].write(bytes(data))


def xmp(old: bytes, new: bytes) -> Spoil:
    def spoil(book: pikepdf.Pdf) -> None:
        data = book.Root["/Metadata"].read_bytes()
        assert old in data
        book.Root["/Metadata"].write(data.replace(old, new))

    return spoil


def linked(book: pikepdf.Pdf) -> None:
    note = pikepdf.Dictionary(
        Type=pikepdf.Name.Annot, Subtype=pikepdf.Name.Link, Rect=pikepdf.Array([9, 9, 99, 99])
    )
    book.pages[2].obj["/Annots"] = pikepdf.Array([book.make_indirect(note)])


def font_taken_out(book: pikepdf.Pdf) -> None:
    for item in book.objects:
        if isinstance(item, pikepdf.Dictionary) and item.get("/Type") == "/FontDescriptor":
            for key in ("/FontFile", "/FontFile2", "/FontFile3"):
                if key in item:
                    del item[key]
            return


TEXT = "BT /F 12 Tf 100 100 Td {} (a) Tj ET"
SPOILED: dict[str, tuple[str, Spoil]] = {
    "red, green and blue": ("P881", adding(b"q 1 0 0 rg 9 9 9 9 re f Q")),
    "a line in red, green and blue": ("P881", adding(b"q 1 0 0 RG 9 9 m 99 99 l S Q")),
    "a named colour space": ("P881", adding(b"q /lab-d65 cs 50 9 9 sc 9 9 9 9 re f Q")),
    "a picture in red, green and blue": ("P881", picture("/DeviceRGB", 3)),
    "too much ink": ("P882", adding(b"q 1 1 1 0.4 k 9 9 9 9 re f Q")),
    "text in rich black": ("P883", adding(TEXT.format("0.6 0.4 0.4 1 k").encode())),
    "outlined text in rich black": (
        "P883",
        adding(b"q 0.6 0.4 0.4 1 K BT 1 Tr /F 12 Tf 200 99 Td (a) Tj ET Q"),
    ),
    "a picture of few dots": ("P892", few_dots),
    "an area seen through": ("P884", state(ca=0.5)),
    "a line seen through": ("P884", state(CA=0.5)),
    "a blend": ("P884", state(BM=pikepdf.Name.Multiply)),
    "a picture seen through": ("P884", picture("/DeviceGray", 1, soft=True)),
    "no trim box": ("P885", lambda book: book.pages[2].obj.__delitem__("/TrimBox")),
    "the wrong trim": ("P885", box("/TrimBox", 0, 0, 595.276, 792)),
    "little bleed": ("P885", box("/BleedBox", -4, -4, 616, 796)),
    "bleed beyond the media": ("P885", box("/MediaBox", -2, -2, 614, 794)),
    "white beyond the cut": ("P886", white_beyond_the_cut),
    "no output intent": ("P887", without("/Root", "/OutputIntents")),
    "an output intent twice": (
        "P887",
        lambda book: book.Root["/OutputIntents"].append(book.Root["/OutputIntents"][0]),
    ),
    "an unnamed condition": (
        "P887",
        intent(lambda found: found.__delitem__("/OutputConditionIdentifier")),
    ),
    "no profile": ("P887", intent(lambda found: found.__delitem__("/DestOutputProfile"))),
    "the profile of a screen": ("P887", intent(another_profile)),
    "no XMP": ("P888", without("/Root", "/Metadata")),
    "another version": ("P888", xmp(b"PDF/X-4", b"PDF/X-3")),
    "no version": ("P888", xmp(b"GTS_PDFXVersion", b"GTS_PDFXSomething")),
    "no title": ("P888", xmp(b"dc:title", b"dc:name")),
    "trapped or not": ("P888", without("/Info", "/Trapped")),
    "no date": ("P888", without("/Info", "/CreationDate")),
    "a link": ("P889", linked),
    "a script": (
        "P889",
        lambda book: book.Root.__setitem__("/OpenAction", pikepdf.Dictionary()),
    ),
    "a font that is not there": ("P872", font_taken_out),
}


@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_a_good_edition_has_no_finding(paper: str) -> None:
    assert codes(pressed(paper).delivered.pdf, paper) == set()


@pytest.mark.parametrize("name", SPOILED)
def test_what_is_spoiled_is_found(name: str) -> None:
    code, spoil = SPOILED[name]
    assert code in CODES
    found = spoiled(spoil)
    assert code in found
    assert found <= {code, "P871"}, "a page with another trim is not the paper's size either"


def test_pages_that_were_not_made_for_the_press_are_found() -> None:
    made = pressed("letter")
    found = codes(made.booklet.pdf)
    assert {"P881", "P884", "P885", "P887", "P888", "P889"} <= found


def test_template_sheets_are_measured_after_the_cut() -> None:
    """The bleed and the marks around a page do not count: the square is where it was."""
    made = pressed("letter")
    group = {
        k: tuple(replace(s, square=(1.0, 1.0, 1.05)) for s in sheets)
        for k, sheets in made.artwork.sheets.items()
    }
    wrong = Artwork(made.artwork.figures, group)
    notes = measure_press(bulrush.pattern(), {}, wrong, made.delivered)
    assert {n.code for n in notes} == {"P876"}
