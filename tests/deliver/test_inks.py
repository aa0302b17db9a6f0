"""Colours in printing inks: published values of the conditions, and the rules for text.

Published: the characterisation data of the two conditions, solid by solid. FOGRA39L
(Fogra, December 2006) has the aims of ISO 12647-2:2004 for paper types 1 and 2; ANSI
CGATS/GRACoL TR 006-2007 those of GRACoL. CIE L*a*b*, D50, white backing.
"""

from __future__ import annotations

import io

import pikepdf
import pypdfium2
import pytest
from PIL import Image, ImageCms

from publish.deliver.inks import (
    BLACK,
    CONDITIONS,
    FILL,
    LINE,
    RICH,
    TEXT,
    TOTAL,
    press_for,
)
from publish.deliver.recolour import Recolouring, recolour

SOLIDS = {
    "a4": {
        (0, 0, 0, 0): (95.0, 0.0, -2.0),
        (100, 0, 0, 0): (55.0, -37.0, -50.0),
        (0, 100, 0, 0): (48.0, 74.0, -3.0),
        (0, 0, 100, 0): (89.0, -5.0, 93.0),
        (0, 0, 0, 100): (16.0, 0.0, 0.0),
    },
    "letter": {
        (0, 0, 0, 0): (95.0, -0.02, -1.96),
        (100, 0, 0, 0): (54.96, -37.12, -50.0),
        (0, 100, 0, 0): (47.93, 74.11, -3.01),
        (0, 0, 100, 0): (88.94, -5.02, 93.17),
        (0, 0, 0, 100): (14.95, 0.19, -0.14),
    },
}
AIM = 2.0
"""CIE 1976 difference that a profile may be off at a solid; its steps are whole units here."""
PAPERS = sorted(CONDITIONS)
GREEN, RED, LINEN, SLATE = (47, 97, 82), (147, 64, 74), (240, 233, 217), (36, 48, 62)


def measured(paper: str, inks: tuple[float, ...], intent: int) -> tuple[float, float, float]:
    """Return what a condition's profile says that inks (percent) look like, in Lab."""
    profile = ImageCms.ImageCmsProfile(io.BytesIO(CONDITIONS[paper].profile))
    lab = ImageCms.createProfile("LAB")
    change = ImageCms.buildTransform(profile, lab, "CMYK", "LAB", intent)
    dot = Image.new("CMYK", (1, 1), tuple(round(2.55 * v) for v in inks))
    seen = ImageCms.applyTransform(dot, change).getpixel((0, 0))
    return lab_of(seen)


def lab_of(dot: tuple[int, ...]) -> tuple[float, float, float]:
    """Return an eight-bit Lab dot as numbers: 0 to 100, and 128 for no colour."""
    return dot[0] / 2.55, dot[1] - 128, dot[2] - 128


def apart(one: tuple[float, ...], other: tuple[float, ...]) -> float:
    return sum((a - b) ** 2 for a, b in zip(one, other, strict=True)) ** 0.5


@pytest.mark.parametrize("paper", PAPERS)
def test_profiles_agree_with_the_published_solids(paper: str) -> None:
    for inks, aim in SOLIDS[paper].items():
        seen = measured(paper, inks, ImageCms.Intent.ABSOLUTE_COLORIMETRIC)
        assert apart(seen, aim) <= AIM, (inks, seen, aim)


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("colour", [GREEN, RED, LINEN, (185, 199, 198), (201, 143, 78)])
def test_fabrics_look_the_same_in_print(paper: str, colour: tuple[int, int, int]) -> None:
    """Within 4 units (CIE 1976): black point compensation lightens the dark ones a little."""
    inks = press_for(CONDITIONS[paper]).inks(colour, FILL)
    seen = measured(paper, tuple(100 * v for v in inks), ImageCms.Intent.RELATIVE_COLORIMETRIC)
    srgb, lab = ImageCms.createProfile("sRGB"), ImageCms.createProfile("LAB")
    change = ImageCms.buildTransform(srgb, lab, "RGB", "LAB", 1)
    want = ImageCms.applyTransform(Image.new("RGB", (1, 1), colour), change).getpixel((0, 0))
    assert apart(seen, lab_of(want)) <= 4.0


@pytest.mark.parametrize("paper", PAPERS)
def test_no_colour_lays_down_too_much_ink(paper: str) -> None:
    press = press_for(CONDITIONS[paper])
    steps = range(0, 256, 51)
    for use in (TEXT, LINE, FILL):
        for colour in ((r, g, b) for r in steps for g in steps for b in steps):
            inks = press.inks(colour, use)
            assert sum(inks) <= TOTAL + 0.015
            if use == TEXT and inks[3] > RICH:
                assert inks[:3] == (0, 0, 0), "text is never black on other inks"


def test_black_and_greys_are_black_alone() -> None:
    press = press_for(CONDITIONS["a4"])
    for use in (TEXT, LINE, FILL):
        assert press.inks((0, 0, 0), use) == BLACK
        assert press.inks((36, 34, 31), use) == BLACK, "the ink of booklets and figures"
        assert press.inks((255, 255, 255), use) == (0, 0, 0, 0)
        grey = press.inks((119, 119, 119), use)
        assert grey[:3] == (0, 0, 0) and 0.4 < grey[3] < 0.8
    quiet = press.inks((92, 88, 82), TEXT)
    assert quiet[:3] == (0, 0, 0) and 0.6 < quiet[3] < 0.95
    assert press.inks(SLATE, TEXT) == BLACK
    assert any(press.inks(SLATE, FILL)[:3]), "a dark fabric keeps its hue"
    assert any(press.inks(LINEN, FILL)[:3]), "and so does a pale one"


def rewritten(content: str) -> list[str]:
    """Return a content stream's operators with their operands after recolouring."""
    book = pikepdf.new()
    stream = pikepdf.Stream(book, content.encode())
    parsed = pikepdf.parse_content_stream(stream)
    steps = list(Recolouring(press_for(CONDITIONS["a4"])).rewrite(parsed))
    return pikepdf.unparse_content_stream(steps).decode().split("\n")


def inks(colour: tuple[int, int, int], use: str, operator: str = "k") -> str:
    values = press_for(CONDITIONS["a4"]).inks(colour, use)
    return " ".join(f"{v:g}" for v in values) + f" {operator}"


def test_a_colour_is_written_where_it_is_used() -> None:
    red = "0.576471 0.25098 0.290196"
    steps = rewritten(f"{red} rg {red} RG 0 0 9 9 re f 0 0 m 9 9 l S")
    assert steps[:4] == [inks(RED, FILL), inks(RED, LINE, "K"), "0 0 9 9 re", "f"]
    assert not any(s.endswith(("rg", "RG")) for s in steps)


def test_one_colour_has_the_inks_of_what_it_paints() -> None:
    steps = rewritten("0.141 0.188 0.243 rg 0 0 9 9 re f BT (a) Tj ET 0 0 9 9 re f")
    used = [s for s in steps if s.endswith(" k")]
    assert used == [inks(SLATE, FILL), "0 0 0 1 k", inks(SLATE, FILL)]
    assert inks(SLATE, FILL) != "0 0 0 1 k"


def test_colours_come_back_with_the_graphics_state() -> None:
    steps = rewritten("1 0 0 rg q 0 0 1 rg 0 0 1 1 re f Q 0 0 2 2 re f 0 0 3 3 re f")
    fills = [s for s in steps if s.endswith((" k", " re", "q", "Q"))]
    assert fills == [
        "q",
        inks((0, 0, 255), FILL),
        "0 0 1 1 re",
        "Q",
        inks((255, 0, 0), FILL),
        "0 0 2 2 re",
        "0 0 3 3 re",
    ]


def test_no_colour_is_set_inside_a_path() -> None:
    """ISO 32000-1, 8.5.2.1: only path operators stand between a path and its painting."""
    steps = rewritten("1 0 0 rg 0 0 m 5 5 l 5 0 l h 1 1 2 2 re f* 0 g 0 0 m 1 1 l W n")
    start = steps.index("0 0 m")
    assert steps[start : start + 6] == ["0 0 m", "5 5 l", "5 0 l", "h", "1 1 2 2 re", "f*"]


def test_inks_and_tiles_stay_as_they_are() -> None:
    steps = rewritten("0.1 0.2 0.3 0.4 k 0 0 1 1 re f /Pattern cs /p0 scn 0 0 1 1 re f")
    assert steps[0] == "0.1 0.2 0.3 0.4 k"
    assert steps[3:5] == ["/Pattern cs", "/p0 scn"]
    assert rewritten("/DeviceRGB cs 1 0 0 sc 0 0 1 1 re f")[0] == inks((255, 0, 0), FILL)
    assert rewritten("/DeviceGray CS 0.5 SC 0 0 m 1 1 l S")[0].endswith(" K")


def image(book: pikepdf.Pdf, dots: bytes, space: pikepdf.Name) -> pikepdf.Stream:
    """Return a picture of two by two dots."""
    made = pikepdf.Stream(book, dots)
    made["/Type"], made["/Subtype"] = pikepdf.Name.XObject, pikepdf.Name.Image
    made["/Width"], made["/Height"], made["/BitsPerComponent"] = 2, 2, 8
    made["/ColorSpace"] = space
    return made


def test_pictures_are_in_inks_and_opaque() -> None:
    book = pikepdf.new()
    book.add_blank_page(page_size=(20, 20))
    picture = image(book, bytes([147, 64, 74] * 4), pikepdf.Name.DeviceRGB)
    mask = image(book, bytes([255, 255, 0, 0]), pikepdf.Name.DeviceGray)
    picture["/SMask"] = book.make_indirect(mask)
    resources = pikepdf.Dictionary(XObject=pikepdf.Dictionary(I0=book.make_indirect(picture)))
    book.pages[0].obj["/Resources"] = resources
    book.pages[0].contents_add(b"q 20 0 0 20 0 0 cm /I0 Do Q")
    recolour(book, press_for(CONDITIONS["a4"]))
    made = book.pages[0].obj["/Resources"]["/XObject"]["/I0"]
    assert made["/ColorSpace"] == "/DeviceCMYK" and "/SMask" not in made
    dots = made.read_bytes()
    assert len(dots) == 16
    red = [round(v / 255, 2) for v in dots[:4]]
    assert red == [round(v, 2) for v in press_for(CONDITIONS["a4"]).inks(RED, FILL)]
    stream = io.BytesIO()
    book.save(stream)
    drawn = pypdfium2.PdfDocument(stream.getvalue())[0].render(scale=2).to_numpy()[..., :3]
    assert drawn[5, 20].max() < 250, "where the mask is full the picture shows"
    assert drawn[35, 20].min() == 255, "and where it is clear the paper does"
