"""The designer's own look and voice as they are read: style, photos, steps, papers."""

from helpers import SMALLEST, assert_no_notes, loaded, notes_of, pattern

from publish import read
from publish.model.pattern import Photo, StepChange, Style

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


def test_changes_of_steps_are_read_in_their_order(tmp_path):
    made = written(tmp_path, SMALLEST + STEPS)
    assert made.steps == (
        StepChange("replace", "folding-half-8", text="Fold it.", tip="", figure=False),
        StepChange("insert", "", "folding-half-8", True, "Clear the table.\n\nThen rest.",
                   caution="Mind the pins.", sizes=("mini",)),
        StepChange("remove", "quilting-unpin"),
        StepChange("move", "sleeve-hem", "sleeve-tube"),
    )  # fmt: skip
    assert str(made.place("steps", 1, "text")).endswith("pattern.yaml:14:11")


def test_a_file_that_is_missing_is_told_with_the_nearest(tmp_path):
    text = SMALLEST + "style: {logo: loog.svg}\nphotos: [{file: trow.jpg}]\n"
    found = notes_of(tmp_path, text, drawings=("bulrush.svg", "logo.svg", "throw.jpg"))
    assert [(n.code, n.help) for n in found] == [
        ("R131", "write `logo.svg`"), ("R131", "write `throw.jpg`")
    ]  # fmt: skip


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
