"""How each area is quilted, in words.

In: quilting lines, sizes. Out: steps added to the section on quilting.
Invariant: the spacing is the drafted one; the direction is said as the drafted lines run:
in borders from each side's own direction, grids at 45 degrees turned by their angle.
"""

from __future__ import annotations

from publish.model.pattern import QuiltingSpec
from publish.words.en.phrase import measure, stitch
from publish.write.context import Book
from publish.write.practice import QUILTING_STITCH
from publish.write.steps import StepList

AREAS = {"motif": "the motif", "ground": "the ground", "border": "the borders"}


def area_name(book: Book, area: str) -> str:
    """Return what an area is called; without motifs the ground is the patchwork."""
    return "the patchwork" if area == "ground" and not book.motifs else AREAS[area]


def add_quilting(book: Book, steps: StepList) -> None:
    """Add the steps that quilt, from the middle outwards."""
    steps.add(
        "begin",
        "Fit a walking foot, a new needle of size 90/14 and a stitch about "
        f"{stitch(QUILTING_STITCH.value)} long, or thread a short needle for quilting by hand. "
        f"Try it on a scrap sandwich of the same fabric and batting. {_anchor(book)}"
        "Always work from the centre out.",
        right="The stitches look the same from both sides and the layers do not shift.",
        tip="Bring both threads to the top at each start, knot them and bury the ends between the "
        "layers.",
    )
    for way in _ways(book):
        _area(book, steps, *way)
    steps.add(
        "unpin",
        "Take out the basting, and look the back over for tucks.",
    )


def _anchor(book: Book) -> str:
    """Say to hold the layers of larger quilts with a line each way through the middle."""
    large = [k for k in book.keys if max(book.sizes[k].width, book.sizes[k].height) > _ANCHORED]
    if not large:
        return ""
    which = f"On the {book.titles(large)}, quilt" if book.only(large) else "Quilt"
    return f"{which} a line each way through the middle first, along a seam where there is one. "


_ANCHORED = 36
"""Inches: a larger quilt is anchored through its middle first. Common practice."""


def _ways(book: Book) -> list[tuple[str, str, int]]:
    """Return each area, style and angle that some size is quilted in, motif first."""
    found = {(q.area, q.style, _angle(q)) for k in book.keys for q in book.quilted(k)}
    order = list(AREAS)
    return sorted(found, key=lambda way: (order.index(way[0]), way[1:]))


def _angle(spec: QuiltingSpec) -> int:
    """Return the angle that matters: between 0 and 180 degrees, for straight lines only."""
    return spec.angle % 180 if spec.style in ("parallel", "grid") else 0


def _area(book: Book, steps: StepList, area: str, style: str, angle: int) -> None:
    def spec(key: str) -> QuiltingSpec | None:
        wanted = (area, style, angle)
        found = (q for q in book.quilted(key) if (q.area, q.style, _angle(q)) == wanted)
        return next(found, None)

    def apart(key: str) -> str:
        found = spec(key)
        return measure(found.spacing) if found is not None and found.spacing is not None else ""

    keys = [k for k in book.keys if spec(k) is not None]
    spaced = book.each(keys, apart) if all(apart(k) for k in keys) else ""
    same = len({apart(k) for k in keys}) == 1
    told = f"{spaced} apart" if same else f"this far apart: {spaced}"
    text, right = _HOW[_how(area, style)]
    edge = "the edge of the motif" if book.motifs else "the edge they follow"
    steps.add(
        f"{area}-{style}-{angle}" if angle else f"{area}-{style}",
        text.format(where=area_name(book, area), apart=told, edge=edge,
                    lines=_direction(area, style, angle)),
        sizes=keys,
        right=right,
    )  # fmt: skip


def _how(area: str, style: str) -> str:
    """Return which of the texts tells an area's style."""
    if style == "ditch" and area != "motif":
        return "seams"
    if style == "echo" and area != "ground":
        return f"echo {area}"
    return style if style in _HOW else "as desired"


def _direction(area: str, style: str, angle: int) -> str:
    """Return how straight lines run: in borders, seen from each side of the quilt."""
    if style == "grid":
        return {0: "a diagonal grid", 45: "an upright grid", 135: "an upright grid"}.get(
            angle, "a slanting grid")  # fmt: skip
    if area == "border":
        return {0: "lines that run along each side", 90: "lines that run straight across"}.get(
            angle, "lines that slant across")  # fmt: skip
    return {0: "horizontal parallel lines", 90: "vertical parallel lines"}.get(
        angle, "slanting parallel lines")  # fmt: skip


_HOW: dict[str, tuple[str, str]] = {
    "ditch": (
        "Quilt {where} in the ditch: stitch around every edge, in the ground, as close to the "
        "motif as the needle goes without stitching on it. Around tight curves and narrow slits "
        "use a free-motion foot with the feed dogs lowered, or quilt by hand.",
        "The stitching hardly shows.",
    ),
    "seams": (
        "Quilt {where} in the ditch: stitch along every seam, on the side that the allowances were "
        "not pressed to.",
        "The stitching hardly shows in the seam.",
    ),
    "echo": (
        "Quilt echo lines in {where}, {apart}. The first line lies that far from {edge}, the next "
        "as far from the first, and so on until {where} is filled.",
        "The lines are the same distance apart everywhere; where two sets meet they form a soft "
        "point.",
    ),
    "echo motif": (
        "Quilt echo lines in {where}, {apart}. The first line lies that far inside its edge, the "
        "next as far inside the first, as long as there is room.",
        "The lines are the same distance apart everywhere.",
    ),
    "echo border": (
        "Quilt echo lines in {where}, {apart}. The first line lies that far outside the seam of "
        "the innermost border, the next as far outside the first, round and round to the edge.",
        "The lines are the same distance apart all the way round and turn sharply at the corners.",
    ),
    "parallel": (
        "Quilt {where} with {lines}, {apart}. Mark the first with chalk or a marker that washes "
        "out. Keep the others to it with the guide bar of the foot or strips of tape.",
        "The lines are straight and evenly spaced from edge to edge.",
    ),
    "grid": (
        "Quilt {where} with {lines}, its lines {apart}. Mark the first line each way with chalk "
        "or a marker that washes out. Sew all the lines of one direction, then those of the other.",
        "Squares match, and the backing has no tucks at the crossings.",
    ),
    "as desired": (
        "Quilt {where} as you like, with lines as close together as the label of the batting asks.",
        "The quilting is about as dense here as elsewhere, so that the top lies flat.",
    ),
}
