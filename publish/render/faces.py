"""A size as it will look, computed from its draft.

In: a subject, colours by fabric, a scene, pixels. Out: an array of sRGB bytes.
Invariant: the same values give the same bytes; the relief, which no colour changes, is
computed once for all colourways of one subject at one size.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np

from publish.render.arrays import Bytes, Grey, Light, hashed, to_bytes
from publish.render.bends import plump, waves
from publish.render.cloth import cloth
from publish.render.light import DAYLIGHT, RAKING, lit
from publish.render.paint import Window
from publish.render.prints import Print
from publish.render.relief import Relief, relief
from publish.render.scenes import SCENES, Lying, Place, Scene, composed
from publish.render.subject import Subject

MARGIN = 0.012
"""Of the longer side: what is computed beyond the edge, for the binding's own shade."""
KNEE = np.float32(0.78)
"""Light above which a picture holds back, so that pale cloth keeps its weave."""
WARM = (1.025, 1.0, 0.965)
COOL = (0.955, 1.0, 1.065)
"""The lamp's and the sky's tints; they even out in the open."""
GRAIN = np.float32(1.3)
"""Steps of a byte by which pixels differ at random, which keeps even walls from banding."""


@dataclass(frozen=True)
class Face:
    """A subject's relief in its light, ready for any colours."""

    subject: Subject
    window: Window
    relief: Relief
    key: Grey
    sky: Grey


def scene_of(subject: Subject, quilts: str = "wall") -> Scene:
    """Return where a subject is shown: a quilt where it is asked for, a pillow on a bench."""
    return SCENES["bench" if subject.pillow else quilts]


def face_of(subject: Subject, scene: Scene, shape: tuple[int, int]) -> Face:
    """Compute the relief of a subject and its light, for a picture of so many pixels."""
    return face_at(subject, scene.fills * min(shape[0] / subject.height, shape[1] / subject.width))


def face_at(subject: Subject, fine: float) -> Face:
    """Compute the relief of a subject and its light, `fine` pixels to the inch."""
    left, top, right, bottom = subject.bound.bounds
    more = MARGIN * max(subject.width, subject.height)
    window = Window(
        left - more,
        top - more,
        fine,
        round((right - left + 2 * more) * fine),
        round((bottom - top + 2 * more) * fine),
        plump(subject) if subject.pillow else waves(subject),
    )
    made = relief(subject, window)
    key, sky = lit(made.height, made.inside, fine, RAKING if subject.pillow else DAYLIGHT)
    return Face(subject, window, made, key, sky)


def coloured_face(
    face: Face, colours: Mapping[str, str], ground: str, prints: Mapping[str, Print] | None = None
) -> Light:
    """Return a face in its fabrics' colours and in its light."""
    light = face.key + face.sky
    found = cloth(face.subject, face.window, face.relief, colours, ground, prints, light)
    warm = np.array(WARM, np.float32)
    cool = np.array(COOL, np.float32)
    for channel in range(3):
        found[channel] *= face.key * warm[channel] + face.sky * cool[channel]
        _hold_back(found[channel])
    return found


def _hold_back(light: Grey) -> None:
    """Make light that nears white come there slowly instead of reaching it."""
    over = light - KNEE
    np.maximum(over, 0, out=over)
    over *= -1 / (1 - KNEE)
    np.minimum(light, KNEE, out=light)
    light -= (1 - KNEE) * np.expm1(over)


def picture(
    face: Face,
    colours: Mapping[str, str],
    scene: Scene,
    shape: tuple[int, int],
    prints: Mapping[str, Print] | None = None,
) -> Bytes:
    """Return the whole picture, `shape` rows and columns of sRGB bytes."""
    lit_face = coloured_face(face, colours, scene.ground, prints)
    rows, columns = face.window.shape
    top = round((shape[0] - rows) / 2 - scene.rise * max(shape))
    if scene.bench:
        top = round((scene.horizon + 0.035) * shape[0]) - rows
    place = Place(round((shape[1] - columns) / 2), max(0, top))
    lying = Lying(lit_face, face.relief.inside, place, scene.depth * max(shape))
    light = composed(scene, [lying], shape)
    return to_bytes(light, GRAIN * hashed(shape, 71))
