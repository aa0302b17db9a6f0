"""One input put to the program: a result or findings with places, whatever it is.

In: text or bytes, and a folder to work in. Out: the findings' codes. Raises whatever the
program raises, and AssertionError for a finding without a place.
"""

from __future__ import annotations

import io
from collections.abc import Callable
from functools import cache
from importlib.util import find_spec
from pathlib import Path

import mutate
import mutate_files
from helpers import DRAWING
from mutate import Choose
from PIL import Image

from publish import pipeline
from publish.draft.drawing import read_drawing
from publish.draft.fill import cloth
from publish.notes import Note, Place
from publish.report import concise
from publish.typeset import house, pictures, prose
from publish.write.filling import filled


def placed(notes: list[Note]) -> list[str]:
    """Return the codes of findings, each of which must have a place and words."""
    for note in notes:
        assert note.place.file and note.place.line >= 1 and note.place.column >= 1, note
        assert note.what and concise(note).isprintable(), note
    return [n.code for n in notes]


def pattern(text: str | bytes, folder: Path) -> list[str]:
    """Check a pattern with a drawing beside it."""
    (folder / "bulrush.svg").write_text(DRAWING, encoding="utf-8")
    path = folder / "pattern.yaml"
    path.write_bytes(text if isinstance(text, bytes) else text.encode("utf-8", "surrogatepass"))
    return placed(list(pipeline.examine(path).report))


def drawing(text: str | bytes, folder: Path) -> list[str]:
    """Read a drawing and turn it into cloth."""
    path = folder / "wedge.svg"
    path.write_bytes(text if isinstance(text, bytes) else text.encode("utf-8", "surrogatepass"))
    found, notes = read_drawing(path, "wedge.svg", None, "motifs.fen.drawing")
    codes = placed(list(notes))
    if found is None:
        assert codes, "refused without a finding"
        return codes
    _, more = cloth(found, 1e-3)
    return codes + placed(list(more))


def logo(data: str | bytes, folder: Path, suffix: str = ".svg") -> list[str]:
    """Look at a logo."""
    path = folder / f"logo{suffix}"
    path.write_bytes(data if isinstance(data, bytes) else data.encode("utf-8", "surrogatepass"))
    notes = pictures.check_logo(path, Place("pattern.yaml"))
    if not notes:
        assert pictures.logo(path) is not None
    pictures.size(path)
    return placed(notes)


def font(data: bytes, folder: Path) -> list[str]:
    """Look at a font."""
    path = folder / "own.ttf"
    path.write_bytes(data)
    return placed(house._font("text", path, Place("pattern.yaml")))


def words(text: str | bytes, folder: Path) -> list[str]:
    """Fill in a step's text, and set it."""
    said = text if isinstance(text, str) else text.decode("utf-8", "replace")
    values = {"mini": {"block": "6 in"}, "each": {"block": "6 in"}}
    made, slips = filled(said, values)
    prose.prose(made)
    prose.inline(made)
    return [slip.kind for slip in slips]


@cache
def picture(kind: str) -> bytes:
    stream = io.BytesIO()
    Image.radial_gradient("L").resize((40, 30)).convert("RGB").save(stream, kind)
    return stream.getvalue()


@cache
def own_font() -> bytes:
    spec = find_spec("font_source_sans_pro")
    assert spec is not None and spec.submodule_search_locations
    folder = Path(spec.submodule_search_locations[0]) / "files"
    return (folder / "SourceSansPro-It.ttf").read_bytes()


Trial = Callable[[Choose], tuple[str | bytes, Callable[[Path], list[str]]]]


def _picture(choose: Choose) -> tuple[str | bytes, Callable[[Path], list[str]]]:
    kind, suffix = choose((("PNG", ".png"), ("JPEG", ".jpg"), ("TIFF", ".tif")))
    data = mutate_files.spoiled(picture(kind), choose)
    return data, lambda folder: logo(data, folder, suffix)


def _font(choose: Choose) -> tuple[str | bytes, Callable[[Path], list[str]]]:
    data = mutate_files.spoiled(own_font(), choose)
    return data, lambda folder: font(data, folder)


def _of(make: Callable[[Choose], str], test: Callable[[str | bytes, Path], list[str]]) -> Trial:
    def trial(choose: Choose) -> tuple[str | bytes, Callable[[Path], list[str]]]:
        text = make(choose)
        return text, lambda folder: test(text, folder)

    return trial


TRIALS: dict[str, Trial] = {
    "pattern": _of(mutate.pattern, pattern),
    "drawing": _of(mutate_files.drawing, drawing),
    "logo": _of(mutate_files.drawing, logo),
    "words": _of(mutate_files.words, words),
    "picture": _picture,
    "font": _font,
}
STORED: dict[str, Callable[[bytes, Path], list[str]]] = {
    "pattern": pattern,
    "drawing": drawing,
    "logo": logo,
    "words": words,
    "picture": lambda data, folder: logo(data, folder, ".png"),
    "font": font,
}
"""How an input of the corpus is put to the program again, by the first part of its name."""
