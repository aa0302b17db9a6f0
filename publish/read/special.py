"""Forms with a little more to them: lengths, colours, references, drawings.

In: the text of one YAML scalar. Out: its value, or an `Unfit`.
Invariant: as in `forms`; a drawing never leads out of the pattern's folder.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path
from typing import Any

from publish.read.forms import NUMBER_PATTERN, Form, Hint, Unfit, nearest, signed
from publish.units import UNIT_WORDS, UNITS, parse_length, split_unit

_LONGEST_LENGTH = 60
_CLOCK = re.compile(r"\d+(:\d+)+")
_SWITCH = re.compile(r"yes|no|on|off|true|false", re.IGNORECASE)


@dataclass(frozen=True)
class Length(Form):
    """A length with its unit, from `least` (or above it) to `most`; inches inside."""

    least: str
    most: str
    above: bool = False

    @property
    def words(self) -> str:
        if self.above:
            return f"a length above {self.least}, up to {self.most}"
        return f"a length from {self.least} to {self.most}"

    def json(self) -> dict[str, Any]:
        units = "|".join(_any_case(u) for u in UNIT_WORDS)
        return {"type": "string", "pattern": rf"^\s*({NUMBER_PATTERN})\s*({units})\.?\s*$"}

    def read(self, text: str, hint: Hint) -> Any:
        plain = " ".join(text.split())
        if len(plain) > _LONGEST_LENGTH:
            return Unfit("R120", "is not a length", _length_help("", hint))
        number, unit = split_unit(plain)
        value = signed(number)
        if value is None:
            return Unfit("R120", "is not a length", _length_help(plain, hint))
        if not unit:
            return Unfit(
                "R121", "has no unit", f"write `{number} in`; the units are {', '.join(UNITS)}"
            )
        if unit not in UNITS:
            near = nearest(unit, UNIT_WORDS)
            units = ", ".join(UNITS)
            return Unfit(
                "R122",
                f"has the unit `{unit[:20]}`",
                f"write `{number} {near}`" if near else f"write `{number} in`, or another unit",
                expected=f"a length with one of the units {units}",
            )
        return self._in_range(value * UNITS[unit], hint)

    def _in_range(self, value: Fraction, hint: Hint) -> Any:
        least, most = parse_length(self.least), parse_length(self.most)
        help_ = f"write {self.words}, such as `{hint.example}`"
        if value < 0:
            return Unfit("R123", "is below zero", help_)
        if value < least or (self.above and value == least):
            return Unfit("R123", "is too small", help_)
        if value > most:
            return Unfit("R123", "is too large", help_)
        return value


def _any_case(word: str) -> str:
    """Return a pattern for a word in capital or small letters (ECMA-262 has no switch)."""
    return "".join(f"[{c}{c.upper()}]" if c.isalpha() else re.escape(c) for c in word)


def _length_help(text: str, hint: Hint) -> str:
    """Return what to write where no length can be made out."""
    example = f"such as `{hint.example}`"
    if _CLOCK.fullmatch(text):
        return f"a colon makes it a time of day; write a fraction or a decimal, {example}"
    if _SWITCH.fullmatch(text):
        return f"it asks for a length, {example}; to leave it at its default, remove the key"
    if "," in text:
        return f"write the decimal with a point, {example}"
    if re.search(r"\d\D*\s[x×*]\s*\d", text):
        return f"write one length for both directions, {example}"
    return f"write a number and a unit, {example}"


@dataclass(frozen=True)
class Colour(Form):
    """A screen colour as `#rrggbb` (CSS Color Module Level 4, hexadecimal notation)."""

    @property
    def words(self) -> str:
        return 'a colour as `"#rrggbb"`, in quotes'

    def json(self) -> dict[str, Any]:
        return {"type": "string", "pattern": "^#[0-9a-fA-F]{6}$"}

    def read(self, text: str, hint: Hint) -> Any:
        if re.fullmatch("#[0-9a-fA-F]{6}", text):
            return text.lower()
        digits = text.lstrip("#")
        if re.fullmatch("[0-9a-fA-F]{3}", digits):
            digits = "".join(d * 2 for d in digits)
        if re.fullmatch("[0-9a-fA-F]{6}", digits):
            return Unfit("R126", "is not `#` and six digits", f'write `"#{digits.lower()}"`')
        return Unfit(
            "R126",
            "is not `#` and six digits",
            f"write two digits (0-9, a-f) each for red, green and blue, such as `{hint.example}`",
        )


@dataclass(frozen=True)
class Ref(Form):
    """The key of something the designer defined elsewhere: a fabric, motif or block."""

    section: str
    noun: str

    @property
    def words(self) -> str:
        return f"a key of `{self.section}`"

    def json(self) -> dict[str, Any]:
        return {"type": ["string", "number"]}

    def read(self, text: str, hint: Hint) -> Any:
        return text


@dataclass(frozen=True)
class Drawing(Form):
    """An SVG file in the pattern's folder or below it; read as an absolute path."""

    @property
    def words(self) -> str:
        return "the path of an SVG file, from the pattern's folder"

    def json(self) -> dict[str, Any]:
        return {"type": "string", "pattern": r"^(?![/\\~]).*\.[sS][vV][gG]$"}

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
                "leads out of the pattern's folder",
                f"copy the file beside the pattern and write `{path.name}`",
            )
        if path.suffix.lower() != ".svg":
            return Unfit(
                "R133",
                "is not an SVG file",
                "save the drawing as SVG from your drawing program "
                f"and write `{Path(text).with_suffix('.svg')}`",
            )
        if path.is_file():
            return folder / path.relative_to(home)
        return Unfit("R131", "is not there", _drawing_help(path, home))


def _drawing_help(path: Path, home: Path) -> str:
    """Return which drawing was likely meant, from those that are there."""
    there = sorted(p.relative_to(home).as_posix() for p in home.glob("*.svg"))[:50]
    there += sorted(p.relative_to(home).as_posix() for p in home.glob("*/*.svg"))[:50]
    near = nearest(path.relative_to(home).as_posix(), there)
    if near:
        return f"write `{near}`"
    if there:
        return f"drawings that are there: {', '.join(there[:5])}"
    return f"save the drawing as `{path.relative_to(home).as_posix()}` beside the pattern"
