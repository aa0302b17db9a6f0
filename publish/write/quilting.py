"""Backing, layers, basting and the quilting plan.

In: backing and batting plans, quilting lines, sizes. Out: the section.
Invariant: the spacing and length of each area's lines are the drafted ones; the batting's
own label decides how far apart lines may be.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from publish.model.cutplan import BackingPlan
from publish.model.draft import QuiltingLines
from publish.model.words import Block, Box, FigureBlock, Row, Section, Table
from publish.words.en.phrase import (
    capital,
    counted,
    measure,
    plural,
    rectangle,
    run,
)
from publish.write.context import Book
from publish.write.practice import BACKING_SEAM, BASTING_ROWS
from publish.write.quilting_lines import add_quilting, area_name
from publish.write.steps import StepList, figure


def section(book: Book) -> Section:
    """Return the section on layering and quilting."""
    keys = [k for k in book.keys if book.plans[k].backing is not None]
    steps = StepList(book, "quilting")
    blocks: list[Block] = []
    _backing(book, steps, keys)
    layered = [k for k in keys if book.plans[k].batting is not None]
    if layered:
        _layer(book, steps, layered)
    blocks.append(steps.block())
    blocks.append(_table(book))
    blocks.extend(_plans(book))
    gap = _label(book)
    if gap is not None:
        blocks.append(gap)
    add_quilting(book, steps)
    blocks.append(steps.block())
    lead = "Layer, baste and quilt."
    return Section("quilting", "Layering and quilting", tuple(blocks), lead)


def _backing(book: Book, steps: StepList, keys: Sequence[str]) -> None:
    sewn = [k for k in keys if _panels(book, k) > 1]
    for key in sewn:
        plan = book.plans[key].backing
        assert plan is not None
        way = "vertical" if plan.seams == "vertical" else "horizontal"
        middle = "" if plan.half is None else ", none of them down the middle"
        seams = plan.panels - 1 if plan.half is None else plan.panels
        steps.add(
            f"backing-{key}",
            f"Take the {counted(plan.panels, 'backing panel')} {book.letter([key], 'backing')} of "
            f"{book.fabric(plan.fabric)}: no selvage may be left on them{_split(plan)} Sew them "
            f"together along their long sides with a {measure(BACKING_SEAM.value)} seam. Press the "
            f"{plural(seams, 'seam')} open.",
            sizes=[key],
            right=f"The backing measures at least {rectangle(plan.width, plan.height)}, with "
            f"{counted(seams, f'{way} seam')}{middle}.",
        )


def _split(plan: BackingPlan) -> str:
    """Say how the last panel is cut in two, so that no seam runs down the middle."""
    if plan.half is None:
        return "."
    whole = plan.panels - 1
    sides = "on either side of" if plan.seams == "vertical" else "above and below"
    one = "one" if whole == 1 else "the last"
    kept = "the whole panel" if whole == 1 else f"the {counted(whole, 'whole panel')}"
    return (
        f". Cut {one} of them in two along its length, {measure(plan.half)} wide each; lay a half "
        f"{sides} {kept}."
    )


def _paper_out(book: Book) -> str:
    """Ask for the last paper of foundations, which stays in until the sides are sewn."""
    paper = [k for k in book.keys if book.drafts[k].foundations]
    if not paper:
        return ""
    which = f" of the {book.titles(paper)}" if book.only(paper) else ""
    return f"Remove all paper from the foundations{which}. "


def _panels(book: Book, key: str) -> int:
    plan = book.plans[key].backing
    return plan.panels if plan is not None else 0


def _layer(book: Book, steps: StepList, keys: Sequence[str]) -> None:
    def backing(key: str) -> str:
        plan = book.plans[key].backing
        assert plan is not None
        return rectangle(plan.width, plan.height)

    def batting(key: str) -> str:
        plan = book.plans[key].batting
        assert plan is not None
        return rectangle(plan.width, plan.height)

    size = keys[0]
    steps.add(
        "top",
        f"{_paper_out(book)}Press the finished top and clip loose threads from the back: dark "
        "threads show through light fabric.",
    )
    steps.add(
        "layer",
        f"Lay the backing {book.letter(keys, 'backing')} wrong side up, "
        f"{book.each(keys, backing)}, and tape it down flat without "
        f"stretching it. Smooth the batting over it, {book.each(keys, batting)}, and centre the "
        "top on it right side up.",
        sizes=keys,
        right="Batting and backing show evenly beyond the top on every side, the backing furthest.",
        tip=_lining(book),
        figure=figure("layers", size, f"{book.title(size)}: backing, batting and top."),
    )
    rows = measure(BASTING_ROWS.value)
    edge = "the edge of the motif and of " if book.motifs else ""
    steps.add(
        "baste",
        "Baste the layers together from the centre out, with safety pins or with long stitches in "
        f"rows no more than {rows} apart. Keep pins clear of {edge}lines you mean to quilt. Long "
        "stitches may cross them: clip them as you come to them.",
        sizes=keys,
        right="The backing is smooth.",
        tip="Unfold the batting the day before, as its label says.",
        figure=figure("sandwich", size, "Basting the layers, from the centre out."),
    )


def _lining(book: Book) -> str:
    """Say what the backing of a pillow's front is for."""
    if not book.pillows:
        return ""
    which = f" of the {book.titles(book.pillows)}" if book.quilts else ""
    return f"The backing{which} becomes a lining inside the cover: any plain cotton will do."


def _spacing(lines: QuiltingLines) -> str:
    return measure(lines.spacing) if lines.spacing is not None else "–"


def style_text(lines: QuiltingLines) -> str:
    """Return a style of quilting in words, for a table."""
    return {
        "ditch": "in the ditch, beside the edge",
        "echo": "echo lines",
        "parallel": "parallel lines",
        "grid": "a grid",
    }.get(lines.style, "as you like")


def _table(book: Book) -> Table:
    rows: list[Row] = []
    for key in book.keys:
        drafted = book.drafts[key].quilting
        if len(book.keys) > 1 and drafted:
            rows.append(Row((book.title(key),), "group"))
        for lines in drafted:
            length = run(lines.length) if lines.length > 0 else "–"
            cells = (capital(area_name(book, lines.area)), capital(style_text(lines)),
                     _spacing(lines), length)  # fmt: skip
            rows.append(Row(cells))
        told = [q.length for q in drafted if q.length > 0]
        if len(told) > 1:
            rows.append(Row(("Together", "", "", run(*told)), "total"))
    return Table(
        "quilting-plan", "The quilting plan", ("Where", "How", "Apart", "Length of the lines"),
        tuple(rows), "lllr",
        ("Lengths are of the lines themselves, each to the nearest quarter yard.",),
    )  # fmt: skip


def _plans(book: Book) -> list[Block]:
    return [
        FigureBlock(figure("quilting", k, f"{book.title(k)}: the quilting lines."))
        for k in book.keys
        if book.drafts[k].quilting
    ]


def _label(book: Book) -> Block | None:
    """Say what the batting's label must allow, by batting."""
    gaps: dict[str, Fraction] = {}
    for key in book.keys:
        batting = book.sizes[key].batting
        if batting is not None and batting.largest_gap is not None:
            gaps[batting.name] = batting.largest_gap
    text = "The label of your batting says how far apart lines of quilting may be. Read it first."
    items = [text]
    items += [
        f"This plan was made for **{name}**, with lines no more than {measure(gap)} apart."
        for name, gap in gaps.items()
    ]
    items.append("If your batting asks for closer lines, add lines between those drawn.")
    return Box("note", "How far apart", tuple(items))
