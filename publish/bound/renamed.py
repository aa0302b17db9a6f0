"""Manuals and drawings of several patterns under names that do not meet.

In: a pattern's manual and artwork. Out: the same, with the pattern's key before every key.
Invariant: words and drawings stay as they are.
"""

from __future__ import annotations

from dataclasses import fields, is_dataclass, replace
from typing import Any, TypeVar

from publish.model.figure import Artwork, Figure, Sheet
from publish.model.pattern import Fabric, Pattern
from publish.model.words import FigureSpec, Row, Section, Step, Table, TemplateSheets

Value = TypeVar("Value")


def name(pattern: Pattern, key: str) -> str:
    """Return what a key of a pattern is called in a book."""
    return f"{pattern.key}--{key}"


def words(pattern: Pattern, value: Value) -> Value:
    """Return any part of a manual with its keys renamed."""
    renamed: Any = value
    if isinstance(value, tuple):
        renamed = tuple(words(pattern, inner) for inner in value)
    elif is_dataclass(value) and not isinstance(value, type):
        inner = {f.name: words(pattern, getattr(value, f.name)) for f in fields(value)}
        renamed = replace(value, **{**inner, **_keys(pattern, value)})
    return renamed  # type: ignore[no-any-return]


def _keys(pattern: Pattern, value: object) -> dict[str, Any]:
    """Return the fields of one value that are keys, renamed."""
    if isinstance(value, FigureSpec | Step | Table):
        return {"key": name(pattern, value.key)}
    if isinstance(value, Section):
        parent = None if value.parent is None else name(pattern, value.parent)
        return {"key": name(pattern, value.key), "parent": parent}
    if isinstance(value, TemplateSheets):
        return {"motif": name(pattern, value.motif)}
    if isinstance(value, Row) and value.fabric is not None:
        return {"fabric": name(pattern, value.fabric)}
    return {}


def fabrics(pattern: Pattern) -> dict[str, Fabric]:
    """Return a pattern's fabrics by the keys that a book's tables name."""
    return {name(pattern, key): fabric for key, fabric in pattern.fabrics.items()}


def artwork(pattern: Pattern, drawn: Artwork) -> Artwork:
    """Return drawings, sheets and pictures with their keys renamed."""
    figures = {name(pattern, k): _figure(pattern, f) for k, f in drawn.figures.items()}
    sheets = {
        (name(pattern, motif), size, part): tuple(_sheet(pattern, s) for s in group)
        for (motif, size, part), group in drawn.sheets.items()
    }
    pictures = {name(pattern, k): picture for k, picture in drawn.pictures.items()}
    return Artwork(figures, sheets, pictures)


def _figure(pattern: Pattern, figure: Figure) -> Figure:
    svg = figure.svg.replace('"picture:', f'"picture:{pattern.key}--')
    return replace(figure, key=name(pattern, figure.key), svg=svg)


def _sheet(pattern: Pattern, sheet: Sheet) -> Sheet:
    motif, size, part = sheet.leads
    return replace(
        sheet,
        key=name(pattern, sheet.key),
        leads=(name(pattern, motif), size, part),
        shown=tuple(replace(s, motif=name(pattern, s.motif)) for s in sheet.shown),
    )
