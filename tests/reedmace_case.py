"""The cloth, the words and the whole case of `Reedmace`: see reedmace.py.

Spoil one thing with `Spoil(case()).plan(...)` and see which check notices.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Any

from reedmace import draft, f, pattern, size
from reedmace_words import manual

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
from publish.model.pattern import PillowSpec
from publish.notes import Note
from publish.proof.case import Case
from publish.words.values import Named


def _piece(
    letter: str,
    name: str,
    purpose: str,
    fabric: str,
    width: str,
    length: str,
    count: int,
    finished: tuple[str, str] | None = None,
) -> Piece:
    done = (None, None) if finished is None else (f(finished[0]), f(finished[1]))
    return Piece(letter, Named(name), purpose, fabric, f(width), f(length), count, *done)


GROUND = _piece("A", "ground", "ground", "linen", "17 1/2", "17 1/2", 1, ("16", "16"))
"""16 + 2 × 1/4 + 1 for trimming."""
MOTIF = _piece("B", "motif square", "motif", "moss", "15 1/2", "15 1/2", 1)
"""14 + 1 1/2."""
SIDES = _piece("C", "side border", "border 1 side", "sandbar", "16 1/2", "2 1/2", 2, ("16", "2"))
ENDS = _piece("D", "top border", "border 1 top", "sandbar", "20 1/2", "2 1/2", 2, ("20", "2"))
BACK = _piece("E", "backing", "backing", "linen", "28", "28", 1)
"""20 + 2 × 4."""
BIND = _piece("F", "binding", "binding", "moss", "40", "2 1/4", 3)
"""80 + 10 = 90 in, from 40 in strips: 3."""


def _one(piece: Piece) -> Strip:
    return Strip(piece.length, (Cut(piece.letter, piece.width, piece.length, 1),), piece.count)


def plan() -> CutPlan:
    """Return the cutting plan; metres are the next 10 cm of the length needed."""
    decimetre = 10 / Fraction("2.54")
    borders = Strip(
        f("2 1/2"), (Cut("D", f("20 1/2"), f("2 1/2"), 1), Cut("C", f("16 1/2"), f("2 1/2"), 1)), 2
    )
    linen = FabricPlan(
        "linen",
        f(40),
        (GROUND, BACK),
        (_one(BACK), _one(GROUND)),
        f("45 1/2"),
        f("46 1/2"),
        f("49 1/2"),
        12 * decimetre,
        f("45 1/2"),
        Fraction(1, 4),
        left=(f("22 1/2"), f("17 1/2")),
    )
    sandbar = FabricPlan(
        "sandbar",
        f(40),
        (SIDES, ENDS),
        (borders,),
        f(5),
        f(6),
        f(9),
        2 * decimetre,
        f(5),
        Fraction(3, 40),
    )
    moss = FabricPlan(
        "moss",
        f(40),
        (MOTIF, BIND),
        (_one(MOTIF), _one(BIND)),
        f("22 1/4"),
        f("23 1/4"),
        f(27),
        6 * decimetre,
        f("22 1/4"),
        Fraction(1, 3),
        left=(f("24 1/2"), f("15 1/2")),
    )
    fabrics = {"linen": linen, "sandbar": sandbar, "moss": moss}
    return CutPlan(
        "mini",
        (GROUND, MOTIF, SIDES, ENDS, BACK, BIND),
        fabrics,
        f("15 1/2"),
        BackingPlan("linen", f(28), f(28), 1, f(28), f(28), "none", f(4)),
        BattingPlan("Cotton", f(26), f(26), None),
        BindingPlan("moss", "straight", f("2 1/4"), f(90), 3, 2, f("115 1/2")),
        None,
        None,
        None,
        ThreadPlan(f(180), f(150), f(600), f(200), f("2 1/2")),
        sources={"ground": "A", "left": "C", "right": "C", "top": "D", "bottom": "D"},
    )


def case() -> Case:
    return Case(pattern(), {"mini": size()}, {"mini": draft()}, {"mini": plan()}, manual())


def pillow_case() -> Case:
    """Return the case as a pillow: 17 in cover on an 18 in form, 12 × 18 in back pieces.

    The envelope back is a published worked example: House on Hill Road blog, Pillow fit
    and closures: for an 18 in form, two pieces 18 × 12 in, overlap 4 to 6 in.
    """
    whole = case()
    spec = PillowSpec(f(18), "envelope", "moss", f(4), f(1), f("1/2"))
    cover = replace(
        size(),
        width=f(17),
        height=f(17),
        inner_width=f(17),
        inner_height=f(17),
        finish="pillow",
        pillow=spec,
        borders=(),
    )
    back = PillowPlan(f(18), "envelope", "moss", f(12), f(18), 2, f(4), f(1))
    return replace(
        whole, sizes={"mini": cover}, plans={"mini": replace(plan(), pillow=back, binding=None)}
    )


@dataclass(frozen=True)
class Spoil:
    """A case with one thing changed in its plan, draft, size or manual."""

    case: Case

    def plan(self, **changes: Any) -> Case:
        spoiled = replace(self.case.plans["mini"], **changes)
        return replace(self.case, plans={"mini": spoiled})

    def fabric(self, key: str, **changes: Any) -> Case:
        fabrics = dict(self.case.plans["mini"].fabrics)
        fabrics[key] = replace(fabrics[key], **changes)
        return self.plan(fabrics=fabrics)

    def draft(self, **changes: Any) -> Case:
        return replace(self.case, drafts={"mini": replace(self.case.drafts["mini"], **changes)})

    def size(self, **changes: Any) -> Case:
        return replace(self.case, sizes={"mini": replace(self.case.sizes["mini"], **changes)})

    def say(self, text: str) -> Case:
        return replace(self.case, manual=manual(text))


def codes(notes: Any) -> list[str]:
    return [note.code for note in notes]


def only(notes: Any, code: str) -> Note:
    """Return the one note there is, or the first of several of the code wanted."""
    found = list(notes)
    assert found and {n.code for n in found} == {code}, [f"{n.code} {n.what}" for n in found]
    return found[0]
