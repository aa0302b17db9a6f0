"""Whether seams that meet are pressed opposite ways, so that they lock.

In: a case. Out: notes.
Invariant: where a row's seam ends at its neighbour's, the two are pressed opposite ways,
except where the draft itself says that no pressing can do it.
"""

from __future__ import annotations

from collections.abc import Iterator

from publish.model.draft import Unit
from publish.notes import Note, warning
from publish.proof.case import Case, Code

CODES = {
    "P829": Code(
        "Seams that meet are pressed the same way",
        "the crossing is a lump and slips",
        "rows 1 and 2 both pressed to the left",
        "row 1 to the left, row 2 to the right",
    ),
}

_TURNED = {"across": "down", "down": "across"}


def check(case: Case) -> Iterator[Note]:
    """Yield a warning for each pair of neighbours whose seams cannot lock."""
    for key in case.keys:
        for unit in case.drafts[key].assembly.outermost_first():
            if unit.join not in _TURNED or not unit.nests:
                continue
            for one, other in zip(unit.parts, unit.parts[1:], strict=False):
                if _meet(unit, one, other) and one.press == other.press:
                    yield warning(
                        "P829",
                        case.size_place(key),
                        f"{one.name} and {other.name} of the {key} are pressed the same way",
                        expected="opposite ways",
                        received=one.press,
                    )


def _meet(unit: Unit, one: Unit, other: Unit) -> bool:
    """Return whether two neighbours that can lock have a seam that one carries on from the
    other."""
    join = _TURNED[unit.join or ""]
    ways = {"left", "right", "up", "down"}
    if not (one.nests and other.nests):
        return False
    if one.join != join or other.join != join or not {one.press, other.press} <= ways:
        return False
    side = 2 if join == "across" else 3
    ends = [{p.box[side] for p in u.parts[:-1]} for u in (one, other)]
    return bool(ends[0] & ends[1])
