"""The rounds of a medallion that are made of blocks.

In: the seam tree, a size's rounds. Out: operations.
Invariant: blocks are counted in the strips of the seam tree: the sides go on first and the
strips at top and bottom hold the corner blocks.
"""

from __future__ import annotations

from publish.model.draft import Unit
from publish.model.size import Round
from publish.model.tree import runs
from publish.operations.joining import START, STOP, Pressed, Result, Taken
from publish.operations.operation import Where
from publish.operations.rounds import (
    PAIRS,
    LayRound,
    OrderRounds,
    PinRound,
    PressRound,
    PressRoundStrip,
    SewRound,
    SewRoundStrip,
)
from publish.sew.bench import Bench
from publish.sew.names import Names
from publish.sew.pressing import press_way, seam_ways, turned_two_ways
from publish.surd import Length
from publish.words.values import Count, Named, Said, Several, Value, said
from publish.words.values import Length as Told

CHAPTER, TOP = "borders", "top"
NOTHING = said("nothing")


def order(bench: Bench, names: Names) -> None:
    """Say in which order the rounds go on, where some are made of blocks."""
    if any(layer.blocks for layer in bench.size.rounds):
        where: Where = {"chapter": CHAPTER, "step": "order"}
        told = tuple(_what(bench, names, layer) for layer in bench.size.rounds)
        bench.add(OrderRounds(**where, rounds=told))


def _what(bench: Bench, names: Names, layer: Round) -> Said:
    if layer.border is not None:
        fabric = Named(bench.pattern.fabrics[layer.border.fabric].name)
        return said("round-of-fabric", fabric=fabric, width=Told(layer.border.width))
    assert layer.block_side is not None
    kinds = dict.fromkeys(b.block for b in layer.blocks)
    called = tuple(said("many", name=names.sized_name(k, layer.block_side)) for k in kinds)
    return said(
        "round-of-blocks",
        count=Count(len(layer.blocks), "block"),
        blocks=Several(called),
        side=Told(layer.block_side),
    )


def add(
    bench: Bench, names: Names, number: int, layer: Round, drafted: tuple[Length, Length]
) -> None:
    """Sew a round of blocks into strips, and the strips to the top."""
    root = bench.draft.assembly
    found = [u for u in root.outermost_first() if u.layer == number]
    sides = {u.side: u for u in found if u.side}
    strips: Where = {"chapter": CHAPTER, "step": f"round-{number}-strips"}
    kinds = {b.block for b in layer.blocks}
    last = not any(r.blocks for r in bench.size.rounds[number:])
    bench.add(
        LayRound(
            **strips,
            number=number,
            heaps=_heaps(names, list(sides.values())),
            alternate=turned_two_ways(names, kinds),
            last=last,
        )
    )
    for pair, both in PAIRS.items():
        one, two = (_Strip(names, sides[side], number, side) for side in both)
        if one.form == two.form:
            _sew(bench, pair, (one, two), strips)
        else:
            for strip in (one, two):
                _sew(bench, strip.side, (strip,), strips)
    _sew_on(bench, number, layer, drafted, nests=all(u.nests for u in found))


def _sew_on(
    bench: Bench, number: int, layer: Round, drafted: tuple[Length, Length], *, nests: bool
) -> None:
    on: Where = {"chapter": CHAPTER, "step": f"round-{number}-on"}
    between = drafted[0], layer.inner_height + 2 * bench.seam
    for pair, after in (("sides", between), ("ends", drafted)):
        first, second = (f"round {number} {side}" for side in PAIRS[pair])
        bench.add(
            PinRound(**on, tag=pair, top=TOP, strips=(first, second), sides=pair),
            SewRound(
                **on,
                tag=pair,
                top=TOP,
                strips=(first, second),
                sides=pair,
                seam=bench.seam,
                drafted=after,
                eased=2 * max(layer.columns, layer.rows),
                nests=nests,
            ),
            PressRound(**on, tag=pair, top=TOP, sides=pair),
        )


def _heaps(names: Names, strips: list[Unit]) -> tuple[tuple[str, int], ...]:
    found: dict[str, int] = {}
    for strip in strips:
        for part in _blocks(names, strip):
            found[names.key(part)] = found.get(names.key(part), 0) + 1
    return tuple(found.items())


def _blocks(names: Names, strip: Unit) -> tuple[Unit, ...]:
    """Return the blocks of a strip, or the one block that it is."""
    return (strip,) if names.is_block(strip) else strip.parts


def _quarters(names: Names, block: Unit) -> int:
    """Return how a block lies turned, where that makes it wider or narrower."""
    assert block.sewn is not None
    square = block.sewn.exact[0] == block.sewn.exact[1]
    return 0 if square else names.quarters(block) % 2


class _Strip:
    """The blocks along one side of a round."""

    def __init__(self, names: Names, unit: Unit, number: int, side: str) -> None:
        self.unit, self.side = unit, side
        self.blocks = _blocks(names, unit)
        self.one = len(self.blocks) == 1
        self.parts = tuple(Taken(names.key(p), _quarters(names, p)) for p in self.blocks)
        self.result = Result(f"round {number} {side}")
        self.corners = side in PAIRS["ends"] and len(self.blocks) > 2
        self.ways = () if self.one else seam_ways(unit)
        if self.corners:
            self.ways = (STOP, *self.ways[1:-1], START)
        self.press: Value = NOTHING if self.one else press_way(names, unit)
        self.those: Value = (
            names.part(unit, 1, blocks=True)
            if self.one
            else Several(tuple(names.part(p, n, blocks=True) for p, n in runs(unit)))
        )

    @property
    def form(self) -> object:
        """Return what strips that are told in one have in common."""
        return self.parts, self.ways, self.press, self.those


def _sew(bench: Bench, which: str, strips: tuple[_Strip, ...], where: Where) -> None:
    first = strips[0]
    assert first.unit.sewn is not None
    down = first.side in PAIRS["sides"]
    results = tuple(s.result for s in strips)
    bench.add(
        SewRoundStrip(
            **where,
            tag=which,
            parts=first.parts,
            results=results,
            down=down,
            seam=bench.seam,
            drafted=first.unit.sewn.exact,
            eased=len(first.blocks),
            last=strips[-1].side == "bottom",
            what=NOTHING,
            those=first.those,
            which=which,
            press=first.press,
            corners=first.corners,
        )
    )
    if not first.one:
        bench.add(
            PressRoundStrip(
                **where,
                tag=which,
                groups=(Pressed(results, first.ways),),
                down=down,
                way=NOTHING,
                measures=NOTHING,
            )
        )
