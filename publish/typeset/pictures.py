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
    found = logo(path)
    if found is None:
        return [
            error("T716", place, "the logo is not a picture that can be read",
                  expected="an SVG with a size or a viewBox, a PNG or a JPEG", received=path.name,
                  help="save it again from your drawing program")
        ]  # fmt: skip
    if outside := _outside(found):
        return [
            error("T716", place, "the logo shows another file, which is not in it",
                  expected="an SVG that holds all it shows", received=outside[:60],
                  help="embed the picture in the SVG, or save the logo as PNG")
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
_SHOWING = ("image", "use", "feImage", "style", "script")
_LINK = re.compile(r"""(?:url\(|@import)\s*["']?(?!#|data:)([^"')\s;]+)""")


def _outside(found: Print) -> str:
    """Return the first address of another file that an SVG shows; nothing for the rest."""
    if found.kind != _SVG:
        return ""
    for part in ET.fromstring(found.data).iter():
        name = part.tag.rpartition("}")[2] if isinstance(part.tag, str) else ""
        for key, value in part.attrib.items():
            shown = key.rpartition("}")[2] == "href" and name in _SHOWING
            if shown and not value.strip().startswith(("#", "data:")):
                return value.strip()
        for text in (*part.attrib.values(), part.text or "" if name == "style" else ""):
            if link := _LINK.search(text):
                return link[1]
    return ""


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
    except (*_UNREADABLE, ET.ParseError, LookupError):  # an encoding that nobody knows
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
    return Print(data, _SVG, width, height) if width > 0 and height > 0 else None


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
