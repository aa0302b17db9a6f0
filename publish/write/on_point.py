"""Setting blocks on point: diagonal rows with side and corner triangles.

In: the seam tree of a top on point. Out: steps added to the section on assembling.
Invariant: rows and their parts are the tree's own, in its order; what the top measures is
its finished size and its seams.
"""

from __future__ import annotations

from publish.model.draft import Unit
from publish.words.en.phrase import capital, counted, listed, measure, rectangle
from publish.write.bench import Bench
from publish.write.pressing import press_way
from publish.write.sewn import sewn_size
from publish.write.steps import StepList, figure
from publish.write.tree import TOP


def add(bench: Bench, steps: StepList) -> None:
    """Add the steps that set a size's blocks on point."""
    groups = bench.at(TOP)
    centre = groups[-1].unit
    rows = [p for p in centre.parts if p.parts]
    _lay_out(bench, steps, len(rows))
    _rows(bench, steps, rows)
    _join(bench, steps, centre, rows)
    _square(bench, steps, centre)


def _lay_out(bench: Bench, steps: StepList, rows: int) -> None:
    size = bench.book.sizes[bench.key]
    sides = f"{counted(size.side_triangles, 'side triangle')} along the edges and the "
    triangles = (
        f"{sides if size.side_triangles else ''}"
        f"{counted(size.corner_triangles, 'corner triangle')} at the corners"
    )
    between = " with the sashing between them and" if size.sashing else ""
    many = size.block_count > 1
    blocks = counted(size.block_count, "block") if many else "block"
    check = " Check each kind of block against its place in the picture." if many else ""
    numbers = (
        f" The blocks are sewn in {counted(rows, 'diagonal row')}: number them from the upper "
        "right corner on slips of paper and pin them."
        if rows > 1 else ""
    )  # fmt: skip
    steps.add(
        "lay-out",
        f"Lay out the {blocks} on point, corners up,{between} with the {triangles}.{check}"
        f"{numbers}",
        sizes=[bench.key],
        right="The long side of every side triangle lies on the outer edge, along the straight "
        "grain, where it keeps the edge from stretching."
        if size.side_triangles else "The right angle of every triangle points outward.",
        figure=figure("setting", bench.key, f"{size.title}: the diagonal rows, pulled apart and "
                      "numbered."),
    )  # fmt: skip


def _rows(bench: Bench, steps: StepList, rows: list[Unit]) -> None:
    told = [
        f"**{capital(row.name)}**: {bench.parts_text(row).rstrip(',')}; press the seams "
        f"{press_way(bench, row)}."
        for row in rows
    ]
    seam = measure(bench.pattern_seam)
    size = bench.book.sizes[bench.key]
    nest = "" if size.sashing is not None or len(rows) < 2 else (
        ", and neighbouring rows are pressed opposite ways")  # fmt: skip
    turn = (
        "Turn the layout so that the rows lie level, row 1 furthest from you, and sew each row "
        "from left to right."
        if len(rows) > 1 else
        "Turn the layout so that the block lies level, and sew the row from left to right."
    )  # fmt: skip
    side = (
        " A side triangle is sewn on by a short side: match its right angle to the edge of the "
        "block, at the top or the bottom as it lies in the layout; its sharp tip extends past the "
        "other edge."
        if size.side_triangles else ""
    )  # fmt: skip
    steps.add(
        "rows",
        "\n\n".join([
            f"{turn}{side} A corner triangle is sewn on by its long side, middle to middle. Cut "
            f"off what extends, {seam} outside the seam.",
            *told,
        ]),
        sizes=[bench.key],
        right=f"Blocks and triangles are level along the inner edges, where the next row is sewn "
        f"on{nest}."
        if len(rows) > 1 else
        "Block and triangles are level along both long edges.",
        caution="Handle the triangles by their long side; their short sides are on the bias and "
        "stretch.",
    )  # fmt: skip


def _join(bench: Bench, steps: StepList, centre: Unit, rows: list[Unit]) -> None:
    corners = [p for p in centre.parts if p.patch is not None]
    last = ""
    if corners:
        words = bench.part_name(corners[0], len(corners), blocks=True)
        last = (
            f"Add the last {words.removeprefix('a ')}: fold each in half to find the middle of "
            "its long side, pin it to the middle of the row, and sew. "
        )
    several = (
        f"Put the rows right sides together in order, {rows[0].name} to {rows[-1].name}. Pin at "
        "every crossing, where the allowances lie opposite ways and lock; then sew the rows "
        "together. "
        if len(rows) > 1 else ""
    )  # fmt: skip
    steps.add(
        "join",
        f"{several}{last}Press these seams {press_way(bench, centre)}.",
        sizes=[bench.key],
        right=f"{'The seams match, and the' if len(rows) > 1 else 'The'} corners of the blocks "
        "point to the edge."
        if len(rows) > 1
        else "The corners of the block point to the edge.",
    )


def _square(bench: Bench, steps: StepList, centre: Unit) -> None:
    seam = measure(bench.pattern_seam)
    wide, high = sewn_size(centre)
    large = dict.fromkeys(
        f"**{piece.letter}**" for row in (centre, *centre.parts) for p in row.parts
        if p.patch is not None and p.patch.role == "setting" and (piece := bench.piece(p))
        and (piece.exact_width or piece.width) != piece.width
    )  # fmt: skip
    off = (
        f" The triangles {listed(list(large))} were rounded up when they were cut: this takes off "
        "what is too much."
        if large else ""
    )  # fmt: skip
    how = (
        f"Lay the ruler with its {seam} line on the corners of the blocks and straighten each "
        f"side: {seam} must stay outside the corners, or they are cut off by the next seam."
    )
    if bench.book.sizes[bench.key].sashing is not None:
        how = (
            "Straighten each side with a long ruler, level with the long edges of the triangles: "
            "take off only what sticks out."
        )
    steps.add(
        "square",
        f"{how} Make the corners square.{off}",
        sizes=[bench.key],
        right=f"The centre measures {rectangle(wide, high)}.",
    )
