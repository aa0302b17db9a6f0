"""What patterns share: studio.yaml laid under a pattern, and who is asked about what."""

import json
from dataclasses import replace
from decimal import Decimal
from fractions import Fraction

import pytest
from helpers import DRAWING, ROOT, SMALLEST, assert_no_notes, pattern
from jsonschema import Draft202012Validator

from publish import pipeline, preview, read
from publish.model.pattern import Caution, Price
from publish.model.trade import PAPER_THICKNESS
from publish.model.words import Steps
from publish.read.schema_studio import STUDIO, STUDIO_EXAMPLE
from publish.read.sections import sections_of
from publish.read.special import Ref

F = Fraction

STUDIO_TEXT = """\
publication:
  studio: Hollow Fen Studio
  contact: patterns@hollowfen.example
  year: 2025
cloth: {usable_width: 42 in, shrinkage: 3%}
sewing: {seam: 3/8 in, mis_cut: 2 in}
papers: [a4]
prices:
  - {currency: EUR, retail: 14.00, wholesale: 7.00}
cautions:
  - title: Magnets
    text: Keep magnets away from pacemakers.
"""


def home(folder, studio=STUDIO_TEXT, own=SMALLEST, depth=("bulrush",)):
    """Write a studio's file and one pattern below it; return the pattern's folder."""
    (folder / "studio.yaml").write_text(studio, encoding="utf-8")
    below = folder.joinpath(*depth)
    below.mkdir(parents=True, exist_ok=True)
    pattern(below, own)
    return below


def whole(folder, **parts):
    """Return the pattern of a home without findings."""
    made, notes, _ = read.load(home(folder, **parts))
    assert_no_notes(notes)
    return made


def line(text, words):
    """Return the number of the line that holds some words."""
    return next(n for n, said in enumerate(text.splitlines(), 1) if words in said)


def test_what_a_pattern_leaves_out_is_the_studios(tmp_path):
    made = whole(tmp_path)
    assert made.publication.studio == "Hollow Fen Studio"
    assert made.papers == ("a4",)
    assert (made.sewing.seam, made.sewing.mis_cut) == (F(3, 8), F(2))
    assert {(f.usable_width, f.shrinkage) for f in made.fabrics.values()} == {(F(42), F(3, 100))}
    assert made.prices == (Price("EUR", Decimal("14.00"), Decimal("7.00")),)
    assert made.cautions == (Caution("Magnets", "Keep magnets away from pacemakers."),)


def test_a_patterns_own_key_wins_and_sections_are_merged_key_by_key(tmp_path):
    own = SMALLEST.replace('"#f4efe6"}', '"#f4efe6", usable_width: 54 in}') + (
        "publication: {year: 2026}\nsewing: {mis_cut: 0 in}\npapers: [letter]\n"
        "prices: [{currency: CHF, retail: 15}]\n"
    )
    made = whole(tmp_path, own=own)
    assert (made.publication.year, made.publication.studio) == (2026, "Hollow Fen Studio")
    assert (made.sewing.seam, made.sewing.mis_cut) == (F(3, 8), F(0))
    assert made.papers == ("letter",)
    assert [p.currency for p in made.prices] == ["CHF"]  # a list is replaced whole
    assert [f.usable_width for f in made.fabrics.values()] == [F(54), F(42)]


def test_what_neither_says_is_the_default(tmp_path):
    assert whole(tmp_path).publication.paper_thickness == PAPER_THICKNESS


def test_the_first_file_found_upwards_counts(tmp_path):
    below = home(tmp_path, depth=("far", "near", "bulrush"))
    assert read.load(below)[0].studio.path == tmp_path / "studio.yaml"
    (tmp_path / "far" / "studio.yaml").write_text("papers: [letter]\n", encoding="utf-8")
    made = read.load(below)[0]
    assert made.studio.path == tmp_path / "far" / "studio.yaml"
    assert (made.papers, made.publication.studio) == (("letter",), "")


def test_beside_the_pattern_itself_it_is_found_too(tmp_path):
    assert whole(tmp_path, depth=()).papers == ("a4",)


@pytest.mark.parametrize("said", ["", "# nothing yet\n"])
def test_a_file_that_says_nothing_changes_nothing(tmp_path, said):
    made = whole(tmp_path, studio=said)
    alone = tmp_path / "alone"
    alone.mkdir()
    (tmp_path / "studio.yaml").unlink()
    other = read.load(pattern(alone).parent)[0]
    same = replace(
        made,
        key=other.key,
        folder=other.folder,
        motifs=other.motifs,
        studio=None,
        origins=other.origins,
        places=other.places,
    )
    assert same == other


def test_findings_point_into_the_file_that_said_it(tmp_path):
    studio = STUDIO_TEXT.replace("3/8 in", "3/8").replace("[a4]", "[a5, legal]")
    made, notes, sources = read.load(home(tmp_path, studio, SMALLEST.replace("16 in", "16 kg")))
    assert made is None
    found = {(n.code, n.place.file.rsplit("/", 1)[-1], n.place.line, n.place.path) for n in notes}
    assert found == {
        ("R122", "pattern.yaml", line(SMALLEST, "block_size"), "sizes.mini.block_size"),
        ("R121", "studio.yaml", line(studio, "seam"), "sewing.seam"),
        ("R125", "studio.yaml", line(studio, "legal"), "papers.1"),
    }
    assert set(sources) == {n.place.file for n in notes}


def test_what_every_pattern_replaces_is_checked_as_well(tmp_path):
    studio = "sewing: {seam: wide}\n"
    notes = read.load(home(tmp_path, studio, SMALLEST + "sewing: {seam: 1/4 in}\n"))[1]
    assert [(n.code, n.place.line, n.place.column) for n in notes] == [("R120", 1, 16)]


def test_the_studios_findings_are_there_where_the_pattern_is_no_yaml(tmp_path):
    notes = read.load(home(tmp_path, "papers: [legal]\n", "title: [\n"))[1]
    assert {n.place.file.rsplit("/", 1)[-1] for n in notes} == {"pattern.yaml", "studio.yaml"}


def test_later_findings_have_the_studios_place_too(tmp_path):
    made = whole(tmp_path)
    for way in ("sewing.mis_cut", "prices.0.retail", "publication.contact"):
        key = way.rsplit(".", 1)[-1]
        place = made.place(*way.split("."))
        assert (place.file, place.line) == (
            made.places["studio"].file,
            line(STUDIO_TEXT, f"{key}:"),
        )
    assert made.place("fabrics", "linen", "usable_width").line == line(STUDIO_TEXT, "usable_width")
    assert made.place("sizes").file == made.places[""].file


@pytest.mark.parametrize(
    ("said", "help_"),
    [
        ("title: Fen\n", "move it to pattern.yaml"),
        ("fabrics: {}\n", "move it to pattern.yaml"),
        (
            'publication: {barcode: "2000000001012"}\n',
            "move it to pattern.yaml under `publication`",
        ),
        ("backing: {fabric: moss}\n", "move it to pattern.yaml under `backing`"),
        ("steps: [{remove: a, sizes: [mini]}]\n", "move it to pattern.yaml under `step`"),
    ],
)
def test_what_is_each_patterns_own_is_refused(tmp_path, said, help_):
    notes = read.load(home(tmp_path, said))[1]
    assert [(n.code, n.help) for n in notes] == [("R173", help_)]


def test_a_misspelt_key_is_told_as_the_studios(tmp_path):
    (note,) = read.load(home(tmp_path, "publicaton: {year: 2026}\n"))[1]
    assert (note.code, note.what) == ("R110", "`publicaton` is not a key of the studio")
    assert note.help == "write `publication`"


def test_paths_are_from_the_file_that_names_them(tmp_path):
    (tmp_path / "fen.ttf").touch()
    (tmp_path / "logo.svg").write_text(DRAWING, encoding="utf-8")
    made = whole(tmp_path, studio="style: {logo: logo.svg, fonts: {titles: fen.ttf}}\n")
    assert made.style.logo == tmp_path / "logo.svg"
    assert made.style.fonts == {"titles": tmp_path / "fen.ttf"}


def test_a_path_may_not_lead_out_of_the_studios_folder(tmp_path):
    inner = tmp_path / "studio"
    inner.mkdir()
    (tmp_path / "logo.svg").write_text(DRAWING, encoding="utf-8")
    (note,) = read.load(home(inner, "style: {logo: ../logo.svg}\n"))[1]
    assert (note.code, note.place.line) == ("R132", 1)


def test_each_value_has_its_origin(tmp_path):
    own = SMALLEST + "publication: {year: 2026}\n"
    made = whole(tmp_path, own=own)
    found = {o.path: o for o in made.origins}
    year, contact = found["publication.year"], found["publication.contact"]
    assert (year.written, year.place.line) == ("2026", line(own, "year"))
    assert year.replaced.line == line(STUDIO_TEXT, "year")
    assert contact.place.file == made.places["studio"].file
    assert (contact.place.line, contact.replaced) == (line(STUDIO_TEXT, "contact"), None)
    assert found["prices"].written == "- {currency: EUR, retail: 14.00, wholesale: 7.00}"
    assert (found["layout"].place, found["layout"].written) == (None, "tideline")


def test_origins_list_every_key_that_can_be_shared(tmp_path):
    made = whole(tmp_path)
    leaves = {k.name for s in sections_of(STUDIO) for k in s.keys}
    named = {part for o in made.origins for part in o.path.split(".")}
    inside_lists = {
        "area",
        "style",
        "spacing",
        "angle",
        "currency",
        "retail",
        "wholesale",
        "title",
        "text",
        "step",
        "before",
        "after",
        "remove",
        "move",
        "right",
        "tip",
        "caution",
        "figure",
    }
    assert named >= leaves - inside_lists
    assert len({o.path for o in made.origins}) == len(made.origins)


def test_nothing_shared_names_what_only_a_pattern_has():
    keys = [k for s in sections_of(STUDIO) for k in s.keys]
    assert not [k.name for k in keys if isinstance(k.shape, Ref)]
    # Sections that are merged key by key have no rules between keys that a merge could break.
    merged = [s for s in sections_of(STUDIO) if any(k.shape is s for k in keys)]
    assert not [s.name for s in merged if s.needs or s.idle or s.only or s.apart or s.one_of]


def test_the_schema_for_editors_is_written_and_holds_for_the_example(tmp_path):
    committed = json.loads((ROOT / "projects/studio.schema.json").read_text(encoding="utf-8"))
    schema = read.json_schema(STUDIO)
    assert committed == schema, "run `foldwork reference`"
    Draft202012Validator.check_schema(schema)
    assert not list(Draft202012Validator(schema).iter_errors({"publication": {"studio": "Fen"}}))
    assert list(Draft202012Validator(schema).iter_errors({"title": "Fen"}))
    whole(tmp_path, studio=STUDIO_EXAMPLE)


STEPS = """\
steps:
  - {step: quilting-unpin, text: Take out the pins one by one., tip: Keep them in a tin.}
  - {remove: no-such-step}
  - {after: quilting-unpin, text: "Shake the {{ each.block }} block."}
"""


def test_standard_wording_goes_before_the_patterns_own(tmp_path):
    own = SMALLEST + "steps: [{step: quilting-unpin, text: Out with the basting.}]\n"
    work = pipeline.prepare(home(tmp_path, STEPS, own))
    blocks = [b for section in work.manual.sections for b in section.blocks]
    steps = {s.key: s for b in blocks if isinstance(b, Steps) for s in b.items}
    assert steps["quilting-unpin"].text == "Out with the basting."
    assert steps["quilting-unpin"].tip == "Keep them in a tin."
    assert steps["quilting-studio-3"].text == "Shake the 16 in (40.6 cm) block."
    (note,) = [n for n in work.report if n.code == "W511"]
    assert note.received == "no-such-step"
    assert note.place.file == work.pattern.places["studio"].file
    assert not work.report.errors


def test_a_slip_in_standard_wording_is_the_studios(tmp_path):
    studio = "steps:\n  - {step: quilting-unpin, text: 'The {{ each.blok }}.'}\n"
    report = pipeline.examine(home(tmp_path, studio)).report
    (note,) = report.errors
    assert note.place.file.endswith("studio.yaml") and note.place.line == 2


def test_cautions_of_the_studio_are_in_the_booklet(tmp_path):
    work = pipeline.prepare(home(tmp_path))
    (section,) = [s for s in work.manual.sections if s.key == "cautions"]
    titles = [box.title for box in section.blocks]
    assert titles[-2] == "Magnets"  # the laws and the makers' instructions have the last word


def test_the_report_lists_where_values_come_from(tmp_path):
    page = pipeline.examine(home(tmp_path)).page()
    assert f"studio.yaml:{line(STUDIO_TEXT, 'contact')}:" in page
    assert "patterns@hollowfen.example" in page


def test_the_preview_watches_the_studios_file(tmp_path):
    below = home(tmp_path)
    watching = preview.Watching(preview.Shown(below / "pattern.yaml"))
    assert watching.folders() == (below, tmp_path)
