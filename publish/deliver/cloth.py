"""The cloth of one size as plain data: pieces, strips, purchases, finishing, thread.

In: a `CutPlan`. Out: a dictionary in a fixed order.
Invariant: exact lengths are inches as a maker writes them; a purchase is also given in
yards and in metres, both from the plan.
"""

from __future__ import annotations

from typing import Any

from publish.measures import Measures
from publish.model.cloth import SoldAs
from publish.model.cutplan import (
    Alternative,
    BackingPlan,
    BattingPlan,
    BindingPlan,
    CutPlan,
    FabricPlan,
    HavePlan,
    Piece,
    PillowPlan,
    PrecutPlan,
    Sheet,
    Strip,
    ThreadPlan,
    WebPlan,
)
from publish.surd import Exact, Surd
from publish.units import INCH_IN_MM, YARD, decimal_text, fraction_text
from publish.words import english

Json = dict[str, Any]


def exact(length: Exact) -> str:
    """Return inches as a maker writes them, or `3 + 4√2` for a length on the diagonal."""
    return str(length) if isinstance(length, Surd) else fraction_text(length)


def cloth(plan: CutPlan, measures: Measures) -> Json:
    """Return everything that is cut and bought; a part that a size lacks is null.

    Names and notes tell lengths as they are measured.
    """
    return {
        "pieces": [_piece(p, measures) for p in plan.pieces],
        "fabrics": {key: fabric_numbers(f) for key, f in plan.fabrics.items()},
        "backing": plan.backing and _backing(plan.backing),
        "batting": plan.batting and _batting(plan.batting, measures),
        "binding": plan.binding and _binding(plan.binding),
        "pillow": plan.pillow and _pillow(plan.pillow),
        "web": plan.web and _web(plan.web),
        "stabiliser": plan.stabiliser and _web(plan.stabiliser),
        "sleeve": plan.sleeve and _piece(plan.sleeve, measures),
        "thread": _thread(plan.thread),
    }


def _piece(piece: Piece, measures: Measures) -> Json:
    found: Json = {
        "letter": piece.letter,
        "name": english(piece.called, measures),
        "purpose": piece.purpose,
        "fabric": piece.fabric,
        "width": exact(piece.width),
        "length": exact(piece.length),
        "count": piece.count,
        "joined_from": piece.joined_from,
        "may_turn": piece.may_turn,
        "shape": piece.shape,
        "yields": piece.yields,
        "template": piece.template or None,
        "angle": piece.angle or None,
        "apart": None if piece.apart is None else exact(piece.apart),
    }
    for name in ("finished_width", "finished_length", "exact_width", "exact_length"):
        value: Exact | None = getattr(piece, name)
        found[name] = None if value is None else exact(value)
    return {**found, "note": english(piece.note, measures)}


def fabric_numbers(plan: FabricPlan) -> Json:
    return {
        "usable_width": exact(plan.usable_width),
        "strips": [_strip(s) for s in plan.strips],
        "length": exact(plan.length),
        "squaring": exact(plan.squaring),
        "shrinkage": exact(plan.shrunk),
        "needed": exact(plan.needed),
        "buy": exact(plan.buy),
        "buy_yards": exact(plan.buy / YARD),
        "buy_metres": decimal_text(plan.buy_metric * INCH_IN_MM / 1000, 2),
        "bound": exact(plan.bound),
        "gap": exact(plan.gap),
        "waste_percent": decimal_text(plan.waste * 100, 1),
        "choices": list(plan.choices),
        "left": plan.left and {"width": exact(plan.left[0]), "length": exact(plan.left[1])},
        "spare": None if plan.spare is None else exact(plan.spare),
        "precut": plan.precut and _precut(plan.precut),
        "have": plan.have and _have(plan.have),
        "alternatives": [_alternative(a) for a in plan.alternatives],
        "shares": [
            {
                "use": s.use,
                "buy": exact(s.buy),
                "buy_yards": exact(s.buy / YARD),
                "buy_metres": decimal_text(s.buy_metric * INCH_IN_MM / 1000, 2),
            }
            for s in plan.shares
        ],
    }


def _sold_as(cloth: SoldAs) -> Json:
    return {
        "kind": cloth.kind,
        "width": exact(cloth.width),
        "length": exact(cloth.length),
        "packet": cloth.packet,
    }


def _precut(plan: PrecutPlan) -> Json:
    return {
        "sold_as": _sold_as(plan.sold_as),
        "used": plan.used,
        "bound": plan.bound,
        "packets": plan.packets,
        "sheets": [_sheet(sheet) for sheet in plan.sheets],
    }


def _sheet(sheet: Sheet) -> Json:
    return {
        "count": sheet.count,
        "lengthwise": sheet.lengthwise,
        "strips": [_strip(s) for s in sheet.strips],
    }


def _have(plan: HavePlan) -> Json:
    return {
        "pieces": [
            {
                "kind": used.have.kind,
                "width": exact(used.have.width),
                "length": exact(used.have.length),
                "count": used.have.count,
                "used": used.count,
                "sheets": [_sheet(sheet) for sheet in used.sheets],
            }
            for used in plan.used
        ],
        "rest": plan.rest and fabric_numbers(plan.rest),
        "bound": exact(plan.bound),
    }


def _alternative(plan: Alternative) -> Json:
    return {
        "sold_as": _sold_as(plan.sold_as),
        "count": plan.count,
        "bound": plan.bound,
        "too_large": plan.larger or None,
        "joined": list(plan.joined),
    }


def _strip(strip: Strip) -> Json:
    return {
        "count": strip.count,
        "depth": exact(strip.depth),
        "used": exact(strip.used),
        "cuts": [
            {
                "letter": cut.letter,
                "across": exact(cut.across),
                "along": exact(cut.along),
                "count": cut.count,
                "turned": cut.turned,
            }
            for cut in strip.cuts
        ],
        "sections": [
            {"width": exact(section.width), "strips": [_strip(s) for s in section.strips]}
            for section in strip.sections
        ],
    }


def _backing(plan: BackingPlan) -> Json:
    return {
        "fabric": plan.fabric,
        "width": exact(plan.width),
        "height": exact(plan.height),
        "panels": plan.panels,
        "panel_width": exact(plan.panel_width),
        "panel_length": exact(plan.panel_length),
        "half_panel": None if plan.half is None else exact(plan.half),
        "seams": plan.seams,
        "overhang": exact(plan.overhang),
    }


def _batting(plan: BattingPlan, measures: Measures) -> Json:
    return {
        "name": plan.name,
        "width": exact(plan.width),
        "height": exact(plan.height),
        "package": english(plan.package.called, measures) if plan.package else None,
    }


def _binding(plan: BindingPlan) -> Json:
    return {
        "fabric": plan.fabric,
        "cut": plan.cut,
        "strip_width": exact(plan.strip_width),
        "length": exact(plan.length),
        "strips": plan.strips,
        "strip_length": None if plan.strip_length is None else exact(plan.strip_length),
        "joins": plan.joins,
        "joined_length": exact(plan.joined_length),
        "square": None if plan.square is None else exact(plan.square),
    }


def _pillow(plan: PillowPlan) -> Json:
    return {
        "form": exact(plan.form),
        "back": plan.back,
        "fabric": plan.fabric,
        "piece_width": exact(plan.piece_width),
        "piece_length": exact(plan.piece_length),
        "count": plan.count,
        "overlap": exact(plan.overlap),
        "hem": exact(plan.hem),
    }


def _web(plan: WebPlan) -> Json:
    return {
        "width": exact(plan.width),
        "length": exact(plan.length),
        "buy": exact(plan.buy),
        "buy_yards": exact(plan.buy / YARD),
        "squares": plan.squares,
        "side": exact(plan.side),
    }


def _thread(plan: ThreadPlan) -> Json:
    """Return lengths of thread: decimals, since they follow curves."""
    lengths = {
        "piecing": plan.piecing,
        "applique": plan.applique,
        "quilting": plan.quilting,
        "binding": plan.binding,
        "total": plan.total,
    }
    return {"ratio": exact(plan.ratio)} | {k: decimal_text(v, 2) for k, v in lengths.items()}
