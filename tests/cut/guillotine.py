"""Cuts a fabric as its plan in `numbers.json` says, with straight cuts from edge to edge.

It knows the file's form alone: a sheet is cut across or along, what is cut off and what
is left are sheets again, and a piece is what no cut is left for.
"""

from collections import Counter
from dataclasses import dataclass
from fractions import Fraction


def inches(text):
    return sum(Fraction(part) for part in text.split())


@dataclass
class Sheet:
    """A rectangle of cloth: from it, pieces are cut off at one side."""

    width: Fraction
    length: Fraction

    def across(self, depth):
        """Cut off a strip as wide as the sheet."""
        assert 0 < depth <= self.length, f"a strip {depth} deep from {self.length}"
        self.length -= depth
        return Sheet(self.width, depth)

    def along(self, width):
        """Cut off a part as long as the sheet."""
        assert 0 < width <= self.width, f"a part {width} wide from {self.width}"
        self.width -= width
        return Sheet(width, self.length)


def cut_up(plan, length=None, rests=None, squaring=0):
    """Return how many pieces of each letter and size a fabric's plan gives, and how many
    stages of cuts it takes. The sheet is the plan's length unless another is given; what
    is left of every sheet, and of the whole, is added to `rests`."""
    sheet = Sheet(inches(plan["usable_width"]), length or inches(plan["length"]))
    pieces, stages, rests = Counter(), 0, [] if rests is None else rests
    for strip in plan["strips"]:
        for _ in range(strip["count"]):
            off = sheet.across(inches(strip["depth"]))
            sheet.length -= squaring
            stages = max(stages, 1 + _strip(off, strip, pieces, rests))
    rests.append(sheet)
    return pieces, stages


def _strip(sheet, strip, pieces, rests):
    """Cut one strip into its pieces and its sections; return how many stages that took."""
    stages = 1
    for cut in strip["cuts"]:
        for _ in range(cut["count"]):
            part = sheet.along(inches(cut["across"]))
            pieces[cut["letter"], cut["turned"], *_trimmed(part, cut)] += 1
    for section in strip["sections"]:
        part = sheet.along(inches(section["width"]))
        for inner in section["strips"]:
            for _ in range(inner["count"]):
                band = part.across(inches(inner["depth"]))
                stages = max(stages, 2 + _strip(band, inner, pieces, rests))
        rests.append(part)
    rests.append(sheet)
    return stages


def _trimmed(part, cut):
    off = part.across(inches(cut["along"]))
    return off.width, off.length
