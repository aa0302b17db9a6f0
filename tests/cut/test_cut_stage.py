"""The stage as a whole, on the demo pattern."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from helpers import DEMO

from publish import cut, draft, grade, read
from publish.cut.letters import ALPHABET, letter
from publish.words import english

F = Fraction


@pytest.fixture(scope="module")
def made():
    pattern, notes, _ = read.load(DEMO)
    assert not notes
    sizes = {key: grade.grade(pattern, key)[0] for key in pattern.sizes}
    drafts = {key: draft.draft(pattern, size)[0] for key, size in sizes.items()}
    return pattern, sizes, drafts


def test_the_demo_is_cut_without_a_note(made):
    plans, notes = cut.cut(*made)
    assert notes == ()
    assert set(plans) == set(made[1])


# Lesson 1: allowing for seam allowances (teaching handout): cut = finished + 2 seams; the
# motif's square 1 1/2 in larger than the motif and the ground's margin: common practice,
# no source.
def test_grounds_and_motif_squares(made):
    pattern, sizes, _ = made
    plans, _ = cut.cut(*made)
    mini = plans["mini"]
    assert mini.piece("ground").width == sizes["mini"].block_side + F(1, 2) + 1
    assert mini.motif_square == sizes["mini"].motif_span + F(3, 2)
    quarter = plans["throw"].piece("ground")
    assert (quarter.width, quarter.count) == (sizes["throw"].block_side / 2 + F(1, 2) + F(1, 2), 18)
    assert pattern.sewing.seam == F(1, 4)


def test_a_pillow_front_is_trimmed_to_its_own_seam(made):
    pillow = cut.cut(*made)[0]["pillow"]
    assert pillow.piece("ground").width == 17 + 2 * F(1, 2) + 1
    assert "18 in" in english(pillow.piece("ground").note)


def test_letters_hold_over_the_sizes(made):
    plans, _ = cut.cut(*made)
    meaning = {}
    for plan in plans.values():
        assert len({p.letter for p in plan.pieces}) == len(plan.pieces)
        for piece in plan.pieces:
            what = piece.purpose, piece.fabric
            assert meaning.setdefault(piece.letter, what) == what


def test_letters_go_on_past_the_alphabet():
    assert [letter(0), letter(7), letter(8), letter(len(ALPHABET))] == ["A", "H", "J", "AA"]
    assert not {"I", "O"} & set(ALPHABET)


def test_a_piece_wider_than_its_fabric_is_a_note(made):
    pattern, sizes, drafts = made
    narrow = replace(pattern.fabrics["linen"], usable_width=F(12))
    pattern = replace(pattern, fabrics={**pattern.fabrics, "linen": narrow})
    plans, notes = cut.cut(pattern, sizes, drafts)
    assert "C401" in {n.code for n in notes}
    assert "mini" not in plans


def test_too_little_cloth_at_hand_is_a_warning(made):
    pattern, sizes, drafts = made
    short = replace(pattern.fabrics["linen"], owned=F(18))
    pattern = replace(pattern, fabrics={**pattern.fabrics, "linen": short})
    notes = cut.cut(pattern, sizes, drafts)[1]
    assert {n.code for n in notes} == {"C403"}
