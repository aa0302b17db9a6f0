"""Whole patchwork patterns: every patch has its piece, and every piece its patches."""

from __future__ import annotations

from collections import Counter
from fractions import Fraction
from itertools import pairwise

import pytest
from demos import demo
from shapely.geometry import Polygon

from publish.words import english

F = Fraction
PATTERNS = ("towpath", "millrace", "heronry")
BY_SHAPE = {"rectangle": F(1), "once-cut triangle": F(1, 2), "twice-cut triangle": F(1, 2)}
"""Share of the box round a finished patch that the patch fills."""


def cut_out(name):
    """Return pattern, drafts and plans."""
    work = demo(name)
    return work.pattern, work.drafts, work.plans


def every_size():
    for name in PATTERNS:
        _, drafts, plans = cut_out(name)
        for key in plans:
            yield drafts[key], plans[key]


def straight_area(patch):
    """Return the exact area of a patch without arcs."""
    (x, y), *rest = patch.ring
    spokes = [(u - x, v - y) for u, v in rest]
    doubled = (a * d - b * c for (a, b), (c, d) in pairwise(spokes))
    return sum(doubled, F(0)) / 2


@pytest.mark.parametrize("name", PATTERNS)
def test_every_patch_comes_from_one_piece_of_its_fabric(name):
    _, drafts, plans = cut_out(name)
    assert set(plans) == set(drafts)
    for key, plan in plans.items():
        pieces = {p.letter: p for p in plan.pieces}
        assert len(pieces) == len(plan.pieces)
        assert set(plan.sources) == {p.key for p in drafts[key].patches}
        for patch in drafts[key].patches:
            assert pieces[plan.sources[patch.key]].fabric == patch.fabric


def test_the_pieces_are_as_many_as_their_patches():
    made = Counter()
    for drafted, plan in every_size():
        counts = Counter(plan.sources.values())
        batched = {letter for m in plan.makings for letter in m.letters}
        for piece in plan.pieces:
            if piece.letter in batched or not counts[piece.letter]:
                continue
            wanted = -(-counts[piece.letter] // piece.yields)
            assert piece.count == wanted, (piece, counts[piece.letter])
            made[piece.shape] += 1
        assert drafted.patches
    assert {"rectangle", "once-cut triangle", "twice-cut triangle", "template"} <= set(made)


def test_each_patch_has_the_area_that_its_piece_gives():
    seen = Counter()
    for drafted, plan in every_size():
        pieces = {p.letter: p for p in plan.pieces}
        templates = {t.letter: t for t in plan.templates}
        held = {m for making in plan.makings for m in making.letters}
        for patch in drafted.patches:
            piece = pieces[plan.sources[patch.key]]
            if piece.letter in templates:
                whole = templates[piece.letter].finished.area
                corners = Polygon([(float(x), float(y)) for x, y in patch.ring]).area
                assert patch.arcs or whole == pytest.approx(corners)
            elif piece.shape in BY_SHAPE and piece.purpose != "foundation":
                if piece.letter in held or piece.purpose.startswith("border"):
                    continue
                box = piece.finished_width * piece.finished_length
                assert straight_area(patch) == box * BY_SHAPE[piece.shape]
            seen[piece.shape] += 1
    assert len(seen) >= 4


def test_the_pieces_of_a_batch_are_cut_as_often_as_it_is_made():
    total = Counter()
    for drafted, plan in every_size():
        counts = Counter()
        for making in plan.makings:
            assert making.count <= making.batches * making.each_batch
            assert making.count > (making.batches - 1) * making.each_batch
            for letter, each in zip(making.letters, making.each, strict=True):
                counts[letter] += each * making.batches
            total[making.method] += making.count
        single = Counter(plan.sources[p.key] for p in drafted.patches)
        for piece in plan.pieces:
            if piece.letter in counts:
                whole = piece.shape == "rectangle" and piece.count > counts[piece.letter]
                assert piece.count == counts[piece.letter] or whole, piece
                assert single[piece.letter] >= 1
    # Towpath: 8, 4 and 48 geese; 2, 1 and 12 squares with flipped corners.
    assert (total["geese"], total["corners"]) == (60, 15)


def test_letters_stand_for_one_purpose_and_fabric_in_all_sizes():
    for name in PATTERNS:
        _, _, plans = cut_out(name)
        meaning = {}
        for plan in plans.values():
            for piece in plan.pieces:
                what = piece.purpose, piece.fabric
                assert meaning.setdefault(piece.letter, what) == what


def test_a_patch_keeps_its_letter_where_it_is_cut_alike_in_every_size():
    """Heronry's heron is the same in its three sizes, and so are the sections' letters."""
    _, drafts, plans = cut_out("heronry")
    letters = {}
    for key, plan in plans.items():
        for patch in drafts[key].patches:
            if patch.block == "heron":
                letters.setdefault(patch.spec, set()).add(plan.sources[patch.key])
    assert len(letters) == 29
    assert {len(found) for found in letters.values()} == {1}


def test_names_tell_the_pieces_of_a_fabric_apart():
    for _, plan in every_size():
        names = Counter((p.purpose, p.fabric, english(p.called)) for p in plan.pieces)
        assert set(names.values()) == {1}


def test_curved_patches_are_cut_with_notched_templates():
    """Millrace: four bends in the mini, 36 in the throw, with two sides to each bend."""
    _, drafts, plans = cut_out("millrace")
    for key, count in (("mini", 4), ("throw", 36)):
        plan = plans[key]
        assert sum(t.count for t in plan.templates) == 2 * count
        assert {len(t.notches) for t in plan.templates} == {3}
        by_letter = {p.letter: p for p in plan.pieces}
        for template in plan.templates:
            piece = by_letter[template.letter]
            left, top, right, bottom = template.cut.bounds
            assert right - left <= piece.width + 1e-9 < right - left + 0.125 + 1e-9
            assert bottom - top <= piece.length + 1e-9
            assert (piece.shape, piece.template) == ("template", template.key)
        assert drafts[key].patches


def test_borders_between_the_rounds_of_a_medallion():
    """Heronry's throw by hand: 18 in, border 1, border 2, geese 6, border 2, blocks 8,
    border 2: what each border is sewn to is 18, 20, 36 and 56 in wide."""
    _, drafts, plans = cut_out("heronry")
    plan = plans["throw"]
    for number, (inside, width) in enumerate([(18, 1), (20, 2), (36, 2), (56, 2)], start=1):
        side, top = (plan.piece(f"border {number} {part}") for part in ("side", "top"))
        assert (side.width, side.length) == (width + F(1, 2), inside + F(1, 2))
        assert (top.width, top.length) == (width + F(1, 2), inside + 2 * width + F(1, 2))
        assert {plan.sources[f"border {number} {end}"] for end in ("left", "right")} == {
            side.letter
        }
    assert drafts["throw"].width == 60
    assert [plan.piece(f"border {n} side").joined_from for n in (1, 2, 3, 4)] == [1, 1, 1, 2]
