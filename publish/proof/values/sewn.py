"""Whether each piece that is cut is sewn, and each piece that is sewn is cut.

In: a case. Out: notes.
Invariant: a piece's letter stands in at least one step after the cutting, at every size at
which it is cut, or is taken by an operation that a step tells; a letter in a step is cut at
one of the step's sizes.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from publish.model.cutplan import Piece
from publish.model.tree import every
from publish.model.words import Table
from publish.notes import Note, warning
from publish.proof.booklet.claims import is_cutting, letters, sentences, step_place, told
from publish.proof.booklet.rehearsed import told_letters
from publish.proof.case import Case, Code

CODES = {
    "P804": Code(
        "A piece is cut and no step sews it",
        "the maker is left with a piece and a gap",
        "`steps: [{remove: borders-mini-ends-1}]`, and strips **F** lie on the table",
        "keep the step, or reword it with `step:`; a piece that goes is taken out of the design",
    ),
    "P805": Code(
        "A step sews a piece that is not cut",
        "the maker looks for cloth that does not exist",
        "`text: Sew **Q** to the top.`, where the pieces are A to N",
        "`text: Sew **D** to the top.`",
    ),
}


def _letters(case: Case, key: str, piece: Piece, alike: list[set[str]]) -> set[str]:
    """Return a piece's letter and those of pieces that finish as it does: of one patch, some
    are cut larger where a block is trimmed. In a block they are sewn into `alike` units."""
    if piece.finished_width is None:
        return {piece.letter}
    same = {
        p.letter
        for p in case.plans[key].pieces
        if (p.purpose, p.fabric) == (piece.purpose, piece.fabric)
        and (p.finished_width, p.finished_length) == (piece.finished_width, piece.finished_length)
    }
    together = [letters for letters in alike if piece.letter in letters]
    return same & set().union(*together) if together else same


def _alike(case: Case, key: str) -> list[set[str]]:
    """Return, for each kind of unit, the letters that are sewn into units of that kind."""
    sources = case.plans[key].sources
    found: dict[str, set[str]] = {}
    for unit in every(case.drafts[key].assembly):
        for part in unit.parts if not unit.made else ():
            if part.patch is not None and part.patch.key in sources:
                found.setdefault(unit.kind, set()).add(sources[part.patch.key])
    return list(found.values())


def _is_block(case: Case, key: str, piece: Piece) -> bool:
    """Return whether a piece is a whole block as it is, laid out with the other blocks."""
    side = case.sizes[key].block_side
    plain = piece.purpose.split()[0] == "ground" and piece.finished_width == side
    return plain and case.sizes[key].block_count > len(case.drafts[key].placements)


_JOINING = re.compile(r"\blengths of\b|\blaid out straight\b", re.IGNORECASE)
"""Joining the lengths of a strip does not yet sew it to anything."""


def _untabled(case: Case, key: str) -> list[str]:
    """Return the blocks on foundations whose fabrics stand in no table of a size."""
    blocks = dict.fromkeys(f.block for f in case.drafts[key].foundations)
    mine = [s for s in case.manual.sections if key in (s.sizes or case.keys)]
    tables = {b.key for s in mine for b in s.blocks if isinstance(b, Table)}
    there = {
        b for b in blocks for t in tables if t.startswith("foundation-") and t.endswith(f"-{b}")
    }
    return [block for block in blocks if block not in there]


def check(case: Case) -> Iterator[Note]:
    """Yield a warning for each piece left over, and for each that is asked for in vain."""
    sewn = {key: told_letters(case, key) for key in case.keys}
    cut = {key: {p.letter for p in case.plans[key].pieces} for key in case.keys}
    for one in told(case):
        named = set(letters(case, one.words))
        if not is_cutting(one.section):
            used = [s for s in sentences(one.words) if not _JOINING.search(s)]
            for key in one.sizes:
                sewn[key] |= set(letters(case, "\n".join(used)))
        for letter in sorted(named - set().union(*(cut[k] for k in one.sizes))):
            yield warning(
                "P805",
                step_place(case, one),
                f"{one.where} names piece {letter}, which is not cut for it",
                expected="one of " + ", ".join(sorted(set().union(*(cut[k] for k in one.sizes)))),
                received=letter,
            )
    for key in case.keys:
        for block in _untabled(case, key):
            yield warning(
                "P804",
                case.size_place(key),
                f"which fabric is for which patch of the block {block} is in no table of the {key}",
                help="bring back the section on foundations that has it",
            )
        alike = _alike(case, key)
        for piece in case.plans[key].pieces:
            same = _letters(case, key, piece, alike)
            if not same & sewn[key] and not _is_block(case, key, piece):
                yield warning(
                    "P804",
                    case.size_place(key),
                    f"piece {piece.letter}, {case.called(piece)}, is cut for the {key} and no step "
                    "sews it",
                    help="name it in the step that sews it, or bring back the step that did",
                )
