"""A cutting plan for a made-up size: correct sizes, each piece in strips of its own."""

from __future__ import annotations

from fractions import Fraction

from publish.model.cutplan import (
    BackingPlan,
    BattingPlan,
    BindingPlan,
    Cut,
    CutPlan,
    FabricPlan,
    Package,
    Piece,
    PillowPlan,
    Strip,
    ThreadPlan,
    WebPlan,
)
from publish.model.draft import Draft, Patch
from publish.model.pattern import Pattern, PillowSpec
from publish.model.size import Size
from publish.units import round_up
from publish.words.values import Named

WIDTH = Fraction(40)
Letters = dict[tuple[str, ...], str]


def plan_of(pattern: Pattern, size: Size, draft: Draft, letters: Letters) -> CutPlan:
    """Return a plan; `letters` gives one purpose one letter in every size."""
    pieces = [
        *_grounds(pattern, size, draft, letters),
        *_motifs(pattern, size, draft, letters),
        *_borders(pattern, size, letters),
        *_rest(size, letters),
    ]
    fabrics = {}
    for key in pattern.fabrics:
        own = tuple(p for p in pieces if p.fabric == key)
        if own:
            fabrics[key] = _fabric(key, own)
    span = max((p.width for p in pieces if p.purpose.startswith("motif")), default=None)
    count = len(draft.placements)
    fused = any(pattern.motifs[p.motif].method == "fusible" for p in draft.placements)
    perimeter = 2 * (size.width + size.height) + 10
    square = Fraction(23) if size.binding and size.binding.cut == "bias" else None
    strips = int(-(-perimeter // WIDTH))
    return CutPlan(
        size.key,
        tuple(pieces),
        fabrics,
        span,
        _backing(size),
        BattingPlan(
            "Cotton", size.width + 6, size.height + 6, Package("crib", Fraction(45), Fraction(60))
        ),
        None
        if size.binding is None
        else BindingPlan(
            size.binding.fabric,
            size.binding.cut,
            Fraction(9, 4),
            perimeter,
            strips,
            strips - 1,
            strips * WIDTH - (strips - 1) * Fraction(9, 4),
            square,
        ),
        None
        if size.pillow is None
        else PillowPlan(
            size.pillow.form,
            size.pillow.back,
            size.pillow.fabric,
            *_back(size.pillow),
            size.pillow.overlap,
            size.pillow.hem,
        ),
        WebPlan(Fraction(18), Fraction(20) * count, Fraction(45, 2) * count, count, Fraction(16))
        if fused
        else None,
        next((p for p in pieces if p.purpose == "sleeve"), None),
        ThreadPlan(
            Fraction(100) * size.block_count,
            Fraction(400) * count,
            Fraction(2000),
            Fraction(0 if size.pillow else 200),
            Fraction(5, 2),
        ),
    )


def _letter(letters: Letters, *purpose: str) -> str:
    return letters.setdefault(purpose, chr(65 + len(letters)))


def _grounds(pattern: Pattern, size: Size, draft: Draft, letters: Letters) -> list[Piece]:
    found: dict[tuple[str, Fraction, Fraction, Fraction], int] = {}
    for patch in draft.patches:
        if patch.role == "ground":
            left, top, right, bottom = patch.box
            grow = _grown(pattern, draft, patch)
            key = (patch.fabric, right - left, bottom - top, grow)
            found[key] = found.get(key, 0) + 1
    seam = 2 * pattern.sewing.seam
    return [
        Piece(
            _letter(letters, "ground", fabric, str(wide < size.block_side)),
            Named("ground"),
            "ground",
            fabric,
            round_up(wide + seam + grow),
            round_up(high + seam + grow),
            count,
            wide,
            high,
        )
        for (fabric, wide, high, grow), count in found.items()
    ]


def _grown(pattern: Pattern, draft: Draft, patch: Patch) -> Fraction:
    block = pattern.blocks[patch.block or ""]
    if block.motif is None:
        return Fraction(0)
    margin = pattern.sewing.ground_margin
    return margin if len(block.patches) == 1 else margin / 2


def _motifs(pattern: Pattern, size: Size, draft: Draft, letters: Letters) -> list[Piece]:
    pieces = []
    for key in dict.fromkeys(p.motif for p in draft.placements):
        motif = pattern.motifs[key]
        assert size.motif_span is not None
        side = round_up(size.motif_span + pattern.sewing.motif_margin)
        count = sum(p.motif == key for p in draft.placements)
        pieces.append(
            Piece(
                _letter(letters, "motif", key),
                Named("motif square"),
                "motif",
                motif.fabric,
                side,
                side,
                count,
            )
        )
    return pieces


def _borders(pattern: Pattern, size: Size, letters: Letters) -> list[Piece]:
    pieces = []
    seam = 2 * pattern.sewing.seam
    side = size.inner_width
    for index, border in enumerate(size.borders, start=1):
        outer = side + 2 * border.width
        for where, length in (("side", side), ("top", outer)):
            cut = length + seam
            if border.corners == "mitred":
                cut = outer + seam + border.width
            parts = int(-(-cut // WIDTH))
            pieces.append(
                Piece(
                    _letter(letters, "border", str(index), where),
                    Named(f"border {where}"),
                    f"border {index} {where}",
                    border.fabric,
                    border.width + seam,
                    cut,
                    2,
                    border.width,
                    length,
                    joined_from=parts,
                )
            )
        side = outer
    return pieces


def _rest(size: Size, letters: Letters) -> list[Piece]:
    assert size.backing is not None
    backing, cloth = _backing(size), size.backing.fabric
    pieces = [
        _piece(letters, "backing", cloth, backing.panel_width, backing.panel_length, backing.panels)
    ]
    if size.binding is not None and size.binding.cut == "bias":
        pieces.append(_piece(letters, "binding", size.binding.fabric, Fraction(23), Fraction(23)))
    elif size.binding is not None:
        strips = int(-(-(2 * (size.width + size.height) + 10) // WIDTH))
        pieces.append(
            _piece(letters, "binding", size.binding.fabric, WIDTH, Fraction(9, 4), strips)
        )
    if size.pillow is not None:
        pieces.append(_piece(letters, "pillow back", size.pillow.fabric, *_back(size.pillow)))
    if size.sleeve is not None:
        deep = 2 * size.sleeve + Fraction(1, 2)
        pieces.append(_piece(letters, "sleeve", cloth, size.width - 1, deep))
    return pieces


def _back(pillow: PillowSpec) -> tuple[Fraction, Fraction, int]:
    """Two pieces of 12 x 18 for an 18 in form, or one that is 1 in longer for a zip."""
    if pillow.back == "zip":
        return pillow.form + 1, pillow.form, 1
    return Fraction(12), pillow.form, 2


def _piece(
    letters: Letters, purpose: str, fabric: str, width: Fraction, length: Fraction, count: int = 1
) -> Piece:
    return Piece(_letter(letters, purpose), Named(purpose), purpose, fabric, width, length, count)


def _backing(size: Size) -> BackingPlan:
    side = size.width + 8
    panels = int(-(-side // WIDTH))
    wide = side if panels == 1 else WIDTH
    seams = "none" if panels == 1 else "vertical"
    cloth = size.backing.fabric
    return BackingPlan(cloth, side, side, panels, wide, side, seams, Fraction(4))


def _fabric(key: str, pieces: tuple[Piece, ...]) -> FabricPlan:
    strips: list[Strip] = []
    for piece in pieces:
        strips += _strips(piece)
    length = sum((s.depth * s.count for s in strips), Fraction(0))
    buy = round_up(length + 1, Fraction(9, 2))
    metric = round_up(length + 1, Fraction(1000, 254))
    return FabricPlan(
        key, WIDTH, pieces, tuple(strips), length, length + 1, buy, metric, length, Fraction(1, 10)
    )


def _strips(piece: Piece) -> list[Strip]:
    """Lay a piece's shorter side across the fabric, or its length across when joined."""
    if piece.joined_from > 1:
        many = piece.count * piece.joined_from
        return [Strip(piece.width, (Cut(piece.letter, WIDTH, piece.width, 1, True),), many)]
    across, along = piece.width, piece.length
    each = int(WIDTH // across)
    full, rest = divmod(piece.count, each)
    strips = []
    if full:
        strips.append(Strip(along, (Cut(piece.letter, across, along, each),), full))
    if rest:
        strips.append(Strip(along, (Cut(piece.letter, across, along, rest),)))
    return strips
