"""The rounds of a medallion: what they are in order, and rounds that are made of blocks.

In: sizes with rounds. Out: steps added to the section on borders.
Invariant: blocks are counted in the strips of the seam tree: the sides go on first and the
strips at top and bottom hold the corner blocks; each round's size is its own.
"""

from __future__ import annotations

from publish.model.draft import Unit
from publish.model.size import Round
from publish.operations.trusted import Trusted
from publish.words.en.phrase import counted, listed, measure, ordinal, rectangle
from publish.words.values import Word
from publish.write.bench import Bench
from publish.write.context import Book
from publish.write.pressing import press_way, pressed_two_ways
from publish.write.sewn import sewn_size
from publish.write.steps import StepList, figure
from publish.write.tell import Asked
from publish.write.tree import runs


def asked(book: Book) -> Asked:
    """Return how the chapter on borders is told, with the rounds in words of their own."""
    blocks = any(book.sizes[k].rounds for k in book.keys)
    return Asked(apart=True, values={"rounds": Word("yes" if blocks else "no")}, trusted=add)


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
    told = [_what(book, key, layer) for layer in size.rounds]
    numbered = [f"{ordinal(at)}, {what}" for at, what in enumerate(told, 1)]
    steps.add(
        "order",
        "The quilt grows from the centre outwards. Sew the rounds on in this order: "
        f"{'; '.join(numbered)}. Press and measure after each round, before the next is begun.",
        sizes=[key],
        figure=figure("rounds", key, f"{book.title(key)}: the rounds pulled apart, numbered from "
                      "the centre."),
    )  # fmt: skip


def _what(book: Book, key: str, layer: Round) -> str:
    if layer.border is not None:
        fabric = book.fabric(layer.border.fabric)
        return f"a {fabric} border {measure(layer.border.width)} wide"
    kinds = dict.fromkeys(b.block for b in layer.blocks)
    assert layer.block_side is not None
    names = listed([f"{book.sized_name(key, k, layer.block_side)}s" for k in kinds])
    return f"{counted(len(layer.blocks), 'block')} ({names}) of {measure(layer.block_side)}"


def _side(bench: Bench, number: int, side: str) -> Unit:
    """Return the strip of blocks along one side of a round, or the one block that it is."""
    root = bench.book.drafts[bench.key].assembly
    return next(u for u in root.outermost_first() if (u.layer, u.side) == (number, side))


def _strip(bench: Bench, strip: Unit) -> str:
    """Return the blocks of a strip in order: `a still block, then five reeds blocks`."""
    if bench.is_block(strip):
        return bench.part_name(strip, 1, blocks=True)
    return listed([bench.part_name(part, count, blocks=True) for part, count in runs(strip)])


def add_blocks(bench: Bench, steps: StepList, number: int, layer: Round) -> None:
    """Add the steps that sew a round of blocks into strips and onto the top."""
    book, key = bench.book, bench.key
    _strips(bench, steps, number)
    around = 2 * book.seam_beyond(key, number)
    steps.add(
        f"round-{number}-on",
        "Pin the left strip to the left side of the top and the right strip to the right side, "
        "ends and middles first, then between. Ease small differences, sew, and press "
        "outward, away from the centre. Pin the top and bottom strips in the same way, the seam "
        "beside each corner block locked against the seam of the side, and sew.",
        sizes=[key],
        right=f"The top measures {rectangle(layer.width + around, layer.height + around)}.",
    )  # fmt: skip


def _strips(bench: Bench, steps: StepList, number: int) -> None:
    book, key = bench.book, bench.key
    sides = [_side(bench, number, side) for side in ("left", "right", "top", "bottom")]
    left, right, top, bottom = (_strip(bench, s) + _pressed(bench, s) for s in sides)
    mixed = _mixed(bench, number)
    steps.add(
        f"round-{number}-strips",
        f"The {ordinal(number)} round is made of blocks. Lay them around the top as in the "
        f"picture, each turned as it is shown, and sew them into four strips.{mixed}"
        f" **Left**, from the top down: {left}. **Right**, from the top down: {right}. **Top**, "
        f"from the left: {top}. **Bottom**, from the left: {bottom}.{_corners(sides)}",
        sizes=[key],
        right=f"The side strips measure {rectangle(*sewn_size(sides[0]))}, those for top and "
        f"bottom {rectangle(*sewn_size(sides[2]))}.",
        figure=figure("rounds", key, f"{book.title(key)}: the {ordinal(number)} round, strip by "
                      "strip.", round=str(number)),
    )  # fmt: skip


def _corners(sides: list[Unit]) -> str:
    """Say how the seams beside the corner blocks are pressed: the side strips' seams go
    outward, so these go inward and lock against them at both ends."""
    if len(sides[2].parts) < 3:
        return ""
    return (
        " In the top and bottom strips press the two seams beside the corner blocks toward the "
        "middle of the strip, so that they lock with the seams of the sides."
    )


def _mixed(bench: Bench, number: int) -> str:
    """Say how blocks that are pressed two ways are laid in a round."""
    layer = bench.book.sizes[bench.key].rounds[number - 1]
    if not pressed_two_ways(bench, {b.block for b in layer.blocks}):
        return ""
    return " Alternate blocks of one kind that are pressed opposite ways."


def _pressed(bench: Bench, strip: Unit) -> str:
    """Return how the seams of a strip of blocks are pressed: `, seams pressed upwards`."""
    return "" if bench.is_block(strip) else f", seams pressed {press_way(bench, strip)}"
