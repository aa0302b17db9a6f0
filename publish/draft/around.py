"""Borders and rounds of blocks sewn round the centre of a top, from the inside out.

In: the centre as a part, the layers of a size. Out: the whole top as a `Part`.
Invariant: the sides are sewn on before the top and bottom strips, which run across their
ends; a mitred border is sewn to all four edges, and then its corners.
"""

from __future__ import annotations

from dataclasses import replace

from publish.draft.homes import Box, Home, layer_boxes, rectangle
from publish.draft.parts import TOWARDS_FIRST, TOWARDS_LAST, Part, Stitched
from publish.draft.pictures import Placed, look_of, middle
from publish.draft.rows import Rows
from publish.model.draft import Patch
from publish.model.size import Round

SIDES = ("left", "right", "top", "bottom")


def whole_top(rows: Rows, patches: tuple[Patch, ...]) -> Part:
    """Return the whole top."""
    layers = layer_boxes(rows.size)
    part = rows.centre("centre" if layers else "top")
    strips = {p.key: p for p in patches if p.role == "border"}
    borders = 0
    for number, (layer, inner, outer) in enumerate(layers, start=1):
        if layer.border is None:
            title = f"round {number}"
            found = {s: _blocks(rows, layer, number, s, inner, outer) for s in SIDES}
        else:
            borders += 1
            title = f"border {borders}"
            found = {s: _strip(rows, strips[f"{title} {s}"], title, s) for s in SIDES}
        found = {s: replace(strip, layer=number, side=s) for s, strip in found.items()}
        name = "top" if number == len(layers) else title
        if layer.border is not None and layer.border.corners == "mitred":
            part = _joined(name, outer, "mitred", [part, *found.values()])
        else:
            part = _butted(part, found, title, name, inner, outer)
        part = replace(part, layer=number)
    return part


def _butted(
    part: Part, strips: dict[str, Part], title: str, name: str, inner: Box, outer: Box
) -> Part:
    """Return a part with strips on its sides, then above and below."""
    left, top, right, bottom = outer[0], inner[1], outer[2], inner[3]
    up, along = (0, -1), (1, 0)
    sides = _joined(
        f"{title} sides",
        (left, top, right, bottom),
        "across",
        [strips["left"], part, strips["right"]],
        Stitched((inner[0], bottom), up, (inner[0], top), up),
        Stitched((inner[2], bottom), up, (inner[2], top), up),
    )
    sides = replace(sides, layer=strips["left"].layer)
    return _joined(
        name,
        outer,
        "down",
        [strips["top"], sides, strips["bottom"]],
        Stitched((left, top), along, (right, top), along),
        Stitched((left, bottom), along, (right, bottom), along),
    )


def _joined(name: str, box: Box, join: str, parts: list[Part], *seams: Stitched) -> Part:
    """Return parts joined round a middle; there is one of each, so its name is its kind."""
    settled = (TOWARDS_FIRST, TOWARDS_LAST) if seams else ()
    return Part(
        name,
        name,
        box,
        rectangle(box),
        join=join,
        parts=tuple(parts),
        seams=seams,
        settled=settled,
        press="out",
    )


def _strip(rows: Rows, patch: Patch, title: str, side: str) -> Part:
    """Return one strip of a border."""
    look = look_of([(*middle(patch.ring), rows.pictures.of_patch(patch.fabric, patch.ring))])
    first = f"{title} {'side' if side in ('left', 'right') else 'top'}"
    return rows.leaf(patch, patch.key, rows.kinds.name(title, look, first=first))


def _blocks(rows: Rows, layer: Round, number: int, side: str, inner: Box, outer: Box) -> Part:
    """Return the blocks along one side of a round; those at the corners go with the strips
    above and below."""
    last = {"right": layer.columns - 1, "bottom": layer.rows - 1}.get(side, 0)
    upright = side in ("left", "right")
    homes = {(h.row, h.column): h for h in rows.places if h.name.round == number}
    if upright:
        line = [homes[row, last] for row in range(1, layer.rows - 1)]
    else:
        line = [homes[last, column] for column in range(layer.columns)]
    box = {
        "left": (outer[0], inner[1], inner[0], inner[3]),
        "right": (inner[2], inner[1], outer[2], inner[3]),
        "top": (outer[0], outer[1], outer[2], inner[1]),
        "bottom": (outer[0], inner[3], outer[2], outer[3]),
    }[side]
    cells = [(rows.block(home), _placed(rows, home)) for home in line]
    return rows.strip(
        cells, f"round {number}", side, "down" if upright else "across", rectangle(box)
    )


def _placed(rows: Rows, home: Home) -> Placed:
    return home.x, home.y, rows.pictures.of_home(home)
