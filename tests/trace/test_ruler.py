"""Rulers beside the cut paper, read by their ticks.

Rulers are drawn here by what a millimetre and an inch are (25.4 mm, international yard and
pound agreement of 1959) and laid into made-up photos by the photo's own camera. How long
ticks are of which rank: common practice, no source.
"""

import io
from dataclasses import replace
from functools import cache
from pathlib import Path

import cv2
import numpy as np
import pytest
import shapely
from PIL import Image
from trace_photos import Cut, Taking, _camera, icon_cut, outlines_apart, photo, traced_whole

from publish import cli, trace
from publish.notes import Place
from publish.trace.ruler import rulers

GEAR = icon_cut(Path(__file__).parents[1] / "data" / "icons" / "gear-fill.svg", 8, 12)
SEED = 5
PLACE = Place("paper.jpg")
TAKING = Taking(tilt=20, width=2400, jitter=0.0005, blur=0.8)
WIDTH = 10.0
"""Inches: the true width of the opened motif in these photos."""

DPI = 300
TICKS = {"mm": (0.12, 0.18, 0.27), "inch": (0.09, 0.13, 0.18, 0.25, 0.36, 0.42)}
"""Inches that ticks are long, by rank."""


def scale(parts: int, long: float = 10.5, ink: int = 30, body: int = 235, even: bool = False):
    """Return a ruler as a grey picture at `DPI`, its ticks at the upper edge: an inch in
    `parts`, or millimetres for 0; all of one length when `even`."""
    step = 1 / parts if parts else 1 / 25.4
    paper = np.full((round(1.2 * DPI) * 2, round((long + 0.2) * DPI) * 2), body, np.uint8)
    each = parts or 10
    for k in range(int(long / step) + 1):
        if parts:
            rank = 4 if k % each == 0 else (k & -k).bit_length() - 1 + 5 - each.bit_length()
        else:
            rank = 2 if k % 10 == 0 else int(k % 5 == 0)
        reach = 0.2 if even else TICKS["inch" if parts else "mm"][rank]
        x = (0.1 + k * step) * DPI * 2
        paper[: round(reach * DPI * 2), round(x - 2.4) : round(x + 2.4)] = ink
        if k % each == 0:
            at = (int(x) - 24, int((0.42 + 0.16) * DPI * 2))
            cv2.putText(paper, str(k // each), at, cv2.FONT_HERSHEY_SIMPLEX, 1.8, ink, 5)
    return cv2.resize(paper, None, fx=0.5, fy=0.5, interpolation=cv2.INTER_AREA)


@cache
def table(taking: Taking) -> np.ndarray:
    return cv2.imdecode(np.frombuffer(photo(GEAR, SEED, taking), np.uint8), cv2.IMREAD_COLOR)


def beside(ruler: np.ndarray, away: float = 1.03, taking: Taking = TAKING) -> np.ndarray:
    """Return the photo with a ruler laid along the motif, where it lies most in the picture,
    as pixels; `away` is its distance from the centre, the motif reaching 1."""
    assert isinstance(GEAR, Cut)
    light = (table(taking)[..., ::-1] / 255) ** 2.2
    reach = float(np.hypot(*shapely.get_coordinates(GEAR.whole).T).max()) * away
    matrix, size = _camera(taking, reach / away, np.random.default_rng(SEED))
    high, wide = ruler.shape
    unit = WIDTH / 2 * DPI
    best, least = np.eye(3), np.inf
    for angle in np.linspace(0, 2 * np.pi, 144, endpoint=False):
        c, s = np.cos(angle), np.sin(angle)
        turn = np.array([[c, -s, -reach * s], [s, c, reach * c], [0, 0, 1]])
        laid = turn @ np.array([[1 / unit, 0, -wide / 2 / unit], [0, 1 / unit, 0], [0, 0, 1]])
        x, y, w = matrix @ laid @ [[0, wide, wide, 0], [0, 0, high, high], [1, 1, 1, 1]]
        ends = np.concatenate([-x / w, x / w - size[0], -y / w, y / w - size[1]])
        over = float(np.clip(ends, 0, None).sum())
        best, least = (laid, over) if over < least else (best, least)
    grow = np.array([[3, 0, 1], [0, 3, 1], [0, 0, 1.0]])
    full = np.dstack([(ruler / 255.0) ** 2.2, np.ones(ruler.shape)]).astype(np.float32)
    large = (size[0] * 3, size[1] * 3)
    seen = cv2.warpPerspective(full, grow @ matrix @ best, large, flags=cv2.INTER_AREA)
    seen = cv2.resize(seen, size, interpolation=cv2.INTER_AREA)
    seen = cv2.GaussianBlur(seen, (0, 0), taking.blur)
    mixed = light * (1 - seen[..., 1:]) + seen[..., :1]
    noise = np.random.default_rng(SEED).normal(size=mixed.shape) * taking.noise
    return np.clip(np.clip(mixed, 0, 1) ** (1 / 2.2) * 255 + noise, 0, 255).astype(np.uint8)


def jpeg(pixels: np.ndarray) -> bytes:
    stream = io.BytesIO()
    Image.fromarray(pixels).save(stream, "JPEG", quality=92)
    return stream.getvalue()


def names(pixels: np.ndarray) -> list[str | None]:
    return [r.division and r.division.name for r in rulers(pixels)]


@pytest.mark.parametrize(
    ("ruler", "name"),
    [
        (scale(0), "millimetres"),
        (scale(16), "sixteenths of an inch"),
        (scale(8, ink=225, body=25), "eighths of an inch"),
        (scale(32), None),
        (scale(8, even=True), None),
    ],
    ids=["mm", "16", "8 pale on dark", "32 too fine", "all of one length"],
)
def test_what_ticks_are_worth_is_told_by_their_lengths(ruler, name):
    found = names(beside(ruler))
    assert [n for n in found if n] == [name] if name else not any(found)


def test_a_photo_without_a_ruler_has_none():
    assert rulers(table(TAKING)) == []


@pytest.mark.parametrize(
    ("parts", "by"), [(0, "the ruler's millimetres"), (16, "the ruler's sixteenths of an inch")]
)
def test_a_ruler_gives_the_true_width(parts, by):
    found, notes = trace.traced(jpeg(beside(scale(parts))), PLACE)
    assert found is not None and not notes
    assert found.told_by == by
    assert found.inches == pytest.approx(WIDTH, rel=0.003)
    assert outlines_apart(traced_whole(found), GEAR)[0] <= 0.3


def test_two_scales_of_one_ruler_are_held_against_each_other():
    inches = scale(16)
    both = np.maximum(inches, 0)
    both[len(both) // 2 :] = scale(0)[::-1, ::-1][len(both) // 2 :]
    assert set(names(beside(both))) == {"millimetres", "sixteenths of an inch"}


def test_a_ruler_that_runs_off_the_picture_is_read_as_well():
    found = names(beside(scale(0, long=16)))
    assert found == ["millimetres"]


def test_a_ruler_that_cannot_be_read_is_said_until_the_width_is(tmp_path, capsys):
    file = tmp_path / "gear.jpg"
    file.write_bytes(jpeg(beside(scale(8, even=True))))
    found, notes = trace.traced(file.read_bytes(), PLACE)
    assert found is not None and found.inches is None
    assert [n.code for n in notes] == ["D382"]
    assert cli.main(["trace", str(file), "--width", "10in"]) == cli.CLEAN
    assert "D382" not in capsys.readouterr().err


@pytest.mark.thorough
@pytest.mark.parametrize("tilt", [0, 10, 25])
@pytest.mark.parametrize("parts", [0, 8, 16])
def test_rulers_are_read_from_any_side(parts, tilt):
    pixels = beside(scale(parts, ink=60, body=200), taking=replace(TAKING, tilt=tilt))
    assert len([n for n in names(pixels) if n]) == 1
