"""Checks of cloth: each fires on a plan spoiled in one place and is silent on the whole one.

Sources: the envelope back of 12 × 18 in for an 18 in form (House on Hill Road blog, Pillow
fit and closures); the join that loses the seam, two 67 1/2 in lengths of 42 in giving 83 in
with 1/2 in seams (quiltingboard forum, Measuring help for a backing); area / usable width
as a floor for any layout (from memory). The rest of the sums stands in `reedmace.py`.
"""

from dataclasses import replace
from fractions import Fraction

import pytest
from reedmace import f
from reedmace_case import GROUND, MOTIF, SIDES, Spoil, case, codes, only, pillow_case

from publish import proof
from publish.model.cutplan import BackingPlan, Cut, Strip
from publish.model.size import Size
from publish.proof.booklet import agreement
from publish.proof.case import Case
from publish.proof.values import bought, finishing, pieces, purchase, strips


def every(found: Case) -> list[str]:
    return codes(proof.check(found.pattern, found.sizes, found.drafts, found.plans, found.manual))


def test_the_whole_case_is_silent() -> None:
    assert every(case()) == []


def test_every_code_is_declared_once_with_a_reason() -> None:
    assert len(proof.CODES) == sum(len(part) for part in proof._DECLARED)
    for code, title in proof.CODES.items():
        assert code.startswith("P8") and len(code) == 4
        assert title and proof.REASONS[code]


def test_a_fabric_bought_and_not_cut() -> None:
    note = only(bought.check(Spoil(case()).fabric("moss", strips=())), "P801")
    assert note.place.path == "fabrics.moss" and "Deep moss" in note.what


def test_a_fabric_cut_and_not_bought() -> None:
    fabrics = dict(case().plans["mini"].fabrics)
    del fabrics["sandbar"]
    assert "Sandbar" in only(bought.check(Spoil(case()).plan(fabrics=fabrics)), "P802").what


def test_a_fabric_that_no_table_names() -> None:
    whole = case()
    materials, making, *_ = whole.manual.sections
    table, *short = materials.blocks
    fewer = replace(table, rows=table.rows[:2])
    manual = replace(whole.manual, sections=(replace(materials, blocks=(fewer, *short)), making))
    assert "Deep moss" in only(bought.check(replace(whole, manual=manual)), "P803").what


def swapped(old: object, new: object) -> Case:
    plan = case().plans["mini"]
    return Spoil(case()).plan(pieces=tuple(new if p is old else p for p in plan.pieces))


def test_fewer_pieces_than_patches() -> None:
    note = only(pieces.check(swapped(SIDES, replace(SIDES, count=1))), "P811")
    assert (note.expected, note.received) == ("2 sewn", "1 cut")
    assert "pieces C, side border" in note.what and note.place.path == "sizes.mini"


def test_a_piece_of_another_fabric_than_its_patches() -> None:
    notes = list(pieces.check(swapped(SIDES, replace(SIDES, fabric="linen"))))
    assert codes(notes) == ["P811", "P811", "P811"]
    assert [(n.expected, n.received) for n in notes] == [
        ("a piece of Sandbar", "C, of Pale linen"),
        ("a piece of Sandbar", "C, of Pale linen"),
        ("0 sewn", "2 cut"),
    ]


def test_more_motif_squares_than_motifs() -> None:
    note = only(pieces.check(swapped(MOTIF, replace(MOTIF, count=9))), "P812")
    assert (note.expected, note.received) == ("1 laid", "9 cut")


def test_one_letter_for_two_pieces() -> None:
    notes = pieces.check(swapped(SIDES, replace(SIDES, letter="A")))
    assert ["letter A" in n.what for n in notes if n.code == "P813"] == [True]


def test_a_piece_without_cloth_for_its_seams() -> None:
    note = only(pieces.check(swapped(GROUND, replace(GROUND, width=f("16 3/8")))), "P814")
    assert (note.expected, note.received) == ("at least 16 1/2 in", "16 3/8 in")


def test_a_piece_that_only_one_list_has() -> None:
    note = only(agreement.check(swapped(GROUND, replace(GROUND, count=2))), "P815")
    assert "piece A" in note.what


@pytest.mark.parametrize(
    ("part", "change", "expected"),
    [
        ("backing", {"panel_length": "29"}, "1 of linen, 28 in × 29 in"),
        ("backing", {"panels": 2}, "2 of linen, 28 in × 28 in"),
        ("binding", {"strips": 4}, "4 of moss, 2 1/4 in × 40 in"),
        ("binding", {"square": "15"}, "3 of moss, 15 in × 15 in"),
    ],
)
def test_finishing_pieces_that_their_plan_does_not_ask_for(
    part: str, change: dict[str, str | int], expected: str
) -> None:
    values = {k: f(v) if isinstance(v, str) else v for k, v in change.items()}
    changed = replace(getattr(case().plans["mini"], part), **values)
    note = only(agreement.check(Spoil(case()).plan(**{part: changed})), "P815")
    assert note.expected == expected and part in note.what


def test_a_sleeve_or_pillow_back_that_is_not_cut() -> None:
    assert only(agreement.check(Spoil(case()).plan(sleeve=SIDES)), "P815").received == "none"
    assert "pillow back" in only(agreement.check(pillow_case()), "P815").what


def test_a_strip_wider_than_the_fabric() -> None:
    narrow = Spoil(case()).fabric("sandbar", usable_width=f("36 7/8"))
    note = only(strips.check(narrow), "P831")
    assert (note.expected, note.received) == ("at most 36 7/8 in", "37 in")
    assert not list(strips.check(Spoil(case()).fabric("sandbar", usable_width=f(37))))


def test_a_piece_longer_than_its_strip() -> None:
    shallow = Strip(f(15), (Cut("B", f("15 1/2"), f("15 1/2"), 1),))
    binding = case().plans["mini"].fabrics["moss"].strips[1]
    found = Spoil(case()).fabric("moss", strips=(shallow, binding), length=f("21 3/4"))
    assert "piece B" in only(strips.check(found), "P831").what


@pytest.mark.parametrize("count", [1, 3])
def test_strips_that_hold_another_number_of_pieces(count: int) -> None:
    strip = case().plans["mini"].fabrics["sandbar"].strips[0]
    found = Spoil(case()).fabric(
        "sandbar", strips=(replace(strip, count=count),), length=f("2 1/2") * count
    )
    note = only(strips.check(found), "P832")
    assert (note.expected, note.received) == ("2", str(count))


def test_a_piece_planned_at_another_size() -> None:
    strip = Strip(f("15 1/2"), (Cut("B", f("15 3/8"), f("15 1/2"), 1),))
    binding = case().plans["mini"].fabrics["moss"].strips[1]
    note = only(strips.check(Spoil(case()).fabric("moss", strips=(strip, binding))), "P832")
    assert note.received == "15 3/8 in × 15 1/2 in"


def test_a_piece_may_be_turned_unless_it_may_not() -> None:
    whole = case()
    side = Cut("C", f("2 1/2"), f("16 1/2"), 2, turned=True)
    end = Strip(f("2 1/2"), (Cut("D", f("20 1/2"), f("2 1/2"), 1),), 2)
    turned = (Strip(f("16 1/2"), (side,)), end)
    assert not list(strips.check(Spoil(whole).fabric("sandbar", strips=turned, length=f("21 1/2"))))
    plan = whole.plans["mini"].fabrics["sandbar"]
    fixed = tuple(replace(p, may_turn=False) for p in plan.pieces)
    found = Spoil(whole).fabric("sandbar", strips=turned, length=f("21 1/2"), pieces=fixed)
    assert "another size" in only(strips.check(found), "P832").what


def joined_ends(each: str, along: str = "2 1/2") -> Case:
    """Return the case with 58 1/2 in ends, each joined from two lengths."""
    long = replace(
        case().plans["mini"].pieces[3], length=f("58 1/2"), width=f("2 1/2"), joined_from=2
    )
    side = case().plans["mini"].pieces[2]
    ends = Strip(f("2 1/2"), (Cut("D", f(each), f(along), 1),), 4)
    sides = Strip(f("2 1/2"), (Cut("C", f("16 1/2"), f("2 1/2"), 2),))
    return Spoil(case()).fabric(
        "sandbar", pieces=(side, long), strips=(ends, sides), length=f("12 1/2")
    )


def test_a_joined_piece_loses_its_seam() -> None:
    # Two lengths of 29 1/2 in with 1/4 in seams give 58 1/2 in.
    assert not list(strips.check(joined_ends("29 1/2")))
    assert "another size" in only(strips.check(joined_ends("29 3/8")), "P832").what
    assert "another size" in only(strips.check(joined_ends("29 1/2", "2 3/8")), "P832").what


def test_a_length_that_is_not_its_strips() -> None:
    note = only(strips.check(Spoil(case()).fabric("linen", length=f(45))), "P833")
    assert (note.expected, note.received) == ("45 1/2 in", "45 in")


@pytest.mark.parametrize(
    ("change", "lesser"),
    [
        ({"bound": "46"}, "lower bound"),
        ({"needed": "45"}, "plan"),
        ({"buy": "45"}, "length needed"),
    ],
)
def test_lengths_out_of_order(change: dict[str, str], lesser: str) -> None:
    found = Spoil(case()).fabric("linen", **{k: f(v) for k, v in change.items()})
    assert any(
        n.code == "P834" and n.what.endswith(f"below its {lesser}") for n in purchase.check(found)
    )


def test_too_few_metres() -> None:
    decimetre = case().pattern.sewing.metric_step
    found = Spoil(case()).fabric("linen", buy_metric=11 * decimetre)
    assert "in metres" in only(purchase.check(found), "P834").what


def test_allowances_are_in_the_length_needed() -> None:
    # Cloth that loses 3 %: (45 1/2 + 1) / 0.97 = 47 91/97.
    cloth = case().pattern.fabrics
    washed = {**cloth, "linen": replace(cloth["linen"], shrinkage=Fraction(3, 100))}
    shrinking = replace(case(), pattern=replace(case().pattern, fabrics=washed))
    note = only(purchase.check(shrinking), "P837")
    assert (note.expected, note.received) == (
        "45 1/2 in after shrinking, straightening and squaring up",
        "44 1/8 in",
    )
    metres = 13 * case().pattern.sewing.metric_step  # 121.8 cm are needed
    enough = Spoil(shrinking).fabric("linen", needed=f("47 91/97"), buy_metric=metres)
    assert not list(purchase.check(enough))


@pytest.mark.parametrize("buy", ["54", "50"])
def test_a_purchase_that_is_not_the_next_step(buy: str) -> None:
    note = only(purchase.check(Spoil(case()).fabric("linen", buy=f(buy))), "P835")
    assert note.received == f"{buy} in"


def test_a_plan_below_the_area_of_its_pieces() -> None:
    # 2 × (16 1/2 + 20 1/2) × 2 1/2 = 185 sq in over 40 in: 4 5/8 in at the least.
    found = Spoil(case()).fabric("sandbar", length=f("4 1/2"), bound=f("4 1/2"), needed=f("5 1/2"))
    assert only(purchase.check(found), "P836").expected == "at least 4 5/8 in"


@pytest.mark.parametrize("side", ["width", "height"])
def test_a_backing_that_does_not_reach(side: str) -> None:
    backing = replace(case().plans["mini"].backing, **{side: f(27)})
    note = only(finishing.check(Spoil(case()).plan(backing=backing)), "P841")
    assert (note.expected, note.received) == ("at least 28 in", "27 in")
    assert side in note.what


def joined_backing(panel: str, width: str) -> Case:
    """Return a case 75 in wide and 59 1/2 in high, backed by two panels side by side."""
    sizes = {"mini": replace(case().sizes["mini"], width=f(75), height=f("59 1/2"))}
    backing = BackingPlan(
        "linen", f(width), f("67 1/2"), 2, f(panel), f("67 1/2"), "vertical", f(4)
    )
    plans = {"mini": replace(case().plans["mini"], backing=backing, batting=None, binding=None)}
    return replace(case(), sizes=sizes, plans=plans)


def test_panels_that_lose_their_seam() -> None:
    assert not list(finishing.check(joined_backing("42", "83")))
    note = only(finishing.check(joined_backing("41 1/2", "83")), "P841")
    assert "joined width" in note.what


def test_batting_that_does_not_reach() -> None:
    batting = replace(case().plans["mini"].batting, height=f(25))
    assert only(finishing.check(Spoil(case()).plan(batting=batting)), "P842").received == "25 in"


@pytest.mark.parametrize(("length", "joined"), [("89", "115 1/2"), ("90", "89 1/2")])
def test_binding_that_does_not_go_round(length: str, joined: str) -> None:
    binding = replace(case().plans["mini"].binding, length=f(length), joined_length=f(joined))
    note = only(finishing.check(Spoil(case()).plan(binding=binding)), "P843")
    assert note.expected == "at least 90 in"


def test_the_published_pillow_back_closes_and_a_narrower_one_does_not() -> None:
    assert not list(finishing.check(pillow_case()))
    back = replace(pillow_case().plans["mini"].pillow, piece_width=f("11 1/2"))
    note = only(finishing.check(Spoil(pillow_case()).plan(pillow=back)), "P844")
    assert (note.expected, note.received) == ("at least 4 in", "3 in")
    short = replace(pillow_case().plans["mini"].pillow, piece_length=f(17))
    assert "length" in only(finishing.check(Spoil(pillow_case()).plan(pillow=short)), "P844").what


def test_quilting_wider_than_the_batting_allows() -> None:
    size: Size = case().sizes["mini"]
    wide = (*size.quilting[:2], replace(size.quilting[2], spacing=f("8 1/8")))
    note = only(finishing.check(Spoil(case()).size(quilting=wide)), "P845")
    assert (note.expected, note.received) == ("at most 8 in", "8 1/8 in")
