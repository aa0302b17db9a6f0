"""Which rows, centres and rounds of blocks no step sews together.

In: a case, a size, its steps. Out: what is left untold, in words.
Invariant: each row that the seam tree joins is named by a step that sews it, or told
together with all rows; the rows are then joined, and each round of blocks is sewn on.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from publish.model.draft import Unit
from publish.proof.case import Case
from publish.proof.claims import Told
from publish.proof.joining import made

_ORDINALS = ("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth",
             "tenth", "eleventh", "twelfth")  # fmt: skip
_LIST = r"(\d+(?:(?:, | and | to )\d+)*)"
_ALL = re.compile(
    r"\bsew\b[^.]*\b(?:each|every) row\b|\bsew\b[^.]*\b(?:blocks|grounds)\b[^.]*\bin(?:to)? rows\b"
    r"|\bsew\b[^.]*\bblocks?\b[^.]*\btogether\b", re.IGNORECASE,
)  # fmt: skip
"""A step that sews every row at once, and so names none."""
_TOGETHER = re.compile(
    r"\bsew (?:the |all )?rows\b|\bsew (?:row )?\d[^.]*\btogether\b|\brows [^.]*\bsewn? together"
    r"|\bsew (?:[\w ]+ )?rows (?:and|\d)[^.]*\btogether\b", re.IGNORECASE,
)  # fmt: skip
_BETWEEN = ("sashing", "cornerstone", "setting")
_ROUND_ON = re.compile(r"\bleft strip to the left\b|\bstrips? (?:on)?to the (?:sides|top)\b",
                       re.IGNORECASE)  # fmt: skip


def untold(case: Case, key: str, steps: Sequence[Told]) -> Iterator[str]:
    """Yield what no step of a size does to rows and rounds: `sews the blocks of row 2 ...`."""
    texts = [s.step.text for s in steps]
    named = {n for text in texts for n in _rows_named(text)}
    rows: dict[str, None] = {}
    for unit in _across_the_top(case.drafts[key].assembly):
        if unit.number:
            rows.setdefault(unit.name)
        elif not any(_joins(text, unit) for text in texts):
            what = "rows" if any(p.parts for p in unit.parts) else "blocks"
            yield f"sews the {what} of the {unit.name} together"
    missing = [r for r in rows if r not in named and not any(_all_rows(t) for t in texts)]
    if missing:
        yield f"sews blocks into rows: {', '.join(missing)}"
    yield from _rounds(case, key, texts)


def _across_the_top(root: Unit) -> Iterator[Unit]:
    """Yield the units that are joined from more than one block, borders and rounds aside."""
    for unit in made(root):
        patches = unit.patches
        homes = {p.place for p in patches}
        around = any(
            p.role == "border" or (p.place is not None and p.place.in_round) for p in patches
        )
        between = any(p.role in _BETWEEN for p in patches)
        if len(unit.parts) > 1 and not around and (between or len(homes) > 1):
            yield unit


def _all_rows(text: str) -> bool:
    """Return whether a text sews the blocks of all rows: it names no row or centre itself."""
    one = _rows_named(text) or re.search(r"\bfor the [\w ]+, sew\b", text, re.IGNORECASE)
    return _ALL.search(text) is not None and not one


def _rows_named(text: str) -> set[str]:
    """Return the rows that a step sews, `row 1`, `sashing row 2`."""
    found = {m[1].lower() for m in re.finditer(r"\*\*((?:[\w-]+ )?row \d+)\*\*: ", text, re.I)}
    for match in re.finditer(rf"\bfor ((?:[\w-]+ )?row)s? {_LIST}, sew\b", text, re.IGNORECASE):
        found |= {f"{match[1].lower()} {n}" for n in _numbers(match[2])}
    return found


def _numbers(listed: str) -> set[int]:
    """Return the numbers of a list: of `1, 2 and 5`, of `1 to 3`."""
    found = {int(n) for n in re.findall(r"\d+", listed)}
    for first, last in re.findall(r"(\d+) to (\d+)", listed):
        found |= set(range(int(first), int(last) + 1))
    return found


def _joins(text: str, unit: Unit) -> bool:
    """Return whether a text sews the parts of a centre or a top."""
    own = re.search(rf"\bfor the {re.escape(unit.name)}, sew\b", text, re.IGNORECASE)
    if own is not None:
        return True
    rows = sum(bool(p.number) for p in unit.parts)
    if rows == 1:  # one row on point, between its corner triangles
        return re.search(r"\badd the last\b.*\bsew\b", text, re.IGNORECASE) is not None
    return bool(_TOGETHER.search(text)) if rows else _all_rows(text)


def _rounds(case: Case, key: str, texts: list[str]) -> Iterator[str]:
    """Rounds of blocks are sewn into strips, and these to the top."""
    numbers = [n for n, layer in enumerate(case.sizes[key].rounds, 1) if layer.blocks]
    for number in numbers:
        word = _ORDINALS[number - 1] if number <= len(_ORDINALS) else f"{number}th"
        form = rf"\b{word} round\b[^.]*\bblocks\b.*\bsew\b"
        if not any(re.search(form, t, re.IGNORECASE | re.DOTALL) for t in texts):
            yield f"sews the blocks of the {word} round into strips"
    sewn = sum(1 for t in texts if _ROUND_ON.search(t))
    if sewn < len(numbers):
        yield f"sews {len(numbers) - sewn} of the {len(numbers)} rounds of blocks to the top"
