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

Json = Mapping[str, Any]


def kit_manual(manual: Manual, found: Json) -> Manual:
    """Return the sheet as a manual of one section for the bolts and one for each size."""
    each = [f"{counted(s)} of {s['title']}" for s in found["sizes"].values()]
    wanted = " and ".join([", ".join(each[:-1]), each[-1]] if len(each) > 1 else each)
    swatches = FigureBlock(FigureSpec("kits-swatches", "swatches"))
    bolts = Section(
        "kits",
        f"{found['title']}: kits to cut",
        (bolt_table(found), swatches),
        f"To cut from each bolt for {wanted}.",
    )
    sizes = tuple(
        Section(
            f"kits-{key}",
            f"{size['title']}: {counted(size)}",
            (Paragraph(batting(size)), *size_tables(size)),
            new_page=True,
        )
        for key, size in found["sizes"].items()
    )
    foot = f"{manual.running_foot} · kits"
    return replace(manual, sections=(bolts, *sizes), running_foot=foot)


def bolt_table(found: Json) -> Table:
    """Return what all kits together take from each bolt."""
    rows = tuple(Row((b["name"], both(b)), fabric=key) for key, b in found["bolts"].items())
    return Table("kits-bolts", "", ("Fabric", "For all kits"), rows, "lr")


def size_tables(size: Json) -> tuple[Table, ...]:
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
            f"{key}-lengths", "", ("Fabric", "One kit", "All kits", "Usable width"), lengths, "lrrr"
        ),
        Table(
            f"{key}-plan",
            "The plan of one kit",
            ("Fabric", "Strips across the width, in order"),
            strips,
        ),
        Table(
            f"{key}-pieces",
            "Pieces, where they are cut for the maker",
            ("Piece", "Name", "Fabric", "Width × length", "One kit", "All kits"),
            pieces,
            "llllrr",
        ),
    )


def batting(size: Json) -> str:
    """Return what batting each kit of a size has, in words."""
    return f"Batting for each kit: {size['batting']}." if size["batting"] else "No batting."


def both(length: Mapping[str, str]) -> str:
    """Return a length to buy as its makers buy it."""
    return length["words"]


def counted(size: Json) -> str:
    """Return how many kits of a size there are, in words."""
    return f"{size['kits']} {'kit' if size['kits'] == 1 else 'kits'}"
