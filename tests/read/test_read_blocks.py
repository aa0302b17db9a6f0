"""Blocks become flat lists of exact patches: shapes, arcs, blocks within blocks.

Published source: areas by the surveyor's formula and of circular sectors are geometry;
the outlines are measured with shapely (GEOS), a library outside this project.
"""

from fractions import Fraction
from itertools import pairwise
from math import pi

import pytest
from helpers import assert_no_notes, changed, loaded, notes_of, pattern
from shapely.geometry import Polygon

from publish import read
from publish.model.block import Foundation, Piecing
from publish.read.curves import area, edges

F = Fraction
PLAIN = "  bulrush: {ground: linen, motif: bulrush}"


def with_blocks(blocks, used="it"):
    """Return the smallest pattern with more blocks, one of them in a size of its own."""
    head = changed(PLAIN, PLAIN + "\n" + blocks)
    return f"{head}  extra: {{block: {used}, block_size: 6 in}}\n"


def block(folder, yaml, key="it"):
    """Return one block that `yaml` describes, which must have no faults."""
    return loaded(folder, with_blocks(yaml, key)).blocks[key]


def patched(items, grid="[2, 2]", more=""):
    lines = "".join(f"      - {item}\n" for item in items)
    return f"  it:\n    grid: {grid}\n{more}    patches:\n{lines}"


def ring_area(patch):
    ring = [*patch.ring, patch.ring[0]]
    return sum((a[0] * b[1] - b[0] * a[1] for a, b in pairwise(ring)), F(0)) / 2


def outline(patch):
    return Polygon([p for edge in edges(patch.ring, patch.arcs) for p in edge.drawn_out()])


def test_each_shape_is_the_ring_it_describes(tmp_path):
    made = block(
        tmp_path,
        patched(
            [
                "{fabric: linen, square: [0, 0, 1]}",
                "{fabric: moss, rectangle: [1, 0, 1, 1 1/2], name: tall}",
                "{fabric: linen, triangle: [[0, 1], [0, 2], [1, 2]]}",
                '{fabric: moss, points: [[0, 1], [1, 2], [2, "2"], [2, 1.5], [1, 3/2], [1, 1]]}',
            ]
        ),
    )
    square, tall, triangle, other = made.patches
    assert (made.columns, made.rows, made.traditional) == (2, 2, "")
    assert square.ring == ((0, 0), (1, 0), (1, 1), (0, 1))
    assert tall.ring == ((1, 0), (2, 0), (2, F(3, 2)), (1, F(3, 2)))
    assert (tall.name, tall.item, square.name) == ("tall", 1, "")
    assert set(triangle.ring) == {(0, 1), (0, 2), (1, 2)}
    assert set(other.ring) == {(0, 1), (1, 2), (2, 2), (2, F(3, 2)), (1, F(3, 2)), (1, 1)}
    assert [ring_area(p) for p in made.patches] == [1, F(3, 2), F(1, 2), 1]
    assert all(isinstance(c, Fraction) for p in made.patches for xy in p.ring for c in xy)


def test_an_arc_belongs_to_the_edge_between_its_neighbours(tmp_path):
    made = block(
        tmp_path,
        patched(
            [
                "{fabric: moss, points: [[9/5, 12/5, arc], [0, 3], [0, 0], [3, 0]]}",
                "{fabric: linen, points: [[3, 0], [12/5, 9/5, arc], [0, 3], [0, 4], [4, 4], "
                "[4, 0]]}",
            ],
            "[4, 4]",
        ),
    )
    for patch in made.patches:
        ((number, through),) = patch.arcs
        ends = patch.ring[number], patch.ring[(number + 1) % len(patch.ring)]
        assert set(ends) == {(0, 3), (3, 0)}
        x, y = through
        assert x * x + y * y == 9
    quarter, rest = (float(area(edges(p.ring, p.arcs))) for p in made.patches)
    assert quarter == pytest.approx(9 * pi / 4, rel=1e-12)
    assert quarter + rest == pytest.approx(16, rel=1e-12)
    assert outline(made.patches[0]).area == pytest.approx(9 * pi / 4, rel=1e-4)


def test_a_circle_is_two_corners_and_two_arcs(tmp_path):
    made = block(
        tmp_path,
        patched(
            [
                "{fabric: moss, points: [[2, 4], [4, 2, arc], [6, 4], [4, 6, arc]]}",
                "{fabric: linen, points: [[0, 0], [8, 0], [8, 4], [6, 4], [4, 2, arc], [2, 4], "
                "[0, 4]]}",
                "{fabric: linen, points: [[0, 4], [2, 4], [4, 6, arc], [6, 4], [8, 4], [8, 8], "
                "[0, 8]]}",
            ],
            "[8, 8]",
        ),
    )
    circle = made.patches[0]
    assert len(circle.ring) == 2
    assert float(area(edges(circle.ring, circle.arcs))) == pytest.approx(4 * pi)
    assert outline(circle).area == pytest.approx(4 * pi, rel=1e-4)


INNER = "  half: {traditional: half-square triangle, fabrics: {light: linen, dark: moss}}\n"


@pytest.mark.parametrize(
    ("how", "corner"),
    [
        ("", (1, 1)),
        ("turn: 90", (0, 1)),
        ("turn: 180", (0, 0)),
        ("turn: 270", (1, 0)),
        ("mirror: yes", (0, 1)),
        ("mirror: yes, turn: 90", (0, 0)),
    ],
)
def test_a_block_is_mirrored_and_then_turned_clockwise(tmp_path, how, corner):
    more = f", {how}" if how else ""
    made = block(tmp_path, INNER + patched([f"{{block: half, at: [0, 0]{more}}}"], "[1, 1]"))
    dark = next(p for p in made.patches if p.fabric == "moss")
    assert corner in dark.ring, "the corner that the dark triangle fills"
    assert (1 - corner[0], 1 - corner[1]) not in dark.ring
    assert [ring_area(p) for p in made.patches] == [F(1, 2), F(1, 2)]


def test_a_block_within_a_block_fills_its_size_in_other_fabrics(tmp_path):
    yaml = "  goose:\n    grid: [2, 1]\n    patches:\n" + "".join(
        f"      - {p}\n"
        for p in (
            "{fabric: moss, triangle: [[1, 0], [2, 1], [0, 1]], name: goose}",
            "{fabric: linen, triangle: [[0, 0], [1, 0], [0, 1]]}",
            "{fabric: linen, triangle: [[1, 0], [2, 0], [2, 1]]}",
        )
    )
    text = with_blocks(
        yaml
        + patched(
            [
                "{block: goose, at: [0, 0], name: north}",
                "{block: goose, at: [1/2, 1], size: [1, 1], turn: 90, fabrics: {moss: linen, "
                "linen: moss}}",
                "{fabric: moss, rectangle: [0, 1, 1/2, 1]}",
                "{fabric: moss, rectangle: [1 1/2, 1, 1/2, 1]}",
            ]
        ),
        "it",
    )
    pattern_, notes, _ = read.load(pattern(tmp_path, text))
    assert [n.code for n in notes] == ["R166"]  # the second is squeezed to half its width
    made = pattern_.blocks["it"]
    assert [p.name for p in made.patches] == ["north.goose", "", "", "", "", "", "", ""]
    assert [p.item for p in made.patches] == [0, 0, 0, 1, 1, 1, 2, 3]
    turned = made.patches[3]
    assert (turned.fabric, set(turned.ring)) == (
        "linen",
        {(F(1, 2), 1), (F(1, 2), 2), (F(3, 2), F(3, 2))},
    )
    assert [p.fabric for p in made.patches[4:6]] == ["moss", "moss"]


def test_blocks_nest_and_curves_keep_their_circles(tmp_path):
    yaml = (
        "  quarter: {traditional: drunkard's path, fabrics: {path: moss, background: linen}}\n"
        "  snake:\n    grid: [2, 1]\n    patches:\n"
        "      - {block: quarter, at: [0, 0], size: [1, 1], mirror: yes}\n"
        "      - {block: quarter, at: [1, 0], size: [1, 1], turn: 180}\n"
    )
    made = block(
        tmp_path,
        yaml + patched(["{block: snake, at: [0, 0]}", "{block: snake, at: [0, 1], turn: 180}"]),
    )
    assert len(made.patches) == 8
    for patch in made.patches:
        (arc,) = [e for e in edges(patch.ring, patch.arcs) if e.through]
        (centre, square) = arc.circle
        assert square == F(9, 16)
        assert all(c.denominator == 1 for c in centre)
        assert area(edges(patch.ring, patch.arcs)) > 0, "clockwise on the page"
    assert sum(outline(p).area for p in made.patches) == pytest.approx(4, rel=1e-4)


def test_foundations(tmp_path):
    wing = (
        "  wing:\n    grid: [2, 1]\n    foundation: [[tip, arm]]\n    patches:\n"
        "      - {fabric: moss, square: [0, 0, 1], name: arm}\n"
        "      - {fabric: linen, square: [1, 0, 1], name: tip}\n"
    )
    items = ["{fabric: linen, rectangle: [0, 0, 2, 1]}", "{block: wing, at: [0, 1], name: left}"]
    assert block(tmp_path, wing, "wing").foundations == (Foundation((1, 0), True),)
    made = block(tmp_path, wing + patched(items))
    assert made.foundations == (Foundation((2, 1), True),), "a block brings its own foundation"
    made = block(tmp_path, wing + patched(items, more="    foundation: derived\n"))
    assert made.foundations == (Foundation((0, 1, 2), False),)
    made = block(tmp_path, wing + patched(items, more="    foundation: [[left.arm], [left.tip]]\n"))
    assert made.foundations == (Foundation((1,), True), Foundation((2,), True))
    fabrics = "{centre: moss, light: linen, dark: moss}"
    cabin = f"  it: {{traditional: log cabin, foundation: [[hearth, log-1]], fabrics: {fabrics}}}\n"
    assert block(tmp_path, cabin).foundations == (Foundation((0, 1), True),)


def test_piecing_is_the_blocks_or_the_patterns_or_singly(tmp_path):
    text = with_blocks("  it: {ground: linen, piecing: {geese: four at once}}\n")
    pattern = loaded(tmp_path, text)
    assert pattern.blocks["it"].piecing == Piecing(geese="four at once")
    assert pattern.blocks["bulrush"].piecing == Piecing()
    text += "piecing: {triangles: two at once, geese: singly}\n"
    pattern = loaded(tmp_path, text)
    assert pattern.blocks["it"].piecing == Piecing("two at once", geese="four at once")
    assert pattern.blocks["bulrush"].piecing == Piecing("two at once")


def test_a_motif_lies_on_a_pieced_block(tmp_path):
    text = changed(
        PLAIN,
        "  bulrush: {traditional: four patch, motif: bulrush, fabrics: "
        "{dark: linen, light: linen}}",
    )
    made = loaded(tmp_path, text).blocks["bulrush"]
    assert (made.motif, made.traditional, len(made.patches)) == ("bulrush", "four patch", 4)


def test_patches_have_places(tmp_path):
    pattern = loaded(
        tmp_path,
        with_blocks(
            patched(
                [
                    "{fabric: linen, rectangle: [0, 0, 2, 1]}",
                    "{fabric: moss, rectangle: [0, 1, 2, 1]}",
                ]
            )
        ),
    )
    place = pattern.place("blocks", "it", "patches", pattern.blocks["it"].patches[1].item)
    assert place.path == "blocks.it.patches.1"


def test_a_gap_and_an_overlap_say_where_and_how_large(tmp_path):
    notes = notes_of(
        tmp_path,
        with_blocks(
            patched(
                [
                    "{fabric: linen, rectangle: [0, 0, 1 1/4, 2]}",
                    "{fabric: moss, square: [1, 0, 1]}",
                ]
            )
        ),
    )
    gap, overlap = notes
    assert (gap.code, gap.place.path) == ("R154", "blocks.it.patches")
    assert "at [1 5/8, 1 1/2]" in gap.what
    assert gap.received == "3/4 grid square uncovered, from [1 1/4, 1] to [2, 2]"
    assert (overlap.code, overlap.place.path) == ("R155", "blocks.it.patches.1")
    assert overlap.what == "item 2 of `patches` overlaps item 1 of `patches` at [1 1/8, 1/2]"
    assert overlap.received == "1/4 grid square covered twice, from [1, 0] to [1 1/4, 1]"


def test_every_block_with_a_fault_is_told_once(tmp_path):
    inner = "  bad:\n    grid: [1, 1]\n    patches:\n      - {fabric: linen, square: [0, 0, 1/2]}\n"
    notes = notes_of(tmp_path, with_blocks(inner + patched(["{block: bad, at: [0, 0]}"], "[1, 1]")))
    assert [(n.code, n.place.path) for n in notes] == [("R154", "blocks.bad.patches")]


def test_a_block_has_a_limit_of_patches(tmp_path):
    checks = "  check: {traditional: checkerboard, fabrics: {dark: moss, light: linen}}\n"
    items = [f"{{block: check, at: [{x}, {y}], size: [1, 1]}}" for y in range(8) for x in range(8)]
    (note,) = notes_of(tmp_path, with_blocks(checks + patched(items, "[8, 8]")))
    assert (note.code, note.received) == ("R158", "1008 patches")
    assert_no_notes(notes_of(tmp_path, with_blocks(checks + patched(items[:56], "[8, 7]"))))


def test_the_blocks_of_a_file_have_a_limit_together(tmp_path):
    yaml = (
        "  c: {traditional: double nine patch, fabrics: {dark: moss, light: linen, plain: moss}}\n"
    )
    items = [f"{{block: c, at: [{x}, {y}], size: [1, 1]}}" for y in range(4) for x in range(5)]
    yaml += patched(items, "[5, 4]")
    for n in range(90):
        yaml += f"  b{n}: {{grid: [5, 4], patches: [{{block: it, at: [0, 0]}}]}}\n"
    notes = [n for n in notes_of(tmp_path, with_blocks(yaml)) if n.code != "R144"]
    assert [(n.code, n.place.path, n.received) for n in notes] == [
        ("R158", "blocks.b7.patches", "8820 patches by here")
    ]
