"""Sewing a tree back together finds a tree that is wrong: the check can fail."""

from dataclasses import replace
from fractions import Fraction

import pytest
from draft_tops import every, four, library, tree

from publish.draft.sewn import sewn
from publish.model.pattern import BorderSpec

F = Fraction


def changed(unit, test, change):
    """Return a tree with the first unit that passes a test changed."""
    if test(unit):
        return change(unit)
    for number, part in enumerate(unit.parts):
        new = changed(part, test, change)
        if new is not part:
            return replace(unit, parts=(*unit.parts[:number], new, *unit.parts[number + 1 :]))
    return unit


CASES = {
    "another outline": (lambda u: u.name == "half block", lambda u: replace(u, ring=u.ring[:-1])),
    "does not fill its box": (
        lambda u: u.name == "half block",
        lambda u: replace(u, box=(*u.box[:3], u.box[3] + 1)),
    ),
    "runs another way": (lambda u: u.join == "down", lambda u: replace(u, join="across")),
    "seams are set in": (lambda u: u.join == "down", lambda u: replace(u, set_in=1)),
    "do not meet": (
        lambda u: u.name == "half block",
        lambda u: replace(u, parts=(u.parts[0], u.parts[0])),
    ),
}


@pytest.mark.parametrize("words", CASES)
def test_a_wrong_tree_is_found(words):
    unit = changed(tree(four()), *CASES[words])
    with pytest.raises(ValueError, match=words):
        sewn(unit)


def test_parts_in_an_order_that_leaves_a_corner_are_found():
    """A window with both sills sewn on straight would leave their mitre unsewn."""
    unit = tree(library()["attic windows"])
    straight = changed(unit, lambda u: u.set_in > 0, lambda u: replace(u, join="down", set_in=0))
    with pytest.raises(ValueError, match=r"turns a corner"):
        sewn(straight)


def test_a_curve_is_no_slant():
    unit = tree(library()["drunkard's path"])
    wrong = changed(unit, lambda u: u.join == "curve", lambda u: replace(u, join="slant"))
    with pytest.raises(ValueError, match="is curved"):
        sewn(wrong)


def test_a_patch_left_out_is_found():
    unit = tree(four(), columns=2, borders=(BorderSpec(F(1), "moss"),))
    row = next(u for u in every(unit) if u.name == "centre")
    wrong = changed(unit, lambda u: u is row, lambda u: replace(u, parts=u.parts[:1]))
    with pytest.raises(ValueError, match="outline"):
        sewn(wrong)
