"""The schema of studio.yaml: what the patterns of a studio may share.

In: the declaration of a pattern. Out: `STUDIO`; `OWN`, what each pattern says for itself.
Invariant: nothing is declared twice: the file has the keys of a pattern without those of
`OWN`, so that every rule, default and example is the pattern's.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from publish.read.schema import PATTERN
from publish.read.sections import Either, Many, Section, Shape

FILE_NAME = "studio.yaml"

OWN: Mapping[str, frozenset[str]] = {
    "pattern": frozenset(
        (
            *("title", "subtitle", "photos", "fabrics", "colourways"),
            *("motifs", "blocks", "sizes", "accept", "have"),
        )
    ),
    "publication": frozenset(("stock_number", "barcode", "blurb")),
    "pictures": frozenset(("pages",)),
    "backing": frozenset(("fabric",)),
    "binding": frozenset(("fabric",)),
    "step": frozenset(("sizes",)),
}
"""By section, the keys that name what a single pattern has, or that no two patterns share."""


def _shared(shape: Shape) -> Shape:
    """Return a shape without what each pattern says for itself."""
    if isinstance(shape, Section):
        own = OWN.get(shape.name, frozenset())
        kept = (replace(k, shape=_shared(k.shape)) for k in shape.keys if k.name not in own)
        return replace(
            shape, keys=tuple(replace(k, required=False) if shape is PATTERN else k for k in kept)
        )
    if isinstance(shape, Many):
        return replace(shape, item=_shared(shape.item))
    if isinstance(shape, Either) and isinstance(shape.other, Section):
        other = _shared(shape.other)
        assert isinstance(other, Section)
        return replace(shape, other=other)
    return shape


def _studio() -> Section:
    shared = _shared(PATTERN)
    assert isinstance(shared, Section)
    return replace(
        shared,
        name="studio",
        meaning="What the patterns of one studio share, written once. Every key is one of a "
        "pattern's.",
    )


STUDIO = _studio()

STUDIO_EXAMPLE = """\
publication:
  studio: Hollow Fen Studio
  contact: patterns@hollowfen.example
style: {accent: "#2f6152"}
cloth: {usable_width: 42 in}
prices:
  - {currency: EUR, retail: 14.00, wholesale: 7.00}
"""
