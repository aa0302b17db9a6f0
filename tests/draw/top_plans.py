"""Cutting plans for the hand-built sizes of `top_samples`.

In: their pieces and strips, written out. Out: `PLANS`.
"""

from __future__ import annotations

from fractions import Fraction

from top_samples import LINEN, MIST, MOSS, RED, SAND, SIZES

from publish.model.cutplan import (
    BackingPlan,
    BattingPlan,
    BindingPlan,
    Cut,
    CutPlan,
    FabricPlan,
    Piece,
    PillowPlan,
    Strip,
    ThreadPlan,
)
from publish.words.values import Named

F = Fraction


def _fabric_plan(fabric: str, pieces: tuple[Piece, ...], strips: tuple[Strip, ...]) -> FabricPlan:
    length = sum((s.depth * s.count for s in strips), F(0))
    used = sum((c.across * c.along * c.count * s.count for s in strips for c in s.cuts), F(0))
    buy = -(-(length + 1) // F(9, 2)) * F(9, 2)
    return FabricPlan(
        fabric,
        F(40),
        pieces,
        strips,
        length,
        length + 1,
        buy,
        buy,
        length,
        1 - used / (40 * length),
    )


def _plan(key: str) -> CutPlan:
    pieces = PIECES[key]
    plans = {}
    for fabric, strips in STRIPS[key].items():
        letters = {c.letter for s in strips for c in s.cuts}
        mine = tuple(p for p in pieces if p.letter in letters)
        plans[fabric] = _fabric_plan(fabric, mine, strips)
    backing = {"mini": F(28), "pillow": F(25), "throw": F(72)}[key]
    quilt = SIZES[key].finish == "quilt"
    side = SIZES[key].width
    return CutPlan(
        key,
        pieces,
        plans,
        F(31, 2) if key == "mini" else F(16) if key == "pillow" else F(17),
        BackingPlan(
            MIST,
            backing,
            backing,
            2 if key == "throw" else 1,
            F(40) if key == "throw" else backing,
            backing,
            "vertical" if key == "throw" else "none",
            F(4),
        ),
        BattingPlan("Cotton", side + 6, side + 6, None),
        BindingPlan(
            RED,
            "straight",
            F(9, 4),
            4 * side + 10,
            int(-(-(4 * side + 10) // 40)),
            int(-(-(4 * side + 10) // 40)) - 1,
            4 * side + 20,
        )
        if quilt
        else None,
        PillowPlan(F(18), "envelope", RED, F(18), F(12), 2, F(4), F(1)) if not quilt else None,
        None,
        next((p for p in pieces if p.purpose == "sleeve"), None),
        ThreadPlan(F(100), F(400), F(2000), F(200), F(5, 2)),
    )


def _piece(
    letter: str,
    name: str,
    purpose: str,
    fabric: str,
    width: F,
    length: F,
    count: int,
    finished: tuple[F, F] | None = None,
) -> Piece:
    wide, long = finished or (None, None)
    return Piece(letter, Named(name), purpose, fabric, width, length, count, wide, long)


PIECES = {
    "mini": (
        _piece("A", "Ground", "ground", LINEN, F(35, 2), F(35, 2), 1, (F(16), F(16))),
        _piece("B", "Motif square", "motif", MOSS, F(31, 2), F(31, 2), 1),
        _piece("C", "Side border", "border 1 side", SAND, F(5, 2), F(33, 2), 2, (F(2), F(16))),
        _piece(
            "D", "Top and bottom border", "border 1 top", SAND, F(5, 2), F(41, 2), 2, (F(2), F(20))
        ),
        _piece("E", "Binding strip", "binding", RED, F(40), F(9, 4), 3),
        _piece("F", "Sleeve", "sleeve", MIST, F(19), F(13, 2), 1),
        _piece("G", "Backing", "backing", MIST, F(28), F(28), 1),
    ),
    "pillow": (
        _piece("A", "Ground", "ground", LINEN, F(37, 2), F(37, 2), 1, (F(17), F(17))),
        _piece("B", "Motif square", "motif", MOSS, F(16), F(16), 1),
        _piece("H", "Pillow back", "pillow back", RED, F(18), F(12), 2),
        _piece("G", "Backing", "backing", MIST, F(25), F(25), 1),
    ),
    "throw": (
        _piece("A", "Ground", "ground", LINEN, F(10), F(10), 18, (F(9), F(9))),
        _piece("I", "Ground", "ground", SAND, F(10), F(10), 18, (F(9), F(9))),
        _piece("B", "Motif square", "motif", MOSS, F(17), F(17), 9),
        _piece("C", "Side border", "border 1 side", RED, F(3, 2), F(109, 2), 2, (F(1), F(54))),
        _piece(
            "D", "Top and bottom border", "border 1 top", RED, F(3, 2), F(113, 2), 2, (F(1), F(56))
        ),
        _piece("J", "Side border", "border 2 side", LINEN, F(9, 2), F(113, 2), 2, (F(4), F(56))),
        _piece(
            "K",
            "Top and bottom border",
            "border 2 top",
            LINEN,
            F(9, 2),
            F(129, 2),
            2,
            (F(4), F(64)),
        ),
        _piece("E", "Binding strip", "binding", RED, F(40), F(9, 4), 7),
        _piece("G", "Backing", "backing", MIST, F(40), F(72), 2),
    ),
}

STRIPS = {
    "mini": {
        LINEN: (Strip(F(35, 2), (Cut("A", F(35, 2), F(35, 2), 1),)),),
        SAND: (
            Strip(
                F(5, 2),
                (Cut("D", F(41, 2), F(5, 2), 1, True), Cut("C", F(33, 2), F(5, 2), 1, True)),
                2,
            ),
        ),
        MOSS: (Strip(F(31, 2), (Cut("B", F(31, 2), F(31, 2), 1),)),),
        RED: (Strip(F(9, 4), (Cut("E", F(40), F(9, 4), 1),), 3),),
        MIST: (
            Strip(F(28), (Cut("G", F(28), F(28), 1),)),
            Strip(F(13, 2), (Cut("F", F(19), F(13, 2), 1),)),
        ),
    },
    "pillow": {
        LINEN: (Strip(F(37, 2), (Cut("A", F(37, 2), F(37, 2), 1),)),),
        MOSS: (Strip(F(16), (Cut("B", F(16), F(16), 1),)),),
        RED: (Strip(F(18), (Cut("H", F(12), F(18), 2, True),)),),
        MIST: (Strip(F(25), (Cut("G", F(25), F(25), 1),)),),
    },
    "throw": {
        LINEN: (
            Strip(F(129, 2), (Cut("K", F(9, 2), F(129, 2), 2), Cut("J", F(9, 2), F(113, 2), 2))),
            Strip(F(10), (Cut("A", F(10), F(10), 4),), 4),
            Strip(F(10), (Cut("A", F(10), F(10), 2),)),
        ),
        SAND: (
            Strip(F(10), (Cut("I", F(10), F(10), 4),), 4),
            Strip(F(10), (Cut("I", F(10), F(10), 2),)),
        ),
        MOSS: (
            Strip(F(17), (Cut("B", F(17), F(17), 2),), 4),
            Strip(F(17), (Cut("B", F(17), F(17), 1),)),
        ),
        RED: (
            Strip(F(3, 2), (Cut("C", F(40), F(3, 2), 1),), 6),
            Strip(F(9, 4), (Cut("E", F(40), F(9, 4), 1),), 7),
        ),
        MIST: (Strip(F(72), (Cut("G", F(40), F(72), 1),), 2),),
    },
}

PLANS = {key: _plan(key) for key in SIZES}
