"""Checks of words: lengths that nothing computed, metric that does not follow, short forms.

Source: 1 in = 2.54 cm exactly (international yard and pound agreement, 1959). The metric
values below are that factor worked by hand: 18 1/2 × 2.54 = 46.99, 1/4 × 25.4 = 6.35.
"""

from dataclasses import replace

import pytest
from reedmace import f, pattern
from reedmace_case import Spoil, case, codes, manual, only

from publish.model.words import FigureBlock, FigureGrid, FigureSpec, Paragraph, Section
from publish.proof.booklet import abbreviations, figures, metric, quoted
from publish.proof.booklet.lengths import said
from publish.proof.case import Case


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("Cut 2 1/2 in strips", [("2 1/2 in", "2 1/2")]),
        ("6.4 cm and 3/8 in", [("6.4 cm", "320/127"), ("3/8 in", "3/8")]),
        ("1 yd is 36 in", [("1 yd", "36"), ("36 in", "36")]),
        ("an 18 in form", [("18 in", "18")]),
        ("in 3 steps, in 1/2, 3 inside", []),
        (
            "7/8inch, 16⅝ in and 24 inches",
            [("7/8inch", "7/8"), ("16⅝ in", "16 5/8"), ("24 inches", "24")],
        ),
        ("step 2-1/2 in", []),
    ],
)
def test_lengths_are_read_from_words(text: str, found: list[tuple[str, str]]) -> None:
    assert [(s.text, s.inches) for s in said(text)] == [(t, f(v)) for t, v in found]


@pytest.mark.parametrize(
    "text",
    [
        "Cut **A** 17 1/2 in square.",
        "The motif is 14 in across; its square is 15 1/2 in.",
        "The centre is 16 1/2 in before the borders, the quilt 20 in.",  # 16 + 2 × 1/4
        "Buy 1 3/8 yd or 1.20 m of linen.",
        "Cut 3 strips 2 1/4 in wide; 90 in of binding goes round.",
        "Backing 28 in (71.1 cm) square.",
        "The centre strip runs 6 15/16 in along the fold.",  # the motif's contact, 7 in
        "Baste 1/2 in inside the edge. The bar is 5 cm long.",
        "Needs 17 yd (16 m) of thread.",  # 600 in
    ],
)
def test_settled_lengths_pass(text: str) -> None:
    assert codes(quoted.check(Spoil(case()).say(text))) == []


@pytest.mark.parametrize(
    ("text", "length", "nearest"),
    [
        ("Cut **A** 17 3/4 in square.", "17 3/4 in", "17 1/2 in"),
        ("Trim to 16 3/8 in.", "16 3/8 in", "16 1/2 in"),
        ("Backing 72.1 cm square.", "72.1 cm", "71.1 cm"),
        ("Buy 1 1/8 yd of linen.", "1 1/8 yd", "1 1/9 yd"),
    ],
)
def test_a_typed_length_is_a_warning_that_names_the_nearest(
    text: str, length: str, nearest: str
) -> None:
    note = only(quoted.check(Spoil(case()).say(text)), "P861")
    assert note.received == length
    assert note.expected == f"perhaps {nearest}"
    assert "step 1 of Making" in note.what and note.help


def test_a_length_is_looked_for_among_the_sizes_it_speaks_of() -> None:
    whole = case()
    wall = replace(whole.sizes["mini"], key="wall", block_side=f(23))
    both = Case(
        replace(pattern(), sizes={**pattern().sizes, "wall": pattern().sizes["mini"]}),
        {**whole.sizes, "wall": wall},
        {**whole.drafts, "wall": whole.drafts["mini"]},
        {**whole.plans, "wall": whole.plans["mini"]},
        manual("The block is 23 in wide."),
    )
    assert codes(quoted.check(both)) == []
    section = both.manual.sections[1]
    mini_only = replace(section, sizes=("mini",))
    narrowed = replace(
        both, manual=replace(both.manual, sections=(both.manual.sections[0], mini_only))
    )
    assert only(quoted.check(narrowed), "P861").received == "23 in"


@pytest.mark.parametrize(
    "text",
    [
        "18 1/2 in (47.0 cm)",
        "1/4 in (6 mm)",
        "12 in × 18 in (30.5 cm × 45.7 cm)",
        "2 1/4 in (5.7 cm) wide",  # 5.715
        "1 3/8 yd (1.30 m)",  # 49.5 in; 1.30 m is 51.2 in
        "17 yd (16 m)",
        "24 3/4 yd (22.70 m)",
    ],
)
def test_metric_that_follows_is_silent(text: str) -> None:
    assert codes(metric.check(Spoil(case()).say(text))) == []


@pytest.mark.parametrize(
    ("text", "right"),
    [
        ("18 1/2 in (46.9 cm)", "18 1/2 in (47.0 cm)"),
        ("1/4 in (7 mm)", "1/4 in (6 mm)"),
        ("12 in × 18 in (30.5 cm × 45.8 cm)", "18 in (45.7 cm)"),
        ("12 in × 18 in (30.4 cm × 45.7 cm)", "12 in (30.5 cm)"),
        ("1 3/8 yd (1.50 m)", ""),
        ("1 3/8 yd (1.10 m)", ""),
    ],
)
def test_metric_that_does_not_follow(text: str, right: str) -> None:
    assert only(metric.check(Spoil(case()).say(text)), "P862").expected == right


def test_abbreviations() -> None:
    assert codes(abbreviations.check(Spoil(case()).say("Cut **A** across the WOF (US)."))) == []
    note = only(abbreviations.check(Spoil(case()).say("Sew the HSTs together.")), "P863")
    assert note.received == "HST" and "WOF" in note.expected
    assert only(abbreviations.check(Spoil(case()).say("a 1 ft rule")), "P863").received == "ft"


def with_figures(*specs: FigureSpec, grid: bool = False, words: bool = True) -> Case:
    blocks = (FigureGrid(specs, 2),) if grid else tuple(FigureBlock(s) for s in specs)
    section = Section("more", "More", (Paragraph("Words."), *blocks) if words else blocks)
    whole = manual()
    return replace(case(), manual=replace(whole, sections=(*whole.sections, section)))


def test_figures() -> None:
    good = FigureSpec("trim", "trim", "mini", (("block", "plume"),), "Trimmed.")
    assert codes(figures.check(with_figures(good))) == []
    twice = with_figures(good, replace(good, kind="binding"))
    assert "'trim'" in only(figures.check(twice), "P851").what
    for grid in (False, True):
        mute = with_figures(replace(good, caption=" "), grid=grid)
        assert "More" in only(figures.check(mute), "P852").what
        assert not list(figures.check(with_figures(replace(good, caption=""), words=False)))
    for values, size, received in (
        ((("motif", "sedge"),), "mini", "sedge"),
        ((("fabric", "silk"),), "mini", "silk"),
        ((), "throw", "throw"),
    ):
        nothing = with_figures(replace(good, values=values, size=size))
        assert only(figures.check(nothing), "P853").received == received
