"""Whether each term of the trade that the booklet uses is explained in it.

In: a case. Out: notes.
Invariant: a term in a step, caption or note stands in the glossary, or in bold where it is
first used, which is how the booklet explains one in place. The list of terms below is the
proof's own: words that a beginner would look up.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from publish.model.words import Table
from publish.notes import Note, warning
from publish.proof.booklet.claims import said_at
from publish.proof.booklet.words import passages
from publish.proof.case import Case, Code

CODES = {
    "P865": Code(
        "A term is used that nothing explains",
        "a beginner stops there",
        "`text: Chain-piece all the pairs.`",
        "`text: Feed the pairs through one after another without cutting the thread (**chain "
        "piecing**).`",
    ),
}

_TERMS = {
    "appliqué": r"appliqué",
    "backing": r"backing",
    "batting": r"batting",
    "bias": r"bias",
    "baste": r"bast(?:e|ed|ing)",
    "binding": r"binding",
    "blind stitch": r"blind stitch(?:es)?",
    "chain piecing": r"chain[- ]piec(?:e|ed|ing)",
    "cornerstone": r"cornerstones?",
    "cut line": r"cut line",
    "dog ear": r"dog[- ]ears?",
    "echo": r"echo(?: lines| quilting)",
    "fat quarter": r"fat quarters?",
    "fat eighth": r"fat eighths?",
    "finished line": r"finished line",
    "finger-press": r"finger-press(?:ed|ing)?",
    "foundation": r"foundation[- ]piec(?:e|ed|ing)",
    "free-motion": r"free[- ]motion",
    "freezer paper": r"freezer paper",
    "fusible web": r"fusible web",
    "fussy cut": r"fussy[- ]cut(?:s|ting)?",
    "grain": r"straight grain|cross[- ]grain",
    "in the ditch": r"in the ditch",
    "mitre": r"mitre[ds]?|mitring",
    "multiple folds": r"multiple folds",
    "needle-turn": r"needle-turn",
    "nest": r"nest(?:ed|ing)? (?:the )?seams?|seams? nest",
    "on point": r"on point",
    "raw edge": r"raw edges?",
    "sashing": r"sashing",
    "scant": r"scant",
    "seam allowance": r"(?:seam )?allowances?",
    "selvage": r"selvages?",
    "selvedge": r"selvedges?",
    "set-in": r"set-in|y-seams?",
    "single fold": r"single fold",
    "stabilizer": r"stabili[sz]er",
    "stay stitch": r"stay[- ]stitch(?:es|ed|ing)?",
    "strip set": r"strip sets?",
    "trapunto": r"trapunto",
    "turn-under": r"turn-under",
    "usable width": r"usable width",
    "walking foot": r"walking foot",
    "wedge": r"wedges?",
    "whipstitch": r"whip ?stitch(?:es)?",
    "ladder stitch": r"ladder stitch(?:es)?",
    "sandwich": r"quilt sandwich",
    "stippling": r"stippl(?:e|ed|ing)",
    "tacking": r"tack(?:ed|ing) stitch(?:es)?",
    "template": r"templates?",
    "square up": r"squar(?:e|ed|ing) up",
}


def check(case: Case) -> Iterator[Note]:
    """Yield a warning for each term that is used and not explained, where it is first used."""
    words = [p for p in passages(case.manual) if p.section != "glossary"]
    explained = "\n".join(
        row.cells[0].lower()
        for s in case.manual.sections
        for b in s.blocks
        if isinstance(b, Table) and "glossary" in (b.key, s.key) and b.key != "metric"
        for row in b.rows
    )
    for term, form in _TERMS.items():
        used = re.compile(rf"(?<!\w)(?:{form})(?!\w)", re.IGNORECASE)
        first = next((p for p in words if used.search(p.text)), None)
        if first is None or used.search(explained) or term in explained:
            continue
        bold = re.compile(rf"\*\*[^*]*(?:{form})[^*]*\*\*", re.IGNORECASE)
        if first.kind in ("text", "step") and bold.search(first.text):
            continue
        yield warning(
            "P865",
            said_at(case, first),
            f"the term `{term}` in {first.where} is not explained",
            help="say what it means in bold where it is first used, or use a plainer word",
        )
