"""The back of a pillow with a zipper.

In: keys of the back piece and of the front. Out: operations.
Invariant: the zipper opens before the back is sewn to the front.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from publish.operations.operation import Moment, Operation, Shown
from publish.operations.parts import Measure, sheet
from publish.operations.pillow import HELD, LAID, SewRoundFront
from publish.operations.table import Table
from publish.surd import Length as Exact
from publish.words.values import Length, Letter, Rectangle, Stitch, Values

BASTED, ZIPPED = "basted for a zipper", "its zipper sewn in"


@dataclass(frozen=True, kw_only=True)
class SewZipSeam(Operation):
    """Cut the back in half and sew the cut edges, basted where the zipper goes."""

    piece: str
    back: str
    letter: str
    seam: Exact
    stitch: Exact

    message: ClassVar[str] = "sew-zip-seam"
    tools: ClassVar[tuple[str, ...]] = ("iron",)

    def carry_out(self, table: Table) -> None:
        whole = table.take(self.piece)
        wide = Measure(whole.width.exact, whole.width.told) - 2 * self.seam
        table.sew("piecing", whole.height)
        back = replace(sheet(self.back, wide, whole.height, BASTED), known=whole.known)
        table.put(back)

    def values(self, moment: Moment) -> Values:
        whole = moment.before(self.piece)
        return {
            "letter": Letter(self.letter),
            "back": Rectangle(whole.width.told, whole.height.told),
            "side": Length(whole.height.told),
            "seam": Length(self.seam),
            "stitch": Stitch(self.stitch),
        }

    def figure(self, moment: Moment) -> Shown | None:
        return Shown("pillow", (("detail", "zip"),))


@dataclass(frozen=True, kw_only=True)
class SewZipper(Operation):
    """Sew the zipper to the allowances over the basted part."""

    back: str

    message: ClassVar[str] = "sew-zipper"
    tools: ClassVar[tuple[str, ...]] = ("zipper foot",)

    def carry_out(self, table: Table) -> None:
        back = table.take(self.back)
        table.need(back.is_(BASTED), "the basted seam", by=SewZipSeam, part=back)
        table.put(back.having(ZIPPED))


@dataclass(frozen=True, kw_only=True)
class OpenZipSeam(Operation):
    """Take out the basting over the zipper."""

    back: str

    message: ClassVar[str] = "open-zip-seam"

    def carry_out(self, table: Table) -> None:
        back = table.take(self.back)
        table.need(back.is_(ZIPPED), "the zipper sewn in", by=SewZipper, part=back)
        table.put(back.without(BASTED))


@dataclass(frozen=True, kw_only=True)
class LayZippedBack(Operation):
    """Lay the back on the front and trim it to its size."""

    quilt: str
    back: str

    message: ClassVar[str] = "lay-zipped-back"

    def carry_out(self, table: Table) -> None:
        back, front = table.take(self.back), table.take(self.quilt)
        opened = back.is_(ZIPPED) and (not back.is_(BASTED) or not back.known)
        table.need(opened, "a zipper that opens", by=OpenZipSeam, part=back)
        table.need(front.is_(HELD), "a front that is sewn round", by=SewRoundFront, part=front)
        for side, asked in ((back.width, front.width), (back.height, front.height)):
            table.need(
                not front.known or side.told >= asked.told,
                "a back as large as the front",
                part=back,
                expected=table.text(asked.told),
                received=table.text(side.told),
            )
        table.put(front.having(LAID))
