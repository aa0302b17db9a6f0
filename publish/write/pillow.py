"""Making up a pillow: trimming the front, the back, closing, turning, filling.

In: pillow plans. Out: the section, or None.
Invariant: the front is trimmed to the cover plus its closing seams; back pieces, overlap
and hem are the plan's.
"""

from __future__ import annotations

from publish.model.cutplan import PillowPlan
from publish.model.pattern import PillowSpec
from publish.model.words import Section
from publish.words.en.phrase import counted, measure, number, rectangle, stitch
from publish.write.by_size import alone
from publish.write.context import Book
from publish.write.practice import BASTING_STITCH, EAR_IN, EAR_OVER, TURNING_SPARE
from publish.write.steps import StepList, figure


def section(book: Book) -> Section | None:
    """Return the section on making up pillows, or None."""
    keys = tuple(k for k in book.keys if book.plans[k].pillow is not None)
    if not keys:
        return None
    steps = StepList(book, "pillow", keys)
    _front(book, steps, keys)
    envelope = tuple(k for k in keys if _plan(book, k).back != "zip")
    zipped = tuple(k for k in keys if _plan(book, k).back == "zip")
    if envelope:
        _envelope(book, steps, envelope)
    if zipped:
        _zip(book, steps, zipped)
    _turn(book, steps, keys)
    lead = "Finish the cover."
    blocks = (*alone(book, keys), steps.block())
    return Section("pillow", "Making up the pillow", blocks, lead, sizes=book.only(keys))


def _plan(book: Book, key: str) -> PillowPlan:
    plan = book.plans[key].pillow
    assert plan is not None
    return plan


def _spec(book: Book, key: str) -> PillowSpec:
    spec = book.sizes[key].pillow
    assert spec is not None
    return spec


def _front(book: Book, steps: StepList, keys: tuple[str, ...]) -> None:
    single = all(book.sizes[k].block_count == 1 for k in keys)
    middle = "the centre of the motif in the middle" if single and book.motifs else (
        "the same width of fabric left on every side")  # fmt: skip
    only = [k for k in keys if book.motif_blocks(k)]
    spec = figure("trim", keys[0], "Trimming the quilted front.", "front",
                  block=next(iter(book.blocks(keys[0]))))  # fmt: skip
    steps.add(
        "trim",
        f"Trim the quilted front to {book.each(keys, lambda k: rectangle(*book.front(k)))}, with "
        f"{middle}. Sew round it close to the edge to hold the layers together.",
        right="Top, batting and backing end in one clean edge, and the corners are square.",
        figure=spec if only else None,
    )


def _envelope(book: Book, steps: StepList, keys: tuple[str, ...]) -> None:
    size = keys[0]
    edge = "hem" if any(_plan(book, k).hem > 0 for k in keys) else "finished edge"
    _back_edges(book, steps, keys)
    steps.add(
        "layer",
        "Lay the front right side up. Lay the first back piece on it right side down, raw edges "
        f"level with one side of the front, its {edge} across the middle. Lay the second on the "
        "opposite side in the same way, and pin all round.",
        sizes=keys,
        right=f"The {edge}s overlap by "
        f"{book.each(keys, lambda k: measure(_plan(book, k).overlap))} across the middle.",
        figure=figure("pillow", size, "The back pieces on the front, overlapping.",
                      detail="layer"),
    )  # fmt: skip
    steps.add(
        "sew",
        f"Sew all the way round with a {book.each(keys, lambda k: measure(_spec(book, k).seam))} "
        f"seam, and backstitch where the {edge}s cross the seam: they take the strain.",
        sizes=keys,
        figure=figure("pillow", size, "Sewing all the way round.", detail="sew"),
    )


def _back_edges(book: Book, steps: StepList, keys: tuple[str, ...]) -> None:
    """Add the step that hems the back pieces, or one for those that have no hem."""

    def piece(key: str) -> str:
        plan = _plan(book, key)
        return rectangle(plan.piece_width, plan.piece_length)

    letter = book.letter(keys, "pillow back")
    take = f"Take the {counted(_plan(book, keys[0]).count, 'back piece')} {letter}, "
    hemmed = tuple(k for k in keys if _plan(book, k).hem > 0)
    raw = tuple(k for k in keys if k not in hemmed)
    if hemmed:
        steps.add(
            "hem",
            f"{take}{book.each(hemmed, piece)}. On one long edge of each, fold "
            f"{book.each(hemmed, lambda k: measure(_plan(book, k).hem / 2))} to the wrong side and "
            "the same again, press, and sew along the inner fold.",
            sizes=hemmed,
            right="Each back piece has one hem along a long edge.",
            figure=figure("pillow", hemmed[0], "Hemming the back pieces.", detail="hem"),
        )
    if raw:
        steps.add(
            "edge",
            f"{take}{book.each(raw, piece)}. Lay one selvage or other finished edge of each where "
            "they will overlap. Finish a cut edge with a zigzag stitch.",
            sizes=raw,
            right="One long edge of each back piece cannot fray.",
        )


def _zip(book: Book, steps: StepList, keys: tuple[str, ...]) -> None:
    def piece(key: str) -> str:
        plan = _plan(book, key)
        return rectangle(plan.piece_width, plan.piece_length)

    def seam(key: str) -> str:
        # What the back is cut longer than the front is taken up by the seam of the zip.
        return measure((_plan(book, key).piece_width - book.front(key)[0]) / 2)

    size = keys[0]
    sides = book.each(keys, lambda k: measure(_plan(book, k).piece_length))
    steps.add(
        "zip",
        f"Take the back piece {book.letter(keys, 'pillow back')}, {book.each(keys, piece)}. Fold "
        f"it in half so that its two sides of {sides} meet, and cut along the fold. Put the halves "
        f"right sides together and sew the cut edges with a {book.each(keys, seam)} seam: a short "
        "stitch at both ends and, for as long as the zipper, a basting stitch about "
        f"{stitch(BASTING_STITCH.value)} long in between. Press the seam open.",
        sizes=keys,
        figure=figure("pillow", size, "The zipper in the back.", detail="zip"),
    )
    steps.add(
        "zip-sew",
        "Centre the zipper face down over the basted part. Sew it to the allowances with a zipper "
        "foot.",
        sizes=keys,
    )
    steps.add(
        "zip-open",
        "Remove the basting of the seam and check that the zipper runs.",
        sizes=keys,
        right="The two folded edges meet over the zipper and hide its teeth.",
        caution="Leave the zipper half open before you sew the back to the front.",
    )
    _close_zipped(book, steps, keys)


def _close_zipped(book: Book, steps: StepList, keys: tuple[str, ...]) -> None:
    steps.add(
        "zip-close",
        "Lay the back on the front, right sides together, trim it to the size of the front, and "
        f"sew all the way around with a {book.each(keys, lambda k: measure(_spec(book, k).seam))} "
        "seam.",
        sizes=keys,
    )


def _turn(book: Book, steps: StepList, keys: tuple[str, ...]) -> None:
    def cover(key: str) -> str:
        size = book.sizes[key]
        return rectangle(size.width, size.height)

    def form(key: str) -> str:
        return f"{measure(_plan(book, key).form)} square"

    envelope = [k for k in keys if _plan(book, k).back != "zip"]
    spec = figure("pillow", envelope[0], "Turning the cover.", detail="turn") if envelope else None
    steps.add(
        "turn",
        f"Trim the {number(4)} corners across, no closer than {measure(TURNING_SPARE.value)} to "
        "the stitching, and finish the raw edges with a zigzag stitch. Turn the cover right side "
        "out, push the corners out gently with a blunt point, and put in the pillow form, "
        f"{book.each(keys, form)}.",
        right=f"The cover measures {book.each(keys, cover)} and is smooth.",
        tip="To keep the corners from standing out like ears, taper the seam "
        f"inward by {measure(EAR_IN.value)} over the last {measure(EAR_OVER.value)} to each "
        "corner.",
        figure=spec,
    )
