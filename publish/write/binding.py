"""Binding a quilt: trimming, joining, sewing, corners, closing, finishing by hand.

In: binding plans. Out: the section, or None without quilts.
Invariant: strips, joins and lengths are the plan's; the trimmed quilt is the finished
size plus seams, which the binding takes up.
"""

from __future__ import annotations

from publish.model.cutplan import BindingPlan
from publish.model.words import Section
from publish.units import inches_text
from publish.write.context import Book
from publish.write.phrase import article, counted, measure, rectangle
from publish.write.practice import OPENING, TAIL
from publish.write.steps import StepList, figure


def bound(book: Book) -> tuple[str, ...]:
    """Return the sizes that are bound."""
    return tuple(k for k in book.keys if book.plans[k].binding is not None)


def plan_of(book: Book, key: str) -> BindingPlan:
    """Return the binding plan of a size that is bound."""
    plan = book.plans[key].binding
    assert plan is not None
    return plan


def section(book: Book) -> Section | None:
    """Return the section on binding, or None."""
    keys = bound(book)
    if not keys:
        return None
    steps = StepList(book, "binding", keys)
    _trim(book, steps, keys)
    _make(book, steps, keys)
    _sew(book, steps, keys)
    _close(book, steps, keys)
    lead = "A double-fold binding with mitred corners, sewn on by machine and finished by hand."
    return Section("binding", "Binding", (steps.block(),), lead, sizes=book.only(keys))


def _trim(book: Book, steps: StepList, keys: tuple[str, ...]) -> None:
    def value(key: str) -> str:
        size = book.sizes[key]
        return rectangle(book.raw(size.width), book.raw(size.height))

    steps.add(
        "trim",
        "Trim the batting and the backing level with the edge of the top, and square the corners "
        "with a ruler.",
        right=f"The quilt measures {book.each(keys, value)}, and its corners are true.",
        tip="Quilting draws a quilt up a little. Trim to straight edges and true corners even if "
        "yours has come out slightly smaller.",
    )


def _make(book: Book, steps: StepList, keys: tuple[str, ...]) -> None:
    straight = [k for k in keys if plan_of(book, k).square is None]
    bias = [k for k in keys if plan_of(book, k).square is not None]
    seam = measure(book.pattern.sewing.seam)
    if straight:
        steps.add(
            "join",
            f"Take the binding strips {book.letter(straight, 'binding')}: "
            f"{book.each(straight, lambda k: _strips(plan_of(book, k)))}. Lay the ends of two "
            "strips across each other at a right angle, right sides together, and sew across the "
            f"corner on the diagonal. Trim to {seam} and press the seam open. Join them all in "
            "this way.",
            sizes=straight,
            right="The edges run on straight across each join, and the joined strip is at least "
            f"this long: {book.each(straight, lambda k: measure(plan_of(book, k).length))}.",
            figure=figure("binding", straight[0], "Joining strips on the diagonal.",
                          detail="join"),
        )  # fmt: skip
    if bias:
        _bias(book, steps, bias, seam)
    steps.add(
        "press",
        "Press the strip in half along its whole length, wrong sides together, without "
        "stretching it.",
        right="The two raw edges lie level.",
        figure=figure("binding", keys[0], "Pressing the strip in half.", detail="press"),
    )


def _strips(plan: BindingPlan) -> str:
    noun = f"{inches_text(plan.strip_width)} wide"
    return f"{counted(plan.strips, 'strip')} {noun}"


def _bias(book: Book, steps: StepList, keys: list[str], seam: str) -> None:
    def square(key: str) -> str:
        side = plan_of(book, key).square
        assert side is not None
        return f"{measure(side)} square"

    def spaces(key: str) -> str:
        return counted(plan_of(book, key).lines, "whole strip")

    width = book.each(keys, lambda k: measure(plan_of(book, k).strip_width))
    steps.add(
        "bias",
        f"Take the binding square {book.letter(keys, 'binding')}, {book.each(keys, square)}, and "
        "cut it on one diagonal. Sew the two triangles together along a pair of straight edges, "
        f"right sides together, with a {seam} seam, so that they make a slanting shape with two "
        f"long bias edges. Press the seam open and rule lines {width} apart, parallel to the bias "
        f"edges, so that {book.each(keys, spaces)} lie side by side, and cut away what is left "
        "beyond the last line.",
        sizes=keys,
        figure=figure("binding", keys[0], "Bias binding from a square.", detail="bias"),
    )
    steps.add(
        "bias-tube",
        "Bring the two straight ends together, right sides in, shifted by one line, so that the "
        f"first line meets the second; sew with a {seam} seam and press it open. Cut round and "
        "round along the line.",
        sizes=keys,
        right="You have one bias strip, at least this long: "
        f"{book.each(keys, lambda k: measure(plan_of(book, k).length))}.",
    )


def _sew(book: Book, steps: StepList, keys: tuple[str, ...]) -> None:
    seam = measure(book.pattern.sewing.seam)
    tail = article(f"{inches_text(TAIL.value)} tail")
    steps.add(
        "start",
        "Lay the binding along one side on the front, raw edges level with the edge of the quilt, "
        f"starting in the middle of the side. Leave {tail} loose and sew with a {seam} seam.",
        tip="Run the binding round the whole quilt first without sewing: no join should land on a "
        "corner.",
        figure=figure("binding", keys[0], "Starting on a straight side.", detail="start"),
    )
    steps.add(
        "corner",
        f"Stop {seam} before the corner, back-stitch and cut the threads. Fold the binding "
        "straight up, away from the quilt, so that the fold slants across the corner; then fold it "
        "straight down along the next side, its new fold level with the edge you have just sewn. "
        "Start again from that edge.",
        right="A small pleat stands up at the corner, and the raw edges lie level with the next "
        "side.",
        figure=figure("binding", keys[0], "Folding the corner.", detail="corner"),
    )


def _close(book: Book, steps: StepList, keys: tuple[str, ...]) -> None:
    width = book.each(keys, lambda k: inches_text(plan_of(book, k).strip_width))
    seam = inches_text(book.pattern.sewing.seam)
    steps.add(
        "close",
        f"Stop {measure(OPENING.value)} before the place where you started. Lay the two tails "
        f"along the edge and trim them so that they overlap by the width of the strip: {width}. "
        "Open both out, join them on the diagonal like the strips, check that they lie flat, trim "
        f"the seam to {seam} and sew the rest down.",
        right="The binding fits the gap exactly and the last join looks like the others.",
    )
    steps.add(
        "finish",
        "Turn the folded edge over to the back, so that it just covers the line of stitching, and "
        "sew it down with small blind stitches that go into the backing and batting but not "
        "through to the front. At each corner fold one side, then the other, into a mitre, and "
        "close it with a stitch or two on both sides.",
        right="The binding is full to its edge and as wide on the back as on the front.",
        figure=figure("binding", keys[0], "Finishing by hand on the back.", detail="finish"),
    )
