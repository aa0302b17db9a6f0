"""Setting blocks on point: diagonal rows with side and corner triangles.

In: the seam tree of a top on point. Out: operations.
Invariant: rows and their parts are the tree's own, in its order.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.draft import SASHING_ROW, Unit
from publish.model.tree import TOP
from publish.operations.layout import LayOutOnPoint, TurnLayout
from publish.operations.on_point import (
    DiagonalPart,
    JoinDiagonalRows,
    PinDiagonalRows,
    PressDiagonalRow,
    PressDiagonalRows,
    SewCorners,
    SewDiagonalRow,
    SquareTop,
)
from publish.operations.operation import Where
from publish.sew.bench import Bench
from publish.sew.names import Names
from publish.sew.pressing import press_way, several
from publish.words.values import Letter, Said, Several, Value, said

CHAPTER, TOP_KEY = "assembling", "top"


def plan(bench: Bench, names: Names) -> None:
    """Set a size's blocks on point."""
    centre = names.at(TOP)[-1].unit
    rows = [p for p in centre.parts if p.parts]
    corners = [p for p in centre.parts if p.patch is not None and p.patch.role == "setting"]
    _lay_out(bench, names, centre, rows)
    _rows(bench, names, rows)
    _join(bench, names, centre, corners)
    _square(bench, names, centre)


def _lay_out(bench: Bench, names: Names, centre: Unit, rows: list[Unit]) -> None:
    found: dict[str, int] = {}
    for part in (*(p for row in rows for p in row.parts), *centre.parts):
        if part not in rows:
            found[names.key(part)] = found.get(names.key(part), 0) + 1
    size = bench.size
    where: Where = {"chapter": CHAPTER, "step": "lay-out"}
    bench.add(
        LayOutOnPoint(
            **where,
            heaps=tuple(found.items()),
            blocks=size.block_count,
            rows=len(rows),
            sides=size.side_triangles,
            corners=size.corner_triangles,
            sashing=size.sashing is not None,
        )
    )


def _rows(bench: Bench, names: Names, rows: list[Unit]) -> None:
    size = bench.size
    where: Where = {"chapter": CHAPTER, "step": "rows"}
    bench.add(TurnLayout(**where, rows=len(rows), seam=bench.seam, sides=size.side_triangles))
    for number, row in enumerate(rows, 1):
        bench.add(
            SewDiagonalRow(
                **where,
                tag=str(number),
                parts=tuple(_part(names, p) for p in row.parts),
                row=row.name,
                seam=bench.seam,
                edge=_edge(bench),
                called=names.called(row),
                those=names.in_short(row),
            )
        )
    pressed = tuple((row.name, row.press) for row in rows)
    bench.add(PressDiagonalRow(**where, rows=pressed, way=_ways(names, rows)))


def _ways(names: Names, rows: list[Unit]) -> Value:
    """Return where the seams of rows go: one way, or each way with its rows."""
    found: dict[Said, list[Unit]] = {}
    for row in rows:
        found.setdefault(press_way(names, row), []).append(row)
    if len(found) == 1:
        return next(iter(found))
    each = (said("way-in", way=w, which=several(names, us)) for w, us in found.items())
    return Several(tuple(each))


def _edge(bench: Bench) -> Fraction:
    """Return the allowance outside the triangles: a border's seam, or the edge's own."""
    return bench.seam if bench.size.layers else bench.edge


def _part(names: Names, part: Unit) -> DiagonalPart:
    """Return a part of a diagonal row; triangles are measured by their square."""
    shape = ""
    if part.patch is not None and part.patch.role == "setting":
        shape = "side" if part.patch.key.startswith("side") else "corner"
    elif not part.is_box:
        shape = "cut off"
    return DiagonalPart(names.key(part), names.quarters(part), shape)


def _join(bench: Bench, names: Names, centre: Unit, corners: list[Unit]) -> None:
    where: Where = {"chapter": CHAPTER, "step": "join"}
    rows = [p for p in centre.parts if p not in corners]
    keys = tuple(names.key(row) for row in rows)
    size = bench.size
    if len(rows) > 1:
        order = names.in_order(rows)
        strips = any(row.patch is not None for row in rows)
        bench.add(PinDiagonalRows(**where, rows=keys, order=order, strips=strips))
    bench.add(
        JoinDiagonalRows(
            **where,
            rows=keys,
            sash=tuple(names.key(r) for r in rows if r.series == SASHING_ROW),
            columns=size.columns,
            lines=size.rows,
            seam=bench.seam,
            edge=_edge(bench),
            top=TOP_KEY,
            pinned=len(rows) > 1,
            nests=size.sashing is None and centre.nests,
        ),
        SewCorners(
            **where,
            top=TOP_KEY,
            corners=tuple(_part(names, p) for p in corners),
            seam=bench.seam,
            those=names.leaf(corners[0], len(corners)),
        ),
        PressDiagonalRows(**where, top=TOP_KEY, way=press_way(names, centre), rows=len(rows)),
    )


def _square(bench: Bench, names: Names, centre: Unit) -> None:
    where: Where = {"chapter": CHAPTER, "step": "square"}
    large = dict.fromkeys(
        Letter(piece.letter)
        for row in (centre, *centre.parts)
        for p in row.parts
        if p.patch is not None
        and p.patch.role == "setting"
        and (piece := names.piece(p)) is not None
        and (piece.exact_width or piece.width) != piece.width
    )
    assert centre.sewn is not None
    bench.add(
        SquareTop(
            **where,
            top=TOP_KEY,
            large=tuple(large),
            drafted=centre.sewn.exact,
            edge=bench.seam,
            sashing=bench.size.sashing is not None,
            measures=names.the(centre),
        )
    )
