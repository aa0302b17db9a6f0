"""Stage 2: one size with every finished dimension and count settled.

In: a `Pattern` and the key of a size. Out: a `Size`, or None, and notes.
Invariant: finished dimensions are sums of what the pattern says; allowances, binding and
minimum features never scale. What depends on other keys (a binding's fabric) is settled
here and nowhere else.
"""

from __future__ import annotations

import difflib
from fractions import Fraction

from publish.grade.checks import check_size
from publish.grade.codes import CODES
from publish.grade.finish import finish
from publish.model.pattern import Pattern, SizeSpec
from publish.model.size import Size
from publish.notes import Note, error

__all__ = ["CODES", "grade"]


def grade(pattern: Pattern, size_key: str) -> tuple[Size | None, tuple[Note, ...]]:
    """Return one size of a pattern with everything settled, and what was found."""
    spec = pattern.sizes.get(size_key)
    if spec is None:
        return None, (_no_such_size(pattern, size_key),)
    size, notes = finish(pattern, spec, _dimensions(pattern, spec))
    return size, (*notes, *check_size(pattern, spec, size))


def _no_such_size(pattern: Pattern, size_key: str) -> Note:
    known = ", ".join(f"`{key}`" for key in pattern.sizes)
    near = difflib.get_close_matches(size_key, pattern.sizes, 1)
    return error(
        "G201",
        pattern.place("sizes"),
        f"there is no size `{size_key}`",
        expected=f"one of {known}",
        received=size_key,
        help=f"write `{near[0]}`" if near else f"the sizes are {known}",
    )


def _dimensions(pattern: Pattern, spec: SizeSpec) -> Size:
    """Return the size's counts and dimensions, with its finish still as written."""
    arrangement = tuple(
        tuple(
            spec.blocks[(row * spec.columns + column) % len(spec.blocks)]
            for column in range(spec.columns)
        )
        for row in range(spec.rows)
    )
    shown = {key for row in arrangement for key in row}
    has_motif = any(pattern.blocks[key].motif for key in shown)
    inner_width, inner_height = spec.columns * spec.block_size, spec.rows * spec.block_size
    around = 2 * sum((border.width for border in spec.borders), Fraction(0))
    return Size(
        key=spec.key,
        title=spec.title,
        finish=spec.finish,
        columns=spec.columns,
        rows=spec.rows,
        arrangement=arrangement,
        block_side=spec.block_size,
        motif_span=spec.motif_size if has_motif else None,
        borders=spec.borders,
        inner_width=inner_width,
        inner_height=inner_height,
        width=inner_width + around,
        height=inner_height + around,
        pillow=spec.pillow,
        backing=spec.backing,
        batting=spec.batting,
        binding=spec.binding,
        quilting=spec.quilting,
        sleeve=spec.sleeve,
    )
