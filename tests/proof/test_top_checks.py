"""Checks of the top: patches that cover it once, and a seam tree that can be sewn.

Source: the surveyor's formula for a polygon's area, textbook geometry (from memory), tried
on a 3-4-5 triangle and on an L of two rectangles.
"""

from dataclasses import replace

from reedmace import draft, f, joined, leaf, patch
from reedmace_case import Spoil, case, codes, only

from publish.model.draft import Patch, Unit
from publish.proof.values import areas, tree


def test_areas_by_hand() -> None:
    assert areas.area(((f(0), f(0)), (f(4), f(0)), (f(0), f(3)))) == 6
    ell = ((0, 0), (3, 0), (3, 1), (1, 1), (1, "5/2"), (0, "5/2"))
    assert areas.area(tuple((f(x), f(y)) for x, y in ell)) == f("4 1/2")


def test_the_whole_top_is_silent() -> None:
    assert not list(areas.check(case())) and not list(tree.check(case()))


def respread(*changed: Patch) -> tuple[Patch, ...]:
    new = {p.key: p for p in changed}
    return tuple(new.get(p.key, p) for p in draft().patches)


def test_a_gap_of_a_hair_is_found() -> None:
    short = replace(
        draft().patches[0],
        ring=tuple((x, y if y == 2 else y - f("1/1000000")) for x, y in draft().patches[0].ring),
    )
    found = Spoil(case()).draft(patches=respread(short))
    assert only(areas.check(found), "P821").expected == "400.000 square inches"


def test_a_gap_and_an_overlap_that_add_up_are_found() -> None:
    moved = patch("right", "sandbar", 17, 2, 19, 18)
    found = Spoil(case()).draft(patches=respread(moved))
    note = only(areas.check(found), "P822")
    assert "ground" in note.what and "right" in note.what


def test_a_patch_beyond_the_edge() -> None:
    moved = patch("right", "sandbar", 19, 2, 21, 18)
    found = Spoil(case()).draft(patches=respread(moved))
    assert "beyond the edge" in only(areas.check(found), "P822").what


def rooted(root: Unit) -> list[str]:
    return codes(tree.check(Spoil(case()).draft(assembly=root)))


def ends() -> tuple[Unit, Unit, Unit]:
    top, centre, bottom = draft().assembly.parts
    return top, centre, bottom


def test_a_root_smaller_than_the_top() -> None:
    top, centre, _ = ends()
    low = joined("top", "top", "down", top, centre)
    found = rooted(low)
    assert "P823" in found and "P824" in found  # and the bottom border hangs nowhere


def test_parts_of_two_heights() -> None:
    top, centre, bottom = ends()
    left, ground, right = centre.parts
    low = replace(ground, box=(f(2), f(2), f(18), f(17)), patch=None)
    middle = replace(centre, parts=(left, low, right))
    assert "P823" in rooted(replace(draft().assembly, parts=(top, middle, bottom)))


def test_parts_with_a_gap_between_them() -> None:
    top, centre, bottom = ends()
    left, _, right = centre.parts
    note_codes = rooted(
        replace(draft().assembly, parts=(top, replace(centre, parts=(left, right)), bottom))
    )
    assert note_codes.count("P823") == 1 and "P824" in note_codes


def test_a_patch_sewn_twice() -> None:
    top, centre, bottom = ends()
    left, ground, right = centre.parts
    twin = replace(right, patch=left.patch)
    found = rooted(
        replace(draft().assembly, parts=(top, replace(centre, parts=(left, ground, twin)), bottom))
    )
    assert found.count("P824") == 2  # one twice, the other not at all


def test_units_of_one_kind_and_two_sizes() -> None:
    top, centre, bottom = ends()
    left, ground, right = centre.parts
    odd = replace(ground, kind="side")
    note = only(
        tree.check(
            Spoil(case()).draft(
                assembly=replace(
                    draft().assembly, parts=(top, replace(centre, parts=(left, odd, right)), bottom)
                )
            )
        ),
        "P825",
    )
    assert (note.expected, note.received) == ("2 in × 16 in", "16 in × 16 in")


def test_a_turned_unit_is_of_the_same_kind() -> None:
    upright, rest = patch("a", "linen", 0, 0, 2, 18), patch("b", "linen", 2, 0, 20, 18)
    corner, lying = patch("c", "linen", 0, 18, 2, 20), patch("d", "linen", 2, 18, 20, 20)
    first = joined("r1", "row 1", "across", leaf(upright, "bar", "bar"), leaf(rest, "rest", "rest"))
    second = joined("r2", "row 2", "across", leaf(corner, "c", "c"), leaf(lying, "bar", "bar"))
    root = joined("top", "top", "down", first, second)
    found = Spoil(case()).draft(assembly=root, patches=(upright, rest, corner, lying))
    assert codes(tree.check(found)) == [] and codes(areas.check(found)) == []
