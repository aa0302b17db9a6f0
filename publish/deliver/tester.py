"""The form that someone fills in who sews a pattern before it is published.

In: pattern, manual, numbers. Out: Markdown.
Invariant: one question block for each run of steps in the manual; every measure to
compare is one of the computed numbers, beside room for what the tester found.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from fractions import Fraction
from typing import Any

from publish.deliver.markdown import bullets, rows_of, text_of
from publish.measures import INCHES, METRE, metric_text
from publish.model.pattern import Pattern
from publish.model.words import Manual, Section, Steps
from publish.surd import Exact, Surd
from publish.units import YARD, cm_text, inches_text, parse_exact, parse_number
from publish.words import Language
from publish.words.lengths import Lengths

Json = dict[str, Any]
ROOM, LINE = "_" * 14, "_" * 60
"""Space to write in: in a table, and on a line of its own."""


def tester_form(pattern: Pattern, manual: Manual, numbers: Json) -> str:
    """Return the feedback form of a pattern."""
    sizes, tell = numbers["sizes"], pattern.words.tell
    lines = [f"# {tell('tester-title', title=manual.cover.title)}", ""]
    lines += [manual.back.edition + ".", ""] if manual.back.edition else []
    lines += [tell("tester-lead"), ""]
    lines += [f"## {tell('tester-you')}", ""]
    lines += [_line(tell(f"tester-{w}")) for w in ("name", "experience", "fabrics", "thread")]
    lines += [tell("tester-size"), "", *bullets([f"☐ {s['title']}" for s in sizes.values()])]
    lines += [
        tell("tester-paper", line=LINE),
        "",
        *_squares(pattern),
        *_steps(pattern.words, manual),
    ]
    for key in sizes:
        lines += _measures(pattern, sizes[key])
    lines += [f"## {tell('tester-last')}", ""]
    lines += [_line(tell(f"tester-{q}")) for q in ("hours", "change", "again", "mistake")]
    if manual.back.contact:
        lines += [tell("tester-send", contact=manual.back.contact), ""]
    return text_of(lines)


def _line(what: str) -> str:
    return f"{what}: {LINE}\n"


def _squares(pattern: Pattern) -> list[str]:
    tell, measures = pattern.words.tell, pattern.measures
    rows = [[tell("tester-inch-square"), ROOM], [tell("tester-centimetre-square"), ROOM]]
    if not measures.has_inches:
        sides = (measures.marked(metric_text(side)) for side in measures.checks)
        rows = [[tell("tester-square-of", side=side), ROOM] for side in sides]
    return [
        f"## {tell('tester-printing')}",
        "",
        tell("tester-check-squares"),
        "",
        *rows_of((tell("tester-square"), tell("tester-both-ways")), rows),
        "",
    ]


def _steps(words: Language, manual: Manual) -> list[str]:
    """Return a block of questions for each section that has steps."""
    tell = words.tell
    lines = [f"## {tell('tester-steps')}", ""]
    for section, first, last in _runs(manual):
        message = "tester-one-step" if first == last else "tester-some-steps"
        head = tell(message, section=section.title, first=first, last=last)
        lines += [f"### {head}", "", tell("tester-boxes", room=ROOM), ""]
        lines += [f"{tell('tester-remarks')}: {LINE}", ""]
    return lines


def _runs(manual: Manual) -> Iterator[tuple[Section, int, int]]:
    for section in manual.sections:
        numbers = [s.number for b in section.blocks if isinstance(b, Steps) for s in b.items]
        if numbers:
            yield section, min(numbers), max(numbers)


def _measures(pattern: Pattern, size: Json) -> list[str]:
    """Return what to measure at one size, what it should be, and room for what it was."""
    tell = pattern.words.tell
    rows = [[what, should, ROOM] for what, should in _wanted(pattern.words, size)]
    used = [
        [pattern.fabrics[key].name, _bought(pattern, p), ROOM, ROOM]
        for key, p in size["fabrics"].items()
    ]
    return [
        f"## {tell('tester-measurements', size=size['title'])}",
        "",
        *rows_of(_head(tell, "what", "should", "yours"), rows),
        "",
        *rows_of(_head(tell, "fabric", "asked", "bought", "left"), used),
        "",
    ]


def _head(tell: Callable[[str], str], *columns: str) -> tuple[str, ...]:
    return tuple(tell(f"tester-column-{name}") for name in columns)


def _bought(pattern: Pattern, plan: Json) -> str:
    yards, metres = parse_number(plan["buy_yards"]) * YARD, Fraction(plan["buy_metres"]) * METRE
    return pattern.words.lengths.to_buy(yards, metres)


def _wanted(words: Language, size: Json) -> Iterator[tuple[str, str]]:
    """Yield each thing to measure, in sewing order."""
    say, tell = words.tell, words.lengths
    if size["motif_square"]:
        yield say("tester-motif-square"), _square(tell, size["motif_square"])
    if size["motif_span"]:
        yield say("tester-motif-span"), _side(tell, size["motif_span"])
    for unit in size["units"]:
        if unit["parts"]:
            border = unit["name"].startswith("border")
            message = "tester-with-border" if border else "tester-unit"
            yield say(message, name=unit["name"]), _rectangle(tell, unit["before"])
    yield say("tester-finished"), _rectangle(tell, size["finished"])
    for name in ("backing", "batting"):
        if size[name]:
            yield say(f"tester-{name}"), _rectangle(tell, size[name])
    if size["binding"]:
        yield say("tester-binding"), _side(tell, size["binding"]["joined_length"])
    if size["pillow"]:
        yield say("tester-overlap"), _side(tell, size["pillow"]["overlap"])


def _rectangle(tell: Lengths, sides: Json) -> str:
    width, height = parse_exact(sides["width"]), parse_exact(sides["height"])
    if tell.measures.units != INCHES.units:
        return tell.rectangle(width, height)
    if width == height and tell.words.square:
        return tell.words.square.format(_side(tell, sides["width"]))
    inches = f"{inches_text(width)[: -len(' in')]} × {inches_text(height)}"
    cm = tell.measures.marked(f"{cm_text(width)} × {cm_text(height)}")
    return _about(tell, f"{inches} ({cm})", width, height)


def _square(tell: Lengths, side: str) -> str:
    return _rectangle(tell, {"width": side, "height": side})


def _side(tell: Lengths, text: str) -> str:
    length = parse_exact(text)
    if tell.measures.units != INCHES.units:
        return tell.measure(length)
    said = f"{inches_text(length)} ({tell.measures.marked(cm_text(length))})"
    return _about(tell, said, length)


def _about(tell: Lengths, said: str, *lengths: Exact) -> str:
    """Return a text, said to be rounded where a length in it lies on the diagonal."""
    rounded = any(isinstance(length, Surd) for length in lengths)
    return tell.words.about.format(said) if rounded else said
