"""Forms of files that the designer keeps beside the pattern: drawings, fonts, pictures.

In: the text of one YAML scalar. Out: an absolute path, or an `Unfit`.
Invariant: as in `forms`; a path is from the folder of the file that names it, and does not
lead out of that. Only the name is
judged here; what is in the file, the stage that uses it judges.
"""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Any

from publish.read.forms import Form, Hint, Unfit, nearest


@dataclass(frozen=True)
class File(Form):
    """A file in the pattern's folder or below it. `noun` is what it is called in notes,
    `kind` what it must be, `endings` its name's, in small letters."""

    noun: str
    kind: str
    endings: tuple[str, ...]

    @property
    def words(self) -> str:
        return f"the path of {self.kind}, from the pattern's folder"

    def json(self) -> dict[str, Any]:
        either = "|".join(_any_case(e.removeprefix(".")) for e in self.endings)
        ending = either if len(self.endings) == 1 else f"({either})"
        return {"type": "string", "pattern": rf"^(?![/\\~]).*\.{ending}$"}

    def read(self, text: str, hint: Hint) -> Any:
        try:
            return self._find(text, hint.folder)
        except (OSError, ValueError, RuntimeError):  # a name no system allows
            return Unfit(
                "R131",
                "is not a path that can be opened",
                f"write the file's name, such as `{hint.example}`",
            )

    def _find(self, text: str, folder: Path) -> Any:
        home = folder.resolve()
        path = (home / text).resolve()
        if not path.is_relative_to(home) or text.startswith("~"):
            return Unfit(
                "R132",
                "leads out of the folder of the file that names it",
                f"copy the file into that folder and write `{path.name}`",
            )
        if path.suffix.lower() not in self.endings:
            return Unfit("R133", f"is not {self.kind}", self._save(text))
        if path.is_file():
            return folder / path.relative_to(home)
        return Unfit("R131", "is not there", self._help(path, home))

    def _save(self, text: str) -> str:
        """Return how to make a file of the right kind."""
        name = Path(text).with_suffix(self.endings[0])
        return f"save the {self.noun} as {self.endings[0]} and write `{name}`"

    def _help(self, path: Path, home: Path) -> str:
        """Return which file was likely meant, from those that are there."""
        there: list[str] = []
        for pattern in ("*", "*/*"):
            found = (p for p in home.glob(pattern) if p.suffix.lower() in self.endings)
            there += sorted(p.relative_to(home).as_posix() for p in found)[:50]
        near = nearest(path.relative_to(home).as_posix(), there)
        if near:
            return f"write `{near}`"
        if there:
            return f"{self.noun}s that are there: {', '.join(there[:5])}"
        return f"save the {self.noun} as `{path.relative_to(home).as_posix()}` beside the pattern"


def _any_case(word: str) -> str:
    """Return a pattern for a word in capital or small letters (ECMA-262 has no switch)."""
    return "".join(f"[{c}{c.upper()}]" if c.isalpha() else c for c in word)


@dataclass(frozen=True)
class Drawing(File):
    """An SVG file, or a picture of the cut paper."""

    noun: str = "drawing"
    kind: str = "an SVG file, or a photo or scan of the cut paper (JPEG, PNG, TIFF, HEIC)"
    endings: tuple[str, ...] = (".svg", ".jpg", ".jpeg", ".png", ".tif", ".tiff", ".heic")

    def _save(self, text: str) -> str:
        name = Path(text).with_suffix(".svg")
        return f"save the drawing as SVG from your drawing program and write `{name}`"


FONT = File("font", "a TrueType or OpenType font", (".ttf", ".otf"))
LOGO = File("logo", "an SVG, PNG or JPEG file", (".svg", ".png", ".jpg", ".jpeg"))
PHOTO = File("photo", "a JPEG, PNG or TIFF file", (".jpg", ".jpeg", ".png", ".tif", ".tiff"))
