"""Patches sewn into units, and units into blocks, one kind after another.

In: the seam tree of a size, its plan. Out: operations.
Invariant: every unit below a block is made once, with its count; a kind of seam is told in
full once in a block, and in short from then on.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field
from itertools import pairwise

from publish.model.draft import Unit
from publish.model.nouns import HALF_SQUARE
from publish.model.pressing import ways
from publish.model.tree import Group
from publish.operations.joining import Taken
from publish.operations.operation import Where
from publish.operations.piecing import (
    LayOutUnit,
    Of,
    PinCurve,
    PinUnit,
    SewUnit,
)
from publish.operations.unit_pressing import Made, PressUnit, TrimUnit
from publish.sew import quick
from publish.sew.bench import Bench
from publish.sew.curves import CLIP_DEPTH, CLIP_INTERVAL, hollow_first, lies_turned
from publish.sew.halves import HalfTrim, half_trim
from publish.sew.leaves import word
from publish.sew.names import Names
from publish.sew.pressing import press_value, where_of
from publish.surd import Length
from publish.words.values import Count, Letter, Said, Several, Value, Word, said

CHAPTER = "piecing"
NOTHING = said("nothing")
_KINDS = {"across": "straight", "down": "straight", "set in": "set-in"}


def plan(bench: Bench, names: Names) -> None:
    """Piece every block that is sewn from more than foundation sections."""
    methods: set[str] = set()
    for block in bench.counts:
        told: dict[str, Value] = {}
        for group in filter(mine, names.of_block(block)):
            making = quick.making_of(bench, group.unit)
            if making is not None:
                quick.add(bench, names, group, making, block, again=making.method in methods)
                methods.add(making.method)
            else:
                _Unit(bench, names, group, block, told).plan()


def mine(group: Group) -> bool:
    """Return whether a group holds more than foundation sections."""
    return not any(u.section for u in leaves(group.unit))


def leaves(unit: Unit) -> list[Unit]:
    """Return what a unit is sewn from in the end."""
    return [leaf for p in unit.parts for leaf in leaves(p)] if unit.parts else [unit]


def blocks_of(bench: Bench, names: Names) -> list[str]:
    """Return the blocks of a size that have seams other than on foundations."""
    return [b for b in bench.counts if any(map(mine, names.of_block(b)))]


@dataclass
class _Unit:
    """One kind of unit and what its operations share."""

    bench: Bench
    names: Names
    group: Group
    block: str
    told: dict[str, Value]
    """By kind of seam, the unit for which it was told in full in this block."""
    where: Where = field(init=False)

    def __post_init__(self) -> None:
        self.unit = self.group.unit
        step = self.names.step(self.unit)
        self.where = {"chapter": CHAPTER, "step": step}
        self.the = self.names.the(self.unit)
        self.count = len(self.group.units)
        self.key = self.names.made(self.unit)
        join = self.unit.join or ""
        self.angled = join in ("across", "down") and not all(p.is_box for p in self.unit.parts)
        self.seam_kind = "slant" if self.angled else _KINDS.get(join, join)
        self.half = self.names.trade(self.unit) == HALF_SQUARE
        kind = "half" if self.half and self.seam_kind == "slant" else self.seam_kind
        self.before = self.told.get(kind)
        self.told.setdefault(kind, self.the)
        self.kind = kind
        full = join in ("curve", "set in") and self.before is None
        self.pinned_curve = full and join == "curve"
        self.shown = ("set-in" if join == "set in" else "curve") if full else "units"

    def plan(self) -> None:
        bench = self.bench
        assert self.unit.sewn is not None
        trim = self.unit.sewn.trim
        bench.add(self._lay_out())
        if self.pinned_curve:
            bench.add(self._pin_curve())
        elif self._pins:
            first = self.before is None and self.kind == "straight"
            nests, many = self.unit.nests, self.several
            bench.add(PinUnit(**self.where, **self._of, first=first, several=many, nests=nests))
        bench.add(self._sew(), self._press(None if trim else self._made))
        if trim:
            bench.add(self._trim())

    @property
    def _of(self) -> Of:
        return {"block": self.block, "unit": self.key, "count": self.count, "the": self.the}

    @property
    def name(self) -> Value:
        return self.names.called(self.unit)

    @property
    def several(self) -> bool:
        return len(self.unit.parts) > 2

    @property
    def _crossing(self) -> bool:
        """Return whether seams of neighbouring parts meet."""
        return any(
            a.parts and b.parts and self.unit.join not in (a.join, b.join)
            for a, b in pairwise(self.unit.parts)
        )

    @property
    def _pins(self) -> bool:
        straight = self.kind == "straight"
        return (straight and self._crossing) or not self.unit.nests

    def _lay_out(self) -> LayOutUnit:
        unit, names = self.unit, self.names
        assert unit.sewn is not None
        turned = lies_turned(unit) and not (self.angled or self.kind == "set-in")
        step: Where = self.where
        if self.pinned_curve:
            step = {**self.where, "step": f"{self.where['step']}-pin"}
        stage = {"curve": "pin", "set-in": ""}.get(self.shown, "")
        return LayOutUnit(
            **step,
            **self._of,
            parts=tuple(Taken(names.key(p), names.quarters(p)) for p in unit.parts),
            join="picture" if self.angled else (unit.join or ""),
            seam=self.bench.seam,
            drafted=unit.sewn.exact,
            told=unit.sewn.joined or unit.sewn.told,
            quarters=names.lies(unit),
            opener=self._opener(),
            those=names.parts(unit),
            turned=turned,
            choose=any(map(self._two_ways, unit.parts)) and self.kind == "straight",
            shown=(self.shown, stage),
            name=self.name,
            figured=unit.kind,
        )

    def _two_ways(self, part: Unit) -> bool:
        """Return whether units like a part are pressed two ways."""
        if not part.parts or part.made:
            return False
        group = next(g for g in self.names.groups if g.unit.kind == part.kind)
        return len(ways(group, where_of(self.names, part))) > 1

    def _opener(self) -> Said:
        """Return the first words of a step: `For **unit 3**, a four-patch, lay out`."""
        names, unit = self.names, self.unit
        name, trade = names.called(unit), names.trade(unit)
        if name.message == "name-unit" and trade:
            return said("for-unit-of", name=name, trade=Word(word(trade)))
        if name.message == "name-unit" or (names.is_block(unit) and names.marked(unit)):
            return said("for-unit", name=name)
        if names.is_block(unit) and (len(blocks_of(self.bench, names)) > 1 or len(names.inner) > 1):
            return said("for-the", name=name)
        return said("for-none")

    def _pin_curve(self) -> PinCurve:
        over, under = (self._short(p) for p in hollow_first(self.unit))
        step: Where = {**self.where, "step": f"{self.where['step']}-pin"}
        return PinCurve(
            **step,
            **self._of,
            over=over,
            under=under,
            interval=self.bench.usual(CLIP_INTERVAL),
            depth=self.bench.usual(CLIP_DEPTH),
        )

    def _short(self, part: Unit) -> Value:
        """Return a part in a word: its letter, or its name."""
        piece = self.names.piece(part)
        return Letter(piece.letter) if piece is not None else self.names.the(part)

    def _sew(self) -> SewUnit:
        unit, seam = self.unit, self.bench.seam
        curve = unit.join == "curve"
        return SewUnit(
            **self.where,
            **self._of,
            how=self.kind,
            before=self.before,
            pinned=not self.pinned_curve and self._pins,
            clipped=self.pinned_curve,
            several=self.several,
            seam=seam,
            length=self._length(),
            pivots=unit.set_in,
            over=self._short(hollow_first(unit)[0]) if curve else NOTHING,
            name=self.name,
            figured=unit.kind,
            shown=self.pinned_curve,
        )

    def _length(self) -> Length:
        """Return about how long the seams of one unit are, as they are drafted."""
        one = self.unit.height if self.unit.join == "across" else self.unit.width
        return one * (len(self.unit.parts) - 1)

    def _heap_size(self, size: tuple[Length, Length]) -> tuple[Length, Length]:
        """Return a size as the heap lies."""
        return size[::-1] if self.names.lies(self.unit) % 2 else size

    @property
    def _made(self) -> Made:
        carries = self.names.is_block(self.unit) and self.names.carries(self.unit)
        return Made(count=self.count, shared=self._by_block(), later=carries, box=self.unit.is_box)

    def _by_block(self) -> Value:
        """Return how many of a unit each block takes, where several blocks share it."""
        found = Counter(u.patches[0].block for u in self.group.units)
        if len(found) < 2:
            return NOTHING
        each = (
            said("shared-by", count=Count(n), block=self.names.name_of_block(b))
            for b, n in found.items()
            if b is not None
        )
        return said("shared", blocks=Several(tuple(each)))

    def _press(self, made: Made | None) -> PressUnit:
        unit = self.unit
        assert unit.sewn is not None
        return PressUnit(
            **self.where,
            **self._of,
            seams=len(unit.parts) - 1 if unit.join != "set in" else 2,
            way=press_value(self.names, self.group),
            made=made,
            drafted=self._heap_size(unit.sewn.exact) if made is not None else None,
            eased=len(unit.patches),
        )

    def _trim(self) -> TrimUnit:
        sewn = self.unit.sewn
        assert sewn is not None
        added = sewn.joined is not None
        half = half_trim(self.unit) if self.half and not added else HalfTrim("points")
        piece = self.names.piece(half.part) if half.part is not None else None
        letter = piece.letter if piece is not None else ""
        kind = f"trim {half.how} {half.by} {letter}"
        before = None if added else self.told.get(kind)
        if not added:
            self.told.setdefault(kind, self.the)
        return TrimUnit(
            **self.where,
            **self._of,
            how="added" if added else half.how,
            by=half.by,
            letter=letter,
            before=before,
            to=self._heap_size(sewn.told),
            drafted=self._heap_size(sewn.exact),
            rounding=self.bench.pattern.measures.grid,
            seam=self.bench.seam,
            made=self._made,
        )
