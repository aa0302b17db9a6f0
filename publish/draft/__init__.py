"""Stage 3, draft: the finished geometry of one size, without allowances.

In: a pattern and a size. Out: `Draft`, or None, and notes.
Invariant: a pure function of its input and of the drawings that the pattern names; what
cannot be sewn is an error, what is hard a warning, and neither stops the other checks.
"""

from __future__ import annotations

from fractions import Fraction

from shapely.geometry import box

from publish.draft.assembly import assemble
from publish.draft.codes import CODES
from publish.draft.foundation import sections_of
from publish.draft.homes import homes
from publish.draft.makeable import makeable
from publish.draft.motif import draft_motif
from publish.draft.quilting import Top, quilt
from publish.draft.repeat import Repeat
from publish.draft.sewn import sewn
from publish.draft.topmap import placements, seam_length, top_patches
from publish.model.draft import Draft, MotifShape
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.notes import Note, error

__all__ = ["CODES", "draft", "sewn"]


def draft(pattern: Pattern, size: Size) -> tuple[Draft | None, tuple[Note, ...]]:
    """Return the finished geometry of a size: patches, seams, motifs, quilting.

    None only when the geometry cannot be made at all; a draft may come with errors, so
    that figures can show where they are.
    """
    patches, notes = top_patches(pattern, size)
    motifs, more = _motifs(pattern, size)
    notes += more
    if motifs is None or any(n.code == "D341" for n in notes):
        return None, notes
    sections, foundations, more = sections_of(pattern, homes(size))
    notes += more
    assembly, more = assemble(pattern, size, patches, sections)
    notes += more
    places = placements(pattern, size)
    wholes = {key: shape.whole for key, shape in motifs.items()}
    repeats = {
        key: Repeat(shape.folds, pattern.motifs[key].symmetry, float(shape.span))
        for key, shape in motifs.items()
    }
    lines, more = quilt(pattern, Top(size, wholes, places, patches, repeats))
    notes += more
    return Draft(
        size=size.key,
        width=size.width,
        height=size.height,
        patches=patches,
        assembly=assembly,
        motifs=motifs,
        placements=places,
        quilting=lines,
        seam_length=seam_length(patches, size),
        edge_outline=box(0, 0, float(size.width), float(size.height)),
        foundations=foundations,
    ), notes


def _motifs(pattern: Pattern, size: Size) -> tuple[dict[str, MotifShape] | None, tuple[Note, ...]]:
    """Draft and check each motif that the size's blocks use, once."""
    found: dict[str, MotifShape] = {}
    notes: tuple[Note, ...] = ()
    used = [pattern.blocks[home.block].motif for home in homes(size)]
    keys = [key for key in dict.fromkeys(used) if key is not None]
    if keys and not _positive(size.motif_span):
        return None, (
            error(
                "D360",
                pattern.place("sizes", size.key),
                "a block of this size carries a motif, but no size is given for it",
                expected="`motif_size`, such as 14 in",
            ),
        )
    for key in keys:
        assert size.motif_span is not None
        drafted, more = draft_motif(pattern, pattern.motifs[key], size.motif_span, size.key)
        notes += more
        if drafted is not None:
            notes += makeable(pattern, size, drafted)
            found[key] = drafted.shape
    return (found if len(found) == len(keys) else None), tuple(dict.fromkeys(notes))


def _positive(span: Fraction | None) -> bool:
    return span is not None and span > 0
