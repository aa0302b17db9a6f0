"""Foundation sections: orders that can be sewn, found or checked, and drawn.

That a patch is sewn on along one straight line and flipped over it is what foundation
piecing is; what follows from it is checked on the shapes.
"""

from dataclasses import replace
from fractions import Fraction

import pytest
from draft_builders import codes
from draft_tops import cut_blocks, every, library, top, tree
from helpers import PROJECTS
from hypothesis import given, settings

from publish import draft, grade, read
from publish.arcs import outline
from publish.draft.foundation import sections_of
from publish.draft.homes import homes
from publish.draft.sewn import sewn
from publish.model.block import Foundation
from publish.model.pattern import RoundSpec

F = Fraction


def sections(block, **spec):
    made, size = top(block, **spec)
    _, found, notes = sections_of(made, homes(size))
    return found, notes


def derived(name):
    block = library()[name]
    return replace(block, foundations=(Foundation(tuple(range(len(block.patches))), False),))


def ordered(name, *orders):
    found = tuple(Foundation(order, True) for order in orders)
    return replace(library()[name], foundations=found)


SECTIONS = {
    "log cabin": [13],
    "courthouse steps": [13],
    "roman stripe": [5],
    "economy patch": [9],
    "square in a square": [5],
    "snowball": [5],
    "half-square triangle": [2],
    "rail fence": [3],
    "flying geese": [6],
    "hourglass": [2, 2],
    "four patch": [2, 2],
    "nine patch": [3, 3, 3],
    "pinwheel": [4, 4],
    "sawtooth star": [3, 4, 5, 5],
}
"""How many patches each section has. Round a middle, or in a line, one section holds the
whole block, and a goose can go on the long side of another with its wings; where seams
cross, no patch can be the last, and the block is cut there. A fan of four triangles is half
a pinwheel. In a star's middle row the square goes on one goose, but not the next goose's
wings on the square, of which each has half a side."""


@pytest.mark.parametrize("name", SECTIONS)
def test_sections_are_as_few_as_can_be(name):
    found, notes = sections(derived(name), side=F(6))
    assert not notes
    assert sorted(len(s.patches) for s in found) == sorted(SECTIONS[name])
    assert [s.letter for s in found] == list("ABCDEFG"[: len(found)])


@pytest.mark.parametrize("name", SECTIONS)
def test_every_patch_is_added_along_its_line(name):
    """By shapely: a line is the whole of what a patch shares with those before it, and all
    of them lie on the other side of it."""
    found, _ = sections(derived(name))
    for section in found:
        areas = [outline(p.ring) for p in section.patches]
        assert len(section.seams) == len(areas) - 1
        before = areas[0]
        for area, ((a, b), (c, d)) in zip(areas[1:], section.seams, strict=True):
            shared = before.intersection(area)
            assert shared.length == pytest.approx(float((c - a) ** 2 + (d - b) ** 2) ** 0.5)
            sides = {
                (c - a) * (F(y) - b) - (d - b) * (F(x) - a) > 0
                for x, y in before.exterior.coords
                if abs((c - a) * (F(y) - b) - (d - b) * (F(x) - a)) > 1e-9
            }
            assert len(sides) == 1
            before = before.union(area)
        assert before.symmetric_difference(outline(section.ring)).area < 1e-9


def test_a_log_cabin_keeps_the_order_that_it_is_written_in():
    (section,), _ = sections(derived("log cabin"))
    assert [p.spec for p in section.patches] == list(range(13))
    assert [p.key for p in section.patches][:2] == [f"{section.key}1", f"{section.key}2"]


@pytest.mark.parametrize(
    ("side", "logs", "sides"),
    [
        (F(7), 13, (7, 7)),  # 7 1/2 in with its allowance: a sheet holds 7 1/2 x 8 3/4 in
        (F(8), 12, (F(48, 7), 8)),  # 8 1/2 in: the last log stays off the paper
        (F(9), 10, (F(45, 7), F(54, 7))),  # the last three
        (F(10), 13, (10, 10)),  # five logs would have to stay off: joined sheets
    ],
)
def test_a_section_that_is_larger_than_a_sheet_leaves_rectangles_off_its_paper(side, logs, sides):
    """Three rounds of logs and a middle, each a seventh of the side wide."""
    ((section,), notes) = sections(derived("log cabin"), side=side)
    assert not notes
    xs, ys = ([point[axis] for point in section.ring] for axis in (0, 1))
    assert sorted((max(xs) - min(xs), max(ys) - min(ys))) == sorted(sides)
    assert [p.spec for p in section.patches] == list(range(logs))


def test_an_order_that_cannot_be_sewn_is_told_with_its_patch():
    _, notes = sections(ordered("log cabin", (0, 1, 3)))
    assert codes(notes) == ["D342"] and "`log-3`" in notes[0].what
    assert "meets none" not in notes[0].received
    _, notes = sections(ordered("log cabin", (0, 6)))
    assert notes[0].received == "a patch that meets none of them"
    _, notes = sections(ordered("attic windows", (0, 1, 2)))
    assert notes[0].received == "a seam with 1 corner"
    _, notes = sections(ordered("drunkard's path", (0, 1)))
    assert notes[0].received == "a curved seam"
    found, notes = sections(ordered("log cabin", (0, 1, 2, 3)))
    assert not notes and len(found) == 1 and len(found[0].patches) == 4


def test_nothing_for_a_foundation_is_a_warning():
    _, notes = sections(derived("drunkard's path"))
    assert codes(notes) == ["D343"]


@settings(max_examples=20)
@given(cut_blocks())
def test_what_was_cut_by_lines_has_sections_that_sew(block):
    """However a block was cut, its sections hold each patch once at most, and it sews."""
    whole = tuple(range(len(block.patches)))
    unit, notes = draft.draft(*top(replace(block, foundations=(Foundation(whole, False),))))
    specs = [p.spec for s in unit.foundations for p in s.patches]
    assert len(set(specs)) == len(specs) and set(specs) <= set(whole)
    assert codes(notes) == ([] if unit.foundations else ["D343"])
    assert len(sewn(unit.assembly)) == 4


def test_a_section_is_one_leaf_of_the_tree():
    pat, size = top(ordered("log cabin", (0, 1, 2, 3, 4)), columns=2, turns=(0, 90))
    found, notes = draft.draft(pat, size)
    assert not notes
    leaves = [u for u in every(found.assembly) if u.section]
    assert len(leaves) == 2 == found.foundations[0].count
    assert {u.section for u in leaves} == {found.foundations[0].key}
    assert [p.spec for p in leaves[1].held] == [0, 1, 2, 3, 4]
    assert {str(p.home) for p in leaves[1].held} == {"r1c2"} and not leaves[1].parts
    assert len({u.kind for u in leaves}) == 1
    sewn(found.assembly)


def test_a_block_at_two_sizes_has_two_foundations():
    block = derived("square in a square")
    found, _ = sections(block, side=F(8), rounds=(RoundSpec(None, (block.key,), F(4), (0,)),))
    assert [(s.count, s.ring[1][0]) for s in found] == [(1, 8), (12, 4)]
    assert len({s.key for s in found}) == 2


def test_the_heron_is_sewn_as_its_designer_says():
    pattern, notes, _ = read.load(PROJECTS / "heronry")
    size, _ = grade.grade(pattern, "throw")
    found, notes = draft.draft(pattern, size)
    assert not notes
    by_key = {s.key: s for s in found.foundations}
    assert [k for k in by_key if k.startswith("heron")] == [f"heron {c}" for c in "ABCDEFG"]
    assert [len(by_key[f"heron {c}"].patches) for c in "ABCDEFG"] == [4, 5, 6, 5, 4, 3, 2]
    # 8 in of reeds and their allowance are wider than a sheet: the two strips of water are
    # sewn on without paper.
    assert len(by_key["reeds A"].patches) == 11 and by_key["reeds A"].count == 20
    assert by_key["reeds A"].ring == ((0, 0), (8, 0), (8, 7), (0, 7))
    assert all(len(s.seams) == len(s.patches) - 1 for s in found.foundations)


def test_a_finding_stands_at_the_name_that_is_wrong(tmp_path):
    text = ((PROJECTS / "heronry") / "pattern.yaml").read_text(encoding="utf-8")
    wrong = text.replace("[bill, above, below, before]", "[bill, above, before, below]")
    (tmp_path / "pattern.yaml").write_text(wrong, encoding="utf-8")
    pattern, notes, _ = read.load(tmp_path / "pattern.yaml")
    size, _ = grade.grade(pattern, "mini")
    found, notes = draft.draft(pattern, size)
    assert codes(notes) == ["D342"] and found is not None
    line = wrong.splitlines()[notes[0].place.line - 1]
    assert line[notes[0].place.column - 1 :].startswith("before, below]")
    assert "side" in notes[0].received


def test_curves_beside_a_foundation_are_sewn_as_usual():
    unit = tree(library()["orange peel"])
    assert not any(u.section for u in every(unit))
