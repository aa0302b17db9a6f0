"""What a size can get wrong in itself: motif and block, borders, pillow, quilting.

In: pattern, size as declared, settled size. Out: notes, all of them warnings: the size
can be made, and the designer should weigh whether it should.
Invariant: a limit stands beside its reason, with its source or the words "common
practice, no source".
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from publish.model.pattern import BorderSpec, Pattern, SizeSpec
from publish.model.size import Size
from publish.notes import Note, warning

CLEAR = Fraction(1, 2)
"""Least ground left between the motif and the edge of its finished block, so that tips
stay out of the seam and out of the trimming. Common practice, no source."""

LOOSE = Fraction(2)
"""A cover this much smaller than its form is the most that a form still fills without
straining the seams. Common practice, no source; covers 1 in smaller are published."""

FOLDED = Fraction(1, 4)
"""What the folds of a double binding take of its width, besides three seams on each half:
its raw edges, what shows on the front, what shows on the back. Common practice, no source;
2 1/4 in and 2 1/2 in for seams of 1/4 in are published."""

LARGEST = Fraction(130)
"""A side longer than this fits no bed: the widest king mattress, 79 in, with the deepest
drop, 22 in, on both sides comes to 123 in (sizes and depths as trade pages give them)."""


def check_size(pattern: Pattern, spec: SizeSpec, size: Size) -> tuple[Note, ...]:
    """Return what the designer should weigh in one size."""
    checks = (_motif, _borders, _sashing, _whole, _pillow, _binding, _layers, _quilting, _blocks)
    return tuple(note for check in checks for note in check(pattern, spec, size))


def _motif(pattern: Pattern, spec: SizeSpec, size: Size) -> Iterator[Note]:
    say = pattern.measures.text
    if size.motif_span is None:
        return
    most = size.block_side - 2 * CLEAR
    if size.motif_span > most:
        yield warning(
            "G202",
            pattern.place("sizes", size.key, "motif_size"),
            "the motif comes too near the edge of its block",
            expected=f"at most {say(most)}: {say(CLEAR)} clear on every side",
            received=say(size.motif_span),
            help=f"write `motif_size: {say(most)}` or less, or a larger `block_size`",
        )


def _borders(pattern: Pattern, spec: SizeSpec, size: Size) -> Iterator[Note]:
    say = pattern.measures.text
    least = 2 * pattern.sewing.seam
    for path, border in _written_borders(spec):
        place = pattern.place("sizes", size.key, *path, "width")
        if border.width < least:
            yield warning(
                "G203",
                place,
                "the border is narrower than the seam allowances behind it",
                expected=f"at least {say(least)}",
                received=say(border.width),
                help=f"write `width: {say(least)}` or more, or a narrower `seam`",
            )
        if border.width > size.block_side:
            yield warning(
                "G204",
                place,
                "the border is wider than a block",
                expected=f"at most {say(size.block_side)}",
                received=say(border.width),
                help="check the width, or add a row and a column of blocks",
            )


def _written_borders(spec: SizeSpec) -> Iterator[tuple[tuple[str | int, ...], BorderSpec]]:
    """Yield each border of a size with the way to where it is written."""
    for number, border in enumerate(spec.borders):
        yield ("borders", number), border
    for number, declared in enumerate(spec.rounds):
        if declared.border is not None:
            yield ("rounds", number, "border"), declared.border


def _sashing(pattern: Pattern, spec: SizeSpec, size: Size) -> Iterator[Note]:
    say = pattern.measures.text
    if size.sashing is None:
        return
    least, width = 2 * pattern.sewing.seam, size.sashing.width
    place = pattern.place("sizes", size.key, "sashing", "width")
    if width < least:
        yield warning(
            "G215",
            place,
            "the sashing is narrower than the seam allowances behind it",
            expected=f"at least {say(least)}",
            received=say(width),
            help=f"write `width: {say(least)}` or more, or a narrower `seam`",
        )
    if width > size.block_side:
        yield warning(
            "G216",
            place,
            "the sashing is wider than a block",
            expected=f"at most {say(size.block_side)}",
            received=say(width),
            help="check the width, or set plain blocks between the others",
        )


def _whole(pattern: Pattern, spec: SizeSpec, size: Size) -> Iterator[Note]:
    say = pattern.measures.text
    longest = max(size.width, size.height)
    if longest > LARGEST:
        yield warning(
            "G211",
            pattern.place("sizes", size.key),
            f"`{size.key}` is larger than any bed",
            expected=f"at most {say(LARGEST)} a side",
            received=f"{say(size.width)} by {say(size.height)}",
            help="check `block_size`, `columns`, `rows` and `borders`",
        )
    if size.sleeve is not None and 2 * size.sleeve > size.height:
        yield warning(
            "G210",
            pattern.place("sizes", size.key, "sleeve"),
            "the sleeve is deeper than half the quilt",
            expected=f"at most {say(size.height / 2)}",
            received=say(size.sleeve),
            help=f"write `sleeve: {say(size.height / 2)}` or less",
        )


def _pillow(pattern: Pattern, spec: SizeSpec, size: Size) -> Iterator[Note]:
    say = pattern.measures.text
    if size.pillow is None:
        return
    form = size.pillow.form
    sides = {"width": size.width, "height": size.height}
    for name, side in sides.items() if size.width != size.height else [("side", size.width)]:
        if not form - LOOSE <= side <= form:
            yield warning(
                "G205",
                pattern.place("sizes", size.key, "pillow", "form"),
                f"the finished cover's {name} is "
                + ("larger than the form" if side > form else "too small for the form"),
                expected=f"a cover from {say(form - LOOSE)} to {say(form)}",
                received=say(side),
                help=f"change `block_size` or the borders until the cover is "
                f"{say(form - 1)}, or change `form`",
            )
    if size.pillow.back == "envelope" and size.pillow.overlap >= min(size.width, size.height):
        yield warning(
            "G213",
            pattern.place("sizes", size.key, "pillow", "overlap"),
            "the two backs overlap over the whole cover",
            expected=f"less than {say(min(size.width, size.height))}",
            received=say(size.pillow.overlap),
            help=f"write `overlap: {say(min(size.width, size.height) / 2)}` or less",
        )


def _binding(pattern: Pattern, spec: SizeSpec, size: Size) -> Iterator[Note]:
    say = pattern.measures.text
    least = pattern.measures.up(6 * pattern.sewing.seam + FOLDED)
    if size.binding is not None and size.binding.width < least:
        yield warning(
            "G217",
            pattern.place("sizes", size.key, "binding", "width"),
            "folded in half, the binding does not reach round the edge to its seam on the back",
            expected=f"at least {say(least)}, for a seam of {say(pattern.sewing.seam)}",
            received=say(size.binding.width),
            help=f"write `width: {say(least)}` or more under `binding`",
        )


def _layers(pattern: Pattern, spec: SizeSpec, size: Size) -> Iterator[Note]:
    say = pattern.measures.text
    if size.backing and size.batting and size.batting.overhang > size.backing.overhang:
        yield warning(
            "G209",
            pattern.place("sizes", size.key, "batting", "overhang"),
            "the batting reaches past the backing",
            expected=f"at most {say(size.backing.overhang)}, as far as the backing",
            received=say(size.batting.overhang),
            help="write a smaller `overhang` for the batting, or a larger one for the backing",
        )


def _quilting(pattern: Pattern, spec: SizeSpec, size: Size) -> Iterator[Note]:
    say = pattern.measures.text
    gap = size.batting.largest_gap if size.batting else None
    for number, quilting in enumerate(spec.quilting):
        if quilting not in size.quilting or gap is None or quilting.spacing is None:
            continue
        if quilting.spacing > gap:
            yield warning(
                "G207",
                pattern.place("sizes", size.key, "quilting", number, "spacing"),
                f"the {quilting.area} is quilted further apart than the batting allows",
                expected=f"at most {say(gap)}, by the batting's label",
                received=say(quilting.spacing),
                help=f"write `spacing: {say(gap)}` or less, or choose a batting "
                "whose label allows more",
            )


def _blocks(pattern: Pattern, spec: SizeSpec, size: Size) -> Iterator[Note]:
    lists = (
        ("block", spec.blocks, size.arrangement),
        ("alternate", spec.alternate, size.alternates),
    )
    for name, keys, arrangement in lists:
        between = size.alternates or (size.arrangement if spec.setting == "straight" else ())
        places_ = arrangement if name == "block" else between
        shown = {key for row in places_ for key in row}
        places = sum(map(len, places_))
        for number, key in enumerate(keys):
            if key not in shown:
                yield warning(
                    "G212",
                    pattern.place("sizes", size.key, name, number),
                    f"the block `{key}` is never reached",
                    expected=f"at most {places}, as many as there are places",
                    received=f"number {number + 1} in the list",
                    help=f"remove `{key}` from `{name}`, or add `columns` or `rows`",
                )
