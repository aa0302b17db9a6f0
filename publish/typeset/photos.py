"""Photographs in their places: how large each is printed, and whether it is sharp enough.

In: pattern, the HTML of its pages. Out: `PhotoPlate`s for templates, the pictures that the
pages ask for, notes.
Invariant: a photograph is made for the very width that it is printed at; nothing is said
of one that no page shows.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from pathlib import Path

from publish.model.pattern import Pattern
from publish.notes import Note, error, warning
from publish.typeset import pictures
from publish.units import POINTS_PER_INCH

PHOTO = "photo"
"""Addresses of photographs: `photo:NUMBER/WIDTH`, the printed width in points."""
_ADDRESS = re.compile(rf"\b{PHOTO}:(\d+)/(\d+\.\d+)")


@dataclass(frozen=True)
class PhotoPlate:
    """A photograph in its place. `width` and `height` are printed points."""

    number: int
    alt: str
    caption: str
    width: float
    height: float

    @property
    def src(self) -> str:
        return f"{PHOTO}:{self.number}/{self.width:.2f}"

    def within(self, width: float, height: float, enlarge: bool = True) -> PhotoPlate:
        """Return the photograph as large as a box of points lets it be."""
        share = min(width / self.width, height / self.height)
        if share >= 1 and not enlarge:
            return self
        return replace(self, width=self.width * share, height=self.height * share)


def plates(pattern: Pattern, place: str) -> tuple[PhotoPlate, ...]:
    """Return the photographs for a place, `cover` or `page`, at their finest size."""
    found = []
    for number, photo in enumerate(pattern.photos):
        size = pictures.size(photo.file)
        if photo.place == place and size is not None:
            alt = (
                photo.alt
                or photo.caption
                or pattern.words.tell("page-photograph", title=pattern.title)
            )
            width, height = (n / pictures.FINE * POINTS_PER_INCH for n in size)
            found.append(PhotoPlate(number, alt, photo.caption, width, height))
    return tuple(found)


def check(pattern: Pattern) -> tuple[Note, ...]:
    """Return a note for each photograph, or swatch of a fabric, that is too large or cannot
    be read."""
    files: list[tuple[Path, tuple[str | int, ...]]] = [
        (p.file, ("photos", n, "file")) for n, p in enumerate(pattern.photos)
    ]
    files += [
        (fabric.swatch.file, ("fabrics", key, "swatch", "file"))
        for key, fabric in pattern.fabrics.items()
        if fabric.swatch is not None
    ]
    found = []
    for file, path in files:
        place, large = pattern.place(*path), pictures.too_large(file)
        if large is not None:
            found.append(large.note(place, "photograph"))
        elif pictures.size(file) is None:
            found.append(
                error(
                    "T716",
                    place,
                    "the photograph is not a picture that can be read",
                    expected="a JPEG, PNG or TIFF",
                    received=file.name,
                    help="save it again from the camera or your picture program",
                )
            )
    return tuple(found)


def asked(html: str) -> Iterator[tuple[str, int, float]]:
    """Yield address, number and printed width of each photograph that pages show."""
    for found in dict.fromkeys(_ADDRESS.findall(html)):
        yield f"{PHOTO}:{found[0]}/{found[1]}", int(found[0]), float(found[1])


def prints(pattern: Pattern, html: str) -> dict[str, pictures.Print]:
    """Return the pictures that pages show, by address."""
    return {
        address: pictures.photograph(pattern.photos[number].file, width)
        for address, number, width in asked(html)
    }


def coarse(pattern: Pattern, html: str) -> tuple[Note, ...]:
    """Return a warning for each photograph with too few pixels for its printed size."""
    notes = []
    for _, number, width in asked(html):
        size = pictures.size(pattern.photos[number].file)
        inches = width / POINTS_PER_INCH
        if size is not None and size[0] < pictures.COARSE * inches:
            least = round(pictures.COARSE * inches)
            notes.append(
                warning(
                    "T718",
                    pattern.place("photos", number, "file"),
                    "the photograph has too few pixels for its printed size",
                    expected=f"at least {least} pixels across for {inches:.1f} in, "
                    f"{pictures.COARSE} to the inch",
                    received=f"{size[0]} across, {size[0] / inches:.0f} to the inch",
                    help="use the picture as it came from the camera, not one made smaller",
                )
            )
    return tuple(notes)
