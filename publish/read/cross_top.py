"""What must agree between blocks and the tops that they are set in.

In: the values that hold, the blocks made flat, and the ledger. Out: notes in the ledger.
Invariant: as in `cross`: comparisons of what is written, and nothing that is faulty
already.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from publish.notes import Place, Severity
from publish.read.cross import size_keys
from publish.read.flat import FlatBlock
from publish.read.ledger import Ledger
from publish.read.nesting import stretched_note

Values = Mapping[str, Any]
Flat = Mapping[str, FlatBlock | None]


def check_tops(values: Values, flat: Flat, ledger: Ledger) -> None:
    """Note what blocks and sizes make of each other."""
    blocks: Mapping[str, Values] = values.get("blocks", {})
    motifs = {key for key, block in blocks.items() if block.get("motif")}
    for key, block in blocks.items():
        for number, item in enumerate(block.get("patches", ())):
            if item.get("block") in motifs:
                place = ledger.place("blocks", key, "patches", number, "block")
                _motif(item["block"], "within another block", place, ledger)
    used: set[str] = set()
    for key, size in values.get("sizes", {}).items():
        used |= set(size_keys(size, values))
        _outer(key, size, ledger)
        for number, inner in _round_blocks(size):
            used.add(inner)
            if inner in motifs:
                place = ledger.place("sizes", key, "rounds", number, "blocks")
                _motif(inner, "in a round", place, ledger)
    for key in used:
        whole = flat.get(key)
        if whole is not None and whole.curved and whole.columns != whole.rows:
            place = ledger.place("blocks", key, "grid")
            stretched_note(ledger, place, f"{whole.columns} columns and {whole.rows} rows")


def _round_blocks(size: Values) -> Iterator[tuple[int, str]]:
    """Yield the number of each round of blocks with each of its blocks."""
    for number, around in enumerate(size.get("rounds", ())):
        blocks = around.get("blocks", ())
        for key in [blocks] if isinstance(blocks, str) else blocks:
            yield number, key


def _motif(block: str, where: str, place: Place, ledger: Ledger) -> None:
    ledger.note(
        "R165",
        place,
        f"the block `{block}` has a motif and stands {where}",
        expected="a block without a motif",
        received=block,
        help="name a block that is the same without `motif`; motifs lie on the blocks of `block`",
    )


def _outer(key: str, size: Values, ledger: Ledger) -> None:
    """Say that sashing goes round every block on point, whatever `outer` says."""
    sashing = size.get("sashing", {})
    if size.get("setting") == "on point" and sashing.get("outer") is False:
        ledger.note(
            "R143",
            ledger.place("sizes", key, "sashing", "outer"),
            "`outer: no` has no effect on point",
            expected="no `outer`, or `outer: yes`",
            received="no",
            help="remove `outer`; on point strips go round every block",
            severity=Severity.WARNING,
        )
