"""What must hold between the pieces, the strips they are cut from, and what is bought.

Each rule takes a `Case` and yields what is wrong, in words. They recount from
`numbers.json` and from the texts, and know nothing of how either was made.
"""

import re
from collections import Counter
from fractions import Fraction

from space.told import boxes, inches, letters, number, tables

RULER = Fraction(1, 16)
"""The finest mark of a ruler (common practice, no source)."""


def finding(case):
    """Nothing is found in a sound pattern."""
    yield from case.findings


def strips_give_pieces(case):
    """The strips of each fabric hold each piece as often as it is cut."""
    for key, size in case.sizes.items():
        held = Counter()
        for plan in size["fabrics"].values():
            for count, strip in _strips(plan):
                for cut in strip["cuts"]:
                    held[cut["letter"]] += count * cut["count"]
                for cut in _in_sections(strip):
                    held[cut["letter"]] += count * cut["count"]
        for piece in size["pieces"]:
            wanted = piece["count"] * piece["joined_from"]
            got = held[piece["letter"]]
            if got < wanted or (got > wanted and piece["shape"] == "rectangle"):
                yield f"{key}: {piece['letter']} is cut {got} times of {wanted}"


def _in_sections(strip):
    for section in strip["sections"]:
        for inner in section["strips"]:
            yield from ({**c, "count": c["count"] * inner["count"]} for c in inner["cuts"])


def _strips(plan):
    if plan["precut"] is None:
        yield from ((strip["count"], strip) for strip in plan["strips"])
        return
    for sheet in plan["precut"]["sheets"]:
        for strip in sheet["strips"]:
            yield sheet["count"] * strip["count"], strip


def strips_fit(case):
    """No strip holds more than the usable width, and the strips are as long as is said."""
    for key, size in case.sizes.items():
        for fabric, plan in size["fabrics"].items():
            width = inches(plan["usable_width"])
            for strip in plan["strips"]:
                used = sum(inches(c["across"]) * c["count"] for c in strip["cuts"])
                used += sum(inches(section["width"]) for section in strip["sections"])
                for section in strip["sections"]:
                    inner = sum(inches(s["depth"]) * s["count"] for s in section["strips"])
                    if inner > inches(strip["depth"]):
                        yield f"{key}: {fabric}: a section {inner} in deep in {strip['depth']}"
                if used > width and not _shaped(size, strip):
                    yield f"{key}: {fabric}: a strip holds {used} in of {width}"
            deep = sum(inches(s["depth"]) * s["count"] for s in plan["strips"])
            if plan["precut"] is None and deep != inches(plan["length"]):
                yield f"{key}: {fabric}: strips are {deep} in long, the plan {plan['length']}"


def _shaped(size, strip):
    shaped = {
        p["letter"]
        for p in size["pieces"]
        if p["shape"] != "rectangle" or p["name"].startswith("nested")
    }
    return any(c["letter"] in shaped for c in (*strip["cuts"], *_in_sections(strip)))


def bought_is_enough(case):
    """What is bought is a whole number of steps, and holds the plan and its straightening."""
    step = inches(case.numbers["purchase_step"]) if case.numbers else 1
    for key, size in case.sizes.items():
        for fabric, plan in size["fabrics"].items():
            if plan["precut"] is not None or inches(plan["buy"]) == 0:
                continue
            buy, length = inches(plan["buy"]), inches(plan["length"])
            if buy < length + inches(case.numbers["straightening"]):
                yield f"{key}: {fabric}: {buy} in are bought for {length}"
            if (buy / step).denominator != 1 and plan["spare"] is None:
                yield f"{key}: {fabric}: {buy} in are no whole number of steps"
            if float(plan["buy_metres"]) * 100 / 2.54 < float(length):
                yield f"{key}: {fabric}: {plan['buy_metres']} m are less than {length} in"


def materials_say_what_to_buy(case):
    """The table of fabrics says the yards and metres of `numbers.json`."""
    if case.manual is None:
        return
    for _, table in tables(case.manual, "fabric"):
        for row in table.rows:
            for key, cell in zip(case.sizes, row.cells[1:], strict=False):
                plan = case.sizes[key]["fabrics"].get(row.fabric)
                if plan is None or plan["precut"] is not None or inches(plan["buy"]) == 0:
                    continue
                said = f"{plan['buy_yards']} yd ({plan['buy_metres']} m)"
                if case.is_metric:
                    metres = Fraction(plan["buy_metres"])
                    said = f"{metres * 100} cm" if metres < 1 else f"{plan['buy_metres']} m"
                if said not in cell:
                    yield f"{key}: {row.fabric}: {cell!r} for {said}"


def cutting_table_counts(case):
    """The cutting tables give each piece of their size, as often as it is cut."""
    for key, size in case.sizes.items():
        told = {}
        for _, table in tables(case.manual, f"cutting-{key}"):
            for row in table.rows:
                if row.kind == "body" and letters(row.cells[0]):
                    told[letters(row.cells[0])[0]] = row.cells[3]
        if not told:
            yield f"{key}: there is no cutting table"
        for piece in size["pieces"]:
            if told.get(piece["letter"], "").split(" ")[0] != str(piece["count"]):
                yield f"{key}: {piece['letter']}: {told.get(piece['letter'])} of {piece['count']}"


def sizes_of_pieces(case):
    """The size in a piece's row of the cutting table is that piece's cut size."""
    for key, size in case.sizes.items():
        cut = {p["letter"]: p for p in size["pieces"]}
        for _, table in tables(case.manual, f"cutting-{key}"):
            for row in table.rows:
                letter = (letters(row.cells[0]) or [""])[0] if row.kind == "body" else ""
                told = boxes(row.cells[2])[:1] if letter in cut else []
                if not told:
                    continue
                piece = cut[letter]
                if sorted(told[0]) != sorted((inches(piece["width"]), inches(piece["length"]))):
                    yield f"{key}: {letter} is told {told[0]}"


def strips_are_told(case):
    """The steps of cutting give each piece as often as the plan does."""
    for key, size in case.sizes.items():
        told = Counter()
        for line in case.of_size(key):
            if line.kind == "text" and re.match(rf"cutting-(?:{key}-)?\w+$", line.key):
                _count_strips(line.text, told)
        for piece in size["pieces"]:
            plan = size["fabrics"].get(piece["fabric"], {"precut": True})
            if plan["precut"] or piece["shape"] != "rectangle" or piece["letter"] not in told:
                continue
            wanted = piece["count"] * piece["joined_from"]
            if told[piece["letter"]] != wanted:
                yield f"{key}: {piece['letter']}: {told[piece['letter']]} told of {wanted}"


def _count_strips(text, told):
    for part in text.split("\n\n"):
        strips = re.search(r"\b[Cc]ut (\w+) strips? ", part)
        if strips is None:
            continue
        count = number(strips[1]) or 1
        sections = re.match(r"From each of the (\w+) ", part)
        count *= number(sections[1]) if sections else 1
        for word, letter in re.findall(r"(\w+) \*\*([A-Z]{1,2})\*\*", part):
            if (each := number(word)) is not None:
                told[letter] += count * each


def binding_goes_round(case):
    """The strips of a straight binding, joined on the diagonal, are as long as is needed."""
    for key, size in case.sizes.items():
        plan = size["binding"]
        if plan is None:
            continue
        round_it = inches(size["perimeter"])
        if inches(plan["length"]) < round_it:
            yield f"{key}: {plan['length']} in of binding for {round_it}"
        if plan["cut"] == "straight" and plan["strip_length"]:
            wide, one = inches(plan["strip_width"]), inches(plan["strip_length"])
            joined = plan["strips"] * one - (plan["strips"] - 1) * wide
            if joined < inches(plan["length"]):
                yield f"{key}: joined strips are {joined} in of {plan['length']}"
            spare = joined - (one - wide)
            if plan["strips"] > 1 and spare >= inches(plan["length"]):
                yield f"{key}: a binding strip too many: {plan['strips']}"


def bias_is_long_enough(case):
    """A square cut on the bias gives, line by line, the binding that is told.

    Sewn into a tube a square of side a gives floor((a - 2s) / (w√2)) strips, each as long
    as (a - 2s)√2. Geometry; no source.
    """
    for key, size in case.sizes.items():
        plan = size["binding"]
        if plan is None or plan["square"] is None:
            continue
        side = float(inches(plan["square"])) - 2 * float(inches(case.numbers["seam"]))
        wide = float(inches(plan["strip_width"]))
        whole = int(side / (wide * 2**0.5) + 1e-9) * side * 2**0.5
        if whole < float(inches(plan["length"])) - 0.01:
            yield f"{key}: a square of {plan['square']} in gives {whole:.1f} in of {plan['length']}"


def quilting_is_there(case):
    """What is quilted in lines has lines, with thread for them."""
    for key, size in case.sizes.items():
        for area in size["quilting"]:
            if area["style"] != "as desired" and float(area["length"]) <= 0:
                if area["area"] == "border" and not _bordered(size):
                    continue
                if area["area"] == "motif" and not size["motifs"]:
                    continue
                yield f"{key}: {area['style']} lines in the {area['area']} are none"


def _bordered(size):
    return bool(size["borders"]) or any(r["border"] for r in size["setting"]["rounds"])


def pillow_fits(case):
    """A pillow's front and back are the form with its seam, the front cut to its own size."""
    for key, size in case.sizes.items():
        plan = size["pillow"]
        if plan is None:
            continue
        top = next(u for u in size["units"] if u["kind"] in ("top", size["units"][-1]["kind"]))
        width = inches(size["units"][-1]["before"]["width"])
        told = [
            b
            for line in case.of_size(key)
            if line.key.endswith("pillow-trim")
            for b in boxes(line.text)
        ]
        if told and abs(told[0][0] - width) > RULER:
            yield f"{key}: the front is trimmed to {told[0][0]} in and sewn {width} ({top['kind']})"
        edge = [p for p in size["pieces"] if p["purpose"].startswith("border")]
        last = [p for p in edge if p["purpose"].startswith(f"border {len(size['borders'])} top")]
        # Sides whose width is rounded up make the ends longer by as much, trimmed with the front.
        if last and not 0 <= inches(last[0]["length"]) - width <= RULER:
            yield f"{key}: the outer border is cut {last[0]['length']} in, the front is {width}"


RULES = (
    finding,
    strips_give_pieces,
    strips_fit,
    bought_is_enough,
    materials_say_what_to_buy,
    cutting_table_counts,
    sizes_of_pieces,
    strips_are_told,
    binding_goes_round,
    bias_is_long_enough,
    quilting_is_there,
    pillow_fits,
)
