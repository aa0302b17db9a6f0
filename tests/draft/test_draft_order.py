"""The tree that sews a top: in an order that works, the same for units that look alike.

Every tree is sewn back together twice: by `sewn`, which cuts and joins outlines exactly,
and by shapely's unions. Names of what is sewn when are common practice, no source.
"""

from collections import Counter
from fractions import Fraction

import pytest
from draft_builders import grid
from draft_tops import (
    assert_sewn,
    cut_blocks,
    every,
    four,
    library,
    rectangle,
    set_in,
    tops,
    tree,
)
from hypothesis import given, settings
from hypothesis import strategies as st

from publish.arcs import outline
from publish.draft.assembly import assemble
from publish.draft.topmap import top_patches
from publish.model.pattern import Block, BorderSpec, PatchSpec, RoundSpec, SashingSpec

F = Fraction


def names(unit):
    return [p.name for p in unit.parts]


@pytest.mark.parametrize("name", library())
def test_turning_a_block_changes_no_unit(name):
    """The same units, as often, however a block lies; and as many set-in seams."""

    def counts(**spec):
        unit = tree(library()[name], setting_fabric="moss", **spec)
        inside = [u for u in every(unit) if {str(p.place) for p in u.patches} == {"r1c1"}]
        return Counter(Counter(u.kind for u in inside).values()), set_in(unit)

    plain = counts()
    assert all(counts(turns=(turn,)) == plain for turn in (90, 180, 270))
    assert all(counts(turns=(turn,), setting="on point") == plain for turn in (0, 90))


@settings(max_examples=25)
@given(cut_blocks(), st.sampled_from([0, 90, 180, 270]), st.sampled_from(["straight", "on point"]))
def test_what_was_cut_by_lines_is_sewn_by_lines(block, turn, setting):
    unit = tree(block, turns=(turn,), setting=setting, setting_fabric="sand")
    assert_sewn(unit)
    assert set_in(unit) == 0
    assert {u.join for u in every(unit) if u.parts} <= {"across", "down", "slant"}


@settings(max_examples=20)
@given(tops())
def test_every_top_is_sewn_in_rows(made):
    """Blocks with straight, curved and set-in seams, turned, sashed, on point, bordered."""
    pat, one = made
    patches, _ = top_patches(pat, one)
    unit, notes = assemble(pat, one, patches)
    assert not notes and unit.box == (0, 0, one.width, one.height)
    assert Counter(unit.patches) == Counter(patches)
    assert_sewn(unit)


@settings(max_examples=10)
@given(tops())
def test_units_of_one_kind_look_alike(made):
    """The same cloth, the same area, as many parts and set-in seams."""
    pat, one = made
    unit, _ = assemble(pat, one, top_patches(pat, one)[0])
    first = {}
    for part in every(unit):
        cloth = Counter(p.fabric for p in part.patches)
        area, joins = outline(part.ring, part.arcs).area, (part.join, len(part.parts), part.set_in)
        other = first.setdefault(part.kind, (cloth, area, joins))
        assert other[0] == cloth and abs(other[1] - area) < 1e-3
        assert other[2][1:] == joins[1:]


def test_a_throw_by_hand():
    """Two by two blocks of four patches, a butted and a mitred border."""
    borders = (BorderSpec(F(1), "moss"), BorderSpec(F(4), "linen", "mitred"))
    unit = tree(four(carries="fen"), columns=2, rows=2, borders=borders)
    assert (unit.name, unit.join, unit.press) == ("top", "mitred", "out")
    strips = [f"border 2 {side}" for side in ("left", "right", "top", "bottom")]
    assert names(unit) == ["border 1", *strips]
    assert len({p.kind for p in unit.parts[1:]}) == 1  # all four alike when turned
    inner = unit.parts[0]
    assert names(inner) == ["border 1 top", "border 1 sides", "border 1 bottom"]
    assert inner.join == "down" and inner.press == "out"
    sides = inner.parts[1]
    assert names(sides) == ["border 1 left", "centre", "border 1 right"]
    centre = sides.parts[1]
    assert (centre.join, names(centre)) == ("down", ["row 1", "row 2"])
    assert centre.parts[0].kind == centre.parts[1].kind
    ground = centre.parts[0].parts[0]
    assert (ground.name, ground.kind, ground.join) == ("ground", "ground four", "down")
    assert {u.kind for u in every(ground)} == {
        "ground four",
        "half ground",
        "patch linen",
        "patch sand",
    }
    kinds = Counter(u.kind for u in every(unit))
    assert kinds["ground four"] == 4 and kinds["half ground"] == 8 and kinds["patch linen"] == 8
    assert_sewn(unit)


def test_rows_on_point_run_along_the_diagonal():
    """2 x 3 blocks: corner, then rows of 1, 3, 3 and 1 blocks between triangles, corner."""
    unit = tree(
        grid("plain", [["linen"]]), columns=2, rows=3, setting="on point", setting_fabric="moss"
    )
    assert names(unit) == ["corner", *(f"row {n}" for n in (1, 2, 3, 4)), "corner"]
    assert (unit.join, unit.turn) == ("slant", 0)
    rows = unit.parts[1:-1]
    assert [sum(p.name == "block" for p in row.parts) for row in rows] == [1, 3, 3, 1]
    assert {(row.join, row.turn) for row in rows} == {("across", 45)}
    assert rows[0].parts[0].name == rows[0].parts[-1].name == "setting triangle"
    assert rows[0].kind == rows[3].kind and rows[1].kind == rows[2].kind
    assert rows[1].parts[1].box[2] == rows[1].parts[2].box[0]  # in the frame of the row
    assert_sewn(unit)


def test_sashing_makes_rows_of_its_own():
    sashing = SashingSpec(F(1), "moss", "sand", True)
    unit = tree(grid("plain", [["linen"]]), columns=2, rows=2, sashing=sashing)
    assert names(unit) == ["sashing row 1", "row 1", "sashing row 2", "row 2", "sashing row 3"]
    assert names(unit.parts[0]) == ["cornerstone", "sashing"] * 2 + ["cornerstone"]
    assert names(unit.parts[1]) == ["sashing", "block"] * 2 + ["sashing"]
    assert len({u.kind for u in unit.parts}) == 2
    assert {u.press for u in every(unit) if u.parts} == {"sashing"}
    assert_sewn(unit)


@pytest.mark.parametrize("stones", [None, "sand"])
def test_sashing_on_point_is_sewn_in_rows_too(stones):
    sashing = SashingSpec(F(3, 4), "moss", stones, True)
    unit = tree(
        four(),
        columns=2,
        rows=2,
        sashing=sashing,
        setting="on point",
        setting_fabric="linen",
        borders=(BorderSpec(F(2), "moss"),),
    )
    centre = next(u for u in every(unit) if u.name == "centre")
    assert names(centre) == [
        "corner",
        "sashing row 1",
        "row 1",
        "sashing row 2",
        "row 2",
        "sashing row 3",
        "row 3",
        "sashing row 4",
        "corner",
    ]
    assert_sewn(unit)


def test_a_round_of_blocks_is_sewn_sides_first():
    rounds = (RoundSpec(BorderSpec(F(2), "moss")), RoundSpec(None, ("half",), F(4), (0,)))
    half = grid("half", [["linen", "sand"]])
    unit = tree(four(), side=F(8), rounds=rounds, others=[half])
    assert names(unit) == ["round 2 top", "round 2 sides", "round 2 bottom"]
    assert names(unit.parts[1]) == ["round 2 left", "border 1", "round 2 right"]
    assert [len(p.parts) for p in unit.parts] == [5, 3, 5]
    assert unit.parts[0].kind == unit.parts[2].kind
    assert len(unit.parts[1].parts[0].parts) == 3 and unit.name == "top"
    assert_sewn(unit)


def test_a_block_within_a_block_is_sewn_first():
    """Sixteen squares in rows of four, unless they were written as four blocks of four."""
    chess = library()["checkerboard"]
    unit = tree(chess)
    assert [len(p.parts) for p in unit.parts] == [2, 2]
    assert [len(p.patches) for p in unit.parts[0].parts] == [4, 4]
    plain = Block("plain", 4, 4, tuple(PatchSpec(p.ring, p.fabric) for p in chess.patches))
    assert [len(p.parts) for p in tree(plain).parts] == [4] * 4


def test_corners_go_on_last():
    """A four patch, two triangles on its sides, then two more: not one patch at a time."""
    unit = tree(library()["snail's trail"])
    assert ["down", "across"] in [
        [u.join, u.parts[0].join] for u in every(unit) if len(u.patches) == 4
    ]


def test_units_that_cover_the_same_cloth_share_a_kind():
    """A goose in each of four blocks, one turned, is one kind; another fabric is not."""
    star, geese = library()["sawtooth star"], library()["dutchman's puzzle"]
    unit = tree(star, star, columns=2, turns=(0, 90))
    kinds = Counter(u.kind for u in every(unit) if len(u.patches) == 3 and u.join == "slant")
    assert list(kinds.values()) == [8]
    both = tree(star, geese, columns=2)
    assert len({u.kind for u in every(both) if len(u.patches) == 3 and u.join == "slant"}) == 2


def test_one_block_is_the_top():
    unit = tree(grid("plain", [["linen"]], "fen"))
    assert unit.name == "block" and unit.patch is not None and not unit.parts


def test_a_block_with_a_motif_is_a_unit_of_its_own():
    unit = tree(grid("plain", [["linen"]], "fen"), grid("bare", [["linen"]]), columns=2)
    assert [(p.name, p.kind) for p in unit.parts] == [
        ("block", "block plain"),
        ("block", "block bare"),
    ]
    assert unit.name == "top"


def test_triangles_are_joined_on_the_slant():
    """A square of two triangles beside a square: the diagonal first, then the upright seam."""
    points = [((0, 0), (1, 0), (0, 1)), ((1, 0), (1, 1), (0, 1))]
    made = [PatchSpec(tuple((F(x), F(y)) for x, y in ring), "linen") for ring in points]
    made += [rectangle(1, 0, 2, 1), rectangle(0, 1, 2, 2)]
    unit = tree(Block("plain", 2, 2, tuple(made)))
    assert unit.join == "down" and unit.parts[0].join == "across"
    assert unit.parts[0].parts[0].join == "slant"


def test_a_kind_is_sewn_alike_in_every_block():
    """Sixteen squares as four blocks of four in one block, as squares in the other: what
    looks alike has one kind, and one kind has one tree, whichever block comes first."""
    chess = library()["checkerboard"]
    plain = Block("plain", 4, 4, tuple(PatchSpec(p.ring, p.fabric) for p in chess.patches))
    for blocks in ((chess, plain), (plain, chess)):
        unit = tree(*blocks, columns=2)
        trees = {}
        for part in every(unit):
            kinds = sorted(p.kind for p in part.parts)
            assert trees.setdefault(part.kind, kinds) == kinds
