"""Forms that a plain value can take: words, numbers, choices.

In: the text of one YAML scalar, as the designer wrote it. Out: its value, or an `Unfit`
that says why not and what to write instead.
Invariant: a form's check, its words in the reference and its JSON Schema all come from
the same few numbers; no form raises for a designer's mistake. Reading the text, and not
what YAML would make of it, is why `no`, `1:30` and `0101` mean what they look like.
"""

from __future__ import annotations

import difflib
import re
from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path
from typing import Any

from publish.units import fraction_text, parse_number

NUMBER_PATTERN = r"(\d+(-|\s+))?\d+[/⁄]0*[1-9]\d*|\d+(\.\d+)?|\.\d+|(\d+\s*)?[¼½¾⅓⅔⅛⅜⅝⅞]"
"""What `units.parse_number` takes, for editors (ECMA-262, as JSON Schema asks)."""

KEY_PATTERN = r"^(?!none$)[a-z0-9][a-z0-9_-]{0,39}$"
"""A name that the designer makes up: it also names files and sheets."""

_LONGEST_NUMBER = 40


@dataclass(frozen=True)
class Unfit:
    """Why a value does not fit: `says` goes on from the key's name."""

    code: str
    says: str
    help: str
    expected: str = ""


@dataclass(frozen=True)
class Hint:
    """What a form may need to know beside the text: a right example, the folder."""

    example: str
    folder: Path


def nearest(word: str, known: Iterable[str], cutoff: float = 0.6) -> str | None:
    """Return the known word that `word` most likely stands for, or None."""
    plain = {_plain(k): k for k in known}
    found = difflib.get_close_matches(_plain(word[:60]), plain, 1, cutoff)
    return plain[found[0]] if found else None


def listed(words: Iterable[str]) -> str:
    """Return `a, b and c`, each set as something to type."""
    quoted = [f"`{w}`" for w in words]
    return " and ".join([", ".join(quoted[:-1]), quoted[-1]] if len(quoted) > 1 else quoted)


def _plain(word: str) -> str:
    return re.sub(r"[\s-]+", "_", word.strip().lower())


@dataclass(frozen=True)
class Form:
    """A kind of plain value. Subclasses say how it is read, told and given to editors."""

    @property
    def words(self) -> str:
        """What may be written, for a sentence: `a length above 0 in`."""
        raise NotImplementedError

    def json(self) -> dict[str, Any]:
        """Return the form as JSON Schema."""
        raise NotImplementedError

    def read(self, text: str, hint: Hint) -> Any:
        """Return the value that `text` stands for, or an `Unfit`."""
        raise NotImplementedError

    def taken(self, text: str) -> Unfit | None:
        """Return how a text that could be read in two ways was taken, or None."""
        return None


@dataclass(frozen=True)
class Name(Form):
    """A name in small letters, such as a layout's."""

    @property
    def words(self) -> str:
        return "a name in small letters, digits, `-` and `_`"

    def json(self) -> dict[str, Any]:
        return {"type": "string", "pattern": KEY_PATTERN}

    def read(self, text: str, hint: Hint) -> Any:
        if not re.fullmatch(KEY_PATTERN, text):
            return Unfit("R114", "is not a well-formed name", f"write {key_like(text)}")
        return text


def key_of(text: str) -> str:
    """Return the well-formed name that comes nearest to `text`; it may still be none."""
    return re.sub(r"[^a-z0-9]+", "_", text.lower()[:40]).strip("_")


def key_like(text: str) -> str:
    """Return what to write instead of a malformed name."""
    plain = key_of(text)
    if not re.fullmatch(KEY_PATTERN, plain):
        return "another name: small letters, digits, `-` and `_`"
    return f"`{plain}`: small letters, digits, `-` and `_`"


@dataclass(frozen=True)
class Choice(Form):
    """One of a few words."""

    options: tuple[str, ...]

    @property
    def words(self) -> str:
        return "one of " + ", ".join(f"`{o}`" for o in self.options)

    def json(self) -> dict[str, Any]:
        return {"enum": list(self.options)}

    def read(self, text: str, hint: Hint) -> Any:
        value = " ".join(text.split())
        if value in self.options:
            return value
        near = nearest(value, self.options)
        help_ = f"write `{near}`" if near else f"the choices are {listed(self.options)}"
        return Unfit("R125", "is not one of the choices", help_)


@dataclass(frozen=True)
class YesNo(Form):
    """`yes` or `no`."""

    @property
    def words(self) -> str:
        return "`yes` or `no` (`true` and `false` mean the same)"

    def json(self) -> dict[str, Any]:
        return {"enum": [True, False, "yes", "no"]}

    def read(self, text: str, hint: Hint) -> Any:
        answers = {"yes": True, "true": True, "no": False, "false": False}
        if text in answers:
            return answers[text]
        near = nearest(text, answers)
        return Unfit(
            "R125",
            "is neither `yes` nor `no`",
            f"write `{near or 'yes'}`" + ("" if near else " or `no`"),
        )


@dataclass(frozen=True)
class Whole(Form):
    """A whole number from `least` to `most`, or one of `only`."""

    least: int
    most: int
    only: tuple[int, ...] = ()
    unit: str = ""

    @property
    def words(self) -> str:
        unit = f" ({self.unit})" if self.unit else ""
        if self.only:
            return "one of " + ", ".join(str(n) for n in self.only) + unit
        return f"a whole number from {self.least} to {self.most}{unit}"

    def json(self) -> dict[str, Any]:
        if self.only:
            return {"enum": list(self.only)}
        return {"type": "integer", "minimum": self.least, "maximum": self.most}

    def read(self, text: str, hint: Hint) -> Any:
        if not re.fullmatch(r"[-+]?[0-9]+", text):
            return Unfit(
                "R120", "is not a whole number", f"write digits alone, such as `{hint.example}`"
            )
        value = int(text) if len(text) <= _LONGEST_NUMBER else None
        if value is not None and self.only and value in self.only:
            return value
        if value is None or self.only or not self.least <= value <= self.most:
            return Unfit("R124", f"cannot be {text.strip()[:20]}", f"write {self._near(value)}")
        return value

    def _near(self, value: int | None) -> str:
        """Return the possible numbers nearest to an impossible one, in words."""
        if not self.only:
            return self.words
        near = sorted(self.only, key=lambda n: abs(n - (value or 0)))[:2]
        return " or ".join(f"`{n}`" for n in sorted(near))


@dataclass(frozen=True)
class Number(Form):
    """A number from `least` to `most`, whole, decimal or with a fraction; read exactly."""

    least: int
    most: int

    @property
    def words(self) -> str:
        return f"a number from {self.least} to {self.most}"

    def json(self) -> dict[str, Any]:
        return {
            "anyOf": [
                {"type": "number", "minimum": self.least, "maximum": self.most},
                {"type": "string", "pattern": rf"^\s*[-−]?({NUMBER_PATTERN})\s*$"},
            ]
        }

    def read(self, text: str, hint: Hint) -> Any:
        value = signed(text)
        if value is None:
            return Unfit("R120", "is not a number", f"write a number, such as `{hint.example}`")
        if not self.least <= value <= self.most:
            return Unfit(
                "R124",
                f"cannot be {text.strip()[:20]}",
                f"write {self.words}, such as `{hint.example}`",
            )
        return value


def signed(text: str) -> Fraction | None:
    """Return a number that may carry a sign, or None when it is none."""
    plain = " ".join(text.split()).replace("−", "-")
    sign = -1 if plain.startswith("-") else 1
    if len(plain) > _LONGEST_NUMBER:
        return None
    try:
        return sign * parse_number(plain.removeprefix("-"))
    except ValueError:
        return None


@dataclass(frozen=True)
class Percent(Form):
    """A share, written with its sign: `3%`."""

    most: int

    @property
    def words(self) -> str:
        return f"a percentage from 0% to {self.most}%"

    def json(self) -> dict[str, Any]:
        return {"type": "string", "pattern": rf"^\s*({NUMBER_PATTERN})\s*%\s*$"}

    def read(self, text: str, hint: Hint) -> Any:
        value = signed(text.strip().removesuffix("%"))
        if value is None:
            return Unfit("R120", "is not a percentage", f"write it as `{hint.example}`")
        if not text.strip().endswith("%"):
            return Unfit("R121", "has no % sign", f"write `{fraction_text(value)}%`")
        if not 0 <= value <= self.most:
            return Unfit(
                "R124",
                f"cannot be {text.strip()[:20]}",
                f"write {self.words}, such as `{hint.example}`",
            )
        return value / 100
