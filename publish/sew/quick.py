"""Units made several at once, in full the first time that a size uses a method.

In: a kind of unit and its making. Out: operations.
Invariant: pieces, batches, units and the size to trim to are the making's own.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.draft import Unit
from publish.model.nouns import noun
from publish.model.pieces import Making
from publish.model.pressing import INNER, ways
from publish.model.tree import Group
from publish.operations.operation import Where
from publish.operations.piecing import Of
from publish.operations.quick import (
    Batch,
    CutHalves,
    CutSegments,
    How,
    SewSquares,
    SewStripSet,
    TrimUnits,
)
from publish.sew.bench import Bench
from publish.sew.leaves import word
from publish.sew.names import Names
from publish.sew.pressing import way_value
from publish.surd import Length
from publish.words.values import Count, Letter, Named, Said, Several, Value, Word, said


def making_of(bench: Bench, unit: Unit) -> Making | None:
    """Return how a unit that is made a quicker way is made; None for all others."""
    if not unit.made:
        return None
    return next((m for m in bench.plan.makings if m.kind == unit.kind), None)


def add(
    bench: Bench, names: Names, group: Group, making: Making, block: str, *, again: bool
) -> None:
    """Make a group of units; `again` says that its method has been told before."""
    _Quick(bench, names, group, making, block, again).plan()


class _Quick:
    """One kind of unit and what its operations share."""

    def __init__(
        self, bench: Bench, names: Names, group: Group, making: Making, block: str, again: bool
    ) -> None:
        self.bench, self.names, self.unit, self.making = bench, names, group.unit, making
        self.again, self.group = again, group
        self.of: Of = {
            "block": block,
            "unit": names.made(self.unit),
            "count": making.count,
            "the": names.called(self.unit),
        }

    def plan(self) -> None:
        if self.making.method == "strips":
            self._strips()
        else:
            self._squares()

    def _step(self, name: str) -> Where:
        return {"chapter": "piecing", "step": f"{self.names.step(self.unit)}-{name}"}

    def _told(self, **more: Value) -> tuple[tuple[str, Value], ...]:
        trade = noun(self.unit)
        shared: dict[str, Value] = {
            "trade": Word(word(trade) if trade else "none"),
            "again": Word("yes" if self.again else "no"),
            "way": self._way(),
        }
        return tuple({**shared, **more}.items())

    def _way(self) -> Said:
        """Return where seams go: of units made several at once, all of them alike."""
        if not self.unit.press:
            return said("way", way=Word("one-side"))
        return way_value(self.names, self.unit, ways(self.group, INNER)[0][0])

    def _piece(self, at: int, count: int = 1) -> Said:
        """Return `a Still water square **D**` for the letter at a place."""
        letter = self.making.letters[at]
        piece = self.names.pieces[letter]
        return said(
            "some-squares",
            count=Count(count),
            fabric=Named(self.bench.pattern.fabrics[piece.fabric].name),
            shape=Word("square" if piece.width == piece.length else "piece"),
            letter=Letter(letter),
        )

    def _how(self, batch: Batch, told: tuple[tuple[str, Value], ...]) -> How:
        return {
            "method": self.making.method,
            "batch": batch,
            "to": self._heap(self.making.trim),
            "seam": self.bench.seam,
            "figured": self.unit.kind,
            "shown": not self.again,
            "name": self.of["the"],
            "told": told,
        }

    def _heap(self, size: tuple[Length, Length]) -> tuple[Length, Length]:
        """Return a size as the heap lies."""
        return size[::-1] if self.names.lies(self.unit) % 2 else size

    def _batch(self) -> Batch:
        making = self.making
        each = zip(making.letters, making.each, strict=True)
        heaps = tuple((f"piece {letter}", count) for letter, count in each)
        return Batch(heaps, making.batches, making.each_batch)

    def _squares(self) -> None:
        how = self._how(self._batch(), self._told(**self._method()))
        assert self.unit.sewn is not None
        exact = self._heap(self.unit.sewn.exact)
        halved = self.making.method in ("hourglasses", "geese")
        self.bench.add(SewSquares(**self._step("sew"), **self.of, **how))
        if halved:
            self.bench.add(CutHalves(**self._step("cut"), **self.of, **how))
        trim = self._step("trim")
        self.bench.add(TrimUnits(**trim, **self.of, **how, halved=halved, drafted=exact))

    def _method(self) -> dict[str, Value]:
        """Return what the words of a method name: its squares, by their part in it."""
        making = self.making
        if making.method == "triangles":
            second = 1 if len(making.letters) > 1 else 0
            return {"first": self._piece(0), "second": self._piece(second)}
        if making.method == "hourglasses":
            squares = [at for at, count in enumerate(making.each) for _ in range(count)]
            last = len(squares) - 1
            pairs = [(squares[i], squares[min(i + 1, last)]) for i in range(0, len(squares), 2)]
            laid = (said("on", one=self._piece(a), other=self._piece(b)) for a, b in pairs)
            return {"pairs": Several(tuple(laid))}
        if making.method == "geese":
            large = min(range(len(making.letters)), key=lambda at: making.each[at])
            small = next((at for at in range(len(making.letters)) if at != large), large)
            return {
                "small": self._piece(small, making.each[small]),
                "large": self._piece(large),
                "letter": Letter(making.letters[small]),
                "mark": Letter(making.letters[large]),
            }
        base = max(range(len(making.letters)), key=self._area)
        flipped = [at for at in range(len(making.letters)) if at != base]
        return {
            "squares": Several(tuple(self._piece(at, making.each[at]) for at in flipped)),
            "base": self._piece(base),
            "flipped": Count(sum(making.each[at] for at in flipped)),
        }

    def _area(self, at: int) -> Fraction:
        piece = self.names.pieces[self.making.letters[at]]
        return piece.width * piece.length

    def _strips(self) -> None:
        making, unit = self.making, self.unit
        assert making.segment is not None and unit.sewn is not None
        order = [p.letter for part in unit.parts if (p := self.names.piece(part)) is not None]
        letters = order or list(making.letters)
        told = self._told(
            order=Several(tuple(map(Letter, letters))),
            seams=Count(len(unit.parts) - 1),
            sets=Count(making.batches, "strip-set"),
        )
        how = self._how(self._batch(), told)
        strips = tuple(f"piece {letter}" for letter in letters)
        across = (unit.join == "across") != bool(self.names.lies(unit) % 2)
        self.bench.add(
            SewStripSet(**self._step("sew"), **self.of, **how, strips=strips),
            CutSegments(
                **self._step("cut"),
                **self.of,
                **how,
                segment=making.segment,
                drafted=self._heap(unit.sewn.exact),
                across=across,
            ),
        )
