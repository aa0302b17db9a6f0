"""Printed fabrics in pictures: at their true scale, turned with their patch, in true colours."""

from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from PIL import Image
from shapely.geometry import box

from publish.colour import difference
from publish.model.cloth import Fabric, Swatch
from publish.render.arrays import encoded
from publish.render.cloth import cloth
from publish.render.paint import Window
from publish.render.prints import print_of, tile
from publish.render.relief import relief
from publish.render.subject import Cloth, Subject
from publish.units import parse_length

COLOUR = "#8c9668"
SIDE = 12.0
FINE = 24.0


@pytest.fixture
def fabric(tmp_path: Path) -> Fabric:
    """A cloth of stripes that run along its length: two dark ones on every 3 inches."""
    across = np.where((np.arange(600) // 150) % 2 == 0, 60, 200).astype(np.uint8)
    Image.fromarray(np.repeat(np.tile(across, (300, 1))[:, :, None], 3, axis=2)).save(
        tmp_path / "stripes.png"
    )
    swatch = Swatch(tmp_path / "stripes.png", parse_length("3 in"))
    return Fabric("reeds", "Reeds", COLOUR, parse_length("40 in"), swatch=swatch)


def shown(fabric: Fabric, grain: float) -> np.ndarray:
    """Return a single patch of the cloth in even light, as planes."""
    square = box(0, 0, SIDE, SIDE)
    patch = Cloth(square, fabric.key, grain)
    whole = Subject("plain", False, (patch,), (), (), square, square, "", 0.0)
    pixels = round(SIDE * FINE)
    window = Window(0, 0, FINE, pixels, pixels)
    printed = print_of(fabric)
    assert printed is not None
    colours = {fabric.key: fabric.colour}
    made = relief(whole, window)
    return cloth(whole, window, made, colours, "#ffffff", {fabric.key: printed})


@pytest.mark.parametrize("grain", [0.0, 30.0, 90.0])
def test_a_print_is_at_its_true_scale_and_turned_with_its_patch(
    fabric: Fabric, grain: float
) -> None:
    """The strongest wave of the picture has the stripes' distance, 1 1/2 in, and crosses
    their direction; a patch lies up to 1.3 degrees askew."""
    light = shown(fabric, grain)[1]
    power = np.abs(np.fft.fft2(light - light.mean(), s=(4096, 4096)))
    row, column = np.unravel_index(power[:, :2048].argmax(), (4096, 2048))
    down = (row if row < 2048 else row - 4096) / 4096 * FINE
    across = column / 4096 * FINE
    assert np.hypot(across, down) == pytest.approx(1 / 1.5, rel=0.03)
    angle = np.degrees(np.arctan2(down, across)) % 180
    assert min(abs(angle - grain), 180 - abs(angle - grain)) < 3


def test_a_print_keeps_the_fabrics_colour(fabric: Fabric) -> None:
    mean = encoded(shown(fabric, 0.0).mean(axis=(1, 2)).astype(np.float64))
    found = "#" + "".join(f"{round(255 * float(v)):02x}" for v in mean)
    assert difference(found, COLOUR) < 4


def test_a_tile_is_as_wide_as_its_cloth(fabric: Fabric) -> None:
    printed = print_of(fabric)
    assert printed is not None
    planes = tile(printed, 40.0)
    assert planes.shape == (3, 60, 120)
    assert planes.mean(axis=(1, 2)) == pytest.approx([1, 1, 1], abs=1e-4)


def test_a_swatch_that_cannot_be_read_is_no_print(fabric: Fabric, tmp_path: Path) -> None:
    (tmp_path / "broken.png").write_bytes(b"no picture")
    broken = replace(fabric, swatch=Swatch(tmp_path / "broken.png", parse_length("3 in")))
    assert print_of(broken) is None
    assert print_of(replace(fabric, swatch=None)) is None
