"""Stage 2: one size with every finished dimension and count settled.

In: a `Pattern` and the key of a size. Out: a `Size`, or None, and notes.
Invariant: finished dimensions are sums of what the pattern says; allowances, binding and
minimum features never scale. What depends on other keys (a binding's fabric) is settled
here and nowhere else.
"""

from __future__ import annotations

import difflib
from dataclasses import replace

from publish.grade.checks import check_size
from publish.grade.codes import CODES
from publish.grade.finish import finish
from publish.grade.medallion import rounds
from publish.grade.setting import checkered, extent, in_turn, sashing, turns
from publish.model.pattern import Pattern, SizeSpec
from publish.model.size import Size
from publish.notes import Note, error

__all__ = ["CODES", "grade"]


def grade(pattern: Pattern, size_key: str) -> tuple[Size | None, tuple[Note, ...]]:
    """Return one size of a pattern with everything settled, and what was found."""
    spec = pattern.sizes.get(size_key)
    if spec is None:
        return None, (_no_such_size(pattern, size_key),)
    size, notes = _surrounded(pattern, spec, _dimensions(pattern, spec))
    if size is None:
        return None, notes
    size, notes = finish(pattern, spec, size)
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
    """Return the size of the blocks alone, with its finish still as written."""
    inner_width, inner_height = extent(spec, spec.columns), extent(spec, spec.rows)
    grid = spec.rows, spec.columns
    arrangement, turned = in_turn(spec.blocks, *grid), turns(spec.turns, *grid)
    if spec.alternate and spec.setting == "straight":
        arrangement = checkered(spec.blocks, spec.alternate, *grid)
        turned = checkered(spec.turns, spec.alternate_turns, *grid)
        turned = turned if any(map(any, turned)) else ()
    between = (spec.rows - 1, spec.columns - 1) if spec.setting == "on point" else (0, 0)
    alternates = in_turn(spec.alternate or spec.blocks, *between)
    shown = {key for row in (*arrangement, *alternates) for key in row}
    has_motif = any(pattern.blocks[key].motif for key in shown)
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
        width=inner_width,
        height=inner_height,
        pillow=spec.pillow,
        backing=spec.backing,
        batting=spec.batting,
        binding=spec.binding,
        quilting=spec.quilting,
        sleeve=spec.sleeve,
        setting=spec.setting,
        turns=turned,
        alternates=alternates,
        alternate_turns=turns(spec.alternate_turns, *between),
        sashing=sashing(spec),
        setting_fabric=spec.setting_fabric,
    )


def _surrounded(
    pattern: Pattern, spec: SizeSpec, size: Size
) -> tuple[Size | None, tuple[Note, ...]]:
    """Return the size with what goes round its blocks, or None when that does not fit."""
    around, notes = rounds(pattern, spec, size.inner_width, size.inner_height)
    if around is None:
        return None, notes
    if around:
        size = replace(size, rounds=around, borders=tuple(r.border for r in around if r.border))
    if size.layers:
        outermost = size.layers[-1]
        size = replace(size, width=outermost.width, height=outermost.height)
    return size, notes
