"""Every figure of the hand-built sizes, and what its SVG holds.

In: `top_samples`, `top_plans`. Out: `CONTEXT`, `FIGURES` by key, and readers of SVG that
know nothing of the canvas: elements with inherited attributes, outlines, text boxes.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cache
from importlib.resources import files
from itertools import combinations
from math import cos, radians, sin
from xml.etree import ElementTree

from fontTools.ttLib import TTFont
from shapely.geometry import MultiPoint, Point, Polygon, box
from top_plans import PLANS
from top_samples import DRAFTS, PATTERN, SIZES

from publish.draw import DRAWINGS
from publish.draw.canvas.style import palette
from publish.draw.context import Context
from publish.model.book import LETTER
from publish.model.figure import Figure
from publish.model.words import BackCover, Cover, FigureSpec, Manual, Section

NAMESPACE = "{http://www.w3.org/2000/svg}"


def manual(*sections: Section) -> Manual:
    """Return a manual of these sections between a cover and a back cover."""
    cover = FigureSpec("cover", "quilt", "mini")
    return Manual(
        Cover("Fern", "", "", "", (), cover), sections, BackCover("", (), "", "", "", "", cover), ""
    )


BIAS = replace(PLANS["throw"], binding=replace(PLANS["throw"].binding, square=Fraction(25)))
CONTEXT = Context(
    PATTERN, SIZES, DRAFTS, {**PLANS, "throw": BIAS}, manual(), LETTER, palette(PATTERN)
)


def spec(kind: str, size: str | None = None, **values: str) -> FigureSpec:
    key = "-".join([kind, size or "", *values.values()])
    return FigureSpec(key, kind, size, tuple(values.items()), f"caption of {key}")


SPECS = [
    spec("sizes"),
    spec("swatches"),
    spec("scale"),
    *(spec("quilt", s, dimensions=d) for s in SIZES for d in ("yes", "no")),
    *(spec(k, s) for k in ("layers", "sandwich", "quilting", "colouring", "trim") for s in SIZES),
    *(spec("cutting-layout", s, fabric=f) for s in SIZES for f in PLANS[s].fabrics),
    spec("crease-ground", "mini", block="sprig"),
    spec("crease-ground", "throw", block="quartered"),
    *(spec("units", "throw", unit=u) for u in ("half block", "block", "row", "centre")),
    spec("rows", "throw"),
    spec("rows", "mini"),
    spec("borders", "mini", border="0"),
    *(spec("borders", "throw", border=b) for b in ("0", "1")),
    *(spec("binding", "mini", detail=d) for d in ("join", "press", "start", "corner", "finish")),
    spec("binding", "throw", detail="bias"),
    *(spec("sleeve", "mini", detail=d) for d in ("make", "attach")),
    *(spec("pillow", "pillow", detail=d) for d in ("hem", "layer", "sew", "turn", "zip")),
]
BY_KEY = {s.key: s for s in SPECS}


@cache
def figure(key: str) -> Figure:
    """Return one of the figures, drawn once."""
    wanted = BY_KEY[key]
    return DRAWINGS[wanted.kind](CONTEXT, wanted)


@dataclass(frozen=True)
class Element:
    tag: str
    values: dict[str, str]
    text: str

    def number(self, name: str, default: float = 0.0) -> float:
        return float(self.values.get(name, default))


def elements(svg: str) -> Iterator[Element]:
    """Yield every drawn element with the attributes of its groups."""

    def walk(node: ElementTree.Element, inherited: dict[str, str]) -> Iterator[Element]:
        values = {**inherited, **node.attrib}
        tag = node.tag.removeprefix(NAMESPACE)
        if tag not in ("svg", "g"):
            yield Element(tag, values, node.text or "")
        for child in node:
            yield from walk(child, values if tag == "g" else {})

    yield from walk(ElementTree.fromstring(svg), {})


def view_box(svg: str) -> tuple[float, float, float, float]:
    """Return left, top, right, bottom of the view box."""
    x, y, w, h = (float(v) for v in ElementTree.fromstring(svg).attrib["viewBox"].split())
    return x, y, x + w, y + h


def rings(path: Element) -> list[list[tuple[float, float]]]:
    """Return the points of each part of a path; only straight parts are ever drawn."""
    assert re.fullmatch(r"(M[0-9.\- ]+(l[0-9.\- ]+)?Z?)+", path.values["d"]), path.values["d"]
    found = []
    for part in path.values["d"].split("M")[1:]:
        start, _, rest = part.partition("l")
        ring = _pairs(start)
        for dx, dy in _pairs(rest):
            ring.append((ring[-1][0] + dx, ring[-1][1] + dy))
        found.append(ring)
    return found


def _pairs(text: str) -> list[tuple[float, float]]:
    numbers = [float(n) for n in re.findall(r"-?(?:\d+\.?\d*|\.\d+)", text)]
    return list(zip(numbers[::2], numbers[1::2], strict=True))


def filled(svg: str, colour: str) -> list[Polygon]:
    """Return the outline of every path filled with a colour."""
    return [
        Polygon(ring)
        for e in elements(svg)
        if e.tag == "path" and e.values.get("fill") == colour
        for ring in rings(e)
    ]


FACES = {
    ("400", None): "Regular",
    ("600", None): "Semibold",
    ("700", None): "Bold",
    ("400", "italic"): "It",
}


@cache
def _advances(face: str) -> dict[int, int]:
    path = files("font_source_sans_pro") / "files" / f"SourceSansPro-{face}.otf"
    with path.open("rb") as handle:
        font = TTFont(handle, lazy=False)
    return {code: font["hmtx"][name][0] for code, name in font.getBestCmap().items()}


def text_box(element: Element) -> Polygon:
    """Return the box of a line of text, from its baseline and the font's advance widths.

    Source Sans Pro: 1000 units to the em, capitals 660 high, descenders 205 deep.
    """
    size = element.number("font-size")
    face = FACES[element.values["font-weight"], element.values.get("font-style")]
    advances = _advances(face)
    assert all(ord(letter) in advances for letter in element.text), element.text
    wide = sum(advances[ord(letter)] for letter in element.text) * size / 1000
    x, y = element.number("x"), element.number("y")
    assert "text-anchor" not in element.values
    corners = [
        (x, y - 0.66 * size),
        (x + wide, y - 0.66 * size),
        (x + wide, y + 0.205 * size),
        (x, y + 0.205 * size),
    ]
    turn = element.values.get("transform")
    if turn is None:
        return Polygon(corners)
    match = re.fullmatch(r"rotate\((\S+) (\S+) (\S+)\)", turn)
    assert match is not None, turn
    angle, cx, cy = (float(g) for g in match.groups())
    c, s = cos(radians(angle)), sin(radians(angle))
    return Polygon(
        [
            (cx + c * (px - cx) - s * (py - cy), cy + s * (px - cx) + c * (py - cy))
            for px, py in corners
        ]
    )


def texts(svg: str) -> list[Element]:
    return [e for e in elements(svg) if e.tag == "text"]


def illegible(svg: str) -> list[str]:
    """Return what is clipped by the view box, and which words run into each other."""
    left, top, right, bottom = view_box(svg)
    room = box(left - 0.01, top - 0.01, right + 0.01, bottom + 0.01)
    boxes = [(e.text, text_box(e)) for e in texts(svg)]
    faults = [f"text clipped: {t}" for t, b in boxes if not room.contains(b)]
    for e in elements(svg):
        half = e.number("stroke-width") / 2 if "stroke" in e.values else 0.0
        reach = room.buffer(-half, join_style="mitre")
        if e.tag == "circle":
            edge = Point(e.number("cx"), e.number("cy")).buffer(e.number("r"))
            inside = reach.covers(edge)
        else:
            inside = e.tag == "text" or reach.covers(MultiPoint([p for r in rings(e) for p in r]))
        if not inside:
            faults.append(f"shape clipped: {e}")
    small = [(t, b.buffer(-0.3)) for t, b in boxes]
    faults += [
        f"words overlap: {one} and {other}"
        for (one, a), (other, b) in combinations(small, 2)
        if a.intersects(b)
    ]
    return faults
