"""What two editions are compared by, beside their numbers: `edition.json`.

In: pattern, drafts, plans, manual. Out: a dictionary of strings, numbers, lists and
dictionaries, the same keys in the same order every time; DEVELOPERS.md documents it.
Invariant: words are the booklet's own; outlines are Well-Known Text (OGC 06-103r4) in
inches, to 0.001 in, as finished and as cut.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

import shapely
from shapely.geometry import MultiLineString, Polygon
from shapely.geometry.base import BaseGeometry

from publish.model.cloth import Fabric
from publish.model.cutplan import CutPlan
from publish.model.draft import Draft, FoundationSection, MotifShape
from publish.model.pattern import Pattern
from publish.model.pieces import PieceTemplate
from publish.model.words import Box, Bullets, Manual, Paragraph, Row, Section, Steps, Table

FORM = 1
"""Which form the record has; one that is written another way gets another number."""
DECIMALS = 3
"""Of outlines, in inches."""

Json = dict[str, Any]


def record(
    pattern: Pattern,
    drafts: Mapping[str, Draft],
    plans: Mapping[str, CutPlan],
    manual: Manual,
) -> Json:
    """Return an edition's words, fabrics and outlines."""
    whole = [key for key in pattern.sizes if key in drafts and key in plans]
    out = pattern.publication
    return {
        "form": FORM,
        "pattern": pattern.key,
        "title": pattern.title,
        "edition": out.edition,
        "studio": out.studio,
        "contact": out.contact,
        "licence": out.licence,
        "skill": out.skill,
        "fabrics": {key: _fabric(f) for key, f in pattern.fabrics.items()},
        "colourways": {
            way.title: {key: _fabric(f) for key, f in way.fabrics.items()}
            for way in pattern.colourways.values()
        },
        "materials": _materials(manual, whole),
        "tools": _tools(manual),
        "cautions": [
            {"title": box.title, "items": list(box.items)}
            for section in manual.sections
            for box in section.blocks
            if isinstance(box, Box) and box.kind == "caution"
        ],
        "sections": [_section(s) for s in manual.sections if s.key != "edition"],
        "templates": {key: list(_templates(drafts[key], plans[key])) for key in whole},
    }


def _fabric(fabric: Fabric) -> Json:
    return {"name": fabric.name, "colour": fabric.colour}


def _materials(manual: Manual, sizes: list[str]) -> Json:
    """Return what the booklet says to buy: by size, by table, by row."""
    found: Json = {k: {"fabric": {}, "other-materials": {}, "thread": {}} for k in sizes}
    tables = [
        b for s in manual.sections if s.key == "materials" for b in s.blocks if isinstance(b, Table)
    ]
    for table in tables:
        told = table.key in ("fabric", "other-materials", "thread")
        for row in [r for r in table.rows if told and r.kind != "part"]:
            for size, cell in zip(sizes, row.cells[1:], strict=True):
                if cell != "–":
                    name, said = _said(table.key, row, cell)
                    found[size][table.key][name] = said
    return found


def _said(table: str, row: Row, cell: str) -> tuple[str, str]:
    """Return what a row of the materials is about, and what is to be bought.

    Thread is told apart by what it sews, not by the colour that is advised for it.
    """
    if row.fabric is not None:
        return row.fabric, cell.split("; at hand:")[0]
    name, _, kind = row.cells[0].replace("**", "").partition(": ")
    return name.split(",")[0], f"{kind}, {cell}" if kind and table != "thread" else cell


def _tools(manual: Manual) -> list[str]:
    """Return the tools that the booklet lists."""
    return [
        item
        for section in manual.sections
        if section.key == "tools"
        for block in section.blocks
        if isinstance(block, Bullets)
        for item in block.items
    ]


def _section(section: Section) -> Json:
    steps = [step for block in section.blocks if isinstance(block, Steps) for step in block.items]
    return {
        "key": section.key,
        "title": section.title,
        "sizes": list(section.sizes),
        "steps": [
            {
                "key": s.key,
                "number": s.number,
                "text": s.text,
                "right": s.right,
                "tip": s.tip,
                "caution": s.caution,
                "sizes": list(s.sizes or section.sizes),
            }
            for s in steps
        ],
        "prose": [text for text in _prose(section) if text],
    }


def _prose(section: Section) -> Iterator[str]:
    """Yield what a section says beside its steps and tables."""
    yield section.lead
    for block in section.blocks:
        if isinstance(block, Paragraph):
            yield block.text
        elif isinstance(block, Bullets) and not block.check:
            yield from block.items
        elif isinstance(block, Box) and block.kind != "caution":
            yield from (f"{block.title}. {item}" for item in block.items)


def _templates(draft: Draft, plan: CutPlan) -> Iterator[Json]:
    """Yield every outline that a maker cuts out at full size."""
    for motif in draft.motifs.values():
        yield _motif(motif)
    for piece in plan.templates:
        yield _piece(piece)
    for section in draft.foundations:
        yield _foundation(section)


def _motif(shape: MotifShape) -> Json:
    return _template("motif", shape.key, "", shape.whole, shape.cut_line)


def _piece(piece: PieceTemplate) -> Json:
    return _template("piece", piece.key, piece.letter, piece.finished, piece.cut)


def _foundation(section: FoundationSection) -> Json:
    ring = Polygon([(float(x), float(y)) for x, y in section.ring])
    seams = [[(float(x), float(y)) for x, y in seam] for seam in section.seams]
    return _template("foundation", section.key, section.letter, ring, ring, MultiLineString(seams))


def _template(
    kind: str,
    key: str,
    letter: str,
    finished: BaseGeometry,
    cut: BaseGeometry,
    lines: BaseGeometry | None = None,
) -> Json:
    return {
        "kind": kind,
        "key": key,
        "letter": letter,
        "finished": _wkt(finished),
        "cut": _wkt(cut),
        "lines": "" if lines is None else _wkt(lines),
    }


def _wkt(shape: BaseGeometry) -> str:
    text: str = shapely.to_wkt(shape, rounding_precision=DECIMALS, trim=True)
    return text
