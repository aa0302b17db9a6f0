"""Pictures as files, each computed once: within a run, and from one run to the next.

In: what is shown, colours and prints by fabric, a scene, pixels, a store. Out: `Picture`s.
Invariant: the key of a kept picture holds everything that its pixels depend on: shapes,
fabrics, colours, the bytes of printed fabrics, scene, shape and the drawing library.
"""

from __future__ import annotations

import io
from collections.abc import Mapping, Sequence
from dataclasses import astuple, dataclass
from functools import lru_cache, partial

import cairocffi
import shapely
from PIL import Image

from publish.kept import Store, digest
from publish.model.figure import Picture
from publish.render.arrays import Bytes
from publish.render.faces import Face, face_of, picture
from publish.render.prints import Print
from publish.render.scalebar import with_bar
from publish.render.scenes import Scene
from publish.render.subject import Subject
from publish.render.together import Row, arranged, side_by_side

KIND = "picture"
_QUALITY = 88
_DOTS = (300, 300)


@dataclass(frozen=True)
class Colours:
    """What the fabrics look like, by their keys: `#rrggbb`, and photographs of printed ones."""

    plain: tuple[tuple[str, str], ...]
    prints: tuple[tuple[str, Print], ...] = ()

    @property
    def parts(self) -> tuple[bytes, ...]:
        """Return what they are told from others by; a print's file by what is in it."""
        printed = [(key, each.width) for key, each in self.prints]
        files = [each.file.read_bytes() for _, each in self.prints]
        return repr((self.plain, printed)).encode(), *files


@dataclass(frozen=True)
class Asked:
    """One picture of one size: its pixels along each side, and whether it has a scale bar."""

    shown: Told
    colours: Colours
    scene: Scene
    side: int
    bar: bool = False

    def made(self, store: Store) -> Picture:
        """Return the picture, kept or computed."""
        told = repr((astuple(self.scene), self.side, self.bar)).encode()
        parts = (_DRAWN_BY, self.shown.digest, told, *self.colours.parts)
        data = store.made(KIND, parts, lambda: _one(self))
        return Picture(data, self.side, self.side, self.scene.says)


class Told:
    """A subject that is told from others by its content."""

    def __init__(self, shown: Subject) -> None:
        self.shown = shown
        shapes = [p.shape for p in shown.patches] + [m.shape for m in shown.motifs]
        shapes += [m.within for m in shown.motifs]
        shapes += [s.lines for s in shown.threads] + [shown.bound, shown.outline, shown.seams]
        told = repr(
            (
                [(p.fabric, p.grain) for p in shown.patches],
                [(m.fabric, m.method, m.turn_under, m.grain) for m in shown.motifs],
                [(s.fabric, s.hidden, s.even) for s in shown.threads],
                (shown.pillow, shown.binding, shown.edge, shown.borders),
            )
        ).encode()
        self.digest = digest(told, *(shapely.to_wkb(shape) for shape in shapes))

    def __hash__(self) -> int:
        return hash(self.digest)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Told) and self.digest == other.digest


_DRAWN_BY = cairocffi.cairo_version_string().encode()


@lru_cache(maxsize=24)
def _one(asked: Asked) -> bytes:
    """Return a square picture's file; one that was made before in this run is not made again."""
    side, colours = asked.side, asked.colours
    face = _lit(asked.shown, asked.scene, side)
    pixels = picture(face, dict(colours.plain), asked.scene, (side, side), dict(colours.prints))
    return _file(with_bar(pixels, face.window.fine) if asked.bar else pixels)


@lru_cache(maxsize=1)
def _lit(shown: Told, scene: Scene, side: int) -> Face:
    """Return the relief in its light, kept for the next colourway of the same size."""
    return face_of(shown.shown, scene, (side, side))


def rows_of(
    subjects: Mapping[str, Subject], colours: Colours, scene: Scene, wide: int, store: Store
) -> tuple[Picture, ...]:
    """Return all sizes to one scale, by their keys, in as many pictures as they take rows.

    `wide` is each picture's width in pixels.
    """
    told = {key: Told(each) for key, each in subjects.items()}
    found = []
    for row in arranged({k: (s.width, s.height) for k, s in subjects.items()}):
        here = [told[spot.key] for spot in row.spots]
        said = repr((astuple(scene), wide, astuple(row))).encode()
        parts = (_DRAWN_BY, said, *(t.digest for t in here), *colours.parts)

        data = store.made(KIND, parts, partial(_row, row, here, colours, scene, wide))
        found.append(Picture(data, wide, row.high(wide), scene.says, row.width, row.spots))
    return tuple(found)


def _row(row: Row, here: Sequence[Told], colours: Colours, scene: Scene, wide: int) -> bytes:
    shown = [each.shown for each in here]
    pixels = side_by_side(row, shown, dict(colours.plain), scene, wide, dict(colours.prints))
    return _file(pixels)


def _file(pixels: Bytes) -> bytes:
    stream = io.BytesIO()
    Image.fromarray(pixels).save(stream, "JPEG", quality=_QUALITY, subsampling=0, dpi=_DOTS)
    return stream.getvalue()
