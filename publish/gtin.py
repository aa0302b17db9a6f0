"""The number under a barcode: EAN-13, UPC-A or ISBN-13, its check digit proved.

In: a number as a publisher writes it (`629104150021`, `ISBN 978-0-306-40615-7`).
Out: `Gtin`, all digits with the check digit, and which kind it is.
Invariant: a number that is given with its check digit is never changed; one whose check
digit is wrong is refused. The arithmetic (GS1 modulo 10, weights 3 and 1 from the right)
is the library's (python-stdnum).
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from stdnum import ean, isbn

EAN, UPC, ISBN = "EAN-13", "UPC-A", "ISBN-13"
LENGTHS = {EAN: 13, UPC: 12, ISBN: 13}
"""Digits of each kind, the check digit counted."""

_BOOKLAND = ("978", "979")
_MUSIC = "9790"
"""979-0 is printed music's (ISMN), not a book's."""
_FORM = re.compile(
    r"(?:(?P<kind>EAN|UPC|ISBN)(?:-?1[03])?(?:-?A)?:?\s+)?(?P<rest>[\d\s-]*[\dX])", re.IGNORECASE
)
_KINDS = {"EAN": EAN, "UPC": UPC, "ISBN": ISBN}


@dataclass(frozen=True)
class Gtin:
    """A number to print as bars. `digits` ends in the check digit."""

    kind: str
    digits: str

    @property
    def heading(self) -> str:
        """Return the line that stands over a book's bars, its groups parted by hyphens."""
        return f"ISBN {isbn.format(self.digits)}" if self.kind == ISBN else ""


def parse_gtin(text: str) -> Gtin:
    """Return the number that `text` gives, with or without its check digit.

    The kind may stand before it (`UPC 036000291452`). Where it does not, 978 and 979 make
    an ISBN, 13 digits an EAN, 11 or 12 digits a UPC. Raises ValueError with a reason that
    a designer can act on.
    """
    match = _FORM.fullmatch(text.strip())
    if match is None:
        raise ValueError("only digits, spaces and hyphens, with EAN, UPC or ISBN before them")
    digits = re.sub(r"[\s-]", "", match["rest"]).upper()
    stated = _KINDS.get((match["kind"] or "").upper())
    if stated == ISBN and len(digits) == 10:
        digits = _from_ten(digits)
    if not digits.isdigit():
        raise ValueError("an X stands only at the end of a ten-digit ISBN")
    kind = stated or _kind_of(digits)
    return Gtin(kind, _whole(kind, digits))


def _from_ten(digits: str) -> str:
    """Return the ISBN-13 of a ten-digit ISBN."""
    if not isbn.is_valid(digits):
        raise ValueError("the last character of the ten-digit ISBN does not fit the others")
    return str(isbn.to_isbn13(digits))


def _kind_of(digits: str) -> str:
    if len(digits) in (12, 13) and digits.startswith(_BOOKLAND) and not digits.startswith(_MUSIC):
        return ISBN
    if len(digits) in (11, 12):
        return UPC
    return EAN


def _whole(kind: str, digits: str) -> str:
    """Return the digits with their check digit, which must be right where it is given."""
    length = LENGTHS[kind]
    if len(digits) not in (length - 1, length):
        raise ValueError(f"{kind} has {length} digits, or {length - 1} without the check digit")
    if kind == ISBN and (not digits.startswith(_BOOKLAND) or digits.startswith(_MUSIC)):
        raise ValueError("an ISBN-13 begins with 978, or with 979 and not 0")
    check = str(ean.calc_check_digit(digits[: length - 1]))
    if len(digits) == length and digits[-1] != check:
        reason = f"the last digit of the {kind} does not fit the others: it should be {check}"
        if kind == UPC:
            reason += "; an EAN-13 without its check digit needs `EAN` before it"
        raise ValueError(reason)
    return digits[: length - 1] + check
