"""Files for a cutting machine: motifs and patches' templates as SVG and DXF, in millimetres.

In: drafts with motif shapes, plans with templates. Out: file contents by name.
Invariant: one closed path for each piece (its holes are part of it) in two layers,
`finished` and `cut`; nothing else is in the file that a machine could cut. Coordinates
are written to 0.001 mm, so areas read back differ by far less than 0.01 %.

SVG follows SVG 1.1 (W3C, 2011) with physical width and height; DXF is written by ezdxf
as R2010 with `$INSUNITS` 4, millimetres.
"""

from __future__ import annotations

import io
from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING

import ezdxf
from shapely.geometry import MultiPolygon, Polygon
from shapely.geometry.polygon import orient

from publish.model.cutplan import CutPlan
from publish.model.draft import Draft
from publish.units import INCH_IN_MM

if TYPE_CHECKING:
    from ezdxf.document import Drawing

MM = float(INCH_IN_MM)
MARGIN = 5.0
"""Clear millimetres round the drawing."""
LAYERS = ("finished", "cut")
_DXF_COLOURS = {"finished": 5, "cut": 1}


Outlines = Mapping[str, MultiPolygon]
"""Of each layer."""


def machine_files(drafts: Iterable[Draft], plans: Iterable[CutPlan] = ()) -> dict[str, bytes]:
    """Return `cutting/MOTIF-SIZE.svg` and `.dxf` for each motif of each size, and
    `cutting/template-LETTER-SIZE.svg` and `.dxf` for each template."""
    files: dict[str, bytes] = {}
    shapes: dict[str, Outlines] = {}
    for draft in drafts:
        for shape in draft.motifs.values():
            outlines = {"finished": shape.whole, "cut": shape.cut_line}
            shapes[f"cutting/{shape.key}-{draft.size}"] = outlines
    for plan in plans:
        for template in plan.templates:
            outlines = {
                "finished": MultiPolygon([template.finished]),
                "cut": MultiPolygon([template.cut]),
            }
            shapes[f"cutting/{template.key}-{plan.size}"] = outlines
    for name, found in shapes.items():
        files[f"{name}.svg"] = _svg(found).encode()
        files[f"{name}.dxf"] = _dxf(found)
    return files


def _layers(outlines: Outlines) -> dict[str, list[Polygon]]:
    """Return each layer's pieces, outer rings one way round and holes the other."""
    return {name: [orient(p) for p in outlines[name].geoms] for name in LAYERS}


def _rings(piece: Polygon) -> list[list[tuple[float, float]]]:
    """Return a piece's rings in millimetres, last point not repeated."""
    rings = [piece.exterior, *piece.interiors]
    return [[(x * MM, y * MM) for x, y in ring.coords[:-1]] for ring in rings]


def _svg(outlines: Outlines) -> str:
    layers = _layers(outlines)
    whole = outlines["cut"].union(outlines["finished"])
    left, top, right, bottom = (MM * v for v in whole.bounds)
    x, y = left - MARGIN, top - MARGIN
    width, height = right - left + 2 * MARGIN, bottom - top + 2 * MARGIN
    lines = [
        '<?xml version="1.0" encoding="UTF-8"?>',
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{width:.3f}mm" height="{height:.3f}mm" '
        f'viewBox="{x:.3f} {y:.3f} {width:.3f} {height:.3f}">',
    ]
    for name, pieces in layers.items():
        lines.append(f'  <g id="{name}" fill="none" stroke="#000000" stroke-width="0.1">')
        lines += [f'    <path fill-rule="evenodd" d="{_path(piece)}"/>' for piece in pieces]
        lines.append("  </g>")
    return "\n".join([*lines, "</svg>", ""])


def _path(piece: Polygon) -> str:
    return " ".join(
        "M" + " L".join(f"{x:.3f} {y:.3f}" for x, y in ring) + " Z" for ring in _rings(piece)
    )


def _dxf(outlines: Outlines) -> bytes:
    before = ezdxf.options.write_fixed_meta_data_for_testing
    # No clock and no random identifiers: the same motif gives the same bytes.
    ezdxf.options.write_fixed_meta_data_for_testing = True
    try:
        document = ezdxf.new("R2010", setup=False, units=ezdxf.units.MM)
        _draw_layers(document, outlines)
        # ezdxf declares what a drawing uses in the order of a set, which is another in
        # each run; what is declared already stays where it is.
        for kind in sorted(document.entitydb.dxf_types_in_use()):
            document.classes.add_class(kind)
        stream = io.StringIO()
        document.write(stream)
    finally:
        ezdxf.options.write_fixed_meta_data_for_testing = before
    return stream.getvalue().encode("utf-8")


def _draw_layers(document: Drawing, outlines: Outlines) -> None:
    space = document.modelspace()
    for name, pieces in _layers(outlines).items():
        document.layers.add(name, color=_DXF_COLOURS[name])
        for piece in pieces:
            for ring in _rings(piece):
                # DXF's y axis points up, ours down.
                points = [(round(x, 3), round(-y, 3)) for x, y in ring]
                space.add_lwpolyline(points, close=True, dxfattribs={"layer": name})
