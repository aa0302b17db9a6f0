"""Joining the lengths that long strips are cut in.

In: heaps of lengths, a seam. Out: operations.
Invariant: lengths are as high as they are long, whichever way the whole strip then lies.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from publish.operations.operation import Moment, Operation
from publish.operations.parts import Measure, Part, sheet
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.words.values import (
    Count,
    Length,
    Letter,
    Rectangle,
    Several,
    Value,
    Values,
    Word,
    said,
)


@dataclass(frozen=True, kw_only=True)
class Joined:
    """Strips that are joined from cut lengths: `each` lengths of `piece` for each of `count`."""

    piece: str
    strip: str
    """The heap that they lie on then."""
    letter: str
    count: int
    each: int
    long: Measure
    """What a strip must have at least."""
    trimmed: bool = False
    """Whether it is cut to that, where the lengths come to more."""
    across: bool = False
    """Whether a strip then lies with its length across."""


def end_to_end(length: Part, each: int, seam: Exact) -> Measure:
    """Return how long so many lengths are once they are joined by straight seams."""
    return length.height * each - 2 * seam * (each - 1)


@dataclass(frozen=True, kw_only=True)
class JoinLengths(Operation):
    """Join the cut lengths of strips end to end."""

    strips: tuple[Joined, ...]
    seam: Exact
    what: Value
    """What the strips are called together."""

    message: ClassVar[str] = "join-lengths"
    tools: ClassVar[tuple[str, ...]] = ("iron",)

    def carry_out(self, table: Table) -> None:
        for one in self.strips:
            part = table.take(one.piece, one.count * one.each)
            long = end_to_end(part, one.each, self.seam)
            table.need(
                not part.known or long.exact >= one.long.exact,
                f"lengths that come to {table.text(one.long.exact)}",
                part=part,
                expected=table.text(one.long.exact),
                received=table.text(long.exact),
            )
            table.sew("piecing", part.width * (one.count * (one.each - 1)))
            long = one.long if one.trimmed else long
            sides = (long, part.width) if one.across else (part.width, long)
            table.put(replace(sheet(one.strip, *sides), known=part.known), one.count)

    def _longer(self, moment: Moment) -> bool:
        """Return whether some lengths come to more than the strip that is cut from them."""
        return any(
            end_to_end(moment.before(one.piece), one.each, self.seam).exact > one.long.exact
            for one in self.strips
            if one.trimmed
        )

    def values(self, moment: Moment) -> Values:
        joins, strips = [], []
        for one in self.strips:
            lengths, count = Count(one.each, "length"), Count(one.count, "strip")
            strip = moment.after(one.strip)
            sides = strip.width.told, strip.height.told
            size = Rectangle(*(reversed(sides) if one.across else sides))
            letter = Letter(one.letter)
            joins.append(said("join-of", lengths=lengths, letter=letter, strips=count))
            measures = "strip-cut" if one.trimmed else "strip-measures"
            strips.append(said(measures, letter=letter, strip=size))
        return {
            "what": self.what,
            "seam": Length(self.seam),
            "trim": Word("yes" if self._longer(moment) else "no"),
            "joins": Several(tuple(joins)),
            "strips": Several(tuple(strips)),
        }
