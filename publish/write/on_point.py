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
from publish.write.sewn import raw_size
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
    triangles = (
        f"{counted(size.side_triangles, 'side triangle')} along the edges and the "
        f"{counted(size.corner_triangles, 'corner triangle')} at the corners"
    )
    between = " with the sashing between them and" if size.sashing else ""
    steps.add(
        "lay-out",
        f"Lay out the {counted(size.block_count, 'block')} on point, corners up,{between} with "
        f"the {triangles}. Check each kind of block against its place in the picture. The blocks "
        f"are sewn in {counted(rows, 'diagonal row')}: number them from the upper right corner "
        "with pinned slips of paper.",
        sizes=[bench.key],
        right="The long side of every side triangle lies on the outer edge, along the straight "
        "grain, where it keeps the edge from stretching.",
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
    sashed = bench.book.sizes[bench.key].sashing is not None
    nest = "" if sashed else ", and neighbouring rows are pressed opposite ways"
    steps.add(
        "rows",
        "\n\n".join([
            "Turn the layout so that the rows lie level, row 1 furthest from you, and sew each row "
            "from left to right. A side triangle is sewn on by a short side: put its right angle "
            "level with the edge of the block, at the top or the bottom as it lies in the layout, "
            "and let its sharp tip stick out past the other edge. A corner triangle is sewn on by "
            f"its long side, middle to middle. Cut off what sticks out, {seam} outside the seam.",
            *told,
        ]),
        sizes=[bench.key],
        right=f"Blocks and triangles lie level along the inner edges, where the next row is sewn "
        f"on{nest}.",
        caution="Handle the triangles by their long side; their short sides are on the bias and "
        "stretch.",
    )  # fmt: skip


def _join(bench: Bench, steps: StepList, centre: Unit, rows: list[Unit]) -> None:
    names = f"{rows[0].name} to {rows[-1].name}"
    corners = [p for p in centre.parts if p.patch is not None]
    last = ""
    if corners:
        words = bench.part_name(corners[0], len(corners), blocks=True)
        last = (
            f" Last come the {words.removeprefix('a ')} that are left: fold each in half to find "
            "the middle of its long side, pin it to the middle of the row, and sew."
        )
    steps.add(
        "join",
        f"Sew the rows together in order, {names}: put right sides together, pin at every "
        f"crossing, where the allowances lie opposite ways and lock, and sew.{last} Press these "
        f"seams {press_way(bench, centre)}.",
        sizes=[bench.key],
        right="The seams meet in clean crosses, and the corners of the blocks point to the edge.",
    )


def _square(bench: Bench, steps: StepList, centre: Unit) -> None:
    seam = measure(bench.pattern_seam)
    wide, high = raw_size(bench.book, bench.key, centre)
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
