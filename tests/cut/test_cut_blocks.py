"""Traditional blocks of 12 in, cut one by one: shapes, grain, and that nothing is left.

Sizes follow by hand from rules with a published source (tests of shapes): square + 1/2,
cut once + 7/8, cut twice + 1 1/4 in. Where the straight grain lies: quiltville, Cutting
quarter-square triangles, 2005.
"""

from __future__ import annotations

from fractions import Fraction

import pytest
from helpers import loaded

from publish import cut, draft, grade
from publish.read.library import trade_blocks, trade_roles

F = Fraction
CLOTH = ("linen", "moss", "sand", "reed", "rust")
NAMES = [str(values["name"]) for values in trade_blocks()]


def block(folder, name, side="12 in"):
    """Return draft and plan of one traditional block, each role in a fabric of its own."""
    roles = ", ".join(f"{role}: {CLOTH[n]}" for n, role in enumerate(trade_roles(name)))
    used = CLOTH[: len(trade_roles(name))]
    fabrics = "".join(
        f'  {key}: {{name: {key}, colour: "#{n}0{n}0{n}0"}}\n' for n, key in enumerate(used, 1)
    )
    text = (
        f'title: Osier\nfabrics:\n{fabrics}blocks:\n  one: {{traditional: "{name}", '
        f"fabrics: {{{roles}}}}}\nsizes:\n  mini: {{block_size: {side}}}\n"
    )
    made = loaded(folder, text, drawings=())
    size, _ = grade.grade(made, "mini")
    drafted, _ = draft.draft(made, size)
    plans, notes = cut.cut(made, {"mini": size}, {"mini": drafted})
    assert notes == ()
    return drafted, plans["mini"]


def cut_sizes(plan):
    """Return shape, sides and count of each ground piece."""
    return {
        (p.shape, *sorted((p.width, p.length)), p.count)
        for p in plan.pieces
        if p.purpose == "ground"
    }


@pytest.mark.parametrize("name", NAMES)
def test_every_patch_of_a_block_is_cut(tmp_path, name):
    drafted, plan = block(tmp_path, name)
    assert set(plan.sources) == {p.key for p in drafted.patches}
    pieces = {p.letter: p for p in plan.pieces}
    for patch in drafted.patches:
        assert pieces[plan.sources[patch.key]].fabric == patch.fabric
    ground = [p for p in plan.pieces if p.purpose == "ground"]
    assert sum(p.count * p.yields for p in ground) >= len(drafted.patches)
    assert all(p.template in {t.key for t in plan.templates} for p in ground if p.template)


ONCE, TWICE, PLAIN = "once-cut triangle", "twice-cut triangle", "rectangle"

BY_HAND = {
    # Squares of 4 in; four hourglasses of 4 in, two fabrics, long sides outside.
    "ohio star": {
        (PLAIN, F(9, 2), F(9, 2), 4),
        (PLAIN, F(9, 2), F(9, 2), 1),
        (TWICE, F(21, 4), F(21, 4), 2),
    },
    # Geese 6 x 3 in: 6 + 1 1/4 cut twice, 3 + 7/8 cut once.
    "sawtooth star": {
        (PLAIN, F(13, 2), F(13, 2), 1),
        (PLAIN, F(7, 2), F(7, 2), 4),
        (TWICE, F(29, 4), F(29, 4), 1),
        (ONCE, F(31, 8), F(31, 8), 4),
    },
    "pinwheel": {(ONCE, F(55, 8), F(55, 8), 2)},
    # Four quarters with long sides of 12 in.
    "hourglass": {(TWICE, F(53, 4), F(53, 4), 1)},
    # A 6 in square; round it legs of 3√2 = 4.243 in, sewn by their long side: 4.243 + 0.854
    # = 5.096, and outside legs of 6 in.
    "economy patch": {
        (PLAIN, F(13, 2), F(13, 2), 1),
        (ONCE, F(41, 8), F(41, 8), 2),
        (ONCE, F(55, 8), F(55, 8), 2),
    },
    "churn dash": {
        (PLAIN, F(9, 2), F(9, 2), 1),
        (PLAIN, F(5, 2), F(9, 2), 4),
        (ONCE, F(39, 8), F(39, 8), 2),
    },
    "rail fence": {(PLAIN, F(9, 2), F(25, 2), 1)},
}


@pytest.mark.parametrize("name", BY_HAND)
def test_blocks_worked_out_by_hand(tmp_path, name):
    _, plan = block(tmp_path, name)
    assert cut_sizes(plan) == BY_HAND[name]
