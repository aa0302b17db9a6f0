"""Whether the units can be sewn: parts of one height side by side, each patch used once.

In: a case. Out: notes.
Invariant: parts joined across or down tile the unit's box in that direction, others fill
it together; units of one kind have one size; the root is the top; every patch hangs on
the tree exactly once.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from fractions import Fraction

from publish.model.draft import Unit
from publish.notes import Note, error
from publish.proof.case import Case, Code, units
from publish.units import inches_text

CODES = {
    "P823": Code("A unit and its parts do not fit together", "the seam has two lengths"),
    "P824": Code("A patch is not sewn exactly once", "a piece is left over, or missing"),
    "P825": Code("Units of one kind differ in size", "the steps make them as if they were alike"),
}

Box = tuple[Fraction, Fraction, Fraction, Fraction]
"""Left, top, right, bottom."""


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each unit that cannot be sewn as described."""
    for size in case.keys:
        draft = case.drafts[size]
        root = draft.assembly
        whole = (Fraction(0), Fraction(0), draft.width, draft.height)
        if root.box != whole:
            yield _misfit(case, size, root, "the top", whole)
        for unit in units(root):
            yield from _fit(case, size, unit)
        yield from _once(case, size)
        yield from _kinds(case, size)


def _fit(case: Case, size: str, unit: Unit) -> Iterator[Note]:
    if unit.patch is not None and unit.patch.box != unit.box:
        yield _misfit(case, size, unit, "its patch", unit.patch.box)
    if unit.join in ("across", "down"):
        yield from _edge_to_edge(case, size, unit)
    elif unit.parts:
        yield from _inside(case, size, unit)


def _edge_to_edge(case: Case, size: str, unit: Unit) -> Iterator[Note]:
    """Parts side by side: one height, each beginning where the one before it ends."""
    along, across = ((0, 2), (1, 3)) if unit.join == "across" else ((1, 3), (0, 2))
    at = unit.box[along[0]]
    for part in sorted(unit.parts, key=lambda p: p.box[along[0]]):
        if part.box[along[0]] != at or any(part.box[i] != unit.box[i] for i in across):
            yield _misfit(case, size, unit, f"its part {part.name}", part.box)
        at = part.box[along[1]]
    if at != unit.box[along[1]]:
        yield _misfit(case, size, unit, "the last of its parts", unit.parts[-1].box)


def _inside(case: Case, size: str, unit: Unit) -> Iterator[Note]:
    """Parts joined by other seams: mitred corners, slanting, set in. Together as large."""
    lefts, tops, rights, bottoms = zip(*(p.box for p in unit.parts), strict=True)
    whole = min(lefts), min(tops), max(rights), max(bottoms)
    if whole != unit.box:
        yield _misfit(case, size, unit, "its parts together", whole)


def _misfit(case: Case, size: str, unit: Unit, other: str, box: Box) -> Note:
    return error(
        "P823", case.size_place(size), f"the {unit.name} and {other} do not fit together",
        expected=_box(unit.box), received=_box(box),
    )  # fmt: skip


def _box(box: Box) -> str:
    left, top, right, bottom = box
    size = f"{inches_text(right - left)} × {inches_text(bottom - top)}"
    return f"{size}, {inches_text(left)} from the left and {inches_text(top)} from the top"


def _once(case: Case, size: str) -> Iterator[Note]:
    draft = case.drafts[size]
    sewn = Counter(u.patch.key for u in units(draft.assembly) if u.patch is not None)
    known = Counter(p.key for p in draft.patches)
    for key in sorted({*sewn, *known}):
        if sewn[key] != 1 or known[key] != 1:
            yield error(
                "P824", case.size_place(size), f"the patch {key} is not sewn exactly once",
                expected="drafted once and sewn once",
                received=f"drafted {known[key]} times and sewn {sewn[key]} times",
            )  # fmt: skip


def _kinds(case: Case, size: str) -> Iterator[Note]:
    first: dict[str, Unit] = {}
    for unit in units(case.drafts[size].assembly):
        like = first.setdefault(unit.kind, unit)
        if sorted((like.width, like.height)) != sorted((unit.width, unit.height)):
            yield error(
                "P825", case.size_place(size), f"units of the kind {unit.kind} differ in size",
                expected=f"{inches_text(like.width)} × {inches_text(like.height)}",
                received=f"{inches_text(unit.width)} × {inches_text(unit.height)}",
            )  # fmt: skip
