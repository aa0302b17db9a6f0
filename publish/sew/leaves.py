"""What single patches of the seam tree are, and keys made of names.

In: units, pieces. Out: words to choose by.
"""

from __future__ import annotations

from publish.model.cutplan import Piece
from publish.model.draft import Unit


def word(name: str) -> str:
    """Return a name as a key of messages and steps: small letters and hyphens."""
    return "-".join("".join(c if c.isalnum() else " " for c in name.lower()).split())


_ROLES = {"sashing": "strip", "cornerstone": "cornerstone"}
_SETTING = ("side triangle", "corner triangle")


def shape_of(piece: Piece | None, part: Unit) -> str:
    """Return what a cut patch is called: `triangle`, `diamond`, `piece`."""
    assert part.patch is not None
    patch = part.patch
    if patch.role in _ROLES:
        return _ROLES[patch.role]
    if patch.role == "setting":
        return next((word(n) for n in _SETTING if patch.key.startswith(n)), "setting-triangle")
    shape = piece.shape if piece is not None else ""
    if "triangle" in shape:
        return "triangle"
    if shape in ("diamond", "hexagon", "parallelogram"):
        return shape
    three = len(patch.ring) == 3 and not patch.arcs and shape != "rectangle"
    return "triangle" if three else "piece"
