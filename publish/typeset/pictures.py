"""The designer's own pictures: the logo, and photographs made ready for print.

In: files that were there when the pattern was read. Out: `Print`s, bytes with their type
and size; notes on what cannot be read or would print coarsely.
Invariant: a photograph stands upright (its EXIF orientation is applied), is in sRGB, and
holds no more than `FINE` pixels to a printed inch; the same file gives the same bytes.

A picture is opened as one of `FORMATS` whatever its name, since other readers of Pillow's
start other programs; how many pixels it holds is read before any of them is.
"""

from __future__ import annotations

import io
import re
import struct
import xml.etree.ElementTree as ET
import zlib
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
LOGO_MOST = 2550
"""Pixels along a logo's longer side that a page can show: US Letter's width at `FINE`."""
FORMATS = ("JPEG", "PNG", "TIFF")
"""Kinds of file, as Pillow names them."""
MOST = {"JPEG": 80_000_000, "MPO": 80_000_000}  # MPO: a JPEG of a phone's, with a second picture
MOST_OTHERS = 32_000_000
"""Pixels that a picture may hold: what is opened in a second or two and less than 500 MB.
A JPEG is made smaller while it is read; cameras take up to 61 million (common knowledge)."""
_QUALITY = 90
_PROFILED = ("RGB", "CMYK", "L", "LAB")
"""Kinds of pixels that a colour profile can speak of."""
_UNREADABLE = (
    UnidentifiedImageError,
    OSError,
    ValueError,
    SyntaxError,
    LookupError,
    EOFError,
    OverflowError,
    MemoryError,
    struct.error,
    zlib.error,
    Image.DecompressionBombError,
)
"""What Pillow raises over damaged files."""
_ORIENTATION = 0x0112
"""Exif 2.3; 5 to 8 mean that the picture lies on its side."""
_FARTHEST = 1e6
"""User units of a drawing's sides: no sheet is larger, and a page cannot count further."""
_EVEN = ("L", "LA", "RGB", "RGBA", "CMYK")
"""Kinds of pixels that can be put together evenly."""
_NUMBER = re.compile(r"\s*(\d+(?:\.\d+)?)")


@dataclass(frozen=True)
class Refused:
    """A picture's width and height in pixels, and how many in all are opened at most."""

    width: int
    height: int
    most: int

    def note(self, place: Place, what: str) -> Note:
        """Return the finding that a picture is too large; `what` says which."""
        return error(
            "T721",
            place,
            f"the {what} holds too many pixels",
            expected=f"at most {self.most:,} pixels",
            received=f"{self.width:,} x {self.height:,} pixels",
            help=f"make it smaller: {LOGO_MOST:,} pixels across fill a page in print",
        )


@dataclass(frozen=True)
class Print:
    """A picture ready to be placed: its file's bytes, type, and size in its own units."""

    data: bytes
    kind: str
    width: float
    height: float


def too_large(path: Path) -> Refused | None:
    """Return the size of a picture that holds more pixels than are opened."""
    if path.suffix.lower() == ".svg":
        return None
    try:
        with _header(path) as image:
            most = MOST.get(image.format or "", MOST_OTHERS)
            width, height = image.size
            return Refused(width, height, most) if width * height > most else None
    except _UNREADABLE:
        return None


def check_logo(path: Path, place: Place) -> list[Note]:
    """Return what is wrong with a logo."""
    large = too_large(path)
    if large is not None:
        return [large.note(place, "logo")]
    refused = _refused(path)
    if refused is not None:
        return [
            error(
                "T716",
                place,
                f"the logo cannot be used: {refused.what}",
                expected=refused.expected,
                received=f"{path.name}:{refused.place.line}, {refused.received}".rstrip(", "),
                help=refused.help,
            )
        ]
    found = logo(path)
    if found is None:
        return [
            error(
                "T716",
                place,
                "the logo is not a picture that can be read",
                expected="an SVG with a size or a viewBox, a PNG or a JPEG",
                received=path.name,
                help="save it again from your drawing program",
            )
        ]
    if found.kind == _SVG or max(found.width, found.height) >= LOGO_LEAST:
        return []
    return [
        warning(
            "T717",
            place,
            "the logo has few pixels and may print coarsely",
            expected=f"at least {LOGO_LEAST} pixels along its longer side",
            received=f"{found.width:.0f} x {found.height:.0f}",
            help="save it larger, or as SVG",
        )
    ]


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
        with _opened(path, LOGO_MOST) as image:
            mark = _upright(image)
            share = min(1.0, LOGO_MOST / max(mark.size))
            return _printed(mark, round(mark.width * share))
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


def _header(path: Path) -> Image.Image:
    """Open a picture without reading its pixels. `too_large` counts them, not Pillow, which
    refuses without saying the size."""
    before, Image.MAX_IMAGE_PIXELS = Image.MAX_IMAGE_PIXELS, None
    try:
        return Image.open(path, formats=FORMATS)
    finally:
        Image.MAX_IMAGE_PIXELS = before


@contextmanager
def _opened(path: Path, longest: int) -> Iterator[Image.Image]:
    """Open a picture and read all of it, not much larger than `longest` pixels; one that
    breaks off is refused.

    WeasyPrint tells Pillow, for the whole program, to make do with what is there.
    """
    before, ImageFile.LOAD_TRUNCATED_IMAGES = ImageFile.LOAD_TRUNCATED_IMAGES, False
    try:
        with _header(path) as image:
            if image.width * image.height > MOST.get(image.format or "", MOST_OTHERS):
                raise ValueError("too many pixels")
            share = min(1.0, longest / max(image.size))
            width, height = (max(1, int(n * share)) for n in image.size)
            image.draft(None, (width, height))
            image.load()
            yield _reduced(image, longest)
    finally:
        ImageFile.LOAD_TRUNCATED_IMAGES = before


def _reduced(image: Image.Image, longest: int) -> Image.Image:
    """Return a picture that is read whole made smaller, to no less than `longest` pixels."""
    times = max(image.size) // max(longest, 1)
    if times < 2 or image.mode not in _EVEN:
        return image
    small = image.reduce(times)
    small.getexif().update(image.getexif())  # how it stands; TIFF keeps that elsewhere
    return small


def size(path: Path) -> tuple[int, int] | None:
    """Return a photograph's width and height in pixels as it stands upright, or None."""
    return _size(path, stamp(path))


@cache
def _size(path: Path, _: object) -> tuple[int, int] | None:
    try:
        with _header(path) as image:
            width, height = image.size
        with _opened(path, 1) as image:
            on_its_side = image.getexif().get(_ORIENTATION) in (5, 6, 7, 8)
            return (height, width) if on_its_side else (width, height)
    except _UNREADABLE:
        return None


def photograph(path: Path, width: float) -> Print:
    """Return a photograph for a printed width in points: upright, sRGB, thinned out."""
    across = round(width / POINTS_PER_INCH * FINE)
    least = _size(path, stamp(path)) or (1, 1)
    with _opened(path, round(across * max(least) / least[0])) as image:
        return _printed(_upright(image), across)


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
        image = image.resize(
            (width, max(1, round(image.height * width / image.width))), Image.Resampling.LANCZOS
        )
    stream = io.BytesIO()
    if image.mode == "RGBA":
        image.save(stream, "PNG", optimize=True)
        return Print(stream.getvalue(), "image/png", image.width, image.height)
    image.save(stream, "JPEG", quality=_QUALITY, subsampling=0)
    return Print(stream.getvalue(), "image/jpeg", image.width, image.height)
