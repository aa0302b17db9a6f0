"""Cutting: straight edges, strips from cloth, pieces and sections from strips.

In: keys of cloth, strips and pieces, counts, exact lengths. Out: operations.
Invariant: cloth gets shorter by each strip, and strips are cut in the order of their layout;
what is cut from a strip fits it, and is as large as the piece that it is put down as.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import ClassVar

from publish.operations.operation import Moment, Operation, Shown, chosen
from publish.operations.parts import Part, measured, sheet
from publish.operations.piece_templates import MakeTemplates, template_heap
from publish.operations.table import Table
from publish.words.values import (
    Count,
    Length,
    Letter,
    Named,
    Rectangle,
    Several,
    Value,
    Values,
    Word,
    said,
)

STRAIGHT = "straightened"
SET_OUT = "its layout read, its labels ready"
CUTTER = "rotary cutter"
Sides = tuple[Fraction, Fraction]


def cloth_heap(fabric: str) -> str:
    """Return what the cloth of a fabric is called on the table, as it is bought."""
    return f"cloth {fabric}"


def uncut_heap(letter: str) -> str:
    """Return what the rectangles of a letter are called until they are cut to shape."""
    return f"rectangle {letter}"


@dataclass(frozen=True)
class CutOff:
    """Pieces alike that are cut side by side from one strip.

    `part` is what each is put down as; `lies` its sides across the strip and along it.
    """

    letter: str
    part: Part
    count: int
    lies: Sides
    exact: bool = True
    """Whether it measures what its part does: lengths to be joined may each be shorter."""

    @property
    def told(self) -> Value:
        return said("cut-count", count=Count(self.count), letter=Letter(self.letter))

    def need(self, table: Table) -> None:
        """Hold the piece's sides as it lies against those that it is put down with."""
        wanted = sorted((self.part.width.told, self.part.height.told))
        table.need(
            not self.exact or sorted(self.lies) == wanted,
            f"{self.part.key} as large in its strip as in the list of pieces",
            part=self.part,
        )


@dataclass(frozen=True, kw_only=True)
class StraightenCloth(Operation):
    """Square one end of every cloth to its fold."""

    on: tuple[str, ...]
    message: ClassVar[str] = "straighten-fabric"
    tools: ClassVar[tuple[str, ...]] = (CUTTER, "ruler", "iron")

    def carry_out(self, table: Table) -> None:
        for key in self.on:
            table.put(table.take(key).having(STRAIGHT))


@dataclass(frozen=True, kw_only=True)
class SetOutCutting(Operation):
    """Look at the layouts and get labels ready, one for each stack."""

    on: tuple[tuple[str, int], ...]
    within: Fraction
    """Inches by which a piece may miss its cut size."""
    message: ClassVar[str] = "set-out-cutting"

    def carry_out(self, table: Table) -> None:
        for key, count in self.on:
            table.put(table.take(key, count).having(SET_OUT), count)

    def values(self, moment: Moment) -> Values:
        return {"near": Length(self.within)}


@dataclass(frozen=True, kw_only=True)
class CutStrips(Operation):
    """Cut strips that are alike across the whole width of a cloth."""

    cloth: str
    fabric: str
    """Its key, for its layout."""
    name: str
    number: int
    """Of its place in the layout, from 1."""
    of: int
    """How many kinds of strip the layout has."""
    strips: str
    count: int
    depth: Fraction
    squaring: Fraction = Fraction(0)
    """Inches that squaring up again takes from each strip."""
    message: ClassVar[str] = "cut-strips"
    tools: ClassVar[tuple[str, ...]] = (CUTTER, "ruler")
    trims: ClassVar[bool] = True

    def carry_out(self, table: Table) -> None:
        cloth = table.take(self.cloth)
        table.need(cloth.is_(STRAIGHT), "its end straight", by=StraightenCloth, part=cloth)
        table.need(cloth.is_(SET_OUT), "its layout", by=SetOutCutting, part=cloth)
        if self.number > 1:
            before = f"strip {self.number - 1} cut"
            table.need(cloth.is_(before), before, by=CutStrips, part=cloth)
        taken = self.count * (self.depth + self.squaring)
        long = cloth.height.told >= taken
        table.need(long, f"cloth for {self.strips}", part=cloth)
        if cloth.known:
            rest = measured(cloth.height.exact - taken)
            table.put(
                cloth.sized(cloth.width, rest).having(f"strip {self.number} cut"),
            )
            table.put(sheet(self.strips, cloth.width, measured(self.depth)), self.count)

    def values(self, moment: Moment) -> Values:
        return {
            "fabric": Named(self.name),
            "opens": Word("fabric" if self.number == 1 else "strip"),
            "marked": Word("yes" if self.of > 1 else "no"),
            "number": Count(self.number),
            "strips": Count(self.count, "strip"),
            "depth": Length(self.depth),
        }

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("cutting-layout", (("fabric", self.fabric),))


@dataclass(frozen=True, kw_only=True)
class CutPieces(Operation):
    """Cut strips that are alike into pieces, and into sections that are cut again."""

    strips: str
    count: int
    pieces: tuple[CutOff, ...]
    sections: tuple[tuple[str, Fraction], ...] = ()
    """What each is called on the table, and how wide it is."""
    how: str = "from"
    """`from` a strip, `whole` or `long` where a strip is one piece, `nested` where shapes lie
    in one another's hollows, in no more than `room` inches."""
    room: Fraction | None = None
    rest: Sides | None = None
    """What is left of the cloth once this is cut, across it and along it."""
    tools: ClassVar[tuple[str, ...]] = (CUTTER, "ruler")
    trims: ClassVar[bool] = True

    @property
    def says(self) -> str:
        return f"cut-pieces-{self.how}"

    def carry_out(self, table: Table) -> None:
        strip = table.take(self.strips, self.count)
        across = sum((c.lies[0] * c.count for c in self.pieces), Fraction(0))
        across += sum((wide for _, wide in self.sections), Fraction(0))
        deep = max((c.lies[1] for c in self.pieces), default=Fraction(0))
        fits = (self.room or across) <= strip.width.told and deep <= strip.height.told
        table.need(fits, f"room in {self.strips} for its pieces", part=strip)
        for cut in self.pieces:
            if self.how != "nested":
                cut.need(table)
            table.put(cut.part, cut.count * self.count)
        for key, wide in self.sections:
            table.put(sheet(key, measured(wide), strip.height), self.count)

    def values(self, moment: Moment) -> Values:
        found: list[Value] = [cut.told for cut in self.pieces]
        wide = [Length(wide) for _, wide in self.sections]
        if len(wide) == 1:
            found.append(said("cut-section", width=wide[0]))
        elif wide:
            found.append(said("cut-sections", count=Count(len(wide)), widths=Several(tuple(wide))))
        first = self.pieces[0] if self.pieces else None
        boxes = (
            said("cut-box", letter=Letter(c.letter), box=Rectangle(*c.lies)) for c in self.pieces
        )
        return chosen(
            {
                "count": Count(self.count),
                "pieces": Several(tuple(found)),
                "letter": Letter(first.letter) if first else None,
                "boxes": Several(tuple(boxes)) if self.how == "nested" else None,
                "alone": Word("yes" if sum(c.count for c in self.pieces) == 1 else "no"),
                "left": Word("no" if self.rest is None else "yes"),
                "rest": Rectangle(*self.rest) if self.rest is not None else None,
            }
        )


@dataclass(frozen=True, kw_only=True)
class CutSection(Operation):
    """Cut sections that are alike into strips across themselves."""

    section: str
    count: int
    place: int
    """Among the sections of its strip, from 1."""
    of: int
    strips: str
    each: int
    """Strips from each section."""
    depth: Fraction
    last: bool
    """Whether nothing more is cut from the section."""
    message: ClassVar[str] = "cut-section-strips"
    tools: ClassVar[tuple[str, ...]] = (CUTTER, "ruler")
    trims: ClassVar[bool] = True

    def carry_out(self, table: Table) -> None:
        part = table.take(self.section, self.count)
        rest = part.height.told - self.depth * self.each
        table.need(rest >= 0, f"cloth for {self.strips}", part=part)
        if part.known:
            table.put(sheet(self.strips, part.width, measured(self.depth)), self.count * self.each)
            if not self.last:
                table.put(part.sized(part.width, measured(rest)), self.count)

    def values(self, moment: Moment) -> Values:
        return {
            "sections": Count(self.count),
            "which": Word("only" if self.of == 1 else "one"),
            "place": Count(self.place),
            "strips": Count(self.each, "strip"),
            "depth": Length(self.depth),
        }


@dataclass(frozen=True, kw_only=True)
class CutShapes(Operation):
    """Cut the rectangles of some letters to shape: triangles, slanting ends, a template's outline.

    Letters come with how many rectangles there are, and how many pieces each of them gives.
    """

    shape: str
    """`once` or `twice` on the diagonal, `template`, or the name of a shape from strips."""
    pieces: tuple[tuple[str, int, Part, int], ...]
    angle: int = 0
    apart: Fraction | None = None
    leans: bool = False
    template: str = ""
    """Letter of the template that they are cut with."""
    tools: ClassVar[tuple[str, ...]] = (CUTTER, "ruler")
    trims: ClassVar[bool] = True

    @property
    def says(self) -> str:
        return f"cut-shape-{self.shape}"

    def carry_out(self, table: Table) -> None:
        made = not self.template or table.count(template_heap(self.template)) > 0
        table.need(made, f"template {self.template}", by=MakeTemplates)
        for letter, count, part, yields in self.pieces:
            found = table.take(uncut_heap(letter), count)
            if found.known:
                table.put(part, count * yields)

    def values(self, moment: Moment) -> Values:
        letters: tuple[Value, ...] = tuple(Letter(letter) for letter, *_ in self.pieces)
        return chosen(
            {
                "letters": Several(letters),
                "count": Count(self.pieces[0][1]),
                "angle": Count(self.angle) if self.angle else None,
                "apart": Length(self.apart) if self.apart is not None else None,
                "leans": Word("yes" if self.leans else "no"),
            }
        )
