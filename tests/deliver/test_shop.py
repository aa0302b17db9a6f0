"""What a shop gets: pictures measured, words and numbers traced to the model.

The numbers are those of Reedmace, which is worked out by hand in tests/reedmace.py.
"""

from __future__ import annotations

import io
import json
from dataclasses import replace
from fractions import Fraction

import bulrush
import numpy as np
import pypdfium2
import pytest
from PIL import Image
from pressed import pressed
from reedmace import draft, pattern, size
from reedmace_case import manual, pillow_case, plan

from publish.deliver import kit_files, numbers, picture_notes, pictures, shop_files, tester
from publish.deliver.kits import kits, kits_text
from publish.deliver.listing import included, listing, listing_text
from publish.deliver.shop import shown_pages
from publish.model.cutplan import CutPlan
from publish.model.figure import Picture
from publish.model.house import ShopPictures
from publish.model.pattern import Colourway
from publish.model.words import BackCover, FigureSpec, Manual
from publish.words import language

COMPUTED = "Computed from the pattern, not photographed."

MINI = "20 in × 20 in"
FIGURE = FigureSpec("cover", "quilt", "mini")


def sold() -> Manual:
    """Return the manual with a back cover that has something on it."""
    back = BackCover(
        "Reedmace stands in the ditch.\n\nFold, cut, open.",
        (("Mini", MINI),),
        "HF-9",
        "First edition",
        "Sew as many as you like.",
        "patterns@hollowfen.example",
        FIGURE,
        ("Pale linen: 1 3/8 yd (1.20 m)",),
    )
    return replace(manual(), back=back)


def computed(cut: CutPlan | None = None) -> dict[str, object]:
    return numbers(pattern(), {"mini": size()}, {"mini": draft()}, {"mini": cut or plan()})


def test_pictures_have_the_pixels_asked_for() -> None:
    files = pictures(pressed("letter").booklet, sides=(2000, 333))
    assert sorted(files) == [
        "shop/back-2000.png",
        "shop/back-333.png",
        "shop/cover-2000.png",
        "shop/cover-333.png",
    ]
    for name, data in files.items():
        image = Image.open(io.BytesIO(data))
        side = int(name.removesuffix(".png").rsplit("-", 1)[1])
        assert image.format == "PNG"
        assert max(image.size) == side
        assert min(image.size) == pytest.approx(side * 8.5 / 11, abs=1)
    again = pictures(pressed("letter").booklet, sides=(2000, 333))
    assert again == files


def test_a_picture_is_the_page() -> None:
    booklet = pressed("letter").booklet
    data = pictures(booklet, (800,), {"third": 3})["shop/third-800.png"]
    page = pypdfium2.PdfDocument(booklet.pdf)[2].render(scale=799.99 / 792).to_numpy()
    dots = np.array(Image.open(io.BytesIO(data)))
    assert dots.shape[:2] == page.shape[:2]
    assert np.abs(dots.astype(int) - page[..., 2::-1].astype(int)).mean() < 1


@pytest.mark.parametrize("number", [0, 400, -400])
def test_a_page_that_is_not_there_is_refused(number: int) -> None:
    with pytest.raises(ValueError, match="has no page"):
        pictures(pressed("letter").booklet, (100,), {"cover": number})


def test_the_listing_says_what_the_model_says() -> None:
    said = listing(pattern(), sold(), computed(), [pressed("letter").booklet], {})
    assert said["title"] == "Reedmace"
    assert said["summary"] == ["Reedmace stands in the ditch.", "Fold, cut, open."]
    assert said["sizes"] == [
        {
            "key": "mini",
            "title": "Mini",
            "finished": MINI,
            "inches": {"width": "20", "height": "20"},
        }
    ]
    assert said["to_buy"]["mini"] == {
        "Pale linen": {"yards": "1 3/8", "metres": "1.20"},
        "Sandbar": {"yards": "1/4", "metres": "0.20"},
        "Deep moss": {"yards": "3/4", "metres": "0.60"},
    }
    fabrics = plan().fabrics | {"moss": replace(plan().fabrics["moss"], buy=Fraction(36))}
    other = computed(replace(plan(), fabrics=fabrics))
    changed = listing(pattern(), sold(), other, [], {})
    assert changed["to_buy"]["mini"]["Deep moss"]["yards"] == "1"


def test_the_listing_as_a_page() -> None:
    said = listing(pattern(), sold(), computed(), [pressed("letter").booklet], {})
    text = listing_text(language(), sold(), said)
    for words in (
        "# Reedmace",
        f"**Mini**: {MINI}",
        "Stock number: HF-9",
        "### What to buy",
        "| Deep moss | 3/4 yd (0.60 m) |",
        "Sew as many as you like.",
        "patterns@hollowfen.example",
    ):
        assert words in text
    assert "Skill" not in text, "what the pattern does not say has no line"
    assert "\n\n\n" not in text and text.endswith("\n")


def test_computed_pictures_are_listed_with_their_words() -> None:
    way = Colourway("dusk", "Dusk", {})
    own = replace(pattern(), colourways={"dusk": way})
    shown = {
        "mini": Picture(b"one", 1600, 1600, "figure-on-a-wall", size="mini"),
        "colourway-dusk": Picture(
            b"two", 1600, 1600, "figure-lying-flat", size="mini", colourway="dusk"
        ),
    }
    said = listing(own, sold(), computed(), [pressed("letter").booklet], shown)
    assert said["pictures"] == [
        {"file": "mini-1600.jpg", "alt": f"Reedmace, Mini, {MINI}, on a pale wall. {COMPUTED}"},
        {
            "file": "colourway-dusk-1600.jpg",
            "alt": f"Reedmace, Mini, {MINI}, in the colours of Dusk, lying flat. {COMPUTED}",
        },
    ]
    text = listing_text(language(), sold(), said)
    assert all(f"- `{p['file']}`: {p['alt']}" in text for p in said["pictures"])
    files = shop_files(own, sold(), computed(), [pressed("letter").booklet], shown)
    assert files["shop/mini-1600.jpg"] == b"one"
    assert files["shop/colourway-dusk-1600.jpg"] == b"two"


def test_what_is_included_is_counted() -> None:
    booklet = pressed("letter").booklet
    pages = len(pypdfium2.PdfDocument(booklet.pdf))
    found = included(language(), manual(), [booklet])
    assert found[0] == (f"Booklet, {pages} pages, for US Letter, with 3 full-size template sheets")
    assert found[1] == "15 numbered steps, 17 drawings"
    assert len(found) == 2
    assert included(language(), manual(), [booklet, pressed("letter").delivered]) == found, (
        "not for makers"
    )


def test_kits_are_one_plan_many_times() -> None:
    """25 kits of 1 3/8 yd are 34 3/8 yd; of 3/4 yd, 18 3/4; of 1/4 yd, 6 1/4: by hand."""
    found = kits(pattern(), {"mini": plan()}, {"mini": 25})
    bolts = {name: bolt["yards"] for name, bolt in found["bolts"].items()}
    assert bolts == {"linen": "34 3/8", "sandbar": "6 1/4", "moss": "18 3/4"}
    linen = found["sizes"]["mini"]["fabrics"]["linen"]
    assert linen["one_kit"] == {
        "inches": "49 1/2",
        "yards": "1 3/8",
        "metres": "1.20",
        "words": "1 3/8 yd (1.20 m)",
    }
    assert linen["all_kits"]["metres"] == "30.00"
    assert linen["strips"] == ["1 strip 28 in deep, each 1 E", "1 strip 17 1/2 in deep, each 1 A"]
    pieces = {p["letter"]: (p["one_kit"], p["all_kits"]) for p in found["sizes"]["mini"]["pieces"]}
    assert pieces["C"] == (2, 50) and pieces["F"] == (3, 75)
    text = kits_text(language(), found)
    assert "| Pale linen | 1 3/8 yd (1.20 m) | 34 3/8 yd (30.00 m) | 40 in |" in text
    assert "Batting for each kit: Cotton, 26 × 26 in." in text


def test_kits_of_several_sizes_add_up() -> None:
    sizes = {"mini": plan(), "large": plan()}
    both = replace(pattern(), sizes=pattern().sizes | {"large": pattern().sizes["mini"]})
    found = kits(both, sizes, {"mini": 2, "large": 3})
    alone = kits(both, sizes, {"mini": 5})
    assert found["bolts"] == alone["bolts"]
    assert [s["kits"] for s in found["sizes"].values()] == [2, 3]


@pytest.mark.parametrize(
    ("wanted", "reason"), [({"bed": 3}, "no size 'bed'"), ({"mini": 0}, "at least one")]
)
def test_kits_that_cannot_be_are_refused(wanted: dict[str, int], reason: str) -> None:
    with pytest.raises(ValueError, match=reason):
        kits(pattern(), {"mini": plan()}, wanted)


def test_the_testers_form_asks_for_each_run_of_steps() -> None:
    form = tester.tester_form(pattern(), sold(), computed())
    assert "### Making, step 1" in form
    assert form.count("### ") == 2, "a section without steps is not asked about"
    assert "- ☐ Mini wall quilt" in form or "- ☐ Mini" in form
    assert "patterns@hollowfen.example" in form


def test_the_testers_form_compares_with_the_computed_sizes() -> None:
    """By hand: motif square 14 + 1 1/2, block 16 + 2 seams, with borders 20 + 2 seams."""
    form = tester.tester_form(pattern(), sold(), computed())
    for row in (
        "| Square for the motif, cut | 15 1/2 in (39.4 cm) square |",
        "| Motif, sewn, from tip to tip | 14 in (35.6 cm) |",
        "| Finished | 20 in (50.8 cm) square |",
        "| Backing, cut | 28 in (71.1 cm) square |",
        "| Batting, cut | 26 in (66.0 cm) square |",
        "| Binding, joined | 115 1/2 in (293.4 cm) |",
        "| Pale linen | 1 3/8 yd (1.20 m) |",
    ):
        assert row in form
    assert "20 1/2 in (52.1 cm) square" in form, "the top with its seam allowances"


def test_a_pillow_is_asked_about_its_back() -> None:
    case = pillow_case()
    found = numbers(case.pattern, case.sizes, case.drafts, case.plans)
    form = tester.tester_form(case.pattern, sold(), found)
    assert "| Overlap of the pillow's back | 4 in (10.2 cm) |" in form
    assert "Binding" not in form


def test_a_shop_shows_the_opening_and_the_materials_unless_told() -> None:
    made = pressed("letter")
    book = pypdfium2.PdfDocument(made.booklet.pdf)
    shown = shown_pages(pattern(), bulrush.manual(), made.booklet)
    sections = {s.key: s.title for s in bulrush.manual().sections}
    titles = [next(iter(sections.values())), sections["materials"]]
    assert len(shown) == 2
    for number, title in zip(shown, titles, strict=True):
        assert title in book[number - 1].get_textpage().get_text_bounded()
    told = replace(pattern(), shop=ShopPictures(pages=(4, 2)))
    assert shown_pages(told, bulrush.manual(), made.booklet) == (4, 2)
    templates = replace(made.booklet, name="templates-letter", kind="templates")
    assert shown_pages(told, bulrush.manual(), templates) == ()


def test_pages_that_must_not_be_pictured_are_told() -> None:
    booklet = pressed("letter").booklet
    sheet = min(booklet.sheet_pages.values())
    told = replace(pattern(), shop=ShopPictures(pages=(2, 400, sheet)))
    found = picture_notes(told, booklet)
    assert [(n.code, n.received) for n in found] == [("X904", "400"), ("X905", f"page {sheet}")]
    assert picture_notes(replace(told, shop=ShopPictures(pages=(2,))), booklet) == ()
    assert picture_notes(told, replace(booklet, name="templates-letter", kind="templates")) == ()


def test_everything_as_files() -> None:
    shown = replace(pattern(), shop=ShopPictures((100,), (80, 60), (3,)))
    files = shop_files(shown, sold(), computed(), [pressed("letter").booklet], {})
    files |= kit_files(language(), kits(pattern(), {"mini": plan()}, {"mini": 3}))
    assert sorted(files) == [
        "kits.json",
        "kits.md",
        "shop/back-100.png",
        "shop/cover-100.png",
        "shop/listing.json",
        "shop/listing.md",
        "shop/page-03-60.png",
        "shop/page-03-80.png",
        "shop/tester-form.md",
    ]
    assert json.loads(files["shop/listing.json"])["title"] == "Reedmace"
    assert json.loads(files["kits.json"])["kits"] == {"mini": 3}
