"""Fonts: the files a layout uses, as CSS, and which characters they have.

In: a layout's font faces. Out: `@font-face` rules, the characters no face has.
Invariant: only the layout's own files are ever set; a character that none of them has is
a note, never a font that happens to be on the machine.
"""

from __future__ import annotations

import hashlib
import re
import unicodedata
from collections.abc import Iterable
from functools import cache
from html import unescape
from pathlib import Path

from fontTools.ttLib import TTFont  # type: ignore[import-untyped]

from publish.typeset.layout_file import FontFace, stamp

SCHEME = "font"
_TAG = re.compile(r"<[^>]*>")


def address(face: FontFace) -> str:
    """Return the address that the style asks for a font file by.

    It follows from what is in the file, so that two files of one name stay apart and the
    same font has the same address on every machine.
    """
    digest = _digest(face.path, stamp(face.path))
    return f"{SCHEME}:{digest}{face.path.suffix.lower()}"


@cache
def _digest(path: Path, _: object) -> str:
    return hashlib.sha256(path.read_bytes()).hexdigest()[:16]


def quoted(family: str) -> str:
    """Return a family's name as a CSS string."""
    safe = family.replace("\\", "").replace('"', "")
    return f'"{safe}"'


def face_css(faces: Iterable[FontFace]) -> str:
    """Return one `@font-face` rule for each face."""
    return "\n".join(
        f"@font-face {{ font-family: {quoted(f.family)}; font-weight: {f.weight}; "
        f'font-style: {f.style}; src: url("{address(f)}") }}'
        for f in faces
    )


@cache
def _characters(path: Path, _: object) -> frozenset[int]:
    with TTFont(path, lazy=True) as font:
        return frozenset(font.getBestCmap())


def missing(text: str, faces: Iterable[FontFace]) -> tuple[str, ...]:
    """Return the characters of a text that no face has, in order of appearance.

    Spaces and marks that steer the layout need no glyph of their own.
    """
    known = frozenset().union(*(_characters(f.path, stamp(f.path)) for f in faces))
    wanted = dict.fromkeys(text)
    return tuple(c for c in wanted if ord(c) not in known and not _invisible(c))


def words(markup: str) -> str:
    """Return what a reader sees of HTML or SVG: the text without the tags."""
    return unescape(_TAG.sub("", markup))


def _invisible(sign: str) -> bool:
    return unicodedata.category(sign) in ("Zs", "Zl", "Zp", "Cc", "Cf")
