"""The kit sheet in tables, for a page of text and for pages to print.

In: what `kits` found. Out: the manual's kinds of blocks, and a manual made of them.
Invariant: nothing is computed here; the printed sheet and the Markdown hold the same
tables.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from publish.model.words import FigureBlock, FigureSpec, Manual, Paragraph, Row, Section, Table
from publish.words import Language

Json = Mapping[str, Any]


def kit_manual(words: Language, manual: Manual, found: Json) -> Manual:
    """Return the sheet as a manual of one section for the bolts and one for each size."""
    tell = words.tell
    each = [
        tell("kit-of-size", kits=counted(words, s), size=s["title"])
        for s in found["sizes"].values()
    ]
    wanted = words.listed(each)
    swatches = FigureBlock(FigureSpec("kits-swatches", "swatches"))
    bolts = Section(
        "kits",
        tell("kit-title", title=found["title"]),
        (bolt_table(words, found), swatches),
        tell("kit-lead", wanted=wanted),
    )
    sizes = tuple(
        Section(
            f"kits-{key}",
            f"{size['title']}: {counted(words, size)}",
            (Paragraph(batting(words, size)), *size_tables(words, size)),
            new_page=True,
        )
        for key, size in found["sizes"].items()
    )
    foot = tell("kit-foot", foot=manual.running_foot)
    return replace(manual, sections=(bolts, *sizes), running_foot=foot)


def bolt_table(words: Language, found: Json) -> Table:
    """Return what all kits together take from each bolt."""
    rows = tuple(Row((b["name"], both(b)), fabric=key) for key, b in found["bolts"].items())
    return Table("kits-bolts", "", _head(words, "fabric", "for-all"), rows, "lr")


def size_tables(words: Language, size: Json) -> tuple[Table, ...]:
    """Return the lengths, the plan of one kit and the pieces of one size."""
    fabrics = size["fabrics"]
    lengths = tuple(
        Row(
            (f["name"], both(f["one_kit"]), both(f["all_kits"]), f["usable_width"]),
            fabric=key,
        )
        for key, f in fabrics.items()
    )
    strips = tuple(
        Row((f["name"], "; ".join(f["strips"])), fabric=key) for key, f in fabrics.items()
    )
    pieces = tuple(
        Row((p["letter"], p["name"], p["fabric"], p["size"], str(p["one_kit"]), str(p["all_kits"])))
        for p in size["pieces"]
    )
    key = f"kits-{size['title']}".lower().replace(" ", "-")
    return (
        Table(
            f"{key}-lengths",
            "",
            _head(words, "fabric", "one", "all", "usable-width"),
            lengths,
            "lrrr",
        ),
        Table(
            f"{key}-plan",
            words.tell("kit-plan"),
            _head(words, "fabric", "strips"),
            strips,
        ),
        Table(
            f"{key}-pieces",
            words.tell("kit-pieces"),
            _head(words, "piece", "name", "fabric", "width-length", "one", "all"),
            pieces,
            "llllrr",
        ),
    )


def _head(words: Language, *columns: str) -> tuple[str, ...]:
    """Return the heads of columns."""
    return tuple(words.tell(f"kit-column-{name}") for name in columns)


def batting(words: Language, size: Json) -> str:
    """Return what batting each kit of a size has, in words."""
    if not size["batting"]:
        return words.tell("kit-no-batting")
    return words.tell("kit-batting", batting=size["batting"])


def both(length: Mapping[str, str]) -> str:
    """Return a length to buy as its makers buy it."""
    return length["words"]


def counted(words: Language, size: Json) -> str:
    """Return how many kits of a size there are, in words."""
    return words.tell("kit-count", count=int(size["kits"]))
