"""The form that someone fills in who sews a pattern before it is published.

In: pattern, manual, numbers. Out: Markdown.
Invariant: one question block for each run of steps in the manual; every measure to
compare is one of the computed numbers, beside room for what the tester found.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from typing import Any

from publish.deliver.markdown import bullets, rows_of, text_of
from publish.measures import INCHES, METRE, metric_text
from publish.model.pattern import Pattern
from publish.model.words import Manual, Section, Steps
from publish.surd import Exact, Surd
from publish.units import YARD, cm_text, inches_text, parse_exact, parse_number
from publish.words.lengths import Lengths

Json = dict[str, Any]
ROOM, LINE = "_" * 14, "_" * 60
"""Space to write in: in a table, and on a line of its own."""


def tester_form(pattern: Pattern, manual: Manual, numbers: Json) -> str:
    """Return the feedback form of a pattern."""
    sizes = numbers["sizes"]
    lines = [f"# {manual.cover.title}: tester's form", ""]
    lines += [manual.back.edition + ".", ""] if manual.back.edition else []
    lines += ["Please write on it as you sew: every remark helps.", ""]
    lines += ["## You and your materials", ""]
    lines += [f"{w}: {LINE}\n" for w in ("Name", "Experience", "Fabrics", "Thread and needle")]
    lines += ["Size sewn:", "", *bullets([f"☐ {s['title']}" for s in sizes.values()])]
    lines += ["Paper and printer: " + LINE, "", *_squares(pattern), *_steps(manual)]
    for key in sizes:
        lines += _measures(pattern, sizes[key])
    lines += ["## Last", ""]
    questions = (
        "Hours from cutting to binding",
        "What would you change first?",
        "Would you sew it again, and for whom?",
        "A mistake, with its page",
    )
    lines += [f"{q}: {LINE}\n" for q in questions]
    lines += [f"Send it to {manual.back.contact}.", ""] if manual.back.contact else []
    return text_of(lines)


def _squares(pattern: Pattern) -> list[str]:
    small, large = map(metric_text, pattern.measures.checks)
    rows = [["the inch square", ROOM], ["the centimetre square", ROOM]]
    if not pattern.measures.has_inches:
        rows = [[f"the square of {small}", ROOM], [f"the square of {large}", ROOM]]
    return [
        "## Printing",
        "",
        "The check squares on the template sheets measured:",
        "",
        *rows_of(("Square", "Yours, both ways"), rows),
        "",
    ]


def _steps(manual: Manual) -> list[str]:
    """Return a block of questions for each section that has steps."""
    lines = ["## The steps", ""]
    for section, first, last in _runs(manual):
        steps = f"step {first}" if first == last else f"steps {first} to {last}"
        lines += [f"### {section.title}, {steps}", ""]
        lines += [f"☐ clear  ☐ slow  ☐ stuck at step {ROOM}  minutes {ROOM}", ""]
        lines += [f"Remarks: {LINE}", ""]
    return lines


def _runs(manual: Manual) -> Iterator[tuple[Section, int, int]]:
    for section in manual.sections:
        numbers = [s.number for b in section.blocks if isinstance(b, Steps) for s in b.items]
        if numbers:
            yield section, min(numbers), max(numbers)


def _measures(pattern: Pattern, size: Json) -> list[str]:
    """Return what to measure at one size, what it should be, and room for what it was."""
    tell = Lengths(pattern.measures)
    rows = [[what, should, ROOM] for what, should in _wanted(tell, size)]
    used = [
        [pattern.fabrics[key].name, _bought(pattern, p), ROOM, ROOM]
        for key, p in size["fabrics"].items()
    ]
    return [
        f"## Measurements: {size['title']}",
        "",
        *rows_of(("What", "Should be", "Yours"), rows),
        "",
        *rows_of(("Fabric", "The pattern asks for", "You bought", "Left over"), used),
        "",
    ]


def _bought(pattern: Pattern, plan: Json) -> str:
    yards, metres = parse_number(plan["buy_yards"]) * YARD, Fraction(plan["buy_metres"]) * METRE
    return Lengths(pattern.measures).to_buy(yards, metres)


def _wanted(tell: Lengths, size: Json) -> Iterator[tuple[str, str]]:
    """Yield each thing to measure, in sewing order."""
    if size["motif_square"]:
        yield "Square for the motif, cut", _square(tell, size["motif_square"])
    if size["motif_span"]:
        yield "Motif, sewn, from tip to tip", _side(tell, size["motif_span"])
    for unit in size["units"]:
        if unit["parts"]:
            name, border = unit["name"], unit["name"].startswith("border")
            said = f"With {name}" if border else _capital(name)
            yield f"{said}, seam allowances included", _rectangle(tell, unit["before"])
    yield "Finished", _rectangle(tell, size["finished"])
    for name in ("backing", "batting"):
        if size[name]:
            yield f"{_capital(name)}, cut", _rectangle(tell, size[name])
    if size["binding"]:
        yield "Binding, joined", _side(tell, size["binding"]["joined_length"])
    if size["pillow"]:
        yield "Overlap of the pillow's back", _side(tell, size["pillow"]["overlap"])


def _rectangle(tell: Lengths, sides: Json) -> str:
    width, height = parse_exact(sides["width"]), parse_exact(sides["height"])
    if tell.measures != INCHES:
        return tell.rectangle(width, height)
    if width == height:
        return f"{_about(width)}{inches_text(width)} ({cm_text(width)}) square"
    inches = f"{inches_text(width)[: -len(' in')]} × {inches_text(height)}"
    about = _about(width) or _about(height)
    return f"{about}{inches} ({cm_text(width)} × {cm_text(height)})"


def _square(tell: Lengths, side: str) -> str:
    return _rectangle(tell, {"width": side, "height": side})


def _side(tell: Lengths, text: str) -> str:
    length = parse_exact(text)
    if tell.measures != INCHES:
        return tell.measure(length)
    return f"{_about(length)}{inches_text(length)} ({cm_text(length)})"


def _about(length: Exact) -> str:
    return "about " if isinstance(length, Surd) else ""


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
