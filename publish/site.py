"""A pattern's page for the studio's own site, and what shops are told of it.

In: a pattern, its listing, the pictures made for shops. Out: file contents by name, below
`site/`: plain HTML and the pictures that it shows; `shop/trade.json`.
Invariant: the page runs nothing and asks for no file but its own pictures; every sentence
and number is the listing's; what shops pay is in `trade.json` alone.
"""

from __future__ import annotations

import io
import json
from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from PIL import Image

from publish import deliver, draw
from publish.deliver import SHOP
from publish.measures import METRE
from publish.model.pattern import Pattern
from publish.typeset.palette import palette
from publish.units import YARD, parse_number
from publish.web import render as rendered
from publish.words import Language
from publish.words.lengths import Lengths
from publish.work import Work

FOLDER = "site/"
PAGE = f"{FOLDER}index.html"
TRADE = f"{SHOP}/trade.json"
BARCODE = f"{SHOP}/barcode.svg"

THUMBNAIL, LARGE = 480, 1600
"""Pixels on the longer side: beside others at twice the dots of a plain screen, and alone."""

Json = dict[str, Any]


def of(work: Work, files: Mapping[str, bytes]) -> dict[str, bytes]:
    """Compute a picture of each size and make the page, where there is a booklet to show.

    `files` are those of the set that are made already.
    """
    if not any(made.job.name == "booklet" for made in work.printed):
        return {}
    assert work.manual is not None
    made = (work.pattern, work.sizes, work.drafts)
    listing = json.loads(files[f"{SHOP}/listing.json"])
    cover = work.manual.cover.figure.size or next(iter(work.sizes))
    said = draw.described(*made, work.plans, work.manual)
    return pages(work.pattern, listing, cover, said, files)


def pages(
    pattern: Pattern, found: Json, size: str, said: Mapping[str, str], made: Mapping[str, bytes]
) -> dict[str, bytes]:
    """Return the page with its pictures, and what the line sheet is made from.

    `found` is the listing, `size` the key of the size that the cover shows, `said` what a
    picture of each size shows, and `made` the shop's pictures by name.
    """
    sizes = {s["key"]: _of_size(s["key"], said, made) for s in found["sizes"]}
    whole = _cover(pattern.words, made, THUMBNAIL)
    main = sizes.get(size) or _cover(pattern.words, made, LARGE)
    inside = [
        _inside(pattern.words, n, made) for n in sorted(made) if n.startswith(f"{SHOP}/page-")
    ]
    shown = [p for p in (main, whole, *sizes.values(), *inside) if p is not None]
    kept = {f"{FOLDER}{p['file']}": made[f"{SHOP}/{p['file']}"] for p in shown}
    page = rendered(
        "site.html",
        **_facts(pattern, found),
        language=pattern.words.tag,
        message=pattern.words.named("site-"),
        colours=palette(pattern),
        main=main,
        sizes=[(s, sizes[s["key"]]) for s in found["sizes"]],
        inside=[p for p in (whole, *inside) if p is not None and p is not main],
        amounts=pattern.prices,
    )
    trade = _trade(pattern, found, main)
    kept |= {PAGE: page.encode(), TRADE: deliver.json_file(trade)}
    if pattern.publication.barcode:
        kept[BARCODE] = draw.barcode_figure(pattern.publication.barcode).svg.encode()
    return kept


def _facts(pattern: Pattern, found: Json) -> Json:
    """Return what the page says, in the listing's words."""
    names = {f.name for f in pattern.fabrics.values()}
    others = [m for m in found["materials"] if m.partition(":")[0] not in names]
    return {
        "found": found,
        "cloth": _cloth(found, pattern.words.lengths),
        "others": others,
        "heading": _heading(pattern.words, found),
        "number": pattern.publication.barcode.rpartition(" ")[2],
        "address": found["contact"] if _is_address(found["contact"]) else "",
    }


def _heading(words: Language, found: Json) -> str:
    """Return what the browser calls the page."""
    if not found["studio"]:
        return words.tell("site-title", title=found["title"])
    return words.tell("site-title-by", title=found["title"], studio=found["studio"])


def _cloth(found: Json, lengths: Lengths) -> list[tuple[str, list[str]]]:
    """Return each fabric with what to buy of it for each size; empty where none is."""
    names = dict.fromkeys(name for bought in found["to_buy"].values() for name in bought)
    return [
        (name, [_amount(lengths, bought.get(name)) for bought in found["to_buy"].values()])
        for name in names
    ]


def _amount(lengths: Lengths, bought: Mapping[str, str | None] | None) -> str:
    if not bought or not bought["yards"]:
        return ""
    yards, metres = parse_number(bought["yards"]) * YARD, Fraction(bought["metres"] or 0) * METRE
    return lengths.to_buy(yards, metres)


def _is_address(text: str) -> bool:
    """Return whether a contact is an e-mail address and nothing else."""
    name, at, host = text.partition("@")
    plain = all(c.isalnum() or c in "._+-" for c in name + host)
    return bool(name and at and "." in host and plain)


def _of_size(key: str, said: Mapping[str, str], made: Mapping[str, bytes]) -> Json | None:
    """Return the picture of a size, where one was computed."""
    name = next(
        (n for n in sorted(made) if n.startswith(f"{SHOP}/{key}-") and n.endswith(".jpg")), None
    )
    return None if name is None else _picture(name, made[name], said[key])


def _cover(words: Language, made: Mapping[str, bytes], side: int) -> Json | None:
    """Return the smallest picture of the front cover with so many pixels, or the largest."""
    names = sorted((n for n in made if n.startswith(f"{SHOP}/cover-")), key=_side)
    if not names:
        return None
    name = next((n for n in names if _side(n) >= side), names[-1])
    return _picture(name, made[name], words.tell("site-front-cover"))


def _inside(words: Language, name: str, made: Mapping[str, bytes]) -> Json:
    number = int(name.split("-")[1])
    return _picture(name, made[name], words.tell("site-page", number=number))


def _side(name: str) -> int:
    return int(name.rpartition("-")[2].removesuffix(".png"))


def _picture(name: str, data: bytes, alt: str) -> Json:
    with Image.open(io.BytesIO(data)) as image:
        width, height = image.size
    return {"file": name.removeprefix(f"{SHOP}/"), "alt": alt, "width": width, "height": height}


def _trade(pattern: Pattern, found: Json, main: Json | None) -> Json:
    """Return what a shop orders by; DEVELOPERS.md documents the shape."""
    kind, _, digits = pattern.publication.barcode.partition(" ")
    return {
        "pattern": pattern.key,
        **{
            k: found[k]
            for k in ("title", "subtitle", "studio", "contact", "stock_number", "edition", "skill")
        },
        "barcode": {"kind": kind, "digits": digits} if digits else None,
        "sizes": [{"title": s["title"], "finished": s["finished"]} for s in found["sizes"]],
        "prices": [
            {
                "currency": p.currency,
                "retail": str(p.retail),
                "wholesale": None if p.wholesale is None else str(p.wholesale),
            }
            for p in pattern.prices
        ],
        "picture": main and {"file": main["file"], "alt": main["alt"]},
        "papers": list(pattern.papers),
    }
