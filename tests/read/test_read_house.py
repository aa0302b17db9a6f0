"""The designer's own look and voice as they are read: style, photos, steps, papers."""

import re
from fractions import Fraction

from helpers import SMALLEST, assert_no_notes, loaded, notes_of, pattern

from publish import read
from publish.model.pattern import Photo, ShopPictures, StepChange, Style
from publish.notes import Severity

LOOK = """\
papers: [half-letter, a5]
style:
  accent: "#2F6152"
  logo: art/logo.svg
  fonts: {titles: fen.ttf, labels_bold: fen.otf}
photos:
  - {file: throw.JPG, place: cover}
  - {file: throw.JPG, caption: The bank., alt: Reeds.}
"""
STEPS = """\
steps:
  - {step: folding-half-8, text: Fold it., tip: none, figure: none}
  - before: folding-half-8
    text: |
      Clear the table.

      Then rest.
    caution: Mind the pins.
    sizes: [mini]
  - {remove: quilting-unpin}
  - {move: sleeve-hem, after: sleeve-tube}
"""
FILES = ("art/logo.svg", "fen.ttf", "fen.otf", "throw.JPG")


def written(folder, text):
    (folder / "art").mkdir(exist_ok=True)
    return loaded(folder, text, drawings=("bulrush.svg", *FILES))


def test_what_is_left_out_is_the_layouts_own(tmp_path):
    made = loaded(tmp_path)
    assert (made.style, made.photos, made.steps) == (Style(), (), ())
    assert made.papers == ("letter", "a4")


def test_style_and_photos_are_paths_in_the_patterns_folder(tmp_path):
    made = written(tmp_path, SMALLEST + LOOK)
    fonts = {"titles": tmp_path / "fen.ttf", "labels_bold": tmp_path / "fen.otf"}
    assert made.style == Style("#2f6152", tmp_path / "art" / "logo.svg", fonts)
    file = tmp_path / "throw.JPG"
    assert made.photos == (Photo(file, "", "cover"), Photo(file, "The bank.", "page", "Reeds."))
    assert made.papers == ("half-letter", "a5")
    assert (
        made.place("photos", 1, "file").line == 10 + LOOK[: LOOK.rindex("- {file")].count("\n") + 1
    )


def test_a_barcode_keeps_its_kind_and_gets_its_check_digit(tmp_path):
    # GS1, How to calculate a check digit manually; crifan.com docbook on UPC
    for written_as, kept in (
        ("EAN 629104150021", "EAN-13 6291041500213"),
        ("UPC 036000291452", "UPC-A 036000291452"),
    ):
        made = loaded(tmp_path, SMALLEST + f"publication: {{barcode: {written_as}}}\n")
        assert made.publication.barcode == kept
    found = notes_of(tmp_path, SMALLEST + "publication:\n  barcode: 6291041500214\n")
    assert [n.code for n in found] == ["R134"]
    assert str(found[0].place).endswith(f"pattern.yaml:{SMALLEST.count(chr(10)) + 2}:12")
    assert "it should be 3" in found[0].help


def test_twelve_digits_without_their_kind_say_how_they_were_taken(tmp_path):
    """They are a whole UPC or an EAN that lacks its check digit: 0 first makes one the other."""
    head = SMALLEST + "publication:\n  barcode: "
    made, notes, _ = read.load(pattern(tmp_path, f'{head}"036000291452"\n'))
    assert made.publication.barcode == "UPC-A 036000291452"
    assert [(n.code, n.severity, n.place.path) for n in notes] == [
        ("R137", Severity.INFO, "publication.barcode")
    ]
    said = re.search(r"`(\d{13})`", notes[0].help)[1]
    assert (
        said[:12] == "036000291452"
        and (int(said[-1]) + sum(int(d) * (3 if n % 2 else 1) for n, d in enumerate(said[:12])))
        % 10
        == 0
    )  # GS1: weights 1 and 3 in turn
    for plain in ("UPC 036000291452", '"03600029145"', "6291041500213", "EAN 629104150021"):
        assert notes_of(tmp_path, f"{head}{plain}\n") == ()


def test_paper_and_pictures_have_plain_defaults(tmp_path):
    made = loaded(tmp_path)
    assert made.publication.barcode == ""
    assert made.publication.paper_thickness == Fraction(5, 1000)
    assert made.shop == ShopPictures((2000, 600), (1200,), ())
    text = "publication: {paper_thickness: 0.1 mm}\nshop: {pictures: {page: [900], pages: [4]}}\n"
    made = loaded(tmp_path, SMALLEST + text)
    assert made.publication.paper_thickness == Fraction(1, 254)
    assert made.shop == ShopPictures((2000, 600), (900,), (4,))


def test_changes_of_steps_are_read_in_their_order(tmp_path):
    made = written(tmp_path, SMALLEST + STEPS)
    assert made.steps == (
        StepChange("replace", "folding-half-8", text="Fold it.", tip="", figure=False),
        StepChange(
            "insert",
            "",
            "folding-half-8",
            True,
            "Clear the table.\n\nThen rest.",
            caution="Mind the pins.",
            sizes=("mini",),
        ),
        StepChange("remove", "quilting-unpin"),
        StepChange("move", "sleeve-hem", "sleeve-tube"),
    )
    assert str(made.place("steps", 1, "text")).endswith("pattern.yaml:14:11")


def test_a_file_that_is_missing_is_told_with_the_nearest(tmp_path):
    text = SMALLEST + "style: {logo: loog.svg}\nphotos: [{file: trow.jpg}]\n"
    found = notes_of(tmp_path, text, drawings=("bulrush.svg", "logo.svg", "throw.jpg"))
    assert [(n.code, n.help) for n in found] == [
        ("R131", "write `logo.svg`"),
        ("R131", "write `throw.jpg`"),
    ]


def test_a_link_out_of_the_folder_is_refused(tmp_path):
    home = tmp_path / "home"
    home.mkdir()
    (tmp_path / "logo.svg").write_text("<svg/>", encoding="utf-8")
    (home / "logo.svg").symlink_to(tmp_path / "logo.svg")
    found = notes_of(home, SMALLEST + "style: {logo: logo.svg}\n")
    assert [n.code for n in found] == ["R132"]


def test_the_reference_lists_every_value(tmp_path):
    text = read.reference()
    assert "| `SIZE.block` | the finished side of a block |" in text
    assert "| `pattern.seam` |" in text and "| `fabric.FABRIC` |" in text
    _, notes, _ = read.load(pattern(tmp_path, SMALLEST))
    assert_no_notes(notes)
