"""The words of single steps: folding, order of work, sizes, counts, borders."""

from __future__ import annotations

import math
import re
from fractions import Fraction

import pytest
from write_cases import made_for, manual, section, step, steps

from publish.model.tree import every, groups, level
from publish.operations.folding import SEQUENCE
from publish.units import inches_text
from publish.write.context import Book
from publish.write.sewn import piece_of, sewn_size


def test_the_folds_of_each_way_multiply_to_its_layers() -> None:
    """Halving doubles the layers; folding into thirds takes two folds and triples them."""
    doubles = {"half": 2, "quarter": 2, "diagonal": 2, "again": 2}
    for folds, sequence in SEQUENCE.items():
        product = math.prod(doubles.get(fold, 1) for fold in sequence)
        product *= 3 ** (sequence.count("third"))
        assert product == folds
        assert sequence.count("third") == sequence.count("last-third")


@pytest.mark.parametrize(
    ("name", "folds", "count"),
    [
        ("four folds", 4, 2),
        ("three sizes", 8, 3),
        ("six folds", 6, 3),
        ("twelve folds", 12, 4),
        ("sixteen folds", 16, 4),
    ],
)
def test_folding_ends_in_the_wedge_with_its_edges_named(name: str, folds: int, count: int) -> None:
    found = steps(section(name, "folding"))
    stages = [s.figure.get("stage") for s in found if s.figure is not None]
    assert stages == [str(n) for n in range(count + 1)]
    words = {4: "four", 6: "six", 8: "eight", 12: "twelve", 16: "16"}[folds]
    last = found[-1]
    assert f"You have {words} layers" in last.right
    assert "**single fold**" in last.right and "**multiple folds**" in last.right
    assert "**centre**" in last.right
    earlier = " ".join(s.right for s in found[:-1])
    assert "single fold" not in earlier


def test_the_square_lies_wrong_side_up_so_that_it_folds_right_side_out() -> None:
    found = steps(section("three sizes", "folding"))
    assert "wrong side up" in found[0].text
    assert "right side out" in found[1].text


def test_narrow_angles_are_said_in_degrees() -> None:
    assert "30 degrees" in step("twelve folds", "folding-again-12").text
    assert "22.5 degrees" in step("sixteen folds", "folding-again-16").text


def test_each_size_has_its_own_square_to_fold() -> None:
    text = step("three sizes", "folding-square-star").text
    for plan in made_for("three sizes").plans.values():
        assert plan.motif_square is not None
        assert inches_text(plan.motif_square) in text
    assert "**Throw**" in text
    others = step("three sizes", "marking-and-cutting-the-motif-make-8")
    assert "nine motifs" in others.text and others.sizes == ("throw",)


def test_work_comes_in_sewing_order() -> None:
    keys = [s.key for s in manual("two motifs").sections if s.parent is None]
    order = [
        "cutting",
        "piecing",
        "folding",
        "marking-and-cutting-the-motif",
        "preparing-the-edge",
        "placing",
        "applique",
        "applique-prepared",
        "assembling",
        "borders",
        "quilting",
        "binding",
        "sleeve",
        "label-and-care",
        "colouring-page",
        "glossary",
        "edition",
        "templates",
    ]
    assert [k for k in keys if k in order] == order
    assert keys[:4] == ["what-you-will-make", "materials", "tools", "before-you-start"]


def test_sections_that_are_not_needed_are_not_there() -> None:
    def keys(name: str) -> set[str]:
        return {s.key for s in manual(name).sections}

    assert not keys("pillow alone") & {"binding", "sleeve", "borders", "assembling", "piecing"}
    assert not keys("no borders") & {"borders", "sleeve", "pillow"}
    assert not keys("patchwork") & {"folding", "placing", "applique", "templates"}
    assert not keys("fusible") & {"folding", "placing", "applique", "preparing-the-edge"}
    assert "fusing" in keys("fusible")
    assert "folding" not in keys("turning")


def test_one_size_is_never_told_apart() -> None:
    for name in ("one size", "pillow alone", "patchwork"):
        text = "\n".join(s.text for part in manual(name).sections for s in steps(part))
        assert "only:" not in text and "your size" not in text, name


def test_units_are_made_as_often_as_the_tree_has_them() -> None:
    made = made_for("three sizes")
    halves = step("three sizes", "piecing-half-ground")
    wholes = step("three sizes", "piecing-ground-quartered")
    assert "Make 18." in halves.text and "Make nine." in wholes.text
    # Cut 10 in squares: 10 + 10 less one seam of 2 x 1/4; the square twice over, 19 1/2 in.
    assert "19 1/2 in × 10 in" in halves.right
    assert "19 1/2 in (49.5 cm) square" in wholes.right and "trimmed" in wholes.right
    assert made.sizes["throw"].block_count == 9


def test_pieces_of_published_sizes_sew_to_published_sizes() -> None:
    """Teaching handout, Lesson 1, Allowing for seam allowances: a 3 in finished square is
    cut 3 1/2 in; three of them sewn in a row are 9 1/2 in long."""
    made = made_for("patchwork")
    book = Book(made.pattern, made.sizes, made.drafts, made.plans)
    root = made.drafts["wall"].assembly
    row = next(g.unit for g in groups(root) if g.unit.name == "block row")
    assert {p.width for p in book.pieces("wall", "ground")} == {Fraction(7, 2)}
    assert sewn_size(row) == (Fraction(19, 2), Fraction(7, 2))


def test_every_unit_of_the_tree_is_in_one_group() -> None:
    for name in ("three sizes", "two motifs", "patchwork"):
        for draft in made_for(name).drafts.values():
            root = draft.assembly
            told = [u for g in groups(root) for u in g.units]
            assert len(told) == len(set(map(id, told))) == len([u for u in every(root) if u.parts])
            levels = [g for g in groups(root) if level(g.unit) in ("block", "top", "border")]
            assert len(levels) == len(groups(root))
            for group in groups(root):
                kinds = {level(u) for u in group.units}
                assert len(kinds) == 1


def test_parts_come_before_what_is_made_of_them() -> None:
    root = made_for("two motifs").drafts["bed"].assembly
    done: set[str] = set()
    for group in groups(root):
        for unit in group.units:
            assert {p.kind for p in unit.parts if p.parts} <= done
        done.add(group.unit.kind)


def test_a_corner_patch_is_cut_larger_than_an_inner_one() -> None:
    """Outer patches of a ground that is trimmed later have one more outer edge to grow."""
    made = made_for("three sizes")
    book = Book(made.pattern, made.sizes, made.drafts, made.plans)
    patch = made.drafts["throw"].patches[0]
    piece = piece_of(book, "throw", patch)
    assert piece is not None and piece.fabric == patch.fabric
    assert piece.width == Fraction(9) + Fraction(1, 2) + Fraction(1, 2)


def test_rows_are_pressed_so_that_they_lock() -> None:
    text = step("three sizes", "assembling-row-quartered-quartered-quartered").text
    assert "to the left in rows 1 and 3 and to the right in row 2" in text


def test_borders_run_from_the_inside_out_with_the_top_growing() -> None:
    found = steps(section("three sizes", "borders-throw"))
    sizes = [re.findall(r"measures (\d+(?: \d+/\d+)?) in", s.right) for s in found]
    measured = [s[0] for s in sizes if s]
    wide = [v for v in measured if not v.startswith("1 1/2") and not v.startswith("4 1/2")]
    # 54 with seams, then 1 and 4 in on both sides: the sides widen it, the ends lengthen it.
    assert wide == ["56 1/2", "56 1/2", "64 1/2", "64 1/2"]
    names = " ".join(s.text for s in found)
    assert names.index("inner border") < names.index("outer border")


def test_mitred_borders_are_told_as_mitred() -> None:
    text = " ".join(s.text for s in steps(section("two motifs", "borders-bed")))
    assert "mitred" in text and "diagonal" in text and "Trim the two side strips" not in text


def test_joined_lengths_are_joined_before_they_are_sewn_on() -> None:
    first, second = steps(section("three sizes", "borders-throw"))[:2]
    assert "end to end" in first.text and "two side strips" in second.text
