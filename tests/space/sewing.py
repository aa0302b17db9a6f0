"""The steps of piecing, read as a maker reads them: what is laid out, how often, how large.

The sentences are taken as they stand; a step that lays something out in words that are not
read here is one that nothing is told of, and counts made and used then differ.
"""

import re
from collections import Counter
from dataclasses import dataclass, field, replace

from space.told import boxes, letters, number

NUMBER = r"(?:a|an|the|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\d+)"


@dataclass
class Sewn:
    """One step of piecing. `makes` is a unit's number or a block's name."""

    key: str
    makes: str = ""
    count: int = 1
    kind: str = ""
    units: Counter = field(default_factory=Counter)
    letters: Counter = field(default_factory=Counter)
    order: list = field(default_factory=list)
    level: bool = False
    quick: set = field(default_factory=set)
    measures: tuple = ()
    trimmed: bool = False


def steps_of(case, size):
    """Return the steps of piecing that a maker of this size follows."""
    if case.manual is None:
        return []
    found = []
    for section in case.manual.sections:
        if section.sizes and size not in section.sizes:
            continue
        if section.key != "piecing" and not section.key.startswith("piecing-"):
            continue
        table = {}
        for block in section.blocks:
            if type(block).__name__ == "Table" and block.key.startswith("units-"):
                table = _units(block, case.sizes[size]["title"])
            if type(block).__name__ == "Steps":
                mine = [s for s in block.items if not s.sizes or size in s.sizes]
                found += [_read(_looked_up(s, table)) for s in mine]
    return _quick_joined(found)


def _units(table, title):
    """Return what a table of units says for one size: `{"unit 1": (count, size)}`."""
    column = table.head.index(title)
    cells = {row.cells[0].lower(): row.cells[column] for row in table.rows}
    return {name: tuple(cell.split(" of ", 1)) for name, cell in cells.items() if " of " in cell}


def _looked_up(step, table):
    """Return a step with what it sends the maker to the table for."""
    told = f"{step.right} {step.text}"
    found = [(m.start(), n) for n in table if (m := re.search(rf"(?i)\b{n}\b", told))]
    if "in the table" not in told or not found:
        return step
    count, size = table[min(found)[1]]
    text = step.text.replace("Make the number in the table", f"Make {count}")
    right = re.sub(r"measures? (?:its|their) sizes? in the table", f"measures {size}", step.right)
    return replace(step, text=text, right=right)


def _read(step):
    sewn = Sewn(step.key)
    if step.figure is not None:
        sewn.kind = step.figure.get("unit")
    text = step.text
    named = re.search(
        r"(?:unit-(\d+)|(half-block|ground-row)|(?:block|ground)-(.+?))(?:-[a-z]+)?$", step.key
    )
    ends = r"(?:, by turns, [^.]*?)?,? (side by side|one below the other|as in the picture|along)\b"
    laid = re.search(rf"[Ll]ay out (.+?){ends}", text) or re.search(r"[Ll]ay out (.+?)()\. ", text)
    if laid and named:
        sewn.makes = _name(named)
        _parts(sewn, laid[1])
        sewn.level = laid[2] in ("side by side", "one below the other")
        sewn.count = _made(text)
        sewn.trimmed = bool(re.search(r"\btrim (it|unit|the|each)\b", text))
        told = boxes(step.right)
        sewn.measures = told[0] if told else ()
        return sewn
    if named:
        sewn.makes = _name(named)
    sewn.quick = set(letters(text))
    sewn.units = Counter(dict.fromkeys(re.findall(r"\bunit (\d+)", text), 1))
    cut = re.search(r"into (\w+) segments?", text)
    have = re.search(r"You have (\w+) ", step.right)
    several = re.search(r"\bMake (\w+)\.", text)
    for match in (cut, have, several):
        if match and number(match[1]) is not None:
            sewn.count = number(match[1]) - _spare(step.right)
            break
    else:
        sewn.count = 0
    told = boxes(step.right)
    sewn.measures = told[0] if told else ()
    return sewn


def _name(named):
    return named[1] or (named[2] or "").replace("-", " ") or named[3]


def _parts(sewn, text):
    """Read `unit 2, two of unit 3 and a Mist cloth piece **D**` in order."""
    count = rf"\b({NUMBER})"
    of_cloth = rf"(?:[^*,]|, (?!{NUMBER}\b|unit))*?"
    token = re.compile(
        rf"(?:({NUMBER}) of )?unit (\d+)|{count} (half block|ground row)s?\b"
        rf"|{count} (?:of )?{of_cloth}\*\*([A-Z]{{1,2}})\*\*",
        re.IGNORECASE,
    )
    for many, unit, rows, row, count, letter in token.findall(text):
        times = number(many or rows or count or "one") or 1
        (sewn.letters if letter else sewn.units)[unit or row or letter] += times
        sewn.order += [unit or row or letter] * times


def _spare(right):
    """Return how many of what is made are told to be more than needed."""
    told = re.search(r", (\w+) of them to spare", right)
    return number(told[1]) if told else 0


def _made(text):
    found = re.findall(r"\bMake (\w+)\.", text)
    return number(found[-1]) if found and number(found[-1]) is not None else 1


def _quick_joined(steps):
    """Join the several steps of one unit into one."""
    found = []
    for step in steps:
        last = found[-1] if found else None
        if last is None or not step.makes or step.makes != last.makes:
            found.append(step)
            continue
        last.quick |= step.quick if not last.order else set()
        last.count = step.count if step.count > 0 else last.count
        last.measures = step.measures or last.measures
        last.kind = last.kind or step.kind
    for step in found:
        step.count = step.count or 1
    return found
