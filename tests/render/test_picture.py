"""Pictures of quilts: true colours, the motif's own symmetry, the same bytes each time.

The tolerance of CIEDE2000 4 is the project's own; the difference is the colour library's.
"""

from functools import cache
from pathlib import Path

import numpy as np
import pytest
import shapely
from scipy import ndimage
from shapely.affinity import rotate, scale
from shapely.geometry import box

from publish import draft, grade, read
from publish.colour import difference
from publish.model.pattern import Pattern
from publish.render.arrays import encoded
from publish.render.bends import waves
from publish.render.cloth import cloth, weave
from publish.render.faces import Face, coloured_face, face_of, picture, scene_of
from publish.render.paint import Window, covered, numbers
from publish.render.relief import relief, swelling
from publish.render.subject import Cloth, Subject, subject

PROJECTS = Path(__file__).parents[2] / "projects"
DEMOS = sorted(p.parent.name for p in PROJECTS.glob("*/pattern.yaml"))
TOLERANCE = 4.0


@cache
def pattern_of(name: str) -> Pattern:
    pattern, _, _ = read.load(PROJECTS / name / "pattern.yaml")
    assert pattern is not None
    return pattern


@cache
def subject_of(name: str, key: str) -> Subject:
    pattern = pattern_of(name)
    size, _ = grade.grade(pattern, key)
    assert size is not None
    shapes, _ = draft.draft(pattern, size)
    assert shapes is not None
    return subject(pattern, size, shapes)


def colours_of(pattern: Pattern) -> list[dict[str, str]]:
    """Return the colours of the pattern's own fabrics and of each colourway."""
    own = {k: f.colour for k, f in pattern.fabrics.items()}
    ways = [{k: f.colour for k, f in w.fabrics.items()} for w in pattern.colourways.values()]
    return [own, *(own | way for way in ways)]


def means(face: Face, colours: dict[str, str]) -> dict[str, str]:
    """Return the mean colour of each fabric in a picture, by its key.

    Pixels at an edge are mixtures of two fabrics and are nobody's.
    """
    pieces = [(p.shape, p.fabric) for p in (*face.subject.patches, *face.subject.motifs)]
    number = numbers(face.window, [shape for shape, _ in pieces])
    light = coloured_face(face, colours, "#d0d0d0")
    fabric = np.array(["", *(f for _, f in pieces)])[number]
    found = {}
    for key in dict.fromkeys(f for _, f in pieces):
        whole = ndimage.binary_erosion(fabric == key, iterations=2)
        if whole.sum() > 50:
            mean = encoded(light[:, whole].mean(axis=1).astype(np.float64))
            found[key] = "#" + "".join(f"{round(255 * float(v)):02x}" for v in mean)
    return found


def check_colours(name: str, key: str, pixels: int) -> None:
    shown = subject_of(name, key)
    face = face_of(shown, scene_of(shown), (pixels, pixels))
    for colours in colours_of(pattern_of(name)):
        found = means(face, colours)
        off = {k: difference(found[k], colours[k]) for k in found}
        assert len(found) > 1 and max(off.values()) < TOLERANCE, off


@pytest.mark.parametrize("name", DEMOS)
def test_fabrics_keep_their_colours(name: str) -> None:
    for key in pattern_of(name).sizes:
        check_colours(name, key, 500)


@pytest.mark.thorough
@pytest.mark.parametrize("name", DEMOS)
def test_fabrics_keep_their_colours_on_a_cover(name: str) -> None:
    for key in pattern_of(name).sizes:
        check_colours(name, key, 2000)


def test_a_fabric_that_lies_in_one_lit_place_is_evened() -> None:
    """Two patches of a cloth of each half, the left in more light: each keeps its colour."""
    halves = [box(0, 0, 6, 12), box(6, 0, 12, 12)]
    patches = tuple(Cloth(h, key, 0.0) for h, key in zip(halves, ("left", "right"), strict=True))
    square = box(0, 0, 12, 12)
    whole = Subject("plain", False, patches, (), (), square, square, "", 0.0)
    window = Window(0, 0, 20.0, 240, 240)
    colours = {"left": "#7a8a60", "right": "#7a8a60"}
    light = np.ones((240, 240), np.float32)
    light[:, :120], light[:, 120:] = 1.1, 0.9
    made = relief(whole, window)
    plain, even = (cloth(whole, window, made, colours, "#ffffff", light=v) for v in (None, light))
    for part in (np.s_[:, :, 4:116], np.s_[:, :, 124:236]):
        seen = (even * light)[part].mean()
        assert seen == pytest.approx(plain[part].mean(), rel=0.01)


def test_the_motif_keeps_its_eight_folds_to_a_pixel() -> None:
    """Turned by an eighth and mirrored, the motif's pixels differ at most along its edge,
    by less than a pixel's width each way."""
    shown = subject_of("samphire", "mini")
    motif = shown.motifs[0].shape
    window = Window(-1, -1, 25.0, 550, 550)
    centre = motif.centroid.coords[0]
    mask = covered(window, motif) > 0.5
    near = ndimage.binary_dilation(mask), ndimage.binary_erosion(mask)
    for other in (
        *(rotate(motif, 90 * k, origin=centre) for k in (1, 2, 3)),
        scale(motif, -1, 1, origin=centre),
        scale(motif, 1, -1, origin=centre),
        rotate(scale(motif, -1, 1, origin=centre), 90, origin=centre),
    ):
        turned = covered(window, other) > 0.5
        assert not (turned & ~near[0]).any() and not (near[1] & ~turned).any()


@pytest.mark.parametrize("key", ["mini", "throw"])
def test_a_picture_keeps_the_motifs_shape(key: str) -> None:
    """However a quilt's edges wave, on a cover of 2,000 pixels every motif's points lie within
    a pixel of where they are drawn, in the root mean square, and within two at most."""
    shown = subject_of("samphire", key)
    left, _, right, _ = shown.bound.bounds
    fine = 2000 * scene_of(shown).fills / (right - left)
    bend = waves(shown)
    for motif in shown.motifs:
        points = shapely.get_coordinates(motif.shape)
        moved = bend(points) - points
        off = np.hypot(*(moved - moved.mean(axis=0)).T) * fine
        assert np.sqrt((off**2).mean()) < 1 and off.max() < 2


def test_the_relief_keeps_a_quilts_symmetry() -> None:
    """But for chance, the swelling inside the borders, whose butted corners are not alike, is
    the same turned by a quarter and mirrored, to what it changes in one pixel."""
    shown = subject_of("samphire", "mini")
    side = 400
    left, top, right, _ = shown.bound.bounds
    fine = side / (right - left)
    whole = swelling(shown, Window(left, top, fine, side, side), uneven=0)
    edge = round((shown.borders + shown.edge + 0.5) * fine)
    found = whole[edge:-edge, edge:-edge]
    steep = max(np.abs(np.diff(found, axis=axis)).max() for axis in (0, 1))
    for other in (np.rot90(found), found[::-1], found[:, ::-1], found.T):
        assert np.abs(found - other).max() < steep
        assert np.abs(found - other).mean() < 0.02 * found.mean()


def test_nothing_is_held_lower_than_its_stitches() -> None:
    """Along the quilting the top lies low, between the lines it swells."""
    shown = subject_of("samphire", "mini")
    side = 600
    fine = side / shown.width
    window = Window(shown.bound.bounds[0], shown.bound.bounds[1], fine, side, side)
    made = relief(shown, window)
    lines = [s.lines for s in shown.stitching if not s.hidden]
    on = sum(covered(window, each.buffer(0.03)) for each in lines) > 0.5
    near = sum(covered(window, each.buffer(0.17)) for each in lines) > 0.5
    motif = covered(window, shown.motifs[0].shape.buffer(0.1)) > 0
    open_ = ~near & ~motif & (covered(window, shown.outline.buffer(-0.3)) > 0)
    assert made.height[on & ~motif].mean() < 0.35 * made.height[open_].mean()


def test_the_same_bytes_twice() -> None:
    shown = subject_of("millrace", next(iter(pattern_of("millrace").sizes)))
    scene = scene_of(shown)
    colours = colours_of(pattern_of("millrace"))[0]
    one, two = (
        picture(face_of(shown, scene, (240, 300)), colours, scene, (240, 300)) for _ in range(2)
    )
    assert one.shape == (240, 300, 3) and one.tobytes() == two.tobytes()
    assert one.std() > 10


def test_the_weave_does_not_shimmer() -> None:
    """Reduced to a third by plain averages, no stripes are left of the weave: what remains
    is smaller than what was there, as of noise, and nothing is periodic."""
    for fine in (30.0, 60.0, 110.0):
        tile = weave(fine)
        small = tile[:1023, :1023].reshape(341, 3, 341, 3).mean(axis=(1, 3))
        power = np.abs(np.fft.fft2(small)) ** 2
        assert small.std() < 0.75 * tile.std()
        assert power.max() < 0.02 * power.sum()
        finest = np.abs(np.fft.fft2(tile)) ** 2
        cycles = np.abs(np.fft.fftfreq(1024))
        beyond = finest[(cycles[:, None] > 0.42) | (cycles[None, :] > 0.42)]
        assert beyond.sum() < 1e-3 * finest.sum()
