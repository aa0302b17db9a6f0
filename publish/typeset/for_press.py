"""What pages need to be printed in a print shop and trimmed: bleed, and opaque drawings.

In: a paper; drawings as SVG. Out: the bleed; the same drawings without transparency.
Invariant: an opaque drawing looks as the transparent one does on white paper: under a
see-through area, everything drawn before it is drawn again, cut to the area, in the
colours that the two give together.
"""

from __future__ import annotations

import xml.etree.ElementTree as ET
from collections.abc import Iterator
from copy import deepcopy
from dataclasses import dataclass, replace

from shapely.geometry import MultiPolygon, Polygon
from shapely.geometry.polygon import orient
from svgelements import Close, Line, Move, Path

from publish.model.book import BLEED, Paper
from publish.model.figure import Artwork
from publish.units import POINTS_PER_INCH

SVG = "http://www.w3.org/2000/svg"
WHITE = "#ffffff"
_PAINTS = ("fill", "stroke")
_SHAPES = {f"{{{SVG}}}path"}


def bleed_of(paper: Paper) -> float:
    """Return a paper's bleed in points."""
    return float(BLEED[paper.key] * POINTS_PER_INCH)


def opaque_artwork(artwork: Artwork) -> Artwork:
    """Return artwork whose drawings need no transparency."""
    figures = {k: replace(f, svg=opaque(f.svg)) for k, f in artwork.figures.items()}
    sheets = {
        k: tuple(replace(s, svg=opaque(s.svg)) for s in group)
        for k, group in artwork.sheets.items()
    }
    return replace(artwork, figures=figures, sheets=sheets)


def opaque(svg: str) -> str:
    """Return a drawing without see-through areas."""
    if "fill-opacity" not in svg:
        return svg
    ET.register_namespace("", SVG)
    root = ET.fromstring(svg)
    done: list[ET.Element] = []
    for number, element in enumerate(_single(list(root), {})):
        veil = _veil(element)
        done += [element] if veil is None else _laid(element, veil, done, f"veil-{number}")
    root[:] = done
    return ET.tostring(root, encoding="unicode")


@dataclass(frozen=True)
class _Veil:
    """A see-through area: the colour laid over, its share, where it lies."""

    colour: str
    share: float
    area: str


def _single(elements: list[ET.Element], given: dict[str, str]) -> Iterator[ET.Element]:
    """Yield drawing elements one by one, what their groups say written on each."""
    for element in elements:
        whole = {**given, **element.attrib}
        if element.tag == f"{{{SVG}}}g" and not {"transform", "clip-path"} & whole.keys():
            yield from _single(list(element), whole)
        else:
            alone = deepcopy(element)
            alone.attrib.clear()
            alone.attrib.update(whole)
            yield alone


def _veil(element: ET.Element) -> _Veil | None:
    """Return the see-through area that an element fills, or None."""
    share = float(element.get("fill-opacity", "1"))
    fill = element.get("fill", "none")
    if share >= 1 or not fill.startswith("#") or element.tag not in _SHAPES:
        return None
    area = _area(element.get("d", ""))
    return None if area is None else _Veil(fill, share, area)


def _laid(
    element: ET.Element, veil: _Veil, before: list[ET.Element], name: str
) -> Iterator[ET.Element]:
    """Yield what takes the place of a see-through element drawn over `before`."""
    clip = ET.Element(f"{{{SVG}}}clipPath", {"id": name})
    ET.SubElement(clip, f"{{{SVG}}}path", {"d": veil.area})
    yield clip
    group = ET.Element(f"{{{SVG}}}g", {"clip-path": f"url(#{name})"})
    ground = {"d": veil.area, "fill": _mixed(WHITE, veil)}
    ET.SubElement(group, f"{{{SVG}}}path", ground)
    for earlier in before:
        if earlier.tag != f"{{{SVG}}}clipPath":
            group.append(_tinted(earlier, veil))
    yield group
    if element.get("stroke", "none") != "none":
        edge = deepcopy(element)
        edge.set("fill", "none")
        del edge.attrib["fill-opacity"]
        yield edge


def _tinted(element: ET.Element, veil: _Veil) -> ET.Element:
    """Return an element as it is seen through a veil."""
    seen = deepcopy(element)
    for part in seen.iter():
        for paint in _PAINTS:
            if part.get(paint, "").startswith("#"):
                part.set(paint, _mixed(part.attrib[paint], veil))
    return seen


def _mixed(colour: str, veil: _Veil) -> str:
    """Return a colour under a veil, channel by channel, as PDF lays one over another."""
    pairs = [(int(colour[i : i + 2], 16), int(veil.colour[i : i + 2], 16)) for i in (1, 3, 5)]
    return "#" + "".join(f"{round(a + (b - a) * veil.share):02x}" for a, b in pairs)


def _area(path: str) -> str | None:
    """Return an area bounded by straight lines, its holes turned the other way round.

    The drawing fills by the even-odd rule; a clip is by the rule of windings. None for an
    area with curves.
    """
    whole: Polygon | MultiPolygon = Polygon()
    for part in Path(path).as_subpaths():
        steps = list(Path(part))
        if not all(isinstance(s, Move | Line | Close) for s in steps):
            return None
        ring = [(s.end.x, s.end.y) for s in steps if s.end is not None]
        if len(ring) > 2:
            whole = whole.symmetric_difference(Polygon(ring).buffer(0))
    rings = []
    for polygon in (p for p in getattr(whole, "geoms", [whole]) if p.geom_type == "Polygon"):
        turned = orient(polygon)
        rings += [turned.exterior, *turned.interiors] if not polygon.is_empty else []
    return "".join(
        "M" + "L".join(f"{x:.2f} {y:.2f}" for x, y in ring.coords[:-1]) + "Z" for ring in rings
    )
