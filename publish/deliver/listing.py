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
from publish.model.figure import COMPUTED, Picture
from publish.model.pattern import Pattern
from publish.model.words import FigureSpec, Manual, Steps, Table

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
        "included": included(manual, editions),
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
    colours = f", in the colours of {way}" if way else ""
    return f"{pattern.title}, {title}, {finished}{colours}, {shown.where}. {COMPUTED}"


def listing_text(manual: Manual, found: Mapping[str, Any]) -> str:
    """Return a listing as Markdown, with the booklet's own tables of materials."""
    lines = [f"# {found['title']}", ""]
    lines += [f"*{found['subtitle']}*", ""] if found["subtitle"] else []
    for paragraph in found["summary"]:
        lines += [paragraph, ""]
    facts = [
        ("Designer", "studio"),
        ("Skill", "skill"),
        ("Stock number", "stock_number"),
        ("Edition", "edition"),
    ]
    lines += bullets([f"{name}: {found[key]}" for name, key in facts if found[key]])
    lines += ["## Sizes", ""]
    lines += bullets([f"**{s['title']}**: {s['finished']}" for s in found["sizes"]])
    lines += ["## What is included", "", *bullets(found["included"]), "## Materials", ""]
    for table in _materials(manual):
        lines += table_of(table)
    if found["pictures"]:
        lines += ["## Pictures", ""]
        lines += bullets([f"`{p['file']}`: {p['alt']}" for p in found["pictures"]])
    for title, key in (("Licence", "licence"), ("Contact", "contact")):
        lines += [f"## {title}", "", found[key], ""] if found[key] else []
    return text_of(lines)


def included(manual: Manual, editions: Sequence[Edition]) -> list[str]:
    """Return what a buyer gets, counted in the editions and the manual."""
    found = []
    for edition in editions:
        if edition.name.startswith("press"):  # for a print shop, and not sold to makers
            continue
        pages, sheets = page_count(edition), len(edition.sheet_pages)
        kind = edition.name.removesuffix(f"-{edition.paper.key}").replace("-", " ")
        words = f"{_capital(kind)}, {_counted(pages, 'page')}, for {edition.paper.name}"
        if sheets and sheets < pages:
            words += f", with {_counted(sheets, 'full-size template sheet')}"
        found.append(words)
    steps = sum(len(b.items) for s in manual.sections for b in s.blocks if isinstance(b, Steps))
    figures = [f for f in manual.figures() if f.kind != "barcode"]
    if steps:
        found.append(f"{_counted(steps, 'numbered step')}, {_counted(len(figures), 'drawing')}")
    for kind, one in (("cutting-layout", "cutting layout"), ("colouring", "colouring page")):
        count = _of_kind(figures, kind)
        found += [_counted(count, one)] if count else []
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


def _counted(count: int, one: str) -> str:
    return f"{count} {one}" if count == 1 else f"{count} {one}s"


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
