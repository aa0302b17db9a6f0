"""The map of the top and the tree that sews it: exact, complete, and in an order that works."""

from collections import Counter
from fractions import Fraction
from itertools import pairwise

import pytest
from draft_builders import codes, grid, motif, pattern, size
from hypothesis import given, settings
from hypothesis import strategies as st

from publish.draft.assembly import assemble
from publish.draft.press import pressing, seam_ends
from publish.draft.seams import Item, Node, sewn, take_apart
from publish.draft.topmap import doubled_area, placements, seam_length, top_patches
from publish.model.draft import Patch
from publish.model.pattern import Block, BorderSpec, PatchSpec

F = Fraction
FABRICS = ("linen", "moss", "sand")


def area(patches):
    return sum((doubled_area(p.ring) / 2 for p in patches), F(0))


def leaves(unit):
    """Return the patches of a tree in sewing order."""
    return (unit.patch,) if unit.patch else tuple(p for part in unit.parts for p in leaves(part))


def every(unit):
    yield unit
    for part in unit.parts:
        yield from every(part)


def top(columns=1, rows=1, blocks=None, borders=(), carries=None, **more):
    made = blocks or [grid("plain", [["linen"]], carries)]
    pat = pattern(motifs=[motif()], blocks=made)
    one = size(columns, rows, blocks=tuple(b.key for b in made), borders=tuple(borders), **more)
    patches, notes = top_patches(pat, one)
    assert not notes
    return pat, one, patches


def tree(*args, **more):
    pat, _, patches = top(*args, **more)
    unit, notes = assemble(pat, patches)
    assert not notes
    return unit


@st.composite
def tops(draw):
    fabric = st.sampled_from(FABRICS)
    made = []
    for key in ("one", "two")[: draw(st.integers(1, 2))]:
        rows, columns = draw(st.integers(1, 3)), draw(st.integers(1, 3))
        cells = [[draw(fabric) for _ in range(columns)] for _ in range(rows)]
        made.append(grid(key, cells, draw(st.sampled_from([None, "fen"]))))
    borders = draw(st.lists(st.builds(
        BorderSpec, st.integers(1, 24).map(lambda n: F(n, 8)), fabric,
        st.sampled_from(["butted", "mitred"])), max_size=3))  # fmt: skip
    side = draw(st.integers(40, 200)) * F(1, 8)
    return top(draw(st.integers(1, 3)), draw(st.integers(1, 3)), made, borders, side=side)


@settings(max_examples=30)
@given(tops())
def test_areas_add_up_exactly(made):
    _, one, patches = made
    assert area(patches) == one.width * one.height
    assert all(doubled_area(p.ring) > 0 for p in patches)
    assert len({p.key for p in patches}) == len(patches)


@settings(max_examples=30)
@given(tops())
def test_sewing_the_tree_gives_the_map_back(made):
    pat, one, patches = made
    unit, notes = assemble(pat, patches)
    assert not notes
    assert unit.box == (0, 0, one.width, one.height)
    assert Counter(leaves(unit)) == Counter(patches)
    for part in every(unit):
        assert_edge_to_edge(part)


def assert_edge_to_edge(unit):
    """The parts lie side by side along one straight seam each, and fill their unit."""
    if unit.patch:
        assert unit.box == unit.patch.box and unit.join is None
        return
    boxes = [p.box for p in unit.parts]
    assert len(boxes) > 1
    if unit.join == "mitred":
        assert len(boxes) == 5
        assert area(leaves(unit)) == unit.width * unit.height
        return
    along, aside = (0, 1) if unit.join == "across" else (1, 0)
    assert all(a[along + 2] == b[along] for a, b in pairwise(boxes))
    assert {(b[aside], b[aside + 2]) for b in boxes} == {(unit.box[aside], unit.box[aside + 2])}


@settings(max_examples=30)
@given(tops())
def test_units_of_one_kind_look_alike(made):
    pat, _, patches = made
    unit, _ = assemble(pat, patches)
    shapes = {}
    for part in every(unit):
        sides = sorted((part.width, part.height))
        cloth = Counter((p.fabric, tuple(sorted((p.box[2] - p.box[0], p.box[3] - p.box[1]))))
                        for p in leaves(part))  # fmt: skip
        assert shapes.setdefault(part.kind, (sides, cloth)) == (sides, cloth)


@settings(max_examples=25)
@given(st.integers(1, 4), st.integers(1, 4), st.integers(1, 4), st.integers(1, 4))
def test_meeting_seams_nest(columns, rows, across, down):
    cells = [[FABRICS[(x + y) % 2] for x in range(across)] for y in range(down)]
    unit = tree(columns, rows, [grid("plain", cells)])
    nodes = [u for u in every(unit) if u.parts]
    for join in ("across", "down"):
        ends = {(at, high): u.press for u in nodes if u.join == join
                for at, _, high in unit_seams(u)}  # fmt: skip
        starts = {(at, low): u.press for u in nodes if u.join == join
                  for at, low, _ in unit_seams(u)}  # fmt: skip
        for spot in ends.keys() & starts.keys():
            assert ends[spot] != starts[spot]
            assert {ends[spot], starts[spot]} in ({"left", "right"}, {"up", "down"})


def unit_seams(unit):
    """Return each seam of a unit: where it lies, where it begins, where it ends."""
    along, aside = (0, 1) if unit.join == "across" else (1, 0)
    return [(p.box[along + 2], unit.box[aside], unit.box[aside + 2]) for p in unit.parts[:-1]]


def test_a_throw_by_hand():
    """Two by two blocks of four patches, a butted and a mitred border."""
    block = grid("four", [["linen", "sand"], ["sand", "linen"]], "fen")
    borders = [BorderSpec(F(1), "moss"), BorderSpec(F(4), "linen", "mitred")]
    unit = tree(2, 2, [block], borders)
    assert (unit.name, unit.join, unit.press) == ("top", "mitred", "out")
    strips = [f"border 2 {side}" for side in ("left", "right", "top", "bottom")]
    assert [p.name for p in unit.parts] == ["border 1", *strips]
    assert len({p.kind for p in unit.parts[1:]}) == 1  # all four alike when turned
    inner = unit.parts[0]
    assert [p.name for p in inner.parts] == ["border 1 top", "border 1 sides", "border 1 bottom"]
    assert inner.join == "down" and inner.press == "out"
    sides = inner.parts[1]
    assert [p.name for p in sides.parts] == ["border 1 left", "centre", "border 1 right"]
    centre = sides.parts[1]
    assert (centre.join, [p.name for p in centre.parts]) == ("down", ["row 1", "row 2"])
    assert [p.press for p in centre.parts] == ["left", "right"]
    assert centre.parts[0].kind == centre.parts[1].kind
    ground = centre.parts[0].parts[0]
    assert (ground.name, ground.kind, ground.join) == ("ground", "ground four", "down")
    assert {u.kind for u in every(ground)} == {
        "ground four", "half ground", "patch linen", "patch sand"}  # fmt: skip
    kinds = Counter(u.kind for u in every(unit))
    assert kinds["ground four"] == 4 and kinds["half ground"] == 8 and kinds["patch linen"] == 8


def test_a_block_with_a_motif_is_a_unit_of_its_own():
    unit = tree(2, 1, [grid("plain", [["linen"]], "fen"), grid("bare", [["linen"]])])
    assert [(p.name, p.kind) for p in unit.parts] == [
        ("block", "block plain"), ("block", "block bare")]  # fmt: skip
    assert unit.name == "top"


def test_one_block_is_the_top():
    unit = tree(1, 1, carries="fen")
    assert unit.name == "block" and unit.patch is not None and not unit.parts


def test_rows_and_columns_count_from_zero_and_motifs_lie_in_their_middles():
    pat, one, _ = top(3, 2, [grid("plain", [["linen"]], "fen"), grid("bare", [["sand"]])],
                      [BorderSpec(F(5, 2), "moss")], side=F(9))  # fmt: skip
    found = placements(pat, one)
    assert [(p.row, p.column) for p in found] == [(0, 0), (0, 2), (1, 1)]
    assert [(p.x, p.y) for p in found] == [(7, 7), (25, 7), (16, 16)]


def test_seam_length_by_hand():
    """Nine patches of 3 in: four seams of 9 in; a border of 1 in: two of 9, two of 11."""
    block = grid("nine", [["linen", "sand", "linen"]] * 3)
    _, one, patches = top(1, 1, [block], [BorderSpec(F(1), "moss")], side=F(9))
    assert seam_length(patches, one) == 4 * 9 + 2 * 9 + 2 * 11
    _, one, patches = top(1, 1, [block], [BorderSpec(F(1), "moss", "mitred")], side=F(9))
    assert float(seam_length(patches, one)) == pytest.approx(4 * 9 + 4 * 9 + 4 * 2**0.5)


def test_patches_that_do_not_fill_their_block():
    spec = PatchSpec(((F(0), F(0)), (F(1), F(0)), (F(1), F(1)), (F(0), F(1))), "linen")
    pat = pattern(blocks=[Block("gap", 2, 1, (spec,))])
    _, notes = top_patches(pat, size(blocks=("gap",)))
    assert codes(notes) == ["D341"]


def patch(key, *ring, fabric="linen"):
    return Patch(key, tuple((F(x), F(y)) for x, y in ring), fabric, "ground", "plain", 0, 0)


def rectangle(key, left, top_, right, bottom):
    return patch(key, (left, top_), (right, top_), (right, bottom), (left, bottom))


PINWHEEL = [rectangle("a", 0, 0, 2, 1), rectangle("b", 2, 0, 3, 2), rectangle("c", 1, 2, 3, 3),
            rectangle("d", 0, 1, 1, 3), rectangle("e", 1, 1, 2, 2)]  # fmt: skip


def items(patches):
    return tuple(Item(p.ring, (p,)) for p in patches)


def test_patches_round_a_middle_are_set_in():
    node = take_apart(items(PINWHEEL))
    assert node.join == "set in" and len(node.parts) == 5
    blocks = [Block("plain", 3, 3, tuple(PatchSpec(p.ring, p.fabric) for p in PINWHEEL))]
    pat, _, patches = top(blocks=blocks)
    unit, notes = assemble(pat, patches)
    assert codes(notes) == ["D340"] and unit.join == "set in" and unit.press == "open"


def test_triangles_are_joined_on_the_slant():
    """A square of two triangles beside a square: the diagonal first, then the upright seam."""
    made = [patch("a", (0, 0), (1, 0), (0, 1)), patch("b", (1, 0), (1, 1), (0, 1)),
            rectangle("c", 1, 0, 2, 1)]  # fmt: skip
    node = take_apart(items(made))
    assert node.join == "across" and node.parts[0].join == "slant"
    assert {i.patches[0].key for i in sewn(node.parts[0])} == {"a", "b"}
    assert [i.patches[0].key for i in sewn(node)][2] == "c"


def test_unlike_rows_are_not_mistaken_for_columns():
    """Two long patches over three short ones: only the level seam runs through."""
    made = [rectangle("a", 0, 0, 3, 1), rectangle("b", 3, 0, 6, 1), rectangle("c", 0, 1, 2, 2),
            rectangle("d", 2, 1, 4, 2), rectangle("e", 4, 1, 6, 2)]  # fmt: skip
    node = take_apart(items(made))
    assert node.join == "down" and [p.join for p in node.parts] == ["across", "across"]
    assert pressing(node)[node.parts[0]] == "left"
    assert [at for at, _, _ in seam_ends(node.parts[1])] == [2, 4]


def test_parts_that_do_not_meet_cannot_be_sewn():
    apart = Node("across", tuple(Node(item=i) for i in items([PINWHEEL[0], PINWHEEL[1]])))
    with pytest.raises(ValueError, match="edge to edge"):
        sewn(apart)
