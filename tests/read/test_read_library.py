"""The library of traditional blocks: every one tiles its grid, and its pieces are the trade's.

Published sources, for the pieces of single blocks: bear's paw, allpeoplequilt.com, Bear's
Paw (14 in finished); jacob's ladder, allthingsfrugal.com, Jacob's Ladder; dutchman's
puzzle, the-littlest-thistle.com, Quilt making basics: 4 patch block, 2015; churn dash, by
the pieces of the greek cross, which "uses the same shapes and positions", roundtheblocks
blog, BOW 27: Greek Cross, 2010. The other constructions are common practice, no source.
Areas and unions are measured with shapely (GEOS), a library outside this project.
"""

import tomllib
from collections import Counter
from fnmatch import fnmatch
from fractions import Fraction
from itertools import pairwise

import pytest
from helpers import ROOT, changed, loaded, notes_of
from shapely import union_all
from shapely.geometry import Polygon

from publish import read
from publish.read.blocks import trade_block
from publish.read.curves import edges
from publish.read.library import trade_blocks, trade_values
from publish.read.trade_names import trade_names

NAMES = [values["name"] for values in trade_blocks()]
STRAIGHT = [n for n in NAMES if not trade_block(n).curved]


def outline(patch):
    return Polygon([p for edge in edges(patch.ring, patch.arcs) for p in edge.drawn_out()])


def doubled(ring):
    return sum((a[0] * b[1] - b[0] * a[1] for a, b in pairwise([*ring, ring[0]])), Fraction(0))


def test_there_are_enough():
    assert len(NAMES) >= 32
    assert len(set(NAMES)) == len(NAMES)


@pytest.mark.parametrize("name", NAMES)
def test_patches_fill_the_grid_once(name):
    block = trade_block(name)
    shapes = [outline(p) for p in block.patches]
    whole = block.columns * block.rows
    tolerance = 1e-4 * whole if block.curved else 1e-9
    assert all(s.is_valid for s in shapes)
    assert union_all(shapes).area == pytest.approx(whole, abs=tolerance)
    assert sum(s.area for s in shapes) == pytest.approx(whole, abs=tolerance)
    assert union_all(shapes).bounds == (0, 0, block.columns, block.rows)


@pytest.mark.parametrize("name", STRAIGHT)
def test_areas_add_up_exactly(name):
    block = trade_block(name)
    assert all(doubled(p.ring) > 0 for p in block.patches), "clockwise on the page"
    assert sum(doubled(p.ring) for p in block.patches) == 2 * block.columns * block.rows


@pytest.mark.parametrize("name", NAMES)
def test_a_block_is_square_and_uses_all_its_roles(name):
    block, values = trade_block(name), trade_values(name)
    assert block.columns == block.rows
    assert {p.fabric for p in block.patches} == set(values["roles"])
    assert all(words[0].islower() and not words.endswith(".") for words in values["roles"].values())


@pytest.mark.parametrize("name", trade_names())
def test_every_name_makes_a_block(name, tmp_path):
    roles = ", ".join(
        f"{role}: {'linen' if n % 2 else 'moss'}"
        for n, role in enumerate(trade_values(name)["roles"])
    )
    text = changed("ground: linen", f"traditional: {name}, fabrics: {{{roles}}}")
    made = loaded(tmp_path, text).blocks["bulrush"]
    assert made.traditional == name
    assert len(made.patches) == len(trade_block(name).patches)
    assert {p.fabric for p in made.patches} <= {"linen", "moss"}


def pieces(name, scale=Fraction(1)):
    """Return how often each role, number of corners and area come."""
    block = trade_block(name)
    return Counter((p.fabric, len(p.ring), doubled(p.ring) / 2 * scale**2) for p in block.patches)


def test_the_published_pieces_of_a_bears_paw():
    # 14 in block of 7 x 7 squares: 4 pads cut 4 1/2 in, 16 triangles of each colour from
    # 2 7/8 in squares, 4 strips cut 2 1/2 x 6 1/2 in, 5 squares cut 2 1/2 in.
    found = pieces("bear's paw", Fraction(14, 7))
    assert found == {
        ("pads", 4, 4 * 4): 4,
        ("claws", 3, 2): 16,
        ("background", 3, 2): 16,
        ("background", 4, 2 * 6): 4,
        ("background", 4, 2 * 2): 4,
        ("middle", 4, 2 * 2): 1,
    }


def test_the_published_pieces_of_a_jacobs_ladder():
    # Five four-patches and four half-square triangles of the same size.
    found = pieces("jacob's ladder", Fraction(1, 2))
    assert found == {
        ("rungs", 4, Fraction(1, 4)): 10,
        ("background", 4, Fraction(1, 4)): 10,
        ("sides", 3, Fraction(1, 2)): 4,
        ("background", 3, Fraction(1, 2)): 4,
    }


def test_the_published_pieces_of_a_dutchmans_puzzle():
    # Four units, each made of two flying geese.
    assert pieces("dutchman's puzzle") == {
        ("geese", 3, 1): 8,
        ("background", 3, Fraction(1, 2)): 16,
    }


def test_the_published_pieces_of_a_churn_dash():
    # 4 half-square triangles cut 4 1/2 in, 8 rectangles 2 1/2 x 4 1/2 in, 1 square 4 1/2 in.
    found = pieces("churn dash", Fraction(12, 6))
    assert found == {
        ("dash", 3, 8): 4,
        ("background", 3, 8): 4,
        ("dash", 4, 2 * 4): 4,
        ("background", 4, 2 * 4): 4,
        ("centre", 4, 4 * 4): 1,
    }


def test_the_reference_lists_every_block_with_its_roles():
    part = read.reference().split("\n## Traditional blocks\n")[1]
    for values in trade_blocks():
        line = next(x for x in part.splitlines() if x.startswith(f"| `{values['name']}` |"))
        assert all(f"`{role}`: {words}" in line for role, words in values["roles"].items())
        assert all(f"`{name}`" in line for name in values.get("also", ()))


def test_the_library_is_delivered_with_the_package():
    pyproject = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    globs = pyproject["tool"]["setuptools"]["package-data"]["publish.read"]
    assert len(trade_names()) > len(NAMES)
    for file in trade_names().values():
        assert any(fnmatch(f"traditional/{file.name}", glob) for glob in globs)


def test_a_misspelt_name_or_role_has_its_nearest(tmp_path):
    text = changed("ground: linen", "traditional: saw tooth star, fabrics: {star: linen}")
    (note,) = notes_of(tmp_path, text)
    assert (note.code, note.help) == ("R125", "write `sawtooth star`")
    text = changed(
        "ground: linen",
        "traditional: evening star, fabrics: {star: moss, centre: moss, ground: linen}",
    )
    (note,) = notes_of(tmp_path, text)
    assert (note.code, note.place.path) == ("R159", "blocks.bulrush.fabrics.ground")
    assert note.help == "write `background`"


def test_unknown_names_point_at_the_reference(tmp_path):
    (note,) = notes_of(
        tmp_path, changed("ground: linen", "traditional: xyzzy, fabrics: {a: linen}")
    )
    assert "REFERENCE.md" in note.help
