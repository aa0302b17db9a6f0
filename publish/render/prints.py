"""Printed fabrics: a photograph of the cloth, laid at its true scale.

In: a swatch's file and width, pixels to the inch. Out: a tile of factors on a fabric's colour.
Invariant: a tile's mean is 1, so that the fabric keeps the colour that the pattern gives it:
how a photograph was exposed is chance.
"""

from __future__ import annotations

import io
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path

import numpy as np
from PIL import Image, ImageCms, ImageOps, UnidentifiedImageError

from publish.model.cloth import Fabric
from publish.render.arrays import Light, planes_of

_DARKEST = 0.004
"""Light below which a channel of a photograph says nothing of the print."""
_SMALLEST = 8
"""Pixels: a print that repeats within less is not seen."""
_LARGEST = 4000


@dataclass(frozen=True)
class Print:
    """A photograph of cloth that is `width` inches wide, told from an earlier one of its name
    by when it was written and how long it is."""

    file: Path
    width: float
    written: tuple[int, int]


def print_of(fabric: Fabric) -> Print | None:
    """Return a fabric's print, or None where it has none that can be read."""
    if fabric.swatch is None:
        return None
    try:
        state = fabric.swatch.file.stat()
        with Image.open(fabric.swatch.file) as image:
            image.verify()
    except (UnidentifiedImageError, OSError, ValueError, SyntaxError):
        return None  # the stage that looks at pictures has said so
    return Print(fabric.swatch.file, float(fabric.swatch.width), (state.st_mtime_ns, state.st_size))


@lru_cache(maxsize=16)
def tile(shown: Print, fine: float) -> Light:
    """Return the photograph as planes of factors, `fine` pixels to the inch of cloth."""
    with Image.open(shown.file) as image:
        image.load()
        picture = _srgb(ImageOps.exif_transpose(image))
    wide = min(max(_SMALLEST, round(shown.width * fine)), _LARGEST)
    high = min(max(_SMALLEST, round(wide * picture.height / picture.width)), _LARGEST)
    small = picture.resize((wide, high), Image.Resampling.LANCZOS, reducing_gap=3.0)
    planes = np.maximum(planes_of(np.asarray(small, np.uint8)), np.float32(_DARKEST))
    planes /= planes.mean(axis=(1, 2), keepdims=True)
    return planes


def _srgb(image: Image.Image) -> Image.Image:
    """Return a picture in sRGB, its own profile applied where it has one."""
    profile = image.info.get("icc_profile")
    if profile and image.mode in ("RGB", "CMYK", "L"):
        try:
            own = ImageCms.ImageCmsProfile(io.BytesIO(profile))
            made = ImageCms.profileToProfile(
                image, own, ImageCms.createProfile("sRGB"), outputMode="RGB"
            )
        except (ImageCms.PyCMSError, OSError):  # a broken profile, or one for another mode
            made = None
        if made is not None:
            return made
    return image.convert("RGB")
