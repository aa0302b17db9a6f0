"""Whether a press edition is in printing inks, not too many, and text in one of them.

In: a printed press edition. Out: notes.
Invariant: every operator that sets a colour sets DeviceCMYK or DeviceGray, or chooses a
tile whose own stream does; every picture is in them; no colour lays down more than
`TOTAL`; no letter is black on top of other inks; nothing is see-through.

DeviceCMYK in PDF/X-4 means the inks of the output intent (ISO 15930-7, from memory). The
most ink, and text in black alone: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

import pikepdf

from publish.notes import Note, error
from publish.proof.case import Code
from publish.proof.press.streams import (
    CMYK,
    GREY,
    ContentStream,
    State,
    entries,
    followed,
    images,
    streams,
)
from publish.proof.printed.paper import Printed

CODES = {
    "P881": Code(
        "A colour is not in printing inks",
        "the printer guesses, or refuses the file",
        "a photograph left in red, green and blue",
        "pictures in the shop's four inks, or grey",
    ),
    "P882": Code(
        "A colour lays down too much ink",
        "the sheet does not dry and marks the next",
        "black made of all four inks at once",
        "black ink alone, or less of each",
    ),
    "P883": Code(
        "Text is black on top of other inks",
        "letters blur where the plates miss",
        "small letters in four inks",
        "letters in black alone",
    ),
    "P884": Code(
        "Something is see-through",
        "its colour depends on the print shop's machine",
        "a shadow laid half through over a photograph",
        "opaque areas",
    ),
}
TOTAL = 3.0
"""300 %: below the 330 % that ISO 12647-2 printing on coated paper bears, from memory."""
CLOSE = 0.015
"""Rounding of four shares of ink."""
RICH = 0.8
_SETS = {"g", "rg", "k", "cs", "sc", "scn"}
_SHOWS = {"Tj", "TJ", "'", '"'}
_INKS = {f"/{CMYK}", f"/{GREY}"}


def measure(printed: Printed) -> Iterator[Note]:
    """Yield one note for each thing that is wrong on a page."""
    told: set[tuple[str, int, str]] = set()
    for stream in streams(printed.objects):
        for code, what, found in (*_colours(stream), *_clear(stream)):
            if (code, stream.page, what) not in told:
                told.add((code, stream.page, what))
                yield _note(printed, code, stream.page, what, found)
    for page, image in images(printed.objects):
        space = image.get("/ColorSpace")
        if not image.get("/ImageMask", False) and str(space) not in _INKS:
            yield _note(printed, "P881", page, "a picture is not in printing inks", "")
        if "/SMask" in image:
            yield _note(printed, "P884", page, "a picture is see-through", "")


def _colours(stream: ContentStream) -> Iterator[tuple[str, str, str]]:
    """Yield code, words and value for each colour that is wrong in a stream."""
    for name, operands, state in followed(stream.source):
        if name.lower() in _SETS:
            yield from _set(state, name)
        elif name in _SHOWS:
            for colour in state.letters():
                inks = colour.inks
                if inks is not None and inks[3] > RICH and any(inks[:3]):
                    yield "P883", "text is black on top of other inks", _shares(inks)
        elif name == "sh" or (name == "INLINE IMAGE" and operands):
            yield "P881", "a shading or an inline picture is not in printing inks", name


def _set(state: State, name: str) -> Iterator[tuple[str, str, str]]:
    colour = state.stroke if name[:1].isupper() else state.fill
    if colour.space == "Pattern":
        return  # a tile's own stream sets its colours
    inks = colour.inks
    if inks is None and not (name.lower() == "cs" and colour.space in (CMYK, GREY)):
        values = " ".join(f"{v:g}" for v in colour.values)
        yield "P881", "a colour is not in printing inks", f"{colour.space} {values}"
    elif inks is not None and sum(inks) > TOTAL + CLOSE:
        yield "P882", "a colour lays down too much ink", _shares(inks)


def _clear(stream: ContentStream) -> Iterator[tuple[str, str, str]]:
    """Yield what makes a stream see-through."""
    for state in entries(stream.resources, "/ExtGState"):
        shares = [float(state.get(k, 1)) for k in ("/ca", "/CA")]
        if min(shares) < 1:
            yield "P884", "something is see-through", f"{min(shares):g}"
        mode = state.get("/BM", "/Normal")
        if str(mode) not in ("/Normal", "/Compatible"):
            yield "P884", "something is see-through", str(mode)
        if isinstance(state.get("/SMask"), pikepdf.Dictionary):
            yield "P884", "something is see-through", "a soft mask"


def _shares(inks: tuple[float, ...]) -> str:
    return ", ".join(f"{letter} {v * 100:.0f} %" for letter, v in zip("CMYK", inks, strict=True))


def _note(printed: Printed, code: str, page: int, what: str, received: str) -> Note:
    expected = {
        "P881": f"{CMYK} or {GREY}",
        "P882": f"at most {TOTAL * 100:.0f} %",
        "P883": "black alone",
        "P884": "opaque areas",
    }[code]
    return error(
        code,
        printed.pattern.place("layout"),
        f"page {page} of {printed.edition.name}: {what}",
        expected=expected,
        received=received,
    )
