"""What a shop's page says of a pattern: title, sizes, materials, what is in it.

In: pattern, manual, editions. Out: plain data, and the same as Markdown.
Invariant: every sentence and number is the manual's or is counted in what is delivered.
"""

from __future__ import annotations

import io
from collections.abc import Mapping, Sequence
from typing import Any

import pikepdf

from publish.deliver.markdown import bullets, table_of, text_of
from publish.model.book import Edition
from publish.model.figure import Picture
from publish.model.pattern import Pattern
from publish.model.words import FigureSpec, Manual, Steps, Table
from publish.words import Language

Json = dict[str, Any]
MATERIALS = "materials"
"""Key of the manual's section on what to buy."""


def listing(
    pattern: Pattern,
    manual: Manual,
    numbers: Json,
    editions: Sequence[Edition],
    shown: Mapping[str, Picture],
) -> Json:
    """Return everything that a shop's page says; empty texts stay empty.

    `shown` are the computed pictures that stand beside it, by their names.
    """
    out, back = pattern.publication, manual.back
    sizes = numbers["sizes"]
    return {
        "title": manual.cover.title,
        "subtitle": manual.cover.subtitle,
        "studio": out.studio,
        "stock_number": back.stock_number,
        "edition": back.edition,
        "skill": manual.cover.skill,
        "summary": [p.strip() for p in back.blurb.split("\n\n") if p.strip()],
        "sizes": [
            {"key": key, "title": title, "finished": words, "inches": sizes[key]["finished"]}
            for key, (title, words) in zip(sizes, back.sizes, strict=True)
        ],
        "materials": list(back.materials),
        "to_buy": {
            key: {
                pattern.fabrics[f].name: {"yards": plan["buy_yards"], "metres": plan["buy_metres"]}
                for f, plan in size["fabrics"].items()
            }
            for key, size in sizes.items()
        },
        "included": included(pattern.words, manual, editions),
        "pictures": _pictures(pattern, manual, list(sizes), shown),
        "licence": back.licence,
        "contact": back.contact,
    }


def file_name(name: str, shown: Picture) -> str:
    """Return what a shop's computed picture is called: `throw-1600.jpg`."""
    return f"{name}-{shown.width}.jpg"


def _pictures(
    pattern: Pattern, manual: Manual, keys: Sequence[str], shown: Mapping[str, Picture]
) -> list[Json]:
    return [
        {"file": file_name(name, each), "alt": _alt(pattern, manual, keys, each)}
        for name, each in shown.items()
    ]


def _alt(pattern: Pattern, manual: Manual, keys: Sequence[str], shown: Picture) -> str:
    """Return what a computed picture shows, for a reader who cannot see it."""
    title, finished = dict(zip(keys, manual.back.sizes, strict=True))[shown.size]
    way = pattern.colourways[shown.colourway].title if shown.colourway else ""
    tell = pattern.words.tell
    return tell(
        "shop-picture-of-colourway" if way else "shop-picture",
        title=pattern.title,
        size=title,
        finished=finished,
        colourway=way,
        where=tell(shown.where),
        computed=tell("figure-computed"),
    )


def listing_text(words: Language, manual: Manual, found: Mapping[str, Any]) -> str:
    """Return a listing as Markdown, with the booklet's own tables of materials."""
    lines = [f"# {found['title']}", ""]
    lines += [f"*{found['subtitle']}*", ""] if found["subtitle"] else []
    for paragraph in found["summary"]:
        lines += [paragraph, ""]
    tell = words.tell
    facts = [
        tell(f"shop-fact-{key.replace('_', '-')}", value=found[key])
        for key in ("studio", "skill", "stock_number", "edition")
        if found[key]
    ]
    lines += bullets(facts)
    lines += [f"## {tell('shop-sizes')}", ""]
    lines += bullets([f"**{s['title']}**: {s['finished']}" for s in found["sizes"]])
    lines += [f"## {tell('shop-included')}", "", *bullets(found["included"])]
    lines += [f"## {tell('shop-materials')}", ""]
    for table in _materials(manual):
        lines += table_of(table)
    if found["pictures"]:
        lines += [f"## {tell('shop-pictures')}", ""]
        lines += bullets([f"`{p['file']}`: {p['alt']}" for p in found["pictures"]])
    for key in ("licence", "contact"):
        lines += [f"## {tell(f'shop-{key}')}", "", found[key], ""] if found[key] else []
    return text_of(lines)


def included(words: Language, manual: Manual, editions: Sequence[Edition]) -> list[str]:
    """Return what a buyer gets, counted in the editions and the manual."""
    found = []
    for edition in editions:
        if edition.name.startswith("press"):  # for a print shop, and not sold to makers
            continue
        pages, sheets = page_count(edition), len(edition.sheet_pages)
        line = words.tell(
            f"shop-edition-{edition.kind}{'-of-size' if edition.size else ''}",
            size=edition.size,
            pages=words.tell("shop-pages", count=pages),
            paper=edition.paper.name,
        )
        if sheets and sheets < pages:
            line = words.tell("shop-with-sheets", edition=line, count=sheets)
        found.append(line)
    steps = sum(len(b.items) for s in manual.sections for b in s.blocks if isinstance(b, Steps))
    figures = [f for f in manual.figures() if f.kind != "barcode"]
    if steps:
        drawings = words.tell("shop-drawings", count=len(figures))
        found.append(words.tell("shop-steps", count=steps, drawings=drawings))
    for kind in ("cutting-layout", "colouring"):
        count = _of_kind(figures, kind)
        found += [words.tell(f"shop-{kind}", count=count)] if count else []
    return found


def page_count(edition: Edition) -> int:
    """Return how many pages an edition has."""
    with pikepdf.open(io.BytesIO(edition.pdf)) as book:
        return len(book.pages)


def _materials(manual: Manual) -> list[Table]:
    blocks = (b for s in manual.sections if s.key == MATERIALS for b in s.blocks)
    return [b for b in blocks if isinstance(b, Table)]


def _of_kind(figures: Sequence[FigureSpec], kind: str) -> int:
    return sum(f.kind == kind for f in figures)
