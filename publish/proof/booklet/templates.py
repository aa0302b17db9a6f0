"""Whether every size has full-size templates of its own where they are needed.

In: a case. Out: notes.
Invariant: a motif has sheets at each size that lays it down, and a piece or foundation that
is cut or sewn by a template has sheets; sizes share a sheet only where the shapes are equal.
"""

from __future__ import annotations

from collections.abc import Iterator

from shapely.geometry.base import BaseGeometry

from publish.model.words import TemplateSheets
from publish.notes import Note, error
from publish.proof.case import Case, Code

CODES = {
    "P847": Code(
        "A size has no template, or one that is another size's",
        "the motif comes out too large or too small for its block",
        "the pillow is cut with the sheets of the mini, whose motif is half an inch smaller",
        "`TemplateSheets` for every size whose `motif_size` differs",
    ),
}


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each template that no sheet shows at its size."""
    sheets = [b for s in case.manual.sections for b in s.blocks if isinstance(b, TemplateSheets)]
    for key in case.keys:
        laid = {p.motif for p in case.drafts[key].placements}
        cut = {t.key for t in case.plans[key].templates}
        sewn = {f.key for f in case.drafts[key].foundations}
        for name in sorted(laid | cut | sewn):
            shape = _shape(case, key, name)
            shown = [b for b in sheets if b.motif == name]
            if not any(b.size == key or _alike(shape, _shape(case, b.size, name)) for b in shown):
                yield error(
                    "P847",
                    case.size_place(key),
                    f"the {key} has no template of {name}",
                    expected=f"sheets of {name} at the size of the {key}",
                    received=", ".join(b.size for b in shown) or "none",
                )


def _shape(case: Case, size: str, name: str) -> BaseGeometry | tuple[object, ...] | None:
    """Return what a template shows, to be compared; None when the size has no such thing."""
    if size not in case.keys:
        return None
    if name in case.drafts[size].motifs:
        return case.drafts[size].motifs[name].whole
    for template in case.plans[size].templates:
        if template.key == name:
            return template.cut
    return next((f.ring for f in case.drafts[size].foundations if f.key == name), None)


def _alike(
    one: BaseGeometry | tuple[object, ...] | None, other: BaseGeometry | tuple[object, ...] | None
) -> bool:
    if isinstance(one, BaseGeometry) and isinstance(other, BaseGeometry):
        return bool(one.equals(other))
    return one is not None and one == other
