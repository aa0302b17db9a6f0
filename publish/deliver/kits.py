"""What a fabric shop cuts to make kits: lengths for each kit, and for all of them.

In: pattern, cut plans, how many kits of each size. Out: plain data, and Markdown.
Invariant: one kit's lengths are the plan's lengths to buy; all kits' are that many times
as long, exactly, since each kit is cut off the bolt by itself.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from publish.deliver.kit_pages import batting, bolt_table, counted, size_tables
from publish.deliver.markdown import table_of, text_of
from publish.model.cutplan import CutPlan, FabricPlan, Piece, Strip
from publish.model.pattern import Pattern
from publish.units import INCH_IN_MM, YARD, decimal_text, fraction_text
from publish.words import Language
from publish.words.lengths import Lengths

Json = dict[str, Any]


def kits(pattern: Pattern, plans: Mapping[str, CutPlan], wanted: Mapping[str, int]) -> Json:
    """Return what `wanted` kits, by size key, take from each bolt.

    Raises ValueError for a size without a plan and for a number that is not positive.
    """
    for key, count in wanted.items():
        if key not in plans:
            raise ValueError(f"there is no size {key!r}; there are {', '.join(plans)}")
        if count < 1:
            raise ValueError(f"{count} kits of {key!r}: at least one is needed")
    totals: dict[str, tuple[Fraction, Fraction]] = {}
    for key, count in wanted.items():
        for name, plan in _bought(plans[key]).items():
            yards, metres = totals.get(name, (Fraction(0), Fraction(0)))
            totals[name] = yards + count * plan.buy, metres + count * plan.buy_metric
    return {
        "pattern": pattern.key,
        "title": pattern.title,
        "unit": "in",
        "kits": dict(wanted),
        "sizes": {k: _size(pattern, k, plans[k], count) for k, count in wanted.items()},
        "bolts": {
            name: {
                "name": pattern.fabrics[name].name,
                **_lengths(pattern.words.lengths, *totals[name]),
            }
            for name in pattern.fabrics
            if name in totals
        },
    }


def kits_text(words: Language, found: Mapping[str, Any]) -> str:
    """Return a kit sheet as Markdown: the bolts, then a section for each size."""
    head = words.tell("kit-title", title=found["title"])
    lines = [f"# {head}", "", f"## {words.tell('kit-from-bolts')}", ""]
    lines += table_of(bolt_table(words, found))
    for size in found["sizes"].values():
        lines += [f"## {size['title']}: {counted(words, size)}", ""]
        lengths, *others = (table_of(table) for table in size_tables(words, size))
        lines += [*lengths, batting(words, size), "", *(line for table in others for line in table)]
    return text_of(lines)


def _bought(plan: CutPlan) -> dict[str, FabricPlan]:
    """Return the fabrics that a size buys; what the designer owns whole is not for kits."""
    return {name: fabric for name, fabric in plan.fabrics.items() if fabric.buy > 0}


def _size(pattern: Pattern, key: str, plan: CutPlan, count: int) -> Json:
    wadding, measures = plan.batting, pattern.measures
    return {
        "title": pattern.sizes[key].title,
        "kits": count,
        "fabrics": {
            name: {
                "name": pattern.fabrics[name].name,
                "usable_width": measures.text(fabric.usable_width),
                "one_kit": _lengths(pattern.words.lengths, fabric.buy, fabric.buy_metric),
                "all_kits": _lengths(
                    pattern.words.lengths, count * fabric.buy, count * fabric.buy_metric
                ),
                "strips": [_strip(pattern.words, s) for s in fabric.strips],
            }
            for name, fabric in _bought(plan).items()
        },
        "batting": wadding and f"{wadding.name}, {measures.sides(wadding.width, wadding.height)}",
        "pieces": [_piece(pattern, p, count) for p in plan.pieces],
    }


def _lengths(lengths: Lengths, inches: Fraction, metric: Fraction) -> Json:
    """Return a length to buy: inches exact, yards exact, metres to the centimetre; in words."""
    return {
        "inches": fraction_text(inches),
        "yards": fraction_text(inches / YARD),
        "metres": decimal_text(metric * INCH_IN_MM / 1000, 2),
        "words": lengths.to_buy(inches, metric),
    }


def _strip(words: Language, strip: Strip) -> str:
    cuts = ", ".join(f"{c.count} {c.letter}" for c in strip.held)
    return words.tell(
        "kit-strips", count=strip.count, depth=words.measures.text(strip.depth), cuts=cuts
    )


def _piece(pattern: Pattern, piece: Piece, count: int) -> Json:
    return {
        "letter": piece.letter,
        "name": pattern.words.value(piece.called),
        "fabric": pattern.fabrics[piece.fabric].name,
        "size": pattern.measures.sides(piece.width, piece.length),
        "one_kit": piece.count,
        "all_kits": count * piece.count,
    }
