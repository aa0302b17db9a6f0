"""The borders and rounds of a top, from the inside out.

In: a size's layers, its border pieces. Out: operations.
Invariant: sides are sewn on before top and bottom; a border with mitred corners is sewn on
all round first, and its corners last.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.cutplan import Piece
from publish.model.pattern import BorderSpec
from publish.model.size import Round
from publish.model.spare import left_long
from publish.operations.borders import (
    QUARTERS,
    CutBorder,
    MeasureTop,
    PinBorder,
    PressBorder,
    SewBorder,
    border_called,
)
from publish.operations.mitres import PinMitred, PressMitres, SewMitre, SewMitred
from publish.operations.operation import Where
from publish.sew import lengths, rounds
from publish.sew.bench import Bench, heap
from publish.sew.names import Names
from publish.surd import Length
from publish.words.values import Count, Named, Said, Value, said

CHAPTER, TOP = "borders", "top"
NEAR = Fraction(1, 16)
"""Inches: a top that measures more over what it should is looked into; common practice, no
source."""


def plan(bench: Bench) -> None:
    """Add every border and round."""
    names = Names(bench)
    rounds.order(bench, names)
    index = 0
    for number, layer in enumerate(bench.size.layers, 1):
        if layer.border is None:
            rounds.add(bench, names, number, layer, _drafted(bench, layer, number))
            continue
        _Border(bench, layer, layer.border, index, number).plan()
        index += 1


def _drafted(bench: Bench, layer: Round, number: int) -> tuple[Length, Length]:
    """Return what the top measures with the layer of a number on, from raw edge to raw edge."""
    beyond = 2 * bench.size.seams_beyond(bench.seam)[number - 1]
    return layer.width + beyond, layer.height + beyond


class _Border:
    """One border and what its operations share."""

    def __init__(
        self, bench: Bench, layer: Round, spec: BorderSpec, index: int, number: int
    ) -> None:
        self.bench, self.layer, self.spec, self.index = bench, layer, spec, index
        self.at = index + 1
        self.number = number
        self.round = number if bench.size.rounds else 0
        self.pieces = {
            s: bench.pieces(f"border {self.at} {w}")
            for s, w in (("sides", "side"), ("ends", "top"))
        }
        self.strips = {s: _strip(ps) for s, ps in self.pieces.items()}

    @property
    def name(self) -> Value:
        """Return what the border is called."""
        return border_called(self.index, len(self.bench.size.borders))

    @property
    def opening(self) -> Said:
        fabric = Named(self.bench.pattern.fabrics[self.spec.fabric].name)
        if self.round:
            return said("round-opening", border=self.name, fabric=fabric, round=Count(self.round))
        return said("border-opening", border=self.name, fabric=fabric)

    def plan(self) -> None:
        self._join()
        if self.spec.corners == "mitred":
            self._mitred()
        else:
            self._butted("sides", "down")
            self._butted("ends", "across")

    def letters(self, *sides: str) -> tuple[str, ...]:
        return tuple(dict.fromkeys(p.letter for s in sides for p in self.pieces[s]))

    @property
    def exact(self) -> tuple[str, ...]:
        """Return the letters of the strips that are not left long until they are measured."""
        long = left_long(self.bench.plan)
        return tuple(letter for letter in self.letters("sides", "ends") if letter not in long)

    def _join(self) -> None:
        where: Where = {"chapter": CHAPTER, "step": f"join-{self.at}"}
        pieces = (p for ps in self.pieces.values() for p in ps)
        what = said("border-strips", border=self.name)
        lengths.join(self.bench, where, pieces, what, lambda p: lengths.upright(p, _strip((p,))))

    def _butted(self, sides: str, way: str) -> None:
        bench, step = self.bench, f"{sides}-{self.at}"
        outer, seam = _drafted(bench, self.layer, self.number), bench.seam
        drafted = outer if sides == "ends" else (outer[0], self.layer.inner_height + 2 * seam)
        strip, first = self.strips[sides], sides == "sides"
        where: Where = {"chapter": CHAPTER, "step": step}
        top = bench.look(TOP)
        side = top.height if first else top.width
        bench.add(
            MeasureTop(
                **where,
                top=TOP,
                ways=(way,),
                opening=self.opening if first else None,
                border=self.name,
                index=self.index,
            ),
            CutBorder(
                **where,
                top=TOP,
                strip=strip,
                letters=self.letters(sides),
                sides=sides,
                exact=self.exact,
                near=bench.usual(NEAR),
            ),
            PinBorder(**where, strip=strip, sides=sides, quarters=side.exact >= QUARTERS),
            SewBorder(**where, top=TOP, strip=strip, sides=sides, seam=seam, drafted=drafted),
            PressBorder(**where, top=TOP, sides=sides),
        )

    def _mitred(self) -> None:
        bench, seam, at = self.bench, self.bench.seam, self.at
        strips = tuple(self.strips.items())
        long = bench.look(TOP).height.exact >= QUARTERS
        pin: Where = {"chapter": CHAPTER, "step": f"pin-{at}"}
        sew: Where = {"chapter": CHAPTER, "step": f"sew-{at}"}
        mitre: Where = {"chapter": CHAPTER, "step": f"mitre-{at}"}
        bench.add(
            MeasureTop(
                **pin,
                top=TOP,
                ways=("down", "across"),
                opening=self.opening,
                border=self.name,
                index=self.index,
            ),
            PinMitred(
                **pin,
                top=TOP,
                strips=strips,
                letters=self.letters("sides", "ends"),
                seam=seam,
                quarters=long,
            ),
            SewMitred(**sew, top=TOP, strips=strips, seam=seam),
            PressBorder(**sew, top=TOP, sides="mitred"),
            *(
                SewMitre(
                    **mitre, tag=str(n + 1), top=TOP, corner=n, seam=seam, depth=self.spec.width
                )
                for n in range(4)
            ),
            PressMitres(**mitre, top=TOP, drafted=_drafted(bench, self.layer, self.number)),
        )


def _strip(pieces: tuple[Piece, ...]) -> str:
    """Return what the strips of a piece are called once they are whole."""
    if not pieces:
        return "border strips"
    piece = pieces[0]
    return f"strip {piece.letter}" if piece.joined_from > 1 else heap(piece)
