"""Files for a cutting machine: the motif's pieces as SVG and as DXF, in millimetres.

In: motif shapes of one size. Out: file contents by name.
Invariant: one closed path for each piece (its holes are part of it) in two layers,
`finished` and `cut`; nothing else is in the file that a machine could cut. Coordinates
are written to 0.001 mm, so areas read back differ by far less than 0.01 %.

SVG follows SVG 1.1 (W3C, 2011) with physical width and height; DXF is written by ezdxf
as R2010 with `$INSUNITS` 4, millimetres.
"""

from __future__ import annotations

import io
from collections.abc import Iterable

import ezdxf
from ezdxf.document import Drawing
from shapely.geometry import MultiPolygon, Polygon
from shapely.geometry.polygon import orient

from publish.model.draft import Draft, MotifShape
from publish.units import INCH_IN_MM

MM = float(INCH_IN_MM)
MARGIN = 5.0
"""Clear millimetres round the drawing."""
LAYERS = ("finished", "cut")
_DXF_COLOURS = {"finished": 5, "cut": 1}


def machine_files(drafts: Iterable[Draft]) -> dict[str, bytes]:
    """Return `cutting/MOTIF-SIZE.svg` and `.dxf` for each motif of each size."""
    files: dict[str, bytes] = {}
    for draft in drafts:
        for shape in draft.motifs.values():
            name = f"cutting/{shape.key}-{draft.size}"
            files[f"{name}.svg"] = _svg(shape).encode()
            files[f"{name}.dxf"] = _dxf(shape)
    return files


def _layers(shape: MotifShape) -> dict[str, list[Polygon]]:
    """Return each layer's pieces, outer rings one way round and holes the other."""
    found: dict[str, MultiPolygon] = {"finished": shape.whole, "cut": shape.cut_line}
    return {name: [orient(p) for p in found[name].geoms] for name in LAYERS}


def _rings(piece: Polygon) -> list[list[tuple[float, float]]]:
    """Return a piece's rings in millimetres, last point not repeated."""
    rings = [piece.exterior, *piece.interiors]
    return [[(x * MM, y * MM) for x, y in ring.coords[:-1]] for ring in rings]


def _svg(shape: MotifShape) -> str:
    layers = _layers(shape)
    left, top, right, bottom = (MM * v for v in shape.cut_line.union(shape.whole).bounds)
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


def _dxf(shape: MotifShape) -> bytes:
    before = ezdxf.options.write_fixed_meta_data_for_testing
    # No clock and no random identifiers: the same motif gives the same bytes.
    ezdxf.options.write_fixed_meta_data_for_testing = True
    try:
        document = ezdxf.new("R2010", setup=False, units=ezdxf.units.MM)
        _draw_layers(document, shape)
        stream = io.StringIO()
        document.write(stream)
    finally:
        ezdxf.options.write_fixed_meta_data_for_testing = before
    return stream.getvalue().encode("utf-8")


def _draw_layers(document: Drawing, shape: MotifShape) -> None:
    space = document.modelspace()
    for name, pieces in _layers(shape).items():
        document.layers.add(name, color=_DXF_COLOURS[name])
        for piece in pieces:
            for ring in _rings(piece):
                # DXF's y axis points up, ours down.
                points = [(round(x, 3), round(-y, 3)) for x, y in ring]
                space.add_lwpolyline(points, close=True, dxfattribs={"layer": name})
