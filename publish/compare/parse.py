"""From `numbers.json` and `edition.json` to an `Edition`.

In: the two as they were read from JSON. Out: `Edition`.
Invariant: everything is read and checked here, so that comparing cannot fail later; what
does not hold raises ValueError with its place in the data.
"""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Mapping
from fractions import Fraction
from typing import Any, TypeVar

import numpy as np
import shapely
from shapely.errors import ShapelyError
from shapely.geometry.base import BaseGeometry

from publish.compare.model import (
    Border,
    Cloth,
    Edition,
    Looks,
    Piece,
    Prose,
    SizeEdition,
    Step,
    Template,
)
from publish.compare.record import FORM
from publish.surd import Exact, exact
from publish.units import INCH_IN_MM, parse_number

_SURD = re.compile(r"(?:(?P<a>-?\d+(?:/\d+)?) (?P<sign>[+-]) )?(?P<b>-?[\d/]*)√2")
_METRE = 1000 / INCH_IN_MM

Json = Mapping[str, Any]
_T = TypeVar("_T")


def edition(source: str, numbers: Any, record: Any) -> Edition:
    """Return an edition; ValueError says what in the data cannot be understood."""
    if not isinstance(numbers, dict) or not isinstance(record, dict):
        raise ValueError("it is not a set of keys")
    if record.get("form") != FORM:
        raise ValueError(f"its form is {record.get('form')!r}, and {FORM} is read here")
    try:
        return _edition(source, numbers, record)
    except (KeyError, IndexError) as problem:
        raise ValueError(f"{problem.args[0]!r} is missing") from problem
    except (TypeError, AttributeError, ShapelyError) as problem:
        raise ValueError(str(problem)) from problem


def _edition(source: str, numbers: Json, record: Json) -> Edition:
    sections = record["sections"]
    return Edition(
        source=source,
        **{
            name: _text(record[name])
            for name in ("pattern", "title", "edition", "studio", "contact", "licence", "skill")
        },
        seam=parse_number(numbers["seam"]),
        fabrics=_looks(record["fabrics"]),
        colourways={_text(way): _looks(held) for way, held in record["colourways"].items()},
        tools=_texts(record["tools"]),
        cautions={_text(b["title"]): " ".join(_texts(b["items"])) for b in record["cautions"]},
        steps=tuple(_step(step, s) for s in sections for step in s["steps"]),
        prose=tuple(
            Prose(_text(s["title"]), _text(text), _texts(s["sizes"]))
            for s in sections
            for text in s["prose"]
        ),
        sizes={
            key: _size(key, size, record["materials"][key], record["templates"][key])
            for key, size in numbers["sizes"].items()
        },
    )


def _text(value: Any) -> str:
    if not isinstance(value, str):
        raise ValueError(f"{value!r} is not text")
    return value


def _texts(values: Any) -> tuple[str, ...]:
    return tuple(map(_text, values))


def _whole(value: Any) -> int:
    if not isinstance(value, int):
        raise ValueError(f"{value!r} is not a whole number")
    return value


def exact_of(text: str) -> Exact:
    """Return inches as `numbers.json` writes them: `2 1/2`, or `3 + 4√2`."""
    if "√" not in text:
        return parse_number(text)
    match = _SURD.fullmatch(text)
    if match is None:
        raise ValueError(f"{text!r} is not a length")
    times = match["b"] + ("1" if match["b"] in ("", "-") else "")
    sign = -1 if match["sign"] == "-" else 1
    return exact(Fraction(match["a"] or 0), sign * Fraction(times))


def _looks(held: Json) -> dict[str, Looks]:
    return {key: Looks(_text(f["name"]), _text(f["colour"])) for key, f in held.items()}


def _step(step: Json, section: Json) -> Step:
    parts = [
        ("", _text(step["text"])),
        ("When it is right: ", _text(step["right"])),
        ("Tip: ", _text(step["tip"])),
    ]
    said = " ".join(lead + text for lead, text in parts if text)
    return Step(
        _text(step["key"]),
        _text(section["key"]),
        _text(section["title"]),
        _whole(step["number"]),
        said,
        _text(step["caution"]),
        _texts(step["sizes"]),
    )


def _size(key: str, size: Json, materials: Json, templates: Any) -> SizeEdition:
    blocks = size["blocks"]
    return SizeEdition(
        key=key,
        title=_text(size["title"]),
        finish=_text(size["finish"]),
        finished=(exact_of(size["finished"]["width"]), exact_of(size["finished"]["height"])),
        block_side=parse_number(blocks["side"]),
        grid=(_whole(blocks["columns"]), _whole(blocks["rows"])),
        arrangement=_arrangement(blocks["arrangement"]),
        turns={
            what: tuple(tuple(map(_whole, row)) for row in size["setting"][name])
            for what, name in (("blocks", "turns"), ("blocks between", "alternate_turns"))
        },
        makeup={_text(u["name"]): u["recipe"] or "" for u in size["units"]},
        motif_span=_maybe(parse_number, size["motif_span"]),
        borders=tuple(
            Border(parse_number(b["width"]), _text(b["fabric"]), _text(b["corners"]))
            for b in size["borders"]
        ),
        pieces=tuple(map(_piece, size["pieces"])),
        fabrics={k: _cloth(f, materials["fabric"].get(k, "")) for k, f in size["fabrics"].items()},
        backing=_maybe(_lengths("width", "height"), size["backing"]),
        batting=_maybe(_lengths("width", "height"), size["batting"]),
        binding=_maybe(_lengths("length"), size["binding"]),
        pillow=_maybe(_lengths("form"), size["pillow"]),
        quilting=tuple(
            (_text(q["area"]), _text(q["style"]), q["spacing"] or "") for q in size["quilting"]
        ),
        other={k: _text(v) for k, v in materials["other-materials"].items()},
        thread={k: _text(v) for k, v in materials["thread"].items()},
        templates=tuple(map(_template, templates)),
    )


def _arrangement(rows: Any) -> tuple[tuple[int, ...], ...]:
    numbers: dict[str, int] = {}
    return tuple(tuple(numbers.setdefault(key, len(numbers)) for key in row) for row in rows)


def _maybe(read: Callable[[Any], _T], value: Any) -> _T | None:
    return None if value is None else read(value)


def _lengths(*names: str) -> Callable[[Json], dict[str, Any]]:
    """Return a reader of a part whose named values are lengths."""

    def read(part: Json) -> dict[str, Any]:
        return {**part, **{name: parse_number(part[name]) for name in names}}

    return read


def _piece(piece: Json) -> Piece:
    return Piece(
        letter=_text(piece["letter"]),
        name=_text(piece["name"]),
        purpose=_text(piece["purpose"]),
        fabric=_text(piece["fabric"]),
        width=parse_number(piece["width"]),
        length=parse_number(piece["length"]),
        count=_whole(piece["count"]),
        joined_from=_whole(piece["joined_from"]),
        may_turn=bool(piece["may_turn"]),
        note=_text(piece["note"]),
    )


def _cloth(plan: Json, said: str) -> Cloth:
    return Cloth(
        usable_width=parse_number(plan["usable_width"]),
        needed=parse_number(plan["needed"]),
        buy=parse_number(plan["buy"]),
        metres=parse_number(plan["buy_metres"]) * _METRE,
        said=_text(said),
        layout=tuple(
            json.dumps({"sections": [], **strip}, sort_keys=True) for strip in plan["strips"]
        ),
        precut=plan["precut"] is not None,
    )


def _template(written: Json) -> Template:
    texts = [_text(written[name]) for name in ("finished", "cut", "lines")]
    return Template(
        kind=_text(written["kind"]),
        key=_text(written["key"]),
        letter=_text(written["letter"]),
        finished=_outline(texts[0]),
        cut=_outline(texts[1]),
        lines=_shape(texts[2]) if texts[2] else None,
        text="\n".join(texts),
    )


def _outline(text: str) -> BaseGeometry:
    """Return what an outline encloses. Rounding to 0.001 in may let it touch itself; that
    is mended, not refused."""
    parts = shapely.get_parts(shapely.make_valid(_shape(text))).tolist()
    flat = [q for p in parts for q in shapely.get_parts(p).tolist() if q.geom_type == "Polygon"]
    if not flat:
        raise ValueError(f"{text[:40]!r} encloses nothing")
    return shapely.union_all(flat)


def _shape(text: str) -> BaseGeometry:
    with np.errstate(invalid="ignore"):  # what is no number is refused below
        shape = shapely.from_wkt(text)
    if shape.is_empty or not np.isfinite(shapely.get_coordinates(shape)).all():
        raise ValueError(f"{text[:40]!r} is not a shape")
    return shape
