"""What must hold between the pieces that are cut and the units that are sewn of them.

Each rule takes a `Case` and yields what is wrong, in words. What is laid out, and how often,
is read from the steps; nothing is known of how they were written.
"""

import re
from collections import Counter
from fractions import Fraction

from space.sewing import steps_of
from space.told import inches, letters

RULER = Fraction(1, 16)
"""The finest mark of a ruler (common practice, no source)."""


def letters_are_sewn(case):
    """Every letter that is cut is named in a step after the cutting."""
    for key, size in case.sizes.items():
        named = set()
        for line in case.of_size(key):
            if not line.section.startswith("cutting") and (
                line.kind == "text" or line.section.startswith("foundation")
            ):
                named |= set(letters(line.text))
        for piece in size["pieces"]:
            if piece["letter"] not in named:
                yield f"{key}: {piece['letter']}, {piece['name']}, is cut and no step names it"


def letters_are_cut(case):
    """Every letter that a step names is a piece of one of the sizes that read it."""
    for line in case.lines:
        if line.kind not in ("text", "right"):
            continue
        sizes = [case.sizes[k] for k in line.sizes or case.sizes if k in case.sizes]
        cut = {p["letter"] for size in sizes for p in size["pieces"]}
        for letter in letters(line.text):
            if letter not in cut:
                yield f"{line.where}: {letter} is no piece of {', '.join(line.sizes) or 'any'}"


def steps_are_numbered(case):
    """The steps of a section run from 1 up without a gap."""
    runs = {}
    for line in case.lines:
        if line.kind == "text":
            runs.setdefault(line.section, []).append(line.number)
    for section, found in runs.items():
        if found != list(range(1, len(found) + 1)):
            yield f"{section}: {found}"


def made_is_used(case):
    """As many of each unit are made as later steps take up."""
    for key in case.sizes:
        steps = steps_of(case, key)
        made, used = Counter(), Counter()
        for step in steps:
            if step.makes:
                made[step.makes] += step.count
            for unit, count in step.units.items():
                used[unit] += count * step.count
        for unit in made.keys() | used.keys():
            if (unit.isdigit() or " " in unit) and made[unit] != used[unit]:
                yield f"{key}: unit {unit}: {made[unit]} are made and {used[unit]} are used"


def cut_is_used(case):
    """As many of each piece are sewn into units as are cut."""
    for key, size in case.sizes.items():
        used, quick = Counter(), set()
        for step in steps_of(case, key):
            quick |= step.quick
            for letter, count in step.letters.items():
                used[letter] += count * step.count
        elsewhere = {
            letter
            for line in case.of_size(key)
            if line.kind == "text" and not line.section.startswith(("piecing", "cutting"))
            for letter in letters(line.text)
        }
        for piece in size["pieces"]:
            letter, cut = piece["letter"], piece["count"] * piece["yields"]
            if letter not in used or letter in quick | elsewhere:
                continue
            if not used[letter] <= cut < used[letter] + piece["yields"]:
                yield f"{key}: {letter}: {cut} are cut and {used[letter]} are sewn"


def block_of(made, wanted):
    """Return the block that `star-2` is: one that is made in several ways has a number each."""
    name, _, number = made.rpartition("-")
    return name if name in wanted and number.isdigit() else made


def blocks_are_made(case):
    """The blocks made are the blocks of the top."""
    for key, size in case.sizes.items():
        places = size["blocks"]["arrangement"] + size["setting"]["alternates"]
        wanted = Counter(name for row in places for name in row)
        wanted += Counter(b for r in size["setting"]["rounds"] for b, _ in r["blocks"])
        made = Counter()
        for step in steps_of(case, key):
            if step.order and not step.makes.isdigit() and " " not in step.makes:
                made[block_of(step.makes, wanted)] += step.count
        if made and len(made) == 1 and len(wanted) == 1:
            made, wanted = Counter(made.values()), Counter(wanted.values())
        for name in made:
            if made[name] != wanted[name]:
                yield f"{key}: {name}: {made[name]} are made of {wanted[name]}"


def units_measure(case):
    """A block, and a unit that is trimmed, measures what it does in `numbers.json`, to an eighth.

    What is sewn of pieces cut to the next eighth is a little larger until it is trimmed.
    """
    for key, size in case.sizes.items():
        kinds = {u["kind"]: u for u in size["units"]}
        for step in steps_of(case, key):
            unit = kinds.get(step.kind)
            told = step.trimmed or "-block-" in step.key
            if (
                unit is None or not step.measures or not told or size["motif_square"]
            ):  # grounds have a margin
                continue
            right = sorted(float(inches(unit["before"][k])) for k in ("width", "height"))
            told = sorted(float(x) for x in step.measures)
            more = 2 * float(RULER) if "-block-" not in step.key else float(RULER)
            if any(not -0.04 < b - a <= more for a, b in zip(right, told, strict=True)):
                yield f"{key}: {step.key}: measures {told}, and is {right}"


def units_add_up(case):
    """Parts side by side are as high as each other, and as wide together as is told."""
    for key, size in case.sizes.items():
        seam = inches(case.numbers["seam"])
        known = {
            p["letter"]: (inches(p["width"]), inches(p["length"]))
            for p in size["pieces"]
            if p["shape"] == "rectangle"
        }
        for step in steps_of(case, key):
            if step.makes and step.measures:
                known[step.makes] = step.measures
            if (
                step.level
                and step.measures
                and step.order
                and all(part in known for part in step.order)
            ):
                parts = [known[part] for part in step.order]
                if not _lie_level(parts, step.measures, seam, step.trimmed):
                    sizes = " ".join(f"{a}x{b}" for a, b in parts)
                    whole = "x".join(map(str, step.measures))
                    yield f"{key}: {step.key}: {step.order} of {sizes} do not make {whole}"


def _lie_level(parts, whole, seam, trimmed=False):
    """Return whether parts, each turned as need be, make the whole when sewn in a row.

    What is trimmed afterwards may be larger, by what eighths add up to.
    """
    more = Fraction(1, 2) if trimmed else RULER
    for high in set(whole):
        wide = whole[0] if high == whole[1] else whole[1]
        across = []
        for part in parts:
            fits = [part[1 - i] for i in (0, 1) if -RULER <= part[i] - high <= more]
            if not fits:
                break
            across.append(fits)
        else:
            least = sum(min(f) for f in across) - 2 * seam * (len(parts) - 1)
            most = sum(max(f) for f in across) - 2 * seam * (len(parts) - 1)
            if least - more <= wide <= most + RULER:
                return True
    return False


def half_squares_are_trimmed_on_their_seam(case):
    """The seam of two triangles ends in two corners where they are cut alike, else the smaller
    says where it lies: a triangle cut of a square 7/8 larger than its short side finishes
    (handbook table of half-square triangles, from memory) has short sides 3/8 less than that.
    """
    more = Fraction(3, 8)
    for key, size in () if case.is_metric else case.sizes.items():
        cut = {p["letter"]: inches(p["width"]) for p in size["pieces"]}
        how = {}
        for step in case.of_size(key):
            if step.kind != "text" or "a half-square triangle, lay out" not in step.text:
                continue
            name = re.search(r"\*\*(unit \d+)\*\*", step.text)[1]
            sides = {cut[n]: n for n in letters(step.text.split("slanting edges")[0])}
            again = re.search(r"as you trimmed (unit \d+)", step.text)
            told = re.search(
                r"so that both short sides of \*\*(\w+)\*\* measure ([\d /]+) in", step.text
            )
            beside = re.search(r"seam ends ([\d /]+) in(?: \([^)]*\))? from a corner", step.text)
            if again:
                how[name] = how.get(again[1])
            elif told:
                how[name] = (told[1], told[2])
            elif beside:
                how[name] = ("", beside[1])
            elif "in two corners" in step.text:
                how[name] = ("", "")
            else:
                continue
            letter, by = how[name] or ("", "")
            least = min(sides)
            if len(sides) > 1 and (
                letter != sides[least] or abs(inches(by) + more - least) > RULER
            ):
                yield f"{key}: {step.where}: {name} of {sides} is trimmed by {letter} {by}"


RULES = (
    letters_are_sewn,
    letters_are_cut,
    steps_are_numbered,
    made_is_used,
    cut_is_used,
    blocks_are_made,
    units_measure,
    units_add_up,
    half_squares_are_trimmed_on_their_seam,
)
