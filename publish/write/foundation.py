"""Foundation piecing: sewing on printed lines, section by section, and joining sections.

In: foundation sections, seam trees, plans. Out: a section, with a child for each size.
Invariant: sections, patches, counts and the order in which sections are joined are the
draft's; the size of each piece of cloth is the plan's.
"""

from __future__ import annotations

from collections.abc import Mapping

from publish.model.draft import FoundationSection, Patch, Unit
from publish.model.tree import BLOCK, Group, every, holds_sections
from publish.model.words import Block, FigureBlock, Paragraph, Row, Section, Table
from publish.words.en.phrase import capital, counted, listed, number, stitch
from publish.write.bench import Bench
from publish.write.collect import strings
from publish.write.context import Book
from publish.write.foundation_counts import counts, mirror
from publish.write.foundation_names import called, parts_named
from publish.write.practice import FOUNDATION_SPARE, FOUNDATION_STITCH, PIECING_STITCH
from publish.write.pressing import press_text
from publish.write.sewn import piece_of, sewn_size
from publish.write.steps import StepList, figure, slug

_HEAD = ("Patch", "Fabric", "Piece", "Cut size")


def on_foundations(book: Book) -> tuple[str, ...]:
    """Return the sizes that have something sewn on foundations."""
    return tuple(k for k in book.keys if book.drafts[k].foundations)


def sections(book: Book) -> tuple[Section, ...]:
    """Return the sections on foundation piecing; none when nothing is sewn on paper."""
    keys = on_foundations(book)
    if not keys:
        return ()
    steps = StepList(book, "foundation", keys)
    _how(book, keys, steps)
    lead = "Sew fabric to printed paper in the order of the numbers."
    intro: list[Block] = [mirror(), steps.block()]
    if len(keys) == 1:
        blocks = (*intro, *_size(Bench(book, keys[0]), steps, keys))
        return (Section("foundation", _TITLE, blocks, lead, sizes=book.only(keys)),)
    found = [Section("foundation", _TITLE, tuple(intro), lead)]
    benches = {key: Bench(book, key) for key in keys}
    found += [_section(benches[alike[0]], alike) for alike in _alike(benches)]
    return tuple(found)


def _section(bench: Bench, keys: tuple[str, ...]) -> Section:
    """Return the section of sizes whose foundations are sewn from the same cloth in one way."""
    book, child = bench.book, f"foundation-{bench.key}"
    own = _size(bench, StepList(book, child, keys), keys)
    title = f"{_TITLE}: {listed([book.title(k) for k in keys])}"
    return Section(child, title, own, sizes=keys, parent="foundation")


def _alike(benches: Mapping[str, Bench]) -> list[tuple[str, ...]]:
    """Return the sizes in groups that are told alike, to the last number."""
    groups: dict[tuple[str, ...], list[str]] = {}
    for key, bench in benches.items():
        told = _size(bench, StepList(bench.book, "foundation", [key]), (key,))
        said = tuple(t for b in told for t in strings(b) if not isinstance(b, Table))
        rows = tuple(c for b in told if isinstance(b, Table) for r in b.rows for c in r.cells)
        groups.setdefault((*said, *rows), []).append(key)
    return [tuple(found) for found in groups.values()]


_TITLE = "Foundation piecing"


def _first(book: Book, keys: tuple[str, ...]) -> tuple[str, FoundationSection]:
    """Return a section to show: of the first size, the first with three patches or more."""
    found = book.drafts[keys[0]].foundations
    return keys[0], next((f for f in found if len(f.patches) > 2), found[0])


def _how(book: Book, keys: tuple[str, ...], steps: StepList) -> None:
    """Add the steps that hold for every section."""
    _prepare(book, keys, steps)
    _sew(book, keys, steps)
    key, shown = _first(book, keys)
    seam = book.say.measure(book.pattern.sewing.seam)
    steps.add(
        "on",
        "Do the same with each patch in the order of the numbers: lay it over the line that it "
        "shares with what is sewn, sew, trim, press.",
        right="The blank side of the paper is covered, and fabric reaches past the dashed cut line "
        "all around.",
    )
    steps.add(
        "trim",
        "Lay the section printed side up. With ruler and rotary cutter cut through paper and cloth "
        f"on the dashed cut line. It lies {seam} outside the outer sewing line.",
        right="The edges are straight and every edge has its allowance.",
        figure=figure(
            "foundation",
            key,
            f"Section {shown.letter}, trimmed and from its right side.",
            section=shown.key,
            stage="done",
        ),
    )


def _prepare(book: Book, keys: tuple[str, ...], steps: StepList) -> None:
    spare = book.usual(FOUNDATION_SPARE.value)
    steps.add(
        "print",
        f"Print the foundations{book.your_size} at **100 %** on thin paper that tears easily, one "
        "for each section that you sew, and measure the check square on every sheet. Cut them "
        f"apart about {spare} outside the dashed line. If you copy a sheet, measure the square on "
        "the copy as well.",
        right="Both check squares measure true, and each section has its letter.",
    )
    steps.add(
        "machine",
        f"Set the stitch to about {stitch(FOUNDATION_STITCH.value)}, shorter than for other seams, "
        "and put in a new needle of a stout size, such as 90/14. Close stitches and a stout needle "
        "perforate the paper, so that it tears away without pulling the seam.",
        caution="Paper dulls needles and blades: change both before you sew or cut cloth alone.",
    )


def _sew(book: Book, keys: tuple[str, ...], steps: StepList) -> None:
    key, shown = _first(book, keys)
    name, seam = shown.letter, book.say.measure(book.pattern.sewing.seam)
    steps.add(
        "place",
        "Hold a foundation with the blank side toward you, against the light. Lay the cloth of "
        f"patch 1 on it, wrong side on the paper, so that it covers area 1 and reaches at least "
        f"{seam} past its lines on every side. Pin it flat.",
        right="Against the light, area 1 lies within its cloth.",
        figure=figure(
            "foundation",
            key,
            f"Section {name}: the fabric of patch 1 under the paper, "
            "seen through it from the printed side.",
            section=shown.key,
            stage="place",
        ),
    )
    steps.add(
        "sew",
        f"Lay the cloth of patch 2 on patch 1, right sides together, its edge about {seam} past "
        "the line between areas 1 and 2. Fold it over along that line as a trial: it must cover "
        "area 2 with an allowance all round. Lay it back, turn everything over, and sew on the "
        "printed line, from a few stitches before it to a few stitches past it.",
        right="The stitches lie on the line and hold both patches.",
        figure=figure(
            "foundation",
            key,
            f"Section {name}: sewn on the line, from the printed side.",
            section=shown.key,
            stage="sew",
        ),
    )
    _flip(book, keys, steps)


def _flip(book: Book, keys: tuple[str, ...], steps: StepList) -> None:
    key, shown = _first(book, keys)
    name, seam = shown.letter, book.say.measure(book.pattern.sewing.seam)
    steps.add(
        "flip",
        f"Crease the paper back along the line over the edge of a card, and trim both allowances "
        f"to {seam} beyond it, without cutting the paper. Unfold the paper, open patch 2 over area "
        "2 and press it flat from the cloth side with a dry iron.",
        right="Patch 2 covers area 2, and there is no pleat in the seam.",
        caution="Keep the iron off the print: hot toner or ink can smear. Keep your fingers behind "
        "the ruler when you trim.",
        figure=figure(
            "foundation",
            key,
            f"Section {name}: the paper folded back and the allowances trimmed.",
            section=shown.key,
            stage="trim",
        ),
    )


def _size(bench: Bench, steps: StepList, keys: tuple[str, ...]) -> tuple[Block, ...]:
    """Return what sizes that are alike need: how many, from what, and how sections are joined,
    in steps whose numbers run on from those that `steps` holds already."""
    book, key = bench.book, bench.key
    blocks: list[Block] = [Paragraph(counts(bench))]
    by_block: dict[str, list[FoundationSection]] = {}
    for found in book.drafts[key].foundations:
        by_block.setdefault(found.block, []).append(found)
    for block, those in by_block.items():
        if len(those) > 1:
            caption = f"The {book.block_name(block)}: its sections, and how they are joined."
            blocks.append(FigureBlock(figure("sections", key, caption, block=block), "half"))
        blocks.append(_table(bench, block, those, keys))
    if any(map(holds_sections, (g.unit for g in bench.at(BLOCK) if g.unit.parts))):
        steps.add(
            "stitch",
            f"Set the stitch back to {stitch(PIECING_STITCH.value)} before you join sections.",
            sizes=keys,
            aliases=_aliases(keys, "stitch"),
        )
    for block in by_block:
        _join(bench, block, steps, keys)
    _remove(bench, steps, keys)
    return (*blocks, steps.block())


def _table(
    bench: Bench, block: str, those: list[FoundationSection], keys: tuple[str, ...]
) -> Table:
    book, key = bench.book, bench.key
    sewn = _sewn(bench)
    rows: list[Row] = []
    for found in those:
        times = f"make {number(found.count)}"
        rows.append(Row((f"Section {found.letter}: {times}",), "group"))
        rows += [
            Row((f"{found.letter}{at}", *_cloth(bench, found, at - 1, sewn)), fabric=patch.fabric)
            for at, patch in enumerate(found.patches, 1)
        ]
    notes = ("Cloth for a foundation is cut larger than its patch and is trimmed as it is sewn.",)
    return Table(
        f"foundation-{key}-{block}",
        f"Fabric for the {book.block_name(block)}: {listed([book.title(k) for k in keys])}",
        _HEAD,
        tuple(rows),
        "llll",
        notes,
    )


def _sewn(bench: Bench) -> dict[str, tuple[Patch, ...]]:
    """Return the patches of the top that are sewn on each section where it is first used."""
    found: dict[str, tuple[Patch, ...]] = {}
    for unit in every(bench.book.drafts[bench.key].assembly):
        if unit.section and unit.section not in found:
            found[unit.section] = unit.patches
    return found


def _cloth(
    bench: Bench, found: FoundationSection, at: int, sewn: Mapping[str, tuple[Patch, ...]]
) -> tuple[str, str, str]:
    """Return the fabric, letter and cut size of a section's patch, by its place."""
    book, key = bench.book, bench.key
    fabric = book.fabric(found.patches[at].fabric)
    held = sewn.get(found.key, ())
    piece = piece_of(book, key, held[at]) if at < len(held) else None
    if piece is None:
        return fabric, "–", "–"
    return fabric, f"**{piece.letter}**", book.say.rectangle(piece.width, piece.length)


def _join(bench: Bench, block: str, steps: StepList, keys: tuple[str, ...]) -> None:
    mine = [g for g in bench.at(BLOCK) if block in g.blocks[:1] and holds_sections(g.unit)]
    for at, group in enumerate(mine):
        _joined(bench, group, steps, at > 0, keys)


def _joined(
    bench: Bench, group: Group, steps: StepList, again: bool, keys: tuple[str, ...]
) -> None:
    unit, many = group.unit, len(group.units)
    name = called(bench, unit) or bench.the(unit)
    make = f" Make {number(many)}." if many > 1 else ""
    whole = f"This is the {bench.called(unit)}. " if bench.is_block(unit) else ""
    size = sewn_size(unit) if unit.is_box else None
    measures = (
        f"{capital(name)} measures {bench.book.say.rectangle(*size)}." if size is not None else ""
    )
    steps.add(
        unit.kind,
        f"{_together(bench, unit, again)} {whole}Tear the paper off the allowances of "
        f"{'this seam' if len(unit.parts) == 2 else 'these seams'} only. "
        f"{press_text(bench, group)}{make}",
        sizes=keys,
        aliases=_aliases(keys, unit.kind),
        right=measures if size is not None else "The points meet at the seam.",
    )


def _together(bench: Bench, unit: Unit, again: bool) -> str:
    """Return how sections are sewn to each other; in short after the first time."""
    parts = parts_named(bench, unit)
    more = " Sew on the others in the same way, one after another." if len(unit.parts) > 2 else ""
    first = "the first two" if more else "them"
    blocks = dict.fromkeys(f.block for f in bench.book.drafts[bench.key].foundations)
    block = unit.patches[0].block
    which = f"For the {bench.book.block_name(block)}, join" if len(blocks) > 1 and block else "Join"
    if again:
        return f"{which} {parts}{' in this order' if more else ''}, matching points with pins."
    return (
        f"{which} {parts}: lay {first} right sides together. Push a pin straight through both ends "
        "of the sewing line and wherever seams meet, from paper to paper; when it stands upright "
        f"the points match. Pin, take the upright pins out, and sew on the printed line.{more}"
    )


def _remove(bench: Bench, steps: StepList, keys: tuple[str, ...]) -> None:
    count = counted(sum(f.count for f in bench.book.drafts[bench.key].foundations), "foundation")
    steps.add(
        "paper",
        f"Leave the rest of the paper of all {count} in until all sides of a block are sewn to "
        "their neighbours: it keeps edges cut off the straight grain from stretching. Then crease "
        "it along the stitches, hold the seam with a thumbnail and tear the paper away, the last "
        "patch first. Pick small bits out with tweezers.",
        sizes=keys,
        right="No stitch is pulled.",
        aliases=_aliases(keys, "paper"),
    )


def _aliases(keys: tuple[str, ...], step: str) -> tuple[tuple[str, str], ...]:
    """Return the keys that a step would have in a section of each of the other sizes."""
    return tuple((slug("foundation", key, step), key) for key in keys[1:])
