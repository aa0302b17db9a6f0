"""Small patterns and sizes built by hand, and drawings written as SVG text."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from fractions import Fraction
from pathlib import Path

from shapely.geometry import MultiPolygon

from publish.draft.drawing import Drawing, read_drawing
from publish.draft.fill import cloth
from publish.draft.motif import DraftedMotif, draft_motif
from publish.model.pattern import (
    Block,
    BorderSpec,
    Fabric,
    Motif,
    OutlinePoint,
    PatchSpec,
    Pattern,
    Publication,
    QuiltingSpec,
    Sewing,
)
from publish.model.size import Size
from publish.notes import Note, Place

F = Fraction
SIDE, SPAN = F(16), F(14)

FABRICS = {
    k: Fabric(k, k.title(), c, F(40))
    for k, c in (("linen", "#f0e9d9"), ("moss", "#2f6152"), ("sand", "#dfd0b2"))
}
SEWING = Sewing(
    F(1, 4), F(3, 2), F(1), F(1), F(9, 2), F(50, 127) * 10, F(5, 2), squaring=F(0), mis_cut=F(0)
)


def motif(**changes: object) -> Motif:
    """Return a needle-turned motif of eight mirrored folds, drawn in `wedge.svg`."""
    plain = Motif("fen", "moss", 8, "mirror", "needle-turn", F(1, 8), drawing=Path("wedge.svg"))
    return replace(plain, **changes)


def outline(points: Iterable[tuple[float, ...]]) -> tuple[OutlinePoint, ...]:
    """Return outline points; a third value that is not 0 makes a corner."""
    return tuple(
        OutlinePoint(F(str(p[0])), F(str(p[1])), len(p) > 2 and bool(p[2])) for p in points
    )


def grid(key: str, rows: list[list[str]], carries: str | None = None) -> Block:
    """Return a block pieced from equal rectangles."""
    patches = [
        PatchSpec(((F(x), F(y)), (F(x + 1), F(y)), (F(x + 1), F(y + 1)), (F(x), F(y + 1))), fabric)
        for y, row in enumerate(rows)
        for x, fabric in enumerate(row)
    ]
    return Block(key, len(rows[0]), len(rows), tuple(patches), carries)


def pattern(
    folder: Path = Path(),
    motifs: Iterable[Motif] = (),
    blocks: Iterable[Block] = (),
    places: Iterable[str] = (),
) -> Pattern:
    found = {b.key: b for b in blocks} or {"plain": grid("plain", [["linen"]], "fen")}
    nowhere = Publication("Hollow Fen Studio", "", "", 0, "", "", "", "")
    where = {"": Place("pattern.yaml")} | {
        path: Place("pattern.yaml", line, 1, path) for line, path in enumerate(places, start=2)
    }
    return Pattern(
        "fen",
        folder,
        "Fen",
        "",
        nowhere,
        ("letter",),
        "tideline",
        FABRICS,
        {m.key: m for m in motifs},
        found,
        {},
        SEWING,
        where,
    )


def size(
    columns: int = 1,
    rows: int = 1,
    side: F = SIDE,
    span: F | None = SPAN,
    blocks: tuple[str, ...] = ("plain",),
    borders: tuple[BorderSpec, ...] = (),
    quilting: tuple[QuiltingSpec, ...] = (),
) -> Size:
    turns = iter(range(columns * rows))
    arrangement = tuple(
        tuple(blocks[next(turns) % len(blocks)] for _ in range(columns)) for _ in range(rows)
    )
    edge = 2 * sum((b.width for b in borders), F(0))
    inner = side * columns, side * rows
    outer = inner[0] + edge, inner[1] + edge
    return Size(
        "mini",
        "Mini",
        "quilt",
        columns,
        rows,
        arrangement,
        side,
        span,
        borders,
        *inner,
        *outer,
        None,
        None,
        None,
        None,
        quilting,
        None,
    )


SVG_HEAD = '<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" '


def svg(inside: str, attributes: str = 'viewBox="0 0 100 100"') -> str:
    return f"{SVG_HEAD}{attributes}>\n{inside}\n</svg>\n"


def read(
    folder: Path,
    text: str | bytes,
    element: str | None = None,
) -> tuple[Drawing | None, tuple[Note, ...]]:
    """Write a drawing and read it back."""
    path = folder / "wedge.svg"
    path.write_bytes(text if isinstance(text, bytes) else text.encode())
    return read_drawing(path, "wedge.svg", element, "motifs.fen.drawing")


def area_of(
    folder: Path, text: str, tolerance: float = 1e-4, element: str | None = None
) -> MultiPolygon:
    """Return the cloth of a drawing that must be read without a note."""
    drawing, notes = read(folder, text, element)
    assert drawing is not None, notes
    area, more = cloth(drawing, tolerance)
    assert not notes + more, notes + more
    return area


def codes(notes: Iterable[Note]) -> list[str]:
    return [n.code for n in notes]


def drafted(folder: Path, text: str, span: F = SPAN, **changes: object) -> DraftedMotif:
    """Return a motif drafted from a drawing that gives no note."""
    (folder / "wedge.svg").write_text(text)
    kind = motif(**changes)
    found, notes = draft_motif(pattern(folder, [kind]), kind, span, "mini")
    assert found is not None and not notes, notes
    return found


def polygon_svg(points: Iterable[tuple[float, float]], more: str = "", head: str = "") -> str:
    """Return a drawing of one polygon, its numbers written out in full."""
    text = " ".join(f"{x!r},{y!r}" for x, y in ((float(x), float(y)) for x, y in points))
    return svg(f'{head}<polygon id="wedge" {more} points="{text}"/>')
