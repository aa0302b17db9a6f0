"""Sewing patches into grounds and pieced blocks, before any appliqué.

In: seam trees, plans. Out: a section, one for each size, or one for each block of a size.
Invariant: every unit below a block is made once, with its count; the size that a unit
should measure is the sum of its cut pieces less the seams, or what it is trimmed to.
"""

from __future__ import annotations

from publish.model.draft import Unit
from publish.model.nouns import HALF_SQUARE
from publish.model.tree import BLOCK, Group
from publish.model.words import Block, FigureBlock, FigureSpec, Paragraph, Section
from publish.surd import Length
from publish.units import EIGHTH
from publish.words.en.phrase import article, capital, listed, measure, number, rectangle, stitch
from publish.write import quick
from publish.write.bench import Bench
from publish.write.context import Book
from publish.write.joins import curve_sewn, sewn
from publish.write.practice import PIECING_STITCH
from publish.write.pressing import press_text
from publish.write.sewn import making_of, sewn_size
from publish.write.steps import StepList, figure

_LOCK = ", so that they lock where neighbours meet"
_CHAIN = 4
"""From so many alike on, feeding one after another saves thread and time."""
_MANY = 5
"""A block of so many patches is shown before its parts are sewn."""


def sections(book: Book) -> tuple[Section, ...]:
    """Return the sections on piecing; none when every ground is whole cloth."""
    benches = [b for k in book.keys if blocks_of(b := Bench(book, k))]
    if not benches:
        return ()
    several = dict.fromkeys(block for bench in benches for block in blocks_of(bench))
    title = f"Piecing the {book.ground_word(several)}"
    lead = (
        f"Sew with a {measure(book.pattern.sewing.seam)} seam and a stitch about "
        f"{stitch(PIECING_STITCH.value)} long, and press each seam before it is crossed by "
        "another."
    )
    apart = any(len(blocks_of(b)) > 1 for b in benches)
    intro = _intro(benches)
    if len(benches) == 1 and not apart:
        bench = benches[0]
        only = book.only([bench.key])
        first = (Paragraph(f"This part is for the {book.titles(only)} only."),) if only else ()
        blocks = (*first, *intro, *_block(bench, blocks_of(bench)[0], "piecing"))
        return (Section("piecing", title, blocks, lead, sizes=only),)
    found = [Section("piecing", title, intro, lead)]
    found += [_section(bench, b, title) for bench in benches for b in blocks_of(bench)]
    return tuple(found)


def blocks_of(bench: Bench) -> list[str]:
    """Return the blocks of a size that have seams other than on foundations."""
    return [b for b in bench.book.blocks(bench.key) if any(map(_mine, bench.of_block(b)))]


def _mine(group: Group) -> bool:
    """Return whether a group is told here: it holds more than foundation sections."""
    return not any(u.section for u in _leaves(group.unit))


def _leaves(unit: Unit) -> list[Unit]:
    return [leaf for p in unit.parts for leaf in _leaves(p)] if unit.parts else [unit]


def _section(bench: Bench, block: str, title: str) -> Section:
    book, key = bench.book, bench.key
    many = len(blocks_of(bench)) > 1
    name = f"piecing-{key}-{block}" if many else f"piecing-{key}"
    headed = f"Piecing the {book.block_name(block)}" if many else title
    return Section(name, f"{headed}: {book.title(key)}", _block(bench, block, name),
                   sizes=(key,), parent="piecing")  # fmt: skip


def _intro(benches: list[Bench]) -> tuple[Block, ...]:
    """Say what holds for all units: numbers, counts, sewing many in a chain."""
    said = []
    if any(b.called(g.unit).startswith("unit ") for b in benches for g in b.inner):
        said.append(
            "Blocks are sewn from units. Each kind of unit has a number in its size, and is made "
            "as often as its step says before the next one is begun. A step's picture shows the "
            "parts as they are laid out, and the unit from the right side."
        )
    if any(len(g.units) >= _CHAIN for b in benches for g in b.inner):
        said.append(
            "Where many units are alike, sew them as a chain: feed the next pair under the presser "
            "foot as the last one leaves it, without cutting the thread, and snip them apart when "
            "all are sewn. Sew and measure one by itself first."
        )
    return (Paragraph(" ".join(said)),) if said else ()


def _block(bench: Bench, block: str, section: str) -> tuple[Block, ...]:
    """Return what one block's section holds."""
    book, key = bench.book, bench.key
    steps = StepList(book, section, [key])
    told = _told_before(bench, block)
    seams: dict[str, str] = {}
    for group in filter(_mine, bench.of_block(block)):
        making = making_of(book, key, group.unit)
        if making is not None:
            quick.add(bench, group, making, steps, again=making.method in told)
            told.add(making.method)
        else:
            _unit(bench, group, steps, seams)
    opening: list[Block] = []
    if len(blocks_of(bench)) > 1 or len(book.block(block).patches) >= _MANY:
        opening.append(Paragraph(_opening(bench, block)))
    if len(book.block(block).patches) >= _MANY:
        caption = f"The {book.block_name(block)}, with the letters of its pieces."
        opening.append(FigureBlock(figure("block", key, caption, block=block), "half"))
    return (*opening, steps.block())


def _told_before(bench: Bench, block: str) -> set[str]:
    """Return the quicker methods that the size's earlier blocks have told in full."""
    order = list(bench.book.blocks(bench.key))
    earlier = order[: order.index(block)]
    return {g.unit.made for b in earlier for g in bench.of_block(b) if g.unit.made}


def _opening(bench: Bench, block: str) -> str:
    """Return what the block is called in the trade, how large it is and how many to make."""
    book, key = bench.book, bench.key
    spec = book.block(block)
    trade = f" Traditional name: *{spec.traditional}*." if spec.traditional else ""
    made = [
        f"the {book.sized_name(key, block, side)} finishes {measure(side)} square: make "
        f"{number(count) if count > 1 else 'one'}"
        for side, count in book.sides(key, block).items()
    ]
    before = [
        bench.called(g.unit) for g in bench.inner
        if block in g.blocks and bench.place(g) < list(book.blocks(key)).index(block)
    ]  # fmt: skip
    have = f" It also takes {listed(before)}, which you have made by now." if before else ""
    return f"{'. '.join(map(capital, made))}.{trade}{_variants(bench, block)}{have}"


def _variants(bench: Bench, block: str) -> str:
    """Say why a block is made in several ways where it lies on the outside of a pillow."""
    kinds = {g.unit.kind for g in bench.at(BLOCK) if bench.is_block(g.unit) and block in g.blocks}
    if len(kinds) == len(bench.book.sides(bench.key, block)):
        return ""
    return (
        " Those that lie on the outside of the pillow are larger by its wider seam along the edges "
        "that lie there, so there are several, each with a number of its own."
    )


def _unit(bench: Bench, group: Group, steps: StepList, seams: dict[str, str]) -> None:
    unit = group.unit
    many = len(group.units)
    make = f" Make {number(many)}.{_shared(bench, group)}" if many > 1 else ""
    full = unit.join in ("curve", "set in") and unit.join not in seams
    laid = capital(f"{_opener(bench, group)}lay out {sewn(bench, unit, seams)}")
    if full and unit.join == "curve":
        laid = _pinned(bench, unit, steps, laid)
    steps.add(
        bench.step_key(unit),
        f"{laid} {press_text(bench, group, _LOCK)}{_trim(bench, unit, seams)}{make}",
        sizes=[bench.key],
        right=_right(bench, unit),
        figure=_shown(bench, unit, full=full),
    )


def _pinned(bench: Bench, unit: Unit, steps: StepList, laid: str) -> str:
    """Add the step that pins a curved seam; return the words of the one that sews it."""
    name = capital(bench.called(unit))
    steps.add(
        f"{bench.step_key(unit)} pin",
        laid,
        sizes=[bench.key],
        right="The edges lie level all along the curve. The pieces do not lie flat yet: they will "
        "when the seam is opened.",
        figure=figure("curve", bench.key, f"{name}: the curve clipped and pinned.",
                      unit=unit.kind, stage="pin"),
    )  # fmt: skip
    return curve_sewn(bench, unit)


def _shown(bench: Bench, unit: Unit, *, full: bool) -> FigureSpec:
    """Return the picture of a unit's step; of a seam told in full, the seam itself."""
    name = capital(bench.called(unit))
    if full and unit.join == "curve":
        return figure("curve", bench.key, f"{name}: sewn and pressed.", unit=unit.kind,
                      stage="press")  # fmt: skip
    if full:
        return figure("set-in", bench.key, f"{name}: the corner set in.", unit=unit.kind)
    return figure("units", bench.key, f"{name}: the parts, and how they look when joined.",
                  unit=unit.kind)  # fmt: skip


def _opener(bench: Bench, group: Group) -> str:
    """Return the first words of a step: `For **unit 3**, a four-patch, `, or nothing."""
    unit = group.unit
    name = bench.called(unit)
    kind = bench.trade(unit)
    if name.startswith("unit "):
        return f"For **{name}**, {article(kind)}, " if kind else f"For **{name}**, "
    if bench.is_block(unit) and bench.the(unit) == name:
        return f"For **{name}**, "
    if bench.is_block(unit) and (len(blocks_of(bench)) > 1 or len(bench.inner) > 1):
        return f"For the {name}, "
    return ""


def _shared(bench: Bench, group: Group) -> str:
    """Say how many of a unit each block takes, where several blocks share it."""
    counts: dict[str, int] = {}
    for unit in group.units:
        block = unit.patches[0].block
        if block is not None:
            counts[block] = counts.get(block, 0) + 1
    if len(counts) < 2:
        return ""
    told = [f"{number(n)} for the {bench.book.block_name(b)}s" for b, n in counts.items()]
    return f" That is {listed(told)}."


def _trim(bench: Bench, unit: Unit, told: dict[str, str]) -> str:
    """Ask for trimming where pieces were cut a little large and seams do not run straight."""
    if unit.sewn is None or not unit.sewn.trim:
        return ""
    size = rectangle(*unit.sewn.told)
    if unit.sewn.joined is not None:
        return (
            f" Pieces are cut to the next {measure(EIGHTH)}, and here that adds up: trim "
            f"{bench.the(unit)} to {size}, taking the same from each side."
        )
    kind = "trim half" if bench.trade(unit) == HALF_SQUARE else "trim"
    before = told.setdefault(kind, bench.the(unit))
    if before != bench.the(unit):
        return f" Trim it to {size}, as you trimmed {before}."
    if kind == "trim half":
        return (
            f" Its pieces were cut a little large: trim it to {size}, with the 45-degree line of "
            "the ruler on the seam, so that the seam ends in two corners."
        )
    return (
        f" Its pieces were cut a little large: trim it to {size}, leaving "
        f"{measure(bench.pattern_seam)} beyond each point that ends at its edge."
    )


def right_size(bench: Bench, unit: Unit) -> tuple[Length, Length] | None:
    """Return what a unit measures when it is sewn, or None where it is no rectangle."""
    return sewn_size(unit) if unit.is_box else None


def _right(bench: Bench, unit: Unit) -> str:
    size = right_size(bench, unit)
    measures = f"{capital(bench.the(unit))} measures {rectangle(*size)}." if size else ""
    after = " It is trimmed after the appliqué." if _carries_motif(bench, unit) else ""
    return f"{measures}{after}".strip()


def _carries_motif(bench: Bench, unit: Unit) -> bool:
    """Return whether a unit is the whole ground of a block that carries a motif."""
    block = unit.patches[0].block
    whole = block is not None and bench.is_block(unit)
    return whole and bench.book.block(block or "").motif is not None
