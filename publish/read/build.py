"""From values that hold to the `Pattern`.

In: the values of a file without faults, and its ledger. Out: `Pattern`.
Invariant: every key has its value as written, its default, or, in a size, the pattern's
own; nothing is computed beyond that. A fabric that depends on other keys stays empty
here and is settled in grading.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace
from fractions import Fraction
from pathlib import Path
from typing import Any

from publish.measures import Measures
from publish.model.cloth import Have, Swatch, fat_cuts
from publish.model.pattern import (
    BackingSpec,
    BattingSpec,
    BindingSpec,
    Block,
    BorderSpec,
    Caution,
    Colourway,
    Fabric,
    Lay,
    Motif,
    OutlinePoint,
    Pattern,
    Photo,
    Piecing,
    PillowSpec,
    Price,
    Publication,
    QuiltingSpec,
    RoundSpec,
    SashingSpec,
    Sewing,
    ShopPictures,
    SizeSpec,
    SoldAs,
    Style,
)
from publish.notes import Acceptance
from publish.read.changes import change_of
from publish.read.cross import size_blocks
from publish.read.defaults import fill, measures_of, turn_under, usual
from publish.read.flat import FlatBlock
from publish.read.ledger import Ledger
from publish.read.schema import PATTERN
from publish.read.schema_blocks import BLOCK, PIECING
from publish.read.schema_cloth import COLOURWAY, FABRIC, HAVE, PRECUT, SWAP, SWATCH
from publish.read.schema_design import BORDER, LAY, MOTIF, ROUND, SASHING
from publish.read.schema_house import CAUTION, PHOTO_SECTION, PICTURES, PRICE, STYLE
from publish.read.schema_publication import PUBLICATION
from publish.read.schema_sewing import BACKING, BATTING, BINDING, QUILTING, SEWING
from publish.read.schema_sizes import PILLOW, SIZE
from publish.read.telling import Telling
from publish.words import Language, language

Values = Mapping[str, Any]


def build_pattern(
    values: Values,
    flat: Mapping[str, FlatBlock],
    key: str,
    folder: Path,
    ledger: Ledger,
    way: Telling,
) -> Pattern:
    """Return the pattern that a file without faults describes, its blocks made flat."""
    top = fill(PATTERN, values, usual(PATTERN, values))
    speak = language(way.chosen, measures_of(values))
    _lend_places(values, ledger)
    return Pattern(
        key=key,
        folder=folder,
        title=top["title"],
        subtitle=top["subtitle"],
        publication=publication(top["publication"] or {}, speak),
        papers=tuple(top["papers"]),
        layout=top["layout"],
        booklets=top["booklets"],
        fabrics={k: _fabric(k, v, values) for k, v in top["fabrics"].items()},
        motifs={k: _motif(k, v, values) for k, v in (top["motifs"] or {}).items()},
        blocks={k: _block(k, v, flat[k], values) for k, v in top["blocks"].items()},
        sizes={k: _size(k, v, values) for k, v in top["sizes"].items()},
        sewing=Sewing(
            **fill(SEWING, top["sewing"] or {}, usual(SEWING, values)),
            measures=speak.measures,
        ),
        language=way.chosen,
        languages=tuple(top["languages"]),
        texts=dict(ledger.texts),
        places=dict(ledger.places),
        colourways={k: _colourway(k, v, values) for k, v in (top["colourways"] or {}).items()},
        style=_style(top["style"] or {}),
        cover=top["cover"],
        scene=top["scene"],
        photos=tuple(_photo(v) for v in top["photos"] or ()),
        shop=_shop((top["shop"] or {}).get("pictures") or {}),
        steps=tuple(map(change_of, top["steps"] or ())),
        accepts=tuple(_acceptance(n, v, ledger) for n, v in enumerate(top["accept"] or ())),
        cautions=tuple(Caution(**fill(CAUTION, v)) for v in top["cautions"] or ()),
        prices=tuple(Price(**fill(PRICE, v)) for v in top["prices"] or ()),
        have=tuple(_have(n, v, values) for n, v in enumerate(top["have"] or ())),
    )


def _fabric(key: str, values: Values, pattern: Values) -> Fabric:
    filled = fill(FABRIC, values, pattern.get("cloth", {}), usual(FABRIC, pattern))
    sold_as = _sold_as(filled["sold_as"], filled["usable_width"], measures_of(pattern))
    own = filled["swatch"]
    swatch = Swatch(**fill(SWATCH, own)) if own is not None else None
    return Fabric(key, **{**filled, "sold_as": sold_as, "swatch": swatch})


def _sold_as(sold: Any, usable_width: Fraction, measures: Measures) -> SoldAs | None:
    """Return what a fabric is sold as; None for yardage."""
    if not isinstance(sold, Mapping):
        return {cut.kind: cut for cut in fat_cuts(measures.metric)}.get(sold)
    packet = fill(PRECUT, sold)
    side = packet["squares"]
    if side is not None:
        return SoldAs("square", side, side, packet["count"])
    return SoldAs("strip", usable_width, packet["strips"], packet["count"])


def _have(item: int, values: Values, pattern: Values) -> Have:
    """Return cloth that is there, sold ready cut or not."""
    filled = fill(HAVE, values)
    key, count = filled["fabric"], filled["count"]
    cloth = pattern.get("cloth", {})
    fabric = fill(FABRIC, pattern["fabrics"][key], cloth, usual(FABRIC, pattern))
    sold = _sold_as(filled["precut"], fabric["usable_width"], measures_of(pattern))
    if sold is None:
        return Have(key, filled["width"], filled["length"], count, item=item)
    return Have(key, sold.width, sold.length, count * sold.packet, sold.kind, item)


def _colourway(key: str, values: Values, pattern: Values) -> Colourway:
    """Return a colourway whose fabrics are the pattern's own in another look."""
    filled = fill(COLOURWAY, values)
    fabrics = {}
    for swap in (fill(SWAP, s) for s in filled["swaps"]):
        own = _fabric(swap["fabric"], pattern["fabrics"][swap["fabric"]], pattern)
        own = replace(own, name=swap["name"], colour=swap["colour"], swatch=None)
        fabrics[swap["fabric"]] = own
    return Colourway(key, filled["title"], fabrics)


def _style(values: Values) -> Style:
    filled = fill(STYLE, values)
    return Style(filled["accent"], filled["logo"], dict(filled["fonts"] or {}))


def _photo(values: Values) -> Photo:
    filled = fill(PHOTO_SECTION, values)
    return Photo(filled["file"], filled["caption"], filled["place"], filled["alt"] or "")


def _shop(values: Values) -> ShopPictures:
    filled = fill(PICTURES, values)
    scale = filled.pop("scale") or ""
    return ShopPictures(**{n: tuple(found or ()) for n, found in filled.items()}, scale=scale)


def _acceptance(number: int, values: Values, ledger: Ledger) -> Acceptance:
    place = ledger.place("accept", number, "code")
    return Acceptance(values["code"], values["reason"], place, values.get("at", ""))


def publication(values: Values, speak: Language) -> Publication:
    """Return who publishes a pattern or a book, in the language that it is told in."""
    filled = fill(PUBLICATION, values)
    blank = {"year": filled["year"] or 0, "barcode": filled["barcode"] or ""}
    blank["edition"] = filled["edition"] or speak.text("edition-first")
    return Publication(**{**filled, **blank})


def _motif(key: str, values: Values, pattern: Values) -> Motif:
    filled = fill(MOTIF, values)
    if filled["turn_under"] is None:
        raw = filled["method"] == "fusible"
        filled["turn_under"] = Fraction(0) if raw else turn_under(pattern)
    if filled["lay"] is not None:
        filled["lay"] = Lay(**fill(LAY, filled["lay"]))
    points = [OutlinePoint(p[0], p[1], len(p) > 2) for p in filled["outline"] or ()]
    return Motif(key=key, **{**filled, "outline": tuple(points)})


def _block(key: str, values: Values, flat: FlatBlock, pattern: Values) -> Block:
    filled = fill(BLOCK, values)
    return Block(
        key,
        flat.columns,
        flat.rows,
        flat.patches,
        filled["motif"],
        filled["traditional"] or "",
        flat.foundations,
        Piecing(**fill(PIECING, filled["piecing"] or {}, pattern.get("piecing", {}))),
    )


def _size(key: str, values: Values, pattern: Values) -> SizeSpec:
    filled = fill(SIZE, values)
    pillow = filled["finish"] == "pillow"
    return SizeSpec(
        key=key,
        title=filled["title"] or key.replace("_", " ").replace("-", " ").capitalize(),
        finish=filled["finish"],
        columns=filled["columns"],
        rows=filled["rows"],
        blocks=tuple(size_blocks(values, pattern)),
        block_size=filled["block_size"],
        motif_size=filled["motif_size"],
        borders=tuple(BorderSpec(**fill(BORDER, b)) for b in filled["borders"]),
        pillow=PillowSpec(**_cloth(fill(PILLOW, filled["pillow"], usual(PILLOW, pattern))))
        if pillow
        else None,
        backing=BackingSpec(**_cloth(_layered(BACKING, values, pattern))),
        batting=BattingSpec(**_layered(BATTING, values, pattern)),
        binding=BindingSpec(**_cloth(_layered(BINDING, values, pattern))),
        quilting=_quilting(values, pattern),
        sleeve=filled["sleeve"],
        setting=filled["setting"],
        turns=tuple(filled["turns"]),
        alternate=tuple(_list(filled["alternate"] or ())),
        alternate_turns=tuple(filled["alternate_turns"]),
        sashing=SashingSpec(**fill(SASHING, filled["sashing"])) if filled["sashing"] else None,
        setting_fabric=filled["setting_fabric"] or "",
        rounds=tuple(map(_round, filled["rounds"] or ())),
    )


def _round(values: Values) -> RoundSpec:
    filled = fill(ROUND, values)
    return RoundSpec(
        border=BorderSpec(**fill(BORDER, filled["border"])) if filled["border"] else None,
        blocks=tuple(_list(filled["blocks"] or ())),
        block_size=filled["block_size"],
        turns=tuple(filled["turns"]),
    )


def _list(written: str | Iterable[str]) -> Iterable[str]:
    """Return one block or several as several."""
    return [written] if isinstance(written, str) else written


def _layered(section: Any, size: Values, pattern: Values) -> dict[str, Any]:
    """Return a section's values: the size's, or else the pattern's, or else the default."""
    shared = pattern.get(section.name, {})
    return fill(section, size.get(section.name, {}), shared, usual(section, pattern))


def _cloth(filled: dict[str, Any]) -> dict[str, Any]:
    """Return the values with an empty fabric where none is written."""
    return {**filled, "fabric": filled["fabric"] or ""}


def _quilting(size: Values, pattern: Values) -> tuple[QuiltingSpec, ...]:
    items = size.get("quilting") or fill(PATTERN, pattern)["quilting"] or ()
    return tuple(QuiltingSpec(**fill(QUILTING, item)) for item in items)


def _lend_places(values: Values, ledger: Ledger) -> None:
    """Let what a size takes from the pattern, and a fabric from the cloth, be found under
    its own path too."""
    names = ("backing", "batting", "binding", "quilting")
    own = [path for path in ledger.places if path.split(".")[0] in names]
    for key, size in values["sizes"].items():
        for path in own:
            parts = tuple(path.split("."))
            if parts[0] != "quilting" or "quilting" not in size:
                ledger.lend(("sizes", key, *parts), parts)
    for key in values["fabrics"]:
        for name in values.get("cloth", {}):
            ledger.lend(("fabrics", key, name), ("cloth", name))
