"""Units made several at once: triangles, hourglasses, geese, flipped corners, strip sets.

In: a unit and its making. Out: steps, in full the first time a size uses a method.
Invariant: pieces, batches, units and the size to trim to are the making's own.
"""

from __future__ import annotations

from dataclasses import dataclass

from publish.model.cutplan import Making
from publish.model.draft import Unit
from publish.model.nouns import noun
from publish.model.tree import Group
from publish.words.en.phrase import article, capital, counted, listed, measure, number, rectangle
from publish.write.bench import Bench
from publish.write.pressing import INNER, way_text, ways
from publish.write.steps import StepList, figure

METHODS = {
    "triangles": "two at a time",
    "hourglasses": "two at a time",
    "geese": "four at a time",
    "corners": "with flipped corners",
    "strips": "from strip sets",
}


@dataclass(frozen=True)
class Part:
    """One step of a method: what is added to the unit's key, its words, its figure."""

    name: str
    text: str
    right: str = ""
    stage: str = ""
    tip: str = ""


def add(bench: Bench, group: Group, making: Making, steps: StepList, *, again: bool) -> None:
    """Add the steps that make a group; `again` says that its method has been told before."""
    unit = group.unit
    write = {"triangles": _triangles, "hourglasses": _hourglasses, "geese": _geese,
             "corners": _corners, "strips": _strips}[making.method]  # fmt: skip
    name, kind = bench.called(unit), noun(unit)
    called = f"{name}, {article(kind)}" if kind else name
    parts = write(bench, unit, making)
    for at, part in enumerate(parts):
        opening = f"**{capital(called)}**. " if at == 0 else ""
        shown = part.stage and not again
        steps.add(
            f"{bench.step_key(unit)} {part.name}".strip(),
            f"{opening}{part.text}",
            sizes=[bench.key],
            right=part.right,
            tip=part.tip if not again else "",
            figure=figure(
                "quick", bench.key, f"{capital(name)}: {_CAPTIONS[part.stage]}.",
                method=making.method, unit=unit.kind, stage=part.stage,
            ) if shown else None,
        )  # fmt: skip


_CAPTIONS = {
    "mark": "marked",
    "sew": "laid together and sewn",
    "cut": "cut apart",
    "trim": "pressed and trimmed to size",
}


def _squares(bench: Bench, making: Making, at: int, count: int = 1) -> str:
    """Return `a Still water square **D**` for the letter at a place."""
    letter = making.letters[at]
    piece = next((p for p in bench.book.plans[bench.key].pieces if p.letter == letter), None)
    cloth = f"{bench.book.fabric(piece.fabric)} " if piece is not None else ""
    shape = "square" if piece is None or piece.width == piece.length else "piece"
    return (
        article(f"{cloth}{shape} **{letter}**") if count == 1
        else f"{number(count)} {cloth}{shape}s **{letter}**"
    )  # fmt: skip


def _have(bench: Bench, unit: Unit, making: Making) -> str:
    """Return how many units there are now, and what each measures."""
    made = making.batches * making.each_batch
    spare = made - making.count
    more = f"; {number(spare)} of them {'is' if spare == 1 else 'are'} to spare" if spare else ""
    kind = noun(unit) or "unit"
    many = f"{kind}es" if kind.endswith("s") else ""
    return f"You have {counted(made, kind, many)}{more}. Each is {rectangle(*making.trim)}."


def _do(making: Making) -> str:
    return f" Do this {number(making.batches)} times." if making.batches > 2 else (
        " Do this twice." if making.batches == 2 else "")  # fmt: skip


def _triangles(bench: Bench, unit: Unit, making: Making) -> list[Part]:
    seam = measure(bench.pattern_seam)
    second = 1 if len(making.letters) > 1 else 0
    return [
        Part(
            "sew",
            f"Draw a diagonal line on the wrong side of {_squares(bench, making, 0)}. Lay it on "
            f"{_squares(bench, making, second)}, right sides together, and sew {seam} from the "
            f"line on both sides of it.{_do(making)}",
            "Two lines of stitching run beside each drawn line, and none lies on it.",
            "sew",
            "Draw with a fine pencil, held flat, so that the point does not drag the cloth.",
        ),
        Part(
            "trim",
            f"Cut on the drawn lines and open the halves. Press the seam {_way(bench, unit)}. Trim "
            f"each unit to {rectangle(*making.trim)}, with the 45-degree line of the ruler on the "
            "seam, so that the seam ends in two corners.",
            _have(bench, unit, making),
            "trim",
        ),
    ]


def _way(bench: Bench, unit: Unit) -> str:
    """Return where the seams of units made several at once are pressed: all of them alike."""
    if not unit.press:
        return "to one side"
    group = next(g for g in bench.groups if g.unit.kind == unit.kind)
    return way_text(bench, group.unit, ways(group, INNER)[0][0])


def _hourglasses(bench: Bench, unit: Unit, making: Making) -> list[Part]:
    seam = measure(bench.pattern_seam)
    squares = [at for at, count in enumerate(making.each) for _ in range(count)]
    pairs = [(squares[i], squares[min(i + 1, len(squares) - 1)])
             for i in range(0, len(squares), 2)]  # fmt: skip
    laid = listed([f"{_squares(bench, making, a)} on {_squares(bench, making, b)}"
                   for a, b in pairs])  # fmt: skip
    return [
        Part(
            "sew",
            f"Lay {laid}, right sides together. Draw a diagonal line on the wrong side of the "
            f"upper square, sew {seam} from the line on both sides of it, cut on the line, and "
            f"press the halves open, the allowances to the darker side. Do not trim them "
            f"yet.{_do(making)}",
            "Each pair of squares gives two squares of two triangles.",
            "sew",
        ),
        Part(
            "cut",
            "Lay two of these halves on each other, right sides together, different fabrics "
            "facing, "
            "the seams locked against each other. Draw the other diagonal, across the seam, sew "
            f"{seam} from it on both sides, and cut on the line.",
            "The two seams of each unit cross in its middle.",
            "cut",
        ),
        Part(
            "trim",
            f"Open the units and press the last seam {_way(bench, unit)}. Trim each to "
            f"{rectangle(*making.trim)}: put the middle of that size on the crossing of the seams "
            "and the 45-degree line of the ruler on one seam.",
            _have(bench, unit, making),
            "trim",
        ),
    ]


def _geese(bench: Bench, unit: Unit, making: Making) -> list[Part]:
    seam = measure(bench.pattern_seam)
    large = min(range(len(making.letters)), key=lambda at: making.each[at])
    small = next((at for at in range(len(making.letters)) if at != large), large)
    letter, mark = making.letters[small], making.letters[large]
    return [
        Part(
            "sew",
            f"Draw a diagonal line on the wrong side of "
            f"{_squares(bench, making, small, making.each[small])}. Lay two of them in opposite "
            f"corners of {_squares(bench, making, large)}, right sides together, so that their "
            f"lines make one line and their tips overlap in the middle. Sew {seam} from the line "
            f"on both sides.{_do(making)}",
            "The line runs from corner to corner of the large square.",
            "sew",
        ),
        Part(
            "cut",
            f"Cut on the line and press the small triangles out. On each half lay one more "
            f"**{letter}** in the corner that is left of **{mark}**, its line running out between "
            f"the two small triangles. Sew {seam} from the line on both sides, and cut on the "
            "line.",
            "Each large square has given four units.",
            "cut",
        ),
        Part(
            "trim",
            f"Press the last triangles out as well. Trim each unit to {rectangle(*making.trim)}. "
            f"Leave {seam} of **{letter}** beyond the point of **{mark}** in the middle of the "
            "long side, and let the seams run into the two corners opposite.",
            _have(bench, unit, making),
            "trim",
        ),
    ]


def _corners(bench: Bench, unit: Unit, making: Making) -> list[Part]:
    seam = measure(bench.pattern_seam)
    base = max(range(len(making.letters)), key=lambda at: _area(bench, making.letters[at]))
    flipped = [at for at in range(len(making.letters)) if at != base]
    squares = listed([_squares(bench, making, at, making.each[at]) for at in flipped])
    count = sum(making.each[at] for at in flipped)
    under = _squares(bench, making, base)
    if count == 1:
        laid = f"Lay it on the corner of {under} that the picture shows"
    elif count < 4:
        laid = f"Lay one on each corner of {under} that the picture shows"
    else:
        laid = f"Lay two of them on opposite corners of {under}"
    again = " Do the same on the other two corners." if count == 4 else ""
    make = f" Make {number(making.count)}." if making.count > 1 else ""
    line = "line" if count == 1 else "lines"
    return [
        Part(
            "sew",
            f"Draw a diagonal line on the wrong side of {squares}. {laid}, right sides together, "
            f"edges level, the {line} running across the corner. Sew a thread outside the {line}, "
            "toward the corner.",
            "",
            "sew",
        ),
        Part(
            "trim",
            "Fold the triangle over as a trial: it must reach the corner. Then cut away both "
            f"layers of the corner {seam} outside the seam, and press the triangle out over the "
            f"seam.{again}{make}",
            f"{'Each unit' if making.count > 1 else 'The unit'} measures "
            f"{rectangle(*making.trim)}, and its corners are square.",
            "trim",
        ),
    ]


def _area(bench: Bench, letter: str) -> float:
    found = [p for p in bench.book.plans[bench.key].pieces if p.letter == letter]
    return max((float(p.width * p.length) for p in found), default=0.0)


def _from_each(making: Making) -> str:
    if making.batches == 1:
        return ""
    return f"; each set gives up to {number(making.each_batch)}"


def _strips(bench: Bench, unit: Unit, making: Making) -> list[Part]:
    order = [f"**{p.letter}**" for part in unit.parts if (p := bench.piece(part)) is not None]
    strips = listed(order) or listed([f"**{letter}**" for letter in making.letters])
    assert making.segment is not None
    sets = counted(making.batches, "strip set")
    across = measure(making.segment)
    return [
        Part(
            "sew",
            f"Sew strips {strips} together along their long edges, in this order, right sides "
            f"together. Press the {'seam' if len(unit.parts) == 2 else 'seams'} "
            f"{_way(bench, unit)}. Make {sets}.",
            "The strip set lies flat and straight. If it bows, press it again from the right side.",
            "sew",
            "Sew every second seam from the other end: a strip set then stays straight."
            if len(unit.parts) > 2
            else "",
        ),
        Part(
            "cut",
            f"Square off one end of each strip set, the ruler's line on a seam, and cut the set "
            f"across into {counted(making.count, 'segment')} {across} wide{_from_each(making)}. "
            f"Square off the end again when the cut no longer stands at a "
            "right angle to the seams.",
            f"Each segment measures {rectangle(*making.trim)}.",
            "cut",
        ),
    ]
