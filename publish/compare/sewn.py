"""What has to be sewn otherwise: finished sizes, blocks, borders, seams, quilting.

In: two editions under the same keys. Out: changes.
Invariant: lengths are compared exactly; one on the diagonal is said to the nearest 1/8 in.
"""

from __future__ import annotations

from collections.abc import Iterator

from publish.compare.model import COSMETIC, SEWN, Border, Change, Edition, SizeEdition
from publish.operations.borders import border_called
from publish.surd import Exact, Surd
from publish.units import fraction_text, maker_inches, parse_number
from publish.words import language
from publish.words.en.phrase import counted, number
from publish.words.lengths import Lengths

SAY = Lengths()


def find(old: Edition, new: Edition) -> Iterator[Change]:
    """Yield every change of what is sewn."""
    if old.seam != new.seam:
        yield Change(
            SEWN,
            "seam",
            f"Every seam is {SAY.measure(new.seam)}, not {SAY.measure(old.seam)}.",
            "Do not mix the two in one piece: finish what you have begun by the older booklet.",
            old={"seam": fraction_text(old.seam)},
            new={"seam": fraction_text(new.seam)},
        )
    for key in (k for k in new.sizes if k in old.sizes):
        before, after = old.sizes[key], new.sizes[key]
        yield from _named(before, after)
        yield from _finished(before, after)
        yield from _blocks(before, after)
        yield from _motif(before, after)
        yield from _borders(old, new, before, after)
        yield from _pillow(before, after)
        yield from _quilting(before, after)


def _named(before: SizeEdition, after: SizeEdition) -> Iterator[Change]:
    if before.title != after.title:
        yield Change(
            COSMETIC,
            "size",
            f"The {before.title} is now called {after.title}.",
            "",
            after.key,
            {"title": before.title},
            {"title": after.title},
        )


def _exact(length: Exact) -> str:
    return str(length) if isinstance(length, Surd) else fraction_text(length)


def size_text(size: tuple[Exact, Exact]) -> str:
    """Return width and height in words, to the nearest 1/8 in on the diagonal."""
    return SAY.rectangle(maker_inches(size[0]), maker_inches(size[1]))


def _finished(before: SizeEdition, after: SizeEdition) -> Iterator[Change]:
    if before.finished == after.finished:
        return
    what = "pillow" if after.finish == "pillow" else "quilt"
    values = [
        {"width": _exact(s.finished[0]), "height": _exact(s.finished[1])} for s in (before, after)
    ]
    yield Change(
        SEWN,
        "finished size",
        f"{after.title}: the finished {what} is {size_text(after.finished)}, "
        f"not {size_text(before.finished)}.",
        "",
        after.key,
        values[0],
        values[1],
    )


def _blocks(before: SizeEdition, after: SizeEdition) -> Iterator[Change]:
    if before.block_side != after.block_side:
        sides = [fraction_text(s.block_side) for s in (before, after)]
        yield Change(
            SEWN,
            "block",
            f"{after.title}: a finished block is {SAY.measure(after.block_side)}, "
            f"not {SAY.measure(before.block_side)}.",
            "",
            after.key,
            {"side": sides[0]},
            {"side": sides[1]},
        )
    if before.grid != after.grid:
        grids = [" by ".join(map(number, s.grid)) for s in (after, before)]
        count = counted(after.grid[0] * after.grid[1], "block")
        yield Change(
            SEWN,
            "blocks",
            f"{after.title}: lay out {count}, {grids[0]}, not {grids[1]}.",
            "",
            after.key,
            dict(zip(("columns", "rows"), map(str, before.grid), strict=True)),
            dict(zip(("columns", "rows"), map(str, after.grid), strict=True)),
        )
    elif before.arrangement != after.arrangement:
        yield Change(
            SEWN, "blocks", f"{after.title}: the blocks stand in another order.", "", after.key
        )
    if before.grid == after.grid:
        yield from _turns(before, after)
    if before.pieces == after.pieces and before.block_side == after.block_side:
        yield from _makeup(before, after)


def _makeup(before: SizeEdition, after: SizeEdition) -> Iterator[Change]:
    """Yield what is put together in another way from the same pieces, as with a unit turned:
    the smallest of it, since whatever it is sewn into is another thing as well."""
    held = set(before.makeup.values())
    other = [name for name, key in after.makeup.items() if key not in held]
    if other and before.arrangement == after.arrangement and before.turns == after.turns:
        yield Change(
            SEWN,
            "units",
            f"{after.title}: {other[0]} is put together in another way.",
            "The pieces are the same: lay them out again by the figure.",
            after.key,
        )


def _turns(before: SizeEdition, after: SizeEdition) -> Iterator[Change]:
    """Yield blocks that are turned in another way, by the first row that shows it."""
    for what in after.turns:
        old, new = before.turns[what], after.turns[what]
        # Blocks that all stand upright are not listed.
        old, new = (a or tuple((0,) * len(row) for row in b) for a, b in ((old, new), (new, old)))
        rows = zip(old, new, strict=False)
        differ = [(at, was, is_) for at, (was, is_) in enumerate(rows, 1) if was != is_]
        if not differ:
            continue
        at, *held = differ[0]
        was, is_ = (", ".join(map(str, row)) for row in held)
        more = "" if len(differ) == 1 else f", and other rows differ too ({len(differ) - 1})"
        yield Change(
            SEWN,
            "turns",
            f"{after.title}: the {what} are turned in another way: row {at} by {is_} degrees, "
            f"not {was}{more}.",
            "The blocks are the same: turn those that you have made.",
            after.key,
            {"turns": was},
            {"turns": is_},
        )


def _motif(before: SizeEdition, after: SizeEdition) -> Iterator[Change]:
    was, is_ = before.motif_span, after.motif_span
    if was == is_:
        return
    if was is None or is_ is None:
        said = "has no motif any more" if is_ is None else "has a motif now"
        yield Change(SEWN, "motif", f"{after.title}: this size {said}.", "", after.key)
        return
    yield Change(
        SEWN,
        "motif",
        f"{after.title}: the finished motif is {SAY.measure(is_)} across, not {SAY.measure(was)}.",
        "",
        after.key,
        {"span": fraction_text(was)},
        {"span": fraction_text(is_)},
    )


def _borders(
    old: Edition, new: Edition, before: SizeEdition, after: SizeEdition
) -> Iterator[Change]:
    many = len(after.borders)
    if len(before.borders) != many:
        yield Change(
            SEWN,
            "border",
            f"{after.title}: the top has {counted(many, 'border')}, not "
            f"{number(len(before.borders))}.",
            "",
            after.key,
        )
        return
    for at, (was, is_) in enumerate(zip(before.borders, after.borders, strict=True)):
        parts = _border(old, new, was, is_)
        if parts:
            name = language().value(border_called(at, many))
            yield Change(
                SEWN,
                "border",
                f"{after.title}: the {name} {' and '.join(parts)}.",
                "",
                after.key,
                {"width": fraction_text(was.width)},
                {"width": fraction_text(is_.width)},
            )


def _border(old: Edition, new: Edition, was: Border, is_: Border) -> list[str]:
    parts = []
    if was.width != is_.width:
        parts.append(
            f"is {SAY.measure(is_.width)} wide when finished, not {SAY.measure(was.width)}"
        )
    if was.fabric != is_.fabric:
        names = [e.fabrics[b.fabric].name for e, b in ((new, is_), (old, was))]
        parts.append(f"is {names[0]}, not {names[1]}")
    if was.corners != is_.corners:
        parts.append(f"has {is_.corners} corners, not {was.corners} ones")
    return parts


def _pillow(before: SizeEdition, after: SizeEdition) -> Iterator[Change]:
    was, is_ = before.pillow, after.pillow
    if was is None or is_ is None:
        if was is not is_:
            names = [f"a {s.finish}" for s in (after, before)]
            yield Change(
                SEWN,
                "finish",
                f"{after.title}: this size is {names[0]}, not {names[1]}.",
                "",
                after.key,
            )
        return
    for name, what in (("overlap", "backs overlap by"), ("hem", "hem takes up")):
        if was[name] != is_[name]:
            new, old = (SAY.measure(parse_number(p[name])) for p in (is_, was))
            yield Change(
                SEWN,
                "pillow",
                f"{after.title}: the pillow's {what} {new}, not {old}.",
                "",
                after.key,
                {name: was[name]},
                {name: is_[name]},
            )
    if was["back"] != is_["back"]:
        yield Change(
            SEWN,
            "pillow",
            f"{after.title}: the pillow's back is made with "
            f"{_back(is_['back'])}, not {_back(was['back'])}.",
            "",
            after.key,
        )


def _back(kind: str) -> str:
    return {"zip": "a zip", "envelope": "two backs that overlap"}.get(kind, kind)


def _quilting(before: SizeEdition, after: SizeEdition) -> Iterator[Change]:
    was, is_ = ({area: (style, gap) for area, style, gap in s.quilting} for s in (before, after))
    for area in dict.fromkeys([*was, *is_]):
        lines = [_lines(*held[area]) if area in held else "" for held in (was, is_)]
        if lines[0] == lines[1]:
            continue
        where = {"border": "borders"}.get(area, area)
        if not lines[1]:
            sentence = f"{after.title}: the {where} is no longer quilted ({lines[0]})."
        else:
            rest = f", not {lines[0]}" if lines[0] else ""
            sentence = f"{after.title}: quilt the {where} {lines[1]}{rest}."
        yield Change(
            SEWN, "quilting", sentence, "", after.key, {"lines": lines[0]}, {"lines": lines[1]}
        )


def _lines(style: str, gap: str) -> str:
    kinds = {
        "ditch": "in the ditch",
        "echo": "with echo lines",
        "parallel": "with parallel lines",
        "grid": "with a grid",
        "as desired": "as you like",
    }
    apart = f" {SAY.measure(parse_number(gap))} apart" if gap else ""
    return f"{kinds.get(style, style)}{apart}"
