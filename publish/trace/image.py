"""A picture file as pixels.

In: the bytes of a JPEG, PNG, TIFF or HEIC file. Out: `Picture`, or a note.
Invariant: pixels are as large as the tracer works with, however many the file has; they
are turned the way the camera was held; whatever the bytes are, nothing is raised.
"""

from __future__ import annotations

import io
import math
import warnings
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass

import cv2
import numpy as np
import pillow_heif
from numpy.typing import NDArray
from PIL import ExifTags, Image, ImageFile, ImageOps

from publish.notes import Note, Place, error

Pixels = NDArray[np.uint8]
Floats = NDArray[np.float32]
Points = NDArray[np.float64]

ENDINGS = (".jpg", ".jpeg", ".png", ".tif", ".tiff", ".heic")
LONGEST = 2400
"""Pixels of the longer side that is worked with: more of them add noise, not outline."""

LEAST = 300
"""Pixels of the shorter side below which nothing is looked for."""

MOST = 200_000_000
"""Pixels of a file that is opened at all."""

SCANNED = range(100, 2401)
"""Pixels to the inch that a scanner writes; cameras write 72, or nothing."""

pillow_heif.register_heif_opener()


@dataclass(frozen=True)
class Picture:
    """Pixels (rows, columns, red-green-blue), and what the file knows of its making.

    `inch` is pixels to the inch where a scanner wrote them, `focal` the camera's focal
    length in pixels where it is known.
    """

    pixels: Pixels
    inch: float | None
    focal: float | None

    @property
    def size(self) -> tuple[int, int]:
        """Return columns and rows."""
        return self.pixels.shape[1], self.pixels.shape[0]


def read_picture(data: bytes, place: Place) -> Picture | Note:
    """Return the picture in a file, no larger than `LONGEST`."""
    try:
        with warnings.catch_warnings(), _whole_files_only():
            warnings.simplefilter("ignore")
            with Image.open(io.BytesIO(data)) as image:
                if image.width * image.height > MOST:
                    return _too_large(place, image.width, image.height)
                return _worked(image, place)
    except (
        OSError,
        ValueError,
        SyntaxError,
        RuntimeError,
        EOFError,
        MemoryError,
        OverflowError,
        Image.DecompressionBombError,
    ) as fault:
        reason = (str(fault) or type(fault).__name__).splitlines()[0][:80]
        if reason.startswith("cannot identify"):
            reason = "not a picture of a known kind"
        return error(
            "D370",
            place,
            "the picture cannot be read",
            received=reason,
            expected="a JPEG, PNG, TIFF or HEIC picture",
            help="open it in a picture program and save it again as JPEG or PNG",
        )


@contextmanager
def _whole_files_only() -> Iterator[None]:
    """Have a file that breaks off refused; other libraries let Pillow make up the rest."""
    kept = ImageFile.LOAD_TRUNCATED_IMAGES
    ImageFile.LOAD_TRUNCATED_IMAGES = False
    try:
        yield
    finally:
        ImageFile.LOAD_TRUNCATED_IMAGES = kept


def _worked(image: Image.Image, place: Place) -> Picture | Note:
    inch, focal = _inch(image), _focal(image)
    wide = max(image.size)
    if min(image.size) < LEAST:
        return error(
            "D371",
            place,
            "the picture is too small to trace",
            expected=f"at least {LEAST} pixels each way, better 1500",
            received=f"{image.width} x {image.height} pixels",
            help="take the photo nearer, or scan at 300 dots to the inch",
        )
    turned = ImageOps.exif_transpose(image)
    if turned.mode in ("RGBA", "LA", "PA") or "transparency" in turned.info:
        clear = turned.convert("RGBA")
        ground = Image.new("RGBA", clear.size, (255, 255, 255, 255))
        turned = Image.alpha_composite(ground, clear)
    if turned.mode.startswith("I;16") or turned.mode in ("I", "F"):
        deep = np.asarray(turned, dtype=np.float64)
        turned = Image.fromarray((deep / max(deep.max(), 1) * 255).astype(np.uint8))
    pixels: Pixels = np.asarray(turned.convert("RGB"))
    scale = min(1.0, LONGEST / wide)
    if scale < 1:
        small = (round(pixels.shape[1] * scale), round(pixels.shape[0] * scale))
        pixels = np.asarray(cv2.resize(pixels, small, interpolation=cv2.INTER_AREA), np.uint8)
    diagonal = math.hypot(*pixels.shape[:2])
    return Picture(
        pixels,
        None if inch is None else inch * scale,
        None if focal is None else focal / 43.27 * diagonal,
    )


def _inch(image: Image.Image) -> float | None:
    """Return the pixels to the inch that a scanner wrote."""
    try:
        across, down = (float(v) for v in image.info.get("dpi", (0, 0)))
    except (TypeError, ValueError, ZeroDivisionError):
        return None
    camera = image.getexif().get(ExifTags.Base.Model)
    scanned = round(across) in SCANNED and abs(across - down) < 0.01 * across
    return across if scanned and (camera is None or "scan" in str(camera).lower()) else None


def _focal(image: Image.Image) -> float | None:
    """Return the focal length as millimetres on 35 mm film, whose diagonal is 43.27 mm
    (Exif 2.32, FocalLengthIn35mmFilm; CIPA DCG-001)."""
    inner = image.getexif().get_ifd(ExifTags.IFD.Exif)
    try:
        found = float(inner.get(ExifTags.Base.FocalLengthIn35mmFilm, 0))
    except (TypeError, ValueError, ZeroDivisionError):
        return None
    return found if 8 <= found <= 400 else None


def _too_large(place: Place, width: int, height: int) -> Note:
    return error(
        "D371",
        place,
        "the picture is too large",
        expected=f"at most {MOST // 1_000_000} million pixels",
        received=f"{width} x {height} pixels",
        help="save it at half the size: the outline is as good",
    )
