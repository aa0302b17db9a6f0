"""What cutting says when cloth does not suffice.

In: pattern, size, a need or a plan. Out: notes.
Invariant: a note stands at the value that can mend it.
"""

from __future__ import annotations

from fractions import Fraction

from publish.cut.needs import Need
from publish.model.cloth import SoldAs
from publish.model.cutplan import FabricPlan
from publish.model.draft import Patch
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.notes import Note, error, warning
from publish.words import english


def too_wide_note(pattern: Pattern, size: Size, need: Need) -> Note:
    """Return the error that a piece is wider than its fabric."""
    fabric, called = pattern.fabrics[need.fabric], english(need.called, pattern.measures)
    return error(
        "C401",
        pattern.place("sizes", size.key, "block_size"),
        f"the {called} of the {size.title} is wider than {fabric.name}",
        expected=f"at most {pattern.measures.text(fabric.usable_width)}, its usable width",
        received=_sides(pattern, need.width, need.length),
        help=f"make the block smaller, or give `{fabric.key}` a wider `usable_width`",
    )


def too_large_note(pattern: Pattern, size: Size, need: Need) -> Note:
    """Return the error that a piece does not fit what its fabric is sold as."""
    fabric, called = pattern.fabrics[need.fabric], english(need.called, pattern.measures)
    assert fabric.sold_as is not None
    sold = fabric.sold_as
    return error(
        "C404",
        pattern.place("fabrics", fabric.key, "sold_as"),
        f"the {called} of the {size.title} is larger than {_one(sold)} of {fabric.name}",
        expected=f"at most {_sides(pattern, sold.width, sold.length)}",
        received=_sides(pattern, need.width, need.length),
        help=f"sell `{fabric.key}` as yardage, or cut the {called} from another fabric",
    )


def too_tight_note(pattern: Pattern, size: Size, patch: Patch, allow: Fraction) -> Note:
    """Return the error that the cut line of a curve would cross itself."""
    assert patch.block is not None
    item = None if patch.spec is None else pattern.blocks[patch.block].patches[patch.spec].item
    where = ("patches", item) if item is not None else ()
    return error(
        "C405",
        pattern.place("blocks", patch.block, *where),
        f"a curve in the {size.title} is tighter than its seam allowance",
        expected=f"a radius above {pattern.measures.text(allow)}",
        help="make the block larger, or the curve gentler",
    )


def _sides(pattern: Pattern, width: Fraction, length: Fraction) -> str:
    return f"{pattern.measures.text(width)} × {pattern.measures.text(length)}"


def _one(sold: SoldAs) -> str:
    return f"a {sold.kind}"


def at_hand(pattern: Pattern, size: Size, plan: FabricPlan) -> list[Note]:
    """Warn when the designer's own length of a fabric does not reach."""
    fabric = pattern.fabrics[plan.fabric]
    if fabric.owned is None or plan.spare is None or plan.spare >= 0:
        return []
    bought = pattern.measures.bought(plan.buy, plan.buy_metric)
    note = warning(
        "C403",
        pattern.place("fabrics", fabric.key, "owned"),
        f"there is too little {fabric.name} for the {size.title}",
        expected=f"at least {pattern.measures.text(plan.needed)}",
        received=pattern.measures.text(fabric.owned),
        help=f"buy {bought}, or make a smaller size from it",
    )
    return [note]
