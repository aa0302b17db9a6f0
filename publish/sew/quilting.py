"""How a top is layered and quilted: panels, layers, and each area from the middle outwards.

In: a size's plans, its drafted quilting lines, the top as it lies on the table. Out: operations.
Invariant: what is quilted is what is drawn, or left to the maker; larger quilts are anchored.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.cutplan import BackingPlan
from publish.model.draft import QuiltingLines
from publish.model.pattern import QuiltingSpec
from publish.model.size import Size
from publish.model.trade import BACKING_SEAM
from publish.operations.layering import BasteQuilt, LayerQuilt, PressTop, RemovePaper, SewBacking
from publish.operations.operation import Where
from publish.operations.quilting import AnchorQuilt, BeginQuilting, QuiltArea, RemoveBasting
from publish.operations.trusted import Becoming, Trusted
from publish.sew.bench import Bench, heap
from publish.units import INCH_IN_MM

CHAPTER, TOP, QUILT, BACKING, BATTING = "quilting", "top", "quilt", "backing", "batting"
AREAS = ("motif", "ground", "border")
"""From the middle outwards."""
BASTING_ROWS = Fraction(4)
"""Inches between rows of basting, or between pins: common practice, no source."""
STITCH = 3 / INCH_IN_MM
"""Inches: one machine stitch when quilting (3 mm): quiltadvice.com, What is matchstick quilting."""
LARGE = 36
"""Inches: a quilt larger either way is anchored along seams first: common practice, no source."""


def plan(bench: Bench) -> None:
    """Layer, baste and quilt the top."""
    backing, batting = bench.plan.backing, bench.plan.batting
    if backing is None or batting is None:
        takes = tuple((heap(p), p.count) for p in bench.pieces("backing"))
        takes += ((BATTING, 1),) if batting is not None else ()
        one: Where = {"chapter": CHAPTER, "step": "quilt"}
        bench.add(Trusted(**one, takes=takes, becomes=(Becoming(TOP, QUILT),)))
        return
    where: Where = {"chapter": CHAPTER, "step": "top"}
    if bench.look(TOP).paper:
        bench.add(RemovePaper(**where, top=TOP))
    key = _backing(bench, backing)
    bench.add(PressTop(**where, top=TOP))
    _layer(bench, key)
    _quilt(bench)


def _backing(bench: Bench, plan: BackingPlan) -> str:
    """Sew the panels together, if there are several, and return what the backing is called."""
    (piece,) = bench.pieces(BACKING)
    if plan.panels == 1:
        return heap(piece)
    where: Where = {"chapter": CHAPTER, "step": f"backing-{bench.size.key}"}
    bench.add(
        SewBacking(
            **where,
            piece=heap(piece),
            backing=BACKING,
            letter=piece.letter,
            fabric=bench.pattern.fabrics[plan.fabric].name,
            count=plan.panels,
            upright=plan.seams == "vertical",
            half=plan.half,
            seam=bench.usual(BACKING_SEAM),
        )
    )
    return BACKING


def _layer(bench: Bench, backing: str) -> None:
    size = bench.size
    assert size.backing is not None and size.batting is not None
    (piece,) = bench.pieces(BACKING)
    layer: Where = {"chapter": CHAPTER, "step": "layer"}
    baste: Where = {"chapter": CHAPTER, "step": "baste"}
    reach = size.backing.overhang, size.batting.overhang
    bench.add(
        LayerQuilt(
            **layer,
            top=TOP,
            backing=backing,
            batting=BATTING,
            quilt=QUILT,
            letter=piece.letter,
            reach=reach,
            allowance=(bench.look(TOP).width.exact - bench.size.width) / 2,
        ),
        BasteQuilt(
            **baste,
            quilt=QUILT,
            rows=bench.usual(BASTING_ROWS),
            motifs=bool(bench.draft.placements),
        ),
    )


def _quilt(bench: Bench) -> None:
    begin: Where = {"chapter": CHAPTER, "step": "begin"}
    seams = _anchoring(bench.size)
    bench.add(BeginQuilting(**begin, quilt=QUILT, stitch=STITCH))
    if seams:
        bench.add(AnchorQuilt(**begin, quilt=QUILT, seams=seams))
    areas: list[str] = []
    for spec, lines in quilted(bench):
        way = _lines(spec)
        angle = spec.angle % 180 if spec.style in ("parallel", "grid") else 0
        name = f"{spec.area}-{spec.style.replace(' ', '-')}"
        where: Where = {"chapter": CHAPTER, "step": f"{name}-{angle}" if angle else name}
        bench.add(
            QuiltArea(
                **where,
                quilt=QUILT,
                area=spec.area,
                style=spec.style,
                lines=way,
                spacing=spec.spacing,
                length=Fraction(lines.length).limit_denominator(8),
                motifs=bool(bench.draft.placements),
                anchored=bool(seams),
                after=tuple(areas),
            )
        )
        areas.append(f"{spec.area} {spec.style} {way}".strip())
    last: Where = {"chapter": CHAPTER, "step": "unpin"}
    bench.add(RemoveBasting(**last, quilt=QUILT, areas=tuple(areas)))


def _anchoring(size: Size) -> str:
    """Return along which seams a large quilt is anchored; none where no seam is near its middle."""
    if max(size.width, size.height) <= LARGE:
        return ""
    ways = (size.rows > 1) + (size.columns > 1)
    if ways and size.on_point:
        ways = 2  # its seams run on both diagonals
    if ways:
        return "each way" if ways == 2 else "one"
    return "round" if size.layers else ""


def quilted(bench: Bench) -> list[tuple[QuiltingSpec, QuiltingLines]]:
    """Return each area's quilting with its lines, from the motif outwards; what has no line
    in its area is not quilted."""
    drawn = {(q.area, q.style, q.spacing): q for q in bench.draft.quilting}
    found = [
        (spec, lines)
        for spec in bench.size.quilting
        if (lines := drawn.get((spec.area, spec.style, spec.spacing))) is not None
    ]
    return sorted(found, key=lambda pair: (AREAS.index(pair[0].area), pair[0].style))


def _lines(spec: QuiltingSpec) -> str:
    """Return how straight lines run: in borders, seen from each side of the quilt."""
    angle = spec.angle % 180
    if spec.style == "grid":
        return {0: "diagonal", 45: "upright", 135: "upright"}.get(angle, "slanting")
    if spec.style != "parallel":
        return ""
    if spec.area == "border":
        return {0: "along", 90: "across"}.get(angle, "slant")
    return {0: "horizontal", 90: "vertical"}.get(angle, "slanting")
