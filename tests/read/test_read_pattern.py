"""What a file says is what the pattern holds, with defaults, layers and places."""

import dataclasses
import itertools
from fractions import Fraction

import pytest
from helpers import assert_no_notes, changed, loaded, with_size

from publish import grade, read
from publish.model.pattern import BackingSpec, BindingSpec, PillowSpec, QuiltingSpec
from publish.read import SMALLEST
from publish.starting import start

F = Fraction


def test_the_smallest_pattern_has_the_documented_defaults(tmp_path):
    pattern = loaded(tmp_path)
    assert (pattern.key, pattern.layout, pattern.papers) == (
        tmp_path.name,
        "tideline",
        ("letter", "a4"),
    )
    assert pattern.publication.year == 0
    assert pattern.publication.edition == "First edition"
    linen = pattern.fabrics["linen"]
    assert (linen.usable_width, linen.directional, linen.shrinkage, linen.owned) == (
        40,
        False,
        0,
        None,
    )
    motif = pattern.motifs["bulrush"]
    assert (motif.covers, motif.symmetry, motif.method) == ("wedge", "mirror", "needle-turn")
    assert (motif.turn_under, motif.pieces, motif.smallest_neck) == (F(1, 8), 1, None)
    assert motif.drawing == tmp_path / "bulrush.svg"
    assert dataclasses.astuple(pattern.sewing) == (
        F(1, 4),
        F(3, 2),
        1,
        1,
        F(9, 2),
        F(10) / F("2.54"),
        F(5, 2),
        17,
        20,
        F(1, 8),
        0,
        ("inches, then metric", "."),
    )
    size = pattern.sizes["mini"]
    assert (size.title, size.finish, size.blocks) == ("Mini", "quilt", ("bulrush",))
    assert (size.columns, size.rows, size.borders, size.sleeve) == (1, 1, (), None)
    assert size.backing == BackingSpec("", F(4))
    assert size.binding == BindingSpec("", F(9, 4), "straight", F(10))
    assert (size.batting.name, size.batting.overhang, size.batting.largest_gap) == (
        "Cotton",
        3,
        None,
    )
    assert size.quilting == ()


def test_a_drawing_is_below_the_folder_however_it_is_reached(tmp_path):
    real, link = tmp_path / "real", tmp_path / "link"
    real.mkdir()
    link.symlink_to(real)
    pattern = loaded(link, changed("bulrush.svg", "./art/../bulrush.svg"))
    assert pattern.key == "link"
    assert pattern.motifs["bulrush"].drawing == pattern.folder / "bulrush.svg"


def test_raw_edges_have_no_turn_under(tmp_path):
    pattern = loaded(tmp_path, changed("folds: 8", "folds: 8, method: fusible"))
    assert pattern.motifs["bulrush"].turn_under == 0


def test_a_size_takes_key_by_key_what_it_leaves_out(tmp_path):
    pattern = loaded(
        tmp_path,
        with_size(
            "  a: {block_size: 16 in, motif_size: 14 in}\n"
            "  b:\n    block_size: 16 in\n    motif_size: 14 in\n"
            "    binding: {width: 2 1/2 in}\n"
            "    quilting: [{area: motif, style: ditch}]\n"
            "binding: {fabric: moss, cut: bias}\n"
            "quilting: [{area: ground, style: grid, spacing: 2 in, angle: 45}]\n"
        ),
    )
    a, b = pattern.sizes["a"], pattern.sizes["b"]
    assert a.binding == BindingSpec("moss", F(9, 4), "bias", F(10))
    assert b.binding == BindingSpec("moss", F(5, 2), "bias", F(10))
    assert a.quilting == (QuiltingSpec("ground", "grid", F(2), 45),)
    assert b.quilting == (QuiltingSpec("motif", "ditch"),)
    assert pattern.place("sizes", "b", "binding", "width").path == "sizes.b.binding.width"
    assert pattern.place("sizes", "a", "binding", "cut").path == "binding.cut"
    assert pattern.place("sizes", "b", "binding", "cut").path == "binding.cut"
    assert pattern.place("sizes", "a", "quilting", 0, "spacing").path == "quilting.0.spacing"
    assert pattern.place("sizes", "b", "quilting", 0, "spacing").path == "sizes.b.quilting.0"


def test_every_value_has_its_place(tmp_path):
    pattern = loaded(tmp_path)
    lines = SMALLEST.splitlines()
    for path, text in {
        "title": "Bulrush",
        "fabrics": "fabrics:",
        "fabrics.moss": "moss:",
        "fabrics.moss.colour": '"#4f6b4a"',
        "motifs.bulrush.folds": "8",
        "blocks.bulrush.ground": "linen",
        "sizes.mini.block_size": "16 in",
    }.items():
        place = pattern.places[path]
        assert place.path == path
        assert lines[place.line - 1][place.column - 1 :].startswith(text)
    assert pattern.place("sizes", "mini", "borders", 3, "width").path == "sizes.mini"
    assert pattern.place("sewing", "seam").line == 1


def test_a_pieced_ground_is_a_grid_of_squares(tmp_path):
    pattern = loaded(
        tmp_path,
        changed("ground: linen", "ground: {rows: [[linen, moss, linen], [moss, linen, moss]]}"),
    )
    block = pattern.blocks["bulrush"]
    assert (block.columns, block.rows, len(block.patches)) == (3, 2, 6)
    assert [p.fabric for p in block.patches] == ["linen", "moss", "linen", "moss", "linen", "moss"]
    assert block.patches[5].ring == ((2, 1), (3, 1), (3, 2), (2, 2))
    for patch in block.patches:
        ring = [*patch.ring, patch.ring[0]]
        area = sum(a[0] * b[1] - b[0] * a[1] for a, b in itertools.pairwise(ring)) / 2
        assert area == 1, "clockwise on the page, where y points down"


def test_an_outline_is_read_exactly(tmp_path):
    pattern = loaded(
        tmp_path,
        changed("drawing: bulrush.svg", 'outline: [[0, -2.5, corner], [33 1/3, 0], ["12½", 7]]'),
    )
    points = pattern.motifs["bulrush"].outline
    assert [(p.x, p.y, p.corner) for p in points] == [
        (0, F(-5, 2), True),
        (F(100, 3), 0, False),
        (F(25, 2), 7, False),
    ]
    assert pattern.motifs["bulrush"].drawing is None


@pytest.mark.parametrize(
    ("written", "inches"),
    [
        ("16 in", 16),
        ('16"', 16),
        ("16½ in", F(33, 2)),
        ("0.5 yd", 18),
        ("2 ft", 24),
        ("40.64 cm", 16),
        ("406.4 mm", 16),
        ("16 INCHES", 16),
        ("1/2 yd", 18),
    ],
)
def test_lengths_as_makers_write_them(tmp_path, written, inches):
    pattern = loaded(tmp_path, changed("block_size: 16 in", f"block_size: {written}"))
    assert pattern.sizes["mini"].block_size == inches


def test_values_are_the_text_that_was_written(tmp_path):
    text = changed("title: Bulrush", "title: No\npublication: {stock_number: 0101, edition: 1:30}")
    text = text.replace("linen:", "yes:").replace("ground: linen", "ground: yes")
    pattern = loaded(tmp_path, text)
    assert pattern.title == "No"
    assert pattern.publication.stock_number == "0101"
    assert pattern.publication.edition == "1:30"
    assert list(pattern.fabrics) == ["yes", "moss"]


def test_a_pillow_has_its_defaults(tmp_path):
    pattern = loaded(
        tmp_path,
        with_size(
            "  cushion:\n    {block_size: 17 in, motif_size: 14 in, finish: pillow, "
            "pillow: {form: 18 in}}\n"
        ),
    )
    assert pattern.sizes["cushion"].pillow == PillowSpec(F(18), "envelope", "", F(4), F(1), F(1, 2))


def test_a_file_of_another_name_gives_its_name_to_the_pattern(tmp_path):
    (tmp_path / "bulrush.svg").write_text("<svg/>", encoding="utf-8")
    path = tmp_path / "reed.yaml"
    path.write_text(SMALLEST, encoding="utf-8")
    assert read.load(path)[0].key == "reed"


@pytest.mark.parametrize("name", ["reed", "9-patch", "Long Drove", "No"])
def test_a_started_pattern_has_no_findings(tmp_path, name):
    start(tmp_path / name)
    pattern, notes, _ = read.load(tmp_path / name)
    assert_no_notes(notes)
    assert_no_notes(grade.grade(pattern, "mini")[1])
