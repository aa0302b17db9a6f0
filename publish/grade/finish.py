"""How a size is finished: fabrics left out, and what a pillow or a plain top goes without.

In: pattern, size as declared, size with its dimensions. Out: the settled `Size`; notes.
Invariant: what a size does without although the pattern as a whole has it goes quietly;
what the size itself asks for in vain gets a note.
"""

from __future__ import annotations

from dataclasses import replace

from publish.grade.quilting import usual
from publish.model.pattern import Pattern, QuiltingSpec, SizeSpec
from publish.model.size import Size
from publish.notes import Note, Place, warning


def finish(pattern: Pattern, spec: SizeSpec, size: Size) -> tuple[Size, tuple[Note, ...]]:
    """Return the size with its finish settled."""
    notes: list[Note] = []
    blocks = [pattern.blocks[key] for row in (*size.arrangement, *size.alternates) for key in row]
    back = (spec.backing.fabric if spec.backing else "") or blocks[0].patches[0].fabric
    motifs = [pattern.motifs[block.motif] for block in blocks if block.motif]
    edge = (spec.binding.fabric if spec.binding else "") or (motifs[0].fabric if motifs else back)
    pillow = size.pillow and replace(size.pillow, fabric=size.pillow.fabric or back)
    settled = replace(
        size,
        backing=size.backing and replace(size.backing, fabric=back),
        binding=size.binding and replace(size.binding, fabric=edge),
        pillow=pillow,
        quilting=_quilted_areas(pattern, size, notes),
    )
    if size.finish == "pillow":
        notes.extend(_no_use(pattern, spec))
        settled = replace(settled, binding=None, sleeve=None)
    return settled, tuple(notes)


def written(pattern: Pattern, *path: str) -> bool:
    """Return whether a value stands at this path itself, and is not taken from elsewhere."""
    place = pattern.places.get(".".join(path))
    return place is not None and place.path == ".".join(path)


def _no_use(pattern: Pattern, spec: SizeSpec) -> list[Note]:
    """Return a warning for each thing that a pillow asks for and cannot have."""
    return [
        warning(
            "G206",
            pattern.place("sizes", spec.key, name),
            f"a pillow has no {name}",
            expected="no `sleeve` and no `binding` in a pillow",
            received=f"`{name}`",
            help=f"remove `{name}` from `{spec.key}`",
        )
        for name in ("sleeve", "binding")
        if written(pattern, "sizes", spec.key, name) and (name != "sleeve" or spec.sleeve)
    ]


def _quilted_areas(pattern: Pattern, size: Size, notes: list[Note]) -> tuple[QuiltingSpec, ...]:
    """Return the quilting of the areas that this size has; the usual one if none is asked."""
    if not size.quilting:
        return usual(size)
    has = {"motif": size.motif_span is not None, "ground": True, "border": bool(size.borders)}
    kept = tuple(q for q in size.quilting if has[q.area])
    there = " or ".join(f"`{area}`" for area in has if has[area])
    if written(pattern, "sizes", size.key, "quilting"):
        for number, quilting in enumerate(size.quilting):
            if quilting not in kept:
                place = pattern.place("sizes", size.key, "quilting", number, "area")
                notes.append(_not_there(place, quilting.area, there))
    elif not kept:
        place = pattern.place("sizes", size.key, "quilting")
        areas = ", ".join(q.area for q in size.quilting)
        notes.append(_not_there(place, areas, there))
    return kept


def _not_there(place: Place, area: str, there: str) -> Note:
    return warning(
        "G208",
        place,
        f"there is no {area} to quilt",
        expected=there,
        received=area,
        help=f"quilt what the size has: {there}",
    )
