"""Whether each tool that a step uses is on the list of tools, with its caution.

In: a case. Out: notes.
Invariant: a tool or notion in a step stands in a list to tick; one that can hurt has a
caution in the booklet. The list below is the proof's own: things found on a sewing table.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from publish.model.words import Box, Bullets, Table
from publish.notes import Note, warning
from publish.proof.booklet.claims import Told, step_place, told
from publish.proof.booklet.prose import moments_of
from publish.proof.case import Case, Code

CODES = {
    "P868": Code(
        "A step uses a tool that is not listed",
        "the maker stops to find one",
        "`text: Trace the motif over a light box.`, with no light box among the tools",
        "trace it at a window, or add the tool to the step's words as something to fetch first",
    ),
    "P869": Code(
        "There is no caution for a tool or for the finished piece",
        "somebody can be hurt",
        "`text: Cut the paper with a craft knife.`",
        "`text: Cut the paper.` with `caution: Cut away from your body and cap the craft knife.`",
    ),
}


@dataclass(frozen=True)
class Tool:
    """A tool: how steps name it, how the list does, and how a caution does, if it needs one."""

    name: str
    used: str
    listed: str = ""
    caution: str = ""


_TOOLS = (
    Tool(
        "rotary cutter",
        r"rotary cutter|\bcut (?:one|two|\w+) strips?\b",
        "rotary cutter",
        "rotary cutter",
    ),
    Tool(
        "iron",
        r"\bpress(?:ed|ing)?\b|\biron\b",
        r"\biron\b",
        r"(?m)^iron$|stand the iron|unplug the iron",
    ),
    Tool("scissors", r"\bscissors\b", "scissors", "scissors"),
    Tool("small scissors", r"small scissors", "small scissors"),
    Tool("pins", r"\bpin(?:s|ned)?\b", r"\bpins\b", r"\bpins\b"),
    Tool("needle", r"\bneedles?\b", "needle", "needle"),
    Tool("marker", r"\bmarker\b", r"marker"),
    Tool("starch", r"\bstarch\b", "starch", "starch"),
    Tool("walking foot", r"walking foot", "walking foot"),
    Tool("zipper foot", r"zip(?:per)? foot", r"zip(?:per)? foot"),
    Tool("ruler", r"\bruler\b", "ruler"),
    Tool("printer", r"\bprint (?:the|one|all)\b", "printer"),
    Tool("light box", r"light ?box", "light ?box"),
    Tool("freezer paper", "freezer paper", "freezer paper"),
    Tool("fusible web", "fusible web", "fusible web|web", "web|fus"),
    Tool("glue", r"\bglue\b", r"\bglue\b", r"\bglue|adhesive"),
    Tool(
        "spray adhesive",
        r"(?:basting|adhesive) spray|spray adhesive",
        r"(?:basting|adhesive) spray|spray adhesive",
        "spray",
    ),
    *(
        Tool(f"{kind} foot", rf"{kind} foot", rf"{kind} foot")
        for kind in ("open-toe", "quarter-inch", "darning", "free-motion")
    ),
    Tool(
        "craft knife",
        r"(?:craft|hobby) knife|scalpel|razor blade",
        "knife|scalpel|razor",
        "knife|scalpel|razor",
    ),
    Tool(
        "flame",
        r"\bcandle\b|\blighter\b|\bflame\b|\bmatch(?:es)?\b(?= to)|\bmelt\b",
        r"candle|lighter",
        r"(?:lighter|melt)[^.]*\b(?:finger|hold|water|never|aired)",
    ),
    Tool("hot tool", r"hot[- ]fix|heat gun|wood[- ]?burn\w*", "hot|heat", "hot[- ]fix|heat gun"),
    Tool("bleach", r"\bbleach\b", "bleach", "bleach"),
    Tool("dye", r"\bdye the\b", r"\bdye", r"\bdye"),
    Tool("thimble", r"\bthimble\b", "thimble"),
    Tool("hoop", r"\bhoop\b", "hoop"),
    Tool("seam ripper", r"seam ripper|unpick", "seam ripper"),
    Tool("clips", r"\bclips\b (?:hold|the binding)", r"clips"),
    Tool("tape", r"\btape\b", "tape"),
)
_PIECE = (
    ("a baby's bed", r"\bbab(?:y|ies)\b"),
    ("fire", r"\bflames?\b|\bfire\b"),
    ("the makers' instructions", r"instructions"),
)
"""What a caution must speak of, whatever the tools: the finished piece, and who knows better."""


def check(case: Case) -> Iterator[Note]:
    """Yield a warning for each tool not listed and each caution not given."""
    boxes = [b for s in case.manual.sections for b in s.blocks if isinstance(b, Box)]
    careful = "\n".join("\n".join((b.title, *b.items)) for b in boxes if b.kind == "caution")
    ticked = "\n".join(_listed(case))
    steps = list(told(case))
    for tool in _TOOLS:
        users = [s for s in steps if _uses(case, s, tool)]
        if not users:
            continue
        if tool.listed and not re.search(tool.listed, ticked, re.IGNORECASE):
            yield _note(
                case,
                "P868",
                users[0],
                f"{tool.name} is used and not listed",
                f"{tool.name} in the list of tools",
            )
        warned = "\n".join((careful, *(s.step.caution for s in users)))
        if tool.caution and not re.search(tool.caution, warned, re.IGNORECASE):
            yield _note(
                case,
                "P869",
                users[0],
                f"there is no caution for {tool.name}",
                "a caution in the booklet or at the step",
            )
    for name, form in _PIECE if steps else ():
        if not re.search(form, careful, re.IGNORECASE):
            yield warning(
                "P869",
                case.pattern.place("steps"),
                f"no caution speaks of {name}",
                expected="a caution in the booklet",
            )


def _uses(case: Case, one: Told, tool: Tool) -> bool:
    """Return whether a step's operations take a tool, or its words name it."""
    moments = (m for key in one.sizes for m in moments_of(case, one, key))
    return bool(re.search(tool.used, one.words, re.IGNORECASE)) or any(
        tool.name in m.operation.uses for m in moments
    )


def _listed(case: Case) -> Iterator[str]:
    """Yield what is to be fetched: the lists to tick, and the rows of the materials."""
    for section in case.manual.sections:
        for block in section.blocks:
            if isinstance(block, Bullets) and block.check:
                yield from block.items
            elif isinstance(block, Table) and section.key == "materials":
                yield from (row.cells[0] for row in block.rows)


def _note(case: Case, code: str, one: Told, what: str, expected: str) -> Note:
    return warning(code, step_place(case, one), f"{what}: {one.where}", expected=expected)
