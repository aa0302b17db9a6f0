"""Every colour of a PDF turned into the four inks of a press.

In: an opened PDF whose pages use red, green and blue. Out: the same PDF, its content
streams, drawings, tiles and pictures in cyan, magenta, yellow and black.
Invariant: nothing moves; only operators that set colours are dropped and written anew.

A colour is written where it is used, not where it was set, because what it paints (text,
a line, an area) decides its inks. Operators: ISO 32000-1, 8.6.8 and annex A.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from copy import copy
from dataclasses import dataclass
from decimal import Decimal
from typing import Any

import pikepdf
from PIL import Image

from publish.deliver.inks import FILL, LINE, TEXT, Inks4, Press, Rgb

Instruction = tuple[Sequence[Any], pikepdf.Operator]
Colour = Rgb | Inks4 | None
"""What was last set: red, green, blue; inks as they are; or something else (None)."""

_SETS = {"g": 1, "rg": 3, "k": 4}
_PAINTS = {"S", "s", "f", "F", "f*", "B", "B*", "b", "b*", "n"}
_SHOWS = {"Tj", "TJ", "'", '"'}
_DEVICES = {"/DeviceGray": 1, "/DeviceRGB": 3, "/DeviceCMYK": 4}
_FILLING, _STROKING = (0, 2, 4, 6), (1, 2, 5, 6)
"""Text rendering modes (9.3.6) that fill letters, and that stroke them."""


@dataclass
class _Paint:
    """One of the two colours of the graphics state: what is wanted, and what is written."""

    operator: str
    wanted: Colour = None
    written: Inks4 | None = None
    parts: int = 0
    """Components of the device colour space chosen by `cs`; 0 for any other space."""

    def instruction(self, use: str, press: Press) -> Iterator[Instruction]:
        """Yield the operator that sets the wanted colour, where it is not set yet."""
        if self.wanted is None:
            return
        inks = press.inks(self.wanted, use) if len(self.wanted) == 3 else self.wanted
        if inks != self.written:
            self.written = inks
            yield [_short(v) for v in inks], pikepdf.Operator(self.operator)


class Recolouring:
    """The state of one content stream while it is rewritten."""

    def __init__(self, press: Press) -> None:
        self._press = press
        self._fill, self._stroke = _Paint("k"), _Paint("K")
        self._mode = 0
        self._stack: list[tuple[_Paint, _Paint, int]] = []
        self._in_path = False

    def rewrite(self, source: Iterable[Any]) -> Iterator[Instruction]:
        """Yield the instructions of a stream with every colour in inks."""
        for operands, operator in source:
            name = str(operator)
            kept = self._colour(name, operands)
            if not kept:
                continue
            self._state(name, operands)
            yield from self._due(name)
            yield operands, operator

    def _colour(self, name: str, operands: Sequence[Any]) -> bool:
        """Take in an operator that sets a colour; return whether it stays as it is."""
        small = name.lower()
        paint = self._stroke if name[:1].isupper() else self._fill
        if small in _SETS:
            paint.wanted, paint.parts = _colour_of(operands), _SETS[small]
            return False
        if small == "cs":
            paint.parts = _DEVICES.get(str(operands[0]), 0)
            paint.wanted, paint.written = _initial(paint.parts), None
            return not paint.parts
        if small in ("sc", "scn") and paint.parts:
            paint.wanted = _colour_of(operands)
            return False
        return True

    def _state(self, name: str, operands: Sequence[Any]) -> None:
        if name == "q":
            self._stack.append((copy(self._fill), copy(self._stroke), self._mode))
        elif name == "Q" and self._stack:
            self._fill, self._stroke, self._mode = self._stack.pop()
        elif name == "Tr":
            self._mode = int(operands[0])

    def _due(self, name: str) -> Iterator[Instruction]:
        """Yield the colours that must be set before an operator."""
        if name in ("m", "re") and not self._in_path:
            # No colour may be set between a path and its painting.
            self._in_path = True
            yield from self._fill.instruction(FILL, self._press)
            yield from self._stroke.instruction(LINE, self._press)
        elif name in _PAINTS:
            self._in_path = False
        elif name in _SHOWS:
            if self._mode in _FILLING:
                yield from self._fill.instruction(TEXT, self._press)
            if self._mode in _STROKING:
                yield from self._stroke.instruction(TEXT, self._press)
        elif name == "Do":
            yield from self._fill.instruction(FILL, self._press)
            yield from self._stroke.instruction(LINE, self._press)


def recolour(book: pikepdf.Pdf, press: Press) -> None:
    """Turn every colour of a PDF into inks, in place."""
    seen: set[tuple[int, int]] = set()
    for page in book.pages:
        page.obj["/Contents"] = pikepdf.Stream(book, _rewritten(page, press))
        _resources(book, page.obj.get("/Resources"), press, seen)


def _rewritten(source: Any, press: Press) -> bytes:
    parsed = pikepdf.parse_content_stream(source)
    return pikepdf.unparse_content_stream(list(Recolouring(press).rewrite(parsed)))


def _resources(
    book: pikepdf.Pdf, found: pikepdf.Object | None, press: Press, seen: set[tuple[int, int]]
) -> None:
    """Recolour the drawings, tiles and pictures that a content stream may use."""
    if found is None:
        return
    for kind in ("/XObject", "/Pattern"):
        for item in found.get(kind, pikepdf.Dictionary()).values():
            if item.objgen in seen or not isinstance(item, pikepdf.Stream):
                continue
            seen.add(item.objgen)
            if item.get("/Subtype") == "/Image":
                _picture(book, item, press)
                continue
            item.write(_rewritten(item, press))
            group = item.get("/Group")
            if group is not None and "/CS" in group:
                group["/CS"] = pikepdf.Name.DeviceCMYK
            _resources(book, item.get("/Resources"), press, seen)


def _picture(book: pikepdf.Pdf, item: pikepdf.Stream, press: Press) -> None:
    """Turn a picture into inks, and a soft mask into one that hides or shows.

    What lies under a picture is not known here, so that an edge cannot be mixed with it.
    """
    if item.get("/ImageMask", False):
        return
    image = pikepdf.PdfImage(item)
    if image.colorspace not in ("/DeviceGray", "/DeviceCMYK"):
        item.write(press.image(image.as_pil_image()).tobytes())
        item["/ColorSpace"], item["/BitsPerComponent"] = pikepdf.Name.DeviceCMYK, 8
        if "/Decode" in item:
            del item["/Decode"]
    soft = item.get("/SMask")
    if isinstance(soft, pikepdf.Stream):
        item["/Mask"] = _hard(book, pikepdf.PdfImage(soft).as_pil_image())
        del item["/SMask"]


def _hard(book: pikepdf.Pdf, soft: Image.Image) -> pikepdf.Object:
    """Return a mask that hides what is less than half there (ISO 32000-1, 8.9.6.3)."""
    hidden = soft.convert("L").point([255] * 128 + [0] * 128, "1")
    mask = pikepdf.Stream(book, hidden.tobytes())
    mask["/Type"], mask["/Subtype"] = pikepdf.Name.XObject, pikepdf.Name.Image
    mask["/Width"], mask["/Height"] = hidden.size
    mask["/BitsPerComponent"], mask["/ImageMask"] = 1, True
    return book.make_indirect(mask)


def _colour_of(operands: Sequence[Any]) -> Colour:
    """Return operands as a colour; grey is the same red, green and blue."""
    values = [float(v) for v in operands]
    if len(values) == 4:
        return values[0], values[1], values[2], values[3]
    channels = [max(0, min(255, round(255 * v))) for v in values]
    return (channels * 3)[0], (channels * 3)[1], (channels * 3)[2]


def _initial(parts: int) -> Colour:
    """Return the colour that choosing a device space sets: black (8.6.8)."""
    return (0.0, 0.0, 0.0, 1.0) if parts == 4 else (0, 0, 0) if parts else None


def _short(value: float) -> Decimal:
    """Return a share of ink with as few digits as it needs."""
    return Decimal(f"{value:.3f}").normalize() + 0
