"""Slips of the cutting stage: one value of a plan changed, or one thing taken out of it.

In: nothing. Out: `FAULTS`: what is wrong, the change, and the code that has to say so.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from fractions import Fraction

from state import State

from publish.model.cutplan import Package, Strip

Change = Callable[[State], State]


def f(text: str) -> Fraction:
    """Return `2 1/2` as a fraction."""
    return sum((Fraction(part) for part in text.split()), Fraction(0))


def strip(state: State, size: str, fabric: str, at: int, **changes: object) -> State:
    strips = list(state.plans[size].fabrics[fabric].strips)
    strips[at] = replace(strips[at], **changes)  # type: ignore[arg-type]
    return state.fabric(size, fabric, strips=tuple(strips))


def without(state: State, size: str, fabric: str) -> State:
    kept = {k: v for k, v in state.plans[size].fabrics.items() if k != fabric}
    return state.plan(size, fabrics=kept)


def fewer_binding_strips(state: State) -> State:
    """One strip fewer everywhere: in the binding's plan, the pieces and the layout."""
    bound = state.plans["throw"].binding
    assert bound is not None
    joined = bound.joined_length - Fraction(40)
    changed = state.part("throw", "binding", strips=6, joins=5, joined_length=joined)
    changed = changed.piece("throw", "M", count=6)
    strips = tuple(
        replace(s, count=s.count - 1) if s.cuts[0].letter == "M" else s
        for s in changed.plans["throw"].fabrics["glasswort"].strips
    )
    return changed.fabric("throw", "glasswort", strips=strips)


def smaller(state: State, size: str, letter: str, side: str) -> State:
    """A square piece cut smaller wherever it stands."""
    value = f(side)
    changed = state.piece(size, letter, width=value, length=value)
    return changed.cut(size, letter, across=value, along=value)


def swapped_letters(state: State) -> State:
    plan = state.plans["mini"]
    names = {"D": "F", "F": "D"}

    def renamed(strips: tuple[Strip, ...]) -> tuple[Strip, ...]:
        return tuple(
            replace(s, cuts=tuple(replace(c, letter=names.get(c.letter, c.letter)) for c in s.cuts))
            for s in strips
        )

    pieces = tuple(replace(p, letter=names.get(p.letter, p.letter)) for p in plan.pieces)
    fabrics = {
        k: replace(
            v,
            strips=renamed(v.strips),
            pieces=tuple(replace(p, letter=names.get(p.letter, p.letter)) for p in v.pieces),
        )
        for k, v in plan.fabrics.items()
    }
    return state.plan("mini", pieces=pieces, fabrics=fabrics)


FAULTS: tuple[tuple[str, Change, str], ...] = (
    ("one side border too few", lambda s: s.piece("mini", "D", count=1), "P811"),
    ("one ground too many", lambda s: s.piece("throw", "B", count=19), "P811"),
    ("one motif square too few", lambda s: s.piece("throw", "A", count=8), "P812"),
    (
        "one binding strip too few in the plan alone",
        lambda s: s.part("throw", "binding", strips=6),
        "P815",
    ),
    ("one binding strip too few everywhere", fewer_binding_strips, "P843"),
    (
        "the binding is cut narrower than asked",
        lambda s: s.part("mini", "binding", strip_width=f("2")),
        "P815",
    ),
    (
        "a purchase is shorter than its plan",
        lambda s: s.fabric("mini", "linen", buy=f("18")),
        "P834",
    ),
    (
        "a purchase is a step too long",
        lambda s: s.fabric(
            "throw", "linen", buy=s.plans["throw"].fabrics["linen"].buy + f("4 1/2")
        ),
        "P835",
    ),
    (
        "the metres are too short",
        lambda s: s.fabric(
            "throw", "mist", buy_metric=s.plans["throw"].fabrics["mist"].buy_metric / 2
        ),
        "P834",
    ),
    ("a fabric is not bought", lambda s: without(s, "mini", "sandbar"), "P802"),
    (
        "a fabric is bought and not cut",
        lambda s: s.fabric("mini", "mist", strips=(), pieces=()),
        "P801",
    ),
    (
        "a border is cut from the wrong fabric",
        lambda s: s.piece("mini", "D", everywhere=False, fabric="linen"),
        "P811",
    ),
    ("pieces are cut without their seams", lambda s: smaller(s, "throw", "C", "9"), "P814"),
    ("a ground is cut without room to trim", lambda s: smaller(s, "mini", "B", "16 1/2"), "P816"),
    (
        "a motif square hardly holds its motif",
        lambda s: smaller(s, "throw", "A", "15 3/4").plan("throw", motif_square=f("15 3/4")),
        "P816",
    ),
    (
        "the motif square differs from its piece",
        lambda s: s.plan("mini", motif_square=f("16")),
        "P816",
    ),
    (
        "the backing is as large as the top",
        lambda s: s.part("throw", "backing", width=f("64"), height=f("64")),
        "P841",
    ),
    (
        "a backing panel is too short",
        lambda s: s.part("throw", "backing", panel_length=f("66")),
        "P841",
    ),
    (
        "the batting is as large as the top",
        lambda s: s.part("throw", "batting", width=f("64"), height=f("64")),
        "P842",
    ),
    (
        "the package does not hold the batting",
        lambda s: s.part("throw", "batting", package=Package("craft", Fraction(34), Fraction(45))),
        "P842",
    ),
    (
        "the pillow back is too narrow to overlap",
        lambda s: s.part("pillow", "pillow", piece_width=f("10")),
        "P844",
    ),
    (
        "the pillow back tells another overlap",
        lambda s: s.part("pillow", "pillow", overlap=f("8")),
        "P844",
    ),
    ("a strip too few is cut", lambda s: strip(s, "throw", "sandbar", 0, count=3), "P832"),
    (
        "a strip is shallower than its pieces",
        lambda s: strip(s, "mini", "sandbar", 0, depth=f("2")),
        "P831",
    ),
    (
        "a strip is fuller than the fabric is wide",
        lambda s: strip(
            s,
            "throw",
            "samphire",
            0,
            cuts=tuple(
                replace(c, count=3) for c in s.plans["throw"].fabrics["samphire"].strips[0].cuts
            ),
        ),
        "P831",
    ),
    (
        "the length has no straightening",
        lambda s: s.fabric("throw", "linen", needed=s.plans["throw"].fabrics["linen"].length),
        "P837",
    ),
    (
        "a plan is longer than its strips",
        lambda s: s.fabric("throw", "sandbar", length=f("52"), needed=f("53")),
        "P833",
    ),
    (
        "small strips are cut before large ones",
        lambda s: s.fabric("throw", "linen", strips=s.plans["throw"].fabrics["linen"].strips[::-1]),
        "P897",
    ),
    (
        "a piece left is told as long as what is bought",
        lambda s: s.fabric("throw", "mist", left=(f("40"), s.plans["throw"].fabrics["mist"].buy)),
        "P898",
    ),
    (
        "nothing is said of the piece that is left",
        lambda s: s.fabric("throw", "samphire", left=None),
        "P898",
    ),
    (
        "a long border is said to need no join",
        lambda s: s.piece("throw", "H", joined_from=1),
        "P832",
    ),
    (
        "the thread for quilting is halved",
        lambda s: s.part("throw", "thread", quilting=s.plans["throw"].thread.quilting / 2),
        "P838",
    ),
    (
        "the thread for piecing is nothing",
        lambda s: s.part("throw", "thread", piecing=Fraction(0)),
        "P838",
    ),
    (
        "the sleeve is much shorter than the quilt",
        lambda s: (
            s.piece("mini", "N", length=f("12"))
            .plan("mini", sleeve=replace(s.plans["mini"].sleeve, length=f("12")))  # type: ignore
            .cut("mini", "N", along=f("12"))
        ),
        "P849",
    ),
    ("a bound lies above its plan", lambda s: s.fabric("mini", "linen", bound=f("30")), "P834"),
    (
        "a plan is made for wider cloth than the pattern's",
        lambda s: s.fabric("throw", "linen", usable_width=f("44")),
        "P839",
    ),
    ("two letters are swapped at one size", swapped_letters, "P806"),
    ("a letter stands for two pieces", lambda s: s.piece("mini", "F", letter="D"), "P813"),
    (
        "a piece's finished size has its seams in it",
        lambda s: s.piece("throw", "C", finished_width=f("9 1/2"), finished_length=f("9 1/2")),
        "P811",
    ),
    ("a piece was rounded down", lambda s: smaller(s, "throw", "B", "9 3/4"), "P819"),
)
