"""Whether the units can be sewn: parts of one height side by side, each patch used once.

In: a case. Out: notes.
Invariant: rectangles joined across or down tile the unit's box in that direction, other
parts reach as far as it together, all as the unit lies on the table; units of one kind
have one size; the root is the top; every patch hangs on the tree exactly once.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from fractions import Fraction

from publish.model.draft import Unit
from publish.notes import Note, error
from publish.proof.case import Case, Code
from publish.proof.values.areas import area
from publish.surd import Length, turned

CODES = {
    "P823": Code(
        "A unit and its parts do not fit together",
        "the seam has two lengths",
        "a row 18 1/2 in high beside rows of 18 in",
        "rows of one height",
    ),
    "P824": Code(
        "A patch is not sewn exactly once",
        "a piece is left over, or missing",
        "a corner square that no unit holds",
        "each patch in exactly one unit",
    ),
    "P825": Code(
        "Units of one kind differ in size",
        "the steps make them as if they were alike",
        "`make 4` for units of which two are turned and longer",
        "a name of its own for each unit that differs",
    ),
}

Box = tuple[Length, Length, Length, Length]
"""Left, top, right, bottom."""


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each unit that cannot be sewn as described."""
    for size in case.keys:
        draft = case.drafts[size]
        root = draft.assembly
        whole = (Fraction(0), Fraction(0), draft.width, draft.height)
        if root.box != whole:
            yield _misfit(case, size, root, "the top", whole)
        for unit in root.outermost_first():
            yield from _fit(case, size, unit)
        yield from _once(case, size)
        yield from _kinds(case, size)


def _fit(case: Case, size: str, unit: Unit) -> Iterator[Note]:
    if not unit.parts and unit.patches and _around(unit, unit.turn) != unit.box:
        yield _misfit(case, size, unit, "its patches", _around(unit, unit.turn))
    if unit.join in ("across", "down") and all(map(_rectangular, unit.parts)):
        yield from _edge_to_edge(case, size, unit)
    elif unit.parts:
        yield from _inside(case, size, unit)


def _edge_to_edge(case: Case, size: str, unit: Unit) -> Iterator[Note]:
    """Parts side by side: one height, each beginning where the one before it ends."""
    along, across = ((0, 2), (1, 3)) if unit.join == "across" else ((1, 3), (0, 2))
    at = unit.box[along[0]]
    boxes = [(part, _seen(part, unit.turn)) for part in unit.parts]
    for part, box in sorted(boxes, key=lambda b: b[1][along[0]]):
        if box[along[0]] != at or any(box[i] != unit.box[i] for i in across):
            yield _misfit(case, size, unit, f"its part {part.name}", box)
        at = box[along[1]]
    if at != unit.box[along[1]]:
        yield _misfit(case, size, unit, "the last of its parts", boxes[-1][1])


def _inside(case: Case, size: str, unit: Unit) -> Iterator[Note]:
    """Parts joined by other seams: mitred corners, slanting, set in. Together as large."""
    boxes = [_seen(part, unit.turn) for part in unit.parts]
    lefts, tops, rights, bottoms = zip(*boxes, strict=True)
    whole = min(lefts), min(tops), max(rights), max(bottoms)
    if whole != unit.box:
        yield _misfit(case, size, unit, "its parts together", whole)


def _rectangular(part: Unit) -> bool:
    """Return whether a part fills its box: others may lean over the seam that joins them."""
    covered = sum((area(patch.ring) for patch in part.patches), Fraction(0))
    return not part.patches or covered == part.width * part.height


def _seen(unit: Unit, turn: int) -> Box:
    """Return a unit's box in the frame of what it is sewn into."""
    return unit.box if unit.turn == turn else _around(unit, turn)


def _around(unit: Unit, turn: int) -> Box:
    """Return the box round a unit's patches as they lie when turned back by `turn` degrees."""
    points = [turned(point, -turn) for patch in unit.patches for point in patch.ring]
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return min(xs), min(ys), max(xs), max(ys)


def _misfit(case: Case, size: str, unit: Unit, other: str, box: Box) -> Note:
    return error(
        "P823",
        case.size_place(size),
        f"the {unit.name} and {other} do not fit together",
        expected=_box(case, unit.box),
        received=_box(case, box),
    )


def _box(case: Case, box: Box) -> str:
    left, top, right, bottom = box
    size = f"{case.text(right - left)} × {case.text(bottom - top)}"
    return f"{size}, {case.text(left)} from the left and {case.text(top)} from the top"


def _once(case: Case, size: str) -> Iterator[Note]:
    draft = case.drafts[size]
    sewn = Counter(p.key for p in draft.assembly.patches)
    known = Counter(p.key for p in draft.patches)
    for key in sorted({*sewn, *known}):
        if sewn[key] != 1 or known[key] != 1:
            yield error(
                "P824",
                case.size_place(size),
                f"the patch {key} is not sewn exactly once",
                expected="drafted once and sewn once",
                received=f"drafted {known[key]} times and sewn {sewn[key]} times",
            )


def _kinds(case: Case, size: str) -> Iterator[Note]:
    first: dict[str, Unit] = {}
    for unit in case.drafts[size].assembly.outermost_first():
        like = first.setdefault(unit.kind, unit)
        if sorted((like.width, like.height)) != sorted((unit.width, unit.height)):
            yield error(
                "P825",
                case.size_place(size),
                f"units of the kind {unit.kind} differ in size",
                expected=f"{case.text(like.width)} × {case.text(like.height)}",
                received=f"{case.text(unit.width)} × {case.text(unit.height)}",
            )
