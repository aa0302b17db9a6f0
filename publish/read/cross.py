"""What must agree between keys that stand far apart in the file.

In: the values that hold, and the ledger. Out: notes in the ledger.
Invariant: only comparisons of what is written; nothing is computed that a later stage
computes. A part that is missing or faulty already is passed over here.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from fractions import Fraction
from typing import Any

from publish.measures import Measures
from publish.notes import Place, Severity
from publish.read.changes import check_changes
from publish.read.characters import shown
from publish.read.defaults import fill, measures_of, usual
from publish.read.defaults import turn_under as usual_turn
from publish.read.forms import key_of, listed, nearest
from publish.read.ledger import Ledger
from publish.read.prices import check_prices
from publish.read.schema_sewing import SEWING

Values = Mapping[str, Any]

_HIDING = ("R107", "R108", "R109", "R110", "R112", "R113", "R114", "R128", "R130")
"""Faults that may hide a use, so that nothing is said of what seems unused."""


def check_agreement(values: Values, ledger: Ledger) -> None:
    """Note every disagreement between the parts of one file."""
    _references(ledger)
    for key, motif in _entries(values, "motifs"):
        _motif(f"motifs.{key}", motif, values, ledger)
    for key, block in _entries(values, "blocks"):
        _ground(f"blocks.{key}.ground.rows", block, ledger)
    for key, way in _entries(values, "colourways"):
        _swaps(f"colourways.{key}.swaps", way.get("swaps", []), ledger)
        _names(f"colourways.{key}.swaps", way.get("swaps", []), values, ledger)
    for key, size in _entries(values, "sizes"):
        _motif_size(f"sizes.{key}", size, values, ledger)
    _cover(values, ledger)
    check_changes(values, ledger)
    check_prices(values, ledger)
    _unused(values, ledger)


def _cover(values: Values, ledger: Ledger) -> None:
    """Check that a cover that is to show a photograph has one."""
    photos = values.get("photos") or ()
    if values.get("cover") != "photo" or any(p.get("place") == "cover" for p in photos):
        return
    ledger.note(
        "R148",
        ledger.places["cover"],
        "the cover is to show a photograph, and none is given for it",
        expected="a photo with `place: cover` in `photos`",
        received="none",
        help="add `photos: [{file: throw.jpg, place: cover}]`, or write `cover: rendered`",
    )


def _entries(values: Values, section: str) -> Iterable[tuple[str, Values]]:
    named: Mapping[str, Values] = values.get(section, {})
    return named.items()


def _references(ledger: Ledger) -> None:
    """Note each name that nothing defines; a section that could not be read defines all."""
    for use in ledger.uses:
        section, noun = use.ref.section, use.ref.noun
        defined = ledger.defined.get(section)
        if defined is None and section in ledger.places:
            continue
        if any(use.key in (name, key_of(name)) for name in defined or ()):
            continue  # a name that is not well formed has a finding of its own
        near = nearest(use.key, defined or ())
        if near:
            help_ = f"write `{near}`"
        elif defined:
            known = listed(shown(name) for name in defined[:12])
            help_ = f"the {section} are {known}; or add `{shown(use.key)}` to `{section}`"
        else:
            help_ = f"add a section `{section}` that holds `{shown(use.key)}`"
        ledger.note(
            "R130",
            use.place,
            f"there is no {noun} `{shown(use.key)}`",
            expected=f"a key of `{section}`",
            received=use.key,
            help=help_,
        )


def _motif(path: str, motif: Values, values: Values, ledger: Ledger) -> None:
    """Check a motif's turn-under against its method and the margin of its cloth."""
    turn_under, measures = motif.get("turn_under"), measures_of(values)
    fusible = motif.get("method") == "fusible"
    if fusible and turn_under:
        ledger.note(
            "R145",
            ledger.places[f"{path}.turn_under"],
            "a fusible motif has raw edges and no turn-under",
            expected="no `turn_under`, or 0 in",
            received=measures.text(turn_under),
            help="remove `turn_under`, or choose another `method`",
        )
    elif not fusible and "motif_margin" in values.get("sewing", {}):
        margin = values["sewing"]["motif_margin"]
        turn_under = usual_turn(values) if turn_under is None else turn_under
        enough = fill(SEWING, usual(SEWING, values))["motif_margin"]
        if margin < 2 * turn_under:
            ledger.note(
                "R146",
                ledger.places["sewing.motif_margin"],
                "the motif's cloth has no room for its turn-under",
                expected=f"at least twice the turn-under, {measures.text(2 * turn_under)}",
                received=measures.text(margin),
                help=f"write `{measures.text(enough)}`, or remove the key",
            )
    if "element" in motif and "outline" in motif:
        _no_effect(ledger, ledger.places[f"{path}.element"], "element", "an `outline`")


def _no_effect(ledger: Ledger, place: Place, key: str, beside: str) -> None:
    ledger.note(
        "R143",
        place,
        f"`{key}` has no effect with {beside}",
        expected=f"no `{key}`",
        received=f"`{key}`",
        help=f"remove `{key}`",
        severity=Severity.WARNING,
    )


def _ground(path: str, block: Values, ledger: Ledger) -> None:
    """Note the rows of a pieced ground that are not as long as its first."""
    ground = block.get("ground")
    rows: list[list[str]] = ground.get("rows", []) if isinstance(ground, Mapping) else []
    for number, row in enumerate(rows):
        if len(row) != len(rows[0]):
            ledger.note(
                "R141",
                ledger.places[f"{path}.{number}"],
                f"row {number + 1} is not as long as the first",
                expected=f"{len(rows[0])} patches",
                received=str(len(row)),
                help="give every row of the ground as many patches",
            )


def _swaps(path: str, swaps: list[Values], ledger: Ledger) -> None:
    """Note each fabric that one colourway swaps twice."""
    seen: set[str] = set()
    for number, swap in enumerate(swaps):
        fabric = swap.get("fabric")
        if fabric in seen:
            ledger.note(
                "R147",
                ledger.places[f"{path}.{number}"],
                f"the colourway swaps `{fabric}` twice",
                expected="one swap for each fabric",
                received=str(fabric),
                help="remove one of the two",
            )
        seen |= {fabric} if fabric else set()


def _names(path: str, swaps: list[Values], values: Values, ledger: Ledger) -> None:
    """Note each fabric of a colourway that takes the name of another one in it."""
    called = {key: fabric.get("name") for key, fabric in _entries(values, "fabrics")}
    for number, swap in enumerate(swaps):
        key = swap.get("fabric", "")
        called[key] = swap.get("name") or called.get(key)
        others = [k for k, name in called.items() if k != key and name == called[key]]
        later = {s.get("fabric") for s in swaps[number + 1 :] if s.get("name")}
        if called[key] and any(k not in later for k in others):
            ledger.note(
                "R149",
                ledger.places[f"{path}.{number}"],
                f"two fabrics of the colourway are called `{called[key]}`",
                expected="a name of its own for each fabric",
                received=str(called[key]),
                help="rename one of the two: a maker buys them by these names",
            )


def size_blocks(size: Values, values: Values) -> list[str]:
    """Return the keys of a size's blocks, as written or by default."""
    written = size.get("block")
    if isinstance(written, str):
        return [written]
    return list(written or list(values.get("blocks", {}))[:1])


def size_keys(size: Values, values: Values) -> list[str]:
    """Return the keys of the blocks that a size sets, those of `alternate` included."""
    between = size.get("alternate", [])
    return [*size_blocks(size, values), *([between] if isinstance(between, str) else between)]


def _motif_size(path: str, size: Values, values: Values, ledger: Ledger) -> None:
    """Check that a size says how large its motif is, and that its block holds it."""
    blocks = [values.get("blocks", {}).get(key) for key in size_keys(size, values)]
    if any(f"{path}.{key}" in ledger.places and key not in size for key in ("block", "alternate")):
        return
    measures = measures_of(values)
    motifs = [b["motif"] for b in blocks if b and b.get("motif")]
    place = ledger.places.get(f"{path}.motif_size")
    if motifs and (place is None or ("motif_size" in size and size["motif_size"] is None)):
        ledger.note(
            "R111",
            place or ledger.places[path],
            f"`{path.split('.')[1]}` lacks `motif_size`",
            expected="the finished width of the motif that its block has",
            received="nothing",
            help=f"add `motif_size: {_smaller(size.get('block_size'), measures)}`",
        )
    if place and size.get("motif_size") and not motifs and all(blocks):
        _no_effect(ledger, place, "motif_size", "blocks that have no motif")
    motif_size, block_size = size.get("motif_size"), size.get("block_size")
    if place and motif_size and block_size and motif_size > block_size:
        ledger.note(
            "R142",
            place,
            "the motif is larger than its block",
            expected=f"at most {measures.text(block_size)}",
            received=measures.text(motif_size),
            help=f"write `{_smaller(block_size, measures)}` or less, or a larger `block_size`",
        )


def _smaller(block_size: Any, measures: Measures) -> str:
    """Return a motif size that suits a block: smaller by 1 in or 2.5 cm on each side."""
    rim = 2 * measures.usual(Fraction(1))
    if block_size and block_size > 2 * rim:
        return measures.text(block_size - rim)
    return measures.text(measures.usual(Fraction(14)))


def _unused(values: Values, ledger: Ledger) -> None:
    """Warn of each fabric, motif and block that nothing uses."""
    if any(note.code in _HIDING for note in ledger.notes):
        return
    used = {(use.ref.section, use.key) for use in ledger.uses}
    sizes = values.get("sizes", {})
    for key in [k for k in sizes if f"sizes.{k}.block" not in ledger.places]:
        used |= {("blocks", block) for block in size_blocks(sizes[key], values)}
    for section, noun in (("fabrics", "fabric"), ("motifs", "motif"), ("blocks", "block")):
        for key in ledger.defined.get(section, ()):
            place = ledger.places.get(f"{section}.{shown(key)}")
            if place and (section, key) not in used and sizes:
                ledger.note(
                    "R144",
                    place,
                    f"the {noun} `{shown(key)}` is never used",
                    expected=f"a {noun} that something uses",
                    received="no use",
                    help=f"use it, or remove it from `{section}`",
                    severity=Severity.WARNING,
                )
