"""Many designs side by side: what `foldwork open` shows.

In: drawings, photos, folders. Out: a page with every design opened at one size, what can be
sewn from which size on by which method, and the report in lines.
Invariant: each design goes the whole way of a pattern (read, draft), so that what stands
here is what `foldwork check` would say; one that cannot be opened is shown with its reason.
"""

from __future__ import annotations

import tempfile
from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path

import numpy as np
from shapely.geometry import MultiPolygon

from publish import read, trace, web
from publish.draft.lay import LINES
from publish.draft.makeable import ROOM
from publish.draft.motif import DraftedMotif, draft_motif
from publish.notes import Note, Place, PublishError, Report, Severity, error
from publish.units import inches_text, round_up

ENDINGS = (".svg", ".jpg", ".jpeg", ".png", ".tif", ".tiff", ".heic")
MADE = "-traced.png"
"""What `foldwork trace` calls its overlays; they are no designs."""

SPAN = 14
"""Inches: the one size that every design is opened at."""

TURNED = Fraction(1, 8)
"""Allowance turned under, as where a pattern says nothing."""

PATTERN = """\
title: Design
fabrics:
  linen: {{name: Ground, colour: "{ground}"}}
  moss: {{name: Cloth, colour: "{cloth}"}}
motifs:
  design: {{drawing: "{drawing}", folds: {folds}, fabric: moss, pieces: {pieces}{more}}}
blocks:
  design: {{ground: linen, motif: design}}
sizes:
  sheet: {{block_size: 16 in, motif_size: 14 in}}
"""


LAID = [(line, turn) for line in LINES for turn in (0, 180)]
"""The ways in which an ornament is shown: along each line, its top outwards and inwards."""


@dataclass(frozen=True)
class Cloths:
    """The colours of the sheet, as #rrggbb."""

    cloth: str
    ground: str


@dataclass(frozen=True)
class Design:
    """One design of the sheet: its name, its opened shape as SVG, its facts; or the reason
    why it cannot be opened."""

    name: str
    picture: str
    facts: tuple[tuple[str, str], ...]
    reason: str = ""

    @property
    def line(self) -> str:
        """Return what is told of it on one line."""
        return f"{self.name}: " + (self.reason or "; ".join(f"{k} {v}" for k, v in self.facts))


def designs(paths: Iterable[Path], folds: int | None, cloth: str, ground: str) -> list[Design]:
    """Return the designs of files and folders, in their order.

    `folds` are those of drawings, and of photos where they are given; photos are counted.
    PublishError when a path is not there or nothing is a design.
    """
    files: list[Path] = []
    for path in paths:
        inside = sorted(p for p in path.iterdir() if p.is_file()) if path.is_dir() else [path]
        files += [
            p
            for p in inside
            if p.suffix.lower() in ENDINGS and not (path.is_dir() and p.name.endswith(MADE))
        ]
        if not path.exists():
            raise FileNotFoundError(f"{path} is not there")
    if not files:
        raise PublishError(Report().plus([_nothing(Place(str(next(iter(paths), "."))))]))
    return [design for path in files for design in _of_file(path, folds, Cloths(cloth, ground))]


def page(shown: list[Design]) -> str:
    """Return the sheet as a page in one file."""
    return web.render("contact.html", title="Contact sheet", designs=shown, span=SPAN)


def _nothing(place: Place) -> Note:
    return error(
        "D310",
        place,
        "there is no design to open",
        expected=f"files that end in {', '.join(ENDINGS)}",
        help="name drawings or photos, or a folder that holds some",
    )


def _of_file(path: Path, folds: int | None, cloths: Cloths) -> list[Design]:
    """Return the design of a file; of an ornament, one for each way to lay it."""
    if path.suffix.lower() == ".svg":
        text, count = path.read_bytes(), folds or 8
    else:
        found, notes = trace.traced(path.read_bytes(), Place(str(path)), folds)
        if found is None:
            return [Design(path.name, "", (), _reason(notes))]
        text, count = trace.drawing(found, path.name).encode(), found.folds
    drafted, notes = _drafted(text, count, cloths)
    if not {n.code for n in notes} & {"D320", "D324"}:
        return [_design(path.name, drafted, notes, cloths)]
    laid = []
    for along, turn in LAID:
        lay = f"lay: {{along: {along}" + (f", turn: {turn}" if turn else "") + "}"
        drafted, _ = _drafted(text, count, cloths, lay)
        if drafted is not None:
            name = f"{path.name}, along the {along}" + (f", turned {turn}" if turn else "")
            laid.append(_design(name, drafted, (), cloths, (("write", lay),)))
    return laid or [_design(path.name, None, notes, cloths)]


def _drafted(
    text: bytes, folds: int, cloths: Cloths, lay: str = ""
) -> tuple[DraftedMotif | None, tuple[Note, ...]]:
    """Return a drawing drafted at the sheet's size, as a pattern's motif is."""
    more, pieces = (f", {lay}", 1) if lay else ("", 100)
    with tempfile.TemporaryDirectory() as scratch:
        folder = Path(scratch)
        (folder / "design.svg").write_bytes(text)
        filled = PATTERN.format(
            drawing="design.svg",
            folds=folds,
            pieces=pieces,
            more=more,
            cloth=cloths.cloth,
            ground=cloths.ground,
        )
        (folder / "pattern.yaml").write_text(filled, encoding="utf-8")
        pattern, notes, _ = read.load(folder)
        if pattern is None:
            return None, notes
        return draft_motif(pattern, pattern.motifs["design"], Fraction(SPAN), "sheet")


def _design(
    name: str,
    drafted: DraftedMotif | None,
    notes: Iterable[Note],
    cloths: Cloths,
    more: tuple[tuple[str, str], ...] = (),
) -> Design:
    if drafted is None:
        return Design(name, "", (), _reason(notes))
    picture = _picture(drafted.shape.whole, cloths.cloth, cloths.ground)
    return Design(name, picture, (*more, *_facts(drafted)))


def _reason(notes: Iterable[Note]) -> str:
    first = next(n for n in notes if n.severity is Severity.ERROR)
    return f"{first.code}: {first.what}; {first.help}"


def _facts(drafted: DraftedMotif) -> tuple[tuple[str, str], ...]:
    shape = drafted.shape
    facts = [
        ("folds", str(shape.folds)),
        ("pieces", str(shape.pieces)),
        ("stitching", f"{shape.perimeter:.0f} in at {SPAN} in"),
        ("points", str(shape.tips)),
        ("corners to clip", str(shape.inside_corners)),
    ]
    facts += [(method, f"from {least_size(drafted, method)}") for method in ROOM]
    return tuple(facts)


def least_size(drafted: DraftedMotif, method: str) -> str:
    """Return the smallest width at which a method has room for every neck and slit.

    Necks and slits grow with the motif, what a method needs does not.
    """
    room = ROOM[method]
    turned = Fraction(0) if method == "fusible" else 2 * TURNED
    shape = drafted.shape
    wants = [(turned + room.neck, shape.narrowest_neck)]
    if shape.narrowest_slit is not None:
        wants.append((turned + room.slit, shape.narrowest_slit))
    if min(have for _, have in wants) <= 0:
        return "no size: a place has no width"
    least = max(shape.span * need / Fraction(have) for need, have in wants)
    return inches_text(round_up(least, Fraction(1, 2)))


def _picture(whole: MultiPolygon, cloth: str, ground: str) -> str:
    """Return the opened motif on its ground, as an address that holds it."""
    data = []
    for part in whole.geoms:
        for ring in (part.exterior, *part.interiors):
            points = np.round(np.asarray(ring.coords)[:-1] * 100).astype(int)
            data.append("M" + " ".join(f"{x},{y}" for x, y in points) + "Z")
    half = round(SPAN * 54)
    return web.embedded(
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="-{half} -{half} {2 * half} {2 * half}">'
        f'<rect x="-{half}" y="-{half}" width="{2 * half}" height="{2 * half}" fill="{ground}"/>'
        f'<path fill="{cloth}" fill-rule="evenodd" d="{"".join(data)}"/></svg>'.encode()
    )
