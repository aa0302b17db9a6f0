"""Pictures of very many pixels: refused before a pixel is read.

PNG, third edition (W3C, 2025), 11.2.1: IHDR; JPEG, ITU-T T.81, B.2.2: SOF0; TIFF 6.0: tags
256 to 262.
"""

from __future__ import annotations

import io
import struct
from pathlib import Path
from zlib import crc32

import bulrush
import pytest
from PIL import Image

from publish.model.pattern import Photo, Style
from publish.notes import Place
from publish.typeset import inspect, pictures

PLACES = {"": Place("pattern.yaml")}


def header(kind: str, width: int, height: int) -> bytes:
    """Return the beginning of a picture that says it is larger than it is."""
    if kind == "png":
        body = b"IHDR" + struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)
        return (
            b"\x89PNG\r\n\x1a\n"
            + struct.pack(">I", 13)
            + body
            + struct.pack(">I", crc32(body))
            + b"\0\0\0\x09IDAT"
        )
    if kind == "jpg":
        frame = struct.pack(">BHHB", 8, height, width, 3) + b"\1\x11\0\2\x11\0\3\x11\0"
        return b"\xff\xd8\xff\xc0" + struct.pack(">H", 2 + len(frame)) + frame + b"\xff\xd9"
    tags = [
        (256, 4, 1, width),
        (257, 4, 1, height),
        (258, 3, 1, 8),
        (259, 3, 1, 1),
        (262, 3, 1, 1),
        (273, 4, 1, 8),
        (278, 4, 1, 1),
    ]
    return (
        b"II*\0"
        + struct.pack("<IH", 8, len(tags))
        + b"".join(struct.pack("<HHII", *t) for t in tags)
        + bytes(4)
    )


@pytest.mark.parametrize("kind", ["png", "jpg", "tif"])
@pytest.mark.parametrize("sides", [(12_000, 12_000), (65_000, 65_000), (65_000, 1_300)])
def test_a_picture_of_very_many_pixels_is_refused_unopened(
    tmp_path: Path, kind: str, sides: tuple[int, int]
) -> None:
    path = tmp_path / f"big.{kind}"
    path.write_bytes(header(kind, *sides))
    pattern = bulrush.pattern(style=Style(logo=path), photos=(Photo(path),), places=PLACES)
    notes = inspect(pattern)
    assert [n.code for n in notes] == ["T721", "T721"]
    assert all(n.received == f"{sides[0]:,} x {sides[1]:,} pixels" for n in notes)


def test_a_large_picture_is_made_small_while_it_is_read(tmp_path: Path) -> None:
    for kind in ("png", "jpg", "tif"):
        path = tmp_path / f"large.{kind}"
        Image.new("RGB", (5_200, 1_300), "#205c3c").save(path)
        logo = pictures.logo(path)
        assert logo is not None and (logo.width, logo.height) == (2_550, 638)
        assert pictures.size(path) == (5_200, 1_300)


@pytest.mark.parametrize("kind", ["jpg", "tif", "png"])
def test_a_picture_on_its_side_is_turned_when_it_is_made_small(tmp_path: Path, kind: str) -> None:
    image = Image.new("RGB", (5_200, 1_300), "#205c3c")
    image.paste("#b02020", (0, 0, 2_600, 1_300))
    exif = Image.Exif()
    exif[0x0112] = 6  # to be turned a quarter clockwise: what is left comes up
    path = tmp_path / f"turned.{kind}"
    image.save(path, exif=exif)
    logo = pictures.logo(path)
    assert logo is not None and logo.width == 638 and abs(logo.height - 2_550) <= 2
    with Image.open(io.BytesIO(logo.data)) as shown:
        red, _, blue = shown.convert("RGB").getpixel((300, 100))  # type: ignore[misc]
    assert red > 150 > blue
    assert pictures.size(path) == (1_300, 5_200)
