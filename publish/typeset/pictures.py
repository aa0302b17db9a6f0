"""The designer's own pictures: the logo, and photographs made ready for print.

In: files that were there when the pattern was read. Out: `Print`s, bytes with their type
and size; notes on what cannot be read or would print coarsely.
Invariant: a photograph stands upright (its EXIF orientation is applied), is in sRGB, and
holds no more than `FINE` pixels to a printed inch; the same file gives the same bytes.
"""

from __future__ import annotations

import io
import re
import xml.etree.ElementTree as ET
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from PIL import Image, ImageCms, ImageFile, ImageOps, UnidentifiedImageError

from publish.notes import Note, Place, error, warning
from publish.svgfile import MAX_BYTES, read_svg
from publish.typeset.layout_file import stamp
from publish.units import POINTS_PER_INCH

FINE = 300
"""Pixels to a printed inch that a press can show; more only makes a file large. Common
practice, no source."""
COARSE = 200
"""Pixels to a printed inch below which a photograph looks soft. Common practice, no
source."""
LOGO_LEAST = 300
"""Pixels along a logo's longer side: one inch and a half at `COARSE`."""
_QUALITY = 90
_PROFILED = ("RGB", "CMYK", "L", "LAB")
"""Kinds of pixels that a colour profile can speak of."""
_UNREADABLE = (UnidentifiedImageError, OSError, ValueError, SyntaxError,
               Image.DecompressionBombError)  # fmt: skip
_FARTHEST = 1e6
"""User units of a drawing's sides: no sheet is larger, and a page cannot count further."""
_NUMBER = re.compile(r"\s*(\d+(?:\.\d+)?)")


@dataclass(frozen=True)
class Print:
    """A picture ready to be placed: its file's bytes, type, and size in its own units."""

    data: bytes
    kind: str
    width: float
    height: float


def check_logo(path: Path, place: Place) -> list[Note]:
    """Return what is wrong with a logo."""
    refused = _refused(path)
    if refused is not None:
        return [
            error("T716", place, f"the logo cannot be used: {refused.what}",
                  expected=refused.expected,
                  received=f"{path.name}:{refused.place.line}, {refused.received}".rstrip(", "),
                  help=refused.help)
        ]  # fmt: skip
    found = logo(path)
    if found is None:
        return [
            error("T716", place, "the logo is not a picture that can be read",
                  expected="an SVG with a size or a viewBox, a PNG or a JPEG", received=path.name,
                  help="save it again from your drawing program")
        ]  # fmt: skip
    if found.kind == _SVG or max(found.width, found.height) >= LOGO_LEAST:
        return []
    return [
        warning("T717", place, "the logo has few pixels and may print coarsely",
                expected=f"at least {LOGO_LEAST} pixels along its longer side",
                received=f"{found.width:.0f} x {found.height:.0f}",
                help="save it larger, or as SVG")
    ]  # fmt: skip


_SVG = "image/svg+xml"


def _refused(path: Path) -> Note | None:
    """Return why a logo that is drawn is refused: what it refers to, runs or holds."""
    if path.suffix.lower() != ".svg":
        return None
    try:
        with path.open("rb") as stream:
            _, notes = read_svg(stream.read(MAX_BYTES + 1), path.name, "")
    except OSError:  # taken away since the pattern was read
        return None
    return next(iter(notes), None)


def logo(path: Path) -> Print | None:
    """Return a logo, or None where its file is no picture."""
    return _logo(path, stamp(path))


@cache
def _logo(path: Path, _: object) -> Print | None:
    try:
        if path.suffix.lower() == ".svg":
            return _drawn(path.read_bytes())
        with _opened(path) as image:
            return _printed(_upright(image), image.width)
    except (*_UNREADABLE, ET.ParseError, LookupError):
        return None


def _drawn(data: bytes) -> Print | None:
    """Return an SVG with the size that it states, or that of its viewBox."""
    root = ET.fromstring(data)
    if not root.tag.endswith("svg"):
        return None
    stated = [_NUMBER.match(root.get(k, "")) for k in ("width", "height")]
    if all(stated) and not any("%" in root.get(k, "") for k in ("width", "height")):
        width, height = (float(m[1]) for m in stated if m)
    else:
        _, _, width, height = (float(v) for v in re.split(r"[\s,]+", root.attrib["viewBox"]))
    drawn = 0 < width < _FARTHEST and 0 < height < _FARTHEST
    return Print(data, _SVG, width, height) if drawn else None


@contextmanager
def _opened(path: Path) -> Iterator[Image.Image]:
    """Open a picture and read all of it; one that breaks off is refused.

    WeasyPrint tells Pillow, for the whole program, to make do with what is there.
    """
    before, ImageFile.LOAD_TRUNCATED_IMAGES = ImageFile.LOAD_TRUNCATED_IMAGES, False
    try:
        with Image.open(path) as image:
            image.load()
            yield image
    finally:
        ImageFile.LOAD_TRUNCATED_IMAGES = before


def size(path: Path) -> tuple[int, int] | None:
    """Return a photograph's width and height in pixels as it stands upright, or None."""
    return _size(path, stamp(path))


@cache
def _size(path: Path, _: object) -> tuple[int, int] | None:
    try:
        with _opened(path) as image:
            turned = ImageOps.exif_transpose(image)
            return turned.size
    except _UNREADABLE:
        return None


def photograph(path: Path, width: float) -> Print:
    """Return a photograph for a printed width in points: upright, sRGB, thinned out."""
    with _opened(path) as image:
        return _printed(_upright(image), round(width / POINTS_PER_INCH * FINE))


def _upright(image: Image.Image) -> Image.Image:
    """Return a picture upright and in sRGB, with its own transparency if it has any."""
    turned = ImageOps.exif_transpose(image)
    clear = turned.mode in ("RGBA", "LA", "PA") or "transparency" in turned.info
    profile = image.info.get("icc_profile")
    alpha = turned.convert("RGBA").getchannel("A") if clear else None
    base = turned.convert("RGB") if turned.mode not in _PROFILED else turned
    if profile:
        try:
            own = ImageCms.ImageCmsProfile(io.BytesIO(profile))
            made = ImageCms.profileToProfile(
                base, own, ImageCms.createProfile("sRGB"), outputMode="RGB"
            )
            base = made if made is not None else base
        except (ImageCms.PyCMSError, OSError):  # a broken profile, or one for another mode
            base = base.convert("RGB")
    base = base.convert("RGB")
    if alpha is not None:
        base.putalpha(alpha)
    return base


def _printed(image: Image.Image, width: int) -> Print:
    """Return a picture as a file of at most `width` pixels across."""
    if image.width > width > 0:
        image = image.resize((width, max(1, round(image.height * width / image.width))),
                             Image.Resampling.LANCZOS)  # fmt: skip
    stream = io.BytesIO()
    if image.mode == "RGBA":
        image.save(stream, "PNG", optimize=True)
        return Print(stream.getvalue(), "image/png", image.width, image.height)
    image.save(stream, "JPEG", quality=_QUALITY, subsampling=0)
    return Print(stream.getvalue(), "image/jpeg", image.width, image.height)
