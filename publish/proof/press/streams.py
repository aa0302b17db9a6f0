"""Every content stream of a PDF, and what each of its operators finds set.

In: an opened PDF. Out: streams with the page that shows them; operators with the colours
in force.
Invariant: nothing is taken from how the file was made; the graphics state is followed as
ISO 32000-1 describes it (8.4, 8.6.8, 9.3.6).
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Any

import pikepdf

CMYK, GREY = "DeviceCMYK", "DeviceGray"
_SPACES = {"g": GREY, "rg": "DeviceRGB", "k": CMYK}
_FILLING, _STROKING = (0, 2, 4, 6), (1, 2, 5, 6)


@dataclass(frozen=True)
class Colour:
    """A colour as a stream sets it."""

    space: str = GREY
    values: tuple[float, ...] = (0.0,)

    @property
    def inks(self) -> tuple[float, float, float, float] | None:
        """Return cyan, magenta, yellow, black; None when the colour is not in inks."""
        if self.space == GREY and len(self.values) == 1:
            return 0.0, 0.0, 0.0, 1 - self.values[0]
        if self.space == CMYK and len(self.values) == 4:
            return self.values[0], self.values[1], self.values[2], self.values[3]
        return None


@dataclass(frozen=True)
class State:
    """What an operator finds set."""

    fill: Colour = Colour()
    stroke: Colour = Colour()
    mode: int = 0

    def letters(self) -> tuple[Colour, ...]:
        """Return the colours that letters are painted in."""
        fill = (self.fill,) if self.mode in _FILLING else ()
        return fill + ((self.stroke,) if self.mode in _STROKING else ())


@dataclass(frozen=True)
class ContentStream:
    """A page's content, a drawing, a tile or a glyph, and the first page that shows it."""

    page: int
    source: Any
    resources: pikepdf.Object | None


def streams(book: pikepdf.Pdf) -> Iterator[ContentStream]:
    """Yield every content stream once, pages counted from 1."""
    seen: set[tuple[int, int]] = set()
    for number, page in enumerate(book.pages, start=1):
        found = page.obj.get("/Resources")
        yield ContentStream(number, page, found)
        yield from _inside(number, found, seen)


def entries(resources: pikepdf.Object | None, kind: str) -> Iterator[pikepdf.Object]:
    """Yield the resources of a kind, such as `/XObject`."""
    found = None if resources is None else resources.get(kind)
    if isinstance(found, pikepdf.Dictionary):
        yield from found.values()


def _inside(
    number: int, resources: pikepdf.Object | None, seen: set[tuple[int, int]]
) -> Iterator[ContentStream]:
    for kind in ("/XObject", "/Pattern"):
        for item in entries(resources, kind):
            if item.objgen in seen or not isinstance(item, pikepdf.Stream):
                continue
            seen.add(item.objgen)
            if item.get("/Subtype") != "/Image":
                inner = item.get("/Resources", resources)
                yield ContentStream(number, item, inner)
                yield from _inside(number, inner, seen)
    for font in entries(resources, "/Font"):
        if font.get("/Subtype") == "/Type3" and font.objgen not in seen:
            seen.add(font.objgen)
            for glyph in font["/CharProcs"].values():
                yield ContentStream(number, glyph, font.get("/Resources"))


def images(book: pikepdf.Pdf) -> Iterator[tuple[int, pikepdf.Object]]:
    """Yield every picture once, with the first page that shows it."""
    seen: set[tuple[int, int]] = set()
    for stream in streams(book):
        for item in entries(stream.resources, "/XObject"):
            if item.get("/Subtype") == "/Image" and item.objgen not in seen:
                seen.add(item.objgen)
                yield stream.page, item


def followed(source: Any) -> Iterator[tuple[str, list[Any], State]]:
    """Yield each operator of a stream, its operands, and the state after it."""
    state, kept = State(), [State()]
    for instruction in pikepdf.parse_content_stream(source):
        name, values = str(instruction.operator), list(instruction.operands)
        if name == "q":
            kept.append(state)
        elif name == "Q":
            state = kept.pop() if len(kept) > 1 else state
        elif name == "Tr":
            state = replace(state, mode=int(values[0]))
        else:
            state = _coloured(state, name, values)
        yield name, values, state


def _coloured(state: State, name: str, operands: list[Any]) -> State:
    """Return the state after an operator that may set a colour."""
    strokes = name[:1].isupper()
    before = state.stroke if strokes else state.fill
    small = name.lower()
    if small in _SPACES:
        after = Colour(_SPACES[small], tuple(float(v) for v in operands))
    elif small == "cs":
        space = str(operands[0]).lstrip("/")
        after = Colour(space, (0.0, 0.0, 0.0, 1.0) if space == CMYK else (0.0,))
    elif small in ("sc", "scn"):
        numbers = [v for v in operands if not isinstance(v, pikepdf.Name)]
        after = Colour(before.space, tuple(float(v) for v in numbers))
    else:
        return state
    return replace(state, stroke=after) if strokes else replace(state, fill=after)
