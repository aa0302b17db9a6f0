"""Forms with a little more to them: lengths, colours, references, barcodes.

In: the text of one YAML scalar. Out: its value, or an `Unfit`.
Invariant: as in `forms`.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from publish.gtin import LENGTHS, UPC, parse_gtin
from publish.read.forms import NUMBER_PATTERN, Form, Hint, Unfit, nearest, signed
from publish.units import INCH_UNITS, UNIT_WORDS, UNITS, parse_length, split_unit

_LONGEST_LENGTH = 60
_CLOCK = re.compile(r"\d+(:\d+)+")
_WAY = r"^[a-z0-9_-]+(\.[a-z0-9_-]+)*$"
_COMMA = re.compile(r"\d+(?:\.\d+)*,\d+(?:\s*[a-z]+)?")
_SWITCH = re.compile(r"yes|no|on|off|true|false", re.IGNORECASE)


class InInches(Fraction):
    """A length that the designer wrote in inches, feet or yards."""


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
        found = self._in_range(value * UNITS[unit], hint)
        return InInches(found) if unit in INCH_UNITS and isinstance(found, Fraction) else found

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
    if _COMMA.fullmatch(text):
        return f"a decimal comma is not read: write `{text.replace(',', '.')}`"
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
class Barcode(Form):
    """The number under a barcode; its value is `EAN-13 6291041500213`, check digit proved."""

    @property
    def words(self) -> str:
        return "an EAN-13, UPC-A or ISBN, with or without its check digit"

    def json(self) -> dict[str, Any]:
        # Bare digits are a number to an editor; whether the last one fits it cannot tell.
        return {"type": ["string", "number"]}

    def read(self, text: str, hint: Hint) -> Any:
        try:
            found = parse_gtin(text)
        except ValueError as reason:
            return Unfit(
                "R134", "is not a number for a barcode", f"{reason}; such as `{hint.example}`"
            )
        return f"{found.kind} {found.digits}"

    def taken(self, text: str) -> Unfit | None:
        digits = re.sub(r"[\s-]", "", text)
        found = parse_gtin(text)
        if found.kind != UPC or not digits.isdigit() or len(digits) != LENGTHS[UPC]:
            return None
        whole = parse_gtin(f"EAN {digits}").digits
        return Unfit(
            "R137",
            "is taken for a complete UPC",
            f"write `UPC` before it; if it is an EAN that lacks its check digit, write `{whole}`",
            f"`UPC {digits}`",
        )


_CODE = "[RGDCSWFTPX][0-9]{3}"
"""A letter for each stage, and a number."""


@dataclass(frozen=True)
class Code(Form):
    """The code of a finding, such as `D332`."""

    @property
    def words(self) -> str:
        return "a finding's code: a capital and three digits"

    def json(self) -> dict[str, Any]:
        return {"type": "string", "pattern": f"^{_CODE}$"}

    def read(self, text: str, hint: Hint) -> Any:
        if re.fullmatch(_CODE, text):
            return text
        help_ = f"write it as the finding shows it, such as `{hint.example}`"
        if re.fullmatch(_CODE, text.upper()):
            help_ = f"write `{text.upper()}`"
        return Unfit("R125", "is not the code of a finding", help_)


@dataclass(frozen=True)
class Way(Form):
    """The way through a pattern file to a value: `sizes.throw.borders.0`."""

    @property
    def words(self) -> str:
        return "keys with a point between each, such as `sizes.throw`"

    def json(self) -> dict[str, Any]:
        return {"type": "string", "pattern": _WAY}

    def read(self, text: str, hint: Hint) -> Any:
        if re.fullmatch(_WAY, text):
            return text
        help_ = f"write the keys with a point between each, such as `{hint.example}`"
        return Unfit("R125", "is not a way to a value", help_)
