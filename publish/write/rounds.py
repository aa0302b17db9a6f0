"""The rounds of a medallion: what they are in order, and rounds that are made of blocks.

In: sizes with rounds. Out: steps added to the section on borders.
Invariant: blocks are counted on the graded round, side by side: the sides go on first and
the strips at top and bottom hold the corner blocks; each round's size is its own.
"""

from __future__ import annotations

from itertools import groupby

from publish.model.draft import Patch
from publish.model.size import Round, RoundBlock
from publish.operations.trusted import Trusted
from publish.words.en.phrase import article, counted, listed, measure, ordinal, rectangle
from publish.words.values import Value, Word
from publish.write.bench import Bench
from publish.write.context import Book
from publish.write.pressing import press_way
from publish.write.steps import StepList, figure
from publish.write.tree import BORDER


def of_title(book: Book) -> dict[str, Value]:
    """Return whether some size has rounds of blocks, for the chapter's title."""
    return {"rounds": Word("yes" if any(book.sizes[k].rounds for k in book.keys) else "no")}


def add(book: Book, key: str, steps: StepList, operation: Trusted) -> None:
    """Add the steps of one round of blocks, or what says in which order the rounds go on."""
    if operation.step == "order":
        add_overview(book, key, steps)
        return
    number = int(operation.step.split("-")[-1])
    add_blocks(Bench(book, key), steps, number, book.sizes[key].layers[number - 1])


def add_overview(book: Book, key: str, steps: StepList) -> None:
    """Add the step that says in which order the rounds are sewn on."""
    size = book.sizes[key]
    told = [_what(book, layer) for layer in size.rounds]
    numbered = [f"{ordinal(at)}, {what}" for at, what in enumerate(told, 1)]
    steps.add(
        "order",
        "The quilt grows from the centre outwards. Sew the rounds on in this order: "
        f"{'; '.join(numbered)}. Press and measure after each round, before the next is begun.",
        sizes=[key],
        figure=figure("rounds", key, f"{book.title(key)}: the rounds pulled apart, numbered from "
                      "the centre."),
    )  # fmt: skip


def _what(book: Book, layer: Round) -> str:
    if layer.border is not None:
        fabric = book.fabric(layer.border.fabric)
        return f"a {fabric} border {measure(layer.border.width)} wide"
    kinds = dict.fromkeys(b.block for b in layer.blocks)
    names = listed([f"{book.block_name(k)}s" for k in kinds])
    assert layer.block_side is not None
    return f"{counted(len(layer.blocks), 'block')} ({names}) of {measure(layer.block_side)}"


def _strip(bench: Bench, number: int, blocks: list[RoundBlock]) -> str:
    """Return the blocks of a strip in order: `a still block, then five reeds blocks`."""
    found = []
    for key, group in groupby(b.block for b in blocks):
        count = len(list(group))
        name = bench.book.block_name(key)
        mark = bench.block_mark(_patch(bench, number, key))
        found.append((article(name) if count == 1 else counted(count, name)) + mark)
    return listed(found)


def _patch(bench: Bench, number: int, block: str) -> Patch:
    """Return a patch of a kind of block as it lies in a round."""
    patches = bench.book.drafts[bench.key].patches
    return next(p for p in patches if p.block == block and p.home.startswith(f"round {number} "))


def add_blocks(bench: Bench, steps: StepList, number: int, layer: Round) -> None:
    """Add the steps that sew a round of blocks into strips and onto the top."""
    book, key = bench.book, bench.key
    last_row, last_column = layer.rows - 1, layer.columns - 1
    inner = [b for b in layer.blocks if 0 < b.row < last_row]
    left, right = (
        sorted((b for b in inner if b.column == at), key=lambda b: b.row) for at in (0, last_column)
    )
    top, bottom = (
        sorted((b for b in layer.blocks if b.row == at), key=lambda b: b.column)
        for at in (0, last_row)
    )
    _strips(bench, steps, number, layer, (left, right, top, bottom))
    around = 2 * book.seam_beyond(key, number)
    steps.add(
        f"round-{number}-on",
        "Pin the left strip to the left side of the top and the right strip to the right side, "
        "ends and middles first, then between. Ease what little differs, sew, and press "
        "outwards, away from the centre. Sew on the top and bottom "
        "strips in the same way, the seam beside each corner block on the seam of the side.",
        sizes=[key],
        right=f"The top measures {rectangle(layer.width + around, layer.height + around)}.",
    )  # fmt: skip


def _strips(bench: Bench, steps: StepList, number: int, layer: Round,
            sides: tuple[list[RoundBlock], ...]) -> None:  # fmt: skip
    book, key = bench.book, bench.key
    left, right, top, bottom = (_strip(bench, number, side) for side in sides)
    assert layer.block_side is not None
    edge = book.seam_beyond(key, number)
    short = layer.block_side + book.pattern.sewing.seam + edge
    high = book.raw(layer.block_side * len(sides[0]))
    wide = layer.block_side * len(sides[2]) + 2 * edge
    press = {side: _pressed(bench, f"round {number} {side}") for side in _SIDES}
    steps.add(
        f"round-{number}-strips",
        f"The {ordinal(number)} round is made of blocks. Lay them round the top as in the picture, "
        "each turned as it is shown, and sew them into four strips. "
        f"**Left**, from the top down: {left}{press['left']}. **Right**, from the top down: "
        f"{right}{press['right']}. **Top**, from the left: {top}{press['top']}. **Bottom**, from "
        f"the left: {bottom}{press['bottom']}.",
        sizes=[key],
        right=f"The side strips measure {rectangle(short, high)}, those for top and bottom "
        f"{rectangle(wide, short)}.",
        figure=figure("rounds", key, f"{book.title(key)}: the {ordinal(number)} round, strip by "
                      "strip.", round=str(number)),
    )  # fmt: skip


_SIDES = ("left", "right", "top", "bottom")


def _pressed(bench: Bench, name: str) -> str:
    """Return how the seams of a strip of blocks are pressed: `, seams pressed upwards`."""
    strip = next((u for g in bench.at(BORDER) for u in g.units if u.name == name), None)
    return f", seams pressed {press_way(bench, strip)}" if strip is not None else ""
