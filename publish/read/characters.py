"""Characters that no page and no terminal can show.

In: text from a file. Out: the text made safe to show, or what is wrong with it.
Invariant: what these let through can be written as UTF-8 and stand in XML 1.0 (W3C).
"""

from __future__ import annotations

import unicodedata

_LONGEST = 60


def _bad(sign: str) -> bool:
    # Controls, lone surrogates, and the non-characters at the end of each plane.
    return (unicodedata.category(sign) in ("Cc", "Cs") and sign not in "\n\t") or ord(
        sign
    ) & 0xFFFE == 0xFFFE


def unprintable(text: str) -> str:
    """Return the first character that cannot be printed as `U+0007`, or nothing."""
    return next((f"U+{ord(c):04X}" for c in text if _bad(c)), "")


def printable(text: str) -> str:
    """Return the text with a mark in place of what cannot be printed."""
    return "".join("�" if _bad(c) else c for c in text)


def shown(text: str) -> str:
    """Return the text on one line and short enough for a headline."""
    line = printable(" ".join(text[: 4 * _LONGEST].split()))
    return line if len(line) <= _LONGEST else line[: _LONGEST - 1] + "…"
