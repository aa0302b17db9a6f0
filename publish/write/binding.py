"""Binding a quilt: trimming, joining, sewing, corners, closing, finishing by hand.

In: binding plans. Out: the section, or None without quilts.
Invariant: strips, joins and lengths are the plan's; the trimmed quilt is the finished
size plus seams, which the binding takes up; the start is `binding_start`'s.
"""

from __future__ import annotations

from publish.model.cutplan import BindingPlan
from publish.model.words import Section
from publish.units import inches_text
from publish.write.binding_start import TAIL, Start, start_of
from publish.write.by_size import alone
from publish.write.context import Book
from publish.write.phrase import article, counted, measure, rectangle
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
    lead = "A double-fold binding with mitred corners, sewn on by machine and finished by hand."
    blocks = (*alone(book, keys), steps.block())
    return Section("binding", "Binding", blocks, lead, sizes=book.only(keys))


def _trim(book: Book, steps: StepList, keys: tuple[str, ...]) -> None:
    def value(key: str) -> str:
        size = book.sizes[key]
        return rectangle(book.raw(size.width), book.raw(size.height))

    steps.add(
        "trim",
        "Trim the batting and the backing level with the edge of the top, and square the corners "
        "with a ruler.",
        right=f"The quilt measures {book.each(keys, value)}, and its corners are square.",
        tip="Quilting shrinks the top slightly. Trim to straight edges and square corners even if "
        "yours is a little smaller.",
    )


def _make(book: Book, steps: StepList, keys: tuple[str, ...]) -> None:
    straight = [k for k in keys if plan_of(book, k).square is None]
    joined = [k for k in straight if plan_of(book, k).strips > 1]
    bias = [k for k in keys if plan_of(book, k).square is not None]
    seam = measure(book.pattern.sewing.seam)
    if joined:
        steps.add(
            "join",
            f"Take the binding strips {book.letter(joined, 'binding')}: "
            f"{book.each(joined, lambda k: _strips(plan_of(book, k)))}. Place two ends at a right "
            "angle, right sides together, and sew across the corner on the diagonal. Trim to "
            f"{seam} and press the seam open. Join them all in this way.",
            sizes=joined,
            right="The edges are straight at each join. The joined strip is at least this long: "
            f"{book.each(joined, lambda k: measure(plan_of(book, k).length))}.",
            figure=figure("binding", joined[0], "Joining strips on the diagonal.", detail="join"),
        )
    if bias:
        _bias(book, steps, bias, seam)
    for key in straight:
        if key not in joined:
            plan = plan_of(book, key)
            steps.add(
                f"take-{key}",
                f"Take the one binding strip {book.letter([key], 'binding')}, "
                f"{inches_text(plan.strip_width)} wide. It is long enough without a join.",
                sizes=[key],
                right=f"The strip is at least {measure(plan.length)} long.",
            )
    steps.add(
        "press",
        "Press the strip in half along its whole length, wrong sides together, without "
        "stretching it.",
        right="The two raw edges are level.",
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
        "Bring the two straight ends together, right sides together, offset by one line, so that "
        f"the first line meets the second; sew with a {seam} seam and press it open. Cut along the "
        "line in one long spiral.",
        sizes=keys,
        right="You have one bias strip, at least this long: "
        f"{book.each(keys, lambda k: measure(plan_of(book, k).length))}.",
    )


def begins(book: Book, key: str) -> Start:
    """Return where the binding of a size begins, and what is left open."""
    size = book.sizes[key]
    return start_of(book.raw(size.width), book.raw(size.height))


def _where(start: Start) -> str:
    """Return `in the middle of a long side`, `on a side, 2 in (5.1 cm) from its next corner`."""
    side = "a long side" if start.longer else "a side"
    if start.where == "middle":
        return f"in the middle of {side}"
    return f"on {side}, {measure(start.before)} from the corner ahead"


def _sew(book: Book, steps: StepList, keys: tuple[str, ...]) -> None:
    seam = measure(book.pattern.sewing.seam)
    joined, tucked = (
        [k for k in keys if begins(book, k).ends == ends] for ends in ("joined", "tucked")
    )
    if joined:
        tail = article(f"{inches_text(TAIL)} tail")
        steps.add(
            "start",
            "Keep the walking foot on. Lay the binding on the front, raw edges level with the edge "
            "of the quilt. Make the first stitch "
            f"{book.each(joined, lambda k: _where(begins(book, k)))}. Leave {tail} loose and sew "
            f"toward the corner with a {seam} seam.",
            sizes=joined,
            tip="Lay the binding around the quilt first, without sewing, and shift it until no "
            "join lies at a corner.",
            figure=figure("binding", joined[0], "The first stitches and the loose tail.",
                          detail="start"),
        )  # fmt: skip
    if tucked:
        _start_tucked(book, steps, tucked, seam)
    steps.add(
        "corner",
        f"Stop {seam} before the corner, backstitch and cut the threads. Fold the binding "
        "straight up, away from the quilt, so that the fold slants across the corner; then fold it "
        "straight down along the next side, its new fold level with the edge you have just sewn. "
        "Start again from that edge.",
        right="A small pleat stands up at the corner, and the raw edges are level with the next "
        "side.",
        figure=figure("binding", keys[0], "Folding the corner.", detail="corner"),
    )
    if joined:
        _close(book, steps, joined)
    if tucked:
        _close_tucked(book, steps, tucked)
    _finish(steps, keys)


def _start_tucked(book: Book, steps: StepList, keys: list[str], seam: str) -> None:
    def tail(key: str) -> str:
        return measure(begins(book, key).tail)

    steps.add(
        "start-tucked",
        "The sides are too short for a joined end: the end is tucked into the beginning. Open out "
        f"one end of the strip, fold {seam} to the wrong side, press, and fold the strip in half "
        "again. Lay this folded end "
        f"{book.each(keys, lambda k: _where(begins(book, k)))} of the front, raw edges level. "
        f"Leave {book.each(keys, tail)} unsewn, then sew toward the corner.",
        sizes=keys,
        right="The folded end is loose and open like a pocket.",
        figure=figure("binding", keys[0], "The folded end, left open.", detail="tuck"),
    )


def _close_tucked(book: Book, steps: StepList, keys: list[str]) -> None:
    def inside(key: str) -> str:
        return measure(begins(book, key).inside)

    steps.add(
        "close-tucked",
        "After the last corner, stop before the folded end. Trim the tail so that it reaches "
        f"{book.each(keys, inside)} past the fold, tuck it inside, and sew over both to the first "
        "stitch. These two ends are closed by hand in the next step.",
        sizes=keys,
        right="No raw end shows, and the binding lies flat.",
    )


def _close(book: Book, steps: StepList, keys: list[str]) -> None:
    def opening(key: str) -> str:
        return measure(begins(book, key).opening)

    width = book.each(keys, lambda k: inches_text(plan_of(book, k).strip_width))
    seam = inches_text(book.pattern.sewing.seam)
    steps.add(
        "close",
        f"Turn the last corner and stop {book.each(keys, opening)} before the first stitch. Lay "
        "the two tails along the edge and trim them so that they overlap by the width of the "
        f"strip: {width}.",
        sizes=keys,
        figure=figure("binding", keys[0], "The tails overlap by the width of the strip.",
                      detail="close"),
    )  # fmt: skip
    steps.add(
        "close-join",
        "Fold the quilt so that the tails reach each other. Open both out, place them right sides "
        "together at a right angle, and pin on the diagonal. Check that the loop lies flat, sew, "
        f"trim the seam to {seam} and press it open. Sew the rest of the binding down.",
        sizes=keys,
        right="The binding fits the gap, and the last join looks like the others.",
    )


def _finish(steps: StepList, keys: tuple[str, ...]) -> None:
    steps.add(
        "finish",
        "Turn the folded edge over to the back, so that it just covers the line of stitching, and "
        "sew it down with small blind stitches that go into the backing and batting but not "
        "through to the front. At each corner fold one side, then the other, into a mitre, and "
        "close it with a stitch or two on both sides.",
        right="The binding is filled to its edge and as wide on the back as on the front.",
        figure=figure("binding", keys[0], "Finishing by hand on the back.", detail="finish"),
    )
